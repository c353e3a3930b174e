//! Reads an aerial or an oscillator circuit of a profile.

use alloc::format;
use alloc::string::ToString;

use super::circuit_profile::CircuitProfile;
use super::dial_scale::{DialScale, Gang};
use super::gang_circuit::GangCircuit;
use super::read_set::Plan;
use super::reader::{Allowed, Reader};
use crate::quantities::tracking::{Arrangement, OscillatorParts, ThreePoints};
use crate::units::{Capacitance, Frequency, Inductance, Kind};

/// A coil that a gang tunes.
const COIL: Allowed = Allowed::new(Kind::Inductance, 1e-9, 1.0);
/// Strays and trimmers: 0 pF is as good as none.
const TRIMMER: Allowed = Allowed::new(Kind::Capacitance, 0.0, 10e-9);
const PADDER: Allowed = Allowed::new(Kind::Capacitance, 1e-12, 1e-6);

/// Reads the circuit under `key`.
pub(super) fn read_circuit(
    reader: &mut Reader,
    key: &str,
    profile: &CircuitProfile,
    plan: Plan,
    gang: Option<&Gang>,
    scale: &DialScale,
) -> Option<GangCircuit> {
    let Some(gang) = gang else {
        reader.fault("a circuit with parts needs a gang (got none)".to_string());
        return None;
    };
    if profile.exact_at.is_empty() {
        return Some(read_parts(reader, profile));
    }
    if key != "oscillator" {
        let says = "only an oscillator is fitted so; give the parts (got three settings)";
        reader.fault_of("exact-at", says.to_string());
        return None;
    }
    read_fitted(reader, profile, plan, gang, scale)
}

fn read_parts(reader: &mut Reader, profile: &CircuitProfile) -> GangCircuit {
    let inductance = reader.value("inductance", &profile.inductance, COIL);
    let strays = reader.optional("strays", &profile.strays, TRIMMER);
    let trimmer = reader.optional("trimmer", &profile.trimmer, TRIMMER);
    GangCircuit {
        inductance: Inductance::h(inductance),
        strays: Capacitance::f(strays.unwrap_or(0.0)),
        trimmer: Capacitance::f(trimmer.unwrap_or(0.0)),
        arrangement: read_arrangement(reader, profile),
        padder: reader
            .optional("padder", &profile.padder, PADDER)
            .map(Capacitance::f),
    }
}

fn read_arrangement(reader: &mut Reader, profile: &CircuitProfile) -> Arrangement {
    let across = [Arrangement::AcrossCoil, Arrangement::AcrossGang];
    across[reader.choice("trimmer-across", &profile.trimmer_across, &["coil", "gang"])]
}

/// An oscillator whose parts are worked out to be exact at three dial settings, on the coil
/// and strays that the dial is printed for.
fn read_fitted(
    reader: &mut Reader,
    profile: &CircuitProfile,
    plan: Plan,
    gang: &Gang,
    scale: &DialScale,
) -> Option<GangCircuit> {
    check_alone(reader, profile, gang);
    let arrangement = read_arrangement(reader, profile);
    let setting = Allowed::new(Kind::Frequency, scale.low, scale.high);
    let settings = reader.each("exact-at", &profile.exact_at, |reader, typed| {
        Frequency::hz(reader.here(typed, setting))
    });
    let Ok(settings) = <[Frequency; 3]>::try_from(settings) else {
        let count = profile.exact_at.len();
        reader.fault_of("exact-at", format!("this is three settings (got {count})"));
        return None;
    };
    let coil =
        1.0 / (4.0 * core::f64::consts::PI * core::f64::consts::PI * gang.signal.constant(scale));
    let parts = ThreePoints::new(settings, Frequency::hz(plan.intermediate), plan.side)
        .and_then(|curve| OscillatorParts::new(&curve, Inductance::h(coil), arrangement));
    match parts {
        Ok(parts) => Some(GangCircuit {
            inductance: parts.inductance,
            strays: Capacitance::f(gang.signal.strays(scale)),
            trimmer: parts.trimmer,
            arrangement,
            padder: Some(parts.padder),
        }),
        Err(error) => {
            reader.fault_of("exact-at", error.to_string());
            None
        }
    }
}

/// Settings stand instead of parts, and for alike sections.
fn check_alone(reader: &mut Reader, profile: &CircuitProfile, gang: &Gang) {
    let parts = [
        ("inductance", &profile.inductance),
        ("strays", &profile.strays),
        ("trimmer", &profile.trimmer),
        ("padder", &profile.padder),
    ];
    for (key, _) in parts.iter().filter(|(_, typed)| !typed.is_absent()) {
        let says = "exact-at stands instead of the parts (got both)";
        reader.fault_of(key, says.to_string());
    }
    if gang.shaped.is_some() {
        let says = "this is for alike sections (got a shaped one)";
        reader.fault_of("exact-at", says.to_string());
    }
}
