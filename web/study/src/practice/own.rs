//! The reader's own set, as far as a problem can be asked of it. Pure.
//!
//! The page of the set keeps it (`web/myset/src/kept.rs`); here it is only read, and the core
//! judges its values when a problem is drawn.

use crate::json::Json;
use superhet::problems::family::SET_VALUES;

/// The longest text of a kept set, and of one of its values, in bytes: as the page of the set
/// has it.
const LONGEST: usize = 2_000;
const LONGEST_VALUE: usize = 40;

/// The values of a set, in the order of [`SET_VALUES`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct OwnSet([String; SET_VALUES.len()]);

impl OwnSet {
    /// The set that a browser keeps; none where that is no set.
    pub(super) fn read(text: &str) -> Option<Self> {
        if text.len() > LONGEST {
            return None;
        }
        let json = Json::read(text).ok()?;
        Self::from(|name| Some(json.member(name)?.text()?.to_owned()))
    }

    /// The set that a link names: "if=455 kHz&side=above".
    pub(super) fn from_link(link: &str) -> Option<Self> {
        Self::from(|name| {
            let mut pairs = link.split('&').filter_map(|pair| pair.split_once('='));
            pairs
                .find(|(key, _)| *key == name)
                .map(|it| it.1.to_owned())
        })
    }

    fn from(value: impl Fn(&str) -> Option<String>) -> Option<Self> {
        let mut values = <[String; SET_VALUES.len()]>::default();
        for (place, name) in values.iter_mut().zip(SET_VALUES) {
            *place = value(name).filter(|text| text.len() <= LONGEST_VALUE)?;
        }
        Some(Self(values))
    }

    /// Its values by their names.
    pub(super) fn values(&self) -> [(&'static str, &str); SET_VALUES.len()] {
        let [intermediate, side] = &self.0;
        [(SET_VALUES[0], intermediate), (SET_VALUES[1], side)]
    }

    /// What stands behind a problem's code in a link to it on this set.
    pub(super) fn link(&self) -> String {
        let values = self.values();
        values
            .map(|(name, text)| ["&", name, "=", text].concat())
            .concat()
    }

    /// "IF 455 kHz, oscillator above".
    pub(super) fn said(&self) -> String {
        let [intermediate, side] = &self.0;
        ["IF ", intermediate, ", oscillator ", side].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::OwnSet;

    const KEPT: &str = r#"{"version":2,"side":"below","region":1,"if":"465 kHz","aerial-q":"60"}"#;

    #[test]
    fn what_the_browser_keeps_is_read_and_carried_by_a_link() {
        let set = OwnSet::read(KEPT).unwrap();
        assert_eq!(set.values(), [("if", "465 kHz"), ("side", "below")]);
        assert_eq!(set.said(), "IF 465 kHz, oscillator below");
        assert_eq!(set.link(), "&if=465 kHz&side=below");
        assert_eq!(OwnSet::from_link(&set.link()), Some(set));
    }

    #[test]
    fn what_is_no_set_is_none() {
        let long = "9".repeat(41);
        for text in [
            "",
            "[]",
            r#"{"version":2,"if":"465 kHz"}"#,
            r#"{"if":465,"side":"above"}"#,
            &[r#"{"side":"above","if":""#, &long, r#""}"#].concat(),
            &[KEPT, &" ".repeat(2_000)].concat(),
        ] {
            assert_eq!(OwnSet::read(text), None, "{text}");
        }
        for link in ["", "if=455 kHz", "side=above&if", "if=1&other=2"] {
            assert_eq!(OwnSet::from_link(link), None, "{link}");
        }
    }
}
