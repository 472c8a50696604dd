//! The driver of a test's browser.

use std::io::{BufRead, BufReader};
use std::net::{TcpListener, TcpStream};
use std::process::{Child, ChildStdout, Command, Stdio};
use std::time::{Duration, Instant};

/// A running driver, until it is dropped.
pub struct Driver {
    child: Child,
    pub port: u16,
    /// Kept open, as the driver may have more to say.
    _output: Option<BufReader<ChildStdout>>,
}

impl Driver {
    /// Two that start at once may choose one port, and one of them ends; it is started again.
    pub fn start() -> Self {
        let program = std::env::var("CHROMEDRIVER").unwrap_or("chromedriver".to_owned());
        Self::naming_its_port(&program, "successfully on port ")
    }

    /// A driver that chooses its port and names it after these words.
    pub fn naming_its_port(program: &str, words: &str) -> Self {
        let started = (0..3).find_map(|_| Self::started(program, words));
        started.unwrap_or_else(|| panic!("{program} ended three times without naming its port"))
    }

    /// A driver that must be told its port: one that was free a moment ago.
    pub fn at_a_port(program: &str) -> Self {
        let free = TcpListener::bind("127.0.0.1:0").and_then(|listener| listener.local_addr());
        let port = free.expect("a free loopback port").port();
        let child = Command::new(program)
            .arg(format!("--port={port}"))
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|e| panic!("{program}: {e}; scripts/test installs it"));
        let begun = Instant::now();
        while TcpStream::connect(("127.0.0.1", port)).is_err() {
            assert!(begun.elapsed() < Duration::from_secs(10), "{program} does not answer");
            std::thread::sleep(Duration::from_millis(50));
        }
        Self { child, port, _output: None }
    }

    fn started(program: &str, words: &str) -> Option<Self> {
        let mut child = Command::new(program)
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|e| panic!("{program}: {e}; scripts/test installs it"));
        let mut output = BufReader::new(child.stdout.take().expect("piped"));
        let mut line = String::new();
        // Its greeting ends with a line that names the port that it chose.
        while output.read_line(&mut line).is_ok_and(|length| length > 0) {
            let port = line.rsplit_once(words).map(|(_, end)| end.trim().trim_end_matches('.'));
            if let Some(Ok(port)) = port.map(str::parse::<u16>) {
                return Some(Self { child, port, _output: Some(output) });
            }
            line.clear();
        }
        let _ = child.kill();
        let _ = child.wait();
        None
    }
}

impl Driver {
    /// Kills the driver and every process that came of it.
    pub fn kill_all(&self) {
        let mut doomed = vec![self.child.id()];
        let parents = parents();
        // A process is listed after its parent or before it, so it is looked through until no more are found.
        loop {
            let of_them =
                |(pid, parent): &&(u32, u32)| doomed.contains(parent) && !doomed.contains(pid);
            let more: Vec<u32> = parents.iter().filter(of_them).map(|(pid, _)| *pid).collect();
            if more.is_empty() {
                break;
            }
            doomed.extend(more);
        }
        let pids = doomed.iter().map(ToString::to_string);
        let _ = Command::new("kill").arg("-9").args(pids).stderr(Stdio::null()).status();
    }
}

/// Every process with its parent.
fn parents() -> Vec<(u32, u32)> {
    let parent = |pid: u32| {
        let stat = std::fs::read_to_string(format!("/proc/{pid}/stat")).ok()?;
        // Its name stands in brackets, and may hold anything.
        let (_, rest) = stat.rsplit_once(')')?;
        rest.split_whitespace().nth(1)?.parse().ok()
    };
    let entries = std::fs::read_dir("/proc").into_iter().flatten().flatten();
    let pids = entries.filter_map(|entry| entry.file_name().to_str()?.parse().ok());
    pids.filter_map(|pid| Some((pid, parent(pid)?))).collect()
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
