//! A board whose thickness is given from place to place: what follows for loads, parts and words.

use stringloft::design::bearing_words::assumptions;
use stringloft::design::document::Design;
use stringloft::design::parts::parts;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::thickness_map::thick;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::{BoardCut, bear};
use stringloft::engine::geometry::{Band, lay_out, loads};
use stringloft::engine::parts::Kind;
use stringloft::engine::parts::fits::{clashes, fits};

fn borne(design: &Design) -> (Band, Vec<BoardCut>) {
    let resolved = resolve(design);
    assert!(resolved.errors.is_empty(), "{:?}", resolved.errors);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &resolved.build());
    (band, bearing.board.into_iter().map(|cut| cut.expect("a board")).collect())
}

fn mapped(design: &Design, text: &str) -> Design {
    let mut design = design.clone();
    design.geometry.parts = format!("thick={text}");
    design
}

/// The even taper of a sample, as a map from end to end.
fn same(design: &Design, band: &Band) -> String {
    let board = &design.geometry.board;
    let whole = band.holes[0].along_board.to_mm();
    let (low, high) = (board.bass_thickness_mm, board.treble_thickness_mm);
    let at = |mm: f64| low + (high - low) * mm / whole;
    let (low, high) = (at(-board.below_mm), at(whole + board.above_mm));
    format!("0 {low} {low} {low}, 100 {high} {high} {high}")
}

/// Beyond the outermost strings the soundbox of a map has a wall that goes on to taper, which moves its push by a little.
#[test]
fn a_map_of_the_typed_taper_changes_nothing_that_is_shown() {
    for sample in SAMPLES {
        let design = sample.design();
        let (band, plain) = borne(&design);
        let (_, map) = borne(&mapped(&design, &same(&design, &band)));
        for (one, other) in plain.iter().zip(&map) {
            let near = |one: f64, other: f64| (other / one - 1.0).abs() < 0.01;
            assert!(near(one.thickness.to_m(), other.thickness.to_m()), "{}", sample.key);
            for (one, other) in [(&one.firm, &other.firm), (&one.soft, &other.soft)] {
                assert!(near(one.rise.to_m(), other.rise.to_m()), "{}", sample.key);
                // Between middle and edge nothing is stressed more.
                assert!(near(one.stress.to_pa(), other.stress.to_pa()), "{}", sample.key);
            }
        }
    }
}

#[test]
fn a_board_thinned_halfway_rises_more_and_is_judged_there() {
    let design = SAMPLES[2].design();
    let (band, plain) = borne(&design);
    let thin = same(&design, &band);
    let thin: Vec<String> = thin
        .split(", ")
        .map(|row| {
            let cells: Vec<&str> = row.split(' ').collect();
            let half: f64 = cells[1].parse().expect("a number");
            format!("{} {} {} {}", cells[0], cells[1], 0.4 * half, cells[3])
        })
        .collect();
    let (_, thinned) = borne(&mapped(&design, &thin.join(", ")));
    for (one, other) in plain.iter().zip(&thinned) {
        assert_eq!(one.width, other.width);
        assert!(other.soft.rise > one.soft.rise);
    }
    let most = |of: &[BoardCut]| of.iter().map(|cut| cut.soft.stress.to_pa()).fold(0.0, f64::max);
    assert!(most(&thinned) > 1.5 * most(&plain), "{} {}", most(&thinned), most(&plain));
}

#[test]
fn a_map_that_cannot_be_used_is_told_and_does_not_count() {
    let design = SAMPLES[0].design();
    let plain = borne(&design).1;
    let bad = mapped(&design, "0 4 four 4");
    assert_eq!(borne(&bad).1, plain);
    let told = |design: &Design| assumptions(design).join("\n");
    assert!(told(&bad).contains("cannot be used") && told(&bad).contains("0 4 four 4"));
    assert!(!told(&design).contains("from place to place"));
    assert!(told(&mapped(&design, "0 4 4 4")).contains("from place to place"));
}

/// The board weighs what its map holds: thickness summed up over its outline, without the holes of the strings. All that is
/// glued to it still meets it, as the wood is planed off outside.
#[test]
fn the_board_weighs_what_its_map_holds() {
    let text = "0 10 7 5, 40 9 8 3, 100 4 3 2";
    for sample in SAMPLES {
        let design = mapped(&sample.design(), text);
        let made = parts(&design).expect("parts");
        let board = made.whole.parts.iter().find(|part| part.name.kind == Kind::Board);
        let board = board.expect("a board");
        let planed: f64 = board.planed.iter().map(|cell| cell.moments().0).sum();
        let blank: f64 = board.cells.iter().map(|cell| cell.moments().0).sum();
        let thick = thick(&mapped(&design, text).geometry).expect("a map");
        let (band, _) = borne(&design);
        let (low, high) = (band.board.0, band.board.1);
        let mm = |of: (f64, f64)| of.0.hypot(of.1);
        let length = mm((high.x.to_m() - low.x.to_m(), high.y.to_m() - low.y.to_m()));
        // From the outline of its outer face, which lies at some angle to its ends.
        let face = &board.cells[0].near;
        let along = |at: &[f64; 3]| {
            ((at[0] - low.x.to_m()) * (high.x.to_m() - low.x.to_m())
                + (at[1] - low.y.to_m()) * (high.y.to_m() - low.y.to_m()))
                / length
        };
        let mut ends: Vec<(f64, f64)> = face.iter().map(|at| (along(at), at[2].abs())).collect();
        ends.sort_by(|one, other| one.0.total_cmp(&other.0));
        let (first, last) = (ends[0], ends[ends.len() - 1]);
        let parts = 2000;
        let step = (last.0 - first.0) / f64::from(parts);
        let (thick_low, thick_high) = thick.within();
        let (mut off, mut held) = (0.0, 0.0);
        for at in 0..parts {
            let share = (f64::from(at) + 0.5) / f64::from(parts);
            let half = first.1 + share * (last.1 - first.1);
            let along = (first.0 + share * (last.0 - first.0)) / length;
            let blank = thick_low.to_m() + along * (thick_high.to_m() - thick_low.to_m());
            let mean = thick.mean(along).to_m();
            off += 2.0 * half * step * (blank - mean);
            held += 2.0 * half * step * mean;
        }
        assert!((planed / off - 1.0).abs() < 0.01, "{}: {planed} {off}", sample.key);
        // Its ends are not square to its faces, so that its inside is a little shorter.
        let ours = blank - planed;
        assert!((ours / held - 1.0).abs() < 0.04, "{}: {ours} {held}", sample.key);
        let (_, missing) = fits(&made.whole);
        assert_eq!(missing, [], "{}", sample.key);
        assert_eq!(clashes(&made.whole), [], "{}", sample.key);
    }
}
