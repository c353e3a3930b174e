//! Article 5 of the ITU Radio Regulations, 100 kHz to 30 MHz: whose frequency is it?
//!
//! Source: ITU Radio Regulations, Article 5, Section IV (Table of Frequency
//! Allocations), written down **from memory** of the edition of 2020. Checked against
//! online copies of the table: the edges of medium wave (526.5 and 1606.5 kHz in
//! Region 1, 526.5 and 535 kHz in Region 3, 525, 1605 and 1705 kHz in Region 2), of
//! long wave in Region 1 (148.5 and 283.5 kHz), and the bands of 49, 41, 31 and 25 m.
//! Everything else is unchecked: use it to learn what kind of station shares the
//! frequency, never to decide who may transmit.
//!
//! Simplified, on purpose:
//! - primary services only, but for the amateur bands below 11 MHz in which amateurs
//!   are secondary, since a set hears them;
//! - aeronautical mobile (R) and (OR) are one, and so are the two kinds of "mobile
//!   except aeronautical mobile";
//! - space services and the oceanographic radars (No. 5.132A) are left out;
//! - no footnote that changes a band for named countries; the tropical bands count as
//!   broadcasting everywhere, although No. 5.113 allows it in the Tropical Zone alone:
//!   whoever shows them says so.
//!
//! A frequency on an edge belongs to the band above it.

mod all_regions;
mod region1;
mod region2;
mod region3;
mod row;
mod service;

pub use service::Service;

use super::region::Region;
use crate::units::Frequency;
use all_regions::ALL_REGIONS;
use region1::REGION_1;
use region2::REGION_2;
use region3::REGION_3;
use row::Row;

/// Where the table begins here; the Regulations begin at 8.3 kHz.
const TABLE_START: Frequency = Frequency::khz(100.0);

/// A stretch of spectrum and the services it is allocated to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Allocation {
    /// Lower edge, included.
    pub low: Frequency,
    /// Upper edge, not included.
    pub high: Frequency,
    /// The services, in the order of the table.
    pub services: &'static [Service],
}

/// The allocation that holds a frequency; none outside 100 kHz to 30 MHz.
#[must_use]
pub fn allocated_to(frequency: Frequency, region: Region) -> Option<Allocation> {
    allocations(region)
        .find(|allocation| allocation.low <= frequency && frequency < allocation.high)
}

/// The whole table of a Region, in rising order.
fn allocations(region: Region) -> impl Iterator<Item = Allocation> {
    let own: &'static [Row] = match region {
        Region::One => &REGION_1,
        Region::Two => &REGION_2,
        Region::Three => &REGION_3,
    };
    own.iter()
        .chain(&ALL_REGIONS)
        .scan(TABLE_START, |low, row| {
            let allocation = Allocation {
                low: *low,
                high: row.end,
                services: row.services,
            };
            *low = row.end;
            Some(allocation)
        })
}

#[cfg(test)]
mod tests {
    use super::{Service, allocated_to, allocations};
    use crate::quantities::bands::Region;
    use crate::units::Frequency;

    #[test]
    fn every_table_rises_from_100_khz_to_30_mhz_and_no_row_is_empty() {
        for region in Region::ALL {
            let mut end = Frequency::khz(100.0);
            for allocation in allocations(region) {
                assert_eq!(allocation.low, end);
                assert!(
                    allocation.high > allocation.low,
                    "{region:?} {allocation:?}"
                );
                assert!(!allocation.services.is_empty());
                end = allocation.high;
            }
            assert_eq!(end, Frequency::mhz(30.0));
        }
    }

    #[test]
    fn neighbouring_rows_with_the_same_services_are_one_row() {
        for region in Region::ALL {
            let mut before: &[Service] = &[];
            for allocation in allocations(region) {
                assert_ne!(before, allocation.services, "{region:?} {allocation:?}");
                before = allocation.services;
            }
        }
    }

    /// As a sentence goes on: in small letters, and no two services alike.
    #[test]
    fn each_service_has_words_of_its_own() {
        let listed = || Region::ALL.into_iter().flat_map(allocations);
        for one in listed().flat_map(|row| row.services) {
            let name = one.name();
            assert!(name.starts_with(|first: char| first.is_ascii_lowercase()));
            for other in listed().flat_map(|row| row.services) {
                assert_eq!(name == other.name(), one == other, "{one:?} {other:?}");
            }
        }
        assert_eq!(Service::Broadcasting.name(), "broadcasting");
    }

    #[test]
    fn outside_the_table_nothing_is_listed() {
        for khz in [1.0, 99.9, 30_000.0, 1e6] {
            assert_eq!(allocated_to(Frequency::khz(khz), Region::One), None);
        }
    }

    #[test]
    fn an_edge_belongs_to_the_band_above() {
        let below = allocated_to(Frequency::khz(1809.9), Region::One).map(|found| found.services);
        let on = allocated_to(Frequency::khz(1810.0), Region::One).map(|found| found.services);
        assert_eq!(below, Some(&[Service::Radiolocation][..]));
        assert_eq!(on, Some(&[Service::Amateur][..]));
    }
}
