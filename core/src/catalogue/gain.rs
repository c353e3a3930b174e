//! Entries of gain and of decibels.

use super::{Entry, Kind, Parameter};
use crate::quantities::{gain, range};
use crate::units::Decibels;

/// Decibels of a field quantity and of a power.
const DEFINITION: &str = "definition of the decibel, ISO 80000-1:2009, annex C (cited from memory)";

/// What a valve does with its grid's voltage.
const GM: Parameter = Parameter::conductance(
    "gm",
    r"g_\mathrm{m}",
    "the valve's mutual conductance; of a frequency changer, its conversion conductance",
);

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "stage-gain",
        title: "Gain of a stage",
        symbol: r"A",
        formula: r"A = g_\mathrm{m} R_\mathrm{d}",
        parameters: &[
            GM,
            Parameter::resistance(
                "r-dynamic",
                r"R_\mathrm{d}",
                "the dynamic resistance of the load, with the valve's own and all else across it",
            ),
        ],
        result: Kind::Ratio,
        model_error: "at the tuned frequency, without feedback through the valve; mutual \
                      conductance falls with bias, so AGC takes it down",
        source: "F. E. Terman, Radio Engineers' Handbook, McGraw-Hill 1943, section 5 (cited from \
                 memory)",
        example: "stage-gain?gm=2mA/V&r-dynamic=100k",
        function: |a| Ok(gain::stage_gain(a.conductance("gm"), a.resistance("r-dynamic")).value()),
        note: None,
    },
    Entry {
        name: "transformer-stage-gain",
        title: "Gain of an IF stage, grid to secondary",
        symbol: r"A",
        formula: r"A = g_\mathrm{m} \sqrt{R_1 R_2}\, \frac{b}{1 + b^2}",
        parameters: &[
            GM,
            Parameter::resistance(
                "r1",
                "R_1",
                "the dynamic resistance of the primary, with everything across it",
            ),
            Parameter::resistance(
                "r2",
                "R_2",
                "the dynamic resistance of the secondary, with everything across it",
            ),
            Parameter::ratio(
                "coupling-index",
                "b",
                "the coupling over the critical one",
                range::COUPLING_INDEX,
            ),
        ],
        result: Kind::Ratio,
        model_error: "at the frequency that both circuits are tuned to; exact for loss in series \
                      with the coils, under 0.1 % away with loads from Q 40 up",
        source: "F. E. Terman, Radio Engineers' Handbook, McGraw-Hill 1943, section 3 (cited from \
                 memory, derived again)",
        example: "transformer-stage-gain?gm=2mA/V&r1=200k&r2=200k&coupling-index=1",
        function: |a| {
            let dynamic = ["r1", "r2"].map(|side| a.resistance(side));
            let index = a.number("coupling-index");
            Ok(gain::transformer_stage_gain(a.conductance("gm"), dynamic, index).value())
        },
        note: None,
    },
    Entry {
        name: "decibels",
        title: "Decibels of a voltage ratio",
        symbol: r"A",
        formula: r"A = 20 \log_{10} r",
        parameters: &[Parameter::ratio(
            "ratio",
            "r",
            "the ratio of the two voltages",
            range::ABOVE_ZERO,
        )],
        result: Kind::Decibels,
        model_error: "exact for voltages across equal resistances",
        source: DEFINITION,
        example: "decibels?ratio=100",
        function: |a| Ok(Decibels::from_voltage_ratio(a.ratio("ratio")).to_db()),
        note: None,
    },
    Entry {
        name: "voltage-ratio",
        title: "Voltage ratio of decibels",
        symbol: r"r",
        formula: r"r = 10^{A/20}",
        parameters: &[Parameter::decibels("decibels", "A", "the decibels")],
        result: Kind::Ratio,
        model_error: "exact for voltages across equal resistances",
        source: DEFINITION,
        example: "voltage-ratio?decibels=6dB",
        function: |a| Ok(a.decibels("decibels").to_voltage_ratio().value()),
        note: None,
    },
    Entry {
        name: "decibels-of-power",
        title: "Decibels of a power ratio",
        symbol: r"A",
        formula: r"A = 10 \log_{10} r",
        parameters: &[Parameter::ratio(
            "ratio",
            "r",
            "the ratio of the two powers",
            range::ABOVE_ZERO,
        )],
        result: Kind::Decibels,
        model_error: "none: a definition",
        source: DEFINITION,
        example: "decibels-of-power?ratio=100",
        function: |a| Ok(Decibels::from_power_ratio(a.ratio("ratio")).to_db()),
        note: None,
    },
    Entry {
        name: "power-ratio",
        title: "Power ratio of decibels",
        symbol: r"r",
        formula: r"r = 10^{A/10}",
        parameters: &[Parameter::decibels("decibels", "A", "the decibels")],
        result: Kind::Ratio,
        model_error: "none: a definition",
        source: DEFINITION,
        example: "power-ratio?decibels=3dB",
        function: |a| Ok(a.decibels("decibels").to_power_ratio().value()),
        note: None,
    },
];
