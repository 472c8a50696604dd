//! The frame of a harp: its woods, sections, neck, pillar and board.

use super::Check;
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};

const BEER: &str = "F. P. Beer and E. R. Johnston, Mechanics of Materials";
const HIBBELER: &str = "R. C. Hibbeler, Engineering Mechanics: Statics";
const PYNITE: &str = "PyNite 3.2.0, a frame solver, by tests/published/scripts/frame_values.py";
const SCIKIT_FEM: &str =
    "scikit-fem 12.0.2, a library of finite elements, by tests/published/scripts/board_values.py";
const GRIDS: &str = "NumPy 2.4.6 and SciPy 1.17.1, by tests/published/scripts/timber_values.py";
const HANGING: &str =
    "scikit-fem 12.0.2, a library of finite elements, by tests/published/scripts/hanging_values.py";
const SCIPY: &str = "SciPy 1.17.1, by tests/published/scripts/frame_values.py";

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "wood-under-time",
        what: "what wood bears from a second to fifty years",
        source: "formulas of L. Wood, 1947 and 1951, as quoted in Forests 12 (2021) 1148; percents worked out",
        standing: SecondHand,
        figures: &["woods", "loads"],
    },
    Check {
        id: "torsion-table",
        what: "twist and stress of rectangular bars, from square to thin",
        source: "S. Timoshenko and J. N. Goodier, Theory of Elasticity; the series summed apart from the program",
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "torsion-handbook",
        what: "twist of rectangular bars against a short formula",
        source: "R. J. Roark, Formulas for Stress and Strain",
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "torsion-differences",
        what: "twist of rectangular bars against finite differences",
        source: SCIPY,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "torsion-brass",
        what: "torque that two brass bars bear",
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "curved-bar",
        what: "stresses at both faces of a curved bar",
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "timber-columns",
        what: "slenderness and stress of two timber columns",
        source: "two design examples to BS 5268",
        standing: Seen,
        figures: &["loads"],
    },
    Check {
        id: "column-euler",
        what: "load at which two columns give way",
        source: "a worked example on a strength-of-materials site, and R. C. Hibbeler, Mechanics of Materials, \
                 from memory",
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "column-beside",
        what: "deflection and stress of a tube loaded beside its middle",
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "column-roots",
        what: "what wooden columns bear, straight and loaded beside the middle, against root finding",
        source: SCIPY,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "string-triangles",
        what: "lift of a string, its pull along the board, and how far apart strings leave the board",
        source: "right triangles with whole sides, from 3, 4, 5 to 20, 21, 29",
        standing: Computed,
        figures: &["lift_n", "along_board_n", "loads"],
    },
    Check {
        id: "pin-curve",
        what: "a smooth curve through three places",
        source: "R. L. Burden and J. D. Faires, Numerical Analysis, section 3.5",
        standing: FromMemory,
        figures: &["length_mm"],
    },
    Check {
        id: "parallel-forces",
        what: "place of the force that stands for four",
        source: HIBBELER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "propped-upright",
        what: "forces in an upright with a diagonal prop",
        source: HIBBELER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "timber-beams",
        what: "forces and stresses of two timber beams",
        source: "an online sample problem, and J. M. Gere, Mechanics of Materials, from memory",
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "frame-solved",
        what: "what pillar and shoulder bear of four harps of 36 strings, one of them the sample",
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "neck-solved",
        what: "pull, shear, bending and twist at every string of four necks, as shares of the greatest",
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "sample-neck-solved",
        what: "what the program shows of the frame of the sample of 36 strings: forces, moments, torque, stresses",
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "frame-in-space",
        what: "six whole frames in space with joints that do not give: forces and moments of neck, pillar and soundbox, as shares of the greatest",
        source: "OpenSees 3.7.1, a frame program, by tests/published/scripts/space_values.py",
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "frame-joints",
        what: "twelve whole frames in space with joints and soundboxes of their sizes: forces and moments of neck, pillar and \
               soundbox, as shares of the greatest",
        source: "OpenSees 3.7.1, a frame program, by tests/published/scripts/space_joints.py",
        standing: Computed,
        figures: &["loads", "giving"],
    },
    Check {
        id: "laminate-textbook",
        what: "stiffness of a laminate of three plies at 0, 30 and −45°",
        source: "A. K. Kaw, Mechanics of Composite Materials, 2nd ed., example 4.2",
        standing: FromMemory,
        figures: &["loads", "woods"],
    },
    Check {
        id: "laminates-turned",
        what: "moduli of three laminates along, across, in shear and bent sideways, by turning tensors",
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "metal-and-wood",
        what: "stresses of wood and metal in four necks with plates, by adding up a fine grid",
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "plates-slip",
        what: "how much of three plates goes with the wood while their screws slip, by finite differences",
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "pin-holes",
        what: "what holes leave of three sections, by adding up a fine grid",
        source: GRIDS,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "tapped-bars",
        what: "modulus of four bars by their tones, which finite elements of Timoshenko's beam found",
        source: GRIDS,
        standing: Computed,
        figures: &["woods"],
    },
    Check {
        id: "tapped-bar-standard",
        what: "correction of a free bar's tone for its height",
        source: "ASTM E1876, slender bars",
        standing: FromMemory,
        figures: &["woods"],
    },
    Check {
        id: "boards-solved",
        what: "rise and moments of the boards of the samples at nine places, with and without string rib, with edges that turn \
               and edges that cannot, as shares of the greatest",
        source: SCIKIT_FEM,
        standing: Computed,
        figures: &["loads", "giving", "years"],
    },
    Check {
        id: "boards-that-hang",
        what: "rise of eight boards that also hang between their edges, up to nine times their thickness: even and tapered, with \
               thin sides, with bars, on springs, with edges that move in and edges that do not",
        source: HANGING,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "boards-that-bow",
        what: "at how many times a push along them the same boards bow",
        source: HANGING,
        standing: Computed,
        figures: &["loads"],
    },
];
