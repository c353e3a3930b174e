//! Amplitude modulation and its detector.

use crate::{U, off};
use proptest::prelude::{prop_assert, proptest};
use superhet::quantities::agc::output_change;
use superhet::quantities::detection::{detector_audio_limit, detector_depth_limit};
use superhet::quantities::modulation::{
    modulation_depth, sideband_amplitude, sideband_lower, sideband_power, sideband_upper,
    total_power,
};
use superhet::units::{Capacitance, Decibels, Depth, Frequency, Power, Resistance, Voltage};

proptest! {
    /// Three operations each side, one to add.
    #[test]
    fn carrier_and_sidebands_make_the_whole_power(watts in 1e-3..1e6_f64, m in 0.0..1.0_f64) {
        let (carrier, depth) = (Power::w(watts), Depth::new(m));
        let sum = watts + sideband_power(carrier, depth).to_w();
        prop_assert!(off(total_power(carrier, depth).to_w(), sum) <= 8.0 * U);
    }

    /// Both sidebands' amplitudes, squared, are to the carrier's as their powers: m²/2.
    #[test]
    fn sidebands_have_the_power_of_their_amplitudes(volts in 1e-6..1e3_f64, m in 0.01..1.0_f64) {
        let depth = Depth::new(m);
        let share = sideband_amplitude(Voltage::v(volts), depth).to_v() / volts;
        let power = sideband_power(Power::w(1.0), depth).to_w();
        prop_assert!(off(2.0 * share * share, power) <= 10.0 * U);
    }

    /// 1 + m and 1 − m are each one rounding off, which their difference, 2m, multiplies by
    /// 1/m.
    #[test]
    fn the_envelope_gives_its_depth_back(volts in 1e-6..1e3_f64, m in 0.001..1.0_f64) {
        let ends = [1.0 + m, 1.0 - m].map(|times| Voltage::v(volts * times));
        let found = modulation_depth(ends[0], ends[1]).unwrap().fraction();
        prop_assert!(off(found, m) <= (2.0 / m + 4.0) * 2.0 * U, "{found}");
    }

    /// Sum and difference are rounded to their own last places.
    #[test]
    fn sidebands_stand_alike_to_both_sides(carrier in 1e5..3e7_f64, audio in 1.0..1e4_f64) {
        let (fc, fa) = (Frequency::hz(carrier), Frequency::hz(audio));
        let lower = sideband_lower(fc, fa).unwrap().to_hz();
        let upper = sideband_upper(fc, fa).to_hz();
        prop_assert!((upper - lower - 2.0 * audio).abs() <= 4.0 * U * upper);
    }

    /// Eight operations there, six back; the depth changes by x²/(1 + x²) of what x does.
    /// Near m = 1 the root of (1 − m)(1 + m) leaves an exact 1 − m.
    #[test]
    fn a_detector_just_follows_the_audio_of_its_limit(
        kilohms in 1.0..1e3_f64,
        picofarads in 10.0..1e4_f64,
        m in 0.01..0.999_f64,
    ) {
        let (r, c) = (Resistance::ohm(kilohms * 1e3), Capacitance::pf(picofarads));
        let audio = detector_audio_limit(r, c, Depth::new(m));
        let found = detector_depth_limit(r, c, audio).fraction();
        prop_assert!(off(found, m) <= 14.0 * U, "{found}");
    }

    /// Faster audio, less depth: by a thousandth more of it nothing rounds away, unless the
    /// limit is so near 1 that its square is.
    #[test]
    fn faster_audio_leaves_less_depth(kilohms in 10.0..1e3_f64, hertz in 100.0..1e4_f64) {
        let (r, c) = (Resistance::ohm(kilohms * 1e3), Capacitance::pf(100.0));
        let limit = |hertz| detector_depth_limit(r, c, Frequency::hz(hertz)).fraction();
        prop_assert!(limit(hertz * 1.001) < limit(hertz));
    }

    #[test]
    fn agc_divides_every_change_alike(db in -100.0..100.0_f64, gain in 0.0..1e3_f64) {
        let left = output_change(Decibels::db(db), gain).to_db();
        prop_assert!((left * (1.0 + gain) - db).abs() <= 3.0 * U * db.abs());
    }
}
