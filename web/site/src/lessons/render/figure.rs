//! A figure on the page.

use super::Drawing;
use super::inline::Manner;
use crate::lessons::blocks::Figure;
use anyhow::Context;
use maud::{Markup, PreEscaped};

impl Drawing<'_> {
    /// A figure with its task and caption, drawn in the order of the page.
    pub(super) fn figure(&self, figure: &Figure) -> anyhow::Result<Markup> {
        self.note_figure(&figure.input);
        let task_html = figure
            .task
            .as_ref()
            .map(|task| self.run(&task.words, Manner::LINE).into_string());
        let task = figure.task.as_ref().zip(task_html.as_ref());
        let task = task.map(|(task, html)| figures::Task {
            html,
            done: &task.done,
        });
        let caption = self.run(&figure.caption, Manner::LINE).into_string();
        let context = || format!("the figure {} of {}", figure.name, self.lesson.slug);
        let input = figure.input(&self.givens).with_context(context)?;
        let markup = figures::markup(&figure.name, &input, &caption, task).with_context(context)?;
        Ok(PreEscaped(markup))
    }
}
