//! Every registered problem family, held to what a problem promises.

use site::families::Families;
use site::report::Report;
use std::path::Path;

fn families() -> Families {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut report = Report::default();
    let families = Families::load(&root, &mut report);
    assert_eq!(report.faults(), [], "{report}");
    families
}

#[test]
fn families_load_without_faults() {
    assert!(families().newest().count() >= 3);
}
