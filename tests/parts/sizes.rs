//! Sizes for the saw and prices: what is typed shows in the parts, the boards and the cost.

use stringloft::design::document::Design;
use stringloft::design::parts::sizes::{PartSize, price_edit};
use stringloft::design::parts::{csv, parts, words};
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::Kind;
use stringloft::engine::parts::fits::{ROOM_M, clashes, fits};
use stringloft::papers::cutting::cutting;
use stringloft::papers::html::html;
use stringloft::papers::sheet::Paper;

fn with(size: PartSize, number: f64) -> Design {
    let design = SAMPLES[2].design();
    size.edit(&design, Some(number)).apply(&design)
}

#[test]
fn a_part_is_as_thick_as_its_size_says() {
    let thick = |design: &Design, kind: Kind| {
        let parts = parts(design).expect("parts");
        parts.whole.of(kind).next().expect("a part").thick_m()
    };
    let plain = SAMPLES[2].design();
    assert!((thick(&plain, Kind::Base) - 0.020).abs() < 1e-9);
    assert!((thick(&with(PartSize::Base, 26.0), Kind::Base) - 0.026).abs() < 1e-9);
    // The tenon of the pillar reaches through the base, so that the feet are higher than asked; higher ones are taken.
    assert!((thick(&with(PartSize::Feet, 70.0), Kind::FrontFoot) - 0.070).abs() < 1e-9);
}

/// A mortise of a tenon `a` by `b`, `c` deep, with room `g` all round is `(a + 2 g)(b + 2 g)(c + g)`.
#[test]
fn room_for_glue_makes_mortises_larger_and_nothing_clash() {
    for sample in &SAMPLES {
        let mut design = sample.design();
        let cuts = |design: &Design| {
            let parts = parts(design).expect("parts");
            let (found, missing) = fits(&parts.whole);
            assert_eq!(missing, [], "{}", sample.key);
            assert!(found.iter().all(|fit| fit.gap_m.abs() < ROOM_M), "{}", sample.key);
            assert_eq!(clashes(&parts.whole), [], "{}", sample.key);
            let neck = parts.whole.of(Kind::Neck).next().expect("a neck");
            let cell = neck.cuts.first().expect("a mortise").clone();
            cell.moments().0
        };
        let plain = cuts(&design);
        design = PartSize::GlueRoom.edit(&design, Some(0.2)).apply(&design);
        let (wide, head) = (design.geometry.pillar.width_mm - 10.0, design.geometry.joints.head);
        let of = |g: f64| {
            (wide + 2.0 * g) * (head.tenon_mm + 2.0 * g) * (head.tenon_depth_mm + g) * 1e-9
        };
        let off = |volume: f64, by_hand: f64| (volume / by_hand - 1.0).abs();
        assert!(off(plain, of(0.0)) < 1e-9, "{}: {plain} {}", sample.key, of(0.0));
        assert!(off(cuts(&design), of(0.2)) < 1e-9, "{}", sample.key);
    }
}

#[test]
fn wider_planks_need_fewer_strips_and_a_wider_kerf_no_fewer_planks() {
    let count = |design: &Design| {
        let parts = parts(design).expect("parts");
        let strips: usize = parts.blanks.iter().map(|blank| blank.strips).sum();
        let boards: usize = parts.nests.iter().map(|nest| nest.boards.len()).sum();
        (strips, boards)
    };
    let plain = count(&SAMPLES[2].design());
    assert!(count(&with(PartSize::BoardWidth, 400.0)).0 < plain.0);
    assert!(count(&with(PartSize::BoardWidth, 120.0)).0 > plain.0);
    assert!(count(&with(PartSize::Kerf, 15.0)).1 >= plain.1);
}

/// Planks by the cubic metre, sheets by the square metre, whole ones each.
#[test]
fn the_cost_is_that_of_whole_planks_and_sheets_and_stands_on_paper_and_in_the_table() {
    let mut design = SAMPLES[2].design();
    let none = parts(&design).expect("parts");
    assert!(none.costs.iter().all(Option::is_none));
    for (wood, price) in [("sugar-maple", 2_000.0), ("birch-plywood", 12.0)] {
        design = price_edit(&design, wood, Some(price)).apply(&design);
    }
    let made = parts(&design).expect("parts");
    let mut sum = 0.0;
    for (nest, cost) in made.nests.iter().zip(&made.costs) {
        let boards = nest.boards.len() as f64;
        let by_hand = match nest.wood.as_str() {
            "sugar-maple" => Some(boards * 2.4 * 0.2 * nest.thickness.to_m() * 2_000.0),
            "birch-plywood" => Some(boards * 1.525 * 1.525 * 12.0),
            _ => None,
        };
        assert_eq!(cost.is_some(), by_hand.is_some(), "{}", nest.wood);
        assert!((cost.unwrap_or(0.0) - by_hand.unwrap_or(0.0)).abs() < 1e-9, "{}", nest.wood);
        sum += by_hand.unwrap_or(0.0);
    }
    assert!(sum > 50.0, "{sum}");
    let page = html(&cutting(&design, &made, Paper::A4));
    assert!(page.contains(&format!("{sum:.2}")) && page.contains("no price"), "{sum}");
    let table = csv(&design).expect("a table");
    let cost = made.costs.iter().flatten().next().expect("a cost");
    assert!(table.contains(&format!(",{cost:.2}\n")), "{cost}");
}

#[test]
fn a_size_that_makes_no_sense_is_said_first() {
    let mut design = SAMPLES[2].design();
    design.geometry.parts = "kerf=90".to_owned();
    let told = words::told(&parts(&design).expect("parts"));
    assert!(told[0].contains("90 mm") && told[0].ends_with('.'), "{told:?}");
}
