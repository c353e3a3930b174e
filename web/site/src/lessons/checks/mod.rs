//! Every rule of the lesson format, one subject a file.

mod family_texts;
mod figures;
mod introduced;
mod links;
mod plain_words;
mod quantities;
mod recall;
mod shape;
mod terms;
mod unmarked;
mod unused;

use super::course::Course;
use crate::report::Report;
use introduced::Introduced;

pub(crate) use shape::words_of;

/// Checks a whole course; `families` are the ids of the problem families.
pub(crate) fn all(course: &Course, families: &[&str], report: &mut Report) {
    unmarked::check(course, report);
    links::check(course, report);
    figures::check(course, report);
    let introduced = Introduced::read(course, report);
    terms::check(course, &introduced, report);
    quantities::check(course, &introduced, report);
    family_texts::check(course, &introduced, report);
    shape::check(course, families, report);
    recall::check(course, families, report);
    plain_words::check(course, report);
    unused::check(course, report);
}
