//! Letters and functions that the formulas of a subject share.

use super::subject::Note;

const fn note(formula: &'static str, meaning: &'static str) -> Note {
    Note { formula, meaning }
}

pub(super) const FREQUENCIES: &[Note] = &[note(
    "c",
    "the speed of light, 299 792 458 m/s by definition",
)];

pub(super) const TUNED_CIRCUITS: &[Note] = &[note(
    r"f_\mathrm{image}",
    "the image frequency, which is an entry of its own",
)];

pub(super) const IF_TRANSFORMERS: &[Note] = &[
    note(
        r"u = v^2",
        "how far off the tuned frequency it is asked: v is twice the distance over the tuned \
         frequency",
    ),
    note(
        r"D(u) = \left(1 + k^2 Q_1 Q_2 - Q_1 Q_2 u\right)^2 + u\left(Q_1 + Q_2\right)^2",
        "what the square of the response is divided by",
    ),
    note(
        r"D_\mathrm{m} = D\left(\max(0, w)\right)",
        "the same at the curve's own peak",
    ),
    note(
        r"w = k^2 - \frac{1}{2 Q_1^2} - \frac{1}{2 Q_2^2}",
        "where that peak is; below zero, the peak is in the middle",
    ),
    note(
        r"B_{60}, B_6",
        "the width of the transformers together, 60 and 6 dB under the peak",
    ),
    note(
        r"z_1 = r_1 + j\omega L_1, \quad y_1 = \frac{1}{R_1} + j\omega C_1",
        "the primary's coil with its loss, and its capacitor with the load across it",
    ),
    note(
        r"z_2 = r_2 + j\omega L_2, \quad y_2 = \frac{1}{R_2} + j\omega C_2",
        "the same of the secondary",
    ),
    note(
        r"z_\mathrm{m} = j\omega k\sqrt{L_1 L_2}",
        "what couples the two, with ω for 2π times the frequency",
    ),
];

pub(super) const TRACKING: &[Note] = &[
    note(
        r"K = \frac{1}{4\pi^2 L}",
        "the gang's constant: its capacitance, strays and trimmer of the signal circuit with it, is \
         K over the square of the frequency",
    ),
    note(
        r"l^2 = \frac{bd - c}{2F}, \quad m^2 = l^2 + F^2 + ad - b, \quad n^2 = \frac{cd + F^2 l^2}{m^2}",
        "the three constants of the oscillator's curve, each the square of a frequency",
    ),
    note(
        r"f_\mathrm{osc} = m \sqrt{\frac{f^2 + n^2}{f^2 + l^2}}",
        "the oscillator's frequency at a dial setting",
    ),
    note(
        r"\Delta f",
        "the tracking error, which is an entry of its own",
    ),
    note(
        r"a = f_1 + f_2 + f_3, \quad b = f_1 f_2 + f_1 f_3 + f_2 f_3, \quad c = f_1 f_2 f_3, \quad d = a + 2F",
        "made of the three exact settings and the IF",
    ),
    note(
        r"R_\mathrm{s} = \left(\frac{f_\mathrm{high}}{f_\mathrm{low}}\right)^2, \quad R_\mathrm{o} = \left(\frac{f_\mathrm{high} + F}{f_\mathrm{low} + F}\right)^2",
        "the capacitance ratios that the signal circuit and the oscillator need",
    ),
];

pub(super) const PREFERRED_VALUES: &[Note] = &[
    note(
        r"n, i",
        "how many values a decade has, and the place of one in it, from 0",
    ),
    note(
        r"L_\mathrm{osc}, C_\mathrm{osc}(f)",
        "the oscillator's coil and whole capacitance at a dial setting, made up of the gang and the \
         preferred parts",
    ),
];
