use alloc::{string::ToString, vec::Vec};

use super::super::{
    fixture::{changed, family},
    problem::Answer,
};
use super::{Level, generate, generate_for_set, generate_with};

fn number(problem: &super::Problem) -> f64 {
    match &problem.parts[0].answer {
        Answer::Number(answer) => answer.value,
        Answer::Choice(_) => panic!("a choice is asked"),
    }
}

#[test]
fn the_same_seed_draws_the_same_problem() {
    for level in Level::ALL {
        for seed in [0, 1, u32::MAX] {
            let one = generate(&family(), level, seed).unwrap();
            assert_eq!(one, generate(&family(), level, seed).unwrap());
            assert_eq!((one.level, one.seed), (level, seed));
        }
    }
}

#[test]
fn another_revision_draws_another_problem() {
    let later = changed(&[("revision = 1", "revision = 2")]);
    let differ = (0..50)
        .filter(|&seed| {
            let one = generate(&family(), Level::One, seed).unwrap();
            one.givens != generate(&later, Level::One, seed).unwrap().givens
        })
        .count();
    assert!(differ > 40, "{differ} of 50 differ");
}

#[test]
fn fixed_givens_are_used_and_refused_in_words() {
    let fixed = [("station", "250 m"), ("if", "125 kHz"), ("unknown", "7")];
    let problem = generate_with(&family(), Level::One, 3, &fixed).unwrap();
    // 299 792.458 / 250 + 125, by hand
    assert!((number(&problem) - 1_324_169.832).abs() < 1e-6);
    assert!(problem.scene.contains("250 m"), "{}", problem.scene);
    let refused = generate_with(&family(), Level::One, 3, &[("if", "loud")]).unwrap_err();
    assert!(
        refused.to_string().contains("starts with a number"),
        "{refused}"
    );
}

/// The small family, its first level offered on a set of the reader's own.
fn offered() -> super::Family {
    let own = "[level-1.own-set]\n\
        scene = \"Your set, its IF {if}, stands at {station}.\"\n\
        givens = [\"if\"]\n\n[level-2]";
    changed(&[("[level-2]", own)])
}

#[test]
fn a_level_is_asked_of_the_reader_s_own_set() {
    let set = [("side", "below"), ("if", "125 kHz")];
    let problem = generate_for_set(&offered(), Level::One, 3, &set).unwrap();
    let usual = generate(&offered(), Level::One, 3).unwrap();
    let station = &usual.givens[0].text;
    assert_eq!(problem.givens[0].text, *station);
    assert_eq!(
        problem.scene,
        ["Your set, its IF 125 kHz, stands at ", station, "."].concat()
    );
    // One IF above the station, by hand from the drawn one.
    let apart = number(&problem) - number(&usual);
    let usual_if = &usual.givens[1].text;
    let expected = if usual_if == "470 kHz" {
        -345e3
    } else {
        -330e3
    };
    assert!((apart - expected).abs() < 1e-6, "{apart} with {usual_if}");
}

#[test]
fn what_is_not_offered_or_not_known_of_a_set_is_told() {
    let refused = |level, set| {
        generate_for_set(&offered(), level, 0, set)
            .unwrap_err()
            .to_string()
    };
    let says = refused(Level::One, &[("side", "above")]);
    assert!(says.ends_with("it needs the value \"if\""), "{says}");
    let says = refused(Level::Two, &[("if", "125 kHz")]);
    assert!(says.ends_with("not offered on another set"), "{says}");
}

#[test]
fn conditions_are_kept() {
    let tight = changed(&[("station != 1.3 MHz", "station = 1.3 MHz")]);
    for seed in 0..50 {
        assert_ne!(
            generate(&family(), Level::Three, seed).unwrap().givens[0].text,
            "1.3 MHz"
        );
        assert_eq!(
            generate(&tight, Level::Three, seed).unwrap().givens[0].text,
            "1.3 MHz"
        );
    }
    let never = changed(&[("station != 1.3 MHz", "station > 20 MHz")]);
    let error = generate(&never, Level::Three, 0).unwrap_err().to_string();
    assert!(error.contains("station > 20 MHz does not hold"), "{error}");
}

#[test]
fn draws_that_cannot_be_told_apart_are_thrown_back() {
    // With an IF of 455 kHz the mistake equals the right answer; with 470 it does not.
    let mistaken = changed(&[("station + 2 * if", "station + 455 kHz")]);
    for seed in 0..50 {
        let problem = generate(&mistaken, Level::One, seed).unwrap();
        assert_eq!(problem.givens[1].text, "470 kHz");
        assert!(problem.collisions.is_empty());
    }
    let always = changed(&[("station + 2 * if", "station + if")]);
    let problem = generate(&always, Level::One, 0).unwrap();
    let collision = &problem.collisions[0];
    assert_eq!(
        (collision.one.as_str(), collision.other.as_str()),
        ("right", "twice")
    );
}

#[test]
fn mistakes_below_zero_do_not_arise() {
    let deep = changed(&[("answer = \"station - if\"", "answer = \"station - 3 * if\"")]);
    let mistakes = |station| {
        let fixed = [("station", station), ("if", "470 kHz")];
        let problem = generate_with(&deep, Level::One, 0, &fixed).unwrap();
        match &problem.parts[0].answer {
            Answer::Number(answer) => answer.mistakes.len(),
            Answer::Choice(_) => 0,
        }
    };
    assert_eq!((mistakes("1602 kHz"), mistakes("909 kHz")), (3, 2));
}

#[test]
fn choices_come_in_every_order_with_one_right() {
    let mut orders: Vec<Vec<_>> = Vec::new();
    for seed in 0..100 {
        let problem = generate(&family(), Level::Three, seed).unwrap();
        let Answer::Choice(choices) = &problem.parts[1].answer else {
            panic!("no choice")
        };
        assert_eq!(choices.iter().filter(|choice| choice.right).count(), 1);
        let order = choices.iter().map(|choice| choice.id.clone()).collect();
        if !orders.contains(&order) {
            orders.push(order);
        }
    }
    assert_eq!(orders.len(), 6);
}

#[test]
fn a_faulty_family_is_told_so() {
    for (change, says) in [
        (
            ("asks = \"capacitance-ratio\"", "asks = \"wobble\""),
            "no given, value or quantity",
        ),
        (("kind = \"frequency\"", "kind = \"colour\""), "is no kind"),
        (
            ("{ figures = 3 }", "{ figures = 9 }"),
            "figures run from 1 to 7",
        ),
        (
            ("answer = \"1 / capacitance-ratio\"", "answer = \"f-low\""),
            "where a ratio is asked",
        ),
        (
            ("It shrinks {answer} times.", "It shrinks {amount} times."),
            "nothing is named",
        ),
        (
            ("right-when = \"station > 1 MHz\"", ""),
            "one choice must be right",
        ),
    ] {
        let broken = changed(&[change]);
        let errors: Vec<_> = Level::ALL
            .into_iter()
            .flat_map(|level| (0..9).map(move |seed| (level, seed)))
            .filter_map(|(level, seed)| generate(&broken, level, seed).err())
            .map(|error| error.to_string())
            .collect();
        assert!(
            errors.iter().any(|error| error.contains(says)),
            "{says}: {errors:?}"
        );
    }
}
