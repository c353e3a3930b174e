//! The check alive: twelve questions at once, told how they went only when all are handed in.

use super::items::{self, Item};
use super::offer::{GO_ON, HAND_IN, left_open, offered, told};
use super::unfinished::Unfinished;
use super::{part, turn_to};
use crate::dom::{Result, all, by_id, one, say, show};
use crate::kept::{Kept, note, today_number};
use crate::problem::{
    fetch_family, open_family, press_unit, pressed_unit, question, seed, tell, typed,
};
use crate::storage::{CHECK, Shelf, TAB};
use superhet::problems::before_after::{Form, Next, Taking, next};
use superhet::problems::{Marking, Problem, generate, mark};
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlInputElement};

/// The check, and the form that lies open.
pub(super) struct Check {
    items: Vec<Item>,
    /// The slugs of the course's lessons.
    lessons: Vec<String>,
    form: Option<Form>,
    /// The questions of the form, as their families come.
    questions: Vec<Option<Problem>>,
    /// Whether the reader was told of the questions left open.
    warned: bool,
    /// Whether the reader was told that nothing can be kept.
    told_unkept: bool,
}

impl Check {
    /// Reads what the page holds. Answers of this tab that cannot be read are told.
    pub(super) fn open() -> Result<Self> {
        if let Err(damage) = Unfinished::on(&TAB) {
            note(
                &[
                    "Your answers so far could not be read: ",
                    damage,
                    ". They are gone, and the check begins anew.",
                ]
                .concat(),
            )?;
        }
        let text = |id: &str| {
            by_id(id)
                .and_then(|it| it.text_content())
                .unwrap_or_default()
        };
        let lessons = crate::course::numbered(&text("course"));
        Ok(Self {
            items: items::read(&text("check-items")),
            lessons: lessons.into_iter().map(|it| it.0).collect(),
            form: None,
            questions: Vec::new(),
            warned: false,
            told_unkept: false,
        })
    }

    fn next(&self, kept: &Kept) -> Next {
        let notebook = kept.notebook();
        let last = self.lessons.last();
        let is_done = last.is_some_and(|it| notebook.day_of(it).is_some());
        next(notebook.checks(), is_done, today_number(), seed())
    }

    /// How many lessons the reader has ticked.
    fn ticked(&self, kept: &Kept) -> u32 {
        let ticked = self.lessons.iter();
        let ticked = ticked.filter(|it| kept.notebook().day_of(it).is_some());
        u32::try_from(ticked.count()).unwrap_or_default()
    }

    /// Whether the questions are there to be answered.
    fn lies_open(&self) -> bool {
        self.form.is_some() && self.questions.iter().all(Option::is_some)
    }

    /// Shows what comes next, and the result so far.
    pub(super) fn show(&self, kept: &Kept) -> Result<()> {
        let next = self.next(kept);
        if self.form.is_none() {
            let (says, button) = match begun(next).is_some() {
                true => (GO_ON.to_owned(), "Go on with it"),
                false => (told(next, self.ticked(kept)), "Begin"),
            };
            say(&part("check-next")?, &says);
            say(&part("check-begin")?, button);
        }
        // The button stays until the questions are there, and the focus with it.
        let begins = offered(next).is_some() && !self.items.is_empty() && !self.lies_open();
        for shown in ["check-begin", "check-how"] {
            show(&part(shown)?, begins)?;
        }
        show(&part("check")?, !self.lies_open())?;
        let result = items::result(&self.items, kept.notebook().checks());
        show(&part("check-result")?, !result.is_empty())?;
        part("check-said")?.set_inner_html(&result);
        Ok(())
    }

    /// Does what a button asks for. Says whether it was one of the check's.
    pub(super) fn pressed(
        &mut self,
        what: &str,
        button: &Element,
        kept: &mut Kept,
    ) -> Result<bool> {
        match (what, button.id().as_str()) {
            (_, "check-begin") => self.begin(kept)?,
            (_, "check-hand-in") => self.hand_in(kept)?,
            ("unit", _) => {
                press_unit(button)?;
                self.keep()?;
            }
            _ => return Ok(false),
        }
        Ok(true)
    }

    /// Asks for every family; the questions are laid out when all are there.
    fn begin(&mut self, kept: &Kept) -> Result<()> {
        if self.form.is_some() {
            return Ok(());
        }
        let next = self.next(kept);
        let Some(drawn) = offered(next) else {
            return Ok(());
        };
        let form = begun(next).map_or(drawn, |kept| kept.form);
        self.form = Some(form);
        self.warned = false;
        self.questions = vec![None; self.items.len()];
        fetching(true, "The questions are being fetched …")?;
        for item in &self.items {
            fetch_family(&item.address);
        }
        Ok(())
    }

    /// A family has come, or the reason why it has not.
    pub(super) fn came(
        &mut self,
        address: &str,
        text: core::result::Result<&str, &str>,
    ) -> Result<()> {
        let Some(form) = self.form else { return Ok(()) };
        let mut items = self.items.iter();
        let Some(place) = items.position(|item| item.address == address) else {
            return Ok(());
        };
        let item = &self.items[place];
        let drawn = text.map_err(str::to_owned).and_then(|text| {
            let family = open_family(text)?.family;
            generate(&family, item.level, item.seed(form)).map_err(|error| error.to_string())
        });
        match drawn {
            Ok(problem) => self.questions[place] = Some(problem),
            Err(why) => {
                self.form = None;
                let text = [
                    "A question could not be fetched: ",
                    &why,
                    ". Begin again later.",
                ];
                return fetching(false, &text.concat());
            }
        }
        if self.lies_open() {
            self.lay_out()?;
        }
        Ok(())
    }

    fn lay_out(&self) -> Result<()> {
        fetching(false, "")?;
        let mut html = String::new();
        for (place, problem) in self.questions.iter().flatten().enumerate() {
            let number = (place + 1).to_string();
            let id = ["question-", &number].concat();
            html.push_str("<section class=\"problem\"><h3>Question ");
            html.push_str(&[&number, "</h3>", &question(problem, &id), "</section>"].concat());
        }
        part("check-questions")?.set_inner_html(&html);
        self.fill_in()?;
        say(&part("check-hand-in")?, HAND_IN.0);
        show(&part("check")?, false)?;
        show(&part("check-hand-in")?, true)?;
        show(&part("check-form")?, true)?;
        turn_to("check-form-title")
    }

    /// Puts back what was answered before the page was left.
    fn fill_in(&self) -> Result<()> {
        let Some(kept) = kept_by_tab().filter(|it| Some(it.form) == self.form) else {
            return Ok(());
        };
        let slips = all(&part("check-questions")?, "section")?;
        for (item, slip) in self.items.iter().zip(&slips) {
            if let Some((text, unit)) = kept.answer(item) {
                answer(slip, text, unit)?;
            }
        }
        Ok(())
    }

    /// Something was typed or chosen.
    pub(super) fn input(&mut self, target: &Element) -> Result<()> {
        if part("check-questions")?.contains(Some(target)) {
            self.keep()?;
        }
        Ok(())
    }

    /// Keeps the answers so far in this tab, and says once where it would not keep them.
    fn keep(&mut self) -> Result<()> {
        let Some(form) = self.form else { return Ok(()) };
        let slips = all(&part("check-questions")?, "section")?;
        let answers = slips.iter().map(|slip| {
            let unit = pressed_unit(slip)?.unwrap_or_default();
            Ok((typed(slip)?, unit))
        });
        let answers = answers.collect::<Result<Vec<_>>>()?;
        if Unfinished::of(form, &self.items, answers).keep(&TAB) || self.told_unkept {
            return Ok(());
        }
        self.told_unkept = true;
        note(
            "This browser keeps nothing for this site: what you answer lasts until you leave \
             this page.",
        )
    }

    /// Marks all of it at once. The first time, questions left open are told.
    fn hand_in(&mut self, kept: &mut Kept) -> Result<()> {
        let Some(form) = self.form else { return Ok(()) };
        let slips = all(&part("check-questions")?, "section")?;
        let mut marked: Vec<(Marking, String)> = Vec::new();
        for (problem, slip) in self.questions.iter().flatten().zip(&slips) {
            let text = typed(slip)?;
            let marking = mark(problem, 0, &text, pressed_unit(slip)?.as_deref());
            marked.push((marking, text));
        }
        let open = left_open(&marked);
        if !open.is_empty() && !self.warned {
            self.warned = true;
            say(&part("check-open")?, &open);
            say(&part("check-hand-in")?, HAND_IN.1);
            return Ok(());
        }
        let bits = marked.iter().enumerate();
        let right = bits.filter(|(_, (marking, _))| marking.verdict.is_right());
        let right = right.fold(0, |bits, (place, _)| bits | 1 << place);
        let day = today_number();
        kept.change(|notebook| notebook.check(Taking { day, form, right }))?;
        self.form = None;
        TAB.remove(CHECK);
        self.tell(&slips, &marked)?;
        self.show(kept)?;
        turn_to("check-result-title")
    }

    /// Says under each question how it went, and how it is done.
    fn tell(&self, slips: &[Element], markings: &[(Marking, String)]) -> Result<()> {
        say(&part("check-open")?, "");
        show(&part("check-hand-in")?, false)?;
        let questions = self.questions.iter().flatten();
        for ((problem, slip), (marking, text)) in questions.zip(slips).zip(markings) {
            tell(&one(slip, ".marking")?, problem, marking, text)?;
            for input in all(slip, "input, button")? {
                input.set_attribute("disabled", "")?;
            }
        }
        Ok(())
    }
}

/// What this tab keeps of a check now: nothing any more once everything was wiped.
fn kept_by_tab() -> Option<Unfinished> {
    Unfinished::on(&TAB).ok().flatten()
}

/// What this tab keeps, where it is what comes next.
fn begun(next: Next) -> Option<Unfinished> {
    kept_by_tab().filter(|kept| kept.comes(next))
}

/// Says how the questions come, and whether "Begin" does nothing until they are there.
fn fetching(are_coming: bool, says: &str) -> Result<()> {
    say(&part("check-coming")?, says);
    let begin = part("check-begin")?;
    match are_coming {
        true => begin.set_attribute("aria-disabled", "true"),
        false => begin.remove_attribute("aria-disabled"),
    }
}

/// Answers a question as it was answered before.
fn answer(slip: &Element, text: &str, unit: &str) -> Result<()> {
    for input in all(slip, "input")? {
        let input: HtmlInputElement = input.unchecked_into();
        if input.type_() == "radio" {
            input.set_checked(input.value() == text);
        } else {
            input.set_value(text);
        }
    }
    let buttons = all(slip, "[data-do=unit]")?;
    let named = |it: &&Element| it.text_content().as_deref() == Some(unit);
    buttons.iter().find(named).map_or(Ok(()), press_unit)
}
