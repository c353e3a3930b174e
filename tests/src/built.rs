//! Where `cargo site test` has put what it built.

use crate::ears;
use crate::engine::Engine;
use anyhow::{Context, Result, ensure};
use site::render::Files;
use std::env;
use std::fs::{self, File};
use std::io::Read as _;
use std::path::PathBuf;
use std::sync::atomic::{AtomicU32, Ordering};
use zip::ZipArchive;

/// The hosted edition, built for the root of a host.
///
/// # Errors
/// When the variable that names it is not set.
pub fn site() -> Result<PathBuf> {
    named("BEFORE_THE_BENCH_SITE")
}

/// The paths of all pages of the hosted edition, as they are visited (`""`, `lessons/`); a
/// host shows `404.html` of itself, so it is not among them.
///
/// # Errors
/// When the built site cannot be read, or has hardly a page.
pub fn pages() -> Result<Vec<String>> {
    let files = site::server::read_folder(&site()?)?;
    let pages: Vec<String> = files
        .keys()
        .filter_map(|path| Some(path.strip_suffix("index.html")?.to_owned()))
        .collect();
    ensure!(pages.len() > 3, "only {pages:?}");
    Ok(pages)
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

/// The portable edition unpacked into a folder of its own, which goes with this value.
#[derive(Debug)]
pub struct Unpacked {
    folder: PathBuf,
}

impl Unpacked {
    /// Unpacks it for an engine: with ears where its driver does not tell what its console
    /// says.
    ///
    /// # Errors
    /// When the zip cannot be read or the folder cannot be written.
    pub fn for_engine(engine: Engine) -> Result<Self> {
        let mut files = portable_files()?;
        if engine == Engine::WebKit {
            ears::add(&mut files, "/")?;
        }
        static TAKEN: AtomicU32 = AtomicU32::new(0);
        let number = TAKEN.fetch_add(1, Ordering::Relaxed);
        let name = format!("before-the-bench-{}-{number}", std::process::id());
        let folder = env::temp_dir().join(name);
        site::write::write(&files, &folder)?;
        Ok(Self { folder })
    }

    /// The address of a page, as double-clicking its file opens it.
    pub fn url(&self, path: &str) -> String {
        let page = self.folder.join(site::page::file_of(path));
        format!("file://{}", page.display())
    }
}

impl Drop for Unpacked {
    fn drop(&mut self) {
        // A folder left behind in the system's own place for such is no harm.
        let _ = fs::remove_dir_all(&self.folder);
    }
}

/// The files of the portable edition, by their paths below its one folder.
///
/// # Errors
/// When the zip cannot be read, or holds something outside that folder.
pub fn portable_files() -> Result<Files> {
    let zip = portable_zip()?;
    let file = File::open(&zip).with_context(|| format!("cannot open {}", zip.display()))?;
    let mut archive = ZipArchive::new(file).context("no zip")?;
    let mut files = Files::new();
    for at in 0..archive.len() {
        let mut entry = archive.by_index(at)?;
        let name = entry.name()?.into_owned();
        let inside = name
            .strip_prefix("before-the-bench/")
            .with_context(|| format!("{name} lies outside the folder"))?;
        let mut bytes = Vec::new();
        entry.read_to_end(&mut bytes)?;
        files.insert(inside.to_owned(), bytes);
    }
    Ok(files)
}
