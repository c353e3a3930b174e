//! The whole site in memory: path to bytes.

use crate::assets::{Assets, is_shipped};
use crate::content::Content;
use crate::edition::Edition;
use crate::inspection::inspect;
use crate::links::{Asked, Links};
use crate::page::{Figures, Page, file_of};
use crate::sources::Sources;
use crate::{mistake_names, pages, shell};
use anyhow::{Result, bail};
use std::collections::{BTreeMap, BTreeSet};

/// Every file of the site: path to bytes.
pub type Files = BTreeMap<String, Vec<u8>>;

/// The site while it is rendered: what pages and shell draw on.
#[derive(Debug)]
pub struct Site<'a> {
    /// What authors wrote.
    pub content: &'a Content,
    /// Which edition this is.
    pub edition: &'a Edition,
    assets: &'a Assets,
    asked: Asked,
}

impl Site<'_> {
    /// The links of the page at `path`.
    pub fn links(&self, path: &str) -> Links<'_> {
        Links::from_page(path, self.edition, &self.assets.names, &self.asked)
    }

    /// Whether an asset of this name exists.
    pub fn has_asset(&self, name: &str) -> bool {
        self.assets.names.path(name).is_some()
    }
}

/// Renders the whole site.
///
/// # Errors
/// When an asset or page that something names does not exist, or a page cannot be made.
pub fn render(sources: &Sources, edition: &Edition) -> Result<Files> {
    let mut assets = Assets::prepare(&sources.page_files, &sources.wasm, edition.is_portable())?;
    for (name, bytes) in sources.content.families.files(edition.is_portable())? {
        assets.add(&name, bytes);
    }
    let portable = edition.is_portable();
    let names = mistake_names::asset(&sources.content, portable)?;
    assets.add(mistake_names::asset_name(portable), names);
    let site = Site {
        content: &sources.content,
        edition,
        assets: &assets,
        asked: Asked::default(),
    };
    let mut files = Files::new();
    let all = pages::all(&site)?;
    for page in &all {
        files.insert(file_of(&page.path), shell::render(page, &site).into_bytes());
        if let Some(recipes) = &page.recipes {
            files.insert(format!("{}recipes.js", page.path), recipes_script(recipes)?);
        }
    }
    check_links(&all, &site.asked)?;
    add_plain_files(sources, edition, &mut files);
    leave_out_unused(&all, &mut assets);
    files.extend(assets.files);
    inspect(&files, edition)?;
    Ok(files)
}

/// The recipes of a lesson as a classic script, which a page opened from a file can load.
fn recipes_script(recipes: &str) -> Result<Vec<u8>> {
    let text = serde_json::to_string(recipes)?;
    Ok(format!("globalThis.beforeTheBenchRecipes = {text};\n").into_bytes())
}

/// Builds of the lesson program that no page asks for are not shipped, nor kept offline.
fn leave_out_unused(pages: &[Page], assets: &mut Assets) {
    for (name, ..) in Figures::BUILDS {
        if pages.iter().any(|page| page.program.name() == Some(name)) {
            continue;
        }
        for end in [".js", ".wasm", "-wasm.js"] {
            if let Some(path) = assets.names.path(&format!("{name}{end}")) {
                assets.files.remove(path);
            }
        }
    }
}

/// Files that keep their names: icons, manifests, and the interface for other scripts.
fn add_plain_files(sources: &Sources, edition: &Edition, files: &mut Files) {
    let icons = sources.page_files.folder("icons");
    for (name, bytes) in icons.filter(|(name, _)| is_shipped(name)) {
        files.insert(format!("icons/{name}"), bytes.to_vec());
    }
    for (name, bytes) in sources.page_files.top() {
        files.insert(name.to_owned(), bytes.to_vec());
    }
    if edition.is_portable() {
        return;
    }
    if let Some(api) = &sources.wasm.api {
        files.insert(
            "api/superhet.js".to_owned(),
            api.script.clone().into_bytes(),
        );
        files.insert(
            "api/superhet.d.ts".to_owned(),
            api.types.clone().into_bytes(),
        );
        files.insert("api/superhet_bg.wasm".to_owned(), api.wasm.clone());
    }
}

/// Refuses links to pages and assets that do not exist, all at once.
fn check_links(pages: &[Page], asked: &Asked) -> Result<()> {
    let known: BTreeSet<&str> = pages.iter().map(|page| page.path.as_str()).collect();
    let mut faults = BTreeSet::new();
    for (from, to) in asked.pages() {
        if !known.contains(to.as_str()) {
            faults.insert(format!(
                "page \"{from}\" links to \"{to}\", which is no page"
            ));
        }
    }
    for (from, name) in asked.missing_assets() {
        faults.insert(format!(
            "page \"{from}\" needs \"{name}\", which web/pages and the wasm do not have"
        ));
    }
    if faults.is_empty() {
        return Ok(());
    }
    let faults: Vec<String> = faults.into_iter().collect();
    bail!("{}", faults.join("\n"));
}
