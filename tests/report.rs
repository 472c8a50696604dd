//! The string table as scripts see it: its headings, its figures, and what wrong input gets.

use stringloft::design::document::Design;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::table::report::{Report, report};
use stringloft::design::table::{COLUMNS, read, write};
use stringloft::engine::analysis::analyse;

fn reported(text: &str) -> Report {
    report(text, false).unwrap_or_else(|errors| panic!("{errors:?}"))
}

/// The cell of a row (from 0) under a heading.
fn cell(csv: &str, row: usize, heading: &str) -> String {
    let place = COLUMNS.iter().position(|column| *column == heading).expect("a known heading");
    let line = csv.lines().nth(row + 1).expect("a row of the table");
    line.split(',').nth(place).expect("a cell of the row").to_owned()
}

#[test]
fn the_headings_are_the_promised_ones() {
    let report = reported(SAMPLES[0].json);
    let headings = report.csv.lines().next().unwrap();
    assert_eq!(
        headings,
        "string,note,harp_octave,frequency_hz,length_mm,make_up,gauge_mm,core_mm,\
         linear_density_g_per_m,tension_n,stress_mpa,breaking_load_n,load_share_percent,\
         semitones_to_break,pluck_stiffness_n_per_mm,inharmonicity_b,partial_8_cents,\
         impedance_kg_per_s,damping_eta,stretch_mm,pin_turns,cents_per_pin_degree,\
         cents_per_kelvin,lever_mm,disc_natural_mm,disc_sharp_mm,lift_n,along_board_n,cut_length_mm,order_code,price,\
         pluck_force_n,glide_cents,nominal_error_cents"
    );
    assert_eq!(report.csv.lines().count(), 23);
}

/// The figures are worked out by hand from `μ = ρ π d²/4` and `T = 4 L² f² μ`; the material is so
/// soft that its stiffness takes off less than a millionth.
#[test]
fn a_plain_table_gives_the_figures_of_the_flexible_string() {
    let text = "note,length_mm,material,diameter_mm,density_kg_m3,modulus_gpa,strength_mpa\n\
                A4,500,own,1.0,1000,0.01,400\n";
    let csv = reported(text).csv;
    let figure = |heading| cell(&csv, 0, heading).parse::<f64>().unwrap();
    let area_mm2 = std::f64::consts::PI / 4.0;
    let pull = 4.0 * 0.25 * 440.0 * 440.0 * area_mm2 * 1e-3;
    for (heading, expected) in [
        ("frequency_hz", 440.0),
        ("length_mm", 500.0),
        ("gauge_mm", 1.0),
        ("linear_density_g_per_m", area_mm2),
        ("tension_n", pull),
        ("stress_mpa", pull / area_mm2),
        ("breaking_load_n", 400.0 * area_mm2),
        ("load_share_percent", 100.0 * pull / (400.0 * area_mm2)),
        ("pluck_stiffness_n_per_mm", pull / (500.0 * 0.24)),
        ("impedance_kg_per_s", (pull * area_mm2 * 1e-3).sqrt()),
    ] {
        let gap = (figure(heading) / expected - 1.0).abs();
        assert!(gap < 1e-6, "{heading}: got {}, expected {expected}", figure(heading));
    }
    assert_eq!(cell(&csv, 0, "harp_octave"), "3");
    assert_eq!(cell(&csv, 0, "make_up"), "own (row 1) 1.0");
}

#[test]
fn a_figure_that_is_not_known_is_an_empty_cell() {
    let csv = reported("note,length_mm,material,diameter_mm\nC5,300,,\n,,nylon,0.81\n").csv;
    for heading in ["tension_n", "gauge_mm", "breaking_load_n", "partial_8_cents"] {
        assert_eq!(cell(&csv, 0, heading), "", "{heading}");
    }
    assert_eq!(cell(&csv, 1, "tension_n"), "");
    assert_eq!(cell(&csv, 1, "gauge_mm"), "0.81");
}

/// A tenth of a coil of 10 m at 25 is 2.5: with no allowance but the tail a string of 500 mm is cut to 1 m.
#[test]
fn the_price_of_a_string_stands_in_its_column() {
    let design = |other: &str| {
        format!(
            "{{\"stringloft\": 2, \"allowances\": {{\"after_length_mm\": 20, \"turns\": 0, \"knot_mm\": 0, \"tail_mm\": 480}},
            \"strings\": [{{\"note\": \"A4\", \"length\": \"500\", \"material\": \"nylon\", \"diameter\": \"0.81\"}},
                         {{\"note\": \"G4\", \"length\": \"500\", \"material\": \"gut\", \"diameter\": \"0.90\"}}],
            \"stock\": [{{\"make_up\": \"nylon 0.81\", \"pack_mm\": 10000, \"price\": 25, \"currency\": \"EUR\"}}{other}]}}"
        )
    };
    let csv = reported(&design("")).csv;
    assert_eq!((&*cell(&csv, 0, "price"), &*cell(&csv, 1, "price")), ("2.5", ""));
    let gut = ", {\"make_up\": \"gut 0.9\", \"single\": true, \"price\": 4, \"currency\": \"GBP\"}";
    let csv = reported(&design(gut)).csv;
    assert_eq!((&*cell(&csv, 0, "price"), &*cell(&csv, 1, "price")), ("2.5 EUR", "4 GBP"));
}

#[test]
fn what_is_exported_comes_back_the_same() {
    let odd = "{\"stringloft\": 1, \"strings\": [
        {\"note\": \"443.2 Hz\", \"length\": \"24 1/8 in\", \"material\": \"nylon\", \"diameter\": \"32 thou\"},
        {\"note\": \"a3\", \"length\": \"61,2 cm\", \"material\": \"steel\", \"diameter\": \"0.45\",
         \"bare\": {\"board\": \"12\", \"pin\": \"1/2 in\"},
         \"layers\": [{\"material\": \"silk\", \"size\": \"0.1\", \"packing_percent\": 90.0},
                      {\"material\": \"bronze\", \"size\": \"0.15\", \"width\": \"0.6\"}]},
        {\"note\": \"G3\", \"length\": \"700\", \"weighed\": {\"g_per_m\": \"6.75\", \"breaks_n\": \"480\"}},
        {\"note\": \"\", \"length\": \"\"}]}";
    for text in SAMPLES.map(|sample| sample.json).into_iter().chain([odd]) {
        let once = reported(text).csv;
        let mut design = read(&once).unwrap().into_design(&Design::default());
        // The settings of a design are not in its table, nor is a string's lever or disc.
        let saved = stringloft::design::persist::read(text).unwrap();
        for (string, saved) in design.strings.iter_mut().zip(&saved.strings) {
            string.mechanism = saved.mechanism;
        }
        let design = Design { strings: design.strings, ..saved };
        let again = write(&design, &analyse(&resolve(&design).harp));
        assert_eq!(once, again);
    }
}

#[test]
fn what_is_wrong_has_its_line_and_column() {
    let wrong = |text: &str| report(text, false).expect_err(text);
    let errors = wrong("note,length_mm,material,diameter_mm\nC5,300,nylon,0.81\nB4,x,nylon,0.81\n");
    assert_eq!(errors.len(), 1);
    assert!(errors[0].starts_with("line 3, column length_mm: the vibrating length"), "{errors:?}");
    let errors = wrong("note,length_mm,material,diameter_mm\nC5,300,mithril,0.81\n");
    assert!(errors[0].starts_with("line 2, column material: "), "{errors:?}");
    let wraps = "wrap1_material,wrap1_mm,wrap2_material,wrap2_mm";
    let errors = wrong(&format!(
        "note,length_mm,material,diameter_mm,{wraps}\n\
         C3,900,steel,0.5,mithril,0.2,,\nB2,900,steel,0.5,,,mithril,0.2\n"
    ));
    assert!(errors[0].starts_with("line 2, column wrap1_material: a material"), "{errors:?}");
    assert!(errors[1].starts_with("line 3, column wrap2_material: a material"), "{errors:?}");
    let errors = wrong("{\"stringloft\": 1, \"strings\": [{\"note\": \"H3\"}]}");
    assert!(errors[0].starts_with("string 1, note: "), "{errors:?}");
    assert!(wrong("{\"harp\": 1}")[0].contains("not a Stringloft design"));
    for text in ["\u{0}\u{1}", "dear maker", "a,b\nc,d", "\""] {
        assert!(wrong(text)[0].contains("neither a Stringloft design nor a table"), "{text:?}");
    }
    for text in ["", "\u{0}\u{1}", "[[[", "{", "a,b\n1,2", ";;;", "\"", "\u{feff}"] {
        assert!(!wrong(text).is_empty());
    }
}

#[test]
fn findings_are_sentences_beside_the_table() {
    let report = reported("note,length_mm,material,diameter_mm,colour\nC5,800,nylon,0.81,red\n");
    assert!(!report.findings.is_empty());
    assert!(!report.csv.contains(&report.findings[0]));
    assert_eq!(report.ignored, ["colour"]);
    assert!(reported(SAMPLES[2].json).findings.is_empty());
}

#[test]
fn a_table_of_measured_lengths_alone_is_reported_without_figures() {
    for text in ["note,length_mm\nC5,302\nB4,330\n", "Ton;Länge\nC5;302\nH4;330\n"] {
        let csv = reported(text).csv;
        assert_eq!(
            (cell(&csv, 1, "note"), cell(&csv, 1, "length_mm")),
            ("B4".into(), "330".into())
        );
        assert_eq!(
            (cell(&csv, 1, "tension_n"), cell(&csv, 1, "gauge_mm")),
            (String::new(), String::new())
        );
    }
}

#[test]
fn a_table_in_anyones_hand_is_told_column_by_column() {
    let text = "Harp of the school\nNr;Ton;Länge;Ø (mm);Material;Bemerkung;Farbe\n\
                1;C5;302;0,81;Darm;neu;rot\n2;H4;330;?;mithril;;\n";
    let report = reported(text);
    for told in [
        "column \"Ton\" is note",
        "column \"Länge\" is length, bare numbers in mm",
        "column \"Farbe\" is left out",
        "H is the B of English names, and B is B flat",
        "line 1 holds no string: Harp of the school",
    ] {
        assert!(report.told.iter().any(|line| line == told), "{told} in {:?}", report.told);
    }
    assert!(report.told.iter().any(|line| line.contains("mithril")), "{:?}", report.told);
    assert!(report.csv.lines().nth(1).unwrap().contains("\"gut 0,81\""), "{}", report.csv);
    assert_eq!(cell(&report.csv, 1, "tension_n"), "");
}

#[test]
fn a_column_of_unsaid_unit_is_left_out_unless_it_may_be_taken_for_what_it_looks_like() {
    let text = "note,length\nC5,12.5\nB4,13.75\nA4,15\n";
    let (asked, taken) = (reported(text), report(text, true).unwrap());
    assert_eq!(cell(&asked.csv, 0, "length_mm"), "");
    assert!(asked.told.iter().any(|line| line.contains("look like inches")), "{:?}", asked.told);
    assert_eq!(cell(&taken.csv, 0, "length_mm"), "317.5");
    assert!(taken.told.iter().any(|line| line.contains("taken for inches")), "{:?}", taken.told);
}

/// Frequencies, levers and discs of a design that is written as a table and read again into an empty one.
#[test]
fn pitch_and_discs_come_back_from_a_table() {
    for (sample, a4_hz) in [(3, 442.0), (0, 440.0), (0, 415.3), (2, 440.0)] {
        let mut design = SAMPLES[sample].design();
        design.pitch.a4_hz = a4_hz;
        let analysis = analyse(&resolve(&design).harp);
        let table = read(&write(&design, &analysis)).unwrap();
        let back = table.into_design(&Design::default());
        assert_eq!(back.pitch, design.pitch);
        let again = analyse(&resolve(&back).harp);
        for (one, other) in analysis.strings.iter().zip(&again.strings) {
            let (one, other) = (one.frequency.unwrap().to_hz(), other.frequency.unwrap().to_hz());
            assert!((one / other - 1.0).abs() < 1e-12, "{one} and {other}");
        }
        let kinds = |design: &Design| -> Vec<_> {
            let rule = design.mechanism.kind;
            design.strings.iter().map(|string| string.mechanism.unwrap_or(rule)).collect()
        };
        assert_eq!(kinds(&back), kinds(&design), "{}", SAMPLES[sample].key);
    }
}

#[test]
fn a_pitch_that_is_another_than_that_of_its_note_is_kept() {
    let text = "note,frequency_hz,length_mm,make_up\nA4,440,500,gut 0.7\nG4,392,550,gut 0.8\nF4,360,600,gut 0.9\n";
    let table = read(text).unwrap();
    assert_eq!(table.strings[2].note, "360 Hz");
    assert!(table.told[1].contains("360 Hz beside F4"), "{:?}", table.told);
    assert_eq!((&*table.strings[0].note, &*table.strings[1].note), ("A4", "G4"));
}
