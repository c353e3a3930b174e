//! The course: the lessons that exist, in order, and honest words on those that do not.

use super::listing::{self, Listing};
use crate::links::Links;
use crate::page::{Figures, Page, Program};
use crate::render::Site;
use figures::Group;
use maud::{Markup, html};

/// What each lesson of the course is about, in its order. A lesson that has been written
/// stands under its own title instead.
const SUBJECTS: [&str; 16] = [
    "Why change the frequency at all",
    "Oscillator, mixer and difference",
    "Reading a dial: kilohertz, kilocycles, metres",
    "Choosing the intermediate frequency",
    "The image and what keeps it out",
    "Modulation, sidebands and the room a station takes",
    "One tuned circuit",
    "Two coupled circuits: the IF transformer",
    "The whole IF chain as a window",
    "Detector and automatic gain control",
    "Whistles, told apart by how they move",
    "One knob, two circuits: tracking",
    "Before you touch a set: how not to be hurt",
    "What alignment is, and its order",
    "A rehearsal, step by step",
    "Reading faults, and when alignment is not the answer",
];

/// The page with the whole course.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links("lessons/");
    let lessons = listing::lessons(site);
    Page {
        path: "lessons/".to_owned(),
        title: "The lessons".to_owned(),
        description: "The course in sixteen lessons, from why a receiver changes the frequency \
                      to reading faults: what each is for and what to read first."
            .to_owned(),
        styles: &["notebook.css"],
        program: Program::Study(Figures::Of(Group::Frequencies)),
        main: html! {
            div.leaf {
                h1 { "The lessons" }
                p.lead {
                    "Sixteen lessons make the course. "
                    strong { (written(lessons.len())) }
                    @if lessons.len() < SUBJECTS.len() {
                        " The others are planned and stand here so that you can see where it goes."
                    }
                }
                ol.course {
                    @for (number, subject) in (1..).zip(SUBJECTS) {
                        @match lessons.iter().find(|lesson| lesson.number == number) {
                            Some(lesson) => (line(lesson, &lessons, &links)),
                            None => li.planned {
                                span.number { (number) }
                                p.title { span { (subject) } " " span.state { "planned" } }
                            },
                        }
                    }
                }
                p {
                    "For those who like them, " a href=(links.page("formulas/")) { "all the formulas" }
                    " stand on a page of their own. No lesson needs them."
                }
                (listing::data(&lessons, &links))
            }
        },
    }
}

/// The numbers of lessons that may be written, in words.
const COUNTS: [&str; 17] = [
    "None", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten",
    "Eleven", "Twelve", "Thirteen", "Fourteen", "Fifteen", "Sixteen",
];

/// How much of the course exists, as a sentence.
fn written(count: usize) -> String {
    match (count, COUNTS.get(count)) {
        (16, _) => "All are written.".to_owned(),
        (0 | 1, Some(words)) => format!("{words} is written."),
        (_, Some(words)) => format!("{words} are written."),
        (_, None) => format!("{count} are written."),
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
    use super::{Listing, read_first, written};

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

    #[test]
    fn how_much_is_written_is_a_sentence() {
        assert_eq!(written(1), "One is written.");
        assert_eq!(written(3), "Three are written.");
        assert_eq!(written(16), "All are written.");
    }
}
