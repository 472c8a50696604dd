//! What holds the soundbox on the base, and the block that does it.

use stringloft::design::document::Design;
use stringloft::design::parts::sizes::PartSize;
use stringloft::design::parts::words::{sentence, told};
use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::borne;
use stringloft::engine::geometry::lay_out;
use stringloft::engine::parts::findings::Finding;
use stringloft::engine::parts::{Kind, Spot};
use stringloft::papers::template::model::{LayerKind, Shape};
use stringloft::papers::template::part::template;
use stringloft::words::{Language, in_language};

use super::made::samples;

/// From where to where the corners of a part lie that stand on the base, along an axis.
fn on_base(made: &Parts, kind: Kind, axis: usize) -> (f64, f64) {
    let part = made.whole.of(kind).next().expect("a part");
    let low = made.band.board.0.y.to_m();
    let corners = part.cells[0].corners().filter(|at: &Spot| (at[1] - low).abs() < 1e-6);
    let at: Vec<f64> = corners.map(|at| at[axis]).collect();
    let least = at.iter().copied().fold(f64::INFINITY, f64::min);
    (least, at.iter().copied().fold(f64::NEG_INFINITY, f64::max))
}

/// The greatest push and bending at the foot of the pillar in each case.
fn at_foot(design: &Design) -> Vec<(f64, f64)> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let (shape, build) = (&resolved.geometry, &resolved.build());
    let frame = borne(&band, &resolved.harp, &analysis, shape, build).bearing.frame;
    let frame = frame.expect("a frame");
    frame.counted().map(|case| (-case.pillar[1][0], case.pillar[1][5].abs())).collect()
}

/// Glue in strips of the foot block, each pulled by as much as it lies before the back: together they and the back, on which
/// the base presses, balance the pillar; and the base beside the block is bent by what the push does on its arm.
#[test]
fn the_glue_under_the_foot_block_balances_the_push_of_the_pillar() {
    const STRIPS: u32 = 2000;
    for sample in &SAMPLES {
        let design = sample.design();
        let made = parts(&design).expect("parts");
        let held = made.holding.expect("a base");
        let (block, back) = (on_base(&made, Kind::FootBlock, 0), on_base(&made, Kind::Side, 0).1);
        let (pillar, wide) = (on_base(&made, Kind::Pillar, 0), on_base(&made, Kind::FootBlock, 2));
        let step = (block.1 - block.0) / f64::from(STRIPS);
        let (mut pulled, mut turned) = (0.0, 0.0);
        for strip in 0..STRIPS {
            let arm = back - block.0 - (f64::from(strip) + 0.5) * step;
            let force =
                held.glue.stress.to_pa() * arm / (back - block.0) * step * (wide.1 - wide.0);
            pulled += force;
            turned += force * arm;
        }
        let middle = 0.5 * (pillar.0 + pillar.1);
        let cases = at_foot(&design);
        let asked = cases.iter().map(|(push, bends)| push * (back - middle) + bends);
        let asked = asked.fold(0.0, f64::max);
        assert!((turned / asked - 1.0).abs() < 1e-6, "{}: {turned} {asked}", sample.key);
        let push = cases.iter().map(|(push, _)| *push).fold(0.0, f64::max);
        assert!((held.pull.to_n() / push - 1.0).abs() < 1e-9, "{}", sample.key);
        // What presses on the back is pulled too, less than a third more.
        assert!(pulled > push && pulled < 1.34 * push, "{}: {pulled} {push}", sample.key);

        let arm = block.0 - middle;
        let deep = on_base(&made, Kind::Pillar, 2);
        let thick = 1e-3 * PartSize::Base.number(&design.geometry);
        let modulus = (deep.1 - deep.0 + 2.0 * arm) * thick * thick / 6.0;
        let bent = cases.iter().map(|(push, bends)| (push * arm + bends) / modulus);
        let bent = bent.fold(0.0, f64::max);
        let base = held.base.stress.to_pa();
        assert!((base / bent - 1.0).abs() < 1e-6, "{}: {base} {bent}", sample.key);
        assert_eq!(made.findings, [], "{}", sample.key);
    }
}

#[test]
fn a_block_or_a_base_that_is_too_small_is_found_and_an_unknown_wood_is_not_judged() {
    let design = SAMPLES[3].design();
    let small = PartSize::FootBlock.edit(&design, Some(12.0)).apply(&design);
    let thin = PartSize::Base.edit(&design, Some(12.0)).apply(&design);
    let is_glue = |finding: &&Finding| matches!(finding, Finding::BaseOpens { .. });
    let is_base = |finding: &&Finding| matches!(finding, Finding::BaseBends { .. });
    let found = |design: &Design| {
        let all = parts(design).expect("parts").findings;
        (all.iter().filter(is_glue).count(), all.iter().filter(is_base).count())
    };
    assert_eq!((found(&design), found(&small), found(&thin)), ((0, 0), (1, 0), (0, 1)));
    for language in [Language::English, Language::German, Language::French] {
        in_language(language, || {
            for (design, what) in [(&small, is_glue as fn(&&Finding) -> bool), (&thin, is_base)] {
                let made = parts(design).expect("parts");
                let words = made.findings.iter().find(what).map(sentence).expect("a finding");
                let held = made.holding.expect("a base");
                let both = [held.glue, held.base].map(|of| of.ratio().expect("a share"));
                let over = both[0].max(both[1]);
                assert!(words.contains(&format!(" {:.0} %", 100.0 * over)), "{words}");
                assert!(told(&made).iter().any(|line| line.contains(&made.pull)));
            }
        });
    }
    let mut unknown = design;
    // No tension across its grain is published.
    unknown.geometry.pillar.wood = "paper-birch".to_owned();
    let made = parts(&unknown).expect("parts");
    assert_eq!(made.holding.expect("a base").glue.ratio(), None);
    let line = told(&made).into_iter().find(|line| line.contains(&made.pull));
    assert!(line.expect("a line").ends_with("is not known."));
}

/// What is silently made longer is told, and where the weight of a part is not known nothing falls.
#[test]
fn a_longer_block_is_told_and_a_harp_of_unknown_weight_does_not_fall() {
    let design = SAMPLES[2].design();
    let short = PartSize::FootBlock.edit(&design, Some(10.0)).apply(&design);
    let made = parts(&short).expect("parts");
    let longer = made.findings.iter().find_map(|finding| match finding {
        Finding::BlockLonger { from, to } => Some((from.to_mm(), to.to_mm())),
        _ => None,
    });
    let (from, to) = longer.expect("a finding");
    let block = on_base(&made, Kind::FootBlock, 0);
    assert!((from - 10.0).abs() < 1e-9 && (to - 1e3 * (block.1 - block.0)).abs() < 1e-6);

    // Bolts of 8 mm whose rows stand 12 mm apart: nuts are 13 mm wide across their flats.
    let mut close = design.clone();
    close.geometry.joints.shoulder.across_mm = 12.0;
    let of = |finding: &Finding| match finding {
        Finding::BoltsClose { gap, asked } => Some((gap.to_mm(), asked.to_mm())),
        _ => None,
    };
    let found = parts(&close).expect("parts").findings.iter().find_map(of).expect("a finding");
    let thick = design.geometry.joints.shoulder.diameter_mm;
    assert!((found.0 - 12.0).abs() < 1e-9 && (found.1 - 2.0 * thick).abs() < 1e-9, "{found:?}");

    let mut unknown = design;
    unknown.geometry.pillar.wood = "european-spruce".to_owned();
    let made = parts(&unknown).expect("parts");
    assert!(made.weight.left_out > 0);
    let falls = |finding: &Finding| matches!(finding, Finding::Tips { .. });
    assert!(!made.findings.iter().any(falls), "{:?}", made.findings);
}

/// Its grain lies across the harp: so it is one piece of a plank, and glue holds it on base and soundboard.
#[test]
fn the_foot_block_is_sawn_along_its_length() {
    for (key, made) in samples() {
        let at = made.blanks.iter().position(|blank| blank.name.kind == Kind::FootBlock);
        let blank = &made.blanks[at.expect("a blank")];
        let across = on_base(&made, Kind::FootBlock, 2);
        let [long, wide, thick] = blank.finished;
        assert!(long.to_m() >= across.1 - across.0 - 1e-9, "{key}: {long:?}");
        assert!(wide.to_mm() < 50.0 && thick.to_mm() <= wide.to_mm(), "{key}: {wide:?}");
        assert_eq!((blank.layers, blank.strips), (1, 1), "{key}");
        let block = made.whole.of(Kind::FootBlock).next().expect("a block");
        let drawn = template(block, key);
        let grain = drawn.layers.iter().find(|layer| layer.kind == LayerKind::Grain);
        let shapes = &grain.expect("a layer").shapes;
        assert!(shapes.len() == 2 && shapes.iter().all(|of| matches!(of, Shape::Circle { .. })));
        assert!(drawn.notes.iter().any(|note| note.contains("circle with a dot")), "{key}");
    }
}
