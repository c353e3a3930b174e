//! A lesson's marked numbers: worked out from its inputs, and again for the reader's set.
//!
//! In scope: inputs ([`Givens`]) and expressions ([`Expression`]) as authors write them,
//! printed numbers ([`Printed`]) and how a worked-out one is written like them
//! ([`written_like`]); the recipes of a lesson ([`Recipes`]), by which all of its numbers can
//! be made again, and what they come to for a set ([`own::apply`]). The site's tool uses all
//! of it natively; the page calls [`page`] alone.
//!
//! # Never a wrong number in a true sentence
//! A lesson is divided into units: the text under each heading, each figure, worked example
//! and misconception. In a unit either every number is the reader's set's or none is. A unit
//! follows the reader's set only where its author has said that its sentences stay true,
//! and under what conditions; otherwise it stays, and says why.

mod expression;
mod givens;
mod need;
pub mod own;
pub mod page;
mod printed;
pub mod recipes;
mod written;

pub use expression::{Expression, is_id};
pub use givens::{Given, Givens, WorkedOut};
pub use need::Need;
pub use printed::Printed;
pub use recipes::Recipes;
pub use written::written_like;
