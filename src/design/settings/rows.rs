//! The rows. The usual numbers and their sources stand in `document`.

use super::{Holds, NumberRow};
use crate::design::document::{Design, MOST_STRINGS};
use crate::engine::cut::{LONGEST_PART_MM, MOST_TURNS};
use crate::engine::geometry::{BOARD_ANGLE_DEG, LEAN_DEG};
use crate::engine::pitch::A4_HZ;
use crate::words::{Words, settings as say};

const HZ: Words = Words::plain("Hz");
const MM: Words = Words::plain("mm");
const PERCENT: Words = Words::plain("%");
const CELSIUS: Words = Words::plain("°C");
const NEWTON: Words = Words::plain("N");
const NEWTON_PER_MM: Words = Words::plain("N/mm");

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
        $setting:ident: $name:expr, $label:expr, $unit:expr,
        $sensible:expr, $held:expr, $($field:ident).+;
    )+) => {
        /// A setting that is a plain number.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Setting {
            $(#[doc = concat!("What `", stringify!($name), "` names.")] $setting,)+
        }

        impl Setting {
            /// In the order of the document.
            pub const ALL: [Self; [$(stringify!($setting)),+].len()] = [$(Self::$setting),+];
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
    A4: say::A4_NAME, say::A4, HZ, A4_HZ, (1.0, 10_000.0), pitch.a4_hz;
    Pluck: say::PLUCK_NAME, say::PLUCK, say::UNIT_PERCENT_OF_LENGTH, (5.0, 95.0), UP_TO_100, pluck_percent;
    PluckBy: say::PLUCK_BY_NAME, say::PLUCK_BY, MM, (0.0, 50.0), UP_TO_1_000, pluck_mm;
    DampingPartial: say::DAMPING_PARTIAL_NAME, say::DAMPING_PARTIAL, Words::NONE,
        (1.0, 64.0), COUNTED, damping_partial;
    Push: say::PUSH_NAME, say::PUSH, MM, (0.0, 10.0), UP_TO_1_000, mechanism.push_mm;
    FrameExpansion: say::FRAME_EXPANSION_NAME, say::FRAME_EXPANSION, say::UNIT_MILLIONTHS,
        (0.0, 200.0), UP_TO_10_000, frame_expansion_e6_per_k;

    BoardAngle: say::BOARD_ANGLE_NAME, say::BOARD_ANGLE, say::UNIT_DEGREES,
        BOARD_ANGLE_DEG, TURN_DEG, geometry.board_angle_deg;
    Lean: say::LEAN_NAME, say::LEAN, say::UNIT_DEGREES, LEAN_DEG, TURN_DEG, geometry.lean_deg;
    Gap: say::GAP_NAME, say::GAP, MM, GAP_MM, FAR_MM, geometry.spacing.gaps;
    Start: say::START_NAME, say::START, MM, (0.0, 300.0), FAR_MM, geometry.start_mm;
    PinSideways: say::PIN_SIDEWAYS_NAME, say::PIN_SIDEWAYS, MM, (-200.0, 200.0), FAR_MM, geometry.pin_sideways_mm;
    StringsFromNeck: say::STRINGS_FROM_NECK_NAME, say::STRINGS_FROM_NECK, MM,
        MEASURE_MM, FAR_MM, geometry.strings_from_neck_mm;
    BelowPins: say::BELOW_PINS_NAME, say::BELOW_PINS, MM, MEASURE_MM, FAR_MM, geometry.neck.below_pins_mm;
    AbovePins: say::ABOVE_PINS_NAME, say::ABOVE_PINS, MM, MEASURE_MM, FAR_MM, geometry.neck.above_pins_mm;
    NeckThickness: say::NECK_THICKNESS_NAME, say::NECK_THICKNESS, MM, SOLID_MM, FAR_MM, geometry.neck.thickness_mm;
    NeckPlies: say::NECK_PLIES_NAME, say::NECK_PLIES, Words::NONE, COUNTED, COUNTED, geometry.neck.plies;
    NeckGrain: say::NECK_GRAIN_NAME, say::NECK_GRAIN, PERCENT,
        GRAIN_PERCENT, (-1_000.0, 1_000.0), geometry.neck.grain_percent;
    PillarGap: say::PILLAR_GAP_NAME, say::PILLAR_GAP, MM, MEASURE_MM, FAR_MM, geometry.pillar.gap_mm;
    PillarWidth: say::PILLAR_WIDTH_NAME, say::PILLAR_WIDTH, MM, SOLID_MM, FAR_MM, geometry.pillar.width_mm;
    PillarDepth: say::PILLAR_DEPTH_NAME, say::PILLAR_DEPTH, MM, SOLID_MM, FAR_MM, geometry.pillar.depth_mm;
    PillarBeside: say::PILLAR_BESIDE_NAME, say::PILLAR_BESIDE, MM, (0.0, 200.0), FAR_MM, geometry.pillar.beside_mm;
    BoardBelow: say::BOARD_BELOW_NAME, say::BOARD_BELOW, MM, MEASURE_MM, FAR_MM, geometry.board.below_mm;
    BoardAbove: say::BOARD_ABOVE_NAME, say::BOARD_ABOVE, MM, MEASURE_MM, FAR_MM, geometry.board.above_mm;
    BassWidth: say::BASS_WIDTH_NAME, say::BASS_WIDTH, MM, SOLID_MM, FAR_MM, geometry.board.bass_width_mm;
    TrebleWidth: say::TREBLE_WIDTH_NAME, say::TREBLE_WIDTH, MM, SOLID_MM, FAR_MM, geometry.board.treble_width_mm;
    BassThickness: say::BASS_THICKNESS_NAME, say::BASS_THICKNESS, MM,
        SOLID_MM, FAR_MM, geometry.board.bass_thickness_mm;
    TrebleThickness: say::TREBLE_THICKNESS_NAME, say::TREBLE_THICKNESS, MM,
        SOLID_MM, FAR_MM, geometry.board.treble_thickness_mm;
    RibWidth: say::RIB_WIDTH_NAME, say::RIB_WIDTH, MM, RIB_MM, FAR_MM, geometry.board.rib_width_mm;
    RibHeight: say::RIB_HEIGHT_NAME, say::RIB_HEIGHT, MM, RIB_MM, FAR_MM, geometry.board.rib_height_mm;
    StripWidth: say::STRIP_WIDTH_NAME, say::STRIP_WIDTH, MM, RIB_MM, FAR_MM, geometry.board.strip_width_mm;
    StripHeight: say::STRIP_HEIGHT_NAME, say::STRIP_HEIGHT, MM, RIB_MM, FAR_MM, geometry.board.strip_height_mm;
    BoardPlies: say::BOARD_PLIES_NAME, say::BOARD_PLIES, Words::NONE, COUNTED, COUNTED, geometry.board.plies;
    BridgePin: say::BRIDGE_PIN_NAME, say::BRIDGE_PIN, MM, DRILL_MM, FAR_MM, geometry.drills.bridge_pin_mm;
    StringClearance: say::STRING_CLEARANCE_NAME, say::STRING_CLEARANCE, MM,
        (0.0, 5.0), FAR_MM, geometry.drills.string_clearance_mm;
    Eyelet: say::EYELET_NAME, say::EYELET, MM, DRILL_MM, FAR_MM, geometry.drills.eyelet_mm;
    MechanismDrill: say::MECHANISM_DRILL_NAME, say::MECHANISM_DRILL, MM,
        DRILL_MM, FAR_MM, geometry.drills.mechanism_mm;
    TuningPinDepth: say::TUNING_PIN_DEPTH_NAME, say::TUNING_PIN_DEPTH, MM,
        MEASURE_MM, FAR_MM, geometry.drills.tuning_depth_mm;
    BridgePinDepth: say::BRIDGE_PIN_DEPTH_NAME, say::BRIDGE_PIN_DEPTH, MM,
        MEASURE_MM, FAR_MM, geometry.drills.bridge_depth_mm;

    LengthOff: say::LENGTH_OFF_NAME, say::LENGTH_OFF, MM, (0.0, 50.0), UP_TO_1_000, tolerances.length_mm;
    PitchOff: say::PITCH_OFF_NAME, say::PITCH_OFF, say::UNIT_CENTS, UP_TO_100, UP_TO_10_000, tolerances.pitch_cents;
    TemperatureOff: say::TEMPERATURE_OFF_NAME, say::TEMPERATURE_OFF, CELSIUS,
        (0.0, 60.0), UP_TO_1_000, tolerances.temperature_k;
    PushOff: say::PUSH_OFF_NAME, say::PUSH_OFF, MM, (0.0, 5.0), UP_TO_100, tolerances.push_mm;
    DiameterOff: say::DIAMETER_OFF_NAME, say::DIAMETER_OFF, MM, (0.0, 1.0), UP_TO_100, tolerances.diameter_mm;
    DensityOff: say::DENSITY_OFF_NAME, say::DENSITY_OFF, PERCENT,
        (0.0, 50.0), UP_TO_1_000, tolerances.density_percent;

    WorkingShare: say::WORKING_SHARE_NAME, say::WORKING_SHARE, PERCENT,
        (1.0, 100.0), UP_TO_1_000, limits.working_share_percent;
    SoftShare: say::SOFT_SHARE_NAME, say::SOFT_SHARE, PERCENT, (1.0, 100.0), UP_TO_1_000, limits.soft_share_percent;
    SlackShare: say::SLACK_SHARE_NAME, say::SLACK_SHARE, PERCENT, UP_TO_100, UP_TO_1_000, limits.slack_share_percent;
    LeastTension: say::LEAST_TENSION_NAME, say::LEAST_TENSION, NEWTON,
        UP_TO_10_000, UP_TO_10_000, limits.least_tension_n;
    LeastStiffness: say::LEAST_STIFFNESS_NAME, say::LEAST_STIFFNESS, NEWTON_PER_MM,
        UP_TO_1_000, UP_TO_1_000, limits.least_stiffness_n_per_mm;
    MostStiffness: say::MOST_STIFFNESS_NAME, say::MOST_STIFFNESS, NEWTON_PER_MM,
        UP_TO_1_000, UP_TO_1_000, limits.most_stiffness_n_per_mm;
    Partial8: say::PARTIAL_8_NAME, say::PARTIAL_8, say::UNIT_CENTS,
        (0.0, 2_400.0), UP_TO_10_000, limits.partial_8_cents;
    Jump: say::JUMP_NAME, say::JUMP, PERCENT, UP_TO_10_000, UP_TO_10_000, limits.jump_percent;
    LeastRaise: say::LEAST_RAISE_NAME, say::LEAST_RAISE, MM, (0.0, 50.0), UP_TO_1_000, limits.least_raise_mm;

    AfterLength: say::AFTER_LENGTH_NAME, say::AFTER_LENGTH, MM, PART_MM, UP_TO_10_000, allowances.after_length_mm;
    Turns: say::TURNS_NAME, say::TURNS, say::UNIT_TURNS, (0.0, MOST_TURNS), UP_TO_100, allowances.turns;
    TuningPin: say::TUNING_PIN_NAME, say::TUNING_PIN, MM, UP_TO_100, UP_TO_100, allowances.pin_mm;
    Knot: say::KNOT_NAME, say::KNOT, MM, PART_MM, UP_TO_10_000, allowances.knot_mm;
    Tail: say::TAIL_NAME, say::TAIL, MM, PART_MM, UP_TO_10_000, allowances.tail_mm;

    Spares: say::SPARES_NAME, say::SPARES, PERCENT, UP_TO_1_000, UP_TO_1_000, order.spares;
    FirstSpare: say::FIRST_SPARE_NAME, say::FIRST_SPARE, Words::NONE, COUNTED, COUNTED, order.from_string;
    LastSpare: say::LAST_SPARE_NAME, say::LAST_SPARE, Words::NONE, COUNTED, COUNTED, order.to_string;

    TargetWeight: say::TARGET_WEIGHT_NAME, say::TARGET_WEIGHT, Words::NONE, WEIGHT, WEIGHT, targets.weights.target;
    StiffnessWeight: say::STIFFNESS_WEIGHT_NAME, say::STIFFNESS_WEIGHT, Words::NONE,
        WEIGHT, WEIGHT, targets.weights.even_stiffness;
    TensionWeight: say::TENSION_WEIGHT_NAME, say::TENSION_WEIGHT, Words::NONE,
        WEIGHT, WEIGHT, targets.weights.even_tension;
    ChangesWeight: say::CHANGES_WEIGHT_NAME, say::CHANGES_WEIGHT, Words::NONE,
        WEIGHT, WEIGHT, targets.weights.changes;
    ItemsWeight: say::ITEMS_WEIGHT_NAME, say::ITEMS_WEIGHT, Words::NONE, WEIGHT, WEIGHT, targets.weights.items;
    PriceWeight: say::PRICE_WEIGHT_NAME, say::PRICE_WEIGHT, Words::NONE, WEIGHT, WEIGHT, targets.weights.price;
    ThickestPlain: say::THICKEST_PLAIN_NAME, say::THICKEST_PLAIN, MM,
        (0.1, 10.0), UP_TO_1_000, targets.thickest_plain_mm;
    LeastShare: say::LEAST_SHARE_NAME, say::LEAST_SHARE, PERCENT,
        UP_TO_1_000, UP_TO_1_000, targets.least_share_percent;
    MostShare: say::MOST_SHARE_NAME, say::MOST_SHARE, PERCENT, UP_TO_1_000, UP_TO_1_000, targets.most_share_percent;
    MostJump: say::MOST_JUMP_NAME, say::MOST_JUMP, PERCENT, UP_TO_1_000, UP_TO_10_000, targets.most_jump_percent;
    MostTotal: say::MOST_TOTAL_NAME, say::MOST_TOTAL, NEWTON, FORCE_N, FORCE_N, targets.most_total_n;
    MostChanges: say::MOST_CHANGES_NAME, say::MOST_CHANGES, Words::NONE, COUNTED, COUNTED, targets.most_changes;
    MostItems: say::MOST_ITEMS_NAME, say::MOST_ITEMS, Words::NONE, (1.0, 10_000.0), COUNTED, targets.most_items;
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
    name: Words,
    label: Words,
    unit: Words,
    sensible: (f64, f64),
    held: (f64, f64),
) -> NumberRow {
    NumberRow { name, held, ..NumberRow::new(label, unit, sensible) }
}

/// A gap between two strings, where the gaps differ.
pub const GAP: NumberRow = column(say::GAP_NAME, say::COLUMN_WIDTH, MM, GAP_MM, FAR_MM);
/// Which gap it is, from the bass.
pub const GAP_NUMBER: NumberRow = NumberRow {
    whole: true,
    ..column(
        say::GAP_NUMBER_NAME,
        say::COLUMN_GAP,
        Words::NONE,
        (1.0, (MOST_STRINGS - 1) as f64),
        COUNTED,
    )
};
/// A node of the harmonic curve, square to the strings.
pub const NODE_ACROSS: NumberRow =
    column(say::NODE_ACROSS_NAME, say::COLUMN_ACROSS, MM, FAR_MM, FAR_MM);
/// The same node, along them.
pub const NODE_ALONG: NumberRow =
    column(say::NODE_ALONG_NAME, say::COLUMN_ALONG, MM, FAR_MM, FAR_MM);
/// Where a section of the neck lies, from the shoulder to the pillar.
pub const SECTION_AT: NumberRow =
    column(say::SECTION_AT_NAME, say::COLUMN_AT, PERCENT, UP_TO_100, (-1_000.0, 1_000.0));
/// How thick the neck is there.
pub const SECTION_THICKNESS: NumberRow =
    column(say::SECTION_THICKNESS_NAME, say::COLUMN_THICK, MM, SOLID_MM, FAR_MM);
/// How deep it is there.
pub const SECTION_DEPTH: NumberRow =
    column(say::SECTION_DEPTH_NAME, say::COLUMN_DEEP, MM, SOLID_MM, FAR_MM);
