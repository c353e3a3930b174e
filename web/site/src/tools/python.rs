//! The project's own Python, with what the references and benches take from PyPI.

use crate::wasm::target_folder;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What is to be installed, below the repository's root.
const REQUIREMENTS: &str = "tests/references/requirements.txt";

/// An interpreter that has what the requirements name, in an environment below `target`.
/// It is made once, and again when the requirements change.
///
/// # Errors
/// When there is no Python that makes environments, or PyPI cannot be had.
pub fn python(root: &Path) -> Result<PathBuf> {
    let folder = target_folder(root).join("references-python");
    let interpreter = folder.join("bin/python");
    let wanted = fs::read(root.join(REQUIREMENTS)).context(REQUIREMENTS)?;
    let installed = folder.join("installed.txt");
    if fs::read(&installed).is_ok_and(|there| there == wanted) {
        return Ok(interpreter);
    }
    println!("installing what {REQUIREMENTS} pins …");
    run(Command::new("python3")
        .args(["-m", "venv", "--clear"])
        .arg(&folder))?;
    run(Command::new(&interpreter)
        .args([
            "-m",
            "pip",
            "install",
            "--quiet",
            "--disable-pip-version-check",
        ])
        .args(["--only-binary", ":all:", "--no-cache-dir", "--requirement"])
        .arg(root.join(REQUIREMENTS)))?;
    fs::write(&installed, wanted)
        .with_context(|| format!("cannot write {}", installed.display()))?;
    Ok(interpreter)
}

fn run(command: &mut Command) -> Result<()> {
    let line = format!("{command:?}");
    let status = command
        .status()
        .with_context(|| format!("cannot start {line}"))?;
    if !status.success() {
        bail!("{line} failed");
    }
    Ok(())
}
