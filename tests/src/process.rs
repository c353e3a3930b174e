//! Programs that run beside a test and end with it.

use anyhow::{Context, Result, bail};
use std::io::{BufRead as _, BufReader, Read};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::os::unix::process::CommandExt as _;
use std::process::{Child, Command, Stdio};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

/// How long a driver may take before it listens.
const START: Duration = Duration::from_secs(20);

/// A running program, with its own process group: dropping it ends the program and
/// everything it started.
#[derive(Debug)]
pub struct Running {
    child: Child,
    said: Arc<Mutex<Vec<String>>>,
}

impl Running {
    /// Starts a program; what it says on both outputs is kept.
    ///
    /// # Errors
    /// When it cannot be started.
    pub fn start(command: &mut Command) -> Result<Self> {
        let name = command.get_program().to_string_lossy().into_owned();
        let mut child = command
            .process_group(0)
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .with_context(|| format!("cannot start {name}"))?;
        let said = Arc::default();
        if let Some(output) = child.stdout.take() {
            listen(output, &said);
        }
        if let Some(output) = child.stderr.take() {
            listen(output, &said);
        }
        Ok(Self { child, said })
    }

    /// The lines the program has said so far.
    pub fn said(&self) -> Vec<String> {
        let said = self.said.lock().unwrap_or_else(PoisonError::into_inner);
        said.clone()
    }

    /// Waits until the program says a line for which `wanted` gives something.
    ///
    /// # Errors
    /// When it does not say one in time, or ends.
    pub fn wait_for<T>(&mut self, wanted: impl Fn(&str) -> Option<T>) -> Result<T> {
        let started = Instant::now();
        while started.elapsed() < START {
            if let Some(found) = self.said().iter().find_map(|line| wanted(line)) {
                return Ok(found);
            }
            if let Some(status) = self.child.try_wait()? {
                bail!("ended with {status}: {}", self.said().join("\n"));
            }
            thread::sleep(Duration::from_millis(20));
        }
        bail!("did not start in time: {}", self.said().join("\n"))
    }

    /// Waits until something answers on a loopback port.
    ///
    /// # Errors
    /// When nothing does in time, or the program ends.
    pub fn wait_for_port(&mut self, port: u16) -> Result<()> {
        let started = Instant::now();
        while TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_err() {
            if let Some(status) = self.child.try_wait()? {
                bail!("ended with {status}: {}", self.said().join("\n"));
            }
            if started.elapsed() > START {
                bail!("does not listen on port {port}: {}", self.said().join("\n"));
            }
            thread::sleep(Duration::from_millis(20));
        }
        Ok(())
    }
}

impl Drop for Running {
    /// The group's number is the child's; killing it reaches what the child started.
    fn drop(&mut self) {
        let group = format!("-{}", self.child.id());
        let mut kill = Command::new("kill");
        // Nothing can be done about a program that has gone already.
        let _ = kill
            .args(["-KILL", "--", &group])
            .stderr(Stdio::null())
            .status();
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn listen(output: impl Read + Send + 'static, said: &Arc<Mutex<Vec<String>>>) {
    let said = Arc::clone(said);
    thread::spawn(move || {
        for line in BufReader::new(output).lines().map_while(Result::ok) {
            let mut said = said.lock().unwrap_or_else(PoisonError::into_inner);
            said.push(line);
        }
    });
}

/// A loopback port that nobody used a moment ago.
///
/// # Errors
/// When there is none.
pub fn free_port() -> Result<u16> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).context("no free port")?;
    Ok(listener.local_addr()?.port())
}
