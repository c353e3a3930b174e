//! The practice page alive.

use super::choice::{self, Wish};
use super::kinds::Kinds;
use super::names::Names;
use super::own::OwnSet;
use super::round::{Coming, Round};
use super::{part, tallies, turn_to, words};
use crate::dom::{Result, all_of_page, by_id, made, prepend, say, show};
use crate::kept::{Kept, today_number};
use crate::notebook::Notebook;
use crate::problem::{Desk, LiveProblem, NEXT, fetch_family, open_family, seed};
use crate::storage::{BROWSER, SET, Shelf};
use superhet::problems::ProblemCode;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlInputElement};

/// Where problems are worked, and the round that is on.
pub(super) struct Room {
    kinds: Kinds,
    /// What mistakes are called, and where that is found.
    names: Option<Names>,
    names_at: String,
    /// The lessons in their order: slug and number.
    lessons: Vec<(String, u32)>,
    round: Round,
    live: Option<LiveProblem>,
    /// The set that a link named with its problem.
    linked: Option<OwnSet>,
}

impl Room {
    /// Shows what can be chosen.
    pub(super) fn open(kept: &Kept) -> Result<Self> {
        let text = |id: &str| {
            by_id(id)
                .and_then(|it| it.text_content())
                .unwrap_or_default()
        };
        let room = Self {
            kinds: Kinds::read(&text("kinds")),
            names: None,
            names_at: part("tallies")?
                .get_attribute("data-names")
                .unwrap_or_default(),
            lessons: crate::course::numbered(&text("course")),
            round: Round::default(),
            live: None,
            linked: None,
        };
        let done = room.done(kept);
        for input in all_of_page("#pick-lessons input")? {
            let input: HtmlInputElement = input.unchecked_into();
            let number = input.value().parse().unwrap_or(0);
            input.set_checked(done.contains(&number));
        }
        room.change()?;
        Ok(room)
    }

    /// Shows what the notebook says.
    pub(super) fn show(&self, kept: &Kept) -> Result<()> {
        let notebook = kept.notebook();
        say(
            &part("due-said")?,
            &words::due(notebook.due(today_number())),
        );
        let read = choice::read_told(&self.kinds, notebook, &self.ticked(kept));
        say(&part("done-lessons")?, &read);
        let own = own_set();
        let said = own.as_ref().map(OwnSet::said).unwrap_or_default();
        say(&part("own-said")?, &said);
        show(&part("own-choice")?, own.is_some())?;
        self.show_tallies(notebook)?;
        let round = self.chosen(kept)?;
        let begin = part("begin")?;
        say(&begin, &words::begin(round.length()));
        Ok(())
    }

    /// The tallies; their names are fetched when there is something to name.
    fn show_tallies(&self, notebook: &Notebook) -> Result<()> {
        let html = match &self.names {
            None if tallies::are_there(notebook) => {
                fetch_family(&self.names_at);
                "<p>The names of your mistakes are being fetched …</p>".to_owned()
            }
            None => tallies::markup(&self.kinds, &Names::default(), notebook),
            Some(names) => tallies::markup(&self.kinds, names, notebook),
        };
        part("tallies")?.set_inner_html(&html);
        Ok(())
    }

    /// The names have come, or the reason why they have not.
    fn named(&mut self, text: core::result::Result<&str, &str>, kept: &Kept) -> Result<()> {
        match text {
            Ok(text) => {
                self.names = Some(Names::read(text));
                self.show_tallies(kept.notebook())
            }
            Err(why) => {
                let text = [
                    "The names of your mistakes could not be fetched: ",
                    why,
                    ".",
                ];
                say(&part("tallies")?, &text.concat());
                Ok(())
            }
        }
    }

    /// The lessons can be picked where the reader wants to pick them.
    pub(super) fn change(&self) -> Result<()> {
        say(&part("choose-said")?, "");
        show(&part("pick-lessons")?, wished()? == "picked")
    }

    /// The numbers of the lessons that the reader has done.
    fn done(&self, kept: &Kept) -> Vec<u32> {
        choice::done(&self.kinds, kept.notebook(), &self.ticked(kept))
    }

    /// The numbers of the lessons that are ticked.
    fn ticked(&self, kept: &Kept) -> Vec<u32> {
        let lessons = self.lessons.iter();
        let ticked = lessons.filter(|(slug, _)| kept.notebook().day_of(slug).is_some());
        ticked.map(|(_, number)| *number).collect()
    }

    /// The round that the reader's choice gives.
    fn chosen(&self, kept: &Kept) -> Result<Round> {
        let done = self.done(kept);
        let wish = match wished()?.as_str() {
            "weak" => Wish::Weak,
            "picked" => Wish::Lessons(picked()?),
            _ => Wish::Lessons(done.clone()),
        };
        let (kinds, notebook) = (&self.kinds, kept.notebook());
        let round = Round::choose(kinds, notebook, &wish, &done, today_number(), seed());
        Ok(round)
    }

    /// Does what a button asks for. Says whether it was one of practice's.
    pub(super) fn pressed(
        &mut self,
        what: &str,
        button: &Element,
        kept: &mut Kept,
    ) -> Result<bool> {
        match (what, button.id().as_str()) {
            (_, "begin" | "round-again") => self.begin(kept)?,
            ("next" | "leave", _) => self.go_on(kept)?,
            ("stop", _) => self.end(kept)?,
            _ => match &mut self.live {
                Some(live) if live.root().contains(Some(button)) => {
                    live.pressed(what, button, kept)?;
                }
                _ => return Ok(false),
            },
        }
        self.offer_to_leave()?;
        Ok(true)
    }

    /// Marks an answer. Says whether it was to a problem of practice.
    pub(super) fn submit(&mut self, form: &Element, kept: &mut Kept) -> Result<bool> {
        match &mut self.live {
            Some(live) if live.root().contains(Some(form)) => live.submit(kept)?,
            _ => return Ok(false),
        }
        self.offer_to_leave()?;
        Ok(true)
    }

    /// A problem that is done is gone on from, not left.
    fn offer_to_leave(&self) -> Result<()> {
        let outcome = self.live.as_ref().and_then(LiveProblem::outcome);
        match by_id("round-leave") {
            Some(leave) => show(&leave, outcome.is_none()),
            None => Ok(()),
        }
    }

    fn begin(&mut self, kept: &mut Kept) -> Result<()> {
        let round = self.chosen(kept)?;
        if round.length() == 0 {
            let text = match wished()?.as_str() {
                "weak" => {
                    "Nothing is on record that went wrong and still stands low: pick lessons."
                }
                _ => "Pick one lesson at least.",
            };
            say(&part("choose-said")?, text);
            return Ok(());
        }
        self.set_out(round)
    }

    fn set_out(&mut self, round: Round) -> Result<()> {
        self.round = round;
        show(&part("choose")?, false)?;
        show(&part("round-end")?, false)?;
        show(&part("round")?, true)?;
        self.ask()
    }

    /// Asks for the family of the problem now.
    fn ask(&mut self) -> Result<()> {
        let Some((at, coming)) = self.round.now() else {
            return Ok(());
        };
        self.live = None;
        let title = words::title(at, self.round.length());
        say(&part("round-title")?, &title);
        let place = part("round-problem")?;
        place
            .set_inner_html("<p class=\"soft\" role=\"status\">The problem is being fetched …</p>");
        turn_to("round-title")?;
        if let Some(kind) = self.kinds.all.get(coming.kind) {
            fetch_family(&kind.address);
        }
        Ok(())
    }

    /// A family has come, or the reason why it has not.
    pub(super) fn came(
        &mut self,
        address: &str,
        text: core::result::Result<&str, &str>,
        kept: &Kept,
    ) -> Result<()> {
        if address == self.names_at {
            return self.named(text, kept);
        }
        let now = self.round.now();
        let kind = now.and_then(|(_, coming)| self.kinds.all.get(coming.kind));
        let awaited = self.live.is_none() && kind.is_some_and(|it| it.address == address);
        let Some((_, coming)) = now.filter(|_| awaited) else {
            return Ok(());
        };
        let place = part("round-problem")?;
        place.set_inner_html("");
        let desk = text
            .map_err(|why| ["This problem could not be fetched: ", why, "."].concat())
            .and_then(|text| laid(text, coming, self.set_for(coming).as_ref()));
        match desk {
            Ok(desk) => {
                let after = if self.round.is_last() { NEXT.1 } else { NEXT.0 };
                self.live = Some(LiveProblem::lay(place, desk, after)?);
                Ok(())
            }
            Err(sentence) => {
                let note = made("p", "not-alive", &sentence)?;
                note.set_attribute("role", "status")?;
                prepend(&place, &note)
            }
        }
    }

    /// The set that a problem is asked of, where its family offers that: the one that a link
    /// names, or the reader's own unless the box is empty.
    fn set_for(&self, coming: Coming) -> Option<OwnSet> {
        if coming.code.is_some() {
            return self.linked.clone();
        }
        let wished = all_of_page("#own-choice input:checked");
        let wished = wished.is_ok_and(|boxes| !boxes.is_empty());
        own_set().filter(|_| wished)
    }

    fn go_on(&mut self, kept: &Kept) -> Result<()> {
        let outcome = self.live.as_ref().and_then(LiveProblem::outcome);
        self.round.go_on(outcome);
        match self.round.now() {
            Some(_) => self.ask(),
            None => self.end(kept),
        }
    }

    /// Ends the round, with the problem now where that was done.
    fn end(&mut self, kept: &Kept) -> Result<()> {
        if let Some(outcome) = self.live.take().and_then(|live| live.outcome()) {
            self.round.go_on(Some(outcome));
        }
        let sum = match self.round.done() {
            [] => "No problem was done.".to_owned(),
            done => words::sum(done),
        };
        say(&part("round-sum")?, &sum);
        let said = words::end(self.round.done(), &self.kinds, kept.notebook());
        self.round = Round::default();
        part("round-problem")?.set_inner_html("");
        part("round-said")?.set_inner_html(&said);
        show(&part("round")?, false)?;
        show(&part("round-end")?, true)?;
        show(&part("choose")?, true)?;
        self.show(kept)?;
        let more = self.chosen(kept)?.length() > 0;
        show(&part("round-again")?, more)?;
        turn_to("round-end-title")
    }

    /// Opens the problem that a link names, on the set behind it, if there is one; false
    /// where there is no family of that number.
    pub(super) fn reopen(&mut self, code: &ProblemCode, own: &str) -> Result<bool> {
        self.linked = OwnSet::from_link(own);
        if let Some(live) = &mut self.live
            && self.linked.is_none()
            && live.reopen(code)?
        {
            return Ok(true);
        }
        let Some(kind) = self.kinds.numbered(code.family) else {
            return Ok(false);
        };
        self.set_out(Round::of(kind, *code))?;
        Ok(true)
    }
}

/// The reader's own set as the browser keeps it now, if it keeps one.
fn own_set() -> Option<OwnSet> {
    OwnSet::read(&BROWSER.read(SET)?)
}

/// The desk with the problem that comes, or a sentence that says why there is none.
fn laid(text: &str, coming: Coming, set: Option<&OwnSet>) -> core::result::Result<Desk, String> {
    let family = open_family(text)?;
    let mut desk = Desk::at(family, coming.level, seed())?;
    if let Some(code) = coming.code {
        desk.reopen(&code).unwrap_or(Ok(()))?;
    }
    if let Some(set) = set {
        // Where the set is not one that the problem can be asked of, it stays as drawn, unless
        // a link wants just that one.
        let asked = desk.ask_of(&set.values(), &set.link());
        if coming.code.is_some() {
            asked?;
        }
    }
    Ok(desk)
}

/// What the reader wants: the value of the button that is chosen.
fn wished() -> Result<String> {
    let inputs = all_of_page("#choose input[name=wish]:checked")?;
    let input = inputs
        .first()
        .and_then(|it| it.dyn_ref::<HtmlInputElement>());
    Ok(input.map(HtmlInputElement::value).unwrap_or_default())
}

/// The numbers of the lessons that are picked.
fn picked() -> Result<Vec<u32>> {
    let inputs = all_of_page("#pick-lessons input:checked")?;
    let inputs = inputs
        .iter()
        .filter_map(|it| it.dyn_ref::<HtmlInputElement>());
    Ok(inputs.filter_map(|it| it.value().parse().ok()).collect())
}
