//! Make-ups in the language of now. What a document and CSV hold has the English words and the keys of the materials;
//! either is understood where it is typed.

use super::decimal::decimal;
use super::document::{MakeUpSpec, MaterialSpec};
use super::library::find;
use super::make_up_text::{compose, read, write, written};
use crate::engine::material::{key_said, name_of_key};
use crate::words::{Language, Words, language, signed, typed as say};

/// What a material is called: one that is named by its key in the language of now, any other as it was typed.
pub fn material(text: &str) -> String {
    name_of_key(text.trim()).map_or_else(|| text.to_owned(), Words::into)
}

/// A make-up in one line, as the language of now says it.
pub fn said(make_up: &MakeUpSpec) -> String {
    let (text, is_held) = written(make_up);
    if language() == Language::English {
        return text;
    }
    let mut named = make_up.clone();
    named.material = material(&named.material);
    named.layers.iter_mut().for_each(|layer| layer.material = material(&layer.material));
    compose(&named, is_held, Words::said)
}

/// A kept line as the language of now says it; one that does not read as a make-up as it is.
pub fn line_said(line: &str) -> String {
    if language() == Language::English {
        return line.to_owned();
    }
    read(line).map_or_else(|_| line.to_owned(), |make_up| said(&make_up))
}

/// As [`line_said`], on a list that nobody types into: bare numbers have the decimal sign of the language.
pub fn line_shown(line: &str) -> String {
    let Ok(mut make_up) = read(line) else { return line.to_owned() };
    for size in make_up.sizes_mut() {
        if decimal(size.trim()).is_some() {
            *size = signed(size);
        }
    }
    said(&make_up)
}

/// What was typed for a make-up as a document keeps it: with English words and keys in place of those of the language of
/// now. A material of one's own keeps its name, whatever else that could mean.
pub fn kept(line: &str, own: &[MaterialSpec]) -> String {
    if language() == Language::English {
        return line.to_owned();
    }
    let Ok(mut make_up) = read(&in_english(line)) else { return line.to_owned() };
    let name = |text: &mut String| {
        if let Some(key) = key_said(text)
            && find(own, text).is_none_or(|found| found.key == key)
        {
            key.clone_into(text);
        }
    };
    name(&mut make_up.material);
    make_up.layers.iter_mut().for_each(|layer| name(&mut layer.material));
    write(&make_up)
}

/// The line with the words of the language of now made English where they stand as words of the line: at its beginning,
/// behind a comma, before a share, or at an end of bare core.
fn in_english(line: &str) -> String {
    let put = |text: &str, before: &str, words: Words| {
        let [from, to] = [words.said(), words.english()].map(|word| [before, word, " "].concat());
        text.replace(&from, &to)
    };
    let mut text = [line.trim(), " "].concat();
    if let Some(rest) = text.strip_prefix(say::WORD_WEIGHED.said()) {
        text = [say::WORD_WEIGHED.english(), rest].concat();
    }
    for words in [say::WORD_CORE, say::WORD_GAUGE, say::WORD_BREAKS, say::WORD_BARE] {
        text = put(&text, ", ", words);
    }
    if text.contains('%') {
        text = put(&text, " ", say::WORD_AT);
    }
    if let Some((head, ends)) = text.split_once(", bare ") {
        let ends = put(&put(ends, " ", say::WORD_BOARD), " ", say::WORD_PIN);
        text = [head, ", bare ", &ends].concat();
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::in_language;

    const LINES: [&str; 9] = [
        "gut 0.81",
        "yellow brass 0.45",
        "steel 0.40 + silk 0.10 + bronze 0.14",
        "steel 0.45 + bronze 0.15 x 0.60 at 90 %, bare 12 board 15 pin",
        "weighed 6.75 g/m, core steel 0.50, gauge 1.10, breaks 480 N",
        "[odd + name] [0.5]",
        "my own gut 0.8",
        "nylon",
        "weighed, bare 3 pin",
    ];

    #[test]
    fn what_is_shown_is_read_back_as_what_is_kept() {
        for language in Language::ALL {
            for line in LINES {
                let make_up = read(line).unwrap();
                let shown = in_language(language, || said(&make_up));
                let back = in_language(language, || kept(&shown, &[]));
                assert_eq!(read(&back).as_ref(), Ok(&make_up), "{shown}");
                // English is read too, and stays as it was typed.
                assert_eq!(in_language(language, || kept(line, &[])), line);
            }
        }
    }

    #[test]
    fn a_make_up_has_the_words_of_the_language() {
        let german: Vec<String> =
            in_language(Language::German, || LINES.map(line_said).into_iter().collect());
        assert_eq!(
            german[..5],
            [
                "Darm 0.81",
                "Messing 0.45",
                "Stahl 0.40 + Seide 0.10 + Bronze 0.14",
                "Stahl 0.45 + Bronze 0.15 x 0.60 zu 90 %, frei 12 Decke 15 Stift",
                "gewogen 6.75 g/m, Kern Stahl 0.50, Stärke 1.10, reißt 480 N",
            ]
        );
        assert_eq!(in_language(Language::French, || line_said("gut 0.81")), "boyau 0.81");
        assert_eq!(in_language(Language::French, || line_shown("gut 0.81")), "boyau 0,81");
        let inches = "steel .016 in + bronze 0.30";
        let shown = in_language(Language::German, || line_shown(inches));
        assert_eq!(shown, "Stahl .016 in + Bronze 0,30");
        assert_eq!(line_said("gut 0.81"), "gut 0.81");
    }

    /// Before it would be another string in another language.
    #[test]
    fn a_material_of_ones_own_keeps_its_name() {
        let own = MaterialSpec { key: "Darm".to_owned(), ..MaterialSpec::default() };
        let typed = |own: &[MaterialSpec]| in_language(Language::German, || kept("darm 0.8", own));
        assert_eq!(typed(&[own]), "darm 0.8");
        assert_eq!(typed(&[]), "gut 0.8");
    }
}
