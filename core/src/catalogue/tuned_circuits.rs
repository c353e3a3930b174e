//! Entries of one tuned circuit, and of several alike.

use super::shared_parameters::{C, CIRCUITS, DIAL, F, F_HIGH, F_LOW, F0, IF, L, Q, SIDE};
use super::{Entry, Kind, Parameter};
use crate::quantities::selectivity::{if_rejection, image_rejection, selectivity};
use crate::quantities::{combination, conversion, range, resonance};

/// The forms that every circuit textbook gives.
const TEXTBOOK: &str = "F. E. Terman, Radio Engineers' Handbook, McGraw-Hill 1943, section 3 \
                        (cited from memory)";

/// What leaving the loss out does.
const NO_LOSS: &str = "no loss counted: at Q 10 the peak lies 0.5 % away, at Q 100 0.005 %";

pub(super) const ENTRIES: &[Entry] = &[
    Entry {
        name: "resonance",
        title: "Resonant frequency",
        symbol: r"f_0",
        formula: r"f_0 = \frac{1}{2\pi\sqrt{LC}}",
        parameters: &[L, C],
        result: Kind::Frequency,
        model_error: "no loss counted: a coil of Q 10 peaks 0.5 % lower, one of Q 100 0.005 % lower",
        source: "R. Blake, Electronic Communication Systems, example 2.1, p. 50",
        example: "resonance?l=25uH&c=50pF",
        function: |a| Ok(resonance::resonance(a.inductance("l"), a.capacitance("c")).to_hz()),
        note: None,
    },
    Entry {
        name: "inductance",
        title: "Inductance that resonates",
        symbol: r"L",
        formula: r"L = \frac{1}{(2\pi f_0)^2 C}",
        parameters: &[C, F0],
        result: Kind::Inductance,
        model_error: NO_LOSS,
        source: TEXTBOOK,
        example: "inductance?c=135.5pF&f0=965kHz",
        function: |a| Ok(resonance::inductance(a.capacitance("c"), a.frequency("f0")).to_h()),
        note: None,
    },
    Entry {
        name: "capacitance",
        title: "Capacitance that resonates",
        symbol: r"C",
        formula: r"C = \frac{1}{(2\pi f_0)^2 L}",
        parameters: &[F0, L],
        result: Kind::Capacitance,
        model_error: NO_LOSS,
        source: "G. M. Miller and J. S. Beasley, Modern Electronic Communication, example 3.1, p. 120",
        example: "capacitance?f0=550kHz&l=10uH",
        function: |a| Ok(resonance::capacitance(a.frequency("f0"), a.inductance("l")).to_f()),
        note: None,
    },
    Entry {
        name: "reactance-l",
        title: "Reactance of a coil",
        symbol: r"X_L",
        formula: r"X_L = 2\pi f L",
        parameters: &[F, L],
        result: Kind::Resistance,
        model_error: "the coil's own capacitance is left out: it adds to the reactance towards self-resonance",
        source: TEXTBOOK,
        example: "reactance-l?f=1MHz&l=200uH",
        function: |a| Ok(resonance::reactance_l(a.frequency("f"), a.inductance("l")).to_ohm()),
        note: None,
    },
    Entry {
        name: "reactance-c",
        title: "Reactance of a capacitor",
        symbol: r"X_C",
        formula: r"X_C = \frac{1}{2\pi f C}",
        parameters: &[F, C],
        result: Kind::Resistance,
        model_error: "the inductance of the leads is left out: a few per cent above 30 MHz",
        source: TEXTBOOK,
        example: "reactance-c?f=1MHz&c=100pF",
        function: |a| Ok(resonance::reactance_c(a.frequency("f"), a.capacitance("c")).to_ohm()),
        note: None,
    },
    Entry {
        name: "dynamic-resistance",
        title: "Dynamic resistance at resonance",
        symbol: r"R_\mathrm{d}",
        formula: r"R_\mathrm{d} = 2\pi f_0 L Q",
        parameters: &[F0, L, Q],
        result: Kind::Resistance,
        model_error: "with all loss in series with the coil the exact figure is (1 + 1/Q²) times this: 1 % at Q 10",
        source: TEXTBOOK,
        example: "dynamic-resistance?f0=470kHz&l=1mH&q=100",
        function: |a| {
            let (f0, l) = (a.frequency("f0"), a.inductance("l"));
            Ok(resonance::dynamic_resistance(f0, l, a.number("q")).to_ohm())
        },
        note: None,
    },
    Entry {
        name: "loaded-q",
        title: "Q with a resistance across the circuit",
        symbol: r"Q",
        formula: r"\frac{1}{Q} = \frac{1}{Q_\mathrm{u}} + \frac{2\pi f_0 L}{R_\mathrm{p}}",
        parameters: &[
            F0,
            L,
            Parameter::ratio(
                "q-unloaded",
                r"Q_\mathrm{u}",
                "the Q of the circuit by itself",
                range::Q,
            ),
            Parameter::resistance(
                "r-parallel",
                r"R_\mathrm{p}",
                "all that loads the circuit, as one resistance across it",
            ),
        ],
        result: Kind::Ratio,
        model_error: "loss in series and across are added as if both were small: at Q 10 under \
                      1 % away",
        source: TEXTBOOK,
        example: "loaded-q?f0=470kHz&l=1mH&q-unloaded=100&r-parallel=300k",
        function: |a| {
            let (f0, l) = (a.frequency("f0"), a.inductance("l"));
            let (unloaded, load) = (a.number("q-unloaded"), a.resistance("r-parallel"));
            Ok(resonance::loaded_q(f0, l, unloaded, load))
        },
        note: None,
    },
    Entry {
        name: "detuning",
        title: "Shift of a circuit by capacitance added across it",
        symbol: r"\Delta f",
        formula: r"\Delta f = \frac{f_0}{\sqrt{1 + \frac{\Delta C}{C}}} - f_0",
        parameters: &[
            F0,
            C,
            Parameter::capacitance(
                "c-added",
                r"\Delta C",
                "what is added across, such as a meter's lead",
            ),
        ],
        result: Kind::Frequency,
        model_error: NO_LOSS,
        source: TEXTBOOK,
        example: "detuning?f0=470kHz&c=120pF&c-added=2pF",
        function: |a| {
            let (f0, before) = (a.frequency("f0"), a.capacitance("c"));
            Ok(resonance::detuning(f0, before, a.capacitance("c-added")).to_hz())
        },
        note: None,
    },
    Entry {
        name: "parallel-resistance",
        title: "Two resistances across each other",
        symbol: r"R",
        formula: r"R = \frac{R_1 R_2}{R_1 + R_2}",
        parameters: &[
            Parameter::resistance("r1", "R_1", "the one resistance"),
            Parameter::resistance("r2", "R_2", "the other resistance"),
        ],
        result: Kind::Resistance,
        model_error: "none",
        source: TEXTBOOK,
        example: "parallel-resistance?r1=470k&r2=1meg",
        function: |a| {
            let (first, second) = (a.resistance("r1"), a.resistance("r2"));
            Ok(combination::parallel_resistance(first, second).to_ohm())
        },
        note: None,
    },
    Entry {
        name: "series-capacitance",
        title: "Two capacitors in series",
        symbol: r"C",
        formula: r"C = \frac{C_1 C_2}{C_1 + C_2}",
        parameters: &[
            Parameter::capacitance("c1", "C_1", "the one capacitance"),
            Parameter::capacitance("c2", "C_2", "the other capacitance"),
        ],
        result: Kind::Capacitance,
        model_error: "none",
        source: TEXTBOOK,
        example: "series-capacitance?c1=350pF&c2=221.3pF",
        function: |a| {
            let (first, second) = (a.capacitance("c1"), a.capacitance("c2"));
            Ok(combination::series_capacitance(first, second).to_f())
        },
        note: None,
    },
    Entry {
        name: "bandwidth",
        title: "Half-power bandwidth",
        symbol: r"B",
        formula: r"B = \frac{f_0}{Q}",
        parameters: &[F0, Q],
        result: Kind::Frequency,
        model_error: "exact for one circuit; its edges lie at equal ratios from the middle, not at equal distances",
        source: "V. K. Mehta, Principles of Electronics, example 15.4, p. 397",
        example: "bandwidth?f0=1200kHz&q=60",
        function: |a| Ok(resonance::bandwidth(a.frequency("f0"), a.number("q")).to_hz()),
        note: None,
    },
    Entry {
        name: "q",
        title: "Q from bandwidth",
        symbol: r"Q",
        formula: r"Q = \frac{f_0}{B}",
        parameters: &[
            F0,
            Parameter::bandwidth("bandwidth", "B", "the width between the half-power points"),
        ],
        result: Kind::Ratio,
        model_error: "exact for one circuit",
        source: "L. E. Frenzel, Principles of Electronic Communication Systems, example 2.17, p. 50",
        example: "q?f0=8MHz&bandwidth=140kHz",
        function: |a| Ok(resonance::q(a.frequency("f0"), a.frequency("bandwidth"))),
        note: None,
    },
    Entry {
        name: "selectivity",
        title: "Attenuation of tuned circuits off resonance",
        symbol: r"A",
        formula: r"A = 10 n \log_{10}\left(1 + Q^2\left(\frac{f}{f_0} - \frac{f_0}{f}\right)^2\right)",
        parameters: &[F, F0, Q, CIRCUITS],
        result: Kind::Decibels,
        model_error: "Q is held constant over the curve; an octave off a real coil departs by a few decibels",
        source: TEXTBOOK,
        example: "selectivity?f=475kHz&f0=470kHz&q=47&circuits=1",
        function: |a| {
            let (f, f0) = (a.frequency("f"), a.frequency("f0"));
            Ok(selectivity(f, f0, a.number("q"), a.integer("circuits")).to_db())
        },
        note: None,
    },
    Entry {
        name: "image-rejection",
        title: "Image rejection",
        symbol: r"A_\mathrm{image}",
        formula: r"A_\mathrm{image} = 10 n \log_{10}\left(1 + Q^2\left(\frac{f_\mathrm{image}}{f_\mathrm{dial}} - \frac{f_\mathrm{dial}}{f_\mathrm{image}}\right)^2\right)",
        parameters: &[DIAL, IF, SIDE, Q, CIRCUITS],
        result: Kind::Decibels,
        model_error: "exact for a rod or loop with the output across the capacitor; with a flat voltage in series the true figure differs by 20·log10(image/dial), 8 dB at 600 kHz",
        source: "R. Blake, Electronic Communication Systems, example 6.5, p. 238",
        example: "image-rejection?dial=590kHz&if=455kHz&side=above&q=40&circuits=1",
        function: |a| {
            let (dial, intermediate) = (a.frequency("dial"), a.frequency("if"));
            let circuits = a.integer("circuits");
            Ok(image_rejection(dial, intermediate, a.side(), a.number("q"), circuits)?.to_db())
        },
        note: None,
    },
    Entry {
        name: "if-rejection",
        title: "Rejection of a signal on the IF",
        symbol: r"A_\mathrm{IF}",
        formula: r"A_\mathrm{IF} = 10 n \log_{10}\left(1 + Q^2\left(\frac{F}{f_\mathrm{dial}} - \frac{f_\mathrm{dial}}{F}\right)^2\right)",
        parameters: &[DIAL, IF, Q, CIRCUITS],
        result: Kind::Decibels,
        model_error: "no trap is counted, and no way round the aerial circuit",
        source: TEXTBOOK,
        example: "if-rejection?dial=540kHz&if=470kHz&q=80&circuits=1",
        function: |a| {
            let (dial, intermediate) = (a.frequency("dial"), a.frequency("if"));
            Ok(if_rejection(dial, intermediate, a.number("q"), a.integer("circuits")).to_db())
        },
        note: None,
    },
    Entry {
        name: "frequency-ratio",
        title: "Frequency ratio of a band",
        symbol: r"r_f",
        formula: r"r_f = \frac{f_\mathrm{high}}{f_\mathrm{low}}",
        parameters: &[F_LOW, F_HIGH],
        result: Kind::Ratio,
        model_error: "none: a plain division",
        source: "D. Roddy and J. Coolen, Electronic Communications, example 7.3.1, p. 227",
        example: "frequency-ratio?f-low=500kHz&f-high=1500kHz",
        function: |a| {
            let ratio = conversion::frequency_ratio(a.frequency("f-low"), a.frequency("f-high"))?;
            Ok(ratio.value())
        },
        note: None,
    },
    Entry {
        name: "capacitance-ratio",
        title: "Capacitance ratio that tunes a band",
        symbol: r"\frac{C_\mathrm{max}}{C_\mathrm{min}}",
        formula: r"\frac{C_\mathrm{max}}{C_\mathrm{min}} = \left(\frac{f_\mathrm{high}}{f_\mathrm{low}}\right)^2",
        parameters: &[F_LOW, F_HIGH],
        result: Kind::Ratio,
        model_error: "none with one coil and the whole capacitance of the circuit, strays and \
                  trimmer included",
        source: "D. Roddy and J. Coolen, Electronic Communications, example 7.4.1",
        example: "capacitance-ratio?f-low=500kHz&f-high=1500kHz",
        function: |a| {
            let ratio = conversion::capacitance_ratio(a.frequency("f-low"), a.frequency("f-high"))?;
            Ok(ratio.value())
        },
        note: None,
    },
];
