//! Tests of stock lists: what a string is, what it costs, and files from anywhere.

use super::*;
use crate::design::document::{LayerSpec, TypedMakeUp};
use crate::design::reading::taken;
use crate::testing::assert_close;

fn item(make_up: &str, code: &str) -> StockItem {
    StockItem { make_up: make_up.into(), code: code.to_owned(), ..StockItem::default() }
}

fn string(make_up: &str, code: &str) -> StringSpec {
    StringSpec {
        make_up: make_up_text::read(make_up).unwrap(),
        order_code: code.to_owned(),
        ..StringSpec::default()
    }
}

#[test]
fn a_string_is_the_item_with_its_code_and_make_up() {
    let items = [
        item("nylon 0.81", "NY-32"),
        item("Gut 0.82", "G-82"),
        item("nylon 0.81", "PA-081"),
        item("steel 0.45 + silk 0.10 + bronze 0.25", "W-7"),
        item("weighed 6.75 g/m, gauge 1.10", "X-1"),
        item("not a ] make-up", "odd"),
    ];
    let shelf = Shelf::new(&[], &items);
    let is =
        |make_up: &str, code: &str| shelf.find(&string(make_up, code)).map(|found| found.index);
    assert_eq!(is("nylon 0.81", "PA-081"), Ok(2));
    assert_eq!(is("nylon .032\"", "pa-081 "), Ok(2), "32 thousandths are 0.8128 mm");
    assert_eq!(is("Nylon monofilament 0,81", ""), Ok(0), "the first of the list");
    assert_eq!(is("gut 0.82", ""), Ok(1));
    assert_eq!(is("music wire 0.45 + silk 0.1 + bronze 0.25, bare 12 board", "W-7"), Ok(3));
    assert_eq!(is("weighed 6.75, gauge 1.1", ""), Ok(4));
    let says = |make_up: &str, code: &str| is(make_up, code).unwrap_err().to_string();
    assert_eq!(
        says("nylon 0.85", ""),
        "no stock item is nylon 0.85 (add it to the stock, or choose another gauge)"
    );
    assert_eq!(
        says("nylon 0.81", "G-82"),
        "the stock item with the order code \"G-82\" is Gut 0.82, not nylon 0.81 (change one of them)"
    );
    assert!(says("nylon 0.81", "none").starts_with("no stock item has the order code \"none\""));
    assert!(says("steel 0.45 + silk 0.10 + bronze 0.30", "").starts_with("no stock item is steel"));
    assert!(says("", "NY-32").starts_with("no make-up is given"));
    assert!(is("nylon", "").is_err(), "a string without a gauge cannot be bought");
}

#[test]
fn of_several_items_the_one_goes_first_that_can_be_had_for_the_note() {
    let mut items = [
        item("nylon 0.81", "A"),
        item("nylon 0.81", "B"),
        item("nylon 0.812", "C"),
        item("nylon 0.810", "D"),
    ];
    items[0].sold_out = true;
    items[1].highest = "C5".to_owned();
    let shelf = Shelf::new(&[], &items);
    let is = |string: &StringSpec| shelf.find(string).map(|found| (found.index, found.is_exact));
    let mut wanted = string("nylon 0.81", "");
    assert_eq!(is(&wanted), Ok((1, true)), "nothing is said of the note");
    wanted.note = "D5".to_owned();
    assert_eq!(is(&wanted), Ok((3, true)));
    wanted.note = "C5".to_owned();
    assert_eq!(is(&wanted), Ok((1, true)));
    wanted.order_code = "A".to_owned();
    assert_eq!(is(&wanted), Ok((0, true)), "a code says which");
    assert_eq!(is(&string("nylon 0.8128", "")), Ok((2, false)), "the nearest, which is not it");
    assert_eq!(is(&string("nylon 32 thou", "")), Ok((2, true)), "the same gauge in the other unit");
    assert_eq!(is(&string("nylon .032\"", "")), Ok((2, true)));
}

#[test]
fn a_string_from_the_stock_is_found_by_its_key() {
    let mut items = [
        item("nylon 0.81", ""),
        StockItem { supplier: "Reedmarsh".to_owned(), ..item("nylon 0.81", "") },
        StockItem { sold_out: true, ..item("nylon 0.812", "C") },
        item("nylon 0.91", ""),
    ];
    give_keys(&mut items);
    let shelf = Shelf::new(&[], &items);
    let is = |make_up: &str, code: &str, from: usize| {
        let taken = StringSpec { stock_key: items[from].key, ..string(make_up, code) };
        shelf.find(&taken).map(|found| found.index)
    };
    for from in [0, 1] {
        assert_eq!(is("nylon 0.81", "", from), Ok(from), "two are alike, and the key says which");
    }
    assert_eq!(is("nylon 0.81", "", 2), Ok(2), "it was taken, though it is sold out and not exact");
    assert_eq!(is("nylon 0.81", "", 3), Ok(0), "of another string now");
    assert_eq!(is("nylon 0.81", "C", 1), Ok(2), "a code that was typed since says which");
    let old = [StockItem { key: 0, ..items[1].clone() }, items[0].clone()];
    assert_eq!(Shelf::new(&[], &old).find(&string("nylon 0.81", "")).unwrap().index, 0);
}

#[test]
fn an_item_keeps_the_key_that_it_was_given() {
    let mut items = vec![
        item("nylon 0.81", "A"),
        item("nylon 0.81", "A"),
        item("nylon 0,81", ""),
        StockItem::default(),
    ];
    give_keys(&mut items);
    let keys: Vec<u16> = items.iter().map(|item| item.key).collect();
    assert!(keys[..3].iter().all(|key| *key != 0) && keys[3] == 0, "{keys:?}");
    assert!(keys[0] != keys[1] && keys[0] != keys[2] && keys[1] != keys[2], "{keys:?}");
    let mut other = vec![item(" Nylon 0.81", "a")];
    give_keys(&mut other);
    assert_eq!(other[0].key, keys[0], "the same item has the same key in any list");
    items[0].make_up = "nylon 0.82".into();
    items[0].code = "A-2".to_owned();
    items.push(StockItem { key: keys[1], ..item("gut 0.90", "") });
    give_keys(&mut items);
    let now: Vec<u16> = items.iter().map(|item| item.key).collect();
    assert_eq!(now[..4], keys, "whatever is typed into an item");
    assert!(!keys.contains(&now[4]), "no two have one key");
}

#[test]
fn a_list_without_keys_gets_them_when_it_is_read() {
    let list = starting_list();
    let older = StockList {
        items: list.items.iter().map(|item| StockItem { key: 0, ..item.clone() }).collect(),
        ..list.clone()
    };
    let text = write(&older);
    assert!(!text.contains("key") && write(&list).contains("\"key\": "));
    assert_eq!(read(&text), Ok(list));
}

#[test]
fn a_make_up_is_read_once_and_kept_as_typed() {
    for text in ["nylon 0,81", " Gut  .032\"", "steel 0.45 + bronze 0.25", "not a ] make-up", ""] {
        let typed: TypedMakeUp = text.into();
        assert_eq!(typed.read(), make_up_text::read(text).as_ref());
        let mut json = serde_json::to_value(&typed).unwrap();
        assert_eq!(json, text);
        assert_eq!(taken::<TypedMakeUp>(&mut json).unwrap(), typed);
        if let Ok(read) = typed.read() {
            let written = TypedMakeUp::from(read.clone());
            assert_eq!(written, make_up_text::write(read).into());
        }
    }
}

#[test]
fn gauges_are_the_same_to_half_a_hundredth() {
    let same = |one: &str, other: &str| {
        let read = |text| make_up_text::read(text).unwrap();
        is_same(&[], &read(one), &read(other))
    };
    assert!(same("nylon 0.81", "nylon 32 thou") && same("nylon 0.81", "nylon 0.815"));
    assert!(!same("nylon 0.81", "nylon 0.82") && !same("nylon 0.81", "gut 0.81"));
    assert!(!same("steel 0.5 + bronze 0.2", "steel 0.5 + bronze 0.2 at 80 %"));
    assert!(!same("steel 0.5 + bronze 0.2 x 0.6", "steel 0.5 + bronze 0.2"));
    assert!(same("mithril 0.5", "Mithril 0.50") && !same("mithril", "mithril 0.5"));
}

#[test]
fn a_design_holds_what_its_strings_are() {
    let design = Design {
        strings: vec![string("gut 1.00", ""), string("nylon 0.81", ""), string("gut 1.00", "")],
        stock: vec![StockItem { price: Some(9.0), ..item("gut 1.00", "old") }],
        ..Design::default()
    };
    let list = StockList {
        currency: "EUR".to_owned(),
        items: vec![
            item("nylon 0.71", "a"),
            StockItem { price: Some(3.5), ..item("nylon 0.81", "b") },
            item("gut 1.00", "new"),
        ],
        ..StockList::default()
    };
    let items = embedded(&design, &[&list]);
    let told: Vec<_> = items.iter().map(|item| (&*item.code, &*item.currency)).collect();
    assert_eq!(told, [("old", ""), ("b", "EUR")]);
}

/// 2 m of a coil of 10 m at 25 are 5.
#[test]
fn a_string_costs_its_share_of_the_coil_or_its_price() {
    let coil = StockItem { pack_mm: Some(10_000.0), price: Some(25.0), ..item("nylon 0.81", "") };
    let cut = |mm| Some(Length::from_mm(mm));
    assert_close(share(&coil, cut(2_000.0)).unwrap(), 5.0, 1e-12, "share");
    assert_eq!(share(&coil, None), Err(NoPrice::CutLength));
    assert!(matches!(share(&coil, cut(10_000.5)), Err(NoPrice::Short { .. })));
    let single = StockItem { single: true, pack_mm: Some(1_200.0), ..coil.clone() };
    assert_close(share(&single, cut(700.0)).unwrap(), 25.0, 1e-12, "single");
    assert_close(share(&single, None).unwrap(), 25.0, 1e-12, "single of unknown length");
    assert!(matches!(share(&single, cut(1_201.0)), Err(NoPrice::Short { .. })));
    let unknown = StockItem { pack_mm: None, ..coil.clone() };
    assert_eq!(share(&unknown, cut(700.0)), Err(NoPrice::PackLength));
    assert_eq!(share(&StockItem { price: None, ..coil }, cut(1.0)), Err(NoPrice::Price));
}

#[test]
fn a_price_is_read_as_people_write_it() {
    for (text, number, currency) in [
        ("12.50", 12.5, ""),
        (" 12,50 ", 12.5, ""),
        ("12", 12.0, ""),
        ("€ 12,50", 12.5, "€"),
        ("12.50 EUR", 12.5, "EUR"),
        ("$3", 3.0, "$"),
        ("1.234,50 €", 1234.5, "€"),
        ("1,234.50", 1234.5, ""),
        ("1 234,50", 1234.5, ""),
        ("1'234.50 CHF", 1234.5, "CHF"),
        ("12.–", 12.0, ""),
        ("0", 0.0, ""),
    ] {
        assert_eq!(money(text), Some((number, currency.to_owned())), "{text}");
    }
    for text in
        ["", "free", "1,234", "-3", "−3", "1.2.3", "3 for 5", "1,2,3", "€", "3 EUR/m", "3 per m"]
    {
        assert_eq!(money(text), None, "{text}");
    }
}

#[test]
fn a_list_comes_back_from_its_file() {
    let mut list = starting_list();
    list.items[0] = StockItem {
        key: 12_345,
        make_up: "nylon 0.46".into(),
        code: "Q-\"1\"".to_owned(),
        supplier: "Reedmarsh Strings".to_owned(),
        single: true,
        bundle: 0,
        pack_mm: Some(1_500.0),
        price: Some(2.35),
        currency: "EUR".to_owned(),
        sold_out: true,
        lowest: "C4".to_owned(),
        highest: "G7".to_owned(),
        remark: "é".to_owned(),
    };
    list.materials = vec![library::built_in()[0].clone()];
    let text = write(&list);
    assert!(text.starts_with("{\n  \"stringloft-stock\": 1,\n  \"name\": \"Usual gauges\",\n"));
    assert_eq!(read(&text), Ok(list));
    assert_eq!(read(&write(&StockList::default())), Ok(StockList::default()));
}

#[test]
fn what_is_no_list_says_why() {
    let many = format!("{{\"stringloft-stock\": 1, \"items\": [{}{{}}]}}", "{},".repeat(2_000));
    let long = format!("{{\"stringloft-stock\": 1, \"name\": \"{}\"}}", "x".repeat(201));
    let deep = "[".repeat(100_000);
    let huge = " ".repeat(MOST_BYTES + 1);
    for (given, expected) in [
        ("", "the file is empty"),
        ("\u{feff} ", "the file is empty"),
        ("harp", "this stock list cannot be read: something is missing"),
        ("[]", "this JSON is not a stock list"),
        ("7", "this JSON is not a stock list"),
        ("{\"stringloft\": 2}", "this file is a design, not a stock list"),
        ("{\"stringloft-stock\": 0}", "this JSON is not a stock list"),
        ("{\"stringloft-stock\": 2}", "this stock list is of version 2"),
        ("{\"stringloft-stock\": 1, \"items\": 5}", "this stock list cannot be read"),
        (
            "{\"stringloft-stock\": 1, \"items\": [{\"price\": -1}]}",
            "the price of stock item 1 must be from 0",
        ),
        (
            "{\"stringloft-stock\": 1, \"items\": [{}, {\"pack_mm\": 0}]}",
            "the pack length in mm of stock item 2",
        ),
        ("{\"stringloft-stock\": 1, \"items\": [{\"price\": 1e999}]}", "this stock list cannot be"),
        (&many, "a stock list must have at most 2000 items, got 2001"),
        (&long, "the name of a stock list must be at most 200 characters long, got 201"),
        (&deep, "this stock list cannot be read: something is missing"),
        (&huge, "a stock list must be at most 4 MB"),
    ] {
        let error = read(given).expect_err(&given[..given.len().min(60)]).to_string();
        assert!(error.starts_with(expected), "{error}");
        assert!(error.len() < 500, "{} bytes", error.len());
    }
}

#[test]
fn whatever_list_is_valid_can_be_opened_again() {
    let item = item(&"\"é".repeat(1_000), &"\\".repeat(200));
    let mut list = StockList { items: vec![item; 300], ..StockList::default() };
    give_keys(&mut list.items);
    while check(&list).is_ok() {
        list.items.extend(list.items.clone());
        give_keys(&mut list.items);
    }
    assert_eq!(check(&list), Err(StockError::TooLarge));
    list.items.truncate(260);
    assert_eq!(check(&list), Ok(()));
    assert_eq!(read(&write(&list)), Ok(list));
}

#[test]
fn control_characters_are_taken_out() {
    let list = read("{\"stringloft-stock\": 1, \"items\": [{\"code\": \"a\\u0000\\u202eb\\tc\"}]}");
    assert_eq!(list.unwrap().items[0].code, "ab c");
}

#[test]
fn lists_are_merged_by_supplier_code_and_make_up() {
    let mut list = StockList {
        currency: "EUR".to_owned(),
        items: vec![StockItem { price: Some(3.0), ..item("nylon 0.81", "A") }],
        ..StockList::default()
    };
    give_keys(&mut list.items);
    let other = StockList {
        currency: "EUR".to_owned(),
        items: vec![
            StockItem { price: Some(3.5), ..item(" nylon  0.81", "a") },
            item("nylon 0.91", "A"),
        ],
        ..StockList::default()
    };
    let (merged, added, changed) = merge(&list, &other);
    assert_eq!((merged.items.len(), added, changed), (2, 1, 1));
    assert_eq!((merged.items[0].price, &*merged.items[0].currency), (Some(3.5), ""));
    assert_eq!(merged.items[0].key, list.items[0].key);
    assert!(merged.items[1].key != 0 && merged.items[1].key != merged.items[0].key);
    let (again, added, changed) = merge(&merged, &other);
    assert_eq!((again, added, changed), (merged, 0, 0));
    let dollars = StockList { currency: "USD".to_owned(), ..other };
    assert_eq!(merge(&list, &dollars).0.items[0].currency, "USD");
}

#[test]
fn every_usual_gauge_can_be_made_and_is_new() {
    let list = starting_list();
    assert_eq!(check(&list), Ok(()));
    for (index, item) in list.items.iter().enumerate() {
        let spec = item.make_up.read().unwrap();
        let string = StringSpec { make_up: spec.clone(), ..StringSpec::default() };
        let design = Design { strings: vec![string], ..Design::default() };
        let resolved = crate::design::resolve::resolve(&design);
        let errors = &resolved.cells[0];
        assert!(errors.make_up.is_none() && errors.gauge.is_none(), "{}", item.make_up.text());
        assert!(resolved.harp.strings[0].make_up.is_ok(), "{}", item.make_up.text());
        assert_eq!(make_up_text::write(spec), item.make_up.text());
        assert!(item.price.is_none() && item.code.is_empty() && item.supplier.is_empty());
        assert!(!list.items[..index].iter().any(|other| other.make_up == item.make_up));
    }
}

#[test]
fn a_layer_without_a_size_is_no_string_to_buy() {
    let mut spec = make_up_text::read("steel 0.5").unwrap();
    let (material, size, width) = ("bronze".to_owned(), String::new(), String::new());
    spec.layers = vec![LayerSpec { material, size, width, packing_percent: 100.0 }];
    let items = [item("steel 0.5", "")];
    let wanted = StringSpec { make_up: spec, ..StringSpec::default() };
    assert!(Shelf::new(&[], &items).find(&wanted).is_err());
}
