//! The card to be printed and kept by the set.

use lookup::{Card, CardRow, View};
use maud::{Markup, html};

pub(super) fn section(view: &View) -> Markup {
    html! {
        section.card-section data-slot="card" hidden[view.card.is_none()] {
            div.no-print {
                h2 { "A card to keep by the set" }
                p { "It follows the dial: turn to another band for the card of that band." }
                (rows_choice())
                p.buttons { button.main type="button" data-print { "Print the card" } }
            }
            @if let Some(card) = &view.card { (paper(card)) }
            template #card-table { (table(&[])) }
        }
    }
}

fn rows_choice() -> Markup {
    html! {
        fieldset.choice {
            legend { "Rows" }
            label {
                input.visually-hidden type="radio" name="rows" value="round" form="lookup" checked;
                span { "round figures" }
            }
            label {
                input.visually-hidden type="radio" name="rows" value="every" form="lookup";
                span { "every channel" }
            }
        }
    }
}

fn paper(card: &Card) -> Markup {
    html! {
        div.card {
            h3 data-slot="card-title" { (card.title) }
            p.card-set data-slot="card-set" { (card.set) }
            div.card-tables data-slot="card-tables" data-long="no" { (table(&card.rows)) }
            p data-slot="card-whistles" { (card.whistles) }
            p { "Mains and HT can kill; capacitors stay charged; a chassis, bare spindle or knob screw may be live." }
            p.small {
                "Metres as old dials print them (300 000 km/s). The image is the other frequency the set hears. "
                "Before the Bench."
            }
        }
    }
}

/// One table of the card; with no rows, what the page's script fills.
fn table(rows: &[CardRow]) -> Markup {
    html! {
        table {
            thead {
                tr {
                    th scope="col" { "Dial" br; "kHz" }
                    th scope="col" { "Dial" br; "m" }
                    th scope="col" { abbr title="oscillator" { "Osc." } br; "kHz" }
                    th scope="col" { "Image" br; "kHz" }
                    th.heard scope="col" { "At the image" }
                }
            }
            tbody {
                @for row in rows {
                    tr {
                        th scope="row" { (row.dial) }
                        td { (row.metres) } td { (row.oscillator) } td { (row.image) }
                        td.heard { (row.heard) }
                    }
                }
            }
        }
    }
}
