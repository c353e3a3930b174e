//! The files under `web/pages`, as they lie there.

use anyhow::{Context, Result};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// Everything under `web/pages`: path below it (with `/`) to bytes.
#[derive(Debug, Clone, Default)]
pub struct PageFiles {
    files: BTreeMap<String, Vec<u8>>,
}

impl PageFiles {
    /// Reads `web/pages` below the repository's root.
    ///
    /// # Errors
    /// When the folder or a file in it cannot be read.
    pub fn load(root: &Path) -> Result<Self> {
        let mut files = BTreeMap::new();
        let folder = root.join("web").join("pages");
        read_folder(&folder, "", &mut files)?;
        Ok(Self { files })
    }

    /// Puts one file in, for tests and benchmarks that bring their own.
    pub fn insert(&mut self, path: &str, bytes: impl Into<Vec<u8>>) {
        self.files.insert(path.to_owned(), bytes.into());
    }

    /// The bytes of a file by its path below `web/pages`.
    pub fn bytes(&self, path: &str) -> Option<&[u8]> {
        self.files.get(path).map(Vec::as_slice)
    }

    /// The files of one folder: (name, bytes), in the order of their names. Folders
    /// below it are left out.
    pub fn folder<'a>(&'a self, folder: &'a str) -> impl Iterator<Item = (&'a str, &'a [u8])> + 'a {
        self.files.iter().filter_map(move |(path, bytes)| {
            let name = path.strip_prefix(folder)?.strip_prefix('/')?;
            (!name.contains('/')).then_some((name, bytes.as_slice()))
        })
    }

    /// The files that lie directly in `web/pages`: (name, bytes).
    pub fn top(&self) -> impl Iterator<Item = (&str, &[u8])> {
        self.files.iter().filter_map(|(path, bytes)| {
            (!path.contains('/')).then_some((path.as_str(), bytes.as_slice()))
        })
    }
}

/// Reads a folder and those below it; what begins with a dot or ends with `~` is left out.
fn read_folder(folder: &Path, prefix: &str, files: &mut BTreeMap<String, Vec<u8>>) -> Result<()> {
    let told = || format!("cannot read {}", folder.display());
    for entry in fs::read_dir(folder).with_context(told)? {
        let entry = entry.with_context(told)?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if name.starts_with('.') || name.ends_with('~') {
            continue;
        }
        let path = format!("{prefix}{name}");
        if entry.path().is_dir() {
            read_folder(&entry.path(), &format!("{path}/"), files)?;
        } else {
            let bytes = fs::read(entry.path())
                .with_context(|| format!("cannot read {}", entry.path().display()))?;
            files.insert(path, bytes);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::PageFiles;

    #[test]
    fn a_folder_gives_its_own_files_alone() {
        let mut files = PageFiles::default();
        files.insert("css/base.css", "a");
        files.insert("css/deep/other.css", "b");
        files.insert("cssish/no.css", "c");
        files.insert("site.webmanifest", "d");
        let names: Vec<&str> = files.folder("css").map(|(name, _)| name).collect();
        assert_eq!(names, ["base.css"]);
        let top: Vec<&str> = files.top().map(|(name, _)| name).collect();
        assert_eq!(top, ["site.webmanifest"]);
    }
}
