//! The check alive: twelve questions at once, told how they went only when all are handed in.

use super::items::{self, Item};
use super::part;
use crate::day;
use crate::dom::{Result, all, by_id, focus_on, one, say, show};
use crate::kept::{Kept, today_number};
use crate::problem::{
    fetch_family, open_family, press_unit, pressed_unit, question, seed, tell, typed,
};
use superhet::problems::before_after::{Form, Next, QUESTIONS, Taking, next};
use superhet::problems::{Marking, Problem, generate, mark};
use web_sys::Element;

/// The check, and the form that lies open.
pub(super) struct Check {
    items: Vec<Item>,
    /// The slug of the course's last lesson.
    last_lesson: String,
    form: Option<Form>,
    /// The questions of the form, as their families come.
    questions: Vec<Option<Problem>>,
    /// Whether the reader was told of the questions left open.
    warned: bool,
}

impl Check {
    /// Shows what comes next.
    pub(super) fn open() -> Result<Self> {
        let text = |id: &str| {
            by_id(id)
                .and_then(|it| it.text_content())
                .unwrap_or_default()
        };
        let lessons = crate::course::numbered(&text("course"));
        show(&part("check")?, true)?;
        Ok(Self {
            items: items::read(&text("check-items")),
            last_lesson: lessons.last().map(|it| it.0.clone()).unwrap_or_default(),
            form: None,
            questions: Vec::new(),
            warned: false,
        })
    }

    fn next(&self, kept: &Kept) -> Next {
        let notebook = kept.notebook();
        let is_done = notebook.day_of(&self.last_lesson).is_some();
        next(notebook.checks(), is_done, today_number(), seed())
    }

    /// Shows what comes next, and the result so far.
    pub(super) fn show(&self, kept: &Kept) -> Result<()> {
        let next = self.next(kept);
        say(&part("check-next")?, &told(next));
        let begins = offered(next).is_some() && !self.items.is_empty();
        for shown in ["check-begin", "check-how"] {
            show(&part(shown)?, begins && self.form.is_none())?;
        }
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
            ("unit", _) => press_unit(button)?,
            _ => return Ok(false),
        }
        Ok(true)
    }

    /// Asks for every family; the questions are laid out when all are there.
    fn begin(&mut self, kept: &Kept) -> Result<()> {
        let Some(form) = offered(self.next(kept)) else {
            return Ok(());
        };
        self.form = Some(form);
        self.warned = false;
        self.questions = vec![None; self.items.len()];
        say(&part("check-coming")?, "The questions are being fetched …");
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
                say(&part("check-coming")?, &text.concat());
                return show(&part("check-begin")?, true);
            }
        }
        if self.questions.iter().all(Option::is_some) {
            self.lay_out()?;
        }
        Ok(())
    }

    fn lay_out(&self) -> Result<()> {
        say(&part("check-coming")?, "");
        let mut html = String::new();
        for (place, problem) in self.questions.iter().flatten().enumerate() {
            let number = (place + 1).to_string();
            let id = ["question-", &number].concat();
            html.push_str("<section class=\"problem\"><h3>Question ");
            html.push_str(&[&number, "</h3>", &question(problem, &id), "</section>"].concat());
        }
        part("check-questions")?.set_inner_html(&html);
        show(&part("check-begin")?, false)?;
        show(&part("check-form")?, true)?;
        focus_on(&part("check-form-title")?)
    }

    /// Marks all of it at once. The first time, questions left open are told.
    fn hand_in(&mut self, kept: &mut Kept) -> Result<()> {
        let Some(form) = self.form else { return Ok(()) };
        let slips = all(&part("check-questions")?, "section")?;
        let mut marked: Vec<(Marking, String)> = Vec::new();
        for (problem, slip) in self.questions.iter().flatten().zip(&slips) {
            let typed = typed(slip)?;
            let marking = mark(problem, 0, &typed, pressed_unit(slip)?.as_deref());
            marked.push((marking, typed));
        }
        let open = left_open(&marked);
        if !open.is_empty() && !self.warned {
            self.warned = true;
            say(&part("check-open")?, &open);
            return Ok(());
        }
        self.form = None;
        let bits = marked.iter().enumerate();
        let right = bits.filter(|(_, (marking, _))| marking.verdict.is_right());
        let right = right.fold(0, |bits, (place, _)| bits | 1 << place);
        let day = today_number();
        kept.change(|notebook| notebook.check(Taking { day, form, right }))?;
        self.tell(&slips, &marked)?;
        self.show(kept)?;
        focus_on(&part("check-result-title")?)
    }

    /// Says under each question how it went, and how it is done.
    fn tell(&self, slips: &[Element], markings: &[(Marking, String)]) -> Result<()> {
        say(&part("check-open")?, "");
        show(&part("check-hand-in")?, false)?;
        let questions = self.questions.iter().flatten();
        for ((problem, slip), (marking, typed)) in questions.zip(slips).zip(markings) {
            tell(&one(slip, ".marking")?, problem, marking, typed)?;
            for input in all(slip, "input, button")? {
                input.set_attribute("disabled", "")?;
            }
        }
        Ok(())
    }
}

/// The form that is offered now.
fn offered(next: Next) -> Option<Form> {
    match next {
        Next::Before(form) | Next::After(form) | Next::Again(form) => Some(form),
        Next::AfterTheCourse | Next::FromDay(_) | Next::Nothing => None,
    }
}

fn told(next: Next) -> String {
    match next {
        Next::Before(_) => "You have not taken it yet. Before lesson 1 is the best time: guess \
             where you must, and leave open what says nothing to you."
            .to_owned(),
        Next::AfterTheCourse => {
            "The second form waits until you have ticked the last lesson.".to_owned()
        }
        Next::After(_) => "You have ticked the last lesson: here is the second form.".to_owned(),
        Next::FromDay(from) => {
            let day = day::said(&day::of_number(from));
            [
                "It comes once more from ",
                &day,
                " on: what is still there by then?",
            ]
            .concat()
        }
        Next::Again(_) => "Thirty days have passed: here it is once more.".to_owned(),
        Next::Nothing => "You have taken it three times. That is all it can do.".to_owned(),
    }
}

/// Which questions have no answer that can be read; nothing where all have.
fn left_open(marked: &[(Marking, String)]) -> String {
    let places = (1..=QUESTIONS).zip(marked);
    let open = places.filter(|(_, (marking, _))| !marking.verdict.is_attempt());
    let open: Vec<String> = open.map(|(number, _)| number.to_string()).collect();
    if open.is_empty() {
        return String::new();
    }
    let list = open.join(", ");
    [
        "Without an answer that can be read (a number needs its unit): ",
        &list,
        ". Fill in what you can, or hand it in as it is.",
    ]
    .concat()
}

#[cfg(test)]
mod tests {
    use super::{left_open, offered, told};
    use superhet::problems::before_after::{Form, Next};
    use superhet::problems::{Marking, Verdict};

    #[test]
    fn what_is_offered_is_told() {
        assert_eq!(offered(Next::After(Form::Two)), Some(Form::Two));
        assert_eq!(offered(Next::FromDay(20_000)), None);
        assert!(told(Next::FromDay(20_000)).contains("from 4 October 2024 on"));
    }

    #[test]
    fn questions_left_open_are_named() {
        let marking = |verdict| Marking {
            verdict,
            read_as: None,
            mistake: None,
            says: String::new(),
        };
        let all = [Verdict::Unclear, Verdict::Wrong, Verdict::Unclear];
        let all = all.map(|it| (marking(it), String::new()));
        assert!(left_open(&all).contains("unit): 1, 3. "));
        assert_eq!(left_open(&all[1..2]), "");
    }
}
