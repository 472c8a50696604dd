//! What is read of a file, field by field, and what is said of a file that is no design.

use std::collections::BTreeMap;

use serde_json::Value;
use stringloft::design::persist::{ReadError, read, write};

use super::every_field::every_field;

#[test]
fn what_is_no_design_says_why() {
    let long = format!("{{\"stringloft\": 1, \"title\": \"{}\"}}", "x".repeat(201));
    let quoted = format!("{{\"stringloft\": 1, \"strings\": \"{}\"}}", "y".repeat(5_000));
    let many = format!("{{\"stringloft\": 1, \"strings\": [{}{{}}]}}", "{},".repeat(150));
    let deep = "[".repeat(100_000);
    let deep_field =
        format!("{{\"stringloft\": 1, \"x\": {}{}}}", "[".repeat(999), "]".repeat(999));
    let huge = "x".repeat(5 << 20);
    for (given, expected) in [
        ("", "the file is empty"),
        (" \n\t", "the file is empty"),
        ("\u{feff}", "the file is empty"),
        (
            "harp",
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place 1",
        ),
        ("{\"stringloft\": 1,", "the design is cut off"),
        ("[]", "this JSON is not a Stringloft design"),
        ("7", "this JSON is not a Stringloft design"),
        ("null", "this JSON is not a Stringloft design"),
        ("{}", "this JSON is not a Stringloft design"),
        ("{\"version\": 1}", "this JSON is not a Stringloft design"),
        ("{\"stringloft\": 0}", "this JSON is not a Stringloft design"),
        ("{\"stringloft\": -1}", "this JSON is not a Stringloft design"),
        ("{\"stringloft\": 1.5}", "this JSON is not a Stringloft design"),
        ("{\"stringloft\": \"1\"}", "this JSON is not a Stringloft design"),
        ("{\"stringloft\": 3}", "this design is of version 3, and versions 1 to 2 can be read"),
        (
            "{\"stringloft\": 18446744073709551615}",
            "this design is of version 18446744073709551615",
        ),
        (
            "{\"stringloft\": 1, \"strings\": 5}",
            "this design cannot be read: strings must be a list, got a number (mend",
        ),
        (
            "{\"stringloft\": 1, \"strings\": [5]}",
            "this design cannot be read: strings, 1 must be a set of fields, got a number (mend",
        ),
        (
            "{\"stringloft\": 1, \"title\": [1]}",
            "this design cannot be read: title must be text, got a list (mend",
        ),
        ("{\"stringloft\": 1, \"pitch\": {\"a4_hz\": NaN}}", "this design cannot be read"),
        (
            "{\"stringloft\": 1, \"pitch\": {\"a4_hz\": null}}",
            "this design cannot be read: pitch: a4_hz must be a number, got nothing (mend",
        ),
        ("{\"stringloft\": 1, \"pluck_percent\": 1e999}", "this design cannot be read: something"),
        (
            "{\"stringloft\": 1, \"pluck_percent\": 1e300}",
            "the pluck point must be from 0 to 100 % of the length, got 1e300",
        ),
        (
            "{\"stringloft\": 1, \"pluck_percent\": -1}",
            "the pluck point must be from 0 to 100 % of the length, got -1",
        ),
        (
            "{\"stringloft\": 1, \"pitch\": {\"temperament\": \"odd\"}}",
            "this design cannot be read: pitch: temperament must be equal, pythagorean, quarter_comma_meantone, \
            werckmeister_three, vallotti, young_two or just_on_c, got \"odd\" (mend",
        ),
        (
            "{\"stringloft\": 1, \"title\": \"a\", \"title\": \"b\"}",
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place 39 (mend",
        ),
        (&long, "the title must be at most 200 characters long, got 201"),
        (&quoted, "this design cannot be read: strings must be a list, got text (mend"),
        (&many, "a design must have at most 150 strings, got 151"),
        (
            &deep,
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place ",
        ),
        (
            &deep_field,
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place ",
        ),
        (&huge, "a design file must be at most 4 MB, got 5 MB"),
    ] {
        let error = read(given).expect_err(&given[..given.len().min(80)]).to_string();
        assert!(error.starts_with(expected), "{error}");
        assert!(error.len() < 500, "{} bytes", error.len());
    }
}

/// Each field that is written has another value here than its usual one, so that it matters whether it is there: without
/// it, another design is read, or none. What matters in one string need not in every string.
#[test]
fn every_field_that_is_written_is_read() {
    let written: Value = serde_json::from_str(&write(&every_field())).expect("JSON");
    let whole = read(&written.to_string()).expect("a design");
    let mut places = Vec::new();
    fields_of(&written, "", &mut places);
    let mut matters: BTreeMap<String, bool> = BTreeMap::new();
    for place in &places {
        let mut without = written.clone();
        let (holder, field) = place.rsplit_once('/').expect("each begins with a slash");
        let holder = without.pointer_mut(holder).and_then(Value::as_object_mut).expect("fields");
        holder.remove(field);
        // A version holds the same fields as the design, and the tenth string the same as the first.
        let of_any = place.strip_prefix("/versions/0/design").unwrap_or(place);
        let names = of_any.split('/').filter(|part| part.parse::<usize>().is_err());
        *matters.entry(names.collect::<Vec<_>>().join("/")).or_default() |=
            read(&without.to_string()).as_ref() != Ok(&whole);
    }
    let missed: Vec<_> = matters.iter().filter(|(_, matters)| !**matters).collect();
    assert!(missed.is_empty(), "{missed:?}");
    assert!(matters.len() > 150, "{} fields", matters.len());
}

/// The places of all fields, as a JSON Pointer (RFC 6901) has them.
fn fields_of(json: &Value, place: &str, found: &mut Vec<String>) {
    match json {
        Value::Object(fields) => {
            for (name, held) in fields {
                let place = format!("{place}/{name}");
                fields_of(held, &place, found);
                found.push(place);
            }
        }
        Value::Array(parts) => {
            for (index, held) in parts.iter().enumerate() {
                fields_of(held, &format!("{place}/{index}"), found);
            }
        }
        _ => {}
    }
}

#[test]
fn what_is_wrong_in_a_file_is_told_with_its_place() {
    let layer = |layer: &str| {
        format!("\"strings\": [{{}}, {{\"material\": \"steel\", \"layers\": [{layer}]}}]")
    };
    let material =
        |fields: &str| format!("\"materials\": [{{\"key\": \"m\", \"name\": \"\"{fields}}}]");
    let density = |held: &str| material(&format!(", \"density_kg_per_m3\": {held}"));
    let version = "\"versions\": [{\"design\": {\"strings\": [{}, {}, {}, {\"length\": 612}]}}]";
    for (fields, expected) in [
        (version, "versions, 1, design, strings, 4: length must be text, got a number"),
        (
            "\"strings\": [{\"locked\": 1}]",
            "strings, 1: locked must be true or false, got a number",
        ),
        (
            "\"strings\": [{\"stock_key\": 65536}]",
            "strings, 1: stock_key must be a whole number from 0 to 65535, got 65536",
        ),
        (
            "\"damping_partial\": 1.5",
            "damping_partial must be a whole number from 0 to 4294967295, got 1.5",
        ),
        (
            "\"damping_partial\": -1",
            "damping_partial must be a whole number from 0 to 4294967295, got -1",
        ),
        (
            "\"strings\": [{\"mechanism\": \"ratchet\"}]",
            "strings, 1: mechanism must be none, lever, single_disc or double_disc, got \"ratchet\"",
        ),
        (
            "\"strings\": [{\"bare\": [\"1\"]}]",
            "strings, 1: bare must be a set of fields, got a list",
        ),
        (&layer("{\"size\": \"0.3\"}"), "strings, 2, layers, 1: material is missing"),
        (&layer("{\"material\": \"silk\"}"), "strings, 2, layers, 1: size is missing"),
        (&material(""), "materials, 1: density_kg_per_m3 is missing"),
        (
            &density("{\"source\": \"\", \"standing\": \"own\"}"),
            "materials, 1, density_kg_per_m3: value is missing",
        ),
        (
            &density("{\"value\": 1000, \"standing\": \"own\"}"),
            "materials, 1, density_kg_per_m3: source is missing",
        ),
        (
            &density("{\"value\": 1000, \"source\": \"\"}"),
            "materials, 1, density_kg_per_m3: standing is missing",
        ),
        (
            "\"geometry\": {\"nodes_mm\": [[1, 2], [3]]}",
            "geometry, nodes_mm, 2 must be a list of two, got a list of 1",
        ),
        (
            "\"geometry\": {\"nodes_mm\": [[1, \"2\"]]}",
            "geometry, nodes_mm, 1, 2 must be a number, got text",
        ),
        (
            "\"geometry\": {\"spacing\": {\"gaps\": {\"each_mm\": [14, true]}}}",
            "geometry, spacing, gaps, each_mm, 2 must be a number, got true or false",
        ),
        (
            "\"geometry\": {\"spacing\": {\"gaps\": {\"each_mm\": [], \"uniform_mm\": 3}}}",
            "geometry, spacing: gaps must be uniform_mm, zones_mm or each_mm, got a set of fields",
        ),
        (
            "\"order\": {\"spares\": \"percent\"}",
            "order, spares: percent must be a number, got nothing",
        ),
    ] {
        let error = read(&format!("{{\"stringloft\": 2, {fields}}}")).expect_err(expected);
        assert_eq!(error, ReadError::Unreadable { what: expected.to_owned() });
    }
    let word = format!("\"mechanism\": {{\"kind\": \"{}\"}}", "é".repeat(50_000));
    let error = read(&format!("{{\"stringloft\": 2, {word}}}")).expect_err("no such kind");
    assert!(error.to_string().chars().count() < 250, "{error}");
}
