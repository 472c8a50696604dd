//! Runs a piece of work often enough to say what it usually takes, and what it takes at worst.

use std::hint::black_box;
use std::time::{Duration, Instant};

/// How long each piece of work is repeated for, and how often at least.
const TIME: Duration = Duration::from_millis(600);
const LEAST_RUNS: usize = 11;
const MOST_RUNS: usize = 2_000;

/// The measurements of one run of the program.
pub struct Bench {
    /// Only what has one of these words in its name is measured.
    words: Vec<String>,
    /// Whether what is asked for, by its whole name, is done once, to be counted by another program.
    once: bool,
    /// What was done so far in that way.
    done: usize,
    /// The median of the first measurement, to which the others are compared.
    first_ms: Option<f64>,
}

impl Bench {
    /// What the command line asked for.
    pub fn asked() -> Self {
        let once = std::env::args().any(|word| word == "--once");
        // Cargo itself adds `--bench`.
        let words = std::env::args().skip(1).filter(|word| !word.starts_with("--")).collect();
        if !once {
            println(&format!(
                "{:<44} {:>9} {:>9} {:>9} {:>9}",
                "milliseconds", "median", "95 of 100", "worst", "ratio"
            ));
        }
        Self { words, once, done: 0, first_ms: None }
    }

    /// Whether a measurement is asked for, so that what it needs is not prepared in vain.
    pub fn wants(&self, name: &str) -> bool {
        self.words.is_empty() || self.words.iter().any(|word| name.contains(word.as_str()))
    }

    /// Measures a piece of work and prints a line about it.
    pub fn measure<T>(&mut self, name: &str, mut work: impl FnMut() -> T) {
        if !self.wants(name) {
            return;
        }
        if self.once {
            if self.words.iter().any(|word| word == name) {
                counted_piece(&mut work);
                self.done += 1;
            }
            return;
        }
        black_box(work()); // the first run finds its way through memory
        let begun = Instant::now();
        let mut runs = Vec::new();
        while runs.len() < LEAST_RUNS || (begun.elapsed() < TIME && runs.len() < MOST_RUNS) {
            let start = Instant::now();
            black_box(work());
            runs.push(start.elapsed().as_secs_f64() * 1e3);
        }
        runs.sort_by(f64::total_cmp);
        let at = |percent: usize| runs[(runs.len() * percent / 100).min(runs.len() - 1)];
        let first = *self.first_ms.get_or_insert(at(50));
        println(&format!(
            "{name:<44} {:>9.3} {:>9.3} {:>9.3} {:>9.2}",
            at(50),
            at(95),
            at(100),
            at(50) / first
        ));
    }
}

impl Drop for Bench {
    /// A name that is no piece of work would be counted as one that takes nothing.
    fn drop(&mut self) {
        assert!(!self.once || self.done == 1, "one piece of work has that name, not {}", self.done);
    }
}

/// What `scripts/instructions` counts: nothing before it and nothing after it.
#[inline(never)]
fn counted_piece<T>(work: &mut impl FnMut() -> T) {
    black_box(work());
}

#[expect(clippy::print_stdout, reason = "it is what the program is for")]
fn println(line: &str) {
    println!("{line}");
}
