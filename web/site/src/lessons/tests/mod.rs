//! A small course, right in everything, and what is said when one thing in it is wrong.

mod coverage;
mod damaged;
mod drawn;
mod links;
mod order;
mod own_sets;
mod reading_ease;
mod real;
mod recall;
mod shape;
mod unmarked;

use super::checks;
use super::course::{Course, CourseFiles};
use super::source_text::faults_of;
use crate::report::Report;

/// The first lesson, at `lessons/01-one.md`.
const ONE: &str = r#"+++
title = "One frequency"
minutes = 10
goals = ["Work out the oscillator"]
problems = ["family"]
misconceptions = ["backwards", "sideways"]
sources = ["book"]
[introduces]
quantities = ["oscillator"]
terms = ["superhet"]
[given]
dial = "1200 kHz"
if = "470 kHz"
side = "above"
second = "909 kHz"
runs-at = "calc:oscillator"
+++

A [superhet](term:superhet) on [1200 kHz](given:dial) has channels [9 kHz](fact:spacing) apart.

## What happens

```predict
Where does it run?
- [ ] At [1200 kHz](given:dial). {backwards}
- [x] At [1670 kHz](calc:oscillator).
settled by: oscillator
because: It runs [above](given:side).
```

```figure frequency-line dial=dial if=470kHz side=above
The line.
task: Move it.
done: dial > 1300 kHz
```

```worked
title: The sum
ask: Where is it for [1200 kHz](given:dial)?
1. The dial says [1200 kHz](given:dial).
2. The IF is [470 kHz](given:if).
3. Together [1670 kHz](calc:oscillator).
again: dial=909kHz
alone: dial=693kHz if=465kHz
```

```misconception backwards
At [909 kHz](given:second) it runs at [1379 kHz](calc:oscillator?dial=second).
```

```misconception sideways
It runs at [1.67 MHz](given:runs-at).
```

```formula oscillator
```

```problem family
```

## Carry to the bench

FILLER
"#;

/// The second lesson, at `lessons/02-two.md`.
const TWO: &str = r#"+++
title = "Two of them"
minutes = 10
needs = ["one"]
goals = ["Find the image"]
problems = ["family"]
misconceptions = ["upside-down", "inside-out"]
near-a-set = true
[introduces]
quantities = ["image"]
terms = ["image"]
[given]
dial = "1200 kHz"
if = "470 kHz"
side = "above"
+++

The **image** of [lesson 1](lesson:one)'s station lies at [2140 kHz](calc:image). Images are alike.

```predict
Where is it?
- [ ] There. {upside-down}
- [x] Here.
settled by: image
because: So it is.
```

```figure block-diagram dial=1200kHz if=470kHz side=above
A superhet, part by part.
```

```worked
title: The image
ask: Where is it?
1. Here [1200 kHz](given:dial).
2. There [1670 kHz](calc:oscillator).
3. Everywhere [2140 kHz](calc:image).
again: dial=909kHz
alone: dial=693kHz
```

```misconception upside-down
No, it is not.
```

```misconception inside-out
Nor is it.
```

```problem family
```

## Carry to the bench

FILLER
"#;

const SOURCES: &str = r#"[[source]]
id = "book"
author = "A. Author"
title = "A Book"
year = 1953

[[fact]]
id = "spacing"
text = "9 kHz"
value = "9 kHz"
source = "book"
clause = "page 1"
"#;

const MISCONCEPTIONS: &str = r#"[[misconception]]
id = "backwards"
belief = "It runs backwards."
case = "It does not."
practice = true

[[misconception]]
id = "sideways"
belief = "It runs sideways."
case = "It does not."
practice = true

[[misconception]]
id = "upside-down"
belief = "It is upside down."
case = "It is not."
practice = true

[[misconception]]
id = "inside-out"
belief = "It is inside out."
case = "It is not."
practice = true
"#;

const GLOSSARY: &str = r#"[[term]]
id = "superhet"
name = "superhet"
also = ["superhets", "super het"]
meaning = "A set with one fixed frequency."

[[term]]
id = "image"
name = "image"
also = ["images", "IM"]
meaning = "What a superhet hears besides."
"#;

const SETS: &str = r#"[[set]]
number = 1
id = "lantern"
name = "Lantern"
if = "470 kHz"
side = "above"
region = 1
[[set.band]]
id = "mw"
name = "Medium wave"
low = "525 kHz"
high = "1605 kHz"
aerial-q = 80
[[set.if-transformer]]
coupling = 0.01
primary = { capacitance = "200 pF", q = 100 }
secondary = { capacitance = "200 pF", q = 100 }
"#;

const CAUTIONS: &str =
    "**It can kill.**\n\n- Leave it closed.\n\n## Afterwards\n\nCall **help**.\n\n- Stay out.\n";

const FAMILY: &str = r#"lesson = "one"
[[mistake]]
says = "That is no superhet."
[level-1]
scenes = ["The {image} hums."]
"#;

/// Changes to the course: a file, words in it, and what stands there instead.
type Change<'a> = (&'a str, &'a str, &'a str);

/// The files of the course.
fn files() -> [(&'static str, String); 8] {
    let filler = "Plain words say what to carry to the bench and no more than that. ".repeat(34);
    [
        ("lessons/01-one.md", ONE.replace("FILLER", &filler)),
        ("lessons/02-two.md", TWO.replace("FILLER", &filler)),
        ("lessons/sources.toml", SOURCES.to_owned()),
        ("lessons/misconceptions.toml", MISCONCEPTIONS.to_owned()),
        ("lessons/glossary.toml", GLOSSARY.to_owned()),
        ("lessons/set-profiles.toml", SETS.to_owned()),
        ("lessons/cautions.md", CAUTIONS.to_owned()),
        ("lessons/problems/family.toml", FAMILY.to_owned()),
    ]
}

/// The course of some files.
fn course_of(files: &[(&str, String)], report: &mut Report) -> Course {
    let texts = files.iter().map(|(path, text)| (*path, text.as_str()));
    Course::read(CourseFiles::from_texts(texts), report)
}

/// The course with changes made to it.
fn course(changes: &[Change<'_>], report: &mut Report) -> Course {
    let mut files = files();
    for (name, from, to) in changes {
        let path = format!("lessons/{name}");
        let file = files
            .iter_mut()
            .find(|file| file.0 == path)
            .expect("a file of the course");
        assert!(file.1.contains(from), "{name} holds {from:?}");
        file.1 = file.1.replacen(from, to, 1);
    }
    course_of(&files, report)
}

/// What is wrong with the course after changes.
fn faults(changes: &[Change<'_>]) -> String {
    faults_of(|report| {
        let course = course(changes, report);
        checks::all(&course, &["family", "second"], report);
    })
}

/// What is wrong with the first lesson after one change.
fn faults_of_one(from: &str, to: &str) -> String {
    faults(&[("01-one.md", from, to)])
}

#[test]
fn the_course_is_right_as_it_stands() {
    assert_eq!(faults(&[]), "");
}
