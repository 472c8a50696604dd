//! Limits of what is wanted of the strings.

use super::{CheckError, many, short, tidy_text, within};
use crate::design::document::{MOST_KINDS, MOST_POINTS, MOST_ZONES, TargetsSpec};
use crate::words::files as say;

/// Where a point may lie, in keys: a little beyond every note there is.
const KEYS: (f64, f64) = (-24.0, 160.0);
const FORCE_N: (f64, f64) = (0.0, 1_000_000.0);

/// Whether what is wanted keeps within the limits of a document.
pub(super) fn targets(spec: &TargetsSpec) -> Result<(), CheckError> {
    for points in [&spec.points_n_per_mm, &spec.points_n] {
        many(say::POINTS, points.len(), MOST_POINTS)?;
        for (key, value) in points {
            within(|| say::POINT_PLACE.into(), *key, KEYS)?;
            within(|| say::POINT.into(), *value, FORCE_N)?;
        }
    }
    many(say::GAUGE_ZONES, spec.zones.len(), MOST_ZONES)?;
    for zone in &spec.zones {
        for text in [&zone.lowest, &zone.highest, &zone.thinnest, &zone.thickest] {
            short(text, || say::ZONE_TEXT.into())?;
        }
    }
    short(&spec.wound_from, || say::WOUND_FROM.into())?;
    many(say::KINDS_OF_STRING, spec.kinds.len(), MOST_KINDS)?;
    for kind in &spec.kinds {
        for text in [&kind.kind, &kind.lowest, &kind.highest] {
            short(text, || say::KIND_OF_STRING_TEXT.into())?;
        }
    }
    Ok(())
}

/// Takes out of what is wanted what nobody types.
pub(super) fn tidy_targets(spec: &mut TargetsSpec) {
    for zone in &mut spec.zones {
        for text in [&mut zone.lowest, &mut zone.highest, &mut zone.thinnest, &mut zone.thickest] {
            tidy_text(text, false);
        }
    }
    tidy_text(&mut spec.wound_from, false);
    for kind in &mut spec.kinds {
        for text in [&mut kind.kind, &mut kind.lowest, &mut kind.highest] {
            tidy_text(text, false);
        }
    }
}
