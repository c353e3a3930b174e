//! "Take my place with me": the controls that carry a reader's notebook to another browser.
//!
//! Static markup; `study` finds it by the ids and brings it alive. Until then it is hidden.
//! It stands at the end of the page, so that nothing above it moves when it appears.

use maud::{Markup, html};

/// The controls, hidden until `study` shows `#place`; in them the offer to somebody whose
/// storage is empty, hidden until it shows `#place-restore`.
pub(super) fn controls() -> Markup {
    html! {
        section #place .place hidden aria-labelledby="place-title" {
            h2 #place-title { "Take my place with me" }
            div #place-restore .restore hidden {
                p {
                    strong { "Been here before? " }
                    "This browser has nothing of yours. Follow the link that you copied then, or "
                    "open the file that you saved."
                }
                button #place-restore-open type="button" { "Open my saved file" }
            }
            p {
                "Your ticked lessons, your tallies, your place in practice and your set live in this "
                "browser alone. "
                "A browser may clear them: Safari does so after a week without a visit. "
                "A link or a file brings them back, here or anywhere."
            }
            div.buttons {
                button #place-link type="button" { "Copy a link" }
                button #place-export type="button" { "Save a file" }
                button #place-import type="button" { "Open a file" }
                input #place-file .visually-hidden type="file" accept=".json,application/json"
                    tabindex="-1" aria-label="A file saved here before";
            }
            p #place-said .said role="status" {}
            details {
                summary { "Wipe everything" }
                p {
                    "This clears the notebook, the set, your choice of paper and everything else "
                    "that this site keeps in this browser, save the pages themselves. It cannot be "
                    "undone."
                 }
                button #place-wipe type="button" { "Yes, wipe it all" }
            }
        }
    }
}
