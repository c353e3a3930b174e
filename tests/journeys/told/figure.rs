//! A figure's handle: each step says where it stands and what follows, and a task that is
//! done is said once.

use anyhow::{Result, ensure};
use checks::{Engine, Visit, Window, journey};
use thirtyfour::Key;

const LESSON: &str = "lessons/oscillator-mixer-difference/";
const FIGURE: &str = "figure[data-input*=\"move=dial\"]";
const HANDLE: &str = "figure[data-input*=\"move=dial\"] input[name=dial]";

/// What the handle says now: that it is a slider, by its name, where it stands, and the
/// oscillator's frequency that the core makes of it.
async fn says(visit: &Visit) -> Result<String> {
    let told = visit.hears("slider", "").await?;
    ensure!(!told.name.is_empty(), "a slider without a name: {told:?}");
    let ask = format!(
        "const figure = document.querySelector('{FIGURE}'); \
         const input = new URLSearchParams(figure.dataset.input); \
         return [figure.querySelector('input[name=dial]').value, \
             `oscillator?dial=${{figure.querySelector('input[name=dial]').value}}kHz\
&if=${{input.get('if')}}&side=${{input.get('side')}}`]"
    );
    let (stands, expression): (String, String) = visit.script(&ask).await?;
    let follows = superhet::catalogue::evaluate(&expression);
    let follows = follows.map_err(|refusal| anyhow::anyhow!("{expression}: {refusal}"))?;
    for words in [stands.as_str(), &follows.text] {
        ensure!(
            told.value.contains(words),
            "{words} is not in {:?}",
            told.value
        );
    }
    Ok(told.value)
}

#[tokio::test(flavor = "multi_thread")]
async fn each_step_of_a_handle_is_told_and_the_task_once() -> Result<()> {
    for engine in Engine::ALL {
        journey(engine, Window::LAPTOP, async |visit| {
            visit.open(LESSON).await?;
            visit.ready().await?;
            visit.listen().await?;
            visit.tab_to(HANDLE).await?;
            let mut heard = vec![visit.hears("slider", "").await?.value];
            for key in [Key::Right, Key::Up, Key::PageUp, Key::Home, Key::End] {
                visit.press(key).await?;
                let now = says(&visit).await?;
                ensure!(!heard.contains(&now), "{now:?} again");
                heard.push(now);
            }
            // The steps are the slider's to tell, the task is the region's.
            ensure!(visit.spoken().await? == ["Done."]);
            visit.press(Key::Home).await?;
            visit.press(Key::End).await?;
            says(&visit).await?;
            ensure!(visit.spoken().await?.is_empty(), "done a second time");
            Ok(())
        })
        .await?;
    }
    Ok(())
}
