//! The look-up typed and pressed: each answer is the core's own, at every keystroke.

use super::{RESULTS, SET, key};
use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};

/// Both results follow from these: oscillator and image.
async fn shows_set(visit: &Visit, set: &str) -> Result<()> {
    for quantity in ["oscillator", "image"] {
        let expression = format!("{quantity}?{set}");
        visit.shows(RESULTS, quantity, &expression).await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_answer_follows_dial_if_and_side() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            shows_set(&visit, "dial=1200kHz&if=470kHz&side=above").await?;
            let asks = visit.text("[data-slot=example]").await?;
            ensure!(asks.contains("what is yours?"), "{asks}");

            visit.type_into("#dial", "9").await?;
            let offer = visit.text("[data-slot=offer]").await?;
            ensure!(offer == "9 MHz?", "{offer:?}");
            ensure!(visit.value_in(RESULTS, "oscillator").await?.is_none());
            visit.type_text("45").await?;
            shows_set(&visit, "dial=945kHz&if=470kHz&side=above").await?;
            ensure!(visit.text("[data-slot=dial-reading]").await? == "read as 945 kHz");

            visit.click(SET).await?;
            visit.click("[data-do='if 455']").await?;
            shows_set(&visit, "dial=945kHz&if=455kHz&side=above").await?;
            let example = visit.element("[data-slot=example]").await?;
            ensure!(!example.is_displayed().await?, "the example's words stay");

            visit.type_into("#if", "110.5").await?;
            visit.click(&key("side", "below")).await?;
            shows_set(&visit, "dial=945kHz&if=110.5kHz&side=below").await?;
            let beside = visit.text("[data-slot=beside]").await?;
            ensure!(
                beside.contains("110.5") && beside.contains("below"),
                "{beside}"
            );
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn the_unit_pressed_counts_unless_one_is_typed() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            for (typed, unit, dial) in [
                ("1.4", "MHz", "1.4MHz"),
                ("250", "m", "250m"),
                ("909kHz", "m", "909kHz"),
                ("1,4 MHz", "kHz", "1.4MHz"),
            ] {
                visit.type_into("#dial", typed).await?;
                visit.click(&key("dial-unit", unit)).await?;
                shows_set(&visit, &format!("dial={dial}&if=470kHz&side=above")).await?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}

#[tokio::test(flavor = "multi_thread")]
async fn any_two_give_the_third() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            visit.click(SET).await?;
            visit.click("[data-do='if 465']").await?;

            visit.click(&key("find", "dial")).await?;
            visit.type_into("#oscillator", "1669").await?;
            let dial = "dial?oscillator=1669kHz&if=465kHz&side=above";
            visit.shows(RESULTS, "dial", dial).await?;

            visit.click(&key("find", "if")).await?;
            visit.type_into("#dial", "1197").await?;
            let difference = "difference?signal=1197kHz&oscillator=1669kHz";
            visit.shows(RESULTS, "difference", difference).await
        })
        .await?;
    }
    Ok(())
}

/// A number that makes no sense in the unit pressed is doubted, not answered.
#[tokio::test(flavor = "multi_thread")]
async fn the_unit_that_was_meant_is_one_press_away() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit.open("lookup/").await?;
            visit.ready().await?;
            visit.type_into("#dial", "1,008").await?;
            shows_set(&visit, "dial=1008kHz&if=470kHz&side=above").await?;
            visit.type_into("#dial", "1.008").await?;
            let offer = visit.text("[data-slot=offer]").await?;
            ensure!(offer == "1.008 MHz?", "{offer:?}");
            ensure!(visit.value_in(RESULTS, "oscillator").await?.is_none());
            visit.click("[data-slot=offer]").await?;
            shows_set(&visit, "dial=1008kHz&if=470kHz&side=above").await
        })
        .await?;
    }
    Ok(())
}

/// Channels of medium wave in Region 1: 531 kHz to 1602 kHz, 9 kHz apart (Geneva plan of
/// 1975).
#[tokio::test(flavor = "multi_thread")]
async fn the_dial_turns_from_channel_to_channel() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::PHONE, async |visit| {
            visit
                .open("lookup/?dial=1200kHz&if=470kHz&side=above")
                .await?;
            visit.ready().await?;
            for (turn, dial) in [
                ("up", "1206kHz"),
                ("up", "1215kHz"),
                ("down", "1206kHz"),
                ("low", "531kHz"),
                ("high", "1602kHz"),
                ("down", "1593kHz"),
            ] {
                visit.click(&format!("[data-do={turn}]")).await?;
                shows_set(&visit, &format!("dial={dial}&if=470kHz&side=above")).await?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(())
}
