//! How a typed figure was read, and what else it could be.

use crate::dial;
use lookup::{Find, Form, Unit, look_up, view};
use superhet::quantities::bands::Region;

#[test]
fn a_typed_unit_wins_over_the_button() {
    let form = Form {
        dial_unit: Unit::Metres,
        ..dial("1.2 MHz")
    };
    assert_eq!(view(&form).answer.text, "1670 kHz");
    assert_eq!(view(&form).dial_reading, "read as 1200 kHz");
}

#[test]
fn metres_show_the_exact_frequency_and_what_an_old_dial_means() {
    let form = Form {
        dial_unit: Unit::Metres,
        ..dial("250")
    };
    let view = view(&form);
    assert_eq!(view.dial_reading, "read as 1199.17 kHz");
    assert!(
        view.notes
            .dial
            .starts_with("250 m is 1199.17 kHz by the exact speed of light"),
        "{}",
        view.notes.dial
    );
    assert!(
        view.notes.dial.ends_with("means 1200 kHz by it."),
        "{}",
        view.notes.dial
    );
    let offer = view.offer.expect("what an old dial means");
    assert_eq!(
        (offer.says.as_str(), offer.text.as_str()),
        ("An old dial means 1200 kHz: use that", "1200 kHz")
    );
}

#[test]
fn kilohertz_show_what_an_old_dial_prints() {
    let notes = view(&dial("1200")).notes;
    assert_eq!(
        notes.dial,
        "1200 kHz is 249.8 m; an old dial, drawn with 300 000 km/s, prints 250 m."
    );
}

#[test]
fn a_comma_that_parts_thousands_says_what_that_is_in_megahertz() {
    let view_of = |text| view(&dial(text));
    assert_eq!(
        view_of("1,200").dial_reading,
        "read as 1200 kHz, that is 1.2 MHz"
    );
    assert_eq!(view_of("1,200").offer, None, "1.2 kHz is no dial setting");
    let by_oscillator = view(&Form {
        find: Find::Dial,
        oscillator: "1,665".into(),
        ..dial("")
    });
    assert_eq!(
        (
            by_oscillator.answer.text.as_str(),
            by_oscillator.oscillator_reading.as_str()
        ),
        ("1195 kHz", "read as 1665 kHz, that is 1.665 MHz")
    );
    assert_eq!(view(&dial("0,909 MHz")).answer.text, "1379 kHz");
    assert_eq!(view(&dial("0,909 MHz")).offer, None);
    assert_eq!(view(&dial("1,2 MHz")).offer, None);
}

#[test]
fn a_comma_with_one_reading_in_range_is_read_so_and_told() {
    for (typed, unit, reading, kept) in [
        (
            "9,545",
            Unit::Megahertz,
            "read as 9.545 MHz, with a decimal comma",
            "9.545 MHz",
        ),
        (
            "1,200",
            Unit::Megahertz,
            "read as 1200 kHz, with a decimal comma",
            "1200 kHz",
        ),
        (
            "1,008 MHz",
            Unit::Kilohertz,
            "read as 1008 kHz, with a decimal comma",
            "1008 kHz",
        ),
    ] {
        let view = view(&Form {
            dial_unit: unit,
            ..dial(typed)
        });
        assert_eq!(view.dial_reading, reading);
        assert_eq!(view.offer, None, "{typed}");
        assert_eq!(view.keep.map(|kept| kept.dial), Some(kept.into()));
    }
}

#[test]
fn metres_that_are_also_a_place_in_kilohertz_offer_it() {
    let offers = |text: &str, dial_unit, region| {
        let view = view(&Form {
            dial_unit,
            region,
            ..dial(text)
        });
        (
            view.offer.map(|offer| offer.text),
            view.second_offer.map(|offer| offer.says),
        )
    };
    let long_wave = offers("198", Unit::Metres, Region::One);
    assert_eq!(long_wave.1, Some("198 kHz?".into()));
    assert_eq!(
        offers("200", Unit::Metres, Region::One).0,
        Some("1500 kHz".into())
    );
    assert_eq!(
        offers("198", Unit::Metres, Region::Two).1,
        None,
        "no long wave there"
    );
    assert_eq!(
        offers("198 m", Unit::Metres, Region::One).1,
        None,
        "the unit was typed"
    );
    assert_eq!(offers("198", Unit::Kilohertz, Region::One), (None, None));
}

#[test]
fn the_if_box_says_how_it_was_read_or_which_if_is_used() {
    assert_eq!(view(&dial("1200")).intermediate_reading, "read as 470 kHz");
    assert_eq!(
        view(&Form::default()).intermediate_reading,
        "empty: the example's 470 kHz"
    );
}

#[test]
fn a_typed_unit_lights_its_button() {
    let reply = look_up("do=show\ndial=9.545MHz\ndial-unit=kHz\nif=470");
    assert!(reply.contains("field\tdial-unit\tMHz\n"), "{reply}");
    let bare = look_up("do=show\ndial=1200\ndial-unit=kHz\nif=470");
    assert!(!bare.contains("field\tdial-unit"), "{bare}");
}
