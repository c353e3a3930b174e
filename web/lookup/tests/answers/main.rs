//! What the page shows for what stands in its form.

mod cards;
mod places;
mod reading;
mod solved;

use lookup::{Form, View, view};

pub(crate) fn dial(text: &str) -> Form {
    Form {
        dial: text.into(),
        intermediate: "470".into(),
        ..Form::default()
    }
}

pub(crate) fn answer(form: &Form) -> (String, String) {
    let view = view(form);
    (view.answer.text, view.image.text)
}

pub(crate) fn hertz(view: &View) -> f64 {
    view.answer.value.expect("an answer").to_hz()
}
