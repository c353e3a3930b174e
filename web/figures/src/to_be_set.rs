//! A figure on which a number is set: its drawing as it stands, and one slider under it
//! that says where it stands and nothing else.
//!
//! The drawing waits. What follows from a setting is seen once the setting has been judged;
//! a slider that told it on the way would make the question one of reading a scale.

use crate::coordinate::thousandths;
use crate::markup::write_slider;
use crate::{ControlKind, FigureError, Input, Slider, View, escape, svg, view};

/// A handle of a figure, set to something.
#[derive(Clone, Copy, Debug)]
pub struct Setting<'a> {
    /// Name of the figure.
    pub figure: &'a str,
    /// The figure's input, the handle's parameter in it.
    pub input: &'a Input,
    /// The parameter that the handle sets.
    pub handle: &'a str,
    /// What the handle is called where it is set.
    pub label: &'a str,
}

impl Setting<'_> {
    /// The slider with which it is set, as HTML.
    ///
    /// # Errors
    /// There is no such figure or slider, or its input is refused.
    pub fn slider(&self) -> Result<String, FigureError> {
        let slider = self.found(self.view()?)?;
        let text = standing(&slider);
        let mut html = String::with_capacity(512);
        let under = Slider {
            place: None,
            ..slider
        };
        write_slider(&mut html, (self.handle, self.label, &text), &under);
        Ok(html)
    }

    /// What is drawn, as HTML: the drawing, for which setting it is, and its words.
    ///
    /// # Errors
    /// There is no such figure or slider, or its input is refused.
    pub fn drawing(&self) -> Result<String, FigureError> {
        let view = self.view()?;
        let (drawing, words) = (svg(&view), escape(&view.words));
        let stands = standing(&self.found(view)?);
        Ok([
            "<div class=\"drawing\">",
            &drawing,
            "</div><p class=\"drawn-for\">Drawn for ",
            &escape(self.label),
            " = ",
            &escape(&stands),
            "</p><details><summary>The drawing in words</summary><p class=\"words\">",
            &words,
            "</p></details>",
        ]
        .concat())
    }

    fn view(&self) -> Result<View, FigureError> {
        view(self.figure, self.input)
    }

    /// The slider of a view that sets the parameter.
    fn found(&self, view: View) -> Result<Slider, FigureError> {
        let mut controls = view.controls.into_iter();
        let control = controls.find(|control| control.parameter == self.handle);
        match control.map(|control| control.kind) {
            Some(ControlKind::Slider(slider)) => Ok(slider),
            _ => {
                let sentence = ["this figure has no slider '", self.handle, "'"].concat();
                Err(FigureError::about(self.handle, sentence))
            }
        }
    }
}

/// Where a slider stands: the number and its unit.
fn standing(slider: &Slider) -> String {
    let text = [&thousandths(slider.value), " ", slider.unit].concat();
    text.trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::Setting;
    use crate::Input;

    const LINE: &str = "dial=1000kHz&if=470kHz&side=above";

    fn set<T>(figure: &str, query: &str, handle: &str, act: impl Fn(Setting<'_>) -> T) -> T {
        let input = Input::parse(query).unwrap();
        act(Setting {
            figure,
            input: &input,
            handle,
            label: "Place",
        })
    }

    #[test]
    fn the_slider_says_its_setting_alone() {
        let circuit = "f0=470 kHz&q=150";
        let html = set("resonance", circuit, "q", |it| it.slider()).unwrap();
        let input = "name=\"q\" min=\"10\" max=\"300\" step=\"5\" value=\"150\"";
        assert!(html.contains(input), "{html}");
        assert!(html.contains("aria-valuetext=\"150\""), "{html}");
        assert!(html.contains("<output>150</output>"), "{html}");
        assert!(html.contains("<span>Place</span>"), "{html}");
        assert!(!html.contains("wide"), "{html}");
        let html = set("frequency-line", LINE, "dial", |it| it.slider()).unwrap();
        assert!(html.contains("class=\"slider\""), "{html}");
        assert!(html.contains("aria-valuetext=\"1000 kHz\""), "{html}");
        assert!(html.contains("data-unit=\"kHz\""), "{html}");
    }

    #[test]
    fn what_is_drawn_says_for_which_setting() {
        let html = set("resonance", "f0=470 kHz&q=60", "q", |it| it.drawing()).unwrap();
        assert!(html.contains("Drawn for Place = 60<"), "{html}");
        assert!(html.contains("7.83 kHz"), "{html}");
        assert!(html.contains("<svg class=\"sheet\""), "{html}");
    }

    #[test]
    fn what_cannot_be_set_is_named() {
        let said = set("resonance", "q=60", "k", |it| it.slider()).unwrap_err();
        assert!(said.to_string().contains("no slider 'k'"), "{said}");
        assert!(set("frequency-line", LINE, "side", |it| it.drawing()).is_err());
        assert!(set("rezonance", LINE, "dial", |it| it.slider()).is_err());
    }
}
