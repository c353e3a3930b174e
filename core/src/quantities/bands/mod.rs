//! Where a frequency lies: broadcast bands, their channels, and the services that own
//! everything between them.
//!
//! In: the broadcast bands of the three ITU Regions from long wave to 26.1 MHz with
//! their channel rasters; the services of Article 5 of the Radio Regulations from
//! 100 kHz to 30 MHz; where an intermediate frequency lies against long and medium
//! wave. Left out: what a single country does differently, and every footnote that names
//! countries.
//!
//! Sources: ITU Radio Regulations, Article 5; Final Acts of the Regional
//! Administrative LF/MF Broadcasting Conference, Geneva 1975; 47 CFR 73.14. Each table
//! says which of its figures were checked and which are from memory.

mod article5;
mod broadcast;
mod intermediate;
mod place;
mod raster;
mod region;

pub use article5::{Allocation, Service, allocated_to};
pub use broadcast::{Band, BandKind, band_at, bands};
pub use intermediate::{IntermediatePlace, place_of_intermediate};
pub use place::{Place, place_of};
pub use raster::Raster;
pub use region::Region;
