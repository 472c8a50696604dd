//! The doors through which text comes in, each with what must hold whatever comes: nothing panics, and what was read
//! is read again from what is written of it.
//!
//! `tests/run.rs` sends a fixed run of inputs through them; `targets/` are for cargo-fuzz.

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec;
use stringloft::design::document::{Design, StringSpec, Units};
use stringloft::design::edit::{Column, Edit};
use stringloft::design::order::order_list;
use stringloft::design::persist::{self, ReadError};
use stringloft::design::resolve::resolve;
use stringloft::design::stock::{self, table as stock_table};
use stringloft::design::table::{self, hand};
use stringloft::design::{advice, link, make_up_text, typed};
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::borne;
use stringloft::engine::geometry::lay_out;
use stringloft::papers::html::html;
use stringloft::papers::report::{Given, report};
use stringloft::papers::sheet::Paper;
use stringloft::papers::template::{dxf, harp, schedule};
use stringloft::papers::{card, order};

/// A door: what comes in is any text.
pub type Door = fn(&str);

/// Every door by its name.
pub const DOORS: [(&str, Door); 9] = [
    ("cell", cell),
    ("chart", chart),
    ("measured", measured),
    ("stock", stock),
    ("table", table),
    ("design", design),
    ("link", link),
    ("packed", packed),
    ("whole", whole),
];

/// A text in a single cell: pitch, length, gauge, make-up and what a weighed string has.
pub fn cell(text: &str) {
    let _ = (typed::pitch(text), typed::mass_per_metre(text), typed::load(text));
    if let Ok(length) = typed::length(text) {
        let (least, most) = typed::LENGTH_MM;
        assert!((least..=most).contains(&length.to_mm()), "{length:?}");
    }
    if let Ok(gauge) = typed::gauge(text) {
        assert!(gauge.to_mm().is_finite() && gauge.to_mm() > 0.0, "{gauge:?}");
    }
    if let Ok(make_up) = make_up_text::read(text) {
        let written = make_up_text::write(&make_up);
        assert_eq!(make_up_text::read(&written).as_ref(), Ok(&make_up), "another came back");
    }
}

/// A text typed into each cell of a chart, and what follows from it.
pub fn chart(text: &str) {
    let mut design = Design { strings: vec![StringSpec::default(); 2], ..Design::default() };
    for column in [Column::Note, Column::Length, Column::MakeUp, Column::Gauge] {
        design = Edit::Cell { row: 1, column, text: text.to_owned() }.apply(&design);
    }
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    for finding in &analysis.findings {
        let _ = advice::sentence(finding, &analysis, &Units::default());
    }
}

/// A list of measurements in anyone's hand.
pub fn measured(text: &str) {
    if let Ok(read) = hand::read(text, None) {
        let _ = (read.questions(), read.taken_for(), read.remarks_of_all());
    }
}

/// A stock list: a file of this program, or a table from elsewhere.
pub fn stock(text: &str) {
    if let Ok(list) = stock::read(text) {
        let written = stock::write(&list);
        assert!(stock::read(&written).as_ref() == Ok(&list), "another came back");
    }
    if let Ok(columns) = stock_table::propose(text) {
        let import = stock_table::import(text, &columns, "nylon", &[]);
        let _ = stock_table::export(&import.items);
    }
}

/// A table of strings, of this program or from elsewhere.
pub fn table(text: &str) {
    for likely in [false, true] {
        let Ok(read) = table::open(text, likely) else { continue };
        let design = read.into_design(&Design::default());
        let analysis = analyse(&resolve(&design).harp);
        let written = table::write(&design, &analysis);
        let again = table::read(&written).unwrap_or_else(|why| panic!("{why:?}"));
        let again = again.into_design(&Design::default());
        assert_eq!(again.strings.len(), design.strings.len(), "another came back");
    }
}

/// A design file.
pub fn design(text: &str) {
    match persist::read(text) {
        Ok(design) => {
            let written = persist::write(&design);
            let again = persist::read(&written).expect("what was written is read");
            assert!(alike(&persist::write(&again), &written), "other numbers or texts came back");
        }
        Err(error) => told(&error),
    }
}

/// Whether two texts are the same but for the last digits of their numbers: a number with more digits than it can
/// have is read to within a unit of the last one. Lines may break elsewhere, as they do by the length of numbers.
fn alike(one: &str, other: &str) -> bool {
    let [one, other] = [one, other].map(|text| text.split_whitespace().collect::<String>());
    let is_inside = |sign: char| sign.is_ascii_digit() || matches!(sign, '.' | '-' | '+' | 'e');
    let (one, other) = (
        one.split_inclusive(|sign| !is_inside(sign)),
        other.split_inclusive(|sign| !is_inside(sign)),
    );
    one.clone().count() == other.clone().count()
        && one.zip(other).all(|(one, other)| {
            let number = |text: &str| text.trim_end_matches(|sign| !is_inside(sign)).parse::<f64>();
            one == other
                || matches!((number(one), number(other)), (Ok(a), Ok(b)) if (a - b).abs() <= 1e-14 * a.abs())
        })
}

/// A refusal is a sentence that one can read on a screen.
fn told(error: &ReadError) {
    let words = error.to_string();
    assert!(!words.is_empty() && words.len() < 2_000, "{words}");
}

/// A link, as it is and with its check sum put right.
pub fn link(text: &str) {
    opened(text);
    let Some((form, rest)) = text.split_once('.') else { return };
    let Ok(mut bytes) = URL_SAFE_NO_PAD.decode(rest) else { return };
    if let Some((sum, packed)) = bytes.split_first_chunk_mut::<4>() {
        *sum = crc32fast::hash(packed).to_be_bytes();
        opened(&format!("{form}.{}", URL_SAFE_NO_PAD.encode(bytes)));
    }
}

/// The text that a link holds, in a link that is sound.
pub fn packed(text: &str) {
    let packed = compress_to_vec(text.as_bytes(), 1);
    let bytes = [&crc32fast::hash(&packed).to_be_bytes()[..], &packed].concat();
    opened(&format!("1.{}", URL_SAFE_NO_PAD.encode(bytes)));
}

/// What a link opens as is read again from the link that is written of it.
fn opened(text: &str) {
    if let Ok(design) = link::read(text) {
        let written = match link::write(&design) {
            Ok(written) => written,
            // A link of an older form may hold more than one of today may.
            Err(link::LinkError::TooLarge) => return,
            Err(why) => panic!("{why}"),
        };
        let design = Design { versions: Vec::new(), ..design };
        let again = link::read(&written).expect("what was written is read");
        assert!(
            alike(&persist::write(&again), &persist::write(&design)),
            "another design came back"
        );
    }
}

/// From any text to the papers, if it opens at all.
pub fn whole(text: &str) {
    let opened = persist::read(text).ok().or_else(|| link::read(text).ok());
    let opened =
        opened.or_else(|| Some(table::open(text, true).ok()?.into_design(&Design::default())));
    let Some(design) = opened else { return };
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let all = borne(&band, &resolved.harp, &analysis, &resolved.geometry, &resolved.build());
    let given = Given {
        design: &design,
        resolved: &resolved,
        analysis: &analysis,
        borne: Some(&all),
        today: "1 May 2031",
    };
    let mut words = html(&report(&given, Paper::A4));
    words.push_str(&html(&card::card_with(&design, &analysis, &all, "", Paper::A5)));
    // A title may be any text; a figure is none of these.
    let is_figure = |word: &&str| matches!(*word, "NaN" | "inf" | "-inf" | "−inf");
    let typed = persist::write(&design);
    let odd = words.split([' ', '<', '>', ';']).find(is_figure);
    assert!(odd.is_none_or(|word| typed.contains(word)), "{odd:?}");
    let _ = dxf::write(&harp::template(&design, &resolved, &analysis));
    let _ = schedule::write(&harp::schedule(&design, &resolved, &analysis));
    let list = order_list(&design, &analysis);
    let _ = html(&order::order(&design, &list, Paper::Letter));
}
