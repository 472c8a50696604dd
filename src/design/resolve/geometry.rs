//! What the shape of the harp means, as the engine takes it.

use super::within;
use crate::design::document::{
    Design, DrivesSpec, GapsSpec, GeometrySpec, MeasuredSpec, SpacingSpec,
};
use crate::engine::analysis::HarpString;
use crate::engine::geometry::{BOARD_ANGLE_DEG, CurveError, Gaps, Geometry, LEAN_DEG, PinCurve};
use crate::engine::order::sort;
use crate::engine::structure::strip::Spacing;
use crate::engine::units::Length;

/// The least and the greatest gap between two strings, in millimetres.
pub const GAP_MM: (f64, f64) = (1.0, 200.0);
/// The least and the greatest of most other measures, in millimetres.
pub const MEASURE_MM: (f64, f64) = (0.0, 1_000.0);
/// The least and the greatest thickness of wood, in millimetres.
pub const SOLID_MM: (f64, f64) = (0.5, 1_000.0);
/// The height of a bar above the board, in millimetres.
pub const START_MM: (f64, f64) = (0.0, 300.0);
/// How far a tuning pin may stand to either side, in millimetres.
pub const SIDEWAYS_MM: (f64, f64) = (-200.0, 200.0);
/// How far beside its middle the push on the pillar may act, in millimetres.
pub const BESIDE_MM: (f64, f64) = (0.0, 200.0);
/// Where a section of the neck may lie, in per cent of the way from the shoulder to the pillar.
pub const AT_PERCENT: (f64, f64) = (0.0, 100.0);
/// How much the grain of the neck may slant, in per cent: where the table of its strength ends.
pub const GRAIN_PERCENT: (f64, f64) = (0.0, 20.0);

/// The shape of a design, with a sentence for each setting that cannot be used.
pub(super) fn geometry(design: &Design, errors: &mut Vec<String>) -> Geometry {
    let (given, usual) = (&design.geometry, GeometrySpec::default());
    let mut take = |got, usual, what, limits, unit| within(got, usual, what, limits, unit, errors);
    let angle = (given.board_angle_deg, usual.board_angle_deg);
    let angle = take(angle.0, angle.1, "angle of strings and board", BOARD_ANGLE_DEG, "degrees");
    let lean = take(given.lean_deg, usual.lean_deg, "lean of the strings", LEAN_DEG, "degrees");
    let mut mm = |got, usual, what, limits| Length::from_mm(take(got, usual, what, limits, "mm"));
    let start = mm(given.start_mm, usual.start_mm, "height of the bar above the board", START_MM);
    let sideways = (given.pin_sideways_mm, usual.pin_sideways_mm);
    let pin_sideways = mm(sideways.0, sideways.1, "offset of the tuning pins", SIDEWAYS_MM);
    let beside = (given.strings_from_neck_mm, usual.strings_from_neck_mm);
    let strings_from_neck =
        mm(beside.0, beside.1, "distance of the strings from the middle of the neck", MEASURE_MM);
    let (neck, of) = (&given.neck, &usual.neck);
    let below_pins =
        mm(neck.below_pins_mm, of.below_pins_mm, "neck below the bridge pins", MEASURE_MM);
    let above_pins =
        mm(neck.above_pins_mm, of.above_pins_mm, "neck beyond the tuning pins", MEASURE_MM);
    let (pillar, of) = (&given.pillar, &usual.pillar);
    let pillar_gap =
        mm(pillar.gap_mm, of.gap_mm, "gap from the lowest string to the pillar", MEASURE_MM);
    let pillar_width = mm(pillar.width_mm, of.width_mm, "width of the pillar", SOLID_MM);
    let (board, of) = (&given.board, &usual.board);
    let board_below = mm(board.below_mm, of.below_mm, "board below the lowest string", MEASURE_MM);
    let board_above =
        mm(board.above_mm, of.above_mm, "board beyond the highest string", MEASURE_MM);
    let after_mm = design.allowances.after_length_mm;
    let geometry = Geometry {
        board_angle_rad: angle.to_radians(),
        lean_rad: lean.to_radians(),
        gaps: gaps(&given.spacing.gaps, errors),
        measured: match given.spacing.measured {
            MeasuredSpec::Square => Spacing::Square,
            MeasuredSpec::AlongBoard => Spacing::AlongBoard,
        },
        start,
        pin_sideways,
        strings_from_neck,
        below_pins,
        above_pins,
        pillar_gap,
        pillar_width,
        board_below,
        board_above,
    };
    let sideways_mm = pin_sideways.to_mm();
    if sideways_mm.abs() > after_mm {
        errors.push(format!(
            "the offset of the tuning pins must be at most the {after_mm} mm from bridge pin to tuning pin, got \
             {sideways_mm} mm (taken as {after_mm} mm)"
        ));
    }
    geometry
}

fn gaps(spec: &GapsSpec, errors: &mut Vec<String>) -> Gaps {
    let usual = match SpacingSpec::default().gaps {
        GapsSpec::UniformMm(mm) => mm,
        _ => GAP_MM.0,
    };
    let mut mm =
        |got| Length::from_mm(within(got, usual, "gap between strings", GAP_MM, "mm", errors));
    let none = match spec {
        GapsSpec::UniformMm(width) => return Gaps::Uniform(mm(*width)),
        GapsSpec::ZonesMm(zones) if !zones.is_empty() => {
            let number = |number: u32| usize::try_from(number).unwrap_or(usize::MAX);
            let mut zones: Vec<(usize, Length)> =
                zones.iter().map(|(at, width)| (number(*at), mm(*width))).collect();
            sort(&mut zones, |one, other| one.0 > other.0);
            let count = zones.len();
            zones.dedup_by_key(|(at, _)| *at);
            if zones.len() < count {
                errors.push(
                    "two zones of the spacing must not have one number (the first holds)"
                        .to_owned(),
                );
            }
            return Gaps::Zones(zones);
        }
        GapsSpec::EachMm(widths) if !widths.is_empty() => {
            return Gaps::Each(widths.iter().map(|width| mm(*width)).collect());
        }
        GapsSpec::ZonesMm(_) => "zone",
        GapsSpec::EachMm(_) => "gap",
    };
    errors
        .push(format!("the spacing must have at least one {none}, got none (taken as {usual} mm)"));
    Gaps::Uniform(Length::from_mm(usual))
}

/// Gives the strings the lengths that follow from the drawn curve, where it is the curve that drives. A curve that
/// cannot be used leaves the typed lengths, with a sentence.
pub(super) fn follow_curve(
    spec: &GeometrySpec,
    geometry: &Geometry,
    strings: &mut [HarpString],
    errors: &mut Vec<String>,
) {
    if spec.drives != DrivesSpec::NeckCurve {
        return;
    }
    match curve(spec) {
        Ok(curve) => {
            let lengths = curve.lengths(strings.len(), geometry);
            for (string, length) in strings.iter_mut().zip(lengths) {
                string.length = length;
            }
        }
        Err(error) => errors.push(format!("{error}; until then the typed lengths hold")),
    }
}

/// The drawn curve of the pins.
///
/// # Errors
///
/// When its nodes are too few or too many, or do not go on towards the treble.
pub fn curve(spec: &GeometrySpec) -> Result<PinCurve, CurveError> {
    let mm = Length::from_mm;
    let nodes: Vec<(Length, Length)> =
        spec.nodes_mm.iter().map(|(across, along)| (mm(*across), mm(*along))).collect();
    PinCurve::new(&nodes)
}
