//! The look-up: any two of dial, IF and oscillator give the third.
//!
//! The page is written complete for the example set, by the same code that makes it
//! live, so that nothing moves when the program arrives; slots (`data-slot`) are what the
//! program then fills. Without JavaScript the tables of the common IFs remain.

mod card;
mod entry;
mod notes;
mod tables;

use crate::page::{Page, Program};
use crate::render::Site;
use lookup::{Form, Shown, View, view};
use maud::{Markup, html};

/// The page for the example set.
pub(super) fn page(site: &Site<'_>) -> Page {
    Page {
        path: "lookup/".to_owned(),
        title: "Look up oscillator and image".to_owned(),
        description:
            "Any two of dial setting, IF and oscillator give the third, with the image, what is \
                      heard there, and a card to keep by the set."
                .to_owned(),
        styles: &["lookup.css"],
        recipes: None,
        program: Program::Lookup,
        main: main(&view(&Form::default()), &ways(site)),
    }
}

/// Where the page leads.
#[derive(Default)]
struct Ways {
    cautions: String,
    my_set: String,
}

fn ways(site: &Site<'_>) -> Ways {
    let links = site.links("lookup/");
    Ways {
        cautions: links.page("about/#caution"),
        my_set: links.page("my-set/"),
    }
}

fn main(view: &View, ways: &Ways) -> Markup {
    html! {
        h1.lookup-title { "Look up a setting" }
        p.slip data-slot="notice" role="status" {}
        p.slip data-slot="storage" role="status" {}
        noscript {
            p.note {
                "This page works its figures out with JavaScript, which is switched off here. The tables "
                a href="#tables" { "for the common IFs" } " are below."
            }
        }
        div.bench {
            form.lookup #lookup autocomplete="off" {
                (answer(view))
                (entry::section(view, ways))
            }
            (notes::section(view, &ways.cautions))
        }
        p.visually-hidden role="status" data-slot="speak" {}
        (card::section(view))
        (link(view))
        (tables::section())
    }
}

fn answer(view: &View) -> Markup {
    html! {
        section.answer aria-label="Answer" {
            p.answer-of {
                strong data-slot="answer-name" { (view.finds.title()) }
                " " span data-slot="beside" { (view.beside) }
            }
            p.answer-value { (large(view)) }
            p.example data-slot="example" { "example set, IF 470 kHz: what is yours?" }
            p.image-line data-slot="image-line" {
                strong { "Image " } (value("image", "image", &view.image))
                " " span data-slot="image-place" { (view.image_place) }
            }
            p.problem #problem data-slot="problem" hidden {}
        }
    }
}

/// The page's main result, its digits larger than its unit.
fn large(view: &View) -> Markup {
    let hertz = view.answer.value.map(|value| value.to_hz());
    let (number, unit) = view.answer.number_and_unit();
    html! {
        span.value data-slot="answer" data-quantity=(view.finds.quantity()) data-value=[hertz] {
            span data-slot="answer-number" { (number) }
            " " span.answer-unit data-slot="answer-unit" { (unit) }
        }
    }
}

/// A result: its quantity and its value in hertz stand on the element.
fn value(slot: &str, quantity: &str, shown: &Shown) -> Markup {
    let hertz = shown.value.map(|value| value.to_hz());
    html! {
        span.value data-slot=(slot) data-quantity=(quantity) data-value=[hertz] { (shown.text) }
    }
}

fn link(view: &View) -> Markup {
    let query = view.link.as_deref().unwrap_or_default();
    html! {
        section.link.no-print data-slot="link-section" {
            h2 { "Send this setting" }
            p {
                "A link that opens this page with the same figures: "
                a data-slot="link" href={ "?" (query) } { "this setting" } "."
            }
            p.buttons { button type="button" data-copy { "Copy the link" } }
            p data-slot="copied" role="status" {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Ways, main};
    use lookup::{Form, look_up, view};
    use std::collections::BTreeSet;

    /// Names in `data-slot`, each of which must stand on one element.
    fn slots(page: &str) -> BTreeSet<&str> {
        let mut found = BTreeSet::new();
        for part in page.split("data-slot=\"").skip(1) {
            let name = part.split('"').next().unwrap_or_default();
            assert!(found.insert(name), "two elements have the slot {name}");
        }
        found
    }

    /// Verbs whose second field is no slot but the name of a box.
    const NO_SLOT: [&str; 2] = ["field", "keep"];

    #[test]
    fn every_slot_the_program_fills_is_on_the_page() {
        let page = main(&view(&Form::default()), &Ways::default()).into_string();
        let on_page = slots(&page);
        let requests = [
            "do=open\ndial=945kHz\nif=470kHz\nside=left",
            "do=show\ndial=250\ndial-unit=m",
            "do=show\ndial=abc\nfind=if",
        ];
        for request in requests {
            for line in look_up(request).lines() {
                let mut fields = line.split('\t');
                let verb = fields.next().unwrap_or_default();
                let Some(name) = fields.next().filter(|_| !NO_SLOT.contains(&verb)) else {
                    continue;
                };
                assert!(on_page.contains(name), "{request:?}: no slot for {line:?}");
            }
        }
    }

    #[test]
    fn every_box_the_program_fills_is_on_the_page() {
        let page = main(&view(&Form::default()), &Ways::default()).into_string();
        for line in look_up("do=open").lines() {
            if let Some(name) = line
                .strip_prefix("field\t")
                .and_then(|rest| rest.split('\t').next())
            {
                assert!(page.contains(&format!(" name=\"{name}\"")), "no box {name}");
            }
        }
    }

    /// What is written at build time is what the program would write: nothing moves.
    #[test]
    fn the_page_is_written_as_the_program_would_fill_it() {
        let page = main(&view(&Form::default()), &Ways::default()).into_string();
        for line in look_up("do=open").lines() {
            let fields: Vec<&str> = line.split('\t').collect();
            let ["text", name, text] = fields[..] else {
                continue;
            };
            let at = page.find(&format!("data-slot=\"{name}\"")).expect(name);
            let element = &page[at..];
            let written = &element[element.find('>').map_or(0, |end| end + 1)..];
            assert!(
                written.starts_with(text),
                "{name}: {text:?} is not what stands there"
            );
        }
    }
}
