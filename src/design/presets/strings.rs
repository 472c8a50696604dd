//! Lengths and strings for a new harp. Rules of this project that give a harp to work on; common practice, no source.
//!
//! **Lengths.** On a string of nylon the share `Lf/(Lf at break)` falls slowly from the treble down and ever faster
//! toward the bass, since the neck cannot follow the octaves: `share − fall · growthⁿ` at `n` octaves below C7. A lever
//! harp whose compass ends above C2 is smaller, and its curve falls earlier. Where the rule would add less than 1 % a
//! string, it adds 1 %. Lengths go by the letters, not by the signs, so that the neck is smooth. The figures of the pedal
//! harp follow the lengths that disc measurements of a concert harp give for five bass strings (`tests/presets.rs`).
//!
//! **Strings.** Of all sets whose strings meet the limits of the design and never get thinner toward the bass within a
//! family, the one whose feel is the most even and the nearest to what is aimed at, with load shares near the middle
//! of what is usual. It is found by going down the harp and keeping, for each string, the best way to each of its
//! choices.

use std::sync::Arc;

use super::kind::{Family, Kind};
use crate::design::document::{Design, LayerSpec, MakeUpSpec};
use crate::design::resolve::resolve;
use crate::design::usual_gauges::{Winding, plain};
use crate::engine::analysis::{HarpString, is_soft};
use crate::engine::construction::{Layer, MakeUp, Section};
use crate::engine::findings::AUDIBLE_TIMES;
use crate::engine::material::{Material, built_in};
use crate::engine::mechanics::{
    Core, audible_inharmonicity, inharmonicity, partial_cents, pluck_stiffness, tension,
};
use crate::engine::pitch::{self, Note};
use crate::engine::units::Length;

/// Pitch times length at which nylon breaks: half the root of 310 MPa over 1140 kg/m³, the figures of
/// the built-in nylon.
const BREAKING_M_PER_S: f64 = 260.7;
/// C7 and C2 in steps of the scale from C0.
const C7_STEP: i32 = 49;
const C2_STEP: i32 = 14;
/// The load share that is best, in per cent, and how much its miss weighs against that of the feel.
const BEST_SHARE: (f64, f64) = (45.0, 0.01);
/// The highest load share, in per cent: of a metal, and of gut or plastic.
const MOST_SHARE: (f64, f64) = (72.0, 64.0);
/// The least tension, in newtons: a little more than a design asks for.
const LEAST_TENSION_N: f64 = 20.5;
/// The most that the feel may change from a string to the next, as the logarithm of the ratio: about 25 %.
const MOST_STEP: f64 = 0.22;
/// What a change of family costs, and what each family down the list does for each string.
const CHANGE: f64 = 0.03;
const DOWN_THE_LIST: f64 = 0.004;

/// The vibrating length with which a string of a kind may start, on a harp whose lowest note is `lowest`.
pub fn suggested_length(kind: &Kind, note: Note, lowest: Note) -> Length {
    let octaves_from = |note: Note, step: i32| f64::from(note.step() - step) / 7.0;
    let rule = &kind.lengths;
    let smaller = 1.0 + rule.small * octaves_from(lowest, C2_STEP).clamp(0.0, 2.0);
    let at = |octaves: f64| {
        let share = rule.share - rule.fall * rule.growth.powf(octaves * smaller);
        // C7 is at 2093 Hz (A4 = 440 Hz, ISO 16:1975).
        share * BREAKING_M_PER_S / (2_093.0 * pitch::ratio(-1200.0 * octaves))
    };
    // The longest so far, and 1 % more for each string beyond it.
    let wanted = -octaves_from(note, C7_STEP);
    let mut length = at(wanted.min(0.0));
    for string in 1..=(C7_STEP - note.step()).max(0) {
        length = at(f64::from(string) / 7.0).max(length * 1.01);
    }
    Length::from_m(length)
}

/// Gives every string of a design its length and its make-up. With `wound_from` that note and all below it are wound,
/// and none above. Where no set meets the limits, the limits are left aside; a string without any choice stays empty.
pub fn fill(design: &mut Design, kind: &Kind, wound_from: Option<Note>) {
    let notes: Vec<Option<Note>> =
        design.strings.iter().map(|string| string.note.parse().ok()).collect();
    let Some(lowest) = notes.iter().flatten().copied().min_by_key(|note| note.step()) else {
        return;
    };
    for (string, note) in design.strings.iter_mut().zip(&notes) {
        if let Some(note) = note {
            string.length = format!("{:.0}", suggested_length(kind, *note, lowest).to_mm());
        }
    }
    let harp = resolve(design).harp;
    let all = candidates(kind);
    let of = |string: &HarpString, strict: bool| {
        let is_wound = |note: Note| wound_from.map(|from| note.step() <= from.step());
        let wound = string.note.and_then(is_wound);
        let allowed = |one: &&Candidate| {
            wound.is_none_or(|wound| kind.families[usize::from(one.family)].is_wound() == wound)
        };
        all.iter()
            .filter(allowed)
            .filter_map(|one| one.on(string, kind, harp.pluck_ratio, strict))
            .collect::<Vec<_>>()
    };
    for strict in [true, false] {
        let rows: Vec<Vec<Choice<'_>>> =
            harp.strings.iter().map(|string| of(string, strict)).collect();
        let Some(chosen) = best(&rows, if strict { MOST_STEP } else { f64::MAX }) else { continue };
        for (string, candidate) in design.strings.iter_mut().zip(chosen) {
            string.make_up = candidate.map(|one| one.spec.clone()).unwrap_or_default();
        }
        return;
    }
}

/// A make-up with its text.
struct Candidate {
    /// Its place in the list of the kind.
    family: u8,
    spec: MakeUpSpec,
    make_up: MakeUp,
    core_m: f64,
    gauge_m: f64,
}

/// A make-up on a string.
struct Choice<'a> {
    candidate: &'a Candidate,
    /// The logarithm of the pluck stiffness.
    feel: f64,
    /// What it costs by itself.
    cost: f64,
}

impl Candidate {
    /// How well it does on a string; `None` where it cannot be used, or where it does not meet the limits and must.
    fn on(
        &self,
        string: &HarpString,
        kind: &Kind,
        pluck_ratio: f64,
        strict: bool,
    ) -> Option<Choice<'_>> {
        let (note, length) = (string.note?, string.length.ok()?);
        let (material, diameter) = self.make_up.core()?;
        let core = Core { diameter, modulus: material.modulus.as_ref()?.value };
        let frequency = string.frequency.ok()?;
        let pull = tension(self.make_up.linear_density(), length, frequency, Some(core));
        let share = 100.0 * pull.to_n() / self.make_up.breaking_load()?.to_n();
        let feel = pluck_stiffness(pull, length, pluck_ratio).to_n_per_mm();
        let (softest, stiffest) = kind.feel_limits;
        let stiff = inharmonicity(core, length, pull);
        let false_sound = partial_cents(stiff, 8) > 0.99 * kind.partial_8_cents
            && stiff > 0.99 * AUDIBLE_TIMES * audible_inharmonicity(frequency);
        let most = if is_soft(&self.make_up) { MOST_SHARE.1 } else { MOST_SHARE.0 };
        let meets = (kind.least_share..=most).contains(&share)
            && (1.01 * softest..=0.99 * stiffest).contains(&feel)
            && pull.to_n() >= LEAST_TENSION_N
            && !false_sound;
        let miss = (feel / target(kind, note)).ln();
        let off_share = (share / BEST_SHARE.0).ln();
        let down = DOWN_THE_LIST * f64::from(self.family);
        let cost = miss * miss + BEST_SHARE.1 * off_share * off_share + down;
        let usable = cost.is_finite() && (meets || !strict && share < 100.0);
        usable.then_some(Choice { candidate: self, feel: feel.ln(), cost })
    }

    /// Whether it may follow another one toward the bass.
    fn may_follow(&self, above: &Self) -> bool {
        self.family > above.family
            || self.family == above.family
                && self.gauge_m >= above.gauge_m
                && self.core_m >= above.core_m
    }
}

/// The feel that is aimed at, in N/mm.
fn target(kind: &Kind, note: Note) -> f64 {
    let octaves = f64::from(C7_STEP - note.step()) / 7.0;
    let points = kind.feel;
    let after = points.iter().position(|point| point.0 >= octaves);
    match after {
        Some(0) => points[0].1,
        Some(after) => {
            let ((x0, y0), (x1, y1)) = (points[after - 1], points[after]);
            y0 + (y1 - y0) * (octaves - x0) / (x1 - x0)
        }
        None => points[points.len() - 1].1,
    }
}

/// The best choice for each row that has any, so that each may follow the one above it; `None` where there is no way
/// down, or where a row has no choice and no step may be left out. Of equal ones the first, which is the thinner.
fn best<'a>(rows: &[Vec<Choice<'a>>], most_step: f64) -> Option<Vec<Option<&'a Candidate>>> {
    let strict = most_step < f64::MAX;
    // For each row with choices: the cost of the best way to each, and where it comes from.
    let mut ways: Vec<(usize, Vec<(f64, usize)>)> = Vec::new();
    for (place, row) in rows.iter().enumerate() {
        if row.is_empty() {
            if strict {
                return None;
            }
            continue;
        }
        let above = ways.last();
        let way = |choice: &Choice<'_>| {
            let Some((above, costs)) = above else { return (choice.cost, 0) };
            let mut least = (f64::INFINITY, 0);
            for (from, upper) in rows[*above].iter().enumerate() {
                let step = choice.feel - upper.feel;
                if !choice.candidate.may_follow(upper.candidate) || step.abs() > most_step {
                    continue;
                }
                let change =
                    if choice.candidate.family == upper.candidate.family { 0.0 } else { CHANGE };
                let cost = costs[from].0 + step * step + change;
                if cost < least.0 {
                    least = (cost, from);
                }
            }
            (least.0 + choice.cost, least.1)
        };
        let next: Vec<(f64, usize)> = row.iter().map(way).collect();
        if next.iter().any(|way| way.0 < f64::INFINITY) {
            ways.push((place, next));
        } else if strict {
            return None;
        }
    }
    let mut chosen: Vec<Option<&Candidate>> = rows.iter().map(|_| None).collect();
    let mut least = 0;
    if let Some((_, last)) = ways.last() {
        for (index, way) in last.iter().enumerate() {
            if way.0 < last[least].0 {
                least = index;
            }
        }
    }
    for (place, way) in ways.iter().rev() {
        chosen[*place] = Some(rows[*place][least].candidate);
        least = way[least].1;
    }
    Some(chosen)
}

/// Every make-up of a kind, family by family.
fn candidates(kind: &Kind) -> Vec<Candidate> {
    let shelf: Vec<Arc<Material>> = built_in().into_iter().map(Arc::new).collect();
    let mut all = Vec::new();
    for (family, row) in (0..).zip(kind.families) {
        match row {
            Family::Plain { material, gauges_mm: (least, most) } => {
                let used = |mm: &&f64| (*least..=*most).contains(*mm);
                let gauges = plain(material).iter().filter(used);
                all.extend(gauges.filter_map(|mm| candidate(&shelf, family, (material, *mm), &[])));
            }
            Family::Wound(winding) => {
                let Winding { core, silk_mm, wrap, .. } = winding;
                for (core_mm, wrap_mm) in winding.pairs() {
                    let layers = [("silk", *silk_mm), (*wrap, wrap_mm)];
                    let layers = if *silk_mm > 0.0 { &layers[..] } else { &layers[1..] };
                    all.extend(candidate(&shelf, family, (core, core_mm), layers));
                }
            }
        }
    }
    all
}

fn candidate(
    shelf: &[Arc<Material>],
    family: u8,
    (core, core_mm): (&str, f64),
    layers: &[(&str, f64)],
) -> Option<Candidate> {
    let material = |key: &str| shelf.iter().find(|material| material.key == key).cloned();
    let diameter = Length::from_mm(core_mm);
    let text = |mm: f64| format!("{mm:.2}");
    let mut spec =
        MakeUpSpec { material: core.to_owned(), diameter: text(core_mm), ..MakeUpSpec::default() };
    let mut wound = Vec::new();
    for (key, mm) in layers {
        let section = Section::Round { diameter: Length::from_mm(*mm) };
        wound.push(Layer { material: material(key)?, section, packing_ratio: 1.0 });
        spec.layers.push(LayerSpec {
            material: (*key).to_owned(),
            size: text(*mm),
            width: String::new(),
            packing_percent: 100.0,
        });
    }
    let none = Length::from_mm(0.0);
    let make_up = if layers.is_empty() {
        MakeUp::plain(material(core)?, diameter).ok()?
    } else {
        MakeUp::wound(material(core)?, diameter, wound, (none, none)).ok()?
    };
    let gauge_m = make_up.gauge()?.to_m();
    let core_m = diameter.to_m();
    Some(Candidate { family, spec, make_up, core_m, gauge_m })
}
