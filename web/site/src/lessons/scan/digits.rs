//! A number in digits.

/// Where the number in digits that begins at `at` ends.
///
/// Read: `1200`, `1,200`, `1 200`, `1.2`, `.01`, `0,455`, `1.2e6`, `10⁶`, `1½`, `½`,
/// with a sign before it.
pub(super) fn end(text: &str, at: usize) -> Option<usize> {
    let rest = &text[at..];
    let unsigned = rest.strip_prefix(['+', '-', '−', '±']).unwrap_or(rest);
    let body = digits_and_marks(unsigned);
    let mut length = body + fractions(&unsigned[body..]);
    if length == 0 {
        return None;
    }
    length += exponent(&unsigned[length..]);
    Some(at + rest.len() - unsigned.len() + length)
}

fn digits_and_marks(text: &str) -> usize {
    let mut end = whole(text);
    let point = text[end..].strip_prefix('.').map_or(0, run_of_digits);
    if point > 0 {
        end += 1 + point;
    }
    end
}

/// Digits, then groups of them behind a comma, a space or an apostrophe.
fn whole(text: &str) -> usize {
    let first = run_of_digits(text);
    let mut end = first;
    while end > 0 {
        let rest = &text[end..];
        let Some(mark) = rest.chars().next() else {
            break;
        };
        let group = run_of_digits(&rest[mark.len_utf8()..]);
        let grouped = group == 3
            && first <= 3
            && matches!(mark, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '’' | '\'');
        if !(grouped || mark == ',' && group > 0) {
            break;
        }
        end += mark.len_utf8() + group;
    }
    end
}

fn run_of_digits(text: &str) -> usize {
    text.bytes().take_while(u8::is_ascii_digit).count()
}

/// Fraction signs and raised digits.
fn fractions(text: &str) -> usize {
    text.chars()
        .take_while(|sign| "½¼¾⅓⅔⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹⁻".contains(*sign))
        .map(char::len_utf8)
        .sum()
}

fn exponent(text: &str) -> usize {
    let Some(rest) = text.strip_prefix(['e', 'E']) else {
        return 0;
    };
    let unsigned = rest.strip_prefix(['+', '-', '−']).unwrap_or(rest);
    match run_of_digits(unsigned) {
        0 => 0,
        digits => text.len() - unsigned.len() + digits,
    }
}
