//! How wood swells and shrinks across its grain.

use crate::engine::material::Standing;

/// By which share of itself a piece swells across the grain for each per cent of moisture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shrinks {
    /// Square to the rings.
    pub radial: f64,
    /// Along the rings.
    pub tangential: f64,
    /// How well both are known.
    pub standing: Standing,
}

use Standing::{Computed, FromMemory, Seen};

/// Key of the wood, both coefficients for a change of moisture between 6 and 14 %, and how well they are known.
///
/// Source: *Wood Handbook*, USDA Forest Products Laboratory, FPL-GTR-190, table 13-5; the hardwoods read in a copy but for
/// mahogany, and yellow-poplar worked out from table 4-3. European spruce and graded softwood are taken as Sitka spruce.
const ROWS: [(&str, f64, f64, Standing); 15] = [
    ("sitka-spruce", 0.00148, 0.00263, FromMemory),
    ("engelmann-spruce", 0.00130, 0.00248, FromMemory),
    ("sugar-maple", 0.00165, 0.00353, Seen),
    ("red-maple", 0.00137, 0.00289, Seen),
    ("black-walnut", 0.00190, 0.00274, Seen),
    ("black-cherry", 0.00126, 0.00248, Seen),
    ("yellow-poplar", 0.00158, 0.00289, Computed),
    ("white-oak", 0.00180, 0.00365, Seen),
    ("yellow-birch", 0.00256, 0.00338, Seen),
    ("paper-birch", 0.00219, 0.00304, Seen),
    ("sweet-birch", 0.00256, 0.00338, Seen),
    ("american-beech", 0.00190, 0.00431, Seen),
    ("mahogany", 0.00172, 0.00238, FromMemory),
    ("european-spruce", 0.00148, 0.00263, FromMemory),
    ("c24", 0.00148, 0.00263, FromMemory),
];

/// How a built-in wood swells across its grain; `None` for plywood, whose veneers hold each other, and for what is no
/// wood of the list.
pub fn shrinks(key: &str) -> Option<Shrinks> {
    let (_, radial, tangential, standing) = *ROWS.iter().find(|row| row.0 == key)?;
    Some(Shrinks { radial, tangential, standing })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::wood::KEYS;

    #[test]
    fn every_wood_swells_more_along_its_rings() {
        for key in KEYS {
            let wood = shrinks(key).unwrap_or_else(|| panic!("{key}"));
            assert!(wood.radial > 0.0 && wood.tangential > wood.radial, "{key}");
        }
        assert_eq!(shrinks("birch-plywood"), None);
    }

    /// Wood that shrinks by a share `S` of its green size over 30 % of moisture has lost two thirds of that at 10 %, so that
    /// it then swells by `S/(30 (1 − 2 S/3))` for each per cent. Shrinkages in per cent, radial and tangential.
    ///
    /// Source: *Wood Handbook*, table 4-3, read in a copy; the formula worked out.
    #[test]
    fn the_coefficients_follow_from_the_shrinkage_from_green() {
        let printed = [
            ("black-cherry", 3.7, 7.1),
            ("black-walnut", 5.5, 7.8),
            ("american-beech", 5.5, 11.9),
            ("yellow-birch", 7.3, 9.5),
            ("yellow-poplar", 4.6, 8.2),
        ];
        for (key, radial, tangential) in printed {
            let wood = shrinks(key).unwrap();
            for (coefficient, percent) in [(wood.radial, radial), (wood.tangential, tangential)] {
                let share = percent / 100.0;
                let worked_out = share / (30.0 * (1.0 - 2.0 * share / 3.0));
                // Half of the last printed digit.
                assert!((coefficient - worked_out).abs() < 0.5e-5, "{key}: {worked_out}");
            }
        }
    }
}
