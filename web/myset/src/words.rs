//! Frequencies and places as sentences write them.

use superhet::quantities::bands::{Band, BandKind, Place, Region, bands, place_of};
use superhet::units::{Frequency, Kind, display};

/// "1670 kHz".
pub(crate) fn frequency(value: Frequency) -> String {
    display::text(Kind::Frequency, value.to_hz())
}

/// A frequency as a catalogue expression takes it, to the same bit.
pub(crate) fn typed(value: Frequency) -> String {
    let text = frequency(value);
    let same = superhet::units::parse::value(Kind::Frequency, &text, None)
        .is_ok_and(|read| read == value.to_hz());
    if same {
        text
    } else {
        format!("{} Hz", value.to_hz())
    }
}

/// The medium wave band of a Region.
pub(crate) fn medium_wave(region: Region) -> Option<&'static Band> {
    bands(region).find(|band| band.kind == BandKind::MediumWave)
}

/// What is found at a frequency, as the cell of a table: "medium wave, channel 1593 kHz",
/// "medium wave, between channels", "fixed and maritime mobile", "not listed".
pub(crate) fn found_at(value: Frequency, region: Region) -> String {
    match place_of(value, region) {
        Place::Broadcast(band) => {
            let name = match band.kind {
                BandKind::LongWave | BandKind::MediumWave => band.name.to_owned(),
                BandKind::Tropical | BandKind::ShortWave => format!("{} band", band.name),
            };
            let nearest = band.raster.nearest(value);
            if nearest == value {
                format!("{name}, on a channel")
            } else {
                let away = Frequency::hz((nearest.to_hz() - value.to_hz()).abs());
                format!(
                    "{name}, {} from channel {}",
                    frequency(away),
                    frequency(nearest)
                )
            }
        }
        Place::Allocated(found) => {
            let names: Vec<&str> = found
                .services
                .iter()
                .map(|service| service.name())
                .collect();
            list(&names)
        }
        Place::NotListed => "not listed".to_owned(),
    }
}

/// "fixed, mobile and amateur".
pub(crate) fn list<T: AsRef<str>>(words: &[T]) -> String {
    match words {
        [] => String::new(),
        [word] => word.as_ref().to_owned(),
        [before @ .., last] => {
            let before: Vec<&str> = before.iter().map(AsRef::as_ref).collect();
            format!("{} and {}", before.join(", "), last.as_ref())
        }
    }
}

/// 2 becomes "2nd", 3 "3rd", 4 to 10 "4th" to "10th".
pub(crate) fn ordinal(number: u32) -> String {
    let end = match number {
        2 => "nd",
        3 => "rd",
        _ => "th",
    };
    format!("{number}{end}")
}

#[cfg(test)]
mod tests {
    use super::{found_at, frequency, list, typed};
    use superhet::quantities::bands::Region;
    use superhet::units::Frequency;

    #[test]
    fn an_image_is_on_a_channel_or_beside_one() {
        let at = |khz| found_at(Frequency::khz(khz), Region::One);
        assert_eq!(at(1593.0), "medium wave, on a channel");
        assert_eq!(at(1590.0), "medium wave, 3 kHz from channel 1593 kHz");
        assert_eq!(at(2140.0), "fixed, maritime mobile and land mobile");
        assert_eq!(at(50.0), "not listed");
    }

    #[test]
    fn what_an_expression_is_given_has_the_same_bits() {
        assert_eq!(typed(Frequency::khz(1606.5)), "1606.5 kHz");
        let odd = Frequency::hz(1_234_567.891);
        assert_eq!(typed(odd), "1234567.891 Hz");
        assert_eq!(frequency(odd), "1234.568 kHz");
        assert_eq!(list::<&str>(&[]), "");
    }
}
