//! Reads the gang and the bands of a profile.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::band::{Band, PickUp};
use super::dial_scale::{DialScale, Gang, Section, ShapedSection};
use super::gang_profile::{GangProfile, ShapedProfile};
use super::read_circuit::read_circuit;
use super::read_set::Plan;
use super::reader::{Allowed, Reader, UNREAD};
use super::set_profile::{BandProfile, SetProfile};
use crate::quantities::range;
use crate::units::{Capacitance, Frequency, Kind};

/// What a dial can be marked with.
const DIAL: Allowed = Allowed::new(Kind::Frequency, 10e3, 100e6);
/// A section of a gang.
const SECTION: Allowed = Allowed::new(Kind::Capacitance, 0.1e-12, 10e-9);
const SHAPED_IF: Allowed = Allowed::new(Kind::Frequency, 100e3, 2e6);
const AERIAL_Q: Allowed = Allowed::new(Kind::Ratio, range::Q.least, range::Q.most);
const CIRCUITS: Allowed = Allowed::new(Kind::Integer, range::STAGES.least, range::STAGES.most);

/// Reads the gang, its own section for the oscillator with it.
pub(super) fn read_gang(reader: &mut Reader, profile: &SetProfile, plan: Plan) -> Option<Gang> {
    let gang = profile.gang.as_ref()?;
    Some(reader.within("gang", |reader| Gang {
        signal: read_section(reader, &gang.minimum, &gang.maximum),
        shaped: read_shaped(reader, gang, &profile.bands, plan),
    }))
}

fn read_section(reader: &mut Reader, minimum: &super::Typed, maximum: &super::Typed) -> Section {
    let section = Section {
        minimum: reader.value("minimum", minimum, SECTION),
        maximum: reader.value("maximum", maximum, SECTION),
    };
    if section.maximum <= section.minimum {
        let [least, most] = [section.minimum, section.maximum].map(Capacitance::f);
        let says = format!("this is above the minimum, {least} (got {most})");
        reader.fault_of("maximum", says);
    }
    section
}

fn read_shaped(
    reader: &mut Reader,
    gang: &GangProfile,
    bands: &[BandProfile],
    plan: Plan,
) -> Option<ShapedSection> {
    let shaped = gang.shaped.as_ref()?;
    reader.within("shaped", |reader| {
        let section = read_section(reader, &shaped.minimum, &shaped.maximum);
        let intermediate = reader.optional("if", &shaped.intermediate, SHAPED_IF);
        let distance = plan.distance(intermediate.unwrap_or(plan.intermediate));
        let scale = scale_of(reader, shaped, bands)?;
        let own = scale.moved(distance);
        if own.low <= 0.0 {
            let low = Frequency::hz(scale.low);
            let says = format!("an oscillator below needs a band above its IF (got {low})");
            reader.fault_of("band", says);
        }
        check_swing(reader, "maximum", &section, &own);
        Some(ShapedSection {
            scale,
            distance,
            section,
        })
    })
}

/// The marks of the band that a shaped section was cut for. Faults in them are reported with
/// the band itself.
fn scale_of(
    reader: &mut Reader,
    shaped: &ShapedProfile,
    bands: &[BandProfile],
) -> Option<DialScale> {
    let Some(band) = bands.iter().find(|band| band.id == shaped.band) else {
        let says = format!(
            "this is the id of one of the bands (got \"{}\")",
            shaped.band
        );
        reader.fault_of("band", says);
        return None;
    };
    Some(read_scale(&mut Reader::default(), band))
}

/// A section that is to cover a scale must swing at least as much as the scale does.
fn check_swing(reader: &mut Reader, key: &'static str, section: &Section, scale: &DialScale) {
    let (has, needs) = (section.maximum / section.minimum, scale.swing());
    if has < needs {
        let [low, high] = [scale.low, scale.high].map(Frequency::hz);
        let [has, needs] = [has, needs].map(times);
        let says = format!("{low} to {high} takes a gang that shrinks {needs} (got {has})");
        reader.fault_of(key, says);
    }
}

/// A ratio with two digits behind the point: `9.35 times`.
fn times(ratio: f64) -> String {
    let hundredths = libm::round(ratio * 100.0) / 100.0;
    let shown = crate::units::display::text(Kind::Ratio, hundredths);
    format!("{shown} times")
}

/// Reads the bands.
pub(super) fn read_bands(
    reader: &mut Reader,
    profile: &SetProfile,
    plan: Plan,
    gang: Option<&Gang>,
) -> Vec<Band> {
    if profile.bands.is_empty() {
        let says = "a set has at least one band (got none)".to_string();
        reader.fault_of("band", says);
    }
    reader.each("band", &profile.bands, |reader, band| {
        read_band(reader, band, plan, gang)
    })
}

fn read_band(reader: &mut Reader, band: &BandProfile, plan: Plan, gang: Option<&Gang>) -> Band {
    let scale = read_scale(reader, band);
    let distance = plan.distance(plan.intermediate);
    if scale.low + distance <= 0.0 {
        let low = Frequency::hz(scale.low);
        let says = format!("an oscillator below needs a band above its IF (got {low})");
        reader.fault_of("low", says);
    }
    if let Some(gang) = gang {
        check_swing(reader, "low", &gang.signal, &scale);
    }
    let pick_ups = [PickUp::Rod, PickUp::Wire];
    let pick_up = pick_ups[reader.choice("pick-up", &band.pick_up, &["rod", "wire"])];
    let circuits = reader.optional("aerial-circuits", &band.aerial_circuits, CIRCUITS);
    let mut circuit = |key, profile: &Option<_>| {
        let profile = profile.as_ref()?;
        reader.within(key, |reader| {
            read_circuit(reader, key, profile, plan, gang, &scale)
        })
    };
    let (aerial, oscillator) = (
        circuit("aerial", &band.aerial),
        circuit("oscillator", &band.oscillator),
    );
    Band {
        id: band.id.clone(),
        name: band.name.clone(),
        pick_up,
        aerial_q: reader.value("aerial-q", &band.aerial_q, AERIAL_Q),
        aerial_circuits: circuits.unwrap_or(1.0) as u32,
        aerial,
        oscillator,
        scale,
    }
}

fn read_scale(reader: &mut Reader, band: &BandProfile) -> DialScale {
    let low = reader.value("low", &band.low, DIAL);
    let high = reader.value("high", &band.high, DIAL);
    if high <= low {
        let [low, high] = [low, high].map(Frequency::hz);
        let says = format!("this is above the lowest mark, {low} (got {high})");
        reader.fault_of("high", says);
        return DialScale {
            low: UNREAD,
            high: UNREAD,
        };
    }
    DialScale { low, high }
}
