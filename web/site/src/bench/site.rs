//! How long the site itself takes to render. There is no rival: the goals are times.

use super::row::{Goal, Row};
use super::timing::median_seconds;
use crate::content::Content;
use crate::edition::Edition;
use crate::page_files::PageFiles;
use crate::render::{Files, Inputs, render};
use crate::service_worker;
use crate::wasm::Wasm;
use anyhow::Result;
use std::hint::black_box;
use std::path::Path;

/// Rows of the group `site`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    let wasm = Wasm::stand_in();
    let whole = median_seconds(|| {
        black_box(files(root, &wasm)?);
        Ok(())
    })?;
    Ok(vec![Row {
        what: "the whole site, read and rendered".to_owned(),
        ours: whole,
        rival: None,
        goal: Goal::Seconds(1.0),
    }])
}

/// Everything `serve` does but compressing.
fn files(root: &Path, wasm: &Wasm) -> Result<Files> {
    let content = Content::load(root)?;
    let page_files = PageFiles::load(root)?;
    let inputs = Inputs {
        content: &content,
        page_files: &page_files,
        wasm,
    };
    let mut files = render(&inputs, &Edition::at_root())?;
    service_worker::add(&mut files, &page_files)?;
    Ok(files)
}
