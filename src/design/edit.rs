//! Everything that changes a design, and the one place where it is applied.

mod cell;
mod take;

use std::mem;
use std::ops::Range;
use std::sync::Arc;

pub use self::cell::cell_text;
use self::cell::set_cell;
pub use self::take::{ChosenBy, Made, Taken, TargetsPart};
use super::document::{
    Design, GeometrySpec, LONGEST_CELL, LONGEST_TEXT, MOST_STRINGS, MakeUpSpec, MaterialSpec,
    MechanismKind, OrderSpec, SizesSpec, StockItem, StringSpec, TargetsSpec, Units, VersionSpec,
};
use super::gaps;
use super::library::embed;
use super::material_edit::{remove, rename};
use super::material_facts::Property;
use super::persist::tidy;
use super::settings::{OneOf, Setting};
use crate::engine::pitch::Note;

/// A column of the string chart that can be typed into.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Column {
    Note,
    Length,
    MakeUp,
    Gauge,
    OrderCode,
}

impl Column {
    /// From left to right.
    pub const ALL: [Self; 5] =
        [Self::Note, Self::Length, Self::MakeUp, Self::Gauge, Self::OrderCode];
}

/// A text about the whole instrument.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    Title,
    Maker,
    Client,
    Serial,
    Date,
    OpenTuning,
    Remarks,
}

/// A change of a design. Rows count from 0, the highest string.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// One cell gets a text.
    Cell { row: usize, column: Column, text: String },
    /// A block of cells gets texts; rows past the last string are added. `columns` says where each
    /// text of a line goes; `None` leaves it out.
    Block { row: usize, columns: Vec<Option<Column>>, texts: Vec<Vec<String>> },
    /// The strings of a range get a make-up.
    MakeUp { rows: Range<usize>, make_up: MakeUpSpec },
    /// Strings are put in before a row; the gaps between strings follow.
    Insert { row: usize, strings: Vec<StringSpec> },
    /// The strings of a range go, and their gaps with them.
    Delete { rows: Range<usize> },
    /// The strings of a range change places with the one above (`up`) or below. The places stay where they are on
    /// the board.
    Move { rows: Range<usize>, up: bool },
    /// Strings are added above the highest, each the next note up.
    ExtendUp { count: usize },
    /// Strings are added below the lowest, each the next note down.
    ExtendDown { count: usize },
    /// A text about the whole instrument.
    Text { field: Field, text: String },
    /// A setting that is a plain number; none where it is left out.
    Setting { setting: Setting, number: Option<f64> },
    /// A setting that is one of a few words.
    Choice { choice: OneOf, place: usize },
    /// The units that the page shows.
    Units(Units),
    /// Levers or discs of the strings of a range; `None` for the rule of the harp.
    StringMechanism { rows: Range<usize>, kind: Option<MechanismKind> },
    /// The strings of a range keep their make-up when strings are chosen, or no longer.
    Lock { rows: Range<usize>, locked: bool },
    /// The shape of the harp.
    Geometry(Box<GeometrySpec>),
    /// What drives, the lengths or the drawn curve, with the lengths of the strings as they then are; `None` leaves
    /// what was typed.
    Drives { geometry: Box<GeometrySpec>, lengths: Vec<Option<String>> },
    /// What is wanted when strings are chosen, of which one part was changed.
    Targets { targets: Box<TargetsSpec>, part: TargetsPart },
    /// Strings get what was proposed for them; stock items and materials come along as far as strings use them. What
    /// it was chosen by stays with the design, where that has nothing of its own.
    Take {
        strings: Vec<Taken>,
        stock: Vec<StockItem>,
        materials: Vec<MaterialSpec>,
        chosen_by: ChosenBy,
    },
    /// One material is added, or takes the place of the one with its key.
    Material(MaterialSpec),
    /// One property of a material changes: a run of typing in its fields is one step.
    Fact { material: MaterialSpec, property: Option<Property> },
    /// A material gets another key; the strings that use it follow.
    RenameMaterial { from: String, to: String },
    /// A material goes, if no string uses it.
    RemoveMaterial { key: String },
    /// The stock that the design holds.
    Stock(Vec<StockItem>),
    /// Spares and remarks of the order list.
    Order(OrderSpec),
    /// The design as it is now is kept under a name.
    KeepVersion { name: String, date: String },
    /// A version gets another name and date.
    NameVersion { index: usize, name: String, date: String },
    /// A version goes.
    RemoveVersion { index: usize },
    /// The design becomes what a version was; all versions stay.
    RestoreVersion { index: usize },
}

/// Which changes belong together: a run of edits under one key is one step of undo.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum EditKey {
    Cell {
        row: usize,
        column: Column,
    },
    Text(Field),
    Setting(Setting),
    Geometry,
    Order,
    Targets(TargetsPart),
    /// A property of a material, or its name and kind.
    Fact {
        key: String,
        property: Option<Property>,
    },
}

impl Edit {
    /// The key under which a run of such edits is one step; `None` for one that stands alone.
    pub fn key(&self) -> Option<EditKey> {
        match self {
            Self::Cell { row, column, .. } => Some(EditKey::Cell { row: *row, column: *column }),
            Self::Text { field, .. } => Some(EditKey::Text(*field)),
            Self::Setting { setting, .. } => Some(EditKey::Setting(*setting)),
            Self::Geometry(_) => Some(EditKey::Geometry),
            Self::Order(_) => Some(EditKey::Order),
            Self::Targets { part: TargetsPart::Curve, .. } => None,
            Self::Targets { part, .. } => Some(EditKey::Targets(*part)),
            Self::Fact { material, property } => {
                Some(EditKey::Fact { key: material.key.clone(), property: *property })
            }
            _ => None,
        }
    }

    /// The design after the edit. Rows outside the design are left alone; no more than
    /// [`MOST_STRINGS`] strings are kept, and no more of a text than a design may hold.
    pub fn apply(&self, design: &Design) -> Design {
        let mut next = design.clone();
        self.change(&mut next);
        // Whoever changes a size of the frame has looked at them. A version that comes back brings its own mark.
        if !matches!(self, Self::RestoreVersion { .. })
            && !next.geometry.is_sized_as(&design.geometry)
        {
            next.geometry.sizes = SizesSpec::Own;
        }
        let over = next.strings.len().saturating_sub(MOST_STRINGS);
        gaps::take_out(&mut next.geometry, next.strings.len(), &(0..over));
        next.strings.truncate(MOST_STRINGS);
        tidy(&mut next);
        embed(&mut next);
        next
    }

    fn change(&self, design: &mut Design) {
        let strings = &mut design.strings;
        match self {
            Self::Cell { row, column, text } => {
                if let Some(string) = strings.get_mut(*row) {
                    set_cell(string, *column, text);
                }
            }
            Self::Block { row, columns, texts } => {
                let before = strings.len();
                set_block(strings, *row, columns, texts);
                gaps::put_in(&mut design.geometry, before, 0, strings.len() - before);
            }
            Self::MakeUp { rows, make_up } => {
                let rows = clamp(rows, strings.len());
                for string in strings[rows].iter_mut().filter(|string| string.make_up != *make_up) {
                    string.make_up = make_up.clone();
                    string.order_code.clear();
                    string.stock_key = 0;
                }
            }
            Self::Insert { row, strings: new } => {
                let at = (*row).min(strings.len());
                let count = strings.len();
                gaps::put_in(&mut design.geometry, count, count - at, new.len());
                strings.splice(at..at, new.iter().cloned());
            }
            Self::Delete { rows } => {
                let rows = clamp(rows, strings.len());
                let count = strings.len();
                gaps::take_out(
                    &mut design.geometry,
                    count,
                    &(count - rows.end..count - rows.start),
                );
                strings.drain(rows);
            }
            Self::Move { rows, up } => move_rows(strings, rows, *up),
            Self::ExtendUp { count } => {
                gaps::put_in(&mut design.geometry, strings.len(), strings.len(), *count);
                for _ in 0..*count {
                    strings.insert(0, beyond(strings, strings.first(), 1));
                }
            }
            Self::ExtendDown { count } => {
                gaps::put_in(&mut design.geometry, strings.len(), 0, *count);
                for _ in 0..*count {
                    strings.push(beyond(strings, strings.last(), -1));
                }
            }
            Self::Text { field, text } => *field.of_mut(design) = cut(text, LONGEST_TEXT),
            Self::Setting { setting, number } => setting.put(design, *number),
            Self::Choice { choice, place } => choice.put(design, *place),
            Self::Units(units) => design.units = *units,
            Self::StringMechanism { rows, kind } => {
                let rows = clamp(rows, strings.len());
                for string in &mut strings[rows] {
                    string.mechanism = *kind;
                }
            }
            Self::Lock { rows, locked } => {
                let rows = clamp(rows, strings.len());
                for string in &mut strings[rows] {
                    string.locked = *locked;
                }
            }
            Self::Geometry(geometry) => design.geometry = (**geometry).clone(),
            Self::Drives { geometry, lengths } => {
                design.geometry = (**geometry).clone();
                for (string, length) in strings.iter_mut().zip(lengths) {
                    if let Some(length) = length {
                        set_cell(string, Column::Length, length);
                    }
                }
            }
            Self::Take { strings, stock, materials, chosen_by } => {
                take::take(design, strings, stock, materials);
                take::remember(&mut design.targets, chosen_by);
            }
            Self::Targets { targets, .. } => design.targets = (**targets).clone(),
            Self::Material(material) | Self::Fact { material, .. } => {
                set_material(&mut design.materials, material);
            }
            Self::RenameMaterial { from, to } => rename(design, from, to),
            Self::RemoveMaterial { key } => remove(design, key),
            Self::Stock(items) => design.stock.clone_from(items),
            Self::Order(order) => design.order = order.clone(),
            Self::KeepVersion { name, date } => keep(design, name, date),
            Self::NameVersion { index, name, date } => {
                if let Some(version) = design.versions.get_mut(*index) {
                    [version.name, version.date] = [name, date].map(|text| short(text));
                }
            }
            Self::RemoveVersion { index } => {
                if *index < design.versions.len() {
                    design.versions.remove(*index);
                }
            }
            Self::RestoreVersion { index } => {
                if let Some(version) = design.versions.get(*index).cloned() {
                    let versions = mem::take(&mut design.versions);
                    *design = Design { versions, ..(*version.design).clone() };
                }
            }
        }
    }
}

fn set_block(
    strings: &mut Vec<StringSpec>,
    row: usize,
    columns: &[Option<Column>],
    texts: &[Vec<String>],
) {
    for (index, line) in (row..MOST_STRINGS).zip(texts) {
        if index >= strings.len() {
            strings.resize_with(index + 1, StringSpec::default);
        }
        for (column, text) in columns.iter().zip(line) {
            if let Some(column) = column {
                set_cell(&mut strings[index], *column, text);
            }
        }
    }
}

fn move_rows(strings: &mut [StringSpec], rows: &Range<usize>, up: bool) {
    let rows = clamp(rows, strings.len());
    if rows.is_empty() {
        return;
    }
    if up && rows.start > 0 {
        strings[rows.start - 1..rows.end].rotate_left(1);
    } else if !up && rows.end < strings.len() {
        strings[rows.start..=rows.end].rotate_right(1);
    }
}

/// The string `steps` letters beyond `edge`, made like it, its length still to be given. The new
/// letter is raised or lowered as the nearest string of that letter is.
fn beyond(strings: &[StringSpec], edge: Option<&StringSpec>, steps: i32) -> StringSpec {
    let Some(edge) = edge else { return StringSpec::default() };
    let notes = || strings.iter().filter_map(|string| string.note.parse::<Note>().ok());
    let next = edge.note.parse::<Note>().ok().and_then(|note| {
        note.moved(steps, |letter| {
            let same = notes().filter(|other| other.letter() == letter);
            same.min_by_key(|other| (other.step() - note.step()).abs()).map_or(0, Note::alter)
        })
    });
    let note = next.map(|note| note.to_string()).unwrap_or_default();
    StringSpec { note, make_up: edge.make_up.clone(), ..StringSpec::default() }
}

fn keep(design: &mut Design, name: &str, date: &str) {
    let [name, date] = [name, date].map(short);
    let now = Design { versions: Vec::new(), ..design.clone() };
    design.versions.push(VersionSpec { name, date, design: Arc::new(now) });
}

/// A name or a date of a version, as long as it may be.
fn short(text: &str) -> String {
    cut(text.trim(), LONGEST_CELL)
}

impl Field {
    /// The text in a design.
    pub fn of(self, design: &Design) -> &String {
        match self {
            Self::Title => &design.title,
            Self::Maker => &design.maker,
            Self::Client => &design.client,
            Self::Serial => &design.serial,
            Self::Date => &design.date,
            Self::OpenTuning => &design.open_tuning,
            Self::Remarks => &design.remarks,
        }
    }

    fn of_mut(self, design: &mut Design) -> &mut String {
        match self {
            Self::Title => &mut design.title,
            Self::Maker => &mut design.maker,
            Self::Client => &mut design.client,
            Self::Serial => &mut design.serial,
            Self::Date => &mut design.date,
            Self::OpenTuning => &mut design.open_tuning,
            Self::Remarks => &mut design.remarks,
        }
    }
}

fn set_material(materials: &mut Vec<MaterialSpec>, material: &MaterialSpec) {
    match materials.iter_mut().find(|other| other.key == material.key) {
        Some(place) => *place = material.clone(),
        None => materials.push(material.clone()),
    }
}

fn clamp(rows: &Range<usize>, count: usize) -> Range<usize> {
    rows.start.min(count)..rows.end.min(count).max(rows.start.min(count))
}

fn cut(text: &str, most: usize) -> String {
    text.chars().take(most).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::TemperamentSpec;
    use crate::design::document::{DrivesSpec, GapsSpec};
    use crate::design::gaps::widths_mm;
    use crate::design::history::History;

    fn string(note: &str, length: &str, material: &str, diameter: &str) -> StringSpec {
        let make_up = MakeUpSpec {
            material: material.to_owned(),
            diameter: diameter.to_owned(),
            ..MakeUpSpec::default()
        };
        StringSpec {
            note: note.to_owned(),
            length: length.to_owned(),
            make_up,
            ..StringSpec::default()
        }
    }

    fn design() -> Design {
        let strings = vec![
            string("E5", "300", "nylon", "0.64"),
            string("D5", "330", "nylon", "0.70"),
            string("C5", "360", "gut", "0.80"),
        ];
        Design { strings, ..Design::default() }
    }

    fn notes(design: &Design) -> Vec<&str> {
        design.strings.iter().map(|string| string.note.as_str()).collect()
    }

    fn cell(row: usize, column: Column, text: &str) -> Edit {
        Edit::Cell { row, column, text: text.to_owned() }
    }

    #[test]
    fn a_run_of_changes_of_the_shape_is_one_step() {
        let geometry = GeometrySpec { lean_deg: 3.0, ..GeometrySpec::default() };
        let edit = Edit::Geometry(Box::new(geometry.clone()));
        assert_eq!(edit.key(), Some(EditKey::Geometry));
        assert_eq!(edit.apply(&design()), Design { geometry, ..edit.apply(&design()) });
        assert_eq!(edit.apply(&design()).strings, design().strings);
    }

    /// What was proposed is the maker's once a size is changed, and stays a proposal while strings and their places are.
    #[test]
    fn sizes_are_a_proposal_until_one_is_changed_or_they_are_taken() {
        let mut base = design();
        base.geometry.sizes = SizesSpec::Proposed;
        let after = |edit: &Edit| edit.apply(&base).geometry.sizes;
        let number = |setting, number| Edit::Setting { setting, number: Some(number) };
        for other in [
            cell(0, Column::Length, "300"),
            number(Setting::A4, 442.0),
            number(Setting::Lean, 4.0),
            Edit::ExtendUp { count: 1 },
            number(Setting::NeckThickness, base.geometry.neck.thickness_mm),
        ] {
            assert_eq!(after(&other), SizesSpec::Proposed, "{other:?}");
        }
        let mut wood = base.geometry.clone();
        wood.pillar.wood = "black-walnut".to_owned();
        for size in [
            number(Setting::NeckThickness, 41.0),
            number(Setting::BassThickness, 9.5),
            Edit::Geometry(Box::new(wood)),
            Edit::Choice { choice: OneOf::Sizes, place: 0 },
        ] {
            assert_eq!(after(&size), SizesSpec::Own, "{size:?}");
        }
        // A version that comes back is what it was.
        let kept = Edit::KeepVersion { name: String::new(), date: String::new() }.apply(&base);
        let own = number(Setting::NeckThickness, 41.0).apply(&kept);
        let back = Edit::RestoreVersion { index: 0 }.apply(&own);
        assert_eq!(back.geometry.sizes, SizesSpec::Proposed);
    }

    #[test]
    fn the_gaps_follow_the_strings_and_undo_brings_them_back() {
        let mut base = design();
        base.geometry.spacing.gaps = GapsSpec::EachMm(vec![16.0, 14.0]);
        let widths =
            |design: &Design| widths_mm(&design.geometry.spacing.gaps, design.strings.len());
        let notes = vec![Some(Column::Note)];
        let block = Edit::Block { row: 3, columns: notes, texts: vec![vec!["B4".to_owned()]] };
        for (edit, wanted) in [
            (Edit::Insert { row: 1, strings: vec![StringSpec::default()] }, vec![16.0, 14.0, 14.0]),
            (Edit::Insert { row: 3, strings: vec![StringSpec::default()] }, vec![16.0, 16.0, 14.0]),
            (Edit::Delete { rows: 2..3 }, vec![14.0]),
            (Edit::Delete { rows: 0..1 }, vec![16.0]),
            (Edit::ExtendUp { count: 2 }, vec![16.0, 14.0, 14.0, 14.0]),
            (Edit::ExtendDown { count: 2 }, vec![16.0, 16.0, 16.0, 14.0]),
            (block, vec![16.0, 16.0, 14.0]),
            (Edit::Move { rows: 0..1, up: false }, vec![16.0, 14.0]),
        ] {
            let mut history = History::new(base.clone());
            history.record(edit.apply(&base), edit.key());
            assert_eq!(widths(history.present()), wanted, "{edit:?}");
            assert!(history.undo());
            assert_eq!(*history.present(), base);
        }
        let full = Edit::ExtendUp { count: 400 }.apply(&base);
        assert_eq!((full.strings.len(), widths(&full)[0]), (MOST_STRINGS, 14.0));
    }

    #[test]
    fn what_drives_changes_in_one_step_with_the_lengths() {
        let geometry = GeometrySpec { drives: DrivesSpec::NeckCurve, ..GeometrySpec::default() };
        let lengths = vec![Some("301.5".to_owned()), None];
        let edit = Edit::Drives { geometry: Box::new(geometry.clone()), lengths };
        assert_eq!(edit.key(), None);
        let next = edit.apply(&design());
        assert_eq!(next.geometry, geometry);
        let lengths: Vec<_> = next.strings.iter().map(|string| string.length.as_str()).collect();
        assert_eq!(lengths, ["301.5", "330", "360"]);
    }

    #[test]
    fn a_version_is_kept_restored_and_removed() {
        let first = Edit::Units(Units::default()).apply(&design());
        let keep = |name: &str| Edit::KeepVersion { name: name.to_owned(), date: String::new() };
        let kept = keep(" first ").apply(&first);
        assert_eq!(Design { versions: Vec::new(), ..kept.clone() }, first);
        assert_eq!((&*kept.versions[0].name, &*kept.versions[0].design), ("first", &first));
        let changed = cell(0, Column::Length, "305").apply(&kept);
        let two = keep("second").apply(&changed);
        assert!(two.versions[1].design.versions.is_empty(), "versions hold no versions");
        let back = Edit::RestoreVersion { index: 0 }.apply(&two);
        assert_eq!((&*back.strings[0].length, back.versions.len()), ("300", 2));
        let named = Edit::NameVersion { index: 1, name: " spring ".into(), date: "4 March".into() };
        let named = named.apply(&two);
        assert_eq!((&*named.versions[1].name, &*named.versions[1].date), ("spring", "4 March"));
        assert_eq!(named.versions[1].design, two.versions[1].design);
        let one = Edit::RemoveVersion { index: 0 }.apply(&two);
        assert_eq!((one.versions.len(), &*one.versions[0].name), (1, "second"));
        assert_eq!(Edit::RemoveVersion { index: 9 }.apply(&one), one);
        assert_eq!(Edit::RestoreVersion { index: 9 }.apply(&one), one);
        let mut many = first;
        for _ in 0..12 {
            many = keep("again").apply(&many);
        }
        assert_eq!(crate::design::persist::check(&many), Ok(()));
        let refused = crate::design::persist::check(&keep("again").apply(&many)).unwrap_err();
        assert_eq!(refused.to_string(), "a design must have at most 12 versions, got 13");
    }

    #[test]
    fn strings_come_with_their_stock_in_one_step() {
        let item = |make_up: &str| StockItem { make_up: make_up.into(), ..StockItem::default() };
        let mut base = design();
        base.stock = vec![item("nylon 0.70"), item("steel 0.30")];
        let made = |gauge: &str| Some(Made::of(&string("", "", "gut", gauge)));
        let edit = Edit::Take {
            strings: vec![
                Taken { row: 1, made: made("0.66"), length: None },
                Taken { row: 2, made: made("0.70"), length: None },
            ],
            stock: vec![item("gut 0.66"), item("gut 0.90")],
            materials: Vec::new(),
            chosen_by: ChosenBy::default(),
        };
        let next = edit.apply(&base);
        assert_eq!(edit.key(), None);
        assert_eq!(notes(&next), ["E5", "D5", "C5"]);
        assert_eq!(next.strings[1].make_up.diameter, "0.66");
        let held: Vec<&str> = next.stock.iter().map(|item| &*item.make_up).collect();
        assert_eq!(held, ["gut 0.66"], "what no string is goes");
    }

    #[test]
    fn a_drag_of_a_point_is_one_step_and_a_whole_curve_another() {
        let edit = |points: &[(f64, f64)], part| {
            let targets = Box::new(TargetsSpec::default().with_points(points.to_vec()));
            Edit::Targets { targets, part }
        };
        let drag = edit(&[(60.0, 1.0)], TargetsPart::Point(0));
        assert_eq!(drag.key(), Some(EditKey::Targets(TargetsPart::Point(0))));
        assert_eq!(drag.apply(&design()).targets.points(), [(60.0, 1.0)]);
        assert_eq!(edit(&[(60.0, 1.0)], TargetsPart::Curve).key(), None);
    }

    #[test]
    fn what_is_taken_leaves_the_rest_of_a_string() {
        let order_code = "G74".to_owned();
        let made = Some(Made { order_code, ..Made::of(&string("", "", "gut", "0.74")) });
        let length = Some("335.5".to_owned());
        let strings = vec![
            Taken { row: 0, made, length: None },
            Taken { row: 1, made: None, length },
            Taken { row: 9, ..Taken::default() },
        ];
        let next = Edit::Take {
            strings,
            stock: Vec::new(),
            materials: Vec::new(),
            chosen_by: ChosenBy { curve: vec![(60.0, 0.9)], wound_from: "C3".to_owned() },
        };
        let next = next.apply(&design());
        assert_eq!(next.targets.points(), [(60.0, 0.9)], "the curve it was chosen by stays");
        assert_eq!(next.targets.wound_from, "C3", "so does where the winding starts");
        let first =
            StringSpec { order_code: "G74".to_owned(), ..string("E5", "300", "gut", "0.74") };
        assert_eq!(next.strings[0], first);
        assert_eq!(next.strings[1], string("D5", "335.5", "nylon", "0.70"));
        assert_eq!(next.strings[2], design().strings[2]);
    }

    #[test]
    fn a_new_material_keeps_the_gauge() {
        let next = cell(1, Column::MakeUp, "gut").apply(&design());
        assert_eq!(next.strings[1].make_up.material, "gut");
        assert_eq!(next.strings[1].make_up.diameter, "0.70");
    }

    #[test]
    fn a_make_up_can_be_typed_whole_and_comes_back() {
        let text = "steel 0.45 + silk 0.10 + bronze 0.25";
        let next = cell(1, Column::MakeUp, text).apply(&design());
        assert!(next.strings[1].make_up.is_wound());
        assert_eq!(cell_text(&next.strings[1], Column::MakeUp), text);
        let same = cell(1, Column::Gauge, "1.15").apply(&next);
        assert_eq!(same, next, "the gauge of a wound string follows from its make-up");
    }

    #[test]
    fn a_long_make_up_is_not_cut() {
        let name = "w".repeat(60);
        let text = format!("{name} 0.45 + {name} 0.10 + {name} 0.25 + {name} 0.30");
        let next = cell(1, Column::MakeUp, &text).apply(&design());
        assert_eq!(cell_text(&next.strings[1], Column::MakeUp), text);
        let unreadable = cell(1, Column::MakeUp, &"+".repeat(5_000)).apply(&design());
        assert_eq!(unreadable.strings[1].make_up.material.len(), LONGEST_CELL);
    }

    #[test]
    fn another_string_has_another_order_code() {
        let mut base = design();
        base.strings[0].order_code = "N64".to_owned();
        assert_eq!(cell(0, Column::Length, "301").apply(&base).strings[0].order_code, "N64");
        assert_eq!(cell(0, Column::Gauge, "0.64").apply(&base).strings[0].order_code, "N64");
        assert_eq!(cell(0, Column::Gauge, "0.71").apply(&base).strings[0].order_code, "");
        let gut = Edit::MakeUp { rows: 0..1, make_up: base.strings[2].make_up.clone() };
        assert_eq!(gut.apply(&base).strings[0].order_code, "");
    }

    #[test]
    fn what_is_unreadable_stays_in_its_cell() {
        for (column, text) in [
            (Column::Note, "H9?"),
            (Column::Length, "about a foot"),
            (Column::MakeUp, "+ + mithril"),
            (Column::Gauge, "-3"),
        ] {
            let next = cell(0, column, text).apply(&design());
            assert_eq!(cell_text(&next.strings[0], column), text);
        }
    }

    #[test]
    fn a_block_pasted_at_the_end_adds_strings() {
        let texts = [["B4", "390"], ["A4", "420"], ["G4", "450"]];
        let texts = texts.iter().map(|line| line.map(str::to_owned).to_vec()).collect();
        let columns = vec![Some(Column::Note), Some(Column::Length)];
        let next = Edit::Block { row: 2, columns, texts }.apply(&design());
        assert_eq!(notes(&next), ["E5", "D5", "B4", "A4", "G4"]);
        assert_eq!(next.strings[4].length, "450");
        assert_eq!(next.strings[2].make_up.material, "gut", "other columns stay");
    }

    #[test]
    fn rows_are_put_in_taken_out_and_moved() {
        let base = design();
        let insert = Edit::Insert { row: 1, strings: vec![string("D#5", "310", "nylon", "0.64")] };
        assert_eq!(notes(&insert.apply(&base)), ["E5", "D#5", "D5", "C5"]);
        assert_eq!(notes(&Edit::Delete { rows: 0..2 }.apply(&base)), ["C5"]);
        assert_eq!(notes(&Edit::Move { rows: 1..3, up: true }.apply(&base)), ["D5", "C5", "E5"]);
        assert_eq!(notes(&Edit::Move { rows: 0..1, up: false }.apply(&base)), ["D5", "E5", "C5"]);
        for nothing in [
            Edit::Move { rows: 0..2, up: true },
            Edit::Move { rows: 2..3, up: false },
            Edit::Delete { rows: 7..9 },
            cell(9, Column::Note, "A4"),
        ] {
            assert_eq!(notes(&nothing.apply(&base)), notes(&base), "{nothing:?}");
        }
    }

    #[test]
    fn the_compass_grows_by_the_scale_of_the_harp() {
        let mut base = design();
        base.strings.push(string("Bb4", "400", "gut", "0.90"));
        base.strings.push(string("A4", "430", "gut", "0.95"));
        let next = Edit::ExtendUp { count: 5 }.apply(&base);
        assert_eq!(notes(&next)[..5], ["C6", "Bb5", "A5", "G5", "F5"]);
        assert_eq!(next.strings[0].make_up, base.strings[0].make_up);
        assert_eq!(next.strings[0].length, "");
        assert_eq!(notes(&Edit::ExtendDown { count: 1 }.apply(&base)).last(), Some(&"G4"));
        assert_eq!(Edit::ExtendDown { count: 1 }.apply(&Design::default()).strings.len(), 1);
    }

    #[test]
    fn no_edit_makes_more_strings_than_a_design_may_have() {
        let next = Edit::ExtendDown { count: 400 }.apply(&design());
        assert_eq!(next.strings.len(), MOST_STRINGS);
        let texts = vec![vec!["A4".to_owned()]; 5_000];
        let columns = vec![Some(Column::Note)];
        let next = Edit::Block { row: 1, columns, texts }.apply(&design());
        assert_eq!(next.strings.len(), MOST_STRINGS);
    }

    #[test]
    fn a_string_may_differ_from_the_rule_of_the_harp() {
        let base = design();
        let rule = Edit::Choice { choice: OneOf::Mechanism, place: 3 };
        let next = rule.apply(&base);
        assert_eq!(next.mechanism.kind, MechanismKind::DoubleDisc);
        let own = Edit::StringMechanism { rows: 1..9, kind: Some(MechanismKind::None) };
        let next = own.apply(&next);
        let kinds: Vec<_> = next.strings.iter().map(|string| string.mechanism).collect();
        assert_eq!(kinds, [None, Some(MechanismKind::None), Some(MechanismKind::None)]);
        let back = Edit::StringMechanism { rows: 2..3, kind: None }.apply(&next);
        assert_eq!(back.strings[2].mechanism, None);
    }

    #[test]
    fn each_setting_is_a_step_of_its_own() {
        let edits = Setting::ALL.map(|setting| {
            let number = Some(setting.row().sensible.1);
            Edit::Setting { setting, number }
        });
        for (place, edit) in edits.iter().enumerate() {
            assert!(edits[place + 1..].iter().all(|other| other.key() != edit.key()), "{edit:?}");
        }
        let all = edits.iter().fold(design(), |design, edit| edit.apply(&design));
        for setting in Setting::ALL {
            assert_eq!(setting.of(&all), Some(setting.row().sensible.1), "{setting:?}");
        }
    }

    #[test]
    fn a_number_that_may_be_left_out_is_left_out() {
        let set = |number| Edit::Setting { setting: Setting::MostItems, number };
        let some = set(Some(9.0)).apply(&design());
        assert_eq!(some.targets.most_items, Some(9));
        assert_eq!(set(None).apply(&some).targets.most_items, None);
        let kept = Edit::Setting { setting: Setting::Turns, number: None }.apply(&some);
        assert_eq!(kept, some, "turns cannot be left out");
    }

    #[test]
    fn a_choice_takes_its_own_places_only() {
        let choose = |place| {
            let edit = Edit::Choice { choice: OneOf::Temperament, place };
            edit.apply(&design()).pitch.temperament
        };
        assert_eq!(choose(4), TemperamentSpec::Vallotti);
        assert_eq!(choose(7), TemperamentSpec::Equal, "there is no such place");
    }
}
