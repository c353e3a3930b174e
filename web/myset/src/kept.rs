//! The set as a browser keeps it, and as a file carries it.
//!
//! Version 2: one JSON object of short texts, `version`, `region` (a number), `side`, and the
//! fields of [`crate::field`] by their keys; `dial`, where the look-up stood last, may stand
//! with them and is handed through. Version 1 was the look-up's own: `dial`, `if`, `side`
//! and `region`; it is a set of version 2 that says no more. What is kept, in a file or in a
//! browser, may come from anybody: it is bounded before it is read, and every value is
//! checked again.

use crate::field::{self, LONGEST_VALUE};
use crate::{OwnSet, Typed};
use serde_json::{Map, Value};

/// The version that is written.
pub const VERSION: u32 = 2;

/// The longest text that is read, in bytes.
pub const LONGEST: usize = 2_000;

/// What was kept: the boxes, not checked yet, and where the look-up's dial stood.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// What the boxes of the page show for it.
    pub typed: Typed,
    /// The look-up's dial, as it keeps it.
    pub dial: Option<String>,
}

/// The text that is kept and saved.
#[must_use]
pub fn write(set: &OwnSet, dial: Option<&str>) -> String {
    let mut members = Map::new();
    members.insert("version".to_owned(), VERSION.into());
    if let Some(dial) = dial.filter(|dial| dial.len() <= LONGEST_VALUE) {
        members.insert("dial".to_owned(), dial.into());
    }
    members.insert("side".to_owned(), set.side.word().into());
    members.insert("region".to_owned(), set.region.number().into());
    for (key, text) in set.texts() {
        members.insert(key.to_owned(), text.into());
    }
    Value::Object(members).to_string()
}

/// Reads a text that was kept or saved.
///
/// # Errors
/// Why it is none, in a phrase that follows "because".
pub fn read(text: &str) -> Result<Kept, String> {
    if text.len() > LONGEST {
        return Err(format!("it is longer than {LONGEST} letters"));
    }
    let value: Value = serde_json::from_str(text.trim())
        .map_err(|_| "it is cut, garbled, or no file of this page".to_owned())?;
    let members = value
        .as_object()
        .ok_or("it is no file of this page".to_owned())?;
    let version = members.get("version").and_then(Value::as_u64);
    if version != Some(1) && version != Some(VERSION.into()) {
        return Err("it is of another version, or something else altogether".to_owned());
    }
    let mut kept = Kept {
        typed: Typed::default(),
        dial: None,
    };
    for (key, value) in members {
        member(&mut kept, key, value)?;
    }
    Ok(kept)
}

fn member(kept: &mut Kept, key: &str, value: &Value) -> Result<(), String> {
    match (key, value) {
        ("version", _) => {}
        ("region", Value::Number(number)) => kept.typed.region = number.to_string(),
        (_, Value::String(text)) if text.len() > LONGEST_VALUE => {
            return Err(format!(
                "a value in it has more than {LONGEST_VALUE} letters"
            ));
        }
        ("dial", Value::String(text)) => kept.dial = Some(text.clone()),
        ("side", Value::String(text)) => kept.typed.side = text.clone(),
        (_, Value::String(text)) => match field::find(key) {
            Some(field) => drop(kept.typed.boxes.insert(field.key, text.clone())),
            None => return Err("it holds a value that no set here has".to_owned()),
        },
        _ => return Err("a value in it is neither a text nor a Region".to_owned()),
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{read, write};
    use proptest::prelude::{any, proptest};

    const OLD: &str = r#"{"version":1,"dial":"909 kHz","if":"465 kHz","side":"below","region":2}"#;
    const WHOLE: &str = r#"{"version":2,"name":"Kitchen","if":"455 kHz","side":"above","region":1,"aerial-q":"80"}"#;

    #[test]
    fn a_set_of_the_look_up_s_first_version_is_read() {
        let kept = read(OLD).unwrap();
        assert_eq!(kept.dial.as_deref(), Some("909 kHz"));
        let set = kept.typed.set().unwrap();
        assert_eq!(set.told(), "IF 465 kHz, oscillator below, Region 2");
        let again = read(&write(&set, kept.dial.as_deref())).unwrap();
        assert_eq!(again.typed.set().unwrap(), set);
        assert_eq!(again.dial, kept.dial);
    }

    #[test]
    fn what_is_written_is_read_again() {
        let set = read(WHOLE).unwrap().typed.set().unwrap();
        let text = write(&set, None);
        assert!(text.contains("\"version\":2") && !text.contains("dial"));
        assert_eq!(read(&text).unwrap().typed.set().unwrap(), set);
    }

    #[test]
    fn what_is_none_says_why() {
        let long = format!("{{\"version\":2,\"name\":\"{}\"}}", "a".repeat(41));
        let longer = " ".repeat(2_001);
        for (text, why) in [
            ("", "garbled"),
            ("[]", "no file"),
            (r#"{"version":3}"#, "another version"),
            (r#"{"version":2,"if":5}"#, "neither a text"),
            (r#"{"version":2,"colour":"red"}"#, "no set here has"),
            (long.as_str(), "more than 40"),
            (longer.as_str(), "longer than 2000"),
        ] {
            let said = read(text).unwrap_err();
            assert!(said.contains(why), "{text:.40}: {said}");
        }
    }

    proptest! {
        #[test]
        fn nothing_that_is_kept_makes_it_panic(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            if let Ok(kept) = read(&String::from_utf8_lossy(&bytes)) {
                let _ = kept.typed.set();
            }
        }

        #[test]
        fn no_spoilt_set_makes_it_panic(at in 0_usize..120, letter in any::<char>()) {
            let mut text: Vec<char> = WHOLE.chars().collect();
            let place = at % text.len();
            text[place] = letter;
            if let Ok(kept) = read(&text.into_iter().collect::<String>()) {
                let _ = kept.typed.set();
            }
        }

        #[test]
        fn no_value_makes_it_panic(value in "\\PC{0,40}", key in 0_usize..16) {
            let key = crate::field::all().nth(key).map_or("if", |field| field.key);
            let value = serde_json::Value::from(value);
            let text = format!("{{\"version\":2,\"if\":\"470 kHz\",\"side\":\"above\",\"region\":1,\"{key}\":{value}}}");
            if let Ok(kept) = read(&text)
                && let Ok(set) = kept.typed.set()
            {
                let _ = crate::report::report(&set);
            }
        }
    }
}
