//! A value of a profile as a person wrote it: text with its unit, or a plain number.

use alloc::borrow::ToOwned;
use alloc::string::String;
use core::fmt;

use serde::de::{self, Deserializer, Visitor};
use serde::{Deserialize, Serialize, Serializer};

/// A value as it was written, not read yet.
///
/// A profile keeps what people wrote, so that it is shown back as they wrote it and every
/// slip in it can be reported at once.
///
/// ```
/// use superhet::receiver::Typed;
/// assert_eq!(Typed::from("470 kHz"), Typed::Text("470 kHz".into()));
/// assert!(Typed::default().is_absent());
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Typed {
    /// The key was left out.
    #[default]
    Absent,
    /// A text, such as `"470 kHz"`.
    Text(String),
    /// A number without quotation marks, for what has no unit.
    Number(f64),
}

impl Typed {
    /// Whether the key was left out.
    #[must_use]
    pub const fn is_absent(&self) -> bool {
        matches!(self, Self::Absent)
    }
}

impl From<&str> for Typed {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<String> for Typed {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<f64> for Typed {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl Serialize for Typed {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Absent => serializer.serialize_none(),
            Self::Text(text) => serializer.serialize_str(text),
            Self::Number(number) => serializer.serialize_f64(*number),
        }
    }
}

impl<'de> Deserialize<'de> for Typed {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(TypedVisitor)
    }
}

struct TypedVisitor;

impl Visitor<'_> for TypedVisitor {
    type Value = Typed;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("a value with its unit in quotation marks, such as \"470 kHz\", or a number")
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<Typed, E> {
        Ok(Typed::from(text))
    }

    fn visit_string<E: de::Error>(self, text: String) -> Result<Typed, E> {
        Ok(Typed::Text(text))
    }

    fn visit_f64<E: de::Error>(self, number: f64) -> Result<Typed, E> {
        Ok(Typed::Number(number))
    }

    fn visit_i64<E: de::Error>(self, number: i64) -> Result<Typed, E> {
        Ok(Typed::Number(number as f64))
    }

    fn visit_u64<E: de::Error>(self, number: u64) -> Result<Typed, E> {
        Ok(Typed::Number(number as f64))
    }

    fn visit_unit<E: de::Error>(self) -> Result<Typed, E> {
        Ok(Typed::Absent)
    }

    fn visit_none<E: de::Error>(self) -> Result<Typed, E> {
        Ok(Typed::Absent)
    }
}
