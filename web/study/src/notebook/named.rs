//! Short lists under names that are ids, bounded. Pure.

use crate::json::Json;

/// The longest name.
const LONGEST_NAME: usize = 60;

/// The members of an object under names that are ids, each read; none if anything is
/// amiss. An absent object is an empty one.
pub(super) fn named<T>(
    json: Option<&Json>,
    most: usize,
    read: impl Fn(&Json) -> Option<T>,
) -> Option<Vec<(String, T)>> {
    let members = match json {
        None => &[],
        Some(object @ Json::Object(_)) => object.members(),
        Some(_) => return None,
    };
    let mut all: Vec<(String, T)> = Vec::with_capacity(members.len());
    for (name, value) in members {
        if !is_id(name) || find(&all, name).is_some() || all.len() == most {
            return None;
        }
        all.push((name.clone(), read(value)?));
    }
    Some(all)
}

/// The value under a name, made if it is not there yet; none for what is no id, or when
/// the list is full.
pub(super) fn entry<'a, T: Default>(
    all: &'a mut Vec<(String, T)>,
    name: &str,
    most: usize,
) -> Option<&'a mut T> {
    let place = match all.iter().position(|(known, _)| known == name) {
        Some(place) => place,
        None if is_id(name) && all.len() < most => {
            all.push((name.to_owned(), T::default()));
            all.len() - 1
        }
        None => return None,
    };
    all.get_mut(place).map(|(_, value)| value)
}

pub(super) fn find<'a, T>(all: &'a [(String, T)], name: &str) -> Option<&'a T> {
    all.iter()
        .find(|(known, _)| known == name)
        .map(|(_, value)| value)
}

/// Whether a name is a slug or id: small letters, digits and hyphens.
fn is_id(name: &str) -> bool {
    let fits = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !name.is_empty() && name.len() <= LONGEST_NAME && name.bytes().all(fits)
}

/// Whether a text has the form of a day, `2026-11-25`.
pub(super) fn is_day(text: &str) -> bool {
    text.len() == 10
        && text.bytes().enumerate().all(|(place, byte)| match place {
            4 | 7 => byte == b'-',
            _ => byte.is_ascii_digit(),
        })
}
