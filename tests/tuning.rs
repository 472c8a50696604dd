//! The tuning sheets of the samples: what stands on them, in how many pages, and the style sheet's measures.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use stringloft::design::document::{Design, LengthUnit, TemperamentSpec};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::papers::html::html;
use stringloft::papers::layout::report_columns;
use stringloft::papers::sheet::{Block, Paper, Sheet, Table, TableKind};
use stringloft::papers::tuning::tuning;

fn sample(key: &str) -> Design {
    SAMPLES.iter().find(|sample| sample.key == key).unwrap().design()
}

fn tables(sheet: &Sheet, kind: TableKind) -> impl Iterator<Item = &Table> {
    let blocks = sheet.pages.iter().flat_map(|page| &page.blocks);
    blocks.filter_map(move |block| match block {
        Block::Table(table) if table.kind == kind => Some(table),
        _ => None,
    })
}

/// The strings, cell by cell.
fn strings(sheet: &Sheet) -> Vec<Vec<String>> {
    let rows = tables(sheet, TableKind::Tuning).flat_map(|table| &table.rows);
    rows.map(|row| row.cells.iter().map(|cell| cell.join(" ")).collect()).collect()
}

/// A figure is printed to its last digit.
fn prints(cell: &str, value: f64, digit: f64) {
    let printed: f64 =
        cell.replace('−', "-").parse().unwrap_or_else(|_| panic!("“{cell}” is no number"));
    assert!((printed - value).abs() <= 0.500_001 * digit, "{cell} for {value}");
}

#[test]
fn every_string_has_its_pitch_stretch_and_turns_and_room_for_five_rounds() {
    for sample in SAMPLES {
        let design = sample.design();
        let analysis = analyse(&resolve(&design).harp);
        let rows = strings(&tuning(&design, Paper::A4));
        assert_eq!(rows.len(), design.strings.len(), "{}", sample.key);
        for (row, figures) in rows.iter().zip(&analysis.strings) {
            let hertz = figures.frequency.unwrap().to_hz();
            prints(&row[2], hertz, if hertz < 999.995 { 0.01 } else { 0.1 });
            prints(&row[5], figures.stretch.unwrap().to_mm(), 0.1);
            prints(&row[6], figures.pin_turns.unwrap(), 0.1);
            assert!(row[7..].iter().all(String::is_empty) && row.len() == 12, "{row:?}");
        }
    }
}

/// Of Vallotti's temperament C lies 5.9 cents, F 7.8 and G 3.9 above equal temperament at the same A4; a lever raises by a twelfth of
/// an octave. Source: the definition, six fifths from F to B narrow by a sixth of the Pythagorean comma of 23.46 cents:
/// worked out here.
#[test]
fn cents_are_those_of_the_temperament_and_raised_is_a_semitone() {
    let mut design = sample("floor-36");
    design.pitch.temperament = TemperamentSpec::Vallotti;
    design.pitch.a4_hz = 432.0;
    let rows = strings(&tuning(&design, Paper::Letter));
    let (mut c, mut f, mut g) = (0, 0, 0);
    for row in &rows {
        let hertz: f64 = row[2].parse().unwrap();
        let off = match row[1].chars().next() {
            Some('C') => (5.865, &mut c),
            Some('F') => (7.820, &mut f),
            Some('G') => (3.910, &mut g),
            _ => continue,
        };
        if row[1].contains(['♭', '♯']) {
            continue;
        }
        prints(&row[3], off.0, 0.1);
        *off.1 += 1;
        if row[4] != "—" {
            let raised: f64 = row[4].parse().unwrap();
            assert!((raised / hertz - 2.0_f64.powf(1.0 / 12.0)).abs() < 1e-3, "{row:?}");
        }
    }
    assert!(c > 3 && f > 3 && g > 3, "{c} {f} {g}");
    let rows = strings(&tuning(&sample("floor-36"), Paper::Letter));
    assert!(rows.iter().all(|row| row[3] == "0.0"), "no cents in equal temperament");
}

#[test]
fn two_discs_give_two_raised_pitches_and_the_keys_stand_below() {
    let sheet = tuning(&sample("pedal-47"), Paper::A4);
    let rows = strings(&sheet);
    assert!(rows.iter().filter(|row| row[4].contains(" / ")).count() > 40, "{rows:?}");
    let keys = tables(&sheet, TableKind::Keys).flat_map(|table| &table.rows).count();
    assert_eq!(keys, 15, "a pedal harp plays every key");
    let wire = tuning(&sample("wire-22"), Paper::A4);
    assert!(strings(&wire).iter().all(|row| row[4] == "—"), "without levers nothing is raised");
}

#[test]
fn what_is_not_known_is_a_dash_and_what_was_typed_is_escaped() {
    let mut design = sample("floor-36");
    design.title = "<b>Linnet</b>".to_owned();
    design.strings[2].length = "about a foot".to_owned();
    design.strings[3].note = "?".to_owned();
    design.units.length = LengthUnit::Inch;
    let sheet = tuning(&design, Paper::A4);
    let rows = strings(&sheet);
    assert_eq!(&rows[2][5..7], ["—", "—"]);
    assert_eq!(&rows[3][2..7], ["—", "—", "—", "—", "—"]);
    let html = html(&sheet);
    assert!(html.contains("&lt;b&gt;Linnet") && !html.contains("<b>"));
}

/// The strings of every sample stand on one page with room for a hand: rows of 4.2 mm or more.
#[test]
fn the_strings_stay_on_one_page() {
    for sample in SAMPLES {
        for paper in [Paper::A4, Paper::Letter] {
            let sheet = tuning(&sample.design(), paper);
            let parts = tables(&sheet, TableKind::Tuning).count();
            assert_eq!(parts, 1, "{}, {}", sample.key, paper.name());
            assert!(sheet.pages.len() <= 2, "{}, {}", sample.key, paper.name());
        }
    }
}

#[test]
fn columns_are_as_wide_in_the_style_sheet() {
    let css = include_str!("../style/print.css");
    for (class, kind) in [("tuning", TableKind::Tuning), ("keys", TableKind::Keys)] {
        let width = |width: &f64| {
            if *width == 0.0 { "minmax(0, 1fr)".to_owned() } else { format!("{width}mm") }
        };
        let columns: Vec<String> = report_columns(kind).iter().map(width).collect();
        let rule = format!(".card-table--{class} {{ --columns: {}; }}", columns.join(" "));
        assert!(css.contains(&rule), "style/print.css lacks: {rule}");
    }
}
