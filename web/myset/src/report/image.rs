//! The image: for which stations it falls among broadcasts, and how weak it is.

use super::card::weaker;
use super::{Dial, found_or_dash, khz, work};
use crate::OwnSet;
use crate::paper::{Block, Piece};
use crate::words;
use superhet::units::Frequency;

/// The heading, where the image is among medium wave stations, and how weak it is.
pub(super) fn image(set: &OwnSet, dial: &Dial) -> Vec<Block> {
    vec![
        Block::Heading("The image".to_owned()),
        Block::says(among_stations(set, dial)),
        strength(set, dial),
    ]
}

fn among_stations(set: &OwnSet, dial: &Dial) -> String {
    let Some(band) = words::medium_wave(set.region) else {
        return String::new();
    };
    let on_dial = |at: &Frequency| dial.low <= *at && *at <= dial.high;
    let channels: Vec<Frequency> = band.raster.channels().filter(on_dial).collect();
    let inside: Vec<bool> = channels
        .iter()
        .map(|channel| {
            let image = work(set, "image", &[("dial", &words::typed(*channel))]);
            let found = image.ok().and_then(|image| image.found);
            found.is_some_and(|found| band.contains(Frequency::hz(found.value)))
        })
        .collect();
    let count = inside.iter().filter(|inside| **inside).count();
    let whole = channels.len();
    if count == 0 {
        return format!(
            "For none of the {whole} medium wave channels on this dial does the image fall inside medium wave."
        );
    }
    let all = if count == whole { "all" } else { "" };
    let ranges = words::list(&ranges(&channels, &inside));
    match all {
        "all" => format!(
            "For all {whole} medium wave channels on this dial the image falls inside medium wave too, where another station may be."
        ),
        _ => format!(
            "For {count} of the {whole} medium wave channels on this dial, {ranges}, the image falls inside medium wave too, where another station may be."
        ),
    }
}

/// "531 to 666 kHz", for each run of channels.
fn ranges(channels: &[Frequency], inside: &[bool]) -> Vec<String> {
    let mut runs: Vec<(Frequency, Frequency)> = Vec::new();
    for (index, channel) in channels.iter().enumerate() {
        let follows = index > 0 && inside[index - 1];
        match runs.last_mut() {
            _ if !inside[index] => {}
            Some(run) if follows => run.1 = *channel,
            _ => runs.push((*channel, *channel)),
        }
    }
    let text = |(low, high): &(Frequency, Frequency)| {
        if low == high {
            format!("{} kHz", khz(*low))
        } else {
            format!("{} to {} kHz", khz(*low), khz(*high))
        }
    };
    runs.iter().map(text).collect()
}

fn strength(set: &OwnSet, dial: &Dial) -> Block {
    let Some(q) = set.text("aerial-q") else {
        return Block::Needs(
            "How much weaker the image is than a station of the same strength needs the Q of the aerial circuit."
                .to_owned(),
        );
    };
    let at = |end: Frequency| found_or_dash(weaker(set, &words::typed(end), q));
    let circuits = match set.text("aerial-circuits") {
        Some("1") => "its one aerial circuit".to_owned(),
        Some(circuits) => format!("its {circuits} aerial circuits"),
        None => "one aerial circuit (how many there are is not known)".to_owned(),
    };
    Block::Says(vec![
        Piece::words(format!("By {circuits}, the image is ")),
        at(dial.low),
        Piece::words(format!(" weaker at {} and ", words::frequency(dial.low))),
        at(dial.high),
        Piece::words(format!(
            " weaker at {}, for a rod or loop and an exact alignment.",
            words::frequency(dial.high)
        )),
    ])
}

#[cfg(test)]
mod tests {
    use super::super::tests::set;
    use super::among_stations;
    use crate::report::dials;

    fn says(side: &str, intermediate: &str) -> String {
        let own = set(side, &[("if", intermediate)]);
        among_stations(&own, &dials(&own)[0])
    }

    /// By hand for 470 kHz above: 1606.5 − 940 = 666.5, and the last channel under that is 666.
    #[test]
    fn the_channels_with_an_image_among_stations_are_named() {
        assert_eq!(
            says("above", "470 kHz"),
            "For 16 of the 120 medium wave channels on this dial, 531 to 666 kHz, the image falls inside medium wave too, where another station may be."
        );
        assert!(says("above", "600 kHz").starts_with("For none of the 120"));
        // 526.5 + 250 = 776.5: from 783 up the image of an IF of 125 kHz below is inside.
        assert!(says("below", "125 kHz").contains("783 to 1602 kHz"));
    }
}
