//! What the page asks, as it sends it: lines of `name=value`.

use crate::form::{Find, Form, Rows, Unit};
use crate::open::{Given, region};
use crate::step::Step;
use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::conversion::Side;

/// Letters of one value that are read; more is cut, and refused by its reader.
const LONGEST: usize = 250;

/// What is to be done before the page is worked out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Task<'a> {
    /// Nothing: something was typed.
    Show,
    /// Fill the form from a link, and from what was kept where the link is silent.
    Open(Given<'a>, Given<'a>),
    /// Turn the dial.
    Step(Step),
    /// Put a text into a box: (box, text).
    Put(&'a str, &'a str),
}

/// The value of a line, cut to what is read.
fn value<'a>(request: &'a str, name: &str) -> Option<&'a str> {
    let found = request
        .split('\n')
        .find_map(|line| line.strip_prefix(name)?.strip_prefix('='))?;
    match found.char_indices().nth(LONGEST) {
        Some((end, _)) => found.get(..end),
        None => Some(found),
    }
}

/// The task of a request. One that is not known shows what the form holds.
pub(crate) fn task(request: &str) -> Task<'_> {
    let word = value(request, "do").unwrap_or_default();
    match word {
        "open" => Task::Open(
            Given {
                dial: value(request, "dial"),
                oscillator: value(request, "oscillator"),
                intermediate: value(request, "if"),
                side: value(request, "side"),
                region: value(request, "region"),
            },
            Given {
                intermediate: value(request, "set-if"),
                side: value(request, "set-side"),
                region: value(request, "set-region"),
                ..Given::default()
            },
        ),
        "up" => Task::Step(Step::Up),
        "down" => Task::Step(Step::Down),
        "low" => Task::Step(Step::LowEnd),
        "high" => Task::Step(Step::HighEnd),
        _ => match word.split_once(' ') {
            Some((name, text)) => Task::Put(name, text),
            None => Task::Show,
        },
    }
}

/// The form of a request; what it leaves out is as in the example set.
pub(crate) fn form(request: &str) -> Form {
    let text = |name| value(request, name).map(str::to_owned);
    let unit = |name| {
        value(request, name)
            .and_then(Unit::from_symbol)
            .unwrap_or(Unit::Kilohertz)
    };
    let example = Form::default();
    Form {
        find: match value(request, "find") {
            Some("dial") => Find::Dial,
            Some("if") => Find::Intermediate,
            _ => Find::Oscillator,
        },
        dial: text("dial").unwrap_or(example.dial),
        dial_unit: unit("dial-unit"),
        oscillator: text("oscillator").unwrap_or_else(String::new),
        oscillator_unit: unit("oscillator-unit"),
        intermediate: text("if").unwrap_or_else(String::new),
        side: value(request, "side")
            .and_then(Side::from_word)
            .unwrap_or(Side::Above),
        region: value(request, "region")
            .and_then(region)
            .unwrap_or_default(),
        rows: if value(request, "rows") == Some("every") {
            Rows::EveryChannel
        } else {
            Rows::Round
        },
    }
}

#[cfg(test)]
mod tests {
    use super::{Task, form, task};
    use crate::form::{Find, Form, Rows, Unit};
    use crate::step::Step;
    use superhet::quantities::bands::Region;
    use superhet::quantities::conversion::Side;

    #[test]
    fn an_empty_request_is_the_example_set() {
        assert_eq!(form(""), Form::default());
        assert_eq!(task(""), Task::Show);
    }

    #[test]
    fn every_line_reaches_its_place() {
        let request = "do=up\nfind=dial\ndial=a=b\ndial-unit=m\noscillator=1.67\noscillator-unit=MHz\nif=455\n\
                       side=below\nregion=3\nrows=every";
        let expected = Form {
            find: Find::Dial,
            dial: "a=b".into(),
            dial_unit: Unit::Metres,
            oscillator: "1.67".into(),
            oscillator_unit: Unit::Megahertz,
            intermediate: "455".into(),
            side: Side::Below,
            region: Region::Three,
            rows: Rows::EveryChannel,
        };
        assert_eq!(form(request), expected);
        assert_eq!(task(request), Task::Step(Step::Up));
        assert_eq!(task("do=if 455 kHz"), Task::Put("if", "455 kHz"));
    }

    #[test]
    fn a_huge_value_is_cut_between_letters() {
        let request = ["dial=", &"µ".repeat(100_000)].concat();
        assert_eq!(form(&request).dial.chars().count(), 250);
    }
}
