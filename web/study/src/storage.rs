//! This browser's storage for this site, and this tab's.

use wasm_bindgen::JsValue;
use web_sys::{Storage, Window, window};

/// What every name of ours begins with.
const PREFIX: &str = "before-the-bench:";
/// What follows the name of something damaged that was put aside.
const ASIDE: &str = ":set-aside";
/// The most that is put aside, in bytes: more than anything of ours is long.
const LONGEST_ASIDE: usize = 150_000;

/// The reader's notebook.
pub(crate) const NOTEBOOK: &str = "notebook";
/// The set that the look-up keeps.
#[cfg(feature = "carrying")]
pub(crate) const SET: &str = "set";
/// The check that was begun; a tab keeps it.
#[cfg(feature = "carrying")]
pub(crate) const CHECK: &str = "check";
/// Every name under which a page of this site keeps something: the notebook, the set, whose
/// numbers lessons show, the theme that was chosen, that the home-screen hint was put away,
/// and a check that was begun.
#[cfg(feature = "carrying")]
const ALL: [&str; 6] = [NOTEBOOK, SET, "numbers", "theme", "home-screen", CHECK];

/// Where texts are kept under names.
pub(crate) trait Shelf {
    /// What is kept under a name.
    fn read(&self, name: &str) -> Option<String>;
    /// Keeps a text under a name. False where that cannot be done.
    fn write(&self, name: &str, text: &str) -> bool;
    /// Forgets what is kept under a name.
    fn remove(&self, name: &str);

    /// Puts what is kept under a name aside, where nothing reads it. False where no copy
    /// could be made: then everything stays where it was.
    fn set_aside(&self, name: &str) -> bool {
        let Some(text) = self.read(name) else {
            return true;
        };
        let end = text.floor_char_boundary(LONGEST_ASIDE);
        let copied = self.write(&[name, ASIDE].concat(), &text[..end]);
        if copied {
            self.remove(name);
        }
        copied
    }

    /// Forgets everything of ours, and what was put aside.
    #[cfg(feature = "carrying")]
    fn clear(&self) {
        for name in ALL {
            self.remove(name);
            self.remove(&[name, ASIDE].concat());
        }
    }
}

/// A storage that this window has.
pub(crate) struct Store(fn(&Window) -> Result<Option<Storage>, JsValue>);

/// The storage of this browser.
pub(crate) const BROWSER: Store = Store(Window::local_storage);

/// The storage of this tab: it outlives a reload, and goes with the tab.
#[cfg(feature = "carrying")]
pub(crate) const TAB: Store = Store(Window::session_storage);

impl Store {
    /// The storage itself: some browsers and windows have none, or refuse it.
    fn open(&self) -> Option<Storage> {
        self.0(&window()?).ok()?
    }
}

impl Shelf for Store {
    fn read(&self, name: &str) -> Option<String> {
        self.open()?.get_item(&[PREFIX, name].concat()).ok()?
    }

    fn write(&self, name: &str, text: &str) -> bool {
        let name = [PREFIX, name].concat();
        let set = |storage: Storage| storage.set_item(&name, text).is_ok();
        self.open().is_some_and(set)
    }

    fn remove(&self, name: &str) {
        if let Some(storage) = self.open() {
            // A name that cannot be removed cannot be read either.
            let _ = storage.remove_item(&[PREFIX, name].concat());
        }
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::{LONGEST_ASIDE, Shelf};
    use std::cell::{Cell, RefCell};
    use std::collections::BTreeMap;
    use std::rc::Rc;

    /// A shelf that several windows share, and that can be full.
    #[derive(Clone, Default)]
    pub(crate) struct Board {
        texts: Rc<RefCell<BTreeMap<String, String>>>,
        pub(crate) full: Rc<Cell<bool>>,
    }

    impl Shelf for Board {
        fn read(&self, name: &str) -> Option<String> {
            self.texts.borrow().get(name).cloned()
        }

        fn write(&self, name: &str, text: &str) -> bool {
            if !self.full.get() {
                self.texts
                    .borrow_mut()
                    .insert(name.to_owned(), text.to_owned());
            }
            !self.full.get()
        }

        fn remove(&self, name: &str) {
            self.texts.borrow_mut().remove(name);
        }
    }

    #[test]
    fn what_cannot_be_copied_aside_stays() {
        let board = Board::default();
        board.write("set", "mine");
        board.full.set(true);
        assert!(!board.set_aside("set"));
        assert_eq!(board.read("set").as_deref(), Some("mine"));
        board.full.set(false);
        assert!(board.set_aside("set"));
        assert_eq!(board.read("set"), None);
        assert_eq!(board.read("set:set-aside").as_deref(), Some("mine"));
        assert!(board.set_aside("set"), "nothing is there to put aside");
        assert_eq!(board.read("set:set-aside").as_deref(), Some("mine"));
    }

    #[test]
    fn what_is_put_aside_is_bounded() {
        let board = Board::default();
        board.write("notebook", &"é".repeat(LONGEST_ASIDE));
        assert!(board.set_aside("notebook"));
        let aside = board.read("notebook:set-aside").unwrap();
        assert_eq!(aside.len(), LONGEST_ASIDE);
    }

    #[test]
    fn wiping_leaves_nothing() {
        let board = Board::default();
        for name in [
            "notebook",
            "set",
            "theme",
            "home-screen",
            "check",
            "set:set-aside",
        ] {
            board.write(name, "x");
        }
        board.clear();
        assert!(board.texts.borrow().is_empty());
    }
}
