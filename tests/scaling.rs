//! What must hold for every string of the compass, tried on many that are drawn at random, always the same:
//! what more length, mass or pitch does, and that no input brings a figure that is no number. Mersenne's laws are
//! in `published/laws.rs`.

use std::sync::Arc;

use stringloft::engine::analysis::{
    Conditions, Harp, HarpString, Limits, Mechanism, StringFigures, Unknown, analyse,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::material::{Material, built_in};
use stringloft::engine::mechanics::{Core, inharmonicity, tension};
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};

#[path = "scaling/draws.rs"]
mod draws;

use draws::Draws;

/// A plain string that a harp may have: 60 mm to 1.6 m, C1 to G7, at a workable stress.
struct Sample {
    make_up: MakeUp,
    length: Length,
    pitch: Frequency,
}

impl Sample {
    fn drawn(draws: &mut Draws, materials: &[Arc<Material>]) -> Self {
        let hz = draws.between_log(32.703, 3135.963);
        // Length times pitch from 60 to 250 m/s, as far as the lengths of a harp go.
        let length_mm = (draws.between_log(60.0, 250.0) / hz * 1e3).clamp(60.0, 1600.0);
        let diameter = Length::from_mm(draws.between_log(0.3, 1.6));
        let make_up =
            MakeUp::plain(draws.one_of(materials), diameter).expect("the sample can be made");
        Self { make_up, length: Length::from_mm(length_mm), pitch: Frequency::from_hz(hz) }
    }

    fn core(&self) -> Core {
        let (material, diameter) = self.make_up.core().expect("a plain string");
        let modulus = material.modulus.as_ref().expect("built in").value;
        Core { diameter, modulus }
    }

    fn density(&self) -> LinearDensity {
        self.make_up.linear_density()
    }

    fn pull(&self, core: Option<Core>) -> f64 {
        tension(self.density(), self.length, self.pitch, core).to_n()
    }
}

fn materials() -> Vec<Arc<Material>> {
    built_in().into_iter().map(Arc::new).collect()
}

fn samples(count: usize) -> Vec<Sample> {
    let (mut draws, materials) = (Draws::new(17), materials());
    (0..count).map(|_| Sample::drawn(&mut draws, &materials)).collect()
}

fn times(length: Length, factor: f64) -> Length {
    Length::from_m(length.to_m() * factor)
}

#[test]
fn a_stiff_string_pulls_more_when_longer_higher_or_heavier() {
    for sample in samples(2_000) {
        let core = Some(sample.core());
        let pull = sample.pull(core);
        let longer = tension(sample.density(), times(sample.length, 1.01), sample.pitch, core);
        let raised = Frequency::from_hz(sample.pitch.to_hz() * 1.01);
        let higher = tension(sample.density(), sample.length, raised, core);
        let heavier = LinearDensity::from_kg_per_m(sample.density().to_kg_per_m() * 1.01);
        let heavier = tension(heavier, sample.length, sample.pitch, core);
        assert!(longer.to_n() > pull && higher.to_n() > pull && heavier.to_n() > pull);
        assert!(pull < sample.pull(None));
    }
}

/// While stiffness is small, a thicker plain string pulls more: `T` goes with `d²` less a little of `d⁴`.
#[test]
fn a_thicker_string_pulls_more_and_is_less_harmonic() {
    let mut tried = 0;
    for sample in samples(2_000) {
        let (material, diameter) = sample.make_up.core().expect("a plain string");
        let at = |factor: f64| {
            let diameter = times(diameter, factor);
            let string = MakeUp::plain(Arc::clone(material), diameter).expect("made");
            let core = Core { diameter, ..sample.core() };
            let pull = tension(string.linear_density(), sample.length, sample.pitch, Some(core));
            (pull, inharmonicity(core, sample.length, pull))
        };
        let ((pull, b), (more, sharper)) = (at(1.0), at(1.01));
        if pull.to_n() > 0.0 && b < 0.1 {
            tried += 1;
            assert!(more > pull && sharper > b, "{:?} {diameter:?}", material.key);
        }
    }
    assert!(tried > 1_500, "only {tried} of the drawn strings are slender");
}

#[test]
fn it_is_one_which_end_of_a_wound_string_is_bare() {
    let (mut draws, materials) = (Draws::new(23), materials());
    for _ in 0..500 {
        let (one, other) = (draws.between(0.0, 40.0), draws.between(0.0, 40.0));
        let (core, wrap) = (draws.one_of(&materials), draws.one_of(&materials));
        let section = Section::Round { diameter: Length::from_mm(draws.between(0.1, 0.6)) };
        let layer = Layer { material: wrap, section, packing_ratio: draws.between(0.3, 1.0) };
        let diameter = Length::from_mm(draws.between(0.3, 1.0));
        let (length, hz) = (draws.between(600.0, 1600.0), draws.between(33.0, 130.0));
        let figures = |bare: (f64, f64)| {
            let bare = (Length::from_mm(bare.0), Length::from_mm(bare.1));
            let make_up = MakeUp::wound(Arc::clone(&core), diameter, vec![layer.clone()], bare)
                .expect("the sample can be made");
            one_string(make_up, length, hz)
        };
        let (forth, back, closed) =
            (figures((one, other)), figures((other, one)), figures((0.0, 0.0)));
        assert_eq!(forth.tension, back.tension);
        let b = |figures: &StringFigures| figures.inharmonicity_b;
        if let (Ok(forth), Ok(back), Ok(closed)) = (b(&forth), b(&back), b(&closed)) {
            assert!((forth - back).abs() <= 1e-12 * forth);
            assert!(forth >= closed, "a bare end makes no string more harmonic");
        }
    }
}

#[test]
fn no_harp_brings_a_figure_that_is_no_number() {
    let (mut draws, materials) = (Draws::new(47), materials());
    let mut known = 0;
    for _ in 0..10_000 {
        let strings = (0..draws.below(8)).map(|_| draws.harp_string(&materials)).collect();
        let harp = Harp {
            strings,
            pluck_ratio: draws.pluck_ratio(),
            conditions: Conditions::default(),
            limits: draws.limits(),
        };
        let analysis = analyse(&harp);
        // The printed form has every field there is, and any that will be added.
        let printed = format!("{analysis:?}");
        let words = printed.split(|c: char| !c.is_ascii_alphanumeric());
        let strange = words.filter(|word| ["NaN", "inf"].contains(word)).count();
        assert_eq!(strange, 0, "{harp:?}\n{printed}");
        assert_eq!(analysis.strings.len(), harp.strings.len());
        let missing = analysis.strings.iter().filter(|s| s.tension.is_err()).count();
        assert_eq!(analysis.without_tension, missing);
        known += analysis.strings.len() - missing;
        assert!(
            analysis
                .strings
                .iter()
                .all(|s| s.tension.is_ok_and(|t| t.to_n() > 0.0) || s.tension.is_err())
        );
    }
    assert!(known > 5_000, "only {known} strings had a tension");
}

#[test]
fn lengths_and_pitches_out_of_reach_are_said_to_be_missing() {
    let nylon = materials().into_iter().find(|m| m.key == "nylon").expect("built in");
    let make_up = MakeUp::plain(nylon, Length::from_mm(0.8)).expect("can be made");
    for hostile in draws::HOSTILE {
        let figures = one_string(make_up.clone(), hostile, 440.0);
        assert_eq!(figures.length, Err(Unknown::Length), "{hostile} mm");
        assert_eq!(figures.tension, Err(Unknown::Length), "{hostile} mm");
        let figures = one_string(make_up.clone(), 450.0, hostile);
        assert_eq!(figures.frequency, Err(Unknown::Pitch), "{hostile} Hz");
        assert_eq!(figures.pluck_stiffness, Err(Unknown::Pitch), "{hostile} Hz");
    }
}

fn one_string(make_up: MakeUp, length_mm: f64, hz: f64) -> StringFigures {
    let string = HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(hz)),
        length: Ok(Length::from_mm(length_mm)),
        make_up: Ok(make_up),
        mechanism: Mechanism::Lever,
    };
    let harp = Harp {
        strings: vec![string],
        pluck_ratio: 0.4,
        conditions: Conditions::default(),
        limits: limits(),
    };
    analyse(&harp).strings.remove(0)
}

fn limits() -> Limits {
    Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(10.0),
        stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
        partial_8_cents: 30.0,
        jump_percent: 50.0,
        least_raise: Length::from_mm(0.0),
    }
}
