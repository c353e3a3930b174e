//! The wasm crates through cargo, with the target added when it is missing.

use crate::page::Figures;
use anyhow::{Context, Result, bail};
use std::env;
use std::fs;
use std::io::IsTerminal as _;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The target of everything that runs in a page.
pub const TARGET: &str = "wasm32-unknown-unknown";
/// The profile that keeps it small.
const PROFILE: &str = "site-wasm";
/// Packages that become one wasm, with the features they are built with. Each is built by
/// itself: the look-up does without the standard library, which another package's wish for
/// it would bring back.
const PACKAGES: [(&str, &str); 4] = [
    ("lookup", "small"),
    ("myset", "page"),
    ("numbers", "page"),
    ("api", ""),
];

/// Compiles the wasm packages and gives the folder their files are in.
///
/// # Errors
/// When the target cannot be added or the packages do not compile.
pub fn compile(root: &Path) -> Result<PathBuf> {
    add_target()?;
    println!("compiling the wasm …");
    let built = target_folder(root).join(TARGET).join(PROFILE);
    let programs = built.join("programs");
    fs::create_dir_all(&programs).with_context(|| format!("cannot make {}", programs.display()))?;
    let study = Figures::BUILDS.map(|(name, _, features)| (name, "study", features));
    let others = PACKAGES.map(|(package, features)| (package, package, features));
    for (name, package, features) in study.into_iter().chain(others) {
        compile_package(root, package, features)?;
        let file = programs.join(format!("{name}.wasm"));
        fs::copy(built.join(format!("{package}.wasm")), &file)
            .with_context(|| format!("cannot write {}", file.display()))?;
    }
    Ok(programs)
}

/// Compiles one package by itself, for what is no page's program, and gives its file.
///
/// # Errors
/// As [`compile`].
pub(super) fn compile_alone(root: &Path, package: &str, features: &str) -> Result<PathBuf> {
    add_target()?;
    compile_package(root, package, features)?;
    let built = target_folder(root).join(TARGET).join(PROFILE);
    Ok(built.join(format!("{package}.wasm")))
}

/// Compiles one package as a `cdylib` alone: while a package is an `rlib` as well, cargo
/// leaves link-time optimisation out, and the wasm is a third larger.
fn compile_package(root: &Path, package: &str, features: &str) -> Result<()> {
    let mut cargo = Command::new(cargo());
    cargo
        .current_dir(root)
        .args(["rustc", "--lib", "--crate-type", "cdylib"])
        .args(["--package", package, "--no-default-features"])
        .args(["--features", features])
        .args(["--target", TARGET, "--profile", PROFILE])
        .args(["--config", &without_home(root)?]);
    // Somebody who looks on sees how it gets on; a log stays short.
    if !std::io::stderr().is_terminal() {
        cargo.arg("--quiet");
    }
    let status = cargo.status().context("cannot start cargo")?;
    if !status.success() {
        bail!("{package} does not compile for {TARGET} (see cargo's messages above)");
    }
    Ok(())
}

/// A setting that keeps the folders of this machine out of the places that panics name: the
/// same sources give the same wasm, wherever they were built.
fn without_home(root: &Path) -> Result<String> {
    let cargo_home = env::var_os("CARGO_HOME").map(PathBuf::from);
    let user_home = env::var_os("HOME").map(PathBuf::from);
    let registry = cargo_home.or_else(|| Some(user_home?.join(".cargo")));
    let folders = [
        Some((root.to_path_buf(), ".")),
        registry.map(|home| (home, "cargo")),
    ];
    let flags: Vec<String> = folders
        .into_iter()
        .flatten()
        .map(|(folder, name)| format!("--remap-path-prefix={}={name}", folder.display()))
        .collect();
    // TOML reads strings as JSON writes them.
    let flags = serde_json::to_string(&flags).context("a folder's name is no text")?;
    Ok(format!("target.{TARGET}.rustflags={flags}"))
}

/// The cargo that started this program, or the one on the path.
pub fn cargo() -> String {
    env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned())
}

/// Where cargo puts what it builds.
pub fn target_folder(root: &Path) -> PathBuf {
    env::var_os("CARGO_TARGET_DIR").map_or_else(|| root.join("target"), |set| root.join(set))
}

/// Adds the wasm target through rustup, unless the compiler has it already.
fn add_target() -> Result<()> {
    if has_target() {
        return Ok(());
    }
    let status = Command::new("rustup")
        .args(["target", "add", TARGET])
        .status();
    match status {
        Ok(status) if status.success() => Ok(()),
        _ => bail!(
            "the compiler cannot build for {TARGET} and `rustup target add {TARGET}` failed; \
             add the target by hand"
        ),
    }
}

/// Whether the compiler's own folder holds the target's libraries.
fn has_target() -> bool {
    let rustc = env::var("RUSTC").unwrap_or_else(|_| "rustc".to_owned());
    let output = Command::new(rustc)
        .args(["--print", "target-libdir", "--target", TARGET])
        .output();
    output.is_ok_and(|output| {
        let folder = String::from_utf8_lossy(&output.stdout);
        Path::new(folder.trim()).is_dir()
    })
}
