//! Several alike stages in a row: how the window narrows, and how steep it is.
//!
//! In scope: stages separated by valves, so that one does not load another. Left out:
//! stages that differ (see the receiver's own curves).

use libm::{expm1, pow, sqrt};

use super::coupled_pair::{CoupledPair, NarrowBandError};
use crate::units::{Decibels, Frequency};

/// What kind of stage is repeated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StageKind {
    /// One tuned circuit a stage.
    Single,
    /// A pair at transitional coupling a stage.
    Double,
}

/// The half-power width of alike stages in a row, from the width of one.
///
/// Single: `B·√(2^(1/n) − 1)`. Double: `B·(2^(1/n) − 1)^¼`, for pairs at transitional
/// coupling; pairs of unequal Q at critical coupling shrink more (Q 150 and 50, two of
/// them: 0.737 against 0.802).
///
/// ```
/// use superhet::quantities::cascade::{StageKind, cascade_bandwidth};
/// use superhet::units::Frequency;
/// // Three single circuits of 20 kHz: 10.2 kHz.
/// let width = cascade_bandwidth(Frequency::khz(20.0), 3, StageKind::Single);
/// assert!((width.to_khz() - 10.2).abs() < 0.005);
/// ```
#[must_use]
pub fn cascade_bandwidth(bandwidth: Frequency, stages: u32, kind: StageKind) -> Frequency {
    // 2^(1/n) − 1 without losing digits for many stages.
    let share = expm1(core::f64::consts::LN_2 / f64::from(stages));
    let shrinkage = match kind {
        StageKind::Single => sqrt(share),
        StageKind::Double => pow(share, 0.25),
    };
    Frequency::hz(bandwidth.to_hz() * shrinkage)
}

/// The width 60 dB down over the width 6 dB down, for alike transformers in cascade.
///
/// Narrow band: each of `n` transformers gives `60/n` and `6/n` decibels. A smaller
/// figure is a steeper window; 1 would be a box.
///
/// # Errors
/// When the 60 dB width leaves the narrow band.
///
/// ```
/// use superhet::quantities::cascade::shape_factor;
/// use superhet::quantities::coupled_pair::CoupledPair;
/// // Two critical pairs of Q 100: 30 dB a pair at x⁴/4 = 999, 3 dB at x⁴/4 = 0.9953.
/// let factor = shape_factor(&CoupledPair::new(100.0, 100.0, 0.01), 2).unwrap();
/// assert!((factor - 5.629).abs() < 0.001);
/// ```
pub fn shape_factor(pair: &CoupledPair, transformers: u32) -> Result<f64, NarrowBandError> {
    let each = |whole: f64| Decibels::db(whole / f64::from(transformers));
    let far = pair.fractional_bandwidth(each(60.0))?;
    let near = pair.fractional_bandwidth(each(6.0))?;
    Ok(far / near)
}

#[cfg(test)]
mod tests {
    use super::*;

    const WIDTH: Frequency = Frequency::khz(10.0);

    #[test]
    fn one_stage_keeps_its_width() {
        for kind in [StageKind::Single, StageKind::Double] {
            let width = cascade_bandwidth(WIDTH, 1, kind).to_khz();
            assert!((width - 10.0).abs() < 1e-13, "{kind:?}: {width}");
        }
    }

    #[test]
    fn the_loss_at_the_new_edge_is_half_power_in_all() {
        // Single: (1 + x²)^n = 2; double: (1 + x⁴)^n = 2, x in half-power widths.
        for stages in 2..=8 {
            let n = f64::from(stages);
            let single = cascade_bandwidth(WIDTH, stages, StageKind::Single).to_khz() / 10.0;
            let double = cascade_bandwidth(WIDTH, stages, StageKind::Double).to_khz() / 10.0;
            assert!((pow(1.0 + single * single, n) - 2.0).abs() < 1e-13);
            assert!((pow(1.0 + pow(double, 4.0), n) - 2.0).abs() < 1e-13);
        }
    }

    #[test]
    fn unequal_sides_at_critical_coupling_shrink_more() {
        // catalogue.md: q 150/50, two of them: 0.737 against 0.802.
        let pair = CoupledPair::new(
            150.0,
            50.0,
            crate::quantities::coupled_pair::critical_coupling(150.0, 50.0),
        );
        let half_power = 10.0 * libm::log10(2.0);
        let one = pair.fractional_bandwidth(Decibels::db(half_power)).unwrap();
        let two = pair
            .fractional_bandwidth(Decibels::db(half_power / 2.0))
            .unwrap();
        assert!((two / one - 0.737).abs() < 0.0005, "{}", two / one);
    }

    #[test]
    fn more_transformers_make_a_steeper_window() {
        let pair = CoupledPair::new(100.0, 100.0, 0.01);
        let of = |n| shape_factor(&pair, n).unwrap();
        assert!(of(1) > of(2) && of(2) > of(3) && of(3) > 1.0);
    }
}
