//! Whole numbers of any size, with only what exact decimal conversion needs.
//!
//! Reading a decimal number and writing one both come down to dividing two whole
//! numbers and rounding once. Doing that exactly needs no table and little code, which
//! is what the look-up page's program can afford.

use alloc::vec::Vec;
use core::cmp::Ordering;

/// A whole number of any size: 32-bit limbs, least significant first, the last never 0.
#[derive(Clone)]
pub(super) struct Natural(Vec<u32>);

impl Natural {
    /// The number itself.
    pub(super) fn new(value: u64) -> Self {
        let mut limbs = Vec::with_capacity(8);
        limbs.push(value as u32);
        limbs.push((value >> 32) as u32);
        let mut number = Self(limbs);
        number.trim();
        number
    }

    /// The number written by these decimal digits.
    pub(super) fn from_digits(digits: &[u8]) -> Self {
        let mut number = Self::new(0);
        for digit in digits {
            number.multiply_and_add(10, u32::from(digit - b'0'));
        }
        number
    }

    /// Multiplies by `factor` and adds `addend`.
    pub(super) fn multiply_and_add(&mut self, factor: u32, addend: u32) {
        let mut carry = u64::from(addend);
        for limb in &mut self.0 {
            carry += u64::from(*limb) * u64::from(factor);
            *limb = carry as u32;
            carry >>= 32;
        }
        if carry != 0 {
            self.0.push(carry as u32);
        }
        self.trim();
    }

    /// Multiplies by ten to the `power`.
    pub(super) fn times_power_of_ten(&mut self, power: u32) {
        for _ in 0..power {
            self.multiply_and_add(10, 0);
        }
    }

    /// Multiplies by two to the `power`.
    pub(super) fn times_power_of_two(&mut self, power: u32) {
        if self.0.is_empty() {
            return;
        }
        self.multiply_and_add(1 << (power % 32), 0);
        let whole = (power / 32) as usize;
        self.0.splice(0..0, core::iter::repeat_n(0, whole));
    }

    /// The number of binary digits; 0 has none.
    pub(super) fn bits(&self) -> u32 {
        match self.0.last() {
            Some(top) => self.0.len() as u32 * 32 - top.leading_zeros(),
            None => 0,
        }
    }

    fn double(&mut self) {
        let mut carry = 0;
        for limb in &mut self.0 {
            let next = *limb >> 31;
            *limb = *limb << 1 | carry;
            carry = next;
        }
        if carry != 0 {
            self.0.push(carry);
        }
    }

    /// Subtracts `other`, which must not be greater.
    fn subtract(&mut self, other: &Self) {
        let mut borrow = 0;
        for (place, limb) in self.0.iter_mut().enumerate() {
            let taken = i64::from(other.0.get(place).copied().unwrap_or(0)) + borrow;
            let left = i64::from(*limb) - taken;
            *limb = left as u32;
            borrow = i64::from(left < 0);
        }
        debug_assert_eq!(borrow, 0, "subtracted a greater number");
        self.trim();
    }

    fn compare(&self, other: &Self) -> Ordering {
        self.0
            .len()
            .cmp(&other.0.len())
            .then_with(|| self.0.iter().rev().cmp(other.0.iter().rev()))
    }

    fn trim(&mut self) {
        while self.0.last() == Some(&0) {
            self.0.pop();
        }
    }
}

/// `dividend / divisor`, whose quotient must be below 2^`bits` (at most 64): the
/// quotient rounded to the nearest whole number, a tie to the even one.
///
/// The rounding is exact: after the loop the remainder, doubled once too often, stands
/// against the divisor, so it is compared with exactly half of it.
pub(super) fn divide(mut dividend: Natural, mut divisor: Natural, bits: u32) -> u64 {
    divisor.times_power_of_two(bits - 1);
    let mut quotient = 0_u64;
    for _ in 0..bits {
        quotient <<= 1;
        if dividend.compare(&divisor) != Ordering::Less {
            dividend.subtract(&divisor);
            quotient |= 1;
        }
        dividend.double();
    }
    match dividend.compare(&divisor) {
        Ordering::Less => quotient,
        Ordering::Equal => quotient + (quotient & 1),
        Ordering::Greater => quotient + 1,
    }
}

#[cfg(test)]
mod tests {
    use super::{Natural, divide};

    fn quotient(dividend: u64, divisor: u64) -> u64 {
        divide(Natural::new(dividend), Natural::new(divisor), 40)
    }

    #[test]
    fn division_rounds_to_nearest_and_ties_to_even() {
        assert_eq!(quotient(7, 2), 4);
        assert_eq!(quotient(5, 2), 2);
        assert_eq!(quotient(9, 4), 2);
        assert_eq!(quotient(11, 4), 3);
        assert_eq!(quotient(0, 9), 0);
        assert_eq!(quotient(1_000_000_000_000, 3), 333_333_333_333);
    }

    #[test]
    fn division_agrees_with_machine_integers() {
        let mut seed = 1_u64;
        for _ in 0..2000 {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            let dividend = seed >> 20;
            let divisor = (seed & 0xffff) + 1;
            let whole = dividend / divisor;
            let twice = 2 * (dividend % divisor);
            let up = twice > divisor || (twice == divisor && whole % 2 == 1);
            let got = divide(Natural::new(dividend), Natural::new(divisor), 45);
            assert_eq!(got, whole + u64::from(up), "{dividend} / {divisor}");
        }
    }

    #[test]
    fn powers_agree() {
        let mut hundred = Natural::new(25);
        hundred.times_power_of_two(70);
        let mut other = Natural::new(1 << 35);
        other.times_power_of_two(37);
        other.times_power_of_ten(2);
        hundred.times_power_of_two(4);
        assert_eq!(divide(other, hundred.clone(), 40), 1);
        assert_eq!(hundred.bits(), 74 + 5);
        assert_eq!(Natural::from_digits(b"18446744073709551616").bits(), 65);
        assert_eq!(Natural::from_digits(b"000").bits(), 0);
    }
}
