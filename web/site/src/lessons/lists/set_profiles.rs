//! `set-profiles.toml`: the built-in sets. Number 1 is the practice set.

use crate::lessons::source_text::SourceText;
use crate::report::Report;
use crate::set_file::SetFile;
use superhet::receiver::{Place, SetProfile};

/// The number of the practice set, which every page uses until the reader has a set.
const PRACTICE_SET: u32 = 1;

/// Reads the list, checks every value in it, and gives the practice set.
pub(crate) fn read(file: &SourceText, report: &mut Report) -> Option<SetProfile> {
    let list = SetFile::read(file.text());
    for slip in list.misshapen() {
        file.fault(slip.at, slip.says.clone(), report);
    }
    let practice = |set: &&SetProfile| set.number == Some(PRACTICE_SET);
    if list.misshapen().is_empty() && !list.sets.iter().any(|set| practice(&set)) {
        let says = format!("no set has the number {PRACTICE_SET}, the practice set's");
        file.fault(0, says, report);
    }
    for index in 0..list.sets.len() {
        for slip in list.slips(index) {
            file.fault(slip.at, slip.says, report);
        }
        check_names(file, &list, index, report);
    }
    list.sets.iter().find(practice).cloned()
}

/// A built-in set has a number of its own, an id of its own and a name; its bands likewise.
fn check_names(file: &SourceText, list: &SetFile<'_>, index: usize, report: &mut Report) {
    let (set, earlier) = (&list.sets[index], &list.sets[..index]);
    let mut fault = |place: &[Place], says: String| file.fault(list.at(index, place), says, report);
    match set.number {
        None if list.is_told(index, &[Place::Key("number")]) => {}
        None => fault(&[], "a built-in set has a number".to_owned()),
        Some(number) if earlier.iter().any(|one| one.number == Some(number)) => {
            let says = format!("the number {number} stands here a second time");
            fault(&[Place::Key("number")], says);
        }
        Some(_) => {}
    }
    if set.name.trim().is_empty() {
        fault(&[], "a set has a name".to_owned());
    }
    if let Some(says) = wrong_id("set", &set.id, earlier.iter().map(|one| &one.id)) {
        fault(&[Place::Key("id")], says);
    }
    for (place, says) in wrong_band_ids(set) {
        fault(&place, says);
    }
}

fn wrong_band_ids(set: &SetProfile) -> Vec<([Place; 3], String)> {
    let wrong = |(index, band): (usize, &superhet::receiver::BandProfile)| {
        let earlier = set.bands[..index].iter().map(|one| &one.id);
        let says = wrong_id("band", &band.id, earlier)?;
        let place = [Place::Key("band"), Place::Entry(index), Place::Key("id")];
        Some((place, says))
    };
    set.bands.iter().enumerate().filter_map(wrong).collect()
}

fn wrong_id<'a>(
    what: &str,
    id: &String,
    mut earlier: impl Iterator<Item = &'a String>,
) -> Option<String> {
    if !super::is_id(id) {
        return Some(format!(
            "an id is written in lower-case letters, digits and hyphens (got \"{id}\")"
        ));
    }
    earlier
        .any(|one| one == id)
        .then(|| format!("the {what} \"{id}\" stands here a second time"))
}

#[cfg(test)]
mod tests {
    use super::read;
    use crate::lessons::source_text::{SourceText, faults_of};

    const SET: &str = "[[set]]\nnumber = 1\nid = \"one\"\nname = \"One\"\nif = \"470 kHz\"\nside = \"above\"\n\
                       region = 1\n[[set.band]]\nid = \"mw\"\nname = \"MW\"\nlow = \"525 kHz\"\nhigh = \"1605 kHz\"\n\
                       aerial-q = 80\n[[set.if-transformer]]\ncoupling = 0.01\n\
                       primary = { capacitance = \"200 pF\", q = 100 }\n\
                       secondary = { capacitance = \"200 pF\", q = 100 }\n";

    fn faults(text: &str) -> String {
        let file = SourceText::new("s.toml", text);
        faults_of(|report| drop(read(&file, report)))
    }

    #[test]
    fn every_value_is_read() {
        assert_eq!(faults(SET), "");
        assert_eq!(
            faults(
                &SET.replace("470 kHz", "470")
                    .replace("above", "up")
                    .replace("region = 1", "region = 4")
            ),
            "s.toml:5:6: if: a frequency needs a unit, such as 1200 kHz (got \"470\")\n\
             s.toml:6:8: side: this is above or below (got \"up\")\n\
             s.toml:7:10: region: this is from 1 to 3 (got 4)"
        );
        assert_eq!(
            faults(&SET.replace("1605 kHz", "505 kHz")),
            "s.toml:12:8: band 1, high: this is above the lowest mark, 525 kHz (got 505 kHz)"
        );
        assert_eq!(
            faults(&SET.replace("number = 1", "number = 2")),
            "s.toml:1:1: no set has the number 1, the practice set's"
        );
    }

    #[test]
    fn numbers_and_ids_stand_once() {
        let again = SET.replace("\"mw\"", "\"MW\"");
        assert_eq!(
            faults(&(SET.to_owned() + &again)),
            "s.toml:19:10: the number 1 stands here a second time\n\
             s.toml:20:6: the set \"one\" stands here a second time\n\
             s.toml:26:6: an id is written in lower-case letters, digits and hyphens (got \"MW\")"
        );
        assert_eq!(
            faults(&(SET.to_owned() + "[[set.band]]\nid = \"mw\"\n"))
                .lines()
                .next(),
            Some("s.toml:18:1: band 2, aerial-q: this is missing; it is from 1 to 1000")
        );
    }

    #[test]
    fn a_key_that_nobody_knows_is_refused_where_it_stands() {
        let said = faults(
            &SET.replace("coupling =", "couplng =")
                .replace("number = 1", "number = -1"),
        );
        for says in [
            "s.toml:2:10: invalid value: integer `-1`, expected u32",
            "s.toml:15:1: unknown field `couplng`",
        ] {
            assert!(said.contains(says), "{said}");
        }
    }
}
