//! How closely an answer is asked, and rounding to it.
//!
//! Rounding is to the nearest, halves away from zero, as it is taught. Powers of ten
//! are made by multiplication, exact up to 10²².

use alloc::{format, string::String};

/// Largest relative error that reading a decimal number and scaling it by its unit can
/// bring: three roundings of half an ulp, 1.5 × 2⁻⁵², taken up to a round figure.
const READING_SLACK: f64 = 1e-15;

/// How closely an answer is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum Precision {
    /// To the nearest whole multiple of a step.
    Nearest {
        /// The step in the SI base unit.
        step: f64,
        /// The step as written, `1 kHz`.
        text: String,
    },
    /// To so many significant figures, 1 to 7.
    Figures(u8),
}

impl Precision {
    /// Worth of one in the last place asked, at this value.
    pub fn last_place(&self, value: f64) -> f64 {
        match *self {
            Precision::Nearest { step, .. } => step,
            Precision::Figures(figures) => worth_of_last(value, figures),
        }
    }

    /// The value rounded as asked.
    pub fn round(&self, value: f64) -> f64 {
        match *self {
            Precision::Nearest { step, .. } => libm::round(value / step) * step,
            Precision::Figures(figures) => round_to_figures(value, figures),
        }
    }

    /// Whether `typed` is `value` as closely as asked: within half of the last place.
    pub fn agrees(&self, typed: f64, value: f64) -> bool {
        let half = self.last_place(value) / 2.0;
        libm::fabs(typed - value) <= half + READING_SLACK * libm::fabs(value)
    }

    /// Whether no answer could agree with both values.
    pub fn tells_apart(&self, one: f64, other: f64) -> bool {
        let room = (self.last_place(one) + self.last_place(other)) / 2.0;
        let slack = READING_SLACK * (libm::fabs(one) + libm::fabs(other));
        libm::fabs(one - other) > room + slack
    }

    /// Whether `typed` is `value` rounded to one place less than asked and still says
    /// enough: 8.5 for 8.46. A step that is asked is a place of its own, a channel or a
    /// whole decibel: 1280 kHz is not the channel on 1278, nor 50 dB the answer 54.
    pub fn rounded_too_far(&self, typed: f64, value: f64) -> bool {
        matches!(self, Precision::Figures(_)) && self.rounded_once(typed, value)
    }

    /// Whether `typed` is `value` rounded to one place less than asked, which tells what
    /// somebody worked out even where it is no answer.
    pub fn rounded_once(&self, typed: f64, value: f64) -> bool {
        let coarser = 10.0 * self.last_place(value);
        close(typed, libm::round(value / coarser) * coarser)
            || self
                .figures_less(typed, value)
                .is_some_and(|worth| worth <= coarser)
    }

    /// Whether `typed` is `value` rounded so far, to one figure or more, that it says
    /// too little: 8 for 8.46, 1.7 MHz for 1670 kHz.
    pub fn rounded_away(&self, typed: f64, value: f64) -> bool {
        self.figures_less(typed, value).is_some()
    }

    /// Worth of one in the last figure of the finest rounding that `typed` is, where
    /// that is coarser than asked.
    fn figures_less(&self, typed: f64, value: f64) -> Option<f64> {
        (1..=6)
            .rev()
            .filter(|&figures| close(typed, round_to_figures(value, figures)))
            .map(|figures| worth_of_last(value, figures))
            .find(|&worth| worth > self.last_place(value))
    }

    /// Whether `typed` is off by at most two in the last of the figures asked, as when a
    /// step before the last was rounded to as many figures: 1600/550 taken as 2.91 and
    /// multiplied by itself gives 8.47, not 8.46. Rounding a factor to three figures
    /// moves it by half a unit at most, and its square by twice as much of itself.
    /// A sum or difference needs no rounding on the way, so a step asked to the nearest
    /// whole multiple forgives nothing.
    pub fn rounded_on_the_way(&self, typed: f64, value: f64) -> bool {
        let near = 2.0 * self.last_place(value) + READING_SLACK * libm::fabs(value);
        matches!(self, Precision::Figures(_)) && libm::fabs(typed - value) <= near
    }

    /// In words, behind "Answer": `to the nearest 1 kHz`, `to three figures`.
    pub fn words(&self) -> String {
        match self {
            Precision::Nearest { text, .. } => format!("to the nearest {text}"),
            Precision::Figures(figures) => format!("to {} figures", number_word(*figures)),
        }
    }
}

/// Whether two numbers are the same but for the roundings of reading and scaling.
pub fn close(one: f64, other: f64) -> bool {
    libm::fabs(one - other) <= 4.0 * READING_SLACK * libm::fabs(other)
}

/// A value rounded to so many significant figures.
pub fn round_to_figures(value: f64, figures: u8) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let place = exponent(value) + 1 - i32::from(figures);
    if place >= 0 {
        let unit = power_of_ten(place);
        libm::round(value / unit) * unit
    } else {
        let scale = power_of_ten(-place);
        libm::round(value * scale) / scale
    }
}

fn worth_of_last(value: f64, figures: u8) -> f64 {
    signed_power_of_ten(exponent(value) + 1 - i32::from(figures))
}

/// The power of ten of a value's first figure; 0 for zero and what is not finite.
fn exponent(value: f64) -> i32 {
    let size = libm::fabs(value);
    if size == 0.0 || !size.is_finite() {
        return 0;
    }
    let guess = libm::floor(libm::log10(size)) as i32;
    // log10 rounds: just under a power of ten it may give the power itself.
    if scaled(size, guess) < 1.0 {
        guess - 1
    } else if scaled(size, guess) >= 10.0 {
        guess + 1
    } else {
        guess
    }
}

fn scaled(size: f64, exponent: i32) -> f64 {
    size / signed_power_of_ten(exponent)
}

/// Negative powers are one division from an exact number, so correctly rounded.
fn signed_power_of_ten(exponent: i32) -> f64 {
    if exponent >= 0 {
        power_of_ten(exponent)
    } else {
        1.0 / power_of_ten(-exponent)
    }
}

fn power_of_ten(exponent: i32) -> f64 {
    (0..exponent).fold(1.0, |power, _| power * 10.0)
}

fn number_word(figures: u8) -> &'static str {
    match figures {
        1 => "one",
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        6 => "six",
        _ => "seven",
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::{prop_assert, proptest};

    use super::*;

    fn nearest_khz() -> Precision {
        Precision::Nearest {
            step: 1e3,
            text: "1 kHz".into(),
        }
    }

    #[test]
    fn rounds_as_taught() {
        assert_eq!(round_to_figures(8.462_81, 3), 8.46);
        assert_eq!(round_to_figures(8.465, 3), 8.47);
        assert_eq!(round_to_figures(9.996, 3), 10.0);
        assert_eq!(round_to_figures(1_669_169.8, 3), 1_670_000.0);
        assert_eq!(round_to_figures(-2.345e-10, 2), -2.3e-10);
        assert_eq!(round_to_figures(0.0, 3), 0.0);
        assert_eq!(nearest_khz().round(1_669_500.0), 1_670_000.0);
    }

    #[test]
    fn agrees_within_half_of_the_last_place() {
        let three = Precision::Figures(3);
        assert!(three.agrees(8.46, 8.462_81));
        assert!(three.agrees(8.4628, 8.462_81));
        assert!(!three.agrees(8.47, 8.462_81));
        assert!(!three.agrees(8.5, 8.462_81));
        assert!(
            nearest_khz().agrees(1_669_500.0, 1_669_000.0),
            "a half is near to both"
        );
        assert!(
            nearest_khz().agrees(1_669_500.0, 1_670_000.0),
            "a half is near to both"
        );
    }

    #[test]
    fn coarser_rounding_is_recognised() {
        let three = Precision::Figures(3);
        assert!(three.rounded_too_far(8.5, 8.462_81));
        assert!(!three.rounded_too_far(8.0, 8.462_81), "two places less");
        assert!(three.rounded_away(8.0, 8.462_81));
        assert!(!three.rounded_away(8.4, 8.462_81), "cut off, not rounded");
        assert!(nearest_khz().rounded_once(1_670_000.0, 1_669_000.0));
        assert!(
            !nearest_khz().rounded_once(1_700_000.0, 1_669_000.0),
            "two places less"
        );
        assert!(nearest_khz().rounded_away(1_700_000.0, 1_669_000.0));
        assert!(!nearest_khz().rounded_away(1_669_100.0, 1_669_000.0));
        assert!(!nearest_khz().rounded_once(1_669_100.0, 1_669_000.0));
    }

    #[test]
    fn a_step_that_is_asked_is_never_rounded_to_ten_of_it() {
        let nearest_db = Precision::Nearest {
            step: 1.0,
            text: "1 dB".into(),
        };
        for (precision, typed, value) in [
            (nearest_khz(), 1_280e3, 1_278e3),
            (nearest_khz(), 1_280e3, 1_275e3),
            (nearest_db.clone(), 50.0, 54.0),
            (nearest_db, 60.0, 56.0),
        ] {
            assert!(!precision.agrees(typed, value));
            assert!(!precision.rounded_too_far(typed, value), "{typed}");
            assert!(precision.rounded_away(typed, value), "{typed}");
        }
    }

    #[test]
    fn powers_of_ten_have_their_own_exponent() {
        for power in -18..=18 {
            let value = if power < 0 {
                1.0 / power_of_ten(-power)
            } else {
                power_of_ten(power)
            };
            assert_eq!(exponent(value), power, "10^{power}");
            assert_eq!(
                exponent(value * 9.999_999_999),
                power,
                "just under 10^{power} times ten"
            );
        }
    }

    #[test]
    fn precision_in_words() {
        assert_eq!(nearest_khz().words(), "to the nearest 1 kHz");
        assert_eq!(Precision::Figures(3).words(), "to three figures");
    }

    proptest! {
        /// The rounded value agrees with the value, and what is told apart is not
        /// agreed with twice.
        #[test]
        fn rounding_agrees(value in 1e-12_f64..1e10, other in 1e-12_f64..1e10, figures in 1_u8..=7) {
            let precision = Precision::Figures(figures);
            let rounded = precision.round(value);
            prop_assert!(precision.agrees(rounded, value));
            if precision.tells_apart(value, other) {
                prop_assert!(!precision.agrees(rounded, other));
            }
        }
    }
}
