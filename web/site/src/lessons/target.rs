//! Where a link of a lesson points.

use super::lists::is_id;
use numbers::Expression;

/// What stands in the brackets behind a link's words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Target {
    /// A number that the core works out.
    Calc(Expression),
    /// An input of the lesson.
    Given(String),
    /// A fact from `sources.toml`.
    Fact(String),
    /// A term of the glossary.
    Term(String),
    /// Another lesson, by its slug.
    Lesson(String),
    /// A page by its path, with a query if it has one.
    Page(String),
    /// A publication in `sources.toml`.
    Source(String),
}

impl Target {
    /// Reads a link's address.
    pub(crate) fn read(address: &str) -> Result<Self, String> {
        let (scheme, rest) = address.split_once(':').unwrap_or(("", address));
        let id = |make: fn(String) -> Self| {
            if is_id(rest) {
                Ok(make(rest.to_owned()))
            } else {
                Err(format!(
                    "\"{rest}\" in \"{address}\" is not an id (lower-case letters, digits and hyphens)"
                ))
            }
        };
        match scheme {
            "calc" => Expression::read(rest).map(Self::Calc),
            "given" => id(Self::Given),
            "fact" => id(Self::Fact),
            "term" => id(Self::Term),
            "lesson" => id(Self::Lesson),
            "source" => id(Self::Source),
            "page" => Ok(Self::Page(rest.to_owned())),
            _ => Err(format!(
                "a link begins with calc:, given:, fact:, term:, lesson:, page: or source: (got \"{address}\")"
            )),
        }
    }

    /// Whether it marks a number: the words inside are then checked against a value.
    pub(crate) fn is_marked_number(&self) -> bool {
        matches!(self, Self::Calc(_) | Self::Given(_) | Self::Fact(_))
    }
}

#[cfg(test)]
mod tests {
    use super::{Expression, Target};

    #[test]
    fn every_scheme_is_read() {
        assert_eq!(Target::read("given:dial"), Ok(Target::Given("dial".into())));
        assert_eq!(
            Target::read("page:lookup/?dial=1200kHz"),
            Ok(Target::Page("lookup/?dial=1200kHz".into()))
        );
        assert_eq!(
            Target::read("calc:oscillator?dial=909kHz&side=below"),
            Ok(Target::Calc(Expression {
                quantity: "oscillator".into(),
                typed: vec![
                    ("dial".into(), "909kHz".into()),
                    ("side".into(), "below".into())
                ],
            }))
        );
    }

    #[test]
    fn other_addresses_are_refused() {
        assert_eq!(
            Target::read("https://example.org/"),
            Err("a link begins with calc:, given:, fact:, term:, lesson:, page: or source: (got \"https://example.org/\")".into())
        );
        assert_eq!(
            Target::read("term:The IF"),
            Err("\"The IF\" in \"term:The IF\" is not an id (lower-case letters, digits and hyphens)".into())
        );
        assert_eq!(
            Target::read("calc:oscillator?dial"),
            Err("a parameter is written key=value (got \"dial\")".into())
        );
    }
}
