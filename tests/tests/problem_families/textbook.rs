//! Worked examples of textbooks, asked as problems of the families that cover them.
//!
//! The figures were read in companions to the printed books: programs that work their
//! examples (FOSSEE Python Textbook Companions and Scilab TBC, commit d34b2ae7), and
//! Scroggie's in a publisher's online copy. "Text [1409]" is a communication-engineering
//! text whose title is not in its companion; "text, pp. 165-184" is likewise unnamed.
//!
//! Not asked by any family, so left to the catalogue's own checks: ratios of the
//! frequencies themselves (Roddy and Coolen 2.909 and 2.045, Scroggie 2.09).

use crate::family;
use superhet::problems::problem::{Answer, NumberAnswer};
use superhet::problems::{Level, Problem, Verdict, generate_with, mark};

/// A book's inputs, its printed answer, and where it is printed.
struct Example {
    family: &'static str,
    level: Level,
    givens: &'static [(&'static str, &'static str)],
    printed: &'static str,
    /// What the printed digits leave open, in the SI unit.
    tolerance: f64,
    source: &'static str,
}

const RODDY: &str = "Roddy & Coolen, Electronic Communications, Ex 7.3.1 and 7.4.1, p. 227";
const SCROGGIE: &str = "Scroggie, Foundations of Wireless, sec. 21.6, p. 382";
const TEXT_1409: &str = "text [1409], Ex 8.6, p. 8-19";
const STANLEY: &str = "Stanley & Jeffords, Electronic Communications, Ex 5.10, p. 167";
const UNNAMED: &str = "text, pp. 165-184, Ex 5.6, p. 172";

/// An exact sum or difference: only the roundings of the last bit are open.
const EXACT: f64 = 1e-6;
/// The book squares a ratio that it has rounded already.
const SQUARED_AFTER_ROUNDING: f64 = 1e-3;

const fn oscillator(
    givens: &'static [(&'static str, &'static str)],
    printed: &'static str,
    source: &'static str,
) -> Example {
    let (family, level) = ("oscillator-from-dial", Level::Transfer);
    Example {
        family,
        level,
        givens,
        printed,
        tolerance: EXACT,
        source,
    }
}

const fn image(
    givens: &'static [(&'static str, &'static str)],
    printed: &'static str,
    source: &'static str,
) -> Example {
    let (family, level) = ("image-of-a-station", Level::Transfer);
    Example {
        family,
        level,
        givens,
        printed,
        tolerance: EXACT,
        source,
    }
}

const fn swing(
    level: Level,
    givens: &'static [(&'static str, &'static str)],
    printed: &'static str,
    tolerance: f64,
    source: &'static str,
) -> Example {
    Example {
        family: "capacitor-swing",
        level,
        givens,
        printed,
        tolerance,
        source,
    }
}

const EXAMPLES: [Example; 18] = [
    oscillator(
        &[("dial", "550 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1005 kHz",
        RODDY,
    ),
    oscillator(
        &[("dial", "1600 kHz"), ("if", "455 kHz"), ("side", "above")],
        "2055 kHz",
        RODDY,
    ),
    oscillator(
        &[("dial", "525 kHz"), ("if", "470 kHz"), ("side", "above")],
        "995 kHz",
        SCROGGIE,
    ),
    oscillator(
        &[("dial", "1605 kHz"), ("if", "470 kHz"), ("side", "above")],
        "2075 kHz",
        SCROGGIE,
    ),
    oscillator(
        &[("dial", "525 kHz"), ("if", "470 kHz"), ("side", "below")],
        "55 kHz",
        SCROGGIE,
    ),
    oscillator(
        &[("dial", "1605 kHz"), ("if", "470 kHz"), ("side", "below")],
        "1135 kHz",
        SCROGGIE,
    ),
    oscillator(
        &[("dial", "40 MHz"), ("if", "5 MHz"), ("side", "above")],
        "45 MHz",
        STANLEY,
    ),
    oscillator(
        &[("dial", "27 MHz"), ("if", "0.455 MHz"), ("side", "above")],
        "27.455 MHz",
        UNNAMED,
    ),
    image(
        &[("dial", "40 MHz"), ("if", "5 MHz"), ("side", "above")],
        "50 MHz",
        STANLEY,
    ),
    image(
        &[("dial", "27 MHz"), ("if", "0.455 MHz"), ("side", "above")],
        "27.910 MHz",
        UNNAMED,
    ),
    image(
        &[("dial", "620 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1530 kHz",
        "Beasley & Miller, Modern Electronic Communication, Ex 3.2, p. 134",
    ),
    image(
        &[("dial", "590 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1500 kHz",
        "Blake, Electronic Communication Systems, Ex 6.5, p. 238",
    ),
    image(
        &[("dial", "1000 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1910 kHz",
        "Kennedy, Davis & Prasanna, Electronic Communication Systems, Ex 7.1, p. 153",
    ),
    image(
        &[("dial", "900 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1810 kHz",
        "S. Sharma, Analog and Digital Communication, 3rd ed., Ex 5, p. 152 (companion's figure: \
         it notes that the book misprints the image)",
    ),
    image(
        &[("dial", "800 kHz"), ("if", "455 kHz"), ("side", "above")],
        "1710 kHz",
        "text, pp. 165-184, Ex 5.5, p. 172",
    ),
    swing(
        Level::Two,
        &[("f-low", "550 kHz"), ("f-high", "1600 kHz")],
        "8.463",
        SQUARED_AFTER_ROUNDING,
        RODDY,
    ),
    swing(
        Level::Transfer,
        &[
            ("if", "455 kHz"),
            ("dial-low", "550 kHz"),
            ("dial-high", "1600 kHz"),
        ],
        "4.182",
        SQUARED_AFTER_ROUNDING,
        RODDY,
    ),
    swing(
        Level::Transfer,
        &[
            ("if", "455 kHz"),
            ("dial-low", "530 kHz"),
            ("dial-high", "1650 kHz"),
        ],
        "4.567",
        5e-4,
        TEXT_1409,
    ),
];

#[test]
fn textbook_examples_come_out_as_printed() {
    for example in &EXAMPLES {
        let problem = asked(example);
        let answer = number(&problem);
        let printed = superhet::units::parse::value(answer.kind, example.printed, None)
            .expect("the printed answer can be read");
        let error = (answer.value - printed).abs();
        let slack = 1e-15 * printed;
        assert!(
            error <= example.tolerance + slack,
            "{}: printed {}, got {} (off by {error}, {} allowed)",
            example.source,
            example.printed,
            answer.value,
            example.tolerance
        );
        let marking = mark(&problem, 0, example.printed, None);
        assert_eq!(
            marking.verdict,
            Verdict::Right,
            "{}: {marking:?}",
            example.source
        );
    }
}

/// Text [1409], Ex 8.6, p. 8-19: with the oscillator below, from 75 to 1195 kHz, the
/// capacitance would have to shrink 253.87 times.
#[test]
fn an_oscillator_below_would_need_a_swing_of_hundreds() {
    let givens = [("f-low", "75 kHz"), ("f-high", "1195 kHz")];
    let problem = generate_with(&family("capacitor-swing"), Level::Two, 0, &givens)
        .expect("the example can be asked");
    let answer = number(&problem);
    assert!(
        (answer.value - 253.87).abs() <= 5e-3,
        "{TEXT_1409}: {}",
        answer.value
    );
    assert_eq!(mark(&problem, 0, "253.87", None).verdict, Verdict::Right);
}

fn asked(example: &Example) -> Problem {
    generate_with(&family(example.family), example.level, 0, example.givens)
        .unwrap_or_else(|error| panic!("{}: {error}", example.source))
}

fn number(problem: &Problem) -> &NumberAnswer {
    match &problem.parts[0].answer {
        Answer::Number(answer) => answer,
        Answer::Choice(_) => panic!("{} asks a choice", problem.family),
    }
}
