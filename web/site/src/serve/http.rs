//! Http around the version in place.

use super::current::Current;
use super::reload;
use crate::server::{Answer, Asked, answer};
use axum::Router;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::{HeaderMap, Response, StatusCode, header};
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
    let headers = request.headers();
    let path = request.uri().path();
    let wants_page = text(headers, "accept").contains("text/html");
    if let (Some(fault), true) = (&version.fault, wants_page) {
        return respond(fault_page(fault, &version.name));
    }
    let asked = Asked {
        path,
        query: request.uri().query(),
        encodings: text(headers, header::ACCEPT_ENCODING.as_str()),
        known_tag: text(headers, header::IF_NONE_MATCH.as_str()),
    };
    respond(answer(&version.store, asked))
}

fn text<'a>(headers: &'a HeaderMap, name: &str) -> &'a str {
    headers
        .get(name)
        .and_then(|value| value.to_str().ok())
        .unwrap_or_default()
}

/// An answer as axum sends it. Headers are our own and valid; one that is not is left out.
pub(super) fn respond(answer: Answer) -> Response<Body> {
    let mut response = Response::new(Body::from(answer.body));
    *response.status_mut() =
        StatusCode::from_u16(answer.status).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
    for (name, value) in answer.headers {
        if let Ok(value) = value.parse() {
            response.headers_mut().insert(name, value);
        }
    }
    response
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
