//! Input that a reader of other people's text must survive, a million times over.
//!
//! [`Trial`] runs a reader on text after text from a seed and shows of each case that it
//! does not panic, that what it gives is as promised, and that it holds no more memory at a
//! time than a bound that does not grow with the text. That it does not hang is shown by no
//! clock: a reader refuses what is longer than it needs, unread, and its test asserts that of
//! texts up to a million bytes.
//!
//! What is tried is near to what is meant: valid texts spoilt by a few slips, pieces of the
//! reader's own language in any order, long runs of one piece, and letters that break
//! habits (other digits, marks that join or turn text, letters that change length with
//! their case).

mod letters;
mod maker;
#[cfg(not(target_arch = "wasm32"))]
mod survival;

pub use maker::Maker;
#[cfg(not(target_arch = "wasm32"))]
pub use survival::{MILLION, Trial};
