//! Problems in a lesson: drawn, asked, marked, explained.
//!
//! A problem stands on paper ([`on_paper`]) until its family has been fetched; then
//! [`family`] reads it, [`desk`] decides, [`paper`] writes what the reader sees, [`live`]
//! puts it into the page, and [`slips`] keeps all of a page. Three of them are pure:
//! `family`, `desk` and `paper`.

mod desk;
mod family;
mod live;
mod on_paper;
mod paper;
mod slips;

#[cfg(feature = "bench")]
pub(crate) use family::open as open_family;
pub(crate) use slips::Slips;
