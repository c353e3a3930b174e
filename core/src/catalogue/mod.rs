//! Every quantity under its name: the one list that lessons, problems, figures, the
//! formula page, the command line and `compute` share.
//!
//! To add a quantity, write one [`Entry`] in the file of its subject; a new subject is a
//! new file and a line in `SUBJECTS` below. Everything else follows from the entry: how its
//! parameters are read, in which range, what is refused and in which words. The grid that
//! compares native and wasm results follows the catalogue too; write it anew with
//! `UPDATE_GRID=1 cargo test -p api --test native_grid`.
//!
//! An expression is `name?key=value&key=value`, each value typed as
//! [`units::parse`](crate::units::parse) reads it. Percent escapes are decoded, and a
//! `%` without two hexadecimal digits after it is itself; a `+` stays a plus. Every
//! parameter must be given once.
//!
//! ```
//! use superhet::catalogue::evaluate;
//! let answer = evaluate("oscillator?dial=1200kHz&if=470kHz&side=above").unwrap();
//! assert_eq!(answer.text, "1670 kHz");
//! assert_eq!(answer.value, 1_670_000.0);
//! ```

mod arguments;
mod coils;
mod detection;
mod entry;
mod evaluate;
mod expression;
mod frequencies;
mod gain;
mod if_transformers;
mod mains;
mod modulation;
mod notes;
mod parameter;
mod preferred_values;
mod refusal;
mod shared_parameters;
mod subject;
mod suggestion;
#[cfg(test)]
mod tests;
mod tracking;
mod tuned_circuits;

pub use crate::units::Kind;
pub use arguments::Arguments;
pub use entry::{Answer, Entry};
pub use evaluate::{evaluate, evaluate_with};
pub use expression::{LONGEST, split};
pub use parameter::Parameter;
pub use refusal::Refusal;
pub use subject::{Note, Subject};

/// The subjects in the order in which they are listed.
const SUBJECTS: &[Subject] = &[
    Subject::new("frequencies", "Frequencies", frequencies::ENTRIES).with_notes(notes::FREQUENCIES),
    Subject::new("tuned-circuits", "Tuned circuits", tuned_circuits::ENTRIES)
        .with_notes(notes::TUNED_CIRCUITS),
    Subject::new("coils", "Coils and the aerial", coils::ENTRIES),
    Subject::new(
        "if-transformers",
        "IF transformers",
        if_transformers::ENTRIES,
    )
    .with_notes(notes::IF_TRANSFORMERS),
    Subject::new("tracking", "Tracking", tracking::ENTRIES).with_notes(notes::TRACKING),
    Subject::new(
        "preferred-values",
        "Preferred values",
        preferred_values::ENTRIES,
    )
    .with_notes(notes::PREFERRED_VALUES),
    Subject::new("modulation", "Amplitude modulation", modulation::ENTRIES),
    Subject::new("detection", "Detector and AGC", detection::ENTRIES),
    Subject::new("gain", "Gain and decibels", gain::ENTRIES),
    Subject::new("mains", "The mains", mains::ENTRIES),
];

static ENTRIES: [Entry; count(SUBJECTS)] = gather(SUBJECTS);

/// The subjects, each with its quantities; the texts of these are there natively only.
///
/// ```
/// use superhet::catalogue::subjects;
/// assert_eq!(subjects()[0].title(), "Frequencies");
/// assert_eq!(subjects()[0].entries()[0].name, "oscillator");
/// ```
#[must_use]
pub fn subjects() -> &'static [Subject] {
    SUBJECTS
}

/// Every quantity, in the order of the subjects.
///
/// ```
/// assert!(superhet::catalogue::catalogue().len() >= 11);
/// ```
#[must_use]
pub fn catalogue() -> &'static [Entry] {
    &ENTRIES
}

/// The quantity with this name.
///
/// ```
/// use superhet::catalogue::find;
/// assert_eq!(find("image").unwrap().title, "Image frequency");
/// assert!(find("magic").is_none());
/// ```
#[must_use]
pub fn find(name: &str) -> Option<&'static Entry> {
    ENTRIES.iter().find(|entry| entry.name == name)
}

const fn count(subjects: &[Subject]) -> usize {
    let mut total = 0;
    let mut subject = 0;
    while subject < subjects.len() {
        total += subjects[subject].entries().len();
        subject += 1;
    }
    total
}

/// A text about a quantity as a program carries it. What runs in a page works quantities
/// out and shows none of these texts, and they would be a fifth of what a page loads: in
/// wasm they are empty. Examples are carried where the feature `examples` asks for them,
/// since the bit grid is made of them.
const fn carried(text: &'static str) -> &'static str {
    if cfg!(target_arch = "wasm32") {
        ""
    } else {
        text
    }
}

/// An example as a program carries it.
const fn example_carried(text: &'static str) -> &'static str {
    if cfg!(feature = "examples") {
        text
    } else {
        carried(text)
    }
}

/// An entry as a program carries it.
const fn entry_carried(entry: Entry) -> Entry {
    Entry {
        title: carried(entry.title),
        symbol: carried(entry.symbol),
        formula: carried(entry.formula),
        model_error: carried(entry.model_error),
        source: carried(entry.source),
        example: example_carried(entry.example),
        ..entry
    }
}

const fn gather<const N: usize>(subjects: &[Subject]) -> [Entry; N] {
    let mut all = [subjects[0].entries()[0]; N];
    let (mut place, mut subject) = (0, 0);
    while subject < subjects.len() {
        let mut entry = 0;
        while entry < subjects[subject].entries().len() {
            all[place] = entry_carried(subjects[subject].entries()[entry]);
            place += 1;
            entry += 1;
        }
        subject += 1;
    }
    all
}
