//! The query of a link that opens the page worked out.

use crate::form::{Find, Form};
use crate::solve::Solved;
use alloc::string::String;
use superhet::units::{Kind, display};

/// `dial=1200kHz&if=470kHz&side=above&region=1`, with `oscillator` in place of what was
/// worked out.
pub(crate) fn query(form: &Form, solved: &Solved) -> String {
    let (dial, oscillator) = (
        ("dial", &solved.dial_text),
        ("oscillator", &solved.oscillator_text),
    );
    let intermediate = ("if", &solved.intermediate_text);
    let pairs = match form.find {
        Find::Oscillator => [dial, intermediate],
        Find::Dial => [oscillator, intermediate],
        Find::Intermediate => [dial, oscillator],
    };
    let mut text = String::new();
    for (name, value) in pairs {
        text.push_str(name);
        text.push('=');
        escape(value, &mut text);
        text.push('&');
    }
    text.push_str("side=");
    text.push_str(solved.side.word());
    text.push_str("&region=");
    text.push_str(&display::text(
        Kind::Integer,
        f64::from(form.region.number()),
    ));
    text
}

/// Blanks go, since no reading needs them; all but plain letters is escaped.
fn escape(value: &str, text: &mut String) {
    const DIGITS: &[u8; 16] = b"0123456789ABCDEF";
    for byte in value.bytes().filter(|byte| *byte != b' ') {
        if byte.is_ascii_alphanumeric() || b".-_,".contains(&byte) {
            text.push(char::from(byte));
        } else {
            text.push('%');
            text.push(char::from(DIGITS[usize::from(byte >> 4)]));
            text.push(char::from(DIGITS[usize::from(byte & 15)]));
        }
    }
}
