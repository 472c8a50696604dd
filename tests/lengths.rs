//! Lengths that are proposed, scaled, stretched and faired: small cases by hand, and what must hold for all. The
//! comparison with a library is in `published/lengths.rs`.

use std::sync::Arc;

use stringloft::engine::analysis::{
    Conditions, Harp, HarpString, Known, Limits, Mechanism, StringFigures, Unknown, analyse,
};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::lengths::{
    Aim, Asked, Bound, Conflict, Held, Proposal, Smoothing, Strength, fair, propose, stretch,
};
use stringloft::engine::material::{Material, built_in};
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};

#[path = "scaling/draws.rs"]
mod draws;
#[path = "lengths/shaped.rs"]
mod shaped;

use draws::{Draws, HOSTILE};

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn material(key: &str) -> Arc<Material> {
    Arc::new(built_in().into_iter().find(|m| m.key == key).expect("a built-in material"))
}

fn string(make_up: MakeUp, hz: f64, length: Length) -> HarpString {
    HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(hz)),
        length: Ok(length),
        make_up: Ok(make_up),
        mechanism: Mechanism::None,
    }
}

fn limits() -> Limits {
    Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(10.0),
        stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
        partial_8_cents: 30.0,
        jump_percent: 25.0,
        least_raise: Length::from_mm(0.0),
    }
}

fn harp(strings: Vec<HarpString>) -> Harp {
    Harp { strings, pluck_ratio: 0.4, conditions: Conditions::default(), limits: limits() }
}

/// Of 1 g/m without stiffness, at the pitches given.
fn flexible(pitches: impl IntoIterator<Item = f64>) -> Harp {
    let make_up = |_| MakeUp::weighed(LinearDensity::from_g_per_m(1.0), None, None, None);
    let strings =
        pitches.into_iter().map(|hz| string(make_up(hz).expect("a weighed string"), hz, mm(300.0)));
    harp(strings.collect())
}

fn tension(newton: f64) -> Asked {
    Asked { aim: Some(Aim::Tension(Force::from_n(newton))), ..Asked::default() }
}

fn figures(harp: &Harp, lengths: &[Known<Length>]) -> Vec<StringFigures> {
    let mut harp = harp.clone();
    for (string, length) in harp.strings.iter_mut().zip(lengths) {
        string.length = *length;
    }
    analyse(&harp).strings
}

fn metres(lengths: &[Known<Length>]) -> Vec<f64> {
    lengths.iter().map(|length| length.expect("a length").to_m()).collect()
}

#[track_caller]
fn assert_lengths(got: &[Known<Length>], expected: &[f64], room: f64) {
    for (index, (got, expected)) in metres(got).iter().zip(expected).enumerate() {
        assert!((got / expected - 1.0).abs() <= room, "string {index}: {got} m for {expected} m");
    }
}

fn well(strings: usize) -> Smoothing {
    Smoothing::of(Strength::Well, strings)
}

/// By hand: strings of one make-up and one pull have `L = √(T/μ)/(2 f)`, and pitches that fall by one ratio make
/// that a line over the logarithm, which costs nothing.
#[test]
fn one_make_up_and_one_pull_have_lengths_in_closed_form() {
    let pitches: Vec<f64> = (0..20).map(|index| 800.0 * 0.92_f64.powi(index)).collect();
    let harp = flexible(pitches.clone());
    let proposal = propose(&harp, &[tension(40.0); 20], well(20)).expect("room");
    let expected: Vec<f64> = pitches.iter().map(|hz| 200.0 / (2.0 * hz)).collect();
    assert_lengths(&proposal.lengths, &expected, 1e-9);
    assert!(proposal.sum_after < 1e-20, "{}", proposal.sum_after);
    // `k = T/(L β (1 − β)) = 4 μ f² L/(β (1 − β))`, and so `L = k β (1 − β)/(4 μ f²)`.
    let feel =
        Asked { aim: Some(Aim::Stiffness(Stiffness::from_n_per_m(500.0))), ..Asked::default() };
    let proposal = propose(&harp, &[feel; 20], well(20)).expect("room");
    let expected: Vec<f64> =
        pitches.iter().map(|hz| 500.0 * 0.24 / (4.0 * 1e-3 * hz * hz)).collect();
    assert_lengths(&proposal.lengths, &expected, 1e-9);
}

/// By hand: with four strings there is one third difference, `D = −x₁ + 3 x₂ − 3 x₃ + x₄`, and targets `t` that all
/// count once give `x = t − c λ D(t)/(1 + 20 λ)`, `c` being the coefficients and 20 the sum of their squares.
#[test]
fn four_strings_share_what_their_third_difference_costs() {
    let harp = flexible([400.0, 380.0, 350.0, 300.0]);
    let coefs = [-1.0, 3.0, -3.0, 1.0];
    let targets: Vec<f64> =
        [400.0, 380.0, 350.0, 300.0].iter().map(|hz| f64::ln(200.0 / (2.0 * hz))).collect();
    let bend: f64 = coefs.iter().zip(&targets).map(|(c, t)| c * t).sum();
    for waves in [2.0, 7.0, 14.0_f64] {
        let lambda = (2.0 * (std::f64::consts::PI / waves).sin()).powi(-6);
        let expected: Vec<f64> = coefs
            .iter()
            .zip(&targets)
            .map(|(c, t)| (t - c * lambda * bend / (1.0 + 20.0 * lambda)).exp())
            .collect();
        let smoothing = Smoothing { waves, greatest_kink: None, least_rise: None };
        let proposal = propose(&harp, &[tension(40.0); 4], smoothing).expect("room");
        assert_lengths(&proposal.lengths, &expected, 1e-9);
        let sum = lambda * bend * bend / (1.0 + 20.0 * lambda);
        assert!((proposal.sum_after / sum - 1.0).abs() < 1e-9);
    }
}

/// A harp of plain strings in gauges that step, with a core of steel below, and targets that waver.
fn drawn(draws: &mut Draws, count: i32) -> (Harp, Vec<Asked>) {
    let (nylon, gut) = (material("nylon"), material("gut"));
    let mut asked = Vec::new();
    let strings = (0..count).map(|index| {
        let place = f64::from(index) / 46.0;
        let usual = mm(90.0 * (1500.0_f64 / 90.0).powf(place.powf(0.85)));
        let hz = 2_000.0 * (-f64::from(index) / 7.0).exp2();
        let thick = |pull: f64, density: f64| {
            let root = (pull / (density * std::f64::consts::PI)).sqrt() / (usual.to_m() * hz);
            mm(((root * 1e3) / 0.1).round() * 0.1)
        };
        let make_up = if index < 12 {
            MakeUp::plain(Arc::clone(&nylon), thick(100.0, 1140.0))
        } else if index < 30 {
            MakeUp::plain(Arc::clone(&gut), thick(130.0, 1300.0))
        } else {
            let section = Section::Round { diameter: mm(0.4) };
            let wrap = Layer { material: material("bronze"), section, packing_ratio: 1.0 };
            MakeUp::wound(material("steel"), mm(0.7), vec![wrap], (mm(15.0), mm(5.0)))
        };
        let aim = Aim::Tension(Force::from_n(draws.between(90.0, 160.0)));
        let (least, most) = (draws.between(0.8, 0.99), draws.between(1.01, 1.2));
        asked.push(Asked {
            aim: Some(aim),
            weight: draws.between(0.5, 2.0),
            is_locked: draws.below(12) == 0,
            least: Some(mm(usual.to_mm() * least)),
            most: Some(mm(usual.to_mm() * most)),
            ..Asked::default()
        });
        string(make_up.expect("it can be made"), hz, usual)
    });
    let strings = strings.collect();
    (harp(strings), asked)
}

#[test]
fn looser_bounds_are_never_worse_and_every_bound_is_kept() {
    let mut draws = Draws::new(5);
    for round in 0..20 {
        let count = 8 + 4 * (round % 10);
        let (harp, asked) = drawn(&mut draws, count);
        let strings = harp.strings.len();
        let mut last = f64::INFINITY;
        for room in [1.0, 1.05, 1.2, 10.0] {
            let asked: Vec<Asked> = asked
                .iter()
                .map(|asked| Asked {
                    least: asked.least.map(|m| mm(m.to_mm() / room)),
                    most: asked.most.map(|m| mm(m.to_mm() * room)),
                    ..*asked
                })
                .collect();
            let proposal = propose(&harp, &asked, well(strings)).expect("room");
            assert!(proposal.sum_after <= last * (1.0 + 1e-9), "harp {round}, room {room}");
            assert!(proposal.off_best < 1e-9, "harp {round}: {}", proposal.off_best);
            last = proposal.sum_after;
            if let Some(before) = proposal.sum_before
                && room > 1.0
            {
                assert!(last <= before, "harp {round}: {before} before, {last} after");
            }
            for (index, (length, asked)) in metres(&proposal.lengths).iter().zip(&asked).enumerate()
            {
                let (least, most) = (asked.least.expect("set"), asked.most.expect("set"));
                if asked.is_locked {
                    assert_eq!(proposal.held[index], Some(Held::Locked));
                    assert_eq!(proposal.lengths[index], harp.strings[index].length);
                } else {
                    assert!((least.to_m()..=most.to_m()).contains(length), "harp {round}, {index}");
                }
            }
            let again = propose(&harp, &asked, well(strings)).expect("room");
            assert_eq!(again, proposal);
        }
    }
}

/// What is left over is given in the same figures that the chart shows.
#[test]
fn deviations_are_those_of_the_analysis() {
    let (harp, asked) = drawn(&mut Draws::new(11), 47);
    let Proposal { lengths, off_after, .. } = propose(&harp, &asked, well(47)).expect("room");
    for (index, figures) in figures(&harp, &lengths).iter().enumerate() {
        let Some(Aim::Tension(aim)) = asked[index].aim else { continue };
        let off = (figures.tension.expect("a pull").to_n() / aim.to_n()).ln();
        assert!((off - off_after[index].expect("known")).abs() < 1e-12, "string {index}");
    }
}

#[test]
fn load_shares_bound_the_lengths() {
    let (harp, mut asked) = drawn(&mut Draws::new(12), 47);
    for asked in &mut asked {
        *asked = Asked {
            aim: asked.aim,
            least_share_percent: Some(22.0),
            most_share_percent: Some(40.0),
            ..Asked::default()
        };
    }
    let proposal = propose(&harp, &asked, well(47)).expect("room");
    assert!(proposal.without_share.is_empty());
    let figures = figures(&harp, &proposal.lengths);
    let (mut low, mut high) = (0, 0);
    for (held, figures) in proposal.held.iter().zip(&figures) {
        let share = figures.load_share_percent.expect("built-in materials have a strength");
        assert!((22.0 - 1e-6..=40.0 + 1e-6).contains(&share), "{share}");
        match held {
            Some(Held::Least(Bound::LoadShare)) => {
                assert!((share - 22.0).abs() < 1e-6, "{share}");
                low += 1;
            }
            Some(Held::Most(Bound::LoadShare)) => {
                assert!((share - 40.0).abs() < 1e-6, "{share}");
                high += 1;
            }
            other => assert_eq!(*other, None),
        }
    }
    assert!(low + high > 0, "no bound holds");
}

#[test]
fn bounds_that_contradict_are_named_with_their_strings() {
    let harp = flexible([400.0, 360.0, 320.0, 280.0]);
    let mut asked = [tension(40.0); 4];
    asked[1].least = Some(mm(300.0));
    asked[1].most = Some(mm(250.0));
    asked[2].least = Some(mm(300.0));
    asked[2].most = Some(mm(200.0));
    asked[2].is_locked = true;
    let conflict =
        Conflict { index: 1, least: (mm(300.0), Bound::Asked), most: (mm(250.0), Bound::Asked) };
    assert_eq!(propose(&harp, &asked, well(4)), Err(vec![conflict]));
}

#[test]
fn a_load_share_that_cannot_be_told_is_told() {
    let mut asked = [tension(40.0); 3];
    asked[1].most_share_percent = Some(40.0);
    let proposal = propose(&flexible([400.0, 360.0, 320.0]), &asked, well(3)).expect("room");
    assert_eq!(proposal.without_share, [1]);
}

#[test]
fn the_curve_runs_through_strings_without_a_pull() {
    let pitches: Vec<f64> = (0..12).map(|index| 800.0 * 0.92_f64.powi(index)).collect();
    let mut harp = flexible(pitches.clone());
    harp.strings[4].frequency = Err(Unknown::Pitch);
    harp.strings[5].make_up = Err(Unknown::MakeUp);
    harp.strings[6].length = Err(Unknown::Length);
    let proposal = propose(&harp, &[tension(40.0); 12], well(12)).expect("room");
    let expected: Vec<f64> = pitches.iter().map(|hz| 200.0 / (2.0 * hz)).collect();
    assert_lengths(&proposal.lengths, &expected, 1e-9);
    assert_eq!((proposal.off_after[4], proposal.off_after[5]), (None, None));
    assert_eq!(proposal.sum_before, None);
}

#[test]
fn without_any_target_lengths_stay() {
    let mut harp = flexible([400.0, 360.0, 320.0]);
    harp.strings[1].length = Err(Unknown::Length);
    let asked = [Asked { most: Some(mm(250.0)), ..Asked::default() }];
    let proposal = propose(&harp, &asked, well(3)).expect("room");
    assert!((proposal.lengths[0].expect("a length").to_mm() - 250.0).abs() < 1e-9);
    assert_eq!(proposal.lengths[1..], [Err(Unknown::Length), Ok(mm(300.0))]);
    assert_eq!(proposal.held, [Some(Held::Most(Bound::Asked)), None, None]);
}

#[test]
fn a_greatest_kink_is_kept_by_longer_waves() {
    let (harp, mut asked) = drawn(&mut Draws::new(3), 40);
    for asked in &mut asked {
        (asked.is_locked, asked.least, asked.most) = (false, None, None);
    }
    let rough = Smoothing { waves: 3.0, greatest_kink: None, least_rise: None };
    let kink = |proposal: &Proposal| proposal.uneven_after.kink.expect("a kink").1.to_mm().abs();
    let before = propose(&harp, &asked, rough).expect("room");
    assert!(kink(&before) > 1.5, "{}", kink(&before));
    let smooth = Smoothing { greatest_kink: Some(mm(1.5)), ..rough };
    let after = propose(&harp, &asked, smooth).expect("room");
    assert!(kink(&after) <= 1.5 && after.waves > 3.0, "{}", kink(&after));
}

#[test]
fn hostile_numbers_end_in_lengths_or_in_conflicts() {
    let materials: Vec<Arc<Material>> = built_in().into_iter().map(Arc::new).collect();
    let mut draws = Draws::new(99);
    for round in 0..300 {
        let count = draws.below(14);
        let strings = (0..count).map(|_| draws.harp_string(&materials)).collect();
        let mut harp = harp(strings);
        harp.pluck_ratio = draws.pluck_ratio();
        harp.limits = draws.limits();
        let any = |draws: &mut Draws, usual: f64| match draws.below(8) {
            0 => HOSTILE[draws.below(HOSTILE.len())],
            _ => usual * draws.between_log(0.3, 3.0),
        };
        let asked: Vec<Asked> = (0..draws.below(16))
            .map(|_| {
                let pull = Aim::Tension(Force::from_n(any(&mut draws, 100.0)));
                let feel = Aim::Stiffness(Stiffness::from_n_per_m(any(&mut draws, 600.0)));
                let aim = [None, Some(pull), Some(feel)][draws.below(3)];
                let bound = |draws: &mut Draws, usual: f64| {
                    let value = any(draws, usual);
                    (draws.below(3) == 0).then_some(value)
                };
                Asked {
                    aim,
                    weight: any(&mut draws, 1.0),
                    is_locked: draws.below(6) == 0,
                    least: bound(&mut draws, 100.0).map(mm),
                    most: bound(&mut draws, 1_000.0).map(mm),
                    least_share_percent: bound(&mut draws, 3.0),
                    most_share_percent: bound(&mut draws, 60.0),
                }
            })
            .collect();
        let smoothing = Smoothing {
            waves: any(&mut draws, 10.0),
            greatest_kink: (draws.below(3) == 0).then(|| mm(any(&mut draws, 2.0))),
            least_rise: (round % 2 == 0).then(|| mm(1.0)),
        };
        match propose(&harp, &asked, smoothing) {
            Err(conflicts) => assert!(!conflicts.is_empty()),
            Ok(proposal) => {
                assert_eq!(proposal.lengths.len(), count);
                for (index, length) in proposal.lengths.iter().enumerate() {
                    let is_as_before =
                        format!("{length:?}") == format!("{:?}", harp.strings[index].length);
                    let is_usable = length.is_ok_and(|m| m.to_m().is_finite() && m.to_m() > 0.0);
                    assert!(is_as_before || is_usable, "round {round}: {length:?}");
                }
            }
        }
        let lengths: Vec<Known<Length>> = harp.strings.iter().map(|string| string.length).collect();
        let range = draws.below(9)..draws.below(20);
        let _ = fair(&lengths, range.clone(), Strength::Fully, &[true]);
        let ratios = (any(&mut draws, 1.0), any(&mut draws, 1.0));
        for length in stretch(&lengths, range, ratios).iter().flatten() {
            assert!(!length.to_m().is_nan() || lengths.iter().flatten().any(|m| m.to_m().is_nan()));
        }
    }
}
