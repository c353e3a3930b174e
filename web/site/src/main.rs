//! `cargo site`: builds, serves and tests the site.

use site::cli::{Command, USAGE, parse};
use site::wasm::{Wasm, compile};
use site::{bench, building, calc, lighthouse, repository, response, serve, testing};
use std::process::ExitCode;
use std::sync::Arc;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match parse(&arguments) {
        Ok(command) => run(command),
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}

/// Runs one command; what went wrong is said on standard error.
fn run(command: Command) -> ExitCode {
    if let Command::Calc(arguments) = command {
        return calc::run(&arguments);
    }
    if let Command::Response(request) = command {
        return response::run(&request);
    }
    match carry_out(command) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error:#}");
            ExitCode::FAILURE
        }
    }
}

fn carry_out(command: Command) -> anyhow::Result<()> {
    let root = repository::root();
    match command {
        Command::Build { out, edition } => {
            let wasm = Arc::new(Wasm::bind(&compile(&root)?)?.optimised(&root)?);
            building::build(&root, &wasm, &edition, &out)
        }
        Command::Serve { port } => serve::run(&root, port),
        Command::Test => testing::run(&root),
        Command::Bench { group, json } => bench::run(&root, group.as_deref(), json),
        Command::Lighthouse { all } => lighthouse::run(&root, all),
        Command::Calc(_) | Command::Response(_) | Command::Help => {
            println!("{USAGE}");
            Ok(())
        }
    }
}
