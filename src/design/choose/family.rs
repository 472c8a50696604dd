//! Families of strings, and what is usual in each: how thick a plain string is at most, how much of its breaking load
//! a string bears, and by how much the feel steps from a string to the next.

use super::kind::kind_name;
use crate::design::document::{ClassSpec, Design, FamilySpec, MaterialSpec};
use crate::design::library::find;
use crate::design::settings::Setting;
use crate::engine::limit::{is_above, is_below};

/// Plain polymers denser than this are fluorocarbon and not nylon: between 1140 and 1780 kg/m³.
const DENSE_KG_PER_M3: f64 = 1_450.0;

/// What is usual in a family.
struct Row {
    family: FamilySpec,
    thickest_plain_mm: f64,
    share_percent: (f64, f64),
    jump_percent: f64,
}

/// Thicker plain strings sound dull, slacker ones are soft and false, tighter ones break early. Common practice, no
/// source; the load shares of the samples lie within. Wire is as thick as new harps have it (`usual_gauges`).
const USUAL: [Row; 4] = [
    Row {
        family: FamilySpec::Nylon,
        thickest_plain_mm: 1.40,
        share_percent: (25.0, 72.0),
        jump_percent: 30.0,
    },
    Row {
        family: FamilySpec::Gut,
        thickest_plain_mm: 2.70,
        share_percent: (25.0, 65.0),
        jump_percent: 25.0,
    },
    Row {
        family: FamilySpec::Fluorocarbon,
        thickest_plain_mm: 1.50,
        share_percent: (25.0, 70.0),
        jump_percent: 30.0,
    },
    Row {
        family: FamilySpec::Wire,
        thickest_plain_mm: 1.50,
        share_percent: (35.0, 75.0),
        jump_percent: 25.0,
    },
];

/// The limits that hold for a choice where the maker sets none, the instrument's own among them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// The thickest plain string of the families that are chosen from.
    pub thickest_plain_mm: f64,
    /// The lowest load share, in per cent.
    pub least_share_percent: f64,
    /// The highest.
    pub most_share_percent: f64,
    /// Highest load share of what has a core of gut or plastic, on top of the other.
    pub most_soft_share_percent: f64,
    /// The highest step of the feel between neighbours, in per cent.
    pub jump_percent: f64,
}

/// The family of plain strings of a material.
fn family_of(material: &MaterialSpec) -> FamilySpec {
    match material.class {
        ClassSpec::Metal => FamilySpec::Wire,
        ClassSpec::Natural => FamilySpec::Gut,
        ClassSpec::Polymer if material.density_kg_per_m3.value > DENSE_KG_PER_M3 => {
            FamilySpec::Fluorocarbon
        }
        ClassSpec::Polymer => FamilySpec::Nylon,
    }
}

/// The family of plain strings of a kind, by the name of its material; `None` for one that is not known.
pub(super) fn family_named(materials: &[MaterialSpec], kind: &str) -> Option<FamilySpec> {
    find(materials, kind).map(family_of)
}

/// The families of plain strings that are chosen from: those of the kinds that are listed, else the one that is
/// asked for, else those on the harp. A harp without plain strings is taken for one of nylon.
pub(super) fn families(design: &Design) -> Vec<FamilySpec> {
    let materials = &design.materials;
    let mut families = Vec::new();
    let mut add = |kind: &str| {
        if let Some(family) = family_named(materials, kind)
            && !families.contains(&family)
        {
            families.push(family);
        }
    };
    if !design.targets.kinds.is_empty() {
        design.targets.kinds.iter().for_each(|spec| add(&kind_name(materials, &spec.kind)));
    } else if design.targets.family == FamilySpec::Present {
        let plain = design.strings.iter().filter(|string| string.make_up.is_plain());
        plain.for_each(|string| add(&string.make_up.material));
    } else {
        families.push(design.targets.family);
    }
    if families.is_empty() {
        families.push(FamilySpec::Nylon);
    }
    families
}

/// How thick a plain string of a family is at most.
pub(super) fn thickest_mm(design: &Design, family: FamilySpec) -> f64 {
    let typed = Some(Setting::ThickestPlain).filter(|setting| setting.wrong(design).is_none());
    let typed = typed.and_then(|setting| setting.of(design));
    let usual = USUAL.iter().find(|row| row.family == family).map(|row| row.thickest_plain_mm);
    typed.or(usual).unwrap_or(f64::INFINITY)
}

/// What is usual for a design. Of several families each limit is the widest; those of the instrument hold as well, so
/// that no string is offered of which a finding tells.
pub fn usual(design: &Design) -> Usual {
    let limits = &design.limits;
    let (mut thickest, mut least, mut most, mut jump) = (0.0, f64::INFINITY, 0.0, 0.0);
    for family in families(design) {
        let Some(row) = USUAL.iter().find(|row| row.family == family) else { continue };
        thickest = f64::max(thickest, row.thickest_plain_mm);
        least = f64::min(least, row.share_percent.0);
        most = f64::max(most, row.share_percent.1);
        jump = f64::max(jump, row.jump_percent);
    }
    let within = |value: f64, limit: f64, is_beyond: fn(f64, f64) -> bool| {
        if is_beyond(value, limit) { limit } else { value }
    };
    Usual {
        thickest_plain_mm: thickest,
        least_share_percent: within(least, limits.slack_share_percent, is_below),
        most_share_percent: within(most, limits.working_share_percent, is_above),
        most_soft_share_percent: limits.soft_share_percent,
        jump_percent: within(jump, limits.jump_percent, is_above),
    }
}
