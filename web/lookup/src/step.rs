//! One channel up or down, and the ends of the band.

use crate::form::{Find, Form};
use crate::open::box_and_unit;
use crate::solve::{intermediate, solve};
use crate::view::medium_wave;
use crate::words;
use alloc::string::String;
use superhet::quantities::bands::{Raster, band_at, bands};
use superhet::quantities::conversion::oscillator;
use superhet::units::Frequency;

/// Where the dial is turned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// To the next channel above.
    Up,
    /// To the next channel below.
    Down,
    /// To the lowest channel of the band.
    LowEnd,
    /// To the highest channel of the band.
    HighEnd,
}

/// Turns the dial. A sentence comes back where it would not turn.
pub fn step(form: &mut Form, step: Step) -> Option<String> {
    let Ok(solved) = solve(form) else {
        return ends_need_no_dial(form, step);
    };
    match target(form, solved.dial, step) {
        Ok(dial) => {
            turn(form, dial);
            None
        }
        Err(sentence) => Some(sentence),
    }
}

/// With nothing readable in the box there is no next channel, but medium wave has ends.
fn ends_need_no_dial(form: &mut Form, step: Step) -> Option<String> {
    let raster = medium_wave(form.region)?.raster;
    match step {
        Step::LowEnd => turn(form, raster.first()),
        Step::HighEnd => turn(form, raster.last()),
        Step::Up | Step::Down => return None,
    }
    None
}

fn target(form: &Form, dial: Frequency, step: Step) -> Result<Frequency, String> {
    let here = band_at(dial, form.region);
    let next = |raster: Raster| {
        if step == Step::Up {
            raster.up(dial)
        } else {
            raster.down(dial)
        }
    };
    match (step, here.or_else(|| medium_wave(form.region))) {
        (Step::LowEnd, Some(band)) => return Ok(band.raster.first()),
        (Step::HighEnd, Some(band)) => return Ok(band.raster.last()),
        _ => {}
    }
    if let Some(band) = here {
        return next(band.raster).ok_or_else(|| end_of(&words::band(band), step));
    }
    // Between bands: the nearest channel on that side, whichever band it is in.
    let all = bands(form.region).filter_map(|band| next(band.raster));
    let nearest = all.reduce(|a, b| if (a < b) == (step == Step::Up) { a } else { b });
    nearest.ok_or_else(|| end_of("the broadcast bands", step))
}

fn end_of(band: &str, step: Step) -> String {
    let end = if step == Step::Up {
        "highest"
    } else {
        "lowest"
    };
    ["no further: the ", end, " channel of ", band].concat()
}

/// Puts a dial setting into the box that is typed in.
fn turn(form: &mut Form, dial: Frequency) {
    if form.find == Find::Dial {
        let running = intermediate(form)
            .ok()
            .and_then(|(set, _)| oscillator(dial, set.frequency, form.side).ok());
        if let Some(running) = running {
            (form.oscillator, form.oscillator_unit) = box_and_unit(&words::frequency(running));
        }
    } else {
        (form.dial, form.dial_unit) = box_and_unit(&words::frequency(dial));
    }
}

#[cfg(test)]
mod tests {
    use super::{Step, step};
    use crate::form::{Find, Form, Unit};
    use superhet::quantities::bands::Region;

    fn at(dial: &str, region: Region) -> Form {
        Form {
            dial: dial.into(),
            region,
            ..Form::default()
        }
    }

    fn stepped(dial: &str, region: Region, way: Step) -> String {
        let mut form = at(dial, region);
        let said = step(&mut form, way);
        said.unwrap_or_else(|| form.dial + " " + form.dial_unit.symbol())
    }

    #[test]
    fn channels_follow_the_region() {
        assert_eq!(stepped("1200", Region::One, Step::Up), "1206 kHz");
        assert_eq!(stepped("1206", Region::One, Step::Up), "1215 kHz");
        assert_eq!(stepped("1200", Region::Two, Step::Up), "1210 kHz");
        assert_eq!(stepped("1200", Region::Two, Step::Down), "1190 kHz");
        assert_eq!(stepped("6 MHz", Region::Three, Step::Up), "6.005 MHz");
    }

    #[test]
    fn the_ends_of_the_band_the_dial_is_in() {
        assert_eq!(stepped("1200", Region::One, Step::LowEnd), "531 kHz");
        assert_eq!(stepped("1200", Region::Two, Step::HighEnd), "1700 kHz");
        assert_eq!(stepped("200", Region::One, Step::HighEnd), "279 kHz");
        assert_eq!(stepped("400", Region::One, Step::LowEnd), "531 kHz");
        assert_eq!(stepped("abc", Region::One, Step::HighEnd), "1602 kHz");
    }

    #[test]
    fn at_an_end_it_stays_and_says_so() {
        assert_eq!(
            stepped("1602", Region::One, Step::Up),
            "no further: the highest channel of medium wave"
        );
        assert_eq!(
            stepped("5905", Region::One, Step::Down),
            "no further: the lowest channel of the 49 m band"
        );
        assert_eq!(
            stepped("30000", Region::One, Step::Up),
            "no further: the highest channel of the broadcast bands"
        );
    }

    #[test]
    fn between_bands_it_goes_to_the_next_channel_on_that_side() {
        assert_eq!(stepped("400", Region::One, Step::Up), "531 kHz");
        assert_eq!(stepped("400", Region::One, Step::Down), "279 kHz");
        assert_eq!(stepped("3000", Region::Two, Step::Up), "3.205 MHz");
    }

    #[test]
    fn with_nothing_readable_the_box_stays_as_it_is() {
        let mut form = at("abc", Region::One);
        assert_eq!(step(&mut form, Step::Up), None);
        assert_eq!(form, at("abc", Region::One));
    }

    #[test]
    fn where_the_oscillator_is_typed_the_oscillator_moves() {
        let mut form = Form {
            find: Find::Dial,
            oscillator: "1670".into(),
            ..Form::default()
        };
        assert_eq!(step(&mut form, Step::Up), None);
        assert_eq!(
            (form.oscillator.as_str(), form.oscillator_unit),
            ("1676", Unit::Kilohertz)
        );
    }
}
