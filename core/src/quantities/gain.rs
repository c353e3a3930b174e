//! Gain of a valve stage with tuned circuits as its load.
//!
//! In scope: a pentode (or a frequency changer, with its conversion conductance) into one
//! tuned circuit, or into an IF transformer, at the tuned frequency. Left out: feedback
//! through the valve, and what detuning does (see `selectivity` and `coupled_pair`).
//!
//! Symbols: `g` mutual or conversion conductance, `R` the dynamic resistance with
//! everything across it, `k` coupling, `Q1 Q2` loaded, `b = k·√(Q1·Q2)`.

use libm::sqrt;

use crate::units::{Conductance, Ratio, Resistance};

/// The voltage gain of a stage with a resistance as its load.
///
/// `A = g·R`. `R` is the dynamic resistance of the tuned circuit in parallel with the
/// valve's own anode resistance and whatever else loads it. For a frequency changer `g` is
/// the conversion conductance, and the gain is from signal to IF.
///
/// ```
/// use superhet::quantities::gain::stage_gain;
/// use superhet::units::{Conductance, Resistance};
/// // 2 mA/V into 100 kΩ: 200 times.
/// let gain = stage_gain(Conductance::milliampere_per_volt(2.0), Resistance::kilohm(100.0));
/// assert_eq!(gain.value(), 200.0);
/// ```
#[must_use]
pub fn stage_gain(conductance: Conductance, load: Resistance) -> Ratio {
    Ratio::new(conductance.to_siemens() * load.to_ohm())
}

/// The voltage gain of a stage into an IF transformer, from its grid to the secondary, at
/// the frequency that both circuits are tuned to.
///
/// `A = g·√(R1·R2)·b/(1 + b²)`, `b = k·√(Q1·Q2)`; `R1` and `R2` are the dynamic resistances
/// that go with the loaded `Q1` and `Q2`. At critical coupling, `b = 1`, it is half of
/// `g·√(R1·R2)`; over-coupled, the middle dips while the humps stay near that.
///
/// Exact for coils whose loss is all in series, at `f0 = 1/(2π√(LC))` of each side;
/// with a load across as much as the dynamic resistance, under 0.1 % from Q 40 up.
///
/// Source: F. E. Terman, *Radio Engineers' Handbook* (1943), section 3 (form from memory,
/// derived again here).
///
/// ```
/// use superhet::quantities::gain::transformer_stage_gain;
/// use superhet::units::{Conductance, Resistance};
/// // 2 mA/V, 200 kΩ each side, k·Q = 1: 2 × 200 / 2 = 200 times.
/// let (g, r) = (Conductance::milliampere_per_volt(2.0), Resistance::kilohm(200.0));
/// assert_eq!(transformer_stage_gain(g, [r, r], 1.0).value(), 200.0);
/// ```
#[must_use]
pub fn transformer_stage_gain(
    conductance: Conductance,
    dynamic: [Resistance; 2],
    coupling_index: f64,
) -> Ratio {
    let [primary, secondary] = dynamic.map(Resistance::to_ohm);
    let b = coupling_index;
    Ratio::new(conductance.to_siemens() * sqrt(primary * secondary) * b / (1.0 + b * b))
}

/// How strongly a pair is coupled, critical coupling being 1.
///
/// `b = k·√(Q1·Q2)`, the coupling index.
///
/// ```
/// use superhet::quantities::gain::coupling_index;
/// assert_eq!(coupling_index(100.0, 100.0, 0.015), 1.5);
/// ```
#[must_use]
pub fn coupling_index(q1: f64, q2: f64, coupling: f64) -> f64 {
    coupling * sqrt(q1 * q2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantities::resonance::{dynamic_resistance, resonance};
    use crate::quantities::transformer_network::{TransformerNetwork, TunedWinding};
    use crate::units::{Capacitance, Inductance};

    /// Alike windings of Q 100 by themselves, with a load across each.
    fn network(coupling: f64, load: Resistance) -> TransformerNetwork {
        let (inductance, capacitance) = (Inductance::h(1e-3), Capacitance::pf(115.0));
        let f0 = resonance(inductance, capacitance);
        let series = dynamic_resistance(f0, inductance, 1.0).to_ohm() / 100.0;
        let winding = TunedWinding {
            inductance,
            capacitance,
            series: Resistance::ohm(series),
            load,
        };
        TransformerNetwork {
            primary: winding,
            secondary: winding,
            coupling,
        }
    }

    /// Ratio of the exact voltage to the formula's for one ampere, at the tuned frequency.
    fn agreement(coupling: f64, load: f64) -> f64 {
        let network = network(coupling, Resistance::ohm(load));
        let winding = network.primary;
        let f0 = resonance(winding.inductance, winding.capacitance);
        let q = 1.0 / (0.01 + dynamic_resistance(f0, winding.inductance, 1.0).to_ohm() / load);
        let r = dynamic_resistance(f0, winding.inductance, q);
        let index = coupling_index(q, q, coupling);
        let formula = transformer_stage_gain(Conductance::siemens(1.0), [r, r], index);
        network.transfer_impedance(f0).to_ohm() / formula.value()
    }

    #[test]
    fn the_exact_network_agrees_at_the_tuned_frequency() {
        for coupling in [0.003, 0.01, 0.02] {
            let series_only = agreement(coupling, 1e18);
            assert!(
                (series_only - 1.0).abs() < 1e-9,
                "{coupling}: {series_only}"
            );
            let loaded = agreement(coupling, 295e3);
            assert!((loaded - 1.0).abs() < 1e-3, "{coupling}: {loaded}");
        }
    }

    #[test]
    fn no_coupling_gives_more_than_the_critical_one() {
        let r = Resistance::kilohm(150.0);
        let gain =
            |index| transformer_stage_gain(Conductance::siemens(2e-3), [r, r], index).value();
        assert_eq!(gain(1.0), 150.0);
        for index in [0.1, 0.5, 0.9, 1.1, 2.0, 10.0] {
            assert!(gain(index) < gain(1.0), "{index}");
        }
    }
}
