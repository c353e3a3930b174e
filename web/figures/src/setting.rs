//! A figure on which a number is set: its drawing as it stands, and one slider under it
//! that says where it stands and nothing else.
//!
//! The drawing waits. What follows from a setting is seen once the setting has been judged;
//! a slider that told it on the way would make the question one of reading a scale.

use crate::markup::{Named, write_slider};
use crate::{ControlKind, FigureError, Input, Slider, View, escape, svg, view};

/// A slider of a figure, set to something.
#[derive(Clone, Copy, Debug)]
pub struct Setting<'a> {
    /// Name of the figure.
    pub figure: &'a str,
    /// The figure's input, the slider's parameter in it.
    pub input: &'a Input,
    /// The parameter that the slider sets.
    pub parameter: &'a str,
    /// What the slider is called where it is set.
    pub label: &'a str,
    /// What the drawing shows, in words of the page.
    pub caption: &'a str,
    /// Id of the element that says what came of the last setting.
    pub described_by: &'a str,
}

impl Setting<'_> {
    /// The figure as it is set.
    ///
    /// # Errors
    /// There is no such figure, or its input is refused.
    pub fn view(&self) -> Result<View, FigureError> {
        view(self.figure, self.input)
    }

    /// The slider of a view of the figure.
    ///
    /// # Errors
    /// The figure has no such slider.
    pub fn slider_of(&self, view: &View) -> Result<Slider, FigureError> {
        let mut controls = view.controls.iter();
        let control = controls.find(|control| control.parameter == self.parameter);
        match control.map(|control| &control.kind) {
            Some(ControlKind::Slider(slider)) => Ok(slider.clone()),
            _ => {
                let sentence = ["this figure has no slider '", self.parameter, "'"].concat();
                Err(FigureError::about(self.parameter, sentence))
            }
        }
    }

    /// The drawing and under it the slider, as HTML.
    ///
    /// # Errors
    /// There is no such figure or slider, or its input is refused.
    pub fn markup(&self) -> Result<String, FigureError> {
        let view = self.view()?;
        let slider = Slider {
            place: None,
            ..self.slider_of(&view)?
        };
        let stands = slider.stands();
        let mut html = [
            "<div class=\"drawn\" data-set=\"",
            &escape(&stands),
            "\"><div class=\"drawing\">",
            &svg(&view),
            "</div><p class=\"drawn-for\">",
            &escape(&self.drawn_for(&stands)),
            "</p><p class=\"drawn-caption\">",
            &escape(self.caption),
            "</p><details><summary>The drawing in words</summary><p class=\"words\">",
            &escape(&view.words),
            "</p></details></div>",
        ]
        .concat();
        let named = Named {
            parameter: self.parameter,
            label: self.label,
            text: &stands,
            described_by: self.described_by,
        };
        write_slider(&mut html, named, &slider);
        Ok(html)
    }

    /// For which setting the drawing is.
    #[must_use]
    pub fn drawn_for(&self, stands: &str) -> String {
        ["Drawn for ", self.label, " = ", stands].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::Setting;
    use crate::{FigureError, Input};

    const LINE: &str = "dial=1000kHz&if=470kHz&side=above";

    fn markup(figure: &str, query: &str, parameter: &str) -> Result<String, FigureError> {
        let input = Input::parse(query).unwrap();
        let setting = Setting {
            figure,
            input: &input,
            parameter,
            label: "Place",
            caption: "Tam's <b>",
            described_by: "q-said",
        };
        setting.markup()
    }

    #[test]
    fn the_slider_says_its_setting_alone() {
        let html = markup("resonance", "f0=470 kHz&q=150", "q").unwrap();
        let (_, slider) = html.split_once("<label class=\"slider\">").unwrap();
        let input = "name=\"q\" min=\"10\" max=\"300\" step=\"5\" value=\"150\"";
        assert!(slider.contains(input), "{slider}");
        assert!(slider.contains("aria-valuetext=\"150\""), "{slider}");
        assert!(slider.contains(">150</output>"), "{slider}");
        assert!(slider.contains("<span>Place</span>"), "{slider}");
        assert!(slider.contains("aria-describedby=\"q-said\""), "{slider}");
        assert!(!slider.contains("wide"), "{slider}");
        let html = markup("frequency-line", LINE, "dial").unwrap();
        assert!(html.contains("class=\"slider\""), "{html}");
        assert!(html.contains("aria-valuetext=\"1000 kHz\""), "{html}");
        assert!(html.contains("data-unit=\"kHz\""), "{html}");
    }

    #[test]
    fn what_is_drawn_says_for_which_setting() {
        let html = markup("resonance", "f0=470 kHz&q=60", "q").unwrap();
        assert!(html.contains("Drawn for Place = 60<"), "{html}");
        assert!(html.contains("data-set=\"60\""), "{html}");
        assert!(html.contains("7.83 kHz"), "{html}");
        assert!(html.contains("<svg class=\"sheet\""), "{html}");
        assert!(html.contains("Tam&#39;s &lt;b&gt;"), "{html}");
    }

    #[test]
    fn what_cannot_be_set_is_named() {
        let said = markup("resonance", "q=60", "k").unwrap_err();
        assert!(said.to_string().contains("no slider 'k'"), "{said}");
        assert!(markup("frequency-line", LINE, "side").is_err());
        assert!(markup("rezonance", LINE, "dial").is_err());
    }
}
