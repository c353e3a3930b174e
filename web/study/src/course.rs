//! What comes next, on the first page; the ticks, on the course page.

use crate::day::said;
use crate::dom::{Result, all_of_page, by_id, one, say, show};
use crate::json::Json;
use crate::kept::today_number;
use crate::notebook::{Notebook, counted};
use web_sys::Element;

/// A lesson in the course, as the page lists it.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Lesson {
    number: u32,
    slug: String,
    title: String,
    minutes: u32,
    href: String,
}

/// The one thing to do next.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Step {
    what: String,
    title: String,
    /// None is the practice page.
    href: Option<String>,
}

/// Seconds that a problem is said to take: a guess, nobody has timed it.
const SECONDS: u32 = 80;

/// Shows on this page what the notebook says about the course.
pub(crate) fn show_progress(notebook: &Notebook) -> Result<()> {
    if let (Some(link), Some(course)) = (by_id("next-step"), by_id("course")) {
        let lessons = lessons(&course.text_content().unwrap_or_default());
        let due = notebook.due(today_number());
        let practice = by_id("due-step");
        if let Some(step) = next(&lessons, notebook, due) {
            show_step(&link, &step, practice.as_ref())?;
        }
        if let Some(practice) = practice {
            let problems = ["Practise first: ", &due_words(due)].concat();
            say(&practice, &problems);
            show(&practice, due > 0)?;
        }
    }
    for line in all_of_page("li[data-lesson]")? {
        let slug = line.get_attribute("data-lesson").unwrap_or_default();
        show_tick(&line, notebook.day_of(&slug))?;
    }
    Ok(())
}

/// The step's own address, or that of practice where it has none.
fn show_step(link: &Element, step: &Step, practice: Option<&Element>) -> Result<()> {
    let to_practice = practice.and_then(|link| link.get_attribute("href"));
    let href = step.href.clone().or(to_practice);
    link.set_attribute("href", &href.unwrap_or_default())?;
    say(&one(link, ".what")?, &step.what);
    say(&one(link, "small")?, &step.title);
    Ok(())
}

fn show_tick(line: &Element, day: Option<&str>) -> Result<()> {
    let word = one(line, ".ticked")?;
    show(&word, day.is_some())?;
    match day {
        Some(day) => {
            say(&word, &["Ticked on ", &said(day)].concat());
            line.set_attribute("data-done", "")
        }
        None => line.remove_attribute("data-done"),
    }
}

/// The slug and number of each lesson.
#[cfg(feature = "practice")]
pub(crate) fn numbered(text: &str) -> Vec<(String, u32)> {
    let lessons = lessons(text).into_iter();
    lessons.map(|lesson| (lesson.slug, lesson.number)).collect()
}

fn lessons(text: &str) -> Vec<Lesson> {
    let json = Json::read(text).unwrap_or(Json::Null);
    json.entries().iter().filter_map(lesson).collect()
}

fn lesson(json: &Json) -> Option<Lesson> {
    let text = |name: &str| Some(json.member(name)?.text()?.to_owned());
    Some(Lesson {
        number: json.member("number")?.number()?,
        slug: text("slug")?,
        title: text("title")?,
        minutes: json.member("minutes")?.number()?,
        href: text("href")?,
    })
}

/// The next thing to do: the first lesson without a tick and what is due besides, or
/// what is due when all have theirs, or the first lesson again. None where there is no
/// lesson.
fn next(lessons: &[Lesson], notebook: &Notebook, due: u32) -> Option<Step> {
    let mut lessons_left = lessons.iter();
    let open = lessons_left.find(|lesson| notebook.day_of(&lesson.slug).is_none());
    let lesson = open.or(lessons.first())?;
    let (number, minutes) = (lesson.number.to_string(), lesson.minutes.to_string());
    let minutes = [", ", &minutes, " minutes"].concat();
    let (what, href) = match (open, due) {
        (Some(_), 0) if notebook.is_empty() => {
            (["Start: lesson ", &number, &minutes].concat(), true)
        }
        (Some(_), 0) => (["Continue: lesson ", &number, &minutes].concat(), true),
        (Some(_), due) => (
            ["Continue lesson ", &number, "; ", &due_words(due)].concat(),
            true,
        ),
        (None, 0) => (
            ["All ticked. Once more: lesson ", &number, &minutes].concat(),
            true,
        ),
        (None, due) => (["All ticked; ", &due_words(due)].concat(), false),
    };
    Some(Step {
        what,
        title: if href {
            lesson.title.clone()
        } else {
            "Practice".to_owned()
        },
        href: href.then(|| lesson.href.clone()),
    })
}

/// "6 problems due, about 8 minutes".
pub(crate) fn due_words(due: u32) -> String {
    [&counted(due, "problem"), " due, ", &about(due)].concat()
}

/// "about 8 minutes", for so many problems.
pub(crate) fn about(problems: u32) -> String {
    [
        "about ",
        &counted((problems * SECONDS).div_ceil(60), "minute"),
    ]
    .concat()
}

#[cfg(test)]
mod tests {
    use super::{lessons, next};
    use crate::notebook::Notebook;

    const COURSE: &str = r#"[{"number":1,"slug":"one","title":"First","minutes":12,"href":"lessons/one/"},
        {"number":2,"slug":"two","title":"Second","minutes":9,"href":"lessons/two/"}]"#;

    #[test]
    fn what_comes_next_follows_the_notebook() {
        let lessons = lessons(COURSE);
        let mut notebook = Notebook::default();
        let what = |notebook: &Notebook| next(&lessons, notebook, 0).unwrap().what;
        assert_eq!(what(&notebook), "Start: lesson 1, 12 minutes");
        notebook.tick("one", "2026-11-25");
        assert_eq!(what(&notebook), "Continue: lesson 2, 9 minutes");
        assert_eq!(
            next(&lessons, &notebook, 0).unwrap().href.as_deref(),
            Some("lessons/two/")
        );
        let due = next(&lessons, &notebook, 6).unwrap();
        assert_eq!(
            due.what,
            "Continue lesson 2; 6 problems due, about 8 minutes"
        );
        assert_eq!(due.href.as_deref(), Some("lessons/two/"));
        notebook.tick("two", "2026-11-25");
        assert_eq!(
            what(&notebook),
            "All ticked. Once more: lesson 1, 12 minutes"
        );
        let due = next(&lessons, &notebook, 1).unwrap();
        assert_eq!(due.what, "All ticked; 1 problem due, about 2 minutes");
        assert_eq!(due.href, None, "practice is next");
        assert_eq!(next(&[], &notebook, 3), None);
    }

    #[test]
    fn a_course_that_cannot_be_read_has_no_lessons() {
        assert_eq!(lessons("nonsense"), []);
        assert_eq!(lessons(r#"[{"number":1}]"#), []);
    }
}
