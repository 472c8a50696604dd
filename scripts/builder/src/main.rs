//! Builds the page: compiles it for the browser, splits the module into the parts that are fetched when they are
//! first opened, gives every file a name that holds the sum of its bytes, and writes the list of files that the
//! service worker keeps. `serve` also serves the page on this machine and builds it again when a source changes.
//!
//! ```text
//! builder build FOLDER [--debug | --names]
//! builder serve FOLDER PORT [--debug]
//! ```
//!
//! With `--debug` the page is quick to build: one module, not optimised, no service worker. With `--names` it is the page
//! as it goes out, but its modules keep the names of their functions, for whoever looks where the time goes.

mod licences;
mod markup;
mod module;
mod order;
mod page;
mod serve;

use std::env;
use std::path::Path;
use std::process::ExitCode;

/// Whatever can go wrong: a sentence for whoever called.
type Failure = Box<dyn std::error::Error + Send + Sync>;

/// How the page is built.
#[derive(Clone, Copy)]
struct How {
    /// Quick to build.
    debug: bool,
    /// With the names of its functions.
    named: bool,
}

fn main() -> ExitCode {
    let mut words: Vec<String> = env::args().skip(1).collect();
    let mut is_asked = |flag: &str| {
        let before = words.len();
        words.retain(|word| word != flag);
        words.len() < before
    };
    let how = How { debug: is_asked("--debug"), named: is_asked("--names") };
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["build", folder] => page::build(Path::new(folder), how),
        ["serve", folder, port] => serve::serve(Path::new(folder), port, how),
        _ => Err(
            "usage: builder build FOLDER [--debug | --names] | builder serve FOLDER PORT [--debug]"
                .into(),
        ),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("builder: {why}");
            ExitCode::FAILURE
        }
    }
}
