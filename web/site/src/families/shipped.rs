//! Families as files of the site: each by itself, fetched by a page that wants to work it.
//!
//! A host serves JSON. A page opened from a file may fetch nothing, so in the portable
//! edition a family is a classic script that leaves the same text on its own element.

use super::Families;
use anyhow::{Context, Result};
use superhet::problems::Registered;

/// The name of a family's asset.
pub fn asset_name(id: &str, portable: bool) -> String {
    let end = if portable { "js" } else { "json" };
    format!("family-{id}.{end}")
}

impl Families {
    /// The newest revision of each family as an asset: (name, bytes).
    ///
    /// # Errors
    /// When a family cannot be written as JSON.
    pub fn files(&self, portable: bool) -> Result<Vec<(String, Vec<u8>)>> {
        let file = |registered: &Registered| {
            let id = &registered.family.id;
            let told = || format!("the problem family {id}");
            let bytes = json(registered).and_then(|text| as_asset(&text, portable));
            Ok((asset_name(id, portable), bytes.with_context(told)?))
        };
        self.newest().map(file).collect()
    }
}

/// A text that a page's program fetches, as its edition ships it.
///
/// # Errors
/// When the text cannot be quoted.
pub(crate) fn as_asset(text: &str, portable: bool) -> Result<Vec<u8>> {
    let text = if portable {
        script(text)?
    } else {
        text.to_owned()
    };
    Ok(text.into_bytes())
}

/// What the program of a page reads: `{"number":3,"family":{…}}`.
fn json(registered: &Registered) -> Result<String> {
    Ok(serde_json::to_string(registered)?)
}

/// The same text, for `study.js` to find on the element that brought it.
fn script(text: &str) -> Result<String> {
    let text = serde_json::to_string(text)?;
    Ok(format!("document.currentScript.familyText = {text};\n"))
}

#[cfg(test)]
mod tests {
    use crate::content::Content;
    use crate::repository;
    use serde_json::Value;

    #[test]
    fn a_script_brings_the_text_that_a_host_serves() {
        let families = Content::load(&repository::root()).unwrap().families;
        let hosted = families.files(false).unwrap();
        let portable = families.files(true).unwrap();
        assert_eq!(hosted.len(), families.newest().count());
        for ((name, text), (script_name, script)) in hosted.iter().zip(&portable) {
            assert_eq!(name.strip_suffix("on"), Some(script_name.as_str()));
            let script = std::str::from_utf8(script).unwrap();
            let brought = script
                .strip_prefix("document.currentScript.familyText = ")
                .and_then(|rest| rest.strip_suffix(";\n"))
                .unwrap();
            let brought: String = serde_json::from_str(brought).unwrap();
            assert_eq!(brought.as_bytes(), text.as_slice());
            let read: Value = serde_json::from_str(&brought).unwrap();
            assert_eq!(
                name,
                &format!("family-{}.json", read["family"]["id"].as_str().unwrap())
            );
        }
    }
}
