//! Problems: families read as data, problems drawn from a seed, answers marked.
//!
//! A [`Family`] is what its file says. [`generate`] draws a [`Problem`] from it, the
//! same one for ever for the same family, revision, level and seed. [`mark`] judges
//! what a learner typed and names the mistake that fits. A [`Sitting`] keeps which
//! hint comes next and whether the working may be seen. A [`Standing`] says when a family
//! comes back, and a [`session`] which are practised together. [`before_after`] says which
//! form of the check comes when. A [`ProblemCode`] reopens a problem, number for number.

pub mod before_after;
pub mod check;
mod check_draws;
pub mod code;
mod collisions;
mod diagnosis;
mod draw;
pub mod english;
pub mod evaluate;
pub mod expression;
pub mod family;
pub mod fault;
#[cfg(test)]
mod fixture;
mod generate;
mod given;
pub mod marking;
mod part;
pub mod precision;
pub mod problem;
pub mod schedule;
pub mod scope;
pub mod session;
mod set_on;
mod sitting;
pub mod text;
mod token;

pub use code::ProblemCode;
pub use family::{Family, Level, Registered};
pub use generate::{GenerateError, generate, generate_for_set, generate_with};
pub use marking::{Marking, Verdict, mark};
pub use problem::Problem;
pub use schedule::{LeitnerBox, Standing};
pub use sitting::{Outcome, Sitting};
