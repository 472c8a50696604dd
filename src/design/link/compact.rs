//! The document made short: short names for fields, no field that has its usual value, strings by
//! columns, built-in materials by name. Works on any version of the document, whatever its fields.

use serde_json::{Map, Value};

use super::{FLAT_REVISION, LIBRARY_REVISION, QUOTED_REVISION, built_in_at};
use crate::design::document::{Design, MOST_STRINGS};
use crate::design::persist::MOST_VERSIONS;
use crate::design::reading::{Json, parse};
use crate::design::writing::json_text;

/// Between the cells of a column: a character that no cell holds and JSON writes as it is.
const BETWEEN: char = '\u{7f}';
/// The field with the revision of the built-in list.
const REVISION: &str = "library";
/// The column that every string has, so that it tells how many there are.
const FIRST_COLUMN: &str = "note";

/// Field names and what stands for them. Never change a pair: links are out in the world.
const SHORT: [(&str, &str); 145] = [
    ("stringloft", "v"),
    ("library", "r"),
    ("title", "t"),
    ("maker", "m"),
    ("client", "c"),
    ("serial", "s"),
    ("date", "d"),
    ("open_tuning", "o"),
    ("remarks", "k"),
    ("pitch", "p"),
    ("temperament", "e"),
    ("units", "u"),
    ("pluck_percent", "q"),
    ("limits", "l"),
    ("allowances", "a"),
    ("materials", "M"),
    ("strings", "S"),
    ("note", "n"),
    ("length", "L"),
    ("material", "i"),
    ("diameter", "D"),
    ("layers", "y"),
    ("size", "z"),
    ("width", "w"),
    ("packing_percent", "g"),
    ("bare", "b"),
    ("weighed", "W"),
    ("order_code", "O"),
    ("value", "V"),
    ("source", "C"),
    ("standing", "G"),
    ("mechanism", "h"),
    ("kind", "j"),
    ("push_mm", "x"),
    ("pluck_mm", "f"),
    ("damping_partial", "N"),
    ("frame_expansion_e6_per_k", "F"),
    ("tolerances", "T"),
    ("class", "A"),
    ("density_tolerance_percent", "B"),
    ("diameter_tolerance", "E"),
    ("intermediate_modulus", "I"),
    ("slow_modulus", "J"),
    ("expansion_e6_per_k", "K"),
    ("loss_factor", "P"),
    ("density_kg_per_m3", "R"),
    ("geometry", "H"),
    ("spacing", "Q"),
    ("neck", "U"),
    ("pillar", "X"),
    ("board", "Y"),
    ("nodes_mm", "Z"),
    ("board_angle_deg", "0"),
    ("lean_deg", "1"),
    ("drives", "2"),
    ("measured", "3"),
    ("gaps", "4"),
    ("zones_mm", "5"),
    ("each_mm", "6"),
    ("uniform_mm", "7"),
    ("wood", "8"),
    ("plies", "9"),
    ("start_mm", "!"),
    ("pin_sideways_mm", "#"),
    ("strings_from_neck_mm", "$"),
    ("below_pins_mm", "%"),
    ("above_pins_mm", "&"),
    ("thickness_mm", "("),
    ("gap_mm", ")"),
    ("width_mm", "*"),
    ("depth_mm", "+"),
    ("below_mm", ","),
    ("above_mm", "-"),
    ("bass_width_mm", "."),
    ("treble_width_mm", "/"),
    ("bass_thickness_mm", ":"),
    ("treble_thickness_mm", ";"),
    ("drills", "~"),
    ("sections", "}"),
    ("at_percent", "|"),
    ("stock", "{"),
    ("make_up", "`"),
    ("supplier", "_"),
    ("pack_mm", "^"),
    ("price", "]"),
    ("currency", "["),
    ("versions", "@"),
    ("targets", "?"),
    ("locked", "="),
    ("stock_key", "<"),
    ("joints", "Jo"),
    ("soundbox", "Sb"),
    ("shoulder", "Sh"),
    ("head", "He"),
    ("foot", "Fo"),
    ("tenon_mm", "Te"),
    ("tenon_depth_mm", "Td"),
    ("fasteners", "Fa"),
    ("count", "Co"),
    ("diameter_mm", "Di"),
    ("apart_mm", "Ap"),
    ("across_mm", "Ac"),
    ("face_width_mm", "Fw"),
    ("face_height_mm", "Fh"),
    ("plate_mm", "Pl"),
    ("plate_width_mm", "Pw"),
    ("bass_depth_mm", "Bd"),
    ("treble_depth_mm", "Dt"),
    ("side_mm", "Si"),
    ("side_wood", "Sw"),
    ("back_mm", "Ba"),
    ("back_wood", "Bw"),
    ("liner_width_mm", "Lw"),
    ("liner_height_mm", "Lh"),
    ("brace_gap_mm", "Br"),
    ("holes", "Ho"),
    ("hole_length_mm", "Hl"),
    ("hole_width_mm", "Hw"),
    ("tuning_depth_mm", "Tp"),
    ("bridge_depth_mm", "Bp"),
    ("angle_deg", "An"),
    ("height_mm", "Hi"),
    ("one_side", "On"),
    ("metal", "Me"),
    ("from_percent", "Fr"),
    ("to_percent", "To"),
    ("screw_mm", "Sc"),
    ("screw_gap_mm", "Sg"),
    ("screw_depth_mm", "Sd"),
    ("woods", "Wo"),
    ("softwood", "So"),
    ("by_class", "Bc"),
    ("length_mm", "Le"),
    ("weight_g", "We"),
    ("span_mm", "Sn"),
    ("load_kg", "Lo"),
    ("falls_mm", "Fl"),
    ("tone_hz", "Tn"),
    ("plates", "Pt"),
    ("bars", "Bs"),
    ("cross", "Cr"),
    ("along", "Al"),
    ("side_percent", "Sp"),
    ("sizes", "Sz"),
    ("parts", "Pa"),
];

/// The materials of a link in their order, each with whether it is a built-in one that is only
/// named, and the revision of the built-in list that is meant.
pub(super) struct Named {
    pub(super) revision: u64,
    pub(super) keys: Vec<(String, bool)>,
}

/// A part of a document as JSON. By way of its text, as is everything that is kept: a second way would
/// double the code.
fn as_value(part: &dyn Json) -> Value {
    parse(&json_text(part)).unwrap_or_default()
}

/// Makes a document short, and the designs of its versions.
pub(super) fn squeeze(mut document: Value) -> Value {
    if let Value::Object(fields) = &mut document {
        let usual = as_value(&Design::default());
        let lists = [LIBRARY_REVISION, QUOTED_REVISION, FLAT_REVISION].map(|revision| {
            let list = built_in_at(revision).unwrap_or_default();
            (revision, list.iter().map(|spec| as_value(spec)).collect::<Vec<Value>>())
        });
        squeeze_one(fields, &usual, &lists);
        for version in designs_of_versions(fields) {
            squeeze_one(version, &usual, &lists);
        }
    }
    renamed(document, &|name| SHORT.iter().find(|pair| pair.0 == name).map(|pair| pair.1))
}

/// A revision of the built-in list with its materials.
type List = (u64, Vec<Value>);

fn squeeze_one(fields: &mut Map<String, Value>, usual: &Value, lists: &[List; 3]) {
    // A field that cannot be told from its usual value comes back as that.
    drop_usual(fields, usual);
    if let Some(Value::Array(materials)) = fields.get_mut("materials") {
        // A design that was made with an older list keeps it, and its link stays as short.
        let held = |list: &List| materials.iter().filter(|one| list.1.contains(one)).count();
        let [mut best, before @ ..] = lists.each_ref();
        for list in before {
            if held(list) > held(best) {
                best = list;
            }
        }
        let (revision, list) = best;
        for material in materials.iter_mut().filter(|material| list.contains(material)) {
            *material = material.get("key").cloned().unwrap_or_default();
        }
        fields.insert(REVISION.to_owned(), (*revision).into());
    }
    if let Some(Value::Array(strings)) = fields.remove("strings") {
        fields.insert("strings".to_owned(), by_columns(&strings));
    }
}

/// The designs of the versions of a document, no more than one beyond what there may be.
fn designs_of_versions(
    fields: &mut Map<String, Value>,
) -> impl Iterator<Item = &mut Map<String, Value>> {
    let versions = fields.get_mut("versions").and_then(Value::as_array_mut);
    let versions = versions.into_iter().flatten().take(MOST_VERSIONS + 1);
    versions.filter_map(|version| version.get_mut("design")?.as_object_mut())
}

/// The document from its short form, without the built-in materials, and which these are; then those of
/// its versions.
pub(super) fn expand(short: Value) -> (Value, Named, Vec<Named>) {
    let mut document =
        renamed(short, &|name| SHORT.iter().find(|pair| pair.1 == name).map(|pair| pair.0));
    let Value::Object(fields) = &mut document else {
        return (document, Named { revision: LIBRARY_REVISION, keys: Vec::new() }, Vec::new());
    };
    let named = expand_one(fields);
    let versions = designs_of_versions(fields).map(expand_one).collect();
    (document, named, versions)
}

fn expand_one(fields: &mut Map<String, Value>) -> Named {
    let mut named = Named { revision: LIBRARY_REVISION, keys: Vec::new() };
    if let Some(revision) = fields.remove(REVISION) {
        named.revision = revision.as_u64().unwrap_or(0);
    }
    if let Some(Value::Array(materials)) = fields.get_mut("materials") {
        for material in &*materials {
            let key = material.as_str().or_else(|| material.get("key")?.as_str());
            named.keys.push((key.unwrap_or_default().to_owned(), material.is_string()));
        }
        materials.retain(|material| !material.is_string());
    }
    if let Some(Value::Object(columns)) = fields.remove("strings") {
        fields.insert("strings".to_owned(), by_strings(&columns));
    }
    named
}

/// Drops what has its usual value, within objects too.
fn drop_usual(fields: &mut Map<String, Value>, usual: &Value) {
    fields.retain(|name, value| match (value, usual.get(name)) {
        (value, Some(usual)) if value == usual => false,
        (Value::Object(inner), Some(usual)) => {
            drop_usual(inner, usual);
            true
        }
        _ => true,
    });
}

/// Gives the fields of all objects other names; a name that `other` does not know stays.
fn renamed(value: Value, other: &impl Fn(&str) -> Option<&'static str>) -> Value {
    match value {
        Value::Object(fields) => {
            let mut others = Map::new();
            for (name, value) in fields {
                let name = other(&name).map_or(name, str::to_owned);
                others.insert(name, renamed(value, other));
            }
            Value::Object(others)
        }
        Value::Array(values) => {
            Value::Array(values.into_iter().map(|value| renamed(value, other)).collect())
        }
        other => other,
    }
}

/// A column of texts is one text; any other is an array, with null where a string lacks the field.
fn by_columns(strings: &[Value]) -> Value {
    let mut columns = Map::new();
    let names = strings.iter().filter_map(Value::as_object).flat_map(Map::keys);
    for name in names {
        if !columns.contains_key(name) {
            let cells: Vec<&Value> =
                strings.iter().map(|string| string.get(name).unwrap_or(&Value::Null)).collect();
            columns.insert(name.clone(), column(&cells));
        }
    }
    let is_empty =
        |column: &Value| column.as_str().is_some_and(|t| t.chars().all(|c| c == BETWEEN));
    columns.retain(|name, column| name == FIRST_COLUMN || !is_empty(column));
    Value::Object(columns)
}

fn column(cells: &[&Value]) -> Value {
    if cells.iter().all(|cell| cell.is_string() || cell.is_null()) {
        let texts: Vec<&str> = cells.iter().map(|cell| cell.as_str().unwrap_or("")).collect();
        return texts.join(&BETWEEN.to_string()).into();
    }
    let used = cells.iter().rposition(|cell| !cell.is_null()).map_or(0, |last| last + 1);
    cells[..used].iter().map(|cell| (*cell).clone()).collect()
}

fn by_strings(columns: &Map<String, Value>) -> Value {
    let first = columns.get(FIRST_COLUMN).and_then(Value::as_str).unwrap_or_default();
    // One more than there may be, so that a link with too many is refused and not cut short.
    let count = first.split(BETWEEN).take(MOST_STRINGS + 1).count();
    let mut strings = vec![Map::new(); count];
    for (name, column) in columns {
        let cells: Vec<Value> = match column {
            Value::String(texts) => texts.split(BETWEEN).take(count).map(Value::from).collect(),
            Value::Array(cells) => cells.iter().take(count).cloned().collect(),
            _ => Vec::new(),
        };
        for (string, cell) in strings.iter_mut().zip(cells) {
            if !cell.is_null() {
                string.insert(name.clone(), cell);
            }
        }
    }
    Value::Array(strings.into_iter().map(Value::Object).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_fields_have_one_short_name() {
        for (index, (name, short)) in SHORT.iter().enumerate() {
            assert!(short.len() <= 2, "{name}");
            for (other, other_short) in &SHORT[index + 1..] {
                assert!(name != other && short != other_short, "{name} and {other}");
            }
        }
    }

    #[test]
    fn columns_and_strings_undo_each_other() {
        let strings = serde_json::json!([
            {"note": "C5", "length": "", "material": "nylon"},
            {"note": "", "length": "500", "layers": [{"size": "0.3"}]},
            {"note": "A4", "length": "520", "material": ""},
        ]);
        let columns = by_columns(strings.as_array().unwrap());
        let Value::Object(columns) = columns else { panic!("an object") };
        assert_eq!(columns["layers"], serde_json::json!([null, [{"size": "0.3"}]]));
        let back = by_strings(&columns);
        assert_eq!(
            back[1],
            serde_json::json!({"note": "", "length": "500", "material": "", "layers": [{"size": "0.3"}]})
        );
        assert_eq!(back.as_array().unwrap().len(), 3);
    }
}
