//! `cargo site calc`: one quantity worked on the command line.

use std::process::ExitCode;

/// Works what the arguments after `calc` ask for.
pub fn run(_arguments: &[String]) -> ExitCode {
    eprintln!("the catalogue holds no quantities yet");
    ExitCode::from(2)
}
