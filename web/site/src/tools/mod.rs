//! Programs the tool uses but does not bring: from Debian by apt, from npm by its lock.

mod apt;
mod npm;
mod path;

pub use apt::{Need, install};
pub use npm::{NodeTools, node_tools};
pub use path::find;
