//! Entries of the lists that no lesson uses.

use crate::lessons::course::Course;
use crate::lessons::prose;
use crate::lessons::target::Target;
use crate::lessons::texts;
use crate::report::Report;
use std::collections::HashSet;

/// Reports facts, sources, terms and misconceptions that no lesson uses.
pub(super) fn check(course: &Course, report: &mut Report) {
    let (facts, sources) = used(course);
    let file = course.sources.file();
    for fact in course.sources.facts() {
        if !facts.contains(fact.id.get_ref().as_str()) {
            let message = format!("no lesson uses the fact \"{}\"", fact.id.get_ref());
            file.fault(fact.id.span().start, message, report);
        }
    }
    for source in course.sources.sources() {
        if !sources.contains(source.id.get_ref().as_str()) {
            let message = format!("nothing uses the source \"{}\"", source.id.get_ref());
            file.fault(source.id.span().start, message, report);
        }
    }
    check_terms(course, report);
    check_misconceptions(course, report);
}

/// The facts and the sources in use.
fn used(course: &Course) -> (HashSet<&str>, HashSet<&str>) {
    let (mut facts, mut sources) = (HashSet::new(), HashSet::new());
    let own = course.lessons.iter().flat_map(texts::of_lesson);
    for text in own.chain(texts::of_lists(course)) {
        for link in prose::links(text.run) {
            match &link.target {
                Ok(Target::Fact(id)) => drop(facts.insert(id.as_str())),
                Ok(Target::Source(id)) => drop(sources.insert(id.as_str())),
                _ => {}
            }
        }
    }
    for lesson in &course.lessons {
        sources.extend(lesson.front.sources.iter().map(|id| id.get_ref().as_str()));
    }
    let of_facts = course
        .sources
        .facts()
        .iter()
        .filter_map(|fact| fact.source.as_ref());
    let of_beliefs = course
        .misconceptions
        .all()
        .iter()
        .filter_map(|it| it.source.as_ref());
    sources.extend(of_facts.chain(of_beliefs).map(|id| id.get_ref().as_str()));
    (facts, sources)
}

fn check_terms(course: &Course, report: &mut Report) {
    for term in course.glossary.terms() {
        let id = term.id.get_ref();
        let introduced = course.lessons.iter().any(|lesson| {
            lesson
                .front
                .introduces
                .terms
                .iter()
                .any(|it| it.get_ref() == id)
        });
        if !introduced {
            let message = format!("no lesson introduces the term \"{id}\"");
            course
                .glossary
                .file()
                .fault(term.id.span().start, message, report);
        }
    }
}

fn check_misconceptions(course: &Course, report: &mut Report) {
    for it in course.misconceptions.all() {
        let id = it.id.get_ref();
        let named = course.lessons.iter().any(|lesson| {
            lesson
                .front
                .misconceptions
                .iter()
                .any(|it| it.get_ref() == id)
        });
        if !named {
            let message = format!("no lesson breaks the misconception \"{id}\"");
            course
                .misconceptions
                .file()
                .fault(it.id.span().start, message, report);
        }
    }
}
