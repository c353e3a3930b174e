//! Everything that a superhet answers to beside the station on its dial.
//!
//! In scope: the places of all products of an oscillator and a signal up to an order, the
//! broadcast channels they fall on, the whistles they make and how their pitch moves.
//! Left out: how strong a response is, which the mixer and the circuits before it decide.
//!
//! Symbols: `fo` oscillator, `F` the IF, `s` +1 with the oscillator above and −1 below; `m`
//! harmonic of the oscillator (0: it takes no part), `n` harmonic of the signal, `σ` the sign
//! of a product; its order is `m + n`.
//!
//! # Places
//! A signal `f` makes the IF when `n·f − m·fo = σF`, so at `f = (m·fo + σF)/n`. Where `m·fo` is
//! below `F` the minus sign gives a place below zero: its size is the place of a signal that
//! makes the IF as a sum, `n·f + m·fo = F`.
//!
//! # How a whistle's pitch moves
//! Turn the dial by `d` with a station at rest: the oscillator moves by `d`. The station's own
//! IF, `s(fo − f)`, moves by `s·d`. That of a product, `σ(n·f − m·fo)`, moves by `−σm·d`; of
//! one that is a sum, by `+m·d`. The pitch of their beat moves by the difference:
//! `|s + σm|` times as fast as the dial, or `|s − m|` for a sum. `n` has no part in it. So
//! the carrier of a neighbour (`m = 1, σ = −s`, received like the station) stays; a
//! breakthrough (`m = 0`) moves once, an image (`m = 1, σ = s`) twice as fast as the dial; and
//! in general an `m`-th harmonic moves `m + 1` or `m − 1` times as fast.
//!
//! The `h`-th harmonic of the set's own IF is made of the station's IF itself, at
//! `h·s(fo − f)`; received beside the station its beat is `|h·s(fo − f) − f|` and moves `h`
//! times as fast as the dial.
//!
//! Sources: D. Roddy and J. Coolen, *Electronic Communications*, section 7.7, for the
//! places; the movement is derived here.

mod response;
mod whistle;

#[cfg(test)]
mod tests;

pub use response::{
    ChannelHit, HIGHEST_ORDER, Response, ResponseKind, pitch_slope, response, responses,
};
pub use whistle::{HIGHEST_IF_HARMONIC, Whistle, WhistleCause, if_harmonic, neighbours, whistles};
