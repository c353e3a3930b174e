//! One line of the table.

use super::service::Service;
use crate::units::Frequency;

/// From where the line before it ends up to `end`: these services.
pub(super) struct Row {
    pub(super) end: Frequency,
    pub(super) services: &'static [Service],
}

/// A row that ends at this many kHz. Where a row begins is never written down, so the
/// table can have neither a gap nor an overlap.
pub(super) const fn to(khz: f64, services: &'static [Service]) -> Row {
    Row {
        end: Frequency::khz(khz),
        services,
    }
}
