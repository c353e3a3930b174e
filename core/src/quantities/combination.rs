//! Two parts as one: resistances across each other, capacitors in series.
//!
//! Symbols: `R1 R2` resistances, `C1 C2` capacitances.

use crate::units::{Capacitance, Resistance};

/// What two resistances across each other come to.
///
/// `R1·R2/(R1 + R2)`.
///
/// ```
/// use superhet::quantities::combination::parallel_resistance;
/// use superhet::units::Resistance;
/// // 470 kΩ across 1 MΩ: 470 000/1.47 = 319.7 kΩ.
/// let r = parallel_resistance(Resistance::kilohm(470.0), Resistance::megohm(1.0));
/// assert!((r.to_kilohm() - 319.728).abs() < 0.001);
/// ```
#[must_use]
pub fn parallel_resistance(first: Resistance, second: Resistance) -> Resistance {
    Resistance::ohm(together(first.to_ohm(), second.to_ohm()))
}

/// What two capacitors in series come to.
///
/// `C1·C2/(C1 + C2)`: a padder holds the gang down.
///
/// ```
/// use superhet::quantities::combination::series_capacitance;
/// use superhet::units::Capacitance;
/// // A gang of 500 pF behind a padder of 500 pF is 250 pF.
/// let c = series_capacitance(Capacitance::pf(500.0), Capacitance::pf(500.0));
/// assert!((c.to_pf() - 250.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn series_capacitance(first: Capacitance, second: Capacitance) -> Capacitance {
    Capacitance::f(together(first.to_f(), second.to_f()))
}

/// Product over sum, without the product: farads squared are very small numbers.
fn together(one: f64, other: f64) -> f64 {
    let (small, large) = if one < other {
        (one, other)
    } else {
        (other, one)
    };
    small / (1.0 + small / large)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn alike_ones_halve_and_a_far_larger_one_hardly_counts() {
        assert_eq!(together(3.0, 3.0), 1.5);
        assert_eq!(together(3.0, 3e18), 3.0);
        assert_eq!(together(f64::MIN_POSITIVE, f64::MAX), f64::MIN_POSITIVE);
    }

    /// The padder of a textbook, Scilab TBC book 1409, ex. 8.14, p. 8-52: 350 pF in series
    /// with 221.3 pF, printed 135.5 and 135.58 without rounding on the way.
    #[test]
    fn a_padder_and_a_gang() {
        let c = series_capacitance(Capacitance::pf(350.0), Capacitance::pf(221.3));
        assert!((c.to_pf() - 135.5).abs() < 0.1, "{c}");
    }
}
