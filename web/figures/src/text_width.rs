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
    let em = match weight {
        Weight::Regular => regular_em,
        Weight::Bold => bold_em,
    };
    text.chars().map(em).sum::<f64>() * size
}

/// The width of a character in ems, regular.
fn regular_em(character: char) -> f64 {
    match character {
        ' ' | ',' | '.' | 'i' | 'j' | 'l' | ':' => 0.34,
        'f' | 'r' | 't' | '-' => 0.42,
        'm' | 'w' | 'M' | 'W' => 1.0,
        'A'..='Z' => 0.77,
        _ => 0.64,
    }
}

/// The width of a character in ems, bold.
fn bold_em(character: char) -> f64 {
    match character {
        ' ' | 'i' | 'j' | 'l' => 0.35,
        ',' | '.' | ':' | '-' => 0.42,
        'f' | 'r' | 't' => 0.50,
        'm' | 'w' | 'M' | 'W' => 1.11,
        'A'..='Z' => 0.84,
        _ => 0.70,
    }
}
