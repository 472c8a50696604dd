//! The cutting list: pieces lie on boards without overlap, the sums agree, and the table reads back.

use stringloft::design::document::NeckLayerSpec;
use stringloft::design::parts::building::steps;
use stringloft::design::parts::words::told;
use stringloft::design::parts::{csv, parts};
use stringloft::design::presets::SAMPLES;
use stringloft::design::table::report::{cut, cut_told};
use stringloft::engine::parts::cutting::Blank;
use stringloft::engine::units::Length;
use stringloft::papers::cutting::cutting;
use stringloft::papers::html::html;
use stringloft::papers::layout::TYPE_PT;
use stringloft::papers::measure::width_mm;
use stringloft::papers::sheet::{Block, Paper};
use stringloft::words::{Language, in_language};

#[test]
fn pieces_on_boards_overlap_nowhere_and_no_fewer_boards_than_the_bound_are_used() {
    for sample in &SAMPLES {
        let parts = parts(&sample.design()).expect("parts");
        let mut laid = 0;
        for nest in &parts.nests {
            assert_eq!(nest.too_long, Vec::<usize>::new(), "{}", sample.key);
            assert!(nest.boards.len() >= nest.at_least, "{}: {nest:?}", sample.key);
            let waste = nest.waste_ratio();
            assert!((0.0..1.0).contains(&waste), "{}: {waste}", sample.key);
            for board in &nest.boards {
                laid += board.len();
                for (at, one) in board.iter().enumerate() {
                    let end = |at: f64, size: f64| at + size;
                    assert!(end(one.at.0.to_m(), one.size.0.to_m()) <= nest.size.0.to_m() + 1e-9);
                    assert!(end(one.at.1.to_m(), one.size.1.to_m()) <= nest.size.1.to_m() + 1e-9);
                    for other in &board[at + 1..] {
                        let apart = |a: f64, la: f64, b: f64, lb: f64| {
                            a + la <= b + 1e-9 || b + lb <= a + 1e-9
                        };
                        assert!(
                            apart(
                                one.at.0.to_m(),
                                one.size.0.to_m(),
                                other.at.0.to_m(),
                                other.size.0.to_m()
                            ) || apart(
                                one.at.1.to_m(),
                                one.size.1.to_m(),
                                other.at.1.to_m(),
                                other.size.1.to_m()
                            ),
                            "{}: {one:?} {other:?}",
                            sample.key
                        );
                    }
                }
            }
        }
        let pieces: usize = parts.blanks.iter().map(Blank::pieces).sum();
        assert_eq!(laid, pieces, "{}: every piece of every part", sample.key);
    }
}

#[test]
fn a_part_is_no_larger_than_what_it_is_cut_from_and_weighs_no_more() {
    for sample in &SAMPLES {
        let parts = parts(&sample.design()).expect("parts");
        for blank in &parts.blanks {
            let volume: f64 = blank.finished.iter().map(|size| size.to_m()).product();
            assert!(blank.volume_m3 > 0.0 && blank.volume_m3 <= volume + 1e-12, "{blank:?}");
            for (finished, rough) in blank.finished.iter().zip(&blank.rough) {
                assert!(rough >= finished, "{blank:?}");
            }
        }
        let all: f64 = parts.blanks.iter().filter_map(|blank| blank.mass).map(|m| m.to_kg()).sum();
        assert!((all / parts.weight.mass.to_kg() - 1.0).abs() < 1e-9, "{}", sample.key);
    }
}

#[test]
fn what_is_counted_is_what_the_strings_need() {
    let counts: Vec<_> =
        SAMPLES.iter().map(|sample| parts(&sample.design()).expect("parts").counts).collect();
    for (counts, strings) in counts.iter().zip([22, 26, 36, 47]) {
        assert_eq!(
            (counts.strings, counts.tuning_pins, counts.bridge_pins),
            (strings, strings, strings)
        );
        assert_eq!(counts.string_holes, strings);
    }
    assert_eq!([counts[0].levers, counts[1].levers, counts[2].levers], [0, 26, 36]);
    // The highest string of the pedal harp and its two lowest have no discs.
    assert_eq!((counts[3].levers, counts[3].discs), (0, 88));
}

#[test]
fn a_neck_that_is_glued_up_is_cut_in_its_layers() {
    let mut design = SAMPLES[2].design();
    let wood = ["", "sitka-spruce", ""].map(str::to_owned);
    design.geometry.neck.layers = wood
        .into_iter()
        .map(|wood| NeckLayerSpec { thickness_mm: 16.0, wood, ..NeckLayerSpec::default() })
        .collect();
    let parts = parts(&design).expect("parts");
    let names: Vec<String> =
        parts.blanks.iter().take(3).map(|blank| blank.name.to_string()).collect();
    assert_eq!(names, ["neck_1", "neck_2", "neck_3"]);
    for blank in &parts.blanks[..3] {
        assert!((blank.finished[2].to_mm() - 16.0).abs() < 1e-9, "{blank:?}");
    }
    assert_eq!(parts.blanks[1].wood, "sitka-spruce");
}

/// A layer whose grain goes up and down is as long along it as the others are wide, and the sheet says how it is turned.
#[test]
fn a_crossed_layer_is_cut_across() {
    let mut design = SAMPLES[2].design();
    design.geometry.neck.layers = [0.0, 90.0, 0.0]
        .map(|angle_deg| NeckLayerSpec {
            thickness_mm: 16.0,
            angle_deg,
            ..NeckLayerSpec::default()
        })
        .to_vec();
    let made = parts(&design).expect("parts");
    let [along, across] = [0, 1].map(|at| made.blanks[at].finished.map(Length::to_mm));
    assert!(along[0] > 2.0 * along[1], "{along:?}");
    assert!((along[0] - across[1]).abs() < 1e-6 && (along[1] - across[0]).abs() < 1e-6);
    let said: Vec<String> = steps(&design, &made).into_iter().flat_map(|step| step.does).collect();
    assert!(said.iter().any(|line| line.contains("0°; 90°; 0°")), "{said:?}");
    let told = told(&made);
    assert!(told.iter().any(|line| line.contains("layers of the neck")), "{told:?}");
    assert!(!told.iter().any(|line| line.contains("layers whose grain crosses")), "{told:?}");
    // Loads finds it over its allowance, and so does whoever looks at the parts.
    assert_eq!(told.first(), made.over.as_ref());
    assert!(made.over.expect("a finding").contains("neck"));
}

#[test]
fn the_table_has_a_row_for_every_part_and_is_the_same_in_every_language() {
    for sample in &SAMPLES {
        let design = sample.design();
        let text = csv(&design).expect("a table");
        let tables: Vec<Vec<&str>> =
            text.split("\n\n").map(|table| table.lines().collect()).collect();
        assert_eq!(tables.len(), 5);
        for table in &tables {
            let columns = table[0].split(',').count();
            assert!(table.iter().all(|row| row.split(',').count() == columns), "{table:?}");
        }
        assert_eq!(tables[0].len() - 1, parts(&design).expect("parts").blanks.len());
        let said = in_language(Language::German, || csv(&design)).expect("a table");
        assert_eq!(said, text);
    }
}

/// Every part with its sizes, in pages that are full at most, in every language.
#[test]
fn the_paper_tells_every_part_and_keeps_to_its_pages() {
    for sample in &SAMPLES {
        let design = sample.design();
        for language in [Language::English, Language::German, Language::French] {
            for paper in [Paper::A4, Paper::Letter] {
                let (sheet, count) = in_language(language, || {
                    let parts = parts(&design).expect("parts");
                    (cutting(&design, &parts, paper), parts.blanks.len())
                });
                let blocks = || sheet.pages.iter().flat_map(|page| &page.blocks);
                let mut rows = blocks().filter_map(|block| match block {
                    Block::Table(table) => Some(table.rows.len()),
                    _ => None,
                });
                assert!(rows.by_ref().sum::<usize>() > count, "{}", sample.key);
                assert!(blocks().any(|block| matches!(block, Block::Caution(_))));
                assert!(sheet.pages.len() <= 5, "{}: {} pages", sample.key, sheet.pages.len());
                let width = paper.inside_mm().0;
                let lines = blocks().filter_map(|block| match block {
                    Block::Legend(lines) => Some(lines),
                    _ => None,
                });
                for line in lines.flatten() {
                    assert!(width_mm(line, TYPE_PT) <= width, "{line}");
                }
                let page = in_language(language, || html(&sheet));
                assert!(!page.contains("NaN"), "{}", sample.key);
            }
        }
    }
}

#[test]
fn the_command_line_cuts_a_design_and_says_why_it_cannot_cut_a_table() {
    let sample = &SAMPLES[2];
    let table = cut(sample.json, false).expect("a table");
    assert!(table.starts_with("part,wood,strips,layers,finished_length_mm,"), "{table}");
    let told = cut_told(sample.json, false).expect("sentences");
    assert!(told.last().expect("one").starts_with("Not looked at:"), "{told:?}");
    assert!(told.iter().all(|line| line.ends_with('.') && !line.contains('{')), "{told:?}");
    let why = cut("note,length_mm\nC4,400\nD4,350\nE4,310\nF4,290\n", false);
    assert_eq!(why.map_err(|why| why.len()), Err(1));
}

#[test]
fn braces_are_named_by_their_numbers_and_planks_counted_before_their_bound() {
    let design = SAMPLES[2].design();
    let mut made = parts(&design).expect("parts");
    let nest = &mut made.nests[0];
    // Another number than that of the planks, so that each is told by its place.
    nest.at_least = 0;
    let (count, long, wide) = (nest.boards.len(), nest.size.0.to_mm(), nest.size.1.to_mm());
    let page = html(&cutting(&design, &made, Paper::A4));
    let told = format!("{count} of {long:.0} × {wide:.0} mm; at least 0");
    assert!(page.contains(&told), "{told}");
    for name in ["side brace 1, strings’ side (", "side brace 2, other side (", "back brace 1 ("]
    {
        assert!(page.contains(name), "{name}");
    }
}
