//! What a page shows, before it is markup: headings, sentences and tables.

/// A value that was worked out, as the page carries it.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The catalogue's name.
    pub quantity: &'static str,
    /// In the SI unit.
    pub value: f64,
    /// What it was worked out by, as `cargo site calc` takes it.
    pub expression: String,
}

/// A stretch of words, or a value.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// As it is read.
    pub text: String,
    /// Where it was worked out.
    pub found: Option<Found>,
}

/// A part of a page.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// The head of a part.
    Heading(String),
    /// A sentence or more.
    Says(Vec<Piece>),
    /// What a result would need that the set does not say.
    Needs(String),
    /// A table.
    Table(Table),
}

/// A table. The first cell of a row heads it.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// What it is about.
    pub caption: String,
    /// The heads of its columns.
    pub heads: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<Piece>>,
}

impl Piece {
    /// Words.
    #[must_use]
    pub fn words(text: impl Into<String>) -> Self {
        Self {
            text: text.into(),
            found: None,
        }
    }
}

impl Block {
    /// A sentence without values.
    #[must_use]
    pub fn says(text: impl Into<String>) -> Self {
        Self::Says(vec![Piece::words(text)])
    }
}
