//! The sources of a lesson at its end, and what was taken from where.

use super::Drawing;
use crate::lessons::course::Course;
use crate::lessons::lists::{Fact, Source};
use crate::lessons::prose::{Run, plain};
use maud::{Markup, html};

/// A publication as a line of a list.
pub(crate) struct Cited<'a>(pub(crate) &'a Source);

impl maud::Render for Cited<'_> {
    fn render(&self) -> Markup {
        let source = self.0;
        html! {
            (source.author) ", " cite { (source.title) }
            @if let Some(edition) = &source.edition { ", " (edition) }
            @if let Some(year) = &source.year { ", " (year) }
            "."
            @if let Some(found) = &source.found { " " (found) }
        }
    }
}

/// The sources that the lesson names, and those of its facts and misconceptions.
pub(super) fn section(drawing: &Drawing<'_>) -> Markup {
    let facts = drawing.facts.borrow().clone();
    let facts: Vec<&Fact> = facts
        .iter()
        .filter_map(|id| drawing.course.sources.fact(id))
        .collect();
    let taken = taken(drawing, &facts);
    let sources = listed(drawing, &taken);
    let practice: Vec<&Fact> = facts
        .iter()
        .copied()
        .filter(|fact| fact.source.is_none())
        .collect();
    html! {
        @if !(sources.is_empty() && practice.is_empty()) {
            section.sources aria-labelledby="sources" {
                h2 #sources { "Sources" }
                ol {
                    @for source in sources {
                        li #{ "source-" (source.id.get_ref()) } {
                            (Cited(source))
                            (places(&taken, source))
                        }
                    }
                    @if !practice.is_empty() {
                        li #source-practice {
                            "Common practice, no source: "
                            @for (index, fact) in practice.iter().enumerate() {
                                @if index > 0 { "; " }
                                (fact.text.get_ref())
                            }
                            "."
                        }
                    }
                }
            }
        }
    }
}

/// What the lesson took from sources: its facts and misconceptions that have one.
struct Taken<'a> {
    source: &'a str,
    words: String,
    clause: Option<&'a str>,
}

fn taken<'a>(drawing: &Drawing<'a>, facts: &[&'a Fact]) -> Vec<Taken<'a>> {
    let course: &'a Course = drawing.course;
    let broken = drawing.lesson.front.misconceptions.iter();
    let beliefs = broken.filter_map(|id| course.misconceptions.find(id.get_ref()));
    let beliefs = beliefs.filter_map(|belief| {
        Some(Taken {
            source: belief.source.as_ref()?.get_ref(),
            words: stated(&belief.case_words),
            clause: belief.clause.as_deref(),
        })
    });
    let facts = facts.iter().filter_map(|fact| {
        Some(Taken {
            source: fact.source.as_ref()?.get_ref(),
            words: fact.text.get_ref().clone(),
            clause: fact.clause.as_deref(),
        })
    });
    facts.chain(beliefs).collect()
}

/// The case that breaks a belief, as what a source states: the belief itself is not in it.
fn stated(case: &Run) -> String {
    plain(case).trim_end_matches('.').to_owned()
}

/// The sources named in front and those that something was taken from, in the order of
/// the one list.
fn listed<'a>(drawing: &Drawing<'a>, taken: &[Taken<'_>]) -> Vec<&'a Source> {
    let course: &'a Course = drawing.course;
    let named = &drawing.lesson.front.sources;
    let wanted = |source: &&Source| {
        let id = source.id.get_ref();
        named.iter().any(|name| name.get_ref() == id) || taken.iter().any(|it| it.source == id)
    };
    course.sources.sources().iter().filter(wanted).collect()
}

/// What was taken from a source, and where it stands there.
fn places(taken: &[Taken<'_>], source: &Source) -> Markup {
    let mut here = taken
        .iter()
        .filter(|it| it.source == source.id.get_ref())
        .filter_map(|it| Some((&it.words, it.clause?)))
        .peekable();
    html! {
        @if here.peek().is_some() {
            ul.places {
                @for (words, clause) in here { li { (words) ": " (clause) } }
            }
        }
    }
}
