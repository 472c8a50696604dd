//! How long the work behind the page takes on this machine. Measurements, not checks: they fail only when the work does.
//!
//! `cargo bench` runs all, `cargo bench -- choose` only the lines whose name has that word in it. The build is the
//! one of the page (small rather than quick), so that the ratios hold there too. `--once NAME` does one piece of work
//! once, for `scripts/instructions` to count.

mod choose;
mod design;
mod harps;
mod measure;

use measure::Bench;

fn main() {
    let mut bench = Bench::asked();
    design::figures(&mut bench);
    design::files(&mut bench);
    choose::sets(&mut bench);
    choose::lengths(&mut bench);
}
