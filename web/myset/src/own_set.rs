//! What stands in the boxes, and the set that it makes.

use crate::check::{self, FieldFault};
use crate::field::{self, Field, LONGEST_VALUE};
use std::collections::BTreeMap;
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;
use superhet::receiver::{SetProfile, Typed as Value};
use superhet::units::{Frequency, Kind, display, parse};

/// What stands in the boxes and buttons of the page, as text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typed {
    /// The texts of the boxes, by key; what is not there is empty.
    pub boxes: BTreeMap<&'static str, String>,
    /// The unit button pressed beside a box, by key.
    pub units: BTreeMap<&'static str, &'static str>,
    /// The pressed side: `above`, `below`, or nothing.
    pub side: String,
    /// The pressed Region: `1` to `3`, or nothing.
    pub region: String,
}

/// A set whose every value was read and found possible.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnSet {
    /// The intermediate frequency.
    pub intermediate: Frequency,
    /// Where the oscillator runs.
    pub side: Side,
    /// Where the set stands.
    pub region: Region,
    /// The texts with their units, by key, `if` with them.
    texts: BTreeMap<&'static str, String>,
}

/// How one box was read.
pub(crate) enum Read {
    /// It is empty: not known.
    Open,
    /// A text with its unit, and the value in the SI unit (0 for words).
    Value(String, f64),
    /// Why it cannot be read.
    Fault(String),
}

impl Typed {
    /// The text of a box, without blanks around it.
    #[must_use]
    pub fn text(&self, key: &str) -> &str {
        self.boxes.get(key).map_or("", |text| text.trim())
    }

    /// Reads a box.
    pub(crate) fn read(&self, field: &Field) -> Read {
        let text = self.text(field.key);
        if text.is_empty() {
            return Read::Open;
        }
        if text.len() > LONGEST_VALUE {
            let says = format!("this has at most {LONGEST_VALUE} letters (got more)");
            return Read::Fault(says);
        }
        let Some(kind) = field.kind else {
            let plain: String = text.chars().filter(|sign| !sign.is_control()).collect();
            return Read::Value(plain, 0.0);
        };
        let beside = self.units.get(field.key).copied();
        let beside = beside.or_else(|| field.units.first().copied());
        match parse::reading(kind, text, beside) {
            Err(error) => Read::Fault(error.sentence()),
            Ok(reading) if reading.from_wavelength => Read::Fault(format!(
                "this is a frequency in kHz or MHz (got \"{text}\")"
            )),
            Ok(reading) => Read::Value(with_unit(kind, text, beside, reading.value), reading.value),
        }
    }

    /// How a box was read, in words; nothing where it is refused.
    #[must_use]
    pub fn reading(&self, field: &Field) -> String {
        match (self.read(field), field.kind) {
            (Read::Open, Some(_)) => "not known".to_owned(),
            (Read::Value(_, value), Some(kind)) => {
                format!("read as {}", display::text(kind, value))
            }
            _ => String::new(),
        }
    }

    /// The set, or everything that is wrong with it.
    ///
    /// # Errors
    /// Every fault, each beside its field, in the order of the page.
    pub fn set(&self) -> Result<OwnSet, Vec<FieldFault>> {
        let mut texts = BTreeMap::new();
        let mut faults = Vec::new();
        for field in field::all() {
            match self.read(field) {
                Read::Open if field.key == "if" => faults.push(FieldFault::of(
                    "if",
                    "this is what every result needs, such as 470 kHz",
                )),
                Read::Open => {}
                Read::Value(text, _) => drop(texts.insert(field.key, text)),
                Read::Fault(says) => faults.push(FieldFault::of(field.key, &says)),
            }
        }
        let side = Side::from_word(&self.side);
        if side.is_none() {
            faults.push(FieldFault::of("side", "choose above or below"));
        }
        let region = self.region.parse().ok().and_then(Region::from_number);
        if region.is_none() {
            faults.push(FieldFault::of("region", "choose 1, 2 or 3"));
        }
        let set = texts.get("if").and_then(|text| {
            let hertz = parse::value(Kind::Frequency, text, None).ok()?;
            Some(OwnSet {
                intermediate: Frequency::hz(hertz),
                side: side?,
                region: region?,
                texts: texts.clone(),
            })
        });
        faults.extend(check::faults(&texts, &self.side, &self.region, &faults));
        match set {
            Some(set) if faults.is_empty() => Ok(set),
            _ => Err(faults),
        }
    }
}

/// What was typed with its unit; a text that would be too long with it gives way to the
/// value as it is shown.
fn with_unit(kind: Kind, text: &str, beside: Option<&str>, value: f64) -> String {
    let alone = parse::value(kind, text, None).is_ok_and(|read| read == value);
    let whole = match beside {
        Some(unit) if !alone => format!("{text} {unit}"),
        _ => text.to_owned(),
    };
    if whole.len() <= LONGEST_VALUE {
        whole
    } else {
        display::text(kind, value)
    }
}

impl Typed {
    /// What the boxes would show for a set of the core's: its medium wave and long wave, its
    /// first IF transformer, and its gang.
    #[must_use]
    pub fn of_profile(profile: &SetProfile) -> Self {
        let mut typed = Self {
            side: plain(&profile.side),
            region: match plain(&profile.region) {
                left_out if left_out.is_empty() => "1".to_owned(),
                region => region,
            },
            ..Self::default()
        };
        let mut put = |key, value: &Value| drop(typed.boxes.insert(key, plain(value)));
        put("if", &profile.intermediate);
        put("name", &Value::from(profile.name.as_str()));
        for (id, low, high) in [
            ("medium-wave", "mw-low", "mw-high"),
            ("long-wave", "lw-low", "lw-high"),
        ] {
            if let Some(band) = profile.bands.iter().find(|band| band.id == id) {
                put(low, &band.low);
                put(high, &band.high);
            }
        }
        if let Some(band) = profile.bands.iter().find(|band| band.id == "medium-wave") {
            put("aerial-q", &band.aerial_q);
            put("aerial-circuits", &band.aerial_circuits);
        }
        if let Some(first) = profile.if_transformers.first() {
            put("if-q", &first.primary.q);
            put("coupling", &first.coupling);
            let count = profile.if_transformers.len() as f64;
            put("transformers", &Value::from(count));
        }
        if let Some(gang) = &profile.gang {
            put("gang-min", &gang.minimum);
            put("gang-max", &gang.maximum);
        }
        typed
    }
}

/// A value of a profile as it was written; nothing where it was left out.
fn plain(value: &Value) -> String {
    match value {
        Value::Absent => String::new(),
        Value::Text(text) => text.clone(),
        Value::Number(number) => number.to_string(),
    }
}

impl OwnSet {
    /// The text of a value, where it is known: `80`, `455 kHz`.
    #[must_use]
    pub fn text(&self, key: &str) -> Option<&str> {
        self.texts.get(key).map(String::as_str)
    }

    /// A value in the SI unit of its kind, where it is known.
    #[must_use]
    pub fn value(&self, key: &str) -> Option<f64> {
        let kind = field::find(key)?.kind?;
        parse::value(kind, self.text(key)?, None).ok()
    }

    /// A frequency, where it is known.
    #[must_use]
    pub fn frequency(&self, key: &str) -> Option<Frequency> {
        self.value(key).map(Frequency::hz)
    }

    /// Every known value: (key, text), in the order of the page.
    pub fn texts(&self) -> impl Iterator<Item = (&'static str, &str)> {
        field::all().filter_map(|field| Some((field.key, self.text(field.key)?)))
    }

    /// "IF 455 kHz, oscillator above, Region 1".
    #[must_use]
    pub fn told(&self) -> String {
        format!(
            "IF {}, oscillator {}, {}",
            crate::words::frequency(self.intermediate),
            self.side.word(),
            self.region.name()
        )
    }

    /// The set as the boxes of the page show it.
    #[must_use]
    pub fn typed(&self) -> Typed {
        Typed {
            boxes: self
                .texts()
                .map(|(key, text)| (key, text.to_owned()))
                .collect(),
            units: BTreeMap::new(),
            side: self.side.word().to_owned(),
            region: self.region.number().to_string(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Typed;
    use crate::field;

    pub(super) fn typed(pairs: &[(&'static str, &str)]) -> Typed {
        Typed {
            boxes: pairs
                .iter()
                .map(|(key, text)| (*key, (*text).to_owned()))
                .collect(),
            side: "above".to_owned(),
            region: "1".to_owned(),
            ..Typed::default()
        }
    }

    #[test]
    fn a_box_is_read_with_its_button_and_a_typed_unit_wins() {
        let mut boxes = typed(&[("if", "455"), ("mw-low", "0.52 MHz"), ("coil", "0.175")]);
        boxes.units.insert("coil", "mH");
        let set = boxes.set().unwrap();
        assert_eq!(set.text("if"), Some("455 kHz"));
        assert_eq!(set.text("mw-low"), Some("0.52 MHz"));
        assert_eq!(set.text("coil"), Some("0.175 mH"));
        assert_eq!(set.value("coil"), Some(175e-6));
        assert_eq!(set.told(), "IF 455 kHz, oscillator above, Region 1");
        assert_eq!(set.typed().set().unwrap(), set);
        let read = |key| boxes.reading(field::find(key).unwrap());
        assert_eq!(read("mw-low"), "read as 520 kHz");
        assert_eq!(read("mw-high"), "not known");
    }

    #[test]
    fn everything_wrong_is_told_beside_its_box() {
        let mut boxes = typed(&[
            ("if", "9 MHz"),
            ("mw-low", "abc"),
            ("aerial-q", "0"),
            ("lw-low", "200 m"),
            ("name", "A set whose name goes on and on and on and on"),
        ]);
        boxes.side.clear();
        let said: Vec<String> = boxes
            .set()
            .unwrap_err()
            .iter()
            .map(|fault| format!("{}: {}", fault.key, fault.says))
            .collect();
        assert_eq!(
            said,
            [
                "name: this has at most 40 letters (got more)",
                "mw-low: a frequency starts with a number, such as 1200 kHz (got \"abc\")",
                "lw-low: this is a frequency in kHz or MHz (got \"200 m\")",
                "side: choose above or below",
                "if: this is from 100 kHz to 2000 kHz (got 9 MHz)",
                "aerial-q: this is from 1 to 1000 (got 0)",
            ]
        );
    }

    #[test]
    fn a_set_needs_its_if_its_side_and_its_region_and_nothing_else() {
        let mut boxes = typed(&[("if", "125")]);
        assert!(boxes.set().is_ok());
        boxes.region.clear();
        assert_eq!(boxes.set().unwrap_err()[0].key, "region");
        let keys: Vec<&str> = Typed::default()
            .set()
            .unwrap_err()
            .iter()
            .map(|fault| fault.key)
            .collect();
        assert_eq!(keys, ["if", "side", "region"]);
    }
}
