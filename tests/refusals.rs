//! Input that means harm or came by mistake: what is said of it is short, says where it is wrong and what to do, and
//! never in the words of a parser alone.

use std::fmt::Write as _;
use std::time::{Duration, Instant};

use stringloft::design::document::Design;
use stringloft::design::persist;
use stringloft::design::restring::{self, Reading};
use stringloft::design::stock::{self, table as stock_table};
use stringloft::design::table::{self, hand};
use stringloft::design::{link, make_up_text, presets, typed};

/// What is said takes a few lines of a screen.
const MOST_LETTERS: usize = 500;
/// Some doors take seconds for millions of letters without optimizing, on a busy machine; what tries for ever takes more.
const LONGEST: Duration = Duration::from_secs(120);
/// Words that only parsers say.
const OF_PARSERS: [&str; 9] = [
    "recursion",
    "EOF",
    "expected value",
    "expected `",
    "expected ident",
    "invalid type",
    "trailing",
    "control character",
    "invalid number",
];

#[track_caller]
fn is_short(words: &str, what: &str) {
    let count = words.chars().count();
    assert!(!words.is_empty() && count <= MOST_LETTERS, "{what}: {count} letters: {words:.300}");
    let of_parser = OF_PARSERS.iter().find(|word| words.contains(*word));
    assert_eq!(of_parser, None, "{what}: {words}");
}

/// Sends a text through every door for files, and looks at what each says.
fn refuse(what: &str, text: &str) {
    let begun = Instant::now();
    if let Err(error) = persist::read(text) {
        is_short(&error.to_string(), what);
        is_short(&error.in_short(), what);
    }
    if let Err(error) = stock::read(text) {
        is_short(&error.to_string(), what);
    }
    if let Err(error) = link::read(text) {
        is_short(&error.to_string(), what);
    }
    match stock_table::propose(text) {
        Err(error) => is_short(&error.to_string(), what),
        Ok(columns) => {
            assert!(columns.len() <= 100, "{what}: {} columns", columns.len());
            let import = stock_table::import(text, &columns, "nylon", &[]);
            assert!(import.bad.len() <= 200 && import.doubts.len() <= 200, "{what}");
            import.bad.iter().chain(&import.doubts).for_each(|e| is_short(&e.to_string(), what));
        }
    }
    match table::read(text) {
        Err(errors) => {
            assert!(errors.len() <= 200, "{what}: {} errors", errors.len());
            errors.iter().for_each(|error| is_short(&error.to_string(), what));
        }
        Ok(read) => read
            .told
            .iter()
            .chain([&format!("{}.", table::some_of(&read.ignored))])
            .for_each(|w| is_short(w, what)),
    }
    match hand::read(text, None) {
        Err(error) => is_short(&error.to_string(), what),
        Ok(hand) => {
            assert!(hand.columns.len() <= 200, "{what}: {} columns", hand.columns.len());
            for words in hand.taken_for().iter().chain(&hand.assumed).chain(&hand.left_out) {
                is_short(words, what);
            }
        }
    }
    let open = &presets::OPEN_TUNINGS[0];
    let reading =
        Reading { columns: None, highest: None, lowest: None, open, material: "", mechanism: None };
    if let Err(error) = restring::read_measured(text, &reading) {
        is_short(&error.to_string(), what);
    }
    if let Err(error) = make_up_text::read(text) {
        is_short(&error.to_string(), what);
    }
    if let Err(error) = typed::length(text) {
        is_short(&error.to_string(), what);
    }
    assert!(begun.elapsed() < LONGEST, "{what} took {:?}", begun.elapsed());
}

/// A sample's file with one text in place of another.
fn sample(from: &str, to: &str) -> String {
    let text = persist::write(&presets::SAMPLES[0].design());
    assert!(text.contains(from), "the file has no {from}");
    text.replacen(from, to, 1)
}

#[test]
fn tables_of_any_width_and_length_are_answered_shortly() {
    let many = |count: usize| {
        (0..count).fold(String::new(), |mut text, at| {
            let _ = write!(text, ",unknown heading {at}");
            text
        })
    };
    let wide = many(100_000);
    refuse("100,000 unknown columns", &format!("note,length_mm{wide}\nA4,500\n"));
    refuse("100,000 unknown columns and no known one", &format!("what{wide}\n1,2\n"));
    refuse("100,000 cells", &format!("note,length_mm\nA4,500{}\n", ",7".repeat(100_000)));
    refuse("60 decimals cut in two", &format!("note,length_mm\nA4,500{}\n", ",7".repeat(60)));
    refuse("100,000 lines", &format!("note,length_mm\n{}", "A4,five\n".repeat(100_000)));
    refuse(
        "a cell of a million letters",
        &format!("note,length_mm\n{},500\n", "x".repeat(1_000_000)),
    );
    refuse(
        "a heading of a million letters",
        &format!("note,{},length_mm\nA4,5,500\n", "x".repeat(1_000_000)),
    );
    refuse("a quote that stays open", &format!("note,length_mm\nA4,\"{}", "x".repeat(1_000_000)));
    refuse(
        "a number of a million digits",
        &format!("note,length_mm\nA4,{}\n", "9".repeat(1_000_000)),
    );
    refuse("the largest number", "note,length_mm,material,diameter_mm\nA4,1e308,nylon,1e308\n");
    refuse("nothing but commas", &",".repeat(1_000_000));
}

#[test]
fn damaged_and_hostile_files_are_answered_in_words_of_a_maker() {
    refuse(
        "a name of a megabyte",
        &sample("\"title\": \"", &format!("\"title\": \"{}", "x".repeat(1 << 20))),
    );
    refuse(
        "a length of a million letters",
        &sample("\"length\": \"", &format!("\"length\": \"{}", "1".repeat(1_000_000))),
    );
    refuse(
        "an endless word",
        &sample("\"temperament\": \"", &format!("\"temperament\": \"{}", "x".repeat(1_000_000))),
    );
    refuse("the largest number", &sample("\"a4_hz\": ", "\"a4_hz\": 1e308, \"was\": "));
    refuse("a number beyond all", &sample("\"a4_hz\": ", "\"a4_hz\": 1e999, \"was\": "));
    refuse("a field twice", &sample("{", "{\"title\": \"\", "));
    let name = "x".repeat(1_000_000);
    refuse(
        "a field of a million letters twice",
        &sample("{", &format!("{{\"{name}\": 1, \"{name}\": 1, ")),
    );
    refuse("lists in lists", &"[".repeat(100_000));
    refuse("sets in sets", &"{\"stringloft\":".repeat(100_000));
    refuse("no comma", &sample("\",", "\""));
    refuse("an odd sign", &sample("\"title\": \"", "\"title\": \"\\q"));
    refuse("a control sign", &sample("\"title\": \"", "\"title\": \"\u{1}"));
    refuse("half a letter", &sample("\"title\": \"", "\"title\": \"\\ud800"));
    refuse("something behind the end", &(sample("{", "{") + "and more"));
    refuse("a word for a list", &sample("\"strings\": [", "\"strings\": \"none\", \"were\": ["));
    refuse(
        "a density of the largest number",
        &sample(
            "\"density_kg_per_m3\": {\"value\": ",
            "\"density_kg_per_m3\": {\"value\": 1e308, \"was\": ",
        ),
    );
    let whole = persist::write(&Design::default());
    for end in (1..whole.len()).step_by(97) {
        refuse("a file that was cut off", &whole[..end]);
    }
}

/// The sentences themselves: what is wrong, where, and what to do.
#[test]
fn a_refusal_says_what_is_wrong_where_and_what_to_do() {
    let of = |text: &str| persist::read(text).expect_err(text).to_string();
    let behind = " (mend the file or choose another)";
    assert_eq!(
        of("{\"stringloft\": 2,\n\"title\" 5}"),
        format!(
            "this design cannot be read: something is missing, repeated or out of place, at line 2, place 9{behind}"
        )
    );
    assert_eq!(
        of(&"[".repeat(1_000)),
        format!(
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place 128{behind}"
        )
    );
    assert_eq!(
        of("{\"stringloft\": 2, \"title\": \"\", \"title\": \"\"}"),
        format!(
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place 38{behind}"
        )
    );
    assert_eq!(
        of("{\"stringloft\": 2, \"pluck_mm\": 1e999}"),
        format!(
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place 35{behind}"
        )
    );
    assert_eq!(
        of("{\"stringloft\": 2, \"strings\": [{\"length\": 5}]}"),
        format!(
            "this design cannot be read: strings, 1: length must be text, got a number{behind}"
        )
    );
    let stock = stock::read("{\"stringloft-stock\": 1 \"items\": []}").expect_err("no comma");
    assert_eq!(
        stock.to_string(),
        "this stock list cannot be read: something is missing, repeated or out of place, at line 1, place 24 (mend the file or choose another)"
    );
}
