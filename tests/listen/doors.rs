//! The way from a design to what the tuner listens for, and from a recording to a table.

use stringloft::design::document::{Design, TemperamentSpec};
use stringloft::design::listening::wav::Recording;
use stringloft::design::listening::{Aim, csv, sought};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::listen::Sought;
use stringloft::engine::pitch::cents;

use super::strings::pluck;

fn sample(key: &str) -> Design {
    let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
    stringloft::design::persist::read(sample.json).expect("a design")
}

fn listened_for(design: &Design, aim: &Aim) -> Vec<Sought> {
    let resolved = resolve(design);
    sought(design, &resolved, &analyse(&resolved.harp), aim)
}

#[test]
fn strings_are_listened_for_as_the_design_has_them() {
    let design = sample("floor-36");
    let analysis = analyse(&resolve(&design).harp);
    let strings = listened_for(&design, &Aim::default());
    assert_eq!(strings.len(), analysis.strings.len());
    for (string, figures) in strings.iter().zip(&analysis.strings) {
        assert_eq!(string.number, figures.number);
        assert!(cents(string.target.to_hz() / figures.frequency.unwrap().to_hz()).abs() < 1e-9);
        assert_eq!(string.inharmonicity_b, figures.inharmonicity_b.ok());
        assert_eq!(string.cents_per_degree, figures.cents_per_pin_degree.ok());
    }
}

#[test]
fn a_string_that_is_tuned_off_its_pitch_for_now_is_listened_for_there() {
    let design = sample("floor-36");
    let aim = Aim { off_cents: vec![-500.0, 12.5, f64::NAN], ..Aim::default() };
    let strings = listened_for(&design, &Aim::default());
    for (place, string) in listened_for(&design, &aim).into_iter().enumerate() {
        let off = cents(string.target.to_hz() / strings[place].target.to_hz());
        let expected = [-500.0, 12.5].get(place).copied().unwrap_or(0.0);
        assert!((off - expected).abs() < 1e-9, "{place}: {off}");
    }
}

#[test]
fn a_recording_out_of_reach_is_told() {
    let recording = Recording { rate_hz: 4_000.0, samples: vec![0.0; 4_000] };
    let design = SAMPLES.iter().find(|sample| sample.key == "floor-36").expect("a sample");
    let told = csv(design.json, false, &recording).unwrap_err();
    assert!(told.len() == 1 && told[0].contains("4000"), "{told:?}");
}

/// By hand: a semitone is 100 cents in twelve equal steps; in quarter-comma meantone the step from a flat to its natural
/// is 76.0 cents (`7 · 696.578 − 4 · 1200`); a pedal raises by up to two steps, a lever by one.
#[test]
fn levers_and_discs_that_are_up_raise_the_target() {
    let raised = |design: &Design, raised: u8| {
        let count = design.strings.len();
        let (open, up) = (Aim::default(), Aim { raised: vec![raised; count], ..Aim::default() });
        let strings = listened_for(design, &open).into_iter().zip(listened_for(design, &up));
        strings
            .map(|(open, up)| (cents(up.target.to_hz() / open.target.to_hz()), up, open))
            .collect::<Vec<_>>()
    };
    let lever = sample("floor-36");
    for (rise, up, open) in raised(&lever, 2) {
        assert!((rise - 100.0).abs() < 1e-9, "{rise}");
        let b = up.inharmonicity_b.unwrap() / open.inharmonicity_b.unwrap();
        assert!((b - 2_f64.powf(1.0 / 6.0)).abs() < 1e-12, "{b}");
    }
    let mut pedal = sample("pedal-47");
    let rises: Vec<f64> = raised(&pedal, 2).iter().map(|(rise, ..)| *rise).collect();
    assert!(rises.iter().any(|rise| (rise - 200.0).abs() < 1e-9), "{rises:?}");
    pedal.pitch.temperament = TemperamentSpec::QuarterCommaMeantone;
    let rises: Vec<f64> =
        raised(&pedal, 1).iter().map(|(rise, ..)| *rise).filter(|rise| *rise > 1e-9).collect();
    assert!(rises.len() > 40 && rises.iter().all(|rise| (rise - 76.049).abs() < 1e-3), "{rises:?}");
}

#[test]
fn wider_octaves_move_the_targets_away_from_a4() {
    let design = sample("floor-36");
    let (plain, wide) = (Aim::default(), Aim { wider_cents: 2.0, ..Aim::default() });
    for (plain, wide) in listened_for(&design, &plain).iter().zip(listened_for(&design, &wide)) {
        let octaves = (plain.target.to_hz() / 440.0).log2();
        let moved = cents(wide.target.to_hz() / plain.target.to_hz());
        assert!((moved - 2.0 * octaves).abs() < 1e-9, "{moved}");
    }
    let absurd = Aim { wider_cents: f64::NAN, ..Aim::default() };
    assert_eq!(listened_for(&design, &absurd), listened_for(&design, &plain));
}

#[test]
fn a_recording_becomes_a_table_of_readings_and_notes() {
    let design = sample("floor-36");
    let strings = listened_for(&design, &Aim::default());
    let string =
        strings.iter().find(|string| (200.0..300.0).contains(&string.target.to_hz())).unwrap();
    let hz = string.target.to_hz() * 2_f64.powf(-11.0 / 1_200.0);
    let samples = pluck(44_100.0, hz, string.inharmonicity_b.unwrap(), 1.5);
    let json = SAMPLES.iter().find(|sample| sample.key == "floor-36").unwrap().json;
    let csv = csv(json, false, &Recording { rate_hz: 44_100.0, samples }).unwrap();
    let rows: Vec<Vec<&str>> = csv.lines().map(|line| line.split(',').collect()).collect();
    assert!(rows.iter().all(|row| row.len() == rows[0].len()), "{csv}");
    assert_eq!(rows[0][..7], ["kind", "time_s", "string", "note", "hertz", "cents", "level_db"]);
    assert_eq!(rows.iter().filter(|row| row[0] == "reading").count(), 30);
    let notes: Vec<&Vec<&str>> = rows.iter().filter(|row| row[0] == "note").collect();
    assert_eq!(notes.len(), 1, "{csv}");
    assert_eq!(notes[0][2], string.number.to_string());
    let told: f64 = notes[0][5].parse().unwrap();
    assert!((told + 11.0).abs() < 0.1, "{told}");
    let degrees: f64 = notes[0][11].parse().unwrap();
    assert!((degrees - 11.0 / string.cents_per_degree.unwrap()).abs() < 0.1, "{degrees}");
}

#[test]
fn a_design_without_a_pitch_cannot_be_listened_for() {
    let nothing = Recording { rate_hz: 44_100.0, samples: Vec::new() };
    let told =
        csv("note,length_mm,material,diameter_mm\n,500,nylon,1.0\n", false, &nothing).unwrap_err();
    assert!(told[0].contains("no string has a pitch") || told[0].contains("note"), "{told:?}");
    assert!(csv("{", false, &nothing).is_err());
}
