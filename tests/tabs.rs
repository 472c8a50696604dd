//! Two or three tabs on one browser's storage, in drawn interleavings of what users do, what waits, what fails and what
//! is killed: nothing that was typed is lost, and no tab says that it is kept before it is.
//!
//! The scripts are those of the page (`tests/tabs/tabs.mjs` runs them in node, over a storage that does one step at a
//! time), and so are the decisions (`app::tab`) and the undo steps (`design::history`). What `store/keeping.rs` does with
//! them is played here. `DRAWN=5000 cargo test --test tabs` draws so many.

#![cfg(not(target_arch = "wasm32"))]

#[path = "tabs/acts.rs"]
mod acts;
#[path = "tabs/browser.rs"]
mod browser;
#[path = "tabs/page.rs"]
mod page;
#[path = "tabs/played.rs"]
mod played;
#[path = "tabs/settled.rs"]
mod settled;

use std::cell::{Cell, RefCell};
use std::env;

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestError, TestRng, TestRunner};

use acts::{Act, Seen};
use browser::Browser;
use played::Played;

/// How many runs are drawn, unless `DRAWN` says.
const RUNS: u32 = 300;

fn act() -> impl Strategy<Value = Act> {
    let tab = 0..3_usize;
    prop_oneof![
        8 => tab.clone().prop_map(Act::Edit),
        6 => tab.clone().prop_map(Act::Frame),
        24 => (0..12_usize).prop_map(Act::Step),
        3 => (0..12_usize).prop_map(Act::Full),
        3 => Just(Act::Pause),
        8 => tab.clone().prop_map(Act::Load),
        1 => tab.clone().prop_map(Act::Copy),
        2 => tab.clone().prop_map(Act::Undo),
        1 => tab.clone().prop_map(Act::Redo),
        1 => tab.clone().prop_map(Act::Hide),
        1 => (tab.clone(), any::<bool>()).prop_map(|(tab, whole)| Act::Reload(tab, whole)),
        1 => (tab.clone(), any::<bool>()).prop_map(|(tab, whole)| Act::Kill(tab, whole)),
        3 => (tab.clone(), 0..4_usize).prop_map(|(tab, which)| Act::Bin(tab, which)),
        1 => (tab.clone(), 0..4_usize).prop_map(|(tab, which)| Act::PutBack(tab, which)),
        2 => (tab.clone(), 0..4_usize).prop_map(|(tab, which)| Act::Open(tab, which)),
        1 => tab.prop_map(Act::Begin),
    ]
}

#[test]
fn no_tab_loses_anything_or_says_that_it_is_kept_before_it_is() {
    let Some(browser) = Browser::start() else {
        eprintln!("NOT TESTED: there is no node here, which runs the scripts of the page");
        return;
    };
    let browser = RefCell::new(browser);
    let runs = env::var("DRAWN").ok().and_then(|count| count.parse().ok()).unwrap_or(RUNS);
    let config = Config { cases: runs, failure_persistence: None, ..Config::default() };
    let rng = TestRng::deterministic_rng(RngAlgorithm::ChaCha);
    let mut runner = TestRunner::new_with_rng(config, rng);
    let seen = Cell::new(Seen::default());
    let drawn = (2..4_usize, any::<u32>(), vec(act(), 10..90));
    let outcome = runner.run(&drawn, |(tabs, seed, acts)| {
        let mut browser = browser.borrow_mut();
        let mut played = Played::begin(&mut browser, tabs, seed);
        // Most runs begin with one design in all tabs, some amid the start of the pages.
        if seed % 4 > 0 {
            played.share().map_err(TestCaseError::fail)?;
        }
        for act in acts {
            played.act(act).map_err(TestCaseError::fail)?;
        }
        played.settle().map_err(TestCaseError::fail)?;
        seen.set(seen.get().and(played.seen));
        Ok(())
    });
    if let Err(why) = outcome {
        let TestError::Fail(reason, input) = why else { panic!("{why}") };
        panic!("{reason}\nfor {input:?}");
    }
    let seen = seen.get();
    eprintln!("{runs} runs: {seen:?}");
    let few = seen.least();
    assert!(few * 10 >= runs as usize, "too tame: {seen:?}");
}
