//! Blocks as an author writes them, right and wrong.

use super::Part;
use crate::lessons::extract::Extract;
use crate::lessons::markdown;
use crate::lessons::prose::plain;
use crate::lessons::source_text::{SourceText, faults_of};
use crate::report::Report;

fn read(text: &str, report: &mut Report) -> Vec<Part> {
    let file = SourceText::new("l.md", text);
    markdown::blocks(Extract::whole(&file), report)
        .into_iter()
        .filter_map(|block| Part::read(block, &file, report))
        .collect()
}

fn faults(text: &str) -> String {
    faults_of(|report| drop(read(text, report)))
}

fn only(text: &str) -> Part {
    let mut report = Report::default();
    let mut parts = read(text, &mut report);
    assert_eq!(report.faults(), []);
    assert_eq!(parts.len(), 1);
    parts.remove(0)
}

const FIGURE: &str = "```figure line dial=1200kHz side=above\nThe *caption*\nin two lines.\n\
                      task: Move it.\ndone: image > 1606.5 kHz\n```\n";

#[test]
fn a_figure_with_a_task() {
    let Part::Figure(figure) = only(FIGURE) else {
        panic!("a figure");
    };
    assert_eq!(figure.name, "line");
    assert_eq!(
        figure.input.pairs[1],
        ("side".to_owned(), "above".to_owned())
    );
    assert_eq!(plain(&figure.caption), "The caption in two lines.");
    let task = figure.task.expect("a task");
    assert_eq!(
        (plain(&task.words).as_str(), task.done.as_str()),
        ("Move it.", "image > 1606.5 kHz")
    );
    assert!(FIGURE[task.done_at..].starts_with("image >"));
}

#[test]
fn a_figure_told_wrongly() {
    assert_eq!(
        faults(&FIGURE.replace("done: image > 1606.5 kHz\n", "")),
        "l.md:1:4: \"task:\" and \"done:\" go together: one says what to do, the other when it is done"
    );
    assert_eq!(
        faults(&FIGURE.replace("side=above", "side = above")),
        "l.md:1:29: a parameter is written key=value, without spaces (got \"side\")\n\
         l.md:1:34: a parameter is written key=value, without spaces (got \"=\")\n\
         l.md:1:36: a parameter is written key=value, without spaces (got \"above\")"
    );
    assert_eq!(
        faults(&FIGURE.replace("task:", "hint:")),
        "l.md:1:4: \"task:\" and \"done:\" go together: one says what to do, the other when it is done\n\
         l.md:4:1: \"hint\" is no key of this block (its keys: task, done)"
    );
    assert_eq!(
        faults("```figure\nx\n```\n"),
        "l.md:1:4: the block names a figure behind it"
    );
}

const PREDICT: &str = "```predict\nWhat happens?\n- [ ] Down. {backwards}\n- [x] Up,\n  by twice.\n\
                       settled by: image?dial=1209kHz\nbecause: It is so.\n```\n";

#[test]
fn a_prediction() {
    let Part::Predict(predict) = only(PREDICT) else {
        panic!("a prediction");
    };
    assert_eq!(plain(&predict.question), "What happens?");
    assert_eq!(plain(&predict.choices[0].words), "Down.");
    let (id, at) = predict.choices[0].misconception.as_ref().expect("named");
    assert_eq!((id.as_str(), &PREDICT[*at..*at + 2]), ("backwards", "{b"));
    assert!(predict.choices[1].right);
    assert_eq!(plain(&predict.choices[1].words), "Up, by twice.");
    assert_eq!(predict.settled_by.quantity, "image");
    assert_eq!(plain(&predict.because), "It is so.");
}

#[test]
fn a_prediction_told_wrongly() {
    assert_eq!(
        faults(&PREDICT.replace("[ ]", "[x]")),
        "l.md:1:4: a prediction has at least two choices, \"- [ ]\" or \"- [x]\", of which exactly one is right \
         (got 2 choices, 2 of them right)"
    );
    assert_eq!(
        faults(&PREDICT.replace("settled by: image?dial=1209kHz\n", "")),
        "l.md:1:4: this block needs a line that begins \"settled by:\""
    );
    assert_eq!(
        faults(&PREDICT.replace("```predict", "```predict now")),
        "l.md:1:12: nothing stands behind the name of this block (got \"now\")"
    );
}

const WORKED: &str = "```worked\ntitle: T\nask: A?\n1. One.\n2. Two,\n   and more.\n3. Three.\n\
                      again: dial=909kHz\nalone: dial=693kHz if=465kHz\n```\n";

#[test]
fn a_worked_example() {
    let Part::Worked(worked) = only(WORKED) else {
        panic!("a worked example");
    };
    assert_eq!(
        (plain(&worked.title), plain(&worked.ask)),
        ("T".to_owned(), "A?".to_owned())
    );
    let steps: Vec<String> = worked.steps.iter().map(|step| plain(&step.words)).collect();
    assert_eq!(steps, ["One.", "Two, and more.", "Three."]);
    assert_eq!(worked.alone.pairs.len(), 2);
    assert!(WORKED[worked.alone.at..].starts_with("dial=693kHz"));
}

#[test]
fn a_worked_example_told_wrongly() {
    assert_eq!(
        faults(&WORKED.replace("3. Three.\n", "")),
        "l.md:1:4: a worked example has at least 3 numbered steps behind its question (got 2)"
    );
    assert_eq!(
        faults(&WORKED.replace("3. Three", "4. Three")),
        "l.md:7:1: this step is number 3"
    );
    assert_eq!(
        faults(
            &WORKED
                .replace("again: dial=909kHz\n", "")
                .replace("alone:", "again:")
        ),
        "l.md:1:4: this block needs a line that begins \"alone:\""
    );
    assert_eq!(
        faults(&WORKED.replace("alone:", "again:")),
        "l.md:1:4: this block needs a line that begins \"alone:\"\n\
         l.md:9:1: \"again\" stands a second time in this block"
    );
}

#[test]
fn blocks_that_name_one_thing() {
    assert!(
        matches!(only("```misconception m\nThe case.\n```\n"), Part::Misconception(m) if m.id == "m")
    );
    assert!(
        matches!(only("```formula oscillator\n```\n"), Part::Formula(f) if f.quantity == "oscillator")
    );
    assert!(matches!(only("```problem p\n```\n"), Part::Problem(p) if p.family == "p"));
    assert_eq!(
        faults("```formula\n```\n"),
        "l.md:1:4: the block names a quantity of the catalogue behind it (got \"\")"
    );
    assert_eq!(
        faults("```problem p\nx\n```\n"),
        "l.md:2:1: nothing stands inside this block"
    );
    assert_eq!(
        faults("```misconception m\n```\n"),
        "l.md:1:4: the case that breaks the belief stands inside this block"
    );
}

#[test]
fn unknown_and_nested_blocks_are_refused() {
    assert_eq!(
        faults("```quiz\nx\n```\n"),
        "l.md:1:4: a block is a figure, predict, worked, misconception, formula, problem or recall (got \"quiz\")"
    );
    assert_eq!(
        faults("Text\n\n```\nx\n```\n"),
        "l.md:3:4: a block is a figure, predict, worked, misconception, formula, problem or recall (got \"\")"
    );
    assert_eq!(
        faults("- a\n\n  ```formula x\n  ```\n"),
        "l.md:3:6: a block stands by itself, not inside a list, a quotation or another block"
    );
}
