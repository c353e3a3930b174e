//! Netlists and rows as the reference folders keep them.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;
use superhet::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use superhet::units::{Capacitance, Inductance, Resistance};

/// A folder of `tests/references`.
pub(crate) fn folder(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("references")
        .join(name)
}

/// The names of a folder's netlists, in order.
pub(crate) fn netlists(name: &str) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder(name))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "cir"))
        .map(|path| path.file_stem().unwrap().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

/// The rows of a CSV without a head, as numbers.
pub(crate) fn rows(name: &str, file: &str) -> Vec<Vec<f64>> {
    let path = folder(name).join(file);
    let text = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{file}: {error}"));
    let row = |line: &str| line.split(',').map(|cell| cell.parse().unwrap()).collect();
    text.lines().map(row).collect()
}

/// The values of a netlist's parts by their names, in SI units.
pub(crate) struct Parts(BTreeMap<String, f64>);

impl Parts {
    pub(crate) fn read(name: &str, netlist: &str) -> Self {
        let path = folder(name).join(format!("{netlist}.cir"));
        let text = fs::read_to_string(path).unwrap();
        let parts = text
            .lines()
            .take_while(|line| !line.starts_with(".control"));
        let parts = parts.filter(|line| !line.starts_with('*'));
        Self(
            parts
                .map(|line| {
                    let mut words = line.split_whitespace();
                    let name = words.next().unwrap().to_owned();
                    (name, value(words.next_back().unwrap()))
                })
                .collect(),
        )
    }

    pub(crate) fn value(&self, name: &str) -> f64 {
        *self
            .0
            .get(name)
            .unwrap_or_else(|| panic!("the netlist has no {name}"))
    }

    /// The transformers of a chain, first to last.
    pub(crate) fn chain(&self) -> Vec<TransformerNetwork> {
        (1..)
            .take_while(|number| self.0.contains_key(&format!("K{number}")))
            .map(|number| TransformerNetwork {
                primary: self.winding('P', number),
                secondary: self.winding('S', number),
                coupling: self.value(&format!("K{number}")),
            })
            .collect()
    }

    fn winding(&self, side: char, number: u32) -> TunedWinding {
        let part = |letters: &str| self.value(&format!("{letters}{side}{number}"));
        TunedWinding {
            inductance: Inductance::h(part("L")),
            capacitance: Capacitance::f(part("C")),
            series: Resistance::ohm(part("R")),
            load: Resistance::ohm(part("RA")),
        }
    }
}

/// A number with `p` for pico or without a suffix: all that the netlists use.
fn value(text: &str) -> f64 {
    match text.strip_suffix('p') {
        // Read as one decimal, so that it is the same double as the simulator's.
        Some(number) => format!("{number}e-12").parse().unwrap(),
        None => text.parse().unwrap(),
    }
}
