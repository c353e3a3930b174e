//! What the page shows for what stands in its form.

use lookup::{Find, Form, Rows, Unit, View, view};
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
    assert_eq!(
        view.keep.map(|kept| (kept.intermediate, kept.side)),
        Some(("470 kHz".into(), Side::Below))
    );
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
        "1200 kHz is 249.827 m; an old dial, drawn with 300 000 km/s, prints 250 m."
    );
}

#[test]
fn a_comma_that_could_mean_two_things_offers_the_other() {
    let offer = view(&dial("1,200")).offer.expect("the other reading");
    assert_eq!(
        (offer.says.as_str(), offer.text.as_str()),
        ("Or did you mean 1.2 kHz? Use that", "1.2 kHz")
    );
    assert_eq!(view(&dial("0,909 MHz")).answer.text, "1379 kHz");
    assert_eq!(view(&dial("0,909 MHz")).offer, None);
    assert_eq!(view(&dial("1,2 MHz")).offer, None);
}

#[test]
fn a_comma_whose_first_reading_is_out_of_range_offers_the_other_too() {
    let view = view(&Form {
        dial_unit: Unit::Megahertz,
        ..dial("1,200")
    });
    let problem = view.problem.expect("1200 MHz is out of range");
    assert_eq!(
        problem.says,
        "Dial must lie between 1 kHz and 1000 MHz (got 1200 MHz)."
    );
    assert_eq!(view.offer.map(|offer| offer.text), Some("1200 kHz".into()));
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
         940 kHz (2nd) and 1410 kHz (3rd)."
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
