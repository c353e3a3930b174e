//! A decimal logarithm for whole curves: the same bits everywhere, several times as fast
//! as `libm`'s.
//!
//! In scope: positive normal numbers. Left out: everything else, which gives what the
//! arithmetic below gives; a curve hands on nothing but squares that it has formed itself.
//!
//! Made of + − × ÷ and integer operations alone, so that every platform rounds alike.
//!
//! Symbols: `x = m·2^k` with `m` between √½ and √2, `f = m − 1`, `s = f/(2 + f)`. Then
//! `ln m = f − f²/2 + s·(f²/2 + R)` with `R = s²·(2/3 + 2s²/5 + 2s⁴/7 + …)`, the series of
//! the inverse hyperbolic tangent arranged so that the exact `f` leads [M. Abramowitz and
//! I. A. Stegun, Handbook of Mathematical Functions, 4.1.27, from memory].

/// The bits of the number above which a mantissa is halved: √½.
const ROOT_HALF: u64 = 0x3fe6_a09e_667f_3bcd;

/// The bits of 1.0: its exponent's bias, 1023, above an empty mantissa.
const ONE: u64 = 1023 << MANTISSA;

/// 2^52: a whole number below it, put into its mantissa, adds itself.
const WHOLE: f64 = 4_503_599_627_370_496.0;

/// Places of the mantissa.
const MANTISSA: u32 = 52;

/// Keeps the upper 20 places of a mantissa: a product of two such numbers is exact.
const UPPER: u64 = 0xffff_ffff_0000_0000;

/// log10(2) in two parts. The first has 41 places, so that `k` times it is exact.
const LOG_2: (f64, f64) = (
    f64::from_bits(0x3fd3_4413_509f_7000),
    f64::from_bits(0x3d43_fde6_23e2_566b),
);

/// 1/ln 10 in two parts. The first has 20 places.
const PER_LN_10: (f64, f64) = (
    f64::from_bits(0x3fdb_cb7b_0000_0000),
    f64::from_bits(0x3e55_26e5_0e32_a6ab),
);

/// 2/3 + 2x/5 + 2x²/7 + … as a polynomial in x = s²: the one that meets the series at the
/// seven Chebyshev nodes between 0 and 0.02944, worked out with 60 places. It departs from
/// the series by 3.2e-16 at most, which is 5e-18 of the logarithm.
const SERIES: [f64; 7] = [
    f64::from_bits(0x3fe5_5555_5555_5558),
    f64::from_bits(0x3fd9_9999_9999_52d8),
    f64::from_bits(0x3fd2_4924_92df_26ce),
    f64::from_bits(0x3fcc_71c6_2e40_b94e),
    f64::from_bits(0x3fc7_462b_5152_e8a6),
    f64::from_bits(0x3fc3_9fe5_2a20_dc69),
    f64::from_bits(0x3fc2_b58f_4c8d_5f63),
];

/// The decimal logarithm of a positive normal number, within 2 ulp of `libm::log10`.
///
/// ```
/// use superhet::quantities::decimal_log::log10;
/// assert_eq!(log10(1.0), 0.0);
/// assert_eq!(log10(1000.0), 3.0);
/// ```
#[inline]
#[must_use]
pub fn log10(x: f64) -> f64 {
    let bits = x.to_bits();
    // k + 1023, made so that a processor can form two or more of them at once.
    let biased = (bits.wrapping_sub(ROOT_HALF).wrapping_add(ONE)) >> MANTISSA;
    let mantissa = f64::from_bits(bits.wrapping_sub(biased << MANTISSA).wrapping_add(ONE));
    let k = f64::from_bits(biased | WHOLE.to_bits()) - (WHOLE + 1023.0);
    let f = mantissa - 1.0;
    let s = f / (2.0 + f);
    let half_square = 0.5 * f * f;
    let rest = s * (half_square + series(s * s));
    // ln m = upper + lower, with few places in upper.
    let upper = f64::from_bits((f - half_square).to_bits() & UPPER);
    let lower = (f - upper) - half_square + rest;
    let leading = k * LOG_2.0;
    let product = upper * PER_LN_10.0;
    let sum = leading + product;
    // What the sum rounded away, exactly: the larger of the two stands first.
    let lost = (leading - sum) + product;
    let small = k * LOG_2.1 + (lower + upper) * PER_LN_10.1 + lower * PER_LN_10.0;
    sum + (small + lost)
}

/// R, in two halves that a processor can form side by side.
#[inline]
fn series(square: f64) -> f64 {
    let c = &SERIES;
    let fourth = square * square;
    let odd = c[0] + fourth * (c[2] + fourth * (c[4] + fourth * c[6]));
    let even = c[1] + fourth * (c[3] + fourth * c[5]);
    square * (odd + square * even)
}

#[cfg(test)]
mod tests;
