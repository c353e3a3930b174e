//! Where `cargo site test` has put what it built.

use anyhow::{Context, Result};
use std::env;
use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};
use zip::ZipArchive;

/// The hosted edition, built for the root of a host.
///
/// # Errors
/// When the variable that names it is not set.
pub fn site() -> Result<PathBuf> {
    named("BEFORE_THE_BENCH_SITE")
}

/// The hosted edition, built for [`SUB_PATH`].
///
/// # Errors
/// When the variable that names it is not set.
pub fn site_under_sub_path() -> Result<PathBuf> {
    named("BEFORE_THE_BENCH_SUB_PATH_SITE")
}

/// The base path of [`site_under_sub_path`].
pub const SUB_PATH: &str = "/club/radio/";

/// The portable edition's zip.
///
/// # Errors
/// When the variable that names it is not set.
pub fn portable_zip() -> Result<PathBuf> {
    named("BEFORE_THE_BENCH_PORTABLE")
}

/// The rules of axe, one script.
///
/// # Errors
/// When the variable that names it is not set.
pub fn axe_script() -> Result<String> {
    let path = named("BEFORE_THE_BENCH_AXE")?;
    fs::read_to_string(&path).with_context(|| format!("cannot read {}", path.display()))
}

fn named(variable: &str) -> Result<PathBuf> {
    env::var_os(variable)
        .map(PathBuf::from)
        .with_context(|| format!("{variable} is not set; run `cargo site test`"))
}

/// Unpacks the portable edition into a folder and gives the path of its first page.
///
/// # Errors
/// When the zip cannot be read or the folder cannot be written.
pub fn unpack_portable(into: &Path) -> Result<PathBuf> {
    let zip = portable_zip()?;
    let file = File::open(&zip).with_context(|| format!("cannot open {}", zip.display()))?;
    let mut archive = ZipArchive::new(file).context("no zip")?;
    for at in 0..archive.len() {
        let mut entry = archive.by_index(at)?;
        let inside = entry
            .enclosed_name()
            .context("a path that leaves the zip")?;
        let path = into.join(inside);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder)?;
        }
        io::copy(&mut entry, &mut File::create(&path)?)?;
    }
    Ok(into.join("before-the-bench").join("index.html"))
}
