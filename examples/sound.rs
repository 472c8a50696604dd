//! Writes what a string of a design would sound like as a WAV file, for scripts and checks:
//! `cargo run --release --example sound -- DESIGN STRING FILE.wav`.

use std::fs::{self, File};
use std::io::{Read, Write, stderr, stdout};
use std::process::ExitCode;

use stringloft::design::presets::SAMPLES;
use stringloft::design::sound::{MOST_S, RATE_HZ, Wish, file};
use stringloft::design::table::MOST_BYTES;
use stringloft::engine::sound::Ask;
use stringloft::engine::sound::pattern::Pattern;
use stringloft::engine::units::{Length, Mobility};

const HELP: &str = "\
Writes what a string would sound like as a WAV file: no soundbox, no room, no hand; to compare strings by, not a
recording. What the soundboard takes is a stand-in.

usage: sound [OPTION...] DESIGN STRING FILE.wav

DESIGN      a design that Stringloft saved (JSON), a table of strings, or the name of a sample:
            wire-22, travel-26, floor-36, pedal-47
STRING      the number of a string, 1 being the highest, or a note such as A4
FILE.wav    what is written, one channel of 16 bits; what stands there is replaced
--scale     plays the eight strings up from STRING
--chord     plays root, third, fifth and octave over STRING
--glide     plays every string, from the lowest up
--raised N  semitones by which lever or discs raise the strings
--at P      plucks at P % of the length from the soundboard
--aside MM  pulls the strings MM mm aside, at most 2 % of their length
--finger MM the width of the fingertip
--board Y   how readily the soundboard gives at the string, in mm/s for each newton
--one-plane leaves out the second plane in which a string swings, which is a stand-in
--seconds S how long a string is heard at most
--rate HZ   samples in each second, 8000 to 192000
--help      prints this
";

/// What the exit code says.
const UNREADABLE: u8 = 2;

/// What was asked for.
#[derive(Default)]
struct Asked {
    names: Vec<String>,
    pattern: Pattern,
    raised: u32,
    one_plane: bool,
    at_percent: Option<f64>,
    aside_mm: Option<f64>,
    finger_mm: Option<f64>,
    board: Option<f64>,
    seconds: Option<f64>,
    rate_hz: Option<u32>,
}

fn main() -> ExitCode {
    let words: Vec<String> = match std::env::args_os().skip(1).map(|a| a.into_string()).collect() {
        Ok(words) => words,
        Err(_) => return fail(&["names and options must be text in UTF-8".to_owned()]),
    };
    if words.iter().any(|word| word == "--help" || word == "-h") {
        return match stdout().write_all(HELP.as_bytes()) {
            Ok(()) => ExitCode::SUCCESS,
            Err(_) => ExitCode::FAILURE,
        };
    }
    match asked(&words).and_then(|asked| play(&asked)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(lines) => fail(&lines),
    }
}

/// What the words on the command line ask for.
fn asked(words: &[String]) -> Result<Asked, Vec<String>> {
    let mut asked = Asked::default();
    let mut words = words.iter();
    while let Some(word) = words.next() {
        let mut value = |least: f64, most: f64| number(word, words.next(), least, most);
        match word.as_str() {
            "--scale" => asked.pattern = Pattern::Scale,
            "--chord" => asked.pattern = Pattern::Chord,
            "--glide" => asked.pattern = Pattern::Glide,
            "--one-plane" => asked.one_plane = true,
            "--raised" => asked.raised = whole(value(0.0, 2.0)?),
            "--at" => asked.at_percent = Some(value(1.0, 99.0)?),
            "--aside" => asked.aside_mm = Some(value(0.01, 50.0)?),
            "--finger" => asked.finger_mm = Some(value(0.0, 100.0)?),
            "--board" => asked.board = Some(value(0.0, 1000.0)?),
            "--seconds" => asked.seconds = Some(value(0.05, 60.0)?),
            "--rate" => asked.rate_hz = Some(whole(value(8_000.0, 192_000.0)?)),
            option if option.starts_with("--") => {
                return Err(vec![format!(
                    "there is no option {option} (--help tells the options)"
                )]);
            }
            name => asked.names.push(name.to_owned()),
        }
    }
    Ok(asked)
}

/// A number within limits that stands after an option.
fn number(option: &str, value: Option<&String>, least: f64, most: f64) -> Result<f64, Vec<String>> {
    let got = value.map_or("nothing", String::as_str);
    let number = got.parse::<f64>().ok().filter(|number| (least..=most).contains(number));
    number.ok_or_else(|| vec![format!("{option} takes a number from {least} to {most}, got {got}")])
}

/// A number that was held within limits, in whole steps.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the limits of the option leave no other"
)]
fn whole(number: f64) -> u32 {
    number.round() as u32
}

/// Writes the file.
fn play(asked: &Asked) -> Result<(), Vec<String>> {
    let [design, string, path] = &asked.names[..] else {
        let got = asked.names.len();
        return Err(vec![format!(
            "a design, a string and a file must be given, got {got} names (--help tells how)"
        )]);
    };
    let text = text_of(design).map_err(|why| vec![format!("{design}: {why}")])?;
    let wish = Wish {
        string: string.clone(),
        pattern: asked.pattern,
        rate_hz: asked.rate_hz.unwrap_or(RATE_HZ),
        most_s: asked.seconds.unwrap_or(MOST_S),
    };
    let change = |ask: &mut Ask| {
        ask.raised = asked.raised;
        ask.two_planes = !asked.one_plane;
        if let Some(percent) = asked.at_percent {
            ask.pluck_ratio = percent / 100.0;
        }
        if let Some(mm) = asked.aside_mm {
            ask.pluck = Length::from_mm(mm);
        }
        if let Some(mm) = asked.finger_mm {
            ask.finger = Length::from_mm(mm);
        }
        if let Some(board) = asked.board {
            ask.board = Mobility::from_mm_per_s_per_n(board);
        }
    };
    let at_file = |line: &String| format!("{design}: {line}");
    let sound = file(&text, &wish, change)
        .map_err(|lines| lines.iter().map(at_file).collect::<Vec<_>>())?;
    say(&sound.told.iter().map(at_file).collect::<Vec<_>>());
    fs::write(path, sound.bytes).map_err(|why| vec![format!("{path}: cannot be written: {why}")])
}

/// The text of a sample or of a file, read no further than a table may be long.
fn text_of(design: &str) -> Result<String, String> {
    if let Some(sample) = SAMPLES.iter().find(|sample| sample.key == design) {
        return Ok(sample.json.to_owned());
    }
    let file = File::open(design).map_err(|why| format!("the file cannot be opened: {why}"))?;
    let mut bytes = Vec::new();
    file.take(MOST_BYTES as u64 + 1)
        .read_to_end(&mut bytes)
        .map_err(|why| format!("the file cannot be read: {why}"))?;
    String::from_utf8(bytes).map_err(|_| "the file must be text in UTF-8".to_owned())
}

/// Tells the person at the terminal; what cannot be told is no failure.
fn say(lines: &[String]) {
    for line in lines {
        let _ = writeln!(stderr(), "{line}");
    }
}

fn fail(lines: &[String]) -> ExitCode {
    say(lines);
    ExitCode::from(UNREADABLE)
}
