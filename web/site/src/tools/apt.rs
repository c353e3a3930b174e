//! What a command needs from Debian, installed where this may be done.

use anyhow::{Context, Result, bail};
use std::collections::BTreeSet;
use std::process::{Command, Stdio};

/// Something a command needs: how to see that it is there, and the package that has it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Need {
    /// The Debian package.
    pub package: &'static str,
    /// A program and arguments that succeed only when it is there.
    pub probe: &'static [&'static str],
}

/// A browser and its driver, for what is measured in one.
pub const CHROMIUM: [Need; 2] = [
    Need::program("chromium", &["chromium", "--version"]),
    Need::program("chromium-driver", &["chromedriver", "--version"]),
];

impl Need {
    /// A program found by its own `--version`.
    pub const fn program(package: &'static str, probe: &'static [&'static str]) -> Self {
        Self { package, probe }
    }

    fn is_there(&self) -> bool {
        let Some((program, arguments)) = self.probe.split_first() else {
            return false;
        };
        quietly(Command::new(program).args(arguments))
    }
}

/// Makes sure that all needs are met: by apt as root or by password-free sudo.
///
/// # Errors
/// When something is missing and may not be installed: the packages are named.
pub fn install(needs: &[Need]) -> Result<()> {
    let missing = missing(needs, Need::is_there);
    if missing.is_empty() {
        return Ok(());
    }
    let names = missing.iter().copied().collect::<Vec<_>>().join(" ");
    let Some(before) = rights() else {
        bail!(
            "missing: {names}\ninstall them with: apt-get install --no-install-recommends {names}"
        );
    };
    println!("installing {names} …");
    run(before, &["apt-get", "update", "-q"])?;
    let mut words = vec!["apt-get", "install", "-q", "-y", "--no-install-recommends"];
    words.extend(&missing);
    run(before, &words)?;
    let still: Vec<&str> = self::missing(needs, Need::is_there).into_iter().collect();
    if !still.is_empty() {
        bail!("installed, but still not found: {}", still.join(" "));
    }
    Ok(())
}

/// The packages of the needs that are not met, each once.
fn missing(needs: &[Need], is_there: impl Fn(&Need) -> bool) -> BTreeSet<&'static str> {
    needs
        .iter()
        .filter(|need| !is_there(need))
        .map(|need| need.package)
        .collect()
}

/// What has to stand before `apt-get`: nothing for root, sudo where it asks nothing. None
/// where there is no apt or no right to use it.
fn rights() -> Option<&'static [&'static str]> {
    if !quietly(Command::new("apt-get").arg("--version")) {
        return None;
    }
    let id = Command::new("id").arg("-u").output().ok()?;
    if id.stdout.trim_ascii() == b"0" {
        return Some(&[]);
    }
    quietly(Command::new("sudo").args(["-n", "true"])).then_some(&["sudo", "-n"])
}

fn quietly(command: &mut Command) -> bool {
    let command = command.stdin(Stdio::null()).stdout(Stdio::null());
    let status = command.stderr(Stdio::null()).status();
    status.is_ok_and(|status| status.success())
}

/// Runs one apt command; its own messages show how it gets on.
fn run(before: &[&str], words: &[&str]) -> Result<()> {
    let all: Vec<&str> = before.iter().chain(words).copied().collect();
    let line = all.join(" ");
    let (program, arguments) = all.split_first().context("an empty command")?;
    let status = Command::new(program)
        .args(arguments)
        .env("DEBIAN_FRONTEND", "noninteractive")
        .stdin(Stdio::null())
        .status()
        .with_context(|| format!("cannot start {line}"))?;
    if !status.success() {
        bail!("{line} failed");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{Need, missing};

    const NEEDS: [Need; 3] = [
        Need::program("chromium", &["chromium", "--version"]),
        Need::program("chromium-driver", &["chromedriver", "--version"]),
        Need::program("chromium", &["chromium", "--help"]),
    ];

    #[test]
    fn each_missing_package_is_named_once() {
        let none = missing(&NEEDS, |_| false);
        assert_eq!(
            none.into_iter().collect::<Vec<_>>(),
            ["chromium", "chromium-driver"]
        );
    }

    #[test]
    fn what_is_there_is_not_asked_for() {
        let driver = missing(&NEEDS, |need| need.package == "chromium");
        assert_eq!(driver.into_iter().collect::<Vec<_>>(), ["chromium-driver"]);
        assert!(missing(&NEEDS, |_| true).is_empty());
    }

    #[test]
    fn a_probe_that_is_no_program_is_not_there() {
        let need = Need::program("nothing", &["no-such-program-anywhere", "--version"]);
        assert!(!need.is_there());
    }
}
