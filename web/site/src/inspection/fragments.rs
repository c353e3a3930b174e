//! Where links lead: files of the site, and ids within its pages.

use super::tags::{Tag, tags};
use crate::edition::Edition;
use crate::page::file_of;
use crate::render::Files;
use std::collections::{BTreeMap, BTreeSet};

/// Files that are added only after the pages are looked at.
const ADDED_LATER: [&str; 2] = ["sw.js", crate::portable::DOWNLOAD];

/// Everything a link may lead to.
pub(super) struct Targets<'a> {
    files: &'a Files,
    base: &'a str,
    ids: BTreeMap<&'a str, Ids<'a>>,
}

/// The ids of one page, and those that stand in it more than once.
#[derive(Default)]
struct Ids<'a> {
    all: BTreeSet<&'a str>,
    twice: BTreeSet<&'a str>,
}

impl<'a> Targets<'a> {
    /// All files and ids of a rendering.
    pub(super) fn of(files: &'a Files, edition: &'a Edition) -> Self {
        let base = match edition {
            Edition::Hosted { base, .. } => base,
            Edition::Portable => "/",
        };
        let pages = files.iter().filter_map(|(path, bytes)| {
            let page = super::page(path, bytes)?;
            Some((path.as_str(), Ids::of(page)))
        });
        Self {
            files,
            base,
            ids: pages.collect(),
        }
    }

    /// Refuses ids that stand twice in a page.
    pub(super) fn check_ids(&self, path: &str, faults: &mut Vec<String>) {
        let twice = self.ids.get(path).map(|ids| &ids.twice);
        for id in twice.into_iter().flatten() {
            faults.push(format!("id \"{id}\" stands twice"));
        }
    }

    /// Refuses what a tag points to inside the site when it is not there.
    pub(super) fn check(&self, from: &str, tag: &Tag<'_>, faults: &mut Vec<String>) {
        for name in ["href", "src"] {
            let Some(link) = tag.attribute(name).filter(|link| is_inside(link)) else {
                continue;
            };
            if let Err(fault) = self.lead(from, link) {
                faults.push(format!("<{} {name}=\"{link}\"> {fault}", tag.name));
            }
        }
    }

    /// Follows a link from a page.
    fn lead(&self, from: &str, link: &str) -> Result<(), String> {
        let (address, fragment) = link.split_once('#').unwrap_or((link, ""));
        let address = address.split('?').next().unwrap_or_default();
        let path = if address.is_empty() {
            from.to_owned()
        } else {
            file_of(&self.resolve(from, address)?)
        };
        let added = ADDED_LATER.contains(&path.as_str());
        if !self.files.contains_key(&path) && !added {
            return Err("leads to nothing".to_owned());
        }
        let known = self.ids.get(path.as_str());
        let is_id = !fragment.is_empty() && !fragment.contains('=');
        if is_id && known.is_none_or(|ids| !ids.all.contains(fragment)) {
            return Err(format!("leads to no id \"{fragment}\" of {path}"));
        }
        Ok(())
    }

    /// The path in the site of an address on a page.
    fn resolve(&self, from: &str, address: &str) -> Result<String, String> {
        let out = || "leads out of the site".to_owned();
        if let Some(inside) = address.strip_prefix(self.base) {
            return Ok(inside.to_owned());
        }
        if address.starts_with('/') {
            return Err(out());
        }
        let mut parts: Vec<&str> = from.split('/').collect();
        parts.pop();
        for part in address.split('/') {
            match part {
                "." => {}
                ".." => drop(parts.pop().ok_or_else(out)?),
                name => parts.push(name),
            }
        }
        // A last ".." or "." leads to a folder, like one with its slash.
        let folder = address.ends_with("..") || address.ends_with('.');
        let path = parts.join("/");
        Ok(if folder && !path.is_empty() {
            path + "/"
        } else {
            path
        })
    }
}

impl<'a> Ids<'a> {
    fn of(page: &'a str) -> Self {
        let mut ids = Self::default();
        for tag in tags(page) {
            if let Some(id) = tag.attribute("id")
                && !ids.all.insert(id)
            {
                ids.twice.insert(id);
            }
        }
        ids
    }
}

/// Addresses with a scheme, such as `https:`, `mailto:` or `data:`, lead elsewhere.
fn is_inside(link: &str) -> bool {
    let before = link.split(['/', '?', '#']).next().unwrap_or_default();
    !before.contains(':') && !link.starts_with("//")
}
