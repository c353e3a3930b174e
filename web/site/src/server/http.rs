//! Requests and answers as axum has them.

use super::answer::{Answer, Asked};
use axum::body::Body;
use axum::extract::Request;
use axum::http::{HeaderMap, Response, StatusCode};

impl<'a> Asked<'a> {
    /// What a request asks for.
    pub fn from_request(request: &'a Request) -> Self {
        let headers = request.headers();
        Self {
            path: request.uri().path(),
            query: request.uri().query(),
            encodings: text(headers, "accept-encoding"),
            known_tag: text(headers, "if-none-match"),
        }
    }
}

/// A header's text; empty where there is none or it is no text.
pub fn text<'a>(headers: &'a HeaderMap, name: &str) -> &'a str {
    let value = headers.get(name).and_then(|value| value.to_str().ok());
    value.unwrap_or_default()
}

/// An answer as axum sends it. Headers are our own and valid; one that is not is left out.
pub fn respond(answer: Answer) -> Response<Body> {
    let mut response = Response::new(Body::from(answer.body));
    let status = StatusCode::from_u16(answer.status);
    *response.status_mut() = status.unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
    for (name, value) in answer.headers {
        if let Ok(value) = value.parse() {
            response.headers_mut().insert(name, value);
        }
    }
    response
}
