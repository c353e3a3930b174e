//! When a task is done: a comparison of something that the figure shows.

use crate::arithmetic::typed;
use crate::{ControlKind, FigureError, View};

/// One or more comparisons joined by `and`, such as `image > 1606.5 kHz` or
/// `side = below and oscillator < 300 kHz`.
#[derive(Clone, Debug, PartialEq)]
pub struct Condition {
    parts: Vec<Comparison>,
}

#[derive(Clone, Debug, PartialEq)]
struct Comparison {
    name: String,
    relation: Relation,
    bound: String,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Relation {
    Less,
    AtMost,
    Equal,
    AtLeast,
    More,
}

/// The signs of the relations, the longer ones first so that `>=` is not read as `>`.
const SIGNS: [(&str, Relation); 5] = [
    ("<=", Relation::AtMost),
    (">=", Relation::AtLeast),
    ("<", Relation::Less),
    (">", Relation::More),
    ("=", Relation::Equal),
];

impl Condition {
    /// Reads a condition.
    ///
    /// # Errors
    /// A part that is not `name relation value`.
    pub fn parse(text: &str) -> Result<Self, FigureError> {
        let parts = text
            .split(" and ")
            .map(Comparison::parse)
            .collect::<Result<_, _>>()?;
        Ok(Self { parts })
    }

    /// Whether `view` meets every part of the condition.
    ///
    /// # Errors
    /// The figure shows nothing of that name, or the value cannot be read.
    pub fn met(&self, view: &View) -> Result<bool, FigureError> {
        let mut all = true;
        for part in &self.parts {
            all &= part.met(view)?;
        }
        Ok(all)
    }

    /// How far `view` is from meeting the condition: 0 where it is met, otherwise the sum of
    /// how far each value is from its bound, as a share of the bound. A choice that is not
    /// the right one counts 1.
    ///
    /// # Errors
    /// As [`Self::met`].
    pub fn shortfall(&self, view: &View) -> Result<f64, FigureError> {
        let mut sum = 0.0;
        for part in &self.parts {
            sum += part.shortfall(view)?;
        }
        Ok(sum)
    }
}

impl Comparison {
    fn parse(text: &str) -> Result<Self, FigureError> {
        SIGNS
            .iter()
            .find_map(|&(sign, relation)| {
                let (name, bound) = text.split_once(sign)?;
                let (name, bound) = (name.trim().to_owned(), bound.trim().to_owned());
                let complete = !name.is_empty() && !bound.is_empty();
                complete.then_some(Self {
                    name,
                    relation,
                    bound,
                })
            })
            .ok_or_else(|| {
                FigureError::new(format!(
                    "a task is done when something compares, as in 'image > 1600 kHz' (got '{}')",
                    text.trim()
                ))
            })
    }

    fn shortfall(&self, view: &View) -> Result<f64, FigureError> {
        if self.met(view)? {
            return Ok(0.0);
        }
        let Some(quantity) = view.quantity(&self.name) else {
            return Ok(1.0);
        };
        let bound = typed(quantity.kind, quantity.name, &self.name, &self.bound)?.value;
        let share = libm::fabs(quantity.value - bound) / libm::fabs(bound).max(f64::MIN_POSITIVE);
        // A value on the bound of a strict relation has not met it.
        Ok(share.max(f64::EPSILON))
    }

    fn met(&self, view: &View) -> Result<bool, FigureError> {
        if let Some(quantity) = view.quantity(&self.name) {
            let bound = typed(quantity.kind, quantity.name, &self.name, &self.bound)?;
            return Ok(self.relation.holds(quantity.value, bound.value));
        }
        let chosen = view
            .controls
            .iter()
            .find_map(|control| match &control.kind {
                ControlKind::Choice { chosen, .. } if control.parameter == self.name => {
                    Some(*chosen)
                }
                _ => None,
            });
        match chosen {
            Some(chosen) => Ok(self.relation == Relation::Equal && chosen == self.bound),
            None => Err(FigureError::about(
                &self.name,
                format!("this figure shows nothing called '{}'", self.name),
            )),
        }
    }
}

impl Relation {
    fn holds(self, value: f64, bound: f64) -> bool {
        match self {
            Self::Less => value < bound,
            Self::AtMost => value <= bound,
            // Values that a reader sets are round numbers of hertz: exact in f64.
            Self::Equal => value == bound,
            Self::AtLeast => value >= bound,
            Self::More => value > bound,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Condition;
    use crate::{Input, view};

    fn met(condition: &str, query: &str) -> bool {
        let view = view("frequency-line", &Input::parse(query).unwrap()).unwrap();
        Condition::parse(condition).unwrap().met(&view).unwrap()
    }

    #[test]
    fn a_task_is_done_when_its_comparison_holds() {
        let above = "dial=1200kHz&if=470kHz&side=above";
        assert!(met("image > 1606.5 kHz", above));
        assert!(met("image>1606.5kHz", above));
        assert!(!met("oscillator<=1660 kHz", above));
        assert!(met("oscillator >= 1670 kHz and dial = 1200 kHz", above));
        assert!(!met("side = below", above));
        assert!(met(
            "side = below and image < 1 MHz",
            "dial=1200kHz&if=470kHz&side=below"
        ));
    }

    #[test]
    fn what_is_missing_is_a_share_of_the_bound() {
        let short = |condition: &str| {
            let query = Input::parse("dial=1200kHz&if=470kHz&side=above").unwrap();
            let view = view("frequency-line", &query).unwrap();
            Condition::parse(condition).unwrap().shortfall(&view)
        };
        assert_eq!(short("oscillator > 1600 kHz").unwrap(), 0.0);
        assert_eq!(short("dial > 1600 kHz").unwrap(), 0.25);
        assert_eq!(short("dial > 1600 kHz and side = below").unwrap(), 1.25);
        assert!(short("oscillator > 1670 kHz").unwrap() > 0.0);
        assert!(short("whistle > 1 kHz").is_err());
    }

    #[test]
    fn what_the_figure_does_not_show_is_an_error() {
        assert!(Condition::parse("image").is_err());
        let view = view(
            "block-diagram",
            &Input::parse("dial=1200kHz&if=470kHz&side=above").unwrap(),
        );
        let condition = Condition::parse("image > 1 MHz").unwrap();
        let said = condition.met(&view.unwrap()).unwrap_err().to_string();
        assert!(said.contains("'image'"), "{said}");
    }
}
