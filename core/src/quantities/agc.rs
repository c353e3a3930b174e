//! Automatic gain control: how level it holds the output, and how fast it moves.
//!
//! In scope: a loop in which each decibel at the detector above the delay takes a stated
//! number of decibels off the gain, the same at every level. Left out: the curve of a
//! variable-mu valve, which makes that number depend on the level; and contact potential.
//!
//! Symbols: `K1` decibels of gain lost for each volt of control, `K2` volts of control for
//! each decibel of output above the delay; `K = K1·K2`, the loop gain, a plain number;
//! `M = 1 + K`, the flatness: decibels in for each decibel out.
//!
//! Source: A. W. Nolle, *Automatic gain control*, Proc. IRE vol. 36 no. 7, pp. 911-916,
//! July 1948 (abstract seen).

use crate::units::{Capacitance, Decibels, Duration, Resistance};

/// The flatness of an AGC: decibels of input for each decibel of output.
///
/// `M = 1 + K`.
///
/// ```
/// use superhet::quantities::agc::flatness;
/// assert_eq!(flatness(9.0), 10.0);
/// ```
#[must_use]
pub const fn flatness(loop_gain: f64) -> f64 {
    1.0 + loop_gain
}

/// How many decibels the output changes by when the input does, above the delay.
///
/// `change / (1 + K)`; with `K` 0 there is no AGC and the output follows.
///
/// ```
/// use superhet::quantities::agc::output_change;
/// use superhet::units::Decibels;
/// // 60 dB more signal, loop gain 9: 6 dB more output.
/// assert_eq!(output_change(Decibels::db(60.0), 9.0), Decibels::db(6.0));
/// ```
#[must_use]
pub fn output_change(input_change: Decibels, loop_gain: f64) -> Decibels {
    Decibels::db(input_change.to_db() / flatness(loop_gain))
}

/// The output of a set with delayed AGC, in decibels over the output at the delay.
///
/// `input` is in decibels over the input that just reaches the delay: below it the output
/// follows, above it as [`output_change`] says.
///
/// ```
/// use superhet::quantities::agc::delayed_output;
/// use superhet::units::Decibels;
/// assert_eq!(delayed_output(Decibels::db(-12.0), 9.0), Decibels::db(-12.0));
/// assert_eq!(delayed_output(Decibels::db(40.0), 9.0), Decibels::db(4.0));
/// ```
#[must_use]
pub fn delayed_output(input: Decibels, loop_gain: f64) -> Decibels {
    if input.to_db() <= 0.0 {
        input
    } else {
        output_change(input, loop_gain)
    }
}

/// How fast the gain follows a small change: the filter's own time constant, shortened by
/// the loop.
///
/// `RC/M`, `M = 1 + K`.
///
/// One filter, and changes so small that the loop gain stays what it is; a large step up
/// settles faster than a large step down.
///
/// ```
/// use superhet::quantities::agc::closed_loop_time_constant;
/// use superhet::units::{Capacitance, Duration, Resistance};
/// // 1 MΩ and 0.1 µF are 100 ms; loop gain 9 leaves 10 ms.
/// let (r, c) = (Resistance::megohm(1.0), Capacitance::uf(0.1));
/// assert!((closed_loop_time_constant(r, c, 9.0).to_ms() - 10.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn closed_loop_time_constant(
    resistance: Resistance,
    capacitance: Capacitance,
    loop_gain: f64,
) -> Duration {
    Duration::s(resistance.to_ohm() * capacitance.to_f() / flatness(loop_gain))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_a_loop_nothing_is_levelled() {
        assert_eq!(output_change(Decibels::db(20.0), 0.0), Decibels::db(20.0));
        assert_eq!(delayed_output(Decibels::db(20.0), 0.0), Decibels::db(20.0));
    }

    #[test]
    fn the_delayed_output_is_unbroken_at_the_delay() {
        let step = 1e-9;
        let (below, above) = (Decibels::db(-step), Decibels::db(step));
        let rise = delayed_output(above, 30.0).to_db() - delayed_output(below, 30.0).to_db();
        assert!((0.0..=2.0 * step).contains(&rise), "{rise}");
    }

    /// The loop run in small steps of time: control follows detector through RC, gain
    /// follows control. After one closed-loop time constant of a step in the input, 1/e of
    /// the change is left.
    #[test]
    fn the_time_constant_is_that_of_the_loop_run_step_by_step() {
        let (r, c, loop_gain) = (1e6, 0.1e-6, 9.0);
        let (mut control, input, step) = (0.0, 10.0, 1e-7);
        let closed = closed_loop_time_constant(Resistance::ohm(r), Capacitance::f(c), loop_gain);
        // 1 MΩ · 0.1 µF / (1 + 9), three roundings away.
        assert!((closed.to_ms() - 10.0).abs() < 10.0 * 2.0 * f64::EPSILON);
        let steps = libm::round(closed.to_s() / step) as u32;
        for _ in 0..steps {
            // Decibels of gain taken off, driven by what is left at the detector.
            let output = input - control;
            control += step / (r * c) * (loop_gain * output - control);
        }
        let settled = input - output_change(Decibels::db(input), loop_gain).to_db();
        let left = 1.0 - control / settled;
        // Euler's steps are a hundred-thousandth of the time constant: an error of as much.
        assert!((left - libm::exp(-1.0)).abs() < 1e-5, "{left}");
    }
}
