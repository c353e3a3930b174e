//! A figure of the page, alive: its handles shown, its drawing changed in place.
//!
//! Nothing that the page holds is replaced, so whoever stands on a handle keeps the
//! focus. Elements are looked up once, when the figure is brought alive.

use crate::dom::{Result, all, one, say, show};
use crate::drawing;
use crate::task::Task;
use figures::{Control, ControlKind, FigureError, Input, View};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlElement, HtmlInputElement};

/// A figure of the page.
pub(crate) struct LiveFigure {
    name: String,
    root: Element,
    /// What is drawn: the last input that the core accepted.
    drawn: Input,
    view: View,
    /// What the handles say, drawn or refused.
    asked: Input,
    parts: Parts,
    task: Option<Task>,
}

/// The elements of a figure that change.
struct Parts {
    drawing: Element,
    keyed: Vec<(String, Element)>,
    cells: Vec<Element>,
    words: Element,
    says: Element,
    handles: Vec<Handle>,
}

/// A handle: its parameter and its inputs (several for a choice).
struct Handle {
    parameter: &'static str,
    inputs: Vec<HtmlInputElement>,
    output: Option<Element>,
}

impl LiveFigure {
    /// Brings the figure at `root` alive.
    pub(crate) fn mount(root: Element) -> Result<Self> {
        let name = root.get_attribute("data-figure").unwrap_or_default();
        let query = root.get_attribute("data-input").unwrap_or_default();
        let input = Input::parse(&query).map_err(thrown)?;
        let view = figures::view(&name, &input).map_err(thrown)?;
        let parts = Parts::find(&root, &view)?;
        let task = Task::find(&root)?;
        parts.handles.iter().for_each(Handle::begin);
        place_handles(&root)?;
        show(
            &one(&root, ".controls")?,
            parts.handles.iter().any(Handle::stands_below),
        )?;
        root.set_attribute("data-live", "")?;
        Ok(Self {
            name,
            root,
            drawn: input.clone(),
            view,
            asked: input,
            parts,
            task,
        })
    }

    /// Takes up the input that the page now has for it: the reader's own set's
    /// (`data-own`), or the lesson's.
    pub(crate) fn begin_again(&mut self) -> Result<()> {
        let own = self.root.get_attribute("data-own");
        let query = own.or_else(|| self.root.get_attribute("data-input"));
        let asked = Input::parse(&query.unwrap_or_default()).map_err(thrown)?;
        let view = figures::view(&self.name, &asked).map_err(thrown)?;
        for (handle, control) in self.parts.handles.iter().zip(&view.controls) {
            handle.put(control);
        }
        self.asked = asked;
        self.draw(view)
    }

    /// Whether an element belongs to this figure.
    pub(crate) fn holds(&self, element: &Element) -> bool {
        self.root.contains(Some(element))
    }

    /// Takes up what a handle says now.
    pub(crate) fn moved(&mut self, input: &HtmlInputElement) -> Result<()> {
        let mut text = input.value();
        if let Some(unit) = input.get_attribute("data-unit") {
            text.push(' ');
            text.push_str(&unit);
        }
        let asked = self.asked.clone().with(&input.name(), &text);
        let drawn = figures::view(&self.name, &asked);
        self.parts.echo(input, &text);
        self.asked = asked;
        match drawn {
            Ok(view) => self.draw(view),
            Err(error) => {
                let sentence = sentence(&error.to_string());
                input.set_attribute("aria-valuetext", &[&text, ". ", &sentence].concat())?;
                say(&self.parts.says, &sentence);
                self.root.set_attribute("data-refused", "")
            }
        }
    }

    fn draw(&mut self, view: View) -> Result<()> {
        self.parts.apply(&self.view, &view)?;
        say(&self.parts.says, "");
        self.root.remove_attribute("data-refused")?;
        if let Some(task) = &mut self.task {
            task.look(&view)?;
        }
        self.drawn = self.asked.clone();
        self.view = view;
        Ok(())
    }

    /// The figure's element.
    pub(crate) fn root(&self) -> &Element {
        &self.root
    }

    /// Leaves the figure as its text and its last drawing.
    pub(crate) fn retire(&self) -> Result<()> {
        self.root.remove_attribute("data-live")?;
        for handle in all(&self.root, ".handle, .controls")? {
            show(&handle, false)?;
        }
        Ok(())
    }
}

impl Parts {
    fn find(root: &Element, view: &View) -> Result<Self> {
        let handles = view
            .controls
            .iter()
            .map(|control| Handle::find(root, control));
        let drawing = one(root, "svg")?;
        Ok(Self {
            keyed: drawing::keyed(&drawing)?,
            drawing,
            cells: all(root, "tbody th, tbody td")?,
            words: one(root, ".words")?,
            says: one(root, ".figure-says")?,
            handles: handles.collect::<Result<_>>()?,
        })
    }

    /// Shows a slider's number beside it.
    fn echo(&self, input: &HtmlInputElement, text: &str) {
        let name = input.name();
        let handle = self.handles.iter().find(|handle| handle.parameter == name);
        if let Some(output) = handle.and_then(|handle| handle.output.as_ref()) {
            say(output, text);
        }
    }

    /// Changes what differs between two views.
    fn apply(&self, old: &View, new: &View) -> Result<()> {
        let keyed = |key: &str| drawing::at(&self.keyed, key);
        drawing::change(&self.drawing, (old, new), keyed)?;
        say(&self.words, &new.words);
        self.fill_table(old, new)?;
        for (handle, control) in self.handles.iter().zip(&new.controls) {
            handle.speak(control)?;
        }
        Ok(())
    }

    fn fill_table(&self, old: &View, new: &View) -> Result<()> {
        let before = old.table.rows.iter().flatten();
        let after = new.table.rows.iter().flatten();
        for ((cell, before), after) in self.cells.iter().zip(before).zip(after) {
            if before.text != after.text {
                cell.set_text_content(Some(&after.text));
            }
            if let (true, Some((_, value))) = (before.result != after.result, after.result) {
                cell.set_attribute("data-value", &number(value))?;
            }
        }
        Ok(())
    }
}

impl Handle {
    fn find(root: &Element, control: &Control) -> Result<Self> {
        let parameter = control.parameter;
        let inputs: Vec<HtmlInputElement> = all(root, &["input[name='", parameter, "']"].concat())?
            .into_iter()
            .filter_map(|element| element.dyn_into().ok())
            .collect();
        let label = inputs.first().and_then(|input| input.parent_element());
        let output = match label {
            Some(label) => label.query_selector("output")?,
            None => None,
        };
        Ok(Self {
            parameter,
            inputs,
            output,
        })
    }

    /// Puts the inputs where the page was written with them: a browser that reloads a
    /// page may have left them where they were before.
    fn begin(&self) {
        for input in &self.inputs {
            input.set_value(&input.default_value());
            input.set_checked(input.default_checked());
        }
    }

    /// Puts the inputs where a view has them.
    fn put(&self, control: &Control) {
        for input in &self.inputs {
            match &control.kind {
                ControlKind::Slider(slider) => input.set_value(&number(slider.value)),
                ControlKind::Choice { chosen, .. } => {
                    input.set_checked(input.value() == *chosen);
                }
            }
        }
        if let (Some(output), Some(input)) = (&self.output, self.inputs.first()) {
            let unit = input.get_attribute("data-unit").unwrap_or_default();
            say(output, [&input.value(), " ", &unit].concat().trim());
        }
    }

    fn stands_below(&self) -> bool {
        self.inputs.iter().any(|input| {
            input
                .closest(".handle")
                .is_ok_and(|handle| handle.is_none())
        })
    }

    /// Says in words where a slider stands and what follows from it.
    fn speak(&self, control: &Control) -> Result<()> {
        match (&control.kind, self.inputs.first()) {
            (ControlKind::Slider(_), Some(input)) => {
                input.set_attribute("aria-valuetext", &control.text)
            }
            _ => Ok(()),
        }
    }
}

/// Lays the handles that stand on the drawing over their stretch of it.
fn place_handles(root: &Element) -> Result<()> {
    for handle in all(root, ".handle")? {
        let style = handle.unchecked_ref::<HtmlElement>().style();
        for (property, attribute) in [
            ("--from", "data-from"),
            ("--to", "data-to"),
            ("--y", "data-y"),
        ] {
            let value = handle.get_attribute(attribute).unwrap_or_default();
            style.set_property(property, &value)?;
        }
        show(&handle, true)?;
    }
    Ok(())
}

/// A refusal as a sentence on a page: with a capital and a full stop.
fn sentence(says: &str) -> String {
    let mut letters = says.chars();
    let first = letters.next().map(|first| first.to_ascii_uppercase());
    let mut sentence = String::from_iter(first);
    sentence.push_str(letters.as_str());
    sentence.push('.');
    sentence
}

/// The shortest text that reads back as this value. The browser's own rule gives the same
/// digits as the one that wrote the page, and its tables need not be sent.
fn number(value: f64) -> String {
    js_sys::Number::from(value)
        .to_string_with_radix(10)
        .map_or_else(|_| String::new(), String::from)
}

#[allow(clippy::needless_pass_by_value)] // as map_err hands it over
fn thrown(error: FigureError) -> JsValue {
    JsValue::from_str(&error.to_string())
}
