//! The site and its tool: content is read and checked, pages are rendered into
//! memory, wasm is bound and optimised, and the whole is written, served or zipped.
//!
//! The order of the work: [`content`] and [`page_files`] read, [`pages`] and [`shell`]
//! render, [`render`] joins everything into one list of files, [`service_worker`] lists
//! them for the offline copy, [`precompress`] adds their compressed forms, and [`write`],
//! [`portable`] or [`serve`] hands them on.

pub mod assets;
pub mod bench;
pub mod building;
pub mod calc;
pub mod check;
pub mod cli;
pub mod content;
pub mod edition;
pub mod families;
pub mod hashing;
pub mod inspection;
pub mod lessons;
pub mod lighthouse;
pub mod links;
pub mod mime;
pub mod mistake_names;
pub mod page;
pub mod page_files;
pub mod pages;
pub mod portable;
pub mod precompress;
pub mod programs;
pub mod render;
pub mod report;
pub mod repository;
pub mod response;
pub mod security;
pub mod serve;
pub mod server;
pub mod service_worker;
mod set_file;
pub mod shell;
pub mod sources;
pub mod testing;
mod toml_place;
mod toml_shape;
pub mod tools;
pub mod wasm;
mod wording;
pub mod write;
