//! The physics, one subject a file, in typed units or plain SI numbers.
//!
//! A function here knows its formula and when it stops making sense. Which range a
//! parameter may be typed in is [`range`]'s; names and texts are the catalogue's.

pub mod bands;
pub mod conversion;
pub mod range;
