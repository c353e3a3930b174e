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
    evaluate::{evaluate, holds},
    family::{Family, Level},
    fault::{
        Fault,
        Place::{Entry, Key},
        Trouble,
    },
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
        /// What is wrong, and where.
        fault: Fault,
    },
    /// The family does not offer this level on a set of the reader's own, or needs more of it.
    OwnSet {
        /// Id of the family.
        family: String,
        /// What is missing.
        missing: String,
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
            GenerateError::Faulty { family, fault } => {
                write!(f, "the problem family {family} is at fault: {}", fault.says)
            }
            GenerateError::OwnSet { family, missing } => write!(
                f,
                "the problem family {family} cannot be asked of this set: {missing}"
            ),
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
    drawn(family, level, seed, None, fixed)
}

/// Draws a problem on a set of the reader's own: `set` holds its values by their names. The
/// scene is the level's own for that, the givens that belong to the set are the set's, and
/// the rest is drawn.
///
/// Refused where the level is not offered on another set, or `set` lacks a value it needs.
pub fn generate_for_set(
    family: &Family,
    level: Level,
    seed: u32,
    set: &[(&str, &str)],
) -> Result<Problem, GenerateError> {
    let refused = |missing: String| GenerateError::OwnSet {
        family: family.id.clone(),
        missing,
    };
    let form = family.level(level).own_set.as_ref();
    let form = form.ok_or_else(|| refused("this level is not offered on another set".into()))?;
    let mut fixed = Vec::with_capacity(form.givens.len());
    for given in &form.givens {
        let of_set = set.iter().find(|(name, _)| name == given);
        fixed.push(*of_set.ok_or_else(|| refused(format!("it needs the value {given:?}")))?);
    }
    drawn(family, level, seed, Some(&form.scene), &fixed)
}

fn drawn(
    family: &Family,
    level: Level,
    seed: u32,
    own_scene: Option<&str>,
    fixed: &[(&str, &str)],
) -> Result<Problem, GenerateError> {
    let form = family.level(level);
    let mut draw = Draw::new(&family.id, family.revision, level, seed);
    let scenes = u32::try_from(form.scenes.len()).unwrap_or(u32::MAX);
    let entry = draw.below(scenes) as usize;
    let scene = Told {
        text: own_scene.or_else(|| form.scenes.get(entry).map(String::as_str)),
        place: match own_scene {
            Some(_) => [Key(level.key()), Key("own-set"), Key("scene")],
            None => [Key(level.key()), Key("scenes"), Entry(entry)],
        },
    };
    let mut best: Option<Problem> = None;
    let mut last = String::new();
    for _ in 0..MOST_DRAWS {
        match attempt(family, level, &scene, &mut draw, fixed) {
            Ok(mut problem) => {
                problem.seed = seed;
                if problem.collisions.is_empty() {
                    return Ok(problem);
                }
                best.get_or_insert(problem);
            }
            Err(Trouble::Refused(says)) => last = says,
            Err(Trouble::Faulty(fault)) => {
                return Err(GenerateError::Faulty {
                    family: family.id.clone(),
                    fault,
                });
            }
        }
    }
    best.ok_or_else(|| GenerateError::NoDraw {
        family: family.id.clone(),
        last,
    })
}

/// A scene to fill, and where it stands in the family's file.
struct Told<'a> {
    text: Option<&'a str>,
    place: [super::fault::Place; 3],
}

fn attempt(
    family: &Family,
    level: Level,
    scene: &Told<'_>,
    draw: &mut Draw,
    fixed: &[(&str, &str)],
) -> Result<Problem, Trouble> {
    let form = family.level(level);
    let at = |key, entry| [Key(level.key()), Key(key), Entry(entry)];
    let (mut scope, givens) = drawn_givens(family, level, draw, fixed)?;
    for (entry, named) in form.values.iter().enumerate() {
        let value = evaluate(&named.is, &scope);
        scope.set(
            &named.name,
            value.map_err(|trouble| {
                trouble.at(&[Key(level.key()), Key("value"), Entry(entry), Key("is")])
            })?,
        );
    }
    for (entry, condition) in form.keep.iter().enumerate() {
        if !holds(condition, &scope).map_err(|trouble| trouble.at(&at("keep", entry)))? {
            return Err(Trouble::Refused(format!("{condition} does not hold")));
        }
    }
    let text = scene
        .text
        .ok_or_else(|| Trouble::faulty("it has no scene"))?;
    let scene = text::fill(text, &scope).map_err(|says| Trouble::faulty(says).at(&scene.place))?;
    let mut parts = Vec::with_capacity(form.parts.len());
    for (entry, id) in form.parts.iter().enumerate() {
        let part = part::filled(family, id, &scope, draw);
        parts.push(part.map_err(|trouble| trouble.at(&at("parts", entry)))?);
    }
    let collisions = collisions::of(&parts);
    let (family, revision) = (family.id.clone(), family.revision);
    Ok(Problem {
        family,
        revision,
        level,
        seed: 0,
        scene,
        givens,
        parts,
        collisions,
    })
}

fn drawn_givens(
    family: &Family,
    level: Level,
    draw: &mut Draw,
    fixed: &[(&str, &str)],
) -> Result<(Scope, Vec<GivenValue>), Trouble> {
    let form = family.level(level);
    let mut scope = Scope::default();
    let mut givens = Vec::with_capacity(form.givens.len());
    for (entry, given) in form.givens.iter().enumerate() {
        let faulty = |says: String| {
            Trouble::faulty(says).at(&[Key(level.key()), Key("given"), Entry(entry)])
        };
        let kind = given
            .kind()
            .ok_or_else(|| faulty(format!("{:?} is no kind", given.kind)))?;
        let mut text = given.drawn(draw);
        match fixed.iter().find(|(name, _)| *name == given.name) {
            Some((name, fixed)) => {
                text = (*fixed).to_string();
                scope.give(name, kind, &text).map_err(Trouble::Refused)?;
            }
            None => scope.give(&given.name, kind, &text).map_err(faulty)?,
        }
        givens.push(GivenValue {
            name: given.name.clone(),
            text,
        });
    }
    Ok((scope, givens))
}

#[cfg(test)]
mod tests;
