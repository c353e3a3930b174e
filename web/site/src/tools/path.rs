//! Where a program lies.

use anyhow::{Context, Result};
use std::env;
use std::path::PathBuf;

/// The file of a program on the path, for those that ask for a file and not a name.
///
/// # Errors
/// When no folder of the path holds it.
pub fn find(program: &str) -> Result<PathBuf> {
    let path = env::var_os("PATH").context("PATH is not set")?;
    env::split_paths(&path)
        .map(|folder| folder.join(program))
        .find(|file| file.is_file())
        .with_context(|| format!("no folder of PATH holds {program}"))
}

#[cfg(test)]
mod tests {
    use super::find;

    #[test]
    fn what_is_on_the_path_is_found() {
        assert!(find("sh").is_ok_and(|file| file.is_absolute()));
        let said = find("no-such-program-anywhere").unwrap_err().to_string();
        assert!(said.contains("no-such-program-anywhere"), "{said}");
    }
}
