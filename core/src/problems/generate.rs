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
        match attempt(family, level, scene, &mut draw, fixed) {
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

fn attempt(
    family: &Family,
    level: Level,
    scene: usize,
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
    let text = form
        .scenes
        .get(scene)
        .ok_or_else(|| Trouble::faulty("it has no scene"))?;
    let scene =
        text::fill(text, &scope).map_err(|says| Trouble::faulty(says).at(&at("scenes", scene)))?;
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
mod tests {
    use alloc::{string::ToString, vec::Vec};

    use super::super::{
        fixture::{changed, family},
        problem::Answer,
    };
    use super::{Level, generate, generate_with};

    fn number(problem: &super::Problem) -> f64 {
        match &problem.parts[0].answer {
            Answer::Number(answer) => answer.value,
            Answer::Choice(_) => panic!("a choice is asked"),
        }
    }

    #[test]
    fn the_same_seed_draws_the_same_problem() {
        for level in Level::ALL {
            for seed in [0, 1, u32::MAX] {
                let one = generate(&family(), level, seed).unwrap();
                assert_eq!(one, generate(&family(), level, seed).unwrap());
                assert_eq!((one.level, one.seed), (level, seed));
            }
        }
    }

    #[test]
    fn another_revision_draws_another_problem() {
        let later = changed(&[("revision = 1", "revision = 2")]);
        let differ = (0..50)
            .filter(|&seed| {
                let one = generate(&family(), Level::One, seed).unwrap();
                one.givens != generate(&later, Level::One, seed).unwrap().givens
            })
            .count();
        assert!(differ > 40, "{differ} of 50 differ");
    }

    #[test]
    fn fixed_givens_are_used_and_refused_in_words() {
        let fixed = [("station", "250 m"), ("if", "125 kHz"), ("unknown", "7")];
        let problem = generate_with(&family(), Level::One, 3, &fixed).unwrap();
        // 299 792.458 / 250 + 125, by hand
        assert!((number(&problem) - 1_324_169.832).abs() < 1e-6);
        assert!(problem.scene.contains("250 m"), "{}", problem.scene);
        let refused = generate_with(&family(), Level::One, 3, &[("if", "loud")]).unwrap_err();
        assert!(
            refused.to_string().contains("starts with a number"),
            "{refused}"
        );
    }

    #[test]
    fn conditions_are_kept() {
        let tight = changed(&[("station != 1.3 MHz", "station = 1.3 MHz")]);
        for seed in 0..50 {
            assert_ne!(
                generate(&family(), Level::Three, seed).unwrap().givens[0].text,
                "1.3 MHz"
            );
            assert_eq!(
                generate(&tight, Level::Three, seed).unwrap().givens[0].text,
                "1.3 MHz"
            );
        }
        let never = changed(&[("station != 1.3 MHz", "station > 20 MHz")]);
        let error = generate(&never, Level::Three, 0).unwrap_err().to_string();
        assert!(error.contains("station > 20 MHz does not hold"), "{error}");
    }

    #[test]
    fn draws_that_cannot_be_told_apart_are_thrown_back() {
        // With an IF of 455 kHz the mistake equals the right answer; with 470 it does not.
        let mistaken = changed(&[("station + 2 * if", "station + 455 kHz")]);
        for seed in 0..50 {
            let problem = generate(&mistaken, Level::One, seed).unwrap();
            assert_eq!(problem.givens[1].text, "470 kHz");
            assert!(problem.collisions.is_empty());
        }
        let always = changed(&[("station + 2 * if", "station + if")]);
        let problem = generate(&always, Level::One, 0).unwrap();
        let collision = &problem.collisions[0];
        assert_eq!(
            (collision.one.as_str(), collision.other.as_str()),
            ("right", "twice")
        );
    }

    #[test]
    fn mistakes_below_zero_do_not_arise() {
        let deep = changed(&[("answer = \"station - if\"", "answer = \"station - 3 * if\"")]);
        let mistakes = |station| {
            let fixed = [("station", station), ("if", "470 kHz")];
            let problem = generate_with(&deep, Level::One, 0, &fixed).unwrap();
            match &problem.parts[0].answer {
                Answer::Number(answer) => answer.mistakes.len(),
                Answer::Choice(_) => 0,
            }
        };
        assert_eq!((mistakes("1602 kHz"), mistakes("909 kHz")), (3, 2));
    }

    #[test]
    fn choices_come_in_every_order_with_one_right() {
        let mut orders: Vec<Vec<_>> = Vec::new();
        for seed in 0..100 {
            let problem = generate(&family(), Level::Three, seed).unwrap();
            let Answer::Choice(choices) = &problem.parts[1].answer else {
                panic!("no choice")
            };
            assert_eq!(choices.iter().filter(|choice| choice.right).count(), 1);
            let order = choices.iter().map(|choice| choice.id.clone()).collect();
            if !orders.contains(&order) {
                orders.push(order);
            }
        }
        assert_eq!(orders.len(), 6);
    }

    #[test]
    fn a_faulty_family_is_told_so() {
        for (change, says) in [
            (
                ("asks = \"capacitance-ratio\"", "asks = \"wobble\""),
                "no given, value or quantity",
            ),
            (("kind = \"frequency\"", "kind = \"colour\""), "is no kind"),
            (
                ("{ figures = 3 }", "{ figures = 9 }"),
                "figures run from 1 to 7",
            ),
            (
                ("answer = \"1 / capacitance-ratio\"", "answer = \"f-low\""),
                "where a ratio is asked",
            ),
            (
                ("It shrinks {answer} times.", "It shrinks {amount} times."),
                "nothing is named",
            ),
            (
                ("right-when = \"station > 1 MHz\"", ""),
                "one choice must be right",
            ),
        ] {
            let broken = changed(&[change]);
            let errors: Vec<_> = Level::ALL
                .into_iter()
                .flat_map(|level| (0..9).map(move |seed| (level, seed)))
                .filter_map(|(level, seed)| generate(&broken, level, seed).err())
                .map(|error| error.to_string())
                .collect();
            assert!(
                errors.iter().any(|error| error.contains(says)),
                "{says}: {errors:?}"
            );
        }
    }
}
