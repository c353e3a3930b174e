//! Bytes as the letters that a link may hold (RFC 4648 section 5, without padding).

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// The letters of some bytes.
pub(crate) fn encode(bytes: &[u8]) -> String {
    let mut letters = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for three in bytes.chunks(3) {
        let whole = three
            .iter()
            .fold(0_u32, |whole, byte| whole << 8 | u32::from(*byte));
        let whole = whole << (8 * (3 - three.len()));
        for place in 0..=three.len() {
            let six = whole >> (18 - 6 * place) & 63;
            letters.push(char::from(LETTERS[six as usize]));
        }
    }
    letters
}

/// The bytes of some letters. None where a letter is no such letter, or where the last
/// one holds bits that no byte takes.
pub(crate) fn decode(letters: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(letters.len() / 4 * 3 + 2);
    for four in letters.as_bytes().chunks(4) {
        let mut whole = 0_u32;
        for letter in four {
            whole = whole << 6 | six_bits(*letter)?;
        }
        whole <<= 6 * (4 - four.len());
        let count = four.len() - 1;
        if count == 0 || whole & (0x00ff_ffff >> (8 * count)) != 0 {
            return None;
        }
        bytes.extend_from_slice(&whole.to_be_bytes()[1..=count]);
    }
    Some(bytes)
}

/// What a letter stands for.
fn six_bits(letter: u8) -> Option<u32> {
    let (first, worth) = match letter {
        b'A'..=b'Z' => (b'A', 0),
        b'a'..=b'z' => (b'a', 26),
        b'0'..=b'9' => (b'0', 52),
        b'-' => (b'-', 62),
        b'_' => (b'_', 63),
        _ => return None,
    };
    Some(u32::from(letter - first) + worth)
}

#[cfg(test)]
mod tests {
    use super::{decode, encode};
    use proptest::prelude::{any, prop_assert_eq, proptest};

    #[test]
    fn the_standards_own_examples() {
        // RFC 4648 section 10, less the padding.
        for (bytes, letters) in [
            ("", ""),
            ("f", "Zg"),
            ("fo", "Zm8"),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg"),
            ("fooba", "Zm9vYmE"),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(encode(bytes.as_bytes()), letters);
            assert_eq!(decode(letters).as_deref(), Some(bytes.as_bytes()));
        }
        assert_eq!(encode(&[0xfb, 0xff]), "-_8");
    }

    #[test]
    fn other_letters_and_loose_bits_are_refused() {
        for letters in ["Z", "Zh", "Zg==", "Z g", "Zm9vY", "é"] {
            assert_eq!(decode(letters), None, "{letters}");
        }
    }

    proptest! {
        #[test]
        fn any_bytes_come_back(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            prop_assert_eq!(decode(&encode(&bytes)), Some(bytes));
        }

        #[test]
        fn no_letters_make_it_panic(letters in "\\PC{0,60}") {
            let _ = decode(&letters);
        }
    }
}
