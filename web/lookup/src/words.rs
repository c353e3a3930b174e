//! Frequencies and places as sentences write them.

use alloc::borrow::ToOwned;
use alloc::string::String;
use superhet::quantities::bands::{Band, BandKind, Place, Region, Service, allocated_to};
use superhet::units::{Frequency, Kind, display};

/// A frequency in the trade's unit: "1670 kHz".
pub(crate) fn frequency(value: Frequency) -> String {
    display::text(Kind::Frequency, value.to_hz())
}

/// A frequency as a bare number of kHz, for a column headed so.
pub(crate) fn kilohertz(value: Frequency) -> String {
    display::text(Kind::Ratio, value.to_khz())
}

/// A frequency in MHz whatever its size: "1.665 MHz".
pub(crate) fn megahertz(value: Frequency) -> String {
    display::text(Kind::Ratio, value.to_mhz()) + " MHz"
}

/// A length in metres to four significant digits, which no dial exceeds: "249.8 m".
pub(crate) fn metres(value: f64) -> String {
    let mut steps = 1.0;
    while value * steps < 1000.0 && steps < 1e6 {
        steps *= 10.0;
    }
    // The cast truncates what is above zero, and saturates far beyond any wavelength.
    let rounded = (value * steps + 0.5) as u64;
    display::text(Kind::Wavelength, rounded as f64 / steps)
}

/// A difference of frequencies to a tenth of a kilohertz: "3 kHz", "2.2 kHz".
pub(crate) fn offset(value: Frequency) -> String {
    let tenths = (value.to_hz() / 100.0 + 0.5) as u32;
    if tenths == 0 {
        return "less than 0.1 kHz".to_owned();
    }
    display::text(Kind::Frequency, f64::from(tenths) * 100.0)
}

/// "526.5 to 1606.5 kHz": the unit once when both have the same.
pub(crate) fn range(low: Frequency, high: Frequency) -> String {
    let (low, high) = (frequency(low), frequency(high));
    let mut text = match (low.split_once(' '), high.split_once(' ')) {
        (Some((number, unit)), Some((_, same))) if unit == same => number.to_owned(),
        _ => low,
    };
    text.push_str(" to ");
    text.push_str(&high);
    text
}

/// "fixed, maritime mobile and amateur".
pub(crate) fn services(services: &[Service]) -> String {
    let mut text = String::new();
    for (index, service) in services.iter().enumerate() {
        if index > 0 {
            text.push_str(if index + 1 == services.len() {
                " and "
            } else {
                ", "
            });
        }
        text.push_str(service.name());
    }
    text
}

/// A broadcast band as the object of "inside": "medium wave", "the 49 m band".
pub(crate) fn band(band: &Band) -> String {
    match band.kind {
        BandKind::LongWave | BandKind::MediumWave => band.name.to_owned(),
        BandKind::Tropical | BandKind::ShortWave => ["the ", band.name, " band"].concat(),
    }
}

/// What is heard at a place, after a frequency: "inside medium wave", "among fixed and
/// maritime mobile stations", "not listed".
pub(crate) fn short_place(place: Place) -> String {
    match place {
        Place::Broadcast(found) if found.kind == BandKind::Tropical => [
            "inside ",
            &band(found),
            ", broadcasting in the tropical zone only",
        ]
        .concat(),
        Place::Broadcast(found) => ["inside ", &band(found)].concat(),
        Place::Allocated(found) => ["among ", &services(found.services), " stations"].concat(),
        Place::NotListed => "not listed".to_owned(),
    }
}

/// The same as the cell of a table: "medium wave", "fixed, maritime mobile".
pub(crate) fn place_name(place: Place) -> String {
    match place {
        Place::Broadcast(found) => match found.kind {
            BandKind::LongWave | BandKind::MediumWave => found.name.to_owned(),
            BandKind::Tropical => [found.name, " band, tropical zone"].concat(),
            BandKind::ShortWave => [found.name, " band"].concat(),
        },
        Place::Allocated(found) => services(found.services),
        Place::NotListed => "not listed".to_owned(),
    }
}

/// The same as a whole sentence, with edges and Region.
pub(crate) fn long_place(value: Frequency, place: Place, region: Region) -> String {
    let hertz = value;
    let value = frequency(value);
    match place {
        Place::Broadcast(found) => [
            &value,
            " lies inside ",
            &band(found),
            " (",
            &range(found.low, found.high),
            " in ",
            region.name(),
            "): ",
            &heard_inside(hertz, found, region),
        ]
        .concat(),
        Place::Allocated(found) => [
            &value,
            " lies outside the broadcast bands. In ",
            region.name(),
            " Article 5 gives ",
            &range(found.low, found.high),
            " to: ",
            &services(found.services),
            ".",
        ]
        .concat(),
        Place::NotListed => [
            &value,
            " is not listed: the table here runs from 100 kHz to 30 MHz.",
        ]
        .concat(),
    }
}

/// What is heard inside a broadcast band. The tropical bands are shared: broadcasting,
/// which the table names last, is there for the Tropical Zone alone (No. 5.113).
fn heard_inside(value: Frequency, band: &Band, region: Region) -> String {
    // On the upper edge the table is already in the next row: ask a hertz below it.
    let asked = value.to_hz().min(band.high.to_hz() - 1.0);
    match allocated_to(Frequency::hz(asked), region) {
        Some(row) if band.kind == BandKind::Tropical => [
            &services(row.services),
            ", the last in the tropical zone only.",
        ]
        .concat(),
        _ => "a broadcast station there can be heard.".to_owned(),
    }
}

/// 2 becomes "2nd", 3 "3rd", 4 to 10 "4th" to "10th".
pub(crate) fn ordinal(number: u32) -> String {
    let mut text = display::text(Kind::Integer, f64::from(number));
    text.push_str(match number {
        2 => "nd",
        3 => "rd",
        _ => "th",
    });
    text
}

#[cfg(test)]
mod tests {
    use super::{frequency, kilohertz, long_place, metres, offset, ordinal, range, short_place};
    use superhet::quantities::bands::{Region, place_of};
    use superhet::units::Frequency;

    #[test]
    fn a_range_names_its_unit_once_where_it_can() {
        let khz = Frequency::khz;
        assert_eq!(range(khz(526.5), khz(1606.5)), "526.5 to 1606.5 kHz");
        assert_eq!(range(khz(5900.0), khz(6200.0)), "5.9 to 6.2 MHz");
        assert_eq!(range(khz(2850.0), khz(3155.0)), "2850 kHz to 3.155 MHz");
    }

    #[test]
    fn places_read_as_sentences() {
        let image = Frequency::khz(2140.0);
        let place = place_of(image, Region::One);
        assert_eq!(
            short_place(place),
            "among fixed, maritime mobile and land mobile stations"
        );
        assert_eq!(
            long_place(image, place, Region::One),
            "2140 kHz lies outside the broadcast bands. In Region 1 Article 5 gives 2045 to 2160 kHz to: \
             fixed, maritime mobile and land mobile."
        );
        let tropical = Frequency::khz(3400.0);
        let place = place_of(tropical, Region::One);
        assert_eq!(
            short_place(place),
            "inside the 90 m band, broadcasting in the tropical zone only"
        );
        assert_eq!(
            long_place(tropical, place, Region::One),
            "3.4 MHz lies inside the 90 m band (3.2 to 3.4 MHz in Region 1): fixed, mobile (except aeronautical) \
             and broadcasting, the last in the tropical zone only."
        );
        let station = Frequency::khz(1500.0);
        assert_eq!(
            short_place(place_of(station, Region::Two)),
            "inside medium wave"
        );
        let short_wave = Frequency::mhz(6.0);
        assert_eq!(
            short_place(place_of(short_wave, Region::Two)),
            "inside the 49 m band"
        );
        assert_eq!(
            short_place(place_of(Frequency::khz(50.0), Region::Two)),
            "not listed"
        );
    }

    #[test]
    fn lengths_have_four_digits_and_offsets_a_tenth() {
        assert_eq!(metres(249.827_048), "249.8 m");
        assert_eq!(metres(1514.1), "1514 m");
        assert_eq!(metres(30.0), "30 m");
        assert_eq!(metres(5.0354), "5.035 m");
        assert_eq!(offset(Frequency::hz(2169.0)), "2.2 kHz");
        assert_eq!(offset(Frequency::khz(3.0)), "3 kHz");
        assert_eq!(offset(Frequency::hz(1.0)), "less than 0.1 kHz");
    }

    #[test]
    fn ordinals_and_bare_numbers() {
        assert_eq!(
            ordinal(2) + &ordinal(3) + &ordinal(4) + &ordinal(10),
            "2nd3rd4th10th"
        );
        assert_eq!(kilohertz(Frequency::khz(1670.0)), "1670");
        assert_eq!(frequency(Frequency::khz(1670.0)), "1670 kHz");
    }
}
