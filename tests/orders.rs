//! The order list on paper, kept as the words that stand on it, and held to its measures; and the way from a
//! stock to an order.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use stringloft::design::document::{
    Allowances, Design, OrderSpec, SparesSpec, StockItem, StringSpec,
};
use stringloft::design::make_up_text;
use stringloft::design::order::{OrderList, order_list, remarks};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::stock::{StockList, embedded, starting_list};
use stringloft::engine::analysis::analyse;
use stringloft::papers::html::html;
use stringloft::papers::layout::{
    FOOT_MM, GAP_MM, LINE_MM, TABLE_HEAD_MM, TITLE_MM, order_widths, row_mm,
};
use stringloft::papers::order::order;
use stringloft::papers::sheet::{Block, Paper, Sheet};

fn list(design: &Design) -> OrderList {
    order_list(design, &analyse(&resolve(design).harp))
}

fn sheet(design: &Design, paper: Paper) -> Sheet {
    order(design, &list(design), paper)
}

/// Five strings from two suppliers, one of them sold by nobody.
fn small() -> Design {
    let string = |note: &str, mm: &str, make_up: &str| StringSpec {
        note: note.to_owned(),
        length: mm.to_owned(),
        make_up: make_up_text::read(make_up).unwrap(),
        ..StringSpec::default()
    };
    let item = |make_up: &str, supplier: &str, code: &str| StockItem {
        make_up: make_up.into(),
        supplier: supplier.to_owned(),
        code: code.to_owned(),
        pack_mm: Some(2_000.0),
        price: Some(4.5),
        currency: "EUR".to_owned(),
        ..StockItem::default()
    };
    Design {
        title: "Wren".to_owned(),
        maker: "Tallow Lane Workshop".to_owned(),
        date: "12 March 2031".to_owned(),
        allowances: Allowances {
            after_length_mm: 50.0,
            turns: 0.0,
            pin_mm: 5.0,
            knot_mm: 50.0,
            tail_mm: 100.0,
        },
        order: OrderSpec {
            spares: SparesSpec::OneOfEachItem,
            remarks: "Please send the gut unvarnished.".to_owned(),
            ..OrderSpec::default()
        },
        strings: vec![
            string("C5", "300", "nylon 0.81"),
            string("B4", "350", "nylon 0.81"),
            string("A4", "400", "gut 0.90"),
            string("G4", "450", "nylon 3.33"),
            string("C3", "900", "steel 0.50 + bronze 0.25"),
        ],
        stock: vec![
            item("nylon 0.81", "Reedmarsh Strings", "N-32"),
            StockItem {
                price: None,
                remark: "unvarnished".to_owned(),
                ..item("gut 0.90", "Reedmarsh Strings", "G-90")
            },
            StockItem {
                single: true,
                currency: "GBP".to_owned(),
                price: Some(7.0),
                ..item("steel 0.50 + bronze 0.25", "Old Weir Wire", "W-1")
            },
        ],
        ..Design::default()
    }
}

/// A sample with a price for every usual gauge.
fn large() -> Design {
    let mut list = StockList { currency: "EUR".to_owned(), ..starting_list() };
    for (index, item) in list.items.iter_mut().enumerate() {
        item.price = Some(3.0);
        item.pack_mm = Some(4_000.0);
        item.supplier = format!("Supplier {}", index % 7);
    }
    let mut design = SAMPLES[3].design();
    design.order.spares = SparesSpec::OneOfEachString;
    design.stock = embedded(&design, &[&list]);
    design
}

/// A line for each row, its cells parted by bars.
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
                let heads = table.columns.iter().map(|column| column.head.join(" "));
                out.push(heads.map(|head| head.trim().to_owned()).collect::<Vec<_>>().join(" | "));
                for row in &table.rows {
                    let cells = row.cells.iter().map(|lines| lines.join(" "));
                    out.push(cells.collect::<Vec<_>>().join(" | "));
                }
            }
            Block::Legend(lines) | Block::Remarks(lines) => out.push(lines.join(" ")),
            Block::Closing(_) | Block::Caution(_) | Block::Figure(_) => {}
        }
    }
    out.join("\n")
}

#[test]
fn the_order_of_a_small_harp_reads() {
    let heads = "order code | make-up core first, mm | strings no.: cut to, mm | sold as | pieces | total m | packs | price";
    let kept = format!(
        "\
Wren (Order list)
maker: Tallow Lane Workshop
date: 12 March 2031
serial number: —
strings and spares: 9
Reedmarsh Strings
{heads}
N-32 | nylon 0.81 | 1: 500, 2: 550, spare: 550 | coil of 2 m | 3 | 1.60 | 1 | 4.50 EUR
G-90 | gut 0.90 (unvarnished) | 3: 600, spare: 600 | coil of 2 m | 2 | 1.20 | 1 | —
Sum: 2 lines, 1 without a price: at least 4.50 EUR.
Old Weir Wire
{heads}
W-1 | steel 0.50 + bronze 0.25 | 5: 1100, spare: 1100 | single, 2 m | 2 | 2.20 | 2 | 14.00 GBP
Sum: 1 line: 14.00 GBP.
Also needed, not in the stock list
{heads}
— | nylon 3.33 | 4: 650, spare: 650 | — | 2 | 1.30 | — | —
Remarks: Please send the gut unvarnished."
    );
    assert_eq!(words(&sheet(&small(), Paper::A4)), kept);
}

/// What the maker has still to look after is told on the page.
#[test]
fn the_sheet_tells_the_supplier_no_notes_of_the_maker() {
    let mut design = small();
    design.stock[0].pack_mm = None;
    design.stock[1].sold_out = true;
    design.stock[2].lowest = "C4".to_owned();
    design.stock[2].make_up = "steel 0.502 + bronze 0.25".into();
    design.strings[3].make_up = make_up_text::read("").unwrap();
    let list = list(&design);
    let notes: Vec<String> = list.lines.iter().flat_map(remarks).collect();
    assert_eq!(notes.len(), 5, "{notes:?}");
    let words = words(&order(&design, &list, Paper::A4));
    for note in notes.iter().map(String::as_str).chain(["fill in", "choose", "not known"]) {
        assert!(!words.contains(note), "{note} in\n{words}");
    }
    assert!(words.contains("unvarnished"), "the remark of an item is for the supplier");
    assert!(!words.contains(" 4: "), "{words}");
}

#[test]
fn every_item_stands_once_and_no_page_is_too_full() {
    for paper in Paper::ALL {
        for design in [small(), large(), Design::default()] {
            let list = list(&design);
            let sheet = order(&design, &list, paper);
            let mut codes = 0;
            let count = sheet.pages.len();
            for (index, page) in sheet.pages.iter().enumerate() {
                let number = if count > 1 {
                    format!("page {} of {count}", index + 1)
                } else {
                    String::new()
                };
                assert_eq!(page.page_number, number);
                let lines = |lines: &Vec<String>| {
                    f64::from(u32::try_from(lines.len()).unwrap()) * LINE_MM + GAP_MM
                };
                let mut height = FOOT_MM;
                for block in &page.blocks {
                    height += match block {
                        Block::Title(_) => TITLE_MM,
                        Block::Table(table) => {
                            codes += table.rows.len();
                            let widths = order_widths(paper);
                            assert!(table.rows.iter().all(|row| row.cells.len() == widths.len()));
                            let rows = table.rows.iter().map(|row| row_mm(row, table.spacing));
                            TABLE_HEAD_MM + GAP_MM + rows.sum::<f64>()
                        }
                        Block::Legend(text) | Block::Remarks(text) => lines(text),
                        _ => 6.5,
                    };
                }
                assert!(height <= paper.inside_mm().1, "{height} mm on {}", paper.name());
            }
            assert_eq!(codes, list.lines.len());
        }
    }
}

#[test]
fn the_table_has_no_marks_and_every_column_a_width() {
    let css = include_str!("../style/print.css");
    for paper in Paper::ALL {
        let widths = order_widths(paper);
        assert!((widths.iter().sum::<f64>() - paper.inside_mm().0).abs() < 1e-9);
        assert!(widths.iter().all(|width| *width >= 10.0), "{widths:?}");
        let column = |(index, mm): (usize, &f64)| match index {
            1 => "minmax(0, 1fr)".to_owned(),
            _ => format!("{mm}mm"),
        };
        let columns = widths.iter().enumerate().map(column).collect::<Vec<_>>().join(" ");
        let rule = format!("card-table--order {{ --columns: {columns}");
        assert!(css.contains(&rule), "style/print.css lacks: {rule}");
        let html = html(&sheet(&small(), paper));
        assert!(!html.contains("class=\"mark") && html.contains("<h2 class=\"card-subtitle\">"));
    }
}

#[test]
fn hostile_texts_stay_texts_and_end() {
    let evil = "\"><script>alert('x')</script>\u{202e}&\u{0}";
    let mut design = small();
    evil.clone_into(&mut design.title);
    evil.clone_into(&mut design.maker);
    design.order.remarks = evil.repeat(60);
    for (index, item) in design.stock.iter_mut().enumerate() {
        item.code = format!("{evil}{index}");
        evil.clone_into(&mut item.supplier);
        evil.clone_into(&mut item.currency);
        item.remark = "W".repeat(200);
    }
    for string in &mut design.strings[3..] {
        evil.clone_into(&mut string.make_up.material);
    }
    for paper in Paper::ALL {
        let html = html(&sheet(&design, paper));
        assert!(!html.contains("<script") && !html.contains('\u{202e}') && !html.contains('\u{0}'));
        assert!(!html.contains("style") && !html.contains("alert('"), "no style in the markup");
    }
    design.order.remarks = "long ".repeat(200_000);
    design.stock[0].supplier = "W".repeat(1_000_000);
    design.stock[0].make_up = format!("nylon 0.81{}", " ".repeat(100_000)).into();
    for paper in Paper::ALL {
        assert!(sheet(&design, paper).pages.len() <= 4, "{}", paper.name());
    }
}

/// The way of a maker who has a drawer of usual gauges: what the samples are made of is found in it, as far
/// as it is usual, and comes into the design.
#[test]
fn a_design_finds_its_strings_in_a_stock() {
    let design = large();
    let list = list(&design);
    assert!(!design.stock.is_empty() && design.stock.len() < 60);
    let listed: usize = list.lines.iter().map(|line| line.strings.len()).sum();
    assert_eq!(listed, design.strings.len());
    let outside = list.lines.iter().filter_map(|line| line.outside.as_ref());
    assert!(outside.map(ToString::to_string).all(|why| why.starts_with("no stock item is")));
}
