//! `cargo site`: builds, serves and tests the site.

use anyhow::{Context, Result, bail};
use site::content::Content;
use site::edition::Edition;
use site::page_files::PageFiles;
use site::render::{Inputs, render};
use site::wasm::{Wasm, compile};
use std::path::{Path, PathBuf};

fn main() -> Result<()> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let root = repository_root();
    match arguments.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["build", "--out", out] => build(&root, Path::new(out)),
        _ => bail!("usage: cargo site build --out DIR"),
    }
}

/// The repository's root, from where this package was built.
fn repository_root() -> PathBuf {
    let package = Path::new(env!("CARGO_MANIFEST_DIR"));
    package.ancestors().nth(2).unwrap_or(package).to_path_buf()
}

/// Builds the hosted edition into a folder.
fn build(root: &Path, out: &Path) -> Result<()> {
    let content = Content::load(root)?;
    let page_files = PageFiles::load(root)?;
    let wasm = Wasm::bind(&compile(root)?).context("binding")?;
    let inputs = Inputs {
        content: &content,
        page_files: &page_files,
        wasm: &wasm,
    };
    let files = render(&inputs, &Edition::at_root())?;
    site::write::write(&files, out)?;
    println!("{} files in {}", files.len(), out.display());
    Ok(())
}
