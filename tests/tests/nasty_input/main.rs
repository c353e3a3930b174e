//! A million nasty texts for each reader of what people type and of what a link says: no
//! panic, bounded memory, and nothing longer than it needs is read. The readers of what a
//! page keeps and carries are tried likewise in `web/study/src/nasty_input.rs`.

mod answers;
mod codes;
mod expressions;
mod typed;

/// Whether a sentence for the screen is one line of at most `most` characters.
fn fits_a_line(sentence: &str, most: usize) -> bool {
    !sentence.is_empty() && sentence.chars().count() <= most && !sentence.contains(char::is_control)
}
