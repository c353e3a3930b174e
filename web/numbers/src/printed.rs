//! A printed number against the value it stands for.

use superhet::catalogue::Kind;
use superhet::units::parse;

/// A printed number taken apart: `1.67 MHz`, `3.06 times`.
#[derive(Clone, Debug, PartialEq)]
pub struct Printed {
    text: String,
    /// The number without marks between its thousands.
    number: f64,
    /// Digits behind the point.
    decimals: usize,
    /// What stands behind the number.
    pub unit: String,
}

/// How far a printed number may lie from the value, in its last digits: half of one.
const HALF: f64 = 0.5;

/// Room for the rounding of the bounds themselves, relative: some thousand times an
/// f64's own.
const ROUNDING: f64 = 1e-12;

/// What may stand behind a number without a unit.
const BEHIND_A_RATIO: [&str; 4] = ["", "times", "to 1", ": 1"];

impl Printed {
    /// Takes a printed number apart.
    ///
    /// # Errors
    /// What stands there instead.
    pub fn read(text: &str) -> Result<Self, String> {
        let refuse = || {
            format!("this stands for a number: write digits, a point and a unit (got \"{text}\")")
        };
        let text_start = text.trim_start_matches(['+', '−', '-']);
        let negative = text_start.len() < text.len() && !text.starts_with('+');
        let run = text_start.find(|sign| !is_digit(sign) && !is_mark(sign));
        let run = &text_start[..run.unwrap_or(text_start.len())];
        let end = run.rfind(is_digit).map(|at| at + 1).ok_or_else(refuse)?;
        let (number, unit) = text_start.split_at(end);
        let (whole, fraction) = number.split_once('.').unwrap_or((number, ""));
        if !fraction.chars().all(is_digit) || !is_grouped(whole) {
            return Err(refuse());
        }
        let digits: String = whole.chars().filter(|sign| is_digit(*sign)).collect();
        let size: f64 = format!("{digits}.{fraction}0")
            .parse()
            .map_err(|_| refuse())?;
        Ok(Self {
            text: text.to_owned(),
            number: if negative { -size } else { size },
            decimals: fraction.len(),
            unit: unit.trim().to_owned(),
        })
    }

    /// Significant digits: those from the first that is not zero.
    pub fn digits(&self) -> usize {
        let end = self.text.len() - self.unit.len();
        let digits = self.text[..end].chars().filter(|sign| is_digit(*sign));
        digits.skip_while(|digit| *digit == '0').count()
    }

    /// Whether the number agrees with a value of a kind to half its last digit.
    ///
    /// # Errors
    /// When it has no unit of that kind.
    pub fn agrees(&self, kind: Kind, value: f64) -> Result<bool, String> {
        if !self.is_bare(kind) {
            parse::value(kind, &self.text, None).map_err(|error| error.sentence())?;
        }
        let half = HALF * libm::exp10(-(self.decimals as f64));
        let one = self.bound(kind, self.number - half)?;
        let other = self.bound(kind, self.number + half)?;
        let (low, high) = if one <= other {
            (one, other)
        } else {
            (other, one)
        };
        let room = ROUNDING * low.abs().max(high.abs());
        Ok(low - room <= value && value <= high + room)
    }

    fn is_bare(&self, kind: Kind) -> bool {
        kind.unit().is_empty() && BEHIND_A_RATIO.contains(&self.unit.as_str())
    }

    /// The value in the SI unit that a number with this unit has.
    fn bound(&self, kind: Kind, number: f64) -> Result<f64, String> {
        if self.is_bare(kind) {
            return Ok(number);
        }
        let size = format!("{:.*} {}", self.decimals + 1, number.abs(), self.unit);
        let value = parse::value(kind, &size, None).map_err(|error| error.sentence())?;
        Ok(if number < 0.0 { -value } else { value })
    }
}

fn is_digit(sign: char) -> bool {
    sign.is_ascii_digit()
}

fn is_mark(sign: char) -> bool {
    matches!(sign, '.' | ',' | ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}')
}

/// Whole digits stand alone or in groups of three behind the first.
fn is_grouped(whole: &str) -> bool {
    let mut groups = whole.split(is_mark);
    let first = groups.next().unwrap_or("");
    let mut rest = groups.peekable();
    let alone = rest.peek().is_none();
    alone || (1..=3).contains(&first.len()) && rest.all(|group| group.len() == 3)
}

#[cfg(test)]
mod tests {
    use super::Printed;
    use superhet::catalogue::Kind;

    fn agrees(text: &str, kind: Kind, value: f64) -> bool {
        let printed = Printed::read(text).expect("a printed number");
        printed.agrees(kind, value).expect("a unit of that kind")
    }

    #[test]
    fn half_the_last_printed_digit_is_the_limit() {
        let frequency = |text, value| agrees(text, Kind::Frequency, value);
        for right in [
            "1670 kHz",
            "1,670 kHz",
            "1 670 kHz",
            "1.67 MHz",
            "1.670 MHz",
            "2 MHz",
            "1670000 Hz",
            "1670 kc/s",
        ] {
            assert!(frequency(right, 1.67e6), "{right}");
        }
        for wrong in [
            "1680 kHz",
            "1671 kHz",
            "1.68 MHz",
            "1.671 MHz",
            "1 MHz",
            "1670.1 kHz",
        ] {
            assert!(!frequency(wrong, 1.67e6), "{wrong}");
        }
        assert!(frequency("1.67 MHz", 1_674_999.0));
        assert!(frequency("1.67 MHz", 1_675_000.0), "just half a digit");
        assert!(!frequency("1.67 MHz", 1_675_001.0));
        assert!(frequency("0 kHz", 0.0));
        assert!(frequency("250 m", 1.2e6), "249.83 m");
        assert!(!frequency("251 m", 1.2e6));
    }

    #[test]
    fn numbers_without_a_unit_may_have_words_behind_them() {
        assert!(agrees("9.346 times", Kind::Ratio, 9.346_26));
        assert!(agrees("9.35", Kind::Ratio, 9.346_26));
        assert!(agrees("9.3 to 1", Kind::Ratio, 9.346_26));
        assert!(!agrees("9.4 times", Kind::Ratio, 9.346_26));
        assert!(agrees("80 %", Kind::Depth, 0.8));
        assert!(agrees("0.8", Kind::Depth, 0.8));
        assert!(agrees("−6 dB", Kind::Decibels, -6.02));
    }

    #[test]
    fn what_is_no_printed_number_is_refused() {
        let refused = |text: &str| Printed::read(text).is_err();
        for text in [
            "",
            "kHz",
            "ten kHz",
            "1.2.3 kHz",
            "12,00 kHz",
            "1,2 MHz",
            "above",
        ] {
            assert!(refused(text), "{text:?}");
        }
        let printed = Printed::read("1670").expect("digits");
        assert_eq!(
            printed.agrees(Kind::Frequency, 1.67e6),
            Err("a frequency needs a unit, such as 1200 kHz (got \"1670\")".to_owned())
        );
        let printed = Printed::read("1670 pF").expect("digits");
        assert!(printed.agrees(Kind::Frequency, 1.67e6).is_err());
    }
}
