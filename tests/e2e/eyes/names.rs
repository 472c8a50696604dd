//! The names by which a screen reader speaks of what is on a screen.

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::json;
use stringloft::design::persist;
use stringloft::design::presets::SAMPLES;

use crate::browser::Browser;

/// What can be worked with or is spoken of by its name.
const NAMED: [&str; 22] = [
    "button",
    "link",
    "textbox",
    "searchbox",
    "checkbox",
    "radio",
    "combobox",
    "listbox",
    "option",
    "slider",
    "spinbutton",
    "menuitem",
    "tab",
    "switch",
    "DisclosureTriangle",
    "grid",
    "dialog",
    "alertdialog",
    "image",
    "columnheader",
    "splitter",
    "progressbar",
];
/// The name of a size of paper, whatever the language.
const PAPER: &str = "Letter";
/// Words that no German and no French sentence has.
const ENGLISH: [&str; 9] = ["the", "of", "and", "with", "this", "which", "strings", "how", "from"];

/// A language, and what would be said in English by mistake.
pub struct Tongue {
    code: String,
    english: BTreeSet<String>,
}

impl Tongue {
    pub fn of(code: &str) -> Self {
        let texts = |code: &str| -> BTreeSet<String> {
            let all = catalogue::read(&Path::new("src/words").join(code)).expect("a catalogue");
            let messages = all.into_iter().flat_map(|area| area.messages);
            // Names of materials are a design's own, and so is what the samples hold.
            let said = messages
                .filter(|one| one.text.arguments.is_empty() && !one.name.ends_with("-named"));
            said.map(|one| one.text.text).collect()
        };
        let kept: String = SAMPLES.iter().map(|sample| persist::write(&sample.design())).collect();
        let own = texts(code);
        let english = texts("en").into_iter().filter(|text| {
            let is_own = own.contains(text) || kept.contains(&format!("\"{text}\""));
            text.len() > 3 && !is_own && text != PAPER
        });
        Self { code: code.to_owned(), english: english.collect() }
    }

    /// What has no name, and what has an English one on a page in another language.
    pub async fn complaints(&self, browser: &Browser) -> Vec<String> {
        let tree = browser.devtools("Accessibility.getFullAXTree", json!({})).await;
        let nodes = tree["nodes"].as_array().expect("a tree");
        let title = browser.ask("return document.querySelector('#title').value").await;
        let title = title.as_str().unwrap_or_default();
        let mut found = Vec::new();
        let mut looked = 0;
        for node in nodes.iter().filter(|node| node["ignored"] == false) {
            let text = |field: &str| node[field]["value"].as_str().unwrap_or_default();
            let (role, name) = (text("role"), text("name"));
            // A text stands in the tree a second time, line by line.
            if role == "InlineTextBox" {
                continue;
            }
            let named = NAMED.contains(&role);
            looked += usize::from(named);
            if named && name.trim().is_empty() {
                found.push(format!("no name: {role} {}", node["description"]["value"]));
            }
            for said in [name, text("description")] {
                if self.code != "en" && self.is_english(said.trim(), named, title) {
                    found.push(format!("in English: {role} \"{said:.90}\""));
                }
            }
        }
        if looked == 0 {
            found.push("the tree names nothing".to_owned());
        }
        found
    }

    fn is_english(&self, said: &str, named: bool, title: &str) -> bool {
        if self.english.contains(said) {
            return true;
        }
        let words = || said.split(|sign: char| !sign.is_alphabetic() && sign != '_');
        let own = !title.is_empty() && said.contains(title);
        named && !own && words().any(|word| ENGLISH.contains(&word))
    }
}
