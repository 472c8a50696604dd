//! A plain file server on a free loopback port, which remembers what it was asked for.

use std::io::{BufRead, BufReader, Result, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

/// What every answer has, as HOSTING.md asks for it.
const HEADERS: &str = "Content-Security-Policy: frame-ancestors 'none'\r\nX-Content-Type-Options: nosniff\r\n\
    Referrer-Policy: no-referrer\r\nCross-Origin-Opener-Policy: same-origin\r\n";

/// A folder that is being served, until it is dropped or [`stop`](Site::stop)ped.
pub struct Site {
    port: u16,
    shared: Arc<Shared>,
    thread: Option<JoinHandle<()>>,
}

/// Words of a path, and the body that is answered to it, or that there is none.
type Answer = (&'static str, Option<Vec<u8>>);

/// What the server's threads know.
struct Shared {
    folder: PathBuf,
    prefix: String,
    asked: Mutex<Vec<String>>,
    /// How long a module that is not the first one is held back.
    held_back: Mutex<Duration>,
    /// What is answered to some paths.
    answers: Mutex<Vec<Answer>>,
    stopped: AtomicBool,
}

impl Site {
    /// The release build under test, at an address such as `/` or `/some/sub/path/`.
    pub fn of_build(prefix: &str) -> Self {
        Self::of(build(), prefix)
    }

    /// Any folder, at an address that starts and ends with a slash.
    pub fn of(folder: PathBuf, prefix: &str) -> Self {
        assert!(prefix.starts_with('/') && prefix.ends_with('/'), "not a folder's path: {prefix}");
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free loopback port");
        let port = listener.local_addr().expect("it is bound").port();
        let shared = Arc::new(Shared {
            folder,
            prefix: prefix.to_owned(),
            asked: Mutex::default(),
            held_back: Mutex::default(),
            answers: Mutex::default(),
            stopped: AtomicBool::new(false),
        });
        let thread = {
            let shared = shared.clone();
            thread::spawn(move || {
                for stream in listener.incoming().flatten() {
                    if shared.stopped.load(Ordering::SeqCst) {
                        return;
                    }
                    // One thread and one answer for each connection: a browser may open some to keep for later.
                    let shared = shared.clone();
                    thread::spawn(move || shared.answer(stream));
                }
            })
        };
        Self { port, shared, thread: Some(thread) }
    }

    /// Where the server is, without a slash at the end.
    pub fn origin(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// Where the page is, with a slash at the end.
    pub fn url(&self) -> String {
        self.origin() + &self.shared.prefix
    }

    /// The paths that were asked for so far, in order.
    pub fn asked(&self) -> Vec<String> {
        self.shared.asked.lock().expect("no thread panicked").clone()
    }

    /// Lets every module but the first one wait for so long, as a slow line would.
    pub fn hold_parts_back(&self, time: Duration) {
        *self.shared.held_back.lock().expect("no thread panicked") = time;
    }

    /// Answers whatever has these words in its path with a body, or with nothing, in place of the build's file.
    pub fn answer_with(&self, words: &'static str, body: Option<Vec<u8>>) {
        self.shared.answers.lock().expect("no thread panicked").push((words, body));
    }

    /// Ends the server and waits until nothing answers at its port any more.
    pub fn stop(self) {
        let port = self.port;
        drop(self);
        let begun = Instant::now();
        while TcpStream::connect(("127.0.0.1", port)).is_ok() {
            assert!(begun.elapsed() < Duration::from_secs(10), "port {port} stays open");
            thread::sleep(Duration::from_millis(50));
        }
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        self.shared.stopped.store(true, Ordering::SeqCst);
        // The thread looks up when someone comes.
        let _ = TcpStream::connect(("127.0.0.1", self.port));
        if let Some(thread) = self.thread.take() {
            let _ = thread.join();
        }
    }
}

impl Shared {
    /// Answers one request. A browser that left takes no answer; that is its own affair.
    fn answer(&self, mut stream: TcpStream) -> Result<()> {
        let mut lines = BufReader::new(stream.try_clone()?).lines();
        let first = lines.next().unwrap_or_else(|| Ok(String::new()))?;
        while lines.next().is_some_and(|line| line.is_ok_and(|line| !line.is_empty())) {}
        let Some(path) = first.split(' ').nth(1) else { return Ok(()) };
        if self.stopped.load(Ordering::SeqCst) {
            return Ok(());
        }
        self.asked.lock().expect("no thread panicked").push(path.to_owned());

        let is_part = path.contains(".wasm") && !path.contains("/stringloft-");
        if is_part {
            let time = *self.held_back.lock().expect("no thread panicked");
            thread::sleep(time);
        }
        let file = self.file(path.split(['?', '#']).next().unwrap_or_default());
        let answers = self.answers.lock().expect("no thread panicked").clone();
        let other = answers.into_iter().find(|(words, _)| path.contains(words));
        let read = |file: PathBuf| {
            let body = other.map_or_else(|| std::fs::read(&file).ok(), |(_, body)| body);
            (mime(&file), body)
        };
        let (status, kind, body) = match file.map(read) {
            Some((kind, Some(body))) => ("200 OK", kind, body),
            _ => ("404 Not Found", "text/plain", b"There is no such file.".to_vec()),
        };
        let length = body.len();
        // What is not there now may come: only a file that was found never changes.
        let stays = has_sum(path) && status.starts_with("200");
        let kept = if stays { "public, max-age=31536000, immutable" } else { "no-cache" };
        write!(
            stream,
            "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\nConnection: close\r\n\
             Cache-Control: {kept}\r\n{HEADERS}\r\n"
        )?;
        stream.write_all(&body)
    }

    /// The file that a path names, if it lies below the prefix.
    fn file(&self, path: &str) -> Option<PathBuf> {
        let name = path.strip_prefix(&self.prefix)?;
        let inside = name.split('/').all(|part| part != "..");
        inside.then(|| self.folder.join(if name.is_empty() { "index.html" } else { name }))
    }
}

/// The folder of the release build: `E2E_DIST`, or where `scripts/test` puts it.
pub fn build() -> PathBuf {
    let folder = std::env::var("E2E_DIST").unwrap_or("target/e2e-dist".to_owned());
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    assert!(
        folder.join("sw.js").exists(),
        "no release build in {}: run scripts/test page",
        folder.display()
    );
    folder
}

/// Whether the name of a file holds the sum of its bytes.
fn has_sum(path: &str) -> bool {
    let stem = path.rsplit_once('.').map_or(path, |(stem, _)| stem);
    stem.rsplit_once('-')
        .is_some_and(|(_, sum)| sum.len() == 16 && sum.bytes().all(|byte| byte.is_ascii_hexdigit()))
}

fn mime(file: &Path) -> &'static str {
    match file.extension().and_then(|end| end.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript",
        Some("wasm") => "application/wasm",
        Some("css") => "text/css",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("webmanifest") => "application/manifest+json",
        _ => "application/octet-stream",
    }
}
