//! One answer or refusal as a line.

use serde_json::json;
use superhet::catalogue::{Answer, Refusal};

/// An answer's text, or its object.
pub(super) fn answer(answer: &Answer, json: bool) -> String {
    if json {
        json!({
            "name": answer.name,
            "value": answer.value,
            "unit": answer.unit,
            "text": answer.text,
        })
        .to_string()
    } else {
        answer.text.clone()
    }
}

/// A refusal's sentence after `error: `, or its object.
pub(super) fn refusal(refusal: &Refusal, json: bool) -> String {
    if json {
        json!({"name": refusal.name(), "error": refusal.sentence()}).to_string()
    } else {
        format!("error: {refusal}")
    }
}
