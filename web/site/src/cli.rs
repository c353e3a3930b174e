//! The command line: what was asked for.

use crate::edition::Edition;
use crate::response::Request;
use anyhow::{Result, bail};
use std::path::PathBuf;

/// The port `serve` listens on unless told otherwise.
const PORT: u16 = 8017;

/// What can be asked for, as shown by `cargo site help`.
pub const USAGE: &str = "\
cargo site build --out DIR [--base /path/] [--public-url URL]
                               write the site as static files
cargo site build --portable --out FILE.zip
                               write a folder that opens by itself, zipped
cargo site serve [--port N]    show the site on this computer, rebuilt on change (port 8017)
cargo site test                install what is missing, build, and run every test
cargo site calc 'NAME?KEY=VALUE&…' [--json]     work one quantity
cargo site calc - [--json]     work one expression a line from standard input
cargo site calc --list [--json]                 list the quantities
cargo site response --set FILE --dial F --from F --to F --points N
        [--id ID] [--band ID] [--selectivity ID]  a set's response as CSV
cargo site bench [GROUP] [--json]               measure against rivals
cargo site lighthouse [--all]  the four figures of the main pages, or of all";

/// One command.
#[derive(Debug, Clone, PartialEq)]
pub enum Command {
    /// Write the site.
    Build {
        /// The folder, or the file for the portable edition.
        out: PathBuf,
        /// Which edition.
        edition: Edition,
    },
    /// Show the site on this computer.
    Serve {
        /// The loopback port.
        port: u16,
    },
    /// Run every test.
    Test,
    /// Work quantities; `calc` reads its own arguments.
    Calc(Vec<String>),
    /// Write a set's response.
    Response(Request),
    /// Measure.
    Bench {
        /// One group, or all.
        group: Option<String>,
        /// One JSON object a row instead of a table.
        json: bool,
    },
    /// Lighthouse's figures.
    Lighthouse {
        /// All pages instead of the main ones.
        all: bool,
    },
    /// Say what can be asked for.
    Help,
}

/// Reads the arguments after the program's name.
///
/// # Errors
/// When a command or option is unknown, doubled, or lacks its value.
pub fn parse(arguments: &[String]) -> Result<Command> {
    let Some((command, rest)) = arguments.split_first() else {
        return Ok(Command::Help);
    };
    match command.as_str() {
        "build" => build(&mut Options::new(rest)),
        "serve" => serve(&mut Options::new(rest)),
        "test" => Options::new(rest).done(Command::Test),
        "calc" => Ok(Command::Calc(rest.to_vec())),
        "response" => response(&mut Options::new(rest)),
        "bench" => bench(&mut Options::new(rest)),
        "lighthouse" => lighthouse(&mut Options::new(rest)),
        "help" | "--help" | "-h" => Ok(Command::Help),
        other => bail!("there is no command \"{other}\"; cargo site help lists them"),
    }
}

fn build(options: &mut Options) -> Result<Command> {
    let portable = options.flag("--portable");
    let base = options.value("--base")?;
    let public_url = options.value("--public-url")?;
    let Some(out) = options.value("--out")? else {
        bail!("build needs --out: a folder, or a .zip file with --portable");
    };
    let edition = if portable {
        if base.is_some() || public_url.is_some() {
            bail!("--portable takes neither --base nor --public-url: it has no address");
        }
        Edition::Portable
    } else {
        Edition::Hosted {
            base: checked_base(base)?,
            public_url: public_url.map(checked_url).transpose()?,
        }
    };
    let out = PathBuf::from(out);
    options.done(Command::Build { out, edition })
}

fn serve(options: &mut Options) -> Result<Command> {
    let port = match options.value("--port")? {
        None => PORT,
        Some(text) => match text.parse() {
            Ok(port) => port,
            Err(_) => bail!("--port must be a number from 0 to 65535 (got \"{text}\")"),
        },
    };
    options.done(Command::Serve { port })
}

fn response(options: &mut Options) -> Result<Command> {
    let request = Request::read(options)?;
    options.done(Command::Response(request))
}

fn bench(options: &mut Options) -> Result<Command> {
    let json = options.flag("--json");
    let group = options.word();
    options.done(Command::Bench { group, json })
}

fn lighthouse(options: &mut Options) -> Result<Command> {
    let all = options.flag("--all");
    options.done(Command::Lighthouse { all })
}

/// A base path begins and ends with a slash and holds nothing a link would read otherwise.
fn checked_base(base: Option<String>) -> Result<String> {
    let base = base.unwrap_or_else(|| "/".to_owned());
    let plain = |c: char| c.is_ascii_alphanumeric() || "/-._~".contains(c);
    if !base.starts_with('/') || !base.ends_with('/') || !base.chars().all(plain) {
        bail!(
            "--base must begin and end with / and hold only letters, digits and -._~ (got \"{base}\")"
        );
    }
    Ok(base)
}

/// A public address is an http or https address; a missing last slash is added.
fn checked_url(url: String) -> Result<String> {
    let known = url.starts_with("https://") || url.starts_with("http://");
    if !known || url.contains(['?', '#', ' ', '"', '<']) {
        bail!("--public-url must be an http or https address without query (got \"{url}\")");
    }
    Ok(if url.ends_with('/') { url } else { url + "/" })
}

/// The options that are still unread.
pub(crate) struct Options {
    unread: Vec<String>,
}

impl Options {
    fn new(arguments: &[String]) -> Self {
        Self {
            unread: arguments.to_vec(),
        }
    }

    /// Takes a flag.
    fn flag(&mut self, name: &str) -> bool {
        let before = self.unread.len();
        self.unread.retain(|argument| argument != name);
        self.unread.len() < before
    }

    /// Takes `--name VALUE` or `--name=VALUE`.
    pub(crate) fn value(&mut self, name: &str) -> Result<Option<String>> {
        let equals = format!("{name}=");
        let Some(at) = self
            .unread
            .iter()
            .position(|argument| argument == name || argument.starts_with(&equals))
        else {
            return Ok(None);
        };
        let argument = self.unread.remove(at);
        if let Some(value) = argument.strip_prefix(&equals) {
            return Ok(Some(value.to_owned()));
        }
        if at >= self.unread.len() || self.unread[at].starts_with("--") {
            bail!("{name} needs a value after it");
        }
        Ok(Some(self.unread.remove(at)))
    }

    /// Takes a word that is no option.
    fn word(&mut self) -> Option<String> {
        let at = self.unread.iter().position(|word| !word.starts_with('-'))?;
        Some(self.unread.remove(at))
    }

    /// The command, when nothing is left over.
    fn done(&self, command: Command) -> Result<Command> {
        match self.unread.first() {
            None => Ok(command),
            Some(left) => bail!("\"{left}\" is not understood here; cargo site help says what is"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Command, parse};
    use crate::edition::Edition;
    use std::path::PathBuf;

    fn read(line: &str) -> Result<Command, String> {
        let words: Vec<String> = line.split_whitespace().map(str::to_owned).collect();
        parse(&words).map_err(|error| error.to_string())
    }

    #[test]
    fn build_reads_its_options_in_any_order() {
        let wanted = Command::Build {
            out: PathBuf::from("out"),
            edition: Edition::Hosted {
                base: "/club/".to_owned(),
                public_url: Some("https://club.example/radio/".to_owned()),
            },
        };
        let line = "build --base /club/ --public-url https://club.example/radio --out out";
        assert_eq!(read(line), Ok(wanted.clone()));
        let line = "build --out=out --public-url=https://club.example/radio/ --base=/club/";
        assert_eq!(read(line), Ok(wanted));
    }

    #[test]
    fn the_portable_edition_has_no_address() {
        assert!(read("build --portable --out a.zip").is_ok());
        let said = read("build --portable --out a.zip --base /x/").unwrap_err();
        assert!(said.contains("neither --base"), "{said}");
    }

    #[test]
    fn what_is_wrong_is_named() {
        for (line, part) in [
            ("build", "--out"),
            ("build --out", "--out needs a value"),
            ("build --out a --base club", "\"club\""),
            (
                "build --out a --public-url club.example",
                "\"club.example\"",
            ),
            ("serve --port many", "\"many\""),
            ("serve --prot 80", "\"--prot\""),
            ("brew", "\"brew\""),
            ("test --skip", "\"--skip\""),
        ] {
            let said = read(line).unwrap_err();
            assert!(said.contains(part), "{line}: {said}");
        }
    }

    #[test]
    fn serve_listens_on_8017_unless_told_otherwise() {
        assert_eq!(read("serve"), Ok(Command::Serve { port: 8017 }));
        assert_eq!(read("serve --port 9000"), Ok(Command::Serve { port: 9000 }));
    }

    #[test]
    fn bench_takes_a_group() {
        let group = Some("site".to_owned());
        assert_eq!(
            read("bench --json site"),
            Ok(Command::Bench { group, json: true })
        );
    }
}
