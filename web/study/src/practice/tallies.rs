//! Mistakes as tallies: strokes in fives, with words beside them. Pure.

use super::kinds::Kinds;
use super::names::{Named, Names};
use crate::notebook::Notebook;
use figures::escape;

/// More strokes than these are not drawn; the words give the count.
const MOST_STROKES: u32 = 50;

/// One line: what went wrong, where, how often.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Line {
    belief: bool,
    called: String,
    /// The kind of problem; a belief can show in several.
    of: Option<String>,
    times: u32,
}

/// The tallies of everything on record, the most frequent first.
pub(super) fn markup(kinds: &Kinds, names: &Names, notebook: &Notebook) -> String {
    let lines = lines(kinds, names, notebook);
    if lines.is_empty() {
        return "<p>No mistake is on record.</p>".to_owned();
    }
    let items: String = lines.iter().map(item).collect();
    ["<ul class=\"tallies\">", &items, "</ul>"].concat()
}

/// Whether there is a mistake to be named.
pub(super) fn are_there(notebook: &Notebook) -> bool {
    let mut tallies = notebook.tallies().iter();
    tallies.any(|(_, tally)| !tally.mistakes.is_empty())
}

fn lines(kinds: &Kinds, names: &Names, notebook: &Notebook) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    for (id, tally) in notebook.tallies() {
        let Some(kind) = kinds.find(id) else { continue };
        for (mistake, times) in &tally.mistakes {
            let line = match names.named(id, mistake) {
                None => continue,
                Some(Named::Belief(belief)) => (true, belief, None),
                Some(Named::Mistake(name)) => (false, name, Some(&kind.title)),
            };
            let (belief, called, of) = line;
            let known = lines
                .iter_mut()
                .find(|it| it.called == called && it.of.as_ref() == of);
            match known {
                Some(known) => known.times = known.times.saturating_add(*times),
                None => lines.push(Line {
                    belief,
                    called: called.to_owned(),
                    of: of.cloned(),
                    times: *times,
                }),
            }
        }
    }
    let mut sorted: Vec<Line> = Vec::with_capacity(lines.len());
    for line in lines {
        let after = sorted.iter().position(|it| it.times < line.times);
        sorted.insert(after.unwrap_or(sorted.len()), line);
    }
    sorted
}

fn item(line: &Line) -> String {
    let (open, close) = if line.belief {
        ("“", "”")
    } else {
        ("", "")
    };
    let (of, beside) = match &line.of {
        Some(title) => (["<strong>", &escape(title), "</strong>"].concat(), ""),
        None => (String::new(), " – a common belief that such answers fit"),
    };
    [
        "<li>",
        &drawn(line.times),
        "<div>",
        &of,
        open,
        &escape(&line.called),
        close,
        "<small>",
        &times(line.times),
        beside,
        "</small></div></li>",
    ]
    .concat()
}

/// "once", "twice", "3 times".
fn times(number: u32) -> String {
    match number {
        1 => "once".to_owned(),
        2 => "twice".to_owned(),
        _ => [&number.to_string(), " times"].concat(),
    }
}

/// The strokes, in fives: four upright and one across.
fn drawn(number: u32) -> String {
    let strokes = number.min(MOST_STROKES);
    let mut html = "<div class=\"tally\" aria-hidden=\"true\">".to_owned();
    for begun in (0..strokes).step_by(5) {
        let left = (strokes - begun).min(5);
        html.push_str("<svg viewBox=\"0 0 36 28\" focusable=\"false\">");
        for upright in 0..left.min(4) {
            let x = (5 + 8 * upright).to_string();
            html.push_str(&["<path d=\"M", &x, " 3V25\"/>"].concat());
        }
        if left == 5 {
            html.push_str("<path class=\"across\" d=\"M1 21L33 7\"/>");
        }
        html.push_str("</svg>");
    }
    html.push_str("</div>");
    html
}

#[cfg(test)]
mod tests {
    use super::super::kinds::{Kinds, tests::KINDS};
    use super::super::names::{Names, tests::NAMES};
    use super::{are_there, drawn, markup};
    use crate::notebook::Notebook;

    #[test]
    fn strokes_come_in_fives() {
        for (number, groups, uprights, across) in [
            (1, 1, 1, 0),
            (4, 1, 4, 0),
            (5, 1, 4, 1),
            (12, 3, 10, 2),
            (99_999, 10, 40, 10),
        ] {
            let html = drawn(number);
            assert_eq!(html.matches("<svg").count(), groups, "{number}");
            assert_eq!(html.matches("V25").count(), uprights, "{number}");
            assert_eq!(html.matches("across").count(), across, "{number}");
        }
    }

    #[test]
    fn mistakes_are_told_by_name_and_number_the_most_frequent_first() {
        let text = r#"{"version":2,"problems":{"one":[0,9,1,5,{"added":1,"stays":3,"gone":2}],"three":[0,2,1,5,{"added":2}],"old":[0,1,1,5,{"x":1}]}}"#;
        let (kinds, names) = (Kinds::read(KINDS), Names::read(NAMES));
        let notebook = Notebook::read(text).unwrap();
        assert!(are_there(&notebook) && !are_there(&Notebook::default()));
        let html = markup(&kinds, &names, &notebook);
        let places = [
            "“The IF moves.”<small>3 times – a common belief",
            "The third</strong>You added.<small>twice",
            "The first</strong>You added.<small>once",
        ];
        let places = places.map(|it| html.find(it).unwrap_or_else(|| panic!("{it}: {html}")));
        assert!(places.is_sorted(), "{html}");
        assert_eq!(html.matches("<li>").count(), 3);
        let none = markup(&kinds, &names, &Notebook::default());
        assert!(none.contains("No mistake"), "{none}");
    }
}
