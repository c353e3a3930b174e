//! Ten thousand tracking sets that nobody chose: their parts, put back into the circuit.
//!
//! The circuit's own arithmetic stands here a second time, so that the core's parts are
//! judged by nothing of the core's.

#![expect(
    clippy::unwrap_used,
    reason = "a set that has no curve fails its test, where it stands"
)]

use rand_core::{Rng, SeedableRng};
use rand_pcg::Pcg64Mcg;
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::{Arrangement, OscillatorParts, ThreePoints};
use superhet::units::{Frequency, Inductance};

const SETS: usize = 10_000;
const SEED: u64 = 20_261_125;

/// The dial settings, in hertz, and how far apart they are at least.
const DIALS: [f64; 2] = [100e3, 30e6];
const APART: f64 = 1.02;

/// The IF and the signal coil: 1 µH tunes 30 MHz, 10 mH tunes 100 kHz.
const MIDDLES: [f64; 2] = [100e3, 2e6];
const COILS: [f64; 2] = [1e-6, 10e-3];

/// What the work asks for, relative.
const AGREEMENT: f64 = 1e-9;

/// One draw: the settings lowest first, the IF and the signal coil.
#[derive(Debug)]
struct Set {
    dials: [f64; 3],
    middle: f64,
    coil: f64,
}

struct Draw(Pcg64Mcg);

impl Draw {
    /// A number between two, each part of the logarithm alike.
    fn between(&mut self, [low, high]: [f64; 2]) -> f64 {
        let share = (self.0.next_u64() >> 11) as f64 / (1_u64 << 53) as f64;
        low * (high / low).powf(share)
    }

    /// Three settings that keep apart; others are drawn again. Every other draw keeps
    /// within a tenth of the frequency, where the settings crowd.
    fn dials(&mut self, crowded: bool) -> [f64; 3] {
        loop {
            let within = if crowded {
                let low = self.between([DIALS[0], DIALS[1] / 1.1]);
                [low, 1.1 * low]
            } else {
                DIALS
            };
            let mut dials = [(); 3].map(|()| self.between(within));
            dials.sort_by(f64::total_cmp);
            if dials[1] >= APART * dials[0] && dials[2] >= APART * dials[1] {
                return dials;
            }
        }
    }

    fn set(&mut self, crowded: bool) -> Set {
        Set {
            dials: self.dials(crowded),
            middle: self.between(MIDDLES),
            coil: self.between(COILS),
        }
    }
}

/// Where the circuit resonates with the gang at `Cg = K/f²`.
fn resonance(parts: &OscillatorParts, coil: f64, dial: f64) -> f64 {
    let tau = std::f64::consts::TAU;
    let (padder, trimmer) = (parts.padder.to_f(), parts.trimmer.to_f());
    let gang = 1.0 / ((tau * dial) * (tau * dial) * coil);
    let in_series = |one: f64, other: f64| 1.0 / (1.0 / one + 1.0 / other);
    let whole = match parts.arrangement {
        Arrangement::AcrossCoil => trimmer + in_series(gang, padder),
        Arrangement::AcrossGang => in_series(gang + trimmer, padder),
    };
    1.0 / (tau * (parts.inductance.to_h() * whole).sqrt())
}

/// The worst of a set's three settings, relative.
fn worst(set: &Set, arrangement: Arrangement) -> f64 {
    let dials = set.dials.map(Frequency::hz);
    let curve = ThreePoints::new(dials, Frequency::hz(set.middle), Side::Above).unwrap();
    let parts = OscillatorParts::new(&curve, Inductance::h(set.coil), arrangement);
    let parts = parts.unwrap_or_else(|error| panic!("{set:?}: {error}"));
    let values = [
        parts.padder.to_f(),
        parts.trimmer.to_f(),
        parts.inductance.to_h(),
    ];
    assert!(
        values.iter().all(|value| *value > 0.0 && value.is_finite()),
        "{set:?}: {parts:?}"
    );
    let off = |dial: f64| (resonance(&parts, set.coil, dial) / (dial + set.middle) - 1.0).abs();
    set.dials.into_iter().map(off).fold(0.0, f64::max)
}

#[test]
fn ten_thousand_sets_resonate_at_dial_plus_if() {
    let mut draw = Draw(Pcg64Mcg::seed_from_u64(SEED));
    for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
        let mut most = 0.0_f64;
        for number in 0..SETS {
            let set = draw.set(number % 2 == 1);
            let worst = worst(&set, arrangement);
            assert!(worst < AGREEMENT, "{arrangement:?}, {set:?}: {worst:e}");
            most = most.max(worst);
        }
        println!("{arrangement:?}: {SETS} sets, the worst setting {most:.1e} off");
    }
}
