//! `cargo site build`: everything from reading to writing, for one edition.

use crate::edition::Edition;
use crate::precompress::{Cache, Effort};
use crate::render::{Files, render};
use crate::sources::Sources;
use crate::wasm::Wasm;
use crate::{portable, service_worker, write};
use anyhow::{Context, Result};
use std::path::Path;
use std::sync::Arc;

/// Builds one edition and writes it: a folder, or one zip for the portable edition.
///
/// # Errors
/// Every fault of the content at once; or what kept the site from being written.
pub fn build(root: &Path, wasm: &Arc<Wasm>, edition: &Edition, out: &Path) -> Result<()> {
    let files = rendered(root, wasm, edition)?;
    if edition.is_portable() {
        portable::write(&files, out)?;
    } else {
        write::write(&files, out)?;
    }
    println!("{} files written to {}", files.len(), out.display());
    Ok(())
}

/// All files of one edition as they are written; for a host with the portable edition to
/// download, the offline copy's list, and compressed forms.
///
/// # Errors
/// Every fault of the content at once, or what kept a page from being made.
pub fn rendered(root: &Path, wasm: &Arc<Wasm>, edition: &Edition) -> Result<Files> {
    let sources = Sources::load(root, wasm)?;
    let mut files = render(&sources, edition)?;
    if !edition.is_portable() {
        portable::add_download(&mut files, &sources)?;
        service_worker::add(&mut files, &sources.page_files)?;
        let mut packed = Cache::default();
        packed
            .add(&mut files, Effort::Thorough)
            .context("compressing")?;
    }
    Ok(files)
}
