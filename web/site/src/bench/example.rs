//! The core's side of a bench: an example of its own package, optimised, and what it prints.

use crate::wasm::{cargo, target_folder};
use anyhow::{Context, Result, bail};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// Compiles an example of the core with optimisation and says where it lies.
pub(super) fn built(root: &Path, name: &str) -> Result<PathBuf> {
    let status = Command::new(cargo())
        .current_dir(root)
        .args(["build", "--quiet", "--release", "--package", "superhet"])
        .args(["--example", name])
        .status()
        .context("cannot start cargo")?;
    if !status.success() {
        bail!("{name} does not compile (see cargo's messages above)");
    }
    let file = format!("{name}{}", std::env::consts::EXE_SUFFIX);
    Ok(target_folder(root).join("release/examples").join(file))
}

/// What a program prints, each line read.
pub(super) fn printed<T>(
    command: &mut Command,
    read: impl Fn(&str) -> Result<T>,
) -> Result<Vec<T>> {
    let line = format!("{command:?}");
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .with_context(|| format!("cannot start {line}"))?;
    if !output.status.success() {
        bail!("{line} failed (see its messages above)");
    }
    let text = String::from_utf8(output.stdout).context("no text came back")?;
    text.lines().map(read).collect()
}
