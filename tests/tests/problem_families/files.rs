//! Slips in family files and in the registry are reported where they stand.

use crate::root;
use site::families::{Families, References};
use site::report::Report;
use std::path::{Path, PathBuf};

/// A copy of the families that may be spoilt; it goes when it is dropped.
struct Copy {
    root: PathBuf,
}

impl Copy {
    fn new(name: &str) -> Copy {
        let root = std::env::temp_dir().join(format!("families-{}-{name}", std::process::id()));
        let folder = root.join("lessons/problems");
        std::fs::create_dir_all(&folder).expect("a folder for the copy");
        let originals = std::fs::read_dir(crate::root().join("lessons/problems"));
        for file in originals
            .expect("the families stand in lessons/problems")
            .flatten()
        {
            std::fs::copy(file.path(), folder.join(file.file_name())).expect("a file to copy");
        }
        Copy { root }
    }

    fn path(&self, file: &str) -> PathBuf {
        self.root.join("lessons/problems").join(file)
    }

    fn change(&self, file: &str, from: &str, to: &str) {
        let text = std::fs::read_to_string(self.path(file)).expect("the file is there");
        assert!(text.contains(from), "{file} does not hold {from:?}");
        std::fs::write(self.path(file), text.replacen(from, to, 1)).expect("the file is written");
    }

    /// Every fault, one a line.
    fn report(&self) -> String {
        let mut report = Report::default();
        Families::load(&self.root, &mut report);
        report.to_string()
    }
}

impl Drop for Copy {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.root);
    }
}

/// `lessons/problems/<file>:<line>:<column>` of a piece of a text.
fn place(root: &Path, file: &str, piece: &str) -> String {
    let path = format!("lessons/problems/{file}");
    let text = std::fs::read_to_string(root.join(&path)).expect("the file is there");
    let offset = text.find(piece).expect("the piece is there");
    let (line, column) = site::report::place(&text, offset);
    format!("{path}:{line}:{column}: ")
}

#[test]
fn slips_in_a_family_are_reported_where_they_stand() {
    let file = "oscillator-from-dial.toml";
    let slips = [
        (
            "answer = \"dial\"",
            "answer = \"dail\"",
            "\"dail\"",
            "no given, value or quantity",
        ),
        (
            "asks = \"dial\"",
            "asks = \"wobble\"",
            "\"wobble\"",
            "no given, value or quantity",
        ),
        (
            "answer = \"dial\"",
            "answer = \"dial +\"",
            "\"dial +\"",
            "cannot be read",
        ),
        (
            "is = \"oscillator?dial",
            "is = \"oscillator?dail",
            "\"oscillator?dail",
            "no parameter",
        ),
        (
            "{answer}.\",\n]",
            "{anser}.\",\n]",
            "\"One IF {side} the station is",
            "nothing is named",
        ),
        ("revision = 1", "revsion = 1", "revsion", "unknown field"),
        (
            "The station is on {dial}",
            "The station is on 9 kHz",
            "\"The station is on 9",
            "in a slot",
        ),
    ];
    for (number, (from, to, at, says)) in slips.into_iter().enumerate() {
        let copy = Copy::new(&format!("slip-{number}"));
        copy.change(file, from, to);
        let report = copy.report();
        let found = report
            .lines()
            .find(|line| line.contains(says))
            .unwrap_or_else(|| {
                panic!("{to:?} should be refused with {says:?}: {report}");
            });
        let at = place(&copy.root, file, at);
        assert!(found.starts_with(&at), "{at} expected: {found}");
    }
}

/// What a family says of a figure is held against the figure.
#[test]
fn a_figure_that_is_not_as_the_family_says_is_reported() {
    let file = "q-for-a-width.toml";
    for (number, (from, to, says)) in [
        (
            "from = \"10\"",
            "from = \"15\"",
            "lowest stop is 10, not 15",
        ),
        (
            "to = \"300\"",
            "to = \"250\"",
            "highest stop is 300, not 250",
        ),
        ("\"resonance\"", "\"rezonance\"", "no figure 'rezonance'"),
        (
            "parameter = \"q\"",
            "parameter = \"k\"",
            "does not read 'k'",
        ),
        (
            "parameter = \"q\"",
            "parameter = \"scale\"",
            "scale must be",
        ),
        ("\"f0={f0}\"", "\"fo={f0}\"", "does not read 'fo'"),
        ("begin = \"200\"", "begin = \"201\"", "whole multiples of 5"),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("figure-{number}"));
        copy.change(file, from, to);
        let report = copy.report();
        let found = report.lines().find(|line| line.contains(says));
        let found = found.unwrap_or_else(|| panic!("{to:?}: {says:?} is not in {report}"));
        let at = match from.starts_with("begin") {
            true => place(&copy.root, file, to.trim_start_matches("begin = ")),
            false => place(&copy.root, file, "[part.set-on]"),
        };
        assert!(found.starts_with(&at), "{at} expected: {found}");
    }
}

#[test]
fn a_sealed_revision_that_changed_is_refused() {
    let copy = Copy::new("changed");
    copy.change(
        "capacitor-swing.toml",
        "He wants its dial",
        "He wishes its dial",
    );
    let report = copy.report();
    let at = "lessons/problems/capacitor-swing.toml:2:12: capacitor-swing no longer says what";
    assert!(report.starts_with(at), "{report}");
    let seal = report
        .split('"')
        .nth(1)
        .expect("the seal it should have is printed");
    let registry = std::fs::read_to_string(copy.path("registry.toml")).expect("the registry");
    let old = registry
        .split("seal = \"")
        .nth(1)
        .expect("a seal")
        .split('"')
        .next()
        .expect("it");
    copy.change("registry.toml", old, seal);
    assert_eq!(copy.report(), "0 faults in the content");
}

/// Layout and comments may change: the seal is over what the family says.
#[test]
fn comments_do_not_break_the_seal() {
    let copy = Copy::new("comment");
    copy.change(
        "capacitor-swing.toml",
        "[[mistake]]",
        "# Another remark.\n\n[[mistake]]",
    );
    assert_eq!(copy.report(), "0 faults in the content");
}

#[test]
fn an_old_revision_stays_readable_beside_the_new() {
    let copy = Copy::new("revision");
    let (id, new) = ("capacitor-swing", "capacitor-swing.toml");
    std::fs::copy(copy.path(new), copy.path("capacitor-swing.r1.toml")).expect("the old one");
    copy.change(new, "revision = 1", "revision = 2");
    let registry = std::fs::read_to_string(copy.path("registry.toml")).expect("the registry");
    let row =
        format!("{registry}\n[[family]]\nnumber = 1\nid = \"{id}\"\nrevision = 2\nseal = \"\"\n");
    std::fs::write(copy.path("registry.toml"), row).expect("the registry is written");
    let report = copy.report();
    let seal = report
        .split("seal = \"")
        .nth(1)
        .expect("a seal is printed")
        .split('"')
        .next();
    copy.change(
        "registry.toml",
        "seal = \"\"",
        &format!("seal = \"{}\"", seal.expect("it")),
    );
    let mut report = Report::default();
    let families = Families::load(&copy.root, &mut report);
    assert_eq!(report.faults(), [], "{report}");
    assert_eq!(
        families.find(id).map(|found| found.family.revision),
        Some(2)
    );
    assert_eq!(
        families.numbered(1, 1).map(|found| found.family.revision),
        Some(1)
    );
    assert_eq!(families.newest().count() + 1, families.all().count());
}

#[test]
fn the_registry_and_the_files_must_agree() {
    let copy = Copy::new("registry");
    std::fs::write(copy.path("stray.toml"), "").expect("a file nobody registered");
    copy.change("registry.toml", "number = 2", "number = 7");
    copy.change(
        "registry.toml",
        "id = \"image-of-a-station\"",
        "id = \"image-of-a-sation\"",
    );
    let report = copy.report();
    for says in [
        "registry.toml:16:1: a new family takes the next number, 2 (got 7)",
        "image-of-a-sation.toml:1:1: cannot be read",
        "image-of-a-station.toml:1:1: no row of registry.toml accounts for this file",
        "stray.toml:1:1: no row of registry.toml accounts for this file",
    ] {
        assert!(report.contains(says), "{says}: {report}");
    }
}

#[test]
fn references_that_lead_nowhere_are_reported() {
    let mut report = Report::default();
    let families = Families::load(&root(), &mut report);
    let known = References {
        lessons: &["why-one-fixed-frequency", "oscillator-mixer-difference"],
        misconceptions: &["image-is-one-if-away", "oscillator-runs-at-the-if"],
        facts: &[("medium-wave-top-region-1", "1605 kHz")],
    };
    families.check_references(&known, &mut report);
    let said = report.to_string();
    for (file, piece, says) in [
        (
            "image-of-a-station.toml",
            "\"the-image\"",
            "there is no lesson \"the-image\"",
        ),
        (
            "image-of-a-station.toml",
            "\"sharper-if-removes-the-image\"",
            "misconceptions.toml has no entry \"sharper-if-removes-the-image\"",
        ),
        (
            "image-of-a-station.toml",
            "\"medium-wave-top-region-1\"",
            "reads \"1605 kHz\" in sources.toml (got \"1606.5 kHz\")",
        ),
        (
            "capacitor-swing.toml",
            "\"half-the-capacitance-twice-the-frequency\"",
            "misconceptions.toml has no entry \"half-the-capacitance-twice-the-frequency\"",
        ),
    ] {
        let at = place(&root(), file, piece);
        let found = said
            .lines()
            .any(|line| line.starts_with(&at) && line.contains(says));
        assert!(found, "{at}{says}: {said}");
    }
}
