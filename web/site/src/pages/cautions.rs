//! The cautions in full: on the page about the site, and wherever a reader comes near a set.

use maud::{Markup, html};

/// The cautions in full, in their box.
pub fn all() -> Markup {
    html! {
        div.caution {
            p.caution-title { "A valve set can kill you" }
            ul {
                li {
                    strong { "Mains and high tension kill. " }
                    "High tension is on valve pins, and in many sets on the trimmers and cans of "
                    "the IF transformers and on spindles: the very parts that alignment touches."
                }
                li {
                    strong { "Capacitors stay charged " }
                    "after the plug is out. Pulling the plug is the beginning of being safe, not "
                    "the end."
                }
                li {
                    strong { "Some chassis are live. " }
                    "In a set without a mains transformer the metal chassis, its screws and its "
                    "bare spindles may be joined straight to the mains, and which way round the "
                    "plug sits decides it."
                }
                li {
                    strong { "A set that has stood for years is not ready to be switched on. " }
                    "Leads, capacitors and rectifiers fail in store; old line cords and heat "
                    "guards may hold asbestos."
                }
                li {
                    strong { "Your local rules come first. " }
                    "Where they keep such work for licensed people, it is for them. Nothing on "
                    "this site makes anybody qualified, and no lesson asks you to open a set."
                }
                li {
                    strong { "Never alone. " }
                    "If you are not sure, do not: a club, a repairer or a teacher will show you."
                }
            }
        }
    }
}
