//! Who may import whom, and how a source file looks. The compiler guards crates; this guards modules.

use std::fs;
use std::path::{Path, PathBuf};

/// Lowest first. A layer may use itself and those before it.
const LAYERS: [&str; 6] = ["words", "engine", "design", "charts", "papers", "app"];
/// Only for the last layer.
const WEB: [&str; 6] =
    ["leptos", "web_sys", "js_sys", "wasm_bindgen", "wasm_bindgen_futures", "plotters_canvas"];
/// What the browser loads around the crate: scripts, icons, the manifest.
const STATIC: &str = "shell";
/// Longer, and a file is two files. Unit tests at its end are not counted.
const MOST_LINES: usize = 450;

#[test]
fn no_layer_looks_up() {
    assert!(!sources(&source_dir().join(LAYERS[0])).is_empty(), "the lowest layer has no files");
    for (height, layer) in LAYERS.iter().enumerate() {
        let above = LAYERS[height + 1..].iter();
        let above = above.flat_map(|name| [format!("crate::{name}"), format!("super::{name}::")]);
        // This would hide a name from the test.
        let banned: Vec<_> = above.chain(["crate::{".to_owned()]).collect();
        for (file, text) in sources(&source_dir().join(layer)) {
            let found = banned.iter().find(|name| text.contains(name.as_str()));
            assert_eq!(found, None, "in {}", file.display());
        }
    }
}

#[test]
fn only_the_page_knows_the_browser() {
    let page = source_dir().join("app");
    for (file, text) in sources(&source_dir()) {
        if file.starts_with(&page) {
            continue;
        }
        let found = WEB.iter().find(|name| text.contains(&format!("{name}::")));
        assert_eq!(found, None, "in {}", file.display());
    }
}

/// A layer that has a folder must be part of the crate, and no folder stands outside the layers; so none
/// escapes the tests above.
#[test]
fn every_folder_is_a_layer_of_the_crate() {
    let root = fs::read_to_string(source_dir().join("lib.rs")).expect("the crate has a root");
    for entry in entries(&source_dir()).into_iter().filter(|path| path.is_dir()) {
        let name = entry.file_name().and_then(|name| name.to_str()).expect("a plain name");
        if name == STATIC {
            assert!(sources(&entry).is_empty(), "{STATIC} holds no Rust");
            continue;
        }
        assert!(LAYERS.contains(&name), "{name} is no layer");
        let as_module = format!("pub mod {name};");
        assert!(root.lines().any(|line| line.trim() == as_module), "{name} is not in the crate");
    }
}

#[test]
fn every_source_file_says_what_it_is() {
    for (file, text) in sources(&source_dir()).into_iter().chain(sources(&test_dir())) {
        assert!(text.starts_with("//! "), "{} opens without a word", file.display());
    }
}

#[test]
fn no_file_eats_the_project() {
    for (file, text) in sources(&source_dir()) {
        let lines = text.lines().take_while(|line| *line != "mod tests {").count();
        assert!(lines <= MOST_LINES, "{} has {lines} lines", file.display());
    }
    for (file, text) in sources(&test_dir()) {
        let lines = text.lines().count();
        assert!(lines <= MOST_LINES, "{} has {lines} lines", file.display());
    }
}

/// A test that does not run says why. The tests that drive a browser are apart.
#[test]
fn no_test_sleeps_without_a_reason() {
    let driven = test_dir().join("e2e");
    for (file, text) in sources(&source_dir()).into_iter().chain(sources(&test_dir())) {
        if file.starts_with(&driven) || file == driven.with_extension("rs") {
            continue;
        }
        let silent = text.lines().any(|line| line.trim() == "#[ignore]");
        assert!(!silent, "{} has a test that is ignored without a reason", file.display());
    }
}

fn source_dir() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

fn test_dir() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests")
}

/// Every Rust file under a folder with its text; none where there is no such folder.
fn sources(dir: &Path) -> Vec<(PathBuf, String)> {
    if !dir.exists() {
        return Vec::new();
    }
    let text = |path: &Path| fs::read_to_string(path).expect("a source file is text");
    let of_path = |path: PathBuf| {
        if path.is_dir() {
            sources(&path)
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            vec![(path.clone(), text(&path))]
        } else {
            Vec::new()
        }
    };
    entries(dir).into_iter().flat_map(of_path).collect()
}

fn entries(dir: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(dir).expect("a folder can be listed");
    entries.map(|entry| entry.expect("an entry can be read").path()).collect()
}
