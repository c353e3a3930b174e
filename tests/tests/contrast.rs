//! The colours of `base.css` against each other, by the contrast ratio of WCAG 2.2
//! (W3C Recommendation, 2023, "contrast ratio" and "relative luminance").

use std::collections::BTreeMap;
use std::path::Path;

/// Main text on any paper: WCAG 2.2, success criterion 1.4.6.
const MAIN_TEXT: f64 = 7.0;
/// All other text: success criterion 1.4.3.
const OTHER_TEXT: f64 = 4.5;
/// The edge of a box to type in: success criterion 1.4.11.
const EDGE: f64 = 3.0;
/// What words may stand on.
const PAPERS: [&str; 3] = ["--paper", "--paper-raised", "--paper-sunk"];

type Colours = BTreeMap<String, String>;

/// The custom properties that are colours, in the first block after `selector`.
fn theme(sheet: &str, selector: &str) -> Colours {
    let start = sheet.find(selector).expect("base.css has this theme");
    let block = &sheet[start..];
    let block = &block[..block.find('}').expect("a block ends")];
    block
        .lines()
        .filter_map(|line| line.trim().strip_suffix(';')?.split_once(": "))
        .filter(|(_, value)| value.starts_with('#'))
        .map(|(name, value)| (name.to_owned(), value.to_owned()))
        .collect()
}

fn base() -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web/pages/css/base.css");
    std::fs::read_to_string(path).expect("base.css can be read")
}

/// Relative luminance of `#rrggbb`.
fn luminance(colour: &str) -> f64 {
    let channel = |from: usize| {
        let byte = u8::from_str_radix(&colour[from..from + 2], 16).expect("six digits");
        let share = f64::from(byte) / 255.0;
        if share <= 0.04045 {
            share / 12.92
        } else {
            ((share + 0.055) / 1.055).powf(2.4)
        }
    };
    0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
}

fn ratio(one: &str, other: &str) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// All pairs of a theme that fall short, in words.
fn shortfalls(colours: &Colours) -> Vec<String> {
    let mut said = Vec::new();
    let mut hold = |front: &str, back: &str, least: f64| {
        let got = ratio(&colours[front], &colours[back]);
        if got < least {
            said.push(format!(
                "{front} on {back}: {got:.2}, expected at least {least}"
            ));
        }
    };
    for paper in PAPERS {
        hold("--ink", paper, MAIN_TEXT);
        for front in ["--ink-soft", "--accent", "--warn", "--good"] {
            hold(front, paper, OTHER_TEXT);
        }
        hold("--rule-strong", paper, EDGE);
    }
    hold("--accent-ink", "--accent", OTHER_TEXT);
    said
}

/// W3C, "Understanding success criterion 1.4.3": black on white is 21; #777777 on white is 4.48.
#[test]
fn the_ratio_is_the_standard_s() {
    assert!((ratio("#000000", "#ffffff") - 21.0).abs() < 1e-9);
    assert!((ratio("#777777", "#ffffff") - 4.48).abs() < 0.005);
}

#[test]
fn words_stand_out_on_every_paper_in_both_themes() {
    let sheet = base();
    for selector in [":root {", ":root:not([data-theme=\"light\"]) {"] {
        assert_eq!(
            shortfalls(&theme(&sheet, selector)),
            Vec::<String>::new(),
            "{selector}"
        );
    }
}

#[test]
fn the_chosen_dark_theme_is_the_device_s() {
    let sheet = base();
    assert_eq!(
        theme(&sheet, ":root[data-theme=\"dark\"] {"),
        theme(&sheet, ":root:not([data-theme=\"light\"]) {")
    );
}
