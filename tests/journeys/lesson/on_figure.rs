//! Answers set on a figure: the slider says its setting alone, the drawing follows once it is
//! marked; a page that has no such figure asks for the number.

use super::problem::tally;
use crate::drawn::Drawn;
use anyhow::{Context, Result, anyhow, ensure};
use checks::{Engine, Visit, Window, journey};
use site::content::Content;
use site::repository;
use superhet::problems::Family;
use superhet::problems::problem::{Mistake, NumberAnswer};
use superhet::units::{display, parse};
use thirtyfour::Key;

/// Every family whose easiest problem is answered on a figure, with the lesson that has it.
fn on_figures() -> Result<Vec<(String, String)>> {
    let content = Content::load(&repository::root()).map_err(|faults| anyhow!("{faults}"))?;
    let on_figure = |family: &&Family| {
        let asked = &family.level_1.parts;
        let mut parts = family.parts.iter();
        parts.any(|part| asked.contains(&part.id) && part.set_on.is_some())
    };
    let families = content.families.newest().map(|it| &it.family);
    let found: Vec<_> = families
        .filter(on_figure)
        .map(|it| (format!("lessons/{}/", it.lesson), it.id.clone()))
        .collect();
    ensure!(found.len() >= 3, "{found:?}");
    Ok(found)
}

/// A problem that is answered on a figure, on the page.
#[derive(Clone, Copy)]
struct OnFigure<'a> {
    visit: &'a Visit,
    family: &'a str,
    answer: &'a NumberAnswer,
}

/// A stop of the slider, in the unit that it counts in.
fn stop(answer: &NumberAnswer, value: f64) -> Result<f64> {
    let rounded = answer.precision.round(value);
    let unit = answer.unit_buttons.first().map(|unit| format!("1 {unit}"));
    let one = match unit {
        Some(unit) => parse::value(answer.kind, &unit, None).map_err(|error| anyhow!("{error}"))?,
        None => 1.0,
    };
    Ok(rounded / one)
}

impl OnFigure<'_> {
    /// Something of the problem, as a CSS selector.
    fn css(&self, inside: &str) -> String {
        format!("#problem-{} .desk {inside}", self.family)
    }

    async fn ask<T: for<'d> serde::Deserialize<'d>>(&self, inside: &str, ask: &str) -> Result<T> {
        let css = self.css(inside);
        let script = format!("const it = document.querySelector({css:?}); return {ask}");
        self.visit.script(&script).await
    }

    async fn mark(&self) -> Result<String> {
        self.visit.click(&self.css("[type=submit]")).await?;
        self.visit.text(&self.css(".marking")).await
    }

    /// Moves the slider by keys to a stop. On the way it says where it stands, and the
    /// drawing waits.
    async fn set(&self, value: f64) -> Result<String> {
        let answer = self.answer;
        let wanted = stop(answer, value)?;
        let step = stop(answer, answer.precision.last_place(value))?;
        let before: String = self.ask(".drawn", "it.innerHTML").await?;
        let slider = ".on-figure input[type=range]";
        self.ask::<()>(".scene", "it.focus()").await?;
        self.visit.tab_to(&self.css(slider)).await?;
        let from: f64 = self.ask(slider, "it.valueAsNumber").await?;
        let steps = (wanted - from) / step;
        let key = if steps < 0.0 { Key::Left } else { Key::Right };
        for _ in 0..steps.abs().round() as u32 {
            self.visit.press(key.clone()).await?;
        }
        let heard: String = self.ask(slider, "it.ariaValueText").await?;
        let seen: String = self.ask(".on-figure output", "it.textContent").await?;
        let at: f64 = self.ask(slider, "it.valueAsNumber").await?;
        let text = display::text(answer.kind, answer.precision.round(value));
        ensure!(
            heard == text && seen == text && (at - wanted).abs() < step / 2.0,
            "at {text} it stands at {at}, says {heard:?} and shows {seen:?}"
        );
        ensure!(
            self.ask::<String>(".drawn", "it.innerHTML").await? == before,
            "the drawing follows before it is marked"
        );
        Ok(text)
    }

    /// Sets a value and has it marked; the drawing follows.
    async fn answered(&self, value: f64) -> Result<String> {
        let setting = self.set(value).await?;
        let said = self.mark().await?;
        let drawn = self.visit.text(&self.css(".drawn-for")).await?;
        ensure!(
            drawn.ends_with(&format!("= {setting}")),
            "{setting} was set, and it is {drawn}"
        );
        Ok(said)
    }

    /// The mistakes that the slider can be set to.
    async fn reachable(&self) -> Result<Vec<&Mistake>> {
        let slider = ".on-figure input[type=range]";
        let min: f64 = self.ask(slider, "Number(it.min)").await?;
        let max: f64 = self.ask(slider, "Number(it.max)").await?;
        let mut reachable = Vec::new();
        for mistake in &self.answer.mistakes {
            let stop = stop(self.answer, mistake.value)?;
            reachable.extend((stop >= min && stop <= max).then_some(mistake));
        }
        ensure!(reachable.len() >= 3, "few mistakes can be made");
        Ok(reachable)
    }

    /// Once not set at all, once with every mistake, then rightly.
    async fn worked(&self) -> Result<()> {
        let said = self.mark().await?;
        ensure!(said.contains("Move the slider first."), "{said}");
        ensure!(
            tally(self.visit, self.family).await?.is_null(),
            "nothing was set, and it counts"
        );
        for mistake in self.reachable().await? {
            let said = self.answered(mistake.value).await?;
            ensure!(said.contains(&mistake.says), "{}: {said}", mistake.id);
            let counted = &tally(self.visit, self.family).await?[4][&mistake.id];
            ensure!(counted == 1, "{} is tallied {counted} times", mistake.id);
        }
        let said = self.answered(self.answer.value).await?;
        let right = self.visit.element(&self.css(".marking.is-right")).await;
        right.context(said)?;
        ensure!(
            self.visit.focused(&self.css(".marking")).await?,
            "the focus is not at what was said"
        );
        Ok(())
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_is_set_by_keys_and_the_drawing_follows() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            for (lesson, family) in &on_figures()? {
                let drawn = Drawn::of(family)?;
                visit
                    .open(&format!("{lesson}#problem={}", drawn.code))
                    .await?;
                visit.ready().await?;
                let problem = OnFigure {
                    visit: &visit,
                    family,
                    answer: drawn.answer()?,
                };
                problem.worked().await.context(family.clone())?;
                visit.no_sideways_scroll().await.context(family.clone())?;
                visit.accessible().await.context(family.clone())?;
            }
            visit.quiet_console().await
        })
        .await?;
    }
    Ok(())
}

/// A finger moves the slider by one stop; after the steps it stands at the answer.
#[tokio::test(flavor = "multi_thread")]
async fn buttons_move_by_one_stop_and_the_steps_put_it_right() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            let (lesson, family) = &on_figures()?[0];
            let drawn = Drawn::of(family)?;
            let answer = drawn.answer()?;
            visit
                .open(&format!("{lesson}#problem={}", drawn.code))
                .await?;
            visit.ready().await?;
            let problem = OnFigure {
                visit: &visit,
                family,
                answer,
            };
            let slider = ".on-figure input[type=range]";
            let from: f64 = problem.ask(slider, "it.valueAsNumber").await?;
            let step = stop(answer, answer.precision.last_place(answer.value))?;
            for (button, stops) in [("up", 1.0), ("up", 2.0), ("down", 1.0)] {
                let button = problem.css(&format!("[data-do={button}]"));
                visit.click(&button).await?;
                let at: f64 = problem.ask(slider, "it.valueAsNumber").await?;
                ensure!((at - from - stops * step).abs() < step / 2.0, "at {at}");
                let seen = visit.text(&problem.css(".on-figure output")).await?;
                ensure!(
                    seen.starts_with(&at.to_string()),
                    "{at}, and {seen} is shown"
                );
            }
            let said = problem.mark().await?;
            ensure!(!said.contains("Move the slider"), "{said}");
            visit.click(&problem.css("[data-do=show]")).await?;
            let right = format!("= {}", answer.text);
            let drawn_for = visit.text(&problem.css(".drawn-for")).await?;
            ensure!(drawn_for.ends_with(&right), "{drawn_for}, not {right}");
            let seen = visit.text(&problem.css(".on-figure output")).await?;
            ensure!(seen == answer.text, "the slider stands at {seen}");
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn without_the_figure_the_number_is_typed() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        for (_, family) in &on_figures()? {
            let drawn = Drawn::of(family)?;
            visit
                .open(&format!("practice/#problem={}", drawn.code))
                .await?;
            visit.ready().await?;
            let typed = ".problem .desk input[type=text]";
            visit.type_into(typed, &drawn.answer()?.text).await?;
            visit.click(".problem .desk [type=submit]").await?;
            visit
                .element(".problem .desk .marking.is-right")
                .await
                .context(family.clone())?;
        }
        Ok(())
    })
    .await
}
