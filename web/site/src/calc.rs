//! `cargo site calc`: quantities worked on the command line.
//!
//! One expression gives one answer on standard output; a refusal gives one line on
//! standard error and exit status 2. `-` works one expression a line from standard
//! input, refusals in their place, so that a script can send thousands.

mod lines;
mod list;
mod record;

use std::io::{BufReader, BufWriter, Read, Write};
use std::process::ExitCode;
use superhet::catalogue::evaluate;

/// What is said of arguments that make no sense.
const USAGE: &str = "calc takes one expression such as \
    'oscillator?dial=1200kHz&if=470kHz&side=above', or - for standard input, or --list; \
    and --json";

/// Works what the arguments after `calc` ask for.
pub fn run(arguments: &[String]) -> ExitCode {
    let mut output = BufWriter::new(std::io::stdout().lock());
    let mut errors = std::io::stderr();
    let mut input = BufReader::new(std::io::stdin().lock());
    ExitCode::from(run_with(arguments, &mut input, &mut output, &mut errors))
}

/// As [`run`], with the streams given; returns the exit status.
pub fn run_with(
    arguments: &[String],
    input: &mut BufReader<impl Read>,
    output: &mut impl Write,
    errors: &mut impl Write,
) -> u8 {
    let done = match request(arguments) {
        Some(Request::List { json }) => list::write(json, output).map(|()| 0),
        Some(Request::Lines { json }) => lines::work(json, input, output).map(|()| 0),
        Some(Request::One { expression, json }) => one(expression, json, output, errors),
        None => writeln!(errors, "{USAGE}").map(|()| 2),
    };
    match done.and_then(|status| output.flush().map(|()| status)) {
        Ok(status) => status,
        // Whoever read the output has had enough, as `head` does: not a fault.
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => 0,
        Err(error) => {
            // Nothing is left to do if this cannot be said either.
            let _ = writeln!(errors, "calc: {error}");
            1
        }
    }
}

/// What the arguments ask for.
#[derive(Debug, PartialEq, Eq)]
enum Request<'a> {
    List { json: bool },
    Lines { json: bool },
    One { expression: &'a str, json: bool },
}

fn request(arguments: &[String]) -> Option<Request<'_>> {
    let json = arguments.iter().any(|argument| argument == "--json");
    let others: Vec<&str> = arguments
        .iter()
        .map(String::as_str)
        .filter(|argument| *argument != "--json")
        .collect();
    match others[..] {
        ["--list"] => Some(Request::List { json }),
        ["-"] => Some(Request::Lines { json }),
        [option] if option.starts_with("--") => None,
        [expression] => Some(Request::One { expression, json }),
        _ => None,
    }
}

fn one(
    expression: &str,
    json: bool,
    output: &mut impl Write,
    errors: &mut impl Write,
) -> std::io::Result<u8> {
    match evaluate(expression) {
        Ok(answer) => {
            writeln!(output, "{}", record::answer(&answer, json))?;
            if let Some(note) = answer.note {
                writeln!(errors, "note: {note}")?;
            }
            Ok(0)
        }
        Err(refusal) => {
            writeln!(errors, "{refusal}")?;
            Ok(2)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::run_with;
    use std::io::BufReader;

    /// Exit status, standard output, standard error.
    fn calc(arguments: &[&str], input: &[u8]) -> (u8, String, String) {
        let arguments: Vec<String> = arguments.iter().map(ToString::to_string).collect();
        let (mut output, mut errors) = (Vec::new(), Vec::new());
        let mut input = BufReader::new(input);
        let status = run_with(&arguments, &mut input, &mut output, &mut errors);
        let text = |bytes| String::from_utf8(bytes).unwrap();
        (status, text(output), text(errors))
    }

    #[test]
    fn one_expression_gives_its_text() {
        let (status, output, errors) = calc(&["oscillator?dial=1200kHz&if=470kHz&side=above"], b"");
        assert_eq!((status, output.as_str()), (0, "1670 kHz\n"));
        assert_eq!(errors, "");
    }

    #[test]
    fn json_has_four_keys_in_order() {
        let (_, output, _) = calc(&["--json", "beat?f1=909kHz&f2=900kHz"], b"");
        let wanted = r#"{"name":"beat","value":9000.0,"unit":"Hz","text":"9 kHz"}"#;
        assert_eq!(output, format!("{wanted}\n"));
    }

    #[test]
    fn a_refusal_is_one_line_on_standard_error_and_status_2() {
        for expression in [
            "",
            "abc",
            "oscillator",
            "oscillator?dial=-5 kHz&if=470kHz&side=above",
            "oscillator?dial=1e999 MHz&if=470kHz&side=above",
            "oscillator?dial=400kHz&if=470kHz&side=below",
            "oscillator?dial=1\n2&if=470kHz&side=below",
            &"x".repeat(100_000),
        ] {
            let (status, output, errors) = calc(&[expression], b"");
            assert_eq!((status, output.as_str()), (2, ""), "{expression:.40}");
            assert_eq!(errors.lines().count(), 1, "{errors}");
            assert!(errors.chars().count() <= 401, "{errors}");
        }
    }

    #[test]
    fn a_note_goes_to_standard_error() {
        let (status, output, errors) = calc(&["image?dial=700kHz&if=455kHz&side=below"], b"");
        assert_eq!((status, output.as_str()), (0, "210 kHz\n"));
        assert!(errors.starts_with("note: "), "{errors}");
    }

    #[test]
    fn lines_are_answered_in_order_refusals_in_their_place() {
        let input = b"beat?f1=909kHz&f2=900kHz\n\nbeat?f1=1\r\nnonsense?a=b\n\xff\xfe\nwavelength?frequency=1MHz";
        let (status, output, errors) = calc(&["-"], input);
        let lines: Vec<&str> = output.lines().collect();
        assert_eq!((status, errors.as_str()), (0, ""));
        assert_eq!(lines.len(), 6);
        assert_eq!(lines[0], "9 kHz");
        assert!(lines[1..5].iter().all(|line| line.starts_with("error: ")));
        assert_eq!(lines[5], "299.7925 m");
    }

    #[test]
    fn refused_lines_name_what_could_be_read() {
        let (_, output, _) = calc(&["-", "--json"], b"beat?f1=1\n\n???\n");
        let rows: Vec<serde_json::Value> = output
            .lines()
            .map(|line| serde_json::from_str(line).unwrap())
            .collect();
        assert_eq!(rows[0]["name"], "beat");
        assert_eq!(rows[0]["error"], "beat takes f1 and f2; f2 is missing");
        assert_eq!(
            (&rows[1]["name"], &rows[2]["name"]),
            (&"".into(), &"".into())
        );
        assert!(rows.iter().all(|row| row.as_object().unwrap().len() == 2));
    }

    #[test]
    fn a_line_without_end_is_refused_and_the_next_is_read() {
        let mut input = vec![b'x'; 3_000_000];
        input.extend(b"\nbeat?f1=909kHz&f2=900kHz\n");
        let (_, output, _) = calc(&["-"], &input);
        let lines: Vec<&str> = output.lines().collect();
        assert_eq!(lines.len(), 2);
        assert!(lines[0].starts_with("error: ") && lines[0].len() < 400);
        assert_eq!(lines[1], "9 kHz");
    }

    #[test]
    fn the_list_has_one_object_a_line() {
        let (status, output, _) = calc(&["--list", "--json"], b"");
        assert_eq!(status, 0);
        for line in output.lines() {
            let entry: serde_json::Value = serde_json::from_str(line).unwrap();
            let keys: Vec<&String> = entry.as_object().unwrap().keys().collect();
            let wanted = [
                "name",
                "title",
                "symbol",
                "formula",
                "parameters",
                "unit",
                "source",
            ];
            assert_eq!(keys, wanted);
            for parameter in entry["parameters"].as_array().unwrap() {
                let keys: Vec<&String> = parameter.as_object().unwrap().keys().collect();
                assert_eq!(keys, ["name", "kind", "min", "max", "choices"]);
            }
        }
        assert_eq!(
            output.lines().count(),
            superhet::catalogue::catalogue().len()
        );
    }

    #[test]
    fn arguments_that_make_no_sense_are_refused() {
        for arguments in [&[][..], &["a", "b"], &["--jsno"], &["--list", "-"]] {
            let (status, output, errors) = calc(arguments, b"");
            assert_eq!((status, output.as_str()), (2, ""));
            assert!(errors.lines().count() == 1 && errors.len() < 400);
        }
    }
}
