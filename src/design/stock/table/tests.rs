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

/// A supplier's list as it comes: plain strings named by their material with the gauge beside it, wound ones by what
/// they are made of, with the gauge of the whole.
#[test]
fn plain_and_wound_strings_stand_in_one_table() {
    let text = "Make-up;Diameter mm;Order no;Preis EUR\n\
                Nylon;0,64;N-25;1,90\n\
                nylon 0.81;0,81;N-32;2,10\n\
                nylon 0.81 + nylon 0.25;1,31;W-1;6,40\n\
                steel 0.40 + silk 0.10 + bronze 0.25;1,10;W-2;9,80\n";
    let import = read(text);
    assert_eq!((import.bad, import.doubts), (Vec::new(), Vec::new()));
    let told: Vec<_> = import.items.iter().map(|item| (&*item.make_up, item.single)).collect();
    assert_eq!(
        told,
        [
            ("Nylon 0,64", false),
            ("nylon 0.81", false),
            ("nylon 0.81 + nylon 0.25", true),
            ("steel 0.40 + silk 0.10 + bronze 0.25", true)
        ]
    );
    let prices = import.items.iter().map(|item| (item.price, &*item.currency));
    assert!(prices.eq([1.9, 2.1, 6.4, 9.8].map(|price| (Some(price), "EUR"))));
    // The same with the make-up of wound strings among the materials, and in thousandths.
    let import =
        read("material,gauge thou,code\nnylon,.025,N-25\nnylon .032 + nylon .010,52,W-1\n");
    assert_eq!(import.bad.len(), 1, "25 thousandths of a thousandth are no gauge");
    let import =
        read("material,gauge inch,code\nnylon,.025,N-25\nnylon .032 + nylon .010,.052,W-1\n");
    let told: Vec<&str> = import.items.iter().map(|item| &*item.make_up).collect();
    assert_eq!(told, ["nylon .025 in", "nylon .032 in + nylon .010 in"]);
}

#[test]
fn coil_single_and_bundle_are_told_apart() {
    let sold = |pack: &str, make_up: &str| {
        let import = read(&format!("make-up,pack,length m\n{make_up},{pack},5\n"));
        let item = import.items.first().ok_or_else(|| import.bad[0].message.clone());
        item.map(|item| (item.single, item.bundle))
    };
    for (pack, kind) in [
        ("coil", (false, 0)),
        ("Spool 5 m", (false, 0)),
        ("Rolle", (false, 0)),
        ("", (false, 0)),
        ("single", (true, 0)),
        ("Stück", (true, 0)),
        ("12 pieces", (true, 12)),
        ("bundle of 10", (true, 10)),
        ("Bund (25)", (true, 25)),
    ] {
        assert_eq!(sold(pack, "nylon 0.81"), Ok(kind), "{pack}");
    }
    assert_eq!(sold("", "steel 0.40 + bronze 0.25"), Ok((true, 0)), "wound: by the piece");
    assert_eq!(sold("coil", "steel 0.40 + bronze 0.25"), Ok((false, 0)), "as the list says");
    assert!(sold("bundle", "nylon 0.81").unwrap_err().starts_with("a bundle must say how many"));
    assert!(sold("sack", "nylon 0.81").unwrap_err().starts_with("a pack must be coil, single"));
}

#[test]
fn the_currency_comes_from_the_heading_or_the_cell() {
    for (heading, cell, currency) in [
        ("Preis EUR", "3,20", "EUR"),
        ("Preis in EUR", "3,20", "EUR"),
        ("Preis (€)", "3,20", "€"),
        ("Preis", "€ 3,20", "€"),
        ("PREIS EUR", "3,20", "EUR"),
        ("PRICE PER KIT", "3,20", ""),
        ("price euro", "3,20 €", "€"),
        ("Prix CHF", "3,20", "CHF"),
        ("price gbp", "3.20", "gbp"),
        ("price", "3.20", ""),
    ] {
        let import = read(&format!("make-up;{heading}\nnylon 0.81;{cell}\n"));
        let item = &import.items[0];
        assert_eq!((item.price, &*item.currency), (Some(3.2), currency), "{heading}");
    }
}

#[test]
fn headings_of_other_languages_are_known() {
    use Field::{Code, Gauge, Material, PackLength, Remark, Supplier};
    assert_eq!(
        fields("Werkstoff;Durchmesser;Bestellnummer;Lieferant;Länge;Bemerkung\n"),
        [Material, Gauge, Code, Supplier, PackLength, Remark].map(Some)
    );
    assert_eq!(
        fields("Matière;Diamètre;Référence;Fournisseur;Longueur;Remarque\n"),
        [Material, Gauge, Code, Supplier, PackLength, Remark].map(Some)
    );
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
        bundle: 12,
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
