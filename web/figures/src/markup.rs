//! A figure as it stands in a page: task, drawing, handles, caption, words and table. The
//! task stands over the drawing: on a phone it is in sight with the handles that it asks for.
//!
//! Everything that a live figure needs is in the page from the start, hidden until the
//! page's program finds it can bring it alive. Without the program a reader has the
//! drawing, its words and its table.

use crate::coordinate::{percent, pixels, thousandths};
use crate::escape::escape;
use crate::{Cell, Control, ControlKind, FigureError, Input, Place, Slider, Table, View};
use crate::{svg, view};

/// Something to do with a figure, and how to see that it is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Task<'a> {
    /// What to do, as HTML.
    pub html: &'a str,
    /// When it is done, as [`crate::Condition::parse`] reads it.
    pub done: &'a str,
}

/// The figure called `name` for `input`, as HTML.
///
/// `caption_html` and the task's words are HTML already; everything else is escaped
/// here.
///
/// # Errors
/// There is no such figure, its input is refused, or the task's condition asks for
/// something that the figure does not show.
pub fn markup(
    name: &str,
    input: &Input,
    caption_html: &str,
    task: Option<Task<'_>>,
) -> Result<String, FigureError> {
    let view = view(name, input)?;
    let mut out = String::with_capacity(16_384);
    push(
        &mut out,
        &["<figure class=\"figure\" data-figure=\"", &escape(name)],
    );
    push(
        &mut out,
        &["\" data-input=\"", &escape(&input.to_query()), "\">"],
    );
    if let Some(task) = task {
        write_task(&mut out, &view, task)?;
    }
    push(&mut out, &["<div class=\"drawing\">", &svg(&view)]);
    for control in view
        .controls
        .iter()
        .filter(|control| place(control).is_some())
    {
        write_control(&mut out, control);
    }
    out.push_str("</div><form class=\"controls\" hidden>");
    for control in view
        .controls
        .iter()
        .filter(|control| place(control).is_none())
    {
        write_control(&mut out, control);
    }
    out.push_str("</form><p class=\"figure-says\" role=\"status\"></p>");
    push(&mut out, &["<figcaption>", caption_html, "</figcaption>"]);
    write_words(&mut out, &view);
    out.push_str("</figure>");
    Ok(out)
}

fn push(out: &mut String, parts: &[&str]) {
    for part in parts {
        out.push_str(part);
    }
}

fn place(control: &Control) -> Option<Place> {
    match &control.kind {
        ControlKind::Slider(slider) => slider.place,
        ControlKind::Choice { .. } => None,
    }
}

fn write_task(out: &mut String, view: &View, task: Task<'_>) -> Result<(), FigureError> {
    crate::Condition::parse(task.done)?.met(view)?;
    push(
        out,
        &["<p class=\"task\" data-done=\"", &escape(task.done), "\">"],
    );
    push(
        out,
        &[
            task.html,
            " <span class=\"task-done\" role=\"status\"></span></p>",
        ],
    );
    Ok(())
}

fn write_control(out: &mut String, control: &Control) {
    match &control.kind {
        ControlKind::Slider(slider) => {
            let named = Named {
                parameter: control.parameter,
                label: control.label,
                text: &control.text,
                described_by: "",
            };
            write_slider(out, named, slider);
        }
        ControlKind::Choice { options, chosen } => {
            push(
                out,
                &[
                    "<fieldset class=\"either\"><legend>",
                    &escape(control.label),
                ],
            );
            out.push_str("</legend>");
            for (value, label) in options {
                push(
                    out,
                    &["<label><input type=\"radio\" name=\"", control.parameter],
                );
                push(out, &["\" value=\"", value, "\""]);
                out.push_str(if value == chosen { " checked>" } else { ">" });
                push(out, &["<span>", &escape(label), "</span></label>"]);
            }
            out.push_str("</fieldset>");
        }
    }
}

/// What a slider is called, and what is said of where it stands.
#[derive(Clone, Copy)]
pub(crate) struct Named<'a> {
    /// The parameter that it sets.
    pub(crate) parameter: &'a str,
    pub(crate) label: &'a str,
    /// Where it stands, in words.
    pub(crate) text: &'a str,
    /// Id of what describes it; empty where nothing does.
    pub(crate) described_by: &'a str,
}

pub(crate) fn write_slider(out: &mut String, named: Named<'_>, slider: &Slider) {
    match slider.place {
        Some(place) => {
            push(
                out,
                &[
                    "<label class=\"handle\" hidden data-from=\"",
                    &percent(place.from),
                ],
            );
            push(out, &["\" data-to=\"", &percent(place.to)]);
            push(out, &["\" data-y=\"", &pixels(place.y), "\">"]);
        }
        None => out.push_str("<label class=\"slider\">"),
    }
    push(out, &["<span>", &escape(named.label), "</span>"]);
    push(out, &["<input type=\"range\" name=\"", named.parameter]);
    for (name, number) in [
        ("min", slider.min),
        ("max", slider.max),
        ("step", slider.step),
    ] {
        let number = f64::from(number) / f64::from(slider.parts);
        push(out, &["\" ", name, "=\"", &thousandths(number)]);
    }
    push(out, &["\" value=\"", &thousandths(slider.value)]);
    if !slider.unit.is_empty() {
        push(out, &["\" data-unit=\"", slider.unit]);
    }
    if !named.described_by.is_empty() {
        push(out, &["\" aria-describedby=\"", named.described_by]);
    }
    push(out, &["\" aria-valuetext=\"", &escape(named.text), "\">"]);
    if slider.place.is_none() {
        // The slider says where it stands; an output would say it once more.
        let stands = escape(&slider.stands());
        push(out, &["<output aria-live=\"off\">", &stands, "</output>"]);
    }
    out.push_str("</label>");
}

fn write_words(out: &mut String, view: &View) {
    out.push_str("<details><summary>In words and numbers</summary><p class=\"words\">");
    // Where the table is wider than the page it scrolls, also by keyboard.
    let scrolls = "</p><div class=\"table\" role=\"group\" tabindex=\"0\" aria-label=\"";
    push(out, &[&escape(&view.words), scrolls]);
    push(out, &[&escape(&view.table.caption), "\">"]);
    write_table(out, &view.table);
    out.push_str("</div></details>");
}

fn write_table(out: &mut String, table: &Table) {
    push(
        out,
        &[
            "<table><caption>",
            &escape(&table.caption),
            "</caption><thead><tr>",
        ],
    );
    for heading in &table.headings {
        push(out, &["<th scope=\"col\">", &escape(heading), "</th>"]);
    }
    out.push_str("</tr></thead><tbody>");
    for row in &table.rows {
        out.push_str("<tr>");
        for (column, cell) in row.iter().enumerate() {
            write_cell(out, cell, column == 0);
        }
        out.push_str("</tr>");
    }
    out.push_str("</tbody></table>");
}

fn write_cell(out: &mut String, cell: &Cell, head: bool) {
    let text = escape(&cell.text);
    match cell.result {
        _ if head => push(out, &["<th scope=\"row\">", &text, "</th>"]),
        Some((name, value)) => {
            push(out, &["<td data-quantity=\"", name, "\" data-value=\""]);
            push(out, &[&crate::value(value), "\">", &text, "</td>"]);
        }
        None => push(out, &["<td>", &text, "</td>"]),
    }
}
