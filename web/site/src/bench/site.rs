//! How long the site itself takes to render. There is no rival but itself: the goals are
//! times, and that twice the lessons take no more than twice the time.

use super::course::Course;
use super::row::{Goal, Row};
use super::timing::median_seconds;
use crate::edition::Edition;
use crate::render::{Files, render};
use crate::serve::Workbench;
use crate::service_worker;
use crate::sources::Sources;
use crate::wasm::Wasm;
use anyhow::Result;
use std::hint::black_box;
use std::path::Path;
use std::sync::Arc;

/// The length of the course when it is whole, and three times that.
const COURSES: [usize; 2] = [16, 48];

/// A lesson of the longer course may take this part more of a lesson's time than one of
/// the shorter: what does not grow with the lessons is shared by more of them, so a share
/// that grows would come from pages that list every lesson.
const GROWTH: f64 = 1.25;

/// Rows of the group `site`.
pub(super) fn rows(root: &Path) -> Result<Vec<Row>> {
    let wasm = Arc::new(Wasm::stand_in());
    let mut rows = vec![Row {
        what: "the whole site, read and rendered".to_owned(),
        ours: rendering(root, &wasm)?,
        rival: None,
        goal: Goal::Seconds(1.0),
    }];
    rows.push(changed(root, &wasm)?);
    rows.extend(growth(root, &wasm)?);
    Ok(rows)
}

/// Reading, rendering and listing everything.
fn rendering(root: &Path, wasm: &Arc<Wasm>) -> Result<f64> {
    median_seconds(|| {
        black_box(files(root, wasm)?);
        Ok(())
    })
}

fn files(root: &Path, wasm: &Arc<Wasm>) -> Result<Files> {
    let sources = Sources::load(root, wasm)?;
    let mut files = render(&sources, &Edition::at_root())?;
    service_worker::add(&mut files, &sources.page_files)?;
    Ok(files)
}

/// What `serve` does when a lesson has changed, compressing included.
fn changed(root: &Path, wasm: &Arc<Wasm>) -> Result<Row> {
    let course = Course::of(root, 0)?;
    let mut bench = Workbench::new(course.root(), Arc::clone(wasm));
    let mut changes = 0;
    let ours = median_seconds(|| {
        changes += 1;
        course.change(changes)?;
        black_box(bench.made()?);
        Ok(())
    })?;
    Ok(Row {
        what: "one lesson changed, until it is served".to_owned(),
        ours,
        rival: None,
        goal: Goal::Seconds(0.2),
    })
}

/// A course of the planned length, and one lesson's share in it and in a longer one.
fn growth(root: &Path, wasm: &Arc<Wasm>) -> Result<Vec<Row>> {
    let [short, long] = COURSES;
    let whole = rendering(Course::of(root, short)?.root(), wasm)?;
    let longer = rendering(Course::of(root, long)?.root(), wasm)?;
    Ok(vec![
        Row {
            what: format!("a course of {short} lessons, read and rendered"),
            ours: whole,
            rival: None,
            goal: Goal::Seconds(1.0),
        },
        Row {
            what: format!("a lesson's share in {long} lessons, against {short}"),
            ours: longer / long as f64,
            rival: Some(whole / short as f64),
            goal: Goal::TimesAsFast(1.0 / GROWTH),
        },
    ])
}
