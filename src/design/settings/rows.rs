//! The rows. The usual numbers and their sources stand in `document`.

use super::{Holds, NumberRow};
use crate::design::document::{Design, MOST_STRINGS};
use crate::engine::cut::{LONGEST_PART_MM, MOST_TURNS};
use crate::engine::geometry::{BOARD_ANGLE_DEG, LEAN_DEG};
use crate::engine::pitch::A4_HZ;

/// A row, and where its number stands.
pub(super) struct Entry {
    row: NumberRow,
    pub(super) of: fn(&Design) -> Option<f64>,
    pub(super) put: fn(&mut Design, Option<f64>),
}

/// Makes of each line a setting and its row: what it is called in a sentence, what it is called where it is typed,
/// its unit, what makes sense, what a document may hold, and where it stands in a design.
macro_rules! settings {
    ($(
        $setting:ident: $name:literal, $label:literal, $unit:literal,
        $sensible:expr, $held:expr, $($field:ident).+;
    )+) => {
        /// A setting that is a plain number.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Setting {
            $(#[doc = concat!("The ", $name, ".")] $setting,)+
        }

        impl Setting {
            /// In the order of the document.
            pub const ALL: [Self; [$($name),+].len()] = [$(Self::$setting),+];
        }

        static ENTRIES: [Entry; Setting::ALL.len()] = [$(Entry {
            row: NumberRow {
                name: $name,
                label: $label,
                unit: $unit,
                sensible: $sensible,
                held: $held,
                whole: is_whole(|design| &design.$($field).+),
                optional: is_optional(|design| &design.$($field).+),
            },
            of: |design| design.$($field).+.number(),
            put: |design, number| design.$($field).+.put(number),
        },)+];
    };
}

const fn is_whole<T: Holds>(_: fn(&Design) -> &T) -> bool {
    T::WHOLE
}

const fn is_optional<T: Holds>(_: fn(&Design) -> &T) -> bool {
    T::OPTIONAL
}

/// How far a measure of the harp may reach in a document, in mm.
const FAR_MM: (f64, f64) = (-10_000.0, 10_000.0);
/// How far an angle may go in a document, in degrees.
const TURN_DEG: (f64, f64) = (-360.0, 360.0);
/// The most that is counted in a document.
const COUNTED: (f64, f64) = (0.0, 10_000.0);
const UP_TO_100: (f64, f64) = (0.0, 100.0);
const UP_TO_1_000: (f64, f64) = (0.0, 1_000.0);
const UP_TO_10_000: (f64, f64) = (0.0, 10_000.0);
/// The greatest force, in newtons: far above what any frame bears.
const FORCE_N: (f64, f64) = (0.0, 1_000_000.0);
/// How much something matters: from not at all to more than all else.
const WEIGHT: (f64, f64) = (0.0, 10.0);
/// A part of the cut length, in mm.
const PART_MM: (f64, f64) = (0.0, LONGEST_PART_MM);
/// A measure of the shape that may be nothing, in mm.
const MEASURE_MM: (f64, f64) = (0.0, 1_000.0);
/// A thickness, a width or a depth of wood, in mm.
const SOLID_MM: (f64, f64) = (0.5, 1_000.0);
/// A side of the string rib or of the strip outside, in mm; 0 where there is none.
const RIB_MM: (f64, f64) = (0.0, 100.0);
/// A drill, in mm; 0 where nothing is drilled.
const DRILL_MM: (f64, f64) = (0.0, 30.0);
/// The slope of the grain in per cent ends where the table of its strength does.
const GRAIN_PERCENT: (f64, f64) = (0.0, 20.0);
/// The gap between two strings, in mm.
const GAP_MM: (f64, f64) = (1.0, 200.0);

settings! {
    A4: "pitch of A4", "A4", "Hz", A4_HZ, (1.0, 10_000.0), pitch.a4_hz;
    Pluck: "pluck point", "Plucked at", "% of the length", (5.0, 95.0), UP_TO_100, pluck_percent;
    PluckBy: "displacement of a pluck", "Pulled aside by", "mm", (0.0, 50.0), UP_TO_1_000, pluck_mm;
    DampingPartial: "partial of the damping", "Damping at partial", "", (1.0, 64.0), COUNTED, damping_partial;
    Push: "push of a lever", "Pushed aside by", "mm", (0.0, 10.0), UP_TO_1_000, mechanism.push_mm;
    FrameExpansion: "expansion of the frame", "Thermal expansion of frame", "millionths/K",
        (0.0, 200.0), UP_TO_10_000, frame_expansion_e6_per_k;

    BoardAngle: "angle of strings and board", "Between strings and board", "degrees",
        BOARD_ANGLE_DEG, TURN_DEG, geometry.board_angle_deg;
    Lean: "lean of the strings", "Lean from upright", "degrees", LEAN_DEG, TURN_DEG, geometry.lean_deg;
    Gap: "gap between strings", "Width of every gap", "mm", GAP_MM, FAR_MM, geometry.spacing.gaps;
    Start: "height at which the strings start above the board", "Strings start above the board by", "mm",
        (0.0, 300.0), FAR_MM, geometry.start_mm;
    PinSideways: "offset of the tuning pins", "Tuning pin beside its string", "mm",
        (-200.0, 200.0), FAR_MM, geometry.pin_sideways_mm;
    StringsFromNeck: "distance from the string plane to the neck's centre line", "String plane to neck centre line", "mm",
        MEASURE_MM, FAR_MM, geometry.strings_from_neck_mm;
    BelowPins: "neck below the bridge pins", "Neck below pins or levers", "mm",
        MEASURE_MM, FAR_MM, geometry.neck.below_pins_mm;
    AbovePins: "neck beyond the tuning pins", "Neck above tuning pins", "mm",
        MEASURE_MM, FAR_MM, geometry.neck.above_pins_mm;
    NeckThickness: "thickness of the neck", "Thickness of the neck", "mm",
        SOLID_MM, FAR_MM, geometry.neck.thickness_mm;
    NeckPlies: "plies of the neck", "Plies", "", COUNTED, COUNTED, geometry.neck.plies;
    NeckGrain: "slope of the neck's grain", "Slope of the grain, rise over run", "%",
        GRAIN_PERCENT, (-1_000.0, 1_000.0), geometry.neck.grain_percent;
    PillarGap: "gap from the lowest string to the pillar", "Lowest string to pillar", "mm",
        MEASURE_MM, FAR_MM, geometry.pillar.gap_mm;
    PillarWidth: "width of the pillar", "Seen from the side", "mm", SOLID_MM, FAR_MM, geometry.pillar.width_mm;
    PillarDepth: "depth of the pillar", "Seen from the front", "mm", SOLID_MM, FAR_MM, geometry.pillar.depth_mm;
    PillarBeside: "offset of the load from the pillar's centre", "Load offset from centre", "mm",
        (0.0, 200.0), FAR_MM, geometry.pillar.beside_mm;
    BoardBelow: "board below the lowest string", "Board below the lowest string", "mm",
        MEASURE_MM, FAR_MM, geometry.board.below_mm;
    BoardAbove: "board beyond the highest string", "Board above the highest string", "mm",
        MEASURE_MM, FAR_MM, geometry.board.above_mm;
    BassWidth: "width of the board in the bass", "Width at the lowest string", "mm",
        SOLID_MM, FAR_MM, geometry.board.bass_width_mm;
    TrebleWidth: "width of the board in the treble", "Width at the highest string", "mm",
        SOLID_MM, FAR_MM, geometry.board.treble_width_mm;
    BassThickness: "thickness of the board in the bass", "Thickness at the lowest string", "mm",
        SOLID_MM, FAR_MM, geometry.board.bass_thickness_mm;
    TrebleThickness: "thickness of the board in the treble", "Thickness at the highest string", "mm",
        SOLID_MM, FAR_MM, geometry.board.treble_thickness_mm;
    RibWidth: "width of the string rib", "String rib, width", "mm", RIB_MM, FAR_MM, geometry.board.rib_width_mm;
    RibHeight: "height of the string rib", "String rib, height", "mm", RIB_MM, FAR_MM, geometry.board.rib_height_mm;
    StripWidth: "width of the strip outside", "Strip outside, width", "mm",
        RIB_MM, FAR_MM, geometry.board.strip_width_mm;
    StripHeight: "height of the strip outside", "Strip outside, height", "mm",
        RIB_MM, FAR_MM, geometry.board.strip_height_mm;
    BoardPlies: "plies of the board", "Plies", "", COUNTED, COUNTED, geometry.board.plies;
    BridgePin: "diameter of the bridge pins", "Bridge pin", "mm", DRILL_MM, FAR_MM, geometry.drills.bridge_pin_mm;
    StringClearance: "clearance of the string holes", "String hole wider than its string by", "mm",
        (0.0, 5.0), FAR_MM, geometry.drills.string_clearance_mm;
    Eyelet: "diameter of the eyelets", "Eyelet, outside", "mm", DRILL_MM, FAR_MM, geometry.drills.eyelet_mm;
    MechanismDrill: "drill for levers and discs", "Screw of a lever, axle of a disc", "mm",
        DRILL_MM, FAR_MM, geometry.drills.mechanism_mm;
    TuningPinDepth: "depth of the tuning pins' holes", "Tuning pin goes in", "mm",
        MEASURE_MM, FAR_MM, geometry.drills.tuning_depth_mm;
    BridgePinDepth: "depth of the bridge pins' holes", "Bridge pin goes in", "mm",
        MEASURE_MM, FAR_MM, geometry.drills.bridge_depth_mm;

    LengthOff: "deviation of lengths", "Vibrating length", "mm", (0.0, 50.0), UP_TO_1_000, tolerances.length_mm;
    PitchOff: "deviation of the pitch", "Pitch", "cents", UP_TO_100, UP_TO_10_000, tolerances.pitch_cents;
    TemperatureOff: "change of temperature", "Temperature change since tuning", "°C",
        (0.0, 60.0), UP_TO_1_000, tolerances.temperature_k;
    PushOff: "deviation of the push", "Push of lever or disc", "mm", (0.0, 5.0), UP_TO_100, tolerances.push_mm;
    DiameterOff: "deviation of diameters", "Diameter", "mm", (0.0, 1.0), UP_TO_100, tolerances.diameter_mm;
    DensityOff: "deviation of densities", "Density", "%", (0.0, 50.0), UP_TO_1_000, tolerances.density_percent;

    WorkingShare: "highest load share", "Highest load share", "%",
        (1.0, 100.0), UP_TO_1_000, limits.working_share_percent;
    SoftShare: "highest load share of gut and plastics", "Highest, gut and plastics", "%",
        (1.0, 100.0), UP_TO_1_000, limits.soft_share_percent;
    SlackShare: "lowest load share", "Lowest load share", "%", UP_TO_100, UP_TO_1_000, limits.slack_share_percent;
    LeastTension: "lowest tension", "Lowest tension", "N", UP_TO_10_000, UP_TO_10_000, limits.least_tension_n;
    LeastStiffness: "lowest pluck stiffness", "Pluck stiffness from", "N/mm",
        UP_TO_1_000, UP_TO_1_000, limits.least_stiffness_n_per_mm;
    MostStiffness: "highest pluck stiffness", "Pluck stiffness to", "N/mm",
        UP_TO_1_000, UP_TO_1_000, limits.most_stiffness_n_per_mm;
    Partial8: "limit for partial 8", "Partial 8 sharp by", "cents",
        (0.0, 2_400.0), UP_TO_10_000, limits.partial_8_cents;
    Jump: "limit for a jump of the pluck stiffness", "Jump at a change of make-up", "%",
        UP_TO_10_000, UP_TO_10_000, limits.jump_percent;
    LeastRaise: "least distance of a lever or disc from the bridge pin", "Lever or disc from its pin", "mm",
        (0.0, 50.0), UP_TO_1_000, limits.least_raise_mm;

    AfterLength: "length from bridge pin to tuning pin", "Bridge pin to tuning pin", "mm",
        PART_MM, UP_TO_10_000, allowances.after_length_mm;
    Turns: "number of turns round the tuning pin", "Turns on the pin", "turns",
        (0.0, MOST_TURNS), UP_TO_100, allowances.turns;
    TuningPin: "diameter of the tuning pin", "Tuning pin", "mm", UP_TO_100, UP_TO_100, allowances.pin_mm;
    Knot: "length for board and knot", "Board and knot", "mm", PART_MM, UP_TO_10_000, allowances.knot_mm;
    Tail: "length of the tail", "Tail", "mm", PART_MM, UP_TO_10_000, allowances.tail_mm;

    Spares: "share of spares", "Share", "%", UP_TO_1_000, UP_TO_1_000, order.spares;
    FirstSpare: "number of the first string with spares", "First string with spares (0: the highest)", "",
        COUNTED, COUNTED, order.from_string;
    LastSpare: "number of the last string with spares", "Last string with spares (0: the lowest)", "",
        COUNTED, COUNTED, order.to_string;

    TargetWeight: "weight of the wanted curve", "Near the wanted curve", "", WEIGHT, WEIGHT, targets.weights.target;
    StiffnessWeight: "weight of an even feel", "Even feel from string to string", "",
        WEIGHT, WEIGHT, targets.weights.even_stiffness;
    TensionWeight: "weight of an even tension", "Even tension from string to string", "",
        WEIGHT, WEIGHT, targets.weights.even_tension;
    ChangesWeight: "weight of few changes of material", "Few changes of material", "",
        WEIGHT, WEIGHT, targets.weights.changes;
    ItemsWeight: "weight of few different gauges", "Few different gauges", "", WEIGHT, WEIGHT, targets.weights.items;
    PriceWeight: "weight of a low price", "A low price", "", WEIGHT, WEIGHT, targets.weights.price;
    ThickestPlain: "thickest plain string of a choice", "Thickest plain string", "mm",
        (0.1, 10.0), UP_TO_1_000, targets.thickest_plain_mm;
    LeastShare: "lowest load share of a choice", "Lowest load share", "%",
        UP_TO_1_000, UP_TO_1_000, targets.least_share_percent;
    MostShare: "highest load share of a choice", "Highest load share", "%",
        UP_TO_1_000, UP_TO_1_000, targets.most_share_percent;
    MostJump: "highest jump of the feel of a choice", "Highest jump of the feel", "%",
        UP_TO_1_000, UP_TO_10_000, targets.most_jump_percent;
    MostTotal: "highest tension of all strings", "Highest tension of all strings", "N",
        FORCE_N, FORCE_N, targets.most_total_n;
    MostChanges: "number of changes of material", "Most changes of material", "",
        COUNTED, COUNTED, targets.most_changes;
    MostItems: "number of different strings and wires", "Most different strings and wires", "",
        (1.0, 10_000.0), COUNTED, targets.most_items;
}

impl Setting {
    /// Its words, its unit and its ranges.
    pub fn row(self) -> &'static NumberRow {
        &self.entry().row
    }

    pub(super) fn entry(self) -> &'static Entry {
        &ENTRIES[self as usize]
    }
}

/// A column of a table.
const fn column(
    name: &'static str,
    label: &'static str,
    unit: &'static str,
    sensible: (f64, f64),
    held: (f64, f64),
) -> NumberRow {
    NumberRow { name, held, ..NumberRow::new(label, unit, sensible) }
}

/// A gap between two strings, where the gaps differ.
pub const GAP: NumberRow = column("gap between strings", "Width", "mm", GAP_MM, FAR_MM);
/// Which gap it is, from the bass.
pub const GAP_NUMBER: NumberRow = NumberRow {
    whole: true,
    ..column("number of a gap", "Gap", "", (1.0, (MOST_STRINGS - 1) as f64), COUNTED)
};
/// A node of the drawn curve of the pins, square to the strings.
pub const NODE_ACROSS: NumberRow =
    column("place of a node across the strings", "Across", "mm", FAR_MM, FAR_MM);
/// The same node, along them.
pub const NODE_ALONG: NumberRow =
    column("place of a node along the strings", "Along", "mm", FAR_MM, FAR_MM);
/// Where a section of the neck lies, from the shoulder to the pillar.
pub const SECTION_AT: NumberRow =
    column("place of a section of the neck", "At", "%", UP_TO_100, (-1_000.0, 1_000.0));
/// How thick the neck is there.
pub const SECTION_THICKNESS: NumberRow =
    column("thickness of a section of the neck", "Thick", "mm", SOLID_MM, FAR_MM);
/// How deep it is there.
pub const SECTION_DEPTH: NumberRow =
    column("depth of a section of the neck", "Deep", "mm", SOLID_MM, FAR_MM);
