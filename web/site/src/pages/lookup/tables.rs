//! Tables of the common IFs, for readers without JavaScript.

use super::entry::COMMON_INTERMEDIATES;
use lookup::{Card, plain_card};
use maud::{Markup, html};
use superhet::units::Frequency;

pub(super) fn section() -> Markup {
    html! {
        section.tables.no-print #tables {
            h2 { "Tables for the common IFs" }
            p { "Medium wave as in Regions 1 and 3, oscillator above, all figures in kHz." }
            div.table-row {
                @for khz in COMMON_INTERMEDIATES {
                    @if let Some(card) = card(khz) { (table(khz, &card)) }
                }
            }
        }
    }
}

fn card(khz: &str) -> Option<Card> {
    plain_card(Frequency::khz(khz.parse().ok()?))
}

fn table(khz: &str, card: &Card) -> Markup {
    html! {
        table {
            caption { "IF " (khz) " kHz" }
            thead {
                tr { th scope="col" { "Dial" } th scope="col" { "Oscillator" } th scope="col" { "Image" } }
            }
            tbody {
                @for row in &card.rows {
                    tr { th scope="row" { (row.dial) } td { (row.oscillator) } td { (row.image) } }
                }
            }
        }
    }
}
