//! Programs from npm, exactly as `web/site/tools/package-lock.json` pins them.

use crate::tools::apt::{Need, install};
use crate::wasm::target_folder;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What npm's programs need from Debian.
const NEEDS: [Need; 2] = [
    Need::program("nodejs", &["node", "--version"]),
    Need::program("npm", &["npm", "--version"]),
];

/// Which of the pinned packages are wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NodeTools {
    /// The optimiser and the accessibility rules.
    Few,
    /// Lighthouse too, which brings a hundred packages.
    All,
}

/// The folder whose `node_modules` holds the pinned packages, installed when they are
/// not there or the lock has changed.
///
/// # Errors
/// When node is missing and may not be installed, or npm fails.
pub fn node_tools(root: &Path, which: NodeTools) -> Result<PathBuf> {
    install(&NEEDS)?;
    let source = root.join("web/site/tools");
    let name = match which {
        NodeTools::Few => "node-few",
        NodeTools::All => "node-all",
    };
    let folder = target_folder(root).join("site-tools").join(name);
    let lock = read(&source.join("package-lock.json"))?;
    let done = folder.join("installed-lock.json");
    if fs::read(&done).is_ok_and(|installed| installed == lock) {
        return Ok(folder);
    }
    fs::create_dir_all(&folder).with_context(|| format!("cannot make {}", folder.display()))?;
    copy(&source, &folder, "package.json")?;
    copy(&source, &folder, "package-lock.json")?;
    ci(&folder, which)?;
    fs::write(&done, lock).with_context(|| format!("cannot write {}", done.display()))?;
    Ok(folder)
}

fn ci(folder: &Path, which: NodeTools) -> Result<()> {
    println!("installing what package-lock.json pins …");
    let mut npm = Command::new("npm");
    npm.current_dir(folder)
        .args(["ci", "--no-audit", "--no-fund", "--ignore-scripts"]);
    if which == NodeTools::Few {
        npm.arg("--omit=dev");
    }
    let output = npm.output().context("cannot start npm")?;
    if !output.status.success() {
        let said = String::from_utf8_lossy(&output.stderr);
        bail!("npm ci failed in {}:\n{said}", folder.display());
    }
    Ok(())
}

fn read(path: &Path) -> Result<Vec<u8>> {
    fs::read(path).with_context(|| format!("cannot read {}", path.display()))
}

fn copy(from: &Path, to: &Path, name: &str) -> Result<()> {
    fs::copy(from.join(name), to.join(name))
        .map(|_| ())
        .with_context(|| format!("cannot copy {name} to {}", to.display()))
}
