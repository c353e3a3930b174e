//! The questions of the check as the page lists them, and the reader's result. Pure.
//!
//! The site writes the list (`web/site/src/pages/practice/check.rs`).

use crate::day;
use crate::json::Json;
use figures::escape;
use superhet::problems::Level;
use superhet::problems::before_after::{Form, QUESTIONS, Taking};

/// What each time is called.
const TIMES: [&str; 4] = ["Before", "After", "Later", "Again"];

/// A question of the check.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Item {
    /// Where its family is found.
    pub(super) address: String,
    /// The level to draw it from.
    pub(super) level: Level,
    seeds: [u32; 2],
    title: String,
}

impl Item {
    /// The seed of the question in a form.
    pub(super) fn seed(&self, form: Form) -> u32 {
        match form {
            Form::One => self.seeds[0],
            Form::Two => self.seeds[1],
        }
    }

    /// Whether it is on a set that no lesson uses.
    fn is_transfer(&self) -> bool {
        self.level == Level::Transfer
    }
}

/// Reads the list; nothing where it is not whole.
pub(super) fn read(text: &str) -> Vec<Item> {
    let json = Json::read(text).unwrap_or(Json::Null);
    let items: Option<Vec<Item>> = json.entries().iter().map(item).collect();
    items
        .filter(|all| all.len() == QUESTIONS as usize)
        .unwrap_or_default()
}

fn item(json: &Json) -> Option<Item> {
    let text = |name: &str| Some(json.member(name)?.text()?.to_owned());
    let [one, other] = json.member("seeds")?.entries() else {
        return None;
    };
    let level = json.member("level")?.number()?;
    Some(Item {
        address: text("at")?,
        level: Level::from_number(u8::try_from(level).ok()?)?,
        seeds: [one.number()?, other.number()?],
        title: text("title")?,
    })
}

/// The result in words, as a picture, and as a table; nothing before the first time.
pub(super) fn result(items: &[Item], takings: &[Taking]) -> String {
    if takings.is_empty() {
        return String::new();
    }
    let lines = told(takings);
    let paragraphs: String = lines
        .iter()
        .map(|line| ["<p>", line, "</p>"].concat())
        .collect();
    [
        &paragraphs,
        &picture(items, takings, &lines.concat()),
        "<p class=\"small\">A full mark is right, an open one is not. ◇ is a question on a set \
         that no lesson uses.</p><details><summary>The same as a table</summary>",
        &table(items, takings),
        "</details>",
    ]
    .concat()
}

fn time(at: usize) -> &'static str {
    TIMES.get(at).copied().unwrap_or("Again")
}

/// Each time in a sentence, and what changed since the one before.
fn told(takings: &[Taking]) -> Vec<String> {
    let mut lines = Vec::new();
    for (at, taking) in takings.iter().enumerate() {
        let day = day::said(&day::of_number(taking.day));
        let count = [&taking.count().to_string(), " of ", &QUESTIONS.to_string()].concat();
        let mut line = [time(at), ", on ", &day, ": ", &count, " right"].concat();
        if let Some(before) = at.checked_sub(1).and_then(|at| takings.get(at)) {
            let changed = |is: bool| {
                let all = 0..QUESTIONS;
                let all = all.filter(|&it| taking.is_right(it) == is && before.is_right(it) != is);
                all.count().to_string()
            };
            let (came, went) = (changed(true), changed(false));
            line.push_str(&["; ", &came, " became right, ", &went, " no longer"].concat());
        }
        line.push_str(". ");
        lines.push(line);
    }
    lines
}

/// Where the marks of a time stand, in the picture's own units.
fn across(at: usize) -> String {
    (90 + 70 * at).to_string()
}

fn picture(items: &[Item], takings: &[Taking], words: &str) -> String {
    let width = (50 + 70 * takings.len().max(2)).to_string();
    let height = (44 + 26 * QUESTIONS).to_string();
    let mut svg = [
        "<svg class=\"check-picture\" viewBox=\"0 0 ",
        &width,
        " ",
        &height,
        "\" role=\"img\" aria-label=\"",
        &escape(words),
        "\">",
    ]
    .concat();
    for at in 0..takings.len() {
        let open = ["<text class=\"time\" x=\"", &across(at), "\" y=\"16\">"].concat();
        svg.push_str(&[&open, time(at), "</text>"].concat());
    }
    for question in 0..QUESTIONS {
        let transfer = items.get(question as usize).is_some_and(Item::is_transfer);
        row(&mut svg, question, transfer, takings);
    }
    svg.push_str("</svg>");
    svg
}

fn row(svg: &mut String, question: u32, transfer: bool, takings: &[Taking]) {
    let y = 44 + 26 * question;
    let number = (question + 1).to_string();
    let mark = if transfer { " ◇" } else { "" };
    let base = (y + 5).to_string();
    svg.push_str(&["<text x=\"4\" y=\"", &base, "\">", &number, mark, "</text>"].concat());
    let y = y.to_string();
    let last = across(takings.len() - 1);
    let line = ["<path d=\"M", &across(0), " ", &y, "H", &last, "\"/>"];
    svg.push_str(&line.concat());
    for (at, taking) in takings.iter().enumerate() {
        let class = if taking.is_right(question) {
            "full"
        } else {
            "open"
        };
        let x = across(at);
        let mark = [
            "<circle class=\"",
            class,
            "\" cx=\"",
            &x,
            "\" cy=\"",
            &y,
            "\" r=\"8\"/>",
        ];
        svg.push_str(&mark.concat());
    }
}

fn table(items: &[Item], takings: &[Taking]) -> String {
    let mut html =
        "<div class=\"table\"><table><thead><tr><th scope=\"col\">Question</th>".to_owned();
    for at in 0..takings.len() {
        html.push_str(&["<th scope=\"col\">", time(at), "</th>"].concat());
    }
    html.push_str("</tr></thead><tbody>");
    for (question, item) in (0..QUESTIONS).zip(items) {
        let set = if item.is_transfer() { " ◇" } else { "" };
        let number = (question + 1).to_string();
        let head = [&number, ". ", &escape(&item.title), set].concat();
        html.push_str(&["<tr><th scope=\"row\">", &head, "</th>"].concat());
        for taking in takings {
            let word = if taking.is_right(question) {
                "right"
            } else {
                "not"
            };
            html.push_str(&["<td>", word, "</td>"].concat());
        }
        html.push_str("</tr>");
    }
    html.push_str("</tbody></table></div>");
    html
}

#[cfg(test)]
pub(super) mod tests {
    use super::{Item, read, result};
    use superhet::problems::Level;
    use superhet::problems::before_after::{Form, Taking};

    pub(in crate::practice) fn items() -> Vec<Item> {
        let one = |level: &str| {
            [
                "{\"at\":\"a.json\",\"level\":",
                level,
                ",\"seeds\":[3,8],\"title\":\"On & off\"}",
            ]
            .concat()
        };
        let all: Vec<String> = ["2", "4"].repeat(6).into_iter().map(one).collect();
        read(&["[", &all.join(","), "]"].concat())
    }

    #[test]
    fn twelve_questions_or_none_are_read() {
        let items = items();
        assert_eq!(items.len(), 12);
        assert_eq!(items[1].level, Level::Transfer);
        assert_eq!((items[0].seed(Form::One), items[0].seed(Form::Two)), (3, 8));
        assert_eq!(read("[]"), []);
        assert_eq!(read("nonsense"), []);
    }

    #[test]
    fn the_result_is_told_drawn_and_tabled() {
        let taken = |day, form, right| Taking { day, form, right };
        assert_eq!(result(&items(), &[]), "");
        let takings = [
            taken(20_000, Form::Two, 0b0000_0000_0111),
            taken(20_100, Form::One, 0b0000_0001_1110),
        ];
        let html = result(&items(), &takings);
        for says in [
            "Before, on 4 October 2024: 3 of 12 right. ",
            "After, on 12 January 2025: 4 of 12 right; 2 became right, 1 no longer. ",
            "On &amp; off ◇",
        ] {
            assert!(html.contains(says), "{says}: {html}");
        }
        assert_eq!(html.matches("class=\"full\"").count(), 7);
        assert_eq!(html.matches("class=\"open\"").count(), 17);
        assert_eq!(html.matches("<td>right").count(), 7);
    }
}
