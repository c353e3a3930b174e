//! "Take my place with me": its buttons, and links that bring a place to a page that has them.
//!
//! Without the feature `carrying` all of it is left out, and `no_carrying.rs` stands in.

use crate::dom::{Result, append, by_id, document, made, prepend, say, show};
use crate::kept::Kept;
use crate::listener::Listener;
use crate::place::{Place, TOO_LONG};
use js_sys::{Array, encode_uri_component};
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, FileReader, HtmlElement, HtmlInputElement};

/// The name of the saved file.
const FILE: &str = "before-the-bench.json";

/// What a reader has brought and not yet taken in, and a file being read.
#[derive(Default)]
pub(crate) struct Carrying {
    offered: Option<Place>,
    offer: Option<Element>,
    reading: Option<Listener>,
}

/// Shows what the first page has for carrying a place.
pub(crate) fn show_controls(kept: &Kept) -> Result<()> {
    if let Some(controls) = by_id("place") {
        show(&controls, true)?;
    }
    if let Some(restore) = by_id("place-restore") {
        show(&restore, kept.place().is_empty())?;
    }
    Ok(())
}

fn said(text: &str) {
    if let Some(line) = by_id("place-said") {
        say(&line, text);
    }
}

/// Makes a link, shows it to be copied by hand, and copies it where the browser lets us.
fn copy_link(kept: &Kept) -> Result<()> {
    let place = kept.place();
    if place.is_empty() {
        said("There is nothing to take yet: no lesson ticked, no answer marked, no set.");
        return Ok(());
    }
    let page = document()?.document_uri()?;
    let page = page.split('#').next().unwrap_or_default();
    let line = link_box()?;
    line.set_value(&[page, &place.to_link()].concat());
    line.select();
    let page = document()?.dyn_into::<web_sys::HtmlDocument>()?;
    let copied = page.exec_command("copy").unwrap_or(false);
    said(if copied {
        "Copied. Open the link in the other browser; it also stands in the box."
    } else {
        "Copy the link from the box and open it in the other browser."
    });
    Ok(())
}

/// The box that shows the link, made when first wanted.
fn link_box() -> Result<HtmlInputElement> {
    let known = by_id("place-box");
    let line = match known {
        Some(line) => line,
        None => {
            let line = made("input", "", "")?;
            line.set_id("place-box");
            line.set_attribute("readonly", "")?;
            line.set_attribute("aria-label", "The link that carries your place")?;
            if let Some(said) = by_id("place-said") {
                said.before_with_node_1(&line)?;
            }
            line
        }
    };
    Ok(line.dyn_into()?)
}

/// Saves a file by way of a link to data.
fn save_file(kept: &Kept) -> Result<()> {
    let text = String::from(encode_uri_component(&kept.place().to_file()));
    let link = made("a", "", "")?;
    link.set_attribute("download", FILE)?;
    link.set_attribute(
        "href",
        &["data:application/json;charset=utf-8,", &text].concat(),
    )?;
    link.unchecked_ref::<HtmlElement>().click();
    said(
        &[
            "Saved as ",
            FILE,
            ", if your browser did not ask otherwise.",
        ]
        .concat(),
    );
    Ok(())
}

/// Opens the browser's own choice of a file.
fn choose_file() {
    if let Some(input) = by_id("place-file") {
        input.unchecked_ref::<HtmlElement>().click();
    }
}

impl Carrying {
    /// Reads the file that was chosen; `read` hears of it when it is there.
    pub(crate) fn read_file(
        &mut self,
        input: &HtmlInputElement,
        kept: &Kept,
        mut read: impl FnMut(String) + 'static,
    ) -> Result<()> {
        let Some(file) = input.files().and_then(|files| files.get(0)) else {
            return Ok(());
        };
        if !Place::may_fill(file.size()) {
            input.set_value("");
            return self.offer(Err(TOO_LONG), kept);
        }
        let reader = FileReader::new()?;
        let source = reader.clone();
        let heard = move |_: Event| {
            let text = source.result().ok().and_then(|text| text.as_string());
            read(text.unwrap_or_default());
        };
        self.reading = Some(Listener::new(&reader, "loadend", heard)?);
        reader.read_as_text(&file)?;
        // So that the same file can be chosen again.
        input.set_value("");
        Ok(())
    }

    /// Offers what a file holds that was read.
    pub(crate) fn offer_file(&mut self, text: &str, kept: &Kept) -> Result<()> {
        self.offer(Place::from_file(text), kept)
    }

    /// Offers what the address carries. Says whether it carries a place.
    pub(crate) fn offer_link(&mut self, hash: &str, kept: &Kept) -> Result<bool> {
        let Some(place) = Place::from_link(hash) else {
            return Ok(false);
        };
        clear_hash()?;
        self.offer(place, kept)?;
        Ok(true)
    }

    /// Does what a button asks for. Says whether the notebook may have changed.
    pub(crate) fn pressed(&mut self, what: &str, id: &str, kept: &mut Kept) -> Result<bool> {
        match (what, id) {
            (_, "place-link") => copy_link(kept)?,
            (_, "place-export") => save_file(kept)?,
            (_, "place-import" | "place-restore-open") => choose_file(),
            (_, "place-wipe") => {
                wipe(kept)?;
                return Ok(true);
            }
            ("take", _) => {
                self.take(kept)?;
                return Ok(true);
            }
            ("leave", _) => self.leave()?,
            _ => {}
        }
        Ok(false)
    }

    /// Offers what a file or link holds, or says why it holds nothing.
    fn offer(&mut self, place: core::result::Result<Place, &str>, kept: &Kept) -> Result<()> {
        self.withdraw();
        let text = match &place {
            Ok(place) => {
                let own_set = if kept.keeps_own_set(place) {
                    " This browser has a set of yours already: that one stays, and the one \
                     brought along is not taken."
                } else {
                    ""
                };
                ["Here is a notebook: ", &place.told(), ".", own_set].concat()
            }
            Err(why) => ["That holds no place that can be opened: ", why, "."].concat(),
        };
        let note = made("div", "note offer", "")?;
        note.set_attribute("role", "status")?;
        note.set_attribute("tabindex", "-1")?;
        append(&note, &made("p", "", &text)?)?;
        if place.is_ok() {
            append(&note, &buttons()?)?;
        }
        if let Some(main) = by_id("main") {
            prepend(&main, &note)?;
            note.scroll_into_view();
        }
        self.offered = place.ok();
        self.offer = Some(note);
        Ok(())
    }

    /// Takes in what was offered.
    fn take(&mut self, kept: &mut Kept) -> Result<()> {
        if let Some(place) = self.offered.take() {
            kept.take_in(&place)?;
        }
        if let Some(offer) = &self.offer {
            let holder = if kept.is_kept() { "browser" } else { "page" };
            let now = [
                "Done. This ",
                holder,
                " now holds ",
                &kept.place().told(),
                ".",
            ];
            say(offer, &now.concat());
            crate::dom::read_out(offer)?;
        }
        Ok(())
    }

    /// Puts the offer away.
    fn withdraw(&mut self) {
        self.offered = None;
        if let Some(offer) = self.offer.take() {
            offer.remove();
        }
    }

    /// Leaves what was offered; the focus goes to the page, since its button is gone.
    fn leave(&mut self) -> Result<()> {
        self.withdraw();
        match by_id("main") {
            Some(main) => crate::dom::focus_on(&main),
            None => Ok(()),
        }
    }
}

fn buttons() -> Result<Element> {
    let row = made("div", "buttons", "")?;
    for (class, what, words) in [
        ("main", "take", "Add it to this browser"),
        ("", "leave", "Leave it"),
    ] {
        let button = made("button", class, words)?;
        button.set_attribute("type", "button")?;
        button.set_attribute("data-do", what)?;
        append(&row, &button)?;
    }
    Ok(row)
}

/// Wipes everything, and says so.
fn wipe(kept: &mut Kept) -> Result<()> {
    kept.wipe()?;
    said("Wiped. This browser holds no notebook, no set and no choices of yours now.");
    Ok(())
}

/// The page's address without what stood behind the `#`, so that a link is taken in once.
fn clear_hash() -> Result<()> {
    let page = document()?.document_uri()?;
    let page = page.split('#').next().unwrap_or_default();
    let window = web_sys::window();
    let history = window.and_then(|window| window.history().ok());
    match history {
        // A page opened from a folder may not change its address; it then stays.
        Some(history) => history
            .replace_state_with_url(&Array::new(), "", Some(page))
            .or(Ok(())),
        None => Ok(()),
    }
}
