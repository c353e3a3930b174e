//! A subject: quantities that belong together on a page.

use super::Entry;

/// A letter or a function that formulas of a subject share beside their own parameters.
#[derive(Clone, Copy, Debug)]
pub struct Note {
    /// What it is, in LaTeX: a letter, or an equation that defines it.
    pub formula: &'static str,
    /// The same in words.
    pub meaning: &'static str,
}

/// A group of quantities with a heading.
#[derive(Clone, Copy, Debug)]
pub struct Subject {
    id: &'static str,
    title: &'static str,
    notes: &'static [Note],
    entries: &'static [Entry],
}

impl Subject {
    pub(super) const fn new(
        id: &'static str,
        title: &'static str,
        entries: &'static [Entry],
    ) -> Self {
        Self {
            id,
            title,
            notes: &[],
            entries,
        }
    }

    pub(super) const fn with_notes(mut self, notes: &'static [Note]) -> Self {
        self.notes = notes;
        self
    }

    /// A name for links: lower case and hyphens.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        self.id
    }

    /// The heading.
    #[must_use]
    pub const fn title(&self) -> &'static str {
        self.title
    }

    /// What its formulas share.
    #[must_use]
    pub const fn notes(&self) -> &'static [Note] {
        self.notes
    }

    /// The quantities, in the order in which they are listed.
    #[must_use]
    pub const fn entries(&self) -> &'static [Entry] {
        self.entries
    }
}
