//! Where image and IF fall, the channel, and whistles.

use crate::dial;
use lookup::{Form, view};
use superhet::quantities::bands::Region;
use superhet::quantities::conversion::Side;

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
