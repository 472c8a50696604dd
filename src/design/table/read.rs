//! Strings out of a table: our own export or a plain list with headings, in any order of columns.

use super::COLUMNS;
use super::asked::answer;
use super::cells::{Row, TableError, delimiter, rows};
use super::hand::{self, HandError};
use super::line::{LAYER_COLUMNS, Line, Own, own_material};
use super::tuned::{in_hz, tuning_of};
use crate::design::display::mechanism;
use crate::design::document::{
    Design, MOST_STRINGS, MaterialSpec, MechanismKind, PitchSpec, StringSpec,
};
use crate::design::letters::small;
use crate::design::library::{LONGEST_KEY, built_in};
use crate::design::number::{is_bare, plain};
use crate::design::presets::OpenTuning;
use crate::design::typed;
use crate::engine::material::key_of;
use crate::words::{semicolon, tables};

/// The longest table that is read, in bytes.
pub const MOST_BYTES: usize = 5 * 1024 * 1024;
/// The most errors that are reported of one table.
const MOST_ERRORS: usize = 100;
/// Letters of a key that are kept free for ` (row 150) 99`.
const ROOM_FOR_ROW: usize = 13;

/// The headings that are read, besides those of the layers.
pub const INPUT_COLUMNS: [&str; 17] = [
    "note",
    "frequency_hz",
    "length_mm",
    "length",
    "make_up",
    "material",
    "diameter_mm",
    "core_mm",
    "gauge_mm",
    "gauge",
    "linear_density_g_per_m",
    "breaking_load_n",
    "density_kg_m3",
    "modulus_gpa",
    "strength_mpa",
    "order_code",
    "string",
];

/// What a table holds.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TableRead {
    /// The strings in the order of the table.
    pub strings: Vec<StringSpec>,
    /// The line on which each string stands.
    pub lines: Vec<usize>,
    /// Of each string, the headings under which the materials of its layers stand.
    pub layers: Vec<Vec<&'static str>>,
    /// Materials of its own that the table brings along.
    pub materials: Vec<MaterialSpec>,
    /// The headings that were used.
    pub columns: Vec<&'static str>,
    /// Whether the make-ups stand under `string`, which else holds numbers to go by.
    pub string_is_make_up: bool,
    /// Headings that were not used.
    pub ignored: Vec<String>,
    /// The pitch and the temperament of which frequencies beside the notes tell.
    pub pitch: Option<PitchSpec>,
    /// What raises most of the strings, where the table tells; the others say so themselves.
    pub mechanism: Option<MechanismKind>,
    /// Remarks of the strings.
    pub remarks: String,
    /// What each column was taken for and what was assumed, without a full stop.
    pub told: Vec<String>,
    /// Whether it is a table in anyone's hand, of which what cannot be read is left out.
    pub is_by_hand: bool,
}

impl TableRead {
    /// The design with the strings of the table in place of its own, the open tuning of their notes, and the
    /// table's materials added. A material whose key the design has with other figures gets a new key.
    pub fn into_design(self, design: &Design) -> Design {
        let mut design = Design { strings: self.strings, ..design.clone() };
        let notes = design.strings.iter().filter_map(|string| string.note.parse().ok());
        design.open_tuning = OpenTuning::of(notes).map(|open| open.name.into()).unwrap_or_default();
        design.pitch = self.pitch.unwrap_or(design.pitch);
        design.mechanism.kind = self.mechanism.unwrap_or(design.mechanism.kind);
        if !self.remarks.is_empty() {
            design.remarks = self.remarks;
        }
        for mut material in self.materials {
            let old_key = material.key.clone();
            let mut count = 1;
            while design.materials.iter().any(|m| m.key == material.key && *m != material) {
                count += 1;
                material.key = format!("{old_key} {count}");
                material.name.clone_from(&material.key);
            }
            for string in &mut design.strings {
                if string.make_up.material == old_key {
                    string.make_up.material.clone_from(&material.key);
                }
            }
            if !design.materials.contains(&material) {
                design.materials.push(material);
            }
        }
        design
    }
}

/// Reads a table with headings in its first line.
///
/// Commas, semicolons or tabs stand between cells, whichever the headings use; a decimal comma is
/// read. Needed are a pitch (`note` or `frequency_hz`) and a length (`length_mm`, or `length` with a
/// unit). What the string is made of is `make_up`, as this program writes it, or `material` and
/// `diameter_mm` (of the core, when `wrap1_material` and `wrap1_mm` to `wrap3_…` follow), or
/// `linear_density_g_per_m` for a weighed string. `density_kg_m3`, `modulus_gpa` and `strength_mpa`
/// give the material of the string or core other figures. Where a row has `make_up`, that is what
/// counts, so that an exported table comes back as it was; only a diameter that a plain one lacks is
/// taken from `diameter_mm` or `gauge`. `string` is read as `make_up` where that and `material` are
/// not there and its cells are no numbers. An empty cell leaves its field empty.
///
/// # Errors
///
/// Everything that is wrong, with line and column; nothing is read by half.
pub fn read(text: &str) -> Result<TableRead, Vec<TableError>> {
    let whole = |line, message: String| vec![TableError { line, column: String::new(), message }];
    if text.len() > MOST_BYTES {
        let message = tables::too_large(&(MOST_BYTES >> 20));
        return Err(whole(1, message));
    }
    let text = text.trim_start_matches('\u{feff}');
    let (between, is_table) = headed(text);
    let rows = rows(text, between).map_err(|line| {
        if !is_table {
            return whole(1, tables::NO_TABLE.into());
        }
        whole(line, tables::OPEN_QUOTE.into())
    })?;
    let is_blank = |row: &Row| row.cells.iter().all(|cell| cell.trim().is_empty());
    let rows: Vec<Row> = rows.into_iter().filter(|row| !is_blank(row)).collect();
    let mut rows = rows.iter();
    let Some(headings) = rows.next() else {
        return Err(whole(1, tables::EMPTY.into()));
    };
    let mut reader = Reader::new(headings)?;
    reader.find_make_up(rows.as_slice());
    for row in rows {
        if reader.read.strings.len() == MOST_STRINGS {
            let message = tables::strings_many(&MOST_STRINGS);
            reader.errors.push(TableError { line: row.line, column: String::new(), message });
        }
        if reader.errors.len() >= MOST_ERRORS || reader.read.strings.len() == MOST_STRINGS {
            break;
        }
        reader.row(row);
    }
    reader.finish()
}

/// What stands between the cells of a table's first line, and whether a heading of it is known.
fn headed(text: &str) -> (char, bool) {
    let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let between = delimiter(first);
    (between, first.split(between).any(|heading| known(&name_of(heading)).is_some()))
}

/// Whether a text is a table with the headings of this program, of which one at least has its unit behind an
/// underscore, as nobody writes by hand.
pub fn is_ours(text: &str) -> bool {
    let text = text.trim_start_matches('\u{feff}');
    let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let of_ours = |heading: &str| {
        let name = name_of(heading);
        heading.contains('_') && (known(&name).is_some() || COLUMNS.contains(&name.as_str()))
    };
    headed(text).1 && first.split(delimiter(first)).any(of_ours)
}

/// Reads any table: one of ours as [`read`] does, one in anyone's hand as [`hand::read`] does. `likely` takes
/// numbers without a unit for what they look like; else such a column is left out and told.
///
/// # Errors
///
/// As those of [`read`]; of a table in anyone's hand only when there is no string in it.
pub fn open(text: &str, likely: bool) -> Result<TableRead, Vec<TableError>> {
    if text.len() > MOST_BYTES || is_ours(text) {
        return read(text);
    }
    let no_table = |message: String| {
        let message = if message.is_empty() { tables::NO_TABLE.into() } else { message };
        vec![TableError { line: 1, column: String::new(), message }]
    };
    let mut found = hand::read(text, None).map_err(|why| match why {
        HandError::NoString => no_table(String::new()),
        HandError::TooMany => no_table(why.to_string()),
    })?;
    let questions = found.questions();
    let mut told = Vec::new();
    if !questions.is_empty() {
        let mut columns = found.columns.clone();
        for question in questions {
            told.push(answer(&mut columns, question, likely));
        }
        found = hand::read(text, Some(&columns)).map_err(|_| no_table(told.join(semicolon())))?;
    }
    let remarks = found.remarks_of_all();
    let mut all = found.taken_for();
    all.append(&mut told);
    all.extend(found.assumed);
    all.extend(found.left_out);
    Ok(TableRead {
        strings: found.strings,
        lines: found.lines,
        pitch: found.pitch,
        remarks,
        told: all,
        is_by_hand: true,
        ..TableRead::default()
    })
}

/// A heading as it is looked up: in small letters, blanks and hyphens as underscores.
fn name_of(heading: &str) -> String {
    let between = |c: char| c.is_whitespace() || matches!(c, '-' | '_' | '"');
    let words = heading.split(between).filter(|word| !word.is_empty());
    small(&words.collect::<Vec<_>>().join("_"))
}

fn known(name: &str) -> Option<&'static str> {
    let mut all = INPUT_COLUMNS.into_iter().chain(LAYER_COLUMNS.into_iter().flatten());
    all.find(|column| *column == name)
}

/// Whether a cell is what a row goes by: a number, or the short name of a string such as `4C`.
fn is_label(cell: &str) -> bool {
    let short = cell.chars().count() <= 3 && cell.contains(|c: char| c.is_ascii_digit());
    short || is_bare(&plain(cell))
}

/// None of these headings is there.
pub(super) fn missing(line: usize, group: &[&str]) -> TableError {
    let names = group.iter().map(|name| tables::heading(name));
    let names = names.reduce(|names, next| tables::or(&names, &next)).unwrap_or_default();
    let message = tables::heading_missing(&names);
    TableError { line, column: String::new(), message }
}

struct Reader {
    /// Where the places of levers and discs stand, and the tension.
    raised: [Option<usize>; 4],
    /// What raises each string; `None` where the table does not tell.
    kinds: Vec<Option<MechanismKind>>,
    /// The frequency of each string as it stands.
    pitches: Vec<String>,
    /// Where each known heading stands.
    columns: Vec<(&'static str, usize)>,
    /// How many headings there are.
    width: usize,
    own: Vec<(Own, String)>,
    read: TableRead,
    errors: Vec<TableError>,
}

impl Reader {
    fn new(headings: &Row) -> Result<Self, Vec<TableError>> {
        let mut columns: Vec<(&str, usize)> = Vec::new();
        let mut read = TableRead::default();
        let mut errors = Vec::new();
        for (place, heading) in headings.cells.iter().enumerate() {
            let name = name_of(heading);
            match known(&name) {
                Some(column) if columns.iter().any(|known| known.0 == column) => {
                    let message = tables::HEADING_TWICE.into();
                    errors.push(TableError { line: headings.line, column: name, message });
                }
                Some(column) => {
                    read.columns.push(column);
                    columns.push((column, place));
                }
                // What this program works out itself is known, but not read.
                None if name.is_empty() || COLUMNS.contains(&name.as_str()) => {}
                None => read.ignored.push(typed::cut(heading)),
            }
        }
        if columns.is_empty() {
            let message = tables::NO_TABLE.into();
            return Err(vec![TableError { line: headings.line, column: String::new(), message }]);
        }
        for group in [&["note", "frequency_hz"], &["length_mm", "length"]] {
            if !group.iter().any(|column| columns.iter().any(|known| known.0 == *column)) {
                errors.push(missing(headings.line, group));
            }
        }
        if errors.is_empty() {
            let width = headings.cells.len();
            let place = |name: &str| headings.cells.iter().position(|cell| name_of(cell) == name);
            let raised = ["lever_mm", "disc_natural_mm", "disc_sharp_mm", "tension_n"].map(place);
            let (own, kinds, pitches) = (Vec::new(), Vec::new(), Vec::new());
            Ok(Self { columns, width, own, read, errors, raised, kinds, pitches })
        } else {
            Err(errors)
        }
    }

    /// Takes `string` as the make-up where nothing else says what the strings are made of and none of
    /// its cells is a number to go by.
    fn find_make_up(&mut self, rows: &[Row]) {
        let said = ["make_up", "material", "linear_density_g_per_m"];
        let Some(&(_, place)) = self.columns.iter().find(|known| known.0 == "string") else {
            return;
        };
        if said.iter().any(|column| self.columns.iter().any(|known| known.0 == *column)) {
            return;
        }
        let cells = rows.iter().filter_map(|row| row.cells.get(place));
        let mut filled = cells.map(|cell| cell.trim()).filter(|cell| !cell.is_empty()).peekable();
        if filled.peek().is_some() && !filled.any(is_label) {
            self.columns.push(("make_up", place));
            self.read.columns.push("make_up");
            self.read.string_is_make_up = true;
        }
    }

    fn finish(mut self) -> Result<TableRead, Vec<TableError>> {
        if self.errors.is_empty() {
            let (pitch, told) = tuning_of(&mut self.read.strings, &self.pitches);
            self.read.pitch = pitch;
            self.read.told = told;
            self.raise();
            return Ok(self.read);
        }
        if self.read.string_is_make_up {
            let of_make_up = self.errors.iter_mut().filter(|error| error.column == "make_up");
            of_make_up.for_each(|error| "string".clone_into(&mut error.column));
        }
        Err(self.errors)
    }

    /// Levers and discs, as far as their places tell of them.
    fn raise(&mut self) {
        let count = |kind: MechanismKind| self.kinds.iter().filter(|k| **k == Some(kind)).count();
        let all = [MechanismKind::Lever, MechanismKind::SingleDisc, MechanismKind::DoubleDisc];
        let Some(usual) = all.into_iter().filter(|kind| count(*kind) > 0).max_by_key(|k| count(*k))
        else {
            return;
        };
        self.read.mechanism = Some(usual);
        let mut others = Vec::new();
        for (at, (string, kind)) in self.read.strings.iter_mut().zip(&self.kinds).enumerate() {
            string.mechanism = kind.filter(|kind| *kind != usual);
            others.extend(string.mechanism.map(|_| (at + 1).to_string()));
        }
        let each = mechanism(usual);
        self.read.told.push(match others.len() {
            0 => tables::raised(&each),
            count => tables::raised_but(&count, &each, &others.join(", ")),
        });
    }

    fn row(&mut self, row: &Row) {
        if row.cells.iter().skip(self.width).any(|cell| !cell.trim().is_empty()) {
            let (most, got) = (self.width, row.cells.len());
            let message = tables::cells_many(&got, &most);
            self.errors.push(TableError { line: row.line, column: String::new(), message });
            return;
        }
        let filled = |place: &Option<usize>| {
            place.and_then(|place| row.cells.get(place)).is_some_and(|cell| !cell.trim().is_empty())
        };
        let [lever, natural, sharp, tension] = self.raised.each_ref().map(filled);
        self.kinds.push(match (lever, natural, sharp, tension) {
            (true, ..) => Some(MechanismKind::Lever),
            (_, true, true, _) => Some(MechanismKind::DoubleDisc),
            (_, true, ..) => Some(MechanismKind::SingleDisc),
            // A string with all figures but no place of a lever or disc has none.
            (.., true) => Some(MechanismKind::None),
            _ => None,
        });
        let hz = self.columns.iter().find(|known| known.0 == "frequency_hz");
        let hz = hz.and_then(|(_, place)| row.cells.get(*place)).map_or("", |cell| cell.trim());
        self.pitches.push(in_hz(hz));
        let mut line = Line { row, columns: &self.columns, errors: &mut self.errors };
        self.read.layers.push(line.layer_headings());
        let (mut string, own) = line.string();
        if let Some(own) = own {
            string.make_up.material = self.own_key(own, row.line);
        }
        self.read.strings.push(string);
        self.read.lines.push(row.line);
    }

    /// The key of the material with these figures, which is added when it is new.
    fn own_key(&mut self, own: Own, line: usize) -> String {
        if let Some((_, key)) = self.own.iter().find(|(known, _)| *known == own) {
            return key.clone();
        }
        let number = self.read.strings.len() + 1;
        let base_name: String = own.0.chars().take(LONGEST_KEY - ROOM_FOR_ROW).collect();
        let base_name = if base_name.is_empty() { "material" } else { base_name.trim() };
        let key = format!("{base_name} (row {number})");
        let base = built_in().iter().find(|m| Some(m.key.as_str()) == key_of(&own.0));
        match own_material(&key, base, &own.1) {
            Ok(material) => self.read.materials.push(material),
            Err((column, message)) => {
                self.errors.push(TableError { line, column: column.to_owned(), message });
            }
        }
        self.own.push((own, key.clone()));
        key
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{StandingSpec, StrengthSpec};

    fn good(text: &str) -> TableRead {
        read(text).unwrap_or_else(|errors| panic!("{errors:?}"))
    }

    fn wrong(text: &str) -> Vec<String> {
        read(text).expect_err(text).iter().map(ToString::to_string).collect()
    }

    #[test]
    fn the_least_table_is_read_with_any_delimiter() {
        let comma = good("note,length_mm,material,diameter_mm\nC5,302.5,nylon,0.81\n");
        let semicolon =
            good("\u{feff}Length mm;NOTE;Diameter_mm;material\r\n302,5;C5;0,81;nylon\r\n\r\n");
        let tab = good("note\tlength_mm\tmaterial\tdiameter_mm\nC5\t302.5\tnylon\t0.81");
        let string = &comma.strings[0];
        assert_eq!((&*string.note, &*string.length), ("C5", "302.5"));
        assert_eq!((&*string.make_up.material, &*string.make_up.diameter), ("nylon", "0.81"));
        assert_eq!(comma, tab);
        let string = &semicolon.strings[0];
        assert_eq!((&*string.length, &*string.make_up.diameter), ("302,5", "0,81"));
    }

    #[test]
    fn wound_and_weighed_strings_are_read() {
        let table = good(
            "note,length,material,diameter_mm,wrap1_material,wrap1_mm,wrap2_material,wrap2_mm,\
             linear_density_g_per_m,gauge_mm,breaking_load_n,colour\n\
             C3,92.5 cm,steel,0.40,silk,0.10,bronze,0.14,,,,red\n\
             B2,38 1/2 in,steel,0.45,,,,,4.2,0.95,380,\n",
        );
        let layers = &table.strings[0].make_up.layers;
        assert_eq!((layers.len(), &*layers[1].material, &*layers[1].size), (2, "bronze", "0.14"));
        let weighed = table.strings[1].make_up.weighed.as_ref().unwrap();
        assert_eq!(
            (&*weighed.g_per_m, &*weighed.gauge, &*weighed.breaks_n),
            ("4.2", "0.95", "380")
        );
        assert_eq!(table.strings[1].make_up.diameter, "0.45");
        assert_eq!((table.ignored, table.lines), (vec!["colour".to_owned()], vec![2, 3]));
    }

    #[test]
    fn headings_are_found_as_people_write_them() {
        let table = good(
            "Note,Length,Make-Up,GAUGE,Order  Code\nC5,300,nylon,32 thou,N1\nB4,32 cm,nylon 0.9,1,\n\
             C3,900,steel 0.4 + bronze 0.25,0.9,\n",
        );
        let sizes: Vec<&str> = table.strings.iter().map(|s| &*s.make_up.diameter).collect();
        assert_eq!(sizes, ["32 thou", "0.9", "0.4"]);
        assert_eq!(table.strings[0].order_code, "N1");
        assert!(table.ignored.is_empty());
        let table = good("note,length,material,gauge\nC5,300,nylon,0.81\n");
        assert_eq!(table.strings[0].make_up.diameter, "0.81");
    }

    #[test]
    fn string_is_the_make_up_where_it_holds_no_numbers() {
        let table = good("string,note,length\nnylon 0.81,C5,300\nsteel 0.4 + silk 0.1,C3,900\n");
        assert!(table.string_is_make_up);
        assert_eq!(table.strings[0].make_up.material, "nylon");
        assert_eq!(table.strings[1].make_up.layers.len(), 1);
        assert!(
            wrong("string,note,length\nsteel 0.4 +,C5,300")[0]
                .starts_with("line 2, column string: ")
        );
        for text in [
            "string,note,length\n1,C5,300\n2,B4,330\n",
            "string,note,length\n3C,C5,300\n3B,B4,330\n",
            "string,note,length,material\nfirst,C5,300,\n",
        ] {
            let table = good(text);
            assert!(!table.string_is_make_up && table.strings[0].make_up.material.is_empty());
        }
    }

    #[test]
    fn what_is_no_table_is_called_so() {
        for text in ["a,b\n1,2", "\u{0}\u{1}\"\u{2}", "PK\u{3}\n\"", "dear maker, hello"] {
            assert_eq!(wrong(text), [format!("line 1: {}", tables::NO_TABLE)], "{text:?}");
        }
    }

    #[test]
    fn own_figures_make_a_material_that_equal_rows_share() {
        let table = good(
            "note,length_mm,material,diameter_mm,density_kg_m3,modulus_gpa,strength_mpa\n\
             C5,300,nylon,0.81,,,\nB4,320,nylon,0.81,1070,,\nA4,340,Nylon monofilament,0.91,1070,,\n\
             G4,360,mithril,1.0,3000,90,900\n",
        );
        let keys: Vec<&str> = table.strings.iter().map(|s| &*s.make_up.material).collect();
        assert_eq!(keys, ["nylon", "nylon (row 2)", "nylon (row 2)", "mithril (row 4)"]);
        assert_eq!(table.materials.len(), 2);
        assert_eq!(table.materials[0].density_kg_per_m3.standing, StandingSpec::Own);
        assert!(table.materials[0].modulus.is_some());
        assert_eq!(table.materials[1].strength.as_ref().unwrap().value, StrengthSpec::Mpa(900.0));
    }

    #[test]
    fn a_clash_of_materials_is_renamed() {
        let text = |density| {
            format!(
                "note,length_mm,material,diameter_mm,density_kg_m3\nC5,300,nylon,0.81,{density}\n"
            )
        };
        let one = good(&text(1070)).into_design(&Design::default());
        let two = good(&text(1080)).into_design(&one);
        assert_eq!(two.strings[0].make_up.material, "nylon (row 1) 2");
        assert_eq!(two.materials.len(), 2);
        assert_eq!(good(&text(1070)).into_design(&one).materials.len(), 1);
    }

    #[test]
    fn what_is_wrong_is_named_by_line_and_column() {
        assert_eq!(
            wrong("note,length_mm,material,diameter_mm\nC5,300,nylon,0.8\n\nH5,3o0,nylon,99\n"),
            [
                "line 4, column note: a note begins with a letter from A to G, got \"H5\" (write A4 or Eb3)",
                "line 4, column length_mm: the vibrating length must be a number with a unit or none, \
                 got \"3o0\" (write it like 612, 61.2 cm or 24 1/8 in)",
                &format!("line 4, column diameter_mm: {}", typed::gauge("99").unwrap_err()),
            ]
        );
        assert_eq!(
            wrong("note,material\nC5,nylon"),
            [
                "line 1: the headings must have length_mm or length (name a column so in the first line)"
            ]
        );
        assert!(wrong("")[0].starts_with("line 1: the table is empty"));
        assert!(wrong("note,note,length,material")[0].contains("only once"));
        assert!(wrong("note,length,material\n\"C5,300,nylon")[0].starts_with("line 2: a quote"));
        // A decimal comma that nobody put in quotes is no cell to be dropped.
        assert_eq!(
            wrong("note,length_mm,material,diameter_mm\nC5,300,nylon,1,5\nC5,300,nylon,1.5,,\n"),
            ["line 2: a line must have no more cells than there are headings, 4, got 5 \
                 (put quotes round a cell that holds a comma)"]
        );
        let many = format!("note,length,material\n{}", "C5,300,nylon\n".repeat(151));
        assert_eq!(wrong(&many), ["line 152: a table must have at most 150 strings"]);
        assert!(wrong(&"x".repeat(MOST_BYTES + 1))[0].contains("5 MB"));
        assert!(
            wrong("note,length,material,density_kg_m3,strength_mpa\nC5,300,odd,,5")[0]
                .starts_with("line 2, column density_kg_m3: the density must be given")
        );
        for number in ["NaN", "inf", "1e999", "-3", "1e5"] {
            assert!(
                read(&format!("note,length_mm,material\nC5,{number},nylon")).is_err(),
                "{number}"
            );
        }
    }
}
