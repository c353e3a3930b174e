//! The view as the page's script applies it: lines of fields between tabs, the first of
//! which says what to do and the second in which slot.

use crate::card::Card;
use crate::form::{Find, Form};
use crate::open::box_and_unit;
use crate::problem::{Field, Offer, Problem};
use crate::view::{Shown, View};
use alloc::string::String;
use superhet::units::{Frequency, Kind, display};

/// Rows of one table of the card where every channel is listed: four of them stand side
/// by side on a printed page.
const ROWS_OF_A_TABLE: usize = 30;

/// Lines for the page's script.
#[derive(Debug, Default)]
pub(crate) struct Reply {
    lines: String,
}

impl Reply {
    /// All lines.
    pub(crate) fn into_text(self) -> String {
        self.lines
    }

    /// The whole view.
    pub(crate) fn view(&mut self, view: &View) {
        self.text("answer-name", view.finds.title());
        self.line(&["set", "answer", "data-quantity", view.finds.quantity()]);
        let (digits, unit) = view.answer.number_and_unit();
        self.text("answer-number", digits);
        self.text("answer-unit", unit);
        self.value("answer", &view.answer);
        self.text("beside", &view.beside);
        self.hide("example", !view.example);
        self.text("set", &view.set);
        self.hide("image-line", view.image.value.is_none());
        self.shown("image", &view.image);
        self.text("image-place", &view.image_place);
        self.problem(view.problem.as_ref());
        self.text("dial-reading", &view.dial_reading);
        self.text("oscillator-reading", &view.oscillator_reading);
        self.text("if-reading", &view.intermediate_reading);
        self.offer("offer", view.offer.as_ref());
        self.offer("second-offer", view.second_offer.as_ref());
        self.notes(view);
        self.line(&["link", "link", view.link.as_deref().unwrap_or_default()]);
        self.line(&["speak", "speak", &view.spoken]);
        if let Some(kept) = &view.keep {
            let region = number(kept.region.number());
            self.line(&[
                "keep",
                &kept.dial,
                &kept.intermediate,
                kept.side.word(),
                &region,
            ]);
        }
        self.card(view.card.as_ref());
    }

    /// A sentence about the link, or none.
    pub(crate) fn notice(&mut self, sentence: &str) {
        self.text("notice", sentence);
    }

    /// All boxes and buttons.
    pub(crate) fn form(&mut self, form: &Form) {
        self.field("find", find_word(form.find));
        self.field("dial", &form.dial);
        self.field("dial-unit", form.dial_unit.symbol());
        self.field("oscillator", &form.oscillator);
        self.field("oscillator-unit", form.oscillator_unit.symbol());
        self.field("if", &form.intermediate);
        self.field("side", form.side.word());
        self.field("region", &number(form.region.number()));
    }

    /// Which boxes are there to be typed in.
    pub(crate) fn boxes(&mut self, find: Find) {
        self.hide("dial-box", find == Find::Dial);
        self.hide("oscillator-box", find == Find::Oscillator);
        self.hide("steps", find == Find::Intermediate);
        self.hide("if-box", find == Find::Intermediate);
        self.hide("side-box", find == Find::Intermediate);
    }

    /// The box of what was worked out. It is not shown, but filled, so that the question
    /// can be turned round without typing.
    pub(crate) fn found(&mut self, form: &Form, view: &View) {
        if view.answer.value.is_none() {
            return;
        }
        let (text, unit) = box_and_unit(&view.answer.text);
        match form.find {
            Find::Oscillator => {
                self.field("oscillator", &text);
                self.field("oscillator-unit", unit.symbol());
            }
            Find::Dial => {
                self.field("dial", &text);
                self.field("dial-unit", unit.symbol());
            }
            // The box holds the reader's own IF, and a press of the offer alone changes it.
            Find::Intermediate => {}
        }
    }

    /// One box or group of buttons.
    pub(crate) fn field(&mut self, name: &str, value: &str) {
        self.line(&["field", name, value]);
    }

    fn problem(&mut self, problem: Option<&Problem>) {
        self.hide("problem", problem.is_none());
        self.text("problem", problem.map_or("", |problem| &problem.says));
        for field in Field::ALL {
            let wrong = problem.is_some_and(|problem| problem.field == field && !problem.waiting);
            self.line(&[
                "set",
                field.name(),
                "aria-invalid",
                if wrong { "true" } else { "false" },
            ]);
        }
    }

    fn offer(&mut self, slot: &str, offer: Option<&Offer>) {
        self.hide(slot, offer.is_none());
        let Some(offer) = offer else { return };
        self.text(slot, &offer.says);
        self.line(&[
            "set",
            slot,
            "data-do",
            &[offer.field.name(), " ", &offer.text].concat(),
        ]);
    }

    fn notes(&mut self, view: &View) {
        let notes = &view.notes;
        self.hide("notes", view.problem.is_some());
        self.text("note-dial", &notes.dial);
        self.text("note-channel", &notes.channel);
        self.text("note-image", &notes.image);
        self.text("note-if", &notes.intermediate);
        self.text("note-whistles", &notes.whistles);
        self.line(&["empty", "whistles"]);
        for whistle in &view.whistles {
            self.line(&[
                "item",
                "whistles",
                "whistle",
                &bits(whistle.pitch),
                &whistle.says,
            ]);
        }
    }

    /// The card comes last, behind a line of its own, so that the script can leave it
    /// alone when it has not changed.
    fn card(&mut self, card: Option<&Card>) {
        self.line(&["card"]);
        self.hide("card", card.is_none());
        let Some(card) = card else { return };
        self.text("card-title", &card.title);
        self.text("card-set", &card.set);
        self.text("card-whistles", &card.whistles);
        let long = if card.rows.len() > ROWS_OF_A_TABLE {
            "yes"
        } else {
            "no"
        };
        self.line(&["set", "card-tables", "data-long", long]);
        self.line(&["empty", "card-tables"]);
        for rows in card.rows.chunks(ROWS_OF_A_TABLE) {
            self.line(&["table", "card-tables"]);
            for row in rows {
                self.line(&[
                    "row",
                    "card-tables",
                    &row.dial,
                    &row.metres,
                    &row.oscillator,
                    &row.image,
                    &row.heard,
                ]);
            }
        }
    }

    fn shown(&mut self, slot: &str, shown: &Shown) {
        self.text(slot, &shown.text);
        self.value(slot, shown);
    }

    fn value(&mut self, slot: &str, shown: &Shown) {
        match shown.value {
            Some(value) => self.line(&["value", slot, &bits(value)]),
            None => self.line(&["drop", slot, "data-value"]),
        }
    }

    fn text(&mut self, slot: &str, text: &str) {
        self.line(&["text", slot, text]);
    }

    fn hide(&mut self, slot: &str, hidden: bool) {
        self.line(&["hide", slot, if hidden { "yes" } else { "no" }]);
    }

    /// One line. Fields cannot hold a tab or a line's end: they would be taken for more
    /// fields, so they become blanks.
    fn line(&mut self, fields: &[&str]) {
        for (index, field) in fields.iter().enumerate() {
            if index > 0 {
                self.lines.push('\t');
            }
            self.lines.extend(
                field
                    .chars()
                    .map(|letter| if letter.is_control() { ' ' } else { letter }),
            );
        }
        self.lines.push('\n');
    }
}

/// The name of what is sought, as the page's buttons have it.
pub(crate) const fn find_word(find: Find) -> &'static str {
    match find {
        Find::Oscillator => "oscillator",
        Find::Dial => "dial",
        Find::Intermediate => "if",
    }
}

/// The 64 bits of the hertz as hexadecimal digits: the page needs the value to the last
/// bit, and printing a float so here would double the program.
fn bits(value: Frequency) -> String {
    const DIGITS: &[u8; 16] = b"0123456789abcdef";
    let bits = value.to_hz().to_bits();
    (0..16)
        .rev()
        .map(|place| char::from(DIGITS[(bits >> (4 * place)) as usize & 15]))
        .collect()
}

fn number(number: u8) -> String {
    display::text(Kind::Integer, f64::from(number))
}

#[cfg(test)]
mod tests {
    use super::{Reply, bits};
    use superhet::units::Frequency;

    #[test]
    fn a_value_travels_to_the_last_bit() {
        let value = Frequency::hz(0.1);
        let back = u64::from_str_radix(&bits(value), 16).map(f64::from_bits);
        assert_eq!(back, Ok(0.1));
    }

    #[test]
    fn a_field_cannot_break_its_line() {
        let mut reply = Reply::default();
        reply.text("problem", "a\tb\nc");
        assert_eq!(reply.into_text(), "text\tproblem\ta b c\n");
    }
}
