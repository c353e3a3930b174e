//! The sentences under the answer.

use lookup::View;
use maud::{Markup, html};

pub(super) fn section(view: &View, cautions: &str) -> Markup {
    let notes = &view.notes;
    html! {
        section.notes.no-print data-slot="notes" aria-label="More about this setting" {
            dl {
                (note("Dial", "note-dial", &notes.dial))
                (note("Channel", "note-channel", &notes.channel))
                (note("Image", "note-image", &notes.image))
                (note("IF", "note-if", &notes.intermediate))
                dt { "Whistles" }
                dd {
                    p data-slot="note-whistles" { (notes.whistles) }
                    ul data-slot="whistles" {
                        @for whistle in &view.whistles {
                            li data-quantity="whistle" data-value=(whistle.pitch.to_hz()) { (whistle.says) }
                        }
                    }
                }
            }
            p.small.soft {
                "Bands and services: ITU Radio Regulations, edition of 2020, Article 5, from memory and simplified: "
                "primary services, and below 11 MHz amateurs where they are secondary. Channels: Geneva plan of 1975; 47 CFR 73.14. Within 10 kHz counts "
                "as near, since a higher pitch hardly gets through a set (common practice, no source)."
            }
            p.small { a href=(cautions) { "Before you open a set" } ": mains and high tension can kill." }
        }
    }
}

fn note(name: &str, slot: &str, text: &str) -> Markup {
    html! {
        dt { (name) }
        dd data-slot=(slot) { (text) }
    }
}
