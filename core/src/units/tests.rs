//! Every named unit, made and read.

use super::parse::{self, LONGEST, Rule};
use super::{
    Capacitance, Conductance, Decibels, Depth, Duration, Frequency, Inductance, Kind, Power, Ratio,
    Resistance, Voltage, Wavelength,
};
use alloc::string::ToString;

#[test]
fn units_are_made_to_the_nearest_si_value() {
    // The literals on the right are read by the compiler to the nearest number.
    for (made, si) in [
        (Frequency::hz(50.0).to_hz(), 50.0),
        (Frequency::khz(455.0).to_hz(), 455e3),
        (Frequency::mhz(27.91).to_hz(), 27.91e6),
        (Wavelength::m(250.0).to_m(), 250.0),
        (Inductance::h(10.0).to_h(), 10.0),
        (Inductance::mh(2.2).to_h(), 2.2e-3),
        (Inductance::uh(175.0).to_h(), 175e-6),
        (Capacitance::f(1e-9).to_f(), 1e-9),
        (Capacitance::uf(8.0).to_f(), 8e-6),
        (Capacitance::nf(2.0).to_f(), 2e-9),
        (Capacitance::pf(365.0).to_f(), 365e-12),
        (Capacitance::jar(900.0).to_f(), 1e-6),
        (Resistance::ohm(330.0).to_ohm(), 330.0),
        (Resistance::kilohm(47.0).to_ohm(), 47e3),
        (Resistance::megohm(0.5).to_ohm(), 0.5e6),
        (Voltage::v(250.0).to_v(), 250.0),
        (Voltage::mv(60.0).to_v(), 60e-3),
        (Voltage::uv(5.0).to_v(), 5e-6),
        (Power::w(4.5).to_w(), 4.5),
        (Power::mw(50.0).to_w(), 50e-3),
        (Power::kw(50.0).to_w(), 50e3),
        (Conductance::siemens(0.002).to_siemens(), 0.002),
        (Conductance::milliampere_per_volt(7.5).to_siemens(), 7.5e-3),
        (Duration::s(0.1).to_s(), 0.1),
        (Duration::ms(100.0).to_s(), 100e-3),
        (Duration::us(50.0).to_s(), 50e-6),
        (Decibels::db(6.0).to_db(), 6.0),
        (Ratio::new(100.0).value(), 100.0),
        (Depth::new(0.3).fraction(), 0.3),
        (Depth::percent(30.0).fraction(), 0.3),
    ] {
        assert_eq!(made.to_bits(), f64::to_bits(si), "{made} {si}");
    }
}

#[test]
fn units_are_read_as_they_were_made() {
    // Made and read are two roundings of at most half a unit in the last place each.
    for (read, typed) in [
        (Frequency::khz(455.5).to_khz(), 455.5),
        (Frequency::mhz(27.91).to_mhz(), 27.91),
        (Inductance::mh(2.2).to_mh(), 2.2),
        (Inductance::uh(175.0).to_uh(), 175.0),
        (Capacitance::uf(8.0).to_uf(), 8.0),
        (Capacitance::nf(2.7).to_nf(), 2.7),
        (Capacitance::pf(365.0).to_pf(), 365.0),
        (Resistance::kilohm(47.0).to_kilohm(), 47.0),
        (Resistance::megohm(0.5).to_megohm(), 0.5),
        (Voltage::mv(60.0).to_mv(), 60.0),
        (Voltage::uv(5.0).to_uv(), 5.0),
        (Power::mw(50.0).to_mw(), 50.0),
        (Power::kw(50.0).to_kw(), 50.0),
        (
            Conductance::milliampere_per_volt(7.5).to_milliampere_per_volt(),
            7.5,
        ),
        (Duration::ms(100.0).to_ms(), 100.0),
        (Duration::us(50.0).to_us(), 50.0),
        (Depth::percent(30.0).to_percent(), 30.0),
    ] {
        assert!(
            (read - typed).abs() <= 2.0 * f64::EPSILON * typed,
            "{read} {typed}"
        );
    }
}

#[test]
fn units_are_shown_in_the_trades_unit() {
    for (shown, text) in [
        (Frequency::khz(1670.0).to_string(), "1670 kHz"),
        (Wavelength::m(250.0).to_string(), "250 m"),
        (Inductance::uh(175.0).to_string(), "175 µH"),
        (Capacitance::pf(365.0).to_string(), "365 pF"),
        // 10 000 cm of capacitance: 10⁹/c² F, c being 299 792 458 m/s.
        (Capacitance::cm(10_000.0).to_string(), "11.1265 nF"),
        (Resistance::kilohm(47.0).to_string(), "47 kΩ"),
        (Voltage::mv(60.0).to_string(), "60 mV"),
        (Power::kw(50.0).to_string(), "50 kW"),
        (Decibels::db(6.0).to_string(), "6 dB"),
        (Ratio::new(8.463).to_string(), "8.463"),
        (Depth::percent(30.0).to_string(), "0.3"),
    ] {
        assert_eq!(shown, text);
    }
}

#[test]
fn decibels_are_of_voltage_ratios() {
    assert_eq!(
        Decibels::from_voltage_ratio(Ratio::new(100.0)).to_db(),
        40.0
    );
    assert_eq!(Decibels::db(-20.0).to_voltage_ratio().value(), 0.1);
}

#[test]
fn decibels_of_powers_are_half_as_many() {
    for (db, ratio) in [(0.0, 1.0), (10.0, 10.0), (-20.0, 0.01)] {
        assert_eq!(Decibels::db(db).to_power_ratio().value(), ratio);
        assert_eq!(Decibels::from_power_ratio(Ratio::new(ratio)).to_db(), db);
    }
}

#[test]
fn wave_and_frequency_turn_into_each_other() {
    assert_eq!(Wavelength::m(1.0).to_frequency().to_hz(), 299_792_458.0);
    assert_eq!(Frequency::hz(1.0).to_wavelength().to_m(), 299_792_458.0);
}

#[test]
fn a_text_is_read_up_to_the_longest_there_may_be() {
    let typed = |length| alloc::format!("{:0>length$} kHz", 455, length = length - 4);
    assert_eq!(parse::frequency(&typed(LONGEST)), Ok(Frequency::khz(455.0)));
    for length in [LONGEST + 1, LONGEST + 2, 10 * LONGEST] {
        let refused = parse::frequency(&typed(length)).map_err(|error| error.rule());
        assert_eq!(refused, Err(Rule::TooLong));
    }
}

#[test]
fn sizes_that_few_parts_have_are_read_too() {
    assert_eq!(parse::value(Kind::Wavelength, "75 cm", None), Ok(0.75));
    assert_eq!(parse::value(Kind::Inductance, "500 nH", None), Ok(500e-9));
}

#[test]
fn kinds_have_names_and_si_units() {
    for (kind, name, unit) in [
        (Kind::Frequency, "frequency", "Hz"),
        (Kind::Wavelength, "wavelength", "m"),
        (Kind::Inductance, "inductance", "H"),
        (Kind::Capacitance, "capacitance", "F"),
        (Kind::Resistance, "resistance", "ohm"),
        (Kind::Voltage, "voltage", "V"),
        (Kind::Power, "power", "W"),
        (Kind::Conductance, "conductance", "S"),
        (Kind::Duration, "duration", "s"),
        (Kind::Decibels, "decibels", "dB"),
        (Kind::Ratio, "ratio", ""),
        (Kind::Depth, "depth", ""),
        (Kind::Integer, "integer", ""),
        (Kind::Choice, "choice", ""),
    ] {
        assert_eq!((kind.name(), kind.unit()), (name, unit));
    }
}
