//! Strips of wave: how often the voltage swings at a point of the set.
//!
//! All strips have one time scale, so the eye can count: twice the frequency, twice the
//! swings. The programme is drawn as the slow rise and fall of the swings; real speech
//! changes hundreds of times more slowly than a carrier.

use crate::Node;
use crate::coordinate::{percent, pixels, push_whole, rounded};

/// The height of a strip in pixels.
const HEIGHT: f64 = 40.0;
/// The height of a strip in its own units: four to a pixel, so that a point stands where
/// it should.
const TALL: f64 = 160.0;
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
            .always("vector-effect", "non-scaling-stroke")
            .with("d", self.path(strip.width));
        let view_box = format!("0 0 {} {}", pixels(strip.width * UNITS), pixels(TALL));
        Node::new("svg")
            .at(strip.left, strip.middle - HEIGHT / 2.0)
            .with("width", percent(strip.width))
            .with("height", pixels(HEIGHT))
            .with("viewBox", view_box)
            .always("preserveAspectRatio", "none")
            .around(vec![path])
    }

    /// The path in whole units, each point relative to the one before: short to send.
    fn path(&self, width: f64) -> String {
        let end = rounded(width * UNITS);
        let step = self.step();
        let mut path = String::with_capacity(1024);
        path.push_str("M0 ");
        let mut before = (0, self.height_at(0.0));
        push_whole(&mut path, before.1);
        path.push('l');
        while before.0 < end {
            let across = (before.0 + step).min(end);
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

    /// The distance between two points of the path in units: about sixteen points a swing,
    /// and never less than two units.
    fn step(&self) -> i64 {
        let swing = match self.hertz {
            Some(hertz) => HERTZ_PER_PERCENT / hertz,
            None => PROGRAMME,
        };
        rounded(swing * UNITS / 16.0).clamp(2, 12)
    }

    /// The height at a place, in whole units from the strip's top.
    fn height_at(&self, place: f64) -> i64 {
        let programme = -DEPTH * sine(place / PROGRAMME + 0.25);
        let full = TALL / 2.0 * self.strength;
        let swing = match self.hertz {
            None => programme,
            Some(hertz) => {
                let carrier = sine(place * hertz / HERTZ_PER_PERCENT);
                carrier * (1.0 + if self.programme { programme } else { 0.0 }) / (1.0 + DEPTH)
            }
        };
        rounded(TALL / 2.0 - full * swing)
    }
}

/// The sine of a number of whole turns, to 0.002: Bhaskara's rational form of it, good
/// enough for a line on paper and a few bytes long.
///
/// With t the part of the half turn, 0 to 1: sin πt = 16·t(1−t)/(5 − 4·t(1−t)).
/// Source: Mahabhaskariya of Bhaskara I, 7th century, from memory; the bound is tested.
fn sine(turns: f64) -> f64 {
    let half_turns = 2.0 * (turns - libm::floor(turns));
    let (part, sign) = if half_turns < 1.0 {
        (half_turns, 1.0)
    } else {
        (half_turns - 1.0, -1.0)
    };
    let bow = part * (1.0 - part);
    sign * 16.0 * bow / (5.0 - 4.0 * bow)
}

#[cfg(test)]
mod tests {
    use super::{Wave, sine};

    #[test]
    fn the_sine_is_good_enough_to_draw() {
        for step in -2000..2000 {
            let turns = f64::from(step) / 777.0;
            let error = sine(turns) - libm::sin(core::f64::consts::TAU * turns);
            assert!(error.abs() < 0.002, "{turns} turns: off by {error}");
        }
    }

    #[test]
    fn a_strip_swings_as_often_as_its_frequency_says() {
        // 20 percent of the width at 2.3 MHz for each percent and hertz.
        let wave = |hertz| Wave {
            key: "",
            hertz: Some(hertz),
            programme: false,
            strength: 1.0,
        };
        for (hertz, swings) in [(460e3, 4), (1150e3, 10), (2300e3, 20)] {
            let heights: Vec<i64> = (0..2000)
                .map(|step| wave(hertz).height_at(f64::from(step) / 100.0) - 80)
                .filter(|height| *height != 0)
                .collect();
            let turns = heights
                .windows(2)
                .filter(|pair| pair[0].signum() != pair[1].signum());
            assert_eq!(turns.count(), 2 * swings - 1, "{hertz} Hz");
        }
    }
}
