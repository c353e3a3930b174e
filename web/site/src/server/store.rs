//! Files with their compressed forms, ready to be sent.

use crate::hashing::sha256;
use crate::render::Files;
use anyhow::{Context, Result};
use axum::body::Bytes;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// One file and its compressed forms.
#[derive(Debug, Clone)]
pub(super) struct Stored {
    pub(super) plain: Bytes,
    pub(super) brotli: Option<Bytes>,
    pub(super) gzip: Option<Bytes>,
    /// Changes with the content.
    pub(super) tag: String,
}

/// Every file of one version of the site.
#[derive(Debug, Clone, Default)]
pub struct Store {
    files: BTreeMap<String, Stored>,
}

impl Store {
    /// Takes rendered files; `path.br` and `path.gz` become forms of `path`.
    pub fn new(mut files: Files) -> Self {
        let paths: Vec<String> = files.keys().cloned().collect();
        let mut stored = BTreeMap::new();
        for path in paths {
            let is_form = [".br", ".gz"].iter().any(|end| {
                path.strip_suffix(end)
                    .is_some_and(|of| stored.contains_key(of))
            });
            if is_form {
                continue;
            }
            let Some(plain) = files.remove(&path) else {
                continue;
            };
            let tag = format!("\"{}\"", &sha256(&plain)[..16]);
            let form = Stored {
                brotli: files.remove(&format!("{path}.br")).map(Bytes::from),
                gzip: files.remove(&format!("{path}.gz")).map(Bytes::from),
                plain: Bytes::from(plain),
                tag,
            };
            stored.insert(path, form);
        }
        Self { files: stored }
    }

    /// One file.
    pub(super) fn file(&self, path: &str) -> Option<&Stored> {
        self.files.get(path)
    }

    /// All paths, compressed forms left out.
    pub fn paths(&self) -> impl Iterator<Item = &str> {
        self.files.keys().map(String::as_str)
    }
}

/// Reads a folder that `cargo site build` wrote.
///
/// # Errors
/// When the folder cannot be read.
pub fn read_folder(folder: &Path) -> Result<Files> {
    let mut files = Files::new();
    read_into(folder, "", &mut files)?;
    Ok(files)
}

fn read_into(folder: &Path, prefix: &str, files: &mut Files) -> Result<()> {
    let told = || format!("cannot read {}", folder.display());
    for entry in fs::read_dir(folder).with_context(told)? {
        let entry = entry.with_context(told)?;
        let path = format!("{prefix}{}", entry.file_name().to_string_lossy());
        if entry.path().is_dir() {
            read_into(&entry.path(), &format!("{path}/"), files)?;
        } else {
            files.insert(path, fs::read(entry.path()).with_context(told)?);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::Store;
    use crate::render::Files;

    #[test]
    fn compressed_forms_are_no_files_of_their_own() {
        let mut files = Files::new();
        for path in ["a.js", "a.js.br", "a.js.gz", "lonely.br"] {
            files.insert(path.to_owned(), path.as_bytes().to_vec());
        }
        let store = Store::new(files);
        assert_eq!(store.paths().collect::<Vec<_>>(), ["a.js", "lonely.br"]);
        let file = store.file("a.js").unwrap();
        assert_eq!(file.brotli.as_deref(), Some(&b"a.js.br"[..]));
        assert_eq!(file.gzip.as_deref(), Some(&b"a.js.gz"[..]));
    }
}
