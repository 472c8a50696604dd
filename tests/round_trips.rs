//! What is written is read again as it was: design files, links, the code on the card, tables, stock lists, the
//! clipboard. Designs are drawn whole, with odd texts in every free field, always the same ones.
//!
//! `DRAWN=5000 cargo test --test round_trips` draws so many for each. A case that fails is made smaller before it is
//! shown.

use std::cell::Cell;
use std::env;

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestError, TestRng, TestRunner};

use stringloft::design::document::{Design, DrivesSpec, MechanismKind, StockItem};
use stringloft::design::library::embed;
use stringloft::design::link::{self, LinkError};
use stringloft::design::resolve::resolve;
use stringloft::design::stock::{self, table as stock_table};
use stringloft::design::{make_up_text, persist, table};
use stringloft::engine::analysis::analyse;
use stringloft::engine::units::Frequency;
use stringloft::papers::code::{Code, QUIET_MODULES};

#[path = "round_trips/drawn.rs"]
mod drawn;
#[path = "round_trips/texts.rs"]
mod texts;

/// Holds what is drawn to a check, as often as asked or as `DRAWN` says.
fn each<T: std::fmt::Debug>(
    cases: u32,
    drawn: impl Strategy<Value = T>,
    check: impl Fn(T) -> Result<(), TestCaseError>,
) {
    let cases = env::var("DRAWN").ok().and_then(|count| count.parse().ok()).unwrap_or(cases);
    let config =
        Config { cases, failure_persistence: None, max_shrink_iters: 4_000, ..Config::default() };
    let mut runner =
        TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha));
    if let Err(why) = runner.run(&drawn, check) {
        // The input may be long, so that its reason comes first.
        let TestError::Fail(reason, input) = why else { panic!("{why}") };
        panic!("{reason}\nfor {input:?}");
    }
}

#[test]
fn a_design_comes_back_from_its_file() {
    each(60, drawn::design(6, 47), |design| {
        let written = persist::write(&design);
        let again = persist::read(&written);
        prop_assert_eq!(again.as_ref(), Ok(&design));
        prop_assert_eq!(persist::write(&design), written);
        Ok(())
    });
}

#[test]
fn a_design_comes_back_from_its_link_or_is_too_large_for_one() {
    let (whole, all) = (Cell::new(0), Cell::new(0));
    each(60, drawn::design(3, 47), |design| {
        let bare = Design { versions: Vec::new(), ..design.clone() };
        all.set(all.get() + 1);
        match link::write(&design) {
            Ok(fragment) => {
                let again = link::read(&format!("https://example.org/workshop/#{fragment}"));
                prop_assert_eq!(again.as_ref(), Ok(&bare));
                prop_assert_eq!(
                    link::check_sum(&bare),
                    link::check_sum(&design),
                    "the mark on the card"
                );
                whole.set(whole.get() + 1);
            }
            Err(why) => prop_assert_eq!(why, LinkError::TooLarge),
        }
        for version in 0..design.versions.len() {
            match link::write_with_version(&design, version) {
                Ok(fragment) => {
                    let versions = vec![design.versions[version].clone()];
                    let with_one = Design { versions, ..design.clone() };
                    prop_assert_eq!(link::read(&fragment), Ok(with_one));
                }
                Err(why) => prop_assert_eq!(why, LinkError::TwoTooLarge),
            }
        }
        Ok(())
    });
    assert!(whole.get() * 10 > all.get() * 9, "only {} of {} fit a link", whole.get(), all.get());
}

#[test]
fn a_design_comes_back_from_the_code_on_its_card() {
    let read = Cell::new(0);
    each(24, drawn::design(1, 8), |design| {
        // A code holds few letters, so most of the design is as usual.
        let Design { title, client, mut strings, .. } = design;
        strings.truncate(4);
        let mut design = Design { title, client, strings, ..Design::default() };
        embed(&mut design);
        let Ok(fragment) = link::write(&design) else { return Ok(()) };
        let address = format!("https://example.org/#{fragment}");
        // One that no code can hold is told on the card.
        let Some(code) = Code::of(&address) else { return Ok(()) };
        let side = u32::try_from(4 * (code.modules + 2 * QUIET_MODULES)).expect("small");
        let picture = image::GrayImage::from_fn(side, side, |x, y| {
            let module = |at: u32| usize::try_from(at / 4).ok()?.checked_sub(QUIET_MODULES);
            let is_dark =
                module(x).zip(module(y)).is_some_and(|(column, row)| code.is_dark(column, row));
            image::Luma([if is_dark { 0 } else { 255 }])
        });
        let mut picture = rqrr::PreparedImage::prepare(picture);
        let grids = picture.detect_grids();
        prop_assert_eq!(grids.len(), 1);
        let (_, scanned) = grids[0].decode().map_err(|why| TestCaseError::fail(why.to_string()))?;
        prop_assert_eq!(link::read(&scanned), Ok(design));
        read.set(read.get() + 1);
        Ok(())
    });
    assert!(read.get() > 12, "only {} codes were read", read.get());
}

/// Whether two tables are the same but for the last digits of their numbers: which pitch and temperament their
/// frequencies are of may be found by another way of counting.
fn alike(one: &str, other: &str) -> bool {
    let same = |one: &str, other: &str| match (one.parse::<f64>(), other.parse::<f64>()) {
        (Ok(one), Ok(other)) if one.is_finite() => (one - other).abs() <= 1e-9 * one.abs(),
        _ => false,
    };
    let same = |one: &str, other: &str| one == other || same(one, other);
    let (one, other) = (one.split([',', '\n']), other.split([',', '\n']));
    one.clone().count() == other.clone().count()
        && one.zip(other).all(|(one, other)| same(one, other))
}

/// The table has the strings, and none of the settings: with those of the design all its figures come back.
#[test]
fn the_strings_come_back_from_the_table_of_figures() {
    each(60, drawn::design(0, 40), |design| {
        // What the strings cost comes from the stock, which the table has not; and cells are trimmed.
        let mut design = Design { stock: Vec::new(), ..design };
        // A curve that is drawn anywhere makes lengths that nobody could type.
        design.geometry.drives = DrivesSpec::Lengths;
        for string in &mut design.strings {
            string.order_code = string.order_code.trim().to_owned();
        }
        let analysis = analyse(&resolve(&design).harp);
        // Of frequencies that are all whole nobody can tell whether they were rounded.
        let is_full = |hz: Frequency| hz.to_hz().to_string().len() > 12;
        if !analysis.strings.iter().any(|string| string.frequency.is_ok_and(is_full)) {
            return Ok(());
        }
        let written = table::write(&design, &analysis);
        let read = table::read(&written);
        prop_assert!(read.is_ok(), "{:?}", read.err());
        // Levers and discs are told by their figures, to a harp that has none.
        let mut bare = Design { strings: Vec::new(), ..design.clone() };
        bare.mechanism.kind = MechanismKind::None;
        let again = read.expect("just seen").into_design(&bare);
        for (one, other) in design.strings.iter().zip(&again.strings) {
            prop_assert_eq!(&one.make_up, &other.make_up);
            prop_assert_eq!(&one.order_code, &other.order_code);
        }
        let rewritten = table::write(&again, &analyse(&resolve(&again).harp));
        prop_assert!(alike(&rewritten, &written), "{}\nand not\n{}", rewritten, written);
        Ok(())
    });
}

#[test]
fn a_make_up_comes_back_from_its_line() {
    each(1_000, drawn::make_up(10), |make_up| {
        prop_assert_eq!(make_up_text::read(&make_up_text::write(&make_up)), Ok(make_up));
        Ok(())
    });
}

#[test]
fn a_stock_list_comes_back_from_its_file() {
    each(60, drawn::stock_list(), |list| {
        prop_assert_eq!(stock::read(&stock::write(&list)), Ok(list));
        Ok(())
    });
}

#[test]
fn stock_items_come_back_from_their_table() {
    each(100, vec(drawn::item(0), 1..40), |items| {
        let mut list = stock::StockList { items, ..stock::StockList::default() };
        stock::tidy(&mut list);
        // A table trims its cells, holds no keys, and has one word for a bundle of one.
        let trimmed = |text: &str| text.trim().to_owned();
        let expected: Vec<StockItem> = list
            .items
            .iter()
            .map(|item| StockItem {
                key: 0,
                code: trimmed(&item.code),
                supplier: trimmed(&item.supplier),
                currency: trimmed(&item.currency),
                remark: trimmed(&item.remark),
                bundle: if item.single && item.bundle > 1 { item.bundle } else { 0 },
                ..item.clone()
            })
            .collect();
        let text = stock_table::export(&list.items);
        let columns =
            stock_table::propose(&text).map_err(|why| TestCaseError::fail(why.to_string()))?;
        let import = stock_table::import(&text, &columns, "", &[]);
        prop_assert_eq!(import.bad, vec![]);
        prop_assert_eq!(import.items, expected);
        Ok(())
    });
}

#[test]
fn a_block_of_cells_comes_back_from_the_clipboard() {
    each(1_000, vec(vec(texts::text(), 1..6), 1..12), |block| {
        // A cell has the line ends of this program.
        let plain = |cell: &String| cell.replace("\r\n", "\n").replace('\r', "\n");
        let block: Vec<Vec<String>> =
            block.iter().map(|row| row.iter().map(plain).collect()).collect();
        prop_assert_eq!(table::block_from_tsv(&table::block_to_tsv(&block)), Ok(block));
        Ok(())
    });
}
