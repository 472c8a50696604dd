//! The sizes of joints and soundbox, which only the loads ask for.

use leptos::prelude::*;

use super::shape::Form;
use super::timber::wood_choice;
use crate::app::panels::form::fieldset;
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::{
    BarSpec, FastenerSpec, GeometrySpec, JointSpec, JointsSpec, MetalSpec,
};
use crate::design::settings::NumberRow;

const SIZE: (f64, f64) = (0.0, 1_000.0);

pub(super) const fn mm(label: &'static str) -> NumberRow {
    NumberRow::new(label, "mm", SIZE)
}

const fn counted(label: &'static str) -> NumberRow {
    NumberRow { whole: true, ..NumberRow::new(label, "", (0.0, 100.0)) }
}

/// Rows of numbers that stand in one table.
pub(super) struct Sizes {
    pub(super) id: &'static str,
    pub(super) title: &'static str,
    pub(super) of: &'static str,
    pub(super) columns: &'static [NumberRow],
    pub(super) names: &'static [&'static str],
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

const JOINTS: &[&str] = &["Neck on box", "Pillar on neck", "Pillar on base"];

pub(super) type Get = fn(&GeometrySpec) -> Vec<Vec<f64>>;
pub(super) type Put = fn(&mut GeometrySpec, &[Vec<f64>]);

const FACES: (Get, Put) = of_joints!(tenon_mm, tenon_depth_mm, face_width_mm, face_height_mm);
const HELD: (Get, Put) = of_joints!(count, diameter_mm, depth_mm, apart_mm, across_mm);
const PLATES: (Get, Put) = of_joints!(plate_mm, plate_width_mm);

static TABLES: [Sizes; 3] = [
    Sizes {
        id: "joint-tenon",
        title: "Tenons and glued faces of the joints",
        of: "Joint",
        columns: &[mm("Tenon"), mm("Deep"), mm("Face wide"), mm("High")],
        names: JOINTS,
        get: FACES.0,
        put: FACES.1,
    },
    Sizes {
        id: "joint-held",
        title: "Dowels, bolts or screws of the joints",
        of: "Joint",
        columns: &[counted("How many"), mm("Thick"), mm("Deep"), mm("Apart"), mm("Rows apart")],
        names: JOINTS,
        get: HELD.0,
        put: HELD.1,
    },
    Sizes {
        id: "joint-plate",
        title: "Plates on both sides of the joints",
        of: "Joint",
        columns: &[mm("Plate"), mm("Wide")],
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
        title: "Depth of the soundbox and thickness of its walls",
        of: "Part",
        columns: &[mm("Deep, bass"), mm("Treble"), mm("Side"), mm("Back")],
        names: &["Walls"],
        get: WALLS.0,
        put: WALLS.1,
    },
    Sizes {
        id: "box-inside",
        title: "Liners and braces of the soundbox",
        of: "Part",
        columns: &[mm("Wide"), mm("High"), mm("Braces every")],
        names: &["Liners"],
        get: INSIDE.0,
        put: INSIDE.1,
    },
    Sizes {
        id: "box-holes",
        title: "Sound holes in the back",
        of: "Part",
        columns: &[counted("How many"), mm("Long"), mm("Wide")],
        names: &["Sound holes"],
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
    title: "Bars of the soundboard",
    of: "Bars",
    columns: &[
        counted("How many"),
        mm("Wide"),
        mm("High"),
        NumberRow::new("First at", "%", PERCENT),
        NumberRow::new("Last at", "%", PERCENT),
    ],
    names: &["Across", "Along, pairs"],
    get: BARS.0,
    put: BARS.1,
};
static SIDES_OF: Sizes = Sizes {
    id: "board-sides",
    title: "Thickness of the soundboard at its sides",
    of: "Soundboard",
    columns: &[NumberRow::new("Of the middle", "%", (0.0, 300.0))],
    names: &["At the sides"],
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
        "Bars",
        vec![
            table(form, &SIDES_OF),
            table(form, &BARS_OF),
            wood_choice(form, "Wood of the bars", false, |geometry| &mut geometry.bars.wood),
            hint(
                "0 for what there is none of. At its sides the board is as thick as in the middle, or so much of that. Bars across lie from side to side: first and last are told in per cent of the board's length from its lower end. Bars along lie on both sides of the string rib: first and last pair in per cent of the way from the middle to the side. With 0 for both places they lie evenly.",
            ),
        ],
    )
}

pub(super) fn table(form: Form, sizes: &'static Sizes) -> AnyView {
    let names = sizes.names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    NumberTable {
        id: sizes.id,
        title: sizes.title,
        of: sizes.of,
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

pub(super) fn hint(text: &'static str) -> AnyView {
    view! { <p class="hint">{text}</p> }.into_any()
}

static FASTENERS: [(FastenerSpec, &str, &str); 4] = [
    (FastenerSpec::None, "none", "Nothing known"),
    (FastenerSpec::Dowels, "dowels", "Glued dowels"),
    (FastenerSpec::Bolts, "bolts", "Bolts"),
    (FastenerSpec::Screws, "screws", "Screws"),
];
pub(super) static METALS: [(MetalSpec, &str, &str); 3] = [
    (MetalSpec::Steel, "steel", "Steel"),
    (MetalSpec::Brass, "brass", "Brass"),
    (MetalSpec::Aluminium, "aluminium", "Aluminium"),
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
        "Joints",
        vec![
            table(form, faces),
            fasteners("Neck on box, held by", 0),
            fasteners("Pillar on neck, held by", 1),
            fasteners("Pillar on base, held by", 2),
            table(form, held),
            table(form, plates),
            form.choice("Plates of", &METALS, |g| g.joints.shoulder.metal, metal),
            hint(
                "0 for what there is none of or what is not known. A joint of which nothing is given is not judged. Tenons lie in the plane of the strings and are as high as the part; dowels, bolts and screws are as deep in both parts, in one row in that plane or in two. With plates, screws go through each plate into each part.",
            ),
        ],
    )
}

/// The soundbox.
pub(super) fn soundbox_form(form: Form) -> AnyView {
    let wood = |label: &'static str, of: fn(&mut GeometrySpec) -> &mut String| {
        wood_choice(form, label, true, of)
    };
    static OPEN: [(bool, &str, &str); 2] =
        [(false, "closed", "Closed but for its holes"), (true, "slotted", "Open all along")];
    let slot = move |slotted| form.step(|geometry| geometry.soundbox.slotted = slotted);
    let [walls, inside, holes] = &SOUNDBOX;
    fieldset(
        "Soundbox",
        vec![
            table(form, walls),
            wood("Wood of the sides", |geometry| &mut geometry.soundbox.side_wood),
            wood("Wood of the back", |geometry| &mut geometry.soundbox.back_wood),
            table(form, inside),
            table(form, holes),
            form.choice("The back is", &OPEN, |geometry| geometry.soundbox.slotted, slot),
            hint(
                "The soundbox is as wide as the board. It is judged once depth, sides and back have their sizes, and the bowing of the sides once the distance of the braces is given. An open back is open as wide as a hole.",
            ),
        ],
    )
}
