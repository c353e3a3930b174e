//! The notebook between this page and the place where it is kept.
//!
//! Several windows may write it, and a page that comes back from the browser's memory has
//! missed what others wrote. So nothing is written from an old copy: each change reads
//! what is kept, changes that, and writes it.

use crate::notebook::{Damage, Notebook};
#[cfg(feature = "carrying")]
use crate::place::{Place, stored_set};
#[cfg(feature = "carrying")]
use crate::storage::SET;
use crate::storage::{NOTEBOOK, Shelf};

/// The notebook, and the shelf on which it is kept.
pub(crate) struct Book<S> {
    shelf: S,
    notebook: Notebook,
    /// Whether this page holds something that is not on the shelf.
    unkept: bool,
    /// Whether the shelf holds something unreadable that could not be put aside. It is
    /// not written over.
    blocked: bool,
}

/// What was found amiss when the notebook was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Trouble {
    /// What is the matter, in a phrase.
    pub(crate) damage: Damage,
    /// Whether the damaged text was put aside; otherwise it stays where it is.
    pub(crate) aside: bool,
}

impl<S: Shelf> Book<S> {
    /// A book not yet read.
    pub(crate) fn on(shelf: S) -> Self {
        Self {
            shelf,
            notebook: Notebook::default(),
            unkept: false,
            blocked: false,
        }
    }

    /// What is in it, as last read.
    pub(crate) fn notebook(&self) -> &Notebook {
        &self.notebook
    }

    /// Whether everything in it is on the shelf.
    pub(crate) fn is_kept(&self) -> bool {
        !self.unkept
    }

    /// Reads what is kept. What this page holds and could not keep stays in it. A damaged
    /// text is put aside, and the page goes on with what it holds.
    pub(crate) fn refresh(&mut self) -> Option<Trouble> {
        self.blocked = false;
        let text = self.shelf.read(NOTEBOOK).unwrap_or_default();
        let kept = if text.is_empty() {
            Notebook::default()
        } else {
            match Notebook::read(&text) {
                Ok(kept) => kept,
                Err(damage) => return Some(self.put_aside(damage)),
            }
        };
        if self.unkept {
            self.notebook.take_in(&kept);
        } else {
            self.notebook = kept;
        }
        None
    }

    fn put_aside(&mut self, damage: Damage) -> Trouble {
        let aside = self.shelf.set_aside(NOTEBOOK);
        self.blocked = !aside;
        if !self.notebook.is_empty() {
            self.save();
        }
        Trouble { damage, aside }
    }

    /// Changes what is kept, and keeps it. The trouble is that of reading it before.
    pub(crate) fn change(&mut self, change: impl FnOnce(&mut Notebook)) -> Option<Trouble> {
        let trouble = self.refresh();
        change(&mut self.notebook);
        self.save();
        trouble
    }

    fn save(&mut self) {
        let text = self.notebook.to_json().write();
        self.unkept = self.blocked || !self.shelf.write(NOTEBOOK, &text);
    }
}

/// What is carried away and brought along.
#[cfg(feature = "carrying")]
impl<S: Shelf> Book<S> {
    /// Everything that the reader can carry away.
    pub(crate) fn place(&self) -> Place {
        Place {
            notebook: self.notebook.clone(),
            set: self.own_set(),
        }
    }

    fn own_set(&self) -> Option<String> {
        self.shelf.read(SET).as_deref().and_then(stored_set)
    }

    /// Whether a set that was brought along stays outside, since the reader has another.
    pub(crate) fn keeps_own_set(&self, place: &Place) -> bool {
        place.set.is_some() && self.own_set().is_some_and(|own| Some(own) != place.set)
    }

    /// Adds what a reader brought along. The reader's own set stays.
    pub(crate) fn take_in(&mut self, place: &Place) -> Option<Trouble> {
        if let Some(set) = &place.set
            && self.own_set().is_none()
            && self.shelf.set_aside(SET)
        {
            self.shelf.write(SET, set);
        }
        self.change(|notebook| notebook.take_in(&place.notebook))
    }

    /// Forgets everything.
    pub(crate) fn wipe(&mut self) {
        self.shelf.clear();
        self.notebook = Notebook::default();
        self.unkept = false;
        self.blocked = false;
    }
}

#[cfg(test)]
mod tests {
    use super::Book;
    use crate::notebook::Notebook;
    use crate::place::Place;
    use crate::storage::tests::Board;
    use crate::storage::{NOTEBOOK, SET, Shelf};

    const DAY: &str = "2026-11-25";
    const MINE: &str = r#"{"version":1,"dial":"909 kHz"}"#;
    const THEIRS: &str = r#"{"version":1,"dial":"1200 kHz"}"#;

    fn kept(board: &Board) -> Notebook {
        Notebook::read(&board.read(NOTEBOOK).unwrap()).unwrap()
    }

    fn tick(book: &mut Book<Board>, slug: &str) {
        assert_eq!(book.change(|notebook| notebook.tick(slug, DAY)), None);
    }

    fn brought(slug: &str, set: &str) -> Place {
        let mut notebook = Notebook::default();
        notebook.tick(slug, DAY);
        Place {
            notebook,
            set: Some(set.to_owned()),
        }
    }

    #[test]
    fn a_page_that_comes_back_loses_no_tick_of_another() {
        let board = Board::default();
        let mut first = Book::on(board.clone());
        first.refresh();
        let mut second = Book::on(board.clone());
        second.refresh();
        tick(&mut second, "two");
        tick(&mut first, "one");
        assert_eq!(kept(&board).day_of("one"), Some(DAY));
        assert_eq!(kept(&board).day_of("two"), Some(DAY));
        second.refresh();
        assert_eq!(second.notebook(), first.notebook());
    }

    #[test]
    fn a_wipe_in_another_window_is_seen() {
        let board = Board::default();
        let mut first = Book::on(board.clone());
        tick(&mut first, "one");
        let mut second = Book::on(board.clone());
        second.wipe();
        first.refresh();
        assert!(first.notebook().is_empty());
    }

    #[test]
    fn damage_by_another_window_is_put_aside_before_anything_is_written() {
        let board = Board::default();
        let mut book = Book::on(board.clone());
        tick(&mut book, "one");
        board.write(NOTEBOOK, "{\"version\":9}");
        let trouble = book.refresh().unwrap();
        assert!(trouble.aside, "{trouble:?}");
        assert_eq!(
            board.read("notebook:set-aside").as_deref(),
            Some("{\"version\":9}")
        );
        assert_eq!(kept(&board).day_of("one"), Some(DAY));
        tick(&mut book, "two");
        assert_eq!(kept(&board).day_of("one"), Some(DAY));
    }

    #[test]
    fn damage_that_cannot_be_put_aside_is_not_written_over() {
        let board = Board::default();
        board.write(NOTEBOOK, "mine");
        board.full.set(true);
        let mut book = Book::on(board.clone());
        assert!(!book.refresh().unwrap().aside);
        assert!(book.change(|notebook| notebook.tick("one", DAY)).is_some());
        assert_eq!(board.read(NOTEBOOK).as_deref(), Some("mine"));
        assert!(!book.is_kept());
        board.full.set(false);
        assert!(book.change(|notebook| notebook.tick("two", DAY)).is_some());
        assert_eq!(board.read("notebook:set-aside").as_deref(), Some("mine"));
        assert_eq!(kept(&board).day_of("one"), Some(DAY));
        assert_eq!(kept(&board).day_of("two"), Some(DAY));
        assert!(book.is_kept());
    }

    #[test]
    fn what_could_not_be_kept_lasts_as_long_as_the_page() {
        let board = Board::default();
        board.full.set(true);
        let mut book = Book::on(board.clone());
        tick(&mut book, "one");
        tick(&mut book, "two");
        assert!(!book.is_kept());
        assert_eq!(book.notebook().day_of("one"), Some(DAY));
        board.full.set(false);
        tick(&mut book, "three");
        assert_eq!(kept(&board).day_of("one"), Some(DAY));
    }

    #[test]
    fn the_readers_own_set_stays() {
        let board = Board::default();
        let mut book = Book::on(board.clone());
        let place = brought("one", THEIRS);
        assert!(!book.keeps_own_set(&place));
        book.take_in(&place);
        assert_eq!(board.read(SET).as_deref(), Some(THEIRS));
        assert!(!book.keeps_own_set(&place), "it is the same one");
        board.write(SET, MINE);
        assert!(book.keeps_own_set(&place));
        book.take_in(&brought("two", THEIRS));
        assert_eq!(board.read(SET).as_deref(), Some(MINE));
        assert_eq!(kept(&board).day_of("two"), Some(DAY));
    }

    #[test]
    fn a_damaged_set_makes_room_and_is_put_aside() {
        let board = Board::default();
        board.write(SET, "{");
        Book::on(board.clone()).take_in(&brought("one", THEIRS));
        assert_eq!(board.read(SET).as_deref(), Some(THEIRS));
        assert_eq!(board.read("set:set-aside").as_deref(), Some("{"));
    }
}
