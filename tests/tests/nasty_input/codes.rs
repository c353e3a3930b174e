//! Codes of problems, as they are typed and followed.

use nasty::{MILLION, Maker, Trial};
use superhet::problems::code::{CodeError, LONGEST};
use superhet::problems::{Level, ProblemCode};

const WORDS: &[&str] = &[
    "0", "1", "2", "9", "A", "H", "Z", "o", "i", "L", "U", "-", " ", "2061", "80KAA", "85S9",
];

/// Reading holds nothing; a code is written once more to compare, in 15 letters.
const MOST_HELD: u64 = 15;

fn code(maker: &mut Maker) -> ProblemCode {
    ProblemCode {
        family: 1 + maker.below(1023) as u16,
        revision: 1 + maker.below(63) as u8,
        level: Level::ALL[maker.below(4)],
        seed: maker.bits(),
    }
}

#[test]
fn a_million_codes_are_read_or_refused() {
    let make = |maker: &mut Maker| {
        let valid = code(maker).encode().expect("it is within its ranges");
        maker.near(&valid, WORDS)
    };
    Trial {
        seed: 3,
        cases: MILLION,
        most_held: MOST_HELD,
    }
    .run(make, |text| {
        let read = ProblemCode::decode(text);
        let too_long = Err(CodeError::TooLong(text.len()));
        assert_eq!(read == too_long, text.len() > LONGEST);
        if let Ok(code) = read {
            let written = code.encode().expect("what was read can be written");
            assert_eq!(ProblemCode::decode(&written), Ok(code));
        }
    });
}
