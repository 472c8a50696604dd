//! The built-in woods. Figures of the table of clear wood at 12 % moisture; of each it is marked whether it
//! was read in a copy of the table.

use super::super::sourced;
use super::{Basis, ElasticRatios, Wood, WoodKind};
use crate::engine::material::{Sourced, Standing};
use crate::engine::units::{Density, Stress};
use crate::words::{Words, woods as say};

const TABLE: &str =
    "Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, tables 5-3 and 5-5";
const TABLE_COPY: &str = say::FROM_COPIES.english();
/// Of the maples of the table that have a figure for tension across the grain, silver maple has the least.
const BOUND: &str = say::FROM_BOUND.english();
const RATIOS: &str = "Wood Handbook, USDA Forest Products Laboratory, table 5-1";
const RATIOS_COPY: &str = say::FROM_COPY.english();
const GRADED: &str = "EN 338, strength class C24";
const SPRUCE: &str = "D. Keunecke, S. Hering and P. Niemz, 2008";

/// Density at 12 % moisture for each unit of specific gravity, in kg/m³: `1000 · 1.12`.
const KG_PER_M3_PER_GRAVITY: f64 = 1120.0;

/// Coefficients of variation of clear wood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatter {
    /// Strength in bending.
    pub bending: f64,
    /// Modulus in bending.
    pub modulus: f64,
    /// Strength in compression along the grain.
    pub compression_along: f64,
    /// Stress in compression across the grain at the proportional limit.
    pub compression_across: f64,
    /// Strength in shear.
    pub shear: f64,
    /// Strength in tension across the grain.
    pub tension_across: f64,
    /// Density.
    pub density: f64,
}

/// How clear wood scatters about its means.
///
/// Source: *Wood Handbook*, table 5-6 (from memory).
pub const SCATTER: Scatter = Scatter {
    bending: 0.16,
    modulus: 0.22,
    compression_along: 0.18,
    compression_across: 0.28,
    shear: 0.14,
    tension_across: 0.25,
    density: 0.10,
};

/// A figure of the table.
#[derive(Clone, Copy)]
enum Cell {
    /// Read in a copy of the table.
    Read(f64),
    /// From memory of it.
    Memory(f64),
    /// Not there: that of another wood, from memory, as a lower bound.
    Bound(f64),
    /// Not there.
    Blank,
}
use Cell::{Blank, Bound, Memory, Read};

/// Key, name and botanical name; specific gravity; strength in bending in MPa, modulus in GPa, compression along
/// and across, shear, tension across, in MPa.
struct WoodRow {
    key: &'static str,
    name: Words,
    botanical: Words,
    kind: WoodKind,
    gravity: Cell,
    figures: [Cell; 6],
    /// `E_T`, `E_R`, `G_LR` and `G_LT` over `E_L`, and whether they were read.
    ratios: Option<([f64; 3], Option<f64>, bool)>,
}

use WoodKind::{Hardwood, Softwood};

const ROWS: [WoodRow; 13] = [
    WoodRow {
        key: "sitka-spruce",
        name: say::SITKA_SPRUCE,
        botanical: Words::plain("Picea sitchensis"),
        kind: Softwood,
        gravity: Memory(0.40),
        figures: [Memory(70.0), Memory(10.8), Memory(38.7), Memory(4.0), Memory(7.9), Memory(2.6)],
        ratios: Some(([0.043, 0.078, 0.064], Some(0.061), false)),
    },
    WoodRow {
        key: "engelmann-spruce",
        name: say::ENGELMANN_SPRUCE,
        botanical: Words::plain("Picea engelmannii"),
        kind: Softwood,
        gravity: Read(0.35),
        figures: [Read(64.0), Read(8.9), Memory(30.9), Memory(2.8), Memory(8.3), Memory(2.4)],
        ratios: Some(([0.059, 0.128, 0.124], Some(0.120), false)),
    },
    WoodRow {
        key: "sugar-maple",
        name: say::SUGAR_MAPLE,
        botanical: Words::plain("Acer saccharum"),
        kind: Hardwood,
        gravity: Read(0.63),
        figures: [Read(109.0), Read(12.6), Read(54.0), Read(10.1), Read(16.1), Bound(3.4)],
        ratios: Some(([0.065, 0.132, 0.111], Some(0.063), true)),
    },
    WoodRow {
        key: "red-maple",
        name: say::RED_MAPLE,
        botanical: Words::plain("Acer rubrum"),
        kind: Hardwood,
        gravity: Read(0.54),
        figures: [Read(92.0), Read(11.3), Memory(45.1), Memory(6.9), Memory(12.8), Bound(3.4)],
        ratios: Some(([0.067, 0.140, 0.133], Some(0.074), false)),
    },
    WoodRow {
        key: "black-walnut",
        name: say::BLACK_WALNUT,
        botanical: Words::plain("Juglans nigra"),
        kind: Hardwood,
        gravity: Read(0.55),
        figures: [Read(101.0), Read(11.6), Read(52.3), Memory(7.0), Memory(9.4), Read(4.8)],
        ratios: Some(([0.056, 0.106, 0.085], Some(0.062), false)),
    },
    WoodRow {
        key: "black-cherry",
        name: say::BLACK_CHERRY,
        botanical: Words::plain("Prunus serotina"),
        kind: Hardwood,
        gravity: Read(0.50),
        figures: [Read(85.0), Read(10.3), Read(49.0), Read(4.8), Read(11.7), Read(3.9)],
        ratios: Some(([0.086, 0.197, 0.147], Some(0.097), false)),
    },
    WoodRow {
        key: "yellow-poplar",
        name: say::YELLOW_POPLAR,
        botanical: Words::plain("Liriodendron tulipifera"),
        kind: Hardwood,
        gravity: Read(0.42),
        figures: [Read(70.0), Read(10.9), Read(38.2), Memory(3.4), Memory(8.2), Read(3.7)],
        ratios: Some(([0.043, 0.092, 0.075], Some(0.069), false)),
    },
    WoodRow {
        key: "white-oak",
        name: say::WHITE_OAK,
        botanical: Words::plain("Quercus alba"),
        kind: Hardwood,
        gravity: Read(0.68),
        figures: [Read(105.0), Read(12.3), Read(51.3), Memory(7.4), Memory(13.8), Read(5.5)],
        ratios: Some(([0.072, 0.163, 0.086], None, false)),
    },
    WoodRow {
        key: "yellow-birch",
        name: say::YELLOW_BIRCH,
        botanical: Words::plain("Betula alleghaniensis"),
        kind: Hardwood,
        gravity: Read(0.62),
        figures: [Read(114.0), Read(13.9), Read(56.3), Read(6.7), Read(13.0), Read(6.3)],
        ratios: Some(([0.050, 0.078, 0.074], Some(0.068), false)),
    },
    WoodRow {
        key: "paper-birch",
        name: say::PAPER_BIRCH,
        botanical: Words::plain("Betula papyrifera"),
        kind: Hardwood,
        gravity: Read(0.55),
        figures: [Read(85.0), Read(11.0), Read(39.2), Read(4.1), Read(8.3), Blank],
        ratios: None,
    },
    WoodRow {
        key: "sweet-birch",
        name: say::SWEET_BIRCH,
        botanical: Words::plain("Betula lenta"),
        kind: Hardwood,
        gravity: Read(0.65),
        figures: [Read(117.0), Read(15.0), Read(58.9), Read(7.4), Read(15.4), Read(6.6)],
        ratios: None,
    },
    WoodRow {
        key: "american-beech",
        name: say::AMERICAN_BEECH,
        botanical: Words::plain("Fagus grandifolia"),
        kind: Hardwood,
        gravity: Read(0.64),
        figures: [Read(103.0), Read(11.9), Read(50.3), Read(7.0), Read(13.9), Read(7.0)],
        ratios: None,
    },
    WoodRow {
        key: "mahogany",
        name: say::MAHOGANY,
        botanical: Words::plain("Swietenia"),
        kind: Hardwood,
        gravity: Memory(0.45),
        figures: [Read(79.0), Read(10.3), Memory(46.7), Blank, Memory(8.5), Blank],
        ratios: Some(([0.064, 0.107, 0.066], Some(0.086), false)),
    },
];

/// The keys of the built-in woods, which can be asked for without the woods.
pub const KEYS: [&str; 15] = [
    "sitka-spruce",
    "engelmann-spruce",
    "sugar-maple",
    "red-maple",
    "black-walnut",
    "black-cherry",
    "yellow-poplar",
    "white-oak",
    "yellow-birch",
    "paper-birch",
    "sweet-birch",
    "american-beech",
    "mahogany",
    "european-spruce",
    "c24",
];

fn figure<T>(cell: Cell, to: impl Fn(f64) -> T) -> Option<Sourced<T>> {
    match cell {
        Read(value) => Some(sourced(to(value), TABLE_COPY, Standing::Seen)),
        Memory(value) => Some(sourced(to(value), TABLE, Standing::FromMemory)),
        Bound(value) => Some(sourced(to(value), BOUND, Standing::FromMemory)),
        Blank => None,
    }
}

fn wood(row: &WoodRow) -> Wood {
    let (key, name, botanical) = (row.key, row.name, row.botanical);
    let [bending, modulus, along, across, shear, tension] = row.figures;
    let density =
        figure(row.gravity, |gravity| Density::from_kg_per_m3(KG_PER_M3_PER_GRAVITY * gravity));
    let density = density.map(|sourced| match sourced.standing {
        Standing::Seen => Sourced { standing: Standing::Computed, ..sourced },
        _ => sourced,
    });
    let ratios = row.ratios.map(|([tangential, radial, shear_radial], shear_tangential, read)| {
        let value = ElasticRatios { tangential, radial, shear_radial, shear_tangential };
        let (source, standing) =
            if read { (RATIOS_COPY, Standing::Seen) } else { (RATIOS, Standing::FromMemory) };
        sourced(value, source, standing)
    });
    Wood {
        key,
        name,
        botanical,
        kind: row.kind,
        basis: Basis::Clear,
        density,
        bending: figure(bending, Stress::from_mpa),
        modulus: figure(modulus, Stress::from_gpa),
        compression_along: figure(along, Stress::from_mpa),
        compression_across: figure(across, Stress::from_mpa),
        shear: figure(shear, Stress::from_mpa),
        tension_across: figure(tension, Stress::from_mpa),
        ratios,
    }
}

/// European spruce without a flaw: moduli alone, as no strengths were found.
fn european_spruce() -> Wood {
    // E_L is 12.8 GPa; the modulus of a bending test is less by the factor of the table.
    let along = 12.8;
    let ratios = ElasticRatios {
        tangential: 0.397 / along,
        radial: 0.625 / along,
        shear_radial: 0.617 / along,
        shear_tangential: Some(0.587 / along),
    };
    let modulus = Stress::from_gpa(along / super::ALONG_OVER_BENDING);
    Wood {
        key: "european-spruce",
        name: say::EUROPEAN_SPRUCE,
        botanical: Words::plain("Picea abies"),
        kind: Softwood,
        basis: Basis::Clear,
        density: None,
        bending: None,
        modulus: Some(sourced(modulus, SPRUCE, Standing::FromMemory)),
        compression_along: None,
        compression_across: None,
        shear: None,
        tension_across: None,
        ratios: Some(sourced(ratios, SPRUCE, Standing::FromMemory)),
    }
}

fn graded_softwood() -> Wood {
    let mpa = |value| Some(sourced(Stress::from_mpa(value), GRADED, Standing::FromMemory));
    Wood {
        key: "c24",
        name: say::C24,
        botanical: say::CONIFERS,
        kind: Softwood,
        basis: Basis::Characteristic,
        density: Some(sourced(Density::from_kg_per_m3(420.0), GRADED, Standing::FromMemory)),
        bending: mpa(24.0),
        modulus: mpa(11_000.0),
        compression_along: mpa(21.0),
        compression_across: mpa(2.5),
        shear: mpa(4.0),
        tension_across: mpa(0.4),
        ratios: None,
    }
}

/// The built-in woods.
pub fn woods() -> Vec<Wood> {
    ROWS.iter().map(wood).chain([european_spruce(), graded_softwood()]).collect()
}
