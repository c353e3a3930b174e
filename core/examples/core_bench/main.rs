//! The core's side of `cargo site bench core`: answers the questions, and says how long
//! each answer took.
//!
//! `core_bench QUESTIONS.toml` prints a JSON object a line:
//! `{"question", "seconds", "answers"}`. It is an example of this package, so that it is
//! compiled with optimisation without the rest of the workspace.

mod questions;
mod timing;

use questions::{BestPoints, Card, Curve, Questions, Sweep, Tracking};
use std::error::Error;
use std::hint::black_box;
use superhet::quantities::band_card::{BandCard, SignalCircuits};
use superhet::quantities::chain_curve::ChainCurve;
use superhet::quantities::conversion::Side;
use superhet::quantities::tracking::{
    Arrangement, Minimised, OscillatorParts, ThreePoints, TrackingError, best_points,
};
use superhet::units::Frequency;
use timing::least_seconds;

fn main() -> Result<(), Box<dyn Error>> {
    let path = std::env::args().nth(1).ok_or("core_bench QUESTIONS.toml")?;
    let questions: Questions = toml::from_str(&std::fs::read_to_string(path)?)?;
    for sweep in &questions.curve.sweeps {
        curve(&questions.curve, sweep);
    }
    tracking(&questions.tracking)?;
    best(&questions.best_points)?;
    card(&questions.card)?;
    Ok(())
}

fn say(question: &str, seconds: f64, answers: &[f64]) {
    // Debug prints the shortest decimal that reads back to the same double.
    println!(r#"{{"question":"{question}","seconds":{seconds:?},"answers":{answers:?}}}"#);
}

/// Decibels under the centre at each frequency of a sweep.
fn curve(curve: &Curve, sweep: &Sweep) {
    let (chain, hertz) = (curve.chain(), sweep.hertz());
    let centre = Frequency::hz(curve.centre);
    let mut decibels = vec![0.0; hertz.len()];
    let seconds = least_seconds(|| {
        let curve = ChainCurve::new(black_box(&chain), centre);
        curve.attenuations(black_box(&hertz), &mut decibels);
        black_box(&mut decibels);
    });
    say(&format!("curve-{}", sweep.points), seconds, &decibels);
}

/// Padder, trimmer and inductance, trimmer across the coil.
fn tracking(asked: &Tracking) -> Result<(), Box<dyn Error>> {
    let solve = || {
        let (settings, middle) = black_box((asked.settings(), asked.intermediate()));
        let curve = ThreePoints::new(settings, middle, Side::Above)?;
        OscillatorParts::new(&curve, asked.signal_coil(), Arrangement::AcrossCoil)
    };
    let seconds = least_seconds(solve);
    let parts = solve()?;
    let answers = [
        parts.padder.to_f(),
        parts.trimmer.to_f(),
        parts.inductance.to_h(),
    ];
    say("tracking", seconds, &answers);
    Ok(())
}

/// The largest error over the dial that the best settings leave.
fn best(asked: &BestPoints) -> Result<(), Box<dyn Error>> {
    let find = || {
        let (ends, middle) = black_box((asked.ends(), asked.intermediate()));
        best_points(ends, middle, Minimised::Relative)
    };
    let seconds = least_seconds(find);
    say("best-points", seconds, &[find()?.largest]);
    Ok(())
}

/// Every channel's oscillator, image, image rejection, IF rejection, tracking error and loss.
fn card(asked: &Card) -> Result<(), Box<dyn Error>> {
    let dials = asked.dials();
    let signal = SignalCircuits {
        loaded_q: asked.q,
        circuits: asked.circuits,
    };
    let fill = || {
        let (settings, middle) = black_box((asked.settings(), asked.intermediate()));
        let curve = ThreePoints::new(settings, middle, Side::Above)?;
        Ok::<_, TrackingError>(BandCard::new(black_box(&dials), &curve, signal))
    };
    let seconds = least_seconds(fill);
    let card = fill()?;
    let lines = (0..dials.len()).flat_map(|place| {
        [
            card.oscillator[place].to_hz(),
            card.image[place].to_hz(),
            card.image_rejection[place].to_db(),
            card.if_rejection[place].to_db(),
            card.tracking_error[place].to_hz(),
            card.loss[place].to_db(),
        ]
    });
    say("card", seconds, &lines.collect::<Vec<f64>>());
    Ok(())
}
