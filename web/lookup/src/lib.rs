//! The small wasm of the look-up page: strings in, strings out.
//!
//! In scope: what stands in the page's form ([`Form`]), everything the page shows for it
//! ([`view()`]), and the one function the page's script calls ([`look_up`]). All sentences
//! are made here, so they are tested here. Left out: the page itself; the script moves
//! texts into it and nothing else. Never linked: the catalogue, and printing of floats,
//! which would double the program a phone has to fetch.
#![cfg_attr(all(feature = "small", target_arch = "wasm32"), no_std)]

extern crate alloc;

mod card;
mod form;
mod link;
mod notes;
mod open;
mod problem;
mod reading;
mod reply;
mod request;
#[cfg(all(feature = "small", target_arch = "wasm32"))]
mod small;
mod solve;
mod step;
mod view;
mod whistles;
mod words;

pub use card::{Card, CardFor, CardRow, card};
pub use form::{Find, Form, Rows, Unit};
pub use notes::Notes;
pub use open::{Given, open};
pub use problem::{Field, Offer, Problem};
pub use solve::EXAMPLE_INTERMEDIATE;
pub use step::{Step, step};
pub use view::{Kept, Shown, View, plain_card, view};
pub use whistles::{NEAR, Whistle};

use alloc::borrow::ToOwned;
use alloc::string::String;
use reply::Reply;
use request::Task;
use wasm_bindgen::prelude::wasm_bindgen;

/// Answers the page: a task and the form as lines of `name=value` in, lines for the
/// page's script out (see `web/pages/scripts/lookup.js`).
#[wasm_bindgen]
#[must_use]
pub fn look_up(request: &str) -> String {
    let mut form = request::form(request);
    let mut reply = Reply::default();
    let mut said = None;
    match request::task(request) {
        Task::Show => {}
        Task::Open(given, set) => {
            let (opened, complaint) = open(given, set);
            form = opened;
            reply.notice(complaint.as_deref().unwrap_or_default());
            reply.form(&form);
        }
        Task::Step(way) => {
            said = step(&mut form, way);
            reply.form(&form);
        }
        Task::Put(name, text) => {
            put(&mut form, name, text);
            reply.form(&form);
        }
    }
    light(&mut form, &mut reply);
    let mut shown = view(&form);
    if let Some(words) = said {
        shown.say(&words);
    }
    reply.boxes(form.find);
    reply.found(&form, &shown);
    reply.view(&shown);
    reply.into_text()
}

/// A unit typed into a box lights its button.
fn light(form: &mut Form, reply: &mut Reply) {
    if let Some(unit) = reading::typed_unit(&form.dial) {
        form.dial_unit = unit;
        reply.field("dial-unit", unit.symbol());
    }
    if let Some(unit) = reading::typed_unit(&form.oscillator) {
        form.oscillator_unit = unit;
        reply.field("oscillator-unit", unit.symbol());
    }
}

/// The set that was worked out becomes the reader's own, and answers are for it.
fn own_set(form: &mut Form) {
    if let Some((intermediate, side)) = view::worked_out(form) {
        (form.intermediate, form.side) = (intermediate, side);
        form.find = Find::Oscillator;
    }
}

/// Puts a text with its unit into a box.
fn put(form: &mut Form, name: &str, text: &str) {
    match name {
        "dial" => (form.dial, form.dial_unit) = open::box_and_unit(text),
        "oscillator" => (form.oscillator, form.oscillator_unit) = open::box_and_unit(text),
        "if" if form.find == Find::Intermediate => own_set(form),
        "if" => form.intermediate = text.to_owned(),
        _ => {}
    }
}
