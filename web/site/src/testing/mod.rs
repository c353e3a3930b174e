//! `cargo site test`: everything from installing what is missing to the last journey.
//!
//! The site is built once as it would be published, once under a sub-path, and once as
//! the portable edition; then every test runs, natively, as wasm in a browser, and as
//! journeys through the built sites. Nothing can be left out: what is missing is a failure.

mod builds;
mod counts;
mod needs;
mod step;

use crate::tools::{NodeTools, find, install, node_tools, python};
use crate::wasm::{TARGET, Wasm, cargo, compile, target_folder};
use anyhow::{Context, Result, bail};
use builds::Builds;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

/// What the headless browser of the wasm tests is started with.
const WEBDRIVER: &str = r#"{"goog:chromeOptions": {"args": ["--headless=new", "--no-sandbox",
"--disable-gpu", "--disable-quic", "--disable-dev-shm-usage", "--no-first-run",
"--disable-background-networking", "--disable-component-update", "--disable-sync"]}}
"#;

/// Seconds a wasm test may take: the grid of all quantities runs unoptimised.
const WASM_PATIENCE: &str = "600";

/// Runs every test and prints a summary.
///
/// # Errors
/// When something cannot be had or built, or any test fails.
pub fn run(root: &Path) -> Result<()> {
    install(&needs::NEEDS)?;
    let tools = node_tools(root, NodeTools::Few)?;
    let python = python(root)?;
    let (building, builds) = step::timed("build", || build(root))?;
    let steps = [
        building,
        step::tests("native", &mut native(root)),
        step::tests("references", &mut references(root, &python)),
        step::tests("wasm", &mut wasm(root)?),
        step::tests("journeys", &mut journeys(root, &builds, &tools)),
    ];
    println!("\n{}", step::summary(&steps));
    if steps.iter().any(|step| !step.passed) {
        bail!("cargo site test: something failed");
    }
    Ok(())
}

/// Every package's own tests.
fn native(root: &Path) -> Command {
    let mut command = Command::new(cargo());
    command
        .current_dir(root)
        .args(["test", "--workspace", "--no-fail-fast"]);
    command
}

/// What other programs say of the same circuits, made anew.
fn references(root: &Path, python: &Path) -> Command {
    let mut command = Command::new(cargo());
    command
        .current_dir(root)
        .args(["test", "--package", "checks", "--features", "references"])
        .args(["--test", "regenerated", "--", "--nocapture"])
        .env("BEFORE_THE_BENCH_PYTHON", python);
    command
}

/// The tests that compare wasm with native results, in a headless browser.
fn wasm(root: &Path) -> Result<Command> {
    let runner = build_wasm_runner(root)?;
    let settings = target_folder(root).join("site-tools/webdriver.json");
    fs::write(&settings, WEBDRIVER)
        .with_context(|| format!("cannot write {}", settings.display()))?;
    let mut command = Command::new(cargo());
    command
        .current_dir(root)
        .args(["test", "--package", "api", "--target", TARGET, "--tests"])
        .arg("--no-fail-fast")
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner)
        .env("WASM_BINDGEN_TEST_WEBDRIVER_JSON", settings)
        .env("WASM_BINDGEN_TEST_TIMEOUT", WASM_PATIENCE)
        .env("CHROMEDRIVER", find("chromedriver")?);
    Ok(command)
}

/// The program that runs wasm tests in a browser.
fn build_wasm_runner(root: &Path) -> Result<PathBuf> {
    let status = Command::new(cargo())
        .current_dir(root)
        .args(["build", "--package", "checks", "--features", "browser"])
        .args(["--bin", "wasm-tests"])
        .status()
        .context("cannot start cargo")?;
    if !status.success() {
        bail!("the runner of the wasm tests does not compile (see cargo's messages above)");
    }
    let name = format!("wasm-tests{}", std::env::consts::EXE_SUFFIX);
    Ok(target_folder(root).join("debug").join(name))
}

/// Journeys through the built sites.
fn journeys(root: &Path, builds: &Builds, tools: &Path) -> Command {
    let mut command = Command::new(cargo());
    command
        .current_dir(root)
        .args(["test", "--package", "checks", "--features", "browser"])
        .args(["--lib", "--test", "journeys*", "--no-fail-fast"])
        // A journey's error says where it failed; the way through the runtime does not.
        .env("RUST_LIB_BACKTRACE", "0")
        .env("BEFORE_THE_BENCH_SITE", &builds.site)
        .env("BEFORE_THE_BENCH_SUB_PATH_SITE", &builds.under_sub_path)
        .env("BEFORE_THE_BENCH_PORTABLE", &builds.portable)
        .env(
            "BEFORE_THE_BENCH_AXE",
            tools.join("node_modules/axe-core/axe.min.js"),
        );
    command
}

/// Builds the three editions that are tested.
fn build(root: &Path) -> Result<Builds> {
    let wasm = Arc::new(Wasm::bind(&compile(root)?)?.optimised(root)?);
    Builds::make(root, &wasm)
}
