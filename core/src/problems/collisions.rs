//! Answers of one part that one typed number could mean both.

use alloc::{string::String, vec::Vec};

use super::problem::{Answer, Collision, NumberAnswer, Part};

/// Every pair of answers, right or mistaken, that lies within both tolerances.
pub(super) fn of(parts: &[Part]) -> Vec<Collision> {
    parts
        .iter()
        .filter_map(|part| match &part.answer {
            Answer::Number(number) => Some((part, number)),
            Answer::Choice(_) => None,
        })
        .flat_map(|(part, number)| in_one(&part.id, number))
        .collect()
}

fn in_one(part: &str, answer: &NumberAnswer) -> Vec<Collision> {
    let mut all: Vec<(&str, f64)> = Vec::with_capacity(answer.mistakes.len() + 1);
    all.push(("right", answer.value));
    all.extend(
        answer
            .mistakes
            .iter()
            .map(|mistake| (mistake.id.as_str(), mistake.value)),
    );
    let mut found = Vec::new();
    for (place, &(one, value)) in all.iter().enumerate() {
        for &(other, other_value) in &all[place + 1..] {
            if !answer.precision.tells_apart(value, other_value) {
                let (part, one, other): (String, _, _) = (part.into(), one.into(), other.into());
                found.push(Collision { part, one, other });
            }
        }
    }
    found
}
