//! What a number is a number of, as far as typing and showing it go.

/// The kind of a value: which units it is typed and shown in.
///
/// The SI value of a kind is always one `f64` in [`Kind::unit`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Cycles a second, in hertz.
    Frequency,
    /// Length of a wave in free space, in metres.
    Wavelength,
    /// Inductance, in henries.
    Inductance,
    /// Capacitance, in farads.
    Capacitance,
    /// Resistance, reactance or impedance, in ohms.
    Resistance,
    /// Conductance, mutual conductance with it, in siemens.
    Conductance,
    /// Voltage, in volts.
    Voltage,
    /// Power, in watts.
    Power,
    /// A length of time, in seconds.
    Duration,
    /// A ratio in decibels: of voltages 20·log10, of powers 10·log10.
    Decibels,
    /// A number without a unit, such as Q or a coefficient of coupling.
    Ratio,
    /// A depth of modulation: a fraction from 0 to 1, also typed in per cent.
    Depth,
    /// A whole number, such as the number of tuned circuits.
    Integer,
    /// One of a few words, such as `above` and `below`.
    Choice,
}

impl Kind {
    /// The symbol of the SI unit that the value is held in; empty for a number without
    /// a unit.
    ///
    /// ```
    /// use superhet::units::Kind;
    /// assert_eq!(Kind::Frequency.unit(), "Hz");
    /// assert_eq!(Kind::Depth.unit(), "");
    /// ```
    #[must_use]
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Frequency => "Hz",
            Self::Wavelength => "m",
            Self::Inductance => "H",
            Self::Capacitance => "F",
            Self::Resistance => "ohm",
            Self::Conductance => "S",
            Self::Voltage => "V",
            Self::Power => "W",
            Self::Duration => "s",
            Self::Decibels => "dB",
            Self::Ratio | Self::Depth | Self::Integer | Self::Choice => "",
        }
    }

    /// The kind's own name in lower case, as lists of quantities print it.
    ///
    /// ```
    /// assert_eq!(superhet::units::Kind::Wavelength.name(), "wavelength");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Frequency => "frequency",
            Self::Wavelength => "wavelength",
            Self::Inductance => "inductance",
            Self::Capacitance => "capacitance",
            Self::Resistance => "resistance",
            Self::Conductance => "conductance",
            Self::Voltage => "voltage",
            Self::Power => "power",
            Self::Duration => "duration",
            Self::Decibels => "decibels",
            Self::Ratio => "ratio",
            Self::Depth => "depth",
            Self::Integer => "integer",
            Self::Choice => "choice",
        }
    }

    /// The kind with its article, for a sentence: "a frequency", "an inductance".
    pub(crate) const fn with_article(self) -> &'static str {
        match self {
            Self::Frequency => "a frequency",
            Self::Wavelength => "a wavelength",
            Self::Inductance => "an inductance",
            Self::Capacitance => "a capacitance",
            Self::Resistance => "a resistance",
            Self::Conductance => "a conductance",
            Self::Voltage => "a voltage",
            Self::Power => "a power",
            Self::Duration => "a length of time",
            Self::Decibels => "a figure in decibels",
            Self::Ratio => "a plain number",
            Self::Depth => "a depth of modulation",
            Self::Integer => "a whole number",
            Self::Choice => "a choice",
        }
    }
}
