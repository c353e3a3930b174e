//! Answers that are set on a figure, held against the figure.
//!
//! The core knows the stops that the family's file names; that the figure has such a handle,
//! draws every answer and mistake, and stops where the file says, is seen here.

use super::file::File;
use crate::report::Report;
use figures::{Control, ControlKind, Input, Slider};
use superhet::problems::family::SetOnForm;
use superhet::problems::fault::Place::{Entry, Key};
use superhet::problems::precision::{Precision, close};
use superhet::problems::problem::{Answer, NumberAnswer, SetOn};
use superhet::problems::{Family, Level, generate};
use superhet::units::{Kind, display, parse};

/// Seeds tried for each level.
const TRIALS: u32 = 8;

/// Reports what a family's figures cannot do.
pub(super) fn check(family: &Family, file: &File, report: &mut Report) {
    for (entry, part) in family.parts.iter().enumerate() {
        let Some(form) = &part.set_on else { continue };
        let place = [Key("part"), Entry(entry), Key("set-on")];
        if let Some(says) = fault(family, &part.id, form) {
            file.fault(&place, &says, report);
        }
    }
}

/// The first thing wrong with a part's figure in some draws of each level.
fn fault(family: &Family, part: &str, form: &SetOnForm) -> Option<String> {
    let draws = Level::ALL
        .into_iter()
        .flat_map(|level| (0..TRIALS).map(move |seed| (level, seed)));
    let problems = draws.filter_map(|(level, seed)| generate(family, level, seed).ok());
    problems
        .flat_map(|problem| problem.parts)
        .filter(|drawn| drawn.id == part)
        .find_map(|drawn| match &drawn.answer {
            Answer::Number(number) => refused(number, form).err(),
            Answer::Choice(_) => None,
        })
}

/// What the figure refuses of one drawn answer.
fn refused(number: &NumberAnswer, form: &SetOnForm) -> Result<(), String> {
    let Some(set_on) = &number.set_on else {
        return Ok(());
    };
    let slider = slider(set_on, &set_on.begin)?;
    stops_agree(&slider, number, form)?;
    let answers = number.mistakes.iter().map(|mistake| mistake.value);
    for value in answers.chain([number.value]) {
        let stop = display::text(number.kind, number.precision.round(value));
        self::slider(set_on, &stop)?;
    }
    Ok(())
}

/// The slider of the figure as it is drawn for a setting.
fn slider(set_on: &SetOn, setting: &str) -> Result<Slider, String> {
    let input = Input::parse(&set_on.with).map_err(|error| error.to_string())?;
    let input = input.with(&set_on.handle, setting);
    let view = figures::view(&set_on.figure, &input).map_err(|error| error.to_string())?;
    let named = |control: &Control| control.parameter == set_on.handle;
    match view.controls.into_iter().find(named).map(|it| it.kind) {
        Some(ControlKind::Slider(slider)) => Ok(slider),
        _ => Err(format!(
            "the figure {} has no slider {:?}",
            set_on.figure, set_on.handle
        )),
    }
}

/// The slider must run from end to end in the steps that the answer is asked in.
fn stops_agree(slider: &Slider, number: &NumberAnswer, form: &SetOnForm) -> Result<(), String> {
    let Precision::Nearest { step, .. } = number.precision else {
        return Err("an answer is set to the nearest whole multiple".to_owned());
    };
    let in_base = |parts: i32| {
        let text = format!(
            "{} {}",
            f64::from(parts) / f64::from(slider.parts),
            slider.unit
        );
        parse::value(number.kind, text.trim(), None).map_err(|refused| refused.to_string())
    };
    let read = |kind: Kind, text: &str| parse::value(kind, text, None).unwrap_or(f64::NAN);
    for (parts, asked, what) in [
        (slider.min, read(number.kind, &form.from), "lowest stop"),
        (slider.max, read(number.kind, &form.to), "highest stop"),
        (slider.step, step, "step"),
    ] {
        let found = in_base(parts)?;
        if !close(found, asked) {
            let found = display::text(number.kind, found);
            let asked = display::text(number.kind, asked);
            return Err(format!(
                "the slider\u{2019}s {what} is {found}, not {asked}"
            ));
        }
    }
    Ok(())
}
