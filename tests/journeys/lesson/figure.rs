//! Live figures, moved by pointer, finger and keys: what they show is the core's own, the
//! focus stays where it was, and no element is replaced.

use super::{FIRST, IMAGE, SECOND};
use anyhow::{Context, Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

/// A figure of a lesson, the handle that it is moved by, and where that has to go for its
/// task to be done, in the handle's own unit.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Figure {
    lesson: &'static str,
    handle: &'static str,
    done_at: f64,
}

const FIGURES: [Figure; 4] = [
    FIRST_FIGURE,
    Figure::moved(SECOND, "dial", 1560.0),
    Figure::moved(IMAGE, "dial", 900.0),
    Figure::moved(IMAGE, "if", 500.0),
];
/// The first lesson's.
pub(crate) const FIRST_FIGURE: Figure = Figure::moved(FIRST, "dial", 1400.0);

/// Keeps a list of the figure's elements and its words in the page.
const REMEMBER: &str = "
    window.journey = { nodes: [...figure.querySelectorAll('*')],
        words: figure.querySelector('.words').textContent,
        drawn: figure.querySelector('svg').outerHTML };";

/// Whether the figure still has the same elements, and only they.
const SAME_NODES: &str = "
    const nodes = [...figure.querySelectorAll('*')];
    return nodes.length === journey.nodes.length
        && nodes.every((node, at) => node === journey.nodes[at]);";

/// Whether drawing and words are other ones than before.
const CHANGED: &str = "
    return figure.querySelector('.words').textContent !== journey.words
        && figure.querySelector('svg').outerHTML !== journey.drawn;";

/// What the handles say, and what is given besides, as a query of the catalogue.
const HANDLES: &str = "
    const input = new URLSearchParams(figure.dataset.input);
    for (const handle of figure.querySelectorAll('input[type=range], input:checked'))
        input.set(handle.name, handle.value + (handle.dataset.unit ?? ''));
    return ['dial', 'if', 'side'].map((name) => `${name}=${input.get(name)}`).join('&');";

impl Figure {
    const fn moved(lesson: &'static str, handle: &'static str, done_at: f64) -> Self {
        Self {
            lesson,
            handle,
            done_at,
        }
    }

    /// What a CSS selector finds it by: a lesson moves each of its figures otherwise.
    fn css(self) -> String {
        format!("figure[data-input*=\"move={}\"]", self.handle)
    }

    fn handle_css(self) -> String {
        format!("{} input[name={}]", self.css(), self.handle)
    }

    /// A script that knows the figure.
    fn script(self, script: &str) -> String {
        format!(
            "const figure = document.querySelector('{}'); {script}",
            self.css()
        )
    }

    /// Where its handle stands.
    async fn stands_at(self, visit: &Visit) -> Result<f64> {
        let ask = format!(
            "return document.querySelector('{}').valueAsNumber",
            self.handle_css()
        );
        visit.script(&ask).await
    }

    async fn is_done(self, visit: &Visit) -> Result<bool> {
        let ask = "return figure.querySelector('.task').classList.contains('is-done')";
        visit.script(&self.script(ask)).await
    }

    async fn open(self, visit: &Visit) -> Result<()> {
        visit.open(self.lesson).await?;
        visit.ready().await?;
        self.remember(visit).await
    }

    async fn remember(self, visit: &Visit) -> Result<()> {
        visit.script::<()>(&self.script(REMEMBER)).await?;
        ensure!(
            !self.is_done(visit).await?,
            "the task is done from the start"
        );
        Ok(())
    }

    /// It shows what the core makes of its handles, in the elements it always had.
    async fn agrees(self, visit: &Visit) -> Result<()> {
        let set: String = visit.script(&self.script(HANDLES)).await?;
        let figure = self.css();
        visit
            .shows(&figure, "oscillator", &format!("oscillator?{set}"))
            .await?;
        if visit.value_in(&figure, "image").await?.is_some() {
            visit
                .shows(&figure, "image", &format!("image?{set}"))
                .await?;
        }
        let same: bool = visit.script(&self.script(SAME_NODES)).await?;
        ensure!(same, "elements were replaced");
        Ok(())
    }

    async fn has_changed(self, visit: &Visit) -> Result<()> {
        let changed: bool = visit.script(&self.script(CHANGED)).await?;
        ensure!(changed, "the drawing or its words stay as they were");
        Ok(())
    }

    /// A screen reader hears the number where the handle stands.
    async fn says_where_it_stands(self, visit: &Visit) -> Result<()> {
        let heard = format!(
            "return document.querySelector('{}').ariaValueText",
            self.handle_css()
        );
        let heard: String = visit.script(&heard).await?;
        let at = self.stands_at(visit).await?;
        ensure!(heard.contains(&at.to_string()), "at {at} it says {heard:?}");
        Ok(())
    }

    /// Moves it by keys alone, there and back, on the page in view.
    pub(crate) async fn moved_by_keys(self, visit: &Visit) -> Result<()> {
        let handle = self.handle_css();
        self.remember(visit).await?;
        let start = self.stands_at(visit).await?;
        visit.tab_to(&handle).await?;
        for _ in 0..3 {
            visit.press(Key::Right).await?;
        }
        self.agrees(visit).await?;
        let there = self.stands_at(visit).await?;
        ensure!(there > start, "from {start} to {there}");
        visit.press(Key::Left).await?;
        self.agrees(visit).await?;
        let back = self.stands_at(visit).await?;
        ensure!(back < there, "from {there} back to {back}");
        ensure!(visit.focused(&handle).await?, "the focus is lost");
        self.has_changed(visit).await?;
        self.says_where_it_stands(visit).await
    }

    /// Drags it to where its task is done, with mouse or finger.
    async fn dragged(self, visit: &Visit, by_touch: bool) -> Result<()> {
        let (handle, to) = (self.handle_css(), self.done_at);
        let start = self.stands_at(visit).await?;
        if by_touch {
            visit.drag_by_touch(&handle, to).await?;
        } else {
            visit.drag(&handle, to).await?;
        }
        self.agrees(visit).await?;
        let now = self.stands_at(visit).await?;
        // A pixel is several kilohertz, and engines differ by a few in where a thumb is.
        ensure!(
            (now - to).abs() < (to - start) / 10.0,
            "dragged to {now}, not {to}"
        );
        ensure!(self.is_done(visit).await?, "the task is not done at {now}");
        self.has_changed(visit).await
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn figures_are_moved_by_keys() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            for figure in FIGURES {
                let walk = async {
                    figure.open(&visit).await?;
                    figure.moved_by_keys(&visit).await?;
                    visit.press(Key::End).await?;
                    figure.agrees(&visit).await?;
                    ensure!(
                        figure.is_done(&visit).await?,
                        "the task is not done at the end"
                    );
                    let word = visit.text(&format!("{} .task-done", figure.css())).await?;
                    ensure!(word == "Done.", "{word:?}");
                    Ok(())
                };
                walk.await.with_context(|| format!("{figure:?}"))?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn figures_are_moved_by_the_mouse() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            for figure in FIGURES {
                let walk = async {
                    figure.open(&visit).await?;
                    figure.dragged(&visit, false).await?;
                    let focused = visit.focused(&figure.handle_css()).await?;
                    ensure!(focused, "the focus is not on the handle");
                    Ok(())
                };
                walk.await.with_context(|| format!("{figure:?}"))?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn figures_are_moved_by_a_finger() -> Result<()> {
    journey(Engine::Chromium, Window::PHONE, async |visit| {
        for figure in FIGURES {
            let walk = async {
                figure.open(&visit).await?;
                figure.dragged(&visit, true).await?;
                visit.no_sideways_scroll().await
            };
            walk.await.with_context(|| format!("{figure:?}"))?;
        }
        Ok(())
    })
    .await
}
