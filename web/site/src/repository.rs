//! Where things lie in the repository.

use std::path::{Path, PathBuf};

/// The repository's root, from where this package was built.
pub fn root() -> PathBuf {
    let package = Path::new(env!("CARGO_MANIFEST_DIR"));
    package.ancestors().nth(2).unwrap_or(package).to_path_buf()
}
