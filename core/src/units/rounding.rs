//! Decimal digits to `f64` and back, each correctly rounded.
//!
//! Both directions write the value as a fraction of two whole numbers, scale the
//! fraction by a power of two or ten until its whole part has exactly the wanted number
//! of digits, and divide once with [`divide`], which rounds to nearest, ties to even.
//! Nothing is rounded before that one division, so the result is the nearest there is.

use super::natural::{Natural, divide};

/// Significant decimal digits that are shown.
pub(super) const SHOWN_DIGITS: i32 = 7;

/// The power of ten beyond which no decimal number of a few hundred digits is a finite
/// and non-zero `f64`; larger exponents need not be worked out.
const LARGEST_POWER: i64 = 800;

/// The `f64` nearest to `digits · 10^power`; infinite when it is too large.
pub(super) fn from_decimal(digits: &[u8], power: i64) -> f64 {
    let first = digits.iter().take_while(|digit| **digit == b'0').count();
    let digits = &digits[first..];
    if digits.is_empty() {
        return 0.0;
    }
    if power + digits.len() as i64 > LARGEST_POWER {
        return f64::INFINITY;
    }
    if power < -LARGEST_POWER {
        return 0.0;
    }
    short_decimal(digits, power).unwrap_or_else(|| long_decimal(digits, power))
}

/// The case that nearly every typed number is: both the digits and the power of ten are
/// `f64` without error (below 2^53, up to 10^22), so that one operation rounds once.
fn short_decimal(digits: &[u8], power: i64) -> Option<f64> {
    if digits.len() > 15 || power.abs() > 22 {
        return None;
    }
    let whole = digits
        .iter()
        .fold(0_u64, |whole, digit| whole * 10 + u64::from(digit - b'0'));
    let ten = (0..power.abs()).fold(1.0, |ten, _| ten * 10.0);
    Some(if power < 0 {
        whole as f64 / ten
    } else {
        whole as f64 * ten
    })
}

fn long_decimal(digits: &[u8], power: i64) -> f64 {
    let mut above = Natural::from_digits(digits);
    let mut below = Natural::new(1);
    above.times_power_of_ten(power.max(0) as u32);
    below.times_power_of_ten((-power).max(0) as u32);
    nearest(above, below)
}

/// The `f64` nearest to `above / below`.
///
/// The fraction is scaled by 2^shift to lie between 2^52 and 2^54, that is to 53 or 54
/// binary digits; where there are 54 it is scaled one place less. Below the smallest
/// normal number the scale stops at 2^1074 and fewer digits are left.
fn nearest(above: Natural, below: Natural) -> f64 {
    let wanted = 53 + below.bits() as i32 - above.bits() as i32;
    let shift = wanted.min(1074);
    let (mut scaled, mut divisor) = (above.clone(), below.clone());
    scaled.times_power_of_two(shift.max(0) as u32);
    divisor.times_power_of_two((-shift).max(0) as u32);
    let quotient = divide(scaled, divisor, 54);
    if quotient <= 1 << 53 {
        return from_parts(quotient, -shift);
    }
    let mut doubled = below;
    doubled.times_power_of_two((1 - shift).max(0) as u32);
    let mut scaled = above;
    scaled.times_power_of_two((shift - 1).max(0) as u32);
    from_parts(divide(scaled, doubled, 54), 1 - shift)
}

/// `whole · 2^exponent` without rounding: `whole` is at most 2^53, and where the result
/// is below the normal numbers the caller has left it short enough.
fn from_parts(whole: u64, exponent: i32) -> f64 {
    if whole == 0 {
        return 0.0;
    }
    let top = 63 - whole.leading_zeros() as i32;
    let biased = exponent + top + 1023;
    if biased >= 2047 {
        return f64::INFINITY;
    }
    if biased <= 0 {
        return f64::from_bits(whole << (exponent + 1074));
    }
    let fraction = if top <= 52 {
        whole << (52 - top)
    } else {
        whole >> (top - 52)
    };
    f64::from_bits((biased as u64) << 52 | (fraction & ((1 << 52) - 1)))
}

/// The seven digits of a positive finite number, as a whole number from 1 000 000 to
/// 9 999 999, and the power of ten of the first one.
pub(super) fn to_decimal(value: f64) -> (u32, i32) {
    let (digits, power) = to_digits(value, SHOWN_DIGITS);
    (digits as u32, power)
}

/// The first `count` digits (at most 17) of a positive finite number, as a whole number
/// of just so many, and the power of ten of the first one.
pub(super) fn to_digits(value: f64, count: i32) -> (u64, i32) {
    let (whole, exponent) = parts(value);
    let limit = 10_u64.pow(count as u32);
    // The guess below is at most two places too small: 10^(count + 2) must fit.
    let bits = if count <= SHOWN_DIGITS { 32 } else { 64 };
    let top = exponent + 63 - whole.leading_zeros() as i32;
    // log10(2) is 0.301030; 1233/4096 is a little less and 1234/4096 a little more, so
    // the guess is never too large, and at most two too small.
    let mut power = (top * if top < 0 { 1234 } else { 1233 }) >> 12;
    loop {
        let digits = scaled_digits(whole, exponent, count - 1 - power, bits);
        if digits < limit {
            return (digits, power);
        }
        power += 1;
        if digits == limit {
            return (limit / 10, power);
        }
    }
}

/// `whole · 2^exponent · 10^power` rounded to a whole number below 2^`bits`.
fn scaled_digits(whole: u64, exponent: i32, power: i32, bits: u32) -> u64 {
    let mut above = Natural::new(whole);
    let mut below = Natural::new(1);
    above.times_power_of_two(exponent.max(0) as u32);
    below.times_power_of_two((-exponent).max(0) as u32);
    above.times_power_of_ten(power.max(0) as u32);
    below.times_power_of_ten((-power).max(0) as u32);
    divide(above, below, bits)
}

/// A positive finite number as `whole · 2^exponent`.
fn parts(value: f64) -> (u64, i32) {
    let bits = value.to_bits();
    let fraction = bits & ((1 << 52) - 1);
    match (bits >> 52 & 0x7ff) as i32 {
        0 => (fraction, -1074),
        biased => (fraction | 1 << 52, biased - 1075),
    }
}

#[cfg(test)]
mod tests {
    use super::{from_decimal, long_decimal, to_decimal};
    use alloc::format;
    use proptest::prelude::{any, prop_assert_eq, proptest};

    /// What the standard library reads: an independent way to the same nearest number.
    fn standard(digits: &str, power: i64) -> u64 {
        format!("{digits}e{power}")
            .parse::<f64>()
            .unwrap()
            .to_bits()
    }

    /// What the standard library writes.
    fn standard_digits(value: f64) -> (u32, i32) {
        let text = format!("{value:.6e}");
        let (digits, power) = text.split_once('e').unwrap();
        (
            digits.replace('.', "").parse().unwrap(),
            power.parse().unwrap(),
        )
    }

    #[test]
    fn hard_cases_are_read_to_the_nearest() {
        let cases = [
            ("9007199254740993", 0), // halfway between two numbers: to the even one
            ("90071992547409930000000000000000000000001", -25), // just above halfway
            ("17976931348623157", 292), // the largest number
            ("17976931348623158", 292),
            ("17976931348623159", 292),  // rounds to infinity
            ("22250738585072014", -324), // the smallest normal number
            ("22250738585072011", -324), // once famous for endless loops
            ("49406564584124654", -340), // the smallest number of all
            ("24703282292062327", -340), // just under half of it
            ("24703282292062328", -340),
            ("1", 22),
            ("1", 23),
            ("123456789012345678", -30),
            ("90071992547409915", -1), // rounds up to 2^53, one digit more than fits
            ("0", 0),
            ("000455", 3),
        ];
        for (digits, power) in cases {
            let got = from_decimal(digits.as_bytes(), power);
            assert_eq!(got.to_bits(), standard(digits, power), "{digits}e{power}");
        }
    }

    #[test]
    fn far_exponents_end_at_zero_and_infinity() {
        assert_eq!(from_decimal(b"1", i64::from(i32::MAX)), f64::INFINITY);
        assert_eq!(from_decimal(b"1", i64::from(i32::MIN)), 0.0);
        assert_eq!(from_decimal(b"0", i64::from(i32::MAX)), 0.0);
        // Six hundred digits hold the number up against so small a power.
        assert_eq!(
            from_decimal(&[b'1'; 600], -800),
            1.111_111_111_111_111_1e-201
        );
    }

    #[test]
    fn hard_cases_are_written_to_the_nearest() {
        for value in [
            f64::MAX,
            f64::MIN_POSITIVE,
            5e-324,
            9.999_999_5,
            9.999_999_4,
            9_999_999.5,
            1_234_567.5,
            1_234_568.5,
            1e22,
            1e23,
            0.3,
            2.0 / 3.0,
        ] {
            assert_eq!(to_decimal(value), standard_digits(value), "{value:e}");
        }
    }

    #[test]
    fn every_power_of_ten_and_of_two_is_written_right() {
        for power in -323..=308 {
            let ten = format!("1e{power}").parse().unwrap();
            assert_eq!(to_decimal(ten), standard_digits(ten), "1e{power}");
            let below = f64::from_bits(f64::to_bits(ten) - 1);
            assert_eq!(to_decimal(below), standard_digits(below), "below 1e{power}");
        }
        for exponent in 0..2046 {
            let two = f64::from_bits(exponent << 52 | 1);
            assert_eq!(to_decimal(two), standard_digits(two), "{two:e}");
        }
    }

    proptest! {
        #[test]
        fn any_digits_are_read_to_the_nearest(
            digits in "[0-9]{1,60}", power in -420_i64..360
        ) {
            let got = from_decimal(digits.as_bytes(), power);
            prop_assert_eq!(got.to_bits(), standard(&digits, power));
        }

        #[test]
        fn the_short_way_and_the_long_way_agree(digits in "[1-9][0-9]{0,14}", power in -22_i64..=22) {
            let got = from_decimal(digits.as_bytes(), power);
            prop_assert_eq!(got.to_bits(), long_decimal(digits.as_bytes(), power).to_bits());
        }

        #[test]
        fn any_number_is_written_to_the_nearest(bits in any::<u64>()) {
            let value = f64::from_bits(bits >> 1);
            if value.is_finite() && value > 0.0 {
                prop_assert_eq!(to_decimal(value), standard_digits(value));
            }
        }
    }
}
