//! The rendered site on disk.

use crate::render::Files;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::Path;

/// A file that marks a folder as made by this tool, so that it may be emptied again.
const MARK: &str = ".before-the-bench";

/// Writes the site into a folder. A folder written before is emptied first; any other
/// folder with something in it is refused.
///
/// # Errors
/// When the folder holds other things or cannot be written.
pub fn write(files: &Files, folder: &Path) -> Result<()> {
    make_room(folder)?;
    for (path, bytes) in files {
        write_file(&folder.join(path), bytes)?;
    }
    write_file(
        &folder.join(MARK),
        b"Written by cargo site build; emptied by the next.\n",
    )
}

/// Empties a folder that this tool wrote; leaves an empty one alone.
fn make_room(folder: &Path) -> Result<()> {
    let mut entries = match fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(_) => return Ok(()),
    };
    if entries.next().is_none() {
        return Ok(());
    }
    if !folder.join(MARK).exists() {
        bail!(
            "{} holds things this tool did not write; give --out an empty or new folder",
            folder.display()
        );
    }
    fs::remove_dir_all(folder).with_context(|| format!("cannot empty {}", folder.display()))
}

/// Writes one file and the folders above it.
fn write_file(path: &Path, bytes: &[u8]) -> Result<()> {
    let told = || format!("cannot write {}", path.display());
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).with_context(told)?;
    }
    fs::write(path, bytes).with_context(told)
}
