//! Names that change with what they name.

use sha2::{Digest, Sha256};

/// How many hexadecimal digits of the digest stand in an asset's name: 40 bits, so
/// that two versions of one file meet by chance once in 10^12.
const NAME_DIGITS: usize = 10;

/// The SHA-256 of some bytes, in hexadecimal.
pub fn sha256(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    let mut text = String::with_capacity(64);
    for byte in Sha256::digest(bytes) {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
    }
    text
}

/// A file name with the digest of its content before the extension.
///
/// ```
/// let name = site::hashing::hashed_name("base.css", b"");
/// assert_eq!(name, "base.e3b0c44298.css");
/// ```
pub fn hashed_name(name: &str, bytes: &[u8]) -> String {
    let digest = sha256(bytes);
    let digits = &digest[..NAME_DIGITS];
    match name.rsplit_once('.') {
        Some((stem, extension)) => format!("{stem}.{digits}.{extension}"),
        None => format!("{name}.{digits}"),
    }
}

#[cfg(test)]
mod tests {
    use super::{hashed_name, sha256};

    /// FIPS 180-2, appendix B.1: the digest of "abc".
    #[test]
    fn digest_of_the_standards_example() {
        assert_eq!(
            sha256(b"abc"),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
    }

    #[test]
    fn the_name_changes_with_the_content_alone() {
        assert_eq!(hashed_name("a.css", b"x"), hashed_name("a.css", b"x"));
        assert_ne!(hashed_name("a.css", b"x"), hashed_name("a.css", b"y"));
        assert_eq!(hashed_name("plain", b"abc"), "plain.ba7816bf8f");
    }
}
