//! Labels kept apart along a line.

use crate::coordinate::held_within;

/// A label that would best stand over its point.
pub(crate) struct Label {
    /// Where its middle would best be, in pixels.
    pub(crate) wanted: f64,
    /// How wide it is, in pixels.
    pub(crate) width: f64,
}

/// The least distance between two labels, in pixels.
const GAP: f64 = 4.0;

/// The middles of the labels: each as near its point as it can stand in a line of
/// `room` pixels without touching a neighbour or an edge, in the points' own order.
///
/// Least squares with an order to keep: measured from where each would stand if all
/// were packed from the left edge, "apart" becomes "never decreasing", and the edges
/// become bounds. Where the labels do not fit at all they are packed from the left.
pub(crate) fn spread(labels: &[Label], room: f64) -> Vec<f64> {
    let order = order_of(labels);
    let mut packed = Vec::with_capacity(labels.len());
    let mut edge = 0.0;
    for &index in &order {
        packed.push(edge + labels[index].width / 2.0);
        edge += labels[index].width + GAP;
    }
    let slack = (room - (edge - GAP)).max(0.0);
    let wanted = order.iter().zip(&packed);
    let wanted = wanted.map(|(&index, packed)| labels[index].wanted - packed);
    let shifts = never_decreasing(wanted);
    let mut middles = vec![0.0; labels.len()];
    for ((&index, packed), shift) in order.iter().zip(&packed).zip(shifts) {
        middles[index] = packed + held_within(shift, 0.0, slack);
    }
    middles
}

/// The labels' places in order of where they would stand. There are a handful of them: by
/// insertion, which is a tenth of the library's sort in bytes.
fn order_of(labels: &[Label]) -> Vec<usize> {
    let mut order: Vec<usize> = Vec::with_capacity(labels.len());
    for (index, label) in labels.iter().enumerate() {
        let later = order
            .iter()
            .position(|&other| labels[other].wanted > label.wanted);
        order.insert(later.unwrap_or(order.len()), index);
    }
    order
}

/// The never-decreasing numbers nearest to `wanted` in least squares: neighbours out of
/// order are pooled at their mean until none is left (pool adjacent violators; Ayer and
/// others, Annals of Mathematical Statistics 26, 1955, from memory).
fn never_decreasing(wanted: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut pools: Vec<(f64, f64)> = Vec::new();
    for value in wanted {
        let mut pool = (value, 1.0);
        while let Some(&(mean, count)) = pools.last() {
            if mean <= pool.0 {
                break;
            }
            pools.pop();
            let both = count + pool.1;
            pool = ((mean * count + pool.0 * pool.1) / both, both);
        }
        pools.push(pool);
    }
    let mut nearest = Vec::new();
    for (mean, count) in pools {
        let target = nearest.len() as f64 + count;
        while (nearest.len() as f64) < target {
            nearest.push(mean);
        }
    }
    nearest
}

#[cfg(test)]
mod tests {
    use super::{Label, spread};

    fn places(wanted: &[f64], width: f64, room: f64) -> Vec<f64> {
        let labels: Vec<Label> = wanted
            .iter()
            .map(|&wanted| Label { wanted, width })
            .collect();
        spread(&labels, room)
    }

    #[test]
    fn labels_with_room_stand_over_their_points() {
        assert_eq!(places(&[50.0, 200.0], 40.0, 300.0), [50.0, 200.0]);
    }

    #[test]
    fn labels_that_touch_part_evenly() {
        // Two 40 px labels over one point at 100: their middles end 44 px apart.
        assert_eq!(places(&[100.0, 100.0], 40.0, 300.0), [78.0, 122.0]);
    }

    #[test]
    fn nothing_leaves_the_line() {
        let middles = places(&[0.0, 1.0, 299.0, 300.0], 60.0, 328.0);
        assert_eq!(middles, [30.0, 94.0, 234.0, 298.0]);
    }

    #[test]
    fn the_order_along_the_line_is_kept() {
        let middles = places(&[200.0, 100.0, 150.0], 70.0, 328.0);
        assert!(
            middles[1] < middles[2] && middles[2] < middles[0],
            "{middles:?}"
        );
    }
}
