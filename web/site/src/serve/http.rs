//! Http around the version in place.

use super::current::Current;
use super::reload;
use crate::server::{Answer, Asked, answer, respond, text};
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
    let wants_page = text(request.headers(), "accept").contains("text/html");
    if let (Some(fault), true) = (&version.fault, wants_page) {
        return respond(fault_page(fault, &version.name));
    }
    respond(answer(&version.store, Asked::from_request(&request)))
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
    use super::fault_page;

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
}
