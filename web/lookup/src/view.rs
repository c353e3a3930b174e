//! Everything the page shows, worked out from what stands in its form.

use crate::card::{Card, CardFor, beside, card};
use crate::form::{Find, Form, Rows};
use crate::link;
use crate::notes::{Notes, notes, spoken};
use crate::open::intermediate_box;
use crate::problem::{Field, Offer, Problem};
use crate::reading::{Typed, kilohertz_instead};
use crate::solve::{Solved, intermediate, read_dial, read_oscillator, solve};
use crate::whistles::{Whistle, whistles};
use crate::words;
use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;
use superhet::quantities::bands::{Band, BandKind, Region, band_at, bands, place_of};
use superhet::quantities::conversion::{Side, old_dial_frequency};
use superhet::units::Frequency;

/// What stands where no answer is.
const NONE: &str = "–";

/// A value and its text.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// The value in hertz; none while there is no answer.
    pub value: Option<Frequency>,
    /// As it is read.
    pub text: String,
}

impl Shown {
    fn some(value: Frequency) -> Self {
        Self {
            value: Some(value),
            text: words::frequency(value),
        }
    }

    /// The text in two parts, so that the digits can be large: ("1670", "kHz").
    #[must_use]
    pub fn number_and_unit(&self) -> (&str, &str) {
        self.text.split_once(' ').unwrap_or((&self.text, ""))
    }

    fn none() -> Self {
        Self {
            value: None,
            text: NONE.to_owned(),
        }
    }
}

/// The set as it is kept for the next visit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kept {
    /// The dial setting with its unit.
    pub dial: String,
    /// The IF with its unit.
    pub intermediate: String,
    /// The side.
    pub side: Side,
    /// The Region.
    pub region: Region,
}

/// The page.
#[derive(Debug, Clone, PartialEq)]
pub struct View {
    /// Which of the three the answer is.
    pub finds: Field,
    /// The answer.
    pub answer: Shown,
    /// IF and side, which stand beside every answer.
    pub beside: String,
    /// Whether no IF has been chosen yet: then the page asks for it there.
    pub example: bool,
    /// The set in one line, on the button that opens it.
    pub set: String,
    /// The image.
    pub image: Shown,
    /// What is found there, in a few words.
    pub image_place: String,
    /// Why there is no answer.
    pub problem: Option<Problem>,
    /// How the dial box was read; empty where nothing is typed there.
    pub dial_reading: String,
    /// How the oscillator box was read, likewise.
    pub oscillator_reading: String,
    /// How the IF box was read; where it is empty, which IF is used.
    pub intermediate_reading: String,
    /// Another reading of what was typed, or the worked-out set to be taken.
    pub offer: Option<Offer>,
    /// One more reading.
    pub second_offer: Option<Offer>,
    /// The sentences under the answer.
    pub notes: Notes,
    /// Harmonics of the IF near the setting.
    pub whistles: Vec<Whistle>,
    /// The card of the band the dial is in, or of medium wave.
    pub card: Option<Card>,
    /// The answer in one sentence, for screen readers.
    pub spoken: String,
    /// What to keep, once an IF has been chosen.
    pub keep: Option<Kept>,
    /// The query of a link that opens the page with this answer.
    pub link: Option<String>,
}

impl View {
    /// Puts a few words beside the box that is typed in, and before those who listen.
    pub(crate) fn say(&mut self, words: &str) {
        let reading = if self.finds == Field::Dial {
            &mut self.oscillator_reading
        } else {
            &mut self.dial_reading
        };
        *reading = words.to_owned();
        self.spoken = words.to_owned();
    }
}

/// Works the page out.
#[must_use]
pub fn view(form: &Form) -> View {
    match solve(form) {
        Ok(solved) => answered(form, &solved),
        Err(problem) => unanswered(form, problem),
    }
}

fn answered(form: &Form, solved: &Solved) -> View {
    let example = is_example(form);
    let finds = finds(form.find);
    let found = match finds {
        Field::Dial => solved.dial,
        Field::Oscillator => solved.oscillator,
        Field::Intermediate => solved.intermediate,
    };
    let near = whistles(solved.dial, solved.intermediate);
    View {
        finds,
        answer: Shown::some(found),
        beside: beside_answer(form, solved),
        example,
        set: set_line(solved.intermediate, solved.side, form),
        image: Shown::some(solved.image),
        image_place: words::short_place(place_of(solved.image, form.region)),
        problem: None,
        dial_reading: reading(form.find != Find::Dial, || read_dial(form)),
        oscillator_reading: reading(form.find != Find::Oscillator, || read_oscillator(form)),
        intermediate_reading: reading(form.find != Find::Intermediate, || set_of(form)),
        offer: old_dial(solved).or_else(|| take_set(form, solved)),
        second_offer: kilohertz_instead(form).filter(|_| form.find != Find::Dial),
        notes: notes(solved, &near, form.region),
        whistles: near,
        card: card_at(Some(solved.dial), solved.intermediate, solved.side, form),
        spoken: spoken(finds.title(), &words::frequency(found), solved),
        keep: (!example && form.find != Find::Intermediate).then(|| kept(form, solved)),
        link: Some(link::query(form, solved)),
    }
}

fn unanswered(form: &Form, problem: Problem) -> View {
    let set = if form.find == Find::Intermediate {
        None
    } else {
        intermediate(form).ok()
    };
    let line = match &set {
        Some((typed, _)) => set_line(typed.frequency, form.side, form),
        None => ["Oscillator ", form.side.word(), ", ", form.region.name()].concat(),
    };
    let card = set
        .as_ref()
        .and_then(|(typed, _)| card_at(None, typed.frequency, form.side, form));
    View {
        finds: finds(form.find),
        answer: Shown::none(),
        beside: set.map_or_else(String::new, |(typed, _)| beside(typed.frequency, form.side)),
        example: is_example(form),
        set: line,
        image: Shown::none(),
        image_place: String::new(),
        dial_reading: String::new(),
        oscillator_reading: String::new(),
        intermediate_reading: String::new(),
        offer: problem.offer.clone(),
        second_offer: None,
        notes: Notes::default(),
        whistles: Vec::new(),
        card,
        spoken: problem.says.clone(),
        problem: Some(problem),
        keep: None,
        link: None,
    }
}

/// No IF was chosen, and none is being worked out.
fn is_example(form: &Form) -> bool {
    form.find != Find::Intermediate && form.intermediate.trim().is_empty()
}

const fn finds(find: Find) -> Field {
    match find {
        Find::Oscillator => Field::Oscillator,
        Find::Dial => Field::Dial,
        Find::Intermediate => Field::Intermediate,
    }
}

fn beside_answer(form: &Form, solved: &Solved) -> String {
    let side = solved.side.word();
    match form.find {
        Find::Oscillator if is_example(form) => [side, " the dial setting"].concat(),
        Find::Oscillator | Find::Dial if !is_example(form) => {
            beside(solved.intermediate, solved.side)
        }
        _ => ["oscillator ", side].concat(),
    }
}

/// The set in one line; without an IF it asks for one.
fn set_line(intermediate: Frequency, side: Side, form: &Form) -> String {
    let asks = if is_example(form) {
        "Choose your IF; now "
    } else if form.find == Find::Intermediate {
        "Worked out, not kept: "
    } else {
        ""
    };
    [asks, &beside(intermediate, side), ", ", form.region.name()].concat()
}

/// How a box was read, where it is one that is typed in.
fn reading(typed: bool, read: impl FnOnce() -> Result<Typed, Problem>) -> String {
    let read = typed.then(read).and_then(Result::ok);
    read.map_or_else(String::new, |typed| typed.says)
}

fn set_of(form: &Form) -> Result<Typed, Problem> {
    intermediate(form).map(|(set, _)| set)
}

/// A set that was worked out becomes the reader's own only by a press.
fn take_set(form: &Form, solved: &Solved) -> Option<Offer> {
    let (text, side) = worked_out(form)?;
    let same = form.side == side && form.intermediate == text;
    (!same).then(|| Offer {
        says: ["Use as my set: ", &beside(solved.intermediate, side)].concat(),
        field: Field::Intermediate,
        text,
    })
}

/// The IF box and the side of a set that was worked out.
pub(crate) fn worked_out(form: &Form) -> Option<(String, Side)> {
    let solved = solve(form)
        .ok()
        .filter(|_| form.find == Find::Intermediate)?;
    Some((intermediate_box(&solved.intermediate_text), solved.side))
}

/// A setting in metres comes from an old dial more often than from a calculation.
fn old_dial(solved: &Solved) -> Option<Offer> {
    let meant = old_dial_frequency(solved.dial.to_wavelength());
    solved.typed_in_metres.then(|| {
        let text = words::frequency(meant);
        Offer {
            says: ["An old dial means ", &text, ": use that"].concat(),
            field: Field::Dial,
            text,
        }
    })
}

fn card_at(
    dial: Option<Frequency>,
    intermediate: Frequency,
    side: Side,
    form: &Form,
) -> Option<Card> {
    let band = dial
        .and_then(|dial| band_at(dial, form.region))
        .or_else(|| medium_wave(form.region))?;
    Some(card(
        band,
        CardFor {
            intermediate,
            side,
            region: form.region,
        },
        form.rows,
    ))
}

/// The band that is meant where the dial is in none.
pub(crate) fn medium_wave(region: Region) -> Option<&'static Band> {
    bands(region).find(|band| band.kind == BandKind::MediumWave)
}

fn kept(form: &Form, solved: &Solved) -> Kept {
    Kept {
        dial: solved.dial_text.clone(),
        intermediate: solved.intermediate_text.clone(),
        side: solved.side,
        region: form.region,
    }
}

/// The card of the common IFs for a page without a program: medium wave, round figures.
#[must_use]
pub fn plain_card(intermediate: Frequency) -> Option<Card> {
    let set = CardFor {
        intermediate,
        side: Side::Above,
        region: Region::One,
    };
    medium_wave(Region::One).map(|band| card(band, set, Rows::Round))
}
