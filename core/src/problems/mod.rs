//! Problems: families read as data, problems drawn from a seed, answers marked.
//!
//! A [`Family`] is what its file says, a [`Problem`] is drawn from it and filled in,
//! a [`Marking`] is what is said about one typed answer.

pub mod family;
pub mod marking;
pub mod problem;

pub use family::{Family, Level};
pub use marking::{Marking, Verdict};
pub use problem::Problem;
