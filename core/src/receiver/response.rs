//! How strongly a receiver responds to one signal, path by path.

use crate::units::Decibels;

/// Decibels under the wanted signal's peak, path by path; infinite where there is no path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Response {
    /// As a wanted station: on the set's own side of the oscillator.
    pub wanted: Decibels,
    /// As an image: on the other side of the oscillator, or, with the oscillator under the
    /// IF, added to it.
    pub image: Decibels,
    /// As it is, through the aerial circuits and the mixer into the IF chain.
    pub breakthrough: Decibels,
    /// Through the harmonics of the oscillator, all of them together.
    pub harmonic: Decibels,
}

impl Response {
    /// All paths together.
    ///
    /// The powers are added. A signal that comes by two paths stands at two frequencies in
    /// the IF chain, where no phase makes them help or cancel each other for long.
    ///
    /// ```
    /// use superhet::receiver::Response;
    /// use superhet::units::Decibels;
    /// let none = Decibels::db(f64::INFINITY);
    /// let twenty = Decibels::db(20.0);
    /// let response = Response { wanted: twenty, image: twenty, breakthrough: none, harmonic: none };
    /// // Twice the power: 3.01 dB less attenuation.
    /// assert!((response.total().to_db() - 16.9897).abs() < 0.0001);
    /// ```
    #[must_use]
    pub fn total(&self) -> Decibels {
        let paths = [self.wanted, self.image, self.breakthrough, self.harmonic];
        Decibels::db(together(paths.map(Decibels::to_db)))
    }
}

/// The attenuation of several paths whose powers add.
pub(super) fn together(paths: impl IntoIterator<Item = f64> + Clone) -> f64 {
    let least = paths.clone().into_iter().fold(f64::INFINITY, f64::min);
    if least.is_infinite() {
        return least;
    }
    // Measured from the strongest, the sum lies between 1 and the number of paths.
    let shares = paths
        .into_iter()
        .map(|db| libm::pow(10.0, (least - db) / 10.0));
    least - 10.0 * libm::log10(shares.sum())
}
