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
    let content = Content::load(root)?;
    let page_files = PageFiles::load(root)?;
    let inputs = Inputs {
        content: &content,
        page_files: &page_files,
        wasm,
    };
    let mut files = render(&inputs, edition)?;
    if edition.is_portable() {
        portable::write(&files, out)?;
    } else {
        portable::add_download(&mut files, &inputs)?;
        finish(&mut files, &page_files)?;
        write::write(&files, out)?;
    }
    println!("{} files written to {}", files.len(), out.display());
    Ok(())
}

/// What only a host needs: the offline copy's list and the compressed forms.
fn finish(files: &mut Files, page_files: &PageFiles) -> Result<()> {
    service_worker::add(files, page_files)?;
    Cache::default()
        .add(files, Effort::Thorough)
        .context("compressing")
}
