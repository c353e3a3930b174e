//! Integers that are the same everywhere and for ever.

/// A linear congruential sequence, of which the upper half is used.
///
/// [D. E. Knuth, The Art of Computer Programming, volume 2, 3rd edition 1998, section
/// 3.3.4, table 1, line 26: multiplier 6364136223846793005]
pub(super) struct Sequence(u64);

impl Sequence {
    /// The sequence that belongs to a name.
    pub(super) fn new(name: &str) -> Self {
        let seed = name.bytes().fold(1, |seed: u64, byte| {
            seed.wrapping_mul(257) + u64::from(byte)
        });
        Self(seed)
    }

    /// The next integer below `count`.
    pub(super) fn below(&mut self, count: u32) -> u32 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as u32 % count
    }
}
