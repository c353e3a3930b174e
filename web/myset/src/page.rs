//! What the page's script asks and is answered: lines in, lines out.
//!
//! A request is lines `name=value`: `do` first (`open`, `show` or `take`), then the boxes by
//! their keys, `KEY-unit` for the button beside a box, `side`, `region`, and `dial`, which
//! the page hands through for the look-up. `open` has `kept` (the text that was kept) and
//! `link` (what stands behind the address); `take` has `text` (that of a file).
//!
//! An answer is lines of fields between tabs:
//!
//! | line | what the script does |
//! | --- | --- |
//! | `box KEY TEXT` | puts the text into the box |
//! | `press NAME VALUE` | presses the button; an empty value lets all go |
//! | `dial TEXT` | hands it back with the next request |
//! | `notice TEXT` | says it at the head of the page |
//! | `aside` | sets what was kept aside |
//! | `reading KEY TEXT`, `fault KEY TEXT` | beside the box; empty where there is none |
//! | `set JSON LINK TOLD` | what save, export and link take; absent while a fault stands |
//! | `heading`, `says`, `needs`, `table CAPTION`, `heads …`, `row` | the results, in order |
//! | `piece TEXT [QUANTITY VALUE EXPRESSION]` | a stretch of the sentence or a cell of the row above |

use crate::field;
use crate::paper::{Block, Piece};
use crate::report::report;
use crate::{Typed, kept, link};
#[cfg(feature = "page")]
use wasm_bindgen::prelude::wasm_bindgen;

/// The most of one line that is read; what is kept or carried is a little shorter.
const LONGEST_LINE: usize = 2 * kept::LONGEST;

/// Answers the page; see the module.
#[cfg_attr(feature = "page", wasm_bindgen)]
#[must_use]
pub fn my_set(request: &str) -> String {
    let mut answer = Answer::default();
    let mut state = asked(request);
    match value(request, "do") {
        "open" => open(request, &mut state, &mut answer),
        "take" => take(value(request, "text"), &mut state, &mut answer),
        _ => {}
    }
    answer.readings(&state.typed);
    answer.outcome(&state);
    answer.lines
}

/// What the page holds.
#[derive(Default)]
struct State {
    typed: Typed,
    dial: Option<String>,
}

fn value<'a>(request: &'a str, name: &str) -> &'a str {
    let found = request
        .split('\n')
        .find_map(|line| line.strip_prefix(name)?.strip_prefix('='));
    let found = found.unwrap_or_default();
    if found.len() <= LONGEST_LINE {
        return found;
    }
    // One letter more than is read, so that its reader says that it is too long.
    &found[..found.floor_char_boundary(LONGEST_LINE)]
}

fn asked(request: &str) -> State {
    let mut typed = Typed {
        side: value(request, "side").to_owned(),
        region: value(request, "region").to_owned(),
        ..Typed::default()
    };
    for field in field::all() {
        let text = value(request, field.key);
        if !text.is_empty() {
            typed.boxes.insert(field.key, text.to_owned());
        }
        let pressed = value(request, &format!("{}-unit", field.key));
        if let Some(unit) = field.units.iter().find(|unit| **unit == pressed) {
            typed.units.insert(field.key, unit);
        }
    }
    let dial = Some(value(request, "dial")).filter(|dial| !dial.is_empty());
    State {
        typed,
        dial: dial.map(str::to_owned),
    }
}

/// What stood in the boxes goes. A link goes before what was kept, and takes its place only
/// when it is saved.
fn open(request: &str, state: &mut State, answer: &mut Answer) {
    *state = State::default();
    let text = value(request, "kept");
    let own = (!text.is_empty()).then(|| usable(kept::read(text)));
    if let Some(Ok(own)) = &own {
        state.typed = own.typed.clone();
        state.dial.clone_from(&own.dial);
    }
    if let Some(Err(why)) = &own {
        answer.line(&["aside"]);
        answer.notice(&format!(
            "What this browser had kept of your set could not be read: {why}. It was set aside."
        ));
    }
    match link::read(value(request, "link")) {
        None => {}
        Some(Ok(linked)) => {
            let stays = match own {
                Some(Ok(_)) => "Your own set stays kept until you press Save.",
                _ => "Nothing is kept until you press Save.",
            };
            answer.notice(&format!("This set came with the link. {stays}"));
            state.typed = linked;
        }
        Some(Err(why)) => answer.notice(&format!("The link carries no set: {why}.")),
    }
    answer.form(state);
}

/// What was kept is a set, or of no use: nobody is there to mend a box of it.
fn usable(read: Result<kept::Kept, String>) -> Result<kept::Kept, String> {
    let kept = read?;
    match kept.typed.set() {
        Ok(_) => Ok(kept),
        Err(faults) => Err(faults.first().map_or_else(String::new, |fault| {
            format!("{}: {}", fault.key, fault.says)
        })),
    }
}

/// A file fills the boxes, faults and all; where it is none, they stay.
fn take(text: &str, state: &mut State, answer: &mut Answer) {
    match kept::read(text) {
        Ok(taken) => {
            state.typed = taken.typed;
            answer.notice("The file is in the boxes. Nothing is kept until you press Save.");
            answer.form(state);
        }
        Err(why) => answer.notice(&format!("That file holds no set: {why}.")),
    }
}

/// The lines of an answer.
#[derive(Default)]
struct Answer {
    lines: String,
}

impl Answer {
    fn line(&mut self, fields: &[&str]) {
        for (index, text) in fields.iter().enumerate() {
            if index > 0 {
                self.lines.push('\t');
            }
            // No text can end its field or its line.
            let plain = text
                .chars()
                .map(|sign| if sign.is_control() { ' ' } else { sign });
            self.lines.extend(plain);
        }
        self.lines.push('\n');
    }

    fn notice(&mut self, text: &str) {
        self.line(&["notice", text]);
    }

    fn form(&mut self, state: &State) {
        for field in field::all() {
            self.line(&["box", field.key, state.typed.text(field.key)]);
            if let Some(unit) = field.units.first() {
                self.line(&["press", &format!("{}-unit", field.key), unit]);
            }
        }
        self.line(&["press", "side", &state.typed.side]);
        self.line(&["press", "region", &state.typed.region]);
        self.line(&["dial", state.dial.as_deref().unwrap_or_default()]);
    }

    fn readings(&mut self, typed: &Typed) {
        for field in field::all() {
            self.line(&["reading", field.key, &typed.reading(field)]);
        }
    }

    fn outcome(&mut self, state: &State) {
        let set = state.typed.set();
        let faults = set.as_ref().err().map_or(&[][..], Vec::as_slice);
        let keys = field::all()
            .map(|field| field.key)
            .chain(["side", "region"]);
        for key in keys {
            let fault = faults.iter().find(|fault| fault.key == key);
            self.line(&["fault", key, fault.map_or("", |fault| &fault.says)]);
        }
        if let Ok(set) = &set {
            let text = kept::write(set, state.dial.as_deref());
            self.line(&["set", &text, &link::write(set), &set.told()]);
            report(set).iter().for_each(|block| self.block(block));
        }
    }

    fn block(&mut self, block: &Block) {
        match block {
            Block::Heading(text) => self.line(&["heading", text]),
            Block::Needs(text) => self.line(&["needs", text]),
            Block::Says(pieces) => {
                self.line(&["says"]);
                pieces.iter().for_each(|piece| self.piece(piece));
            }
            Block::Table(table) => {
                self.line(&["table", &table.caption]);
                let heads = table.heads.iter().map(String::as_str);
                let heads: Vec<&str> = ["heads"].into_iter().chain(heads).collect();
                self.line(&heads);
                for row in &table.rows {
                    self.line(&["row"]);
                    row.iter().for_each(|piece| self.piece(piece));
                }
            }
        }
    }

    fn piece(&mut self, piece: &Piece) {
        match &piece.found {
            None => self.line(&["piece", &piece.text]),
            Some(found) => self.line(&[
                "piece",
                &piece.text,
                found.quantity,
                &found.value.to_string(),
                &found.expression,
            ]),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::my_set;
    use proptest::prelude::proptest;

    fn line<'a>(answer: &'a str, start: &str) -> Option<&'a str> {
        answer.lines().find_map(|line| line.strip_prefix(start))
    }

    const SET: &str = "if=455\nif-unit=kHz\nside=above\nregion=1";

    #[test]
    fn an_empty_page_asks_for_what_every_result_needs() {
        let answer = my_set("do=open");
        assert!(line(&answer, "set\t").is_none() && line(&answer, "heading\t").is_none());
        assert_eq!(
            line(&answer, "fault\tif\t"),
            Some("this is what every result needs, such as 470 kHz")
        );
        assert_eq!(line(&answer, "fault\tmw-low\t"), Some(""));
    }

    #[test]
    fn a_set_is_worked_out_and_can_be_kept_and_sent() {
        let answer = my_set(&format!("do=show\n{SET}\ndial=909 kHz"));
        let set = line(&answer, "set\t").unwrap();
        assert!(set.contains("\"if\":\"455 kHz\"") && set.contains("\"dial\":\"909 kHz\""));
        assert!(set.contains("\t#set&if=455kHz&side=above&region=1\t"));
        assert_eq!(line(&answer, "reading\tif\t"), Some("read as 455 kHz"));
        assert!(answer.contains(
            "piece\t1455 kHz\toscillator\t1455000\toscillator?dial=1000kHz&if=455kHz&side=above"
        ));
    }

    #[test]
    fn what_was_kept_before_a_link_stays_kept() {
        let old = r#"{"version":1,"dial":"909 kHz","if":"465 kHz","side":"below","region":1}"#;
        let kept = my_set(&format!("do=open\nkept={old}"));
        assert_eq!(line(&kept, "box\tif\t"), Some("465 kHz"));
        assert_eq!(line(&kept, "press\tside\t"), Some("below"));
        assert_eq!(line(&kept, "dial\t"), Some("909 kHz"));
        let linked = my_set(&format!(
            "do=open\nkept={old}\nlink=#set&if=125kHz&side=below&region=1"
        ));
        assert_eq!(line(&linked, "box\tif\t"), Some("125kHz"));
        assert!(
            line(&linked, "notice\t")
                .unwrap()
                .contains("stays kept until")
        );
        let none = my_set(&format!("do=open\nkept={old}\nlink=#set&if"));
        assert_eq!(line(&none, "box\tif\t"), Some("465 kHz"));
        assert!(line(&none, "notice\t").unwrap().contains("carries no set"));
    }

    #[test]
    fn damage_is_set_aside_and_a_file_that_is_none_changes_nothing() {
        let damaged = my_set("do=open\nkept={\"version\":9}");
        assert!(damaged.starts_with("aside\n"));
        let wrong = r#"do=open
kept={"version":2,"if":"5 kHz","side":"above","region":1}"#;
        assert!(my_set(wrong).starts_with("aside\n"));
        let none = my_set(&format!("do=take\n{SET}\ntext=<b>mine</b>"));
        assert!(line(&none, "box\tif\t").is_none());
        assert!(line(&none, "notice\t").unwrap().contains("holds no set"));
        assert_eq!(line(&none, "reading\tif\t"), Some("read as 455 kHz"));
        let faulty = my_set(
            r#"do=take
text={"version":2,"if":"5 kHz","side":"above","region":1}"#,
        );
        assert_eq!(line(&faulty, "box\tif\t"), Some("5 kHz"));
        assert_eq!(
            line(&faulty, "fault\tif\t"),
            Some("this is from 100 kHz to 2000 kHz (got 5 kHz)")
        );
    }

    #[test]
    fn a_huge_line_is_refused_and_not_cut() {
        let huge = format!("do=take\ntext={}", "µ".repeat(100_000));
        assert!(
            line(&my_set(&huge), "notice\t")
                .unwrap()
                .contains("longer than")
        );
    }

    proptest! {
        #[test]
        fn no_request_makes_it_panic(lines in proptest::collection::vec("(do|kept|link|text|if|side|mw-low|f1|coil|gang-max)=\\PC{0,60}", 0..8)) {
            let _ = my_set(&lines.join("\n"));
        }
    }
}
