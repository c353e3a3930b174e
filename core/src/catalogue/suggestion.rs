//! The names that a mistyped one may have meant.

use alloc::string::String;
use alloc::vec::Vec;

/// Most names that are offered.
const OFFERED: usize = 3;

/// Characters of a typed name that are compared; no name is longer.
const COMPARED: usize = 40;

/// The known names nearest to the typed one, best first: those that contain it, and
/// those that a few changed letters lead to.
pub(super) fn nearest<'a>(typed: &str, known: impl Iterator<Item = &'a str>) -> Vec<&'a str> {
    let typed: Vec<char> = typed
        .to_ascii_lowercase()
        .chars()
        .map(|letter| {
            if letter == '_' || letter == ' ' {
                '-'
            } else {
                letter
            }
        })
        .take(COMPARED)
        .collect();
    let word: String = typed.iter().collect();
    let mut found: Vec<(usize, &str)> = known
        .filter_map(|name| {
            let changes = changes(&typed, name);
            let contained = typed.len() >= 3 && name.contains(word.as_str());
            (contained || changes <= 1 + name.len() / 4).then_some((changes, name))
        })
        .collect();
    found.sort_unstable();
    found
        .into_iter()
        .take(OFFERED)
        .map(|(_, name)| name)
        .collect()
}

/// The least number of letters to insert, remove or replace to get from one to the
/// other.
///
/// [V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707; row by row]
fn changes(typed: &[char], name: &str) -> usize {
    let mut row: Vec<usize> = (0..=typed.len()).collect();
    for (line, letter) in name.chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = line + 1;
        for (place, known) in typed.iter().enumerate() {
            let replaced = diagonal + usize::from(*known != letter);
            diagonal = row[place + 1];
            row[place + 1] = replaced.min(row[place] + 1).min(diagonal + 1);
        }
    }
    row[typed.len()]
}

#[cfg(test)]
mod tests {
    use super::{changes, nearest};
    use alloc::vec::Vec;

    #[test]
    fn changes_are_counted() {
        let count = |one: &str, other| changes(&one.chars().collect::<Vec<_>>(), other);
        assert_eq!(count("kitten", "sitting"), 3);
        assert_eq!(count("", "beat"), 4);
        assert_eq!(count("beat", ""), 4);
        assert_eq!(count("beat", "beat"), 0);
    }

    #[test]
    fn a_slip_finds_the_name() {
        let known = ["oscillator", "image", "image-whistle", "whistle", "beat"];
        let offered = |typed| nearest(typed, known.into_iter());
        assert_eq!(offered("oscilator"), ["oscillator"]);
        assert_eq!(offered("Image"), ["image", "image-whistle"]);
        assert_eq!(offered("image_whistle"), ["image-whistle"]);
        assert!(offered("zzzzzzzz").is_empty());
        assert!(offered("").is_empty());
    }
}
