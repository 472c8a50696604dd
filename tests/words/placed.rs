//! What fills a message stands in the order of the alphabet: an argument called like one place must not stand in another.

use std::collections::BTreeMap;

/// The places of each filled message, by area and name.
pub type Places<'a> = BTreeMap<(String, String), Vec<&'a str>>;

/// The calls of a source in which an argument bears the name of another place of the message.
pub fn misplaced(source: &str, places: &Places<'_>) -> Vec<String> {
    let areas = areas(source);
    let mut found = Vec::new();
    for ((area, name), names) in places.iter().filter(|(_, names)| names.len() > 1) {
        for alias in areas.iter().filter(|(_, of)| of == area).map(|(alias, _)| alias) {
            let call = format!("{alias}::{name}(");
            for (at, _) in source.match_indices(&call) {
                if source[..at].ends_with(|sign: char| sign.is_alphanumeric() || sign == '_') {
                    continue;
                }
                let given = arguments(&source[at + call.len()..]);
                let wrong = given.iter().zip(names).find(|(given, name)| {
                    given != name && names.iter().any(|other| other == *given)
                });
                if let (Some((given, name)), true) = (wrong, given.len() == names.len()) {
                    found.push(format!("{call}…) has {given} at the place of {name}"));
                }
            }
        }
    }
    found
}

/// How the areas of words are called in a source: as themselves, or under another name.
fn areas(source: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    for used in source.split("use crate::words::").skip(1) {
        let used = used.split(';').next().unwrap_or_default();
        for one in used.split(['{', '}', ',']).map(str::trim).filter(|one| !one.is_empty()) {
            let (area, alias) = one.split_once(" as ").unwrap_or((one, one));
            found.push((alias.to_owned(), area.to_owned()));
        }
    }
    found
}

/// The arguments up to the bracket that closes a call: plain names as they are called, all else as an empty text.
fn arguments(text: &str) -> Vec<&str> {
    let (mut depth, mut from, mut found) = (0, 0, Vec::new());
    for (at, sign) in text.char_indices() {
        match sign {
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' if depth > 0 => depth -= 1,
            ',' | ')' if depth == 0 => {
                let one = text[from..at].trim().trim_start_matches(['&', '*']);
                let is_name = |sign: char| sign.is_alphanumeric() || sign == '_';
                if !one.is_empty() {
                    found.push(if one.chars().all(is_name) { one } else { "" });
                }
                from = at + 1;
                if sign == ')' {
                    break;
                }
            }
            _ => {}
        }
    }
    found
}

#[test]
fn an_argument_at_another_place_is_found() {
    let places = Places::from([(("parts".into(), "numbered".into()), vec!["number", "part"])]);
    let of = |call: &str| {
        misplaced(&format!("use crate::words::{{Words, parts as say}};\n{call}"), &places)
    };
    assert_eq!(of("say::numbered(&kind, &number)").len(), 1);
    assert!(of("say::numbered(&number, &kind)").is_empty());
    assert!(of("say::numbered(&f(number, part), &of[part])").is_empty());
}
