//! The template of a part of a design: a bent back with the notches of a liner that is bent with it.

use super::model::Template;
use super::part::noted;
use crate::design::display::decimals;
use crate::design::document::Design;
use crate::design::parts::Parts;
use crate::design::parts::sizes::PartSize;
use crate::engine::parts::bent::notches;
use crate::engine::parts::{Part, Sheet};
use crate::words::building as say;

/// Left of a liner behind its notches. Common practice, no source.
const BEHIND_MM: f64 = 1.5;

/// The template of a part, with the notes of the strings and, where it is bent, what its liner needs.
pub fn template_of(design: &Design, parts: &Parts, part: &Part) -> Template {
    let more = part.sheet.as_ref().and_then(|sheet| notched(design, sheet));
    noted(part, &design.title, &parts.notes, more)
}

/// The notches of a liner along the lower end of a bent back.
fn notched(design: &Design, sheet: &Sheet) -> Option<String> {
    let kerf_mm = PartSize::Kerf.number(&design.geometry);
    let deep_mm = design.geometry.soundbox.liner_width_mm - BEHIND_MM;
    if deep_mm <= 0.0 {
        return None;
    }
    let angle_rad = 2.0 * sheet.half_rad;
    let arc_m = sheet.radius_m.0 * angle_rad;
    let (count, apart) = notches(arc_m, angle_rad, (1e-3 * kerf_mm, 1e-3 * deep_mm))?;
    let [deep, wide] = [deep_mm, kerf_mm].map(|size| decimals(size, 1));
    Some(say::bent_notches(&decimals(1e3 * apart, 1), &count, &deep, &wide))
}
