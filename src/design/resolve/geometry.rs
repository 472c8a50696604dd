//! What the shape of the harp means, as the engine takes it.

use crate::design::document::{Design, DrivesSpec, GapsSpec, GeometrySpec, MeasuredSpec};
use crate::design::settings::{GAP, Setting};
use crate::engine::analysis::HarpString;
use crate::engine::geometry::{CurveError, Gaps, Geometry, PinCurve};
use crate::engine::order::sort;
use crate::engine::structure::strip::Spacing;
use crate::engine::units::Length;
use crate::words::{numeral, typed as say};

/// The shape of a design, with a sentence for each setting that cannot be used.
pub(super) fn geometry(design: &Design, errors: &mut Vec<String>) -> Geometry {
    let mm = |setting: Setting| Length::from_mm(setting.number(design));
    let after_mm = design.allowances.after_length_mm;
    let geometry = Geometry {
        board_angle_rad: Setting::BoardAngle.number(design).to_radians(),
        lean_rad: Setting::Lean.number(design).to_radians(),
        gaps: gaps(design, errors),
        measured: match design.geometry.spacing.measured {
            MeasuredSpec::Square => Spacing::Square,
            MeasuredSpec::AlongBoard => Spacing::AlongBoard,
        },
        start: mm(Setting::Start),
        pin_sideways: mm(Setting::PinSideways),
        strings_from_neck: mm(Setting::StringsFromNeck),
        below_pins: mm(Setting::BelowPins),
        above_pins: mm(Setting::AbovePins),
        pillar_gap: mm(Setting::PillarGap),
        pillar_width: mm(Setting::PillarWidth),
        board_below: mm(Setting::BoardBelow),
        board_above: mm(Setting::BoardAbove),
    };
    let sideways_mm = geometry.pin_sideways.to_mm();
    if sideways_mm.abs() > after_mm {
        errors.push(say::pins_too_far(&numeral(sideways_mm), &numeral(after_mm)));
    }
    geometry
}

fn gaps(design: &Design, errors: &mut Vec<String>) -> Gaps {
    let usual = Setting::Gap.usual().unwrap_or(GAP.sensible.0);
    let mut mm = |got| Length::from_mm(GAP.take(got, usual, errors));
    let no_such = match &design.geometry.spacing.gaps {
        // What is wrong with the width of all gaps is told with the other settings.
        GapsSpec::UniformMm(_) => {
            return Gaps::Uniform(Length::from_mm(Setting::Gap.number(design)));
        }
        GapsSpec::ZonesMm(zones) if !zones.is_empty() => {
            let number = |number: u32| usize::try_from(number).unwrap_or(usize::MAX);
            let mut zones: Vec<(usize, Length)> =
                zones.iter().map(|(at, width)| (number(*at), mm(*width))).collect();
            sort(&mut zones, |one, other| one.0 > other.0);
            let count = zones.len();
            zones.dedup_by_key(|(at, _)| *at);
            if zones.len() < count {
                errors.push(say::ZONES_TWICE.into());
            }
            return Gaps::Zones(zones);
        }
        GapsSpec::EachMm(widths) if !widths.is_empty() => {
            return Gaps::Each(widths.iter().map(|width| mm(*width)).collect());
        }
        GapsSpec::ZonesMm(_) => say::no_zone,
        GapsSpec::EachMm(_) => say::no_gap,
    };
    errors.push(no_such(&numeral(usual)));
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
        Err(error) => errors.push(say::curve_unusable(&error)),
    }
}

/// The harmonic curve.
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
