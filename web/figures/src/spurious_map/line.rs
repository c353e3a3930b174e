//! The lines of the map: for each response, the signal that reaches the IF.

use super::Set;
use crate::coordinate::pixels;
use crate::plot::Frame;
use superhet::quantities::conversion::Sign;
use superhet::quantities::spurious_responses::{Response, ResponseKind, response};
use superhet::units::Frequency;

/// Dial settings at which a line is worked out: it is straight, but for one turn at most.
const SAMPLES: usize = 25;

/// What a line stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Role {
    Station,
    Image,
    Breakthrough,
    /// Harmonics of oscillator and signal, and the sign of the IF.
    Product(u32, u32, Sign),
}

/// A response over the dial.
pub(super) struct Line {
    pub(super) role: Role,
    /// At the dial setting; none where it would be at 0 Hz.
    pub(super) now: Option<Response>,
    /// Dial settings and signals along the line, in hertz.
    pub(super) places: Vec<f64>,
    pub(super) signals: Vec<f64>,
}

/// All lines of a set over the dial that a frame shows: the three that have a name, then the
/// products up to the set's order.
pub(super) fn lines(set: &Set, frame: &Frame) -> Vec<Line> {
    let at = |dial, harmonics| {
        // Where there is no oscillator there is no response either.
        response(Frequency::hz(dial), set.intermediate, set.side, harmonics).unwrap_or_default()
    };
    let minus = at(set.dial, (1, 1, Sign::Minus));
    let is_station = minus.is_some_and(|minus| minus.kind == ResponseKind::Wanted);
    let (station, image) = if is_station {
        (Sign::Minus, Sign::Plus)
    } else {
        (Sign::Plus, Sign::Minus)
    };
    let line = |role, harmonics| {
        let mut line = Line {
            role,
            now: at(set.dial, harmonics),
            places: Vec::with_capacity(SAMPLES),
            signals: Vec::with_capacity(SAMPLES),
        };
        let (low, high) = frame.across;
        for sample in 0..SAMPLES {
            let dial = low + (high - low) * sample as f64 / (SAMPLES - 1) as f64;
            if let Some(response) = at(dial, harmonics) {
                line.places.push(dial);
                line.signals.push(response.frequency.to_hz());
            }
        }
        line
    };
    let mut lines = vec![
        line(Role::Station, (1, 1, station)),
        line(Role::Image, (1, 1, image)),
        line(Role::Breakthrough, (0, 1, Sign::Plus)),
    ];
    for m in 0..set.order {
        for n in 1..=set.harmonics.min(set.order - m) {
            for sign in [Sign::Plus, Sign::Minus] {
                let is_named = n == 1 && m < 2;
                // Without the oscillator both signs are the same place.
                if !is_named && (m > 0 || sign == Sign::Plus) {
                    lines.push(line(Role::Product(m, n, sign), (m, n, sign)));
                }
            }
        }
    }
    lines
}

impl Role {
    /// The key of its line, and the stem of those of its name and its dot.
    pub(super) fn key(self) -> String {
        match self {
            Self::Station => "station".to_owned(),
            Self::Image => "image".to_owned(),
            Self::Breakthrough => "intermediate".to_owned(),
            Self::Product(m, n, sign) => {
                let sign = if sign == Sign::Plus { "plus" } else { "minus" };
                [&times(m), "-", &times(n), "-", sign].concat()
            }
        }
    }

    /// Its name on the drawing, `(m·osc ± IF) ÷ n` in short; as many harmonics of the one as
    /// of the other put it a part of the IF beside the oscillator.
    pub(super) fn name(self) -> String {
        let (m, n, sign) = match self {
            Self::Station => return "station".to_owned(),
            Self::Image => return "image".to_owned(),
            Self::Breakthrough => return "IF".to_owned(),
            Self::Product(m, n, sign) => (m, n, sign),
        };
        let sign = if sign == Sign::Plus { " + " } else { " − " };
        let part = ["", "½ ", "⅓ ", "¼ "][n.saturating_sub(1).min(3) as usize];
        match m {
            0 => [part, "IF"].concat(),
            _ if m == n => ["osc", sign, part, "IF"].concat(),
            1 => [part, "(osc", sign, "IF)"].concat(),
            _ if n == 1 => [&times(m), " × osc", sign, "IF"].concat(),
            _ => [part, "(", &times(m), " × osc", sign, "IF)"].concat(),
        }
    }
}

/// A small whole number.
fn times(number: u32) -> String {
    pixels(f64::from(number))
}
