//! Tasks drawn at random, always the same ones.

use std::sync::Arc;

use stringloft::engine::analysis::Unknown;
use stringloft::engine::choose::{
    Family, Item, Kept, Price, Rules, Target, Task, TaskString, Weights, Zone,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::cut::Allowance;
use stringloft::engine::material::{Material, built_in, flat_strength};
use stringloft::engine::pitch::{Note, Tuning};
use stringloft::engine::units::{Force, Length, LinearDensity, Stiffness};

/// A linear congruential generator, of which the upper half is used; the constants are D. E. Knuth's for MMIX, from
/// memory. Nothing rests on their quality.
pub struct Draws(u64);

impl Draws {
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn share(&mut self) -> f64 {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let upper = u32::try_from(self.0 >> 32).expect("the upper half has 32 bits");
        f64::from(upper) / 4_294_967_296.0
    }

    pub fn below(&mut self, count: usize) -> usize {
        // The highest bits, as the lowest repeat soon.
        self.share();
        usize::try_from(self.0 >> 40).expect("24 bits") % count
    }

    pub fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.share()
    }

    pub fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }
}

/// Materials of the families, from the treble to the bass, and the gauges in hundredths of a millimetre.
const FAMILIES: [(&str, f64, f64); 3] =
    [("nylon", 40.0, 160.0), ("gut", 60.0, 260.0), ("steel", 30.0, 120.0)];

/// A built-in material, with the strength of each diameter that the solver of the larger tasks reckoned with.
pub fn material(key: &str) -> Arc<Material> {
    let mut found = built_in().into_iter().find(|m| m.key == key).expect("a built-in material");
    found.strength = flat_strength(key).or(found.strength);
    Arc::new(found)
}

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn make_up(draws: &mut Draws, family: usize, materials: &[Arc<Material>]) -> MakeUp {
    let (_, least, most) = FAMILIES[family];
    // In twentieths of a millimetre, so that gauges come twice.
    let gauge = mm((draws.between(least, most) / 5.0).round() * 0.05);
    let core = Arc::clone(&materials[family]);
    if family == 2 {
        let section = Section::Round { diameter: mm((draws.between(2.0, 8.0)).round() * 0.05) };
        let wrap = Layer { material: material("bronze"), section, packing_ratio: 1.0 };
        return MakeUp::wound(core, gauge, vec![wrap], (mm(10.0), mm(5.0)))
            .expect("it can be wound");
    }
    if draws.chance(0.1) {
        let mass = LinearDensity::from_g_per_m(draws.between(0.3, 4.0));
        let known = draws.chance(0.5).then_some(gauge);
        let load = draws.chance(0.5).then_some(Force::from_n(draws.between(100.0, 900.0)));
        return MakeUp::weighed(mass, None, known, load).expect("it can be weighed");
    }
    MakeUp::plain(core, gauge).expect("a plain string")
}

fn item(draws: &mut Draws, family: usize, materials: &[Arc<Material>]) -> Item {
    let weighed = |make_up: &MakeUp| make_up.gauge().is_none();
    let make_up = make_up(draws, family, materials);
    let price = match draws.below(3) {
        0 => None,
        1 if !weighed(&make_up) => Some(Price::PerMetre(draws.between(0.5, 6.0))),
        _ => Some(Price::Each((draws.between(1.0, 12.0) * 2.0).round() / 2.0)),
    };
    let note = |draws: &mut Draws, chance: f64, low: f64, high: f64| {
        draws.chance(chance).then(|| Note::from_key(draws.between(low, high)))
    };
    Item {
        make_up,
        family,
        price,
        in_stock: !draws.chance(0.15),
        lowest: note(draws, 0.2, 30.0, 70.0),
        highest: note(draws, 0.2, 50.0, 95.0),
    }
}

trait FromKey {
    fn from_key(key: f64) -> Self;
}

impl FromKey for Note {
    /// The natural note next to a key number.
    fn from_key(key: f64) -> Self {
        let middle: Self = "C4".parse().expect("a note");
        let steps = ((key - 60.0) * 7.0 / 12.0).round();
        let near = (-40..=40).find(|step| f64::from(*step) >= steps);
        middle.moved(near.expect("a key of the harp"), |_| 0).expect("within the octaves")
    }
}

/// How a task is drawn.
#[derive(Clone, Copy)]
pub struct Size {
    pub strings: usize,
    pub items: usize,
    pub kept: f64,
    /// How likely each rule is.
    pub ruled: f64,
}

/// A task with strings from the treble to the bass and a stock of all families.
pub fn task(draws: &mut Draws, size: Size) -> Task {
    let materials: Vec<Arc<Material>> = FAMILIES.iter().map(|(key, ..)| material(key)).collect();
    let families = 1 + draws.below(3);
    let mut stock: Vec<Item> = Vec::new();
    while stock.len() < size.items {
        let again = !stock.is_empty() && draws.chance(0.1);
        if again {
            let same = stock[draws.below(stock.len())].clone();
            stock.push(same);
        } else {
            let family = draws.below(families);
            stock.push(item(draws, family, &materials));
        }
    }
    // Long harps begin high.
    let top = if size.strings > 20 { (95.0, 103.0) } else { (70.0, 96.0) };
    let top = Note::from_key(draws.between(top.0, top.1));
    let count = u32::try_from(size.strings).expect("a short list");
    // Small harps take wide steps, so that the families meet.
    let step = (40 / count.max(1)).clamp(1, 6);
    let tension = draws.chance(0.4);
    let by_tension = draws.between(50.0, 140.0);
    let by_feel = draws.between(300.0, 900.0);
    let slope = draws.between(-0.3, 0.3);
    let mut strings = Vec::new();
    for index in 0..count {
        let down = i32::try_from(index * step).expect("a few steps");
        let note = top.moved(-down, |_| 0).expect("within the octaves");
        let frequency = Tuning::default().frequency(note);
        let length =
            mm(draws.between(0.95, 1.05) * 1e3 * (90.0 / frequency.to_hz()).powf(0.75).min(1.6));
        let along = (slope * f64::from(index) / f64::from(count)).exp();
        let target = match tension {
            true => Target::Tension(Force::from_n(by_tension * along)),
            false => Target::Stiffness(Stiffness::from_n_per_m(by_feel * along)),
        };
        let kept = draws.chance(size.kept).then(|| kept(draws, &stock, families, &materials));
        strings.push(TaskString {
            note: Some(note),
            frequency: if draws.chance(0.02) { Err(Unknown::Pitch) } else { Ok(frequency) },
            length: if draws.chance(0.02) { Err(Unknown::Length) } else { Ok(length) },
            target: (!draws.chance(0.1)).then_some(target),
            weight: if draws.chance(0.3) { draws.between(0.0, 3.0) } else { 1.0 },
            kept,
        });
    }
    let mut rules = rules(draws, size);
    let families = (0..families).map(|_| {
        let first = draws.below(size.strings);
        let strings =
            draws.chance(0.15 * size.ruled).then(|| (first, first + draws.below(size.strings)));
        Family { strings }
    });
    let families = families.collect();
    let weights = weights(draws);
    // Drawn last: the solver's tasks, which are drawn here too and have no such rule, stay as they are.
    rules.most_jump_percent = draws.chance(0.3 * size.ruled).then(|| draws.between(5.0, 60.0));
    Task {
        strings,
        stock,
        families,
        rules,
        weights,
        pluck_ratio: 0.4,
        allowance: Allowance::default(),
    }
}

fn kept(draws: &mut Draws, stock: &[Item], families: usize, materials: &[Arc<Material>]) -> Kept {
    if draws.chance(0.5) {
        let item = &stock[draws.below(stock.len())];
        return Kept { make_up: item.make_up.clone(), family: Some(item.family) };
    }
    let family = draws.below(families);
    let make_up = make_up(draws, family, materials);
    Kept { make_up, family: (!draws.chance(0.2)).then_some(family) }
}

fn rules(draws: &mut Draws, size: Size) -> Rules {
    let mut maybe = |chance: f64| draws.chance(chance * size.ruled);
    let asked: Vec<bool> =
        [0.6, 0.4, 0.3, 0.3, 0.6, 0.8, 0.8, 0.4, 0.5, 0.3].map(&mut maybe).into();
    let last = size.strings - 1;
    let zone = |draws: &mut Draws| {
        let first = draws.below(size.strings);
        Zone {
            strings: (first, (first + draws.below(size.strings)).min(last)),
            least: draws.chance(0.6).then(|| mm(draws.between(0.3, 0.8))),
            greatest: draws.chance(0.6).then(|| mm(draws.between(0.9, 2.5))),
        }
    };
    let pull = draws.between(60.0, 130.0) * f64::from(u32::try_from(size.strings).expect("few"));
    Rules {
        most_share_percent: asked[0].then(|| draws.between(40.0, 90.0)),
        least_share_percent: asked[1].then(|| draws.between(2.0, 20.0)),
        unknown_share: draws.chance(0.7),
        zones: if asked[2] { vec![zone(draws), zone(draws)] } else { Vec::new() },
        only_in_stock: asked[3],
        only_sold_for: asked[4],
        in_order: asked[5],
        no_shrinking: asked[6],
        most_changes: asked[7].then(|| draws.below(3)),
        most_items: asked[8].then(|| 1 + draws.below(size.strings)),
        most_total: asked[9].then(|| Force::from_n(pull)),
        ..Rules::default()
    }
}

fn weights(draws: &mut Draws) -> Weights {
    let mut one =
        |chance: f64, most: f64| if draws.chance(chance) { draws.between(0.0, most) } else { 0.0 };
    Weights {
        feel: one(0.8, 2.0),
        tension: one(0.5, 2.0),
        at_change: one(0.5, 2.0),
        change: one(0.5, 0.1),
        item: one(0.4, 0.05),
        price: one(0.4, 0.2),
        price_unit: 1.0 + one(0.5, 9.0),
    }
}
