//! The figure told in sentences and in a table.

use super::Model;
use super::line::{Line, Role};
use super::note::{Note, highest, is_heard_everywhere};
use crate::coordinate::thousandths;
use crate::{Cell, Quantity, Table};
use superhet::quantities::bands::{BandKind, band_at};
use superhet::units::{Frequency, Kind, display};

fn hertz(value: f64) -> String {
    display::text(Kind::Frequency, value)
}

pub(super) fn title(model: &Model) -> String {
    let dial = [
        "Map of the signals that reach the IF: with the dial at ",
        &model.tuning.signal.text,
        " the oscillator runs at ",
        &model.tuning.oscillator.text,
    ];
    let mut title = dial.concat();
    for line in &model.lines[1..] {
        if let Some(response) = line.now {
            let at = hertz(response.frequency.to_hz());
            title = [&title, ", ", &line.role.name(), " ", &at].concat();
        }
    }
    title
}

/// The line on which the sender is heard at this dial setting, and how far off it comes out.
pub(super) fn heard(model: &Model) -> Option<(&Line, f64)> {
    let sender = Frequency::hz(model.sender.as_ref()?.value);
    let mut nearest: Option<(&Line, f64)> = None;
    for line in &model.lines {
        let Some(response) = line.now else { continue };
        let off = response.beat_with(sender).to_hz();
        let nearer = nearest.is_none_or(|(_, least)| off < least);
        if off <= highest(&model.set) && nearer {
            nearest = Some((line, off));
        }
    }
    nearest
}

/// How the sender is heard; nothing where none is given.
pub(super) fn sender(model: &Model) -> Option<String> {
    let sender = ["sender on ", &model.sender.as_ref()?.text, ": "].concat();
    let Some((line, off)) = heard(model) else {
        return Some([&sender, "not heard here"].concat());
    };
    let by = by(line.role);
    Some([&sender, &by, ", ", &hertz(off), " off"].concat())
}

/// What brings a signal to the IF.
fn by(role: Role) -> String {
    match role {
        Role::Station => "as itself".to_owned(),
        Role::Image => "by the image".to_owned(),
        role => ["by ", &role.name()].concat(),
    }
}

/// The lowest note that the station can have from what is drawn, and how it moves.
pub(super) fn note(model: &Model) -> (String, String) {
    let set = &model.set;
    let own = model.own.iter().zip(["2 × IF", "3 × IF"]);
    let own = own.map(|(note, name)| (*note, ["by ", name].concat()));
    let lines = model.lines.iter().filter_map(|line| {
        let note = Note::of_line(set, line)?;
        is_heard_everywhere(set, note.at).then(|| (note, by(line.role)))
    });
    let mut lowest: Option<(Note, String)> = None;
    for (note, by) in own.chain(lines) {
        let lower = lowest
            .as_ref()
            .is_none_or(|(least, _)| note.pitch < least.pitch);
        if note.pitch <= highest(set) && lower {
            lowest = Some((note, by));
        }
    }
    match lowest {
        Some((note, by)) if note.pitch == 0.0 => (
            ["0 Hz, so no note, ", &by].concat(),
            ["it ", pace(note.pace)].concat(),
        ),
        Some((note, by)) => (
            ["note of ", &hertz(note.pitch), ", ", &by].concat(),
            ["it ", pace(note.pace)].concat(),
        ),
        None => ("no note from any of these".to_owned(), String::new()),
    }
}

/// How a note moves while the dial is turned and the station stands still.
fn pace(pace: u32) -> &'static str {
    const PACES: [&str; 6] = [
        "stays",
        "moves as fast as the dial",
        "moves twice as fast as the dial",
        "moves three times as fast as the dial",
        "moves four times as fast as the dial",
        "moves five times as fast as the dial",
    ];
    PACES[(pace as usize).min(PACES.len() - 1)]
}

/// How a signal on a line must move while the dial is turned.
fn movement(slope: f64) -> String {
    if slope == 0.0 {
        return "not at all".to_owned();
    }
    if slope == 1.0 {
        return "as far as the dial".to_owned();
    }
    let back = if slope < 0.0 { ", backwards" } else { "" };
    [&thousandths(slope.abs()), " times as far", back].concat()
}

/// What follows from a setting, for a screen reader.
pub(super) fn spoken(model: &Model) -> String {
    let (note, pace) = note(model);
    let mut said = ["oscillator ", &model.tuning.oscillator.text].concat();
    for more in [sender(model).unwrap_or_default(), note, pace] {
        if !more.is_empty() {
            said = [&said, "; ", &more].concat();
        }
    }
    said
}

pub(super) fn sentences(model: &Model) -> String {
    let (low, high) = model.frame.across;
    let tuning = &model.tuning;
    let mut parts = vec![
        [
            "Across, the dial from ",
            &hertz(low),
            " to ",
            &hertz(high),
            "; upward, signals up to ",
            &hertz(model.frame.down.0),
            ", with the broadcast bands as strips. Each line is a signal that reaches the IF of ",
            &tuning.intermediate.text,
            ", for every dial setting. The steeper the line, the faster that signal's place moves when the \
             dial is turned; a level one does not move. At ",
            &tuning.signal.text,
            " the oscillator runs ",
            tuning.side.name(),
            " the station, at ",
            &tuning.oscillator.text,
            ". The lines are then at: ",
        ]
        .concat(),
    ];
    let places = model.lines.iter().filter_map(|line| {
        let at = line.now?.frequency.to_hz();
        Some([&line.role.name(), " ", &hertz(at)].concat())
    });
    parts.push(places.collect::<Vec<_>>().join(", "));
    let [twice, thrice] = &model.own;
    parts.push(
        [
            ". Two levels more are harmonics of the IF that the set makes by itself: 2 × IF ",
            &hertz(twice.at),
            " and 3 × IF ",
            &hertz(thrice.at),
            ".",
        ]
        .concat(),
    );
    if let Some(sender) = &model.sender {
        let how = match heard(model) {
            Some((line, off)) => ["is heard ", &by(line.role), ", ", &hertz(off), " off."].concat(),
            None => "is not heard at this setting.".to_owned(),
        };
        let level = [
            " A third is that of the sender on ",
            &sender.text,
            ", which ",
            &how,
        ];
        parts.push(level.concat());
    }
    let (note, pace) = note(model);
    parts.push([" At this setting: ", &note].concat());
    if !pace.is_empty() {
        parts.push(["; ", &pace].concat());
    }
    parts.push(".".to_owned());
    parts.concat()
}

/// Every line and level, then the channel beside the station.
pub(super) fn table(model: &Model) -> Table {
    let mut rows: Vec<Vec<Cell>> = model
        .lines
        .iter()
        .map(|line| line_row(model, line))
        .collect();
    let fixed = |head: &str, note: Option<&Note>, moves: &str| {
        let mut row = vec![Cell::words(head)];
        let at = note.map_or("none".to_owned(), |note| hertz(note.at));
        row.push(Cell::words(at));
        row.push(Cell::words(note.map_or("", |note| band(model, note.at))));
        row.push(Cell::words(moves));
        let heard = note.filter(|note| note.pitch <= highest(&model.set));
        row.extend(note_cells(heard));
        row
    };
    let own = model.own.iter().zip(["2 × IF", "3 × IF"]);
    rows.extend(own.map(|(note, head)| fixed(head, Some(note), "not at all")));
    rows.push(fixed(
        "next channel",
        model.neighbour.as_ref(),
        "not at all",
    ));
    Table {
        caption: "The signals that reach the IF, and the notes they make".to_owned(),
        headings: vec![
            "what",
            "signal",
            "which is in",
            "its place moves",
            "note",
            "the note",
        ],
        rows,
    }
}

fn line_row(model: &Model, line: &Line) -> Vec<Cell> {
    let head = Cell::words(line.role.name());
    let Some(response) = line.now else {
        let none = |text: &str| Cell::words(text);
        return vec![head, none("none"), none(""), none(""), none(""), none("")];
    };
    let at = response.frequency.to_hz();
    let name = match line.role {
        Role::Station => "dial",
        Role::Image => "image",
        Role::Breakthrough => "difference",
        Role::Product(..) => "spurious",
    };
    let signal = Quantity {
        name,
        kind: Kind::Frequency,
        value: at,
        text: hertz(at),
    };
    let note = Note::of_line(&model.set, line);
    let mut row = vec![
        head,
        Cell::result(&signal),
        Cell::words(match &note {
            Some(note) => [band(model, at), ", next to ", &hertz(note.at)].concat(),
            None => band(model, at).to_owned(),
        }),
        Cell::words(movement(response.place_slope())),
    ];
    row.extend(note_cells(note.as_ref()));
    row
}

fn note_cells(note: Option<&Note>) -> [Cell; 2] {
    match note {
        Some(note) => [Cell::words(hertz(note.pitch)), Cell::words(pace(note.pace))],
        None => [Cell::words("none"), Cell::words("")],
    }
}

/// The broadcast band that a frequency lies in.
fn band(model: &Model, at: f64) -> &'static str {
    match band_at(Frequency::hz(at), model.set.region) {
        Some(band) if band.kind == BandKind::Tropical => "a tropical band",
        Some(band) => band.name,
        None => "no broadcast band",
    }
}
