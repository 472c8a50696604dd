//! How long the analysis of a whole harp takes. A measurement, not a check: it asserts only that the work was
//! done, and with room to spare for one frame of the screen.
//!
//! Run it with `cargo test --release --test timing -- --ignored --nocapture`.

use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, analyse};
use stringloft::engine::choose::{
    Answer, Family, Item, Place, Rules, Search, Target, Task, Weights, choose,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::cut::Allowance;
use stringloft::engine::lengths::{Aim, Asked, Smoothing, Strength, propose};
use stringloft::engine::material::built_in;
use stringloft::engine::pitch::{Note, Tuning};
use stringloft::engine::tolerance::spreads_of_all;
use stringloft::engine::units::{Force, Length, Stiffness};

/// 47 strings from G7 down to C1 on a made-up curve: nylon, gut, and steel with a bronze wrap.
fn harp() -> Harp {
    let top: Note = "G7".parse().expect("a note");
    let strings = (0..47).map(|index| {
        let note = top.moved(-index, |_| 0).expect("the compass is within the octaves");
        let share = f64::from(index) / 46.0;
        let length = Length::from_mm(70.0 * (1500.0_f64 / 70.0).powf(share.powf(0.85)));
        HarpString {
            note: Some(note),
            frequency: Ok(Tuning::default().frequency(note)),
            length: Ok(length),
            make_up: Ok(make_up(index, share)),
            mechanism: Mechanism::DoubleDisc,
        }
    });
    let limits = Limits {
        working_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(10.0),
        stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
        partial_8_cents: 30.0,
        jump_percent: 25.0,
    };
    Harp { strings: strings.collect(), pluck_ratio: 0.4, conditions: Conditions::default(), limits }
}

fn make_up(index: i32, share: f64) -> MakeUp {
    let material = |key: &str| {
        Arc::new(built_in().into_iter().find(|m| m.key == key).expect("a built-in material"))
    };
    let diameter = |mm: f64| Length::from_mm(mm);
    match index {
        0..14 => MakeUp::plain(material("nylon"), diameter(0.5 + share)),
        14..35 => MakeUp::plain(material("gut"), diameter(0.5 + 2.5 * share)),
        _ => {
            let section = Section::Round { diameter: diameter(0.3) };
            let wrap = Layer { material: material("bronze"), section, packing_ratio: 1.0 };
            let bare = (diameter(15.0), diameter(5.0));
            MakeUp::wound(material("steel"), diameter(0.8), vec![wrap], bare)
        }
    }
    .expect("the strings of the measurement can be made")
}

#[test]
#[ignore = "a measurement; it needs an optimised build and a quiet machine"]
fn a_whole_harp_is_analysed_within_a_frame() {
    const RUNS: u32 = 2_000;
    let harp = harp();
    let mut runs: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            let analysis = black_box(analyse(black_box(&harp)));
            assert_eq!(analysis.without_tension, 0);
            start.elapsed().as_secs_f64() * 1e6
        })
        .collect();
    runs.sort_by(f64::total_cmp);
    let (median, worst) = (runs[runs.len() / 2], runs[runs.len() * 99 / 100]);
    eprintln!("47 strings: median {median:.1} µs, 99 of 100 within {worst:.1} µs");
    assert!(median < 16_000.0, "an analysis takes {median} µs, over a frame");
}

#[test]
#[ignore = "a measurement; it needs an optimised build and a quiet machine"]
fn the_spreads_of_a_whole_harp_are_worked_out_within_a_frame() {
    const RUNS: u32 = 500;
    let harp = harp();
    let median = |work: &dyn Fn() -> usize| {
        let mut runs: Vec<f64> = (0..RUNS)
            .map(|_| {
                let start = Instant::now();
                assert_eq!(black_box(work()), 47);
                start.elapsed().as_secs_f64() * 1e6
            })
            .collect();
        runs.sort_by(f64::total_cmp);
        runs[runs.len() / 2]
    };
    let once = median(&|| analyse(black_box(&harp)).strings.len());
    let all = median(&|| spreads_of_all(black_box(&harp)).len());
    eprintln!("spreads: median {all:.1} µs, {:.1} times an analysis", all / once);
    assert!(all < 16_000.0, "the spreads take {all} µs, over a frame");
}

#[test]
#[ignore = "a measurement; it needs an optimised build and a quiet machine"]
fn the_lengths_of_a_whole_harp_are_proposed_within_a_frame() {
    const RUNS: u32 = 500;
    let harp = harp();
    // A pull that rises towards the bass, and bounds that hold about every third string.
    let asked: Vec<Asked> = (harp.strings.iter().enumerate())
        .map(|(index, string)| {
            let pull = 60.0 + 4.0 * f64::from(u32::try_from(index).expect("few strings"));
            let length = string.length.expect("the harp has lengths").to_mm();
            let room = if index % 2 == 0 { 1.03 } else { 1.2 };
            Asked {
                aim: Some(Aim::Tension(Force::from_n(pull))),
                least: Some(Length::from_mm(length / room)),
                most: Some(Length::from_mm(length * room)),
                ..Asked::default()
            }
        })
        .collect();
    let smoothing = Smoothing::of(Strength::Well, 47);
    let mut held = 0;
    let mut runs: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            let proposal = black_box(propose(black_box(&harp), &asked, smoothing));
            let time = start.elapsed().as_secs_f64() * 1e6;
            let proposal = proposal.expect("the bounds leave room");
            assert!(proposal.off_best < 1e-9, "not the best: {}", proposal.off_best);
            held = proposal.held.iter().flatten().count();
            time
        })
        .collect();
    runs.sort_by(f64::total_cmp);
    let median = runs[runs.len() / 2];
    eprintln!("lengths: median {median:.1} µs, {held} of 47 strings at a bound");
    assert!(median < 16_000.0, "a proposal takes {median} µs, over a frame");
}

/// The same harp, and a stock of 400: nylon and gut in steps of 0.01 and 0.02 mm, steel with a bronze wrap.
fn task(rules: Rules) -> Task {
    let harp = harp();
    let wanted = analyse(&harp);
    let count = |number: usize| f64::from(u32::try_from(number).expect("a short list"));
    // A feel that falls evenly, from what the highest string has now.
    let top = wanted.strings[0].pluck_stiffness.expect("it has one").to_n_per_m();
    let strings = harp.strings.iter().enumerate().map(|(index, string)| Place {
        note: string.note,
        frequency: string.frequency,
        length: string.length,
        target: Some(Target::Stiffness(Stiffness::from_n_per_m(
            top.clamp(400.0, 900.0) * (-0.012 * count(index)).exp(),
        ))),
        weight: 1.0,
        kept: None,
    });
    let material = |key: &str| {
        Arc::new(built_in().into_iter().find(|m| m.key == key).expect("a built-in material"))
    };
    let (nylon, gut) = (material("nylon"), material("gut"));
    let (steel, bronze) = (material("steel"), material("bronze"));
    let mm = Length::from_mm;
    let stock = (0..400_usize).map(|number| {
        let (family, made) = match number {
            0..130 => (0, MakeUp::plain(nylon.clone(), mm(0.4 + 0.01 * count(number)))),
            130..260 => (1, MakeUp::plain(gut.clone(), mm(0.5 + 0.02 * count(number - 130)))),
            _ => {
                let (core, wrap) = ((number - 260) % 10, (number - 260) / 10);
                let section = Section::Round { diameter: mm(0.1 + 0.05 * count(wrap)) };
                let layer = Layer { material: bronze.clone(), section, packing_ratio: 1.0 };
                let core = mm(0.3 + 0.07 * count(core));
                (2, MakeUp::wound(steel.clone(), core, vec![layer], (mm(0.0), mm(0.0))))
            }
        };
        let make_up = made.expect("the strings of the measurement can be made");
        Item { make_up, family, price: None, in_stock: true, lowest: None, highest: None }
    });
    Task {
        strings: strings.collect(),
        stock: stock.collect(),
        families: vec![Family::default(); 3],
        rules,
        weights: Weights::default(),
        pluck_ratio: 0.4,
        allowance: Allowance::default(),
    }
}

#[test]
#[ignore = "a measurement; it needs an optimised build and a quiet machine"]
fn the_best_set_of_a_whole_harp_is_found_at_once() {
    let harp = harp();
    let median = |runs: usize, work: &dyn Fn()| {
        let mut runs: Vec<f64> = (0..runs)
            .map(|_| {
                let start = Instant::now();
                work();
                start.elapsed().as_secs_f64() * 1e3
            })
            .collect();
        runs.sort_by(f64::total_cmp);
        (runs[0], runs[runs.len() / 2])
    };
    let (least, once) = median(2_000, &|| {
        black_box(analyse(black_box(&harp)));
    });
    eprintln!("an analysis: median {once:.3} ms (least {least:.3})");
    let free = Rules {
        most_share_percent: None,
        unknown_share: true,
        in_order: false,
        no_shrinking: false,
        ..Rules::default()
    };
    let cases = [
        ("usual rules", Rules::default()),
        ("no rules", free.clone()),
        ("at most 16 items", Rules { most_items: Some(16), ..Rules::default() }),
    ];
    for (name, rules) in cases {
        let mut task = task(rules);
        for limited in [None, Some(0.97)] {
            if let Some(share) = limited {
                let Answer::Best(best) = choose(&task) else { panic!("there is a set") };
                task.rules.most_total = Some(Force::from_n(best.set.total.to_n() * share));
            }
            let total = limited.map_or("", |_| ", total pull limited");
            let (least, time) = median(15, &|| {
                black_box(choose(black_box(&task)));
            });
            let answer = choose(&task);
            let Answer::Best(best) = &answer else { panic!("there is a set: {answer:?}") };
            let mut search = Search::new(task.clone());
            let work = search.step(usize::MAX / 2).work;
            eprintln!(
                "{name}{total}: median {time:.1} ms (least {least:.1}), {:.0} times an analysis; {} passes, {} labels, {} items, \
                 gap before labels {:.1e} of {:.4}, proven {}, work {work}",
                time / once,
                best.passes,
                best.labels,
                best.set.different,
                best.set.parts.sum() - best.dual_bound,
                best.set.parts.sum(),
                best.proven,
            );
        }
    }
}
