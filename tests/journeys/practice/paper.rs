//! What is left of practice without scripts, and on paper.

use super::{PAGE, content};
use crate::formulas::pages;
use anyhow::{Result, ensure};
use checks::{Engine, Window, journey};

#[tokio::test(flavor = "multi_thread")]
async fn without_scripts_it_says_so() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        visit.without_scripts().await?;
        visit.open(PAGE).await?;
        let note = visit.text("noscript .note").await?;
        ensure!(note.contains("needs JavaScript"), "{note}");
        for dead in ["#choose", "#round", "#notebook", "#place"] {
            ensure!(!visit.element(dead).await?.is_displayed().await?, "{dead}");
        }
        visit.no_sideways_scroll().await?;
        visit.click("main a[href*=on-paper]").await?;
        let problems = "return document.querySelectorAll('.problem .scene').length";
        let problems: usize = visit.script(problems).await?;
        let families = content()?.families.newest().count();
        ensure!(problems == families, "{problems} of {families} stand there");
        let key = visit.element(".problem details.answer .right").await?;
        ensure!(!key.is_displayed().await?, "the key lies open");
        visit.click(".problem details.answer summary").await?;
        ensure!(!key.text().await?.is_empty(), "there is no key");
        visit.no_sideways_scroll().await
    })
    .await
}

/// Chromium alone prints.
#[tokio::test(flavor = "multi_thread")]
async fn the_sheet_is_printed_without_its_keys() -> Result<()> {
    journey(Engine::Chromium, Window::LAPTOP, async |visit| {
        visit.open("practice/on-paper/").await?;
        let text = pages(&visit.pdf().await?)?.concat();
        ensure!(!text.contains("Answer and steps"), "the keys are printed");
        let first = "return document.querySelector('.problem .question').textContent";
        let first: String = visit.script(first).await?;
        let start: String = first
            .split_whitespace()
            .take(3)
            .collect::<Vec<_>>()
            .join(" ");
        ensure!(text.contains(&start), "{start:?} is not on paper");
        Ok(())
    })
    .await
}
