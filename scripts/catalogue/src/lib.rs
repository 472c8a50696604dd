//! The messages of the page and the papers, from their catalogues in Fluent's syntax: one folder for each language,
//! one file for each area.
//!
//! English is compiled into the program: [`rust`] makes a constant or a function of every message. Any other language
//! is a [`pack`]: its texts in the order of the English ones, fetched when it is chosen.
//!
//! What of Fluent is understood: messages on one line, `{ $argument }`, `{ -term }` and `{ other-message }` (put in
//! place here), quoted texts, and selectors by number or by word. Whatever else stands in a file is refused.

mod longer;
mod pattern;
mod write;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use fluent_syntax::ast::{Entry, Pattern};
use fluent_syntax::parser;

pub use self::longer::{BRACKETS, longer};
pub use self::pattern::{Compiled, LAST_ARGUMENT};
pub use self::write::{pack, rust};

/// The messages of one file.
#[derive(Clone, Debug)]
pub struct Area {
    /// The file's name without its ending, and the module's.
    pub name: String,
    /// In the order of the file.
    pub messages: Vec<Message>,
}

/// A message.
#[derive(Clone, Debug)]
pub struct Message {
    pub name: String,
    pub text: Compiled,
}

/// All that is said in one language, by area.
pub type Catalogue = Vec<Area>;

/// Reads the folder of a language.
///
/// # Errors
///
/// A line for each thing that is wrong, with its file and message.
pub fn read(folder: &Path) -> Result<Catalogue, String> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).map_err(|why| format!("{}: {why}", folder.display()))? {
        let path = entry.map_err(|why| why.to_string())?.path();
        if path.extension().is_some_and(|ending| ending == "ftl") {
            files.push(path);
        }
    }
    files.sort();
    let mut texts = Vec::new();
    for path in &files {
        let text = fs::read_to_string(path).map_err(|why| format!("{}: {why}", path.display()))?;
        let name = path.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default();
        texts.push((name.to_owned(), text));
    }
    parse(&texts)
}

/// Reads the texts of files, each with its area's name. Terms of any file hold in all.
///
/// # Errors
///
/// As [`read`].
pub fn parse(files: &[(String, String)]) -> Result<Catalogue, String> {
    let mut problems = Vec::new();
    let mut trees = Vec::new();
    for (name, text) in files {
        match parser::parse(text.as_str()) {
            Ok(tree) => trees.push((name, tree)),
            Err((_, errors)) => {
                for error in errors {
                    let line = text[..error.pos.start].lines().count();
                    problems.push(format!("{name}.ftl, line {line}: {error}"));
                }
            }
        }
    }
    let mut terms: BTreeMap<&str, &Pattern<&str>> = BTreeMap::new();
    for (_, tree) in &trees {
        for entry in &tree.body {
            if let Entry::Term(term) = entry {
                terms.insert(term.id.name, &term.value);
            }
        }
    }
    let mut catalogue = Vec::new();
    for (name, tree) in &trees {
        let mut own: BTreeMap<&str, &Pattern<&str>> = BTreeMap::new();
        for entry in &tree.body {
            if let Entry::Message(message) = entry {
                match &message.value {
                    Some(_) if !message.attributes.is_empty() => problems.push(format!(
                        "{name}.ftl, {}: attributes are not understood (make it a message)",
                        message.id.name
                    )),
                    Some(value) if own.insert(message.id.name, value).is_none() => {}
                    Some(_) => {
                        problems.push(format!("{name}.ftl, {}: stands twice", message.id.name));
                    }
                    None => problems.push(format!("{name}.ftl, {}: says nothing", message.id.name)),
                }
            }
        }
        let mut messages = Vec::new();
        for entry in &tree.body {
            match entry {
                Entry::Message(message) => {
                    let Some(value) = own.get(message.id.name) else { continue };
                    match Compiled::new(value, &terms, &own) {
                        Ok(text) => {
                            messages.push(Message { name: message.id.name.to_owned(), text });
                        }
                        Err(why) => {
                            problems.push(format!("{name}.ftl, {}: {why}", message.id.name));
                        }
                    }
                }
                Entry::Junk { content } => {
                    problems.push(format!("{name}.ftl: cannot be read: {content}"));
                }
                _ => {}
            }
        }
        catalogue.push(Area { name: (*name).clone(), messages });
    }
    if problems.is_empty() { Ok(catalogue) } else { Err(problems.join("\n")) }
}

/// How many messages stand before those of an area.
pub fn place_of(catalogue: &[Area], name: &str) -> usize {
    let before = catalogue.iter().take_while(|area| area.name != name);
    before.map(|area| area.messages.len()).sum()
}

/// What a language lacks, has too much, or fills with something else than English: a line for each.
pub fn differences(english: &[Area], other: &[Area]) -> Vec<String> {
    let mut found = Vec::new();
    let mut theirs: BTreeMap<(&str, &str), &Message> = BTreeMap::new();
    for area in other {
        for message in &area.messages {
            theirs.insert((&area.name, &message.name), message);
        }
    }
    for area in english {
        for message in &area.messages {
            let place = format!("{}.ftl, {}", area.name, message.name);
            match theirs.remove(&(area.name.as_str(), message.name.as_str())) {
                None => found.push(format!("{place}: missing")),
                Some(their) if their.text.arguments != message.text.arguments => {
                    found.push(format!(
                        "{place}: filled with {:?}, and in English with {:?}",
                        their.text.arguments, message.text.arguments
                    ));
                }
                Some(_) => {}
            }
        }
    }
    found.extend(theirs.keys().map(|(area, name)| format!("{area}.ftl, {name}: not in English")));
    found
}
