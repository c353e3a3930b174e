//! The link that opens what is shown, and the card of the whole band.

use crate::dial;
use lookup::{Find, Form, Rows, Unit, view};
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

#[test]
fn the_link_opens_what_is_shown() {
    let link = |form: &Form| view(form).link.expect("a link");
    assert_eq!(
        link(&dial("1,200 kHz")),
        "dial=1,200kHz&if=470kHz&side=above&region=1"
    );
    let by_oscillator = Form {
        find: Find::Dial,
        oscillator: "1.67".into(),
        ..dial("")
    };
    let by_oscillator = Form {
        oscillator_unit: Unit::Megahertz,
        side: Side::Below,
        ..by_oscillator
    };
    assert_eq!(
        link(&by_oscillator),
        "oscillator=1.67MHz&if=470kHz&side=below&region=1"
    );
    let both = Form {
        find: Find::Intermediate,
        oscillator: "1670 kc/s".into(),
        region: Region::Three,
        ..dial("1200")
    };
    assert_eq!(
        link(&both),
        "dial=1200kHz&oscillator=1670kc%2Fs&side=above&region=3"
    );
}

#[test]
fn the_card_has_the_bands_ends_and_round_figures() {
    let card = view(&dial("1200")).card.expect("a card");
    assert_eq!(card.title, "Medium wave, 526.5 to 1606.5 kHz");
    assert_eq!(card.set, "IF 470 kHz, oscillator above, Region 1");
    assert_eq!(
        card.whistles,
        "Harmonics of the IF whistle at 940 kHz (2nd) and 1410 kHz (3rd)."
    );
    let settings: Vec<&str> = card.rows.iter().map(|row| row.dial.as_str()).collect();
    assert_eq!(settings.len(), 24);
    assert_eq!(
        (settings[0], settings[1], settings[2], settings[23]),
        ("531", "550", "600", "1602")
    );
    let row = &card.rows[2];
    assert_eq!(
        (
            row.metres.as_str(),
            row.oscillator.as_str(),
            row.image.as_str()
        ),
        ("500.0", "1070", "1540")
    );
    assert_eq!(row.heard, "medium wave");
}

#[test]
fn the_card_follows_dial_region_and_rows() {
    let card = |form: &Form| view(form).card.expect("a card");
    let long_wave = card(&dial("200"));
    assert_eq!(long_wave.title, "Long wave, 148.5 to 283.5 kHz");
    let every = card(&Form {
        rows: Rows::EveryChannel,
        ..dial("1200")
    });
    assert_eq!(
        (every.rows.len(), every.rows[1].dial.as_str()),
        (120, "540")
    );
    let americas = card(&Form {
        rows: Rows::EveryChannel,
        region: Region::Two,
        ..dial("1200")
    });
    assert_eq!(americas.rows.len(), 117);
    assert_eq!(card(&dial("6.1 MHz")).title, "49 m, 5.9 to 6.2 MHz");
    assert_eq!(
        card(&dial("400")).title,
        "Medium wave, 526.5 to 1606.5 kHz",
        "outside every band"
    );
}

#[test]
fn a_card_row_without_an_oscillator_has_dashes() {
    let form = Form {
        side: Side::Below,
        intermediate: "600".into(),
        ..dial("1200")
    };
    let view = view(&form);
    assert!(view.problem.is_some(), "twice the IF: the image is at 0 Hz");
    let card = view.card.expect("the card needs no dial setting");
    let (low, high) = card.rows.split_at(3);
    assert!(
        low.iter()
            .all(|row| row.oscillator == "–" && row.image == "–" && row.heard.is_empty()),
        "{low:?}"
    );
    assert_eq!(
        (high[0].dial.as_str(), high[0].oscillator.as_str()),
        ("650", "50")
    );
}
