//! The core, natively, against the committed grid.
#![cfg(not(target_arch = "wasm32"))]

mod grid;

#[test]
fn the_core_gives_the_committed_bits() {
    if std::env::var_os("UPDATE_GRID").is_some() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/grid/grid.txt");
        std::fs::write(path, grid::lines().join("\n") + "\n").unwrap();
        return;
    }
    if let Some(difference) = grid::first_difference() {
        panic!(
            "{difference}\nIf this change is meant, write the grid anew with \
             UPDATE_GRID=1 cargo test -p api --test native_grid"
        );
    }
}

/// Lines that are mostly refusals would compare nothing.
#[test]
fn every_quantity_is_worked_out_in_the_grid() {
    let grid = grid::lines();
    for entry in superhet::catalogue::catalogue() {
        let start = format!("{}?", entry.name);
        let lines = || grid.iter().filter(|line| line.starts_with(&start));
        let worked = lines().filter(|line| line.contains(" = ")).count();
        let all = lines().count();
        assert!(
            worked >= 8 && 2 * worked >= all,
            "{start} {worked} of {all}"
        );
    }
}
