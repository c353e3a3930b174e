//! Problems in a lesson: drawn, asked, marked, explained.
//!
//! A problem stands on paper ([`on_paper`]) until its family has been fetched; then
//! [`family`] reads it, [`desk`] decides, [`paper`] writes what the reader sees, [`live`]
//! puts it into the page, [`on_figure`] what is set on a figure, and [`slips`] keeps all of a page. Three of them are pure:
//! `family`, `desk` and `paper`.

mod desk;
mod family;
#[cfg(feature = "check")]
mod handed_in;
mod live;
#[cfg_attr(not(feature = "on-figure"), path = "no_figure.rs")]
mod on_figure;
mod on_paper;
mod paper;
mod slips;

#[cfg(any(feature = "bench", feature = "practice"))]
pub(crate) use family::open as open_family;
pub(crate) use on_figure::moved;
pub(crate) use slips::Slips;
#[cfg(feature = "rounds")]
pub(crate) use {desk::Desk, live::LiveProblem, paper::NEXT};
#[cfg(feature = "check")]
pub(crate) use {
    handed_in::{question, tell},
    live::{press_unit, pressed_unit, typed},
};
#[cfg(feature = "practice")]
pub(crate) use {live::seed, on_paper::fetch_family};
