//! Inputs over which a figure is tested: what its handles reach, and a little between.

#![allow(dead_code, unreachable_pub)] // each test takes what it needs

/// The figures that need a tuning.
pub const TUNED: [&str; 2] = ["frequency-line", "block-diagram"];

/// A parameter and its texts.
type Texts = (&'static str, &'static [&'static str]);

/// The other figures: each with the texts that its parameters take, every one with every
/// other.
const OTHERS: &[(&str, &[Texts])] = &[
    (
        "resonance",
        &[
            ("q", &["10", "45", "100", "300"]),
            ("circuits", &["1", "2", "4"]),
            (
                "f",
                &[
                    "430 kHz",
                    "441 kHz",
                    "466.5 kHz",
                    "470 kHz",
                    "471 kHz",
                    "500 kHz",
                    "510 kHz",
                ],
            ),
        ],
    ),
    (
        "coupled-pair",
        &[
            ("k", &["0.001", "0.01", "0.0235", "0.04"]),
            ("q1", &["20", "100", "300"]),
            ("q2", &["20", "85"]),
            ("detune1", &["-10 kHz", "0 kHz", "+3.5 kHz"]),
            ("detune2", &["0 kHz", "10 kHz"]),
        ],
    ),
    (
        "if-chain",
        &[
            ("k", &["0.001", "0.01", "0.04"]),
            ("q", &["20", "100", "250"]),
            ("transformers", &["1", "2", "4"]),
            ("audio", &["0.5 kHz", "4.5 kHz", "10 kHz"]),
            ("detune", &["-10 kHz", "0 kHz", "+3.5 kHz"]),
        ],
    ),
    (
        "band-chart",
        &[
            (
                "if",
                &[
                    "100 kHz",
                    "175 kHz",
                    "262.5 kHz",
                    "470 kHz",
                    "1000 kHz",
                    "1605 kHz",
                    "2000 kHz",
                ],
            ),
            ("dial", &["525 kHz", "900 kHz", "1395 kHz", "1605 kHz"]),
        ],
    ),
    (
        "spurious-map",
        &[
            (
                "dial",
                &[
                    "640 kHz",
                    "648 kHz",
                    "940 kHz",
                    "945 kHz",
                    "1395.5 kHz",
                    "1605 kHz",
                ],
            ),
            (
                "if",
                &["100 kHz", "262.5 kHz", "455 kHz", "470 kHz", "600 kHz"],
            ),
            ("side", &["above", "below"]),
        ],
    ),
    (
        "tracking",
        &[
            ("f1", &["525 kHz", "600 kHz", "650 kHz"]),
            ("f2", &["900 kHz", "1087 kHz"]),
            ("f3", &["1400 kHz", "1605 kHz"]),
            (
                "dial",
                &["525 kHz", "600 kHz", "752 kHz", "1500 kHz", "1605 kHz"],
            ),
        ],
    ),
    (
        "am-wave",
        &[
            ("carrier", &["1604.5 kHz"]),
            (
                "audio",
                &["0.5 kHz", "1 kHz", "4.5 kHz", "7.25 kHz", "10 kHz"],
            ),
            ("depth", &["0 %", "35 %", "100 %"]),
        ],
    ),
    (
        "detector",
        &[
            ("r", &["50 kΩ", "220 kΩ", "500 kΩ"]),
            ("c", &["20 pF", "100 pF", "470 pF", "1000 pF"]),
            ("audio", &["0.5 kHz", "4.5 kHz", "7.25 kHz", "10 kHz"]),
            ("depth", &["0 %", "35 %", "100 %"]),
        ],
    ),
    (
        "agc",
        &[
            (
                "signal",
                &["-20 dB", "-8 dB", "0 dB", "7.5 dB", "40 dB", "80 dB"],
            ),
            ("loop-gain", &["0", "1", "2.5", "9", "30"]),
        ],
    ),
];

/// The names of the other figures.
pub fn others() -> impl Iterator<Item = &'static str> {
    OTHERS.iter().map(|(name, _)| *name)
}

/// Every input of the grid of one of the other figures.
pub fn inputs(name: &str) -> Vec<String> {
    let found = OTHERS.iter().find(|(known, _)| *known == name);
    let parameters = found.map_or(&[][..], |(_, parameters)| parameters);
    let mut inputs = vec![String::new()];
    for (key, texts) in parameters {
        let longer = |input: &String| {
            let input = input.clone();
            texts
                .iter()
                .map(move |text| format!("{input}&{key}={text}"))
        };
        inputs = inputs.iter().flat_map(longer).collect();
    }
    inputs
}
