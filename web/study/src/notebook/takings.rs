//! The checks that were taken, bounded. Pure.

use crate::json::Json;
use superhet::problems::before_after::{Form, QUESTIONS, Taking};

/// The most that are kept: it is offered three times, and two copies of a notebook may each
/// have taken one.
const MOST: usize = 4;

/// Reads `[[day,form,right]]`; an absent list is an empty one, and none is what is amiss.
pub(super) fn read(json: Option<&Json>) -> Option<Vec<Taking>> {
    let entries = match json {
        None => &[],
        Some(list @ Json::List(_)) => list.entries(),
        Some(_) => return None,
    };
    if entries.len() > MOST {
        return None;
    }
    let mut all = Vec::new();
    take_in(
        &mut all,
        &entries.iter().map(taking).collect::<Option<Vec<_>>>()?,
    );
    Some(all)
}

fn taking(json: &Json) -> Option<Taking> {
    let [day, form, right] = json.entries() else {
        return None;
    };
    Some(Taking {
        day: day.number()?,
        form: Form::from_number(form.number()?)?,
        right: u16::try_from(right.number()?).ok()?,
    })
    .filter(|taking| taking.right < 1 << QUESTIONS)
}

/// The checks as JSON.
pub(super) fn to_json(all: &[Taking]) -> Json {
    let one = |it: &Taking| {
        let numbers = [it.day, it.form.number(), it.right.into()];
        Json::List(numbers.map(Json::Number).to_vec())
    };
    Json::List(all.iter().map(one).collect())
}

/// Adds what another copy holds, in the order of days; those of one day stay in the order in
/// which they were taken. Of too many the first stays, and the last ones.
pub(super) fn take_in(all: &mut Vec<Taking>, other: &[Taking]) {
    for taking in other {
        if all.contains(taking) {
            continue;
        }
        let after = all.iter().position(|it| it.day > taking.day);
        all.insert(after.unwrap_or(all.len()), *taking);
        if all.len() > MOST {
            all.remove(1);
        }
    }
}
