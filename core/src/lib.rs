//! The superheterodyne receiver as arithmetic: units, quantities, the catalogue of
//! them under their names, and problems drawn from them.
//!
//! Nothing here reads a file, a clock, a random source or a page. All transcendental
//! mathematics goes through `libm`, so a value has the same bits in a test, at build
//! time and in every browser.
#![no_std]
#![deny(missing_docs)]

extern crate alloc;
#[cfg(test)]
extern crate std;

pub mod catalogue;
pub mod fault;
pub mod problems;
pub mod quantities;
pub mod receiver;
pub mod units;
