//! "Take my place with me": the controls that carry a reader's notebook to another browser.
//!
//! Static markup; `study` finds it by the ids and brings it alive. Until then it is hidden.

use maud::{Markup, html};

/// The controls, hidden until `study` shows `#place`.
pub(super) fn controls() -> Markup {
    html! {
        section #place .place hidden aria-labelledby="place-title" {
            h2 #place-title { "Take my place with me" }
            p {
                "Your ticked lessons, your tallies and your set live in this browser alone. "
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
                p { "This clears the notebook and the set from this browser. It cannot be undone." }
                button #place-wipe type="button" { "Yes, wipe it all" }
            }
        }
    }
}

/// The offer to somebody whose storage is empty, hidden until `study` shows it.
pub(super) fn restore_offer() -> Markup {
    html! {
        div #place-restore .restore hidden {
            p { "Been here before? Follow the link that you copied then, or open the file that you saved." }
            button #place-restore-open type="button" { "Open my saved file" }
        }
    }
}
