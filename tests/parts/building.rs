//! The order of building: what it says to check is what the design asks for, and its pages hold it in every language.

use std::fs;
use std::path::Path;

use stringloft::design::parts::building::steps;
use stringloft::design::parts::parts;
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::Kind;
use stringloft::papers::building::building;
use stringloft::papers::html::html;
use stringloft::papers::layout::TYPE_PT;
use stringloft::papers::measure::width_mm;
use stringloft::papers::sheet::{Block, Paper};
use stringloft::words::{Language, building as say, in_language};

/// The lengths that were typed come back from the drawing as what a thread must measure, and what is symmetric is equal.
#[test]
fn what_is_checked_is_what_the_design_asks_for() {
    for sample in &SAMPLES {
        let design = sample.design();
        let parts = parts(&design).expect("parts");
        let steps = steps(&design, &parts);
        let find = |what: &str| {
            let mut all = steps.iter().flat_map(|step| &step.checks);
            let own = all.find(|check| check.what == what);
            own.unwrap_or_else(|| panic!("{}: {what}", sample.key)).size.to_mm()
        };
        let typed = |at: usize| design.strings[at].length.parse::<f64>().expect("a length");
        let last = design.strings.len() - 1;
        let near = |one: f64, other: f64| (one - other).abs() < 0.05;
        assert!(near(find(say::CHECK_HIGHEST_STRING.said()), typed(0)), "{}", sample.key);
        assert!(near(find(say::CHECK_LOWEST_STRING.said()), typed(last)), "{}", sample.key);
        // The other diagonal of front and back, from the corners of the other side.
        for (what, kind) in [(say::CHECK_FRONT, Kind::Board), (say::CHECK_BACK, Kind::Back)] {
            let part = parts.whole.of(kind).next().expect("a part");
            let at = &part.cells[0].near;
            let off = [0, 1, 2].map(|axis| (at[1][axis] - at[3][axis]).powi(2));
            let other = 1e3 * off.iter().sum::<f64>().sqrt();
            assert!((find(what.said()) - other).abs() < 1e-6, "{}", sample.key);
        }
        assert!(
            find(say::CHECK_SHOULDER_FLOOR.said()) > find(say::CHECK_SHOULDER_BACK.said()),
            "{}",
            sample.key
        );
        // As on the template: the line of the board, from which the string is placed, lies on the outer strip.
        let board = parts.whole.of(Kind::Board).next().expect("a board");
        let lowest = board.holes.iter().max_by_key(|hole| hole.string).expect("a hole");
        let (around, own) = (board.outline.control_box(), board.face.own(lowest.at)[1]);
        let on_template = 1e3 * (own - around.min_y()).min(around.max_y() - own);
        let below = design.geometry.board.below_mm;
        assert!(near(find(say::CHECK_LOWEST_HOLE.said()), on_template), "{}", sample.key);
        assert!(on_template < below && on_template > below - 20.0, "{}", sample.key);
    }
}

/// Rows and lines of the fasteners lie as far apart as was typed, and their middle as far from the middle of the harp as the
/// neck's does.
#[test]
fn the_fasteners_are_where_the_neck_stands() {
    for sample in &SAMPLES {
        let design = sample.design();
        let (geometry, joint) = (&design.geometry, &design.geometry.joints.shoulder);
        let steps = steps(&design, &parts(&design).expect("parts"));
        let sizes = |what: &dyn Fn(usize) -> String| -> Vec<f64> {
            let checks = || steps.iter().flat_map(|step| &step.checks);
            let of = |row: usize| checks().find(|check| check.what == what(row));
            (1..).map_while(of).map(|check| check.size.to_mm()).collect()
        };
        let rows = sizes(&|row| say::check_fastener_front(&row));
        let lines = sizes(&|row| say::check_fastener_middle(&row));
        let counts = if joint.count > 0 { (2, 2) } else { (0, 0) };
        assert_eq!((rows.len(), lines.len()), counts, "{}", sample.key);
        let ([front, back], [near, far]) = (&rows[..], &lines[..]) else { continue };
        assert!(*front > joint.diameter_mm, "{}: {front}", sample.key);
        assert!((back - front - joint.apart_mm).abs() < 1e-6, "{}", sample.key);
        assert!((far - near - joint.across_mm).abs() < 1e-6, "{}", sample.key);
        let middle = 0.5 * (near + far);
        assert!((middle - geometry.strings_from_neck_mm).abs() < 1e-6, "{}: {middle}", sample.key);
    }
}

#[test]
fn the_sheet_says_it_in_every_language_within_its_pages() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-building");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    for sample in &SAMPLES {
        let design = sample.design();
        for language in [Language::English, Language::German, Language::French] {
            for paper in [Paper::A4, Paper::Letter] {
                let sheet = in_language(language, || {
                    let parts = parts(&design).expect("parts");
                    building(&design, &parts, paper)
                });
                let blocks = || sheet.pages.iter().flat_map(|page| &page.blocks);
                let count = |is: fn(&Block) -> bool| blocks().filter(|block| is(block)).count();
                assert!(count(|block| matches!(block, Block::Title(_))) >= 16, "{}", sample.key);
                assert!(count(|block| matches!(block, Block::Caution(_))) >= 10, "{}", sample.key);
                assert!(sheet.pages.len() <= 6, "{}: {} pages", sample.key, sheet.pages.len());
                let wide = paper.inside_mm().0;
                for block in blocks() {
                    let (Block::Legend(lines) | Block::Caution(lines)) = block else { continue };
                    for line in lines {
                        assert!(width_mm(line, TYPE_PT) <= wide, "{line}");
                        assert!(!line.contains('{') && !line.contains("NaN"), "{line}");
                    }
                }
                let page = in_language(language, || html(&sheet));
                let name = format!("{}-{}-{}.html", sample.key, language.code(), paper.name());
                fs::write(folder.join(name), &page).expect("a file can be written");
                assert!(page.contains("<article") && !page.contains("NaN"), "{}", sample.key);
            }
        }
    }
}
