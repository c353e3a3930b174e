//! `cargo site build`: everything from reading to writing, for one edition.

use crate::content::Content;
use crate::edition::Edition;
use crate::page_files::PageFiles;
use crate::precompress::{Cache, Effort};
use crate::render::{Files, Inputs, render};
use crate::wasm::Wasm;
use crate::{portable, service_worker, write};
use anyhow::{Context, Result};
use std::path::Path;

/// Builds one edition and writes it: a folder, or one zip for the portable edition.
///
/// # Errors
/// Every fault of the content at once; or what kept the site from being written.
pub fn build(root: &Path, wasm: &Wasm, edition: &Edition, out: &Path) -> Result<()> {
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
pub fn rendered(root: &Path, wasm: &Wasm, edition: &Edition) -> Result<Files> {
    let content = Content::load(root)?;
    let page_files = PageFiles::load(root)?;
    let inputs = Inputs {
        content: &content,
        page_files: &page_files,
        wasm,
    };
    let mut files = render(&inputs, edition)?;
    if !edition.is_portable() {
        portable::add_download(&mut files, &inputs)?;
        service_worker::add(&mut files, &page_files)?;
        let mut packed = Cache::default();
        packed
            .add(&mut files, Effort::Thorough)
            .context("compressing")?;
    }
    Ok(files)
}
