//! The frame of a harp: its woods, sections, neck, pillar and board.

use super::{Check, cited};
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};
use crate::words::{Words, checks as say};

const BEER: Words = cited::BEER;
const HIBBELER: Words = cited::HIBBELER;
const PYNITE: Words = say::FROM_PYNITE;
const SCIKIT_FEM: Words = say::FROM_SCIKIT_FEM;
const GRIDS: Words = say::FROM_GRIDS;
const HELD: Words = say::FROM_HELD;
const HANGING: Words = say::FROM_HANGING;
const MAPPED: Words = say::FROM_MAPPED;
const ENDED: Words = say::FROM_ENDED;
const SCIPY: Words = say::FROM_FRAME_VALUES;

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "wood-under-time",
        what: say::WOOD_UNDER_TIME,
        source: say::FROM_WOOD,
        standing: SecondHand,
        figures: &["woods", "loads"],
    },
    Check {
        id: "torsion-table",
        what: say::TORSION_TABLE,
        source: say::FROM_TIMOSHENKO,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "torsion-handbook",
        what: say::TORSION_HANDBOOK,
        source: cited::ROARK,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "torsion-differences",
        what: say::TORSION_DIFFERENCES,
        source: SCIPY,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "torsion-brass",
        what: say::TORSION_BRASS,
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "curved-bar",
        what: say::CURVED_BAR,
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "timber-columns",
        what: say::TIMBER_COLUMNS,
        source: say::FROM_BS,
        standing: Seen,
        figures: &["loads"],
    },
    Check {
        id: "column-euler",
        what: say::COLUMN_EULER,
        source: say::FROM_HIBBELER_COLUMNS,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "column-beside",
        what: say::COLUMN_BESIDE,
        source: BEER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "column-roots",
        what: say::COLUMN_ROOTS,
        source: SCIPY,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "string-triangles",
        what: say::STRING_TRIANGLES,
        source: say::FROM_TRIANGLES,
        standing: Computed,
        figures: &["lift_n", "along_board_n", "loads"],
    },
    Check {
        id: "pin-curve",
        what: say::PIN_CURVE,
        source: cited::BURDEN,
        standing: FromMemory,
        figures: &["length_mm"],
    },
    Check {
        id: "parallel-forces",
        what: say::PARALLEL_FORCES,
        source: HIBBELER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "propped-upright",
        what: say::PROPPED_UPRIGHT,
        source: HIBBELER,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "timber-beams",
        what: say::TIMBER_BEAMS,
        source: say::FROM_GERE,
        standing: FromMemory,
        figures: &["loads"],
    },
    Check {
        id: "frame-solved",
        what: say::FRAME_SOLVED,
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "neck-solved",
        what: say::NECK_SOLVED,
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "sample-neck-solved",
        what: say::SAMPLE_NECK_SOLVED,
        source: PYNITE,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "frame-in-space",
        what: say::FRAME_IN_SPACE,
        source: say::FROM_OPENSEES,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "frame-joints",
        what: say::FRAME_JOINTS,
        source: say::FROM_OPENSEES_JOINTS,
        standing: Computed,
        figures: &["loads", "giving"],
    },
    Check {
        id: "giving-frames",
        what: say::GIVING_FRAMES,
        source: say::FROM_OPENSEES_GIVING,
        standing: Computed,
        figures: &["giving"],
    },
    Check {
        id: "laminate-textbook",
        what: say::LAMINATE_TEXTBOOK,
        source: cited::KAW,
        standing: FromMemory,
        figures: &["loads", "woods"],
    },
    Check {
        id: "laminates-turned",
        what: say::LAMINATES_TURNED,
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "metal-and-wood",
        what: say::METAL_AND_WOOD,
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "plates-slip",
        what: say::PLATES_SLIP,
        source: GRIDS,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "crossed-layers-roll",
        what: say::CROSSED_LAYERS_ROLL,
        source: HELD,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "crossed-layers-twist",
        what: say::CROSSED_LAYERS_TWIST,
        source: HELD,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "hole-rims",
        what: say::HOLE_RIMS,
        source: HELD,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "metal-glued",
        what: say::METAL_GLUED,
        source: HELD,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "metal-screwed",
        what: say::METAL_SCREWED,
        source: say::FROM_OPENSEES_HELD,
        standing: Computed,
        figures: &["loads", "woods"],
    },
    Check {
        id: "pin-holes",
        what: say::PIN_HOLES,
        source: GRIDS,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "tapped-bars",
        what: say::TAPPED_BARS,
        source: GRIDS,
        standing: Computed,
        figures: &["woods"],
    },
    Check {
        id: "tapped-bar-standard",
        what: say::TAPPED_BAR_STANDARD,
        source: say::FROM_E1876,
        standing: FromMemory,
        figures: &["woods"],
    },
    Check {
        id: "boards-solved",
        what: say::BOARDS_SOLVED,
        source: SCIKIT_FEM,
        standing: Computed,
        figures: &["loads", "giving", "years"],
    },
    Check {
        id: "rib-ends-solved",
        what: say::RIB_ENDS_SOLVED,
        source: SCIKIT_FEM,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "boards-that-hang",
        what: say::BOARDS_THAT_HANG,
        source: HANGING,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "boards-that-bow",
        what: say::BOARDS_THAT_BOW,
        source: HANGING,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "boards-mapped",
        what: say::BOARDS_MAPPED,
        source: MAPPED,
        standing: Computed,
        figures: &["loads", "giving", "years"],
    },
    Check {
        id: "bar-ends-turn",
        what: say::BAR_ENDS_TURN,
        source: ENDED,
        standing: Computed,
        figures: &["loads"],
    },
    Check {
        id: "bar-ends-open",
        what: say::BAR_ENDS_OPEN,
        source: ENDED,
        standing: Computed,
        figures: &["loads"],
    },
];
