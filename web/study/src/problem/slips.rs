//! The problems of the page: each on paper until its family is there, then alive.

use super::family;
use super::live::LiveProblem;
use super::on_paper::OnPaper;
use crate::dom::{Result, explain};
use crate::kept::Kept;
use superhet::problems::ProblemCode;
use wasm_bindgen::JsValue;
use web_sys::Element;

/// The problems of the page.
#[derive(Default)]
pub(crate) struct Slips {
    on_paper: Vec<OnPaper>,
    alive: Vec<LiveProblem>,
}

impl Slips {
    /// Takes up the problem at `root`, which stays on paper for now.
    pub(crate) fn add(&mut self, root: Element) -> Result<()> {
        self.on_paper.push(OnPaper::find(root)?);
        Ok(())
    }

    /// The reader comes near something, or turns to it. If it belongs to a problem on paper,
    /// that one's family is wanted now.
    pub(crate) fn near(&self, element: &Element) {
        let problem = self
            .on_paper
            .iter()
            .find(|problem| problem.root().contains(Some(element)));
        if let Some(problem) = problem {
            problem.fetch();
        }
    }

    /// A family has come, as text, or the reason why it has not. Its problem comes alive, or
    /// says why it does not.
    pub(crate) fn came(
        &mut self,
        address: &str,
        text: core::result::Result<&str, &str>,
        on_screen: bool,
    ) -> Result<()> {
        let mut on_paper = self.on_paper.iter();
        let Some(place) = on_paper.position(|problem| problem.address() == address) else {
            return Ok(());
        };
        let text = match text {
            Ok(text) => text,
            Err(reason) => return self.on_paper[place].excuse(reason),
        };
        if self.on_paper[place].is_being_read() {
            return Ok(());
        }
        let problem = self.on_paper.swap_remove(place);
        let family = family::open(text).map_err(JsValue::from_str);
        match family.and_then(|family| problem.come_alive(family, on_screen)) {
            Ok(alive) => {
                self.alive.push(alive);
                Ok(())
            }
            Err(error) => explain(problem.root(), &error),
        }
    }

    /// The problem alive to which an element belongs.
    pub(crate) fn at(&self, element: &Element) -> Option<usize> {
        let mut alive = self.alive.iter();
        alive.position(|problem| problem.root().contains(Some(element)))
    }

    /// Marks what was typed or chosen.
    pub(crate) fn submit(&mut self, place: usize, kept: &mut Kept) -> Result<()> {
        match self.alive[place].submit(kept) {
            Ok(()) => Ok(()),
            Err(error) => self.retire(place, &error),
        }
    }

    /// Does what a button of a problem asks for.
    pub(crate) fn pressed(
        &mut self,
        place: usize,
        what: &str,
        button: &Element,
        kept: &mut Kept,
    ) -> Result<()> {
        match self.alive[place].pressed(what, button, kept) {
            Ok(()) => Ok(()),
            Err(error) => self.retire(place, &error),
        }
    }

    /// A problem that fails goes back to paper.
    fn retire(&mut self, place: usize, error: &JsValue) -> Result<()> {
        let problem = self.alive.swap_remove(place);
        problem.retire()?;
        explain(problem.root(), error)
    }

    /// Opens the problem that a link names, now or when its family comes. Says whether this
    /// page has it.
    pub(crate) fn reopen(&mut self, code: &ProblemCode) -> Result<bool> {
        for problem in &mut self.alive {
            if problem.reopen(code)? {
                return Ok(true);
            }
        }
        let mut on_paper = self.on_paper.iter_mut();
        let named = on_paper.find(|problem| problem.number() == code.family);
        Ok(named.map(|problem| problem.open(code)).is_some())
    }
}
