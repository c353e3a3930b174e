//! A figure worked out: its drawing, its words, its table, its handles.

use crate::arithmetic::roughly;
use crate::{Control, Node};
use superhet::units::Kind;

/// A figure for one input, as data. Pure: the same input gives the same view, natively
/// and in the page.
#[derive(Clone, Debug, PartialEq)]
pub struct View {
    /// The narrowest width, in CSS pixels, at which the drawing is made to be read; it
    /// stretches from there, its text staying the same size.
    pub width: f64,
    /// The height in CSS pixels, the same at every width.
    pub height: f64,
    /// What the drawing shows, in one phrase: its accessible name.
    pub title: String,
    /// The drawing told in whole sentences.
    pub words: String,
    /// The drawing's data.
    pub table: Table,
    /// The results that the figure shows.
    pub quantities: Vec<Quantity>,
    /// The drawing.
    pub root: Vec<Node>,
    /// What the reader can move.
    pub controls: Vec<Control>,
}

impl View {
    /// The result called `name`.
    #[must_use]
    pub fn quantity(&self, name: &str) -> Option<&Quantity> {
        self.quantities
            .iter()
            .find(|quantity| quantity.name == name)
    }
}

/// A result shown by a figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Quantity {
    /// Its name in the catalogue.
    pub name: &'static str,
    /// What it is a number of.
    pub kind: Kind,
    /// Its value in the SI base unit.
    pub value: f64,
    /// Its value as shown.
    pub text: String,
}

impl Quantity {
    /// The same value, its text rounded to three digits.
    pub(crate) fn roughly(self) -> Self {
        roughly(self.kind, self.name, self.value)
    }
}

/// The data behind a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// What the table holds.
    pub caption: String,
    /// The heads of its columns.
    pub headings: Vec<&'static str>,
    /// Its rows; the first cell of each is the row's head.
    pub rows: Vec<Vec<Cell>>,
}

/// One cell of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct Cell {
    /// The text shown.
    pub text: String,
    /// The catalogue's name and the SI value, where the cell is a result.
    pub result: Option<(&'static str, f64)>,
}

impl Cell {
    /// A cell of plain words.
    pub(crate) fn words(text: impl Into<String>) -> Self {
        Self {
            text: text.into(),
            result: None,
        }
    }

    /// A cell that shows a result.
    pub(crate) fn result(quantity: &Quantity) -> Self {
        Self {
            text: quantity.text.clone(),
            result: Some((quantity.name, quantity.value)),
        }
    }
}
