//! The questions: each value of a set that may be typed, with its words.

use superhet::units::Kind;

/// The longest text of one value, in bytes: a place that is carried takes no longer one.
pub const LONGEST_VALUE: usize = 40;

/// One value of a set.
#[derive(Debug)]
pub struct Field {
    /// Its name in the kept form, in files and in links.
    pub key: &'static str,
    /// What it is called: the label of its box.
    pub label: &'static str,
    /// Where the reader finds it, in a sentence.
    pub hint: &'static str,
    /// What it is a number of; none for words.
    pub kind: Option<Kind>,
    /// The units with a button, the first pressed; empty where it has none.
    pub units: &'static [&'static str],
}

/// Questions that belong together.
#[derive(Debug)]
pub struct Group {
    /// Short name for the page.
    pub id: &'static str,
    /// The question that the group asks.
    pub question: &'static str,
    /// What it is good for.
    pub why: &'static str,
    /// Its boxes.
    pub fields: &'static [Field],
}

const FREQUENCY: &[&str] = &["kHz", "MHz"];
const CAPACITANCE: &[&str] = &["pF", "µF"];
const INDUCTANCE: &[&str] = &["µH", "mH"];

const fn field(
    key: &'static str,
    label: &'static str,
    hint: &'static str,
    kind: Kind,
    units: &'static [&'static str],
) -> Field {
    Field {
        key,
        label,
        hint,
        kind: Some(kind),
        units,
    }
}

/// The IF: the one value that every set must say.
pub const INTERMEDIATE: Field = field(
    "if",
    "Intermediate frequency",
    "It stands in the service sheet. Many sets have 455 to 475 kHz, older ones 110 to 130 kHz.",
    Kind::Frequency,
    FREQUENCY,
);

/// What the reader calls the set.
pub const NAME: Field = Field {
    key: "name",
    label: "Name of the set",
    hint: "Whatever you call it. It is shown to you alone, and travels in your file and link.",
    kind: None,
    units: &[],
};

/// Everything that may be left open, in the order of the page.
pub const GROUPS: [Group; 5] = [
    Group {
        id: "dial",
        question: "Where does its dial begin and end?",
        why: "The card then runs from mark to mark. Left open, it runs over the broadcast band.",
        fields: &[
            field(
                "mw-low",
                "Lowest mark on medium wave",
                "The last mark with the plates of the gang fully in.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "mw-high",
                "Highest mark on medium wave",
                "The last mark with the plates fully out.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "lw-low",
                "Lowest mark on long wave",
                "Leave both long wave boxes empty where the set has none.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "lw-high",
                "Highest mark on long wave",
                "The last mark with the plates fully out.",
                Kind::Frequency,
                FREQUENCY,
            ),
        ],
    },
    Group {
        id: "aerial",
        question: "How sharp is the circuit before the mixer?",
        why: "It says how much weaker the image comes in.",
        fields: &[
            field(
                "aerial-q",
                "Q of the aerial circuit, loaded",
                "Hardly any sheet prints it; 40 to 100 is usual on medium wave.",
                Kind::Ratio,
                &[],
            ),
            field(
                "aerial-circuits",
                "How many such circuits",
                "One in most sets; two where the gang has three sections.",
                Kind::Integer,
                &[],
            ),
        ],
    },
    Group {
        id: "transformers",
        question: "What are its IF transformers like?",
        why: "They say how wide a station may be and how well its neighbour is kept out.",
        fields: &[
            field(
                "if-q",
                "Q of each winding, loaded",
                "80 to 120 is usual near 470 kHz.",
                Kind::Ratio,
                &[],
            ),
            field(
                "coupling",
                "Coupling of the two windings",
                "The coefficient k, a small number such as 0.01.",
                Kind::Ratio,
                &[],
            ),
            field(
                "transformers",
                "How many IF transformers",
                "Two in most sets.",
                Kind::Integer,
                &[],
            ),
        ],
    },
    Group {
        id: "gang",
        question: "What is its tuning gang?",
        why: "It says whether the plates can swing far enough for the dial.",
        fields: &[
            field(
                "gang-min",
                "One section, plates fully out",
                "Without strays and trimmer.",
                Kind::Capacitance,
                CAPACITANCE,
            ),
            field(
                "gang-max",
                "One section, plates fully in",
                "A parts list may say “500 pF gang” or the like.",
                Kind::Capacitance,
                CAPACITANCE,
            ),
        ],
    },
    Group {
        id: "tracking",
        question: "At which dial settings is it to be exact?",
        why: "Three settings, lowest first, say how far off the oscillator is between them. \
              With the aerial coil they give padder, trimmer and oscillator coil.",
        fields: &[
            field(
                "f1",
                "Low setting",
                "Sheets often say 600 kHz.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "f2",
                "Middle setting",
                "Hardly any sheet prints it; it follows from the padder.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "f3",
                "High setting",
                "Sheets often say 1400 or 1500 kHz.",
                Kind::Frequency,
                FREQUENCY,
            ),
            field(
                "coil",
                "Inductance of the aerial coil",
                "The medium wave winding, with the core where it belongs.",
                Kind::Inductance,
                INDUCTANCE,
            ),
        ],
    },
];

/// Every field with a box, in the order of the page.
pub fn all() -> impl Iterator<Item = &'static Field> {
    const FIRST: [&Field; 2] = [&INTERMEDIATE, &NAME];
    let rest = GROUPS.iter().flat_map(|group| group.fields);
    FIRST.into_iter().chain(rest)
}

/// The field with this key.
#[must_use]
pub fn find(key: &str) -> Option<&'static Field> {
    all().find(|field| field.key == key)
}
