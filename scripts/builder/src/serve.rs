//! Serves the page on this machine, and builds it again when a source changes.

use std::fs;
use std::io;
use std::path::Path;
use std::thread;
use std::time::{Duration, SystemTime};

use tiny_http::{Header, Request, Response, Server};

use crate::{Failure, How, page};

/// What the page is made of.
const SOURCES: [&str; 5] = ["src", "style", "examples/harps", "index.html", "Cargo.toml"];
/// How often the sources are looked at.
const LOOK_EVERY: Duration = Duration::from_millis(500);

/// Builds the page into a folder and serves it at `127.0.0.1` until the program is ended.
///
/// # Errors
///
/// When the port is no number or is taken, or the first build fails.
pub fn serve(folder: &Path, port: &str, how: How) -> Result<(), Failure> {
    let port: u16 =
        port.parse().map_err(|_| format!("the port must be 1 to 65535, got \"{port}\""))?;
    let mut seen = newest();
    page::build(folder, how)?;
    let server = Server::http(("127.0.0.1", port)).map_err(|why| format!("port {port}: {why}"))?;
    eprintln!("\n== Stringloft is open at http://127.0.0.1:{port}/ (Ctrl-C ends it)");
    let served = folder.to_owned();
    thread::spawn(move || {
        for request in server.incoming_requests() {
            // A browser that went away needs no answer.
            let _ = answer(request, &served);
        }
    });
    loop {
        thread::sleep(LOOK_EVERY);
        let now = newest();
        if now > seen {
            seen = now;
            match page::build(folder, how) {
                Ok(()) => eprintln!("built again; reload the page to see it"),
                Err(why) => eprintln!("builder: {why}"),
            }
        }
    }
}

/// When a source was last changed.
fn newest() -> SystemTime {
    fn below(path: &Path) -> io::Result<SystemTime> {
        let about = fs::metadata(path)?;
        let mut newest = about.modified()?;
        if about.is_dir() {
            for entry in fs::read_dir(path)?.flatten() {
                newest = newest.max(below(&entry.path()).unwrap_or(SystemTime::UNIX_EPOCH));
            }
        }
        Ok(newest)
    }
    let times = SOURCES.iter().filter_map(|source| below(Path::new(source)).ok());
    times.max().unwrap_or(SystemTime::UNIX_EPOCH)
}

/// Answers with a file of the folder, or says that there is none.
fn answer(request: Request, folder: &Path) -> io::Result<()> {
    let asked = request.url().split(['?', '#']).next().unwrap_or_default().trim_start_matches('/');
    let name = if asked.is_empty() { "index.html" } else { asked };
    // All files stand in one folder, so a name with a slash or a leading dot leads nowhere.
    let valid = !name.contains(['/', '\\']) && !name.starts_with('.');
    match fs::read(folder.join(name)).ok().filter(|_| valid) {
        Some(bytes) => {
            let kind = format!("Content-Type: {}", media_type(name));
            let header: Header = kind.parse().map_err(|()| io::Error::other("a header"))?;
            // Each build is asked for again.
            let fresh: Header =
                "Cache-Control: no-cache".parse().map_err(|()| io::Error::other("a header"))?;
            request.respond(Response::from_data(bytes).with_header(header).with_header(fresh))
        }
        None => request.respond(Response::from_string("not found").with_status_code(404)),
    }
}

fn media_type(name: &str) -> &'static str {
    match name.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript",
        "css" => "text/css",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    }
}
