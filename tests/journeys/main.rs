//! Journeys through the built site in browsers, one file for each part of it.

mod harness;
mod home;
mod lookup;
mod offline;
mod portable;
