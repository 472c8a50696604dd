//! Turning from typed lengths to a harmonic curve and back, so that the harp stays as it is.

use super::document::{Design, DrivesSpec, GeometrySpec, MOST_NODES};
use super::edit::Edit;
use super::resolve::{Resolved, curve};
use super::{display, typed};
use crate::engine::analysis::{Analysis, Harp};
use crate::engine::geometry::{CurveError, PinCurve, lay_out};
use crate::engine::units::Length;
use crate::words::kinds as say;

/// The most nodes of a curve that is laid through the pins: few enough to draw by hand.
pub const FEW_NODES: usize = 7;

/// A change of what drives, with a sentence about what it does to the harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Turned {
    /// The change.
    pub edit: Edit,
    /// What it does.
    pub told: String,
}

/// Lets a curve drive that is laid as near as it goes to the pins of the present lengths.
///
/// # Errors
///
/// When fewer than two strings have a length.
pub fn to_curve(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
) -> Result<Turned, CurveError> {
    let band = lay_out(&resolved.harp, analysis, &resolved.geometry);
    let fitted = PinCurve::closest(&band.pins(), FEW_NODES)?;
    let hundredths = |length: Length| (length.to_mm() * 100.0).round() / 100.0;
    let nodes = fitted.curve.nodes();
    let nodes_mm: Vec<(f64, f64)> =
        nodes.iter().map(|(across, along)| (hundredths(*across), hundredths(*along))).collect();
    let geometry =
        GeometrySpec { drives: DrivesSpec::NeckCurve, nodes_mm, ..design.geometry.clone() };
    let curve = curve(&geometry)?;
    let lengths = curve.lengths(resolved.harp.strings.len(), &resolved.geometry);
    let mut most = (0.0, 0);
    let mut new = 0;
    for (row, (string, length)) in resolved.harp.strings.iter().zip(&lengths).enumerate() {
        match (&string.length, length) {
            (Ok(before), Ok(after)) => {
                let change = (after.to_mm() - before.to_mm()).abs();
                if change > most.0 {
                    most = (change, row);
                }
            }
            (Err(_), Ok(_)) => new += 1,
            _ => {}
        }
    }
    let mut told = if most.0 < 0.05 {
        say::curve_drives_same(&nodes.len())
    } else {
        let change = display::decimals(most.0, 1);
        say::curve_drives_changed(&change, &nodes.len(), &name(&resolved.harp, most.1))
    };
    if new > 0 {
        told = say::curve_new(&new, &told);
    }
    Ok(Turned { edit: Edit::Drives { geometry: Box::new(geometry), lengths: Vec::new() }, told })
}

/// Lets the lengths drive again: those that follow from the curve, to a tenth of a millimetre, go into the cells.
pub fn to_lengths(design: &Design, resolved: &Resolved) -> Turned {
    let drawn = design.geometry.drives == DrivesSpec::NeckCurve && curve(&design.geometry).is_ok();
    let strings = &resolved.harp.strings;
    let mut left = 0;
    let lengths = strings
        .iter()
        .map(|string| {
            let followed = string.length.ok().filter(|_| drawn);
            left += usize::from(followed.is_none());
            followed.map(|length| plain_tenths(length.to_mm()))
        })
        .collect();
    let geometry = GeometrySpec { drives: DrivesSpec::Lengths, ..design.geometry.clone() };
    let told = match (drawn, left) {
        (false, _) => say::LENGTHS_DRIVE_TYPED.into(),
        (true, 0) => say::LENGTHS_DRIVE.into(),
        (true, left) => say::lengths_drive_but(&left),
    };
    Turned { edit: Edit::Drives { geometry: Box::new(geometry), lengths }, told }
}

/// The nodes with one more, on the curve, in the middle of the widest piece; `None` where there is no curve, or no
/// room for one more.
pub fn one_more_node(spec: &GeometrySpec) -> Option<Vec<(f64, f64)>> {
    let curve = curve(spec).ok()?;
    if spec.nodes_mm.len() >= MOST_NODES {
        return None;
    }
    let mut nodes = spec.nodes_mm.clone();
    let width = |place: usize| nodes[place + 1].0 - nodes[place].0;
    let widest = (1..nodes.len() - 1)
        .fold(0, |best, place| if width(place) > width(best) { place } else { best });
    let across = (nodes[widest].0 + width(widest) / 2.0).round();
    let along = curve.along_at(Length::from_mm(across)).to_mm();
    nodes.insert(widest + 1, (across, (along * 100.0).round() / 100.0));
    Some(nodes)
}

/// A string in a sentence.
fn name(harp: &Harp, row: usize) -> String {
    match harp.strings.get(row).and_then(|string| string.note) {
        Some(note) => say::string_with_note_in_sentence(&note.printed(), &(row + 1)),
        None => say::string_in_sentence(&(row + 1)),
    }
}

/// A length in millimetres as it would be typed, to a tenth.
fn plain_tenths(mm: f64) -> String {
    let text = format!("{mm:.1}");
    typed::cut(text.strip_suffix(".0").unwrap_or(&text))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    fn lengths_mm(design: &Design) -> Vec<f64> {
        let strings = resolve(design).harp.strings;
        strings.iter().map(|string| string.length.unwrap().to_mm()).collect()
    }

    fn farthest(one: &[f64], other: &[f64]) -> f64 {
        one.iter().zip(other).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max)
    }

    #[test]
    fn a_curve_takes_over_with_little_change_and_gives_back_its_lengths() {
        for sample in SAMPLES {
            let design = sample.design();
            let resolved = resolve(&design);
            let turned = to_curve(&design, &resolved, &analyse(&resolved.harp)).unwrap();
            let drawn = turned.edit.apply(&design);
            assert_eq!(drawn.geometry.drives, DrivesSpec::NeckCurve);
            let nodes = drawn.geometry.nodes_mm.len();
            assert!((2..=FEW_NODES).contains(&nodes), "{}: {nodes}", sample.key);
            let before = lengths_mm(&design);
            let change = farthest(&before, &lengths_mm(&drawn));
            assert!(change < 10.0, "{}: {change} mm, {}", sample.key, turned.told);
            if change >= 0.05 {
                let said = format!("is {} mm, at string", display::decimals(change, 1));
                assert!(turned.told.contains(&said), "{said} is not in {}", turned.told);
            }
            let back = to_lengths(&drawn, &resolve(&drawn)).edit.apply(&drawn);
            assert_eq!(back.geometry.drives, DrivesSpec::Lengths);
            let off = farthest(&lengths_mm(&drawn), &lengths_mm(&back));
            assert!(off <= 0.05 + 1e-9, "{}: {off}", sample.key);
        }
    }

    #[test]
    fn a_node_more_lies_on_the_curve() {
        let nodes_mm = vec![(0.0, 900.0), (100.0, 700.0), (300.0, 400.0)];
        let spec = GeometrySpec { nodes_mm, ..GeometrySpec::default() };
        let more = one_more_node(&spec).unwrap();
        assert_eq!((more.len(), more[2].0), (4, 200.0));
        let on_curve = curve(&spec).unwrap().along_at(Length::from_mm(200.0)).to_mm();
        assert!((more[2].1 - on_curve).abs() <= 0.005 + 1e-9);
        let full = (0..40).map(|at| (f64::from(at), 500.0)).collect();
        assert_eq!(one_more_node(&GeometrySpec { nodes_mm: full, ..spec }), None);
        assert_eq!(one_more_node(&GeometrySpec::default()), None);
    }

    #[test]
    fn a_curve_that_cannot_be_used_leaves_what_was_typed() {
        let mut design = SAMPLES[0].design();
        design.geometry.drives = DrivesSpec::NeckCurve;
        design.geometry.nodes_mm = vec![(0.0, 100.0)];
        let turned = to_lengths(&design, &resolve(&design));
        assert_eq!(turned.edit.apply(&design).strings, design.strings);
        assert!(turned.told.contains("as they were typed"), "{}", turned.told);
        let none = Design::default();
        let resolved = resolve(&none);
        let error = to_curve(&none, &resolved, &analyse(&resolved.harp)).unwrap_err();
        assert_eq!(error, CurveError::Count { got: 0 });
    }
}
