//! Assets: style sheets, fonts, scripts and wasm under names that change with their
//! content, so that a browser may keep them for ever.

use crate::hashing::hashed_name;
use crate::page_files::PageFiles;
use crate::programs;
use crate::wasm::Wasm;
use anyhow::{Context, Result, bail};
use std::collections::BTreeMap;

/// The folder all hashed assets are written to.
const FOLDER: &str = "assets";

/// Logical name (`base.css`) to path in the site (`assets/base.1a2b3c4d5e.css`).
#[derive(Debug, Clone, Default)]
pub struct AssetNames {
    paths: BTreeMap<String, String>,
}

impl AssetNames {
    /// Gives an asset its path.
    pub fn insert(&mut self, name: &str, path: &str) {
        self.paths.insert(name.to_owned(), path.to_owned());
    }

    /// The path of an asset in the site.
    pub fn path(&self, name: &str) -> Option<&str> {
        self.paths.get(name).map(String::as_str)
    }
}

/// The assets of one edition, ready to be written.
#[derive(Debug, Clone, Default)]
pub struct Assets {
    /// Where each asset is found.
    pub names: AssetNames,
    /// Path in the site to bytes.
    pub files: BTreeMap<String, Vec<u8>>,
}

impl Assets {
    /// Names and joins all assets: fonts first, since style sheets name them, then
    /// style sheets, wasm, and scripts.
    ///
    /// # Errors
    /// When a style sheet names a file that does not exist or is no text.
    pub fn prepare(sources: &PageFiles, wasm: &Wasm, portable: bool) -> Result<Self> {
        let mut assets = Self::default();
        for folder in ["fonts", "images"] {
            for (name, bytes) in sources.folder(folder) {
                if is_shipped(name) {
                    assets.add(name, bytes.to_vec());
                }
            }
        }
        for (name, bytes) in sources.folder("css") {
            let text = std::str::from_utf8(bytes)
                .with_context(|| format!("web/pages/css/{name} is not UTF-8"))?;
            let text = rewrite_urls(name, text, &assets.names)?;
            assets.add(name, text.into_bytes());
        }
        for (name, bytes) in programs::compose(sources, wasm, portable)? {
            assets.add(&name, bytes);
        }
        Ok(assets)
    }

    /// Adds one asset under its hashed name.
    pub fn add(&mut self, name: &str, bytes: Vec<u8>) {
        let path = format!("{FOLDER}/{}", hashed_name(name, &bytes));
        self.names.insert(name, &path);
        self.files.insert(path, bytes);
    }
}

/// Licences and the scripts that made a font lie beside it and are not shipped.
pub(crate) fn is_shipped(name: &str) -> bool {
    [".woff2", ".svg", ".png", ".webp", ".jpg", ".ico"]
        .iter()
        .any(|ending| name.ends_with(ending))
}

/// Replaces each `url("…/name")` in a style sheet by the asset's hashed name. `data:`
/// addresses and fragments stay.
fn rewrite_urls(sheet: &str, text: &str, names: &AssetNames) -> Result<String> {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find("url(") {
        let (before, after) = rest.split_at(at + "url(".len());
        let end = after
            .find(')')
            .with_context(|| format!("web/pages/css/{sheet}: url( without )"))?;
        let address = after[..end].trim().trim_matches(['"', '\'']);
        out.push_str(before);
        out.push_str(&hashed_address(sheet, address, names)?);
        rest = &after[end..];
    }
    out.push_str(rest);
    Ok(out)
}

/// The address a style sheet in the asset folder uses for one it named by its source.
fn hashed_address(sheet: &str, address: &str, names: &AssetNames) -> Result<String> {
    if address.starts_with("data:") || address.starts_with('#') {
        return Ok(format!("\"{address}\""));
    }
    let name = address.rsplit('/').next().unwrap_or(address);
    let Some(path) = names.path(name) else {
        bail!("web/pages/css/{sheet}: url({address}) names no font or image of web/pages");
    };
    let file = path.rsplit('/').next().unwrap_or(path);
    Ok(format!("\"{file}\""))
}

#[cfg(test)]
mod tests {
    use super::Assets;
    use crate::page_files::PageFiles;
    use crate::wasm::Wasm;

    #[test]
    fn a_style_sheet_finds_its_font_under_the_hashed_name() {
        let mut sources = PageFiles::default();
        sources.insert("fonts/ink.woff2", b"font".to_vec());
        sources.insert("fonts/LICENSE", b"words".to_vec());
        sources.insert(
            "css/base.css",
            "@font-face{src:url('../fonts/ink.woff2')}a{b:url(data:image/svg+xml,x)}",
        );
        let assets = Assets::prepare(&sources, &Wasm::default(), false).unwrap();
        let font = assets.names.path("ink.woff2").unwrap();
        let sheet = assets.names.path("base.css").unwrap();
        let text = String::from_utf8(assets.files[sheet].clone()).unwrap();
        let font_file = font.strip_prefix("assets/").unwrap();
        assert_eq!(
            text,
            format!("@font-face{{src:url(\"{font_file}\")}}a{{b:url(\"data:image/svg+xml,x\")}}")
        );
        assert!(assets.names.path("LICENSE").is_none());
    }

    #[test]
    fn a_style_sheet_that_names_nothing_is_refused() {
        let mut sources = PageFiles::default();
        sources.insert("css/base.css", "a{b:url(gone.woff2)}");
        let said = Assets::prepare(&sources, &Wasm::default(), false)
            .unwrap_err()
            .to_string();
        assert!(
            said.contains("css/base.css") && said.contains("gone.woff2"),
            "{said}"
        );
    }
}
