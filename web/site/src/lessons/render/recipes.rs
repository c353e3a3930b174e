//! The recipes of a lesson, noted down while it is drawn.
//!
//! A number is noted where it is drawn, so the notes stand in the order of the page. What
//! follows the reader's set, and what stays, its author says in the front matter.

use super::Drawing;
use crate::lessons::blocks::Pairs;
use crate::lessons::front_matter::MySet;
use crate::lessons::target::Target;
use numbers::recipes::{Figure, Number, Rule, Unit};
use numbers::{Givens, Recipes};

/// The unit of everything before the first heading.
const OPENING: &str = "opening";

/// What is noted down, and where the drawing stands.
#[derive(Debug, Default)]
pub(super) struct Notes {
    recipes: Recipes,
    unit: Option<usize>,
    over: Option<usize>,
}

impl MySet {
    /// What a unit does; one that nobody speaks of holds no number of the set's.
    fn rule(&self, id: &str) -> Rule {
        let stays = self.stays.iter().find(|(key, _)| key.get_ref() == id);
        if let Some((_, why)) = stays {
            return Rule::Stays(why.get_ref().clone());
        }
        let follows = self.follows.iter().find(|(key, _)| key.get_ref() == id);
        Rule::Follows(follows.map_or_else(Vec::new, |(_, needs)| needs.clone()))
    }
}

/// Where something is wrong, in bytes, and what.
pub(super) type Fault = (usize, String);

impl MySet {
    /// Everything that is wrong with it, against the recipes of its lesson. What no line of
    /// it says is told at `head`.
    pub(super) fn faults(&self, recipes: &Recipes, head: usize) -> Vec<Fault> {
        let mut faults = self.faults_of_inputs(recipes);
        faults.extend(self.faults_of_parts(recipes, head));
        faults.extend(self.faults_of_conditions(recipes));
        faults
    }

    fn faults_of_inputs(&self, recipes: &Recipes) -> Vec<Fault> {
        let mut faults = Vec::new();
        for (given, field) in &self.own {
            if !recipes.givens.contains_key(given.get_ref()) {
                let says = format!("\"{}\" is no input of [given]", given.get_ref());
                faults.push((given.span().start, says));
            }
            let name = field.get_ref().as_str();
            let choice = ["side", "region"].contains(&name);
            if !choice && myset::field::find(name).is_none() {
                faults.push((field.span().start, format!("no set has a field \"{name}\"")));
            }
        }
        faults
    }

    fn faults_of_parts(&self, recipes: &Recipes, head: usize) -> Vec<Fault> {
        let mut faults = Vec::new();
        let told = || self.follows.keys().chain(self.stays.keys());
        for key in told() {
            let (at, id) = (key.span().start, key.get_ref());
            if !recipes.units.iter().any(|unit| unit.id == *id) {
                faults.push((at, format!("the lesson has no part \"{id}\"")));
            }
            if self.stays.contains_key(key) && self.follows.contains_key(key) {
                faults.push((at, format!("\"{id}\" follows and stays")));
            }
        }
        for (index, unit) in recipes.units.iter().enumerate() {
            let id = &unit.id;
            if holds_the_set_s(recipes, index) && !told().any(|key| key.get_ref() == id) {
                let says = "holds numbers of the set: name it under follows or stays";
                faults.push((head, format!("\"{id}\" {says}")));
            }
        }
        faults
    }

    fn faults_of_conditions(&self, recipes: &Recipes) -> Vec<Fault> {
        let (givens, _) = Givens::read(&recipes.givens);
        let needs = self.follows.iter();
        let needs = needs.flat_map(|(key, needs)| needs.iter().map(move |need| (key, need)));
        let told = needs.filter_map(|(key, need)| {
            let says = match need.is_met(&givens) {
                Ok(true) => return None,
                Ok(false) => format!("\"{}\" does not hold for the lesson’s own set", need.holds),
                Err(why) => why,
            };
            Some((key.span().start, says))
        });
        told.collect()
    }
}

/// Whether a unit holds a number or a figure that a set can change.
fn holds_the_set_s(recipes: &Recipes, unit: usize) -> bool {
    let numbers = recipes.numbers.iter();
    let mut numbers = numbers.filter(|number| number.unit == Some(unit));
    let figures = recipes.figures.iter();
    let mut figures = figures.filter(|figure| figure.unit == unit);
    numbers.any(|number| recipes.depends_on_set(number))
        || figures.any(|figure| recipes.figure_depends(figure))
}

impl Drawing<'_> {
    /// The recipes of everything drawn.
    pub(super) fn recipes(&self) -> Recipes {
        let mut recipes = self.notes.borrow().recipes.clone();
        recipes.givens = self.lesson.raw_givens();
        if let Some(my_set) = &self.lesson.front.my_set {
            let own = my_set.own.iter();
            recipes.own = own
                .map(|(given, field)| (given.get_ref().clone(), field.get_ref().clone()))
                .collect();
        }
        recipes
    }

    /// What is drawn from now on belongs to no unit, or to this one.
    pub(super) fn enter(&self, id: Option<&str>) {
        let unit = id.map(|id| {
            let my_set = self.lesson.front.my_set.as_ref();
            let rule = my_set.map_or_else(|| Rule::Follows(Vec::new()), |it| it.rule(id));
            let units = &mut self.notes.borrow_mut().recipes.units;
            units.push(Unit {
                id: id.to_owned(),
                rule,
            });
            units.len() - 1
        });
        self.notes.borrow_mut().unit = unit;
    }

    /// The head and what stands before the first heading.
    pub(super) fn enter_opening(&self) {
        self.enter(Some(OPENING));
    }

    /// Draws something in a unit of its own, or in none.
    pub(super) fn apart<T>(&self, id: Option<&str>, draw: impl FnOnce() -> T) -> T {
        let before = self.notes.borrow().unit;
        self.enter(id);
        let drawn = draw();
        self.notes.borrow_mut().unit = before;
        drawn
    }

    /// Draws an example with inputs laid over the lesson's.
    pub(super) fn over_inputs<T>(&self, over: &Pairs, draw: impl FnOnce() -> T) -> T {
        let place = {
            let mut notes = self.notes.borrow_mut();
            let pairs = over.pairs.iter().cloned().collect();
            notes.recipes.over.push(pairs);
            notes.recipes.over.len() - 1
        };
        self.notes.borrow_mut().over = Some(place);
        let drawn = draw();
        self.notes.borrow_mut().over = None;
        drawn
    }

    /// Notes a marked number.
    pub(super) fn note_number(&self, target: &Target, typed: &str) {
        let (what, typed) = match target {
            Target::Calc(expression) => (format!("calc:{}", expression.written()), typed),
            Target::Given(name) => (format!("given:{name}"), typed),
            _ => (String::new(), ""),
        };
        let mut notes = self.notes.borrow_mut();
        let (unit, over) = (notes.unit, notes.over);
        notes.recipes.numbers.push(match unit {
            Some(_) => Number {
                what,
                typed: typed.to_owned(),
                unit,
                over,
            },
            None => Number::default(),
        });
    }

    /// Notes a number that no author typed.
    pub(super) fn note_other_number(&self) {
        let mut notes = self.notes.borrow_mut();
        notes.recipes.numbers.push(Number::default());
    }

    /// Notes the figure that is drawn in its own unit.
    pub(super) fn note_figure(&self, pairs: &Pairs) {
        let mut notes = self.notes.borrow_mut();
        if let Some(unit) = notes.unit {
            notes.recipes.figures.push(Figure {
                unit,
                pairs: pairs.pairs.clone(),
            });
        }
    }
}
