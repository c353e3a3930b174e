//! Programs the tool uses but does not bring: from Debian by apt, from npm by its lock, from
//! PyPI by pinned requirements.

mod apt;
mod npm;
mod path;
mod python;

pub use apt::{CHROMIUM, Need, install};
pub use npm::{NodeTools, node_tools};
pub use path::find;
pub use python::python;
