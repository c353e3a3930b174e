//! One knob, two circuits: making an oscillator follow a signal circuit.
//!
//! In scope: a signal circuit and an oscillator circuit on alike sections of one gang,
//! the oscillator with a padder in series and a trimmer in parallel, in two
//! arrangements; exact at two or three dial settings; the error between; the best three
//! settings; what each adjuster does to the curve; what parts of preferred values cost.
//! Left out: strays beyond those counted in the sections, and shaped vanes
//! (a receiver's profile carries those).
//!
//! Symbols: `f1 f2 f3` the exact dial settings, `F` the IF, `a = f1 + f2 + f3`,
//! `b = f1f2 + f1f3 + f2f3`, `c = f1f2f3`, `d = a + 2F`; `l² = (bd − c)/(2F)`,
//! `m² = l² + F² + ad − b`, `n² = (cd + F²l²)/m²`; `K = 1/(4π²·L_signal)`, so that the
//! gang's capacitance at `f` is `K/f²`, with the signal circuit's strays and trimmer.
//!
//! **Tracking error is not dial error.** Tracking error is the oscillator against the
//! *signal circuit's* resonance; dial error is against what the pointer reads.
//!
//! Why there is nothing for an oscillator below: capacitors in series and parallel only
//! shrink a gang's ratio, and an oscillator below needs a larger one,
//! `(f_high − F)/(f_low − F) > f_high/f_low`.
//!
//! Sources: the algebra is that of F. E. Terman, *Radio Engineers' Handbook* (1943) and
//! F. Langford-Smith, *Radiotron Designer's Handbook*, 4th ed., ch. 25 (form from
//! memory, derived again here).

mod adjusters;
mod best_points;
mod error;
mod greatest;
mod oscillator_parts;
mod preferred_parts;
mod three_points;
mod two_points;

pub use adjusters::{Adjuster, error_change, sensitivity};
pub use best_points::{BestPoints, Minimised, best_points};
pub use error::TrackingError;
pub use oscillator_parts::{Arrangement, OscillatorParts, gang_capacitance};
pub use preferred_parts::{Band, PreferredCost, preferred_parts};
pub use three_points::ThreePoints;
pub use two_points::{padder_two_point, trimmer_two_point};
