//! The licences of all that is in the page: of every package that cargo takes for it, of what writes its scripts, and of
//! Rust's own library. Cargo names the packages; their texts are the files that lie beside each.

use std::collections::{BTreeMap, BTreeSet};
use std::env;
use std::fs;
use std::path::Path;
use std::process::Command;

use serde_json::Value;

use crate::Failure;

/// Between the list of packages and each text.
const TEXT: char = '\u{1e}';
/// What writes scripts of the page without being a package in it.
const WRITERS: [&str; 2] = ["wasm-bindgen-cli-support", "wasm_split_cli_support"];
/// How the files begin that hold licences, in small letters.
const FILES: [&str; 5] = ["licen", "copying", "notice", "unlicense", "copyright"];
/// Where the terms of the MIT licence begin, below its names.
const MIT_TERMS: &str = "Permission is hereby granted, free of charge";
const MIT_ENDS: &str = "DEALINGS IN THE SOFTWARE.";

/// A package with the numbers of its texts.
#[derive(Debug, PartialEq, Eq)]
struct Licensed {
    name: String,
    version: String,
    licence: String,
    texts: Vec<usize>,
}

/// All packages, and each text once.
#[derive(Debug, Default)]
struct Licences {
    packages: Vec<Licensed>,
    texts: Vec<String>,
    /// The place of a text by its words, however its lines are broken.
    places: BTreeMap<String, usize>,
}

/// The licences as the page reads them: a line for each package with its name, version, licence and the numbers of its
/// texts, between tabs; then the texts, each after a sign of its own.
///
/// # Errors
///
/// When cargo fails, or a package has no licence that could be told.
pub fn collect() -> Result<String, Failure> {
    let told = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
        .args(["metadata", "--locked", "--format-version", "1", "--features", "parts"])
        .args(["--filter-platform", "wasm32-unknown-unknown"])
        .output()?;
    if !told.status.success() {
        return Err(format!("cargo metadata: {}", String::from_utf8_lossy(&told.stderr)).into());
    }
    let metadata: Value = serde_json::from_slice(&told.stdout)?;
    let mut licences = Licences::default();
    let mut bare = Vec::new();
    for package in in_page(&metadata) {
        let folder = Path::new(text(package, "manifest_path")).parent();
        let files = folder.map(texts_in).transpose()?.unwrap_or_default();
        if files.is_empty() {
            bare.push(package);
        } else {
            licences.add(package, files);
        }
    }
    let mit = licences.mit_terms().ok_or("no package has the text of the MIT licence")?;
    for package in bare {
        let (name, licence) = (text(package, "name"), text(package, "license"));
        if !licence.split([' ', '/', '(', ')']).any(|one| one == "MIT") {
            return Err(
                format!("{name} has no file with its licence, which is \"{licence}\"").into()
            );
        }
        let authors: Vec<&str> =
            package["authors"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        let holders =
            if authors.is_empty() { format!("the authors of {name}") } else { authors.join(", ") };
        licences.add(package, vec![mit_of(&holders, &mit)]);
    }
    let library = serde_json::json!({
        "name": "Rust standard library", "version": rust_version()?, "license": "MIT OR Apache-2.0",
    });
    licences.add(&library, vec![mit_of("The Rust Project Developers", &mit)]);
    Ok(licences.written())
}

fn text<'a>(value: &'a Value, field: &str) -> &'a str {
    value[field].as_str().unwrap_or_default()
}

fn mit_of(holders: &str, terms: &str) -> String {
    format!("MIT License\n\nCopyright (c) {holders}\n\n{terms}\n")
}

fn rust_version() -> Result<String, Failure> {
    let told = Command::new("rustc").arg("--version").output()?;
    let told = String::from_utf8_lossy(&told.stdout);
    Ok(told.split(' ').nth(1).unwrap_or_default().to_owned())
}

/// The packages of others that the page is made of, through everything that is no aid of tests or of the build alone.
fn in_page(metadata: &Value) -> Vec<&Value> {
    let list = |value: &'static str| metadata[value].as_array().into_iter().flatten();
    let packages: BTreeMap<&str, &Value> =
        list("packages").map(|package| (text(package, "id"), package)).collect();
    let nodes = metadata["resolve"]["nodes"].as_array().into_iter().flatten();
    let nodes: BTreeMap<&str, &Value> = nodes.map(|node| (text(node, "id"), node)).collect();
    let mut seen = BTreeSet::new();
    let mut open = vec![text(&metadata["resolve"], "root")];
    while let Some(id) = open.pop() {
        if !seen.insert(id) {
            continue;
        }
        let Some(node) = nodes.get(id) else { continue };
        for needed in node["deps"].as_array().into_iter().flatten() {
            let kinds = needed["dep_kinds"].as_array().into_iter().flatten();
            if kinds.into_iter().any(|kind| kind["kind"].is_null()) {
                open.push(text(needed, "pkg"));
            }
        }
    }
    let writer = |package: &Value| WRITERS.contains(&text(package, "name"));
    let mut found: Vec<&Value> = packages
        .into_values()
        .filter(|package| seen.contains(text(package, "id")) || writer(package))
        .filter(|package| !package["source"].is_null())
        .collect();
    found.sort_by_key(|package| (text(package, "name"), text(package, "version")));
    found
}

/// The files with licences beside a package's manifest.
fn texts_in(folder: &Path) -> Result<Vec<String>, Failure> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let name = path.file_name().unwrap_or_default().to_string_lossy().to_lowercase();
        if path.is_file() && FILES.iter().any(|start| name.starts_with(start)) {
            files.push(path);
        }
    }
    files.sort();
    let read =
        |path: &std::path::PathBuf| Ok(String::from_utf8_lossy(&fs::read(path)?).into_owned());
    files.iter().map(read).collect()
}

impl Licences {
    fn add(&mut self, package: &Value, files: Vec<String>) {
        let texts = files.into_iter().map(|text| self.place(text)).collect();
        self.packages.push(Licensed {
            name: text(package, "name").to_owned(),
            version: text(package, "version").to_owned(),
            licence: text(package, "license").replace('/', " OR "),
            texts,
        });
    }

    fn place(&mut self, text: String) -> usize {
        let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
        let next = self.texts.len();
        let place = *self.places.entry(words).or_insert(next);
        if place == next {
            let lines = text.replace(TEXT, " ");
            let lines: Vec<&str> = lines.lines().map(str::trim_end).collect();
            self.texts.push(lines.join("\n").trim_matches('\n').to_owned());
        }
        place
    }

    /// The terms of the MIT licence, as they stand in one of the texts.
    fn mit_terms(&self) -> Option<String> {
        self.texts.iter().find_map(|text| {
            let start = text.find(MIT_TERMS)?;
            let end = start + text[start..].find(MIT_ENDS)? + MIT_ENDS.len();
            Some(text[start..end].to_owned())
        })
    }

    fn written(&self) -> String {
        let mut out = String::new();
        for package in &self.packages {
            let texts: Vec<String> = package.texts.iter().map(ToString::to_string).collect();
            let texts = texts.join(" ");
            let fields = [&package.name, &package.version, &package.licence, &texts];
            let fields = fields.map(String::as_str);
            out += &fields.join("\t");
            out.push('\n');
        }
        for text in &self.texts {
            out.push(TEXT);
            out += text;
        }
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn what_the_page_is_made_of_is_found_and_nothing_else() {
        let package = |name: &str, source: Value| json!({ "id": name, "name": name, "version": "1.0.0", "source": source });
        let needs =
            |name: &str, kind: Value| json!({ "pkg": name, "dep_kinds": [{ "kind": kind }] });
        let metadata = json!({
            "packages": [
                package("page", Value::Null), package("a", json!("registry")), package("b", json!("registry")),
                package("test", json!("registry")), package("wasm_split_cli_support", json!("registry")),
            ],
            "resolve": { "root": "page", "nodes": [
                { "id": "page", "deps": [needs("a", Value::Null), needs("test", json!("dev"))] },
                { "id": "a", "deps": [needs("b", Value::Null)] },
                { "id": "b", "deps": [] }, { "id": "test", "deps": [] },
            ] },
        });
        let found: Vec<&str> = in_page(&metadata).iter().map(|one| text(one, "name")).collect();
        assert_eq!(found, ["a", "b", "wasm_split_cli_support"]);
    }

    #[test]
    fn a_text_stands_once_however_its_lines_are_broken() {
        let mut licences = Licences::default();
        let one = json!({ "name": "one", "version": "1.2.3", "license": "MIT/Apache-2.0" });
        let two = json!({ "name": "two", "version": "0.1.0", "license": "MIT" });
        let terms = format!("{MIT_TERMS}\n AS IS, {MIT_ENDS}");
        licences.add(&one, vec!["Terms\nof one".to_owned(), format!("Copyright x\n{terms}\n")]);
        licences.add(&two, vec!["Terms of\n  one\n".to_owned()]);
        assert_eq!(licences.mit_terms().as_ref(), Some(&terms));
        let written = licences.written();
        let mut parts = written.split(TEXT);
        assert_eq!(parts.next(), Some("one\t1.2.3\tMIT OR Apache-2.0\t0 1\ntwo\t0.1.0\tMIT\t0\n"));
        assert_eq!(parts.next(), Some("Terms\nof one"));
        assert_eq!(parts.count(), 1);
    }
}
