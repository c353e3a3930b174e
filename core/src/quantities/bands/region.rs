//! The three Regions into which the Radio Regulations divide the world.

/// A Region of the Radio Regulations (Nos. 5.2 to 5.9).
///
/// One: Europe, Africa, the Middle East west of the Gulf, northern Asia. Two: the
/// Americas. Three: the rest of Asia, Australia and the Pacific.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Region {
    /// Europe, Africa, northern Asia. What is taken when nobody has said.
    #[default]
    One,
    /// The Americas.
    Two,
    /// Southern and eastern Asia, Australia, the Pacific.
    Three,
}

impl Region {
    /// All three, in order.
    pub const ALL: [Self; 3] = [Self::One, Self::Two, Self::Three];

    /// The Region's number, 1 to 3.
    #[must_use]
    pub const fn number(self) -> u8 {
        match self {
            Self::One => 1,
            Self::Two => 2,
            Self::Three => 3,
        }
    }

    /// The Region with this number, if there is one.
    #[must_use]
    pub const fn from_number(number: u8) -> Option<Self> {
        match number {
            1 => Some(Self::One),
            2 => Some(Self::Two),
            3 => Some(Self::Three),
            _ => None,
        }
    }

    /// As sentences name it: "Region 1".
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::One => "Region 1",
            Self::Two => "Region 2",
            Self::Three => "Region 3",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Region;
    use alloc::format;

    #[test]
    fn numbers_and_regions_are_the_same_list() {
        for region in Region::ALL {
            assert_eq!(Region::from_number(region.number()), Some(region));
        }
        assert_eq!(Region::from_number(0), None);
        assert_eq!(Region::from_number(4), None);
    }

    #[test]
    fn sentences_name_a_region_by_its_number() {
        for region in Region::ALL {
            assert_eq!(region.name(), format!("Region {}", region.number()));
        }
    }
}
