//! Hears the strings of a harp in a recording, for scripts and checks:
//! `cargo run --release --example listen -- DESIGN FILE.wav`.

use std::ffi::OsStr;
use std::fs::File;
use std::io::{Read, Write, stderr, stdout};
use std::process::ExitCode;

use stringloft::design::listening::{csv, wav};
use stringloft::design::table::MOST_BYTES;

const HELP: &str = "\
Hears which strings of a harp sound in a recording, and how far each is off, as CSV.

usage: listen [--likely] DESIGN FILE.wav

DESIGN    a design that Stringloft saved (JSON), or a table of measurements, as the example report takes it
FILE.wav  a recording as WAV: 8 to 32 bits or floating point, one channel or more
--likely  takes numbers of a table without a unit for what they look like
--help    prints this

One line of the kind reading stands for every 50 ms: time, string and note, hertz of the first partial by the stiff
string that fits best, cents above its target with its lever down, level, the first partial by itself, inharmonicity,
partials heard, how far off the fit may be, and the degrees to turn the pin, above 0 to tighten. It is empty where no
string is heard, and for 0.25 s after one was struck. One line of the kind note follows for each string that was
struck.
";

/// The longest recording, in bytes: an hour at 48,000 samples of 16 bits.
const MOST_SOUND_BYTES: u64 = 350_000_000;
/// What the exit code says.
const UNREADABLE: u8 = 2;

fn main() -> ExitCode {
    let mut likely = false;
    let mut files = Vec::new();
    for argument in std::env::args_os().skip(1) {
        match argument.to_str() {
            Some("--help" | "-h") => return print(HELP),
            Some("--likely") => likely = true,
            Some(option) if option.starts_with("--") => {
                return fail(&[format!("there is no option {option} (--help tells the options)")]);
            }
            _ => files.push(argument),
        }
    }
    let [design, sound] = &files[..] else {
        let got = files.len();
        return fail(&[format!(
            "a design and a recording must be given, got {got} files (--help tells how)"
        )]);
    };
    let at = |file: &OsStr, what: String| format!("{}: {what}", file.to_string_lossy());
    let text = match read(design, MOST_BYTES as u64) {
        Ok(bytes) => String::from_utf8(bytes),
        Err(error) => return fail(&[at(design, error)]),
    };
    let Ok(text) = text else {
        return fail(&[at(design, "the design must be text in UTF-8".to_owned())]);
    };
    let recording = match read(sound, MOST_SOUND_BYTES).and_then(|bytes| wav::read(&bytes)) {
        Ok(recording) => recording,
        Err(error) => return fail(&[at(sound, error)]),
    };
    match csv(&text, likely, &recording) {
        Ok(csv) => print(&csv),
        Err(errors) => fail(&errors.into_iter().map(|error| at(design, error)).collect::<Vec<_>>()),
    }
}

/// The bytes of a file, if there are not too many.
fn read(file: &OsStr, most: u64) -> Result<Vec<u8>, String> {
    let opened = File::open(file).map_err(|error| format!("the file cannot be opened: {error}"))?;
    let mut bytes = Vec::new();
    opened
        .take(most + 1)
        .read_to_end(&mut bytes)
        .map_err(|error| format!("the file cannot be read: {error}"))?;
    if bytes.len() as u64 > most {
        return Err(format!("the file must be no longer than {most} bytes"));
    }
    Ok(bytes)
}

fn print(text: &str) -> ExitCode {
    match stdout().write_all(text.as_bytes()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::FAILURE,
    }
}

/// Tells the person at the terminal.
fn fail(lines: &[String]) -> ExitCode {
    for line in lines {
        let _ = writeln!(stderr(), "{line}");
    }
    ExitCode::from(UNREADABLE)
}
