//! The catalogues: whole in every language, all of it used, and nothing said from anywhere else.

#[path = "words/glossary.rs"]
mod glossary;
#[path = "words/placed.rs"]
mod placed;
#[path = "words/prose.rs"]
mod prose;

use std::fs;
use std::path::{Path, PathBuf};

use catalogue::{Catalogue, differences, read};

/// How much prose each layer still has in its sources: it may only become less.
const LEFT: [(&str, usize); 5] =
    [("engine", 0), ("design", 36), ("charts", 7), ("papers", 1), ("app", 7)];

#[test]
fn every_language_says_what_english_says() {
    let english = catalogue("en");
    for language in ["de", "fr"] {
        let other = catalogue(language);
        let found = differences(&english, &other);
        assert!(found.is_empty(), "{language}:\n{}", found.join("\n"));
    }
}

#[test]
fn every_message_is_said_somewhere() {
    let sources: Vec<String> =
        sources(&root().join("src")).into_iter().map(|(_, text)| text).collect();
    let mut idle = Vec::new();
    // What the scripts say has a test of its own.
    for area in catalogue("en").into_iter().filter(|area| area.name != "shell") {
        let module = area.name.replace('-', "_");
        let users: Vec<&String> = sources
            .iter()
            .filter(|text| text.contains("words") && is_said(text, &module))
            .collect();
        for message in &area.messages {
            let name = message.name.replace('-', "_");
            let name = if message.text.arguments.is_empty() { name.to_uppercase() } else { name };
            if !users.iter().any(|text| is_said(text, &name)) {
                idle.push(format!("{}.ftl, {}", area.name, message.name));
            }
        }
    }
    assert!(idle.is_empty(), "said nowhere:\n{}", idle.join("\n"));
}

/// The functions take what fills a message in the order of the alphabet, which nothing else holds a caller to.
#[test]
fn what_fills_a_message_stands_at_its_place() {
    let all = catalogue("en");
    let mut places = placed::Places::new();
    for area in &all {
        for message in &area.messages {
            let key = (area.name.replace('-', "_"), message.name.replace('-', "_"));
            let names = message.text.arguments.iter().map(|name| &**name).collect();
            places.insert(key, names);
        }
    }
    let mut found = Vec::new();
    for (path, text) in sources(&root().join("src")) {
        let file = path.strip_prefix(root()).unwrap().display();
        found
            .extend(placed::misplaced(&text, &places).iter().map(|what| format!("{file}: {what}")));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

/// The English beside each message of the scripts is that of the catalogue, and at its place.
#[test]
fn the_scripts_say_what_the_catalogue_says() {
    let file = |name: &str| fs::read_to_string(root().join(name)).expect("a source is text");
    let scripts = file("src/shell/boot.js") + &file("src/shell/fault.js");
    let page = file("index.html");
    let all = catalogue("en");
    let shell = all.iter().find(|area| area.name == "shell").expect("an area");
    for (place, message) in shell.messages.iter().enumerate() {
        let argument = message.text.arguments.first();
        let filled = argument.map(|name| format!("{{ ${name} }}")).unwrap_or_default();
        let text = message.text.text.replace("\u{1}a", &filled);
        let is_said = match place {
            0 | 1 => page.contains(&format!(">{text}</p>")),
            _ => scripts.contains(&format!("told({place}, \"{text}\"")),
        };
        assert!(is_said, "{place}: {text}");
    }
    assert_eq!(scripts.matches("told(").count(), shell.messages.len() - 1, "and nothing else");
}

/// Whether a name stands in a text as a whole word.
fn is_said(text: &str, name: &str) -> bool {
    let part = |sign: char| sign.is_alphanumeric() || sign == '_';
    text.match_indices(name)
        .any(|(at, _)| !text[..at].ends_with(part) && !text[at + name.len()..].starts_with(part))
}

#[test]
fn sentences_stand_in_the_catalogues_alone() {
    let mut told = String::new();
    for (layer, left) in LEFT {
        let mut found = Vec::new();
        for (path, text) in sources(&root().join("src").join(layer)) {
            let name = path.strip_prefix(root()).unwrap().display().to_string();
            found.extend(prose::found(&name, &text));
        }
        if std::env::var_os("PROSE").is_some() {
            eprintln!("{}\n{layer}: {} of prose, {left} allowed", found.join("\n"), found.len());
        }
        if found.len() > left {
            told += &format!(
                "{layer} has {} pieces of prose, and had {left}:\n{}\n",
                found.len(),
                found.join("\n")
            );
        }
    }
    assert!(told.is_empty(), "{told}");
}

fn catalogue(language: &str) -> Catalogue {
    read(&root().join("src/words").join(language))
        .unwrap_or_else(|why| panic!("{language}:\n{why}"))
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_owned()
}

/// Every Rust file below a folder with its text.
fn sources(folder: &Path) -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder can be listed") {
        let path = entry.expect("an entry can be read").path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            let text = fs::read_to_string(&path).expect("a source is text");
            found.push((path, text));
        }
    }
    found.sort();
    found
}
