//! `cargo site serve`: the site on this computer, rebuilt and reloaded on change.
//!
//! It listens on loopback alone. Nothing but cargo is needed: the wasm is not optimised
//! here. When the tool's own code changes it builds itself anew and takes its own place.

mod change;
mod current;
mod http;
mod reload;
mod restart;
mod watch;

use crate::wasm::{Wasm, compile};
use anyhow::{Context, Result};
use change::Change;
use current::Current;
pub(crate) use current::Workbench;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::Path;
use std::sync::Arc;
use tokio::net::TcpListener;
use tokio::sync::mpsc;

/// Serves the site until the process is ended.
///
/// # Errors
/// When the port is taken or the wasm does not compile at the start.
pub fn run(root: &Path, port: u16) -> Result<()> {
    let own_file = std::env::current_exe().context("cannot find this program's own file")?;
    let runtime = tokio::runtime::Runtime::new().context("cannot start")?;
    runtime.block_on(async {
        let address = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
        let listener = TcpListener::bind(address).await.with_context(|| {
            format!("cannot listen on {address}; is it taken? (--port N takes another)")
        })?;
        let address = listener.local_addr().context("no address")?;
        let (sender, changes) = mpsc::unbounded_channel();
        let _watching = watch::start(root, sender)?;
        let wasm = Arc::new(Wasm::bind(&compile(root)?)?);
        let current = Arc::new(Current::default());
        let mut bench = Workbench::new(root, wasm);
        bench.render(&current);
        println!("Before the Bench is at http://{address}/ (Ctrl-C ends it)");
        let follow = follow(bench, Arc::clone(&current), changes, own_file);
        tokio::spawn(follow);
        axum::serve(listener, http::router(current))
            .await
            .context("the server stopped")
    })
}

/// Answers each burst of changes until the watcher goes.
async fn follow(
    mut bench: Workbench,
    current: Arc<Current>,
    mut changes: mpsc::UnboundedReceiver<Change>,
    own_file: std::path::PathBuf,
) {
    while let Some(change) = watch::burst(&mut changes).await {
        let current = Arc::clone(&current);
        let own_file = own_file.clone();
        let work = tokio::task::spawn_blocking(move || {
            bench.answer(change, &current, &own_file);
            bench
        });
        match work.await {
            Ok(back) => bench = back,
            Err(error) => {
                eprintln!("the rebuilding stopped: {error}; start cargo site serve again");
                return;
            }
        }
    }
}
