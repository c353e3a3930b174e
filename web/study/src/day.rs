//! Days as they are kept (`2026-11-25`) and as they are said (25 November 2026).

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
    use super::{kept, said};

    #[test]
    fn days_are_kept_and_said() {
        assert_eq!(kept(2026, 11, 5), "2026-11-05");
        assert_eq!(said("2026-11-05"), "5 November 2026");
        assert_eq!(said("2026-13-05"), "2026-13-05");
        assert_eq!(said("soon"), "soon");
    }
}
