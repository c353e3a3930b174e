//! The hint to put the site on the home screen, for `page.js` to show after a first lesson.

use maud::{Markup, html};

/// The hint, at the end of every page that knows the notebook; hidden until `page.js` finds that it is worth showing.
pub fn hint() -> Markup {
    html! {
        aside #home-screen .note.no-print hidden aria-label="Keep this at hand" {
            p {
                strong { "Keep this at hand." }
                " Put the site on your home screen: it then opens like any app, also without "
                "signal, and your browser will not clear it after a week. "
                "In Safari: Share, then Add to Home Screen. "
                "The home screen keeps a notebook of its own, so first copy your link under "
                "“Take my place with me” on the first page, and open it there."
            }
            div.buttons {
                button type="button" data-do="install" hidden { "Put it on my home screen" }
                button type="button" data-do="dismiss" { "Not now" }
            }
        }
    }
}
