//! What the site is, what it claims and what it does not, cautions, privacy, sources.

use crate::page::{Page, Program};
use crate::portable;
use crate::render::Site;
use maud::{Markup, html};

/// The page about the site.
pub(super) fn page(site: &Site<'_>) -> Page {
    Page {
        path: "about/".to_owned(),
        title: "About".to_owned(),
        description: "What this site claims and what it does not; cautions for anyone near a set, \
                      and what to do when something goes wrong; privacy, accuracy, sources and licences."
            .to_owned(),
        styles: &["notebook.css"],
        recipes: None,
        program: Program::None,
        main: html! {
            div.leaf {
                h1 { "About this notebook" }
                p.lead {
                    "Before the Bench teaches how an AM superhet receiver works, so that you know what "
                    "each adjustment is for before you touch one."
                }
                (contents())
                (caution(site))
                (gone_wrong(site))
                (claims())
                (accuracy(site))
                (privacy())
                (keeping())
                (no_network(site))
                (browsers())
                (sources(site))
                (licences(site))
            }
        },
    }
}

/// The sections of the page: (id, heading).
const SECTIONS: [(&str, &str); 10] = [
    ("caution", "Before you open a set"),
    (
        "if-something-goes-wrong",
        "If something goes wrong, and what else is in an old set",
    ),
    ("claims", "What is claimed"),
    ("accuracy", "How right the numbers are"),
    ("privacy", "Privacy"),
    ("keeping", "What this browser keeps"),
    ("no-network", "Without a network"),
    ("browsers", "Browsers"),
    ("sources", "Sources"),
    ("licences", "Licences"),
];

fn contents() -> Markup {
    html! {
        nav.contents aria-label="On this page" {
            ul {
                @for (id, heading) in SECTIONS {
                    li { a href={ "#" (id) } { (heading) } }
                }
            }
        }
    }
}

/// A heading under its id.
fn heading(id: &str) -> Markup {
    let words = SECTIONS
        .iter()
        .find(|(known, _)| *known == id)
        .map_or(id, |(_, words)| words);
    html! { h2 id=(id) { (words) } }
}

fn caution(site: &Site<'_>) -> Markup {
    html! {
        (heading("caution"))
        (site.content.lessons.cautions())
    }
}

fn gone_wrong(site: &Site<'_>) -> Markup {
    html! {
        (heading("if-something-goes-wrong"))
        (site.content.lessons.more_cautions())
    }
}

fn claims() -> Markup {
    html! {
        (heading("claims"))
        p {
            "Nobody has measured whether people learn from this site. It makes no claim that you "
            "will learn faster, better or at all."
        }
        p {
            "What can be tested is narrower, and is: that every number with a unit in a lesson "
            "agrees with the arithmetic, with what was given or with its source; that no term is "
            "used before the lesson that explains it; that every problem accepts its right answer "
            "and names the mistakes it knows. That is coverage, not learning."
        }
    }
}

fn accuracy(site: &Site<'_>) -> Markup {
    let links = site.links("about/");
    html! {
        (heading("accuracy"))
        p {
            "Every number comes from one of three places: it is given in the example, it is "
            "worked out by the same arithmetic that runs in these pages, or it is a fact whose "
            "source is named. A worked-out number in a lesson is compared with the arithmetic to "
            "half of its last printed digit each time the site is built; one wrong digit stops "
            "the build."
        }
        p {
            "The arithmetic is checked against published tables and textbook examples, and it "
            "gives the same digits in every browser. A set on your bench will not: coils, "
            "capacitors and dials have tolerances, valves age, and the last hands to turn a core "
            "may not have been careful ones. Use the figures here to know what to expect, and a "
            "meter to know what is."
        }
        p {
            a href=(links.page("formulas/")) { "Every formula" }
            " is on one page, with its limits, how far it can be wrong, and its source."
        }
        p {
            "Rules of the trade that no publication was found for are marked "
            "“common practice, no source”."
        }
    }
}

fn privacy() -> Markup {
    html! {
        (heading("privacy"))
        ul {
            li { "Nothing you type leaves this browser. There is no account and no server to send it to." }
            li { "No cookies, no trackers, no advertisements, nothing fetched from anybody else." }
            li {
                "Whoever hosts these files can see, as with any site, which pages an address asked "
                "for. A link that carries your place carries it behind the # sign, which browsers "
                "do not send."
            }
        }
    }
}

fn keeping() -> Markup {
    html! {
        (heading("keeping"))
        p {
            "In this browser, and nowhere else, are kept: your notebook (lessons ticked, problems "
            "tallied), your set, your choice of paper, and that you put the home-screen hint away. "
            "Whatever was found damaged is kept beside them, put aside. The answers to a check "
            "that you have begun are kept by its tab alone, until you hand it in or close the tab."
        }
        p {
            "The notebook and the set you can save to a file or carry in a link, on the first page. "
            "There you can also wipe everything in this list."
        }
        p {
            "A browser may throw away what a site keeps. Safari does so after a week without a "
            "visit, unless the site is on your home screen; private windows do so when they "
            "close; any browser may when space is short. So the site asks your browser to leave "
            "it alone, suggests the home screen after your first lesson, and offers to bring your "
            "place back whenever it finds nothing."
        }
        p { "If what it finds is damaged, it is put aside, and the page tells you." }
    }
}

fn no_network(site: &Site<'_>) -> Markup {
    let links = site.links("about/");
    html! {
        (heading("no-network"))
        p {
            "On an https address your browser keeps a copy of the whole site after the first "
            "visit, the look-up first. The foot of each page says so: “Kept on this phone, "
            "checked” and the date, or “Needs signal”. On a plain http address browsers keep no "
            "copy, and the page says that instead."
        }
        @if site.edition.is_portable() {
            p { "You are reading the portable edition: a folder that opens without any network." }
        } @else {
            p {
                "For a hall without any network there is a portable edition: a folder to unpack "
                "on a computer and open by double-clicking "
                code { "index.html" } ". Phones may not open it."
            }
            p { a.button href=(links.file(portable::DOWNLOAD)) download { "Download the portable edition (zip)" } }
        }
    }
}

fn browsers() -> Markup {
    html! {
        (heading("browsers"))
        p {
            "Tested in Chromium and in WebKitGTK, which shares Safari’s engine but is not Safari. "
            "By the features it uses, the site should run in Chrome 109, Firefox 115, Safari 16.4 "
            "and anything later. Elsewhere, and without JavaScript, the lessons, the drawings and "
            "the tables can still be read."
        }
    }
}

fn sources(site: &Site<'_>) -> Markup {
    html! {
        (heading("sources"))
        p {
            "The publications that lessons, problems and tables draw on. Each lesson lists its "
            "own, with the page or clause; where a book was read in a companion to it and not in "
            "print, its line says so."
        }
        ul.sources { (site.content.lessons.sources()) }
    }
}

fn licences(site: &Site<'_>) -> Markup {
    let links = site.links("about/");
    html! {
        (heading("licences"))
        p {
            "The program is free to use under the MIT licence or the Apache licence 2.0, as you "
            "choose. The lessons, the glossary, the problems and the sheets are under Creative "
            "Commons Attribution 4.0: copy, change and print them, and say where they came from."
        }
        p {
            "Headings are set in Besley, © 2020 The Besley Project Authors, under the "
            a href=(links.file("besley-licence.txt")) { "SIL Open Font Licence 1.1" }
            ". Formulas are set in a part of Noto Sans Math, © 2022 Google LLC, under "
            a href=(links.file("noto-sans-math-licence.txt")) { "the same licence" } "."
        }
    }
}
