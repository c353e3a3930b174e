//! The set in a link: what stands behind the `#`, which no server sees.
//!
//! `#set&if=455kHz&side=above&region=1&aerial-q=80`: the keys of [`crate::field`], values
//! percent-encoded but for letters, digits, points and hyphens.

use crate::field::{self, LONGEST_VALUE};
use crate::{OwnSet, Typed};

/// What a link holds before the values.
pub const MARK: &str = "#set";

/// The longest link that is read, in bytes behind the `#`.
pub const LONGEST: usize = 2_000;

/// What stands behind the address, the `#` included.
#[must_use]
pub fn write(set: &OwnSet) -> String {
    let mut link = MARK.to_owned();
    let number = set.region.number().to_string();
    let own = [("side", set.side.word()), ("region", number.as_str())];
    for (key, text) in set.texts().chain(own) {
        let text = match field::find(key).and_then(|field| field.kind) {
            Some(_) => text.replace(' ', ""),
            None => text.to_owned(),
        };
        link.push('&');
        link.push_str(key);
        link.push('=');
        encode(&text, &mut link);
    }
    link
}

fn encode(text: &str, link: &mut String) {
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || byte == b'.' || byte == b'-' {
            link.push(char::from(byte));
        } else {
            link.push_str(&format!("%{byte:02X}"));
        }
    }
}

/// Reads what stands behind an address; none where it carries no set.
///
/// # Errors
/// Why it carries none that can be read, in a phrase that follows "because".
#[must_use]
pub fn read(hash: &str) -> Option<Result<Typed, String>> {
    let rest = hash.strip_prefix(MARK)?;
    if !rest.is_empty() && !rest.starts_with('&') {
        return None;
    }
    Some(values(rest))
}

fn values(rest: &str) -> Result<Typed, String> {
    if rest.len() > LONGEST {
        return Err(format!("it is longer than {LONGEST} letters"));
    }
    let mut typed = Typed::default();
    for pair in rest.split('&').filter(|pair| !pair.is_empty()) {
        let (key, value) = pair.split_once('=').ok_or("it is cut or garbled")?;
        let value = decode(value).ok_or("it is cut or garbled")?;
        if value.len() > LONGEST_VALUE {
            return Err(format!(
                "a value in it has more than {LONGEST_VALUE} letters"
            ));
        }
        let again = match (key, field::find(key)) {
            ("side", _) => !std::mem::replace(&mut typed.side, value).is_empty(),
            ("region", _) => !std::mem::replace(&mut typed.region, value).is_empty(),
            (_, Some(field)) => typed.boxes.insert(field.key, value).is_some(),
            _ => return Err("it holds a value that no set here has".to_owned()),
        };
        if again {
            return Err("it says one value twice".to_owned());
        }
    }
    Ok(typed)
}

fn decode(text: &str) -> Option<String> {
    let mut bytes = Vec::new();
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte != b'%' {
            bytes.push(byte);
            continue;
        }
        let digit = |byte: Option<u8>| char::from(byte?).to_digit(16);
        let (high, low) = (digit(rest.next())?, digit(rest.next())?);
        bytes.push(u8::try_from(high * 16 + low).ok()?);
    }
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, read, write};
    use crate::Typed;
    use proptest::prelude::proptest;

    fn set() -> Typed {
        let mut typed = Typed {
            side: "above".to_owned(),
            region: "1".to_owned(),
            ..Typed::default()
        };
        typed.boxes.insert("if", "455 kHz".to_owned());
        typed.boxes.insert("name", "Aunt’s & mine".to_owned());
        typed.boxes.insert("coil", "175 µH".to_owned());
        typed
    }

    #[test]
    fn a_set_travels_by_link() {
        let own = set().set().unwrap();
        let link = write(&own);
        assert_eq!(
            link,
            "#set&if=455kHz&name=Aunt%E2%80%99s%20%26%20mine&coil=175%C2%B5H&side=above&region=1"
        );
        let read = read(&link).unwrap().unwrap().set().unwrap();
        assert_eq!(read.text("name"), own.text("name"));
        assert_eq!(read.value("coil"), own.value("coil"));
        assert_eq!(read.told(), own.told());
    }

    #[test]
    fn what_carries_no_set_says_so() {
        assert!(read("#settle").is_none());
        assert!(read("#caution").is_none());
        let long = format!("#set&name={}", "a".repeat(LONGEST));
        for link in ["#set&if", "#set&if=%4", "#set&if=1&if=2", "#set&x=1", &long] {
            assert!(read(link).unwrap().is_err(), "{link:.40}");
        }
        assert!(read("#set").unwrap().unwrap().set().is_err());
    }

    proptest! {
        #[test]
        fn no_link_makes_it_panic(text in "#set(&[a-z0-9-]{0,9}=?[%0-9A-Fa-fµ. ]{0,20}){0,6}") {
            if let Some(Ok(typed)) = read(&text) {
                let _ = typed.set();
            }
        }
    }
}
