//! Entries of two coupled circuits: the IF transformer, alone and in a row.

use super::shared_parameters::{F, F0};
use super::{Arguments, Entry, Kind, Parameter};
use crate::quantities::cascade::{StageKind, cascade_bandwidth, shape_factor};
use crate::quantities::coupled_pair::{CoupledPair, critical_coupling, transitional_coupling};
use crate::quantities::gain::coupling_index;
use crate::quantities::range;
use crate::quantities::transformer_network::{TransformerNetwork, TunedWinding};

/// How far the narrow-band form is from the exact network.
const NARROW: &str = "narrow band: at Q 100 widths are about 1 % too large and a dip 0.2 dB too \
                      shallow; not given farther than a quarter of the tuned frequency away";

/// The universal curves, with the algebra done again.
const DERIVED: &str = "universal curves of coupled circuits, F. E. Terman, Radio Engineers' \
                       Handbook, McGraw-Hill 1943, section 3 (cited from memory, derived again)";

/// The loaded Q of the first circuit.
const Q1: Parameter = Parameter::ratio(
    "q1",
    "Q_1",
    "the Q of the primary, as it works",
    range::PAIR_Q,
);

/// The loaded Q of the second circuit.
const Q2: Parameter = Parameter::ratio(
    "q2",
    "Q_2",
    "the Q of the secondary, as it works",
    range::PAIR_Q,
);

/// The coefficient of coupling.
const K: Parameter = Parameter::ratio("k", "k", "the coefficient of coupling", range::COUPLING);

/// How far under the peak a width is taken.
const DROP: Parameter =
    Parameter::decibels("drop", r"\mathrm{drop}", "how far under the peak").within(range::DROP);

fn pair(a: &Arguments<'_>) -> CoupledPair {
    CoupledPair::new(a.number("q1"), a.number("q2"), a.number("k"))
}

fn network(a: &Arguments<'_>) -> TransformerNetwork {
    let winding = |l, c, r, load| TunedWinding {
        inductance: a.inductance(l),
        capacitance: a.capacitance(c),
        series: a.resistance(r),
        load: a.resistance(load),
    };
    TransformerNetwork {
        primary: winding("l1", "c1", "r1", "load1"),
        secondary: winding("l2", "c2", "r2", "load2"),
        coupling: a.number("k"),
    }
}

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "critical-coupling",
        title: "Critical coupling",
        symbol: r"k_\mathrm{c}",
        formula: r"k_\mathrm{c} = \frac{1}{\sqrt{Q_1 Q_2}}",
        parameters: &[Q1, Q2],
        result: Kind::Ratio,
        model_error: "narrow band: none that matters for an IF transformer",
        source: "R. Blake, Electronic Communication Systems, example 6.9, p. 258",
        example: "critical-coupling?q1=40&q2=30",
        function: |a| Ok(critical_coupling(a.number("q1"), a.number("q2"))),
        note: None,
    },
    Entry {
        name: "transitional-coupling",
        title: "Transitional coupling",
        symbol: r"k_\mathrm{t}",
        formula: r"k_\mathrm{t} = \sqrt{\frac{1}{2}\left(\frac{1}{Q_1^2} + \frac{1}{Q_2^2}\right)}",
        parameters: &[Q1, Q2],
        result: Kind::Ratio,
        model_error: NARROW,
        source: DERIVED,
        example: "transitional-coupling?q1=150&q2=50",
        function: |a| Ok(transitional_coupling(a.number("q1"), a.number("q2"))),
        note: None,
    },
    Entry {
        name: "coupling-index",
        title: "Coupling over critical coupling",
        symbol: r"b",
        formula: r"b = k \sqrt{Q_1 Q_2}",
        parameters: &[Q1, Q2, K],
        result: Kind::Ratio,
        model_error: "a definition; 1 at critical coupling",
        source: DERIVED,
        example: "coupling-index?q1=100&q2=100&k=0.015",
        function: |a| {
            Ok(coupling_index(
                a.number("q1"),
                a.number("q2"),
                a.number("k"),
            ))
        },
        note: None,
    },
    Entry {
        name: "coupled-attenuation",
        title: "Attenuation of a coupled pair under its peak",
        symbol: r"A",
        formula: r"A = 10 \log_{10}\frac{D(v^2)}{D_\mathrm{m}}, \quad v = \frac{2(f - f_0)}{f_0}",
        parameters: &[F, F0, Q1, Q2, K],
        result: Kind::Decibels,
        model_error: NARROW,
        source: DERIVED,
        example: "coupled-attenuation?f=464kHz&f0=455kHz&q1=100&q2=100&k=0.01",
        function: |a| {
            Ok(pair(a)
                .attenuation(a.frequency("f"), a.frequency("f0"))?
                .to_db())
        },
        note: None,
    },
    Entry {
        name: "coupled-bandwidth",
        title: "Bandwidth of a coupled pair",
        symbol: r"B",
        formula: r"B = f_0\sqrt{u}, \quad D(u) = D_\mathrm{m} 10^{\mathrm{drop}/10}",
        parameters: &[F0, Q1, Q2, K, DROP],
        result: Kind::Frequency,
        model_error: NARROW,
        source: DERIVED,
        example: "coupled-bandwidth?f0=455kHz&q1=100&q2=100&k=0.01&drop=6dB",
        function: |a| {
            Ok(pair(a)
                .bandwidth(a.frequency("f0"), a.decibels("drop"))?
                .to_hz())
        },
        note: None,
    },
    Entry {
        name: "coupled-peaks",
        title: "Distance between the humps of a coupled pair",
        symbol: r"\Delta f",
        formula: r"\Delta f = f_0\sqrt{\max\left(0, k^2 - \frac{1}{2 Q_1^2} - \frac{1}{2 Q_2^2}\right)}",
        parameters: &[F0, Q1, Q2, K],
        result: Kind::Frequency,
        model_error: NARROW,
        source: DERIVED,
        example: "coupled-peaks?f0=455kHz&q1=100&q2=100&k=0.02",
        function: |a| Ok(pair(a).peaks(a.frequency("f0")).to_hz()),
        note: None,
    },
    Entry {
        name: "coupled-dip",
        title: "Dip between the humps of a coupled pair",
        symbol: r"A_\mathrm{dip}",
        formula: r"A_\mathrm{dip} = 10 \log_{10}\frac{D(0)}{D_\mathrm{m}}",
        parameters: &[Q1, Q2, K],
        result: Kind::Decibels,
        model_error: NARROW,
        source: DERIVED,
        example: "coupled-dip?q1=100&q2=100&k=0.02",
        function: |a| Ok(pair(a).dip().to_db()),
        note: None,
    },
    Entry {
        name: "transfer-impedance",
        title: "Transfer impedance of an IF transformer",
        symbol: r"Z_{21}",
        formula: r"Z_{21} = \left|\frac{z_\mathrm{m}}{(1 + z_1 y_1)(1 + z_2 y_2) - z_\mathrm{m}^2 y_1 y_2}\right|",
        parameters: &[
            F,
            Parameter::inductance("l1", "L_1", "the inductance of the primary"),
            Parameter::capacitance("c1", "C_1", "the capacitance across the primary"),
            Parameter::resistance("r1", "r_1", "the series resistance of the primary"),
            Parameter::resistance(
                "load1",
                r"R_1",
                "the load across the primary: the valve that drives it",
            ),
            Parameter::inductance("l2", "L_2", "the inductance of the secondary"),
            Parameter::capacitance("c2", "C_2", "the capacitance across the secondary"),
            Parameter::resistance("r2", "r_2", "the series resistance of the secondary"),
            Parameter::resistance(
                "load2",
                r"R_2",
                "the load across the secondary: the next grid or the diode",
            ),
            K,
        ],
        result: Kind::Resistance,
        model_error: "the exact network; stray capacitance between the windings is left out",
        source: "Kirchhoff's laws for two lossy coupled circuits, solved here",
        example: "transfer-impedance?f=459.44kHz&l1=1mH&c1=120pF&r1=28.87ohm&load1=1000megohm&l2=1mH&c2=120pF&r2=28.87ohm&load2=1000megohm&k=0.01",
        function: |a| Ok(network(a).transfer_impedance(a.frequency("f")).to_ohm()),
        note: None,
    },
    Entry {
        name: "cascade-bandwidth",
        title: "Bandwidth of alike stages in a row",
        symbol: r"B_n",
        formula: r"B_n = B\left(2^{1/n} - 1\right)^{1/2}\ \text{or}\ B\left(2^{1/n} - 1\right)^{1/4}",
        parameters: &[
            Parameter::bandwidth("bandwidth", "B", "the half-power bandwidth of one stage"),
            Parameter::integer("stages", "n", "how many stages, alike", range::STAGES),
            Parameter::choice(
                "kind",
                "",
                "one circuit a stage, or a pair whose top is just flat",
                &["single", "double"],
            ),
        ],
        result: Kind::Frequency,
        model_error: "double: for pairs at transitional coupling; unequal Q at critical coupling is narrower (150 and 50, two stages: 0.737 against 0.802)",
        source: "U. A. Bakshi and A. P. Godse, Analog Electronics, example 5.3, p. 5-46",
        example: "cascade-bandwidth?bandwidth=20kHz&stages=3&kind=single",
        function: |a| {
            let kind = match a.choice("kind") {
                "double" => StageKind::Double,
                _ => StageKind::Single,
            };
            Ok(cascade_bandwidth(a.frequency("bandwidth"), a.integer("stages"), kind).to_hz())
        },
        note: None,
    },
    Entry {
        name: "shape-factor",
        title: "Shape factor, 60 dB over 6 dB",
        symbol: r"S",
        formula: r"S = \frac{B_{60}}{B_6}",
        parameters: &[
            Q1,
            Q2,
            K,
            Parameter::integer(
                "transformers",
                "n",
                "how many transformers, alike",
                range::STAGES,
            ),
        ],
        result: Kind::Ratio,
        model_error: NARROW,
        source: DERIVED,
        example: "shape-factor?q1=100&q2=100&k=0.01&transformers=2",
        function: |a| Ok(shape_factor(&pair(a), a.integer("transformers"))?),
        note: None,
    },
];
