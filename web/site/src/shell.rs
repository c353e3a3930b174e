//! What stands around every page.

use crate::page::Page;
use crate::render::Site;
use crate::security::policy;
use maud::{DOCTYPE, html};

/// A whole page as text: head, header, main, footer.
pub fn render(page: &Page, site: &Site<'_>) -> String {
    let markup = html! {
        (DOCTYPE)
        html lang="en-GB" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta http-equiv="Content-Security-Policy" content=(policy(site.edition));
                title { (page.title) " – Before the Bench" }
                meta name="description" content=(page.description);
            }
            body {
                main { (page.main) }
            }
        }
    };
    markup.into_string()
}
