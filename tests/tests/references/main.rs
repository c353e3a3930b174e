//! The core against what other programs say: see `references/README.md`.

#![expect(
    clippy::unwrap_used,
    reason = "a file or a part that is not there fails its test, where it stands"
)]

mod if_transformers;
mod netlist;
mod single_circuit;
mod solvers;
mod tracking;
