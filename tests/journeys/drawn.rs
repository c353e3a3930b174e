//! Problems of a page, drawn here once more.

use crate::practice::content;
use anyhow::{Context, Result, anyhow, bail};
use checks::Visit;
use superhet::problems::problem::{Answer, NumberAnswer};
use superhet::problems::{Level, Problem, ProblemCode, Registered, generate};

/// Any seed does: the problem is drawn anew from it here and on the page.
const SEED: u32 = 20_261;

/// A problem, and the code that opens it.
pub(crate) struct Drawn {
    pub(crate) problem: Problem,
    pub(crate) code: String,
}

impl Drawn {
    /// A problem of a family's first level.
    pub(crate) fn of(family: &str) -> Result<Self> {
        let content = content()?;
        let found = content.families.find(family);
        let Registered { number, family } = found.context(family.to_owned())?;
        let code = ProblemCode {
            family: *number,
            revision: family.revision,
            level: Level::One,
            seed: SEED,
        };
        Ok(Self {
            problem: generate(family, code.level, code.seed)?,
            code: code.encode().map_err(|error| anyhow!("{error}"))?,
        })
    }

    /// The problem that lies open on a desk, which its own link names.
    pub(crate) async fn at(visit: &Visit, desk: &str) -> Result<Self> {
        let code = visit.text(&format!("{desk} .again a")).await?;
        let named = ProblemCode::decode(&code).map_err(|error| anyhow!("{code}: {error}"))?;
        let content = content()?;
        let family = content.families.numbered(named.family, named.revision);
        let family = &family.with_context(|| code.clone())?.family;
        let problem = generate(family, named.level, named.seed)?;
        Ok(Self { problem, code })
    }

    /// The number that its first part asks for.
    pub(crate) fn answer(&self) -> Result<&NumberAnswer> {
        match &self.problem.parts[0].answer {
            Answer::Number(number) => Ok(number),
            Answer::Choice(_) => bail!("{} asks for a choice", self.problem.family),
        }
    }
}
