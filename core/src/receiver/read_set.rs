//! Reads a whole profile into a receiver.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::vec::Vec;

use super::read_band::{read_bands, read_gang};
use super::read_chain::read_positions;
use super::reader::{Allowed, Reader};
use super::stage_profiles::{AgcProfile, DetectorProfile, MixerProfile};
use super::{Agc, Detector, Fault, Mixer, Receiver, SetProfile};
use crate::quantities::bands::Region;
use crate::quantities::conversion::Side;
use crate::quantities::range;
use crate::units::{Capacitance, Decibels, Frequency, Kind, Resistance, Voltage};

/// The IFs that a set can have.
const INTERMEDIATE: Allowed = Allowed::new(Kind::Frequency, 100e3, 2e6);
const REGION: Allowed = Allowed::new(Kind::Integer, 1.0, 3.0);
const GAIN: Allowed = Allowed::new(Kind::Decibels, range::DECIBELS.least, range::DECIBELS.most);
/// Resistors of detectors and filters.
const RESISTANCE: Allowed = Allowed::new(Kind::Resistance, 1.0, 1e9);
/// Capacitors of detectors and filters.
const CAPACITANCE: Allowed = Allowed::new(Kind::Capacitance, 1e-12, 1e-3);
const LOOP_GAIN: Allowed = Allowed::new(Kind::Ratio, 0.0, 1e6);
const DELAY: Allowed = Allowed::new(Kind::Voltage, 0.0, 1e3);

/// Harmonics of the oscillator from the second that a mixer can have gains for.
const MOST_HARMONICS: usize = 9;

/// The values of a set that its circuits are read with.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plan {
    /// In hertz.
    pub(super) intermediate: f64,
    pub(super) side: Side,
}

impl Plan {
    /// How far above the dial the oscillator belongs, in hertz; below zero for below.
    pub(super) fn distance(&self, intermediate: f64) -> f64 {
        match self.side {
            Side::Above => intermediate,
            Side::Below => -intermediate,
        }
    }
}

/// The receiver that a profile describes, or everything that is wrong with it.
pub(super) fn read(profile: &SetProfile) -> Result<Receiver, Vec<Fault>> {
    let mut reader = Reader::default();
    let intermediate = reader.value("if", &profile.intermediate, INTERMEDIATE);
    let side = read_side(&mut reader, profile);
    let plan = Plan { intermediate, side };
    let region = read_region(&mut reader, profile);
    let gang = read_gang(&mut reader, profile, plan);
    let bands = read_bands(&mut reader, profile, plan, gang.as_ref());
    let mixer = reader.within("mixer", |reader| read_mixer(reader, &profile.mixer));
    let positions = read_positions(&mut reader, profile, intermediate);
    let detector = profile
        .detector
        .as_ref()
        .map(|detector| reader.within("detector", |reader| read_detector(reader, detector)));
    let agc = profile.agc.as_ref();
    let agc = agc.map(|agc| reader.within("agc", |reader| read_agc(reader, agc)));
    reader.finish(()).map(|()| Receiver {
        name: profile.name.to_owned(),
        intermediate: Frequency::hz(intermediate),
        side,
        region,
        gang,
        bands,
        mixer,
        positions,
        position: 0,
        detector,
        agc,
    })
}

fn read_side(reader: &mut Reader, profile: &SetProfile) -> Side {
    if profile.side.is_absent() {
        reader.fault_of("side", "this is missing; it is above or below".to_owned());
    }
    let sides = [Side::Above, Side::Below];
    sides[reader.choice("side", &profile.side, &sides.map(Side::word))]
}

fn read_region(reader: &mut Reader, profile: &SetProfile) -> Region {
    let region = reader.optional("region", &profile.region, REGION);
    match region {
        Some(number) if number > 1.0 => Region::ALL[(number as usize - 1).min(2)],
        _ => Region::One,
    }
}

fn read_mixer(reader: &mut Reader, mixer: &MixerProfile) -> Mixer {
    let straight = reader.optional("straight-gain", &mixer.straight_gain, GAIN);
    let count = mixer.harmonic_gains.len();
    if count > MOST_HARMONICS {
        let says = format!("this has at most {MOST_HARMONICS} gains (got {count})");
        reader.fault_of("harmonic-gains", says);
    }
    let gain = |reader: &mut Reader, typed: &_| Decibels::db(reader.here(typed, GAIN));
    Mixer {
        straight_gain: Decibels::db(straight.unwrap_or(0.0)),
        harmonic_gains: reader.each("harmonic-gains", &mixer.harmonic_gains, gain),
    }
}

fn read_detector(reader: &mut Reader, detector: &DetectorProfile) -> Detector {
    let load = reader.value("load", &detector.load, RESISTANCE);
    let audio_load = reader.optional("audio-load", &detector.audio_load, RESISTANCE);
    let audio_load = audio_load.unwrap_or(load);
    if audio_load > load {
        let (audio, steady) = (Resistance::ohm(audio_load), Resistance::ohm(load));
        let says = format!("this is at most the load, {steady} (got {audio})");
        reader.fault_of("audio-load", says);
    }
    let capacitor = reader.value("capacitor", &detector.capacitor, CAPACITANCE);
    Detector {
        load: Resistance::ohm(load),
        audio_load: Resistance::ohm(audio_load),
        capacitor: Capacitance::f(capacitor),
    }
}

fn read_agc(reader: &mut Reader, agc: &AgcProfile) -> Agc {
    let loop_gain = reader.value("loop-gain", &agc.loop_gain, LOOP_GAIN);
    let resistance = reader.value("filter-resistance", &agc.filter_resistance, RESISTANCE);
    let capacitor = reader.value("filter-capacitor", &agc.filter_capacitor, CAPACITANCE);
    let delay = reader.optional("delay", &agc.delay, DELAY);
    Agc {
        loop_gain,
        filter_resistance: Resistance::ohm(resistance),
        filter_capacitor: Capacitance::f(capacitor),
        delay: Voltage::v(delay.unwrap_or(0.0)),
    }
}
