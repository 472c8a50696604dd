//! Starting lengths and strings for a compass. A plain rule of this project that gives a harp to
//! work on; common practice, no source.
//!
//! **Lengths.** On a nylon string the share `Lf/(Lf at break)` falls slowly from the treble down and
//! ever faster toward the bass, since the neck cannot follow the octaves: `0.75 − 0.056 · 1.5ⁿ` at
//! `n` octaves below C7. A harp whose compass ends above C2 is smaller, and its curve falls earlier.
//! Where the rule would add less than 1 % a string, it adds 1 %. Lengths go by the letters, not by the
//! signs, so that the neck is smooth.
//!
//! **Strings.** Each string is of the first kind, of plain nylon, nylon wound on nylon, and bronze
//! wound over silk on steel, that meets the wanted feel without being too thick, slack or tight; no
//! string is of a kind higher up the list than the string above it. Gauges are those of
//! usual stock, and never thinner than the string above of the same kind.

use std::sync::Arc;

use super::super::document::{Design, LayerSpec, MakeUpSpec, StringSpec};
use super::super::resolve::resolve;
use crate::engine::construction::{Layer, MakeUp, Section};
use crate::engine::material::{Material, built_in};
use crate::engine::mechanics::{Core, pluck_stiffness, tension};
use crate::engine::pitch::{self, Note};
use crate::engine::units::{Frequency, Length, Stiffness};

/// The pluck stiffness that is aimed at on C7, in N/mm, and what it falls by with each octave down.
pub const TARGET_N_PER_MM: (f64, f64) = (0.90, 0.03);
/// Pitch times length at which nylon breaks: half the root of 310 MPa over 1140 kg/m³, the figures of
/// the built-in nylon.
const BREAKING_M_PER_S: f64 = 260.7;
/// How bad the best string of a kind may be before the next kind is tried; 0.15 is a feel that is 15 %
/// off. See [`WantedString::off`].
const MOST_OFF: f64 = 0.17;
/// The load share that is best, in per cent, and how much its miss weighs against that of the feel.
const BEST_SHARE: (f64, f64) = (45.0, 0.1);
/// The least and the greatest load share, in per cent.
const SHARE_PERCENT: (f64, f64) = (20.0, 72.0);

/// C7 and C2 in steps of the scale from C0.
const C7_STEP: i32 = 49;
const C2_STEP: i32 = 14;

const NYLON_MM: [f64; 11] = [0.51, 0.56, 0.64, 0.71, 0.76, 0.81, 0.91, 1.02, 1.14, 1.27, 1.40];
const NYLON_CORE_MM: [f64; 4] = [0.81, 0.91, 1.02, 1.14];
const NYLON_WRAP_MM: [f64; 8] = [0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.51, 0.56];
const STEEL_CORE_MM: [f64; 9] = [0.40, 0.45, 0.50, 0.55, 0.60, 0.65, 0.70, 0.75, 0.80];
const BRONZE_WRAP_MM: [f64; 19] = [
    0.10, 0.12, 0.14, 0.16, 0.18, 0.20, 0.22, 0.25, 0.28, 0.30, 0.32, 0.35, 0.40, 0.45, 0.50, 0.55,
    0.60, 0.70, 0.80,
];
const SILK_MM: f64 = 0.10;
/// The thickest that a string may be against its core.
const MOST_GAUGE_RATIO: f64 = 3.2;

/// The vibrating length with which a string may start, on a harp whose lowest note is `lowest`.
pub fn suggested_length(note: Note, lowest: Note) -> Length {
    let octaves_from = |note: Note, step: i32| f64::from(note.step() - step) / 7.0;
    let smaller = octaves_from(lowest, C2_STEP).clamp(0.0, 2.0);
    let at = |octaves: f64| {
        let share = 0.75 - 0.056 * 1.5_f64.powf(octaves * (1.0 + 0.15 * smaller));
        // C7 is at 2093 Hz (A4 = 440 Hz, ISO 16:1975).
        share * BREAKING_M_PER_S / (2_093.0 * pitch::ratio(-1200.0 * octaves))
    };
    // The longest so far, and 1 % more for each string beyond it.
    let wanted = -octaves_from(note, C7_STEP);
    let mut length = at(wanted.min(0.0));
    let strings = (wanted * 7.0).round().max(0.0);
    let mut string = 1.0;
    while string <= strings {
        length = at(string / 7.0).max(length * 1.01);
        string += 1.0;
    }
    Length::from_m(length)
}

/// A make-up with its text.
struct Candidate {
    spec: MakeUpSpec,
    make_up: MakeUp,
}

/// Lengths and strings for every string of a design that reads as a note: lengths where none is typed,
/// make-ups where none is typed. What is typed stays.
///
/// The strings come back in the design's order, ready to take the place of its own.
pub fn suggest(design: &Design) -> Vec<StringSpec> {
    let harp = resolve(design).harp;
    let mut strings = design.strings.clone();
    let Some(lowest) = harp.strings.iter().filter_map(|s| s.note).min_by_key(|n| n.step()) else {
        return strings;
    };
    let kinds = kinds();
    let mut kind = 0;
    let mut above: Option<&Candidate> = None;
    for (spec, string) in strings.iter_mut().zip(&harp.strings) {
        let (Some(note), Ok(frequency)) = (string.note, string.frequency) else { continue };
        let length = string.length.unwrap_or_else(|_| suggested_length(note, lowest));
        if spec.length.trim().is_empty() {
            spec.length = format!("{:.0}", length.to_mm());
        }
        if !spec.make_up.is_empty() {
            continue;
        }
        let wanted = target(note);
        let place = WantedString { length, frequency, pluck_ratio: harp.pluck_ratio, wanted };
        let best = |kind: &usize| place.best(&kinds[*kind], above).map(|best| (*kind, best));
        let fits =
            (kind..kinds.len()).filter_map(|kind| best(&kind)).find(|(_, best)| best.1 <= MOST_OFF);
        let chosen = fits.or_else(|| {
            let all = (kind..kinds.len()).filter_map(|kind| best(&kind));
            all.min_by(|one, other| one.1.1.total_cmp(&other.1.1))
        });
        if let Some((its_kind, (candidate, _))) = chosen {
            kind = its_kind;
            above = Some(candidate);
            spec.make_up = candidate.spec.clone();
        }
    }
    strings
}

/// Where a string is wanted.
struct WantedString {
    length: Length,
    frequency: Frequency,
    pluck_ratio: f64,
    wanted: Stiffness,
}

impl WantedString {
    /// The candidate that is least off and how far that is; of two equally near, the first, which has
    /// the thinner core.
    fn best<'a>(
        &self,
        kind: &'a [Candidate],
        above: Option<&Candidate>,
    ) -> Option<(&'a Candidate, f64)> {
        let is_thick_enough = |candidate: &&Candidate| {
            above.is_none_or(|above| {
                !above.make_up.has_materials_of(&candidate.make_up)
                    || thickness(candidate) >= thickness(above) && core(candidate) >= core(above)
            })
        };
        let off = |candidate: &'a Candidate| Some((candidate, self.off(candidate)?));
        kind.iter()
            .filter(is_thick_enough)
            .filter_map(off)
            .min_by(|one, other| one.1.total_cmp(&other.1))
    }

    /// How far from the wanted feel, as the logarithm of the ratio, with a little for a load share that
    /// is off its best; `None` when the string would be slack, too tight or too stiff.
    fn off(&self, candidate: &Candidate) -> Option<f64> {
        let make_up = &candidate.make_up;
        let (material, diameter) = make_up.core()?;
        let core = Core { diameter, modulus: material.modulus.as_ref()?.value };
        let pull = tension(make_up.linear_density(), self.length, self.frequency, Some(core));
        let share = 100.0 * pull.to_n() / make_up.breaking_load()?.to_n();
        let stiffness = pluck_stiffness(pull, self.length, self.pluck_ratio);
        let feel = (stiffness.to_n_per_m() / self.wanted.to_n_per_m()).ln().abs();
        let (best, weight) = BEST_SHARE;
        let off = feel + weight * (share / best).ln().abs();
        ((SHARE_PERCENT.0..=SHARE_PERCENT.1).contains(&share) && off.is_finite()).then_some(off)
    }
}

/// The feel that is aimed at.
fn target(note: Note) -> Stiffness {
    let (at_c7, fall) = TARGET_N_PER_MM;
    let below = f64::from(C7_STEP - note.step()) / 7.0;
    Stiffness::from_n_per_mm((at_c7 - fall * below).clamp(0.5, at_c7))
}

fn core(candidate: &Candidate) -> f64 {
    candidate.make_up.core().map_or(0.0, |(_, diameter)| diameter.to_m())
}

fn thickness(candidate: &Candidate) -> f64 {
    candidate.make_up.gauge().map_or(0.0, Length::to_m)
}

/// The kinds of string, in the order in which they are tried.
fn kinds() -> [Vec<Candidate>; 3] {
    let shelf: Vec<Arc<Material>> = built_in().into_iter().map(Arc::new).collect();
    let plain = NYLON_MM.iter().filter_map(|mm| candidate(&shelf, ("nylon", *mm), &[]));
    let wound = NYLON_CORE_MM.iter().flat_map(|core| {
        let wrapped = |wrap: &f64| candidate(&shelf, ("nylon", *core), &[("nylon", *wrap)]);
        NYLON_WRAP_MM.iter().filter_map(wrapped).collect::<Vec<_>>()
    });
    let wires = STEEL_CORE_MM.iter().flat_map(|core| {
        let wrapped = |wrap: &f64| {
            candidate(&shelf, ("steel", *core), &[("silk", SILK_MM), ("bronze", *wrap)])
        };
        BRONZE_WRAP_MM.iter().filter_map(wrapped).collect::<Vec<_>>()
    });
    [plain.collect(), wound.collect(), wires.collect()]
}

fn candidate(
    shelf: &[Arc<Material>],
    (core, core_mm): (&str, f64),
    layers: &[(&str, f64)],
) -> Option<Candidate> {
    let material = |key: &str| shelf.iter().find(|material| material.key == key).cloned();
    let diameter = Length::from_mm(core_mm);
    let text = |mm: f64| format!("{mm:.2}");
    let mut spec =
        MakeUpSpec { material: core.to_owned(), diameter: text(core_mm), ..MakeUpSpec::default() };
    if layers.is_empty() {
        return Some(Candidate { spec, make_up: MakeUp::plain(material(core)?, diameter).ok()? });
    }
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
    let make_up = MakeUp::wound(material(core)?, diameter, wound, (none, none)).ok()?;
    let ratio = make_up.gauge()?.to_mm() / core_mm;
    (ratio <= MOST_GAUGE_RATIO).then_some(Candidate { spec, make_up })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::by_compass;
    use crate::engine::analysis::analyse;
    use crate::engine::findings::Weight;

    fn note(text: &str) -> Note {
        text.parse().unwrap()
    }

    fn harp(low: &str, high: &str) -> Design {
        let strings = by_compass(note(low), note(high), |_| 0).unwrap();
        let mut design = Design { strings, ..Design::default() };
        design.strings = suggest(&design);
        design
    }

    #[test]
    fn lengths_grow_smoothly_toward_the_bass() {
        for lowest in ["C1", "C2", "C3", "G3", "C5"] {
            let lengths: Vec<f64> = (note(lowest).step()..=53)
                .rev()
                .filter_map(|step| note("C0").moved(step, |_| 0))
                .map(|at| suggested_length(at, note(lowest)).to_mm())
                .collect();
            for pair in lengths.windows(2) {
                let growth = pair[1] / pair[0];
                assert!((1.0099..1.105).contains(&growth), "{lowest}: {pair:?}");
            }
        }
    }

    #[test]
    fn a_suggested_harp_has_every_string_and_no_warning() {
        for (low, high) in [("C2", "C7"), ("C2", "G6"), ("C3", "G6"), ("A1", "A6"), ("C1", "G7")] {
            let design = harp(low, high);
            let analysis = analyse(&resolve(&design).harp);
            assert_eq!(analysis.without_tension, 0, "{low} to {high}");
            for finding in &analysis.findings {
                let string = &design.strings[finding.index];
                assert!(
                    finding.kind.weight() >= Weight::Remark,
                    "{low} to {high}: {string:?} {finding:?}"
                );
            }
        }
    }

    #[test]
    fn what_is_typed_stays() {
        let mut design = harp("C3", "C5");
        design.strings[3].length = "333".to_owned();
        design.strings[4].make_up.diameter = "0.99".to_owned();
        design.strings[5].note = "?".to_owned();
        design.strings[5].length.clear();
        assert_eq!(suggest(&design), design.strings);
    }

    #[test]
    fn without_a_note_nothing_is_suggested() {
        let design = Design { strings: vec![StringSpec::default(); 3], ..Design::default() };
        assert_eq!(suggest(&design), design.strings);
    }
}
