//! `cargo site bench`: how long things take, each against its rival in the same run.
//!
//! A group is a function that gives rows; its name is what the command line asks for. A
//! goal that is missed is marked, and fails nothing: times depend on the machine.

mod core;
mod course;
mod example;
mod page;
mod problems;
mod row;
mod site;
mod timing;

use anyhow::{Result, bail};
pub use row::{Goal, Row};
use std::path::Path;
pub use timing::median_seconds;

/// What makes the rows of a group, for the repository at a root.
type Group = fn(&Path) -> Result<Vec<Row>>;

/// Every group under its name.
const GROUPS: [(&str, Group); 4] = [
    ("site", site::rows),
    ("core", core::rows),
    ("page", page::rows),
    ("problems", problems::rows),
];

/// Measures one group, or all, and prints a table or one JSON object a row.
///
/// # Errors
/// When there is no such group, or something cannot be measured.
pub fn run(root: &Path, group: Option<&str>, json: bool) -> Result<()> {
    for (name, rows) in wanted(group)? {
        if !json {
            println!("{name}");
        }
        for row in rows(root)? {
            println!("{}", if json { row.json() } else { row.line() });
        }
    }
    Ok(())
}

fn wanted(group: Option<&str>) -> Result<Vec<(&'static str, Group)>> {
    let Some(group) = group else {
        return Ok(GROUPS.to_vec());
    };
    match GROUPS.iter().find(|(name, _)| *name == group) {
        Some(found) => Ok(vec![*found]),
        None => {
            let names: Vec<&str> = GROUPS.iter().map(|(name, _)| *name).collect();
            bail!(
                "there is no group \"{group}\"; there is {}",
                names.join(", ")
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use super::wanted;

    #[test]
    fn an_unknown_group_is_named_beside_those_there_are() {
        assert_eq!(
            wanted(Some("site")).map(|groups| groups.len()).ok(),
            Some(1)
        );
        let said = wanted(Some("sight")).unwrap_err().to_string();
        assert!(
            said.contains("\"sight\"") && said.contains("site"),
            "{said}"
        );
    }
}
