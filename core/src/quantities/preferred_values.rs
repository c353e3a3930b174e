//! Preferred values: what resistors and capacitors are made in.
//!
//! In scope: the series E6, E12, E24, E48 and E96 of IEC 60063, whose figures repeat in
//! every decade. Left out: E3 and E192, and the values that parts were made in before the
//! series came (a set of the 1930s has 250 and 500 where 240 and 510 would be preferred).
//!
//! Source: IEC 60063, *Preferred number series for resistors and capacitors*. E6 to E24
//! are its table; E48 and E96 are its table too and equal `100·10^(i/n)` rounded to three
//! digits, which a test shows.

use libm::{floor, log10, pow};

use super::range::Range;

/// A series of preferred values.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Series {
    /// Six values a decade, for parts of 20 %.
    E6,
    /// Twelve values a decade, for parts of 10 %.
    E12,
    /// Twenty-four values a decade, for parts of 5 %.
    E24,
    /// Forty-eight values a decade, for parts of 2 %.
    E48,
    /// Ninety-six values a decade, for parts of 1 %.
    E96,
}

/// Numbers whose neighbouring decades are floats too.
const HELD: Range = Range::new(1e-300, 1e300);

/// Figures of E24, times 10; E12 is every second and E6 every fourth of them.
const E24: [u16; 24] = [
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
];

/// Figures of E96, times 100; E48 is every second of them.
const E96: [u16; 96] = [
    100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150, 154,
    158, 162, 165, 169, 174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232, 237, 243,
    249, 255, 261, 267, 274, 280, 287, 294, 301, 309, 316, 324, 332, 340, 348, 357, 365, 374, 383,
    392, 402, 412, 422, 432, 442, 453, 464, 475, 487, 499, 511, 523, 536, 549, 562, 576, 590, 604,
    619, 634, 649, 665, 681, 698, 715, 732, 750, 768, 787, 806, 825, 845, 866, 887, 909, 931, 953,
    976,
];

impl Series {
    /// All five, the coarsest first.
    pub const ALL: [Self; 5] = [Self::E6, Self::E12, Self::E24, Self::E48, Self::E96];

    /// As it is written: "E12".
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::E6 => "E6",
            Self::E12 => "E12",
            Self::E24 => "E24",
            Self::E48 => "E48",
            Self::E96 => "E96",
        }
    }

    /// The series of this name, in capitals or not.
    ///
    /// ```
    /// use superhet::quantities::preferred_values::Series;
    /// assert_eq!(Series::from_name("e12"), Some(Series::E12));
    /// assert_eq!(Series::from_name("E13"), None);
    /// ```
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        let named = |series: &Self| series.name().eq_ignore_ascii_case(name);
        Self::ALL.into_iter().find(named)
    }

    /// How many values there are in a decade.
    #[must_use]
    pub const fn count(self) -> usize {
        match self {
            Self::E6 => 6,
            Self::E12 => 12,
            Self::E24 => 24,
            Self::E48 => 48,
            Self::E96 => 96,
        }
    }

    /// The figures of a decade, from 1 to under 10.
    ///
    /// ```
    /// use superhet::quantities::preferred_values::Series;
    /// assert!(Series::E6.figures().eq([1.0, 1.5, 2.2, 3.3, 4.7, 6.8]));
    /// ```
    pub fn figures(self) -> impl Iterator<Item = f64> {
        (0..self.count()).map(move |place| self.value(place, 0))
    }

    /// The preferred value nearest to a number above zero; the lower of two as near.
    ///
    /// Nearest by difference, which for one wanted value is also nearest by share. Outside
    /// 1e-300 to 1e300, where floats end, this and its neighbours give the number back.
    ///
    /// ```
    /// use superhet::quantities::preferred_values::Series;
    /// assert_eq!(Series::E24.nearest(319.0), 330.0);
    /// assert_eq!(Series::E12.nearest(459.673e-12), 470e-12);
    /// ```
    #[must_use]
    pub fn nearest(self, wanted: f64) -> f64 {
        if !HELD.contains(wanted) {
            return wanted;
        }
        let below = self.at_or_below(wanted);
        let above = self.next_up(wanted);
        if above - wanted < wanted - below {
            above
        } else {
            below
        }
    }

    /// The least preferred value above a number above zero.
    ///
    /// ```
    /// use superhet::quantities::preferred_values::Series;
    /// assert_eq!(Series::E96.next_up(184.0), 187.0);
    /// assert_eq!(Series::E12.next_up(82.0), 100.0);
    /// ```
    #[must_use]
    pub fn next_up(self, wanted: f64) -> f64 {
        if !HELD.contains(wanted) {
            return wanted;
        }
        let (decade, place) = self.place(wanted);
        match place {
            Some(place) if place + 1 < self.count() => self.value(place + 1, decade),
            Some(_) => self.value(0, decade + 1),
            None => self.value(0, decade),
        }
    }

    /// The greatest preferred value below a number above zero.
    ///
    /// ```
    /// use superhet::quantities::preferred_values::Series;
    /// assert_eq!(Series::E12.next_down(100.0), 82.0);
    /// assert_eq!(Series::E12.next_down(101.0), 100.0);
    /// ```
    #[must_use]
    pub fn next_down(self, wanted: f64) -> f64 {
        if !HELD.contains(wanted) {
            return wanted;
        }
        let (decade, place) = self.place(wanted);
        match place {
            Some(place) if self.value(place, decade) < wanted => self.value(place, decade),
            Some(place) if place > 0 => self.value(place - 1, decade),
            _ => self.value(self.count() - 1, decade - 1),
        }
    }

    fn at_or_below(self, wanted: f64) -> f64 {
        let (decade, place) = self.place(wanted);
        match place {
            Some(place) => self.value(place, decade),
            None => self.value(self.count() - 1, decade - 1),
        }
    }

    /// The decade of a number, and the place of the greatest value in it that is not
    /// above the number. The logarithm of a number close to a power of ten may round into
    /// the next decade: then there is no such place.
    fn place(self, wanted: f64) -> (i32, Option<usize>) {
        let mut decade = floor(log10(wanted)) as i32;
        if self.value(0, decade + 1) <= wanted {
            decade += 1;
        }
        let fits = |place: &usize| self.value(*place, decade) <= wanted;
        (decade, (0..self.count()).rev().find(fits))
    }

    /// The figure at a place, in a decade: the decimal number's own nearest float as long
    /// as the power of ten is one that a float holds.
    fn value(self, place: usize, decade: i32) -> f64 {
        let (figure, digits) = match self {
            Self::E6 => (E24[place * 4], 1),
            Self::E12 => (E24[place * 2], 1),
            Self::E24 => (E24[place], 1),
            Self::E48 => (E96[place * 2], 2),
            Self::E96 => (E96[place], 2),
        };
        let power = decade - digits;
        if power < 0 {
            f64::from(figure) / power_of_ten(-power)
        } else {
            f64::from(figure) * power_of_ten(power)
        }
    }
}

/// Powers of ten that a float holds exactly.
const EXACT_POWERS: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
];

fn power_of_ten(power: i32) -> f64 {
    match usize::try_from(power)
        .ok()
        .and_then(|power| EXACT_POWERS.get(power))
    {
        Some(exact) => *exact,
        None => pow(10.0, f64::from(power)),
    }
}

#[cfg(test)]
mod tests;
