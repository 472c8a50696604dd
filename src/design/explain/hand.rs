//! One cut through the neck of a sample, worked out step by step, with the engine's numbers.

use std::sync::OnceLock;

use super::fill::with;
use super::sheet::Table;
use crate::design::bearing_words::{aspect, percents};
use crate::design::display;
use crate::design::presets::SAMPLES;
use crate::design::resolve::resolve;
use crate::engine::analysis::{StringFigures, analyse};
use crate::engine::bearing::{BoardCut, Drilled, bear};
use crate::engine::geometry::{lay_out, loads, pulls};
use crate::engine::structure::frame::{Pull, Station};
use crate::engine::structure::verdict::Use;
use crate::engine::units::{Force, Length, Stress};
use crate::words::{Words, numbers as say};

/// The sample of the example.
const SAMPLE: &str = "floor-36";
/// How many of the lowest strings may lie beyond the cut: enough to be worth it, few enough to add up by hand.
const BEYOND: std::ops::RangeInclusive<usize> = 3..=12;

/// What pulls: the pillar, or a string with its figures.
type Beyond = (Option<StringFigures>, Pull);

/// The cut.
pub(super) struct Hand {
    pub(super) station: Station,
    /// What lies beyond: the pillar, then the strings from the lowest up.
    pub(super) beyond: Vec<Beyond>,
    /// Bending with the force along the neck, then shear with twist.
    pub(super) uses: [Use; 2],
    /// Direction of the neck at the cut, towards the pillar.
    pub(super) way: (f64, f64),
    pub(super) offset: Length,
    /// The board at the string where it is loaded most.
    pub(super) board: BoardCut,
    /// Push in the pillar, its length, its modulus for buckling, and the load at which it gives way over its thinner
    /// side.
    pub(super) pillar: (Force, Length, Stress, Force),
    /// Of the pillar's thinner side, in m⁴.
    pub(super) inertia_m4: f64,
}

/// The example; worked out once.
pub(super) fn hand() -> Option<&'static Hand> {
    static HAND: OnceLock<Option<Hand>> = OnceLock::new();
    HAND.get_or_init(worked).as_ref()
}

fn moment_about(at: &Station, pulls: &[Beyond]) -> f64 {
    let one = |pull: &Pull| {
        let (x, y) = (pull.at.x.to_m() - at.at.x.to_m(), pull.at.y.to_m() - at.at.y.to_m());
        x * pull.y.to_n() - y * pull.x.to_n()
    };
    pulls.iter().map(|(_, pull)| one(pull)).sum()
}

fn sums(beyond: &[Beyond]) -> (f64, f64) {
    let sum = |of: fn(&Pull) -> Force| beyond.iter().map(|(_, pull)| of(pull).to_n()).sum();
    (sum(|pull| pull.x), sum(|pull| pull.y))
}

fn worked() -> Option<Hand> {
    let design = SAMPLES.iter().find(|sample| sample.key == SAMPLE)?.design();
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let (shape, mut build) = (&resolved.geometry, resolved.build());
    // What holes take is left to the program.
    build.neck.drilled = Drilled::default();
    let build = &build;
    let band = lay_out(&resolved.harp, &analysis, shape);
    let loads = loads(&band, &resolved.harp, &analysis, shape);
    let bearing = bear(&band, &loads, &analysis, shape, build);
    let board = bearing.board_worst()?.1.clone();
    let frame = bearing.frame.ok()?;
    let strings = pulls(&band, &analysis, shape).into_iter().zip(&analysis.strings).rev();
    let strings = strings.filter_map(|(pull, figures)| Some((Some(figures.clone()), pull?)));
    let pillar = (None, frame.reactions.pillar_pull);
    let all: Vec<Beyond> = std::iter::once(pillar).chain(strings).collect();
    // A cut where the neck is as good as straight, beyond which just so many of the lowest strings hang.
    let found = BEYOND.into_iter().find_map(|count| {
        let beyond = all.get(..=count)?;
        let is_here = |station: &Station| {
            let off = moment_about(station, beyond) - station.moment_n_m;
            off.abs() < 1e-9 * station.moment_n_m.abs()
        };
        let mut cuts = frame.neck.cuts.iter().rev();
        let cut = cuts.find(|cut| cut.curve.is_none() && is_here(&cut.station))?;
        Some((cut, beyond))
    });
    let (cut, beyond) = found?;
    let station = cut.station;
    let (x, y) = sums(beyond);
    let square = x * x + y * y;
    let (axial, shear) = (station.axial_n, station.shear_n);
    let way = ((axial * x + shear * y) / square, (axial * y - shear * x) / square);
    let (width, depth) = (build.pillar.width.to_m(), build.pillar.depth.to_m());
    let (thin, broad) = (width.min(depth), width.max(depth));
    let gives_way = frame.pillar.gives_way?;
    let least = gives_way.0.to_n().min(gives_way.1.to_n());
    Some(Hand {
        station,
        beyond: beyond.to_vec(),
        uses: [*cut.verdict.uses.first()?, *cut.verdict.uses.get(1)?],
        way,
        offset: shape.strings_from_neck,
        board,
        pillar: (
            frame.reactions.pillar,
            frame.pillar.length,
            build.pillar.allowable.least_modulus?,
            Force::from_n(least),
        ),
        inertia_m4: broad * thin.powi(3) / 12.0,
    })
}

fn newtons(n: f64) -> String {
    with(n, "N")
}

/// What lies beyond the cut, and the steps to the use of the wood.
pub(super) fn tables() -> Vec<Table> {
    let Some(hand) = hand() else { return Vec::new() };
    let mm = |length: Length| display::decimals(length.to_mm(), 1);
    let forces = hand.beyond.iter().map(|(string, pull)| {
        let name = string.as_ref().map_or_else(|| say::HAND_PILLAR.into(), display::string_name);
        let n = |force: Force| display::decimals(force.to_n(), 1);
        (name, vec![vec![mm(pull.at.x), mm(pull.at.y), n(pull.x), n(pull.y)]])
    });
    let heads = |heads: &[Words]| heads.iter().map(|head| (*head).into()).collect();
    let beyond = Table {
        caption: say::HAND_BEYOND.said(),
        heads: heads(&[
            say::HAND_FORCE,
            say::HAND_AT_X,
            say::HAND_AT_Y,
            say::HAND_TO_X,
            say::HAND_TO_Y,
        ]),
        groups: forces.collect(),
    };
    let Station { at, section, axial_n, shear_n, moment_n_m, torque_n_m, sideways_n_m, .. } =
        hand.station;
    let (b, h) = (section.breadth().to_mm(), section.depth().to_mm());
    let (x, y) = sums(&hand.beyond);
    let c1 = section.torsion_numbers().c1;
    let [bent, slid] = hand.uses;
    let n = |value: f64| with(value, "");
    let mpa = |value: f64| with(value, "MPa");
    let limit = |used: &Use| used.limit.map_or(f64::NAN, Stress::to_mpa);
    let share = |used: &Use| used.ratio.map_or_else(String::new, |ratio| percents((ratio, ratio)));
    let use_of = |used: &Use| {
        let stress = n(used.stress.to_mpa());
        say::hand_use(&aspect(used.aspect), &mpa(limit(used)), &share(used), &stress)
    };
    let area = b * h;
    let steps = [
        (
            say::HAND_CUT,
            format!(
                "x₀ = {} mm, y₀ = {} mm; b = {} mm, h = {} mm",
                mm(at.x),
                mm(at.y),
                n(b),
                display::decimals(h, 2)
            ),
        ),
        (say::HAND_DIRECTION, format!("p = {}, q = {}", n(hand.way.0), n(hand.way.1))),
        (say::HAND_SUMS, format!("{}, {}", newtons(x), newtons(y))),
        (say::HAND_ALONG, format!("N = {} p + {} q = {}", n(x), n(y), newtons(axial_n))),
        (say::HAND_ACROSS, format!("V = {} p − {} q = {}", n(y), n(x), newtons(shear_n))),
        (
            say::HAND_BENDING,
            format!("M = Σ [(x − x₀) Y − (y − y₀) X] = {}", with(moment_n_m, "N·m")),
        ),
        (
            say::HAND_TORQUE,
            say::hand_torque_is(&with(sideways_n_m, "N·m"), &with(torque_n_m, "N·m")),
        ),
        (
            say::HAND_STRESS,
            format!(
                "{} + {} + {} = {}",
                n(6e3 * moment_n_m.abs() / (b * h * h)),
                n(6e3 * sideways_n_m.abs() / (h * b * b)),
                n(axial_n.abs() / area),
                mpa(bent.stress.to_mpa())
            ),
        ),
        (
            say::HAND_SHEAR,
            format!(
                "{} + {} = {}, c₁ = {}",
                n(1.5 * shear_n.abs() / area),
                n(1e3 * torque_n_m.abs() / (c1 * b.max(h) * b.min(h).powi(2))),
                mpa(slid.stress.to_mpa()),
                n(c1)
            ),
        ),
        (say::HAND_USED, use_of(&bent)),
        (say::HAND_USED, use_of(&slid)),
    ];
    let steps = Table {
        caption: say::HAND_STEPS.said(),
        heads: heads(&[say::HAND_STEP, say::HAND_NUMBERS]),
        groups: steps.map(|(step, text)| (step.into(), vec![vec![text]])).into(),
    };
    vec![beyond, steps]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    /// The whole example again, with sums and products alone: from places and pulls to the use of the wood.
    #[test]
    fn the_cut_by_hand_is_what_the_engine_gives() {
        let design = SAMPLES.iter().find(|sample| sample.key == SAMPLE).unwrap().design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let hand = hand().unwrap();
        let count = hand.beyond.len() - 1;
        assert!(BEYOND.contains(&count), "{count}");
        // Each pull from the string's own pull and the two ends of the string.
        let mut pulls = Vec::new();
        for (placed, figures) in band.strings.iter().zip(&analysis.strings) {
            let placed = placed.as_ref().unwrap();
            let (bx, by) = (placed.bridge.x.to_m(), placed.bridge.y.to_m());
            let (hx, hy) = (placed.hole.board.x.to_m(), placed.hole.board.y.to_m());
            let length = ((hx - bx) * (hx - bx) + (hy - by) * (hy - by)).sqrt();
            let pull = figures.tension.unwrap().to_n();
            pulls.push((bx, by, pull * (hx - bx) / length, pull * (hy - by) / length));
        }
        // The pillar from moments about the shoulder.
        let (sx, sy) = (band.shoulder.x.to_m(), band.shoulder.y.to_m());
        let (top, foot) = (band.pillar.1.unwrap(), band.pillar.0);
        let (tx, ty) = (top.x.to_m(), top.y.to_m());
        let (ux, uy) = (tx - foot.x.to_m(), ty - foot.y.to_m());
        let height = (ux * ux + uy * uy).sqrt();
        let (ux, uy) = (ux / height, uy / height);
        let turning: f64 = pulls.iter().map(|(x, y, fx, fy)| (x - sx) * fy - (y - sy) * fx).sum();
        let push = -turning / ((tx - sx) * uy - (ty - sy) * ux);
        assert_close(push, hand.pillar.0.to_n(), 1e-12, "pillar");
        let lowest = &pulls[pulls.len() - count..];
        let mut beyond = vec![(tx, ty, push * ux, push * uy)];
        beyond.extend(lowest);
        let station = hand.station;
        let (x0, y0) = (station.at.x.to_m(), station.at.y.to_m());
        let fx: f64 = beyond.iter().map(|force| force.2).sum();
        let fy: f64 = beyond.iter().map(|force| force.3).sum();
        let moment: f64 = beyond.iter().map(|(x, y, fx, fy)| (x - x0) * fy - (y - y0) * fx).sum();
        // The direction of the neck there, from the drawn middle line.
        let centre = &band.neck.as_ref().unwrap().centre;
        let place = |at: usize| (centre[at].at.x.to_m(), centre[at].at.y.to_m());
        let on = (1..centre.len()).find(|at| {
            let (from, to) = (place(at - 1), place(*at));
            let way = (from.0 - to.0).hypot(from.1 - to.1);
            let both = (from.0 - x0).hypot(from.1 - y0) + (to.0 - x0).hypot(to.1 - y0);
            both - way < 1e-9 && (to.0 - x0).hypot(to.1 - y0) > 1e-9
        });
        let (from, to) = (place(on.unwrap() - 1), place(on.unwrap()));
        let way = (to.0 - from.0).hypot(to.1 - from.1);
        let (p, q) = ((to.0 - from.0) / way, (to.1 - from.1) / way);
        assert_close(hand.way.0, p, 1e-9, "p");
        let (axial, shear) = (fx * p + fy * q, fy * p - fx * q);
        let e = design.geometry.strings_from_neck_mm / 1e3;
        let of_strings = |of: &dyn Fn(f64, f64) -> f64| -> f64 {
            lowest.iter().map(|(_, _, fx, fy)| e * of(*fx, *fy)).sum()
        };
        let torque = of_strings(&|fx, fy| fx * q - fy * p);
        let sideways = of_strings(&|fx, fy| fx * p + fy * q);
        for (ours, theirs, what) in [
            (axial, station.axial_n, "N"),
            (shear, station.shear_n, "V"),
            (moment, station.moment_n_m, "M"),
            (torque, station.torque_n_m, "T"),
            (sideways, station.sideways_n_m, "M′"),
        ] {
            assert_close(ours, theirs, 1e-9, what);
        }
        // Stresses, against what the table of maple, the scatter and the divisors allow.
        let b = design.geometry.neck.thickness_mm / 1e3;
        let h = station.section.depth().to_m();
        let stress = 6.0 * moment.abs() / (b * h * h)
            + 6.0 * sideways.abs() / (h * b * b)
            + axial.abs() / (b * h);
        assert_close(stress, hand.uses[0].stress.to_pa(), 1e-9, "stress");
        assert!(axial > 0.0, "a pull, so that the sum is held against the limit of bending");
        let limit = 109e6 * (1.0 - 1.645 * 0.16) * 0.9 / 2.3;
        assert_close(stress / limit, hand.uses[0].ratio.unwrap(), 1e-9, "use in bending");
        // c₁ by a handbook's short formula, good to a thousandth.
        let (long, short) = (b.max(h), b.min(h));
        let c1 = 1.0 / (3.0 + 1.8 * short / long);
        let slid = 1.5 * shear.abs() / (b * h) + torque.abs() / (c1 * long * short * short);
        assert_close(slid, hand.uses[1].stress.to_pa(), 0.05, "shear");
    }

    #[test]
    fn the_example_is_shown_whole() {
        let tables = tables();
        assert_eq!(tables.len(), 2);
        assert_eq!(tables[0].groups[0].0, "The pillar");
        assert_eq!(tables[0].groups[1].0, "String 36, C2");
        let used = &tables[1].groups[9].1[0][0];
        assert!(used.ends_with(" %"), "{used}");
    }
}
