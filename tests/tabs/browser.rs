//! The tabs of `tabs.mjs`, as a program of its own that is spoken to line by line.

use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

use serde_json::Value;

/// Node with the tabs in it, until it is dropped.
pub struct Browser {
    child: Child,
    input: ChildStdin,
    output: BufReader<ChildStdout>,
}

impl Browser {
    /// `None` where there is no node.
    pub fn start() -> Option<Self> {
        let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/tabs/tabs.mjs");
        let child =
            Command::new("node").arg(script).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn();
        let mut child = child.ok()?;
        let input = child.stdin.take().expect("piped");
        let output = BufReader::new(child.stdout.take().expect("piped"));
        Some(Self { child, input, output })
    }

    /// Says what is to be done.
    pub fn say(&mut self, command: &Value) {
        writeln!(self.input, "{command}").expect("node listens");
    }

    /// What it answers or tells meanwhile.
    pub fn hear(&mut self, command: &Value) -> Value {
        let mut line = String::new();
        self.output.read_line(&mut line).expect("node answers");
        serde_json::from_str(&line).unwrap_or_else(|_| panic!("{command}: node has ended"))
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
