//! What the notebook keeps, and what it refuses.

use super::{LONGEST, Notebook, Tally};
use proptest::prelude::{prop_assert, prop_assert_eq, proptest};
use superhet::problems::before_after::{Form, Taking};
use superhet::problems::marking::NamedMistake;
use superhet::problems::{LeitnerBox, Marking, Outcome, Standing, Verdict};

fn marking(verdict: Verdict, mistake: Option<&str>) -> Marking {
    let mistake = mistake.map(|id| NamedMistake {
        id: id.to_owned(),
        misconception: None,
    });
    Marking {
        verdict,
        read_as: None,
        mistake,
        says: String::new(),
    }
}

const TODAY: u32 = 20_000;

fn example() -> Notebook {
    let mut notebook = Notebook::default();
    notebook.tick("the-image", "2026-11-25");
    notebook.tally(
        "image-of-a-station",
        &marking(Verdict::Wrong, Some("one-if")),
    );
    notebook.tally(
        "image-of-a-station",
        &marking(Verdict::Wrong, Some("one-if")),
    );
    notebook.tally(
        "image-of-a-station",
        &marking(Verdict::RightButRounded, None),
    );
    notebook.tally("image-of-a-station", &marking(Verdict::Unclear, None));
    notebook.done("image-of-a-station", Outcome::RightWithHelp, TODAY);
    notebook.check(Taking {
        day: TODAY,
        form: Form::Two,
        right: 0b1000_0000_0001,
    });
    notebook
}

#[test]
fn the_text_is_the_one_promised() {
    assert_eq!(
        example().to_json().write(),
        r#"{"version":2,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":[1,2,1,20001,{"one-if":2}]},"checks":[[20000,2,2049]]}"#
    );
    assert_eq!(
        example().told(),
        "1 lesson ticked, 3 answers marked, 1 check taken"
    );
}

#[test]
fn it_is_read_as_it_was_written() {
    let text = example().to_json().write();
    assert_eq!(Notebook::read(&text), Ok(example()));
    assert_eq!(Notebook::read(r#"{"version":2}"#), Ok(Notebook::default()));
}

#[test]
fn the_first_version_is_read_and_written_anew() {
    assert_eq!(Notebook::read(r#"{"version":1}"#), Ok(Notebook::default()));
    let text = r#"{"version":1,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":{"right":1,"wrong":2,"mistakes":{"one-if":2}}}}"#;
    let old = Notebook::read(text).unwrap();
    let tally = old.tally_of("image-of-a-station").unwrap();
    assert_eq!((tally.right, tally.wrong, tally.standing), (1, 2, None));
    assert_eq!(old.due(TODAY), 0);
    assert_eq!(
        old.to_json().write(),
        r#"{"version":2,"lessons":{"the-image":"2026-11-25"},"problems":{"image-of-a-station":[1,2,0,0,{"one-if":2}]}}"#
    );
    let mut new = example();
    new.take_in(&old);
    assert_eq!(new, example(), "an old copy takes no standing away");
}

#[test]
fn a_problem_that_is_done_moves_its_family() {
    let mut notebook = example();
    let standing = |notebook: &Notebook| notebook.tally_of("image-of-a-station")?.standing;
    assert_eq!(notebook.due(TODAY), 0);
    assert_eq!(notebook.due(TODAY + 1), 1);
    notebook.done("image-of-a-station", Outcome::RightAlone, TODAY + 1);
    let second = LeitnerBox::from_number(2).unwrap();
    let due = TODAY + 1 + second.days();
    let leitner_box = second;
    assert_eq!(standing(&notebook), Some(Standing { leitner_box, due }));
    notebook.done("image-of-a-station", Outcome::Shown, TODAY + 1);
    let leitner_box = LeitnerBox::FIRST;
    let due = TODAY + 2;
    assert_eq!(standing(&notebook), Some(Standing { leitner_box, due }));
    notebook.take_in(&example());
    assert_eq!(standing(&notebook), Some(Standing { leitner_box, due }));
}

#[test]
fn of_many_checks_the_first_and_the_last_stay() {
    let taken = |day| Taking {
        day,
        form: Form::One,
        right: 0,
    };
    let mut notebook = Notebook::default();
    for day in [7, 3, 5, 9, 1, 3] {
        notebook.check(taken(day));
    }
    assert_eq!(notebook.checks(), [1, 5, 7, 9].map(taken));
    // Both forms on one day: the one taken first is "before".
    let mut same_day = Notebook::default();
    let other = Taking {
        form: Form::Two,
        ..taken(7)
    };
    same_day.check(other);
    same_day.check(taken(7));
    assert_eq!(same_day.checks(), [other, taken(7)]);
    let text = same_day.to_json().write();
    assert_eq!(Notebook::read(&text), Ok(same_day));
    let text = notebook.to_json().write();
    assert_eq!(Notebook::read(&text), Ok(notebook));
}

#[test]
fn damage_is_named_and_nothing_half_is_kept() {
    let long = " ".repeat(LONGEST + 1);
    for text in [
        "",
        "null",
        r#"{"version":3}"#,
        r#"{"version":1,"lessons":[]}"#,
        r#"{"version":2,"problems":{"a":{"right":1,"wrong":0,"mistakes":{}}}}"#,
        r#"{"version":2,"problems":{"a":[1,0,6,0,{}]}}"#,
        r#"{"version":2,"problems":{"a":[1,0,1,{}]}}"#,
        r#"{"version":2,"problems":{"a":[100000,0,1,5,{}]}}"#,
        r#"{"version":2,"checks":{}}"#,
        r#"{"version":2,"checks":[[1,3,0]]}"#,
        r#"{"version":2,"checks":[[1,1,4096]]}"#,
        r#"{"version":2,"checks":[[1,1,0],[2,1,0],[3,1,0],[4,1,0],[5,1,0]]}"#,
        r#"{"version":1,"lessons":{"<b>":"2026-11-25"}}"#,
        r#"{"version":1,"lessons":{"a":"yesterday"}}"#,
        r#"{"version":1,"lessons":{"a":"2026-11-25","a":"2026-11-26"}}"#,
        r#"{"version":1,"problems":{"a":{"right":1}}}"#,
        r#"{"version":1,"problems":{"a":{"right":100000,"wrong":0,"mistakes":{}}}}"#,
        &long,
    ] {
        assert!(Notebook::read(text).is_err(), "{text:.60}");
    }
}

#[test]
fn two_copies_become_one_and_again_the_same() {
    let mut here = Notebook::default();
    here.tick("the-image", "2026-12-01");
    here.tick("oscillator", "2026-12-02");
    here.tally("image-of-a-station", &marking(Verdict::Right, None));
    here.take_in(&example());
    assert_eq!(here.day_of("the-image"), Some("2026-11-25"));
    assert_eq!(here.day_of("oscillator"), Some("2026-12-02"));
    let tally = here.tally_of("image-of-a-station").unwrap();
    let expected = Tally {
        right: 1,
        wrong: 2,
        standing: Some(Standing {
            leitner_box: LeitnerBox::FIRST,
            due: TODAY + 1,
        }),
        mistakes: vec![("one-if".to_owned(), 2)],
    };
    assert_eq!(*tally, expected);
    let once = here.clone();
    here.take_in(&example());
    assert_eq!(here, once);
    here.untick("oscillator");
    assert_eq!(here.day_of("oscillator"), None);
}

/// The fullest notebook there can be.
#[test]
fn a_full_notebook_can_be_read_again() {
    let mut notebook = Notebook::default();
    let name = |number: usize| format!("{number:0>60}");
    for place in 0..super::MOST_NAMES + 1 {
        notebook.tick(&name(place), "2026-11-25");
        let tally = Tally {
            right: super::tally::MOST,
            wrong: super::tally::MOST,
            standing: Some(Standing {
                leitner_box: LeitnerBox::LAST,
                due: u32::MAX,
            }),
            mistakes: (0..20).map(|it| (name(it), super::tally::MOST)).collect(),
        };
        notebook.take_in(&Notebook {
            problems: vec![(name(place), tally)],
            ..Notebook::default()
        });
    }
    for day in 0..9 {
        let form = Form::One;
        let (day, right) = (u32::MAX - day, 4095);
        notebook.check(Taking { day, form, right });
    }
    let text = notebook.to_json().write();
    assert!(text.len() <= LONGEST, "{}", text.len());
    assert_eq!(Notebook::read(&text), Ok(notebook));
}

proptest! {
    #[test]
    fn what_is_ticked_can_be_read_again(slugs in proptest::collection::vec("[a-z-]{0,70}", 0..300)) {
        let mut notebook = Notebook::default();
        for slug in &slugs {
            notebook.tick(slug, "2026-01-02");
        }
        let text = notebook.to_json().write();
        prop_assert!(text.len() <= LONGEST);
        prop_assert_eq!(Notebook::read(&text), Ok(notebook));
    }
}
