//! What strings sound like: partials and decays of rendered files against closed forms, measured by
//! `sound/scripts/measure.py` with general libraries, and the drag of the air against Bessel functions.
//!
//! The script is run on what this test writes; its results are kept in `sound/measured.json`. The test renders the
//! files again and holds both the voices and the samples to what was measured and worked out there.

use std::f64::consts::TAU;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use stringloft::design::persist;
use stringloft::design::resolve::resolve;
use stringloft::design::sound::{File, Wish, file};
use stringloft::engine::analysis::{Harp, Mechanism, analyse};
use stringloft::engine::material::Class;
use stringloft::engine::sound::air::drag_ratio;
use stringloft::engine::sound::pattern::Pattern;
use stringloft::engine::sound::render::{PEAK, RAMP_S, peak, ring};
use stringloft::engine::sound::{Ask, USUAL_LOSS, WINDING_LOSS, voice};
use stringloft::engine::units::{Length, Mobility};

const RATE_HZ: u32 = 48_000;

/// A string, how it is plucked, and how many of its partials are measured.
struct Case {
    name: &'static str,
    string: &'static str,
    ask: fn(&mut Ask),
    partials: u32,
}

/// So soft that nothing glides, in one plane, near the end so that few partials are missing.
fn soft(ask: &mut Ask) {
    ask.two_planes = false;
    ask.pluck = Length::from_mm(0.05);
    ask.pluck_ratio = 0.13;
    ask.finger = Length::from_mm(4.0);
}

/// Invented strings, over the compass and the makes of harps.
const CASES: [Case; 6] = [
    Case {
        name: "nylon-a4",
        string: r#"{"note": "A4", "length": "448", "material": "nylon", "diameter": "0.8"}"#,
        ask: soft,
        partials: 12,
    },
    Case {
        name: "nylon-a4-raised",
        string: r#"{"note": "A4", "length": "448", "material": "nylon", "diameter": "0.8", "mechanism": "lever"}"#,
        ask: |ask| {
            soft(ask);
            ask.raised = 1;
        },
        partials: 10,
    },
    // No soundbox takes anything: the air and the steel alone.
    Case {
        name: "steel-a4-in-air",
        string: r#"{"note": "A4", "length": "450", "material": "steel", "diameter": "0.4"}"#,
        ask: |ask| {
            soft(ask);
            ask.board = Mobility::from_s_per_kg(0.0);
        },
        partials: 14,
    },
    Case {
        name: "gut-d3",
        string: r#"{"note": "D3", "length": "900", "material": "gut", "diameter": "1.6"}"#,
        ask: soft,
        partials: 12,
    },
    Case {
        name: "wound-g1",
        string: r#"{"note": "G1", "length": "1380", "material": "steel", "diameter": "0.6",
            "layers": [{"material": "bronze", "size": "0.4"}], "bare": {"board": "18", "pin": "30"}}"#,
        ask: soft,
        partials: 24,
    },
    Case {
        name: "steel-c7",
        string: r#"{"note": "C7", "length": "110", "material": "steel", "diameter": "0.3"}"#,
        ask: soft,
        partials: 5,
    },
];

fn text(case: &Case) -> String {
    format!(r#"{{"stringloft": 2, "strings": [{}]}}"#, case.string)
}

fn harp(case: &Case) -> Harp {
    resolve(&persist::read(&text(case)).expect("the case is a design")).harp
}

fn ask(case: &Case, harp: &Harp) -> Ask {
    let mut ask = Ask::of(harp);
    (case.ask)(&mut ask);
    ask
}

fn played(case: &Case) -> File {
    let wish = Wish { string: "1".into(), pattern: Pattern::One, rate_hz: RATE_HZ, most_s: 6.0 };
    file(&text(case), &wish, case.ask).expect("the string sounds")
}

/// What the script must know of a string: its sizes and the figures of its materials.
fn told(case: &Case) -> Value {
    let harp = harp(case);
    let (string, ask) = (&harp.strings[0], ask(case, &harp));
    let figures = &analyse(&harp).strings[0];
    let make_up = string.make_up.as_ref().expect("a make-up");
    let (material, core) = make_up.core().expect("a core");
    let modulus = material.modulus.as_ref().expect("a modulus").value;
    let usual = match material.class {
        Class::Metal => USUAL_LOSS.0,
        Class::Polymer => USUAL_LOSS.1,
        Class::Natural => USUAL_LOSS.2,
    };
    let own = material.loss_factor.as_ref().map_or(usual, |loss| loss.value);
    let loss = if make_up.layers().is_empty() { own } else { own.max(WINDING_LOSS) };
    let mut length_m = figures.length.expect("a length").to_m();
    let mut hz = figures.frequency.expect("a pitch").to_hz();
    let open_m = length_m;
    if string.mechanism == Mechanism::Lever && ask.raised == 1 {
        let place = figures.lever.expect("a place").distance.to_m();
        length_m = (length_m - place).hypot(harp.conditions.push.to_m());
        hz *= 2.0_f64.powf(1.0 / 12.0);
    }
    let (board, pin) = make_up.bare_ends();
    json!({
        "name": case.name,
        "partials": case.partials,
        "hz": hz,
        "length_m": length_m,
        "at": ask.pluck_ratio * open_m / length_m,
        "kg_per_m": figures.linear_density.expect("a mass").to_kg_per_m(),
        "core_kg_per_m": make_up.core_linear_density().expect("a core").to_kg_per_m(),
        "gauge_m": figures.gauge.expect("a gauge").to_m(),
        "core_m": core.to_m(),
        "modulus": [modulus.base.to_pa(), modulus.per_stress_ratio],
        "loss": loss,
        "bare_m": [board.to_m(), pin.to_m()],
        "board": ask.board.to_s_per_kg(),
    })
}

fn kept() -> Value {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sound/measured.json");
    let text = fs::read_to_string(&path).expect("the measurements are kept");
    serde_json::from_str(&text).expect("they are JSON")
}

fn number(at: &Value) -> f64 {
    at.as_f64().expect("a number")
}

/// Where the sounds are written for the script.
fn folder() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("sound");
    fs::create_dir_all(&folder).expect("a folder for the sounds");
    folder
}

/// Height of a swing around a sample, by a sum over a window that leaves out what is near in pitch.
fn height(sound: &[f32], at: usize, hz: f64) -> f64 {
    let (count, mut sums) = (4096_u32, (0.0, 0.0));
    for place in 0..count {
        let share = f64::from(place) / f64::from(count);
        let window = 0.5 - 0.5 * (TAU * share).cos();
        let sample = f64::from(sound[at + usize::try_from(place).expect("small")]);
        let (sine, cosine) = (TAU * hz / f64::from(RATE_HZ) * f64::from(place)).sin_cos();
        sums = (sums.0 + window * sample * cosine, sums.1 + window * sample * sine);
    }
    f64::hypot(sums.0, sums.1)
}

/// 0.02 cents and 2 % of the decay are what the measurement can tell: steps of 16 bits, other partials, and the drag,
/// whose three terms are up to 0.5 % off where `M` is near 1.
#[test]
fn partials_and_decays_are_what_fft_and_closed_forms_say() {
    let folder = folder();
    let strings: Vec<Value> = CASES.iter().map(told).collect();
    let written = serde_json::to_string_pretty(&strings).expect("plain numbers");
    fs::write(folder.join("strings.json"), written).expect("a file can be written");
    for case in &CASES {
        fs::write(folder.join(format!("{}.wav", case.name)), played(case).bytes)
            .expect("a file can be written");
    }
    if std::env::var_os("WRITE").is_some() {
        return;
    }
    let kept = kept();
    let mut count = 0;
    for (case, found) in CASES.iter().zip(kept["strings"].as_array().expect("a list")) {
        assert_eq!(
            found["name"],
            case.name,
            "run sound/scripts/measure.py on {}",
            folder.display()
        );
        let harp = harp(case);
        let voice = voice(&harp, 0, &ask(case, &harp)).expect("the string sounds");
        let sound = ring(&voice, f64::from(RATE_HZ), 6.0);
        for row in found["partials"].as_array().expect("a list") {
            let what = format!("{}, partial {}", case.name, row["n"]);
            let (hz, decay_s) = (number(&row["hz"]), number(&row["decay_s"]));
            let partial = voice
                .partials
                .iter()
                .min_by(|one, other| (one.hz - hz).abs().total_cmp(&(other.hz - hz).abs()));
            let partial = partial.expect("a voice has partials");
            for (by, hz, decay_s, decay_room) in [
                ("closed form", hz, decay_s, 5e-3),
                ("FFT", number(&row["measured_hz"]), number(&row["measured_decay_s"]), 2e-2),
            ] {
                let cents = 1200.0 * (partial.hz / hz).log2();
                assert!(cents.abs() < 0.02, "{what}: {cents} cents off the {by}");
                let off = partial.decay_s / decay_s - 1.0;
                assert!(off.abs() < decay_room, "{what}: decay off by {off} of the {by}");
            }
            // The samples themselves, as they are rendered now, fall as was measured.
            let apart = usize::try_from(RATE_HZ / 20).expect("small");
            let fall = height(&sound, 300 + apart, hz) / height(&sound, 300, hz);
            let measured_s = number(&row["measured_decay_s"]);
            let expected = (-0.05 / measured_s).exp();
            assert!((fall / expected - 1.0).abs() < 0.05, "{what}: {fall} for {expected}");
            count += 1;
        }
    }
    assert!(count >= 50, "{count} partials were measured");
}

/// Source: the exact drag by modified Bessel functions, the function `kv` of `scipy.special`, in `measured.json`.
#[test]
fn the_drag_of_the_air_is_that_of_bessel_functions() {
    let kept = kept();
    let rows = kept["drag"].as_array().expect("a list");
    assert!(rows.len() >= 8);
    for row in rows {
        let (stokes, exact) = (number(&row[0]), number(&row[1]));
        let off = drag_ratio(stokes) / exact - 1.0;
        // The next term of the series.
        let room = 6e-3 * stokes.powi(-4) + 1e-5;
        assert!(off.abs() < room, "M = {stokes}: off by {off}");
    }
}

/// Nothing clips and nothing clicks, whatever is played: a string, a chord, a scale and a glide of each sample.
#[test]
fn what_is_played_stays_six_decibels_below_full_and_has_no_jump() {
    use stringloft::design::presets::SAMPLES;
    for sample in SAMPLES {
        for pattern in Pattern::ALL {
            let wish = Wish { string: "9".into(), pattern, rate_hz: 22_050, most_s: 1.5 };
            let file = file(sample.json, &wish, |_| {}).expect("it sounds");
            assert_eq!(file.told, [""; 0], "{}", sample.key);
            let whole = |two: &[u8]| f32::from(i16::from_le_bytes([two[0], two[1]])) / 32_767.0;
            let sound: Vec<f32> = file.bytes[44..].chunks_exact(2).map(whole).collect();
            let what = format!("{}, {pattern:?}", sample.key);
            assert!((peak(&sound) - PEAK).abs() < 4e-5, "{what}: {}", peak(&sound));
            assert_eq!((sound[0], sound[sound.len() - 1]), (0.0, 0.0), "{what}");
            let begin = &sound[..10];
            let ramp = (10.0 / (RAMP_S * 22_050.0)).powi(2) * 2.5;
            assert!(f64::from(peak(begin)) < ramp, "{what}: {} at once", peak(begin));
        }
    }
}

/// What is heard while the rest is rendered is as loud as foreseen: hardly let down on its way, and no more than 6 dB
/// below the limit; and what is compared is equally loud, though neither sound was known as a whole.
#[test]
fn what_is_played_piece_by_piece_is_as_loud_as_foreseen() {
    use std::cell::RefCell;
    use std::rc::Rc;

    use stringloft::design::presets::SAMPLES;
    use stringloft::engine::sound::mix::{Mix, Strung};
    use stringloft::engine::sound::render::energy;
    use stringloft::engine::sound::ringing::Ringing;
    use stringloft::engine::sound::thickest;

    let rate_hz = 22_050.0;
    for key in ["floor-36", "pedal-47"] {
        let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
        let harp = resolve(&sample.design()).harp;
        let thick = thickest(&harp);
        for pattern in Pattern::ALL {
            let set = |harp: &Harp| -> Vec<Strung> {
                let strings = pattern.strings(20, harp.strings.len());
                let strung = |(index, start_s): (usize, f64)| {
                    let voice = voice(harp, index, &Ask::of(harp)).ok()?;
                    let string = Rc::new(RefCell::new(Ringing::new(&voice, rate_hz, 1.5)));
                    Some(Strung { string, voice: Rc::new(voice), start_s })
                };
                strings.into_iter().filter_map(strung).collect()
            };
            let mut sounds = [Vec::new(), Vec::new()];
            for pieces in Mix::new(vec![set(&harp), set(&thick)], rate_hz) {
                sounds.iter_mut().zip(pieces).for_each(|(sound, piece)| sound.extend(piece));
            }
            let highest = peak(&sounds[0]).max(peak(&sounds[1]));
            assert!((0.5 * PEAK..=PEAK).contains(&highest), "{key}, {pattern:?}: {highest}");
            let apart = 10.0 * (energy(&sounds[1], rate_hz) / energy(&sounds[0], rate_hz)).log10();
            assert!(apart.abs() < 0.3, "{key}, {pattern:?}: {apart} dB");
        }
    }
}
