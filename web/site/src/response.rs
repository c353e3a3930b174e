//! `cargo site response`: a set's response over a stretch of frequencies, as CSV.
//!
//! Thin: the set file is read, the core is asked, a line is written for each frequency.
//! Every fault of the set file is told with its place, one a line, on standard error;
//! then nothing stands on standard output and the exit status is 2.

use crate::cli::Options;
use crate::set_file::SetFile;
use crate::toml_shape::Slip;
use anyhow::{Context as _, Result, anyhow, bail};
use std::fmt::Write as _;
use std::path::PathBuf;
use std::process::ExitCode;
use superhet::receiver::{Receiver, Setting};
use superhet::units::{Decibels, Frequency, parse};

/// The first line of the output.
const HEADER: &str = "frequency_hz,wanted_db,image_db,if_db,harmonic_db,total_db";

/// More lines than this are not asked for at once.
const MOST_POINTS: u32 = 1_000_000;

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    set: PathBuf,
    id: Option<String>,
    band: Option<String>,
    selectivity: Option<String>,
    dial: Frequency,
    from: Frequency,
    to: Frequency,
    points: u32,
}

impl Request {
    /// Reads the options after `response`.
    ///
    /// # Errors
    /// When one is missing or cannot be read.
    pub(crate) fn read(options: &mut Options) -> Result<Self> {
        let request = Self {
            set: PathBuf::from(required(options, "--set")?),
            id: options.value("--id")?,
            band: options.value("--band")?,
            selectivity: options.value("--selectivity")?,
            dial: frequency(options, "--dial")?,
            from: frequency(options, "--from")?,
            to: frequency(options, "--to")?,
            points: points(&required(options, "--points")?)?,
        };
        if request.to <= request.from {
            bail!(
                "--to must be above --from, {} (got {})",
                request.from,
                request.to
            );
        }
        Ok(request)
    }
}

fn required(options: &mut Options, name: &str) -> Result<String> {
    let value = options.value(name)?;
    value.ok_or_else(|| {
        anyhow!("response needs --set FILE, --dial F, --from F, --to F and --points N; {name} is missing")
    })
}

fn frequency(options: &mut Options, name: &str) -> Result<Frequency> {
    let text = required(options, name)?;
    parse::frequency(&text).map_err(|error| anyhow!("{name}: {error}"))
}

fn points(text: &str) -> Result<u32> {
    let count = text
        .parse()
        .ok()
        .filter(|count| (2..=MOST_POINTS).contains(count));
    count.ok_or_else(|| {
        anyhow!("--points is a whole number from 2 to {MOST_POINTS} (got \"{text}\")")
    })
}

/// Writes what was asked for to standard output.
pub fn run(request: &Request) -> ExitCode {
    match csv(request) {
        Ok(text) => match std::io::Write::write_all(&mut std::io::stdout(), text.as_bytes()) {
            // Whoever read the output has had enough, as `head` does: not a fault.
            Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
                eprintln!("response: {error}");
                ExitCode::FAILURE
            }
            _ => ExitCode::SUCCESS,
        },
        Err(error) => {
            eprintln!("{error:#}");
            ExitCode::from(2)
        }
    }
}

/// The whole output.
///
/// # Errors
/// Every fault of the set file; or why the set has no answer to this setting.
pub fn csv(request: &Request) -> Result<String> {
    let receiver = receiver(request)?;
    let receiver = match &request.selectivity {
        Some(id) => receiver.with_selectivity(id)?,
        None => receiver,
    };
    let tuning = receiver.tuned(setting(&receiver, request)?);
    let mut text = format!("{HEADER}\n");
    for point in 0..request.points {
        let signal = place(request, point);
        let response = tuning.response(signal);
        let columns = [
            response.wanted,
            response.image,
            response.breakthrough,
            response.harmonic,
            response.total(),
        ];
        write!(text, "{}", signal.to_hz())?;
        for column in columns.map(Decibels::to_db) {
            write!(text, ",{column}")?;
        }
        text.push('\n');
    }
    Ok(text)
}

fn setting<'r>(receiver: &'r Receiver, request: &Request) -> Result<Setting<'r>> {
    Ok(match &request.band {
        Some(id) => receiver.setting_on(receiver.band(id)?, request.dial)?,
        None => receiver.setting(request.dial)?,
    })
}

/// Evenly from one end to the other, both with their own bits.
fn place(request: &Request, point: u32) -> Frequency {
    let (from, to) = (request.from.to_hz(), request.to.to_hz());
    let last = request.points - 1;
    if point == last {
        return request.to;
    }
    Frequency::hz(from + (to - from) * (f64::from(point) / f64::from(last)))
}

fn receiver(request: &Request) -> Result<Receiver> {
    let path = request.set.display().to_string();
    let text = std::fs::read_to_string(&request.set).with_context(|| path.clone())?;
    let file = SetFile::read(&text);
    let told = |slips: Vec<Slip>| {
        let line = |slip: &Slip| SetFile::line(&text, &path, slip);
        anyhow!(slips.iter().map(line).collect::<Vec<_>>().join("\n"))
    };
    let misshapen = file.misshapen().to_vec();
    let index = match &request.id {
        None if !file.sets.is_empty() => Some(0),
        None => None,
        Some(id) => file.sets.iter().position(|set| &set.id == id),
    };
    let Some(index) = index else {
        match &request.id {
            _ if !misshapen.is_empty() => return Err(told(misshapen)),
            None => bail!("{path}: this file has no [[set]]"),
            Some(id) => bail!("{path}: no set in this file has the id \"{id}\""),
        }
    };
    match Receiver::new(&file.sets[index]) {
        Ok(receiver) if misshapen.is_empty() => Ok(receiver),
        _ => {
            let mut slips = [misshapen, file.slips(index)].concat();
            slips.sort_by_key(|slip| slip.at);
            Err(told(slips))
        }
    }
}
