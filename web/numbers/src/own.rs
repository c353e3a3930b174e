//! A lesson's numbers for the reader's own set.

use crate::recipes::{Number, Recipes, Rule};
use crate::{Expression, Givens, written_like};
use myset::OwnSet;
use std::collections::BTreeMap;
use superhet::catalogue::Kind;

/// Everything that changes on the page, and what stays, with its reason.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outcome {
    /// Numbers that change: their place in the page, the text, the value.
    pub numbers: Vec<(usize, String, String)>,
    /// Figures that change: their place in the page and their new input.
    pub figures: Vec<(usize, String)>,
    /// Units that stay, and why.
    pub stays: Vec<(String, String)>,
    /// How many numbers of those units would have changed.
    pub left: usize,
}

/// Stations between these are those of a medium wave dial, those below the first of a long
/// wave dial. In hertz; where the bands part is common practice, no source.
const MEDIUM_WAVE_REALM: [f64; 2] = [300e3, 3e6];

/// What a number comes to.
struct Made {
    text: String,
    value: String,
}

/// The lesson's own inputs and the reader's, by what is laid over them.
struct Both {
    lesson: Vec<Givens>,
    own: Vec<Result<Givens, String>>,
    /// Whether what is laid over says something of the set itself: another set's example.
    elsewhere: Vec<bool>,
}

/// Works out a lesson for a set.
#[must_use]
pub fn apply(recipes: &Recipes, set: &OwnSet) -> Outcome {
    let both = Both::of(recipes, set);
    let mut outcome = Outcome::default();
    for (index, unit) in recipes.units.iter().enumerate() {
        let numbers = || {
            recipes
                .numbers
                .iter()
                .enumerate()
                .filter(move |(_, number)| number.unit == Some(index))
        };
        let changing = || numbers().filter(|(_, number)| both.can_change(recipes, number));
        let figures = || {
            recipes
                .figures
                .iter()
                .enumerate()
                .filter(move |(_, figure)| figure.unit == index)
        };
        let reason = both.reason_to_stay(recipes, index, set);
        let made: Result<Vec<_>, String> = match reason {
            Some(reason) => Err(reason),
            None => changing()
                .map(|(place, number)| Ok((place, both.make(number, true)?)))
                .collect(),
        };
        match made {
            Ok(made) => {
                for (place, new) in made {
                    let old = both.make(&recipes.numbers[place], false);
                    if old.is_ok_and(|old| old.value != new.value) {
                        outcome.numbers.push((place, new.text, new.value));
                    }
                }
                for (place, figure) in
                    figures().filter(|(_, figure)| recipes.figure_depends(figure))
                {
                    let query = both.query(&figure.pairs);
                    outcome.figures.push((place, query));
                }
            }
            Err(why) => {
                let left = changing()
                    .filter(|(_, number)| both.differs(number))
                    .count();
                let drawn = figures().any(|(_, figure)| {
                    recipes.figure_depends(figure)
                        && both.query(&figure.pairs) != both.lesson_query(&figure.pairs)
                });
                if left > 0 || drawn {
                    outcome.left += left;
                    outcome.stays.push((unit.id.clone(), why));
                }
            }
        }
    }
    outcome
}

/// The value of each number by the lesson's own inputs, as the page carries it; none where
/// it is no input and not worked out.
#[must_use]
pub fn values(recipes: &Recipes) -> Vec<Option<String>> {
    let lesson = layers(recipes).map(|over| laid_over(&recipes.givens, over).0);
    let lesson: Vec<Givens> = lesson.collect();
    let value = |number: &Number| Some(make(number, lesson.get(layer(number))?).ok()?.value);
    recipes.numbers.iter().map(value).collect()
}

/// The lesson's own layer, then what each example lays over it.
fn layers(recipes: &Recipes) -> impl Iterator<Item = &BTreeMap<String, String>> {
    std::iter::once(&EMPTY).chain(&recipes.over)
}

fn laid_over(
    base: &BTreeMap<String, String>,
    over: &BTreeMap<String, String>,
) -> (Givens, Vec<(String, String)>) {
    let mut raw = base.clone();
    raw.extend(over.iter().map(|(key, value)| (key.clone(), value.clone())));
    Givens::read(&raw)
}

impl Both {
    fn of(recipes: &Recipes, set: &OwnSet) -> Self {
        let mut own = recipes.givens.clone();
        for (given, field) in &recipes.own {
            if let Some(text) = text_of(set, field) {
                own.insert(given.clone(), text);
            }
        }
        let elsewhere =
            |over: &BTreeMap<String, String>| over.keys().any(|key| recipes.own.contains_key(key));
        Self {
            lesson: layers(recipes)
                .map(|over| laid_over(&recipes.givens, over).0)
                .collect(),
            own: layers(recipes)
                .map(|over| whole(laid_over(&own, over)))
                .collect(),
            elsewhere: layers(recipes).map(elsewhere).collect(),
        }
    }

    fn can_change(&self, recipes: &Recipes, number: &Number) -> bool {
        !self.elsewhere[layer(number)] && recipes.depends_on_set(number)
    }

    fn differs(&self, number: &Number) -> bool {
        let text = |own| self.make(number, own).map(|made| made.value);
        text(false) != text(true)
    }

    /// A number by the reader's inputs, or by the lesson's.
    fn make(&self, number: &Number, own: bool) -> Result<Made, String> {
        let givens = match own {
            true => self.own[layer(number)].as_ref().map_err(Clone::clone)?,
            false => &self.lesson[layer(number)],
        };
        make(number, givens)
    }

    /// Why a unit stays, where that can be said before its numbers are worked out.
    fn reason_to_stay(&self, recipes: &Recipes, index: usize, set: &OwnSet) -> Option<String> {
        let needs = match &recipes.units[index].rule {
            Rule::Stays(why) => return Some(why.clone()),
            Rule::Follows(needs) => needs,
        };
        let givens = match &self.own[0] {
            Ok(givens) => givens,
            Err(why) => return Some(why.clone()),
        };
        for need in needs {
            match need.is_met(givens) {
                Ok(true) => {}
                Ok(false) => return Some(need.says.clone()),
                Err(why) => return Some(why),
            }
        }
        let numbers = recipes
            .numbers
            .iter()
            .filter(|number| number.unit == Some(index));
        let dials = numbers.filter_map(|number| {
            let (_, rest) = number.what.split_once("calc:")?;
            self.own[layer(number)]
                .as_ref()
                .ok()?
                .parameter(&Expression::read(rest).ok()?, "dial")
        });
        let drawn = recipes.figures.iter().filter(|figure| figure.unit == index);
        let drawn = drawn.filter_map(|figure| {
            let (_, value) = figure.pairs.iter().find(|(key, _)| key == "dial")?;
            givens.get(value).map(|given| given.value)
        });
        dials
            .chain(drawn)
            .find_map(|hertz| off_the_dial(set, hertz))
    }

    fn query(&self, pairs: &[(String, String)]) -> String {
        self.own[0]
            .as_ref()
            .map_or_else(|_| self.lesson_query(pairs), |givens| query(pairs, givens))
    }

    fn lesson_query(&self, pairs: &[(String, String)]) -> String {
        query(pairs, &self.lesson[0])
    }
}

static EMPTY: BTreeMap<String, String> = BTreeMap::new();

/// 0 for the lesson's own inputs, then one for each that is laid over them.
fn layer(number: &Number) -> usize {
    number.over.map_or(0, |over| over + 1)
}

fn whole((givens, refused): (Givens, Vec<(String, String)>)) -> Result<Givens, String> {
    match refused.into_iter().next() {
        None => Ok(givens),
        Some((_, why)) => Err(format!(
            "Something here cannot be worked out for your set: {why}."
        )),
    }
}

/// What the set says of a field.
fn text_of(set: &OwnSet, field: &str) -> Option<String> {
    match field {
        "side" => Some(set.side.word().to_owned()),
        "region" => Some(set.region.number().to_string()),
        _ => set.text(field).map(str::to_owned),
    }
}

fn make(number: &Number, givens: &Givens) -> Result<Made, String> {
    let cannot = |why: String| format!("This cannot be worked out for your set: {why}.");
    match number.what.split_once(':') {
        Some(("given", name)) => {
            let given = givens
                .get(name)
                .ok_or_else(|| cannot(format!("no input {name}")))?;
            Ok(match given.kind {
                Kind::Choice => Made {
                    text: given.typed.clone(),
                    value: given.typed.clone(),
                },
                kind => Made {
                    text: written_like(&number.typed, kind, given.value),
                    value: given.value.to_string(),
                },
            })
        }
        Some((_, rest)) => {
            let found = Expression::read(rest)
                .and_then(|it| givens.work_out(&it))
                .map_err(cannot)?;
            Ok(Made {
                text: written_like(&number.typed, found.answer.kind, found.answer.value),
                value: found.answer.value.to_string(),
            })
        }
        None => Err(cannot("it is no worked-out number".to_owned())),
    }
}

/// A figure's input; not that of `move`, which lists the handles.
fn query(pairs: &[(String, String)], givens: &Givens) -> String {
    let pairs = pairs.iter().map(|(key, value)| {
        let given = givens.get(value).filter(|_| key != "move");
        format!(
            "{key}={}",
            given.map_or(value.as_str(), |given| &given.typed)
        )
    });
    pairs.collect::<Vec<_>>().join("&")
}

/// A station that the set's own dial does not reach, in a sentence.
fn off_the_dial(set: &OwnSet, hertz: f64) -> Option<String> {
    let medium = (MEDIUM_WAVE_REALM[0]..=MEDIUM_WAVE_REALM[1]).contains(&hertz);
    let (low, high, name) = match medium {
        true => ("mw-low", "mw-high", "medium wave"),
        false if hertz < MEDIUM_WAVE_REALM[0] => ("lw-low", "lw-high", "long wave"),
        false => return None,
    };
    let (low, high) = (set.value(low)?, set.value(high)?);
    let station = superhet::units::display::text(Kind::Frequency, hertz);
    let reaches = (low..=high).contains(&hertz);
    (!reaches).then(|| format!("Your set’s {name} dial does not reach {station}."))
}

#[cfg(test)]
mod tests;
