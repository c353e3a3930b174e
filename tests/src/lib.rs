//! What is checked from outside: references, content, budgets, and journeys in browsers.
//!
//! # Journeys
//! With the feature `browser` this crate holds what a journey needs. A journey is a test
//! in `journeys/`, one file for each part of the site:
//!
//! ```ignore
//! #[tokio::test(flavor = "multi_thread")]
//! async fn the_look_up_is_typed() -> anyhow::Result<()> {
//!     for engine in Engine::ALL {
//!         journey(engine, Window::PHONE, async |visit| {
//!             visit.open("lookup/").await?;
//!             visit.ready().await?;
//!             visit.type_into("#dial", "909").await?;
//!             let expression = "oscillator?dial=909kHz&if=470kHz&side=above";
//!             visit.shows("#lookup", "oscillator", expression).await?;
//!             visit.accessible().await
//!         })
//!         .await?;
//!     }
//!     Ok(())
//! }
//! ```
//!
//! [`journey`] starts a host for the built site and a browser, runs the walk, and ends
//! both whatever happens; an error or warning left in the console fails it. The host
//! lists what it sends ([`Server::sent`]) and counts it on the wire ([`Server::wire`]);
//! [`Server::stop`] takes the network away, from the service worker too, which nothing in
//! a browser does. With the host stopped a browser still reports success for a page it
//! has not got: look at what the page holds. [`Server::publish`] puts a newer version of
//! the site in place. WebKit's windows are at least 447 px wide, and it does not print.
//!
//! A visit has hands (`press`, `tab_to`, `drag`, `drag_by_touch`, `past_every_problem`), an eye
//! for what fits (`in_view`, `no_sideways_scroll`, `fit_for_fingers`), knows a device's
//! conditions (`resize`, `prefer`, `without_scripts`), and compares results with the core to
//! the last bit (`shows`). It hears what a screen reader is told (`focus`, `listen`, `spoken`).
//! What is tested is one page's behaviour; that the eye and the ears notice anything at all is
//! tested in `journeys/harness.rs`.
//!
//! `cargo site test` builds what journeys need and says where it is: [`built`] lists the
//! environment variables. To run them again without building:
//!
//! ```text
//! BEFORE_THE_BENCH_SITE=$PWD/target/site-under-test \
//! BEFORE_THE_BENCH_SUB_PATH_SITE=$PWD/target/site-under-sub-path \
//! BEFORE_THE_BENCH_PORTABLE=$PWD/target/site-portable.zip \
//! BEFORE_THE_BENCH_AXE=$PWD/target/site-tools/node-few/node_modules/axe-core/axe.min.js \
//!     cargo test --package checks --features browser --test journeys
//! ```

#[cfg(feature = "browser")]
pub mod axe;
#[cfg(feature = "browser")]
pub mod built;
#[cfg(feature = "browser")]
mod conditions;
#[cfg(feature = "browser")]
pub mod ears;
#[cfg(feature = "browser")]
pub mod engine;
#[cfg(feature = "browser")]
mod hands;
#[cfg(feature = "browser")]
pub mod layout;
#[cfg(feature = "browser")]
mod printing;
#[cfg(feature = "browser")]
pub mod process;
#[cfg(feature = "browser")]
pub mod server;
#[cfg(feature = "browser")]
pub mod shown;
#[cfg(feature = "browser")]
pub mod told;
#[cfg(feature = "browser")]
pub mod visit;
#[cfg(feature = "browser")]
pub mod window;
#[cfg(feature = "browser")]
mod wire;

#[cfg(feature = "browser")]
pub use {
    engine::Engine,
    server::{Sent, Server},
    visit::{Visit, journey, journey_on},
    window::Window,
};
