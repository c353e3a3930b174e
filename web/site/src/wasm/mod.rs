//! The wasm programs: compiled by cargo, bound by wasm-bindgen, optimised by wasm-opt.

mod bind;
mod compile;
mod optimise;

pub use bind::{Bound, Wasm};
pub use compile::{TARGET, cargo, compile, target_folder};
