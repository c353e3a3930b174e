//! The pages of the site, one file for each kind.

mod about;
mod course;
pub(crate) mod formulas;
mod glossary;
mod home;
pub mod home_screen;
mod listing;
mod lookup;
mod my_set;
mod not_found;
mod place;
mod practice;
mod search;
mod strip;

use crate::page::Page;
use crate::render::Site;
use anyhow::Result;

/// Every page of the site.
///
/// # Errors
/// When a page cannot be made from the content.
pub fn all(site: &Site<'_>) -> Result<Vec<Page>> {
    let mut pages = vec![
        home::page(site),
        course::page(site),
        lookup::page(site),
        my_set::page(site),
        practice::page(site)?,
        practice::on_paper::page(site)?,
        practice::check::page(site)?,
        formulas::page(site)?,
        glossary::page(site),
        search::page(site),
        about::page(site),
        not_found::page(site),
    ];
    pages.extend(site.content.lessons.pages(site)?);
    Ok(pages)
}
