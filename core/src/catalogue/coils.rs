//! Entries of coils and of what couples them, the aerial with them.

use super::shared_parameters::{F, L, Q};
use super::{Arguments, Entry, Kind, Parameter};
use crate::quantities::coils::{self, AerialCoil};
use crate::quantities::range;

/// The forms that every circuit textbook gives.
const TEXTBOOK: &str = "F. E. Terman, Radio Engineers' Handbook, McGraw-Hill 1943, section 2 \
                        (cited from memory)";

/// The coefficient of coupling of two windings.
const K: Parameter = Parameter::ratio(
    "k",
    "k",
    "the coefficient of coupling of the two windings",
    range::COUPLING,
);

fn aerial(a: &Arguments<'_>) -> AerialCoil {
    AerialCoil {
        aerial_capacitance: a.capacitance("c-aerial"),
        aerial_resistance: a.resistance("r-aerial"),
        primary: a.inductance("l-primary"),
        secondary: a.inductance("l"),
        coupling: a.number("k"),
    }
}

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "coil-q",
        title: "Q of a coil or ferrite rod by itself",
        symbol: r"Q_\mathrm{u}",
        formula: r"Q_\mathrm{u} = \frac{2\pi f L}{r}",
        parameters: &[
            F,
            L,
            Parameter::resistance(
                "r",
                "r",
                "the coil's loss as one resistance in series with it, core and screen counted",
            ),
        ],
        result: Kind::Ratio,
        model_error: "true at one frequency: the loss climbs with frequency, so that Q changes \
                      slowly over a band",
        source: TEXTBOOK,
        example: "coil-q?f=1MHz&l=175uH&r=10ohm",
        function: |a| {
            let (f, l) = (a.frequency("f"), a.inductance("l"));
            Ok(coils::coil_q(f, l, a.resistance("r")))
        },
        note: None,
    },
    Entry {
        name: "coil-resistance",
        title: "Loss resistance of a coil",
        symbol: r"r",
        formula: r"r = \frac{2\pi f L}{Q}",
        parameters: &[F, L, Q],
        result: Kind::Resistance,
        model_error: "true at one frequency; it is more than a meter reads with steady current",
        source: TEXTBOOK,
        example: "coil-resistance?f=470kHz&l=1mH&q=100",
        function: |a| {
            let (f, l) = (a.frequency("f"), a.inductance("l"));
            Ok(coils::coil_resistance(f, l, a.number("q")).to_ohm())
        },
        note: None,
    },
    Entry {
        name: "mutual-inductance",
        title: "Mutual inductance of two coils",
        symbol: r"M",
        formula: r"M = k \sqrt{L_1 L_2}",
        parameters: &[
            Parameter::inductance("l1", "L_1", "the inductance of the one coil"),
            Parameter::inductance("l2", "L_2", "the inductance of the other coil"),
            K,
        ],
        result: Kind::Inductance,
        model_error: "a definition; capacitance between the windings couples too",
        source: TEXTBOOK,
        example: "mutual-inductance?l1=1mH&l2=4mH&k=0.01",
        function: |a| {
            let (first, second) = (a.inductance("l1"), a.inductance("l2"));
            Ok(coils::mutual_inductance(first, second, a.number("k")).to_h())
        },
        note: None,
    },
    Entry {
        name: "aerial-transfer",
        title: "Step-up from the aerial to the first tuned circuit",
        symbol: r"A_\mathrm{a}",
        formula: r"A_\mathrm{a} = \frac{2\pi f k \sqrt{L_\mathrm{p} L}\, Q}{\sqrt{R_\mathrm{a}^2 + \left(2\pi f L_\mathrm{p} - \frac{1}{2\pi f C_\mathrm{a}}\right)^2}}",
        parameters: &[
            F,
            Parameter::capacitance(
                "c-aerial",
                r"C_\mathrm{a}",
                "the aerial's capacitance to earth",
            ),
            Parameter::resistance(
                "r-aerial",
                r"R_\mathrm{a}",
                "the resistance of aerial, earth and primary winding together",
            ),
            Parameter::inductance("l-primary", r"L_\mathrm{p}", "the primary winding"),
            Parameter::inductance("l", "L", "the tuned winding, kept tuned to the frequency"),
            K,
            Parameter::ratio(
                "q",
                "Q",
                "the loaded Q of the tuned winding, with what the aerial takes",
                range::Q,
            ),
        ],
        result: Kind::Ratio,
        model_error: "an aerial as capacitance and resistance, coupled by windings alone; the \
                      reactance it reflects is left out: at k 0.1, with the primary resonant at \
                      half of f, 1.3 % too large; not true close to the primary's own resonance",
        source: "F. Langford-Smith, Radiotron Designer's Handbook, 4th edition 1953, chapter 23 \
                 (cited from memory, derived again)",
        example: "aerial-transfer?f=1MHz&c-aerial=200pF&r-aerial=25ohm&l-primary=2mH&l=175uH&k=0.1&q=80",
        function: |a| Ok(aerial(a).transfer(a.frequency("f"), a.number("q")).value()),
        note: None,
    },
];
