//! The page of formulas: its face in both engines, without scripts, by keyboard, on paper.

use anyhow::{Context, Result, ensure};
use checks::{Engine, Window, journey};
use std::io::Write as _;
use std::process::{Command, Stdio};
use superhet::catalogue::catalogue;

const PAGE: &str = "formulas/";

/// Whether the face of formulas has come, and what a formula's letters are set in.
const FACE: &str = "await document.fonts.ready; return [...document.fonts] \
    .filter((face) => face.family.includes('Bench Formulas')).map((face) => face.status)";

/// Formulas with a fraction whose upper part does not stand above its lower part.
const FLAT: &str = "return [...document.querySelectorAll('.entry mfrac')].filter((one) => { \
    const [upper, lower] = [...one.children].map((part) => part.getBoundingClientRect()); \
    return (upper.top + upper.bottom) / 2 >= lower.top; \
    }).map((one) => one.closest('.entry').dataset.formula)";

#[tokio::test(flavor = "multi_thread")]
async fn formulas_are_set_in_their_face_in_both_engines() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open(PAGE).await?;
            visit.ready().await?;
            let face = format!("return (async () => {{ {FACE} }})()");
            let status: Vec<String> = visit.script(&face).await?;
            ensure!(status == ["loaded"], "the face is {status:?}");
            let flat: Vec<String> = visit.script(FLAT).await?;
            ensure!(flat.is_empty(), "no fractions in {flat:?}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn every_quantity_is_there_without_scripts() -> Result<()> {
    journey(Engine::Chromium, Window::NARROW_PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open(PAGE).await?;
        for entry in catalogue() {
            let result = format!(
                "section[data-formula='{0}'] [data-quantity='{0}']",
                entry.name
            );
            let text = visit.text(&result).await?;
            ensure!(!text.is_empty(), "{} has no worked value", entry.name);
        }
        visit.no_sideways_scroll().await
    })
    .await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_formula_can_be_linked_to_and_reached_by_keyboard() -> Result<()> {
    journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        visit.open("formulas/#image-rejection").await?;
        visit.ready().await?;
        let there = "const top = document.getElementById('image-rejection') \
            .getBoundingClientRect().top; return top >= 0 && top < innerHeight";
        visit.until("the formula is in view", there).await?;
        // From the top again by a link of the page, as a reader goes to a subject.
        visit.open(PAGE).await?;
        visit.ready().await?;
        visit.click("nav.contents a[href='#detection']").await?;
        let there = there.replace("image-rejection", "detection");
        visit.until("the subject is in view", &there).await?;
        // Its heading is a link to itself, so that the key to the next link goes from
        // formula to formula.
        let stops = "return document.querySelectorAll('.entry h3 a[href^=\"#\"]').length";
        let stops: usize = visit.script::<f64>(stops).await? as usize;
        ensure!(stops == catalogue().len(), "{stops} headings to go to");
        Ok(())
    })
    .await
}

/// The text of a PDF, a page each.
pub(crate) fn pages(pdf: &[u8]) -> Result<Vec<String>> {
    let mut reader = Command::new("pdftotext")
        .args(["-layout", "-", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .context("cannot start pdftotext")?;
    let mut to_reader = reader.stdin.take().context("pdftotext takes no input")?;
    let pdf = pdf.to_vec();
    let writer = std::thread::spawn(move || to_reader.write_all(&pdf));
    let read = reader.wait_with_output()?;
    writer
        .join()
        .map_err(|_| anyhow::anyhow!("the writer died"))??;
    let text = String::from_utf8(read.stdout)?;
    Ok(text.split('\u{c}').map(str::to_owned).collect())
}

/// What each formula has exactly once: its first and its last line, and three between.
const MARKS: [&str; 5] = [
    ", the result",
    "For example, with",
    "How far it can be wrong",
    "Source ",
    "Typed ",
];

#[tokio::test(flavor = "multi_thread")]
async fn no_formula_is_broken_across_pages_of_paper() -> Result<()> {
    journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        visit.open(PAGE).await?;
        visit.ready().await?;
        let pages = pages(&visit.pdf().await?)?;
        let count = |page: &str, mark| page.matches(mark).count();
        let whole: usize = pages.iter().map(|page| count(page, MARKS[0])).sum();
        ensure!(whole == catalogue().len(), "{whole} formulas on paper");
        for (number, page) in (1..).zip(&pages) {
            let found = MARKS.map(|mark| count(page, mark));
            ensure!(
                found.iter().all(|one| *one == found[0]),
                "page {number} has {found:?} of {MARKS:?}"
            );
            for entry in catalogue() {
                // A heading at the foot of a page, its formula on the next.
                let heading = page.lines().any(|line| line.trim() == entry.title);
                let end = page.contains(&format!("{}?", entry.name));
                ensure!(!heading || end, "page {number} breaks {}", entry.name);
            }
        }
        Ok(())
    })
    .await
}
