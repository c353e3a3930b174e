//! The reader's own set: read, checked, kept, carried by file and link, and what it will do.
//!
//! In scope: what stands in the boxes of `/my-set/` ([`Typed`]), the set that they make
//! ([`OwnSet`], with every fault named), the kept form of it and its versions ([`kept`]), the
//! link ([`link`]), and what the set will do ([`report`]), as headings, sentences and tables.
//! The page is strings in, strings out ([`page`]): its script moves texts and nothing else.
//! Everything worked out comes from the catalogue.

mod check;
pub mod field;
pub mod kept;
pub mod link;
mod own_set;
pub mod page;
pub mod paper;
pub mod report;
mod words;

pub use check::FieldFault;
pub use own_set::{OwnSet, Typed};
