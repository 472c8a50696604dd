//! The printed sheets of an invented workshop, kept as the words that stand on them, and held to their measures.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use std::sync::Arc;

use stringloft::design::document::{
    Design, LayerSpec, LengthUnit, MakeUpSpec, StringSpec, WeighedSpec,
};
use stringloft::engine::analysis::{
    Analysis, Conditions, Harp, HarpString, Known, Limits, Mechanism, Unknown, analyse,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::material::{Material, built_in};
use stringloft::engine::pitch::{Letter, Note, Tuning};
use stringloft::engine::units::{Force, Length, Stiffness};
use stringloft::papers::card::card;
use stringloft::papers::code::{Code, QUIET_MODULES, SIDES_MM};
use stringloft::papers::html::html;
use stringloft::papers::layout::{
    CELL_PAD_MM, CODE_GAP_MM, CODE_WIDTHS_MM, FACT_GAP_BELOW_MM, FACT_GAP_MM, FOOT_MM, GAP_MM,
    LAST_PAD_MM, LINE_MM, SPACINGS_MM, STEP_GAP_MM, STEP_INDENT_MM, STEPS_GAP_MM, TITLES_PT_MM,
    TYPE_PT, fact_widths, widths,
};
use stringloft::papers::sheet::{Block, Closing, Mark, Paper, Sheet, Table, TableRow};

fn material(key: &str) -> Arc<Material> {
    Arc::new(built_in().into_iter().find(|m| m.key == key).unwrap())
}

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

/// A design with its harp, side by side.
struct Pair {
    design: Design,
    harp: Harp,
}

impl Pair {
    fn new() -> Self {
        let limits = Limits {
            working_share_percent: 75.0,
            soft_share_percent: 65.0,
            slack_share_percent: 12.0,
            least_tension: Force::from_n(20.0),
            stiffness_band: (Stiffness::from_n_per_mm(0.7), Stiffness::from_n_per_mm(1.9)),
            partial_8_cents: 25.0,
            jump_percent: 30.0,
            least_raise: Length::from_mm(0.0),
        };
        let conditions = Conditions::default();
        let harp = Harp { strings: vec![], pluck_ratio: 0.4, conditions, limits };
        Self { design: Design::default(), harp }
    }

    fn string(
        &mut self,
        note: &str,
        length_mm: f64,
        spec: MakeUpSpec,
        made: Known<MakeUp>,
        code: &str,
    ) {
        let parsed: Option<Note> = note.parse().ok();
        let frequency = parsed.map(|n| Tuning::default().frequency(n)).ok_or(Unknown::Pitch);
        let length = if length_mm > 0.0 { Ok(mm(length_mm)) } else { Err(Unknown::Length) };
        self.harp.strings.push(HarpString {
            note: parsed,
            frequency,
            length,
            make_up: made,
            mechanism: Mechanism::None,
        });
        let (note, order_code) = (note.to_owned(), code.to_owned());
        let length = length_mm.to_string();
        self.design.strings.push(StringSpec {
            note,
            length,
            make_up: spec,
            order_code,
            ..StringSpec::default()
        });
    }

    fn plain(&mut self, note: &str, length_mm: f64, key: &str, gauge_mm: f64, code: &str) {
        let spec = MakeUpSpec {
            material: key.to_owned(),
            diameter: gauge_mm.to_string(),
            ..MakeUpSpec::default()
        };
        let made = MakeUp::plain(material(key), mm(gauge_mm)).unwrap();
        self.string(note, length_mm, spec, Ok(made), code);
    }

    fn wound(&mut self, note: &str, length_mm: f64, wire_mm: f64, code: &str) {
        let spec = |key: &str, size: f64, packing_percent| LayerSpec {
            material: key.to_owned(),
            size: size.to_string(),
            width: String::new(),
            packing_percent,
        };
        let layer = |key, size, packing_ratio| Layer {
            material: material(key),
            section: Section::Round { diameter: mm(size) },
            packing_ratio,
        };
        let make_up = MakeUpSpec {
            material: "steel".to_owned(),
            diameter: "0.5".to_owned(),
            layers: vec![spec("silk", 0.1, 90.0), spec("bronze", wire_mm, 100.0)],
            ..MakeUpSpec::default()
        };
        let layers = vec![layer("silk", 0.1, 0.9), layer("bronze", wire_mm, 1.0)];
        let made = MakeUp::wound(material("steel"), mm(0.5), layers, (mm(0.0), mm(0.0))).unwrap();
        self.string(note, length_mm, make_up, Ok(made), code);
    }

    fn analysis(&self) -> Analysis {
        analyse(&self.harp)
    }

    fn card(&self, link: &str, paper: Paper) -> Sheet {
        card(&self.design, &self.analysis(), link, paper)
    }
}

/// Four strings, one of them with nothing but its note.
fn small() -> Pair {
    let mut pair = Pair::new();
    pair.design.title = "Wren".to_owned();
    pair.design.maker = "Tallow Lane Workshop".to_owned();
    pair.design.date = "12 March 2031".to_owned();
    pair.design.open_tuning = "C major".to_owned();
    pair.plain("C5", 300.0, "nylon", 0.81, "NY-081");
    pair.plain("Bb4", 331.5, "nylon", 0.9, "NY-090");
    pair.wound("F3", 640.0, 0.3, "WB-7");
    pair.string("E3", 0.0, MakeUpSpec::default(), Err(Unknown::MakeUp), "");
    pair
}

/// A harp of `count` strings from G7 down, twelve of them wound, with long texts about it.
fn large(count: usize) -> Pair {
    let mut pair = Pair::new();
    pair.design.title = "Heron, the large floor harp in walnut with a spruce board, made to the \
                         drawing of the second winter"
        .to_owned();
    pair.design.client =
        "Ines Okonjo-Halvorsen of the Lower Mill Music Room and Library".to_owned();
    let top: Note = "G7".parse().unwrap();
    for index in 0..count {
        let steps = i32::try_from(index).unwrap();
        let flat = |letter| -i8::from(matches!(letter, Letter::A | Letter::B | Letter::E));
        let note = top.moved(-steps, flat).unwrap().to_string();
        let length_mm = 70.0 * (1.07_f64).powi(steps);
        if index + 12 >= count {
            pair.wound(&note, length_mm, 0.3, "WB-0730");
        } else {
            pair.plain(&note, length_mm, "gut", 0.8, "GU-0080");
        }
    }
    pair
}

fn link(length: usize) -> String {
    let head = "https://harp.example/#";
    let signs = "QmZ0x-Ks_9aVtR7".chars().cycle();
    head.chars().chain(signs).take(length).collect()
}

fn tables(sheet: &Sheet) -> Vec<&Table> {
    let blocks = sheet.pages.iter().flat_map(|page| &page.blocks);
    blocks.filter_map(|b| if let Block::Table(table) = b { Some(table) } else { None }).collect()
}

fn rows(sheet: &Sheet) -> Vec<&TableRow> {
    tables(sheet).into_iter().flat_map(|table| &table.rows).collect()
}

fn closing(sheet: &Sheet) -> &Closing {
    let last = sheet.pages.last().unwrap().blocks.last().unwrap();
    let Block::Closing(closing) = last else { panic!("a card ends with its closing part") };
    closing
}

/// The words of the sheet down to the steps, a line for each row, its cells parted by bars.
fn words(sheet: &Sheet) -> String {
    let mut out = Vec::new();
    for block in sheet.pages.iter().flat_map(|page| &page.blocks) {
        match block {
            Block::Heading(heading) => {
                out.push(format!("{} ({})", heading.title.join(" "), heading.kind));
                let facts = heading.facts.iter();
                out.extend(facts.map(|fact| format!("{}: {}", fact.label, fact.lines.join(" "))));
            }
            Block::Table(table) => {
                let heads = table.columns.iter().map(|column| column.head.join(" "));
                out.push(heads.map(|head| head.trim().to_owned()).collect::<Vec<_>>().join(" | "));
                for row in &table.rows {
                    let cells = row.cells.iter().map(|lines| lines.join(" "));
                    out.push(cells.collect::<Vec<_>>().join(" | "));
                }
            }
            Block::Legend(lines) | Block::Remarks(lines) => out.push(lines.join(" ")),
            Block::Running(words) => out.push(words.clone()),
            Block::Title(_) | Block::Closing(_) | Block::Caution(_) | Block::Figure(_) => {}
        }
    }
    out.join("\n")
}

/// Its mark is the one that a card once printed bears, so that it must not change either.
#[test]
fn the_card_of_a_small_harp_reads() {
    let kept = "\
Wren (Stringing card)
maker: Tallow Lane Workshop
serial number: —
made for: —
date: 12 March 2031
open tuning: C major
strings: 4, E3 to C5
pitch: A4 = 440 Hz, equal temperament
design mark: 6974-DDB4
no. | octave | note | make-up core first, mm | gauge mm | gauge in | vibrating mm | cut to mm | order code
1 | 3C | C5 | Nylon monofilament | 0.81 | .032 | 300.0 | 615 | NY-081
2 | 3B | B♭4 | Nylon monofilament | 0.90 | .035 | 331.5 | 647 | NY-090
3 | 4F | F3 | steel 0.50 + silk 0.10 at 90 % + bronze 0.30 | 1.30 | .051 | 640.0 | 960 | WB-7
4 | 5E | E3 | — | — | — | — | — | —
Findings still open: 3, the most serious on string 3. steel: Steel music wire; silk: Silk (Bombyx mori); bronze: Phosphor bronze C51000. At … %: cover. A dash means: not known.\nString 3, F3: 87 % of its breaking load, above the 75 % you allow. Shorten it to 593 mm or less, or use a lighter winding or a stronger core.";
    assert_eq!(words(&small().card("https://harp.example/#123456789", Paper::A4)), kept);
}

#[test]
fn a_weighed_string_says_so() {
    let mut pair = small();
    let weighed = |g_per_m: &str| {
        let g_per_m = g_per_m.to_owned();
        MakeUpSpec {
            weighed: Some(WeighedSpec { g_per_m, ..WeighedSpec::default() }),
            ..MakeUpSpec::default()
        }
    };
    let cored = MakeUpSpec {
        material: "steel".to_owned(),
        diameter: "0.5".to_owned(),
        ..weighed("3.4 g/m")
    };
    for spec in [weighed("3.4"), weighed(""), cored] {
        pair.string("D3", 700.0, spec, Err(Unknown::MakeUp), "");
    }
    let sheet = pair.card(&link(100), Paper::A4);
    let made = rows(&sheet)[4..].iter().map(|row| row.cells[3].join(" ")).collect::<Vec<_>>();
    assert_eq!(made, ["weighed, 3.4 g/m", "weighed", "weighed, 3.4 g/m, core steel 0.50"]);
}

#[test]
fn a_dash_is_explained_only_where_one_stands() {
    let mut pair = small();
    let has_note = |pair: &Pair| words(&pair.card(&link(100), Paper::A4)).contains("A dash means");
    assert!(has_note(&pair));
    pair.design.strings.pop();
    pair.harp.strings.pop();
    pair.design.serial = "7".to_owned();
    assert!(has_note(&pair), "the client is not given");
    pair.design.client = "Mrs Ó Dálaigh".to_owned();
    assert!(!has_note(&pair));
}

#[test]
fn lengths_stand_in_inches_too_where_the_design_shows_inches() {
    let mut pair = small();
    pair.design.units.length = LengthUnit::Inch;
    let sheet = pair.card(&link(100), Paper::A4);
    let first = rows(&sheet)[0].cells.iter().map(|lines| lines.join(" ")).collect::<Vec<_>>();
    assert_eq!(first[6..], ["300.0", "11.81", "24.5", "NY-081"]);
}

#[test]
fn a_large_harp_takes_one_page_of_a4_or_letter() {
    for paper in [Paper::A4, Paper::Letter] {
        for length in [400, 900, 1_300, 2_500] {
            let (pair, mut sound) = (large(47), large(47).analysis());
            sound.findings.clear();
            let sheet = card(&pair.design, &sound, &link(length), paper);
            assert_eq!(sheet.pages.len(), 1, "{} with {length} characters", paper.name());
            assert!(rows(&sheet).len() == 47 && rows(&sheet).iter().all(|row| row.lines() == 1));
        }
    }
}

#[test]
fn every_string_stands_once_on_every_paper() {
    for paper in Paper::ALL {
        for count in [12, 26, 47, 150] {
            let mut pair = large(count.min(47));
            while pair.design.strings.len() < count {
                pair.plain("C1", 1_500.0, "gut", 2.0, "");
            }
            let sheet = pair.card(&link(900), paper);
            let numbers = rows(&sheet).iter().map(|row| row.cells[0].concat()).collect::<Vec<_>>();
            assert_eq!(numbers, (1..=count).map(|n| n.to_string()).collect::<Vec<_>>());
            let pages = sheet.pages.len();
            let last = if pages > 1 { format!("page {pages} of {pages}") } else { String::new() };
            assert_eq!(sheet.pages.last().unwrap().page_number, last);
            assert!(closing(&sheet).code.is_ok());
        }
    }
}

#[test]
fn c_and_f_strings_are_marked_by_shape_and_letter() {
    let sheet = small().card(&link(100), Paper::A5);
    let marks = rows(&sheet).iter().map(|row| row.mark).collect::<Vec<_>>();
    assert_eq!(marks, [Some(Mark::C), None, Some(Mark::F), None]);
    let html = html(&sheet);
    assert!(html.contains(
        "<circle cx=\"5\" cy=\"5\" r=\"5\"/><text x=\"5\" y=\"7.6\" text-anchor=\"middle\">C<"
    ));
    assert!(html.contains(
        "<rect width=\"10\" height=\"10\"/><text x=\"5\" y=\"7.6\" text-anchor=\"middle\">F<"
    ));
}

#[test]
fn hostile_texts_stay_texts() {
    let evil = "\"><script>alert('x')</script>\u{202e}&\u{0}";
    let mut pair = small();
    let design = &mut pair.design;
    for text in [
        &mut design.title,
        &mut design.maker,
        &mut design.client,
        &mut design.serial,
        &mut design.date,
        &mut design.open_tuning,
        &mut design.remarks,
    ] {
        evil.clone_into(text);
    }
    for string in &mut design.strings {
        evil.clone_into(&mut string.note);
        evil.clone_into(&mut string.order_code);
        evil.clone_into(&mut string.make_up.material);
        evil.clone_into(&mut string.make_up.bare.board);
        for layer in &mut string.make_up.layers {
            evil.clone_into(&mut layer.material);
            evil.clone_into(&mut layer.size);
        }
    }
    design.pitch.a4_hz = f64::NAN;
    design.allowances.turns = f64::INFINITY;
    for paper in Paper::ALL {
        let html = html(&pair.card(evil, paper));
        assert!(!html.contains("<script") && !html.contains('\u{202e}') && !html.contains('\u{0}'));
        assert!(html.contains("&lt;script&gt;") && html.contains("&quot;&gt;"));
        assert!(!html.contains("style") && !html.contains("alert('"), "no style in the markup");
    }
}

#[test]
fn endless_texts_end() {
    let mut pair = small();
    pair.design.title = "long ".repeat(200_000);
    pair.design.remarks = "W".repeat(1_000_000);
    pair.design.strings[0].order_code = "W".repeat(1_000_000);
    for paper in Paper::ALL {
        let sheet = pair.card(&"#".repeat(1_000_000), paper);
        assert!(sheet.pages.len() <= 3, "{} pages of {}", sheet.pages.len(), paper.name());
        assert!(closing(&sheet).code.as_ref().unwrap_err().contains("too long"));
    }
}

#[test]
fn no_strings_and_no_link_are_a_card_too() {
    let sheet = Pair::new().card("", Paper::A4);
    assert_eq!(sheet.pages.len(), 1);
    assert!(words(&sheet).starts_with("Untitled harp (Stringing card)\nmaker: —"));
    assert!(closing(&sheet).code.as_ref().unwrap_err().starts_with("This card has no link"));
}

#[test]
fn the_code_reads_back_as_the_link() {
    for length in [60, 400, 900, 1_300] {
        let link = link(length);
        let code = Code::of(&link).unwrap();
        let mut image = rqrr::PreparedImage::prepare(picture(&code));
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1, "{length} characters");
        assert_eq!(grids[0].decode().unwrap().1, link);
    }
}

/// The modules at four pixels each, with the white edge.
fn picture(code: &Code) -> image::GrayImage {
    let side = u32::try_from(4 * (code.modules + 2 * QUIET_MODULES)).unwrap();
    image::GrayImage::from_fn(side, side, |x, y| {
        let module = |at: u32| usize::try_from(at / 4).ok()?.checked_sub(QUIET_MODULES);
        let dark = module(x).zip(module(y)).is_some_and(|(column, row)| code.is_dark(column, row));
        image::Luma([if dark { 0 } else { 255 }])
    })
}

#[test]
fn the_style_sheet_has_the_measures_of_the_layout() {
    let css = include_str!("../style/print.css");
    let has = |rule: &str| assert!(css.contains(rule), "style/print.css lacks: {rule}");
    let px = |mm: f64| (mm * 96.0 / 25.4).round();
    has(&format!("--line: {}px", px(LINE_MM)));
    has(&format!("font: normal {TYPE_PT}pt/{}px", px(LINE_MM)));
    has(&format!("--gap: {GAP_MM}mm"));
    has(&format!("--pad: {CELL_PAD_MM}mm"));
    has(&format!("last-child {{ padding-left: {LAST_PAD_MM}mm"));
    has(&format!("padding: 0 {FACT_GAP_MM}mm {FACT_GAP_BELOW_MM}mm 0"));
    has(&format!(".card-foot {{ text-align: right; height: {FOOT_MM}mm"));
    has(&format!("minmax(0, 1fr) var(--side); column-gap: {CODE_GAP_MM}mm"));
    has(&format!(".card-steps {{ display: grid; column-gap: {STEPS_GAP_MM}mm"));
    has(&format!("margin: 0 0 {STEP_GAP_MM}mm {STEP_INDENT_MM}mm"));
    for (class, (pt, mm)) in ["card-title", "card-title--long"].iter().zip(TITLES_PT_MM) {
        has(&format!("font-size: {pt}pt"));
        has(&format!(".{class} .line {{ height: {mm}mm; line-height: {mm}mm"));
    }
    for (index, space) in SPACINGS_MM.iter().enumerate() {
        let (above, below) = ((px(*space) / 2.0).ceil(), (px(*space) / 2.0).floor());
        has(&format!("spacing-{index} {{ --space: {above}px 0 {below}px"));
    }
    for (index, width) in CODE_WIDTHS_MM.iter().enumerate() {
        has(&format!("last-{index} {{ --last: {width}mm"));
    }
    for (index, side) in SIDES_MM.iter().enumerate() {
        has(&format!("side-{index}"));
        has(&format!("{{ --side: {side}mm"));
    }
    for paper in Paper::ALL {
        let shares = fact_widths(paper);
        let shares = shares.iter().map(|mm| (100.0 * mm / paper.inside_mm().0).round());
        let shares = shares.map(|share| format!("{share}%")).collect::<Vec<_>>().join(" ");
        has(&format!("grid-template-columns: {shares}"));
        for (unit, kind) in [(LengthUnit::Mm, "strings"), (LengthUnit::Inch, "strings-inches")] {
            let widths = widths(paper, unit, 14.0);
            let column = |(index, mm): (usize, &f64)| match index {
                3 => "minmax(0, 1fr)".to_owned(),
                last if last + 1 == widths.len() => "var(--last)".to_owned(),
                _ => format!("{mm}mm"),
            };
            let columns = widths.iter().enumerate().map(column).collect::<Vec<_>>().join(" ");
            has(&format!("card-table--{kind} {{ --columns: {columns}"));
        }
    }
}
