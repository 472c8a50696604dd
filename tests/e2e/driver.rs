//! The chromedriver of a test.

use std::io::{BufRead, BufReader};
use std::process::{Child, ChildStdout, Command, Stdio};

/// A running chromedriver, until it is dropped.
pub struct Driver {
    child: Child,
    pub port: u16,
    /// Kept open, as chromedriver may have more to say.
    _output: BufReader<ChildStdout>,
}

impl Driver {
    /// Two that start at once may choose one port, and one of them ends; it is started again.
    pub fn start() -> Self {
        let program = std::env::var("CHROMEDRIVER").unwrap_or("chromedriver".to_owned());
        let started = (0..3).find_map(|_| Self::started(&program));
        started.unwrap_or_else(|| panic!("{program} ended three times without naming its port"))
    }

    fn started(program: &str) -> Option<Self> {
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
            let port = line
                .rsplit_once("successfully on port ")
                .map(|(_, end)| end.trim().trim_end_matches('.'));
            if let Some(Ok(port)) = port.map(str::parse::<u16>) {
                return Some(Self { child, port, _output: output });
            }
            line.clear();
        }
        let _ = child.kill();
        let _ = child.wait();
        None
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
