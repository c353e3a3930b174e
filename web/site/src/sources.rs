//! Everything a site is rendered from.

use crate::content::Content;
use crate::page_files::PageFiles;
use crate::wasm::Wasm;
use anyhow::Result;
use std::path::Path;
use std::sync::Arc;

/// What authors wrote, the files of the pages, and the bound programs.
#[derive(Debug, Clone)]
pub struct Sources {
    /// What authors wrote.
    pub content: Content,
    /// Style sheets, scripts, fonts, icons.
    pub page_files: PageFiles,
    /// The bound wasm programs.
    pub wasm: Arc<Wasm>,
}

impl Sources {
    /// Reads what lies in the repository; the programs come from outside.
    ///
    /// # Errors
    /// Every fault of the content at once, or the file that cannot be read.
    pub fn load(root: &Path, wasm: &Arc<Wasm>) -> Result<Self> {
        Ok(Self {
            content: Content::load(root)?,
            page_files: PageFiles::load(root)?,
            wasm: Arc::clone(wasm),
        })
    }
}
