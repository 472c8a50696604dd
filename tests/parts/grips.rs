//! Grips in the drawing of the whole harp: where one is pulled, what it stands on follows by as much.

use stringloft::charts::whole::{Sheet, View, view_of};
use stringloft::design::document::Design;
use stringloft::design::parts::{Sketch, pulls, sketch};
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::grips::{Grip, Pull};
use stringloft::engine::parts::{Kind, Spot};

fn grip(sketch: &Sketch, pull: Pull) -> Grip {
    *sketch.grips.iter().find(|grip| grip.pull == pull).expect("a grip")
}

fn along(one: Spot, other: Spot, way: Spot) -> f64 {
    (0..3).map(|axis| (other[axis] - one[axis]) * way[axis]).sum()
}

/// Every size has a grip in every sample, which says the number of the design; pulled 4 mm along its way, it comes out
/// there, and says the number that it has then. Sizes that others hold back are held from where they are drawn.
#[test]
fn a_grip_comes_to_where_it_is_pulled() {
    for sample in &SAMPLES {
        let mut design = sample.design();
        design = pulls::edit(Pull::BackRise, &design, 15.0).apply(&design);
        let before = sketch(&design).expect("parts");
        assert_eq!(before.grips.len(), Pull::ALL.len(), "{}", sample.key);
        for pull in Pull::ALL {
            let from = grip(&before, pull);
            let number = pulls::number_mm(pull, &design);
            let is_least = matches!(pull, Pull::Feet | Pull::KneeBlock);
            let same = (from.size.to_mm() - number).abs() < 1e-6;
            assert!(
                same || (is_least && from.size.to_mm() > number),
                "{}: {from:?} {number}",
                sample.key
            );
            let pulled_mm = 4.0;
            let wanted = from.size.to_mm() + pulls::rate(&from, &design) * pulled_mm;
            let next = pulls::edit(pull, &design, wanted).apply(&design);
            let after =
                sketch(&next).unwrap_or_else(|why| panic!("{} {pull:?}: {why}", sample.key));
            let to = grip(&after, pull);
            assert!((to.size.to_mm() - wanted).abs() < 1e-6, "{} {pull:?}: {to:?}", sample.key);
            let went = 1e3 * along(from.at, to.at, from.way);
            // The rate is that of the first half millimetre; pillar and back turn a little as they grow.
            assert!((went - pulled_mm).abs() < 0.2, "{} {pull:?}: went {went}", sample.key);
        }
    }
}

/// In its view a grip stands on the drawing, and its way is seen there.
#[test]
fn grips_stand_within_their_view_and_apart_and_their_way_is_seen() {
    for sample in &SAMPLES {
        let sketch = sketch(&sample.design()).expect("parts");
        let sheet = Sheet::of(&sketch.whole);
        for (at, grip) in sketch.grips.iter().enumerate() {
            let view = view_of(grip.pull);
            let place = sheet.place(view, grip.at);
            assert!((0.0..=sheet.size_mm.0).contains(&place.0), "{}: {grip:?}", sample.key);
            assert!((0.0..=sheet.size_mm.1).contains(&place.1), "{}: {grip:?}", sample.key);
            let to = [0, 1, 2].map(|axis| grip.at[axis] + 0.01 * grip.way[axis]);
            let way = sheet.place(view, to);
            let seen = (way.0 - place.0).hypot(way.1 - place.1);
            assert!(seen > 0.8, "{} {:?}: 10 mm are seen as {seen}", sample.key, grip.pull);
            for other in &sketch.grips[at + 1..] {
                let own = sheet.place(view_of(other.pull), other.at);
                let apart = (own.0 - place.0).hypot(own.1 - place.1);
                assert!(apart > 2.5, "{}: {:?} {:?} {apart}", sample.key, grip.pull, other.pull);
            }
        }
        let views = [View::Side, View::Front, View::Plan];
        let count = |view| sketch.grips.iter().filter(|grip| view_of(grip.pull) == view).count();
        assert!(views.into_iter().all(|view| count(view) >= 2), "{}", sample.key);
    }
}

#[test]
fn a_size_stays_within_what_makes_sense_and_only_one_changes() {
    let design = SAMPLES[2].design();
    for pull in Pull::ALL {
        let (least, most) = pulls::range_mm(pull);
        for (wanted, expected) in
            [(-50.0, least), (1e6, most), (0.5 * (least + most), 0.5 * (least + most))]
        {
            let next = pulls::edit(pull, &design, wanted).apply(&design);
            assert!((pulls::number_mm(pull, &next) - expected).abs() < 1e-9, "{pull:?}");
            for other in Pull::ALL.into_iter().filter(|other| *other != pull) {
                let (one, two) = (pulls::number_mm(other, &design), pulls::number_mm(other, &next));
                assert!((one - two).abs() < 1e-12, "{pull:?} moves {other:?}");
            }
        }
    }
}

/// What is drawn while a grip is held is what is drawn when it is let go.
#[test]
fn a_sketch_has_the_parts_of_the_whole() {
    for sample in &SAMPLES {
        let design: Design = sample.design();
        let (one, two) =
            (sketch(&design).expect("a sketch"), stringloft::design::parts::parts(&design));
        let two = two.expect("parts");
        assert_eq!(one.whole, two.whole, "{}", sample.key);
        assert_eq!(one.grips, two.grips, "{}", sample.key);
        assert!(one.whole.of(Kind::Neck).next().is_some());
    }
}
