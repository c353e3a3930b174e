//! `cargo site`.
fn main() {}
