//! The sizes of joints and soundbox, which only the loads ask for.

use leptos::prelude::*;

use super::shape::Form;
use super::thicknesses::thicknesses;
use super::timber::wood_choice;
use crate::app::asked::Question;
use crate::app::panels::asked::asked_in_words;
use crate::app::panels::form::fieldset;
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::{
    BarSpec, FastenerSpec, GeometrySpec, JointSpec, JointsSpec, MetalSpec,
};
use crate::design::settings::NumberRow;
use crate::words::{Words, drawing as say};

const SIZE: (f64, f64) = (0.0, 1_000.0);

pub(super) const fn mm(label: Words) -> NumberRow {
    NumberRow::new(label, Words::plain("mm"), SIZE)
}

const fn counted(label: Words) -> NumberRow {
    NumberRow { whole: true, ..NumberRow::new(label, Words::NONE, (0.0, 100.0)) }
}

pub(super) const fn percent(label: Words, range: (f64, f64)) -> NumberRow {
    NumberRow::new(label, Words::plain("%"), range)
}

/// Rows of numbers that stand in one table.
pub(super) struct Sizes {
    pub(super) id: &'static str,
    pub(super) title: Words,
    pub(super) of: Words,
    pub(super) columns: &'static [NumberRow],
    pub(super) names: &'static [Words],
    pub(super) get: fn(&GeometrySpec) -> Vec<Vec<f64>>,
    pub(super) put: fn(&mut GeometrySpec, &[Vec<f64>]),
}

/// Reads and writes two to five numbers of every joint.
macro_rules! of_joints {
    ($($field:ident),+) => {
        (
            |geometry: &GeometrySpec| {
                let row = |joint: &JointSpec| vec![$(joint.$field.into()),+];
                geometry.joints.all().map(row).into()
            },
            |geometry: &mut GeometrySpec, rows: &[Vec<f64>]| {
                for (joint, row) in joints(&mut geometry.joints).into_iter().zip(rows) {
                    let mut numbers = row.iter();
                    $(if let Some(number) = numbers.next() {
                        set(&mut joint.$field, *number);
                    })+
                }
            },
        )
    };
}

/// A number of a document.
trait Number {
    fn from_number(number: f64) -> Self;
}

impl Number for f64 {
    fn from_number(number: f64) -> Self {
        number
    }
}

impl Number for u32 {
    #[expect(clippy::cast_possible_truncation, reason = "the field takes no more than 100")]
    fn from_number(number: f64) -> Self {
        number.clamp(0.0, 100.0) as Self
    }
}

fn set<T: Number>(field: &mut T, number: f64) {
    *field = T::from_number(number);
}

const fn joints(all: &mut JointsSpec) -> [&mut JointSpec; 3] {
    [&mut all.shoulder, &mut all.head, &mut all.foot]
}

const JOINTS: &[Words] = &[say::NECK_ON_BOX, say::PILLAR_ON_NECK, say::PILLAR_ON_BASE];

pub(super) type Get = fn(&GeometrySpec) -> Vec<Vec<f64>>;
pub(super) type Put = fn(&mut GeometrySpec, &[Vec<f64>]);

const FACES: (Get, Put) = of_joints!(tenon_mm, tenon_depth_mm, face_width_mm, face_height_mm);
const HELD: (Get, Put) = of_joints!(count, diameter_mm, depth_mm, apart_mm, across_mm);
const PLATES: (Get, Put) = of_joints!(plate_mm, plate_width_mm);

static TABLES: [Sizes; 3] = [
    Sizes {
        id: "joint-tenon",
        title: say::TENONS,
        of: say::JOINT,
        columns: &[mm(say::TENON), mm(say::DEEP), mm(say::FACE_WIDE), mm(say::HIGH)],
        names: JOINTS,
        get: FACES.0,
        put: FACES.1,
    },
    Sizes {
        id: "joint-held",
        title: say::FASTENERS,
        of: say::JOINT,
        columns: &[
            counted(say::HOW_MANY),
            mm(say::THICK),
            mm(say::DEEP),
            mm(say::APART),
            mm(say::ROWS_APART),
        ],
        names: JOINTS,
        get: HELD.0,
        put: HELD.1,
    },
    Sizes {
        id: "joint-plate",
        title: say::JOINT_PLATES,
        of: say::JOINT,
        columns: &[mm(say::PLATE), mm(say::WIDE)],
        names: JOINTS,
        get: PLATES.0,
        put: PLATES.1,
    },
];

/// Reads and writes numbers of the soundbox.
macro_rules! of_box {
    ($($field:ident),+) => {
        (
            |geometry: &GeometrySpec| vec![vec![$(geometry.soundbox.$field.into()),+]],
            |geometry: &mut GeometrySpec, rows: &[Vec<f64>]| {
                let mut numbers = rows.iter().flatten();
                $(if let Some(number) = numbers.next() {
                    set(&mut geometry.soundbox.$field, *number);
                })+
            },
        )
    };
}

const WALLS: (Get, Put) = of_box!(bass_depth_mm, treble_depth_mm, side_mm, back_mm);
const INSIDE: (Get, Put) = of_box!(liner_width_mm, liner_height_mm, brace_gap_mm);
const HOLES: (Get, Put) = of_box!(holes, hole_length_mm, hole_width_mm);

static SOUNDBOX: [Sizes; 3] = [
    Sizes {
        id: "box-walls",
        title: say::BOX_WALLS,
        of: say::PART,
        columns: &[mm(say::DEEP_BASS), mm(say::TREBLE), mm(say::SIDE), mm(say::BACK)],
        names: &[say::WALLS],
        get: WALLS.0,
        put: WALLS.1,
    },
    Sizes {
        id: "box-inside",
        title: say::BOX_INSIDE,
        of: say::PART,
        columns: &[mm(say::WIDE), mm(say::HIGH), mm(say::BRACES_EVERY)],
        names: &[say::LINERS],
        get: INSIDE.0,
        put: INSIDE.1,
    },
    Sizes {
        id: "box-holes",
        title: say::BOX_HOLES,
        of: say::PART,
        columns: &[counted(say::HOW_MANY), mm(say::LONG), mm(say::WIDE)],
        names: &[say::SOUND_HOLES],
        get: HOLES.0,
        put: HOLES.1,
    },
];

/// Reads and writes numbers of the bars of the board.
macro_rules! of_bars {
    ($($field:ident),+) => {
        (
            |geometry: &GeometrySpec| {
                let row = |bars: &BarSpec| vec![$(bars.$field.into()),+];
                [&geometry.bars.cross, &geometry.bars.along].map(row).into()
            },
            |geometry: &mut GeometrySpec, rows: &[Vec<f64>]| {
                let bars = &mut geometry.bars;
                for (bars, row) in [&mut bars.cross, &mut bars.along].into_iter().zip(rows) {
                    let mut numbers = row.iter();
                    $(if let Some(number) = numbers.next() {
                        set(&mut bars.$field, *number);
                    })+
                }
            },
        )
    };
}

const PERCENT: (f64, f64) = (0.0, 100.0);
const BARS: (Get, Put) = of_bars!(count, width_mm, height_mm, at_percent, to_percent);

static BARS_OF: Sizes = Sizes {
    id: "board-bars",
    title: say::BARS_OF_BOARD,
    of: say::BARS,
    columns: &[
        counted(say::HOW_MANY),
        mm(say::WIDE),
        mm(say::HIGH),
        percent(say::FIRST_AT, PERCENT),
        percent(say::LAST_AT, PERCENT),
    ],
    names: &[say::BARS_ACROSS, say::BARS_ALONG],
    get: BARS.0,
    put: BARS.1,
};
static SIDES_OF: Sizes = Sizes {
    id: "board-sides",
    title: say::BOARD_SIDES,
    of: say::SOUNDBOARD,
    columns: &[percent(say::OF_THE_MIDDLE, (0.0, 300.0))],
    names: &[say::AT_THE_SIDES],
    get: |geometry| vec![vec![geometry.bars.side_percent]],
    put: |geometry, rows| {
        if let Some(number) = rows.iter().flatten().next() {
            geometry.bars.side_percent = *number;
        }
    },
};

/// The bars of the board, and how thick it is at its sides.
pub(super) fn bars_form(form: Form) -> AnyView {
    fieldset(
        say::BARS.said(),
        vec![
            table(form, &SIDES_OF),
            thicknesses(form),
            table(form, &BARS_OF),
            wood_choice(form, say::WOOD_BARS, false, |geometry| &mut geometry.bars.wood),
            hint(say::BARS_HINT),
        ],
    )
}

pub(super) fn table(form: Form, sizes: &'static Sizes) -> AnyView {
    let names = sizes.names.iter().map(|name| (*name).into()).collect::<Vec<_>>();
    NumberTable {
        id: sizes.id,
        title: sizes.title.said(),
        of: sizes.of.said(),
        columns: sizes.columns,
        rows: form.of(sizes.get),
        names: Signal::stored(names),
        set: Callback::new(move |rows: Vec<Vec<f64>>| {
            form.change(|geometry| (sizes.put)(geometry, &rows));
        }),
        count: None,
        here: RwSignal::new(None),
    }
    .view()
}

pub(super) fn hint(text: Words) -> AnyView {
    view! { <p class="hint">{text.said()}</p> }.into_any()
}

static FASTENERS: [(FastenerSpec, &str, Words); 4] = [
    (FastenerSpec::None, "none", say::HELD_UNKNOWN),
    (FastenerSpec::Dowels, "dowels", say::HELD_DOWELS),
    (FastenerSpec::Bolts, "bolts", say::HELD_BOLTS),
    (FastenerSpec::Screws, "screws", say::SCREWS),
];
pub(super) static METALS: [(MetalSpec, &str, Words); 3] = [
    (MetalSpec::Steel, "steel", say::STEEL),
    (MetalSpec::Brass, "brass", say::BRASS),
    (MetalSpec::Aluminium, "aluminium", say::ALUMINIUM),
];

/// What holds the joints.
pub(super) fn joints_form(form: Form) -> AnyView {
    let fasteners = |label, at: usize| {
        let put = move |kind| form.step(|g| joints(&mut g.joints)[at].fasteners = kind);
        let of = [
            |g: &GeometrySpec| g.joints.shoulder.fasteners,
            |g: &GeometrySpec| g.joints.head.fasteners,
            |g: &GeometrySpec| g.joints.foot.fasteners,
        ];
        form.choice(label, &FASTENERS, of[at], put)
    };
    let metal = move |metal| {
        form.step(|g| joints(&mut g.joints).into_iter().for_each(|joint| joint.metal = metal));
    };
    let [faces, held, plates] = &TABLES;
    fieldset(
        say::JOINTS.said(),
        vec![
            table(form, faces),
            fasteners(say::NECK_ON_BOX_BY, 0),
            fasteners(say::PILLAR_ON_NECK_BY, 1),
            fasteners(say::PILLAR_ON_BASE_BY, 2),
            table(form, held),
            table(form, plates),
            form.choice(say::PLATES_OF, &METALS, |g| g.joints.shoulder.metal, metal),
            hint(say::JOINTS_HINT),
            asked_in_words(Question::Joint),
        ],
    )
}

/// The soundbox.
pub(super) fn soundbox_form(form: Form) -> AnyView {
    let wood =
        |label: Words, of: fn(&mut GeometrySpec) -> &mut String| wood_choice(form, label, true, of);
    static OPEN: [(bool, &str, Words); 2] =
        [(false, "closed", say::BACK_CLOSED), (true, "slotted", say::BACK_OPEN)];
    let slot = move |slotted| form.step(|geometry| geometry.soundbox.slotted = slotted);
    let [walls, inside, holes] = &SOUNDBOX;
    fieldset(
        say::SOUNDBOX.said(),
        vec![
            table(form, walls),
            wood(say::WOOD_SIDES, |geometry| &mut geometry.soundbox.side_wood),
            wood(say::WOOD_BACK, |geometry| &mut geometry.soundbox.back_wood),
            table(form, inside),
            table(form, holes),
            form.choice(say::BACK_IS, &OPEN, |geometry| geometry.soundbox.slotted, slot),
            hint(say::SOUNDBOX_HINT),
        ],
    )
}
