//! Tables of measurements as different hands write them, and what each must become. The expectations were written
//! with the tables, before anything could read them; makers and harps are invented.

use std::path::{Path, PathBuf};

use stringloft::design::document::MakeUpSpec;
use stringloft::design::library::find;
use stringloft::design::table::hand::{Hand, PlainB, Question, read};
use stringloft::design::table::report::report;
use stringloft::design::{make_up_text, typed};

/// How many tables must need no hand at all.
const WITHOUT_A_HAND: usize = 41;
/// How many there are.
const TABLES: usize = 45;

/// The tables, in order.
fn tables() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/tables");
    let mut all: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("the folder of the tables")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "txt"))
        .collect();
    all.sort();
    all
}

fn text(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// What a length is in hundredths of a millimetre; `None` for none.
fn hundredths(length: &str) -> Option<i64> {
    if length.is_empty() {
        return None;
    }
    let mm = typed::length(length).unwrap_or_else(|error| panic!("{error}")).to_mm();
    #[expect(clippy::cast_possible_truncation, reason = "a length of a string")]
    Some((mm * 100.0).round() as i64)
}

/// Materials by their key and sizes in microns, so that it does not matter how they are written.
fn parts(make_up: &MakeUpSpec) -> Vec<(String, Option<i64>)> {
    let core = (&make_up.material, &make_up.diameter);
    let layers = make_up.layers.iter().map(|layer| (&layer.material, &layer.size));
    #[expect(clippy::cast_possible_truncation, reason = "a gauge")]
    let microns = |size: &String| typed::gauge(size).ok().map(|g| (g.to_mm() * 1e3).round() as i64);
    let key = |text: &str| {
        find(&[], text).map_or_else(|| text.to_owned(), |material| material.key.clone())
    };
    [core].into_iter().chain(layers).map(|(text, size)| (key(text), microns(size))).collect()
}

/// Where a table became something else than it must, in a few words.
fn differs(hand: &Hand, expected: &[&str]) -> Option<String> {
    if hand.strings.len() != expected.len() {
        return Some(format!("{} strings, not {}", hand.strings.len(), expected.len()));
    }
    for ((string, remark), line) in hand.strings.iter().zip(&hand.remarks).zip(expected) {
        let cells: Vec<&str> =
            line.split(" | ").map(|cell| if cell == "-" { "" } else { cell.trim() }).collect();
        let [note, length, make_up, said] = cells[..] else { panic!("{line}") };
        let made = make_up_text::read(make_up).unwrap_or_else(|error| panic!("{line}: {error}"));
        let is_length = match typed::length(&string.length) {
            Ok(_) => hundredths(&string.length) == hundredths(length),
            Err(_) => string.length == length,
        };
        if string.note != note
            || !is_length
            || parts(&string.make_up) != parts(&made)
            || remark != said
        {
            return Some(format!(
                "\"{line}\" became {} | {} | {} | {remark}",
                string.note,
                string.length,
                make_up_text::write(&string.make_up)
            ));
        }
    }
    None
}

#[test]
#[expect(clippy::print_stdout, reason = "how many need no hand is what is asked for")]
fn all_tables_become_what_they_must_and_nearly_all_without_a_hand() {
    let tables = tables();
    assert_eq!(tables.len(), TABLES);
    let mut by_hand = Vec::new();
    for path in tables {
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let expected = text(&path.with_extension("expected"));
        let (asked, rows): (Vec<&str>, Vec<&str>) =
            expected.lines().partition(|line| line.starts_with("asks: "));
        let mut hand = match read(&text(&path), None) {
            Ok(hand) => hand,
            Err(error) => {
                by_hand.push(format!("{name}: {error}"));
                continue;
            }
        };
        let asks: Vec<String> = hand
            .questions()
            .into_iter()
            .map(|question| match question {
                Question::Unit { place, answers, .. } => {
                    format!("asks: {} in {}", hand.columns[place].heading, answers[0].name())
                }
                Question::PlainB { .. } if asked.contains(&"asks: B flat") => {
                    "asks: B flat".to_owned()
                }
                Question::PlainB { .. } => "asks: B natural".to_owned(),
            })
            .collect();
        if asks != asked {
            by_hand.push(format!("{name}: {asks:?}"));
            continue;
        }
        if !asks.is_empty() {
            by_hand.push(format!("{name}: answers a question"));
            let mut columns = hand.columns.clone();
            for column in &mut columns {
                column.unit = column.looks_like.take().unwrap_or(column.unit);
                let is_flat = asked.contains(&"asks: B flat");
                column.plain_b = Some(if is_flat { PlainB::Flat } else { PlainB::Natural });
            }
            hand = read(&text(&path), Some(&columns)).expect("it was read before");
            assert_eq!(hand.questions(), []);
        }
        if let Some(how) = differs(&hand, &rows) {
            by_hand.push(format!("{name}: {how}"));
        }
    }
    let without = TABLES - by_hand.len();
    println!("{without} of {TABLES} tables need no hand; the others: {by_hand:#?}");
    assert!(without >= WITHOUT_A_HAND, "{without}: {by_hand:#?}");
}

#[test]
fn the_command_line_reads_every_table_through_the_same_door() {
    for path in tables() {
        let expected = text(&path.with_extension("expected"));
        let strings = expected.lines().filter(|line| !line.starts_with("asks: ")).count();
        let report = report(&text(&path), true)
            .unwrap_or_else(|errors| panic!("{}: {errors:?}", path.display()));
        assert_eq!(report.csv.lines().count(), strings + 1, "{}", path.display());
        let lengths =
            report.told.iter().filter(|told| told.contains(" is length, bare numbers in "));
        assert_eq!(lengths.count(), 1, "{}: {:?}", path.display(), report.told);
    }
}
