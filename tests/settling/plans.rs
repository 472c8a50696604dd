//! The samples brought up to pitch by their plans.

use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::{Analysis, Harp, Unknown, analyse, is_soft};
use stringloft::engine::bearing::{Gives, Order, gives};
use stringloft::engine::geometry::{lay_out, loads};
use stringloft::engine::pitch::ratio;
use stringloft::engine::settling::plan::{Asked, MOST_SHARP_CENTS, Reach, WITHIN_CENTS, plan};

struct Sample {
    key: &'static str,
    harp: Harp,
    analysis: Analysis,
    gives: Gives,
}

fn samples() -> impl Iterator<Item = Sample> {
    SAMPLES.iter().map(|sample| {
        let resolved = resolve(&sample.design());
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        let gives = gives(&band, &loads, &analysis, &resolved.geometry, &resolved.build()).unwrap();
        Sample { key: sample.key, harp: resolved.harp, analysis, gives }
    })
}

#[test]
fn the_samples_come_to_pitch_in_no_more_passes_than_without_tuning_sharp() {
    let mut shortened = 0;
    for Sample { key, harp, analysis, gives } in samples() {
        for before_cents in [Vec::new(), Asked::default().before_cents] {
            let asked = Asked { before_cents, ..Asked::default() };
            let plan = plan(Some(&gives), &harp, &analysis, &asked);
            assert!(plan.is_foretold && plan.is_enough && plan.left_out.is_empty(), "{key}");
            let (with, without) = (plan.passes.len(), plan.without_sharp.unwrap());
            let worst: Vec<f64> =
                plan.passes.iter().filter_map(|pass| pass.worst_cents()).collect();
            eprintln!("{key}: {with} passes, {without} with none sharp; left {worst:.1?}");
            assert!(with <= without, "{key}: {with} of {without}");
            shortened += usize::from(with < without);
            assert!(worst.last().unwrap() <= &WITHIN_CENTS, "{key}");
            for pass in &plan.passes {
                assert_eq!(pass.steps.len(), analysis.strings.len(), "{key}");
            }
        }
    }
    assert!(shortened > 0);
}

/// No step goes above the share that the maker allows, nor beyond half of the way to breaking.
#[test]
fn no_string_of_a_sample_is_tuned_beyond_its_limit() {
    for Sample { key, harp, analysis, gives } in samples() {
        for order in Order::ALL {
            let asked = Asked { order, before_cents: Vec::new(), within_cents: 2.0 };
            let plan = plan(Some(&gives), &harp, &analysis, &asked);
            for step in plan.passes.iter().flat_map(|pass| &pass.steps) {
                let figures = &analysis.strings[step.place];
                // All passes of this plan end at pitch.
                let (sharp, left) = (step.sharp_cents, 100.0 * figures.semitones_to_break.unwrap());
                assert!(sharp <= 0.5 * left + 1e-9 && sharp <= MOST_SHARP_CENTS + 1e-9, "{key}");
                let own = figures.load_share_percent.unwrap();
                let make_up = harp.strings[step.place].make_up.as_ref().unwrap();
                let most = harp.limits.most_share_percent(is_soft(make_up)).max(own);
                let share = own * ratio(sharp) * ratio(sharp);
                assert!(share <= most + 1e-9, "{key}: {share} of {most}");
            }
        }
    }
}

/// Frame and board that give in one way only, with strings whose modulus over weeks is that over minutes, as wire has it: a
/// pass leaves nothing where every string may go as high as it must.
#[test]
fn a_pass_leaves_nothing_where_it_is_known_exactly_how_a_harp_of_wire_gives() {
    let Sample { key, harp, analysis, mut gives } =
        samples().find(|sample| sample.key == "wire-22").unwrap();
    gives.frames.truncate(1);
    gives.boards[1] = gives.boards[0].clone();
    let plan = plan(Some(&gives), &harp, &analysis, &Asked::default());
    let first = &plan.passes[0];
    assert!(first.steps.iter().all(|step| step.reach == Reach::Whole), "{key}: {:?}", first.steps);
    assert!(first.worst_cents().unwrap() < 1e-6, "{key}: {:?}", first.worst_cents());
    assert!(first.steps[0].sharp_cents > 1.0, "{key}: the first string has a fall to make up for");
    assert!(first.steps.last().unwrap().sharp_cents.abs() < 1e-6, "{key}: and the last has none");
}

#[test]
fn without_a_frame_the_plan_foretells_nothing() {
    let Sample { harp, analysis, .. } = samples().next().unwrap();
    let plan = plan(None, &harp, &analysis, &Asked::default());
    assert!(!plan.is_foretold && !plan.is_enough && plan.without_sharp.is_none());
    let below: Vec<f64> = plan.passes.iter().map(|pass| pass.below_cents).collect();
    assert_eq!(below, [500.0, 100.0, 0.0]);
    for step in plan.passes.iter().flat_map(|pass| &pass.steps) {
        assert_eq!((step.sharp_cents, step.left_cents), (0.0, None));
    }
    assert_eq!(plan.passes[2].worst_cents(), None);
}

#[test]
fn a_string_without_tension_is_left_out_and_named() {
    let Sample { mut harp, gives, .. } = samples().next().unwrap();
    harp.strings[4].length = Err(Unknown::Length);
    let analysis = analyse(&harp);
    for gives in [None, Some(&gives)] {
        let plan = plan(gives, &harp, &analysis, &Asked::default());
        assert_eq!(plan.left_out, [4]);
        assert!(plan.passes[0].steps.iter().all(|step| step.place != 4));
    }
}

/// The pins of the first pass take up the share of the stretch that the tension has at their turn.
#[test]
fn the_pins_of_a_first_pass_turn_by_the_share_of_their_tension() {
    for Sample { key, harp, analysis, gives } in samples() {
        let plan = plan(Some(&gives), &harp, &analysis, &Asked::default());
        for step in &plan.passes[0].steps {
            let figures = &analysis.strings[step.place];
            let whole = figures.pin_turns.unwrap();
            let share = (step.tune_to.to_hz() / figures.frequency.unwrap().to_hz()).powi(2);
            assert!((step.pin_turns.unwrap() - share * whole).abs() < 1e-9, "{key}");
        }
    }
}
