//! What each adjuster of an oscillator does to its frequency along the dial.
//!
//! In scope: padder, trimmer and core, each turned by a small share of itself. Left out:
//! the adjusters of the signal circuit, whose trimmer and core act on the gang constant.
//!
//! With `W` the whole capacitance across the coil, `fo = 1/(2π√(L·W))`, so that
//! `dfo/fo = −½·dL/L − ½·dW/W`, and
//!
//! - trimmer across the coil: `dW/dCt = 1`; across the gang: `dW/dCt = (Cp/(Cg + Ct + Cp))²`;
//! - padder: `dW/dCp = (x/(x + Cp))²`, `x` being what stands in series with it.
//!
//! So a core moves every setting by the same share, a trimmer acts most where the gang is
//! open and the padder where it is closed: that is why each has its end of the dial.

use super::{Arrangement, OscillatorParts, gang_capacitance};
use crate::units::{Capacitance, Frequency, Inductance};

/// An adjuster of the oscillator circuit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Adjuster {
    /// The capacitor in series.
    Padder,
    /// The capacitor in parallel.
    Trimmer,
    /// The core of the coil.
    Core,
}

/// By which share of itself the oscillator's frequency moves, for each small share that an
/// adjuster's value is changed by; below zero, since more of anything lowers it.
///
/// ```
/// use superhet::quantities::tracking::{Adjuster, Arrangement, OscillatorParts, sensitivity};
/// use superhet::units::{Capacitance, Inductance};
/// let parts = OscillatorParts {
///     padder: Capacitance::pf(400.0),
///     trimmer: Capacitance::pf(50.0),
///     inductance: Inductance::uh(100.0),
///     arrangement: Arrangement::AcrossCoil,
/// };
/// // Gang 400 pF: 200 pF in series with the padder, 250 pF in all. The trimmer is a fifth
/// // of it, so 1 % more trimmer is 0.1 % less frequency.
/// let gang = Capacitance::pf(400.0);
/// assert!((sensitivity(&parts, Adjuster::Trimmer, gang) + 0.1).abs() < 1e-12);
/// // The padder: (400/800)² × 400/250 = 0.4, half of it 0.2.
/// assert!((sensitivity(&parts, Adjuster::Padder, gang) + 0.2).abs() < 1e-12);
/// assert_eq!(sensitivity(&parts, Adjuster::Core, gang), -0.5);
/// ```
#[must_use]
pub fn sensitivity(parts: &OscillatorParts, adjuster: Adjuster, gang: Capacitance) -> f64 {
    let (padder, trimmer) = (parts.padder.to_f(), parts.trimmer.to_f());
    let (beside_padder, across_coil) = match parts.arrangement {
        Arrangement::AcrossCoil => (gang.to_f(), trimmer),
        Arrangement::AcrossGang => (gang.to_f() + trimmer, 0.0),
    };
    // What stands beside the padder reaches the coil by this share, squared.
    let padder_share = padder / (beside_padder + padder);
    let rest_share = beside_padder / (beside_padder + padder);
    let whole = across_coil + beside_padder * padder_share;
    let moved = match adjuster {
        Adjuster::Core => whole,
        Adjuster::Padder => rest_share * rest_share * padder,
        Adjuster::Trimmer => match parts.arrangement {
            Arrangement::AcrossCoil => trimmer,
            Arrangement::AcrossGang => padder_share * padder_share * trimmer,
        },
    };
    -0.5 * (moved / whole)
}

/// How much an adjuster, changed by a share of itself, moves the tracking error at a dial
/// setting; above zero where the oscillator goes up.
///
/// The circuit's own arithmetic with the new value less that with the old, at the gang's
/// capacitance `K/f²` for the signal coil: true for a change of any size. Along the dial it
/// is the shape of what that adjuster can put right.
///
/// ```
/// use superhet::quantities::tracking::{Adjuster, Arrangement, OscillatorParts, error_change};
/// use superhet::units::{Capacitance, Frequency, Inductance};
/// let parts = OscillatorParts {
///     padder: Capacitance::pf(510.0),
///     trimmer: Capacitance::pf(13.0),
///     inductance: Inductance::uh(93.0),
///     arrangement: Arrangement::AcrossCoil,
/// };
/// let coil = Inductance::uh(175.0);
/// let tenth_more = |khz| {
///     error_change(&parts, Adjuster::Trimmer, 0.1, Frequency::khz(khz), coil).to_khz()
/// };
/// // 1.3 pF more: 18.0 kHz lower where the gang is open, 2.9 kHz where it is closed.
/// assert!((tenth_more(1500.0) + 18.017).abs() < 0.001);
/// assert!((tenth_more(600.0) + 2.913).abs() < 0.001);
/// ```
#[must_use]
pub fn error_change(
    parts: &OscillatorParts,
    adjuster: Adjuster,
    share: f64,
    dial: Frequency,
    signal_coil: Inductance,
) -> Frequency {
    let gang = gang_capacitance(dial, signal_coil);
    let turned = parts.turned(adjuster, share).oscillator(gang).to_hz();
    Frequency::hz(turned - parts.oscillator(gang).to_hz())
}

impl OscillatorParts {
    /// The same parts with one adjuster changed by a share of itself: 0.01 is 1 % more.
    ///
    /// ```
    /// use superhet::quantities::tracking::{Adjuster, Arrangement, OscillatorParts};
    /// use superhet::units::{Capacitance, Inductance};
    /// let parts = OscillatorParts {
    ///     padder: Capacitance::pf(400.0),
    ///     trimmer: Capacitance::pf(50.0),
    ///     inductance: Inductance::uh(100.0),
    ///     arrangement: Arrangement::AcrossCoil,
    /// };
    /// let turned = parts.turned(Adjuster::Padder, -0.5);
    /// assert_eq!(turned.padder, Capacitance::pf(200.0));
    /// assert_eq!(turned.trimmer, parts.trimmer);
    /// ```
    #[must_use]
    pub fn turned(&self, adjuster: Adjuster, share: f64) -> Self {
        let mut turned = *self;
        let times = 1.0 + share;
        match adjuster {
            Adjuster::Padder => turned.padder = Capacitance::f(self.padder.to_f() * times),
            Adjuster::Trimmer => turned.trimmer = Capacitance::f(self.trimmer.to_f() * times),
            Adjuster::Core => turned.inductance = Inductance::h(self.inductance.to_h() * times),
        }
        turned
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PF: f64 = 1e-12;

    fn parts(arrangement: Arrangement) -> OscillatorParts {
        OscillatorParts {
            padder: Capacitance::pf(460.0),
            trimmer: Capacitance::pf(11.0),
            inductance: Inductance::uh(108.0),
            arrangement,
        }
    }

    /// Central differences of the circuit's own arithmetic: with a share of 1e-5 they are
    /// off by some 1e-10 for the bend and 1e-11 for rounding.
    #[test]
    fn sensitivities_are_the_slopes_of_the_circuit() {
        let share = 1e-5;
        for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
            let parts = parts(arrangement);
            for adjuster in [Adjuster::Padder, Adjuster::Trimmer, Adjuster::Core] {
                for gang in [40.0, 150.0, 450.0].map(Capacitance::pf) {
                    let at = |share| parts.turned(adjuster, share).oscillator(gang).to_hz();
                    let slope = (at(share) - at(-share)) / (2.0 * share * at(0.0));
                    let found = sensitivity(&parts, adjuster, gang);
                    assert!((slope - found).abs() < 1e-9, "{adjuster:?} {slope} {found}");
                }
            }
        }
    }

    #[test]
    fn each_adjuster_has_its_end_of_the_dial() {
        let (open, closed) = (Capacitance::f(40.0 * PF), Capacitance::f(450.0 * PF));
        for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
            let size = |adjuster, gang| -sensitivity(&parts(arrangement), adjuster, gang);
            assert!(size(Adjuster::Trimmer, open) > 3.0 * size(Adjuster::Trimmer, closed));
            assert!(size(Adjuster::Padder, closed) > 3.0 * size(Adjuster::Padder, open));
            assert_eq!(size(Adjuster::Core, open), size(Adjuster::Core, closed));
        }
    }

    /// For a small share the change is the slope times the share; what is left is the bend,
    /// of the order of the share squared: at most twice it, in shares of the oscillator.
    #[test]
    fn a_small_change_of_the_error_is_the_sensitivity() {
        let (share, coil) = (1e-4, Inductance::uh(200.0));
        for arrangement in [Arrangement::AcrossCoil, Arrangement::AcrossGang] {
            let parts = parts(arrangement);
            for adjuster in [Adjuster::Padder, Adjuster::Trimmer, Adjuster::Core] {
                for dial in [540.0, 900.0, 1600.0].map(Frequency::khz) {
                    let gang = gang_capacitance(dial, coil);
                    let found = error_change(&parts, adjuster, share, dial, coil).to_hz();
                    let expected = sensitivity(&parts, adjuster, gang) * share;
                    let relative = found / parts.oscillator(gang).to_hz();
                    assert!(
                        (relative - expected).abs() < 2.0 * share * share,
                        "{adjuster:?}"
                    );
                }
            }
        }
    }
}
