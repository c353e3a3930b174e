//! Answers that are set on a figure, held against the figure.
//!
//! The core knows the stops that the family's file names; that the figure has such a slider,
//! stops where the file says, and draws the answers and mistakes of some draws, is seen here.

use super::file::File;
use crate::report::Report;
use figures::{Setting, Slider};
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
    let (Some(set_on), Precision::Nearest { step, .. }) = (&number.set_on, &number.precision)
    else {
        return Ok(());
    };
    let slider = slider(set_on, &set_on.begin)?;
    let ends = ends_agree(&slider, number.kind, form, *step)?;
    let answers = number.mistakes.iter().map(|mistake| mistake.value);
    let stops = answers.map(|value| number.precision.round(value));
    let within = stops.filter(|stop| *stop >= ends.0 && *stop <= ends.1);
    for stop in within.chain([number.precision.round(number.value)]) {
        self::slider(set_on, &display::text(number.kind, stop))?;
    }
    Ok(())
}

/// The slider of the figure as it is drawn for a setting.
fn slider(set_on: &SetOn, stands: &str) -> Result<Slider, String> {
    let slider = Setting::new(set_on, stands).and_then(|setting| {
        let view = setting.view()?;
        setting.slider_of(&view)
    });
    slider.map_err(|error| error.to_string())
}

/// The slider's ends. It must run from one to the other in the steps that the answer is
/// asked in.
fn ends_agree(
    slider: &Slider,
    kind: Kind,
    form: &SetOnForm,
    step: f64,
) -> Result<(f64, f64), String> {
    let read = |text: &str| parse::value(kind, text, None).map_err(|refused| refused.to_string());
    let in_base = |parts: i32| {
        let number = f64::from(parts) / f64::from(slider.parts);
        read(format!("{number} {}", slider.unit).trim())
    };
    let (min, max) = (in_base(slider.min)?, in_base(slider.max)?);
    for (found, asked, what) in [
        (min, read(&form.from)?, "lowest stop"),
        (max, read(&form.to)?, "highest stop"),
        (in_base(slider.step)?, step, "step"),
    ] {
        if !close(found, asked) {
            let (found, asked) = (display::text(kind, found), display::text(kind, asked));
            return Err(format!("the slider's {what} is {found}, not {asked}"));
        }
    }
    Ok((min, max))
}
