//! `set-profiles.toml`: the built-in sets. Number 1 is the practice set.

use crate::lessons::givens::Given;
use crate::lessons::source_text::SourceText;
use crate::report::Report;
use serde::Deserialize;
use toml::Spanned;

#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    #[serde(default, rename = "set")]
    sets: Vec<SetProfile>,
}

/// One set, as its owner would describe it.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
struct SetProfile {
    /// Permanent number, as codes carry it.
    number: Spanned<u32>,
    /// Its name in links and files.
    id: Spanned<String>,
    /// What people call it.
    name: String,
    /// Intermediate frequency.
    #[serde(rename = "if")]
    intermediate_frequency: Spanned<String>,
    /// Side of the oscillator: above or below.
    side: Spanned<String>,
    /// ITU Region.
    region: Spanned<u8>,
    /// Bands on the dial.
    #[serde(default, rename = "band")]
    bands: Vec<Band>,
}

/// One band of a set's dial.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Band {
    /// Its name in links and files.
    id: Spanned<String>,
    /// What the dial calls it.
    name: String,
    /// Low end.
    low: Spanned<String>,
    /// High end.
    high: Spanned<String>,
}

/// The number of the practice set, which every page uses until the reader has a set.
const PRACTICE_SET: u32 = 1;

/// Reads the list and checks every value in it.
pub(crate) fn check(file: &SourceText, report: &mut Report) {
    let Some(list) = super::read::<List>(file, report) else {
        return;
    };
    super::check_ids(file, "set", list.sets.iter().map(|set| &set.id), report);
    if !list
        .sets
        .iter()
        .any(|set| *set.number.get_ref() == PRACTICE_SET)
    {
        file.fault(
            0,
            format!("no set has the number {PRACTICE_SET}, the practice set's"),
            report,
        );
    }
    for (index, set) in list.sets.iter().enumerate() {
        let number = set.number.get_ref();
        if list.sets[..index]
            .iter()
            .any(|earlier| earlier.number.get_ref() == number)
        {
            let message = format!("the number {number} stands here a second time");
            file.fault(set.number.span().start, message, report);
        }
        set.check(file, report);
    }
}

impl SetProfile {
    fn check(&self, file: &SourceText, report: &mut Report) {
        if self.name.trim().is_empty() {
            file.fault(self.id.span().start, "a set has a name", report);
        }
        check_value(file, "if", &self.intermediate_frequency, report);
        check_value(file, "side", &self.side, report);
        if !(1..=3).contains(self.region.get_ref()) {
            let message = format!("an ITU Region is 1, 2 or 3 (got {})", self.region.get_ref());
            file.fault(self.region.span().start, message, report);
        }
        super::check_ids(file, "band", self.bands.iter().map(|band| &band.id), report);
        for band in &self.bands {
            let low = check_value(file, "dial", &band.low, report);
            let high = check_value(file, "dial", &band.high, report);
            if low.zip(high).is_some_and(|(low, high)| low >= high) {
                let message = format!("the low end of \"{}\" lies above its high end", band.name);
                file.fault(band.low.span().start, message, report);
            }
        }
    }
}

/// The value of a field, read like the catalogue's parameter of that name.
fn check_value(
    file: &SourceText,
    parameter: &str,
    field: &Spanned<String>,
    report: &mut Report,
) -> Option<f64> {
    match Given::read(parameter, field.get_ref()) {
        Ok(given) => Some(given.value),
        Err(message) => {
            file.fault(field.span().start, message, report);
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::check;
    use crate::lessons::source_text::{SourceText, faults_of};

    const SET: &str = "[[set]]\nnumber = 1\nid = \"one\"\nname = \"One\"\nif = \"470 kHz\"\nside = \"above\"\n\
                       region = 1\n[[set.band]]\nid = \"mw\"\nname = \"MW\"\nlow = \"525 kHz\"\nhigh = \"1605 kHz\"\n";

    fn faults(text: &str) -> String {
        let file = SourceText::new("s.toml", text);
        faults_of(|report| check(&file, report))
    }

    #[test]
    fn every_value_is_read() {
        assert_eq!(faults(SET), "");
        assert_eq!(
            faults(
                &SET.replace("470 kHz", "470")
                    .replace("above", "up")
                    .replace("region = 1", "region = 4")
            ),
            "s.toml:5:6: a frequency needs a unit, such as 1200 kHz (got \"470\")\n\
             s.toml:6:8: this is above or below (got \"up\")\n\
             s.toml:7:10: an ITU Region is 1, 2 or 3 (got 4)"
        );
        assert_eq!(
            faults(&SET.replace("1605 kHz", "505 kHz")),
            "s.toml:11:7: the low end of \"MW\" lies above its high end"
        );
        assert_eq!(
            faults(&SET.replace("number = 1", "number = 2")),
            "s.toml:1:1: no set has the number 1, the practice set's"
        );
    }
}
