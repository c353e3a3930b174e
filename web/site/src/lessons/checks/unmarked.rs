//! A number with a unit is marked, wherever it stands.

use crate::lessons::block::{Block, Table};
use crate::lessons::blocks::Part;
use crate::lessons::course::Course;
use crate::lessons::lesson::Lesson;
use crate::lessons::prose::Flat;
use crate::lessons::scan;
use crate::lessons::source_text::SourceText;
use crate::lessons::texts::{self, Text};
use crate::report::Report;

/// Reports every number with a unit that is not worked out, given or a fact.
pub(super) fn check(course: &Course, report: &mut Report) {
    for lesson in &course.lessons {
        for text in texts::of_lesson(lesson) {
            check_text(text, report);
        }
        check_tables(lesson, report);
    }
    for text in texts::of_lists(course) {
        check_text(text, report);
    }
}

fn check_text(text: Text<'_>, report: &mut Report) {
    let flat = Flat::of(text.run);
    for range in scan::numbers_with_unit(&flat.text) {
        let number = one_line(&flat.text[range.clone()]);
        text.file
            .fault(flat.place(range.start), unmarked(&number), report);
    }
    for range in scan::units_outside_marks(&flat.text) {
        let unit = &flat.text[range.clone()];
        let message = format!("\"{unit}\" belongs inside the mark of the number before it");
        text.file.fault(flat.place(range.start), message, report);
    }
}

fn unmarked(number: &str) -> String {
    format!("\"{number}\" is a number with a unit: mark it as calc:, given: or fact:")
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn check_tables(lesson: &Lesson, report: &mut Report) {
    for part in &lesson.parts {
        match part {
            Part::Prose(block) => check_tables_in(block, &lesson.file, report),
            Part::Misconception(block) => {
                block
                    .body
                    .iter()
                    .for_each(|block| check_tables_in(block, &lesson.file, report));
            }
            _ => {}
        }
    }
}

fn check_tables_in(block: &Block, file: &SourceText, report: &mut Report) {
    match block {
        Block::Table(table) => check_table(table, file, report),
        Block::Quote(blocks) => blocks
            .iter()
            .for_each(|block| check_tables_in(block, file, report)),
        Block::List(_, items) => {
            items
                .iter()
                .flatten()
                .for_each(|block| check_tables_in(block, file, report));
        }
        _ => {}
    }
}

/// In a column whose heading carries the unit the number alone is a number with a unit.
fn check_table(table: &Table, file: &SourceText, report: &mut Report) {
    for (column, heading) in table.headings.iter().enumerate() {
        let heading = Flat::of(heading).text;
        if !scan::ends_in_unit(&heading) {
            continue;
        }
        for cell in table.rows.iter().filter_map(|row| row.get(column)) {
            let flat = Flat::of(cell);
            if flat.text.chars().any(|sign| sign.is_ascii_digit())
                && scan::numbers_with_unit(&flat.text).is_empty()
            {
                let number = format!(
                    "{} (under \"{}\")",
                    one_line(&flat.text),
                    one_line(&heading)
                );
                file.fault(flat.place(0), unmarked(&number), report);
            }
        }
    }
}
