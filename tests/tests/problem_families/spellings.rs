//! The ways in which people type one and the same number.

use superhet::problems::problem::NumberAnswer;
use superhet::units::{Kind, display};

/// A typed answer, with the unit that stands beside the box.
pub(crate) type Typed = (String, Option<&'static str>);

/// The right answer, rounded as asked, in every way that its kind allows.
pub(crate) fn of(answer: &NumberAnswer) -> Vec<Typed> {
    let value = answer.precision.round(answer.value);
    let mut typed = vec![(answer.text.clone(), None)];
    match answer.kind {
        Kind::Frequency => typed.extend(frequency(value)),
        Kind::Wavelength => typed.extend(wavelength(value)),
        Kind::Inductance => typed.extend(inductance(value)),
        Kind::Capacitance => typed.extend(capacitance(value)),
        Kind::Decibels => typed.extend(decibels(value)),
        Kind::Depth => typed.extend(depth(value)),
        Kind::Power => typed.extend(power(value)),
        Kind::Ratio => typed.extend(ratio(value)),
        Kind::Voltage => typed.extend(voltage(value)),
        other => panic!(
            "no family asks a {} yet: add how people type one",
            other.name()
        ),
    }
    typed
}

fn frequency(hertz: f64) -> Vec<Typed> {
    let (khz, mhz) = (number(hertz / 1e3), number(hertz / 1e6));
    let mut typed = vec![
        (format!("{khz} kHz"), None),
        (format!("{khz}kc/s"), None),
        (format!("{mhz} MHz"), None),
        (format!("{mhz} mc/s"), Some("kHz")),
        (format!("{} Hz", number(hertz)), None),
        (khz.clone(), Some("kHz")),
        (mhz.clone(), Some("MHz")),
    ];
    if khz.len() > 3 && !khz.contains('.') {
        let (thousands, rest) = khz.split_at(khz.len() - 3);
        typed.push((format!("{thousands},{rest} kHz"), None));
        typed.push((format!("{thousands} {rest} kHz"), None));
    }
    typed.extend(decimal_comma(&mhz).map(|mhz| (format!("{mhz} MHz"), None)));
    typed
}

fn wavelength(metre: f64) -> Vec<Typed> {
    let plain = number(metre);
    vec![
        (format!("{plain} m"), None),
        (format!("{plain}m"), None),
        (format!("{plain} metres"), None),
        (plain, Some("m")),
    ]
}

fn inductance(henry: f64) -> Vec<Typed> {
    let (uh, mh) = (number(henry / 1e-6), number(henry / 1e-3));
    vec![
        (format!("{uh} µH"), None),
        (format!("{uh}uH"), None),
        (format!("{mh} mH"), None),
        (uh, Some("µH")),
        (mh, Some("mH")),
    ]
}

fn decibels(value: f64) -> Vec<Typed> {
    let plain = number(value);
    vec![
        (format!("{plain} dB"), None),
        (format!("{plain}db"), None),
        (plain, Some("dB")),
    ]
}

fn power(watt: f64) -> Vec<Typed> {
    let (plain, kilo) = (number(watt), number(watt / 1e3));
    vec![
        (format!("{plain} W"), None),
        (format!("{kilo} kW"), None),
        (format!("{kilo}kw"), None),
        (plain, Some("W")),
        (kilo, Some("kW")),
    ]
}

fn depth(fraction: f64) -> Vec<Typed> {
    let percent = number(fraction * 100.0);
    vec![
        (format!("{percent} %"), None),
        (format!("{percent}%"), None),
        (percent, Some("%")),
        (number(fraction), None),
    ]
}

fn capacitance(farad: f64) -> Vec<Typed> {
    let (pf, nf) = (number(farad / 1e-12), number(farad / 1e-9));
    vec![
        (format!("{pf} pF"), None),
        (format!("{pf} mmfd"), None),
        (format!("{nf}nf"), None),
        (format!("{} µF", number(farad / 1e-6)), None),
        (pf, Some("pF")),
        (nf, Some("nF")),
    ]
}

fn voltage(volt: f64) -> Vec<Typed> {
    let plain = number(volt);
    vec![
        (format!("{plain} V"), None),
        (format!("{plain}v"), None),
        (format!("{} kV", number(volt / 1e3)), None),
        (format!("{} mV", number(volt * 1e3)), None),
        (plain, Some("V")),
    ]
}

fn ratio(value: f64) -> Vec<Typed> {
    let plain = number(value);
    let mut typed = vec![
        (format!("{plain} times"), None),
        (format!("{plain} to 1"), None),
        (format!("{plain}:1"), None),
        (format!(" {plain} x "), None),
    ];
    typed.extend(decimal_comma(&plain).map(|comma| (comma, None)));
    typed
}

/// With a comma for the point, unless it would group thousands: before exactly three
/// digits a comma is put back as a question.
fn decimal_comma(number: &str) -> Option<String> {
    let (whole, decimals) = number.split_once('.')?;
    (decimals.len() != 3 || whole == "0").then(|| format!("{whole},{decimals}"))
}

fn number(value: f64) -> String {
    display::text(Kind::Ratio, value)
}
