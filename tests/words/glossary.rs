//! The glossary under Help: few terms, each with one meaning and in use; and what is called by one name has no other.

use std::fs;

use super::root;

/// The most terms of the glossary.
const MOST_TERMS: usize = 80;

/// Words that are not used in a language, since there is another one for the thing, which stands behind each; and the
/// messages that may have them, as they mean something else there or name the other word once.
const NOT_USED: [(&str, &str, &str, &[&str]); 51] = [
    ("en", "take-up", "stretch", &[]),
    ("en", "packing", "cover", &[]),
    ("en", "greatest", "highest", &[]),
    ("en", "total pull", "total tension", &[]),
    ("en", "string pull", "tension", &[]),
    ("en", "reckon", "count, allow for", &[]),
    ("en", "reckoned", "worked out", &[]),
    ("en", "take for granted", "assume", &[]),
    ("en", "taken for granted", "assumptions", &[]),
    ("en", "curve of the pins", "harmonic curve", &[]),
    ("en", "pin line", "harmonic curve", &[]),
    ("en", "drawn curve", "harmonic curve", &[]),
    ("en", "wanted curve", "target curve", &[]),
    ("en", "string bar", "string rib", &[]),
    ("en", "board", "soundboard", BOARDS),
    ("en", "sound board", "soundboard", &[]),
    ("en", "eyelet", "grommet", &["help.word-grommet-is"]),
    ("en", "first disc", "natural disc", &[]),
    ("en", "second disc", "sharp disc", &[]),
    ("en", "grave", "serious", &[]),
    ("en", "gravest", "most serious", &[]),
    ("en", "used up", "share of the allowable stress", &[]),
    ("en", "warmth", "temperature", &[]),
    ("en", "bowing", "buckling", &[]),
    ("en", "measures", "dimensions", &[]),
    ("en", "schedule of pins", "pin schedule", &[]),
    ("de", "Stiftlinie", "Harfenkurve", &[]),
    ("de", "Kurve der Stifte", "Harfenkurve", &[]),
    ("de", "Kurve der Stegstifte", "Harfenkurve", &["help.word-harmonic-curve-is"]),
    ("de", "gewünschte Kurve", "Sollkurve", &[]),
    ("de", "Nennort", "Nennstelle", &[]),
    ("de", "Innenleiste", "Saitenleiste", &[]),
    ("de", "Flachband", "Flachdraht", &[]),
    ("de", "erste Scheibe", "Auflösungsscheibe", &[]),
    ("de", "zweite Scheibe", "Kreuzscheibe", &[]),
    ("de", "frühere Zustände", "frühere Stände", &[]),
    ("de", "Muster", "Beispielharfe", &[]),
    ("de", "ausbauchen", "ausbeulen", &[]),
    ("de", "Enter", "Eingabe", &[]),
    ("fr", "courbe des pointes", "courbe harmonique", &["help.word-harmonic-curve-is"]),
    ("fr", "courbe des sillets", "courbe harmonique", &[]),
    ("fr", "courbe voulue", "courbe visée", &[]),
    ("fr", "matière", "matériau", &[]),
    ("fr", "masse volumique", "densité", &[]),
    ("fr", "joint", "assemblage", &[]),
    ("fr", "contre-filet", "filet de table", &[]),
    ("fr", "écartement", "espacement", &[]),
    ("fr", "première fourchette", "fourchette bécarre", &[]),
    ("fr", "seconde fourchette", "fourchette dièse", &[]),
    ("fr", "états précédents", "états antérieurs", &[]),
    ("fr", "modèle", "exemple", &[]),
];
/// How a make-up is typed, in a sentence and in its own; and what a soundboard is.
const BOARDS: &[&str] = &[
    "help.word-soundboard-is",
    "papers.bare",
    "papers.bare-both",
    "papers.bare-board",
    "typed.make-up-bare",
    "typed.word-board",
];

#[test]
fn the_glossary_has_few_terms_and_one_meaning_for_each() {
    for language in ["en", "de", "fr"] {
        let terms = terms(language);
        assert!((40..=MOST_TERMS).contains(&terms.len()), "{language}: {} terms", terms.len());
        for (at, (term, meaning)) in terms.iter().enumerate() {
            assert!(!meaning.is_empty(), "{language}: {term} has no meaning");
            for (other, said) in &terms[..at] {
                assert!(!same(term, other), "{language}: {term} stands there twice");
                assert!(!same(meaning, said), "{language}: {term} and {other} mean the same");
            }
        }
    }
}

#[test]
fn every_term_of_the_glossary_is_used() {
    for language in ["en", "de", "fr"] {
        let said: String = messages(language)
            .into_iter()
            .filter(|(name, _)| !name.starts_with("help.word-"))
            .map(|(_, text)| text.to_lowercase() + "\n")
            .collect();
        let idle: Vec<String> = terms(language)
            .into_iter()
            .map(|(term, _)| term)
            .filter(|term| !said.contains(&term.to_lowercase()))
            .collect();
        assert!(idle.is_empty(), "{language}, said nowhere else: {idle:?}");
    }
}

#[test]
fn one_thing_has_one_name() {
    let mut found = Vec::new();
    for language in ["en", "de", "fr"] {
        for (name, text) in messages(language) {
            found.extend(others(language, &name, &text));
        }
    }
    for file in ["README.md", "examples/all-it-does.md", "examples/columns.md"] {
        let text = fs::read_to_string(root().join(file)).expect("it is there");
        found.extend(others("en", file, &text));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn what_is_allowed_is_there_and_needs_it() {
    for (language, word, _, allowed) in NOT_USED {
        let messages = messages(language);
        for name in allowed {
            let text = messages.iter().find(|(other, _)| other == name).map(|(_, text)| text);
            assert!(text.is_some_and(|text| has(text, word)), "{name} does not say {word}");
        }
    }
}

/// What a text calls by a word that is not used.
fn others(language: &str, name: &str, text: &str) -> Vec<String> {
    NOT_USED
        .iter()
        .filter(|(of, word, _, allowed)| {
            *of == language && !allowed.contains(&name) && has(text, word)
        })
        .map(|(_, word, better, _)| format!("{language}, {name}: {word} is called {better}"))
        .collect()
}

/// Whether a text has a word as a whole, large or small.
fn has(text: &str, word: &str) -> bool {
    let (text, word) = (text.to_lowercase(), word.to_lowercase());
    let part = |sign: char| sign.is_alphanumeric() || sign == '_' || sign == '-';
    text.match_indices(&word)
        .any(|(at, _)| !text[..at].ends_with(part) && !text[at + word.len()..].starts_with(part))
}

fn same(one: &str, other: &str) -> bool {
    one.to_lowercase() == other.to_lowercase()
}

/// The terms of the glossary with their meanings.
fn terms(language: &str) -> Vec<(String, String)> {
    let messages = messages(language);
    let of = |name: &str| messages.iter().find(|(other, _)| other == name).map(|(_, text)| text);
    messages
        .iter()
        .filter(|(name, _)| name.starts_with("help.word-") && !name.ends_with("-is"))
        .map(|(name, term)| {
            let meaning = of(&format!("{name}-is")).unwrap_or_else(|| panic!("{name} lacks it"));
            (term.clone(), meaning.clone())
        })
        .collect()
}

/// Every message by its area and name, without the names of what is filled in.
fn messages(language: &str) -> Vec<(String, String)> {
    let folder = root().join("src/words").join(language);
    let mut all: Vec<(String, String)> = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder can be listed") {
        let path = entry.expect("an entry can be read").path();
        let area = path.file_stem().expect("a catalogue has a name").to_string_lossy().into_owned();
        let text = fs::read_to_string(&path).expect("a catalogue is text");
        for line in text.lines().filter(|line| !line.starts_with('#') && !line.is_empty()) {
            match line.split_once(" = ") {
                Some((name, said)) if !line.starts_with([' ', '}']) => {
                    all.push((format!("{area}.{name}"), spoken(said)));
                }
                _ => {
                    let (_, said) = all.last_mut().expect("a message goes on");
                    *said += " ";
                    *said += &spoken(line);
                }
            }
        }
    }
    all
}

/// A line without the names of what is filled in and of the cases.
fn spoken(line: &str) -> String {
    let case = line.trim_start().trim_start_matches('*');
    let line =
        case.strip_prefix('[').and_then(|rest| rest.split_once(']')).map_or(line, |(_, rest)| rest);
    let mut said = String::new();
    let mut rest = line;
    while let Some((before, after)) = rest.split_once("{ $") {
        said += before;
        rest = after.split_once(['}', '>']).map_or("", |(_, rest)| rest);
    }
    said + rest
}
