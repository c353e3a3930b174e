//! The course: its lessons in order, what each is for and what to read first.

use super::listing::{self, Listing};
use crate::check;
use crate::links::Links;
use crate::page::{Figures, Page, Program};
use crate::render::Site;
use maud::{Markup, html};

/// The page with the whole course.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links("lessons/");
    let lessons = listing::lessons(site);
    Page {
        path: "lessons/".to_owned(),
        title: "The lessons".to_owned(),
        description: "The whole course, from why a receiver changes the frequency to reading \
                      faults: what each lesson is for and what to read first."
            .to_owned(),
        styles: &["notebook.css"],
        recipes: None,
        program: Program::Study(Figures::None),
        main: html! {
            div.leaf {
                h1 { "The lessons" }
                p.lead {
                    "From why a set changes the frequency of every station to reading faults. "
                    "Each lesson builds on those before it: read them in order, a sitting each."
                }
                p {
                    "Before you begin, and again when you are through, you can take "
                    a href=(links.page(check::PATH)) { "twelve questions" }
                    " to see what has changed."
                }
                ol.course {
                    @for lesson in &lessons { (line(lesson, &lessons, &links)) }
                }
                p {
                    a href=(links.page("glossary/")) { "The words of the trade" }
                    " stand on a page of their own, each with the lesson that brings it in. "
                    "For those who like them, " a href=(links.page("formulas/")) { "all the formulas" }
                    " stand on another. No lesson needs those. You can "
                    a href=(links.page("search/")) { "search" } " all three."
                }
                p {
                    "You have a set of your own? Say on " a href=(links.page("my-set/")) { "a page for it" }
                    " what it is, and see what it will do."
                }
                (listing::data(&lessons, &links))
            }
        },
    }
}

/// A lesson as a line of the notebook; `study` ticks it.
fn line(lesson: &Listing, all: &[Listing], links: &Links<'_>) -> Markup {
    html! {
        li data-lesson=(lesson.slug) {
            span.number { (lesson.number) }
            div {
                p.title {
                    a href=(links.page(&lesson.path())) { (lesson.title) }
                    " " span.minutes { (lesson.minutes) " minutes" }
                }
                p.ticked hidden {}
                @if let Some(words) = read_first(lesson, all) {
                    p.needs { (words) }
                }
                ul.goals aria-label="What you can do afterwards" {
                    @for goal in &lesson.goals { li { (goal) } }
                }
            }
        }
    }
}

/// "Read lessons 1 and 2 first."
fn read_first(lesson: &Listing, all: &[Listing]) -> Option<String> {
    let mut numbers: Vec<u32> = all
        .iter()
        .filter(|other| lesson.needs.contains(&other.slug))
        .map(|other| other.number)
        .collect();
    numbers.sort_unstable();
    let words: Vec<String> = numbers.iter().map(u32::to_string).collect();
    match words.split_last() {
        None => None,
        Some((only, [])) => Some(format!("Read lesson {only} first.")),
        Some((last, rest)) => Some(format!(
            "Read lessons {} and {last} first.",
            rest.join(", ")
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::{Listing, read_first};

    fn listing(number: u32, slug: &str, needs: &[&str]) -> Listing {
        Listing {
            number,
            slug: slug.to_owned(),
            title: String::new(),
            minutes: 10,
            goals: Vec::new(),
            needs: needs.iter().map(|slug| (*slug).to_owned()).collect(),
        }
    }

    #[test]
    fn what_to_read_first_is_said_in_the_course_s_order() {
        let all = [
            listing(1, "one", &[]),
            listing(2, "two", &["one"]),
            listing(5, "five", &["two", "one"]),
        ];
        assert_eq!(read_first(&all[0], &all), None);
        assert_eq!(
            read_first(&all[1], &all).as_deref(),
            Some("Read lesson 1 first.")
        );
        assert_eq!(
            read_first(&all[2], &all).as_deref(),
            Some("Read lessons 1 and 2 first.")
        );
    }
}
