//! Days as they are kept (`2026-11-25`), as they are said (25 November 2026), and as numbers
//! from 1 January 1970.

use superhet::problems::schedule::Day;

const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// A day as it is kept.
pub(crate) fn kept(year: u32, month: u32, day: u32) -> String {
    let two = |number: u32| if number < 10 { "0" } else { "" };
    let (month_zero, day_zero) = (two(month), two(day));
    let (year, month, day) = (year.to_string(), month.to_string(), day.to_string());
    [&year, "-", month_zero, &month, "-", day_zero, &day].concat()
}

/// Days before 1 January of a year, from 1 January of the year 1, and the same for 1970.
/// Every fourth year is a leap year, but for full hundreds that are no full four hundreds.
fn before(year: u32) -> u32 {
    let past = year.saturating_sub(1);
    past * 365 + past / 4 - past / 100 + past / 400
}

const BEFORE_1970: u32 = 719_162;

/// Days of a year before each month's first, and of the whole year.
fn month_ends(year: u32) -> [u32; 13] {
    let leap = u32::from(
        year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400)),
    );
    let mut ends = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
    for end in &mut ends[2..] {
        *end += leap;
    }
    ends
}

/// The number of a day; 0 for days before 1970.
pub(crate) fn number(year: u32, month: u32, day: u32) -> Day {
    let month = month.saturating_sub(1).min(11) as usize;
    let days = before(year) + month_ends(year)[month] + day;
    days.saturating_sub(BEFORE_1970 + 1)
}

/// A day with this number as it is kept. Nothing of ours lies beyond the year 9999.
#[cfg(feature = "practice")]
pub(crate) fn of_number(number: Day) -> String {
    let days = number.min(2_932_896) + BEFORE_1970;
    // No year is longer than 366 days, so the year is this one or later.
    let mut year = days / 366 + 1;
    while before(year + 1) <= days {
        year += 1;
    }
    let rest = days - before(year);
    let ends = month_ends(year);
    let month = ends.iter().rposition(|end| *end <= rest).unwrap_or(0);
    let day = rest - ends[month] + 1;
    kept(year, month as u32 + 1, day)
}

/// A kept day as it is said; as it is kept where it is none.
pub(crate) fn said(kept: &str) -> String {
    let mut parts = kept.split('-');
    let (year, month, day) = (parts.next(), parts.next(), parts.next());
    let month = month.and_then(|month| month.parse::<usize>().ok());
    let name = month.and_then(|month| MONTHS.get(month.wrapping_sub(1)));
    match (year, name, day) {
        (Some(year), Some(name), Some(day)) => {
            [day.trim_start_matches('0'), " ", name, " ", year].concat()
        }
        _ => kept.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::{kept, number, of_number, said};
    use proptest::prelude::{prop_assert_eq, proptest};

    #[test]
    fn days_are_kept_and_said() {
        assert_eq!(kept(2026, 11, 5), "2026-11-05");
        assert_eq!(said("2026-11-05"), "5 November 2026");
        assert_eq!(said("2026-13-05"), "2026-13-05");
        assert_eq!(said("soon"), "soon");
    }

    /// By hand: 56 years with 14 leap days before 2026, and 329 days of it before
    /// 26 November. 2000 was a leap year, 2100 is none.
    #[test]
    fn days_are_counted() {
        assert_eq!(number(1970, 1, 1), 0);
        assert_eq!(number(1969, 12, 31), 0);
        assert_eq!(number(2026, 11, 26), 56 * 365 + 14 + 329);
        assert_eq!(number(2000, 3, 1) - number(2000, 2, 28), 2);
        assert_eq!(number(2100, 3, 1) - number(2100, 2, 28), 1);
        assert_eq!(of_number(0), "1970-01-01");
        assert_eq!(of_number(u32::MAX), "9999-12-31");
    }

    proptest! {
        #[test]
        fn numbers_go_there_and_back(day in 0_u32..2_932_896) {
            let text = of_number(day);
            let parts: Vec<u32> = text.split('-').map(|part| part.parse().unwrap()).collect();
            prop_assert_eq!(number(parts[0], parts[1], parts[2]), day);
        }
    }
}
