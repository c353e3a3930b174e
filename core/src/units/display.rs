//! Values as the trade writes them.
//!
//! A value is rounded once to at most seven significant digits, and trailing zeros
//! after the point go. Every unit is a power of ten of the SI unit, so the digits are
//! the same whatever the unit, and the unit is picked from the rounded digits:
//! 999.999 99 Hz is `1 kHz`, not `1000 Hz`.
//!
//! | kind | shown in |
//! | --- | --- |
//! | frequency | Hz under 1 kHz, kHz under 3 MHz, then MHz |
//! | inductance | µH under 1 mH, mH under 1 H, then H |
//! | capacitance | pF under 1 nF, nF under 1 µF, then µF |
//! | resistance | Ω, kΩ, MΩ |
//! | voltage | µV, mV, V, kV |
//! | power | µW, mW, W, kW |
//! | conductance | µA/V, mA/V, A/V |
//! | length of time | µs, ms, s |
//! | wavelength, decibels | m, dB |
//!
//! Far outside what a receiver meets, digits are written with a power of ten
//! (`1e15 MHz`), so that any number has a text that reads back.
//!
//! Out of scope: the words of an answer, and `core::fmt` of floats, whose tables would
//! be most of the look-up page's program.

#[cfg(test)]
mod tests;

use super::Kind;
use super::rounding::{SHOWN_DIGITS, to_decimal, to_digits};
use alloc::format;
use alloc::string::String;

/// A unit to show in: used from this first digit and power of ten on.
struct Step {
    power: i32,
    first_digit: u32,
    scale: i32,
    symbol: &'static str,
}

const fn step(power: i32, first_digit: u32, scale: i32, symbol: &'static str) -> Step {
    Step {
        power,
        first_digit,
        scale,
        symbol,
    }
}

/// The lowest power of ten: a step that always applies.
const ALWAYS: i32 = i32::MIN;

/// The units of a kind, from the largest down.
fn steps(kind: Kind) -> &'static [Step] {
    match kind {
        Kind::Frequency => {
            const {
                &[
                    step(6, 3, 6, " MHz"),
                    step(3, 1, 3, " kHz"),
                    step(ALWAYS, 1, 0, " Hz"),
                ]
            }
        }
        Kind::Wavelength => const { &[step(ALWAYS, 1, 0, " m")] },
        Kind::Inductance => {
            const {
                &[
                    step(0, 1, 0, " H"),
                    step(-3, 1, -3, " mH"),
                    step(ALWAYS, 1, -6, " µH"),
                ]
            }
        }
        Kind::Capacitance => {
            const {
                &[
                    step(-6, 1, -6, " µF"),
                    step(-9, 1, -9, " nF"),
                    step(ALWAYS, 1, -12, " pF"),
                ]
            }
        }
        Kind::Resistance => {
            const {
                &[
                    step(6, 1, 6, " MΩ"),
                    step(3, 1, 3, " kΩ"),
                    step(ALWAYS, 1, 0, " Ω"),
                ]
            }
        }
        Kind::Voltage => {
            const {
                &[
                    step(3, 1, 3, " kV"),
                    step(0, 1, 0, " V"),
                    step(-3, 1, -3, " mV"),
                    step(ALWAYS, 1, -6, " µV"),
                ]
            }
        }
        Kind::Power => {
            const {
                &[
                    step(3, 1, 3, " kW"),
                    step(0, 1, 0, " W"),
                    step(-3, 1, -3, " mW"),
                    step(ALWAYS, 1, -6, " µW"),
                ]
            }
        }
        Kind::Conductance => {
            const {
                &[
                    step(0, 1, 0, " A/V"),
                    step(-4, 1, -3, " mA/V"),
                    step(ALWAYS, 1, -6, " µA/V"),
                ]
            }
        }
        Kind::Duration => {
            const {
                &[
                    step(0, 1, 0, " s"),
                    step(-3, 1, -3, " ms"),
                    step(ALWAYS, 1, -6, " µs"),
                ]
            }
        }
        Kind::Decibels => const { &[step(ALWAYS, 1, 0, " dB")] },
        Kind::Ratio | Kind::Depth | Kind::Integer | Kind::Choice => {
            const { &[step(ALWAYS, 1, 0, "")] }
        }
    }
}

/// The unit that zero is shown in: the SI unit where the trade has no better.
const fn zero(kind: Kind) -> &'static str {
    match kind {
        Kind::Frequency => "0 Hz",
        Kind::Wavelength => "0 m",
        Kind::Inductance => "0 µH",
        Kind::Capacitance => "0 pF",
        Kind::Resistance => "0 Ω",
        Kind::Voltage => "0 V",
        Kind::Power => "0 W",
        Kind::Conductance => "0 mA/V",
        Kind::Duration => "0 s",
        Kind::Decibels => "0 dB",
        Kind::Ratio | Kind::Depth | Kind::Integer | Kind::Choice => "0",
    }
}

/// The value with the unit the trade would use, at most seven significant digits.
///
/// `si_value` is in the unit of [`Kind::unit`]. The digits are those nearest to the
/// value, a tie going to the even digit. What is no finite number is shown in words.
///
/// ```
/// use superhet::units::{Kind, display};
/// assert_eq!(display::text(Kind::Frequency, 1_670_000.0), "1670 kHz");
/// assert_eq!(display::text(Kind::Frequency, 3_410_000.0), "3.41 MHz");
/// assert_eq!(display::text(Kind::Capacitance, 365e-12), "365 pF");
/// assert_eq!(display::text(Kind::Decibels, -6.02059991), "-6.0206 dB");
/// ```
#[must_use]
pub fn text(kind: Kind, si_value: f64) -> String {
    if !si_value.is_finite() {
        return String::from(if si_value.is_nan() {
            "not a number"
        } else if si_value > 0.0 {
            "infinite"
        } else {
            "minus infinity"
        });
    }
    if si_value == 0.0 {
        return String::from(zero(kind));
    }
    let (digits, power) = to_decimal(si_value.abs());
    let first_digit = digits / 10_u32.pow(SHOWN_DIGITS as u32 - 1);
    let mut text = String::new();
    if si_value < 0.0 {
        text.push('-');
    }
    for step in steps(kind) {
        if (power, first_digit) >= (step.power, step.first_digit) {
            push_number(&mut text, digits, power - step.scale);
            text.push_str(step.symbol);
            break;
        }
    }
    text
}

/// Digits that every `f64` reads back from, to the same bit.
const EXACT_DIGITS: i32 = 17;

/// A finite number in digits that [`parse`](super::parse) reads back to the same bit;
/// any other in words that it refuses.
///
/// Not for people: for handing a worked-out value on as text.
///
/// ```
/// use superhet::units::display;
/// assert_eq!(display::exact(1_670_000.0), "167e4");
/// assert_eq!(display::exact(-0.25), "-25e-2");
/// ```
#[must_use]
pub fn exact(value: f64) -> String {
    if value == 0.0 {
        return String::from("0");
    }
    if !value.is_finite() {
        return String::from("not a number");
    }
    let (mut digits, mut power) = to_digits(value.abs(), EXACT_DIGITS);
    power -= EXACT_DIGITS - 1;
    while digits.is_multiple_of(10) {
        digits /= 10;
        power += 1;
    }
    let sign = if value < 0.0 { "-" } else { "" };
    format!("{sign}{digits}e{power}")
}

/// Appends the digits, the first of which has this power of ten.
fn push_number(text: &mut String, digits: u32, power: i32) {
    let (digits, count) = without_trailing_zeros(digits);
    match power {
        -7..0 => {
            text.push_str("0.");
            (1..-power).for_each(|_| text.push('0'));
            push_digits(text, digits, count, count);
        }
        0..12 => push_digits(text, digits, count, power + 1),
        _ => {
            push_digits(text, digits, count, 1);
            text.push('e');
            push_whole(text, power);
        }
    }
}

/// Appends the digits with a point after `whole` of them, filling up with zeros.
fn push_digits(text: &mut String, digits: u32, count: i32, whole: i32) {
    for place in 0..count.max(whole) {
        if place == whole {
            text.push('.');
        }
        let digit = match count - 1 - place {
            below if below >= 0 => digits / 10_u32.pow(below as u32) % 10,
            _ => 0,
        };
        text.push((b'0' + digit as u8) as char);
    }
}

/// Appends a whole number of at most three digits.
fn push_whole(text: &mut String, number: i32) {
    if number < 0 {
        text.push('-');
    }
    let (digits, mut count) = (number.unsigned_abs(), 1);
    while 10_u32.pow(count) <= digits {
        count += 1;
    }
    push_digits(text, digits, count as i32, count as i32);
}

fn without_trailing_zeros(mut digits: u32) -> (u32, i32) {
    let mut count = SHOWN_DIGITS;
    while digits.is_multiple_of(10) && count > 1 {
        digits /= 10;
        count -= 1;
    }
    (digits, count)
}
