//! The greatest height of a smooth curve with a few wide humps.

/// Places of a band at which the error is looked at; its humps are far wider than a step.
const PLACES: u32 = 64;

/// Halvings of the step around the greatest place: the error is flat there, so the height
/// is right to the last digits long before the place is.
const HALVINGS: u32 = 30;

/// The greatest height between two places.
pub(super) fn greatest(height: impl Fn(f64) -> f64, from: f64, to: f64) -> f64 {
    let mut step = (to - from) / f64::from(PLACES);
    let mut best = (from, height(from));
    let look = |best: (f64, f64), place: f64| {
        let there = height(place);
        if there > best.1 { (place, there) } else { best }
    };
    for place in 1..PLACES {
        best = look(best, from + f64::from(place) * step);
    }
    best = look(best, to);
    for _ in 0..HALVINGS {
        step /= 2.0;
        let middle = best.0;
        best = look(best, (middle - step).max(from));
        best = look(best, (middle + step).min(to));
    }
    best.1
}

#[cfg(test)]
mod tests {
    use super::greatest;

    #[test]
    fn ends_and_humps_are_both_found() {
        assert_eq!(greatest(|x| x, 1.0, 3.0), 3.0);
        assert_eq!(greatest(|x| -x, 1.0, 3.0), -1.0);
        // 1 − (x − 1.2345)²: the top is 1, reached to the last digit.
        let hump = |x: f64| 1.0 - (x - 1.2345) * (x - 1.2345);
        assert!((greatest(hump, 0.0, 3.0) - 1.0).abs() < 1e-15);
    }
}
