//! The curve of an IF chain, as it is inked.

use crate::arithmetic::given_within;
use crate::coordinate::pixels;
use crate::plot::Frame;
use crate::{FigureError, Input, Quantity};
use superhet::quantities::transformer_network::TunedWinding;
use superhet::receiver::IfChain;
use superhet::units::{Decibels, Frequency, Inductance, Kind};

/// How far a circuit may be out of tune, in hertz.
const DETUNING: f64 = 20e3;

/// The winding that stands for all: in a curve measured from its own peak, inductance cancels
/// out. All loss is put in series with the coils.
const INDUCTANCE: Inductance = Inductance::h(1e-3);

/// One tuned winding: where it resonates, in hertz, and its loaded Q.
pub(crate) fn winding(hertz: f64, q: f64) -> TunedWinding {
    TunedWinding::tuned(Frequency::hz(hertz), INDUCTANCE, q)
}

/// Where a chain's curve is worked out, and the decibels under its peak there.
pub(crate) fn points(chain: &IfChain, frame: &Frame) -> (Vec<f64>, Vec<f64>) {
    let places = frame.places_about_middle().to_vec();
    let mut losses = vec![0.0; places.len()];
    chain.attenuations(&places, &mut losses);
    (places, losses)
}

/// Decibels under the peak.
pub(crate) fn loss(chain: &IfChain, hertz: f64) -> f64 {
    chain.attenuation(Frequency::hz(hertz)).to_db()
}

/// Decibels as every text of these figures rounds them: to a tenth.
pub(crate) fn tenths(decibels: f64) -> String {
    [&pixels(decibels), " dB"].concat()
}

/// How far a circuit is off, as its slider says it.
pub(crate) fn detuning(input: &Input, parameter: &'static str) -> Result<Quantity, FigureError> {
    let reach = (-DETUNING, DETUNING);
    let mut off = given_within(Kind::Frequency, input, parameter, "0 kHz", reach)?;
    if off.value == 0.0 {
        "0 kHz".clone_into(&mut off.text);
    }
    Ok(off)
}

/// The outermost two frequencies that lose so many decibels; a curve that never falls so far
/// has none, and is drawn as wide as its strip.
pub(crate) fn edges(chain: &IfChain, decibels: f64, frame: &Frame) -> (f64, f64) {
    chain
        .edges(Decibels::db(decibels))
        .map_or(frame.across, |(low, high)| (low.to_hz(), high.to_hz()))
}
