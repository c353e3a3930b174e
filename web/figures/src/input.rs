//! What a figure is asked to draw: ordered pairs of key and typed text.

use crate::FigureError;

/// The largest number of pairs that a figure reads; longer input is refused.
const MOST_PAIRS: usize = 24;

/// Ordered pairs of key and text, as they stand in a lesson
/// (`dial=1200kHz if=470kHz side=above`) or in a page (`dial=1200kHz&if=470kHz`).
///
/// The texts are read by the core, so a figure accepts what every other box of the
/// site accepts.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Input {
    pairs: Vec<(String, String)>,
}

impl Input {
    /// The empty input.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Reads `key=text` pairs parted by `&`.
    ///
    /// # Errors
    /// A pair without `=`, a key given twice, or more pairs than any figure has.
    pub fn parse(query: &str) -> Result<Self, FigureError> {
        let mut input = Self::new();
        for pair in query.split('&').filter(|pair| !pair.trim().is_empty()) {
            let Some((key, text)) = pair.split_once('=') else {
                return Err(FigureError::new(format!(
                    "a figure's input is key=value, parted by '&' (got '{}')",
                    pair.trim()
                )));
            };
            input.add(key.trim(), text.trim())?;
        }
        Ok(input)
    }

    fn add(&mut self, key: &str, text: &str) -> Result<(), FigureError> {
        if self.get(key).is_some() {
            return Err(FigureError::about(key, format!("'{key}' is given twice")));
        }
        if self.pairs.len() == MOST_PAIRS {
            return Err(FigureError::new(format!(
                "a figure reads at most {MOST_PAIRS} pairs"
            )));
        }
        self.pairs.push((key.to_owned(), text.to_owned()));
        Ok(())
    }

    /// The same input with `key` set to `text`, in its old place where it had one.
    #[must_use]
    pub fn with(mut self, key: &str, text: &str) -> Self {
        match self.pairs.iter_mut().find(|(known, _)| known == key) {
            Some(pair) => text.clone_into(&mut pair.1),
            None => self.pairs.push((key.to_owned(), text.to_owned())),
        }
        self
    }

    /// The text given for `key`.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&str> {
        self.iter()
            .find(|(known, _)| *known == key)
            .map(|(_, text)| text)
    }

    /// All pairs in order.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &str)> {
        self.pairs
            .iter()
            .map(|(key, text)| (key.as_str(), text.as_str()))
    }

    /// The pairs as [`Input::parse`] reads them.
    #[must_use]
    pub fn to_query(&self) -> String {
        let pairs: Vec<String> = self
            .iter()
            .map(|(key, text)| format!("{key}={text}"))
            .collect();
        pairs.join("&")
    }
}

#[cfg(test)]
mod tests {
    use super::Input;

    #[test]
    fn pairs_keep_their_order() {
        let input = Input::parse("dial=1200 kHz&if=470kHz&side=above").unwrap();
        assert_eq!(input.get("if"), Some("470kHz"));
        let moved = input.with("dial", "909 kHz");
        assert_eq!(moved.to_query(), "dial=909 kHz&if=470kHz&side=above");
    }

    #[test]
    fn slips_are_named() {
        let said = Input::parse("dial").unwrap_err().to_string();
        assert!(said.contains("'dial'"), "{said}");
        let said = Input::parse("if=1&if=2").unwrap_err().to_string();
        assert!(said.contains("twice"), "{said}");
        let many: String = (0..40).map(|n| format!("k{n}=1&")).collect();
        assert!(Input::parse(&many).is_err());
    }
}
