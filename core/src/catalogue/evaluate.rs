//! From an expression to an answer.

use super::arguments::{Value, Values};
use super::{
    Answer, Arguments, Entry, Kind, LONGEST, Parameter, Refusal, catalogue, find, split, suggestion,
};
use crate::units::display;
use crate::units::parse::{self, quoted};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// Works out an expression: `name?key=value&key=value`.
///
/// # Errors
/// A [`Refusal`] for an unknown name, an unknown, repeated or missing key, a value that
/// cannot be read or is out of range, and whatever the quantity itself excludes.
///
/// ```
/// use superhet::catalogue::evaluate;
/// assert_eq!(evaluate("wavelength?frequency=1MHz").unwrap().text, "299.7925 m");
/// assert_eq!(
///     evaluate("wavelength?length=3m").unwrap_err().to_string(),
///     "wavelength takes frequency; it has no \"length\""
/// );
/// ```
pub fn evaluate(expression: &str) -> Result<Answer, Refusal> {
    if expression.len() > LONGEST {
        let name = split(expression.get(..LONGEST).unwrap_or("")).0;
        let refusal = format!("an expression has at most {LONGEST} bytes; this one is longer");
        return Err(Refusal::new(refusal).of_quantity(readable_name(&name)));
    }
    let (name, pairs) = split(expression);
    let pairs: Vec<(&str, &str)> = pairs
        .iter()
        .map(|(key, value)| (key.as_str(), value.as_str()))
        .collect();
    evaluate_with(&name, &pairs)
}

/// Works out the quantity with this name from keys and typed values; see [`evaluate`].
///
/// # Errors
/// As [`evaluate`], in the same words.
///
/// ```
/// use superhet::catalogue::evaluate_with;
/// let answer = evaluate_with("beat", &[("f1", "909 kHz"), ("f2", "0.9 MHz")]).unwrap();
/// assert_eq!((answer.value, answer.unit), (9000.0, "Hz"));
/// ```
pub fn evaluate_with(name: &str, pairs: &[(&str, &str)]) -> Result<Answer, Refusal> {
    let name = name.trim();
    let entry = find(name).ok_or_else(|| unknown_name(name));
    entry
        .and_then(|entry| work_out(entry, pairs))
        .map_err(|refusal| refusal.of_quantity(readable_name(name)))
}

fn work_out(entry: &'static Entry, pairs: &[(&str, &str)]) -> Result<Answer, Refusal> {
    check_keys(entry, pairs)?;
    let values = read_values(entry, pairs)?;
    let arguments = Arguments { values: &values };
    let value = (entry.function)(&arguments)?;
    if !value.is_finite() {
        let name = entry.name;
        return Err(Refusal::new(format!(
            "{name} comes to a number too large to be held"
        )));
    }
    // Adding 0 turns −0, which nobody wants to read, into 0.
    let value = value + 0.0;
    Ok(Answer {
        name: entry.name,
        value,
        kind: entry.result,
        unit: entry.result.unit(),
        text: display::text(entry.result, value),
        note: entry.note.and_then(|note| note(&arguments)),
    })
}

fn check_keys(entry: &Entry, pairs: &[(&str, &str)]) -> Result<(), Refusal> {
    let (name, right) = (entry.name, keys(entry));
    for (place, (key, _)) in pairs.iter().enumerate() {
        let Some(parameter) = entry.parameter(key) else {
            let key = quoted(key);
            let sentence = format!("{name} takes {right}; it has no \"{key}\"");
            return Err(Refusal::new(sentence));
        };
        if pairs[..place].iter().any(|(earlier, _)| earlier == key) {
            let sentence = format!("{name} takes {right}, each once; {key} is repeated");
            return Err(Refusal::new(sentence).beside(parameter.name));
        }
    }
    let given = |parameter: &&Parameter| pairs.iter().any(|(key, _)| *key == parameter.name);
    match entry.parameters.iter().find(|parameter| !given(parameter)) {
        Some(missing) => {
            let sentence = format!("{name} takes {right}; {} is missing", missing.name);
            Err(Refusal::new(sentence).beside(missing.name))
        }
        None => Ok(()),
    }
}

/// The entry's keys in a sentence: "dial, if and side".
fn keys(entry: &Entry) -> String {
    let names: Vec<&str> = entry
        .parameters
        .iter()
        .map(|parameter| parameter.name)
        .collect();
    in_words(&names, "and")
}

fn in_words(names: &[&str], joint: &str) -> String {
    match names {
        [] => String::new(),
        [name] => String::from(*name),
        [before @ .., last] => format!("{} {joint} {last}", before.join(", ")),
    }
}

fn read_values(entry: &'static Entry, pairs: &[(&str, &str)]) -> Result<Values, Refusal> {
    entry
        .parameters
        .iter()
        .map(|parameter| {
            let typed = pairs.iter().find(|(key, _)| *key == parameter.name);
            let typed = typed.map_or("", |(_, value)| value.trim());
            let value = if parameter.kind == Kind::Choice {
                read_choice(parameter, typed)
            } else {
                read_number(parameter, typed)
            };
            value
                .map(|value| (parameter.name, value))
                .map_err(|sentence| Refusal::new(sentence).beside(parameter.name))
        })
        .collect()
}

fn read_choice(parameter: &Parameter, typed: &str) -> Result<Value, String> {
    let known = parameter.choices.iter();
    match known.clone().find(|word| word.eq_ignore_ascii_case(typed)) {
        Some(word) => Ok(Value::Word(word)),
        None => Err(format!(
            "{} must be {} (got \"{}\")",
            parameter.name,
            in_words(parameter.choices, "or"),
            quoted(typed)
        )),
    }
}

fn read_number(parameter: &Parameter, typed: &str) -> Result<Value, String> {
    let name = parameter.name;
    let reading = parse::reading(parameter.kind, typed, None)
        .map_err(|error| format!("{name}: {}", error.sentence()))?;
    if reading.from_wavelength && !parameter.is_radio() {
        let typed = quoted(typed);
        return Err(format!(
            "{name} is typed in Hz or kHz, not in metres (got \"{typed}\")"
        ));
    }
    let value = reading.value;
    if parameter.min <= value && value <= parameter.max {
        return Ok(Value::Number(value));
    }
    let (typed, read) = (quoted(typed), display::text(parameter.kind, value));
    let rule = parameter.rule();
    Err(if typed == read {
        format!("{name} must {rule} (got \"{typed}\")")
    } else {
        format!("{name} must {rule} (got \"{typed}\", read as {read})")
    })
}

fn unknown_name(name: &str) -> Refusal {
    if name.is_empty() {
        return Refusal::new(String::from(
            "an expression starts with a quantity's name, such as \
             oscillator?dial=1200kHz&if=470kHz&side=above (got nothing)",
        ));
    }
    let known = catalogue().iter().map(|entry| entry.name);
    let mut sentence = format!("no quantity is called \"{}\"", quoted(name));
    let offered = suggestion::nearest(name, known);
    if !offered.is_empty() {
        sentence.push_str(&format!("; did you mean {}?", in_words(&offered, "or")));
    }
    Refusal::new(sentence)
}

/// The name if it looks like one, else nothing.
fn readable_name(name: &str) -> &str {
    let fits = name.len() <= 40
        && name
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'_');
    if fits { name } else { "" }
}
