//! Finds words and phrases in running text, by whole words.

use super::lists::Glossary;
use std::collections::HashMap;
use std::ops::Range;

/// Phrases to look for, each with what it stands for.
///
/// A phrase with a capital letter in it ("IF", "kHz") is matched letter by letter, any
/// other in any case. The words of a phrase may be joined by spaces or hyphens. Of two
/// phrases that begin at the same word the longer is found.
#[derive(Clone, Debug)]
pub(crate) struct Phrases<T> {
    by_first_word: HashMap<String, Vec<Phrase<T>>>,
}

#[derive(Clone, Debug)]
struct Phrase<T> {
    words: Vec<String>,
    exact: bool,
    stands_for: T,
}

impl<'a> Phrases<&'a str> {
    /// Every spelling of every term, each standing for the term's id.
    pub(crate) fn of_terms(glossary: &'a Glossary) -> Self {
        Self::new(glossary.terms().iter().flat_map(|term| {
            let id = term.id.get_ref().as_str();
            term.spellings()
                .map(move |spelling| (spelling.get_ref().as_str(), id))
        }))
    }
}

impl<T: Copy> Phrases<T> {
    /// A set of phrases.
    pub(crate) fn new<'a>(phrases: impl IntoIterator<Item = (&'a str, T)>) -> Self {
        let mut by_first_word: HashMap<String, Vec<Phrase<T>>> = HashMap::new();
        for (text, stands_for) in phrases {
            let words: Vec<String> = words(text).map(|at| text[at].to_owned()).collect();
            let Some(first) = words.first() else { continue };
            let exact = text.chars().any(char::is_uppercase);
            by_first_word
                .entry(first.to_lowercase())
                .or_default()
                .push(Phrase {
                    words,
                    exact,
                    stands_for,
                });
        }
        for phrases in by_first_word.values_mut() {
            phrases.sort_by_key(|phrase| std::cmp::Reverse(phrase.words.len()));
        }
        Self { by_first_word }
    }

    /// Every phrase in a text, in order.
    pub(crate) fn find(&self, text: &str) -> Vec<(Range<usize>, T)> {
        let words: Vec<Range<usize>> = words(text).collect();
        let mut found = Vec::new();
        let mut index = 0;
        while index < words.len() {
            let first = text[words[index].clone()].to_lowercase();
            let phrase = self.by_first_word.get(&first).and_then(|phrases| {
                phrases
                    .iter()
                    .find(|phrase| phrase.stands_at(text, &words[index..]))
            });
            let Some(phrase) = phrase else {
                index += 1;
                continue;
            };
            let last = index + phrase.words.len() - 1;
            found.push((words[index].start..words[last].end, phrase.stands_for));
            index = last + 1;
        }
        found
    }
}

impl<T> Phrase<T> {
    fn stands_at(&self, text: &str, words: &[Range<usize>]) -> bool {
        words.len() >= self.words.len()
            && self.words.iter().zip(words).all(|(own, at)| {
                let word = &text[at.clone()];
                if self.exact {
                    word == own
                } else {
                    word.to_lowercase() == *own
                }
            })
            && words[..self.words.len()].windows(2).all(|pair| {
                text[pair[0].end..pair[1].start]
                    .chars()
                    .all(|between| between.is_whitespace() || between == '-')
            })
    }
}

/// The words of a text: runs of letters and digits.
fn words(text: &str) -> impl Iterator<Item = Range<usize>> {
    let mut at = 0;
    std::iter::from_fn(move || {
        let rest = &text[at..];
        let start = at + rest.find(char::is_alphanumeric)?;
        let end = text[start..]
            .find(|letter: char| !letter.is_alphanumeric())
            .map_or(text.len(), |length| start + length);
        at = end;
        Some(start..end)
    })
}

#[cfg(test)]
mod tests {
    use super::Phrases;

    fn found(text: &str) -> Vec<(&str, &'static str)> {
        let phrases = Phrases::new([
            ("image", "image"),
            ("images", "image"),
            ("image whistle", "image-whistle"),
            ("IF", "if"),
            ("tuned circuit", "tuned-circuit"),
        ]);
        phrases
            .find(text)
            .into_iter()
            .map(|(at, id)| (&text[at], id))
            .collect()
    }

    #[test]
    fn whole_words_the_longest_phrase_first() {
        assert_eq!(
            found("Images, imagery; the image's place"),
            [("Images", "image"), ("image", "image")]
        );
        assert_eq!(
            found("an image\nwhistle"),
            [("image\nwhistle", "image-whistle")]
        );
        assert_eq!(found("the image. Whistle"), [("image", "image")]);
        assert_eq!(
            found("tuned-circuit stage"),
            [("tuned-circuit", "tuned-circuit")]
        );
    }

    #[test]
    fn capitals_tell_a_short_form_from_a_word() {
        assert_eq!(found("If only, if ever, the IF"), [("IF", "if")]);
    }
}
