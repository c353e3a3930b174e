//! A million nasty texts for each reader of what this program is handed from outside: links,
//! files and what a browser kept.

use crate::base64url;
use crate::json::Json;
use crate::notebook::Notebook;
use crate::place::{LONGEST_TEXT, MARK, Place};
use nasty::{MILLION, Maker, Trial};

const NOTEBOOK: &str = r#"{"version":2,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":[1,2,1,20784,{"one-if":2}]},"checks":[[20783,1,4095]]}"#;
/// What the first version kept is read still.
const OLD_NOTEBOOK: &str = r#"{"version":1,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":{"right":1,"wrong":2,"mistakes":{"one-if":2}}}}"#;
const SET: &str = r#"{"version":1,"dial":"1200 kHz","if":"470 kHz","side":"above","region":1}"#;

/// What these files are made of.
const WORDS: &[&str] = &[
    "{",
    "}",
    "[",
    "]",
    ":",
    ",",
    "\"",
    "\\",
    "\\u00",
    "\\u0000",
    "\\ud800",
    "\\n",
    "null",
    "true",
    "0",
    "1",
    "99999",
    "4294967296",
    "\"version\":1",
    "\"notebook\":",
    "\"set\":",
    "\"lessons\":",
    "\"problems\":",
    "\"mistakes\":",
    "\"right\":",
    "\"checks\":",
    "[0,0,6,0,{}]",
    "\"2026-11-25\"",
    "\"a-b\":",
    "{\"",
    "[[[[",
];

/// A value is held in at most 56 bytes with its name, and a byte or two of text make one,
/// `[1,1,…`; while a list grows, it is held once more and half as much. What was read is then
/// copied once, and written once more to be compared.
fn trial(seed: u64) -> Trial {
    Trial {
        seed,
        cases: MILLION,
        most_held: 100 * LONGEST_TEXT as u64,
    }
}

fn place() -> String {
    [
        r#"{"version":1,"notebook":"#,
        NOTEBOOK,
        r#","set":"#,
        SET,
        "}",
    ]
    .concat()
}

#[test]
fn a_million_json_texts_are_read_or_refused() {
    let place = place();
    trial(1).run(
        |maker: &mut Maker| maker.near(&place, WORDS),
        |text| {
            // Whoever reads bounds the length; here nobody else does.
            if text.len() > LONGEST_TEXT {
                return;
            }
            if let Ok(json) = Json::read(text) {
                // A control character is written as a blank, so the second writing counts.
                let written = json.write();
                let again = Json::read(&written).map(|json| json.write());
                assert_eq!(again, Ok(written));
            }
        },
    );
}

#[test]
fn a_million_notebooks_are_read_or_refused() {
    trial(2).run(
        |maker: &mut Maker| {
            let text = if maker.one_in(4) {
                OLD_NOTEBOOK
            } else {
                NOTEBOOK
            };
            maker.near(text, WORDS)
        },
        |text| {
            if let Ok(notebook) = Notebook::read(text) {
                assert!(text.len() <= crate::notebook::LONGEST);
                assert_eq!(Notebook::from_json(&notebook.to_json()), Ok(notebook));
            }
        },
    );
}

#[test]
fn a_million_files_are_read_or_refused() {
    let place = place();
    trial(3).run(
        |maker: &mut Maker| maker.near(&place, WORDS),
        |text| {
            if let Ok(place) = Place::from_file(text) {
                assert!(text.len() <= LONGEST_TEXT);
                assert_eq!(Place::from_file(&place.to_file()), Ok(place));
            }
        },
    );
}

/// Half of the links carry a spoilt file, half are spoilt themselves.
#[test]
fn a_million_links_are_read_or_refused() {
    let place = place();
    let letters = base64url::encode(place.as_bytes());
    let make = |maker: &mut Maker| {
        let letters = if maker.one_in(2) {
            maker.near(&letters, &["A", "-", "_", "e30", "bnVsbA", "eyJ"])
        } else {
            base64url::encode(maker.near(&place, WORDS).as_bytes())
        };
        [MARK, &letters].concat()
    };
    trial(4).run(make, |link| {
        let read = Place::from_link(link).expect("it carries something");
        if let Ok(place) = read {
            assert_eq!(Place::from_link(&place.to_link()), Some(Ok(place)));
        }
    });
}

#[test]
fn a_million_runs_of_letters_are_decoded_or_refused() {
    let make = |maker: &mut Maker| {
        let bytes: Vec<u8> = (0..maker.below(40)).map(|_| maker.bits() as u8).collect();
        maker.near(
            &base64url::encode(&bytes),
            &["A", "Zz", "09", "-", "_", "=="],
        )
    };
    // Three bytes for four letters, and the letters once more.
    let trial = Trial {
        most_held: 2_000_000,
        ..trial(5)
    };
    trial.run(make, |letters| {
        if let Some(bytes) = base64url::decode(letters) {
            assert_eq!(base64url::encode(&bytes), letters);
        }
    });
}
