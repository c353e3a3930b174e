//! Http around the version in place.

use super::current::{Current, Version};
use super::reload;
use crate::edition::Edition;
use crate::portable::{self, DOWNLOAD};
use crate::render::render;
use crate::server::{Answer, Asked, answer, respond, text};
use anyhow::Context as _;
use axum::Router;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::Response;
use axum::routing::get;
use maud::{DOCTYPE, html};
use std::sync::Arc;

/// Every route: the events, and the files for all else.
pub(super) fn router(current: Arc<Current>) -> Router {
    Router::new()
        .route(
            reload::EVENTS,
            get(|State(current): State<Arc<Current>>| async move { reload::events(&current) }),
        )
        .fallback(get(file))
        .with_state(current)
}

/// Any file of the version in place; while the content is faulty, pages show what is wrong.
async fn file(State(current): State<Arc<Current>>, request: Request) -> Response<Body> {
    let version = current.version();
    if request.uri().path().strip_prefix('/') == Some(DOWNLOAD) {
        return respond(download(&version).await);
    }
    let wants_page = text(request.headers(), "accept").contains("text/html");
    if let (Some(fault), true) = (&version.fault, wants_page) {
        return respond(fault_page(fault, &version.name));
    }
    respond(answer(&version.store, Asked::from_request(&request)))
}

/// The portable edition, made when it is asked for: zipping takes longer than all else.
async fn download(version: &Arc<Version>) -> Answer {
    let version = Arc::clone(version);
    let zip = tokio::task::spawn_blocking(move || {
        let sources = version.sources.as_ref().context("the content is faulty")?;
        portable::zipped(&render(sources, &Edition::Portable)?)
    });
    let (status, media_type, body) = match zip.await {
        Ok(Ok(zip)) => (200, "application/zip", zip),
        Ok(Err(error)) => (
            500,
            "text/plain; charset=utf-8",
            format!("{error:#}").into_bytes(),
        ),
        Err(error) => (
            500,
            "text/plain; charset=utf-8",
            error.to_string().into_bytes(),
        ),
    };
    Answer {
        status,
        headers: vec![
            ("content-type", media_type.to_owned()),
            ("cache-control", "no-store".to_owned()),
        ],
        body: body.into(),
    }
}

/// What is wrong, as a page that reloads itself once it is mended.
fn fault_page(fault: &str, version: &str) -> Answer {
    let page = html! {
        (DOCTYPE)
        html lang="en-GB" {
            head {
                meta charset="utf-8";
                title { "Not rendered" }
                script defer src="/reload.js" data-version=(version) {}
            }
            body {
                h1 { "The content cannot be rendered" }
                pre { (fault) }
            }
        }
    };
    Answer {
        status: 500,
        headers: vec![
            ("content-type", "text/html; charset=utf-8".to_owned()),
            ("cache-control", "no-store".to_owned()),
        ],
        body: page.into_string().into(),
    }
}

#[cfg(test)]
mod tests {
    use super::{fault_page, router};
    use crate::render::Files;
    use crate::serve::current::{Current, Version};
    use crate::server::Store;
    use std::io::{Read as _, Write as _};
    use std::net::{SocketAddr, TcpStream};
    use std::sync::Arc;
    use std::time::Duration;
    use tokio::net::TcpListener;
    use tokio::runtime::Runtime;

    #[test]
    fn a_fault_is_shown_as_text_and_goes_when_it_is_mended() {
        let answer = fault_page("lessons/a.md:1:2: <b> is no term", "five");
        let page = String::from_utf8_lossy(&answer.body).into_owned();
        assert_eq!(answer.status, 500);
        assert!(
            page.contains("lessons/a.md:1:2: &lt;b&gt; is no term"),
            "{page}"
        );
        assert!(page.contains("data-version=\"five\""));
    }

    fn version(name: &str, fault: Option<&str>) -> Version {
        let mut files = Files::new();
        files.insert("index.html".to_owned(), name.as_bytes().to_vec());
        Version {
            name: name.to_owned(),
            store: Store::new(files),
            sources: None,
            fault: fault.map(str::to_owned),
        }
    }

    /// A server on a port of its own, as long as the runtime lives.
    fn start(current: &Arc<Current>) -> (Runtime, SocketAddr) {
        let runtime = Runtime::new().unwrap();
        let listener = runtime.block_on(TcpListener::bind("127.0.0.1:0")).unwrap();
        let address = listener.local_addr().unwrap();
        let router = router(Arc::clone(current));
        runtime.spawn(async move { axum::serve(listener, router).await });
        (runtime, address)
    }

    fn ask(address: SocketAddr, path: &str) -> TcpStream {
        let mut stream = TcpStream::connect(address).unwrap();
        let patience = Some(Duration::from_secs(10));
        stream.set_read_timeout(patience).unwrap();
        write!(
            stream,
            "GET {path} HTTP/1.1\r\nHost: x\r\nAccept: text/html\r\n\r\n"
        )
        .unwrap();
        stream
    }

    /// Reads on until a text has come.
    fn until(stream: &mut TcpStream, wanted: &str) -> String {
        let mut said = String::new();
        let mut piece = [0; 4096];
        while !said.contains(wanted) {
            let count = stream.read(&mut piece).unwrap();
            assert!(count > 0, "ended without {wanted:?}: {said}");
            said.push_str(&String::from_utf8_lossy(&piece[..count]));
        }
        said
    }

    #[test]
    fn pages_hear_the_version_in_place_and_each_new_one() {
        let current = Arc::new(Current::default());
        current.put(version("first", None));
        let (_runtime, address) = start(&current);
        let mut stream = ask(address, "/reload-events");
        let head = until(&mut stream, "data: first\n\n");
        assert!(head.contains("content-type: text/event-stream"), "{head}");
        current.put(version("second", None));
        until(&mut stream, "data: second\n\n");
    }

    #[test]
    fn a_faulty_version_shows_what_is_wrong_in_place_of_the_page() {
        let current = Arc::new(Current::default());
        current.put(version("whole", None));
        let (_runtime, address) = start(&current);
        let said = until(&mut ask(address, "/"), "whole");
        assert!(said.starts_with("HTTP/1.1 200"), "{said}");
        current.put(version("broken", Some("lessons/a.md:1:1: nothing here")));
        let said = until(&mut ask(address, "/"), "</html>");
        assert!(
            said.starts_with("HTTP/1.1 500") && said.contains("lessons/a.md:1:1"),
            "{said}"
        );
    }
}
