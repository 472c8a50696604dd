//! A fixed run of changed and made-up inputs through every door.
//!
//! `FUZZED=100000000 scripts/test fuzzed` draws as many as it says. `FUZZED_SEED` draws others, `FUZZED_MINUTES` ends the
//! run by then, `FUZZED_THREADS` says how many cores it may take, and `FUZZED_DOOR` sends all through one door. What a
//! door cannot bear is kept in `target/fuzzed-inputs/`, and belongs into `fuzz/corpus/` once it is mended.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test that cannot go on has failed, and tells its counts"
)]

#[path = "run/begun.rs"]
mod begun;
#[path = "run/made.rs"]
mod made;

use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::time::{Duration, Instant};
use std::{env, fs, panic, process, thread};

use begun::begun_with;
use fastrand::Rng;
use made::made;
use stringloft_fuzz::DOORS;

/// How many inputs, unless `FUZZED` says.
const INPUTS: u64 = 1_000_000;
/// Of 10,000 inputs, how many go to each of [`DOORS`]: cells are small and many, whole harps large and few. The second
/// line is for the inputs after the first million: a whole harp takes as long as a thousand cells.
const SHARES: [[usize; DOORS.len()]; 2] =
    [[7840, 1000, 350, 200, 100, 200, 160, 120, 30], [9100, 450, 150, 80, 50, 70, 57, 40, 3]];
/// What no input may take: a page that stands still is as bad as one that fell.
const LONGEST: Duration = Duration::from_secs(5);
/// How often an input that took longer is tried again before it counts.
const MORE_TRIES: u32 = 2;
/// After so long an input counts as one that never ends.
const ENDLESS: Duration = Duration::from_secs(120);
/// How often a long run says how far it has come.
const TOLD_EVERY: Duration = Duration::from_secs(60);

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

/// What came through one door.
#[derive(Clone, Copy, Default)]
struct Through {
    inputs: u64,
    bytes: u64,
    /// Spent behind the door, and on making the inputs.
    took: Duration,
    making: Duration,
    longest: Duration,
}

impl Through {
    fn and(self, other: Self) -> Self {
        Self {
            inputs: self.inputs + other.inputs,
            bytes: self.bytes + other.bytes,
            took: self.took + other.took,
            making: self.making + other.making,
            longest: self.longest.max(other.longest),
        }
    }
}

/// What one thread has seen so far.
#[derive(Default)]
struct Seen {
    doors: [Through; DOORS.len()],
    broken: Vec<String>,
    /// The door that is at work, from what its input was drawn, and since when.
    at: Option<(usize, u64, Instant)>,
}

/// What is wanted of a run.
struct Wanted {
    inputs: u64,
    seed: u64,
    threads: u64,
    until: Option<Instant>,
    shares: [[usize; DOORS.len()]; 2],
}

/// The shares, or all for the door that is asked for.
fn shares() -> [[usize; DOORS.len()]; 2] {
    let Ok(name) = env::var("FUZZED_DOOR") else { return SHARES };
    let shares = DOORS.map(|(door, _)| usize::from(door == name));
    assert!(shares.contains(&1), "FUZZED_DOOR must be one of the doors, got {name}");
    [shares; 2]
}

fn run(wanted: &Wanted, thread: u64, inputs: u64, seen: &Mutex<Seen>) {
    let mut rng = Rng::with_seed(wanted.seed.wrapping_add(thread));
    let begun: Vec<_> = DOORS.iter().map(|(name, _)| begun_with(name)).collect();
    let mut bytes = Vec::new();
    for turn in 0..inputs {
        let shares = &wanted.shares[usize::from(turn >= INPUTS / wanted.threads)];
        let most: usize = shares.iter().sum();
        let mut drawn = rng.usize(..most);
        let mut place = 0;
        while drawn >= shares[place] {
            drawn -= shares[place];
            place += 1;
        }
        let from = rng.get_seed();
        let started = Instant::now();
        made(&mut rng, &begun[place], &mut bytes);
        let text = String::from_utf8_lossy(&bytes);
        let asked = Instant::now();
        seen.lock().unwrap().at = Some((place, from, asked));
        let (name, door) = DOORS[place];
        let outcome = panic::catch_unwind(|| door(&text));
        let mut took = asked.elapsed();
        // A machine that is busy elsewhere makes anything slow once.
        for _ in 0..MORE_TRIES {
            if outcome.is_ok() && took > LONGEST {
                let again = Instant::now();
                door(&text);
                took = took.min(again.elapsed());
            }
        }
        let mut seen = seen.lock().unwrap();
        seen.at = None;
        let bytes_of_it = bytes.len() as u64;
        let one =
            Through { inputs: 1, bytes: bytes_of_it, took, making: asked - started, longest: took };
        seen.doors[place] = seen.doors[place].and(one);
        if outcome.is_err() || took > LONGEST {
            let told = kept(name, &bytes, took);
            println!("BROKEN: {told}");
            seen.broken.push(told);
        }
        if wanted.until.is_some_and(|until| asked > until) {
            break;
        }
    }
}

/// Keeps an input that a door cannot bear.
fn kept(name: &str, bytes: &[u8], took: Duration) -> String {
    let folder = project("target/fuzzed-inputs");
    fs::create_dir_all(&folder).unwrap();
    let file = folder.join(format!("{name}-{:08x}", crc32fast::hash(bytes)));
    fs::write(&file, bytes).unwrap();
    format!("{} ({took:?})", file.display())
}

/// Ends all, with the input kept, where a door has been at work for so long that it will not come back.
fn look_for_endless(seen: &Mutex<Seen>) {
    let at = seen.lock().unwrap().at;
    let Some((place, from, since)) = at.filter(|(.., since)| since.elapsed() > ENDLESS) else {
        return;
    };
    let (name, _) = DOORS[place];
    let mut bytes = Vec::new();
    made(&mut Rng::with_seed(from), &begun_with(name), &mut bytes);
    println!("ENDLESS: {}", kept(name, &bytes, since.elapsed()));
    process::exit(1);
}

/// The sums of all threads, a line for each door.
fn told(all: &[Mutex<Seen>], since: Instant) -> u64 {
    let mut sum = Through::default();
    println!("door           inputs  bytes each    µs each  making µs   longest      share");
    let seconds: f64 = (0..DOORS.len()).map(|place| of_door(all, place).took.as_secs_f64()).sum();
    for (place, (name, _)) in DOORS.iter().enumerate() {
        let door = of_door(all, place);
        line(name, door, seconds);
        sum = sum.and(door);
    }
    line("all", sum, seconds);
    println!("{} inputs in {:.0?}\n", sum.inputs, since.elapsed());
    sum.inputs
}

fn of_door(all: &[Mutex<Seen>], place: usize) -> Through {
    let of = |seen: &Mutex<Seen>| seen.lock().unwrap().doors[place];
    all.iter().map(of).fold(Through::default(), Through::and)
}

#[allow(clippy::cast_precision_loss, reason = "counts for a table")]
fn line(name: &str, door: Through, seconds: f64) {
    let each = |all: f64| all / door.inputs.max(1) as f64;
    println!(
        "{name:<10} {:>10} {:>11.0} {:>10.2} {:>10.2} {:>9.0?} {:>9.1}%",
        door.inputs,
        each(door.bytes as f64),
        each(1e6 * door.took.as_secs_f64()),
        each(1e6 * door.making.as_secs_f64()),
        door.longest,
        100.0 * door.took.as_secs_f64() / seconds,
    );
}

fn number(name: &str) -> Option<u64> {
    let text = env::var(name).ok()?;
    Some(text.parse().unwrap_or_else(|_| panic!("{name} must be a whole number, got {text}")))
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
    let started = Instant::now();
    let minutes = number("FUZZED_MINUTES");
    let cores = || thread::available_parallelism().map_or(1, |cores| cores.get() as u64);
    let threads = number("FUZZED_THREADS").unwrap_or_else(cores).max(1);
    let wanted = Wanted {
        inputs: number("FUZZED").unwrap_or(INPUTS),
        seed: number("FUZZED_SEED").unwrap_or(1),
        threads,
        until: minutes.map(|minutes| started + Duration::from_secs(60 * minutes)),
        shares: shares(),
    };
    let all: Vec<Mutex<Seen>> = (0..threads).map(|_| Mutex::default()).collect();
    thread::scope(|scope| {
        let of = |(thread, seen)| {
            let wanted = &wanted;
            scope.spawn(move || run(wanted, thread, wanted.inputs.div_ceil(threads), seen))
        };
        let running: Vec<_> = (0..).zip(&all).map(of).collect();
        let mut last = Instant::now();
        while running.iter().any(|thread| !thread.is_finished()) {
            thread::sleep(Duration::from_millis(50));
            all.iter().for_each(look_for_endless);
            if last.elapsed() > TOLD_EVERY {
                last = Instant::now();
                told(&all, started);
            }
        }
    });
    let inputs = told(&all, started);
    let broken: Vec<String> =
        all.iter().flat_map(|seen| seen.lock().unwrap().broken.clone()).collect();
    assert!(broken.is_empty(), "{broken:#?}");
    assert!(minutes.is_some() || inputs >= wanted.inputs, "only {inputs} inputs");
}
