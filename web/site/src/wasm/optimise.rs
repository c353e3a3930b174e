//! Smaller wasm by wasm-opt, from npm.

use super::bind::{Bound, Wasm};
use crate::hashing::sha256;
use crate::tools::{NodeTools, node_tools};
use crate::wasm::target_folder;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

impl Wasm {
    /// Optimises every program for size. What was optimised before is taken from
    /// `target/site-tools/optimised`.
    ///
    /// # Errors
    /// When node or the optimiser cannot be had, or it refuses a program.
    pub fn optimised(mut self, root: &Path) -> Result<Self> {
        let (optimiser, kept) = places(root)?;
        for bound in self.all_mut() {
            optimise(bound, &optimiser, &kept)?;
        }
        Ok(self)
    }
}

impl Bound {
    /// The same program, optimised as those of the pages are.
    pub(super) fn optimised(mut self, root: &Path) -> Result<Self> {
        let (optimiser, kept) = places(root)?;
        optimise(&mut self, &optimiser, &kept)?;
        Ok(self)
    }
}

/// Where the optimiser is, and what it made before.
fn places(root: &Path) -> Result<(PathBuf, PathBuf)> {
    let tools = node_tools(root, NodeTools::Few)?;
    let optimiser = tools.join("node_modules/binaryen/bin/wasm-opt");
    let kept = target_folder(root).join("site-tools").join("optimised");
    fs::create_dir_all(&kept).with_context(|| format!("cannot make {}", kept.display()))?;
    Ok((optimiser, kept))
}

fn optimise(bound: &mut Bound, optimiser: &Path, kept: &Path) -> Result<()> {
    let name = sha256(&bound.wasm);
    let before = kept.join(format!("{name}.in.wasm"));
    let after = kept.join(format!("{name}.wasm"));
    if !after.exists() {
        fs::write(&before, &bound.wasm)
            .with_context(|| format!("cannot write {}", before.display()))?;
        run(optimiser, &before, &after)?;
    }
    bound.wasm = fs::read(&after).with_context(|| format!("cannot read {}", after.display()))?;
    Ok(())
}

/// Writes beside the place first, so that a half-written file is never taken for a result.
fn run(optimiser: &Path, before: &Path, after: &Path) -> Result<()> {
    let beside = after.with_extension("part");
    let output = Command::new("node")
        .arg(optimiser)
        .arg(before)
        .args(["-Oz", "--strip-producers", "-o"])
        .arg(&beside)
        .output()
        .context("cannot start node")?;
    if !output.status.success() {
        let said = String::from_utf8_lossy(&output.stderr);
        bail!("wasm-opt failed:\n{said}");
    }
    fs::rename(&beside, after).with_context(|| format!("cannot name {}", after.display()))?;
    fs::remove_file(before).with_context(|| format!("cannot remove {}", before.display()))
}
