//! How far a line of frequency reaches, in round numbers.

use crate::arithmetic::given;
use crate::control::Slider;
use crate::handle::kilohertz;
use crate::plot::Frame;
use crate::{FigureError, Input, Node, Place};
use superhet::quantities::range;
use superhet::units::{Kind, display};

/// The figures a reach may have before its zeros.
const ROUND: [f64; 5] = [1.0, 2.0, 4.0, 5.0, 8.0];

/// The smallest round number that is not under `least`.
pub(crate) fn round_up(least: f64) -> f64 {
    let mut power = 1.0;
    while power * 10.0 <= least {
        power *= 10.0;
    }
    let found = ROUND.iter().map(|figure| figure * power);
    found
        .into_iter()
        .find(|round| *round >= least)
        .unwrap_or(power * 10.0)
}

/// How far to each side of the middle a figure reaches: as typed for `span`, or about
/// `share` of the middle.
pub(crate) fn reach(input: &Input, middle: f64, share: f64) -> Result<f64, FigureError> {
    let Some(typed) = input.get("span") else {
        return Ok(round_up(middle * share));
    };
    let span = given(Kind::Frequency, input, "span", typed)?.value;
    let least = range::BANDWIDTH.least;
    if span >= least && span < middle * 0.9 {
        return Ok(span);
    }
    let sentence = [
        "span must be less than nine tenths of the middle (got ",
        &display::text(Kind::Frequency, span),
        ")",
    ];
    Err(FigureError::about("span", sentence.concat()))
}

/// A handle along a plot of hertz, in kHz at whole steps.
pub(crate) fn slider(frame: &Frame, hertz: f64) -> Slider {
    let (low, high) = (frame.across.0 / 1e3, frame.across.1 / 1e3);
    let step = if high - low <= 300.0 { 1.0 } else { 10.0 };
    let min = libm::ceil(low / step) * step;
    let max = libm::floor(high / step) * step;
    let place = Place {
        from: frame.x(min * 1e3),
        to: frame.x(max * 1e3),
        y: frame.bottom(),
    };
    Slider {
        place: Some(place),
        ..Slider::under((min as i32, max as i32, step as i32), hertz / 1e3, "kHz")
    }
}

/// The two ends of a plot of hertz and its middle, in kHz, under its axis.
pub(crate) fn scale(frame: &Frame) -> Vec<Node> {
    let (low, high) = frame.across;
    let tick = |hertz: f64| {
        let x = frame.x(hertz);
        Node::classed("line", "fig-tick").between((x, frame.bottom()), (x, frame.bottom() + 6.0))
    };
    let number = |x: f64, anchor: &str, text: &str| {
        let number = Node::classed("text", "fig-soft").at(x, frame.bottom() + 21.0);
        number.anchored(anchor).saying(text)
    };
    let middle = f64::midpoint(low, high);
    let last = [&kilohertz(high), " kHz"].concat();
    vec![
        tick(low),
        number(1.0, "start", &kilohertz(low)),
        tick(middle),
        number(frame.x(middle), "middle", &kilohertz(middle)),
        tick(high),
        number(99.0, "end", &last),
    ]
}

#[cfg(test)]
mod tests {
    use super::round_up;

    #[test]
    fn reaches_are_round() {
        for (least, round) in [
            (37.6, 40.0),
            (96.0, 100.0),
            (1.0, 1.0),
            (40e3, 40e3),
            (41e3, 50e3),
        ] {
            assert_eq!(round_up(least), round);
        }
    }
}
