//! Whether the handles of a figure come to a place where its task is done.

use figures::{Condition, Control, ControlKind, Input};

/// How many stops several handles move together at first.
const STRIDE: usize = 64;

/// Whether a reader can do a task with the figure's handles, which move in steps.
///
/// Each handle in turn is put where the least is missing; with one handle that tries
/// everything there is. Several are then moved together, by ever fewer stops, as long as
/// that helps.
pub(crate) fn can_be_done(name: &str, input: &Input, done: &Condition) -> bool {
    let Ok(view) = figures::view(name, input) else {
        return false;
    };
    let handles: Vec<Vec<Stop>> = view.controls.iter().map(stops).collect();
    let mut search = Search {
        at: vec![0; handles.len()],
        missing: f64::INFINITY,
        handles,
        place: (name, input),
        done,
    };
    for handle in 0..search.handles.len() {
        search.along(handle);
    }
    search.together();
    search.missing == 0.0
}

/// A parameter and what a handle sets it to.
type Stop = (&'static str, String);

/// The way to a place where a task is done.
struct Search<'a> {
    place: (&'a str, &'a Input),
    done: &'a Condition,
    handles: Vec<Vec<Stop>>,
    /// At which of its stops each handle stands where the least was missing.
    at: Vec<usize>,
    missing: f64,
}

impl Search<'_> {
    /// Keeps a place if less is missing there than anywhere before, and says so.
    fn look(&mut self, at: Vec<usize>) -> bool {
        let (name, input) = self.place;
        let mut input = input.clone();
        for (stops, stop) in self.handles.iter().zip(&at) {
            let (parameter, text) = &stops[*stop];
            input = input.with(parameter, text);
        }
        let view = figures::view(name, &input).ok();
        let short = view.and_then(|view| self.done.shortfall(&view).ok());
        let better = short.filter(|short| *short < self.missing);
        if let Some(short) = better {
            (self.at, self.missing) = (at, short);
        }
        better.is_some()
    }

    /// Puts one handle where the least is missing.
    fn along(&mut self, handle: usize) {
        for stop in 0..self.handles[handle].len() {
            if self.missing == 0.0 {
                return;
            }
            let mut at = self.at.clone();
            at[handle] = stop;
            self.look(at);
        }
    }

    /// Moves all handles at once, each by some stops up, down or not at all, as long as that
    /// helps; then by half as many.
    fn together(&mut self) {
        let mut stride = STRIDE;
        while stride > 0 && self.missing > 0.0 {
            let mut helped = false;
            for at in self.around(stride) {
                helped |= self.look(at);
            }
            if !helped {
                stride /= 2;
            }
        }
    }

    /// The places around the best one, so many stops away.
    fn around(&self, stride: usize) -> Vec<Vec<usize>> {
        let mut places = vec![Vec::new()];
        for (stops, at) in self.handles.iter().zip(&self.at) {
            let last = stops.len() - 1;
            let near = [*at, at.saturating_sub(stride), (at + stride).min(last)];
            let longer = |place: &Vec<usize>| near.map(|stop| [&place[..], &[stop]].concat());
            places = places.iter().flat_map(longer).collect();
        }
        places
    }
}

/// Every stop of a handle as the figure's input takes it, the far end first, since that is
/// where most tasks are done.
fn stops(control: &Control) -> Vec<Stop> {
    let texts: Vec<String> = match &control.kind {
        ControlKind::Choice { options, .. } => options
            .iter()
            .map(|(value, _)| (*value).to_owned())
            .collect(),
        ControlKind::Slider(slider) => {
            let steps = (slider.max - slider.min) / slider.step;
            let stop = |step: i32| {
                let at = f64::from(slider.min + step * slider.step) / f64::from(slider.parts);
                format!("{at} {}", slider.unit).trim().to_owned()
            };
            (0..=steps).rev().map(stop).collect()
        }
    };
    texts
        .into_iter()
        .map(|text| (control.parameter, text))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::can_be_done;
    use figures::{Condition, Input};

    fn can(name: &str, query: &str, done: &str) -> bool {
        let input = Input::parse(query).unwrap();
        can_be_done(name, &input, &Condition::parse(done).unwrap())
    }

    #[test]
    fn a_task_between_two_stops_cannot_be_done() {
        let line = "dial=918kHz&if=470kHz&side=above&move=dial";
        let there = "oscillator >= 1558.5 kHz and oscillator <= 1559.5 kHz";
        assert!(!can("frequency-line", line, there));
        assert!(can("frequency-line", line, "oscillator = 1560 kHz"));
        assert!(!can("frequency-line", line, "oscillator > 3 MHz"));
    }

    #[test]
    fn a_choice_and_several_handles_are_tried() {
        let below = "dial=1500kHz&if=125kHz&side=below&move=side";
        assert!(can("frequency-line", below, "image > 1606.5 kHz"));
        let wave = "carrier=1089kHz&audio=1kHz&depth=30%&move=audio,depth";
        assert!(can("am-wave", wave, "depth >= 80 % and audio >= 4.5 kHz"));
        assert!(!can("am-wave", wave, "depth > 300 %"));
        let tracking = "f1=600kHz&f2=950kHz&f3=1500kHz&if=470kHz&side=above&q=80&f-low=525kHz\
                        &f-high=1605kHz&dial=1200kHz&move=f1,f2,f3";
        assert!(can("tracking", tracking, "largest-tracking-error <= 6 kHz"));
        assert!(!can(
            "tracking",
            tracking,
            "largest-tracking-error <= 4 kHz"
        ));
    }
}
