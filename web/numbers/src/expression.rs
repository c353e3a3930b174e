//! A catalogue quantity with the parameters that are typed beside it.

use superhet::catalogue::find;

/// A catalogue quantity with the parameters that are typed beside it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Expression {
    /// Name in the catalogue.
    pub quantity: String,
    /// Parameters as typed, in order.
    pub typed: Vec<(String, String)>,
}

/// Whether a text is an id: lower-case letters, digits and hyphens.
#[must_use]
pub fn is_id(text: &str) -> bool {
    let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    !text.is_empty() && text.bytes().all(plain)
}

impl Expression {
    /// Reads `name?key=value&key=value`.
    ///
    /// # Errors
    /// What is no name, or no pair.
    pub fn read(text: &str) -> Result<Self, String> {
        let (quantity, query) = text.trim().split_once('?').unwrap_or((text.trim(), ""));
        if !is_id(quantity) {
            return Err(format!("\"{quantity}\" is not the name of a quantity"));
        }
        let mut typed = Vec::new();
        for pair in query.split('&').filter(|pair| !pair.is_empty()) {
            let (key, value) = pair
                .split_once('=')
                .ok_or_else(|| format!("a parameter is written key=value (got \"{pair}\")"))?;
            typed.push((key.trim().to_owned(), value.trim().to_owned()));
        }
        Ok(Self {
            quantity: quantity.to_owned(),
            typed,
        })
    }

    /// The expression as it is read again.
    #[must_use]
    pub fn written(&self) -> String {
        let pairs: Vec<String> = self
            .typed
            .iter()
            .map(|(key, value)| format!("{key}={value}"))
            .collect();
        match pairs.is_empty() {
            true => self.quantity.clone(),
            false => format!("{}?{}", self.quantity, pairs.join("&")),
        }
    }

    /// Names of inputs that it may be worked out from.
    #[must_use]
    pub fn names_it_may_need(&self) -> Vec<String> {
        let typed = self.typed.iter().map(|(_, value)| value.clone());
        let left_out = find(&self.quantity)
            .map_or(&[][..], |entry| entry.parameters)
            .iter()
            .map(|parameter| parameter.name.to_owned())
            .filter(|name| !self.typed.iter().any(|(key, _)| key == name));
        typed.chain(left_out).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Expression;

    #[test]
    fn an_expression_is_read_and_written() {
        let text = "oscillator?dial=909kHz&side=below";
        let read = Expression::read(text).unwrap();
        assert_eq!(read.written(), text);
        assert_eq!(read.names_it_may_need(), ["909kHz", "below", "if"]);
        assert_eq!(Expression::read("image").unwrap().written(), "image");
        assert!(Expression::read("The IF").is_err());
        assert!(Expression::read("image?dial").is_err());
    }
}
