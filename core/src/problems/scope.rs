//! What the names of one draw stand for: givens as written, values as worked out.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::units::{Kind, display, parse};

use super::precision::round_to_figures;

/// What a name stands for.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A number of some kind, in its SI base unit.
    Number {
        /// Its kind.
        kind: Kind,
        /// In the SI base unit.
        value: f64,
    },
    /// One of a few words.
    Word(String),
}

/// The names of one draw.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scope {
    entries: Vec<Entry>,
}

#[derive(Clone, Debug, PartialEq)]
struct Entry {
    name: String,
    value: Value,
    /// As the family writes it; none for what was worked out.
    written: Option<String>,
}

/// A number as problems show it: in the unit the trade would use, a depth of modulation
/// in per cent.
pub(super) fn shown(kind: Kind, value: f64) -> String {
    match kind {
        Kind::Depth => display::text(Kind::Ratio, 100.0 * value) + " %",
        _ => display::text(kind, value),
    }
}

/// A number in a unit of the reader's or the family's own; none where there is no such unit.
pub(super) fn shown_in(kind: Kind, value: f64, unit: &str) -> Option<String> {
    let one = parse::value(kind, &format!("1 {unit}"), None).ok()?;
    Some(display::text(Kind::Ratio, value / one) + " " + unit)
}

impl Value {
    /// As shown in a sentence: the unit the trade would use, at most seven figures.
    pub fn shown(&self) -> String {
        match self {
            Value::Number { kind, value } => shown(*kind, *value),
            Value::Word(word) => word.clone(),
        }
    }

    /// As the catalogue reads it, every bit kept: digits that read back to the same
    /// number, with the SI unit.
    fn typed(&self) -> String {
        match self {
            Value::Number { kind, value } => format!("{} {}", display::exact(*value), kind.unit())
                .trim()
                .to_string(),
            Value::Word(word) => word.clone(),
        }
    }
}

impl Scope {
    /// Adds a given, written as the family writes it.
    pub fn give(&mut self, name: &str, kind: Kind, written: &str) -> Result<(), String> {
        let value = match kind {
            Kind::Choice => Value::Word(written.into()),
            _ => {
                let read = parse::value(kind, written, None);
                Value::Number {
                    kind,
                    value: read.map_err(|refused| refused.to_string())?,
                }
            }
        };
        self.entries.push(Entry {
            name: name.into(),
            value,
            written: Some(written.into()),
        });
        Ok(())
    }

    /// Adds what was worked out under a name.
    pub fn set(&mut self, name: &str, value: Value) {
        self.entries.push(Entry {
            name: name.into(),
            value,
            written: None,
        });
    }

    /// What a name stands for.
    pub fn find(&self, name: &str) -> Option<&Value> {
        self.entry(name).map(|entry| &entry.value)
    }

    /// What a name stands for, as the catalogue reads it.
    pub fn typed(&self, name: &str) -> Option<String> {
        let entry = self.entry(name)?;
        Some(entry.written.clone().unwrap_or_else(|| entry.value.typed()))
    }

    /// What a name stands for, as a sentence shows it.
    pub fn shown(&self, name: &str) -> Option<String> {
        let entry = self.entry(name)?;
        Some(entry.written.clone().unwrap_or_else(|| entry.value.shown()))
    }

    /// The same in another form: a number of figures, or a unit.
    pub fn shown_as(&self, name: &str, form: &str) -> Option<String> {
        let Value::Number { kind, value } = *self.find(name)? else {
            return None;
        };
        if let Ok(figures) = form.parse::<u8>() {
            return (1..=7)
                .contains(&figures)
                .then(|| shown(kind, round_to_figures(value, figures)));
        }
        shown_in(kind, value, form)
    }

    fn entry(&self, name: &str) -> Option<&Entry> {
        self.entries.iter().rev().find(|entry| entry.name == name)
    }
}
