//! The site and its tool: content is read and checked, pages are rendered into
//! memory, wasm is bound and optimised, and the whole is written, served or zipped.
//!
//! The order of the work is the order of the modules: [`content`] and [`page_files`]
//! read, [`pages`] and [`shell`] render, [`render`] joins everything into one list of
//! files, [`write`] puts them on disk.

pub mod assets;
pub mod content;
pub mod edition;
pub mod hashing;
pub mod links;
pub mod page;
pub mod page_files;
pub mod pages;
pub mod programs;
pub mod render;
pub mod report;
pub mod security;
pub mod shell;
pub mod wasm;
pub mod write;
