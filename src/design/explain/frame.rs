//! What the frame bears, and what it is made of.

use super::Text::{Math, Said};
use super::Written;
use super::example::Worked;
use super::fill::with;
use super::hand::hand;
use super::sheet::{Table, heads};
use super::sources as from;
use super::symbols::Symbol;
use crate::design::letters::capital;
use crate::engine::material::Sourced;
use crate::engine::structure::duration::LoadTime;
use crate::engine::structure::wood::{SCATTER, Wood, WoodKind, divisors, said, woods};
use crate::engine::units::Stress;
use crate::words::{Words, numbers as say, numbers_frame as page};

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:expr, $unit:literal, $value:expr;)+) => {
        $(const $name: Symbol = Symbol::new($sign, $meaning, $unit, $value);)+
    };
}

symbols! {
    AXIAL = "N", page::LETTER_AXIAL, "N", |_| Some(hand()?.station.axial_n);
    ACROSS = "X", page::LETTER_ACROSS, "N", |_| None;
    UP = "Y", page::LETTER_UP, "N", |_| None;
    COSINE = "p", page::LETTER_COSINE, "", |_| Some(hand()?.way.0);
    SINE = "q", page::LETTER_SINE, "", |_| Some(hand()?.way.1);
    SHEAR = "V", page::LETTER_SHEAR, "N", |_| Some(hand()?.station.shear_n);
    MOMENT = "M", page::LETTER_MOMENT, "N·m", |_| Some(hand()?.station.moment_n_m);
    AT_X = "x", page::LETTER_AT_X, "mm", |_| None;
    CUT_X = "x₀", page::LETTER_CUT_X, "mm", |_| Some(hand()?.station.at.x.to_mm());
    AT_Y = "y", page::LETTER_AT_Y, "mm", |_| None;
    CUT_Y = "y₀", page::LETTER_CUT_Y, "mm", |_| Some(hand()?.station.at.y.to_mm());
    TORQUE = "T", page::LETTER_TORQUE, "N·m", |_| Some(hand()?.station.torque_n_m);
    OFFSET = "e", page::LETTER_OFFSET, "mm", |_| Some(hand()?.offset.to_mm());
    SIDEWAYS = "M′", page::LETTER_SIDEWAYS, "N·m", |_| Some(hand()?.station.sideways_n_m);
    STRESS = "σ", page::LETTER_STRESS, "MPa", |_| Some(hand()?.uses[0].stress.to_mpa());
    SHEAR_STRESS = "τ", page::LETTER_SHEAR_STRESS, "MPa", |_| Some(hand()?.uses[1].stress.to_mpa());
    BREADTH = "b", page::LETTER_BREADTH, "mm", |_| Some(hand()?.station.section.breadth().to_mm());
    DEPTH = "h", page::LETTER_DEPTH, "mm", |_| Some(hand()?.station.section.depth().to_mm());
    TORSION = "c₁", page::LETTER_TORSION, "", |_| {
        Some(hand()?.station.section.torsion_numbers().c1)
    };
    GIVES_WAY = "Pₑ", page::LETTER_GIVES_WAY, "N", |_| Some(hand()?.pillar.3.to_n());
    MODULUS = "E", page::LETTER_MODULUS, "GPa", |_| Some(hand()?.pillar.2.to_gpa());
    INERTIA = "I", page::LETTER_INERTIA, "mm⁴", |_| Some(1e12 * hand()?.inertia_m4);
    PILLAR_LENGTH = "l", page::LETTER_PILLAR_LENGTH, "mm", |_| Some(hand()?.pillar.1.to_mm());
    BOARD_STRESS = "σ₁", page::LETTER_BOARD_STRESS, "MPa", |_| Some(hand()?.board.firm.stress.to_mpa());
    BOARD_MOMENT = "m", page::LETTER_BOARD_MOMENT, "N·m/m", |_| {
        Some(hand()?.board.firm.moment_n_m_per_m)
    };
    BOARD_PULL = "n", page::LETTER_BOARD_PULL, "N/m", |_| {
        Some(hand()?.board.firm.pull_n_per_m)
    };
    THICKNESS = "t", page::LETTER_THICKNESS, "mm", |_| Some(hand()?.board.thickness.to_mm());

    ALLOWED = "R", page::LETTER_ALLOWED, "MPa", |_| maple(LoadTime::Permanent);
    STRENGTH = "r", page::LETTER_STRENGTH, "MPa", |_| Some(sugar_maple()?.bending?.value.to_mpa());
    SPREAD = "v", page::LETTER_SPREAD, "", |_| Some(SCATTER.bending);
    TIME = "d", page::LETTER_TIME, "", |_| Some(LoadTime::Permanent.factor().value);
    DIVISOR = "n", page::LETTER_DIVISOR, "", |_| Some(divisors(WoodKind::Hardwood).bending);
    SHARE = "S", page::LETTER_SHARE, "", |_| None;
    SECONDS = "z", page::LETTER_SECONDS, "", |_| None;
}

fn sugar_maple() -> Option<Wood> {
    woods().into_iter().find(|wood| wood.key == "sugar-maple")
}

fn maple(time: LoadTime) -> Option<f64> {
    Some(sugar_maple()?.allowable(time).bending?.to_mpa())
}

pub(super) const LOADS: Written = Written {
    lead: Said(page::LOADS_LEAD),
    formula: &[
        (page::FORMULA_FORCES_BEYOND_CUT_NECK, Math("N = Σ (X p + Y q)")),
        (page::FORMULA_ACROSS, Math("V = Σ (Y p − X q)")),
        (page::FORMULA_BENDING, Math("M = Σ [(x − x₀) Y − (y − y₀) X]")),
        (page::FORMULA_TORQUE_STRINGS_HANG_BESIDE, Math("T = Σ e (X q − Y p)")),
        (page::FORMULA_BENDING_SIDEWAYS, Math("M′ = Σ e (X p + Y q)")),
        (page::FORMULA_STRESS_ALONG_GRAIN_SIZES, Math("σ = 6 M/(b h²) + 6 M′/(h b²) + N/(b h)")),
        (page::FORMULA_SHEAR_STRESS_SIZES_TOO, Math("τ = 1.5 V/(b h) + T/(c₁ h b²)")),
        (page::FORMULA_PILLAR, Math("Pₑ = π² E I/l²")),
        (page::FORMULA_BOARD_WHOSE_MOMENT_PULL, Math("σ₁ = 6 m/t² + n/t")),
    ],
    symbols: &[
        AXIAL,
        ACROSS,
        UP,
        COSINE,
        SINE,
        SHEAR,
        MOMENT,
        AT_X,
        CUT_X,
        AT_Y,
        CUT_Y,
        TORQUE,
        OFFSET,
        SIDEWAYS,
        STRESS,
        SHEAR_STRESS,
        BREADTH,
        DEPTH,
        TORSION,
        GIVES_WAY,
        MODULUS,
        INERTIA,
        PILLAR_LENGTH,
        BOARD_STRESS,
        BOARD_MOMENT,
        BOARD_PULL,
        THICKNESS,
    ],
    assumptions: &[
        Said(page::LOADS_BOTH_ENDS_JOINTS_MAY),
        Said(page::LOADS_EACH_PULL_ACTS_BRIDGE),
        Said(page::LOADS_BEND_NECK_STRESSES_CURVED),
        Said(page::LOADS_SHEAR_TWIST_ADDED_HELD),
        Said(page::LOADS_HOLES_PINS_TAKE_THEIR),
        Said(page::LOADS_RIM_ROUND_HOLE_STRESS),
        Said(page::LOADS_PILLAR_ONLY_PUSHES_DOES),
        Said(page::LOADS_JOINT_SIZES_FACES_BEAR),
        Said(page::LOADS_JOINT_WITHOUT_SIZES_LOOKED),
        Said(page::LOADS_BASE_STIFF_TURNS),
        Said(page::LOADS_SOUNDBOX_TUBE_THIN_WALLS),
        Said(page::LOADS_BOARD_PLATE_STIFF_ALONG),
        Said(page::LOADS_LINERS_SIDES_HOLD_EDGES),
        Said(page::LOADS_GLUE_EDGE_TAKEN_STIFF),
        Said(page::LOADS_WHERE_BARS_END),
        Said(page::LOADS_HOLES_STRINGS),
        Said(page::LOADS_PART_STRINGS_UP_EVERY),
    ],
    range: &[
        Said(page::LOADS_GOOD_COMPARING_DESIGNS_FINDING),
        Said(page::LOADS_STATICS_EXACT_MANY_DIGITS),
        Said(page::LOADS_FAR_BOARD_CREEPS_HUMIDITY),
        Said(page::LOADS_WITHIN_SOME_DEPTHS_JOINT),
    ],
    sources: &[
        from::FRAME_STATICS,
        from::TORSION,
        from::COLUMNS,
        from::JOINTS,
        from::TUBES,
        from::PLATES,
        from::GLUED_ENDS,
        from::RIMS,
        from::CREEP,
        from::DAMP,
        from::PRACTICE,
    ],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const WOODS: Written = Written {
    lead: Said(page::WOODS_LEAD),
    formula: &[
        (page::FORMULA_STRESS_MAY_ALLOWED, Math("R = r (1 − 1.645 v) d/n")),
        (page::FORMULA_TIME_LEAVES_STRENGTH, Math("S = 18.3 + 108.4 z^(−0.0464)")),
    ],
    symbols: &[ALLOWED, STRENGTH, SPREAD, TIME, DIVISOR, SHARE, SECONDS],
    assumptions: &[
        Said(page::WOODS_STRENGTHS_MEANS_SMALL_PIECES),
        Said(page::WOODS_LASTING_LOAD_COUNTS_FACTOR),
        Said(page::WOODS_GRAIN_SLANTS_TAKES_STRENGTH),
        Said(page::WOODS_BIRCH_PLYWOOD_WORKED_OUT),
        Said(page::WOODS_NECK_GLUED_UP_LAYERS),
        Said(page::WOODS_CROSSED_LAYERS_NECK_ALSO),
        Said(page::WOODS_METAL_BESIDE_NECK_BENDS),
        Said(page::WOODS_GLUE_BEARS_T_X),
        Said(page::WOODS_WOOD_YOUR_OWN_HAS),
    ],
    range: &[
        Said(page::WOODS_PLANKS_DIFFER_WEIGH_YOURS),
        Said(page::WOODS_STRENGTHS_THOSE_DRY_ROOMS),
        Said(page::WOODS_WHERE_NO_STRENGTH_TABULATED),
    ],
    sources: &[
        from::WOOD_TABLE,
        from::WOOD_LIMITS,
        from::TIME,
        from::PLYWOOD,
        from::LAMINATES,
        from::METALS,
        from::HELD_METAL,
        from::BRASS,
        from::OWN_WOOD,
        from::DAMP,
    ],
    missing: &[],
    worked: Worked::Nylon,
};

/// Every figure of the built-in woods: its source, how well it is known, and what of it may be allowed for good.
pub(super) fn table() -> Table {
    let heads = heads(say::HEAD_WOOD);
    let groups = woods().iter().map(|wood| (capital(wood.name.said()), rows(wood))).collect();
    Table { caption: say::TABLE_WOODS.said(), heads, groups }
}

fn rows(wood: &Wood) -> Vec<Vec<String>> {
    let allowed = wood.allowable(LoadTime::Permanent);
    let strengths = [
        (say::FACT_BENDING, &wood.bending, allowed.bending),
        (say::FACT_COMPRESSION_ALONG, &wood.compression_along, allowed.compression_along),
        (say::FACT_COMPRESSION_ACROSS, &wood.compression_across, allowed.compression_across),
        (say::FACT_SHEAR, &wood.shear, allowed.shear),
        (say::FACT_TENSION_ACROSS, &wood.tension_across, allowed.tension_across),
    ];
    let mut rows = Vec::new();
    if let Some(density) = &wood.density {
        let text = with(density.value.to_kg_per_m3(), "kg/m³");
        rows.push(row(say::FACT_DENSITY, text, density));
    }
    if let Some(modulus) = &wood.modulus {
        rows.push(row(say::FACT_MODULUS_BENDING, with(modulus.value.to_gpa(), "GPa"), modulus));
    }
    for (what, strength, allowed) in strengths {
        let Some(strength) = strength else { continue };
        let value = mpa(strength.value);
        let value = match allowed {
            Some(allowed) => say::strength_allowed(&mpa(allowed), &value),
            None => value,
        };
        rows.push(row(what, value, strength));
    }
    rows
}

fn mpa(stress: Stress) -> String {
    with(stress.to_mpa(), "MPa")
}

fn row<T>(what: Words, value: String, sourced: &Sourced<T>) -> Vec<String> {
    let known = super::standing(sourced.standing).to_owned();
    vec![what.into(), value, said(&sourced.source).to_owned(), known]
}
