//! A square root for whole columns: the same bits everywhere, several numbers at once.
//!
//! In scope: positive normal numbers. Left out: everything else, and the last bit: it is
//! within 2 ulp of `libm`'s (tested), which is exact. Made of + − × and integer operations
//! alone, none of which stands in the way of a processor that takes two numbers at a time.
//!
//! Symbols: `y` approaches `1/√x` by Newton's rule `y ← y·(3 − x·y²)/2`, which turns a
//! relative error `e` into `3e²/2`: 0.035 to begin with, then 2e-3, 6e-6, 5e-11, 4e-21.

/// 3/2 of 1 023 in an exponent's place, less what makes the greatest error of the first
/// guess least: half of a number's bits is the logarithm of its root, near enough.
const THREE_HALVES: u64 = 0x5fe6_eb50_0000_0000;

/// Newton's steps.
const STEPS: u32 = 4;

/// The square root of a positive normal number.
///
/// ```
/// use superhet::quantities::square_root::square_root;
/// assert!((square_root(2.0) - 1.414213562373095).abs() < 1e-15);
/// ```
#[inline]
#[must_use]
pub fn square_root(x: f64) -> f64 {
    let half = 0.5 * x;
    let mut y = f64::from_bits(THREE_HALVES.wrapping_sub(x.to_bits() >> 1));
    for _ in 0..STEPS {
        y *= 1.5 - half * y * y;
    }
    x * y
}

#[cfg(test)]
mod tests {
    use super::square_root;

    /// In units of the last place: x·y rounds once, y is within one of its own.
    const MOST_ULP: u64 = 2;

    #[test]
    fn it_agrees_with_libm_over_all_magnitudes() {
        for exponent in 2_u64..2045 {
            for step in 0_u64..512 {
                let mantissa = step.wrapping_mul(0x0008_0f1e_3c5a_7b93) & 0x000f_ffff_ffff_ffff;
                let x = f64::from_bits(exponent << 52 | mantissa);
                let (got, expected) = (square_root(x), libm::sqrt(x));
                let distance = got.to_bits().abs_diff(expected.to_bits());
                assert!(distance <= MOST_ULP, "√{x:e}: {got:e}, libm {expected:e}");
            }
        }
    }
}
