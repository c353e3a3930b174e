//! Taking an expression apart: `name?key=value&key=value` with percent escapes.

use alloc::string::String;
use alloc::vec::Vec;

/// Bytes of an expression; what is longer is refused unread.
pub const LONGEST: usize = 4000;

/// The name and the keys with their values, decoded, in the order they were typed.
///
/// A piece without `=` has an empty value; an expression without `?` has no pieces.
///
/// ```
/// use superhet::catalogue::split;
/// let (name, pairs) = split("total-power?carrier-power=50%20kW&depth=80%");
/// assert_eq!(name, "total-power");
/// assert_eq!(pairs[0], ("carrier-power".into(), "50 kW".into()));
/// assert_eq!(pairs[1], ("depth".into(), "80%".into()));
/// ```
#[must_use]
pub fn split(expression: &str) -> (String, Vec<(String, String)>) {
    let Some((name, rest)) = expression.trim().split_once('?') else {
        return (trimmed(expression), Vec::new());
    };
    if rest.is_empty() {
        return (trimmed(name), Vec::new());
    }
    let pairs = rest.split('&').map(|piece| {
        let (key, value) = piece.split_once('=').unwrap_or((piece, ""));
        (trimmed(key), trimmed(value))
    });
    (trimmed(name), pairs.collect())
}

fn trimmed(text: &str) -> String {
    String::from(decoded(text).trim())
}

/// The text with its percent escapes decoded; bytes that are no UTF-8 become the
/// replacement character, which nothing here accepts.
fn decoded(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut plain = Vec::with_capacity(bytes.len());
    let mut place = 0;
    while let Some(&byte) = bytes.get(place) {
        match escape(&bytes[place..]) {
            Some(escaped) => {
                plain.push(escaped);
                place += 3;
            }
            None => {
                plain.push(byte);
                place += 1;
            }
        }
    }
    String::from_utf8_lossy(&plain).into_owned()
}

/// The byte that an escape at the start stands for.
fn escape(bytes: &[u8]) -> Option<u8> {
    let &[b'%', high, low, ..] = bytes else {
        return None;
    };
    let digit = |byte: u8| (byte as char).to_digit(16);
    Some((digit(high)? * 16 + digit(low)?) as u8)
}
