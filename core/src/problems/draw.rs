//! Drawing from a seed: integers only, so that a problem stays the same for ever.
//!
//! The generator is PCG-XSH-RR 64/32 (`pcg32`), whose output for a state and a stream
//! is fixed by its paper. No float takes part in a draw: a given is the n-th entry of
//! a list or `from + n × step`, and n comes from [`Draw::below`].
//!
//! The stream is a hash of family, revision and level, so that neighbouring families
//! asked with one seed do not draw alike. Seeds in use lie next to each other
//! (copy 1, copy 2 ...), and an LCG started from neighbouring states gives outputs
//! that step evenly; the seed is therefore mixed before it becomes the state.
//!
//! Sources: M. O'Neill, "PCG: A Family of Simple Fast Space-Efficient Statistically
//! Good Algorithms for Random Number Generation", HMC-CS-2014-0905 (2014), and its C
//! library `pcg32_boundedrand_r`; G. Steele, D. Lea, C. Flood, "Fast Splittable
//! Pseudorandom Number Generators", OOPSLA 2014 (the mixer); the hash FNV-1a of
//! G. Fowler, L. Noll and K.-P. Vo.

use rand_core::Rng;
use rand_pcg::Pcg32;

use super::family::Level;

/// The stream of draws of one problem.
pub struct Draw {
    generator: Pcg32,
}

impl Draw {
    /// The draws for one family, revision, level and seed.
    pub fn new(family: &str, revision: u8, level: Level, seed: u32) -> Draw {
        let stream = hash(family, revision, level);
        Draw {
            generator: Pcg32::new(mixed(u64::from(seed) ^ stream), stream),
        }
    }

    /// A number from 0 to `count - 1`, each as likely as any other; 0 when `count` is 0.
    ///
    /// 2³² is no multiple of most counts, so the first `2³² mod count` outputs are
    /// thrown back and the remainder of what is left is even. For counts below 100 that
    /// happens with a chance under 100 in 2³²; at worst every other output goes back.
    pub fn below(&mut self, count: u32) -> u32 {
        if count == 0 {
            return 0;
        }
        let surplus = count.wrapping_neg() % count;
        loop {
            let output = self.generator.next_u32();
            if output >= surplus {
                return output % count;
            }
        }
    }

    /// Puts a list into one of its orders, each as likely as any other.
    pub fn shuffle<T>(&mut self, list: &mut [T]) {
        for last in (1..list.len()).rev() {
            let other = self.below(u32::try_from(last + 1).unwrap_or(u32::MAX));
            list.swap(last, other as usize);
        }
    }
}

/// FNV-1a, 64 bits, over the id, a zero byte, the revision and the level.
fn hash(family: &str, revision: u8, level: Level) -> u64 {
    let rest = [0, revision, level.number()];
    fnv(family.bytes().chain(rest))
}

fn fnv(bytes: impl Iterator<Item = u8>) -> u64 {
    const BASIS: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0100_0000_01b3;
    bytes.fold(BASIS, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(PRIME)
    })
}

/// One output of SplitMix64 started at `seed`.
fn mixed(seed: u64) -> u64 {
    let mut word = seed.wrapping_add(0x9e37_79b9_7f4a_7c15);
    word = (word ^ (word >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    word = (word ^ (word >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    word ^ (word >> 31)
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use super::*;

    fn reference() -> Draw {
        Draw {
            generator: Pcg32::new(42, 54),
        }
    }

    /// First round of the demonstration program of the PCG C library, state 42 and
    /// stream 54 (values from memory of its printed output).
    #[test]
    fn generator_is_the_published_one() {
        let mut draw = reference();
        let outputs: Vec<u32> = (0..6).map(|_| draw.generator.next_u32()).collect();
        let published = [
            0xa15c_02b7,
            0x7b47_f409,
            0xba1d_3330,
            0x83d2_f293,
            0xbfa4_784b,
            0xcbed_606e,
        ];
        assert_eq!(outputs, published);
    }

    /// Same program: 65 coins, then 33 rolls of a die (values from memory of its
    /// printed output).
    #[test]
    fn bounded_numbers_are_the_published_ones() {
        let mut draw = reference();
        for _ in 0..6 {
            draw.generator.next_u32();
        }
        let heads = |side| if side == 1 { 'H' } else { 'T' };
        let coins: alloc::string::String = (0..65).map(|_| heads(draw.below(2))).collect();
        assert_eq!(
            coins,
            "HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT"
        );
        let rolls: Vec<u32> = (0..33).map(|_| draw.below(6) + 1).collect();
        let published = [
            3, 4, 1, 1, 2, 2, 3, 2, 4, 3, 2, 4, 3, 3, 5, 2, 3, 1, 3, 1, 5, 1, 4, 1, 5, 6, 4, 6, 6,
            2, 6, 3, 3,
        ];
        assert_eq!(rolls, published);
    }

    /// The published FNV-1a hashes of the empty string, "a" and "foobar", and the first
    /// output of SplitMix64 from state 0 (all from memory).
    #[test]
    fn hash_and_mixer_are_the_published_ones() {
        assert_eq!(fnv("".bytes()), 0xcbf2_9ce4_8422_2325);
        assert_eq!(fnv("a".bytes()), 0xaf63_dc4c_8601_ec8c);
        assert_eq!(fnv("foobar".bytes()), 0x8594_4171_f739_67e8);
        assert_eq!(mixed(0), 0xe220_a839_7b1d_cdaf);
    }

    /// Neighbouring seeds, one family: the first two draws of 100 cells must fill the
    /// 10 000 pairs evenly. Chi-square with 9 999 degrees of freedom has mean 9 999
    /// and standard deviation 141.4; five of those either side.
    #[test]
    fn neighbouring_seeds_are_even() {
        let mut cells = alloc::vec![0_u32; 10_000];
        for seed in 0..200_000 {
            let mut draw = Draw::new("trial", 1, Level::One, seed);
            let pair = draw.below(100) * 100 + draw.below(100);
            cells[pair as usize] += 1;
        }
        let expected = 20.0;
        let chi: f64 = cells
            .iter()
            .map(|&n| (f64::from(n) - expected) * (f64::from(n) - expected) / expected)
            .sum();
        assert!((chi - 9_999.0).abs() < 707.0, "chi-square {chi}");
    }

    /// Two levels of one family asked with the same seeds agree as often as chance
    /// says: 200 000 pairs in 100 cells agree 2 000 times, standard deviation 44.5.
    #[test]
    fn levels_do_not_draw_alike() {
        let agree = (0..200_000)
            .filter(|&seed| {
                let mut one = Draw::new("trial", 1, Level::One, seed);
                let mut two = Draw::new("trial", 1, Level::Two, seed);
                one.below(100) == two.below(100)
            })
            .count();
        assert!(agree.abs_diff(2_000) < 223, "{agree} agree");
    }

    #[test]
    fn shuffle_keeps_everything_and_reaches_every_order() {
        let mut seen = Vec::new();
        for seed in 0..200 {
            let mut list = [1, 2, 3];
            Draw::new("trial", 1, Level::One, seed).shuffle(&mut list);
            if !seen.contains(&list) {
                seen.push(list);
            }
        }
        assert_eq!(seen.len(), 6);
        assert!(seen.iter().all(|list| list.iter().sum::<i32>() == 6));
    }

    #[test]
    fn nothing_to_draw_from_is_zero() {
        assert_eq!(Draw::new("trial", 1, Level::One, 7).below(0), 0);
        assert_eq!(Draw::new("trial", 1, Level::One, 7).below(1), 0);
    }
}
