//! A timed answer, and when two are the same.

use anyhow::{Context, Result, ensure};
use serde::Deserialize;

/// What one side says to one question.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Answer {
    pub(super) question: String,
    seconds: f64,
    answers: Vec<f64>,
}

impl Answer {
    /// Reads `{"question", "seconds", "answers"}`.
    pub(super) fn read(line: &str) -> Result<Self> {
        serde_json::from_str(line).with_context(|| format!("no answer: {line}"))
    }

    /// The answer to a question that took least, and how long it took.
    pub(super) fn fastest<'a>(question: &str, all: &'a [Self]) -> Result<(&'a Self, f64)> {
        let to_it = all.iter().filter(|answer| answer.question == question);
        let fastest = to_it.min_by(|one, other| one.seconds.total_cmp(&other.seconds));
        let fastest = fastest.with_context(|| format!("nobody answered \"{question}\""))?;
        Ok((fastest, fastest.seconds))
    }
}

/// How closely two answers must agree: to `relative` of the value, or of `least_scale`
/// where that is more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Agreement {
    pub(super) relative: f64,
    pub(super) least_scale: f64,
}

impl Agreement {
    /// # Errors
    /// When the answers are not the same, with the first place where they differ.
    pub(super) fn check(&self, ours: &Answer, rival: &Answer) -> Result<()> {
        let (ours, rival) = (&ours.answers, &rival.answers);
        ensure!(
            !ours.is_empty() && ours.len() == rival.len(),
            "{} answers against {}",
            ours.len(),
            rival.len()
        );
        for (place, (ours, rival)) in ours.iter().zip(rival).enumerate() {
            let allowed = self.relative * rival.abs().max(self.least_scale);
            ensure!(
                ours.is_finite() && rival.is_finite() && (ours - rival).abs() <= allowed,
                "answer {}: {ours:e}, the rival's {rival:e}",
                place + 1
            );
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::{Agreement, Answer};

    fn answer(seconds: f64, answers: &[f64]) -> Answer {
        Answer::read(&format!(
            r#"{{"question":"curve","seconds":{seconds:?},"answers":{answers:?}}}"#
        ))
        .unwrap()
    }

    #[test]
    fn the_fastest_answer_is_found_by_its_question() {
        let all = [answer(2e-6, &[1.0]), answer(1e-6, &[2.0])];
        let (fastest, seconds) = Answer::fastest("curve", &all).unwrap();
        assert_eq!((fastest, seconds), (&all[1], 1e-6));
        let said = Answer::fastest("card", &all).unwrap_err().to_string();
        assert!(said.contains("\"card\""), "{said}");
    }

    #[test]
    fn answers_that_differ_are_no_match() {
        let agreement = Agreement {
            relative: 1e-9,
            least_scale: 1.0,
        };
        let ours = answer(1.0, &[100.0, 1e-3]);
        let same = agreement.check(&ours, &answer(1.0, &[100.0 + 9e-8, 1e-3 + 9e-10]));
        assert!(same.is_ok());
        for other in [
            &[100.0 + 2e-7, 1e-3][..],
            &[100.0, 1e-3 + 2e-9],
            &[100.0],
            &[100.0, f64::INFINITY],
        ] {
            let checked = agreement.check(&ours, &unread(other));
            assert!(checked.is_err(), "{other:?}");
        }
    }

    /// JSON has no infinity and no NaN.
    fn unread(answers: &[f64]) -> Answer {
        Answer {
            question: "curve".to_owned(),
            seconds: 1.0,
            answers: answers.to_vec(),
        }
    }

    #[test]
    fn what_is_not_a_number_is_no_match() {
        let agreement = Agreement {
            relative: 1e-9,
            least_scale: 1.0,
        };
        let nan = unread(&[f64::NAN]);
        assert!(agreement.check(&unread(&[1.0]), &nan).is_err());
        assert!(agreement.check(&nan, &unread(&[1.0])).is_err());
    }
}
