//! A number that is set on a figure: where the slider stops, and what it can stand at.

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

/// How far from its stop a value may lie, in steps. Half a step is as near to the next one.
const NEAREST: f64 = 0.48;

/// The stops of a slider, in the SI base unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stops {
    from: f64,
    to: f64,
    begin: f64,
}

impl Stops {
    /// The slider's stops, as a family that was checked names them.
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

    /// Whether the slider can stand at a stop.
    fn reaches(&self, stop: f64) -> bool {
        let beyond = |one: f64, other: f64| one > other && !close(one, other);
        !beyond(self.from, stop) && !beyond(stop, self.to)
    }

    /// Refuses a draw whose answer, a stop, the slider cannot be set to or stands at already,
    /// or whose value lies between two stops, so that both would be as near.
    pub(super) fn lead_to(
        &self,
        answer: f64,
        value: f64,
        precision: &Precision,
    ) -> Result<(), Trouble> {
        let away = libm::fabs(answer - value) / precision.last_place(value);
        if self.reaches(answer) && !close(answer, self.begin) && away < NEAREST {
            return Ok(());
        }
        let says = "the slider cannot be moved to the answer";
        Err(Trouble::Refused(says.into()))
    }
}

/// What is wrong with what a part says of its slider, with the key at fault.
pub(super) fn fault(
    form: &SetOnForm,
    kind: Kind,
    precision: &Precision,
) -> Option<(&'static str, String)> {
    let Precision::Nearest { text: step, .. } = precision else {
        let says = "a slider stops at whole multiples: ask to a nearest one";
        return Some(("precision", says.into()));
    };
    let stops = [
        ("from", &form.from),
        ("to", &form.to),
        ("begin", &form.begin),
    ];
    let off = stops.into_iter().find(|(_, text)| {
        let value = parse::value(kind, text, None);
        value.is_ok_and(|value| !close(precision.round(value), value))
    });
    if let Some((key, text)) = off {
        let says = format!("a slider stops at whole multiples of {step} (got {text})");
        return Some((key, says));
    }
    let stops = Stops::read(form, kind).ok()?;
    let within = stops.from < stops.to && stops.reaches(stops.begin);
    let says = "a slider begins between its lowest stop and its highest";
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
    let caption = text::fill(&form.caption, scope);
    let at = [part, &[Key("set-on"), Key("caption")]].concat();
    let caption = caption.map_err(|says| Trouble::faulty(says).at(&at))?;
    Ok(SetOn {
        figure: form.figure.clone(),
        with: pairs.join("&"),
        parameter: form.parameter.clone(),
        label: form.label.clone(),
        caption,
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
    use crate::problems::{Family, Problem, generate::GenerateError};

    /// The trial family, its first question set on a figure.
    fn on_a_figure(set_on: &str) -> Family {
        let with_figure = "mistakes = [\"subtracted\", \"twice\", \"nothing-added\"]\n";
        let set_on = [with_figure, set_on].concat();
        changed(&[
            (with_figure, &set_on),
            ("nearest = \"1 kHz\"", "nearest = \"5 kHz\""),
        ])
    }

    const LINE: &str = "set-on = { figure = \"line\", parameter = \"oscillator\", \
                        label = \"Runs at\", caption = \"A line.\", from = \"500 kHz\", \
                        to = \"2100 kHz\", begin = \"1000 kHz\", with = [\"if={if}\"] }\n";

    fn drawn(family: &Family, seed: u32) -> (Problem, NumberAnswer) {
        let problem = generate(family, Level::One, seed).unwrap();
        let Answer::Number(number) = problem.parts[0].answer.clone() else {
            panic!("a number is asked");
        };
        (problem, number)
    }

    #[test]
    fn the_figure_is_asked_for_with_this_draws_values() {
        let family = on_a_figure(LINE);
        assert_eq!(check::faults(&family), []);
        for seed in 0..20 {
            let (problem, number) = drawn(&family, seed);
            let set_on = number.set_on.unwrap();
            let intermediate = &problem.givens[1].text;
            assert_eq!(set_on.with, format!("if={intermediate}"));
            assert_eq!(set_on.begin, "1000 kHz");
        }
        let Answer::Number(plain) = &oscillator().parts[0].answer else {
            panic!("a number is asked");
        };
        assert_eq!(plain.set_on, None);
    }

    #[test]
    fn the_answer_is_never_beyond_the_ends_nor_where_it_stands() {
        let narrow = LINE.replace("500 kHz", "1000 kHz").replace("2100", "1500");
        let (narrow, wide) = (on_a_figure(&narrow), on_a_figure(LINE));
        let rounded = |family: &Family, seed| {
            let (_, number) = drawn(family, seed);
            number.precision.round(number.value)
        };
        let mut beyond = 0;
        for seed in 0..50 {
            let answer = rounded(&narrow, seed);
            assert!(answer > 1e6 && answer <= 1.5e6, "{answer}");
            beyond += u32::from(rounded(&wide, seed) > 1.5e6);
        }
        assert!(beyond > 10, "hardly any draw had to be thrown back");
        let out_of_reach = LINE
            .replace("500 kHz", "100 kHz")
            .replace("2100", "300")
            .replace("1000", "200");
        let refused = generate(&on_a_figure(&out_of_reach), Level::One, 0).unwrap_err();
        assert!(
            matches!(refused, GenerateError::NoDraw { .. }),
            "{refused:?}"
        );
    }

    #[test]
    fn a_stop_is_marked_as_a_stop() {
        let (problem, number) = drawn(&on_a_figure(LINE), 3);
        let right = number.precision.round(number.value) / 1e3;
        for (stop, verdict, says) in [
            (right, Verdict::Right, "Right"),
            (right + 5.0, Verdict::Wrong, "very near"),
            (right - 10.0, Verdict::Wrong, "very near"),
            (right + 15.0, Verdict::Wrong, "none of the mistakes"),
        ] {
            let marking = mark(&problem, 0, &format!("{stop}"), Some("kHz"));
            assert_eq!(marking.verdict, verdict, "{stop}: {marking:?}");
            assert!(marking.says.contains(says), "{stop}: {marking:?}");
            assert_eq!(marking.mistake, None, "{stop}");
        }
        let unmoved = mark(&problem, 0, "", Some("kHz"));
        assert_eq!(unmoved.verdict, Verdict::Unclear);
        assert_eq!(unmoved.says, "Move the slider first.");
    }

    #[test]
    fn slips_are_told() {
        for (from, to, says) in [
            ("500 kHz", "501 kHz", "whole multiples of 5 kHz"),
            ("\"500 kHz\"", "\"500 pF\"", "pF"),
            ("2100", "400", "cannot be moved"),
            ("1000", "2200", "begins between"),
            ("{if}", "{iff}", "nothing is named"),
            ("A line.", "A line of 3 MHz.", "must stand in a slot"),
            ("Runs at", "", "no label"),
            ("Runs at", "Oscillator", "names what is asked"),
        ] {
            let faults = check::faults(&on_a_figure(&LINE.replace(from, to)));
            assert!(
                faults.iter().any(|fault| fault.says.contains(says)),
                "{to}: {faults:?}"
            );
        }
        let small = "set-on = { figure = \"a\", parameter = \"b\", label = \"B\", \
                     caption = \"A.\", from = \"1\", to = \"9\", begin = \"2\" }\n";
        for (before, says) in [
            ("mistakes = [\"not-squared\"", "ask to a nearest one"),
            ("shuffle = true", "a choice is not set on a figure"),
        ] {
            let faults = check::faults(&changed(&[(before, &[small, before].concat())]));
            assert!(
                faults.iter().any(|fault| fault.says.contains(says)),
                "{before}: {faults:?}"
            );
        }
    }
}
