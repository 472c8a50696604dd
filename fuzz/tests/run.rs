//! A fixed run of changed and made-up inputs through every door.
//!
//! `FUZZED=100000000 scripts/test fuzzed` draws as many as it says. What a door cannot bear is kept in
//! `target/fuzzed-inputs/`, and belongs into `fuzz/corpus/` once it is mended.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test that cannot go on has failed, and tells its counts"
)]

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};
use std::{env, fs, panic, thread};

use fastrand::Rng;
use stringloft::design::link;
use stringloft::design::persist;
use stringloft::design::presets::SAMPLES;

use stringloft_fuzz::DOORS;

/// How many inputs, unless `FUZZED` says.
const INPUTS: usize = 1_000_000;
/// Of so many inputs, how many go to each of [`DOORS`]: cells are small and many, whole harps large and few.
const SHARES: [usize; 7] = [860, 40, 30, 15, 25, 25, 5];
/// What no input may take: a page that stands still is as bad as one that fell.
const LONGEST: Duration = Duration::from_secs(5);
/// The longest input that is made, in bytes.
const MOST_BYTES: usize = 40_000;

/// Words and signs that mean something to one door or another.
const TOKENS: [&str; 60] = [
    "nylon",
    "gut",
    "steel",
    "silk",
    "bronze",
    "weighed",
    "core",
    "gauge",
    "breaks",
    "bare",
    "board",
    "pin",
    "at",
    "x",
    "+",
    "-",
    "−",
    ".",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\"",
    "'",
    "″",
    "′",
    "[",
    "]",
    "{",
    "}",
    ":",
    "0",
    "1",
    "9",
    "1e308",
    "-0",
    "NaN",
    "inf",
    "1/8",
    "⅛",
    "½",
    "mm",
    "in",
    "thou",
    "ft",
    "Hz",
    "g/m",
    "kgf",
    "lbf",
    "C4",
    "E♭3",
    "F##9",
    "\u{0}",
    "\u{feff}",
    "\u{202e}",
    "99999999999999999999",
    "null",
    "true",
    "#",
];

fn project(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join(path)
}

fn files(folder: &str) -> Vec<Vec<u8>> {
    let mut names: Vec<PathBuf> = fs::read_dir(project(folder))
        .map(|entries| entries.map(|entry| entry.unwrap().path()).collect())
        .unwrap_or_default();
    names.sort();
    names.iter().filter(|name| name.is_file()).map(|name| fs::read(name).unwrap()).collect()
}

/// What each door begins with: good inputs, and what once went wrong.
fn begun_with(door: &str) -> Vec<Vec<u8>> {
    let designs = || SAMPLES.iter().map(|sample| sample.design());
    let mut all = files(&format!("fuzz/corpus/{door}"));
    match door {
        "cell" => all.extend(TOKENS.iter().map(|token| token.as_bytes().to_vec())),
        "measured" => all.extend(files("tests/tables")),
        "stock" => {
            let list = stringloft::design::stock::starting_list();
            all.push(stringloft::design::stock::write(&list).into_bytes());
            all.push(stringloft::design::stock::table::export(&list.items[..40]).into_bytes());
        }
        "table" => {
            all.extend(files("tests/tables"));
            all.extend(designs().map(|design| {
                let analysis = stringloft::engine::analysis::analyse(
                    &stringloft::design::resolve::resolve(&design).harp,
                );
                stringloft::design::table::write(&design, &analysis).into_bytes()
            }));
        }
        "design" => {
            all.extend(files("tests/designs"));
            all.extend(designs().map(|design| persist::write(&design).into_bytes()));
        }
        "link" => all.extend(designs().map(|design| link::write(&design).unwrap().into_bytes())),
        _ => {
            all.extend(files("tests/tables"));
            all.extend(files("tests/designs"));
            all.extend(designs().map(|design| persist::write(&design).into_bytes()));
        }
    }
    all
}

/// One input: a good one with some changes, two that are joined, or one out of nothing.
fn made(rng: &mut Rng, begun: &[Vec<u8>], out: &mut Vec<u8>) {
    out.clear();
    let one =
        |rng: &mut Rng| begun.get(rng.usize(..begun.len().max(1))).cloned().unwrap_or_default();
    match rng.u8(..20) {
        0 => out.extend((0..rng.usize(..40)).map(|_| rng.u8(..))),
        1 | 2 => {
            for _ in 0..rng.usize(1..12) {
                out.extend_from_slice(TOKENS[rng.usize(..TOKENS.len())].as_bytes());
                if rng.bool() {
                    out.push(b' ');
                }
            }
        }
        3 => {
            let (first, second) = (one(rng), one(rng));
            out.extend_from_slice(&first[..rng.usize(..=first.len())]);
            out.extend_from_slice(&second[rng.usize(..=second.len())..]);
        }
        _ => out.extend(one(rng)),
    }
    for _ in 0..1 << rng.u32(..4) {
        change(rng, out);
    }
    out.truncate(MOST_BYTES);
}

fn change(rng: &mut Rng, out: &mut Vec<u8>) {
    let at = rng.usize(..=out.len());
    let end = (at + rng.usize(..24)).min(out.len());
    match rng.u8(..8) {
        0 if at < out.len() => out[at] ^= 1 << rng.u8(..8),
        1 if at < out.len() => out[at] = rng.u8(32..127),
        2 => drop(out.drain(at..end)),
        3 => {
            let piece = out[at..end].to_vec();
            let to = rng.usize(..=out.len());
            drop(out.splice(to..to, piece));
        }
        4 => {
            // A number becomes another one.
            let digits = |byte: &u8| byte.is_ascii_digit() || *byte == b'.';
            if let Some(start) = out[at..].iter().position(u8::is_ascii_digit) {
                let start = at + start;
                let length = out[start..].iter().take_while(|byte| digits(byte)).count();
                let other = match rng.u8(..6) {
                    0 => "0".to_owned(),
                    1 => format!("{}", f64::from_bits(rng.u64(..))),
                    2 => format!("{:e}", f64::from_bits(rng.u64(..))),
                    3 => format!("{}", rng.u64(..)),
                    4 => format!("{:.3}", 1000.0 * rng.f64()),
                    _ => format!("-{}", rng.u8(..)),
                };
                drop(out.splice(start..start + length, other.into_bytes()));
            }
        }
        5 => {
            let lines = out.split(|byte| *byte == b'\n').count();
            let line = out
                .split(|byte| *byte == b'\n')
                .nth(rng.usize(..lines))
                .unwrap_or_default()
                .to_vec();
            let times = rng.usize(1..4);
            for _ in 0..times {
                out.push(b'\n');
                out.extend_from_slice(&line);
            }
        }
        _ => drop(out.splice(at..at, TOKENS[rng.usize(..TOKENS.len())].bytes())),
    }
}

/// What one thread saw.
#[derive(Default)]
struct Seen {
    inputs: usize,
    longest: Duration,
    broken: Vec<String>,
}

fn run(seed: u64, inputs: usize) -> Seen {
    let mut rng = Rng::with_seed(seed);
    let begun: Vec<Vec<Vec<u8>>> = DOORS.iter().map(|(name, _)| begun_with(name)).collect();
    let mut seen = Seen::default();
    let mut bytes = Vec::new();
    for _ in 0..inputs {
        let mut drawn = rng.usize(..SHARES.iter().sum::<usize>());
        let place = SHARES.iter().position(|share| {
            let here = drawn < *share;
            drawn = drawn.wrapping_sub(*share);
            here
        });
        let place = place.unwrap();
        made(&mut rng, &begun[place], &mut bytes);
        let (name, door) = DOORS[place];
        let text = String::from_utf8_lossy(&bytes);
        let started = Instant::now();
        let outcome = panic::catch_unwind(|| door(&text));
        let took = started.elapsed();
        seen.inputs += 1;
        seen.longest = seen.longest.max(took);
        if outcome.is_err() || took > LONGEST {
            seen.broken.push(kept(name, &bytes, took));
        }
    }
    seen
}

/// Keeps an input that a door cannot bear.
fn kept(name: &str, bytes: &[u8], took: Duration) -> String {
    let folder = project("target/fuzzed-inputs");
    fs::create_dir_all(&folder).unwrap();
    let file = folder.join(format!("{name}-{:08x}", crc32fast::hash(bytes)));
    fs::write(&file, bytes).unwrap();
    format!("{} ({took:?})", file.display())
}

#[test]
fn what_once_went_wrong_goes_well() {
    for (name, door) in DOORS {
        for bytes in files(&format!("fuzz/corpus/{name}")) {
            door(&String::from_utf8_lossy(&bytes));
        }
    }
}

#[test]
#[ignore = "takes minutes: scripts/test fuzzed"]
fn no_input_hurts() {
    let inputs = env::var("FUZZED").ok().and_then(|text| text.parse().ok()).unwrap_or(INPUTS);
    let threads = thread::available_parallelism().map_or(1, Into::into);
    let started = Instant::now();
    let seen: Vec<Seen> = thread::scope(|scope| {
        let of =
            |thread: usize| scope.spawn(move || run(thread as u64 + 1, inputs.div_ceil(threads)));
        let all: Vec<_> = (0..threads).map(of).collect();
        all.into_iter().map(|thread| thread.join().unwrap()).collect()
    });
    let all: usize = seen.iter().map(|seen| seen.inputs).sum();
    let longest = seen.iter().map(|seen| seen.longest).max().unwrap_or_default();
    println!("{all} inputs in {:?}, the longest took {longest:?}", started.elapsed());
    let broken: Vec<&String> = seen.iter().flat_map(|seen| &seen.broken).collect();
    assert!(broken.is_empty(), "{broken:#?}");
}
