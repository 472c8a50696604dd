//! Tests of the order list.

use super::*;
use crate::design::document::{Allowances, MakeUpSpec, StringSpec};
use crate::design::make_up_text;
use crate::design::resolve::resolve;
use crate::design::settings::Setting;
use crate::design::stock::{prices, table};
use crate::engine::analysis::analyse;
use crate::testing::assert_close;

/// No allowance but the knot, so that a string is cut 100 mm longer than it sounds.
fn bare() -> Allowances {
    Allowances { after_length_mm: 0.0, turns: 0.0, pin_mm: 0.0, knot_mm: 100.0, tail_mm: 0.0 }
}

fn string(note: &str, mm: &str, make_up: &str, code: &str) -> StringSpec {
    StringSpec {
        note: note.to_owned(),
        length: mm.to_owned(),
        make_up: make_up_text::read(make_up).unwrap(),
        order_code: code.to_owned(),
        ..StringSpec::default()
    }
}

fn coil(make_up: &str, code: &str, metres: f64, price: f64) -> StockItem {
    StockItem {
        make_up: make_up.into(),
        code: code.to_owned(),
        supplier: "Reedmarsh Strings".to_owned(),
        pack_mm: Some(1_000.0 * metres),
        price: Some(price),
        currency: "EUR".to_owned(),
        ..StockItem::default()
    }
}

/// Six strings: three of one coil, one of another, a wound one, and one that nobody sells.
fn design() -> Design {
    Design {
        allowances: bare(),
        strings: vec![
            string("C5", "300", "nylon 0.81", ""),
            string("B4", "350", "nylon 0.81", "N-32"),
            string("A4", "400", "gut 0.90", ""),
            string("G4", "450", "nylon 0.812", ""),
            string("F4", "500", "nylon 3.00", ""),
            string("C3", "900", "steel 0.50 + bronze 0.25", "W-1"),
        ],
        stock: vec![
            StockItem {
                single: true,
                supplier: "Old Weir Wire".to_owned(),
                currency: "GBP".to_owned(),
                ..coil("steel 0.50 + bronze 0.25", "W-1", 1.2, 7.5)
            },
            coil("nylon 0.81", "N-32", 1.0, 4.0),
            StockItem { highest: "F4".to_owned(), ..coil("gut 0.90", "G-90", 5.0, 20.0) },
        ],
        ..Design::default()
    }
}

fn list(design: &Design) -> OrderList {
    order_list(design, &analyse(&resolve(design).harp))
}

/// Worked out by hand: the nylon strings are cut to 400, 450 and 550 mm; of coils of a metre two take
/// them, as 550 + 450 fill one.
#[test]
fn strings_are_grouped_by_item_and_supplier() {
    let mut list = list(&design());
    let outside = list.lines.pop();
    let told = list.lines.iter().map(|line| {
        (line.item.code.clone(), numbers_words(&line.strings), line.length_mm, line.price)
    });
    let told: Vec<_> = told.collect();
    let is = |code: &str, numbers: &str, mm, price| {
        (code.to_owned(), numbers.to_owned(), mm, Some(price))
    };
    assert_eq!(
        told,
        [is("N-32", "1, 2, 4", 1_400, 8.0), is("G-90", "3", 500, 20.0), is("W-1", "6", 1_000, 7.5)]
    );
    let outside = outside.unwrap();
    assert_eq!(
        (&*outside.item.make_up.to_string(), &outside.strings[..]),
        ("nylon 3.00", &[5][..])
    );
    let why = outside.outside.as_ref().unwrap().to_string();
    assert!(why.starts_with("no stock item is nylon 3.00"), "{why}");
    assert_eq!((outside.packs.clone(), outside.price), (Err(NoPacks::Outside), None));
    assert_eq!(list.lines[0].packs, Ok(Packs { count: 2, at_least: 2 }));
    assert_eq!(list.lines[1].out_of_range, [3]);
    assert_eq!(remarks(&list.lines[1]), ["not sold for the note of string 3"]);
    let all: Vec<&OrderLine> = list.lines.iter().collect();
    assert_eq!(sums(&all), [("EUR", 28.0), ("GBP", 7.5)]);
    assert_eq!(sum_words(&all), "3 lines: 28.00 EUR and 7.50 GBP", "not added up");
}

#[test]
fn spares_are_settable() {
    let mut design = design();
    let mut with = |spares, from, to| {
        design.order =
            OrderSpec { spares, from_string: from, to_string: to, ..OrderSpec::default() };
        let list = list(&design);
        let nylon = &list.lines[0];
        let counts: Vec<usize> = list.lines[..3].iter().map(|line| line.spares_mm.len()).collect();
        (counts, nylon.length_mm, nylon.packs.clone().unwrap().count)
    };
    assert_eq!(with(SparesSpec::None, 0, 0), (vec![0, 0, 0], 1_400, 2));
    assert_eq!(with(SparesSpec::OneOfEachString, 0, 0), (vec![3, 1, 1], 2_800, 3));
    // 550 mm beside 450 mm, 550 mm, 400 mm: the spare is as long as the longest.
    assert_eq!(with(SparesSpec::OneOfEachItem, 0, 0), (vec![1, 1, 1], 1_950, 2));
    assert_eq!(with(SparesSpec::OneOfEachItem, 1, 2), (vec![1, 0, 0], 1_850, 2));
    assert_eq!(with(SparesSpec::Percent(10.0), 0, 0), (vec![1, 1, 1], 1_950, 2));
    assert_eq!(with(SparesSpec::Percent(100.0), 0, 3), (vec![2, 1, 0], 2_300, 3));
    assert_eq!(with(SparesSpec::Percent(0.0), 0, 0), (vec![0, 0, 0], 1_400, 2));
    assert_eq!(with(SparesSpec::OneOfEachString, 6, 2), (vec![0, 0, 0], 1_400, 2));
    assert_eq!((share_of(10, 10.0), share_of(11, 10.0), share_of(0, 50.0)), (1, 2, 0));
}

#[test]
fn what_is_not_known_says_why() {
    let mut design = design();
    design.strings[2].length.clear();
    design.stock[1].pack_mm = None;
    design.stock[0].pack_mm = Some(999.9);
    design.stock[0].sold_out = true;
    let list = list(&design);
    let says: Vec<String> = list.lines.iter().map(|line| remarks(line).join("; ")).collect();
    assert_eq!(
        says[0],
        "not the exact size of string 4, but the nearest in the stock; \
         how much is in a coil is not known (fill in the pack length)"
    );
    assert_eq!(
        says[1],
        "not sold for the note of string 3; the length to cut string 3 to is not known (give its length and gauge)"
    );
    assert_eq!(
        says[2],
        "not available now; string 6 is cut to 1000 mm, longer than a pack (choose a longer pack)"
    );
    let all: Vec<&OrderLine> = list.lines.iter().collect();
    assert_eq!(sum_words(&all), "4 lines, no sum can be given: 1 lacks the pack length");
    assert_eq!((list.lines[1].without_length, list.lines[1].length_mm), (1, 0));
}

#[test]
fn a_price_that_only_lacks_the_pack_length_is_told_apart() {
    let mut design = design();
    design.stock.iter_mut().for_each(|item| (item.pack_mm, item.single) = (None, false));
    let list = list(&design);
    let all: Vec<&OrderLine> = list.lines.iter().collect();
    assert_eq!(sum_words(&all), "4 lines, no sum can be given: 3 lack the pack length");
    assert_eq!(sum_words(&all[3..]), "1 line, no price is known", "what the stock does not have");
}

#[test]
fn a_supplier_without_all_prices_says_so() {
    let mut design = design();
    design.stock[2].price = None;
    let list = list(&design);
    let all: Vec<&OrderLine> = list.lines.iter().collect();
    assert_eq!(sum_words(&all[..2]), "2 lines, 1 without a price: at least 8.00 EUR");
}

/// Euros are euros, whatever sign the list gives them.
#[test]
fn one_currency_in_two_spellings_is_added_up() {
    let mut design = design();
    design.stock[2].currency = "€".to_owned();
    design.stock[0].currency = "euro".to_owned();
    let list = list(&design);
    let all: Vec<&OrderLine> = list.lines.iter().collect();
    assert_eq!(sum_words(&all[..3]), "3 lines: 35.50 EUR");
}

/// Three strings and a spare for each out of bundles of four: six strings, two bundles at 10.00, a string 2.50.
#[test]
fn a_bundle_is_bought_whole_and_a_string_of_it_costs_its_share() {
    let mut design = design();
    design.stock[1] = StockItem {
        single: true,
        bundle: 4,
        pack_mm: Some(1_500.0),
        ..coil("nylon 0.81", "N-32", 1.5, 10.0)
    };
    design.order.spares = SparesSpec::OneOfEachString;
    let list = list(&design);
    let line = &list.lines[0];
    assert_eq!((line.packs.clone(), line.price), (Ok(Packs { count: 2, at_least: 2 }), Some(20.0)));
    assert_eq!(pack_words(&line.item), "bundle of 4, each 1.5 m");
    assert_eq!(cut_words(line), "1: 400, 2: 450, 4: 550, spare: 400, spare: 450, spare: 550");
    let prices = prices(&design, &analyse(&resolve(&design).harp));
    assert_close(prices[0].as_ref().unwrap().0, 2.5, 1e-9, "a quarter of a bundle");
}

#[test]
fn the_price_of_a_string_is_its_share() {
    let design = design();
    let prices = prices(&design, &analyse(&resolve(&design).harp));
    // 400 mm of a metre at 4.00; 500 mm of five metres at 20.00; a single string.
    for (index, price) in [(0, 1.6), (2, 2.0), (5, 7.5)] {
        assert_close(prices[index].as_ref().unwrap().0, price, 1e-9, index);
    }
    assert!(prices[4].is_err());
}

#[test]
fn the_table_is_harmless_and_complete() {
    let mut design = design();
    design.stock[1].supplier = "=cmd()".to_owned();
    let text = csv(&list(&design));
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines[0], COLUMNS.join(","));
    assert_eq!(
        lines[1],
        "'=cmd(),N-32,nylon 0.81,\"1, 2, 4\",3,0,1400,coil,1000,2,2,4,8,EUR,\"not the exact size of string 4, but the nearest in the stock\",\"1: 400, 2: 450, 4: 550\""
    );
    assert_eq!(lines[4], ",,nylon 3.00,5,1,0,600,,,,,,,,not in the stock list,5: 600");
    assert_eq!(lines.len(), 5);
    // A supplier can answer with the same table.
    assert!(table::propose(&text).is_ok());
}

#[test]
fn words_are_short() {
    assert_eq!(numbers_words(&[1, 2, 3, 5, 7, 8]), "1–3, 5, 7, 8");
    assert_eq!(numbers_words(&[]), "");
    assert_eq!(pack_words(&coil("x", "", 5.0, 1.0)), "coil of 5 m");
    assert_eq!(pack_words(&coil("x", "", 10.25, 1.0)), "coil of 10.25 m");
    assert_eq!(pack_words(&StockItem { single: true, ..StockItem::default() }), "single");
    assert_eq!(money_words(12.5, "EUR"), "12.50 EUR");
    assert_eq!(money_words(1_234_567.891, ""), "1\u{2009}234\u{2009}567.89");
}

#[test]
fn an_empty_design_orders_nothing() {
    assert_eq!(list(&Design::default()), OrderList::default());
    let strings = vec![StringSpec { make_up: MakeUpSpec::default(), ..StringSpec::default() }];
    let list = list(&Design { strings, ..Design::default() });
    assert_eq!((list.lines.len(), list.unknown), (0, vec![1]));
}

/// Two suppliers of one gauge and none with a code: the key that came with a string says whose it is.
#[test]
fn a_string_is_ordered_by_the_key_that_it_was_taken_with() {
    let mut design = design();
    let nylon = |supplier: &str, price| StockItem {
        supplier: supplier.to_owned(),
        ..coil("nylon 0.81", "", 5.0, price)
    };
    design.stock = vec![nylon("Old Weir Wire", 4.0), nylon("Reedmarsh Strings", 5.0)];
    crate::design::stock::give_keys(&mut design.stock);
    design.strings.truncate(2);
    design.strings[1].order_code.clear();
    let suppliers = |design: &Design| -> Vec<(String, Vec<usize>)> {
        let lines = list(design).lines.into_iter();
        lines.map(|line| (line.item.supplier, line.strings)).collect()
    };
    let of = |name: &str, numbers: &[usize]| (name.to_owned(), numbers.to_vec());
    assert_eq!(suppliers(&design), [of("Old Weir Wire", &[1, 2])], "the first of the list");
    design.strings[1].stock_key = design.stock[1].key;
    let parted = [of("Old Weir Wire", &[1]), of("Reedmarsh Strings", &[2])];
    assert_eq!(suppliers(&design), parted);
    // What is typed into the item later does not matter, but for what it is made of.
    design.stock[1].code = "R-81".to_owned();
    design.stock[1].price = None;
    assert_eq!(suppliers(&design), parted);
    design.stock[1].make_up = "nylon 0.91".into();
    assert_eq!(suppliers(&design), [of("Old Weir Wire", &[1, 2])]);
}

#[test]
fn the_exact_size_goes_before_a_near_one_and_a_near_one_is_told() {
    let mut design = design();
    design.stock = vec![coil("nylon 0.812", "", 5.0, 4.0), coil("nylon 0.81", "", 5.0, 4.0)];
    design.strings.truncate(1);
    let told = |design: &Design| {
        let line = list(design).lines.remove(0);
        (line.item.make_up.to_string(), remarks(&line))
    };
    assert_eq!(told(&design), ("nylon 0.81".to_owned(), Vec::new()));
    design.stock[1].sold_out = true;
    let sold_out = vec!["not available now".to_owned()];
    assert_eq!(told(&design), ("nylon 0.81".to_owned(), sold_out));
    design.stock.pop();
    let near = vec!["not the exact size of string 1, but the nearest in the stock".to_owned()];
    assert_eq!(told(&design), ("nylon 0.812".to_owned(), near));
}

/// When asked: how long an order list and a check of a design with all its versions take.
#[test]
#[ignore = "prints times; run it by hand"]
fn times() {
    use crate::design::edit::Edit;
    use crate::design::{persist, presets::SAMPLES};
    let mut design = SAMPLES[3].design();
    let list = crate::design::stock::starting_list();
    design.stock = crate::design::stock::embedded(&design, &[&list]);
    for _ in 0..12 {
        let keep = Edit::KeepVersion { name: "kept".to_owned(), date: String::new() };
        design = keep.apply(&design);
    }
    let analysis = analyse(&resolve(&design).harp);
    let time = |name: &str, what: &dyn Fn()| {
        let start = std::time::Instant::now();
        (0..20).for_each(|_| what());
        eprintln!("{name}: {:?}", start.elapsed() / 20);
    };
    time("analysis", &|| drop(analyse(&resolve(&design).harp)));
    time("order list", &|| drop(order_list(&design, &analysis)));
    time("check with 12 versions", &|| persist::check(&design).expect("it is valid"));
    let edit = Edit::Setting { setting: Setting::Pluck, number: Some(33.0) };
    time("an edit with 12 versions", &|| drop(edit.apply(&design)));
}
