//! What is found at a frequency: a broadcast band, another service, or nothing listed.

use super::article5::{Allocation, allocated_to};
use super::broadcast::{Band, band_at};
use super::region::Region;
use crate::units::Frequency;

/// What lies at a frequency in a Region.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Place {
    /// Inside a broadcast band.
    Broadcast(&'static Band),
    /// Outside them: what Article 5 allocates it to.
    Allocated(Allocation),
    /// Below 100 kHz or from 30 MHz up, where this table ends.
    NotListed,
}

/// What lies at a frequency. The broadcast bands include their edges and come first.
#[must_use]
pub fn place_of(frequency: Frequency, region: Region) -> Place {
    if let Some(band) = band_at(frequency, region) {
        return Place::Broadcast(band);
    }
    allocated_to(frequency, region).map_or(Place::NotListed, Place::Allocated)
}

#[cfg(test)]
mod tests {
    use super::{Place, place_of};
    use crate::quantities::bands::{Region, Service};
    use crate::units::Frequency;

    #[test]
    fn an_image_above_medium_wave_lands_on_ships() {
        match place_of(Frequency::khz(2140.0), Region::One) {
            Place::Allocated(found) => assert!(found.services.contains(&Service::MaritimeMobile)),
            other => panic!("expected an allocation, got {other:?}"),
        }
    }

    #[test]
    fn edges_of_a_broadcast_band_belong_to_it() {
        for khz in [526.5, 1606.5] {
            assert!(
                matches!(place_of(Frequency::khz(khz), Region::One), Place::Broadcast(band) if band.name == "medium wave")
            );
        }
    }

    #[test]
    fn below_and_above_the_table_nothing_is_listed() {
        assert_eq!(
            place_of(Frequency::khz(60.0), Region::Two),
            Place::NotListed
        );
        assert_eq!(
            place_of(Frequency::mhz(41.0), Region::Two),
            Place::NotListed
        );
    }
}
