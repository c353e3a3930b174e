//! Drawing a problem from a family: a pure function of family, level and seed.
//!
//! The order of draws is part of what is stable: first the phrasing of the scene, then
//! the givens in the family's order; when a draw is thrown back, the givens again from
//! where the stream stands; last the order of choices, part by part.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt;

use super::{
    collisions,
    draw::Draw,
    evaluate::{Trouble, evaluate, holds},
    family::{Family, Level, LevelForm},
    part,
    problem::{GivenValue, Problem},
    scope::Scope,
    text,
};

/// Draws that are tried before the best so far is taken, or none.
const MOST_DRAWS: u32 = 100;

/// Why no problem could be drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum GenerateError {
    /// The family is at fault.
    Faulty {
        /// Id of the family.
        family: String,
        /// What is wrong.
        says: String,
    },
    /// No draw met the conditions.
    NoDraw {
        /// Id of the family.
        family: String,
        /// Why the last one did not.
        last: String,
    },
}

impl fmt::Display for GenerateError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            GenerateError::Faulty { family, says } => {
                write!(f, "the problem family {family} is at fault: {says}")
            }
            GenerateError::NoDraw { family, last } => write!(
                f,
                "none of {MOST_DRAWS} draws of the problem family {family} met its conditions; \
                 the last: {last}"
            ),
        }
    }
}

impl core::error::Error for GenerateError {}

/// Draws a problem: the same one for ever for the same family, level and seed.
pub fn generate(family: &Family, level: Level, seed: u32) -> Result<Problem, GenerateError> {
    generate_with(family, level, seed, &[])
}

/// Draws a problem with some of its givens fixed, such as the IF of the reader's own
/// set. Names that the level does not draw are left alone.
pub fn generate_with(
    family: &Family,
    level: Level,
    seed: u32,
    fixed: &[(&str, &str)],
) -> Result<Problem, GenerateError> {
    let form = family.level(level);
    let mut draw = Draw::new(&family.id, family.revision, level, seed);
    let scenes = u32::try_from(form.scenes.len()).unwrap_or(u32::MAX);
    let scene = draw.below(scenes) as usize;
    let mut best: Option<Problem> = None;
    let mut last = String::new();
    for _ in 0..MOST_DRAWS {
        match attempt(family, form, scene, &mut draw, fixed) {
            Ok(mut problem) => {
                (problem.level, problem.seed) = (level, seed);
                if problem.collisions.is_empty() {
                    return Ok(problem);
                }
                best.get_or_insert(problem);
            }
            Err(Trouble::Refused(says)) => last = says,
            Err(Trouble::Faulty(says)) => {
                return Err(GenerateError::Faulty {
                    family: family.id.clone(),
                    says,
                });
            }
        }
    }
    best.ok_or_else(|| GenerateError::NoDraw {
        family: family.id.clone(),
        last,
    })
}

fn attempt(
    family: &Family,
    form: &LevelForm,
    scene: usize,
    draw: &mut Draw,
    fixed: &[(&str, &str)],
) -> Result<Problem, Trouble> {
    let (mut scope, givens) = drawn_givens(form, draw, fixed)?;
    for named in &form.values {
        let value = evaluate(&named.is, &scope)?;
        scope.set(&named.name, value);
    }
    for condition in &form.keep {
        if !holds(condition, &scope)? {
            return Err(Trouble::Refused(format!("{condition} does not hold")));
        }
    }
    let scene = form
        .scenes
        .get(scene)
        .ok_or_else(|| Trouble::Faulty("it has no scene".into()))?;
    let scene = text::fill(scene, &scope).map_err(Trouble::Faulty)?;
    let mut parts = Vec::with_capacity(form.parts.len());
    for id in &form.parts {
        parts.push(part::filled(family, id, &scope, draw)?);
    }
    let collisions = collisions::of(&parts);
    Ok(Problem {
        family: family.id.clone(),
        revision: family.revision,
        level: Level::One,
        seed: 0,
        scene,
        givens,
        parts,
        collisions,
    })
}

fn drawn_givens(
    form: &LevelForm,
    draw: &mut Draw,
    fixed: &[(&str, &str)],
) -> Result<(Scope, Vec<GivenValue>), Trouble> {
    let mut scope = Scope::default();
    let mut givens = Vec::with_capacity(form.givens.len());
    for given in &form.givens {
        let kind = given
            .kind()
            .ok_or_else(|| Trouble::Faulty(format!("{:?} is no kind", given.kind)))?;
        let drawn = given.drawn(draw);
        let text = match fixed.iter().find(|(name, _)| *name == given.name) {
            Some((name, text)) => {
                scope.give(name, kind, text).map_err(Trouble::Refused)?;
                (*text).to_string()
            }
            None => {
                scope
                    .give(&given.name, kind, &drawn)
                    .map_err(Trouble::Faulty)?;
                drawn
            }
        };
        givens.push(GivenValue {
            name: given.name.clone(),
            text,
        });
    }
    Ok((scope, givens))
}
