//! Amplitude modulation: check rows of section 6.
//!
//! # Not used
//! - Kennedy, example 3.3, the carrier of 10 kW total at 0.6: tested as the total of the
//!   printed 8.47 kW.
//! - 47 CFR 2.202 and SM.1138, the range 8 to 20 kHz: twice its audio range, tested below.
//! - Bandwidth codes of ITU RR appendix 1 and the protection of ITU-R BS.560: no entry.

use crate::row::{EXACT, HZ, KHZ, KW, RATIO, Row, V, W, check, row};

const BEASLEY: &str = "Miller & Beasley, Modern Electronic Communication, ex. 2.1, p. 74";
const MEHTA: &str = "Mehta, Principles of Electronics, ex. 16.4, p. 419";
const STOREY: &str = "Basics of Electrical, Electronics and Communication (Storey, Hughes, \
                      Tomasi), ex. 4.2 and 4.4";
const RAKSHIT: &str = "Chattopadhyay & Rakshit, Electronics Fundamentals and Applications, \
                       ex. 12.2, p. 285";

const PRINTED: &[Row] = &[
    row(
        "total power, 400 W at 0.75",
        "total-power?carrier-power=400W&depth=0.75",
        W,
        512.5,
        0.05,
        "Kennedy, Davis & Prasanna, Electronic Communication Systems, ex. 3.2, p. 38",
    ),
    row(
        "total of the printed carrier at 0.6",
        "total-power?carrier-power=8.47kW&depth=0.6",
        KW,
        10.0,
        0.006,
        "Kennedy, Davis & Prasanna, Electronic Communication Systems, ex. 3.3, p. 39",
    ),
    row(
        "depth of 150 and 70 mV",
        "modulation-depth?e-max=150mV&e-min=70mV",
        RATIO,
        0.364,
        0.0005,
        "Blake, Electronic Communication Systems, ex. 3.4, p. 110",
    ),
    row(
        "bandwidth of 5 kHz audio is 10 kHz",
        "necessary-bandwidth?audio=5kHz",
        KHZ,
        10.0,
        EXACT,
        "Blake, Electronic Communication Systems, ex. 3.6, p. 114",
    ),
    row(
        "total power, 50 kW at 0.8",
        "total-power?carrier-power=50kW&depth=80%",
        KW,
        66.0,
        0.05,
        "Blake, Electronic Communication Systems, ex. 3.7, p. 116",
    ),
    row(
        "upper side of 20 Hz",
        "sideband-upper?carrier=1.4MHz&audio=20Hz",
        HZ,
        1_400_020.0,
        EXACT,
        BEASLEY,
    ),
    row(
        "upper side of 10 kHz",
        "sideband-upper?carrier=1.4MHz&audio=10kHz",
        HZ,
        1_410_000.0,
        EXACT,
        BEASLEY,
    ),
    row(
        "lower side of 20 Hz",
        "sideband-lower?carrier=1.4MHz&audio=20Hz",
        HZ,
        1_399_980.0,
        EXACT,
        BEASLEY,
    ),
    row(
        "lower side of 10 kHz",
        "sideband-lower?carrier=1.4MHz&audio=10kHz",
        HZ,
        1_390_000.0,
        EXACT,
        BEASLEY,
    ),
    row(
        "total power, 500 W at 0.9",
        "total-power?carrier-power=500W&depth=0.9",
        W,
        702.5,
        0.05,
        "Miller & Beasley, Modern Electronic Communication, ex. 2.4, p. 81",
    ),
    row(
        "upper side of 50 Hz on 2500 kHz",
        "sideband-upper?carrier=2500kHz&audio=50Hz",
        KHZ,
        2500.05,
        EXACT,
        MEHTA,
    ),
    row(
        "upper side of 15 kHz",
        "sideband-upper?carrier=2500kHz&audio=15kHz",
        KHZ,
        2515.0,
        EXACT,
        MEHTA,
    ),
    row(
        "lower side of 50 Hz",
        "sideband-lower?carrier=2500kHz&audio=50Hz",
        KHZ,
        2499.95,
        EXACT,
        MEHTA,
    ),
    row(
        "lower side of 15 kHz",
        "sideband-lower?carrier=2500kHz&audio=15kHz",
        KHZ,
        2485.0,
        EXACT,
        MEHTA,
    ),
    row(
        "bandwidth of 15 kHz audio",
        "necessary-bandwidth?audio=15kHz",
        KHZ,
        30.0,
        EXACT,
        MEHTA,
    ),
    row(
        "depth of an envelope from 27.5 to 12.5 V",
        "modulation-depth?e-max=27.5V&e-min=12.5V",
        RATIO,
        0.375,
        EXACT,
        STOREY,
    ),
    row(
        "sides of 10 kHz on 500 kHz, lower",
        "sideband-lower?carrier=500kHz&audio=10kHz",
        KHZ,
        490.0,
        EXACT,
        STOREY,
    ),
    row(
        "sides of 10 kHz on 500 kHz, upper",
        "sideband-upper?carrier=500kHz&audio=10kHz",
        KHZ,
        510.0,
        EXACT,
        STOREY,
    ),
    row(
        "both sidebands of 5 W at full depth, 1.25 W each",
        "sideband-power?carrier-power=5W&depth=1",
        W,
        2.5,
        EXACT,
        STOREY,
    ),
    row(
        "depth of three tones, 0.1, 0.2 and 0.3",
        "three-tone-depth?m1=0.1&m2=0.2&m3=0.3",
        RATIO,
        0.374,
        0.0005,
        "Blake, Electronic Communication Systems, ex. 3.3, p. 109",
    ),
    row(
        "amplitude of each sideband, 20 V at 0.375",
        "sideband-amplitude?carrier-voltage=20V&depth=0.375",
        V,
        3.75,
        EXACT,
        STOREY,
    ),
    row(
        "total of 5 W at full depth",
        "total-power?carrier-power=5W&depth=1",
        W,
        7.5,
        EXACT,
        STOREY,
    ),
    row(
        "both sidebands of 5 W at one half, 0.3125 W each",
        "sideband-power?carrier-power=5W&depth=0.5",
        W,
        0.625,
        EXACT,
        STOREY,
    ),
    row(
        "total of 5 W at one half",
        "total-power?carrier-power=5W&depth=0.5",
        W,
        5.625,
        EXACT,
        STOREY,
    ),
    row(
        "upper edge of 1600 Hz on 1000 kHz",
        "sideband-upper?carrier=1000kHz&audio=1600Hz",
        KHZ,
        1001.6,
        EXACT,
        RAKSHIT,
    ),
    row(
        "lower edge",
        "sideband-lower?carrier=1000kHz&audio=1600Hz",
        KHZ,
        998.4,
        EXACT,
        RAKSHIT,
    ),
    row(
        "channel width",
        "necessary-bandwidth?audio=1600Hz",
        KHZ,
        3.2,
        EXACT,
        RAKSHIT,
    ),
    row(
        "telephony, M = 3000 Hz",
        "necessary-bandwidth?audio=3000Hz",
        KHZ,
        6.0,
        EXACT,
        "ITU-R SM.1138, as in Canada TRC-43",
    ),
    row(
        "sound broadcasting, M = 4000 Hz",
        "necessary-bandwidth?audio=4000Hz",
        KHZ,
        8.0,
        EXACT,
        "47 CFR 2.202",
    ),
    row(
        "sound broadcasting, M = 10 000 Hz",
        "necessary-bandwidth?audio=10kHz",
        KHZ,
        20.0,
        EXACT,
        "47 CFR 2.202",
    ),
];

#[test]
fn printed_numbers_are_met() {
    check(PRINTED);
}
