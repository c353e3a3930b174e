//! The catalogue against numbers that textbooks and handbooks print.
//!
//! Most rows were read in student-made companions to the books (FOSSEE Python Textbook
//! Companion at commit d34b2ae7, and Scilab Textbook Companion uploads), so a source
//! names the book, the example and the page, and the number as the companion has it.
//! Each file lists the rows of its subject that are not used, with the reason.

mod coupled_circuits;
mod detector;
mod modulation;
mod preferred_values;
mod row;
mod spurious_responses;
mod superhet_arithmetic;
mod tracking;
mod tuned_circuits;
