//! The design report and the papers of the views, of the samples: what stands on them, and that every page holds what
//! is laid on it.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use stringloft::design::advice::caution;
use stringloft::design::compare::compare;
use stringloft::design::document::Design;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::figure::Figure;
use stringloft::papers::card::card;
use stringloft::papers::html::html;
use stringloft::papers::layout::{
    FACT_GAP_BELOW_MM, FOOT_MM, GAP_MM, LINE_MM, TABLE_HEAD_MM, TITLE_MM, TITLES_PT_MM,
    report_columns, report_widths, row_mm,
};
use stringloft::papers::report::{self, Compared, Given};
use stringloft::papers::sheet::{Block, Paper, Sheet, TableKind};

const PAPERS: [Paper; 2] = [Paper::A4, Paper::Letter];
const TODAY: &str = "3 May 2031";

/// A design of an invented workshop, with what follows.
struct Made {
    design: Design,
    resolved: Resolved,
    analysis: Analysis,
}

impl Made {
    fn of(mut design: Design) -> Self {
        design.title = "Linnet".to_owned();
        design.maker = "Tallow Lane Workshop".to_owned();
        design.client = "A. Moorcroft".to_owned();
        design.date = "12 March 2031".to_owned();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        Self { design, resolved, analysis }
    }

    fn given(&self) -> Given<'_> {
        let Self { design, resolved, analysis } = self;
        Given { design, resolved, analysis, borne: None, today: TODAY }
    }
}

/// Everything that is read on a sheet, block after block.
fn words(sheet: &Sheet) -> String {
    let mut out = Vec::new();
    for block in sheet.pages.iter().flat_map(|page| &page.blocks) {
        match block {
            Block::Heading(heading) => {
                out.push(format!("{} ({})", heading.title.join(" "), heading.kind));
                let facts = heading.facts.iter();
                out.extend(facts.map(|fact| format!("{}: {}", fact.label, fact.lines.join(" "))));
            }
            Block::Title(words) | Block::Running(words) => out.push(words.clone()),
            Block::Table(table) => {
                for row in &table.rows {
                    let cells = row.cells.iter().map(|lines| lines.join(" "));
                    out.push(cells.collect::<Vec<_>>().join(" | "));
                }
            }
            Block::Legend(lines) | Block::Remarks(lines) | Block::Caution(lines) => {
                out.push(lines.join(" "));
            }
            Block::Figure(figure) => out.push(format!("[{}]", figure.label)),
            Block::Closing(_) => {}
        }
    }
    out.join("\n")
}

fn tables(sheet: &Sheet, kind: TableKind) -> usize {
    let blocks = sheet.pages.iter().flat_map(|page| &page.blocks);
    let rows = blocks.filter_map(|block| match block {
        Block::Table(table) if table.kind == kind => Some(table.rows.len()),
        _ => None,
    });
    rows.sum()
}

/// The height that a picture claims, from its own attribute.
fn picture_mm(svg: &str) -> f64 {
    let at = svg.find("height=\"").unwrap() + 8;
    svg[at..].split_once("mm\"").unwrap().0.parse().unwrap()
}

/// How high the blocks of every page stand together, as the style sheet sets them.
fn heights_mm(sheet: &Sheet) -> Vec<f64> {
    let lines = |count: usize| LINE_MM * f64::from(u32::try_from(count).unwrap());
    let block = |block: &Block| match block {
        Block::Heading(heading) => {
            let title = TITLES_PT_MM[usize::from(heading.long_title)].1;
            let rows = heading.facts.chunks(heading.in_a_row).map(|row| {
                let most = row.iter().map(|fact| fact.lines.len()).max().unwrap();
                lines(1 + most) + FACT_GAP_BELOW_MM
            });
            title * f64::from(u32::try_from(heading.title.len()).unwrap())
                + 1.0
                + rows.sum::<f64>()
                + GAP_MM
        }
        Block::Running(_) => 5.0 + GAP_MM,
        Block::Title(_) => TITLE_MM,
        Block::Table(table) => {
            let rows = table.rows.iter().map(|row| row_mm(row, table.spacing));
            TABLE_HEAD_MM + rows.sum::<f64>() + GAP_MM
        }
        Block::Legend(text) | Block::Remarks(text) | Block::Caution(text) => {
            lines(text.len()) + GAP_MM
        }
        Block::Figure(figure) => picture_mm(&figure.svg) + GAP_MM,
        Block::Closing(_) => 0.0,
    };
    sheet.pages.iter().map(|page| page.blocks.iter().map(block).sum()).collect()
}

#[test]
fn a_report_says_everything_about_the_harp() {
    for sample in SAMPLES {
        let made = Made::of(sample.design());
        for paper in PAPERS {
            let sheet = report::report(&made.given(), paper);
            let text = words(&sheet);
            let count = made.design.strings.len();
            assert_eq!(tables(&sheet, TableKind::Figures), count, "every string once");
            for part in [
                "Linnet (Design report)",
                "maker: Tallow Lane Workshop",
                "made for: A. Moorcroft",
                "date: 12 March 2031",
                "design mark: ",
                "Total tension ",
                "String chart",
                "Curves, bass at the left",
                "[Curves across the compass: Vibrating length",
                "[Drawing of the harp from the side]",
                "Loads, estimated",
                "Soundboard with its string rib | ",
                "Forces, estimated",
                "Assumptions about the frame",
                "Findings",
                "Sources of the numbers",
                "Density ",
                "Printed on 3 May 2031",
            ] {
                assert!(text.contains(part), "{}: {part}\n{text}", paper.name());
            }
            // Beside the summary and beside the loads.
            assert_eq!(text.matches(caution()).count(), 2);
            assert!(sheet.pages.len() >= 4 && sheet.pages.len() <= 9, "{}", sheet.pages.len());
        }
    }
}

#[test]
fn every_finding_stands_in_the_report() {
    let mut design = SAMPLES[0].design();
    design.strings[3].length = "900".to_owned();
    design.strings[5].length = "about a foot".to_owned();
    let made = Made::of(design);
    let text = words(&report::report(&made.given(), Paper::A4));
    assert!(!made.analysis.findings.is_empty());
    assert!(text.contains("Serious. String 4"), "{text}");
    assert!(text.contains("String 6: ") && text.contains("about a foot"), "{text}");
}

#[test]
fn no_page_holds_more_than_its_height() {
    for sample in SAMPLES {
        let made = Made::of(sample.design());
        let given = made.given();
        let found = compare(&made.design, &SAMPLES[0].design());
        let curves = [Figure::Tension, Figure::Length];
        let names = ["then", "now"];
        let compared = Compared { names, found: &found, curves: Some(&curves) };
        for paper in PAPERS {
            for sheet in [
                report::report(&given, paper),
                report::chart(&given, &curves, paper),
                report::drawing(&given, "measures", paper),
                report::comparison(&given, &compared, paper),
            ] {
                let room = paper.inside_mm().1 - FOOT_MM;
                for (number, high) in heights_mm(&sheet).into_iter().enumerate() {
                    let page = number + 1;
                    assert!(high <= room, "{}, page {page}: {high} of {room}", sheet.title);
                }
            }
        }
    }
}

#[test]
fn the_papers_of_the_views_have_title_date_and_caution() {
    let made = Made::of(SAMPLES[1].design());
    let given = made.given();
    let found = compare(&SAMPLES[0].design(), &made.design);
    let compared = Compared { names: ["first draft", "now"], found: &found, curves: None };
    for (sheet, own) in [
        (report::chart(&given, &[Figure::Tension], Paper::A4), "[Curves across the compass: "),
        (report::drawing(&given, "load-use", Paper::A4), "[Drawing of the harp"),
        (report::comparison(&given, &compared, Paper::A4), "Before: first draft. After: now."),
    ] {
        let text = words(&sheet);
        for part in ["Linnet (", "date: 12 March 2031", "Printed on 3 May 2031", caution(), own] {
            assert!(text.contains(part), "{part}\n{text}");
        }
    }
}

#[test]
fn what_differs_stands_before_and_after() {
    let before = SAMPLES[0].design();
    let mut after = before.clone();
    after.strings[2].length = "333".to_owned();
    let made = Made::of(after.clone());
    let found = compare(&before, &after);
    let compared = Compared { names: ["then", "now"], found: &found, curves: None };
    let sheet = report::comparison(&made.given(), &compared, Paper::Letter);
    assert_eq!(tables(&sheet, TableKind::Compared), 1);
    assert!(words(&sheet).contains("→ 333 |"), "{}", words(&sheet));
}

#[test]
fn no_strings_are_a_report_too() {
    let made = Made::of(Design::default());
    let text = words(&report::report(&made.given(), Paper::A4));
    assert!(text.contains("There are no strings yet."), "{text}");
    assert!(text.contains("There is nothing to draw yet"), "{text}");
}

#[test]
fn hostile_texts_stay_texts() {
    let evil = "\"><script>alert('x')</script>\u{202e}&\u{0}";
    let mut made = Made::of(SAMPLES[0].design());
    evil.clone_into(&mut made.design.title);
    evil.clone_into(&mut made.design.strings[0].note);
    evil.clone_into(&mut made.design.strings[1].make_up.material);
    made.resolved = resolve(&made.design);
    made.analysis = analyse(&made.resolved.harp);
    let html = html(&report::report(&made.given(), Paper::A4));
    assert!(!html.contains("<script") && !html.contains('\u{202e}') && !html.contains('\u{0}'));
    assert!(html.contains("&lt;script&gt;"));
    // The page allows no style in the markup, and the pictures have their colours as attributes.
    assert!(!html.contains("style=") && !html.contains("<style"));
}

#[test]
fn the_style_sheet_has_the_widths_of_the_layout() {
    let css = include_str!("../style/print.css");
    for (kind, class) in [
        (TableKind::Figures, "figures"),
        (TableKind::Compared, "compared"),
        (TableKind::Loads, "loads"),
        (TableKind::Forces, "forces"),
        (TableKind::Pairs, "pairs"),
    ] {
        let columns = report_columns(kind).iter().map(|mm| match mm {
            0.0 => "minmax(0, 1fr)".to_owned(),
            mm => format!("{mm}mm"),
        });
        let rule = format!(
            "card-table--{class} {{ --columns: {}; }}",
            columns.collect::<Vec<_>>().join(" ")
        );
        assert!(css.contains(&rule), "style/print.css lacks: {rule}");
        for paper in PAPERS {
            let widths = report_widths(kind, paper);
            assert!((widths.iter().sum::<f64>() - paper.inside_mm().0).abs() < 1e-9);
            assert!(widths.iter().all(|mm| *mm > 7.0));
        }
    }
}

/// The card says of the frame what the page says, where its sizes are known and there is room.
#[test]
fn the_card_says_what_leads_in_the_frame() {
    let made = Made::of(SAMPLES[2].design());
    let told = |made: &Made| words(&card(&made.design, &made.analysis, "", Paper::A4));
    let lead = "Frame, share of the design allowance: soundboard with its string rib: ";
    assert!(told(&made).contains(lead), "{}", told(&made));
    let mut design = SAMPLES[2].design();
    design.geometry = Design::default().geometry;
    assert!(!told(&Made::of(design)).contains("Frame, of"));
}
