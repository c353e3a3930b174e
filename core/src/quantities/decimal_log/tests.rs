//! Against `libm::log10`, place by place.

use super::{LOG_2, PER_LN_10, log10, series};
use core::f64::consts::{LOG10_2, LOG10_E};

/// What the design asks for, in units of the last place of `libm`'s answer.
const MOST_ULP: u64 = 2;

/// How many representable numbers lie between two of the same sign.
fn ulp(one: f64, other: f64) -> u64 {
    if one == other {
        return 0;
    }
    assert_eq!(
        one.is_sign_negative(),
        other.is_sign_negative(),
        "{one} {other}"
    );
    one.to_bits().abs_diff(other.to_bits())
}

fn compare(x: f64) -> u64 {
    let distance = ulp(log10(x), libm::log10(x));
    assert!(
        distance <= MOST_ULP,
        "log10({x:e}): {:e}, libm {:e}, {distance} ulp",
        log10(x),
        libm::log10(x)
    );
    distance
}

/// Every exponent of a normal number, mantissas a step apart that no power of two divides.
#[test]
fn it_agrees_with_libm_over_all_magnitudes() {
    for exponent in 1_u64..2047 {
        for step in 0_u64..512 {
            let mantissa = step.wrapping_mul(0x0008_0f1e_3c5a_7b93) & 0x000f_ffff_ffff_ffff;
            compare(f64::from_bits(exponent << 52 | mantissa));
        }
    }
}

/// Near 1 the answer is nearly zero, and a lost digit would be all of it.
#[test]
fn it_agrees_with_libm_near_one() {
    let one = 1.0_f64.to_bits();
    for step in 0..20_000_u64 {
        // From one neighbour of 1 to 0.2 % away, growing by the square.
        let away = step * step * 22_517;
        compare(f64::from_bits(one + away));
        compare(f64::from_bits(one - away / 2));
    }
    for step in 1..=1_000_u64 {
        compare(f64::from_bits(one + step));
        compare(f64::from_bits(one - step));
    }
}

#[test]
fn both_sides_of_the_halved_mantissa_agree() {
    let root = super::ROOT_HALF;
    for step in 0..1_000_u64 {
        compare(f64::from_bits(root + step));
        compare(f64::from_bits(root - step));
    }
}

/// From 10^22 on a power of ten is no longer exact in an f64.
#[test]
fn powers_of_ten_come_out_whole() {
    let mut power = 1.0;
    for exponent in 0..=22 {
        assert_eq!(log10(power), f64::from(exponent));
        power *= 10.0;
    }
}

#[test]
fn the_parts_of_each_constant_make_the_whole() {
    assert_eq!(LOG_2.0 + LOG_2.1, LOG10_2);
    assert_eq!(PER_LN_10.0 + PER_LN_10.1, LOG10_E);
}

/// Against forty terms of the series itself, at the largest |s|, √2 − 1 over √2 + 1, and
/// below. Besides the polynomial's own 3.2e-16, of the first term a double keeps 2⁻⁵⁴ and
/// each of some ten operations a rounding of 2⁻⁵³ of the whole.
#[test]
fn the_polynomial_keeps_to_the_series() {
    for step in 1..=1_000 {
        let s = (3.0 - 2.0 * core::f64::consts::SQRT_2) * f64::from(step) / 1_000.0;
        let x = s * s;
        let term = |sum: f64, n: u32| 2.0 / f64::from(2 * n + 3) + x * sum;
        let whole = x * (0..40).rev().fold(0.0, term);
        let error = (series(x) - whole).abs() / whole;
        assert!(
            error < 3.2e-16 / (2.0 / 3.0) + 10.0 * f64::EPSILON / 2.0,
            "{s}: {error:e}"
        );
    }
}
