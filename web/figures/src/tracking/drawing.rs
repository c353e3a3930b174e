//! The error over the band, its crossings and the asked setting.

use super::Model;
use crate::handle::{dot, handle, kilohertz, label};
use crate::plot::{Frame, held};
use crate::text_width::{Weight, text_width};
use crate::{FigureError, Node, span};

pub(super) const HEIGHT: f64 = 252.0;
const TOP: f64 = 44.0;
const LINE: f64 = 204.0;
/// How far the scale of the error reaches, as a part of the highest frequency.
const SHARE: f64 = 0.006;

pub(super) fn frame(ends: (f64, f64)) -> Result<Frame, FigureError> {
    if ends.1 <= ends.0 {
        let sentence = "f-high must be above f-low".to_owned();
        return Err(FigureError::about("f-high", sentence));
    }
    let reach = span::round_up(SHARE * ends.1);
    Ok(Frame::new(TOP, LINE - TOP, ends, (reach, -reach)))
}

/// From the back to the front.
pub(super) fn nodes(model: &Model) -> Vec<Node> {
    let frame = &model.frame;
    let reach = frame.down.0;
    let mut nodes = vec![frame.paper()];
    for part in [0.5, 0.0, -0.5] {
        // The level of no error is told by the curve's crossings.
        let text = match part {
            0.0 => String::new(),
            part if part > 0.0 => ["+", &kilohertz(part * reach), " kHz"].concat(),
            part => [&kilohertz(part * reach), " kHz"].concat(),
        };
        nodes.extend(frame.level(part * reach, &text));
    }
    nodes.extend(span::scale(frame));
    let errors = frame.places().map(|hertz| model.error_at(hertz));
    nodes.push(frame.curve("error", "fig-curve", &errors));
    for (place, setting) in model.settings.iter().enumerate() {
        let key = ["low", "middle", "high"][place];
        let ring = Node::classed("circle", "fig-mark").keyed(key).centred(
            frame.x_within(setting.value),
            frame.y(0.0),
            5.5,
        );
        nodes.push(ring);
    }
    let (x, y) = (frame.x(model.dial.value), frame.y(model.error.value));
    let text = ["at ", &model.dial.text, " off by ", &model.error.text].concat();
    let wide = text_width(&text, 13.0, Weight::Bold);
    nodes.push(
        Node::classed("line", "fig-stem fig-signal")
            .keyed("dial-stem")
            .between((x, 22.0), (x, LINE)),
    );
    nodes.push(label("dial-label", "fig-value", held(x, wide), 16.0, &text));
    nodes.push(dot("dial-dot", x, y.clamp(TOP, LINE)));
    nodes.extend(handle("dial", x, LINE));
    let most = ["at most ", &model.largest.text, " over the band"].concat();
    nodes.push(label("most", "fig-aside", 50.0, LINE + 42.0, &most));
    nodes
}
