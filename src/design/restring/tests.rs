//! Tests of restringing: measured lists, what is missing, and another material.

use super::*;
use crate::design::advice::caution;
use crate::design::document::{StockItem, Units};
use crate::design::edit::Edit;
use crate::design::history::History;
use crate::design::make_up_text;
use crate::design::persist::check;
use crate::design::presets::SAMPLES;
use crate::design::stock::starting_list;
use crate::design::table::hand::Question;
use crate::engine::analysis::analyse;
use crate::engine::units::{Force, Length};
use crate::testing::assert_close;

fn reading(highest: &str, lowest: &str) -> Reading<'static> {
    Reading {
        highest: highest.parse().ok(),
        lowest: lowest.parse().ok(),
        open: &OPEN_TUNINGS[0],
        columns: None,
        material: "",
        mechanism: None,
    }
}

fn read(text: &str) -> Vec<(String, String, String)> {
    read_with(text, &reading("", ""))
}

fn read_with(text: &str, reading: &Reading<'_>) -> Vec<(String, String, String)> {
    let measured = read_measured(text, reading).unwrap_or_else(|error| panic!("{text}: {error}"));
    let strings = measured.table.strings.into_iter();
    strings.map(|s| (s.note, s.length, make_up_text::write(&s.make_up))).collect()
}

#[test]
fn a_line_is_a_length_with_or_without_note_and_string() {
    for (line, note, length, make_up) in [
        ("612", "", "612", ""),
        ("612,5 mm", "", "612,5 mm", ""),
        ("A4 612", "A4", "612", ""),
        ("Bb4\t24 1/8 in\tgut 0.90", "Bb4", "24 1/8 in", "gut 0.90"),
        ("C5; 302; nylon .032\"", "C5", "302", "nylon .032\""),
        ("C5, 302, nylon", "C5", "302", "nylon"),
        ("C5 302 0.81", "C5", "302", "0.81"),
        ("7. C5 302", "C5", "302", ""),
        ("12) 302", "", "302", ""),
        ("443.2 Hz 370", "443.2 Hz", "370", ""),
        ("C5 -", "C5", "", ""),
        ("C5 ? gut 0.8", "C5", "", "gut 0.8"),
        ("C5", "C5", "", ""),
        ("2 ft 3 1/4 in steel 0.5 + bronze 0.2", "", "2 ft 3 1/4 in", "steel 0.5 + bronze 0.2"),
        ("C5 5o0", "C5", "5o0", ""),
        ("C5 12", "C5", "12", ""),
    ] {
        let expected = (note.to_owned(), length.to_owned(), make_up.to_owned());
        assert_eq!(read(line), [expected], "{line}");
    }
}

#[test]
fn notes_follow_from_the_ends() {
    let notes = |text: &str, highest: &str, lowest: &str| -> Vec<String> {
        let reading = reading(highest, lowest);
        read_with(text, &reading).into_iter().map(|string| string.0).collect()
    };
    assert_eq!(notes("300\n330\n360", "E5", ""), ["E5", "D5", "C5"]);
    assert_eq!(notes("300\n330\n360", "", "C5"), ["E5", "D5", "C5"]);
    assert_eq!(notes("300\n330\n360", "E5", "C5"), ["E5", "D5", "C5"]);
    assert_eq!(notes("300\n330\n360", "", ""), ["", "", ""]);
    assert_eq!(notes("300\nF5 330\n360", "E5", ""), ["E5", "F5", "C5"], "what is named stays");
    let flats = Reading { open: &OPEN_TUNINGS[5], ..reading("E5", "") };
    let named = read_with("300\n330", &flats);
    assert_eq!(named[0].0, "Eb5");
    let error = read_measured("300\n330", &reading("E5", "C5")).unwrap_err();
    assert_eq!(
        error.to_string(),
        "from E5 down to C5 there are 3 strings, but the list has 2 lines (change a note, or add the missing lines)"
    );
}

#[test]
fn a_list_from_the_bass_up_is_turned_round() {
    let measured = read_measured("900\n?\n300", &reading("E5", "")).unwrap();
    assert!(measured.hand.turned);
    let lengths: Vec<&str> = measured.table.strings.iter().map(|string| &*string.length).collect();
    assert_eq!(lengths, ["300", "", "900"]);
    assert_eq!(measured.table.strings[0].note, "E5");
    assert!(read_measured("C3 900\nE5 300", &reading("", "")).unwrap().hand.turned);
}

#[test]
fn fractions_are_inches_and_bare_numbers_that_look_so_are_asked_about() {
    let lengths = |text: &str| -> Vec<String> { read(text).into_iter().map(|s| s.1).collect() };
    assert_eq!(lengths("24 1/8\n30\n812 mm"), ["24 1/8 in", "30 in", "812 mm"]);
    let asked = read_measured("24\n30\n36.5", &reading("", "")).unwrap();
    let questions = asked.hand.questions();
    let [Question::Unit { place, said, answers }] = &questions[..] else { panic!("one question") };
    let (place, looks) = (*place, answers[0]);
    assert_eq!((said.name(), looks.name()), ("mm", "in"));
    let mut columns = asked.hand.columns;
    (columns[place].unit, columns[place].looks_like) = (looks, None);
    let answered = Reading { columns: Some(&columns), ..reading("", "") };
    let answered = read_measured("24\n30\n36.5", &answered).unwrap();
    assert_eq!(answered.table.strings[2].length, "36.5 in");
    assert_eq!(answered.hand.questions(), []);
}

#[test]
fn a_wound_string_of_which_no_more_is_said_asks_for_its_core_and_winding() {
    let list = "A3 690 wound 1.52\nG3 730 Stahl umsponnen 1.6\nF3 770 mithril 1.6";
    let design = read_measured(list, &reading("", "")).unwrap().into_design(&Design::default());
    assert_eq!(design.open_tuning, "", "A, G and F are in several");
    let told: Vec<String> = gaps(&design).into_iter().map(|gap| gap.sentence).collect();
    assert_eq!(
        told[0],
        "a wound string must have its core and its winding, got \"wound\" (write it like steel 0.40 + bronze 0.25, or weigh it)"
    );
    assert!(told[1].contains("\"Stahl umsponnen\" (write it like steel"), "{told:?}");
    assert!(told[2].ends_with("got \"mithril\" (write a known one, or add it under Materials)"));
    assert_eq!(design.strings[0].make_up.diameter, "1.52");
}

#[test]
fn the_unit_comes_first_with_which_the_strings_are_most_like_usual_ones() {
    let answers = |text: &str| -> Vec<&'static str> {
        let read = read_measured(text, &reading("", "")).unwrap();
        match &read.hand.questions()[..] {
            [] => Vec::new(),
            [Question::Unit { answers, .. }] => answers.iter().map(|unit| unit.name()).collect(),
            other => panic!("{other:?}"),
        }
    };
    assert_eq!(answers("C5 30.3\nB4 33.9\nA4 37"), ["cm", "in", "mm"]);
    assert_eq!(answers("C5 11.9\nB4 13.3\nA4 14.6"), ["in", "cm", "mm"]);
    assert_eq!(answers("C5 0.303\nB4 0.339\nA4 0.37"), ["m", "cm", "in", "mm"]);
    // A bass of centimetres, none of which is short.
    assert_eq!(answers("C4 56\nG3 74\nC3 98\nG2 117"), ["cm", "in", "mm"]);
    // Millimetres of a tiny harp, which are none of these.
    assert_eq!(answers("C8 36\nB7 38\nA7 41\nG7 46"), [""; 0]);
    assert_eq!(answers("C5 303\nB4 339\nA4 370"), [""; 0]);
}

#[test]
fn levers_and_the_material_of_all_strings_are_given_where_the_list_says_nothing() {
    let list = "A4 400\nG4 440 gut 0.9\nF4 480 0.8";
    let given = Reading { material: "nylon", ..reading("", "") };
    let measured = read_measured(list, &given).unwrap();
    assert_eq!(measured.mechanism, MechanismKind::Lever);
    let design = measured.into_design(&Design::default());
    assert_eq!(design.mechanism.kind, MechanismKind::Lever);
    let materials: Vec<&str> = design.strings.iter().map(|s| &*s.make_up.material).collect();
    assert_eq!(materials, ["nylon", "gut", "nylon"]);
    let usual = |list: &str| read_measured(list, &reading("", "")).unwrap().mechanism;
    assert_eq!(usual("A4 400 brass 0.4\nG4 440 brass 0.4"), MechanismKind::None);
    assert_eq!(usual("C5 300\nB4 310\nA#4 320\nA4 330"), MechanismKind::None);
    let pedal: Vec<String> =
        SAMPLES[3].design().strings.iter().map(|s| format!("{} {}", s.note, s.length)).collect();
    let measured = read_measured(&pedal.join("\n"), &reading("", "")).unwrap();
    assert_eq!(measured.mechanism, MechanismKind::DoubleDisc);
    let bare = measured.table.strings.iter().filter(|s| s.mechanism.is_some()).count();
    assert_eq!(bare, 2, "the two lowest have no discs");
    let none = Reading { mechanism: Some(MechanismKind::None), ..reading("", "") };
    assert_eq!(read_measured(list, &none).unwrap().mechanism, MechanismKind::None);
}

#[test]
fn a_table_with_headings_is_read_as_one() {
    let table = read("note,length_mm,make_up\nC5,302,nylon 0.81\nB4,,gut\n");
    assert_eq!(table[0], ("C5".to_owned(), "302".to_owned(), "nylon 0.81".to_owned()));
    assert_eq!(table[1], ("B4".to_owned(), String::new(), "gut".to_owned()));
    assert_eq!(read("Length\n302\n330").len(), 2, "a heading over plain lengths");
    let error = read_measured("note,length_mm\nC5,x", &reading("", "")).unwrap_err();
    assert!(error.to_string().starts_with("line 2, column length_mm: the vibrating length"));
}

#[test]
fn what_is_no_list_says_why() {
    let says = |text: &str| read_measured(text, &reading("", "")).unwrap_err().to_string();
    assert!(says("").starts_with("the list is empty"));
    assert!(says("Lengths").starts_with("there is no string in it"));
    assert!(
        says(&"300\n".repeat(151)).starts_with("a list of lengths must have at most 150 strings")
    );
    assert!(says(&"x".repeat(MOST_BYTES + 1)).contains("1 MB"));
    for text in
        ["1 \"", "[ 300", "C5 + +", "é 1", "\u{0}1", "1/0", "- - -", "C5 [", "9999999999999"]
    {
        if let Ok(measured) = read_measured(text, &reading("", "")) {
            let design = measured.into_design(&Design::default());
            assert_eq!(check(&design), Ok(()), "{text:?}");
        }
    }
}

#[test]
fn what_is_missing_is_told_with_its_cell() {
    let list = "C5 302 nylon 0.81\nB4 ? gut\nA4 5o0\n400 gut 0.9\nF4 450 mithril 1\nE4 480 32";
    let design = read_measured(list, &reading("", "")).unwrap().into_design(&Design::default());
    let told: Vec<_> = gaps(&design).into_iter().map(|gap| (gap.row, gap.column)).collect();
    assert_eq!(
        told,
        [
            (1, Column::Length),
            (1, Column::Gauge),
            (2, Column::Length),
            (2, Column::MakeUp),
            (2, Column::Gauge),
            (4, Column::MakeUp),
            (5, Column::Gauge),
        ]
    );
    let sentences: Vec<String> = gaps(&design).into_iter().map(|gap| gap.sentence).collect();
    assert!(sentences[0].starts_with("the vibrating length was not measured"));
    assert!(sentences[2].starts_with("the vibrating length must be"));
    assert!(sentences[3].starts_with("what the string is made of is not known"));
    assert_eq!(gaps(&SAMPLES[2].design()), []);
}

/// One long and thin nylon string, whose stiffness takes off next to nothing.
fn nylon() -> Design {
    read_measured("A4 370 nylon 0.60", &reading("", "")).unwrap().into_design(&Design::default())
}

fn conversion<'a>(material: &'a str, equal: Equal, stock: &'a [StockItem]) -> Conversion<'a> {
    Conversion { rows: 0..150, material, equal, stock, materials: &[] }
}

/// By hand: nylon of 1140 kg/m³ and gut of 1300 kg/m³ weigh the same when the gauges go as
/// √(1300/1140) = 1.067872.
#[test]
fn nylon_and_gut_go_as_the_root_of_their_densities() {
    let design = nylon();
    let wanted = |equal| {
        let preview = convert(&design, &conversion("gut", equal, &[]));
        (preview.changes[0].wanted.unwrap().to_mm(), preview)
    };
    let (mass, preview) = wanted(Equal::Mass);
    assert_close(0.60 / mass, 1.067_872, 1e-6, "ratio");
    assert_eq!(preview.design.strings[0].make_up.diameter, "0.56");
    // The bar of the string bears a thousandth of the pitch.
    let (pull, preview) = wanted(Equal::Tension);
    assert_close(pull, mass, 2e-3, "tension");
    assert!(
        (preview.before.total_tension.to_n() / preview.after.total_tension.to_n() - 1.0).abs()
            < 0.01
    );
    let (force, _) = wanted(Equal::PluckForce);
    assert!((force / mass - 1.0).abs() < 0.05, "{force}");
}

#[test]
fn the_wanted_gauge_keeps_the_figure() {
    for (equal, material) in [
        (Equal::Tension, "fluorocarbon"),
        (Equal::Tension, "gut"),
        (Equal::PluckForce, "gut"),
        (Equal::PluckForce, "fluorocarbon"),
    ] {
        let design = SAMPLES[2].design();
        let preview = convert(&design, &conversion(material, equal, &[]));
        let mut exact = design.clone();
        let mut known = 0;
        for change in preview.changes.iter().filter(|change| change.wanted.is_some()) {
            let make_up = &mut exact.strings[change.row].make_up;
            material.clone_into(&mut make_up.material);
            make_up.diameter = change.wanted.unwrap().to_mm().to_string();
            known += 1;
        }
        assert!(known > 20, "{known}");
        let after = analyse(&resolve(&exact).harp);
        for change in preview.changes.iter().filter(|change| change.wanted.is_some()) {
            let of = |analysis: &crate::engine::analysis::Analysis| {
                let figures = &analysis.strings[change.row];
                let force =
                    if equal == Equal::Tension { figures.tension } else { figures.pluck_force };
                force.map(Force::to_n).unwrap()
            };
            assert_close(of(&after), of(&preview.before), 1e-7, change.row);
        }
    }
}

#[test]
fn a_conversion_is_one_step_with_stock_and_undone_at_once() {
    let design = SAMPLES[2].design();
    let list = starting_list();
    let preview = convert(&design, &conversion("fluorocarbon", Equal::Tension, &list.items));
    let wound = design.strings.iter().filter(|string| !string.make_up.is_plain()).count();
    let stay = preview.changes.iter().filter(|change| change.gauge.is_none()).count();
    assert_eq!(stay, wound, "wound strings stay");
    for change in preview.changes.iter().filter(|change| change.gauge.is_some()) {
        let string = &preview.design.strings[change.row];
        assert_eq!(string.make_up.material, "fluorocarbon");
        assert_eq!(string.note, design.strings[change.row].note);
        let gauges = list.items.iter().filter(|item| item.make_up.starts_with("fluorocarbon"));
        let off = |mm: f64| (mm / change.wanted.unwrap().to_mm()).ln().abs();
        let gauge = |item: &StockItem| {
            let text = item.make_up.strip_prefix("fluorocarbon ").unwrap();
            text.parse::<f64>().unwrap()
        };
        let nearest = gauges.map(|item| off(gauge(item))).fold(f64::INFINITY, f64::min);
        assert_close(off(change.gauge.unwrap().to_mm()), nearest, 1e-9, change.row);
    }
    let mut history = History::new(design.clone());
    history.record(preview.edit.apply(&design), preview.edit.key());
    assert_eq!(*history.present(), preview.design);
    assert!(!preview.design.stock.is_empty() && check(&preview.design).is_ok());
    assert!(history.undo());
    assert_eq!(*history.present(), design);
    let words = summary(&preview, &Units::default());
    assert!(words[0].starts_with("Total tension: "), "{words:?}");
    assert!(words[0].contains(" N before, ") && words.len() == 3, "{words:?}");
    assert!(caution().contains("estimates"));
}

#[test]
fn what_cannot_be_converted_says_why() {
    let item = |make_up: &str| StockItem { make_up: make_up.into(), ..StockItem::default() };
    let says = |design: &Design, material: &str, stock: &[StockItem]| {
        let preview = convert(design, &conversion(material, Equal::Tension, stock));
        assert_eq!(preview.design.strings, design.strings);
        preview.changes[0].remark.clone().unwrap()
    };
    let whole = nylon();
    assert!(says(&whole, "mithril", &[]).starts_with("the material \"mithril\" is not known"));
    assert_eq!(
        says(&whole, "gut", &[item("nylon 0.5"), item("gut 0.5 + gut 0.1"), item("?")]),
        "the stock has no plain gut for this note"
    );
    let mut sold_out = item("gut 0.56");
    sold_out.sold_out = true;
    let mut high = item("gut 0.56");
    high.lowest = "C6".to_owned();
    assert!(says(&whole, "gut", &[sold_out, high]).contains("no plain gut"));
    let short = read_measured("A4 ? nylon 0.6", &reading("", "")).unwrap();
    assert!(
        says(&short.into_design(&Design::default()), "gut", &[]).starts_with("its tension cannot")
    );
    let far = convert(&whole, &conversion("gut", Equal::Tension, &[item("gut 0.90")]));
    let remark = far.changes[0].remark.clone().unwrap();
    assert!(
        remark.starts_with("the nearest gauge is 6") && remark.ends_with("thicker than wanted"),
        "{remark}"
    );
    let beyond = 5..9;
    let none = convert(&whole, &Conversion { rows: beyond, ..conversion("gut", Equal::Mass, &[]) });
    assert_eq!((none.changes.len(), none.design.strings), (0, whole.strings));
}

#[test]
fn an_own_material_comes_along() {
    let mut own = crate::design::library::built_in()[0].clone();
    own.key = "my line".to_owned();
    own.name = "My line".to_owned();
    own.density_kg_per_m3.standing = crate::design::document::StandingSpec::Own;
    let materials = [own];
    let item = StockItem { make_up: "my line 0.60".into(), ..StockItem::default() };
    let stock = [item];
    let wish = Conversion { materials: &materials, ..conversion("my line", Equal::Mass, &stock) };
    let preview = convert(&nylon(), &wish);
    assert_eq!(preview.design.strings[0].make_up.material, "my line");
    assert!(preview.design.materials.iter().any(|material| material.key == "my line"));
    assert!(matches!(&preview.edit, Edit::Take { materials, .. } if materials.len() == 1));
    assert_close(preview.after.strings[0].gauge.map(Length::to_mm).unwrap(), 0.6, 1e-12, "gauge");
}
