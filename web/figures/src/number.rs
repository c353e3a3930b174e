//! A value as it stands in a page for programs to read.

/// The shortest decimal text that reads back as exactly `value`: what stands in
/// `data-value`.
#[must_use]
pub fn value(value: f64) -> String {
    value.to_string()
}
