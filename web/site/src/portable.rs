//! The portable edition: one zip with a folder that opens by double-click.

use crate::render::Files;
use anyhow::{Context, Result};
use std::fs::{self, File};
use std::io::{BufWriter, Write as _};
use std::path::Path;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// The folder inside the zip.
pub const FOLDER: &str = "before-the-bench";

/// Writes all files into one zip, below [`FOLDER`]. The same files give the same zip.
///
/// # Errors
/// When the zip cannot be written.
pub fn write(files: &Files, out: &Path) -> Result<()> {
    let told = || format!("cannot write {}", out.display());
    if let Some(folder) = out.parent() {
        fs::create_dir_all(folder).with_context(told)?;
    }
    let file = File::create(out).with_context(told)?;
    let mut zip = ZipWriter::new(BufWriter::new(file));
    // No time of day: zip's own earliest date stands in for it.
    let options = SimpleFileOptions::default().last_modified_time(zip::DateTime::default());
    for (path, bytes) in files {
        zip.start_file(format!("{FOLDER}/{path}"), options)
            .with_context(told)?;
        zip.write_all(bytes).with_context(told)?;
    }
    zip.finish().with_context(told)?.flush().with_context(told)
}
