//! "Take my place with me": what a reader carries to another browser, as the text of a
//! file or the letters of a link. Pure.
//!
//! `{"version":1,"notebook":{…},"set":{…}}`. It may come from anybody: it is bounded
//! before it is read, the notebook checks itself, and of the set only short texts are
//! taken.

use crate::base64url;
use crate::json::Json;
use crate::notebook::{LONGEST, Notebook};

const VERSION: u32 = 1;
/// The longest text or link that is read, in bytes.
pub(crate) const LONGEST_TEXT: usize = LONGEST + 2_000;
/// The versions of the set that are handed on: the look-up's first, and that of `/my-set/`.
const SET_VERSIONS: core::ops::RangeInclusive<u32> = 1..=2;
/// The most values that a set has.
const MOST_VALUES: usize = 24;
/// The longest text of the set's.
const LONGEST_VALUE: usize = 40;
/// Why something longer is none.
pub(crate) const TOO_LONG: &str = "it is too long to be one";
/// What a link holds before the letters.
pub(crate) const MARK: &str = "#place=";

/// What a reader carries.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Place {
    /// Lessons and tallies.
    pub(crate) notebook: Notebook,
    /// The set that the look-up keeps, as its own text; checked, and not understood here.
    pub(crate) set: Option<String>,
}

/// Why a text is no place, in a phrase.
type Refused = &'static str;

impl Place {
    /// Whether a file of this many bytes, as browsers count them, is worth reading.
    pub(crate) fn may_fill(bytes: f64) -> bool {
        bytes <= LONGEST_TEXT as f64
    }

    /// Reads the text of a file.
    pub(crate) fn from_file(text: &str) -> Result<Self, Refused> {
        if text.len() > LONGEST_TEXT {
            return Err(TOO_LONG);
        }
        let json = Json::read(text.trim()).map_err(|_| "it is cut or garbled")?;
        if json.member("version").and_then(Json::number) != Some(VERSION) {
            return Err("it is of another version, or something else altogether");
        }
        let notebook = match json.member("notebook") {
            None => Notebook::default(),
            Some(notebook) => Notebook::from_json(notebook)?,
        };
        let set = json.member("set").map(set_text);
        Ok(Self {
            notebook,
            set: set.transpose()?,
        })
    }

    /// Reads what stands behind the `#` of a link; none where it carries no place.
    pub(crate) fn from_link(hash: &str) -> Option<Result<Self, Refused>> {
        let letters = hash.strip_prefix(MARK)?;
        if letters.len() > LONGEST_TEXT / 3 * 4 + 4 {
            return Some(Err(TOO_LONG));
        }
        let bytes = base64url::decode(letters).and_then(|bytes| String::from_utf8(bytes).ok());
        Some(match bytes {
            Some(text) => Self::from_file(&text),
            None => Err("it is cut or garbled"),
        })
    }

    /// The text of a file.
    pub(crate) fn to_file(&self) -> String {
        let mut members = vec![
            ("version".to_owned(), Json::Number(VERSION)),
            ("notebook".to_owned(), self.notebook.to_json()),
        ];
        let set = self.set.as_deref().and_then(|text| Json::read(text).ok());
        if let Some(set) = set {
            members.push(("set".to_owned(), set));
        }
        Json::Object(members).write()
    }

    /// What stands behind the `#` of a link, the `#` included.
    pub(crate) fn to_link(&self) -> String {
        [MARK, &base64url::encode(self.to_file().as_bytes())].concat()
    }

    /// What it holds, in words.
    pub(crate) fn told(&self) -> String {
        let set = if self.set.is_some() {
            ", and a set"
        } else {
            ""
        };
        [&self.notebook.told(), set].concat()
    }

    /// Whether there is nothing in it.
    pub(crate) fn is_empty(&self) -> bool {
        self.notebook.is_empty() && self.set.is_none()
    }
}

/// A set as the look-up's own storage text: an object of short texts and small numbers.
fn set_text(json: &Json) -> Result<String, Refused> {
    let fits = |value: &Json| match value {
        Json::Text(text) => text.len() <= LONGEST_VALUE,
        Json::Number(_) => true,
        _ => false,
    };
    let members = json.members();
    let version = json.member("version").and_then(Json::number);
    let known = version.is_some_and(|version| SET_VERSIONS.contains(&version));
    if known && members.len() <= MOST_VALUES && members.iter().all(|(_, value)| fits(value)) {
        Ok(json.write())
    } else {
        Err("its set is none of ours")
    }
}

/// Reads the set as the look-up stored it; none where it is damaged, which the look-up
/// itself will say.
pub(crate) fn stored_set(text: &str) -> Option<String> {
    if text.len() > 2_000 {
        return None;
    }
    set_text(&Json::read(text).ok()?).ok()
}

#[cfg(test)]
mod tests {
    use super::{MARK, Place, stored_set};
    use crate::notebook::Notebook;

    const SET: &str = r#"{"version":1,"dial":"1200 kHz","if":"470 kHz","side":"above","region":1}"#;

    fn example() -> Place {
        let mut notebook = Notebook::default();
        notebook.tick("the-image", "2026-11-25");
        Place {
            notebook,
            set: stored_set(SET),
        }
    }

    #[test]
    fn a_place_travels_by_file_and_by_link() {
        let place = example();
        assert_eq!(place.set.as_deref(), Some(SET));
        assert_eq!(Place::from_file(&place.to_file()), Ok(place.clone()));
        assert_eq!(Place::from_link(&place.to_link()), Some(Ok(place)));
        assert_eq!(
            example().told(),
            "1 lesson ticked, no answer marked, and a set"
        );
        assert_eq!(Place::from_link("#cautions"), None);
    }

    #[test]
    fn what_is_no_place_is_refused() {
        let long = format!("{MARK}{}", "A".repeat(500_000));
        for link in ["#place=", "#place=%%%", "#place=bnVsbA", &long] {
            assert!(Place::from_link(link).unwrap().is_err(), "{link:.40}");
        }
        for text in [
            r#"{"version":2}"#,
            r#"{"version":1,"set":{"version":1,"dial":["<b>"]}}"#,
            r#"{"version":1,"set":{"dial":"1200 kHz"}}"#,
            r#"{"version":1,"notebook":{"version":1,"lessons":{"A B":"2026-11-25"}}}"#,
        ] {
            assert!(Place::from_file(text).is_err(), "{text}");
        }
    }

    #[test]
    fn a_file_that_is_too_long_is_not_read() {
        assert!(Place::may_fill(example().to_file().len() as f64));
        assert!(Place::may_fill(super::LONGEST_TEXT as f64));
        for bytes in [super::LONGEST_TEXT as f64 + 1.0, 4e9, f64::NAN] {
            assert!(!Place::may_fill(bytes), "{bytes}");
        }
    }
}
