//! The reference folders made anew by ngspice, NumPy and SciPy, and compared with what is
//! kept. Run by `cargo site test`, which sees to the programs.
//!
//! Environment: `BEFORE_THE_BENCH_PYTHON`, an interpreter that has what
//! `references/requirements.txt` asks for.

use anyhow::{Context as _, Result, bail, ensure};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Another version of a program, or another processor, rounds otherwise: a double holds 16
/// digits, a solved system loses three or four of them at Q 100, a solver's answer six.
const SAME: f64 = 1e-10;

/// A cell this far under the largest of its column is what rounding left of a zero.
const ZERO: f64 = 1e-12;

fn references() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("references")
}

fn made(script: &str, arguments: &[&str], name: &str) -> Result<PathBuf> {
    let python = std::env::var_os("BEFORE_THE_BENCH_PYTHON")
        .context("BEFORE_THE_BENCH_PYTHON names no interpreter: run `cargo site test`")?;
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("references")
        .join(name);
    if out.exists() {
        fs::remove_dir_all(&out)?;
    }
    let done = Command::new(python)
        .current_dir(references())
        .arg(script)
        .args(arguments)
        .arg("--out")
        .arg(&out)
        .output()?;
    if !done.status.success() {
        bail!("{script}: {}", String::from_utf8_lossy(&done.stderr));
    }
    Ok(out)
}

fn table(path: &Path) -> Result<Vec<Vec<f64>>> {
    let text = fs::read_to_string(path).with_context(|| path.display().to_string())?;
    let row = |line: &str| line.split(',').map(|cell| Ok(cell.parse()?)).collect();
    text.lines().map(row).collect()
}

/// Compares every table of a folder with the one kept; gives how many cells agree.
fn compare(name: &str, out: &Path) -> Result<usize> {
    let kept = fs::read_dir(references().join(name))?;
    let mut cells = 0;
    for entry in kept {
        let path = entry?.path();
        if path.extension().is_none_or(|end| end != "csv") {
            continue;
        }
        let file = path.file_name().context("no name")?;
        let (kept, new) = (table(&path)?, table(&out.join(file))?);
        ensure!(
            kept.len() == new.len(),
            "{file:?}: {} rows, {} kept",
            new.len(),
            kept.len()
        );
        let columns = kept.first().map_or(0, Vec::len);
        let largest = |column: usize| kept.iter().map(|row| row[column].abs()).fold(0.0, f64::max);
        let scales: Vec<f64> = (0..columns).map(largest).collect();
        for (number, (kept, new)) in kept.iter().zip(&new).enumerate() {
            ensure!(kept.len() == new.len(), "{file:?}, row {}", number + 1);
            for (column, (kept, new)) in kept.iter().zip(new).enumerate() {
                let allowed = (SAME * kept.abs()).max(ZERO * scales[column]);
                ensure!(
                    (kept - new).abs() <= allowed,
                    "{file:?}, row {}, cell {}: {new:e}, kept {kept:e}",
                    number + 1,
                    column + 1
                );
                cells += 1;
            }
        }
    }
    ensure!(cells > 0, "{name} keeps no table");
    println!("{name}: {cells} numbers made anew and the same");
    Ok(cells)
}

#[test]
fn ngspice_says_the_same_again() -> Result<()> {
    for name in ["if-transformers", "single-circuit", "tracking"] {
        compare(name, &made("ngspice.py", &[name], name)?)?;
    }
    Ok(())
}

#[test]
fn scipy_and_numpy_say_the_same_again() -> Result<()> {
    compare("solvers", &made("solvers.py", &[], "solvers")?)?;
    Ok(())
}
