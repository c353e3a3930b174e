//! What comes next, on the first page; the ticks, on the course page.

use crate::day::said;
use crate::dom::{Result, all_of_page, by_id, one, say, show};
use crate::json::Json;
use crate::notebook::Notebook;
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
    href: String,
}

/// Shows on this page what the notebook says about the course.
pub(crate) fn show_progress(notebook: &Notebook) -> Result<()> {
    if let (Some(link), Some(course)) = (by_id("next-step"), by_id("course")) {
        let lessons = lessons(&course.text_content().unwrap_or_default());
        if let Some(step) = next(&lessons, notebook) {
            show_step(&link, &step)?;
        }
    }
    for line in all_of_page("li[data-lesson]")? {
        let slug = line.get_attribute("data-lesson").unwrap_or_default();
        show_tick(&line, notebook.day_of(&slug))?;
    }
    Ok(())
}

fn show_step(link: &Element, step: &Step) -> Result<()> {
    link.set_attribute("href", &step.href)?;
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

/// The next thing to do: the first lesson without a tick, or the first one again when
/// all have theirs. None where there is no lesson.
fn next(lessons: &[Lesson], notebook: &Notebook) -> Option<Step> {
    let open = lessons
        .iter()
        .find(|lesson| notebook.day_of(&lesson.slug).is_none());
    let lesson = open.or(lessons.first())?;
    let begins = if open.is_none() {
        "All ticked. Once more: lesson "
    } else if notebook.is_empty() {
        "Start: lesson "
    } else {
        "Continue: lesson "
    };
    let (number, minutes) = (lesson.number.to_string(), lesson.minutes.to_string());
    Some(Step {
        what: [begins, &number, ", ", &minutes, " minutes"].concat(),
        title: lesson.title.clone(),
        href: lesson.href.clone(),
    })
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
        let what = |notebook: &Notebook| next(&lessons, notebook).unwrap().what;
        assert_eq!(what(&notebook), "Start: lesson 1, 12 minutes");
        notebook.tick("one", "2026-11-25");
        assert_eq!(what(&notebook), "Continue: lesson 2, 9 minutes");
        assert_eq!(next(&lessons, &notebook).unwrap().href, "lessons/two/");
        notebook.tick("two", "2026-11-25");
        assert_eq!(
            what(&notebook),
            "All ticked. Once more: lesson 1, 12 minutes"
        );
        assert_eq!(next(&[], &notebook), None);
    }

    #[test]
    fn a_course_that_cannot_be_read_has_no_lessons() {
        assert_eq!(lessons("nonsense"), []);
        assert_eq!(lessons(r#"[{"number":1}]"#), []);
    }
}
