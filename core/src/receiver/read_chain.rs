//! Reads the IF transformers and the selectivity switch of a profile.

use alloc::string::String;
use alloc::vec::Vec;
use alloc::{format, vec};

use super::if_chain::IfChain;
use super::if_transformer_profile::{IfTransformerProfile, WindingProfile};
use super::reader::{Allowed, Reader, UNREAD};
use super::set_profile::{SelectivityProfile, SetProfile};
use super::whole_receiver::Position;
use crate::quantities::coils::coil_resistance;
use crate::quantities::range;
use crate::quantities::resonance::{capacitance, inductance};
use crate::quantities::transformer_network::{TransformerNetwork, TunedWinding};
use crate::units::{Capacitance, Frequency, Inductance, Kind, Resistance};

const COUPLING: Allowed = Allowed::new(Kind::Ratio, range::COUPLING.least, range::COUPLING.most);
const Q: Allowed = Allowed::new(Kind::Ratio, range::PAIR_Q.least, range::PAIR_Q.most);
/// The capacitor of a winding.
const CAPACITANCE: Allowed = Allowed::new(Kind::Capacitance, 1e-12, 100e-9);
/// The coil of a winding.
const INDUCTANCE: Allowed = Allowed::new(Kind::Inductance, 1e-9, 10.0);
/// What a valve or a diode puts across a winding.
const LOAD: Allowed = Allowed::new(Kind::Resistance, 100.0, 1e12);

/// The share of the IF within which a winding is tuned, either way.
const MOST_DETUNING: f64 = 0.25;

/// Reads the IF transformers, once for each position of the switch.
pub(super) fn read_positions(
    reader: &mut Reader,
    profile: &SetProfile,
    intermediate: f64,
) -> Vec<Position> {
    let count = profile.if_transformers.len();
    let most = range::STAGES.most as usize;
    if count == 0 || count > most {
        let says = format!("a set has from 1 to {most} IF transformers (got {count})");
        reader.fault_of("if-transformer", says);
    }
    let transformers = reader.each("if-transformer", &profile.if_transformers, |reader, one| {
        read_transformer(reader, one, intermediate)
    });
    let intermediate = Frequency::hz(intermediate);
    if profile.selectivity.is_empty() {
        let chain = IfChain::new(transformers, intermediate);
        let (id, name) = (String::new(), String::new());
        return vec![Position { id, name, chain }];
    }
    reader.each("selectivity", &profile.selectivity, |reader, position| {
        let couplings = read_couplings(reader, position, count);
        Position {
            id: position.id.clone(),
            name: position.name.clone(),
            chain: IfChain::new(coupled(&transformers, couplings.as_deref()), intermediate),
        }
    })
}

/// The couplings of a position; none where it leaves the transformers as they are.
fn read_couplings(
    reader: &mut Reader,
    position: &SelectivityProfile,
    transformers: usize,
) -> Option<Vec<f64>> {
    let count = position.couplings.len();
    if count == 0 {
        return None;
    }
    if count != transformers {
        let says =
            format!("this has one coupling for each of {transformers} transformers (got {count})");
        reader.fault_of("couplings", says);
    }
    let couplings = &position.couplings;
    Some(reader.each("couplings", couplings, |reader, typed| {
        reader.here(typed, COUPLING)
    }))
}

fn read_transformer(
    reader: &mut Reader,
    profile: &IfTransformerProfile,
    intermediate: f64,
) -> TransformerNetwork {
    let coupling = reader.value("coupling", &profile.coupling, COUPLING);
    let mut side =
        |key, winding| reader.within(key, |reader| read_winding(reader, winding, intermediate));
    TransformerNetwork {
        primary: side("primary", &profile.primary),
        secondary: side("secondary", &profile.secondary),
        coupling,
    }
}

fn read_winding(reader: &mut Reader, profile: &WindingProfile, intermediate: f64) -> TunedWinding {
    let detuning = read_detuning(reader, profile, intermediate);
    let resonant = Frequency::hz(intermediate + detuning);
    let (l, c) = read_coil_and_capacitor(reader, profile, resonant);
    let q = reader.value("q", &profile.q, Q);
    let load = reader.optional("load", &profile.load, LOAD);
    let series = coil_resistance(resonant, l, q);
    let winding = TunedWinding {
        inductance: l,
        capacitance: c,
        series,
        load: Resistance::ohm(load.unwrap_or(f64::INFINITY)),
    };
    let loaded_q = winding.loaded_q();
    if loaded_q < range::PAIR_Q.least {
        let least = range::PAIR_Q.least;
        let says = format!("this leaves a loaded Q of at least {least} (got {loaded_q:.2})");
        reader.fault_of("load", says);
    }
    winding
}

fn read_detuning(reader: &mut Reader, profile: &WindingProfile, intermediate: f64) -> f64 {
    let most = match intermediate * MOST_DETUNING {
        most if most.is_nan() => f64::MAX,
        most => most,
    };
    let allowed = Allowed::new(Kind::Frequency, -most, most);
    let detuning = reader.optional("detuning", &profile.detuning, allowed);
    detuning.unwrap_or(0.0)
}

/// One of the two is given; the other follows from where the winding is tuned.
fn read_coil_and_capacitor(
    reader: &mut Reader,
    profile: &WindingProfile,
    resonant: Frequency,
) -> (Inductance, Capacitance) {
    match (
        profile.inductance.is_absent(),
        profile.capacitance.is_absent(),
    ) {
        (true, false) => {
            let c = reader.value("capacitance", &profile.capacitance, CAPACITANCE);
            let c = Capacitance::f(c);
            (inductance(c, resonant), c)
        }
        (false, true) => {
            let l = Inductance::h(reader.value("inductance", &profile.inductance, INDUCTANCE));
            (l, capacitance(resonant, l))
        }
        (neither, _) => {
            let got = if neither { "neither" } else { "both" };
            reader.fault(format!(
                "one of capacitance and inductance is given; the other follows (got {got})"
            ));
            (Inductance::h(UNREAD), Capacitance::f(UNREAD))
        }
    }
}

/// The transformers with these couplings, or with their own.
fn coupled(
    transformers: &[TransformerNetwork],
    couplings: Option<&[f64]>,
) -> Vec<TransformerNetwork> {
    let mut coupled = transformers.to_vec();
    for (network, coupling) in coupled.iter_mut().zip(couplings.unwrap_or_default()) {
        network.coupling = *coupling;
    }
    coupled
}
