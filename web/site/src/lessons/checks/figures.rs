//! Every figure can be drawn, and its task is open when it is.

use crate::lessons::blocks::{Figure, Part};
use crate::lessons::course::Course;
use crate::lessons::reach::can_be_done;
use crate::report::Report;
use figures::{Condition, FigureError};
use numbers::Givens;

/// Reports figures that cannot be drawn and tasks that nobody can do.
pub(super) fn check(course: &Course, report: &mut Report) {
    for lesson in &course.lessons {
        let (givens, _) = Givens::read(&lesson.raw_givens());
        for part in &lesson.parts {
            let Part::Figure(figure) = part else { continue };
            if let Err((at, message)) = check_one(figure, &givens) {
                lesson.file.fault(at, message, report);
            }
        }
    }
}

/// What is wrong with a figure, and where.
fn check_one(figure: &Figure, givens: &Givens) -> Result<(), (usize, String)> {
    let at = |place: usize| move |error: FigureError| (place, error.to_string());
    let input = figure.input(givens).map_err(at(figure.at))?;
    let view = figures::view(&figure.name, &input).map_err(at(figure.at))?;
    let Some(task) = &figure.task else {
        return Ok(());
    };
    let condition = Condition::parse(&task.done).map_err(at(task.done_at))?;
    if condition.met(&view).map_err(at(task.done_at))? {
        return Err((
            task.done_at,
            "the figure meets this before the reader has done anything".to_owned(),
        ));
    }
    if !can_be_done(&figure.name, &input, &condition) {
        return Err((
            task.done_at,
            "no stop of the figure's handles meets this: they move in steps".to_owned(),
        ));
    }
    Ok(())
}
