//! The journeys' own host: it counts what it sends, and can be stopped, for that is the
//! only way to take the network from a service worker too.

use crate::ears;
use crate::engine::Engine;
use crate::wire::Counting;
use anyhow::{Context, Result};
use axum::Router;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::{Response, StatusCode};
use site::render::Files;
use site::server::{Asked, Store, answer, read_folder, respond, text};
use std::net::{Ipv4Addr, SocketAddr};
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::net::TcpListener;
use tokio::runtime::{Builder, Runtime};

/// One answer that was sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sent {
    /// The path asked for, below the base.
    pub path: String,
    /// The http status.
    pub status: u16,
    /// Bytes of the body as sent, compressed where it was.
    pub body: usize,
    /// Whether the service worker asked, and not a page.
    pub by_worker: bool,
}

/// A host for one built site.
#[derive(Debug)]
pub struct Server {
    state: Arc<Host>,
    address: SocketAddr,
    running: Mutex<Option<Runtime>>,
}

#[derive(Debug)]
struct Host {
    base: String,
    store: Mutex<Arc<Store>>,
    sent: Mutex<Vec<Sent>>,
    wire: Arc<AtomicU64>,
}

/// A poisoned lock guards what is still whole.
fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Server {
    /// Hosts a built folder under a base path (`/` or such as `/club/radio/`).
    ///
    /// # Errors
    /// When the folder cannot be read or no port can be had.
    pub fn start(folder: &Path, base: &str) -> Result<Self> {
        Self::start_with(read_folder(folder)?, base)
    }

    /// The same with ears in the pages where the engine's driver does not tell what its
    /// console says.
    ///
    /// # Errors
    /// As [`Server::start`].
    pub fn start_for(engine: Engine, folder: &Path, base: &str) -> Result<Self> {
        let mut files = read_folder(folder)?;
        if engine == Engine::WebKit {
            ears::add(&mut files, base)?;
        }
        Self::start_with(files, base)
    }

    /// Hosts files under a base path.
    ///
    /// # Errors
    /// When no port can be had.
    pub fn start_with(files: Files, base: &str) -> Result<Self> {
        let state = Arc::new(Host {
            base: base.to_owned(),
            store: Mutex::new(Arc::new(Store::new(files))),
            sent: Mutex::default(),
            wire: Arc::default(),
        });
        let (runtime, address) = listen(&state, SocketAddr::from((Ipv4Addr::LOCALHOST, 0)))?;
        Ok(Self {
            state,
            address,
            running: Mutex::new(Some(runtime)),
        })
    }

    /// The address of a path of the site.
    pub fn url(&self, path: &str) -> String {
        format!("http://{}{}{path}", self.address, self.state.base)
    }

    /// Stops answering: every connection is closed, new ones are refused.
    pub fn stop(&self) {
        if let Some(runtime) = lock(&self.running).take() {
            runtime.shutdown_background();
        }
    }

    /// Answers again, at the same address.
    ///
    /// # Errors
    /// When the port has been taken meanwhile.
    pub fn resume(&self) -> Result<()> {
        let (runtime, _) = listen(&self.state, self.address)?;
        if let Some(earlier) = lock(&self.running).replace(runtime) {
            earlier.shutdown_background();
        }
        Ok(())
    }

    /// Puts another version of the site in place, as a new publication does.
    pub fn publish(&self, files: Files) {
        *lock(&self.state.store) = Arc::new(Store::new(files));
    }

    /// Everything sent so far, in order.
    pub fn sent(&self) -> Vec<Sent> {
        lock(&self.state.sent).clone()
    }

    /// Bytes written to the network so far, heads and bodies.
    pub fn wire(&self) -> u64 {
        self.state.wire.load(Ordering::Relaxed)
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

/// Listens in a runtime of its own, so that stopping it closes everything at once.
fn listen(state: &Arc<Host>, address: SocketAddr) -> Result<(Runtime, SocketAddr)> {
    let runtime = Builder::new_multi_thread()
        .worker_threads(1)
        .enable_all()
        .build()
        .context("no runtime")?;
    // A blocking bind, since a runtime may not be entered from within another.
    let listener = std::net::TcpListener::bind(address)
        .with_context(|| format!("cannot listen on {address}"))?;
    listener.set_nonblocking(true)?;
    let address = listener.local_addr()?;
    let guard = runtime.enter();
    let listener = Counting {
        inner: TcpListener::from_std(listener)?,
        wire: Arc::clone(&state.wire),
    };
    let router = Router::new().fallback(host).with_state(Arc::clone(state));
    runtime.spawn(async move { axum::serve(listener, router).await });
    drop(guard);
    Ok((runtime, address))
}

async fn host(State(host): State<Arc<Host>>, request: Request) -> Response<Body> {
    let asked = Asked::from_request(&request);
    let Some(path) = asked.path.strip_prefix(&host.base) else {
        let mut response = Response::new(Body::from("Nothing here."));
        *response.status_mut() = StatusCode::NOT_FOUND;
        return response;
    };
    let store = Arc::clone(&lock(&host.store));
    let path = format!("/{path}");
    let answer = answer(
        &store,
        Asked {
            path: &path,
            ..asked
        },
    );
    lock(&host.sent).push(Sent {
        path: path.trim_start_matches('/').to_owned(),
        status: answer.status,
        body: answer.body.len(),
        by_worker: text(request.headers(), "referer").ends_with("/sw.js"),
    });
    respond(answer)
}

#[cfg(test)]
mod tests {
    use super::Server;
    use std::io::{Read as _, Write as _};
    use std::net::TcpStream;

    fn ask(server: &Server, path: &str) -> std::io::Result<String> {
        let mut stream = TcpStream::connect(server.address)?;
        write!(
            stream,
            "GET {path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"
        )?;
        let mut text = String::new();
        stream.read_to_string(&mut text)?;
        Ok(text)
    }

    #[test]
    fn what_is_sent_is_counted_and_a_stopped_host_refuses() {
        let folder = std::env::temp_dir().join(format!("journey-host-{}", std::process::id()));
        std::fs::create_dir_all(&folder).unwrap();
        std::fs::write(folder.join("index.html"), "home").unwrap();
        let server = Server::start(&folder, "/club/").unwrap();
        let first = ask(&server, "/club/").unwrap();
        assert!(first.ends_with("home"), "{first}");
        assert_eq!(server.wire(), first.len() as u64);
        assert_eq!(
            (server.sent()[0].path.as_str(), server.sent()[0].body),
            ("", 4)
        );
        assert!(ask(&server, "/").unwrap().starts_with("HTTP/1.1 404"));
        server.stop();
        assert!(ask(&server, "/club/").is_err());
        server.resume().unwrap();
        assert!(ask(&server, "/club/").unwrap().ends_with("home"));
        std::fs::remove_dir_all(&folder).unwrap();
    }
}
