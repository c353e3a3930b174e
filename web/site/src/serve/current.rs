//! The version that is being served, and the bench it is made anew on.

use super::change::Change;
use super::{reload, restart};
use crate::edition::Edition;
use crate::hashing::sha256;
use crate::precompress::{Cache, Effort};
use crate::render::{Files, render};
use crate::server::Store;
use crate::service_worker;
use crate::sources::Sources;
use crate::wasm::{Wasm, compile};
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};
use std::time::Instant;
use tokio::sync::watch;

/// What is served now, and word to the pages when that changes.
#[derive(Debug)]
pub(super) struct Current {
    version: RwLock<Arc<Version>>,
    news: watch::Sender<String>,
}

/// One version: the files, or what kept them from being made.
#[derive(Debug, Default)]
pub(crate) struct Version {
    /// Changes with any file.
    pub(super) name: String,
    /// The files of this version, or of the last that was whole.
    pub(super) store: Store,
    /// What this version was made from, for what is made only when it is asked for.
    pub(super) sources: Option<Sources>,
    /// What is wrong, if anything: then pages show this instead.
    pub(super) fault: Option<String>,
}

impl Default for Current {
    fn default() -> Self {
        Self {
            version: RwLock::default(),
            news: watch::Sender::new(String::new()),
        }
    }
}

impl Current {
    pub(super) fn version(&self) -> Arc<Version> {
        let version = self.version.read();
        Arc::clone(&version.unwrap_or_else(PoisonError::into_inner))
    }

    /// Hears the name of each version from now on.
    pub(super) fn news(&self) -> watch::Receiver<String> {
        self.news.subscribe()
    }

    /// Puts a version in place and tells every page.
    pub(super) fn put(&self, version: Version) {
        let name = version.name.clone();
        let mut place = self.version.write().unwrap_or_else(PoisonError::into_inner);
        *place = Arc::new(version);
        drop(place);
        self.news.send_replace(name);
    }

    /// Keeps the files and shows what is wrong.
    fn fault(&self, fault: String) {
        eprintln!("{fault}");
        self.put(Version {
            name: sha256(fault.as_bytes()),
            store: self.version().store.clone(),
            sources: None,
            fault: Some(fault),
        });
    }
}

/// What is kept between two renderings.
pub(crate) struct Workbench {
    root: PathBuf,
    wasm: Arc<Wasm>,
    packed: Cache,
}

impl Workbench {
    pub(crate) fn new(root: &Path, wasm: Arc<Wasm>) -> Self {
        Self {
            root: root.to_path_buf(),
            wasm,
            packed: Cache::default(),
        }
    }

    /// Makes anew what a change touches. Does not come back when the program itself
    /// changed and could be built.
    pub(super) fn answer(&mut self, change: Change, current: &Current, own_file: &Path) {
        let made = match change {
            Change::Content => Ok(()),
            Change::Wasm => self.compile_wasm(),
            Change::Tool => restart::restart(&self.root, own_file),
        };
        match made {
            Ok(()) => self.render(current),
            Err(error) => current.fault(format!("{error:#}")),
        }
    }

    fn compile_wasm(&mut self) -> Result<()> {
        self.wasm = Arc::new(Wasm::bind(&compile(&self.root)?)?);
        Ok(())
    }

    /// Renders everything and puts it in place.
    pub(super) fn render(&mut self, current: &Current) {
        let started = Instant::now();
        match self.made() {
            Ok(version) => {
                let count = version.store.paths().count();
                current.put(version);
                println!("{count} files in {} ms", started.elapsed().as_millis());
            }
            Err(error) => current.fault(format!("{error:#}")),
        }
    }

    /// The whole version, with the reloading script in it.
    pub(crate) fn made(&mut self) -> Result<Version> {
        let sources = Sources::load(&self.root, &self.wasm)?;
        let mut files = render(&sources, &Edition::at_root())?;
        let name = name_of(&files);
        reload::add(&mut files, &name);
        service_worker::add(&mut files, &sources.page_files)?;
        self.packed
            .add(&mut files, Effort::Quick)
            .context("compressing")?;
        let store = Store::new(files);
        Ok(Version {
            name,
            store,
            sources: Some(sources),
            fault: None,
        })
    }
}

/// A name that changes with any path or content.
fn name_of(files: &Files) -> String {
    let mut all = String::new();
    for (path, bytes) in files {
        all.push_str(path);
        all.push_str(&sha256(bytes));
    }
    sha256(all.as_bytes())
}
