//! Strips of wave: how often the voltage swings at a point of the set.
//!
//! All strips have one time scale, so the eye can count: twice the frequency, twice the
//! swings. The programme is drawn as the slow rise and fall of the swings; real speech
//! changes hundreds of times more slowly than a carrier.

use crate::Node;
use crate::coordinate::{percent, pixels, push_whole, rounded};
use libm::{cos, sin};

/// The height of a strip in pixels, also the height of its own scale.
const HEIGHT: f64 = 40.0;
/// Units of a strip's own scale for one percent of the drawing's width.
const UNITS: f64 = 20.0;
/// Frequency that swings once in one percent of the width.
const HERTZ_PER_PERCENT: f64 = 2.3e6;
/// The width, in percent, over which the programme rises and falls once.
const PROGRAMME: f64 = 23.0;
/// How deep the programme goes, as a fraction of the carrier.
const DEPTH: f64 = 0.6;

/// What a strip shows.
pub(super) struct Wave {
    /// Key of the strip's path.
    pub(super) key: &'static str,
    /// How often it swings; none for the programme alone.
    pub(super) hertz: Option<f64>,
    /// Whether the programme rides on it.
    pub(super) programme: bool,
    /// The height of the carrier as a share of the greatest that fits.
    pub(super) strength: f64,
}

/// Where a strip lies.
pub(super) struct Strip {
    /// Left edge in percent.
    pub(super) left: f64,
    /// Width in percent.
    pub(super) width: f64,
    /// The middle in pixels from the top.
    pub(super) middle: f64,
}

impl Wave {
    /// The strip as a node. It stretches with the drawing; its line does not.
    pub(super) fn node(&self, strip: &Strip) -> Node {
        let path = Node::classed("path", "fig-wave")
            .keyed(self.key)
            .with("vector-effect", "non-scaling-stroke")
            .with("d", self.path(strip.width));
        let view_box = format!("0 0 {} {}", pixels(strip.width * UNITS), pixels(HEIGHT));
        Node::new("svg")
            .with("x", percent(strip.left))
            .with("y", pixels(strip.middle - HEIGHT / 2.0))
            .with("width", percent(strip.width))
            .with("height", pixels(HEIGHT))
            .with("viewBox", view_box)
            .with("preserveAspectRatio", "none")
            .around(vec![path])
    }

    /// The path in whole units, each point relative to the one before: short to send.
    fn path(&self, width: f64) -> String {
        let end = rounded(width * UNITS);
        let mut path = String::with_capacity(1024);
        path.push_str("M0 ");
        let mut before = (0, self.height_at(0.0));
        push_whole(&mut path, before.1);
        path.push('l');
        while before.0 < end {
            let across = (before.0 + STEP).min(end);
            #[allow(clippy::cast_precision_loss)] // at most a few thousand units
            let height = self.height_at(across as f64 / UNITS);
            push_whole(&mut path, across - before.0);
            if height >= before.1 {
                path.push(' ');
            }
            push_whole(&mut path, height - before.1);
            path.push(' ');
            before = (across, height);
        }
        path.truncate(path.trim_end().len());
        path
    }

    /// The height at a place, in whole units from the strip's top.
    fn height_at(&self, place: f64) -> i64 {
        let turn = core::f64::consts::TAU;
        let programme = -DEPTH * cos(turn * place / PROGRAMME);
        let full = HEIGHT / 2.0 * self.strength;
        let swing = match self.hertz {
            None => programme,
            Some(hertz) => {
                let carrier = sin(turn * place * hertz / HERTZ_PER_PERCENT);
                carrier * (1.0 + if self.programme { programme } else { 0.0 }) / (1.0 + DEPTH)
            }
        };
        rounded(HEIGHT / 2.0 - full * swing)
    }
}

/// The distance between two points of a path in units: at least seven points a swing for
/// anything that a dial and an IF of these figures can make (2.3 MHz swings once in a
/// percent, 20 units).
const STEP: i64 = 3;
