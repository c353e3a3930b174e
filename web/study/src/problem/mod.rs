//! Problems in a lesson: drawn, asked, marked, explained.
//!
//! [`desk`] decides, [`paper`] writes what the reader sees, [`live`] puts it into the
//! page. The first two are pure.

mod desk;
mod family;
mod live;
mod paper;

pub(crate) use live::LiveProblem;
