//! The form as a link or the kept set fills it.

use crate::form::{Find, Form, Unit};
use crate::problem::Field;
use crate::reading::{makes_sense, read};
use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

/// What a link or the kept set says, as text; what it leaves out is `None`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Given<'a> {
    /// The dial setting.
    pub dial: Option<&'a str>,
    /// The oscillator, in place of dial or IF.
    pub oscillator: Option<&'a str>,
    /// The intermediate frequency.
    pub intermediate: Option<&'a str>,
    /// `above` or `below`.
    pub side: Option<&'a str>,
    /// `1`, `2` or `3`.
    pub region: Option<&'a str>,
}

/// The form, and a sentence for what could not be used. Frequencies are put into their
/// boxes as they came: what is wrong with them the page says beside the box.
///
/// What `given` leaves out comes from the reader's own `set`. The side goes with the IF:
/// where the link names an IF of its own it speaks of another set.
#[must_use]
pub fn open(given: Given<'_>, set: Given<'_>) -> (Form, Option<String>) {
    let mut form = own(given, set);
    let mut complaint = String::new();
    form.find = match (given.dial, given.oscillator, given.intermediate) {
        (Some(_), Some(_), None) => Find::Intermediate,
        (None, Some(_), _) => Find::Dial,
        _ => Find::Oscillator,
    };
    if let Some(text) = given.dial {
        (form.dial, form.dial_unit) = box_and_unit(text);
    }
    if let Some(text) = given.oscillator {
        (form.oscillator, form.oscillator_unit) = box_and_unit(text);
    }
    if let Some(text) = given.intermediate {
        form.intermediate = intermediate_box(text);
    }
    if let Some(word) = given.side {
        match Side::from_word(word.trim()) {
            Some(side) => form.side = side,
            None => complain(&mut complaint, "side must be above or below", word),
        }
    }
    if let Some(word) = given.region {
        match region(word.trim()) {
            Some(region) => form.region = region,
            None => complain(&mut complaint, "region must be 1, 2 or 3", word),
        }
    }
    (form, (!complaint.is_empty()).then_some(complaint))
}

/// The example set, with what the reader's own says of IF, side and Region.
fn own(given: Given<'_>, set: Given<'_>) -> Form {
    let mut form = Form::default();
    if let Some(region) = set.region.and_then(region) {
        form.region = region;
    }
    let readable = |text: &&str| read(Field::Intermediate, text, Unit::Kilohertz).is_ok();
    if let (None, Some(text)) = (given.intermediate, set.intermediate.filter(readable)) {
        form.intermediate = intermediate_box(text);
        form.side = set.side.and_then(Side::from_word).unwrap_or(form.side);
    }
    form
}

/// The Region with this number.
pub(crate) fn region(word: &str) -> Option<Region> {
    Region::ALL
        .into_iter()
        .find(|region| word.as_bytes() == [b'0' + region.number()])
}

/// What the IF box shows: "470kHz" as "470", since its unit is kHz; any other as it is.
pub(crate) fn intermediate_box(text: &str) -> String {
    match box_and_unit(text) {
        (number, Unit::Kilohertz) => number,
        _ => text.trim().to_owned(),
    }
}

/// "1200kHz" as the box and the button beside it: ("1200", kHz). Any other unit stays in
/// the box, where it wins over the button; so does one without which the number would be
/// doubted, as in "90 kHz".
pub(crate) fn box_and_unit(text: &str) -> (String, Unit) {
    let text = text.trim();
    let number = text.trim_end_matches(|letter: char| letter.is_ascii_alphabetic());
    match text.get(number.len()..).and_then(Unit::from_symbol) {
        Some(unit) if makes_sense(number, unit) => (number.trim_end().to_owned(), unit),
        _ => (text.to_owned(), Unit::Kilohertz),
    }
}

fn complain(complaint: &mut String, rule: &str, got: &str) {
    if !complaint.is_empty() {
        complaint.push(' ');
    }
    let got: String = got
        .chars()
        .filter(|letter| !letter.is_control())
        .take(40)
        .collect();
    complaint.push_str(&["In the link, ", rule, " (got \"", &got, "\")."].concat());
}

#[cfg(test)]
mod tests {
    use super::{Given, box_and_unit, open};
    use crate::form::{Find, Form, Unit};
    use superhet::quantities::bands::Region;
    use superhet::quantities::conversion::Side;

    #[test]
    fn nothing_given_is_the_example_set() {
        let nothing = Given::default();
        assert_eq!(open(nothing, nothing), (Form::default(), None));
    }

    const OWN: Given<'static> = Given {
        dial: Some("909 kHz"),
        oscillator: None,
        intermediate: Some("465 kHz"),
        side: Some("below"),
        region: Some("3"),
    };

    #[test]
    fn a_link_with_the_dial_alone_is_worked_out_for_the_readers_set() {
        let dial = Given {
            dial: Some("1000 kHz"),
            ..Given::default()
        };
        let (form, _) = open(dial, OWN);
        assert_eq!(
            (form.dial.as_str(), form.intermediate.as_str()),
            ("1000", "465")
        );
        assert_eq!((form.side, form.region), (Side::Below, Region::Three));
        let above = Given {
            side: Some("above"),
            ..dial
        };
        assert_eq!(open(above, OWN).0.side, Side::Above);
        let both = Given {
            oscillator: Some("1465 kHz"),
            ..dial
        };
        assert_eq!(open(both, OWN).0.find, Find::Intermediate);
    }

    #[test]
    fn a_link_with_an_if_of_its_own_speaks_of_another_set() {
        let other = Given {
            dial: Some("1000 kHz"),
            intermediate: Some("455 kHz"),
            ..Given::default()
        };
        let (form, _) = open(other, OWN);
        assert_eq!(
            (form.intermediate.as_str(), form.side),
            ("455", Side::Above)
        );
        assert_eq!(form.region, Region::Three, "the reader has not moved");
    }

    #[test]
    fn a_set_that_cannot_be_read_is_not_used() {
        let damaged = Given {
            intermediate: Some("x"),
            ..OWN
        };
        let (form, _) = open(Given::default(), damaged);
        assert_eq!((form.intermediate.as_str(), form.side), ("", Side::Above));
    }

    #[test]
    fn a_whole_link_fills_the_form() {
        let given = Given {
            dial: Some("0.909MHz"),
            intermediate: Some("465 kHz"),
            side: Some("below"),
            region: Some("2"),
            oscillator: None,
        };
        let (form, complaint) = open(given, Given::default());
        assert_eq!(
            (form.dial.as_str(), form.dial_unit),
            ("0.909", Unit::Megahertz)
        );
        assert_eq!(
            (form.side, form.region, form.find),
            (Side::Below, Region::Two, Find::Oscillator)
        );
        assert_eq!(complaint, None);
    }

    #[test]
    fn what_is_given_says_what_is_sought() {
        let find = |given| open(given, Given::default()).0.find;
        let some = Some("1 MHz");
        assert_eq!(
            find(Given {
                oscillator: some,
                ..Given::default()
            }),
            Find::Dial
        );
        assert_eq!(
            find(Given {
                oscillator: some,
                intermediate: some,
                ..Given::default()
            }),
            Find::Dial
        );
        assert_eq!(
            find(Given {
                oscillator: some,
                dial: some,
                ..Given::default()
            }),
            Find::Intermediate
        );
    }

    #[test]
    fn words_that_are_none_of_the_choices_are_told_and_the_default_stays() {
        let given = Given {
            side: Some("left"),
            region: Some("11"),
            ..Given::default()
        };
        let (form, complaint) = open(given, Given::default());
        assert_eq!((form.side, form.region), (Side::Above, Region::One));
        assert_eq!(
            complaint.as_deref(),
            Some(
                "In the link, side must be above or below (got \"left\"). In the link, region must be 1, 2 or 3 (got \"11\")."
            )
        );
    }

    #[test]
    fn only_the_units_of_the_buttons_leave_the_box() {
        let split = |text| box_and_unit(text);
        assert_eq!(split("250 m"), ("250".into(), Unit::Metres));
        assert_eq!(split("1200 kc/s"), ("1200 kc/s".into(), Unit::Kilohertz));
        assert_eq!(split("1.2e6"), ("1.2e6".into(), Unit::Kilohertz));
        assert_eq!(split("90 kHz"), ("90 kHz".into(), Unit::Kilohertz));
        assert_eq!(split("9,545MHz"), ("9,545".into(), Unit::Megahertz));
        assert_eq!(split("kHz"), ("kHz".into(), Unit::Kilohertz));
        assert_eq!(split(""), ("".into(), Unit::Kilohertz));
    }
}
