//! The page as a whole: what was found, who hears what, and what happens when something
//! goes wrong.

use crate::carrying::{self, Carrying};
use crate::course;
use crate::dom::{Result, all_of_page, document, explain};
use crate::figure::LiveFigure;
use crate::kept::{Kept, note};
use crate::listener::Listener;
use crate::practice::Practice;
use crate::prediction::Prediction;
use crate::problem::{Slips, moved};
use crate::stop::stop;
use crate::tick::Tick;
use std::cell::RefCell;
use std::collections::VecDeque;
use superhet::problems::ProblemCode;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, Event, HtmlInputElement, PageTransitionEvent};

thread_local! {
    /// What is alive. A page has one thread; an event that arrives while another is
    /// being handled finds this borrowed and is let go.
    static PAGE: RefCell<Option<Page>> = const { RefCell::new(None) };
}

/// Everything of this page that is alive, and what is still to be.
struct Page {
    kept: Kept,
    carrying: Carrying,
    waiting: VecDeque<(Part, Element)>,
    figures: Vec<LiveFigure>,
    predictions: Vec<Prediction>,
    problems: Slips,
    practice: Practice,
    ticks: Vec<Tick>,
    _listeners: Vec<Listener>,
}

/// What a page can hold that comes alive.
#[derive(Clone, Copy)]
enum Part {
    Figure,
    Prediction,
    Problem,
    Tick,
}

/// The parts in the order they come alive, and where they are found.
const PARTS: [(Part, &str); 4] = [
    (Part::Figure, "figure[data-figure]"),
    (Part::Prediction, "section.predict"),
    (Part::Problem, "section[data-problem]"),
    (Part::Tick, "article[data-lesson]"),
];

/// Finds what the page holds and makes ready to bring it alive.
pub(crate) fn start() -> Result<()> {
    std::panic::set_hook(Box::new(|_| stop()));
    let kept = Kept::open()?;
    let page = Page {
        practice: Practice::find(&kept)?,
        kept,
        carrying: Carrying::default(),
        waiting: found()?,
        figures: Vec::new(),
        predictions: Vec::new(),
        problems: Slips::default(),
        ticks: Vec::new(),
        _listeners: listeners()?,
    };
    PAGE.with(|slot| slot.replace(Some(page)));
    Ok(())
}

/// Everything of the page that can come alive.
fn found() -> Result<VecDeque<(Part, Element)>> {
    let mut found = VecDeque::new();
    for (part, selector) in PARTS {
        found.extend(all_of_page(selector)?.into_iter().map(|root| (part, root)));
    }
    Ok(found)
}

/// Brings the next part alive; what cannot be stays as it is. Says whether more is to come:
/// the last step shows the notebook and does what the address asks for.
pub(crate) fn next_part() -> Result<bool> {
    PAGE.with_borrow_mut(|slot| {
        let page = slot.as_mut().ok_or(JsValue::NULL)?;
        match page.waiting.pop_front() {
            Some((part, root)) => {
                if let Err(error) = page.mount(part, root.clone()) {
                    explain(&root, &error)?;
                }
                Ok(true)
            }
            None => {
                page.show_notebook()?;
                page.follow_link()?;
                Ok(false)
            }
        }
    })
}

/// One listener of each kind for the whole page.
fn listeners() -> Result<Vec<Listener>> {
    let page = document()?;
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    Ok(vec![
        Listener::new(&page, "input", |event| handle(&event, Page::input))?,
        Listener::new(&page, "change", |event| handle(&event, Page::change))?,
        Listener::new(&page, "click", |event| handle(&event, Page::click))?,
        Listener::new(&page, "focusin", |event| handle(&event, Page::near))?,
        Listener::new(&page, "submit", |event| {
            event.prevent_default();
            handle(&event, Page::submit);
        })?,
        Listener::new(&page, "before-the-bench:figures", |_| {
            with_page(Page::figures_again);
        })?,
        Listener::new(&window, "hashchange", |_| with_page(Page::follow_link))?,
        Listener::new(&window, "storage", |_| with_page(Page::read_again))?,
        Listener::new(&window, "pageshow", |event| {
            if came_back(&event) {
                with_page(Page::read_again);
            }
        })?,
    ])
}

/// Whether the page came back from the browser's memory, where it heard of nothing.
fn came_back(event: &Event) -> bool {
    let event = event.dyn_ref::<PageTransitionEvent>();
    event.is_some_and(PageTransitionEvent::persisted)
}

/// The reader comes near an element.
pub(crate) fn near(element: &Element) {
    with_page(|page| page.near(element));
}

/// A family that was asked for has come, or the reason why it has not.
pub(crate) fn family_came(address: &str, text: core::result::Result<&str, &str>, on_screen: bool) {
    with_page(|page| {
        page.problems.came(address, text, on_screen)?;
        page.practice.came(address, text, &page.kept)
    });
}

fn handle(event: &Event, answer: impl Fn(&mut Page, &Element) -> Result<()>) {
    let target = event.target();
    if let Some(target) = target.and_then(|target| target.dyn_into::<Element>().ok()) {
        with_page(|page| answer(page, &target));
    }
}

fn with_page(act: impl FnOnce(&mut Page) -> Result<()>) {
    PAGE.with(|slot| {
        if let Ok(mut slot) = slot.try_borrow_mut()
            && let Some(page) = slot.as_mut()
            && let Err(error) = act(page)
            && let Ok(Some(main)) = document().map(|page| page.get_element_by_id("main"))
        {
            // What cannot be said in the page has nowhere else to go.
            let _ = explain(&main, &error);
        }
    });
}

impl Page {
    fn mount(&mut self, part: Part, root: Element) -> Result<()> {
        match part {
            Part::Figure => self.figures.push(LiveFigure::mount(root)?),
            Part::Prediction => self.predictions.push(Prediction::mount(root)?),
            Part::Problem => self.problems.add(root)?,
            Part::Tick => self.ticks.push(Tick::mount(&root, &self.kept)?),
        }
        Ok(())
    }

    fn input(&mut self, target: &Element) -> Result<()> {
        self.practice.input(target)?;
        let Some(input) = target.dyn_ref::<HtmlInputElement>() else {
            return Ok(());
        };
        let Some(place) = self.figures.iter().position(|figure| figure.holds(target)) else {
            return moved(input);
        };
        let Err(error) = self.figures[place].moved(input) else {
            return Ok(());
        };
        let figure = self.figures.swap_remove(place);
        figure.retire()?;
        explain(figure.root(), &error)
    }

    fn near(&mut self, target: &Element) -> Result<()> {
        self.problems.near(target);
        Ok(())
    }

    /// The figures' inputs have changed: the reader chose whose numbers a lesson shows.
    fn figures_again(&mut self) -> Result<()> {
        self.figures
            .iter_mut()
            .try_for_each(LiveFigure::begin_again)
    }

    fn change(&mut self, target: &Element) -> Result<()> {
        let input = target.dyn_ref::<HtmlInputElement>();
        match input.filter(|input| input.id() == "place-file") {
            Some(input) => self.carrying.read_file(input, &self.kept, |text| {
                with_page(|page| page.carrying.offer_file(&text, &page.kept));
            }),
            None => {
                self.practice.change()?;
                self.practice.show(&self.kept)
            }
        }
    }

    fn submit(&mut self, target: &Element) -> Result<()> {
        if self.practice.submit(target, &mut self.kept)? {
            return self.show_notebook();
        }
        let Some(place) = self.problems.at(target) else {
            return Ok(());
        };
        self.problems.submit(place, &mut self.kept)?;
        self.show_notebook()
    }

    fn click(&mut self, target: &Element) -> Result<()> {
        self.problems.near(target);
        let Some(button) = target.closest("button")? else {
            return Ok(());
        };
        let what = button.get_attribute("data-do").unwrap_or_default();
        if self.practice.pressed(&what, &button, &mut self.kept)? {
            return self.show_notebook();
        }
        if let Some(place) = self.problems.at(&button) {
            self.problems
                .pressed(place, &what, &button, &mut self.kept)?;
            return self.show_notebook();
        }
        let at = |root: &Element| root.contains(Some(&button));
        if let Some(prediction) = self.predictions.iter().find(|one| at(one.root())) {
            return prediction.pressed(&button);
        }
        if let Some(tick) = self.ticks.iter().find(|tick| tick.holds(&button)) {
            tick.pressed(&mut self.kept)?;
            return self.show_notebook();
        }
        if self.carrying.pressed(&what, &button.id(), &mut self.kept)? {
            return self.show_notebook();
        }
        Ok(())
    }

    /// Another window may have written the notebook.
    fn read_again(&mut self) -> Result<()> {
        self.kept.read_again()?;
        self.show_notebook()
    }

    /// Shows everywhere on this page what the notebook says.
    fn show_notebook(&self) -> Result<()> {
        for tick in &self.ticks {
            tick.show(&self.kept);
        }
        course::show_progress(self.kept.notebook())?;
        self.practice.show(&self.kept)?;
        self.kept.mark_page()?;
        carrying::show_controls(&self.kept)
    }

    /// Does what the address asks for behind its `#`: opens a problem, or offers a place.
    fn follow_link(&mut self) -> Result<()> {
        let window = web_sys::window().ok_or(JsValue::NULL)?;
        let hash = window.location().hash()?;
        if self.carrying.offer_link(&hash, &self.kept)? {
            return Ok(());
        }
        let Some(named) = hash.strip_prefix("#problem=") else {
            return Ok(());
        };
        // Behind the code, a link may name the set that the problem is asked of.
        let named = js_sys::decode_uri_component(named).map_or(named.to_owned(), String::from);
        let (code, set) = named.split_once('&').unwrap_or((&named, ""));
        match ProblemCode::decode(code) {
            Err(error) => note(&["That link opens no problem: ", &error.to_string(), "."].concat()),
            Ok(code) if self.problems.reopen(&code)? => Ok(()),
            Ok(code) if self.practice.reopen(&code, set)? => Ok(()),
            Ok(_) => note("That link opens a problem of another page."),
        }
    }
}
