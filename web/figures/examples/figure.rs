//! Prints a figure's markup: `cargo run -p figures --example figure -- NAME QUERY`.

use figures::{Input, markup};

fn main() -> Result<(), figures::FigureError> {
    let mut arguments = std::env::args().skip(1);
    let name = arguments.next().unwrap_or_default();
    let query = arguments.next().unwrap_or_default();
    let html = markup(&name, &Input::parse(&query)?, "", None)?;
    println!("{html}");
    Ok(())
}
