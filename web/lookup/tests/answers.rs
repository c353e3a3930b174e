//! What the page shows for what stands in its form.

use lookup::{Find, Form, Rows, Unit, View, look_up, view};
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

fn dial(text: &str) -> Form {
    Form {
        dial: text.into(),
        intermediate: "470".into(),
        ..Form::default()
    }
}

fn answer(form: &Form) -> (String, String) {
    let view = view(form);
    (view.answer.text, view.image.text)
}

fn hertz(view: &View) -> f64 {
    view.answer.value.expect("an answer").to_hz()
}

#[test]
fn the_example_set_answers_and_asks_for_the_ifs() {
    let view = view(&Form::default());
    assert_eq!(
        (view.finds.title(), view.answer.text.as_str()),
        ("Oscillator", "1670 kHz")
    );
    assert_eq!(hertz(&view), 1_670_000.0);
    assert!(view.example);
    assert_eq!(view.beside, "above the dial setting");
    assert_eq!(view.keep, None);
}

#[test]
fn if_and_side_stand_beside_every_answer_once_an_if_is_chosen() {
    for (find, side) in [(Find::Oscillator, Side::Above), (Find::Dial, Side::Below)] {
        let form = Form {
            find,
            side,
            oscillator: "1670".into(),
            ..dial("1200")
        };
        let expected = ["IF 470 kHz, oscillator ", side.word()].concat();
        assert_eq!(view(&form).beside, expected);
        assert!(!view(&form).example);
    }
}

#[test]
fn any_two_give_the_third() {
    let whole = Form {
        oscillator: "1670".into(),
        ..dial("1200")
    };
    let find = |find| Form {
        find,
        ..whole.clone()
    };
    assert_eq!(
        answer(&find(Find::Oscillator)),
        ("1670 kHz".into(), "2140 kHz".into())
    );
    assert_eq!(
        answer(&find(Find::Dial)),
        ("1200 kHz".into(), "2140 kHz".into())
    );
    assert_eq!(
        answer(&find(Find::Intermediate)),
        ("470 kHz".into(), "2140 kHz".into())
    );
}

#[test]
fn an_if_that_is_worked_out_finds_its_own_side() {
    let form = Form {
        find: Find::Intermediate,
        oscillator: "730".into(),
        ..dial("1200")
    };
    let view = view(&form);
    assert_eq!(
        (view.answer.text.as_str(), view.beside.as_str()),
        ("470 kHz", "oscillator below")
    );
}

#[test]
fn an_if_that_is_worked_out_is_the_readers_set_only_after_a_press() {
    let request = "find=if\ndial=1200\noscillator=735\nif=470\nside=above\ndo=";
    let shown = look_up(&[request, "show"].concat());
    let lines =
        |reply: &str, start: &str| reply.lines().filter(|line| line.starts_with(start)).count();
    assert_eq!(lines(&shown, "keep\t"), 0, "{shown}");
    assert_eq!(
        lines(&shown, "field\tif") + lines(&shown, "field\tside"),
        0,
        "{shown}"
    );
    assert!(
        shown.contains("text\toffer\tUse as my set: IF 465 kHz, oscillator below\n"),
        "{shown}"
    );
    assert!(shown.contains("set\toffer\tdata-do\tif 465\n"), "{shown}");
    let pressed = look_up(&[request, "if 465"].concat());
    for line in [
        "field\tfind\toscillator",
        "field\tif\t465",
        "field\tside\tbelow",
        "keep\t1200 kHz\t465 kHz\tbelow\t1",
    ] {
        assert!(
            pressed.lines().any(|found| found == line),
            "{line}: {pressed}"
        );
    }
}

#[test]
fn an_if_that_is_worked_out_as_the_readers_own_is_not_offered() {
    let form = Form {
        find: Find::Intermediate,
        oscillator: "1670".into(),
        ..dial("1200")
    };
    assert_eq!(view(&form).offer, None);
}

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

#[test]
fn the_image_is_placed_in_the_readers_region() {
    let place = |region| {
        view(&Form {
            region,
            ..dial("700")
        })
        .image_place
    };
    assert_eq!(
        place(Region::One),
        "among fixed, maritime mobile and land mobile stations"
    );
    assert_eq!(place(Region::Two), "inside medium wave");
    assert_eq!(
        place(Region::Three),
        "among fixed, mobile, radiolocation and radionavigation stations"
    );
}

#[test]
fn an_image_that_is_a_sum_says_so() {
    let form = Form {
        side: Side::Below,
        ..dial("700")
    };
    let view = view(&form);
    assert_eq!(
        (view.answer.text.as_str(), view.image.text.as_str()),
        ("230 kHz", "240 kHz")
    );
    assert!(
        view.notes
            .image
            .ends_with("as the sum of itself and the oscillator."),
        "{}",
        view.notes.image
    );
}

#[test]
fn the_if_itself_is_placed() {
    let note = |text: &str| {
        view(&Form {
            intermediate: text.into(),
            ..Form::default()
        })
        .notes
        .intermediate
    };
    assert_eq!(
        note("470"),
        "The IF itself, 470 kHz, lies between long and medium wave. In Region 1 Article 5 gives 435 to 472 kHz to: \
         maritime mobile."
    );
    assert!(note("475").contains("maritime mobile and amateur (secondary)"));
    assert!(note("110").contains("lies below long wave."));
    assert!(note("175").ends_with(
        "lies inside long wave: a strong station there breaks through whatever the dial says."
    ));
    assert!(note("1000").contains("lies inside medium wave: "));
    assert!(note("1.75 MHz").contains("lies above medium wave. In Region 1"));
    assert!(note("50").ends_with("lies below long wave."));
}

#[test]
fn the_channel_is_named_or_the_nearest() {
    let note = |text: &str, region| {
        view(&Form {
            region,
            ..dial(text)
        })
        .notes
        .channel
    };
    assert_eq!(
        note("1197", Region::One),
        "On a channel of medium wave in Region 1, where they are 9 kHz apart."
    );
    assert_eq!(
        note("1200", Region::One),
        "Between the channels of medium wave in Region 1, 9 kHz apart: the nearest is 1197 kHz, 3 kHz lower."
    );
    assert_eq!(
        note("1200", Region::Two),
        "On a channel of medium wave in Region 2, where they are 10 kHz apart."
    );
    assert!(
        note("1750", Region::One)
            .starts_with("1750 kHz lies outside the broadcast bands. In Region 1")
    );
    assert_eq!(
        note("60 MHz", Region::One),
        "60 MHz is not listed: the table here runs from 100 kHz to 30 MHz."
    );
}

#[test]
fn whistles_near_the_dial_are_listed_and_far_ones_named() {
    let near = view(&dial("945"));
    assert_eq!(near.whistles.len(), 1);
    assert_eq!(near.notes.whistles, "Within 10 kHz of the dial setting:");
    let far = view(&dial("1200"));
    assert!(far.whistles.is_empty());
    assert_eq!(
        far.notes.whistles,
        "No harmonic of the IF up to the 10th lies within 10 kHz of the dial setting. In this band they fall at \
         940 kHz (2nd) and 1410 kHz (3rd). Other whistles are possible."
    );
}

#[test]
fn a_dial_near_the_if_or_half_of_it_is_told() {
    let note = |text: &str| view(&dial(text)).notes.whistles;
    for (near, far, says) in [
        ("480", "481", "The dial is within 10 kHz of the IF itself: "),
        ("240", "241", "The dial is near half the IF: "),
    ] {
        assert!(note(near).starts_with(says), "{}", note(near));
        assert!(note(far).starts_with("No harmonic"), "{}", note(far));
    }
}

#[test]
fn regions_without_long_wave_name_the_service_at_a_low_if() {
    let note = |text: &str, region| {
        view(&Form {
            intermediate: text.into(),
            region,
            ..Form::default()
        })
        .notes
        .intermediate
    };
    for region in [Region::Two, Region::Three] {
        for khz in ["110", "175", "262", "455"] {
            let says = note(khz, region);
            assert!(says.contains("no long-wave broadcasting"), "{says}");
            assert!(!says.contains("a strong station there"), "{says}");
        }
        let beacons = "radionavigation (aeronautical). Beacons near by may break through.";
        assert!(
            note("262", region).ends_with(beacons),
            "{}",
            note("262", region)
        );
    }
}

#[test]
fn off_the_channels_it_says_on_which_side() {
    let note = |text: &str| view(&dial(text)).notes.channel;
    assert_eq!(
        note("3.95 MHz"),
        "At the edge of the channels of the 75 m band in Region 1, 5 kHz apart: the nearest is 3.955 MHz, 5 kHz higher."
    );
    assert!(note("528").starts_with("Below the lowest of the channels"));
    assert!(note("1605").starts_with("Above the highest of the channels"));
    assert!(
        note("3.3 MHz").starts_with(
            "3.3 MHz lies inside the 90 m band (3.2 to 3.4 MHz in Region 1): fixed, mobile (except aeronautical) \
             and broadcasting, the last in the tropical zone only. On a channel of"
        ),
        "{}",
        note("3.3 MHz")
    );
}

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
