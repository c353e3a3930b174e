//! A code that reopens a problem, number for number.
//!
//! Thirteen symbols of base32, grouped `XXXX-XXXXX-XXXX`: capitals and digits only, so
//! that it fits the alphanumeric segment of a QR and can be read out and typed by
//! hand. Reading forgives lower case, spaces and hyphens, the letter O for 0, I and L
//! for 1; the alphabet leaves out I, L, O and U (the base32 of D. Crockford).
//!
//! | bits | holds |
//! | --- | --- |
//! | 4 | version, now 1 |
//! | 10 | family number from the registry, 1 to 1023 |
//! | 6 | revision, 1 to 63 |
//! | 3 | level, 1 to 3, and 4 for the transfer form |
//! | 32 | seed |
//! | 10 | check |
//!
//! The check makes the whole 65-bit number a multiple of 1021, the largest prime under
//! 2¹⁰. One wrong symbol changes the number by d·32ⁱ with 0 < |d| < 32, and two
//! neighbours exchanged change it by d·31·32ⁱ; no such number is a multiple of 1021,
//! so every such slip is seen.

use alloc::string::String;
use core::fmt;

use super::family::Level;

/// What a code says: which problem, and nothing about what was answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ProblemCode {
    /// Number of the family in the registry.
    pub family: u16,
    /// Revision of the family.
    pub revision: u8,
    /// Level of the problem.
    pub level: Level,
    /// Seed of the problem.
    pub seed: u32,
}

/// Why a code could not be written or read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum CodeError {
    /// The family number is 0 or over 1023.
    Family(u16),
    /// The revision is 0 or over 63.
    Revision(u8),
    /// Not thirteen symbols.
    Length(usize),
    /// More bytes than a code needs, however it is spaced.
    TooLong(usize),
    /// A character that no code holds.
    Symbol(char),
    /// The check does not fit: a symbol was mistaken.
    Check,
    /// Made by a later edition of the site.
    Version(u8),
    /// The level is none of the four.
    Level(u8),
}

impl fmt::Display for CodeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            CodeError::Family(n) => {
                write!(
                    f,
                    "a family number in a code runs from 1 to {LAST_FAMILY} (got {n})"
                )
            }
            CodeError::Revision(n) => {
                write!(
                    f,
                    "a revision in a code runs from 1 to {LAST_REVISION} (got {n})"
                )
            }
            CodeError::Length(n) => {
                write!(
                    f,
                    "a problem code has {SYMBOLS} letters and digits (got {n})"
                )
            }
            CodeError::TooLong(n) => {
                write!(
                    f,
                    "a problem code has at most {LONGEST} characters, blanks with them (got {n})"
                )
            }
            CodeError::Symbol(c) => write!(
                f,
                "a problem code holds digits and letters other than U (got {c:?})"
            ),
            CodeError::Check => f.write_str(
                "the code does not check: compare it with the original, symbol by symbol",
            ),
            CodeError::Version(n) => {
                write!(
                    f,
                    "the code has version {n}, and this edition reads version {VERSION}"
                )
            }
            CodeError::Level(n) => write!(f, "a level in a code runs from 1 to 4 (got {n})"),
        }
    }
}

impl core::error::Error for CodeError {}

/// Bytes of a typed or followed code; what is longer is refused unread. Room for a blank
/// and a hyphen before each symbol and behind the last.
pub const LONGEST: usize = 3 * SYMBOLS + 2;

const VERSION: u8 = 1;
const SYMBOLS: usize = 13;
const LAST_FAMILY: u16 = 1023;
const LAST_REVISION: u8 = 63;
/// The largest prime that fits the check's ten bits.
const MODULUS: u128 = 1021;
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

impl ProblemCode {
    /// The code as it is shown, `XXXX-XXXXX-XXXX`.
    pub fn encode(&self) -> Result<String, CodeError> {
        if !(1..=LAST_FAMILY).contains(&self.family) {
            return Err(CodeError::Family(self.family));
        }
        if !(1..=LAST_REVISION).contains(&self.revision) {
            return Err(CodeError::Revision(self.revision));
        }
        Ok(written(checked(self.packed())))
    }

    /// Reads a code as typed or followed.
    pub fn decode(text: &str) -> Result<ProblemCode, CodeError> {
        let number = read(text)?;
        if number % MODULUS != 0 {
            return Err(CodeError::Check);
        }
        ProblemCode::unpacked(number >> 10)
    }

    fn packed(&self) -> u128 {
        let mut number = u128::from(VERSION);
        number = number << 10 | u128::from(self.family);
        number = number << 6 | u128::from(self.revision);
        number = number << 3 | u128::from(self.level.number());
        number << 32 | u128::from(self.seed)
    }

    fn unpacked(number: u128) -> Result<ProblemCode, CodeError> {
        let field = |shift: u32, bits: u32| (number >> shift) as u32 & ((1_u64 << bits) - 1) as u32;
        let version = field(51, 4) as u8;
        if version != VERSION {
            return Err(CodeError::Version(version));
        }
        let family = field(41, 10) as u16;
        let revision = field(35, 6) as u8;
        let level = field(32, 3) as u8;
        if family == 0 {
            return Err(CodeError::Family(family));
        }
        if revision == 0 {
            return Err(CodeError::Revision(revision));
        }
        let level = Level::from_number(level).ok_or(CodeError::Level(level))?;
        Ok(ProblemCode {
            family,
            revision,
            level,
            seed: field(0, 32),
        })
    }
}

/// The number with its check behind it.
fn checked(number: u128) -> u128 {
    let shifted = number << 10;
    shifted + (MODULUS - shifted % MODULUS) % MODULUS
}

fn written(number: u128) -> String {
    let mut text = String::with_capacity(SYMBOLS + 2);
    for place in (0..SYMBOLS).rev() {
        if place == 8 || place == 3 {
            text.push('-');
        }
        let digit = (number >> (5 * place)) as usize & 31;
        text.push(char::from(ALPHABET[digit]));
    }
    text
}

fn read(text: &str) -> Result<u128, CodeError> {
    if text.len() > LONGEST {
        return Err(CodeError::TooLong(text.len()));
    }
    let mut number = 0_u128;
    let mut count = 0_usize;
    for character in text.chars().filter(|c| !matches!(c, '-' | ' ')) {
        count += 1;
        if count <= SYMBOLS {
            number = number << 5 | digit(character)?;
        }
    }
    if count == SYMBOLS {
        Ok(number)
    } else {
        Err(CodeError::Length(count))
    }
}

fn digit(character: char) -> Result<u128, CodeError> {
    let plain = match character.to_ascii_uppercase() {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    };
    ALPHABET
        .iter()
        .position(|&symbol| char::from(symbol) == plain)
        .map(|place| place as u128)
        .ok_or(CodeError::Symbol(character))
}

#[cfg(test)]
mod tests {
    use alloc::{string::ToString, vec::Vec};

    use proptest::prelude::{Strategy, any, prop_assert_eq, proptest};

    use super::*;

    fn example() -> ProblemCode {
        ProblemCode {
            family: 3,
            revision: 1,
            level: Level::Two,
            seed: 20_261_125,
        }
    }

    /// Pinned: a code handed out stays readable.
    #[test]
    fn a_code_stays_the_same() {
        assert_eq!(example().encode().unwrap(), PINNED);
        assert_eq!(ProblemCode::decode(PINNED), Ok(example()));
    }

    const PINNED: &str = "2061-80KAA-85S9";

    #[test]
    fn reading_forgives_hand_and_eye() {
        let code = example().encode().unwrap();
        let spoiled = code
            .to_lowercase()
            .replace('0', "o")
            .replace('1', "L")
            .replace('-', " ");
        assert_eq!(ProblemCode::decode(&spoiled), Ok(example()));
        let mut spaced: String = code
            .split('-')
            .flat_map(str::chars)
            .fold(String::new(), |spaced, symbol| {
                spaced + " -" + symbol.encode_utf8(&mut [0; 4])
            });
        spaced.push_str("- ");
        assert_eq!(spaced.len(), LONGEST);
        assert_eq!(ProblemCode::decode(&spaced), Ok(example()));
    }

    #[test]
    fn every_single_slip_is_seen() {
        let code: Vec<u8> = example()
            .encode()
            .unwrap()
            .bytes()
            .filter(|&b| b != b'-')
            .collect();
        for place in 0..SYMBOLS {
            for &symbol in ALPHABET {
                let mut wrong = code.clone();
                wrong[place] = symbol;
                let read = ProblemCode::decode(core::str::from_utf8(&wrong).unwrap());
                assert_eq!(read.is_ok(), symbol == code[place], "{place} {symbol}");
            }
        }
        for place in 1..SYMBOLS {
            let mut wrong = code.clone();
            wrong.swap(place - 1, place);
            let read = ProblemCode::decode(core::str::from_utf8(&wrong).unwrap());
            assert_eq!(read.is_ok(), wrong == code, "{place}");
        }
    }

    #[test]
    fn refusals_say_what_is_wrong() {
        let refused = |text: &str| ProblemCode::decode(text).unwrap_err().to_string();
        assert_eq!(
            refused("1234"),
            "a problem code has 13 letters and digits (got 4)"
        );
        assert_eq!(
            refused(&"-".repeat(42)),
            "a problem code has at most 41 characters, blanks with them (got 42)"
        );
        assert_eq!(
            refused("UUUU-UUUUU-UUUU"),
            "a problem code holds digits and letters other than U (got 'U')"
        );
        assert_eq!(
            refused("0000-00000-0000"),
            "the code has version 0, and this edition reads version 1"
        );
        assert_eq!(
            ProblemCode {
                family: 1024,
                ..example()
            }
            .encode(),
            Err(CodeError::Family(1024))
        );
        assert_eq!(
            ProblemCode {
                revision: 0,
                ..example()
            }
            .encode(),
            Err(CodeError::Revision(0))
        );
    }

    fn any_code() -> impl Strategy<Value = ProblemCode> {
        (1..=LAST_FAMILY, 1..=LAST_REVISION, 0..4_usize, any::<u32>()).prop_map(
            |(family, revision, level, seed)| ProblemCode {
                family,
                revision,
                level: Level::ALL[level],
                seed,
            },
        )
    }

    proptest! {
        #[test]
        fn codes_round_trip(code in any_code()) {
            let text = code.encode().unwrap();
            prop_assert_eq!(ProblemCode::decode(&text), Ok(code));
        }

        #[test]
        fn reading_never_panics(text in "\\PC{0,40}") {
            let _ = ProblemCode::decode(&text);
        }

        #[test]
        fn near_codes_never_panic(text in "[0-9A-Za-z -]{0,20}") {
            if let Ok(code) = ProblemCode::decode(&text) {
                prop_assert_eq!(ProblemCode::decode(&code.encode().unwrap()), Ok(code));
            }
        }
    }
}
