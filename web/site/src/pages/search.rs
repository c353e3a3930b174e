//! Everything there is to look up, in three lists that a script narrows.
//!
//! Each line carries the words that stand behind it, so that nothing is fetched for a search
//! and it works wherever the page does. Without scripts the lists are an index to read.

use crate::lessons::{Definition, Section, Summary};
use crate::links::Links;
use crate::page::{Page, Program};
use crate::render::Site;
use maud::{Markup, html};
use std::collections::{BTreeMap, BTreeSet};
use superhet::catalogue::{Entry, catalogue};

/// The address of the page.
const PATH: &str = "search/";

/// The page with everything.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links(PATH);
    let lessons = &site.content.lessons;
    let sections = lessons.sections();
    let everywhere = everywhere(&sections);
    Page {
        path: PATH.to_owned(),
        title: "Search".to_owned(),
        description: "Find a lesson, a word of the trade or a formula. It works without signal."
            .to_owned(),
        styles: &["notebook.css", "search.css"],
        recipes: None,
        program: Program::Search,
        main: html! {
            div.leaf {
                h1 { "Search" }
                (form())
                p.index-lead {
                    "All lessons and their sections, all words of the trade and all formulas stand "
                    "below. Without scripts, your browser’s own “find in page” looks through them."
                }
                (list("Words", lessons.definitions().iter().map(|it| word(it, &links))))
                (list("Lessons", sections.iter().map(|it| lesson(it, &everywhere, &links))))
                (list("Formulas", catalogue().iter().map(|it| formula(it, &links))))
            }
        },
    }
}

fn form() -> Markup {
    html! {
        form #search role="search" hidden {
            label for="wanted" { "What are you looking for?" }
            input #wanted name="q" type="search" autocomplete="off" autocapitalize="none"
                spellcheck="false" enterkeyhint="search" maxlength="80" aria-describedby="found";
            p #found role="status" {}
        }
    }
}

fn list(title: &str, lines: impl Iterator<Item = Markup>) -> Markup {
    html! {
        section.index aria-label=(title) {
            h2 { (title) }
            ul { @for line in lines { (line) } }
        }
    }
}

/// A line: where it leads, what it is, and the words behind it that it does not show.
fn line(address: &str, title: &str, shown: &str, behind: &str) -> Markup {
    let said = words(&format!("{title} {shown}"));
    let behind: Vec<String> = words(behind).difference(&said).cloned().collect();
    html! {
        li data-words=[(!behind.is_empty()).then(|| behind.join(" "))] {
            a href=(address) { (title) }
            @if !shown.is_empty() { " " span { (shown) } }
        }
    }
}

fn word(definition: &Definition, links: &Links<'_>) -> Markup {
    let address = format!("{}#term-{}", links.page("glossary/"), definition.id);
    let also = definition.also.join(" ");
    line(&address, &definition.name, &definition.meaning, &also)
}

/// Words that stand in more than half of all sections: they find nothing.
fn everywhere(lessons: &[(Summary, Vec<Section>)]) -> BTreeSet<String> {
    let sections: Vec<&Section> = lessons.iter().flat_map(|(_, sections)| sections).collect();
    let mut seen: BTreeMap<String, usize> = BTreeMap::new();
    for word in sections.iter().flat_map(|section| words(&section.text)) {
        *seen.entry(word).or_default() += 1;
    }
    seen.retain(|_, times| *times > sections.len() / 2);
    seen.into_keys().collect()
}

/// A lesson, and under it its sections.
fn lesson(
    (lesson, sections): &(Summary, Vec<Section>),
    everywhere: &BTreeSet<String>,
    links: &Links<'_>,
) -> Markup {
    let telling = |text: &str| {
        let telling: Vec<String> = words(text).difference(everywhere).cloned().collect();
        telling.join(" ")
    };
    let page = links.page(&lesson.path());
    let number = format!("Lesson {}", lesson.number);
    html! {
        @for section in sections {
            @let address = format!("{page}{}", section.fragment());
            @if let Some(title) = &section.title {
                (line(&address, title, &format!("{number}: {}", lesson.title), &telling(&section.text)))
            } @else {
                @let opening = format!("{} {}", lesson.goals.join(" "), section.text);
                (line(&address, &lesson.title, &number, &telling(&opening)))
            }
        }
    }
}

fn formula(entry: &Entry, links: &Links<'_>) -> Markup {
    let address = format!("{}#{}", links.page("formulas/"), entry.name);
    let parameters = entry.parameters.iter().map(|it| it.meaning);
    let behind: Vec<&str> = std::iter::once(entry.name).chain(parameters).collect();
    line(&address, entry.title, "", &behind.join(" "))
}

/// The words of a text as a search compares them: letters and digits, small.
fn words(text: &str) -> BTreeSet<String> {
    text.split(|sign: char| !sign.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{line, words};

    #[test]
    fn a_line_carries_only_the_words_that_it_does_not_show() {
        let drawn = line("x/", "The image", "Lesson 5", "An image of the dial").into_string();
        assert_eq!(
            drawn,
            r#"<li data-words="an dial of"><a href="x/">The image</a> <span>Lesson 5</span></li>"#
        );
    }

    #[test]
    fn words_are_what_stands_between_signs() {
        let found: Vec<String> = words("IF-chain, Q (loaded): 470 kHz").into_iter().collect();
        assert_eq!(found, ["470", "chain", "if", "khz", "loaded", "q"]);
    }
}
