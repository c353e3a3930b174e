//! What the core says of a set: its own profile, filled with what was typed.
//!
//! A value that is not known is left as [`SetProfile::plain`] has it; what is wrong only
//! because of such a value is told beside the value that was typed.

use std::collections::BTreeMap;
use superhet::catalogue::evaluate_with;
use superhet::receiver::{Fault, GangProfile, IfTransformerProfile, Place, SetProfile};
use superhet::units::{Kind, parse};

/// What is wrong with one value, in a sentence that names rule and value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FieldFault {
    /// The value's key, or `side` or `region`.
    pub key: &'static str,
    /// What is wrong.
    pub says: String,
}

impl FieldFault {
    pub(crate) fn of(key: &'static str, says: &str) -> Self {
        Self {
            key,
            says: says.to_owned(),
        }
    }
}

type Texts = BTreeMap<&'static str, String>;

/// The most IF transformers that a set has.
const MOST_TRANSFORMERS: f64 = 8.0;

/// Everything that the core finds wrong, beyond what was found already.
pub(crate) fn faults(
    texts: &Texts,
    side: &str,
    region: &str,
    known: &[FieldFault],
) -> Vec<FieldFault> {
    let mut found: Vec<FieldFault> = Vec::new();
    let mut add = |fault: FieldFault| {
        let again = |other: &FieldFault| other.key == fault.key;
        if !known.iter().any(again) && !found.iter().any(again) {
            found.push(fault);
        }
    };
    for fault in profile(texts, side, region).faults() {
        add(FieldFault::of(beside(&fault, texts), &fault.says));
    }
    transformers(texts).into_iter().for_each(&mut add);
    tracking(texts, side).into_iter().for_each(&mut add);
    found
}

/// The core's profile of the set.
fn profile(texts: &Texts, side: &str, region: &str) -> SetProfile {
    let text = |key: &str| texts.get(key).map(|text| text.as_str().into());
    let mut profile = SetProfile::plain();
    let put = |place: &mut _, key: &str| {
        if let Some(typed) = text(key) {
            *place = typed;
        }
    };
    put(&mut profile.intermediate, "if");
    if !side.is_empty() {
        profile.side = side.into();
    }
    if !region.is_empty() {
        profile.region = region.into();
    }
    let mut long_wave = profile.bands[0].clone();
    for (band, low, high) in [
        (&mut profile.bands[0], "mw-low", "mw-high"),
        (&mut long_wave, "lw-low", "lw-high"),
    ] {
        put(&mut band.low, low);
        put(&mut band.high, high);
        put(&mut band.aerial_q, "aerial-q");
        put(&mut band.aerial_circuits, "aerial-circuits");
    }
    if texts.contains_key("lw-low") || texts.contains_key("lw-high") {
        long_wave.id = "long-wave".to_owned();
        if !texts.contains_key("lw-low") {
            long_wave.low = "150 kHz".into();
        }
        if !texts.contains_key("lw-high") {
            long_wave.high = "285 kHz".into();
        }
        profile.bands.push(long_wave);
    }
    for IfTransformerProfile {
        coupling,
        primary,
        secondary,
    } in &mut profile.if_transformers
    {
        put(coupling, "coupling");
        put(&mut primary.q, "if-q");
        put(&mut secondary.q, "if-q");
    }
    if texts.contains_key("gang-min") || texts.contains_key("gang-max") {
        let mut gang = GangProfile {
            minimum: "12 pF".into(),
            maximum: "500 pF".into(),
            shaped: None,
        };
        put(&mut gang.minimum, "gang-min");
        put(&mut gang.maximum, "gang-max");
        profile.gang = Some(gang);
    }
    profile
}

/// Where a fault of the profile is told: beside a value that was typed, or beside the side,
/// which every set has.
fn beside(fault: &Fault, texts: &Texts) -> &'static str {
    let key = key_of(fault, texts);
    let known = |key: &&str| ["if", "side", "region"].contains(key) || texts.contains_key(key);
    let others = [key, "gang-max", "gang-min", "side"];
    others.into_iter().find(known).unwrap_or("side")
}

/// The field that a fault of the profile is about; of two that a rule compares, the one that
/// was typed.
fn key_of(fault: &Fault, texts: &Texts) -> &'static str {
    let keys: Vec<&'static str> = fault
        .place
        .iter()
        .filter_map(|step| match step {
            Place::Key(key) => Some(*key),
            Place::Entry(_) => None,
        })
        .collect();
    let second_band = fault.place.contains(&Place::Entry(1));
    let typed = |one: &'static str, other: &'static str| {
        if texts.contains_key(one) { one } else { other }
    };
    let step = |key: Option<&&'static str>| key.copied().unwrap_or("if");
    match (step(keys.first()), step(keys.last())) {
        ("side", _) => "side",
        ("region", _) => "region",
        ("gang", "minimum") => typed("gang-min", "gang-max"),
        ("gang", _) => typed("gang-max", "gang-min"),
        ("band", "aerial-q") => "aerial-q",
        ("band", "aerial-circuits") => "aerial-circuits",
        ("band", "low") if second_band => typed("lw-low", "lw-high"),
        ("band", "low") => typed("mw-low", "mw-high"),
        ("band", _) if second_band => typed("lw-high", "lw-low"),
        ("band", _) => typed("mw-high", "mw-low"),
        ("if-transformer", "coupling") => "coupling",
        ("if-transformer", _) => typed("if-q", "coupling"),
        _ => "if",
    }
}

fn transformers(texts: &Texts) -> Option<FieldFault> {
    let text = texts.get("transformers")?;
    let number = parse::value(Kind::Integer, text, None).ok()?;
    let right = (1.0..=MOST_TRANSFORMERS).contains(&number);
    (!right).then(|| {
        let says = format!("this is from 1 to {MOST_TRANSFORMERS} (got {number})");
        FieldFault::of("transformers", &says)
    })
}

/// What the catalogue says of the three settings and the coil, where they are there; that an
/// oscillator below has no padder is no fault of a value.
fn tracking(texts: &Texts, side: &str) -> Option<FieldFault> {
    let text = |key: &str| texts.get(key).map(String::as_str);
    let coil = text("coil").unwrap_or("175 µH");
    let pairs = [
        ("f1", text("f1").or(text("coil").map(|_| "600 kHz"))?),
        ("f2", text("f2").or(text("coil").map(|_| "950 kHz"))?),
        ("f3", text("f3").or(text("coil").map(|_| "1500 kHz"))?),
        ("if", text("if")?),
        ("l-signal", coil),
        ("side", side),
        ("arrangement", "across-coil"),
    ];
    let refusal = evaluate_with("padder", &pairs).err()?;
    let key = match refusal.parameter() {
        Some("f2") => "f2",
        Some("f3") => "f3",
        Some("l-signal") => "coil",
        Some("f1") => "f1",
        _ => return None,
    };
    let typed = texts.contains_key(key);
    typed.then(|| FieldFault::of(key, refusal.sentence()))
}

#[cfg(test)]
mod tests {
    use super::faults;
    use std::collections::BTreeMap;

    fn told(pairs: &[(&'static str, &str)]) -> Vec<String> {
        let mut texts: BTreeMap<&'static str, String> = pairs
            .iter()
            .map(|(key, text)| (*key, (*text).to_owned()))
            .collect();
        texts.entry("if").or_insert_with(|| "470 kHz".to_owned());
        faults(&texts, "above", "1", &[])
            .into_iter()
            .map(|fault| format!("{}: {}", fault.key, fault.says))
            .collect()
    }

    #[test]
    fn a_plain_set_has_no_fault() {
        assert_eq!(told(&[]), [""; 0]);
        assert_eq!(
            told(&[("lw-high", "300 kHz"), ("gang-min", "9 pF")]),
            [""; 0]
        );
    }

    #[test]
    fn rules_between_values_are_told_beside_what_was_typed() {
        assert_eq!(
            told(&[("mw-low", "1700 kHz")]),
            ["mw-low: this is above the lowest mark, 1700 kHz (got 1605 kHz)"]
        );
        let said = told(&[("gang-min", "500 pF"), ("gang-max", "12 pF")]);
        assert!(said.len() == 1 && said[0].contains("(got"), "{said:?}");
        assert_eq!(
            told(&[("transformers", "9")]),
            ["transformers: this is from 1 to 8 (got 9)"]
        );
    }

    #[test]
    fn settings_and_coil_are_what_the_catalogue_takes() {
        let said = told(&[("f1", "600 kHz"), ("f2", "0 kHz"), ("f3", "1500 kHz")]);
        assert!(said.len() == 1 && said[0].starts_with("f2: "), "{said:?}");
        let said = told(&[("coil", "-5 µH")]);
        assert!(said.len() == 1 && said[0].starts_with("coil: "), "{said:?}");
        let settings = [("f1", "600 kHz"), ("f2", "950 kHz"), ("f3", "1500 kHz")];
        assert_eq!(told(&settings), [""; 0]);
    }
}
