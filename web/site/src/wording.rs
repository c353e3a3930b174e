//! The catalogue's words as pages put them into sentences.

/// A title inside a sentence: "Oscillator frequency" becomes "oscillator frequency", "IF
/// rejection" stays.
pub(crate) fn inside_sentence(title: &str) -> String {
    let mut letters = title.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => title.to_owned(),
    }
}

/// Words without capital and full stop as a sentence of their own. A name in lower case
/// that begins with a unit or a letter of a formula is the writer's own care.
pub(crate) fn as_sentence(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|first| first.to_uppercase().to_string());
    let stop = if words.ends_with('.') { "" } else { "." };
    format!("{}{}{stop}", first.unwrap_or_default(), letters.as_str())
}

/// "dial, if and side".
pub(crate) fn in_words(words: &[&str], joint: &str) -> String {
    match words {
        [] => String::new(),
        [word] => (*word).to_owned(),
        [before @ .., last] => format!("{} {joint} {last}", before.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::{as_sentence, in_words, inside_sentence};

    #[test]
    fn titles_keep_their_abbreviations() {
        assert_eq!(inside_sentence("Image rejection"), "image rejection");
        assert_eq!(inside_sentence("IF rejection"), "IF rejection");
        assert_eq!(inside_sentence("Q from bandwidth"), "Q from bandwidth");
    }

    #[test]
    fn words_become_a_sentence_once() {
        assert_eq!(as_sentence("none: a table"), "None: a table.");
        assert_eq!(as_sentence("A book."), "A book.");
        assert_eq!(as_sentence(""), ".");
    }

    #[test]
    fn lists_end_in_a_word() {
        assert_eq!(in_words(&["up"], "or"), "up");
        assert_eq!(
            in_words(&["nearest", "up", "down"], "or"),
            "nearest, up or down"
        );
    }
}
