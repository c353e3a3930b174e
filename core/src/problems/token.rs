//! The words of an expression: numbers, quantities, names, texts and signs.

use alloc::{format, string::String, vec::Vec};

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Token<'t> {
    /// Digits with at most a point.
    Number(&'t str),
    /// A number and its unit.
    Quantity(&'t str),
    /// What stands between quotes.
    Text(&'t str),
    /// A given, a value, a quantity or `root`.
    Name(&'t str),
    /// A quantity and what stands behind its question mark.
    Call(&'t str, &'t str),
    /// An operator, a comparison or a bracket.
    Sign(&'t str),
}

/// Cuts an expression into its words; an error says what stands in the way.
pub(super) fn tokens(text: &str) -> Result<Vec<Token<'_>>, String> {
    let mut tokens = Vec::new();
    let mut rest = text.trim_start();
    while let Some(first) = rest.chars().next() {
        let (token, length) = match first {
            '0'..='9' | '.' => number(rest),
            'a'..='z' => name(rest),
            '\'' => quoted(rest).ok_or("a quote is not closed")?,
            _ => sign(rest).ok_or_else(|| format!("{first:?} has no meaning"))?,
        };
        tokens.push(token);
        rest = rest[length..].trim_start();
    }
    Ok(tokens)
}

fn number(rest: &str) -> (Token<'_>, usize) {
    let digits = run(rest, |c| c.is_ascii_digit() || c == '.');
    let spaces = run(&rest[digits..], |c| c == ' ');
    let unit = run(&rest[digits + spaces..], |c| c.is_alphabetic() || c == '%');
    let end = digits + spaces + unit;
    if unit == 0 {
        (Token::Number(&rest[..digits]), digits)
    } else {
        (Token::Quantity(&rest[..end]), end)
    }
}

fn name(rest: &str) -> (Token<'_>, usize) {
    let end = run(rest, |c| {
        c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-'
    });
    if rest[end..].starts_with('?') {
        let query = run(&rest[end + 1..], |c| !c.is_whitespace() && c != ')');
        (
            Token::Call(&rest[..end], &rest[end + 1..end + 1 + query]),
            end + 1 + query,
        )
    } else {
        (Token::Name(&rest[..end]), end)
    }
}

fn quoted(rest: &str) -> Option<(Token<'_>, usize)> {
    let length = rest[1..].find('\'')?;
    Some((Token::Text(&rest[1..1 + length]), length + 2))
}

fn sign(rest: &str) -> Option<(Token<'_>, usize)> {
    [
        "<=", ">=", "!=", "<", ">", "=", "+", "-", "*", "/", "(", ")",
    ]
    .into_iter()
    .find(|sign| rest.starts_with(sign))
    .map(|sign| (Token::Sign(sign), sign.len()))
}

fn run(text: &str, belongs: impl Fn(char) -> bool) -> usize {
    text.find(|c| !belongs(c)).unwrap_or(text.len())
}
