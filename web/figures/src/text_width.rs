//! How wide a label may be, for drawings that keep their labels apart.

/// An upper estimate of the width, in pixels, of `text` set at `size` pixels.
///
/// The widest of the sans-serif faces that the site's style names is taken (the widths
/// are those of a wide screen face, DejaVu Sans Bold, rounded up), since the reader's
/// device decides which face is used.
pub(crate) fn text_width(text: &str, size: f64) -> f64 {
    let ems: f64 = text.chars().map(em).sum();
    ems * size
}

/// The width of a character in ems.
fn em(character: char) -> f64 {
    match character {
        ' ' | ',' | '.' | 'i' | 'j' | 'l' | ':' => 0.40,
        'f' | 'r' | 't' | '-' => 0.50,
        'm' | 'w' | 'M' | 'W' => 1.05,
        'A'..='Z' => 0.85,
        _ => 0.72,
    }
}
