//! The catalogue for other people's scripts.
//!
//! ```js
//! import init, { compute } from "./superhet.js";
//! await init();
//! compute("oscillator", { dial: "1200 kHz", if: "470 kHz", side: "above" });
//! // { name: "oscillator", value: 1670000, unit: "Hz", text: "1670 kHz" }
//! ```
//!
//! What `compute` refuses it throws as an `Error` whose message is the sentence that
//! `cargo site calc` prints.

use js_sys::{Error, JsString, Number, Object, Reflect};
use superhet::catalogue::{Answer, LONGEST, evaluate_with};
use wasm_bindgen::prelude::{JsCast, JsValue, wasm_bindgen};

/// Parameters that are looked at; no quantity has as many.
const MOST_PARAMETERS: u32 = 64;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("superhet.d.ts");

/// Works out the quantity with this name.
///
/// # Errors
/// An `Error` with the sentence of the refusal.
#[wasm_bindgen(skip_typescript)]
pub fn compute(name: &JsValue, parameters: &JsValue) -> Result<JsValue, JsValue> {
    let Some(name) = name.dyn_ref::<JsString>() else {
        return Err(error("compute takes a quantity's name as text first"));
    };
    let pairs = pairs(parameters)?;
    let pairs: Vec<(&str, &str)> = pairs
        .iter()
        .map(|(key, value)| (key.as_str(), value.as_str()))
        .collect();
    match evaluate_with(&start(name), &pairs) {
        Ok(answer) => object(&answer),
        Err(refusal) => Err(error(refusal.sentence())),
    }
}

/// The object's own keys with their values as text.
fn pairs(parameters: &JsValue) -> Result<Vec<(String, String)>, JsValue> {
    // Not `instanceof Object`: objects without a prototype or of another window are fine.
    if !parameters.is_object() {
        return Err(error(
            "compute takes the parameters as an object second, such as {dial: \"1200 kHz\"}",
        ));
    }
    let keys = Object::keys(parameters.unchecked_ref::<Object>());
    if keys.length() > MOST_PARAMETERS {
        return Err(error("compute takes at most 64 parameters"));
    }
    keys.iter()
        .map(|key| {
            let value = Reflect::get(parameters, &key)?;
            let key = start(&JsString::from(key));
            let value = value_text(&key, &value)?;
            Ok((key, value))
        })
        .collect()
}

/// A value as it would have been typed: text as it is, a number in JavaScript's digits.
fn value_text(key: &str, value: &JsValue) -> Result<String, JsValue> {
    if let Some(text) = value.dyn_ref::<JsString>() {
        return Ok(start(text));
    }
    if let Some(number) = value.as_f64() {
        return Ok(String::from(Number::from(number).to_string_with_radix(10)?));
    }
    let key: String = key.chars().take(40).collect();
    Err(error(&format!("{key} must be text or a number")))
}

/// As much of a text as the catalogue would look at, and one character more, so that
/// what is too long is refused as too long without being copied.
fn start(text: &JsString) -> String {
    String::from(text.slice(0, LONGEST as u32 + 1))
}

fn object(answer: &Answer) -> Result<JsValue, JsValue> {
    let object = Object::new();
    for (key, value) in [
        ("name", JsValue::from(answer.name)),
        ("value", JsValue::from(answer.value)),
        ("unit", JsValue::from(answer.unit)),
        ("text", JsValue::from(&answer.text)),
    ] {
        Reflect::set(&object, &key.into(), &value)?;
    }
    Ok(object.into())
}

fn error(message: &str) -> JsValue {
    Error::new(message).into()
}
