//! A subject: quantities that belong together on a page.

use super::Entry;

/// A group of quantities with a heading.
#[derive(Clone, Copy, Debug)]
pub struct Subject {
    id: &'static str,
    title: &'static str,
    entries: &'static [Entry],
}

impl Subject {
    pub(super) const fn new(
        id: &'static str,
        title: &'static str,
        entries: &'static [Entry],
    ) -> Self {
        Self { id, title, entries }
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

    /// The quantities, in the order in which they are listed.
    #[must_use]
    pub const fn entries(&self) -> &'static [Entry] {
        self.entries
    }
}
