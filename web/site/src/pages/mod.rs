//! The pages of the site, one file for each kind.

mod home;

use crate::page::Page;
use crate::render::Site;
use anyhow::Result;

/// Every page of the site.
///
/// # Errors
/// When a page cannot be made from the content.
pub fn all(site: &Site<'_>) -> Result<Vec<Page>> {
    Ok(vec![home::page(site)])
}
