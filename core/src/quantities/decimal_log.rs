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

/// 2/3, 2/5, 2/7 …: |s| is 0.172 at most, and the next term would be 1e-17 of the whole.
const SERIES: [f64; 10] = [
    2.0 / 3.0,
    2.0 / 5.0,
    2.0 / 7.0,
    2.0 / 9.0,
    2.0 / 11.0,
    2.0 / 13.0,
    2.0 / 15.0,
    2.0 / 17.0,
    2.0 / 19.0,
    2.0 / 21.0,
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
    let k = (bits.wrapping_sub(ROOT_HALF) as i64) >> MANTISSA;
    let mantissa = f64::from_bits(bits.wrapping_sub((k << MANTISSA) as u64));
    let k = f64::from(k as i32);
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
    let odd = c[0] + fourth * (c[2] + fourth * (c[4] + fourth * (c[6] + fourth * c[8])));
    let even = c[1] + fourth * (c[3] + fourth * (c[5] + fourth * (c[7] + fourth * c[9])));
    square * (odd + square * even)
}

#[cfg(test)]
mod tests;
