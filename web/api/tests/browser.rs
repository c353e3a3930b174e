//! The core in a browser against the committed grid, and `compute` as scripts call it.
#![cfg(target_arch = "wasm32")]
// Clippy does not take these for tests, where the workspace allows unwrapping.
#![allow(clippy::unwrap_used)]

mod grid;

use api::compute;
use js_sys::{Array, Error, Object, Reflect};
use superhet::catalogue::evaluate;
use wasm_bindgen::prelude::{JsCast, JsValue};
use wasm_bindgen_test::wasm_bindgen_test as test;
use wasm_bindgen_test::wasm_bindgen_test_configure;

wasm_bindgen_test_configure!(run_in_browser);

#[test]
fn the_core_gives_the_committed_bits() {
    if let Some(difference) = grid::first_difference() {
        panic!("{difference}");
    }
}

fn object(pairs: &[(&str, JsValue)]) -> JsValue {
    let object = Object::new();
    for (key, value) in pairs {
        Reflect::set(&object, &(*key).into(), value).unwrap();
    }
    object.into()
}

fn message(name: &JsValue, parameters: &JsValue) -> String {
    let thrown = compute(name, parameters).unwrap_err();
    let error: Error = thrown.dyn_into().expect("not an Error");
    error.message().into()
}

#[test]
fn an_answer_has_four_properties() {
    let parameters = object(&[
        ("dial", "1200 kHz".into()),
        ("if", "470 kHz".into()),
        ("side", "above".into()),
    ]);
    let answer = compute(&"oscillator".into(), &parameters).unwrap();
    let keys = Object::keys(answer.unchecked_ref::<Object>());
    assert_eq!(keys.join(","), "name,value,unit,text");
    let property = |key: &str| Reflect::get(&answer, &key.into()).unwrap();
    assert_eq!(property("name"), "oscillator");
    assert_eq!(property("value"), 1_670_000.0);
    assert_eq!(property("unit"), "Hz");
    assert_eq!(property("text"), "1670 kHz");
}

#[test]
fn numbers_are_read_where_no_unit_is_needed() {
    let parameters = object(&[
        ("signal", "911 kHz".into()),
        ("if", "455 kHz".into()),
        ("harmonic", 2.into()),
    ]);
    let answer = compute(&"whistle".into(), &parameters).unwrap();
    assert_eq!(Reflect::get(&answer, &"value".into()).unwrap(), 1000.0);
    let parameters = object(&[("f1", 1_200_000.into()), ("f2", "1 MHz".into())]);
    assert_eq!(
        message(&"beat".into(), &parameters),
        "f1: a frequency needs a unit, such as 1200 kHz (got \"1200000\")"
    );
}

#[test]
fn an_object_without_a_prototype_serves() {
    let parameters = Object::create(JsValue::NULL.unchecked_ref::<Object>());
    for key in ["f1", "f2"] {
        Reflect::set(&parameters, &key.into(), &"909 kHz".into()).unwrap();
    }
    let answer = compute(&"beat".into(), &parameters.into()).unwrap();
    assert_eq!(Reflect::get(&answer, &"text".into()).unwrap(), "0 Hz");
}

#[test]
fn an_error_says_what_the_command_line_says() {
    for (name, f1, f2) in [
        ("beat", "loud", "1 MHz"),
        ("beat", "-5 kHz", "1 MHz"),
        ("beat", "1e999 MHz", "1 MHz"),
        ("baet", "1 MHz", "1 MHz"),
        ("image", "1 MHz", "1 MHz"),
    ] {
        let parameters = object(&[("f1", f1.into()), ("f2", f2.into())]);
        let wanted = evaluate(&format!("{name}?f1={f1}&f2={f2}")).unwrap_err();
        assert_eq!(message(&name.into(), &parameters), wanted.sentence());
    }
}

#[test]
fn what_is_no_parameter_list_is_refused() {
    for other in [JsValue::NULL, JsValue::UNDEFINED, 5.into(), "dial".into()] {
        assert!(message(&"beat".into(), &other).starts_with("compute takes"));
    }
    assert!(message(&5.into(), &object(&[])).starts_with("compute takes"));
    assert!(message(&"beat".into(), &Array::of1(&1.into())).starts_with("beat takes"));
    let parameters = object(&[("f1", JsValue::NULL), ("f2", "1 MHz".into())]);
    assert_eq!(
        message(&"beat".into(), &parameters),
        "f1 must be text or a number"
    );
}

#[test]
fn huge_input_is_refused_in_one_short_line() {
    let huge: JsValue = "9".repeat(5_000_000).into();
    let parameters = object(&[("f1", huge.clone()), ("f2", "1 MHz".into())]);
    let many = Array::new_with_length(1_000_000).fill(&1.into(), 0, 1_000_000);
    for refused in [
        message(&"beat".into(), &parameters),
        message(&huge, &parameters),
        message(&"beat".into(), &many),
    ] {
        assert!(
            refused.chars().count() <= 400 && !refused.contains('\n'),
            "{refused}"
        );
    }
}
