//! The portable edition: one zip with a folder that opens by double-click.

use crate::edition::Edition;
use crate::render::{Files, render};
use crate::sources::Sources;
use anyhow::{Context, Result};
use std::fs;
use std::io::{Cursor, Write as _};
use std::path::Path;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// The folder inside the zip.
pub const FOLDER: &str = "before-the-bench";
/// The zip as the hosted edition offers it for download.
pub const DOWNLOAD: &str = "before-the-bench.zip";

/// Writes all files into one zip, below [`FOLDER`]. The same files give the same zip.
///
/// # Errors
/// When the zip cannot be written.
pub fn write(files: &Files, out: &Path) -> Result<()> {
    let told = || format!("cannot write {}", out.display());
    if let Some(folder) = out.parent() {
        fs::create_dir_all(folder).with_context(told)?;
    }
    fs::write(out, zipped(files).with_context(told)?).with_context(told)
}

/// Puts the portable edition beside the pages of the hosted one, as [`DOWNLOAD`].
///
/// # Errors
/// When the portable edition cannot be rendered.
pub fn add_download(files: &mut Files, sources: &Sources) -> Result<()> {
    let portable = render(sources, &Edition::Portable)?;
    files.insert(DOWNLOAD.to_owned(), zipped(&portable)?);
    Ok(())
}

/// All files as one zip, below [`FOLDER`].
///
/// # Errors
/// When a path is too long for a zip.
pub fn zipped(files: &Files) -> Result<Vec<u8>> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    // No time of day: zip's own earliest date stands in for it.
    let options = SimpleFileOptions::default().last_modified_time(zip::DateTime::default());
    for (path, bytes) in files {
        zip.start_file(format!("{FOLDER}/{path}"), options)?;
        zip.write_all(bytes)?;
    }
    Ok(zip.finish()?.into_inner())
}
