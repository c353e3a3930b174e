//! Figures as a pure function of their input.
//!
//! [`view`] turns a figure's name and an [`Input`] into a [`View`]: the drawing as a tree
//! of nodes, its words, its table, its results and its handles. [`svg()`] writes the
//! drawing, [`markup()`] everything that a page holds of it. A live page keeps the
//! elements it has and applies [`changes()`].
//!
//! In scope: drawing numbers that the core has computed. Left out: any physics of its
//! own, any colour (classes only, so that a theme or a printer decides), and the page
//! itself (no web-sys here: everything is tested natively).

// A program with one group leaves out what only the others draw with.
#![cfg_attr(
    not(all(
        feature = "frequencies",
        feature = "blocks",
        feature = "bands",
        feature = "responses",
        feature = "circuits",
        feature = "transformers",
        feature = "amplifier",
        feature = "modulation",
        feature = "detection",
        feature = "tracking"
    )),
    allow(dead_code)
)]

#[cfg(feature = "detection")]
mod agc;
#[cfg(feature = "modulation")]
mod am_wave;
#[cfg(test)]
mod apart;
mod arithmetic;
#[cfg(feature = "bands")]
mod band_chart;
#[cfg(feature = "blocks")]
mod block_diagram;
mod changes;
mod condition;
mod control;
mod coordinate;
#[cfg(feature = "transformers")]
mod coupled_pair;
#[cfg(feature = "detection")]
mod detector;
mod error;
mod escape;
mod figure;
#[cfg(feature = "frequencies")]
mod frequency_line;
mod group;
mod handle;
#[cfg(feature = "amplifier")]
mod if_chain;
mod input;
mod markup;
mod node;
mod number;
mod plot;
mod point;
#[cfg(feature = "circuits")]
mod resonance;
mod setting;
mod span;
mod spread;
#[cfg(feature = "responses")]
mod spurious_map;
mod svg;
mod text_width;
#[cfg(feature = "tracking")]
mod tracking;
mod tuning;
mod view;
mod weakness;
#[cfg(any(feature = "transformers", feature = "amplifier"))]
mod window;

pub use changes::{Change, What, changes};
pub use condition::Condition;
pub use control::{Control, ControlKind, Place, Slider};
pub use error::FigureError;
pub use escape::escape;
pub use figure::{group, names, needed, view};
pub use group::Group;
pub use input::Input;
pub use markup::{Task, markup};
pub use node::Node;
pub use number::value;
pub use setting::Setting;
pub use svg::svg;
pub use view::{Cell, Quantity, Table, View};
