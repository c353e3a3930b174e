//! The drawing on the first page: a strip of the band, and one tuned response inked over it.
//!
//! An illustration without numbers. Each station stands at its full height in a thin line;
//! the solid part is what a pair of tuned circuits would leave of it. Shape of the curve:
//! 1/(1 + x²), x the distance from the peak in half widths: two alike circuits, one after the
//! other, near their resonance (the square of 1/√(1 + x²)).

use maud::{Markup, html};
use std::fmt::Write as _;

const WIDTH: u32 = 328;
const HEIGHT: u32 = 176;
/// The line the stations stand on, in units from the top.
const BENCH: f64 = 148.0;
/// The height of the strongest station, and of the curve.
const FULL: f64 = 116.0;
/// From one station's place to the next.
const STEP: f64 = 20.0;
/// The curve's half width at half height: it takes one station in and leaves its neighbours
/// a third of their height.
const HALF_WIDTH: f64 = 13.0;
/// How strong each station arrives, left to right; 0 is an empty place.
const STATIONS: [f64; 15] = [
    0.34, 0.62, 0.0, 0.28, 0.88, 0.45, 0.0, 0.7, 0.93, 0.78, 0.0, 0.38, 0.97, 0.22, 0.55,
];
/// The wanted one among them.
const WANTED: usize = 8;

/// The drawing.
pub(super) fn drawing() -> Markup {
    let view_box = format!("0 0 {WIDTH} {HEIGHT}");
    html! {
        figure.strip {
            svg viewBox=(view_box) role="img" aria-labelledby="strip-title" {
                title #strip-title {
                    "A strip of the band with a dozen stations side by side. One curve rises "
                    "over a single station; of all the others it leaves little."
                }
                path.thin d=(lines(|strength, _| strength)) {}
                path.bench d=(format!("M0 {BENCH}H{WIDTH}")) {}
                path.thick d=(lines(|strength, x| strength * response(x))) {}
                path.glow d=(curve()) {}
                path.curve d=(curve()) {}
            }
            figcaption { "Many stations reach the aerial. A receiver must keep one." }
        }
    }
}

/// Where a station stands.
fn place(index: u32) -> f64 {
    24.0 + STEP * f64::from(index)
}

/// What the tuned pair leaves of a signal at `x`.
fn response(x: f64) -> f64 {
    let wanted = u32::try_from(WANTED).unwrap_or_default();
    let distance = (x - place(wanted)) / HALF_WIDTH;
    1.0 / (1.0 + distance * distance)
}

/// An upright line for each station, as high as `height` of its strength and place.
fn lines(height: impl Fn(f64, f64) -> f64) -> String {
    let mut path = String::new();
    for (index, strength) in (0..).zip(STATIONS) {
        if strength > 0.0 {
            let x = place(index);
            let top = FULL * height(strength, x);
            // Writing to a String cannot fail.
            let _ = write!(path, "M{x} {BENCH}v-{top:.1}");
        }
    }
    path
}

/// The response as a line from edge to edge.
fn curve() -> String {
    let points: Vec<String> = (0..=WIDTH)
        .step_by(2)
        .map(f64::from)
        .map(|x| format!("{x} {:.1}", BENCH - FULL * response(x)))
        .collect();
    format!("M{}", points.join(" "))
}

#[cfg(test)]
mod tests {
    use super::{HALF_WIDTH, STEP, WANTED, place, response};

    /// 1/(1 + x²) by hand: 1 at the peak, 1/2 one half width off, and a neighbour at
    /// x = 20/13 keeps 169/569 = 0.297 of its height.
    #[test]
    fn the_wanted_station_keeps_its_height_and_its_neighbours_a_third() {
        let wanted = place(u32::try_from(WANTED).unwrap());
        assert!((response(wanted) - 1.0).abs() < 1e-12);
        assert!((response(wanted + HALF_WIDTH) - 0.5).abs() < 1e-12);
        assert!((response(wanted - STEP) - 169.0 / 569.0).abs() < 1e-12);
    }
}
