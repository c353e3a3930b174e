//! This browser's storage for this site.

use web_sys::Storage;

/// What every name of ours begins with.
const PREFIX: &str = "before-the-bench:";
/// What follows the name of something damaged that was put aside.
const ASIDE: &str = ":set-aside";

/// The reader's notebook.
pub(crate) const NOTEBOOK: &str = "notebook";
/// The set that the look-up keeps.
pub(crate) const SET: &str = "set";

/// Some browsers and windows have no storage, or refuse it.
fn local() -> Option<Storage> {
    web_sys::window()?.local_storage().ok().flatten()
}

/// What is kept under a name.
pub(crate) fn read(name: &str) -> Option<String> {
    local()?.get_item(&[PREFIX, name].concat()).ok().flatten()
}

/// Keeps a text under a name. False where the browser would not.
pub(crate) fn write(name: &str, text: &str) -> bool {
    local().is_some_and(|local| local.set_item(&[PREFIX, name].concat(), text).is_ok())
}

/// Puts what is kept under a name aside, where nothing reads it.
pub(crate) fn set_aside(name: &str) {
    if let Some(text) = read(name) {
        write(&[name, ASIDE].concat(), &text);
        remove(name);
    }
}

/// Forgets a name, and what was put aside of it.
pub(crate) fn forget(name: &str) {
    remove(name);
    remove(&[name, ASIDE].concat());
}

fn remove(name: &str) {
    if let Some(local) = local() {
        // A name that cannot be removed cannot be read either.
        let _ = local.remove_item(&[PREFIX, name].concat());
    }
}
