//! The best set of strings from a stock of 400, and proposed lengths.

use std::sync::Arc;

use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, analyse};
use stringloft::engine::choose::{
    Answer, Family, Item, Rules, Target, Task, TaskString, Weights, choose,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::cut::Allowance;
use stringloft::engine::lengths::{Aim, Asked, Smoothing, Strength, propose};
use stringloft::engine::material::built_in;
use stringloft::engine::pitch::{Note, Tuning};
use stringloft::engine::units::{Force, Length, Stiffness};

use crate::measure::Bench;

/// The best set under several rules, each with the total pull free and limited.
pub fn sets(bench: &mut Bench) {
    let free = Rules {
        most_share_percent: None,
        unknown_share: true,
        in_order: false,
        no_shrinking: false,
        ..Rules::default()
    };
    let cases = [
        ("usual rules", Rules::default()),
        ("no rules", free),
        ("at most 16 items", Rules { most_items: Some(16), ..Rules::default() }),
    ];
    for (rules_name, rules) in cases {
        let name = format!("choose: {rules_name}");
        if !bench.wants(&name) {
            continue;
        }
        let mut task = task(rules);
        bench.measure(&name, || choose(&task));
        let Answer::Best(best) = choose(&task) else { panic!("there is a set") };
        task.rules.most_total = Some(Force::from_n(0.97 * best.set.total.to_n()));
        bench.measure(&format!("{name}, total limited"), || choose(&task));
    }
}

/// Lengths for a pull that rises towards the bass, with bounds that hold about every third string.
pub fn lengths(bench: &mut Bench) {
    let harp = harp();
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
    bench.measure("choose: lengths", || {
        propose(&harp, &asked, smoothing).expect("the bounds leave room")
    });
}

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
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(10.0),
        stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
        partial_8_cents: 30.0,
        jump_percent: 25.0,
        least_raise: Length::from_mm(0.0),
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

/// The same harp, and a stock of 400: nylon and gut in steps of 0.01 and 0.02 mm, steel with a bronze wrap.
fn task(rules: Rules) -> Task {
    let harp = harp();
    let wanted = analyse(&harp);
    let count = |number: usize| f64::from(u32::try_from(number).expect("a short list"));
    // A feel that falls evenly, from what the highest string has now.
    let top = wanted.strings[0].pluck_stiffness.expect("it has one").to_n_per_m();
    let strings = harp.strings.iter().enumerate().map(|(index, string)| TaskString {
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
