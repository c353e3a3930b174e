//! Journeys through the built site in browsers, one file for each part of it.

mod budgets;
mod check;
mod drawn;
mod elsewhere;
mod every_page;
mod formulas;
mod harness;
mod home;
mod lesson;
mod lookup;
mod my_set;
mod offline;
mod place;
mod portable;
mod practice;
mod search;
mod told;
