//! Building this program anew and taking its own place.

use crate::wasm::cargo;
use anyhow::{Context, Result, bail};
use std::path::Path;
use std::process::Command;

/// Builds the tool; where that succeeds, the new program takes this one's place with the
/// same arguments and this function does not come back.
pub(super) fn restart(root: &Path, own_file: &Path) -> Result<()> {
    println!("the tool itself changed; building it …");
    let status = Command::new(cargo())
        .current_dir(root)
        .args(["build", "--quiet", "--package", "site"])
        .status()
        .context("cannot start cargo")?;
    if !status.success() {
        bail!("the tool does not compile (see cargo's messages in the terminal)");
    }
    let mut again = Command::new(own_file);
    again.args(std::env::args_os().skip(1));
    take_place(again)
}

/// The listening socket closes with this program, so the new one can listen again.
#[cfg(unix)]
fn take_place(mut again: Command) -> Result<()> {
    use std::os::unix::process::CommandExt as _;
    Err(again.exec()).context("cannot start the new tool")
}

#[cfg(not(unix))]
fn take_place(_: Command) -> Result<()> {
    bail!("the tool was built anew; end this one and start cargo site serve again")
}
