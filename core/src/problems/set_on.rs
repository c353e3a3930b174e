//! A number that is set on a figure: where the handle stops, and what it can stand at.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::units::{Kind, parse};

use super::{
    family::SetOnForm,
    fault::{
        Place::{self, Entry, Key},
        Trouble,
    },
    precision::{Precision, close},
    problem::SetOn,
    scope::Scope,
    text,
};

/// The stops of a handle, in the SI base unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stops {
    from: f64,
    to: f64,
    begin: f64,
}

impl Stops {
    /// The handle's stops, as a family that was checked names them.
    pub(super) fn read(form: &SetOnForm, kind: Kind) -> Result<Self, Trouble> {
        let stop = |text: &str| {
            let value = parse::value(kind, text, None);
            value.map_err(|refused| Trouble::faulty(refused.to_string()))
        };
        Ok(Self {
            from: stop(&form.from)?,
            to: stop(&form.to)?,
            begin: stop(&form.begin)?,
        })
    }

    /// Whether the handle can stand at a stop.
    pub(super) fn reach(&self, stop: f64) -> bool {
        let beyond = |one: f64, other: f64| one > other && !close(one, other);
        !beyond(self.from, stop) && !beyond(stop, self.to)
    }

    /// Refuses a draw whose answer the handle cannot be set to, or stands at already.
    pub(super) fn take(&self, answer: f64) -> Result<(), Trouble> {
        if self.reach(answer) && !close(answer, self.begin) {
            return Ok(());
        }
        let says = "the handle cannot be moved to the answer";
        Err(Trouble::Refused(says.into()))
    }
}

/// What is wrong with the stops that a part names, with the key at fault.
pub(super) fn fault(
    form: &SetOnForm,
    kind: Kind,
    precision: &Precision,
) -> Option<(&'static str, String)> {
    let Precision::Nearest { text: step, .. } = precision else {
        let says = "a handle stops at whole multiples: the precision must be a nearest";
        return Some(("figure", says.into()));
    };
    for (key, text) in [
        ("from", &form.from),
        ("to", &form.to),
        ("begin", &form.begin),
    ] {
        match parse::value(kind, text, None) {
            Err(refused) => return Some((key, refused.to_string())),
            Ok(value) if !close(precision.round(value), value) => {
                let says = format!("a handle stops at whole multiples of {step} (got {text})");
                return Some((key, says));
            }
            Ok(_) => {}
        }
    }
    let stops = Stops::read(form, kind).ok()?;
    let within = stops.from < stops.to && stops.reach(stops.begin);
    let says = "a handle begins between its lowest stop and its highest";
    (!within).then(|| ("begin", says.into()))
}

/// The figure as it is asked for in this draw.
pub(super) fn filled(form: &SetOnForm, scope: &Scope, part: &[Place]) -> Result<SetOn, Trouble> {
    let mut pairs = Vec::with_capacity(form.with.len());
    for (entry, pair) in form.with.iter().enumerate() {
        let filled = text::fill(pair, scope);
        let at = [part, &[Key("set-on"), Key("with"), Entry(entry)]].concat();
        pairs.push(filled.map_err(|says| Trouble::faulty(says).at(&at))?);
    }
    Ok(SetOn {
        figure: form.figure.clone(),
        with: pairs.join("&"),
        handle: form.handle.clone(),
        label: form.label.clone(),
        begin: form.begin.clone(),
    })
}

#[cfg(test)]
mod tests {
    use alloc::format;

    use super::super::{
        Level, Verdict, check,
        fixture::{changed, oscillator},
        generate, mark,
        problem::{Answer, NumberAnswer},
    };
    use crate::problems::{Family, generate::GenerateError};

    /// The trial family, its first question set on a figure.
    fn on_a_figure(set_on: &str) -> Family {
        let with_figure = "mistakes = [\"subtracted\", \"twice\", \"nothing-added\"]\n";
        let set_on = [with_figure, set_on].concat();
        changed(&[
            (with_figure, &set_on),
            ("nearest = \"1 kHz\"", "nearest = \"5 kHz\""),
        ])
    }

    const LINE: &str = "set-on = { figure = \"line\", handle = \"oscillator\", label = \"Runs at\", from = \"500 kHz\", \
                        to = \"2100 kHz\", begin = \"1000 kHz\", with = [\"if={if}\"] }\n";

    fn number(family: &Family, seed: u32) -> NumberAnswer {
        let problem = generate(family, Level::One, seed).unwrap();
        match &problem.parts[0].answer {
            Answer::Number(number) => number.clone(),
            Answer::Choice(_) => panic!("a number is asked"),
        }
    }

    #[test]
    fn the_figure_is_asked_for_with_this_draws_values() {
        let family = on_a_figure(LINE);
        assert_eq!(check::faults(&family), []);
        let set_on = number(&family, 3).set_on.unwrap();
        assert!(
            ["if=455 kHz", "if=470 kHz"].contains(&set_on.with.as_str()),
            "{set_on:?}"
        );
        assert_eq!(set_on.begin, "1000 kHz");
        let Answer::Number(plain) = &oscillator().parts[0].answer else {
            panic!("a number is asked");
        };
        assert_eq!(plain.set_on, None);
    }

    #[test]
    fn what_the_handle_cannot_reach_is_neither_answer_nor_mistake() {
        let narrow = LINE.replace("500 kHz", "1000 kHz").replace("2100", "1500");
        let family = on_a_figure(&narrow);
        for seed in 0..50 {
            let number = number(&family, seed);
            let answer = number.precision.round(number.value);
            assert!((1e6..=1.5e6).contains(&answer), "{answer}");
            assert!(answer != 1e6, "the handle stands there already");
            for mistake in &number.mistakes {
                let stop = number.precision.round(mistake.value);
                assert!((1e6..=1.5e6).contains(&stop), "{mistake:?}");
            }
        }
        let beyond = LINE
            .replace("500 kHz", "100 kHz")
            .replace("2100", "300")
            .replace("1000", "200");
        let refused = generate(&on_a_figure(&beyond), Level::One, 0).unwrap_err();
        assert!(
            matches!(refused, GenerateError::NoDraw { .. }),
            "{refused:?}"
        );
    }

    #[test]
    fn a_stop_is_marked_as_a_stop() {
        let family = on_a_figure(LINE);
        let problem = generate(&family, Level::One, 3).unwrap();
        let number = number(&family, 3);
        let right = number.precision.round(number.value) / 1e3;
        for (stop, verdict) in [
            (right, Verdict::Right),
            (right + 5.0, Verdict::Wrong),
            (right + 10.0, Verdict::Wrong),
        ] {
            let marking = mark(&problem, 0, &format!("{stop}"), Some("kHz"));
            assert_eq!(marking.verdict, verdict, "{stop}: {marking:?}");
            let named = marking.mistake.map(|mistake| mistake.id);
            assert_ne!(named.as_deref(), Some("rounded-away"), "{stop}");
        }
        let unmoved = mark(&problem, 0, "", Some("kHz"));
        assert_eq!(unmoved.verdict, Verdict::Unclear);
        assert_eq!(unmoved.says, "Give an answer first.");
    }

    #[test]
    fn slips_are_told() {
        for (from, to, says) in [
            ("500 kHz", "501 kHz", "whole multiples of 5 kHz"),
            ("\"500 kHz\"", "\"500 m\"", "m"),
            ("2100", "400", "cannot be moved"),
            ("1000", "2200", "begins between"),
            ("{if}", "{iff}", "nothing is named"),
        ] {
            let faults = check::faults(&on_a_figure(&LINE.replace(from, to)));
            assert!(
                faults.iter().any(|fault| fault.says.contains(says)),
                "{to}: {faults:?}"
            );
        }
        let coarse = changed(&[(
            "mistakes = [\"not-squared\"",
            "set-on = { figure = \"a\", handle = \"b\", label = \"B\", from = \"1\", to = \"9\", begin = \"2\" }\nmistakes = [\"not-squared\"",
        )]);
        let faults = check::faults(&coarse);
        assert!(
            faults.iter().any(|fault| fault.says.contains("a nearest")),
            "{faults:?}"
        );
    }
}
