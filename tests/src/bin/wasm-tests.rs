//! Runs wasm tests in a headless browser; `cargo site test` names this program to cargo
//! as the runner of the wasm target.

fn main() -> anyhow::Result<()> {
    wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(std::env::args_os())
}
