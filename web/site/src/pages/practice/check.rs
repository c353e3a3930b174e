//! The check before and after the course: its questions as data for `study`, on paper for
//! everybody else, and what its result can and cannot say.

use super::super::listing;
use super::super::place;
use crate::check::{Item, PATH};
use crate::lessons::on_paper;
use crate::links::Links;
use crate::page::{Figures, Page, Program};
use crate::render::Site;
use anyhow::{Context, Result};
use maud::{Markup, PreEscaped, html};
use serde::Serialize;
use superhet::problems::before_after::{AGAIN_AFTER, QUESTIONS};
use superhet::problems::problem::Answer;
use superhet::problems::{Problem, Registered, generate};

/// What somebody gets who is right as often as not on each question: from here to there of
/// twelve is usual.
const USUAL: [u32; 2] = [3, 9];

/// The page.
pub(in crate::pages) fn page(site: &Site<'_>) -> Result<Page> {
    let links = site.links(PATH);
    Ok(Page {
        path: PATH.to_owned(),
        title: "Before and after".to_owned(),
        description: "Twelve questions before the course, twelve of the same kinds after it: see \
                      for yourself what has changed, and what that can and cannot say."
            .to_owned(),
        styles: &["notebook.css", "lesson.css", "study.css", "practice.css"],
        recipes: None,
        program: Program::Study(Figures::Check),
        main: html! {
            div.leaf {
                h1 { "Before and after" }
                p.lead {
                    "Twelve questions before lesson 1, twelve of the same kinds with other "
                    "numbers after the last: see for yourself what has changed."
                }
                noscript {
                    p.note {
                        "Marking needs JavaScript, which is switched off here. Both forms stand "
                        "below on paper, each question with its answer to unfold."
                    }
                }
                (alive())
                (meaning(site)?)
                (papers(site)?)
                (place::controls())
                (listing::data(&listing::lessons(site), &links))
                (data(site, &links)?)
            }
        },
    })
}

/// What the program fills in; not seen until it does, with the words of somebody's first visit.
fn alive() -> Markup {
    html! {
        section #check .coming aria-labelledby="check-title" {
            h2 #check-title { "Take it" }
            p #check-next role="status" {
                "You have not taken it yet. Before lesson 1 is the best time: guess where you "
                "must, and leave open what says nothing to you."
            }
            p #check-how {
                "Take about twenty minutes, with pencil and paper, in one sitting. Until you hand "
                "it in, what you answer is kept in this tab alone. Nothing tells you how you do "
                "before that."
            }
            div.buttons { button #check-begin .main type="button" { "Begin" } }
            p #check-coming role="status" {}
        }
        section #check-form hidden aria-labelledby="check-form-title" {
            h2 #check-form-title tabindex="-1" { "The questions" }
            div #check-questions {}
            p #check-open role="status" {}
            div.buttons {
                button #check-hand-in .main type="button" { "Hand it in" }
            }
        }
        section #check-result hidden aria-labelledby="check-result-title" {
            h2 #check-result-title tabindex="-1" { "Your result" }
            div #check-said {}
        }
    }
}

/// What it is, and what it can and cannot say.
fn meaning(site: &Site<'_>) -> Result<Markup> {
    let guessed = guessed(site)?;
    let [from, to] = USUAL;
    Ok(html! {
        h2 { "What it can say, and what not" }
        ul {
            li {
                "It can say how many of these twelve you had right, each time. Six are on sets "
                "that no lesson uses: they ask for the idea, not for a remembered figure."
            }
            li {
                "It cannot say that this course made the difference. Time passed, and you may "
                "have read and tried other things. Nobody has measured any effect of this course."
            }
            li {
                "Twelve questions are few. Toss a coin for each, right or wrong, and in "
                (usual_share()) " of 100 tries you have from " (from) " to " (to)
                " right. One or two more or less means nothing."
            }
            li {
                (guessed.0) " of the twelve give choices. Guessing alone gets about " (guessed.1)
                " of those right."
            }
            li {
                "The two forms have other numbers, so one may be a little harder. Which of them "
                "comes first is drawn by lot. " (AGAIN_AFTER) " days after the second time you "
                "are offered the first form again, to see what has stayed."
            }
        }
    })
}

/// In how many of 100 tries a fair coin tossed twelve times falls within what is usual,
/// rounded: the sum of binomial coefficients over 2¹².
fn usual_share() -> u32 {
    let choose = |part: u32| (0..part).fold(1, |ways, at| ways * (QUESTIONS - at) / (at + 1));
    let ways: u32 = (USUAL[0]..=USUAL[1]).map(choose).sum();
    let all = 1 << QUESTIONS;
    (200 * ways + all) / (2 * all)
}

/// How many questions of a form give choices, and how many of those a guess gets right,
/// rounded.
fn guessed(site: &Site<'_>) -> Result<(usize, f64)> {
    let (mut questions, mut right) = (0, 0.0);
    for item in &site.content.check.items {
        for part in question(item, 0, site)?.parts {
            if let Answer::Choice(choices) = part.answer {
                questions += 1;
                right += 1.0 / choices.len() as f64;
            }
        }
    }
    Ok((questions, f64::round(right)))
}

fn question(item: &Item, form: usize, site: &Site<'_>) -> Result<Problem> {
    let Registered { family, .. } = family(item, site)?;
    Ok(generate(family, item.level, item.seeds[form])?)
}

fn family<'s>(item: &Item, site: &'s Site<'_>) -> Result<&'s Registered> {
    let registered = site.content.families.find(&item.family);
    registered.with_context(|| format!("no problem family {}", item.family))
}

/// Both forms on paper.
fn papers(site: &Site<'_>) -> Result<Markup> {
    let form = |form: usize| -> Result<Markup> {
        let items = site.content.check.items.iter();
        let problems: Result<Vec<Problem>> = items.map(|it| question(it, form, site)).collect();
        Ok(html! {
            @for (number, problem) in (1..).zip(problems?) {
                div.problem {
                    h3 { "Question " (number) }
                    div.on-paper { (on_paper(&problem)) }
                }
            }
        })
    };
    Ok(html! {
        h2 { "On paper" }
        p {
            "For a class, or without a screen. Somebody who means to take the check here should "
            "not look."
        }
        @for (place, name) in ["The first form", "The second form"].iter().enumerate() {
            details.paper-sheet { summary { (name) } (form(place)?) }
        }
    })
}

/// A question as `study` reads it (`web/study/src/practice/items.rs`).
#[derive(Serialize)]
struct Line<'a> {
    at: String,
    level: u8,
    seeds: [u32; 2],
    title: &'a str,
}

/// `<script type="application/json" id="check-items">`.
fn data(site: &Site<'_>, links: &Links<'_>) -> Result<Markup> {
    let line = |item| {
        let Registered { family, .. } = family(item, site)?;
        Ok(Line {
            at: links.family(&family.id),
            level: item.level.number(),
            seeds: item.seeds,
            title: &family.title,
        })
    };
    let lines: Result<Vec<Line<'_>>> = site.content.check.items.iter().map(line).collect();
    let text = serde_json::to_string(&lines?)?.replace('<', "\\u003c");
    Ok(html! { script #check-items type="application/json" { (PreEscaped(text)) } })
}

#[cfg(test)]
mod tests {
    /// 1 − 2 × (1 + 12 + 66) / 4096 = 0.961, by hand.
    #[test]
    fn luck_alone_is_reckoned() {
        assert_eq!(super::usual_share(), 96);
    }
}
