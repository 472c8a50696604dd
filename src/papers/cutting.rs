//! The cutting list on paper: every part rough and finished, the boards they come from, what is counted, what it weighs, how
//! the harp stands, and what is worth saying.
//!
//! Its pages are laid by [`pager`].

use super::layout::{FOOT_MM, RESERVE_MM, TYPE_PT, report_widths};
use super::measure::{clean, wrap};
use super::pager::{self, Pager, cell};
use super::sheet::{Block, Column, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, title};
use crate::design::advice::caution;
use crate::design::display::decimals;
use crate::design::document::Design;
use crate::design::parts::sizes;
use crate::design::parts::{Parts, words};
use crate::design::wood_facts::wood_name;
use crate::engine::parts::cutting::Blank;
use crate::engine::units::Length;
use crate::words::{
    Words, card, language, papers as say_paper, parts as say, parts_sizes as say_sizes,
};

/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 3;

/// The cutting list of a design.
pub fn cutting(design: &Design, parts: &Parts, paper: Paper) -> Sheet {
    let title = title(design);
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    let facts = [
        (say_paper::MAKER.said(), given(&design.maker)),
        (say_paper::DATE.said(), given(&design.date)),
        (say_paper::SERIAL.said(), given(&design.serial)),
        (say::PARTS.said(), parts.blanks.len().to_string()),
    ];
    let heading = pager::heading(say::CUTTING_LIST.said(), &title, facts, paper);
    let wide = paper.inside_mm().0;
    let running = wrap(&say::running(&title), wide, TYPE_PT, 1).concat();
    let mut pager = Pager::new(paper.inside_mm().1 - RESERVE_MM - FOOT_MM, heading, running);
    let mut table = |title: Words, heads: [Words; 3], rows: Vec<[String; 3]>| {
        let table = laid(heads, rows, paper);
        pager.table(title.said(), &table, &[]);
    };
    table(
        say::PARTS_TO_SAW,
        [say::HEAD_PART, say::HEAD_FINISHED, say::HEAD_ROUGH],
        parts.blanks.iter().map(row).collect(),
    );
    table(
        say::BOARDS_AND_SHEETS,
        [say::HEAD_WOOD, say::HEAD_BOARDS, say::HEAD_WASTE],
        boards(parts),
    );
    if parts.costs.iter().any(Option::is_some) {
        let heads = [say::HEAD_WOOD, say_sizes::HEAD_COST, Words::NONE];
        table(say_sizes::COST_HINT, heads, costs(parts));
    }
    table(say::COUNTED, [say::HEAD_WHAT, say::HEAD_COUNT, Words::NONE], counted(parts));
    table(say::STANDS, [say::HEAD_WHAT, say::HEAD_SIZE, Words::NONE], stands(parts));
    let text = |words: &str| wrap(words, wide, TYPE_PT, usize::MAX);
    let told = words::told(parts);
    let lines: Vec<String> =
        told.iter().flat_map(|line| text(&format!("– {}", clean(line)))).collect();
    pager.title(say::WORTH_SAYING.said(), 0.0);
    pager.lines(&lines, Block::Legend);
    let of = sizes::stock(&design.geometry);
    let mm = |size: Length| decimals(size.to_mm(), usize::from(size.to_mm().fract() > 0.01));
    let how =
        say::how_laid(&mm(of.kerf), &mm(of.on_length), &mm(of.on_thickness), &mm(of.on_width));
    pager.lines(&text(&how), Block::Legend);
    // Bold type is wider.
    let care = format!("{} {}", card::CARE, caution());
    let care = wrap(&care, 0.93 * wide, TYPE_PT, usize::MAX);
    pager.lines(&care, Block::Caution);
    Sheet {
        paper,
        language: language(),
        title: say_paper::titled(&say::CUTTING_LIST, &title),
        pages: pager.finish(),
    }
}

fn laid(heads: [Words; 3], rows: Vec<[String; 3]>, paper: Paper) -> Table {
    let widths = report_widths(TableKind::Pairs, paper);
    let row = |words: [String; 3]| TableRow {
        mark: None,
        opens_octave: false,
        cells: words.iter().enumerate().map(|(at, words)| cell(words, &widths, at)).collect(),
    };
    Table {
        kind: TableKind::Pairs,
        columns: heads.map(|head| Column { head: [head.said(), ""], figures: false }).to_vec(),
        rows: rows.into_iter().map(row).collect(),
        spacing: SPACING,
        last_width: 0,
    }
}

/// Three sizes in millimetres.
fn sizes(of: &[Length; 3]) -> String {
    of.map(|size| decimals(size.to_mm(), 1)).join(" × ")
}

fn row(blank: &Blank) -> [String; 3] {
    let name = super::template::part::named(blank.name);
    let what = say::part_of_wood(&name, &clean(&wood_name(&blank.wood, &[])));
    let rough = sizes(&blank.rough);
    let rough = if blank.strips > 1 { say::glued_up(&rough, &blank.strips) } else { rough };
    let rough = if blank.layers > 1 {
        say::glued_of_layers(&blank.layers, &rough, &decimals(blank.layer.to_mm(), 0))
    } else {
        rough
    };
    [what, sizes(&blank.finished), rough]
}

fn boards(parts: &Parts) -> Vec<[String; 3]> {
    let nests = parts.nests.iter().map(|nest| {
        let whole = |size: Length| decimals(size.to_mm(), 0);
        let thick = decimals(nest.thickness.to_mm(), 1);
        let size = say::board_size(&whole(nest.size.0), &whole(nest.size.1));
        let what = say::wood_so_thick(&thick, &clean(&wood_name(&nest.wood, &[])));
        let count = say::boards_at_least(&nest.boards.len(), &nest.at_least, &size);
        [what, count, say::percent(&decimals(100.0 * nest.waste_ratio(), 0))]
    });
    nests.collect()
}

/// What each wood costs, the sum, and how many have no price.
fn costs(parts: &Parts) -> Vec<[String; 3]> {
    let row = |what: String, cost: f64| [what, decimals(cost, 2), String::new()];
    let known = parts.nests.iter().zip(&parts.costs).filter_map(|(nest, cost)| {
        let thick = decimals(nest.thickness.to_mm(), 1);
        Some(row(say::wood_so_thick(&thick, &clean(&wood_name(&nest.wood, &[]))), (*cost)?))
    });
    let mut rows: Vec<[String; 3]> = known.collect();
    rows.push(row(say_sizes::ALL_WOODS.into(), parts.costs.iter().flatten().sum()));
    let mut lacking: Vec<&str> = Vec::new();
    for (nest, _) in parts.nests.iter().zip(&parts.costs).filter(|(_, cost)| cost.is_none()) {
        if !lacking.contains(&nest.wood.as_str()) {
            lacking.push(&nest.wood);
        }
    }
    if !lacking.is_empty() {
        rows.push([say_sizes::left_out(&lacking.len()), String::new(), String::new()]);
    }
    rows
}

fn counted(parts: &Parts) -> Vec<[String; 3]> {
    let of = parts.counts;
    let all = [
        (say::ITEM_STRINGS, of.strings),
        (say::ITEM_TUNING_PINS, of.tuning_pins),
        (say::ITEM_BRIDGE_PINS, of.bridge_pins),
        (say::ITEM_LEVERS, of.levers),
        (say::ITEM_DISCS, of.discs),
        (say::ITEM_FASTENERS, of.fasteners),
    ];
    let some = all.into_iter().filter(|(_, count)| *count > 0);
    some.map(|(item, count)| [item.said().to_owned(), count.to_string(), String::new()]).collect()
}

fn stands(parts: &Parts) -> Vec<[String; 3]> {
    let degrees = |tip: f64| say::degrees(&decimals(tip.to_degrees(), 1));
    let [front, back, aside] = parts.balance.tips_rad;
    let all = [
        (say::MASS, say::kilograms(&decimals(parts.weight.mass.to_kg(), 1))),
        (say::TIPS_FRONT, degrees(front)),
        (say::TIPS_PLAYER, degrees(back)),
        (say::TIPS_ASIDE, degrees(aside)),
        (say::SHOULDER_HIGH, say::millimetres(&decimals(1e3 * parts.balance.shoulder_m, 0))),
    ];
    let mut rows: Vec<[String; 3]> =
        all.into_iter().map(|(what, size)| [what.said().to_owned(), size, String::new()]).collect();
    if parts.weight.left_out > 0 {
        // How it stands hangs on all of its weight.
        rows.truncate(1);
        let count = parts.weight.left_out.to_string();
        rows.push([say::NOT_WEIGHED.said().to_owned(), count, String::new()]);
    }
    rows
}
