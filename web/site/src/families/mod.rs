//! Problem families: read from their files, checked, and kept under their numbers.
//!
//! `lessons/problems/registry.toml` is the list; each row names a family, a revision
//! and the seal of what that revision says. The newest revision of a family stands in
//! `<id>.toml`, an older one in `<id>.r<revision>.toml`.

mod file;
mod references;
mod registry;
mod set_on;
mod shipped;

use crate::report::Report;
pub use references::References;
use registry::Row;
use sha2::{Digest, Sha256};
pub(crate) use shipped::as_asset;
pub use shipped::asset_name;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use superhet::problems::{Family, Registered};

/// Where families and their registry stand, from the repository's root.
const FOLDER: &str = "lessons/problems";

/// Every family of the registry, older revisions too.
#[derive(Debug, Clone, Default)]
pub struct Families {
    read: Vec<Read>,
}

/// A family with the file that it was read from.
#[derive(Debug, Clone)]
struct Read {
    registered: Registered,
    file: file::File,
    newest: bool,
}

impl Families {
    /// Reads the registry and every family in it, and checks all that needs no other
    /// content; faults go to the report.
    pub fn load(root: &Path, report: &mut Report) -> Families {
        let rows = registry::load(root, report);
        let mut families = Families::default();
        let mut expected: BTreeSet<PathBuf> = BTreeSet::from([registry::path()]);
        for row in &rows {
            let newest = !rows
                .iter()
                .any(|other| row.id == other.id && row.revision < other.revision);
            let path = row.path(newest);
            expected.insert(path.clone());
            if let Some(read) = read(root, &path, row, newest, report) {
                families.read.push(read);
            }
        }
        unexpected(root, &expected, report);
        families
    }

    /// Every revision of every family, in the order of registration.
    pub fn all(&self) -> impl Iterator<Item = &Registered> {
        self.read.iter().map(|read| &read.registered)
    }

    /// The newest revision of each family, in the order of their numbers.
    pub fn newest(&self) -> impl Iterator<Item = &Registered> {
        self.read
            .iter()
            .filter(|read| read.newest)
            .map(|read| &read.registered)
    }

    /// The newest revision of the family with this id.
    pub fn find(&self, id: &str) -> Option<&Registered> {
        self.newest().find(|registered| registered.family.id == id)
    }

    /// The family of a problem code, whichever revision it asks for.
    pub fn numbered(&self, number: u16, revision: u8) -> Option<&Registered> {
        let wanted = |registered: &&Registered| {
            registered.number == number && registered.family.revision == revision
        };
        self.all().find(wanted)
    }

    /// Checks what the families say about other content: lessons, misconceptions, facts.
    pub fn check_references(&self, references: &References<'_>, report: &mut Report) {
        for read in self.read.iter().filter(|read| read.newest) {
            references::check(&read.registered.family, &read.file, references, report);
        }
    }
}

fn read(root: &Path, path: &Path, row: &Row, newest: bool, report: &mut Report) -> Option<Read> {
    let file = file::File::open(root, path, report)?;
    let family = file.family(report)?;
    let faults = superhet::problems::check::faults(&family);
    for fault in &faults {
        file.fault(&fault.place, &fault.says, report);
    }
    if faults.is_empty() {
        set_on::check(&family, &file, report);
    }
    agrees(row, &family, &file, report);
    let registered = Registered {
        number: row.number,
        family,
    };
    Some(Read {
        registered,
        file,
        newest,
    })
}

/// A registered revision must say what it said when it was sealed.
fn agrees(row: &Row, family: &Family, file: &file::File, report: &mut Report) {
    use superhet::problems::fault::Place::Key;
    if family.id != row.id {
        let says = format!("the file of {} calls itself {:?}", row.id, family.id);
        file.fault(&[Key("id")], &says, report);
    } else if family.revision != row.revision {
        let says = format!(
            "the registry expects revision {} here (got {}); a new revision gets a row of its own",
            row.revision, family.revision
        );
        file.fault(&[Key("revision")], &says, report);
    } else if seal(family) != row.seal {
        let says = format!(
            "{} no longer says what its revision {} was sealed with. A change of text, range or \
             rounding is a new revision: keep the old file as {}.r{}.toml, raise the revision and \
             add a row with seal = \"{}\"; before release 1.0 the seal may be replaced instead",
            row.id,
            row.revision,
            row.id,
            row.revision,
            seal(family)
        );
        file.fault(&[Key("revision")], &says, report);
    }
}

/// The first sixteen hexadecimal digits of SHA-256 over the family as JSON: comments and
/// layout of the file do not count, every word and number does.
pub fn seal(family: &Family) -> String {
    let json = serde_json::to_string(family).unwrap_or_default();
    let digest = Sha256::digest(json.as_bytes());
    digest
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// Files in the folder that no row of the registry accounts for.
fn unexpected(root: &Path, expected: &BTreeSet<PathBuf>, report: &mut Report) {
    let Ok(entries) = std::fs::read_dir(root.join(FOLDER)) else {
        return;
    };
    let mut names: Vec<PathBuf> = entries
        .flatten()
        .map(|entry| Path::new(FOLDER).join(entry.file_name()))
        .filter(|path| {
            path.extension()
                .is_some_and(|extension| extension == "toml")
        })
        .collect();
    names.sort();
    for path in names {
        if !expected.contains(&path) {
            report.fault(path, 1, 1, "no row of registry.toml accounts for this file");
        }
    }
}
