//! A figure on which a number is set: its drawing as it stands, and one slider under it
//! that says where it stands and nothing else.
//!
//! The drawing waits. What follows from a setting is seen once the setting has been judged;
//! a slider that told it on the way would make the question one of reading a scale.

use crate::markup::{Named, write_slider};
use crate::{ControlKind, FigureError, Input, Slider, View, escape, svg, view};
use superhet::problems::problem::SetOn;

/// A slider of a figure, set to something.
#[derive(Clone, Debug)]
pub struct Setting<'a> {
    set_on: &'a SetOn,
    /// The figure's input, the slider's parameter in it.
    input: Input,
}

impl<'a> Setting<'a> {
    /// The slider of an answer, standing at `stands` as its parameter takes it.
    ///
    /// # Errors
    /// What is drawn besides is no input of a figure.
    pub fn new(set_on: &'a SetOn, stands: &str) -> Result<Self, FigureError> {
        let input = Input::parse(&set_on.with)?.with(&set_on.parameter, stands);
        Ok(Self { set_on, input })
    }

    /// The figure as it is set.
    ///
    /// # Errors
    /// There is no such figure, or its input is refused.
    pub fn view(&self) -> Result<View, FigureError> {
        view(&self.set_on.figure, &self.input)
    }

    /// The slider of a view of the figure.
    ///
    /// # Errors
    /// The figure has no such slider.
    pub fn slider_of(&self, view: &View) -> Result<Slider, FigureError> {
        let mut controls = view.controls.iter();
        let control = controls.find(|control| control.parameter == self.set_on.parameter);
        match control.map(|control| &control.kind) {
            Some(ControlKind::Slider(slider)) => Ok(slider.clone()),
            _ => {
                let parameter = &self.set_on.parameter;
                let sentence = ["this figure has no slider '", parameter, "'"].concat();
                Err(FigureError::about(parameter, sentence))
            }
        }
    }

    /// The drawing and under it the slider, as HTML; `described_by` is the id of what says how
    /// the last setting was judged.
    ///
    /// # Errors
    /// There is no such figure or slider, or its input is refused.
    pub fn markup(&self, described_by: &str) -> Result<String, FigureError> {
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
            &escape(&self.set_on.caption),
            "</p><details><summary>The drawing in words</summary><p class=\"words\">",
            &escape(&view.words),
            "</p></details></div>",
        ]
        .concat();
        let named = Named {
            parameter: &self.set_on.parameter,
            label: &self.set_on.label,
            text: &stands,
            described_by,
        };
        write_slider(&mut html, named, &slider);
        Ok(html)
    }

    /// For which setting the drawing is.
    #[must_use]
    pub fn drawn_for(&self, stands: &str) -> String {
        ["Drawn for ", &self.set_on.label, " = ", stands].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::Setting;
    use crate::FigureError;
    use superhet::problems::problem::SetOn;

    const LINE: (&str, &str) = ("frequency-line", "if=470kHz&side=above");
    const CIRCUIT: (&str, &str) = ("resonance", "f0=470 kHz");

    fn markup(
        (figure, with): (&str, &str),
        parameter: &str,
        stands: &str,
    ) -> Result<String, FigureError> {
        let set_on = SetOn {
            figure: figure.into(),
            with: with.into(),
            parameter: parameter.into(),
            label: "Place".into(),
            caption: "Tam's <b>".into(),
            begin: String::new(),
        };
        Setting::new(&set_on, stands)?.markup("q-said")
    }

    #[test]
    fn the_slider_says_its_setting_alone() {
        let html = markup(CIRCUIT, "q", "150").unwrap();
        let (_, slider) = html.split_once("<label class=\"slider\">").unwrap();
        let input = "name=\"q\" min=\"10\" max=\"300\" step=\"5\" value=\"150\"";
        assert!(slider.contains(input), "{slider}");
        assert!(slider.contains("aria-valuetext=\"150\""), "{slider}");
        assert!(slider.contains(">150</output>"), "{slider}");
        assert!(slider.contains("<span>Place</span>"), "{slider}");
        assert!(slider.contains("aria-describedby=\"q-said\""), "{slider}");
        assert!(!slider.contains("wide"), "{slider}");
        let html = markup(LINE, "dial", "1000 kHz").unwrap();
        assert!(html.contains("class=\"slider\""), "{html}");
        assert!(html.contains("aria-valuetext=\"1000 kHz\""), "{html}");
        assert!(html.contains("data-unit=\"kHz\""), "{html}");
    }

    #[test]
    fn what_is_drawn_says_for_which_setting() {
        let html = markup(CIRCUIT, "q", "60").unwrap();
        assert!(html.contains("Drawn for Place = 60<"), "{html}");
        assert!(html.contains("data-set=\"60\""), "{html}");
        assert!(html.contains("7.83 kHz"), "{html}");
        assert!(html.contains("<svg class=\"sheet\""), "{html}");
        assert!(html.contains("Tam&#39;s &lt;b&gt;"), "{html}");
    }

    #[test]
    fn what_cannot_be_set_is_named() {
        let said = markup(CIRCUIT, "span", "20 kHz").unwrap_err();
        assert!(said.to_string().contains("no slider 'span'"), "{said}");
        let line = ("frequency-line", "dial=1 MHz&if=470kHz");
        assert!(markup(line, "side", "above").is_err());
        assert!(markup(("rezonance", ""), "q", "60").is_err());
    }
}
