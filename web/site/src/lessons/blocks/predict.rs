//! A prediction: a question with choices, and the quantity that settles it.

use super::Opening;
use super::items::{self, Item, choice_mark};
use super::keyed::{Keyed, trim};
use crate::lessons::block::Fence;
use crate::lessons::prose::Run;
use crate::report::Report;
use numbers::Expression;
use std::ops::Range;

/// A prediction.
#[derive(Clone, Debug)]
pub(crate) struct Predict {
    /// Place of the block.
    pub(crate) at: usize,
    /// The question.
    pub(crate) question: Run,
    /// What can be chosen; exactly one is right.
    pub(crate) choices: Vec<Choice>,
    /// The quantity that settles it.
    pub(crate) settled_by: Expression,
    /// Place of that quantity.
    pub(crate) settled_at: usize,
    /// Why it is so.
    pub(crate) because: Run,
}

/// One choice.
#[derive(Clone, Debug)]
pub(crate) struct Choice {
    /// Whether it is the right one.
    pub(crate) right: bool,
    /// What it says.
    pub(crate) words: Run,
    /// The misconception behind a wrong one, and its place.
    pub(crate) misconception: Option<(String, usize)>,
}

impl Predict {
    pub(super) fn read(opening: &Opening<'_>, fence: &Fence, report: &mut Report) -> Option<Self> {
        opening.nothing_more(report);
        let file = opening.file;
        let keyed = Keyed::read(
            opening,
            fence.body.clone(),
            &["settled by", "because"],
            report,
        );
        let (question, items) = items::split(file.text(), keyed.lead.clone(), choice_mark);
        if question.is_empty() {
            file.fault(opening.at, "a prediction begins with a question", report);
        }
        let choices: Vec<Choice> = items
            .iter()
            .map(|item| Choice::read(opening, &keyed, item, report))
            .collect();
        check_choices(opening, &choices, report);
        let settled = keyed.required("settled by", report);
        let because = keyed.required("because", report);
        let (settled, because) = (settled?, because?);
        Some(Self {
            at: opening.at,
            question: keyed.run(question, report),
            choices,
            settled_at: settled.start,
            settled_by: read_expression(opening, settled, report)?,
            because: keyed.run(because, report),
        })
    }
}

fn read_expression(
    opening: &Opening<'_>,
    range: Range<usize>,
    report: &mut Report,
) -> Option<Expression> {
    let read = Expression::read(&opening.file.text()[range.clone()]);
    read.map_err(|message| opening.file.fault(range.start, message, report))
        .ok()
}

fn check_choices(opening: &Opening<'_>, choices: &[Choice], report: &mut Report) {
    let right = choices.iter().filter(|choice| choice.right).count();
    if choices.len() < 2 || right != 1 {
        let message = format!(
            "a prediction has at least two choices, \"- [ ]\" or \"- [x]\", of which exactly one is right \
             (got {} choices, {right} of them right)",
            choices.len()
        );
        opening.file.fault(opening.at, message, report);
    }
}

impl Choice {
    fn read(opening: &Opening<'_>, keyed: &Keyed<'_>, item: &Item, report: &mut Report) -> Self {
        let text = opening.file.text();
        let right = text[item.at..].starts_with("- [x]");
        let words = &text[item.words.clone()];
        let named = words.strip_suffix('}').and_then(|words| {
            words
                .rfind('{')
                .map(|brace| (brace, words[brace + 1..].to_owned()))
        });
        let Some((brace, id)) = named else {
            return Self {
                right,
                words: keyed.run(item.words.clone(), report),
                misconception: None,
            };
        };
        let before = trim(text, item.words.start..item.words.start + brace);
        Self {
            right,
            words: keyed.run(before, report),
            misconception: Some((id, item.words.start + brace)),
        }
    }
}
