//! How wide a label may be, for drawings that keep their labels apart.

/// How heavy a text is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Weight {
    /// As running text.
    Regular,
    /// As the values in labels.
    Bold,
}

/// An upper estimate of the width, in pixels, of `text` set at `size` pixels.
///
/// The reader's device decides which face is used; the widths are those of a wide screen
/// face (DejaVu Sans, regular and bold), rounded up.
pub(crate) fn text_width(text: &str, size: f64, weight: Weight) -> f64 {
    let ems: f64 = text.chars().map(em).sum();
    let wider = match weight {
        Weight::Regular => 1.0,
        Weight::Bold => 1.12,
    };
    ems * size * wider
}

/// The width of a character in ems, regular.
fn em(character: char) -> f64 {
    match character {
        ' ' | ',' | '.' | 'i' | 'j' | 'l' | ':' => 0.34,
        'f' | 'r' | 't' | '-' => 0.42,
        'm' | 'w' | 'M' | 'W' => 1.0,
        'A'..='Z' => 0.77,
        _ => 0.64,
    }
}
