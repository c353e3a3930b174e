//! The site over http, as a static host with precompressed files would give it. `serve`
//! shows it; the browser journeys are run against it.

mod answer;
mod http;
mod store;

pub use answer::{Answer, Asked, answer};
pub use http::{respond, text};
pub use store::{Store, read_folder};
