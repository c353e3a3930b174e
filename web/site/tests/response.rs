//! `cargo site response` run as a program.
#![allow(clippy::unwrap_used)] // in the helpers of tests, as in the tests

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const HEADER: &str = "frequency_hz,wanted_db,image_db,if_db,harmonic_db,total_db";

fn built_in() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../lessons/set-profiles.toml")
}

fn response(set: &Path, options: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_site"));
    command.arg("response").arg("--set").arg(set).args(options);
    command.output().unwrap()
}

fn rows(output: &Output) -> Vec<[f64; 6]> {
    assert!(output.status.success(), "{output:?}");
    assert!(output.stderr.is_empty(), "{output:?}");
    let text = std::str::from_utf8(&output.stdout).unwrap();
    let mut lines = text.lines();
    assert_eq!(lines.next(), Some(HEADER));
    let row = |line: &str| {
        let columns: Vec<f64> = line
            .split(',')
            .map(|column| column.parse().unwrap())
            .collect();
        columns.try_into().unwrap()
    };
    lines.map(row).collect()
}

const SWEEP: [&str; 8] = [
    "--dial", "1000 kHz", "--from", "900 kHz", "--to", "2 MHz", "--points", "11001",
];

#[test]
fn the_columns_are_in_decibels_under_the_wanted_peak() {
    let rows = rows(&response(&built_in(), &SWEEP));
    assert_eq!(rows.len(), 11_001);
    assert_eq!(
        (rows[0][0], rows[1][0], rows[11_000][0]),
        (900e3, 900.1e3, 2e6)
    );
    let least = |column: usize| {
        let better = |a: &&[f64; 6], b: &&[f64; 6]| a[column].total_cmp(&b[column]);
        *rows.iter().min_by(better).unwrap()
    };
    // Of points 100 Hz apart one is within 50 Hz of the peak, which is flat to a
    // thousandth of a decibel there.
    let wanted = least(1);
    assert!(wanted[1] > -1e-9 && wanted[1] < 0.01, "{wanted:?}");
    assert!((wanted[0] - 1e6).abs() < 10e3, "{wanted:?}");
    // The image stands twice the IF above it, and one of the two is missing everywhere.
    let image = least(2);
    assert!(
        (image[0] - wanted[0] - 940e3).abs() < 2e3,
        "{image:?} {wanted:?}"
    );
    assert!(
        rows.iter()
            .all(|row| row[1].is_infinite() || row[2].is_infinite())
    );
    // The powers add: no path is stronger than the total, and four at most make 6 dB.
    for row in &rows {
        let strongest = row[1..5].iter().copied().fold(f64::INFINITY, f64::min);
        assert!(row[5] <= strongest && row[5] > strongest - 6.03, "{row:?}");
    }
}

#[test]
fn a_path_that_is_not_there_is_inf() {
    let output = response(&built_in(), &SWEEP);
    let text = String::from_utf8(output.stdout).unwrap();
    let first: Vec<&str> = text.lines().nth(1).unwrap().split(',').collect();
    assert_eq!((first[0], first[2]), ("900000", "inf"));
}

#[test]
fn another_set_of_the_file_is_had_by_its_id() {
    let mut options = vec!["--id", "saltbox-five"];
    options.extend(SWEEP);
    let narrow = rows(&response(&built_in(), &options));
    options.extend(["--selectivity", "wide"]);
    let wide = rows(&response(&built_in(), &options));
    let passed = |rows: &[[f64; 6]]| rows.iter().filter(|row| row[1] < 6.0).count();
    assert!(passed(&wide) > passed(&narrow));
}

/// A file of its own for one test.
fn file(name: &str, text: &str) -> PathBuf {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, text).unwrap();
    path
}

fn refused(set: &Path, options: &[&str]) -> Vec<String> {
    let output = response(set, options);
    assert_eq!(output.status.code(), Some(2), "{output:?}");
    assert!(output.stdout.is_empty(), "{output:?}");
    let text = String::from_utf8(output.stderr).unwrap();
    text.lines().map(str::to_owned).collect()
}

#[test]
fn every_fault_of_the_file_is_one_line_with_its_place() {
    let text = std::fs::read_to_string(built_in()).unwrap();
    let broken = text
        .replacen("if = \"470 kHz\"", "if = \"470\"", 1)
        .replacen("aerial-q = 60", "aerial-q = 0", 1)
        .replacen("padder = \"310 pF\"", "padder = \"310 µH\"", 1);
    let path = file("faults.toml", &broken);
    let lines = refused(&path, &SWEEP);
    assert_eq!(lines.len(), 3, "{lines:#?}");
    for (line, (place, says)) in lines.iter().zip([
        ("if = \"470\"", "if: a frequency needs a unit"),
        (
            "aerial-q = 0",
            "band 1, aerial-q: this is from 1 to 1000 (got 0)",
        ),
        (
            "padder = \"310 µH\"",
            "band 1, oscillator, padder: a capacitance is typed in",
        ),
    ]) {
        let before = &broken[..broken.find(place).unwrap()];
        let number = before.matches('\n').count() + 1;
        let column = place.find('=').unwrap() + 3;
        let start = format!("{}:{number}:{column}: {says}", path.display());
        assert!(line.starts_with(&start), "{line} against {start}");
    }
}

#[test]
fn a_file_that_is_no_set_file_is_refused_with_all_that_is_wrong() {
    let unknown = file(
        "unknown.toml",
        "[[set]]\nname = \"One\"\nsides = \"above\"\n",
    );
    let lines = refused(&unknown, &SWEEP);
    assert_eq!(lines.len(), 5, "{lines:?}");
    for says in [
        "unknown.toml:1:1: if: this is missing",
        "unknown.toml:1:1: side: this is missing",
        "unknown.toml:1:1: band: a set has at least one band",
        "unknown.toml:1:1: if-transformer: a set has from 1 to",
        "unknown.toml:3:1: unknown field `sides`",
    ] {
        assert!(lines.iter().any(|line| line.contains(says)), "{lines:?}");
    }
    let empty = refused(&file("empty.toml", ""), &SWEEP);
    assert!(empty[0].ends_with("this file has no [[set]]"), "{empty:?}");
    let absent = refused(Path::new("no-such-file.toml"), &SWEEP);
    assert!(absent[0].starts_with("no-such-file.toml: "), "{absent:?}");
}

#[test]
fn settings_that_make_no_sense_are_refused() {
    let with = |at: usize, value: &'static str| {
        let mut options = SWEEP;
        options[at] = value;
        refused(&built_in(), &options).join("\n")
    };
    assert!(with(1, "400 kHz").starts_with("dial: this set has Long wave 150 kHz to 285 kHz"));
    assert!(with(1, "1000").starts_with("--dial: a frequency needs a unit"));
    assert!(with(5, "100 kHz").starts_with("--to must be above --from, 900 kHz"));
    assert!(with(7, "1").starts_with("--points is a whole number from 2 to"));
    let missing = refused(&built_in(), &SWEEP[2..]).join("\n");
    assert!(missing.ends_with("--dial is missing"), "{missing}");
    let mut options = SWEEP.to_vec();
    options.extend(["--id", "nobody"]);
    let nobody = refused(&built_in(), &options).join("\n");
    assert!(
        nobody.ends_with("no set in this file has the id \"nobody\""),
        "{nobody}"
    );
}
