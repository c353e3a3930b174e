//! How easily the running text of each lesson reads.
//!
//! The measure is Flesch's reading ease, `206.835 − 1.015·words/sentences −
//! 84.6·syllables/words` (R. Flesch, *A new readability yardstick*, Journal of Applied
//! Psychology 32, 1948; cited from memory). Headings and cells of tables are left out, since
//! they would count as short sentences. It says how long words and sentences are, and
//! nothing of whether the text is clear.

use super::real::course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose::Flat;
use crate::lessons::texts;

/// No lesson reads less easily than this.
const LEAST: f64 = 50.0;

/// Half of the lessons read at least so easily.
const MEDIAN: f64 = 60.0;

#[derive(Debug, Default, PartialEq)]
struct Count {
    words: u32,
    sentences: u32,
    syllables: u32,
}

impl Count {
    fn of(text: &str) -> Self {
        let mut count = Self::default();
        let mut open = false;
        for token in text.split_whitespace() {
            for word in token.split(['-', '–', '/']).filter(|word| is_word(word)) {
                count.words += 1;
                count.syllables += syllables(word);
                open = true;
            }
            let bare = token.trim_end_matches(['"', '”', '’', ')', '*']);
            if open && bare.ends_with(['.', '?', '!', ':']) {
                count.sentences += 1;
                open = false;
            }
        }
        count.sentences += u32::from(open);
        count
    }

    fn add(&mut self, other: &Self) {
        self.words += other.words;
        self.sentences += other.sentences;
        self.syllables += other.syllables;
    }

    fn ease(&self) -> f64 {
        let [words, sentences, syllables] =
            [self.words, self.sentences, self.syllables].map(f64::from);
        206.835 - 1.015 * words / sentences - 84.6 * syllables / words
    }
}

fn is_word(token: &str) -> bool {
    token.contains(char::is_alphanumeric)
}

/// The syllables of a word as spoken: a number digit by digit, an abbreviation letter by
/// letter, any other word by its groups of vowels.
fn syllables(word: &str) -> u32 {
    let letters: Vec<char> = word.chars().filter(|it| it.is_alphabetic()).collect();
    let digits = word.chars().filter(char::is_ascii_digit).count();
    let capitals = letters.iter().filter(|it| it.is_uppercase()).count();
    let lower: String = letters.iter().flat_map(|it| it.to_lowercase()).collect();
    let spelled = letters.len() > 1 && (capitals > 1 || !lower.contains(is_vowel));
    let spoken = if letters.is_empty() {
        0
    } else if spelled {
        letters.len()
    } else {
        in_word(&lower)
    };
    u32::try_from(digits + spoken).expect("no word is so long")
}

fn is_vowel(letter: char) -> bool {
    "aeiouy".contains(letter)
}

/// Groups of vowels, less an `e` at the end that is not spoken.
fn in_word(word: &str) -> usize {
    let mut groups = 0;
    let mut before = false;
    for letter in word.chars() {
        groups += usize::from(is_vowel(letter) && !before);
        before = is_vowel(letter);
    }
    (groups - usize::from(ends_silent(word) && groups > 1)).max(1)
}

/// Whether the last vowel is an `e` that is not spoken: "tune", "waves", "turned", but not
/// "little", "boxes", "needed".
fn ends_silent(word: &str) -> bool {
    let consonant = |it: char| !is_vowel(it);
    let ending = ["es", "ed", "e"].into_iter().find(|it| word.ends_with(it));
    let stem = ending.and_then(|it| word.strip_suffix(it)).unwrap_or("");
    let syllable = stem
        .strip_suffix('l')
        .is_some_and(|it| it.ends_with(consonant));
    let spoken = match ending {
        Some("ed") => stem.ends_with(['t', 'd']),
        Some("es") => stem.ends_with(['x', 'z', 's', 'h', 'c', 'g']) || syllable,
        _ => syllable,
    };
    stem.ends_with(consonant) && !spoken
}

fn of_lesson(lesson: &Lesson) -> Count {
    let mut count = Count::default();
    for text in texts::of_lesson(lesson).iter().filter(|it| !it.in_front) {
        let words = Flat::with_numbers(text.run).text;
        let end = words.trim_end().trim_end_matches(['"', '”', '’', ')']);
        if end.ends_with(['.', '?', '!', ':']) {
            count.add(&Count::of(&words));
        }
    }
    count
}

#[test]
fn no_lesson_is_hard_to_read() {
    let course = course();
    let mut eases = Vec::new();
    println!(
        "{:<34}{:>6}{:>11}{:>11}{:>7}",
        "lesson", "words", "sentences", "syllables", "ease"
    );
    for lesson in &course.lessons {
        let count = of_lesson(lesson);
        let ease = count.ease();
        let Count {
            words,
            sentences,
            syllables,
        } = count;
        println!(
            "{:<34}{words:>6}{sentences:>11}{syllables:>11}{ease:>7.1}",
            lesson.slug
        );
        assert!(words > 300, "{} has hardly any running text", lesson.slug);
        assert!(
            ease >= LEAST,
            "{} has a reading ease of {ease:.1}",
            lesson.slug
        );
        eases.push(ease);
    }
    eases.sort_by(f64::total_cmp);
    let median = eases[eases.len() / 2];
    println!("median {median:.1}");
    assert!(median >= MEDIAN, "the median is {median:.1}");
}

/// Counted by hand, aloud.
#[test]
fn words_are_counted_as_by_hand() {
    let by_hand = [
        ("a", 1),
        ("set", 1),
        ("knob", 1),
        ("tune", 1),
        ("tuned", 1),
        ("the", 1),
        ("station", 2),
        ("stations", 2),
        ("signal", 2),
        ("circuit", 2),
        ("mixer", 2),
        ("frequency", 3),
        ("oscillator", 4),
        ("capacitor", 4),
        ("capacitance", 4),
        ("detector", 3),
        ("trimmer", 2),
        ("padder", 2),
        ("rehearsal", 3),
        ("adjusted", 3),
        ("turned", 1),
        ("shaped", 1),
        ("needed", 2),
        ("little", 2),
        ("whistle", 2),
        ("whistles", 2),
        ("image", 2),
        ("stages", 2),
        ("waves", 1),
        ("places", 2),
        ("boxes", 2),
        ("once", 1),
        ("twice", 1),
        ("valve", 1),
        ("always", 2),
        ("voltage", 2),
        ("transformer", 3),
        ("IF", 2),
        ("AGC", 3),
        ("470", 3),
        ("I", 1),
        ("Tam", 1),
        ("Odile", 2),
        ("three", 1),
        ("eye", 1),
    ];
    for (word, expected) in by_hand {
        assert_eq!(syllables(word), expected, "{word}");
    }
}

#[test]
fn sentences_are_counted_as_by_hand() {
    let text = "Tam turns the knob. \"Where is it?\" he asks. Two-way, 470 kHz";
    let expected = Count {
        words: 13,
        sentences: 4,
        syllables: 17,
    };
    assert_eq!(Count::of(text), expected);
}
