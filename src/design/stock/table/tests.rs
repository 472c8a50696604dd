//! Tests of stock tables: which column is what, bad lines, and the way there and back.

use super::super::{StockList, starting_list};
use super::*;

fn read(text: &str) -> Import {
    import(text, &propose(text).unwrap(), "", &[])
}

fn fields(text: &str) -> Vec<Option<Field>> {
    propose(text).unwrap().iter().map(|column| column.field).collect()
}

#[test]
fn headings_are_recognised_loosely() {
    use Field::{Code, Currency, Gauge, Highest, InStock, Lowest, MakeUp, Material, PackLength};
    for (heading, field) in [
        ("Gauge", Some(Gauge)),
        ("Diameter [mm]", Some(Gauge)),
        ("dia mm", Some(Gauge)),
        ("Ø mm", Some(Gauge)),
        ("Order code", Some(Code)),
        ("Article no.", Some(Code)),
        ("Item number", Some(Code)),
        ("SKU", Some(Code)),
        ("Supplier", Some(Field::Supplier)),
        ("note from", Some(Lowest)),
        ("to", Some(Highest)),
        ("Highest note", Some(Highest)),
        ("Length (m)", Some(PackLength)),
        ("pack_length_mm", Some(PackLength)),
        ("coil m", Some(PackLength)),
        ("Pack", Some(Field::Pack)),
        ("Price (EUR)", Some(Field::Price)),
        ("price per m", None),
        ("currency", Some(Currency)),
        ("In stock", Some(InStock)),
        ("MAKE-UP", Some(MakeUp)),
        ("Material", Some(Material)),
        ("Remarks", Some(Field::Remark)),
        ("colour", None),
        ("", None),
    ] {
        assert_eq!(fields(&format!("{heading}\n1\n")), [field], "{heading}");
    }
    assert_eq!(fields("gauge,diameter\n1,2\n"), [Some(Gauge), None], "the first one");
}

#[test]
fn units_stand_in_the_heading_or_are_seen_by_the_numbers() {
    let unit = |text: &str| propose(text).unwrap()[0].unit;
    for (text, size) in [
        ("gauge mm\n32\n", Size::Mm),
        ("gauge (thou)\n32\n", Size::Thou),
        ("gauge inch\n.032\n", Size::Inch),
        ("gauge\n0.81\n0.91\n", Size::Mm),
        ("gauge\n32\n36\n", Size::Thou),
        ("gauge\n.032\n.036\n", Size::Inch),
        ("gauge\n.032\"\n0.91 mm\n", Size::Mm),
        ("length\n5\n10\n", Size::Metre),
        ("length\n1500\n", Size::Mm),
        ("length ft\n12\n", Size::Foot),
    ] {
        assert_eq!(unit(text), size, "{text}");
    }
}

#[test]
fn good_lines_are_taken_and_bad_ones_reported() {
    let text = "\u{feff}Material;Dia mm;Order no;Length m;Price €;from;to;In stock\r\n\
                nylon;0,81;N-32;5;12,50;C4;C6;yes\r\n\
                nylon;x;N-33;5;12,50;;;\r\n\
                ;0,91;N-34;5;12,50;;;\r\n\
                mithril;0,91;M-1;;;;;no\r\n\
                \r\n\
                gut;1,02;G-1;0;free;H4;;\r\n\
                gut;1,02;G-2;5;3 EUR;;;;extra\r\n";
    let import = read(text);
    let item = &import.items[0];
    assert_eq!((&*item.make_up, &*item.code), ("nylon 0,81", "N-32"));
    assert_eq!((item.pack_mm, item.price, &*item.currency), (Some(5_000.0), Some(12.5), "€"));
    assert_eq!((&*item.lowest, &*item.highest, item.sold_out), ("C4", "C6", false));
    assert_eq!(import.items.len(), 2);
    assert!(import.items[1].sold_out && import.items[1].price.is_none());
    let bad: Vec<String> = import.bad.iter().map(ToString::to_string).collect();
    for (place, start) in [
        "line 3, column Dia mm: the gauge must be a number",
        "line 4, column Material: the material is missing",
        "line 7, column Price €: a price must be a number that can be read in one way, got \"free\"",
        "line 7, column Length m: the length of a pack must be from",
        "line 7, column from: a note begins with",
        "line 8: a line must have no more cells than there are headings, 8, got 9",
    ]
    .into_iter()
    .enumerate()
    {
        assert!(bad[place].starts_with(start), "{}", bad[place]);
    }
    assert_eq!(bad.len(), 6);
    assert_eq!(import.doubts.len(), 1);
    assert!(import.doubts[0].to_string().starts_with("line 5, column Material: the material"));
}

#[test]
fn the_caller_may_say_what_the_columns_are() {
    let text = "a\tb\n32\tN-32\n36\tN-36\n";
    let mut columns = propose(text).unwrap();
    assert!(columns.iter().all(|column| column.field.is_none()));
    columns[0].field = Some(Field::Gauge);
    columns[0].unit = Size::Thou;
    columns[1].field = Some(Field::Code);
    let import = import(text, &columns, "nylon", &[]);
    let made: Vec<&str> = import.items.iter().map(|item| &*item.make_up).collect();
    assert_eq!((made, import.bad.len()), (vec!["nylon 32 thou", "nylon 36 thou"], 0));
    assert_eq!(columns[0].example, "32");
}

#[test]
fn what_is_exported_comes_back_the_same() {
    let mut items = starting_list().items;
    // A table has no keys: an item of it takes the place of the one that is there.
    items.iter_mut().for_each(|item| item.key = 0);
    items.push(StockItem {
        key: 0,
        make_up: "=1+1 0.5".into(),
        code: "=cmd()".to_owned(),
        supplier: "Reedmarsh, \"Wire\" & Co".to_owned(),
        single: true,
        pack_mm: Some(1_524.0),
        price: Some(0.1 + 0.2),
        currency: "-EUR".to_owned(),
        sold_out: true,
        lowest: "Bb3".to_owned(),
        highest: "F#6".to_owned(),
        remark: "@ two\nlines".to_owned(),
    });
    let text = export(&items);
    assert!(text.contains(",'=cmd(),"), "no formula for a spreadsheet");
    let import = read(&text);
    assert_eq!(import.bad, []);
    assert_eq!(import.items, items);
    assert_eq!(export(&import.items), text);
    assert_eq!(read(&export(&[])), Import::default());
}

#[test]
fn hostile_tables_end() {
    for text in ["", "\n\n", "\"", "a,b\n\"", "\u{0}", ",,,\n,,,", "price\n1e999\n", "gauge\nNaN\n"]
    {
        if let Ok(columns) = propose(text) {
            assert_eq!(import(text, &columns, "nylon", &[]).items, [], "{text:?}");
        }
    }
    let many = format!("gauge\n{}", "0.81\n".repeat(3_000));
    let taken = import(&many, &propose(&many).unwrap(), "nylon", &[]);
    assert_eq!((taken.items.len(), taken.bad.len()), (2_000, 1));
    let bad = format!("gauge\n{}", "x\n".repeat(100_000));
    assert!(import(&bad, &propose(&bad).unwrap(), "nylon", &[]).bad.len() <= 101);
    let wide = format!("{}\n", "gauge,".repeat(50_000));
    assert!(propose(&wide).unwrap().len() <= 100);
    assert!(propose(&"x".repeat(MOST_BYTES + 1)).unwrap_err().message.contains("4 MB"));
    let list = StockList { items: taken.items, ..StockList::default() };
    assert_eq!(super::super::check(&list), Ok(()));
}
