//! One expression a line from standard input.

use super::record;
use std::io::{BufRead, BufReader, Read, Result, Write};
use superhet::catalogue::{LONGEST, evaluate};

/// Bytes of a line that are kept: enough for the longest expression with every
/// character escaped, so that what is cut is refused as too long all the same.
const KEPT: u64 = 4 * LONGEST as u64;

/// Works every line; what is refused gets its line too.
///
/// Answers are handed on as soon as no further line is waiting, so that a program which
/// sends a line and waits for its answer is served.
pub(super) fn work(
    json: bool,
    input: &mut BufReader<impl Read>,
    output: &mut impl Write,
) -> Result<()> {
    let mut line = Vec::new();
    while next(input, &mut line)? {
        let expression = String::from_utf8_lossy(&line);
        let record = match evaluate(&expression) {
            Ok(answer) => record::answer(&answer, json),
            Err(refusal) => record::refusal(&refusal, json),
        };
        writeln!(output, "{record}")?;
        if input.buffer().is_empty() {
            output.flush()?;
        }
    }
    Ok(())
}

/// Reads the next line without its end, keeping its start; false at the end of input.
fn next(input: &mut impl BufRead, line: &mut Vec<u8>) -> Result<bool> {
    line.clear();
    let read = input.by_ref().take(KEPT).read_until(b'\n', line)?;
    if read as u64 == KEPT && line.last() != Some(&b'\n') {
        input.skip_until(b'\n')?;
    }
    while matches!(line.last(), Some(b'\n' | b'\r')) {
        line.pop();
    }
    Ok(read > 0)
}
