//! JSON as this program's own files use it: text, whole numbers, lists and objects.
//!
//! In scope: what the notebook, a carried place, the course and a problem family hold.
//! Left out: fractions and exponents, which none of them has and whose tables would
//! weigh more than the rest of the program. What is read is bounded: nesting to
//! [`DEEPEST`], the length by whoever reads.

use std::fmt;

/// The deepest nesting that is read.
const DEEPEST: usize = 16;

/// A JSON value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Json {
    /// `null`.
    Null,
    /// `true` or `false`.
    Truth(bool),
    /// A whole number from 0 up.
    Number(u32),
    /// A string.
    Text(String),
    /// An array.
    List(Vec<Json>),
    /// An object, its members in order.
    Object(Vec<(String, Json)>),
}

/// Where and why a text is no JSON of this kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct NotJson {
    /// The byte at which reading stopped.
    pub(crate) at: usize,
}

impl fmt::Display for NotJson {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "unreadable at character {}", self.at)
    }
}

impl Json {
    /// Reads a whole text.
    pub(crate) fn read(text: &str) -> Result<Self, NotJson> {
        let mut reader = Reader {
            bytes: text.as_bytes(),
            at: 0,
        };
        let value = reader.value(0)?;
        reader.blanks();
        if reader.at == reader.bytes.len() {
            Ok(value)
        } else {
            Err(reader.stop())
        }
    }

    /// The member called `name`.
    pub(crate) fn member(&self, name: &str) -> Option<&Json> {
        self.members()
            .iter()
            .find(|(known, _)| known == name)
            .map(|(_, value)| value)
    }

    /// The members of an object; nothing for anything else.
    pub(crate) fn members(&self) -> &[(String, Json)] {
        match self {
            Self::Object(members) => members,
            _ => &[],
        }
    }

    /// The entries of a list; nothing for anything else.
    pub(crate) fn entries(&self) -> &[Json] {
        match self {
            Self::List(entries) => entries,
            _ => &[],
        }
    }

    /// The text, if it is one.
    pub(crate) fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The number, if it is one.
    pub(crate) fn number(&self) -> Option<u32> {
        match self {
            Self::Number(number) => Some(*number),
            _ => None,
        }
    }

    /// The value as JSON text.
    pub(crate) fn write(&self) -> String {
        let mut out = String::new();
        self.write_to(&mut out);
        out
    }

    fn write_to(&self, out: &mut String) {
        match self {
            Self::Null => out.push_str("null"),
            Self::Truth(truth) => out.push_str(if *truth { "true" } else { "false" }),
            Self::Number(number) => out.push_str(&number.to_string()),
            Self::Text(text) => write_text(out, text),
            Self::List(entries) => {
                write_between(out, '[', entries, Json::write_to);
                out.push(']');
            }
            Self::Object(members) => {
                write_between(out, '{', members, |(name, value), out| {
                    write_text(out, name);
                    out.push(':');
                    value.write_to(out);
                });
                out.push('}');
            }
        }
    }
}

fn write_between<T>(out: &mut String, open: char, all: &[T], write: impl Fn(&T, &mut String)) {
    out.push(open);
    for (place, one) in all.iter().enumerate() {
        if place > 0 {
            out.push(',');
        }
        write(one, out);
    }
}

fn write_text(out: &mut String, text: &str) {
    out.push('"');
    for character in text.chars() {
        match character {
            '"' | '\\' => {
                out.push('\\');
                out.push(character);
            }
            // No text of ours holds control characters; as blanks they cannot break
            // the quoting, and what is read back has the same words.
            control if control < ' ' => out.push(' '),
            other => out.push(other),
        }
    }
    out.push('"');
}

struct Reader<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl Reader<'_> {
    fn stop(&self) -> NotJson {
        NotJson { at: self.at }
    }

    fn peek(&self) -> Option<u8> {
        self.bytes.get(self.at).copied()
    }

    fn blanks(&mut self) {
        while matches!(self.peek(), Some(b' ' | b'\n' | b'\r' | b'\t')) {
            self.at += 1;
        }
    }

    /// Steps over one byte if it is this one.
    fn took(&mut self, byte: u8) -> bool {
        let is = self.peek() == Some(byte);
        self.at += usize::from(is);
        is
    }

    fn expect(&mut self, byte: u8) -> Result<(), NotJson> {
        self.blanks();
        if self.took(byte) {
            Ok(())
        } else {
            Err(self.stop())
        }
    }

    fn value(&mut self, depth: usize) -> Result<Json, NotJson> {
        self.blanks();
        if depth > DEEPEST {
            return Err(self.stop());
        }
        match self.peek() {
            Some(b'{') => self.object(depth),
            Some(b'[') => self.list(depth),
            Some(b'"') => self.string().map(Json::Text),
            Some(b'0'..=b'9') => self.number(),
            Some(b't') => self.word("true", Json::Truth(true)),
            Some(b'f') => self.word("false", Json::Truth(false)),
            Some(b'n') => self.word("null", Json::Null),
            _ => Err(self.stop()),
        }
    }

    fn word(&mut self, word: &str, value: Json) -> Result<Json, NotJson> {
        if self.bytes[self.at..].starts_with(word.as_bytes()) {
            self.at += word.len();
            Ok(value)
        } else {
            Err(self.stop())
        }
    }

    fn number(&mut self) -> Result<Json, NotJson> {
        let mut number: u32 = 0;
        while let Some(digit @ b'0'..=b'9') = self.peek() {
            let next = number.checked_mul(10);
            let next = next.and_then(|ten| ten.checked_add(u32::from(digit - b'0')));
            number = next.ok_or(self.stop())?;
            self.at += 1;
        }
        if matches!(self.peek(), Some(b'.' | b'e' | b'E')) {
            return Err(self.stop());
        }
        Ok(Json::Number(number))
    }

    fn list(&mut self, depth: usize) -> Result<Json, NotJson> {
        self.at += 1;
        let mut entries = Vec::new();
        self.blanks();
        if self.took(b']') {
            return Ok(Json::List(entries));
        }
        loop {
            entries.push(self.value(depth + 1)?);
            self.blanks();
            if self.took(b']') {
                return Ok(Json::List(entries));
            }
            self.expect(b',')?;
        }
    }

    fn object(&mut self, depth: usize) -> Result<Json, NotJson> {
        self.at += 1;
        let mut members = Vec::new();
        self.blanks();
        if self.took(b'}') {
            return Ok(Json::Object(members));
        }
        loop {
            self.blanks();
            let name = self.string()?;
            self.expect(b':')?;
            members.push((name, self.value(depth + 1)?));
            self.blanks();
            if self.took(b'}') {
                return Ok(Json::Object(members));
            }
            self.expect(b',')?;
        }
    }

    fn string(&mut self) -> Result<String, NotJson> {
        if !self.took(b'"') {
            return Err(self.stop());
        }
        let mut bytes = Vec::new();
        loop {
            match self.peek() {
                Some(b'"') => break,
                Some(b'\\') => self.escaped(&mut bytes)?,
                Some(byte) if byte >= b' ' => {
                    bytes.push(byte);
                    self.at += 1;
                }
                _ => return Err(self.stop()),
            }
        }
        self.at += 1;
        // The bytes come from a text, cut only at characters below 128.
        String::from_utf8(bytes).map_err(|_| self.stop())
    }

    fn escaped(&mut self, bytes: &mut Vec<u8>) -> Result<(), NotJson> {
        self.at += 1;
        let character = match self.peek() {
            Some(plain @ (b'"' | b'\\' | b'/')) => char::from(plain),
            Some(b'n') => '\n',
            Some(b't') => '\t',
            Some(b'r') => '\r',
            Some(b'b' | b'f') => ' ',
            Some(b'u') => self.code_point()?,
            _ => return Err(self.stop()),
        };
        self.at += 1;
        bytes.extend_from_slice(character.encode_utf8(&mut [0; 4]).as_bytes());
        Ok(())
    }

    /// The character of `uXXXX`; halves of a pair, which no writer of ours makes, become
    /// the replacement character.
    fn code_point(&mut self) -> Result<char, NotJson> {
        let mut code = 0;
        for _ in 0..4 {
            self.at += 1;
            let digit = self.peek().and_then(|byte| char::from(byte).to_digit(16));
            code = code * 16 + digit.ok_or(self.stop())?;
        }
        Ok(char::from_u32(code).unwrap_or(char::REPLACEMENT_CHARACTER))
    }
}

#[cfg(test)]
mod tests {
    use super::Json;
    use proptest::prelude::{any, prop_assert_eq, proptest};

    #[test]
    fn what_a_browser_writes_is_read() {
        let text = "{ \"a\" : [1, 20, \"x\\\"\\u00b5\\n\"], \"b\":{}, \"c\":null,\"d\":true }";
        let json = Json::read(text).unwrap();
        let list = json.member("a").unwrap().entries();
        assert_eq!(list[1].number(), Some(20));
        assert_eq!(list[2].text(), Some("x\"µ\n"));
        assert_eq!(json.member("b").unwrap().members(), []);
        assert_eq!(json.member("c"), Some(&Json::Null));
        assert_eq!(json.member("d"), Some(&Json::Truth(true)));
    }

    #[test]
    fn what_is_no_json_of_ours_is_refused() {
        let deep = "[".repeat(100_000);
        for text in [
            "",
            "{",
            "[1,]",
            "1.5",
            "-1",
            "4294967296",
            "\"",
            "{1:2}",
            "nul",
            "1 2",
            &deep,
        ] {
            assert!(Json::read(text).is_err(), "{text:.40}");
        }
    }

    proptest! {
        #[test]
        fn any_text_comes_back(text in "\\PC*", number in any::<u32>()) {
            let json = Json::Object(vec![(text.clone(), Json::Number(number)), ("t".into(), Json::Text(text))]);
            prop_assert_eq!(Json::read(&json.write()), Ok(json));
        }

        #[test]
        fn no_text_makes_it_panic(text in "\\PC*") {
            let _ = Json::read(&text);
        }

        #[test]
        fn no_near_json_makes_it_panic(text in "[\\[\\]{}\",:\\\\0-9a-fu ]{0,60}") {
            let _ = Json::read(&text);
        }
    }
}
