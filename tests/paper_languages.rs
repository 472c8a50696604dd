//! Card, order list, report and templates of the samples in every language and on every paper: no line is wider than its place, no
//! page fuller than it can be, and every sheet says which language it speaks.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use stringloft::design::document::{Design, LengthUnit, SparesSpec};
use stringloft::design::order::order_list;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::stock::{StockList, embedded, starting_list};
use stringloft::engine::analysis::analyse;
use stringloft::papers::card::card;
use stringloft::papers::html::html;
use stringloft::papers::layout::{
    CELL_PAD_MM, CODE_GAP_MM, CODE_WIDTHS_MM, FACT_GAP_BELOW_MM, FACT_GAP_MM, FOOT_MM, GAP_MM,
    LAST_PAD_MM, LINE_MM, STEP_GAP_MM, STEP_INDENT_MM, STEPS_GAP_MM, TABLE_HEAD_MM, TITLE_MM,
    TITLES_PT_MM, TYPE_PT, WORDS_FOR_CODE_MM, fact_widths, order_widths, report_widths, row_mm,
    widths,
};
use stringloft::papers::measure::{POINT_MM, width_mm, wrap};
use stringloft::papers::order::order;
use stringloft::papers::report::{self, Given};
use stringloft::papers::sheet::{Block, Closing, Heading, Paper, Sheet, Table, TableKind};
use stringloft::papers::template::tiling::{
    FOOT_MM as STRIP_MM, MARGIN_MM, SIDE_MM, TilePaper, Tiling,
};
use stringloft::papers::template::{dxf, harp, pdf, svg};
use stringloft::papers::tuning::tuning;
use stringloft::words::{Language, in_language, templates};

/// What `measure` adds for fonts a little wider than its table.
const FONT_ROOM: f64 = 1.08;
/// For the last digits of sums.
const EXACT_MM: f64 = 1e-6;

/// A sample of an invented workshop, with suppliers and prices, spares and findings.
fn design(sample: usize, unit: LengthUnit) -> Design {
    let mut design = SAMPLES[sample].design();
    design.title = "Linnet".to_owned();
    design.maker = "Tallow Lane Workshop".to_owned();
    design.serial = "17".to_owned();
    design.units.length = unit;
    design.order.spares = SparesSpec::OneOfEachString;
    // One string too long, and one that cannot be read.
    design.strings[3].length = "900".to_owned();
    design.strings[5].length = "about a foot".to_owned();
    let mut list = StockList { currency: "EUR".to_owned(), ..starting_list() };
    for (index, item) in list.items.iter_mut().enumerate() {
        item.price = (index % 5 != 0).then_some(3.0);
        item.pack_mm = Some(4_000.0);
        item.supplier = format!("Supplier {}", index % 4);
    }
    design.stock = embedded(&design, &[&list]);
    design
}

fn link(length: usize) -> String {
    "https://harp.example/#".chars().chain("QmZ0x-Ks_9aVtR7".chars().cycle()).take(length).collect()
}

/// The sheets of a design in the language of now.
fn sheets(design: &Design, paper: Paper) -> Vec<Sheet> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let mut sheets = vec![
        card(design, &analysis, &link(900), paper),
        order(design, &order_list(design, &analysis), paper),
    ];
    if paper != Paper::A5 {
        let given = Given {
            design,
            resolved: &resolved,
            analysis: &analysis,
            borne: None,
            today: "2031-05-03",
        };
        sheets.push(report::report(&given, paper));
        sheets.push(tuning(design, paper));
    }
    sheets
}

fn blocks(sheet: &Sheet) -> impl Iterator<Item = &Block> {
    sheet.pages.iter().flat_map(|page| &page.blocks)
}

/// Fails where a line is wider than its place.
fn within(line: &str, mm: f64, what: &str) {
    let wide = width_mm(line, TYPE_PT);
    assert!(wide <= mm + EXACT_MM, "{what}: “{line}” takes {wide:.1} of {mm:.1} mm");
}

fn table_fits(table: &Table, paper: Paper, unit: LengthUnit) {
    let columns = match table.kind {
        TableKind::Strings | TableKind::StringsWithInches => {
            widths(paper, unit, CODE_WIDTHS_MM[table.last_width])
        }
        TableKind::Order => order_widths(paper),
        kind => report_widths(kind, paper),
    };
    assert_eq!(columns.len(), table.columns.len());
    let last = columns.len() - 1;
    let room = |index: usize| {
        let before = if index == last { LAST_PAD_MM } else { CELL_PAD_MM };
        columns[index] - before - CELL_PAD_MM
    };
    for (index, column) in table.columns.iter().enumerate() {
        // A head is not broken into lines, so that it needs no room for wider fonts.
        column.head.iter().for_each(|line| within(line, FONT_ROOM * room(index), "a head"));
        for row in &table.rows {
            row.cells[index].iter().for_each(|line| within(line, room(index), "a cell"));
        }
    }
}

fn heading_fits(heading: &Heading, paper: Paper) {
    let columns = fact_widths(paper);
    for (fact, width) in heading.facts.iter().zip(columns.iter().cycle()) {
        within(fact.label, width - FACT_GAP_MM, "a label");
        fact.lines.iter().for_each(|line| within(line, width - FACT_GAP_MM, "a fact"));
    }
    // In spaced capitals beside the title.
    let (size, _) = TITLES_PT_MM[usize::from(heading.long_title)];
    let spaces = f64::from(u32::try_from(heading.kind.chars().count()).unwrap());
    let kind = width_mm(&heading.kind.to_uppercase(), TYPE_PT) + 0.06 * spaces * TYPE_PT * POINT_MM;
    for line in &heading.title {
        let wide = width_mm(line, size) + kind;
        assert!(wide <= paper.inside_mm().0, "{line} and {}: {wide} mm", heading.kind);
    }
}

/// How high the closing part of a card stands, as the style sheet sets it.
fn closing_mm(closing: &Closing, paper: Paper) -> f64 {
    let lines = |text: &str, mm: f64| {
        LINE_MM * f64::from(u32::try_from(wrap(text, mm, TYPE_PT, 999).len()).unwrap())
    };
    let side = closing.code.as_ref().map_or(WORDS_FOR_CODE_MM, |code| code.side_mm());
    let width = paper.inside_mm().0 - side - CODE_GAP_MM;
    let count = f64::from(u32::try_from(closing.steps.len()).unwrap());
    let column = (width - STEPS_GAP_MM * (count - 1.0)) / count - STEP_INDENT_MM;
    let steps = |steps: &Vec<String>| {
        steps.iter().map(|step| lines(step, column) + STEP_GAP_MM).sum::<f64>()
    };
    let steps = closing.steps.iter().map(steps).fold(0.0, f64::max);
    let cautions = format!("{} {}", closing.cautions_title, closing.cautions);
    let texts = 1.5 + LINE_MM + 1.0 + steps + 1.0 + lines(&cautions, width);
    let code = match &closing.code {
        Ok(code) => 1.5 + code.side_mm() + lines(closing.caption, code.side_mm()),
        Err(words) => 1.5 + lines(words, WORDS_FOR_CODE_MM),
    };
    texts.max(code)
}

/// How high a part of a page stands, as the style sheet sets it.
fn high_mm(block: &Block, paper: Paper) -> f64 {
    let lines = |count: usize| LINE_MM * f64::from(u32::try_from(count).unwrap());
    match block {
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
        Block::Figure(figure) => {
            let at = figure.svg.find("height=\"").unwrap() + 8;
            let high: f64 = figure.svg[at..].split_once("mm\"").unwrap().0.parse().unwrap();
            high + GAP_MM
        }
        Block::Closing(closing) => closing_mm(closing, paper),
    }
}

fn fits(sheet: &Sheet, unit: LengthUnit) {
    let paper = sheet.paper;
    let (wide, high) = paper.inside_mm();
    for block in blocks(sheet) {
        match block {
            Block::Heading(heading) => heading_fits(heading, paper),
            Block::Table(table) => table_fits(table, paper, unit),
            Block::Running(line) | Block::Title(line) => within(line, wide, "a title"),
            Block::Legend(text) | Block::Remarks(text) | Block::Caution(text) => {
                text.iter().for_each(|line| within(line, wide, "a line"));
            }
            Block::Figure(_) | Block::Closing(_) => {}
        }
    }
    let foot = if sheet.pages.len() > 1 { FOOT_MM } else { 0.0 };
    for (index, page) in sheet.pages.iter().enumerate() {
        let taken: f64 = page.blocks.iter().map(|block| high_mm(block, paper)).sum();
        assert!(
            taken <= high - foot,
            "{}, page {}: {taken} of {} mm",
            sheet.title,
            index + 1,
            high - foot
        );
    }
}

#[test]
fn papers_hold_what_they_say_in_every_language() {
    for sample in 0..SAMPLES.len() {
        let unit = if sample % 2 == 0 { LengthUnit::Mm } else { LengthUnit::Inch };
        let design = design(sample, unit);
        for paper in Paper::ALL {
            let english: Vec<usize> =
                sheets(&design, paper).iter().map(|sheet| sheet.pages.len()).collect();
            for language in Language::ALL {
                let sheets = in_language(language, || sheets(&design, paper));
                for (sheet, pages) in sheets.iter().zip(&english) {
                    fits(sheet, unit);
                    let most = if language == Language::English { *pages } else { pages + 1 };
                    assert!(sheet.pages.len() <= most, "{}: {}", sheet.title, sheet.pages.len());
                    assert_eq!(sheet.language, language);
                    let lang = format!("<article class=\"sheet\" lang=\"{}\"", language.code());
                    assert!(html(sheet).starts_with(&lang));
                }
            }
        }
    }
}

/// Where a harp is sound, a card in another language takes no page more than the English one; on A5 it may take one.
#[test]
fn a_card_takes_as_many_pages_in_every_language() {
    for sample in SAMPLES {
        let design = sample.design();
        for paper in Paper::ALL {
            let pages = |language| {
                let made = || card(&design, &analyse(&resolve(&design).harp), &link(900), paper);
                in_language(language, made).pages.len()
            };
            let english = pages(Language::English);
            for language in [Language::German, Language::French] {
                let more = usize::from(paper == Paper::A5);
                let most = english + more;
                assert!(pages(language) <= most, "{}, {}: {language:?}", sample.key, paper.name());
            }
        }
    }
}

#[test]
fn numbers_have_the_decimal_sign_of_the_paper() {
    let design = SAMPLES[0].design();
    let first = |language| {
        let made = || card(&design, &analyse(&resolve(&design).harp), "", Paper::A4);
        let sheet = in_language(language, made);
        let table = blocks(&sheet).find_map(|block| match block {
            Block::Table(table) => Some(table.rows[0].cells[6].concat()),
            _ => None,
        });
        table.unwrap()
    };
    let english = first(Language::English);
    assert!(english.contains('.'), "{english}");
    assert_eq!(first(Language::German), english.replace('.', ","));
    assert_eq!(first(Language::French), english.replace('.', ","));
}

/// Templates of every sample are written in every language, each in the letters that its format has.
#[test]
fn templates_are_written_in_every_language() {
    for sample in SAMPLES {
        let design = sample.design();
        let mut drawings = Vec::new();
        for language in Language::ALL {
            in_language(language, || {
                let resolved = resolve(&design);
                let analysis = analyse(&resolved.harp);
                let template = harp::template(&design, &resolved, &analysis);
                assert!(dxf::write(&template).unwrap().is_ascii(), "{language:?}");
                assert!(svg::write(&template).unwrap().contains(templates::UNIT.said()));
                for paper in [TilePaper::A4, TilePaper::Letter] {
                    let file =
                        pdf::tiled(&template, Tiling { paper, ..Tiling::default() }).unwrap();
                    let lang = format!("/Lang ({})", language.code());
                    assert!(file.windows(lang.len()).any(|part| part == lang.as_bytes()), "{lang}");
                    // What stands at a seam, from end to end of the shorter side.
                    let (wide, high) = paper.size_mm();
                    let frame = (wide - 2.0 * MARGIN_MM - SIDE_MM).min(high - STRIP_MM);
                    within(&templates::edge(&"AA12"), frame, "a seam");
                }
                let rows = harp::schedule(&design, &resolved, &analysis).rows;
                drawings.push((template.layers.len(), rows.len(), template.notes.join(" ")));
            });
        }
        let [english, german, french] = &drawings[..] else { panic!("three languages") };
        assert_eq!((english.0, english.1), (german.0, german.1), "{}", sample.key);
        assert_eq!((english.0, english.1), (french.0, french.1), "{}", sample.key);
        assert!(english.2 != german.2 && german.2 != french.2 && english.2 != french.2);
    }
}
