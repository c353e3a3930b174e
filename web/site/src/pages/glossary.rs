//! Every word of the trade that the lessons use, with its meaning and its lesson.

use crate::lessons::Definition;
use crate::links::Links;
use crate::page::{Page, Program};
use crate::render::Site;
use maud::{Markup, html};

/// The address of the page.
const PATH: &str = "glossary/";

/// The page with all words.
pub(super) fn page(site: &Site<'_>) -> Page {
    let links = site.links(PATH);
    let definitions = site.content.lessons.definitions();
    Page {
        path: PATH.to_owned(),
        title: "Words of the trade".to_owned(),
        description: "What the words of the radio trade mean, in a plain sentence or two each, \
                      and the lesson that brings each of them in."
            .to_owned(),
        styles: &["notebook.css"],
        recipes: None,
        program: Program::None,
        main: html! {
            div.leaf {
                h1 { "Words of the trade" }
                p.lead {
                    "Each word stands here as the lessons use it, with the lesson that brings it "
                    "in. In a lesson, a word with dots below it leads to its meaning on the same "
                    "page."
                }
                (list(&definitions, &links))
            }
        },
    }
}

fn list(definitions: &[Definition], links: &Links<'_>) -> Markup {
    html! {
        dl.glossary {
            @for definition in definitions {
                div #{ "term-" (definition.id) } {
                    dt { (definition.name) }
                    dd {
                        (definition.meaning)
                        @if let Some(lesson) = &definition.lesson {
                            " " a href=(links.page(&lesson.path())) {
                                "Lesson " (lesson.number)
                                span.visually-hidden { ", " (lesson.title) }
                            }
                        }
                    }
                }
            }
        }
    }
}
