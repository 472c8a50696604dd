//! The parts of a design for the saw: the cutting list as CSV, and what is worth saying of the parts.

pub mod building;
pub mod pulls;
pub mod sizes;
pub mod words;

use std::fmt::Write as _;

use self::sizes::PartSize;
use super::bearing_words::verdict;
use super::display::tension_with_unit;
use super::document::Design;
use super::resolve::resolve;
use crate::engine::analysis::{StringFigures, analyse};
use crate::engine::bearing::borne;
use crate::engine::geometry::{Band, lay_out};
use crate::engine::parts::cutting::{Blank, Counts, Nest, blanks, counts, nests};
use crate::engine::parts::findings::{Finding, findings};
use crate::engine::parts::grips::{Grip, grips};
use crate::engine::parts::holding::{Holding, holding};
use crate::engine::parts::{
    Balance, Making, PartsError, Weight, Whole, balance, shoulder_of, weight, whole,
};
use crate::engine::pitch::Note;
use crate::engine::units::Length;

/// A design in parts.
#[derive(Clone, Debug)]
pub struct Parts {
    /// Where everything stands.
    pub band: Band,
    /// The parts.
    pub whole: Whole,
    /// What of the frame is over its allowance, or may be, by the estimate under Loads.
    pub over: Option<String>,
    /// What is worth saying of them.
    pub findings: Vec<Finding>,
    /// What holds the soundbox on the base, where the frame bears something.
    pub holding: Option<Holding>,
    /// How hard it is pulled up, in the unit of the design; empty where nothing holds it.
    pub pull: String,
    /// How far the neck turns from the grain of its planks, where that is more than a little.
    pub runs_out_rad: Option<f64>,
    /// Whether the layers of the neck cross.
    pub is_crossed: bool,
    /// What they weigh.
    pub weight: Weight,
    /// How the harp stands.
    pub balance: Balance,
    /// The parts as they are sawn.
    pub blanks: Vec<Blank>,
    /// How they lie on boards and sheets.
    pub nests: Vec<Nest>,
    /// What the boards and sheets of each nest cost, where the wood has a price.
    pub costs: Vec<Option<f64>>,
    /// What else is bought.
    pub counts: Counts,
    /// The note of each string as it is named, from the highest down; empty where there is none.
    pub notes: Vec<String>,
    /// Where sizes can be pulled.
    pub grips: Vec<Grip>,
    /// Sizes that make no sense, and what is taken for them.
    pub wrong: Vec<String>,
}

/// The parts of a design.
///
/// # Errors
///
/// Why there are none.
pub fn parts(design: &Design) -> Result<Parts, PartsError> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let (build, woods) = (resolved.build(), resolved.woods());
    let making = Making {
        band: &band,
        geometry: &resolved.geometry,
        build: &build,
        woods: &woods,
        string_drills: &resolved.string_drills(&analysis),
        proportions: &sizes::proportions(&design.geometry),
    };
    let whole = whole(&making)?;
    let (mut findings, counts) = (findings(&making, &whole), counts(&making, &whole));
    let bearing = borne(&band, &resolved.harp, &analysis, &resolved.geometry, &build).bearing;
    let over = verdict(&bearing).finding.map(|finding| finding.sentence);
    let frame = bearing.frame.ok();
    let holding = frame.as_ref().and_then(|frame| holding(&making, &whole, frame));
    if let Some(holding) = &holding {
        holding.tell(&mut findings);
    }
    let pull = holding.map(|holding| tension_with_unit(holding.pull, design.units.force));
    let weight = weight(&whole);
    let balance = balance(&whole, &weight, shoulder_of(&whole));
    let stock = sizes::stock(&design.geometry);
    let blanks = blanks(&whole, &woods, &stock);
    let nests = nests(&blanks, &stock);
    let costs = nests.iter().map(|nest| cost(design, nest)).collect();
    let wrong = PartSize::ALL.into_iter().filter_map(|size| size.wrong(&design.geometry)).collect();
    let grips = grips(&making, &whole);
    let note = |string: &StringFigures| string.note.map(Note::printed).unwrap_or_default();
    let notes = analysis.strings.iter().map(note).collect();
    let band = band.clone();
    Ok(Parts {
        band,
        whole,
        over,
        findings,
        holding,
        pull: pull.unwrap_or_default(),
        runs_out_rad: frame.and_then(|frame| frame.neck.runs_out_rad),
        is_crossed: design.geometry.neck.layers.iter().any(|layer| layer.angle_deg.abs() > 0.0),
        weight,
        balance,
        blanks,
        nests,
        costs,
        counts,
        notes,
        grips,
        wrong,
    })
}

/// What is drawn of a design while something is pulled: no more than that.
#[derive(Clone, Debug)]
pub struct Sketch {
    /// Where everything stands.
    pub band: Band,
    /// The parts.
    pub whole: Whole,
    /// Where sizes can be pulled.
    pub grips: Vec<Grip>,
}

/// The parts of a design as far as they are drawn.
///
/// # Errors
///
/// Why there are none.
pub fn sketch(design: &Design) -> Result<Sketch, PartsError> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let (build, woods) = (resolved.build(), resolved.woods());
    let making = Making {
        band: &band,
        geometry: &resolved.geometry,
        build: &build,
        woods: &woods,
        string_drills: &resolved.string_drills(&analysis),
        proportions: &sizes::proportions(&design.geometry),
    };
    let whole = whole(&making)?;
    let grips = grips(&making, &whole);
    Ok(Sketch { band, whole, grips })
}

/// What the boards or sheets of a nest cost: whole ones are bought.
fn cost(design: &Design, nest: &Nest) -> Option<f64> {
    let each_m2 = nest.size.0.to_m() * nest.size.1.to_m();
    let each = if nest.is_sheet { each_m2 } else { each_m2 * nest.thickness.to_m() };
    let price = sizes::price(&design.geometry, &nest.wood)?;
    Some(nest.boards.len() as f64 * each * price)
}

const PARTS: &str = "part,wood,strips,layers,finished_length_mm,finished_width_mm,finished_thickness_mm,\
     rough_length_mm,rough_width_mm,rough_thickness_mm,volume_cm3,mass_g,holes\n";
const BOARDS: &str = "\nwood,thickness_mm,board_length_mm,board_width_mm,boards,at_least,waste_percent,pieces_too_long,cost\n";
const PIECES: &str =
    "\nwood,thickness_mm,board,part,strip,from_end_mm,from_edge_mm,length_mm,width_mm\n";
const COUNTED: &str = "\nitem,count\n";
const STANDS: &str = "\nmass_kg,middle_x_mm,middle_y_mm,middle_z_mm,tips_to_front_deg,tips_to_player_deg,\
     tips_aside_deg,shoulder_height_at_balance_mm\n";

/// Five tables: every part rough and finished; the boards and sheets; each piece on them; what else is counted; and what the
/// wood weighs and how the harp stands. A mass or a cost that is not known is empty.
///
/// # Errors
///
/// Why there are no parts.
pub fn csv(design: &Design) -> Result<String, String> {
    let parts = parts(design).map_err(|why| why.to_string())?;
    let mut csv = PARTS.to_owned();
    for blank in &parts.blanks {
        let _ = write!(csv, "{},{},{},{}", blank.name, blank.wood, blank.strips, blank.layers);
        blank.finished.iter().chain(&blank.rough).for_each(|size| number(&mut csv, size.to_mm()));
        number(&mut csv, 1e6 * blank.volume_m3);
        match blank.mass {
            Some(mass) => number(&mut csv, mass.to_g()),
            None => csv.push(','),
        }
        let _ = writeln!(csv, ",{}", blank.holes);
    }
    csv.push_str(BOARDS);
    for (nest, cost) in parts.nests.iter().zip(&parts.costs) {
        let _ = write!(csv, "{}", nest.wood);
        [nest.thickness, nest.size.0, nest.size.1]
            .iter()
            .for_each(|size| number(&mut csv, size.to_mm()));
        let _ = write!(csv, ",{},{}", nest.boards.len(), nest.at_least);
        number(&mut csv, 100.0 * nest.waste_ratio());
        let cost = cost.map_or_else(String::new, |cost| format!("{cost:.2}"));
        let _ = writeln!(csv, ",{},{cost}", nest.too_long.len());
    }
    csv.push_str(PIECES);
    for nest in &parts.nests {
        for (at, board) in nest.boards.iter().enumerate() {
            for lies in board {
                let _ = write!(csv, "{}", nest.wood);
                number(&mut csv, nest.thickness.to_mm());
                let name = parts.blanks[lies.blank].name;
                let _ = write!(csv, ",{},{name},{}", at + 1, lies.strip);
                let all: [Length; 4] = [lies.at.0, lies.at.1, lies.size.0, lies.size.1];
                all.iter().for_each(|size| number(&mut csv, size.to_mm()));
                csv.push('\n');
            }
        }
    }
    csv.push_str(COUNTED);
    let of = parts.counts;
    for (item, count) in [
        ("strings", of.strings),
        ("tuning_pins", of.tuning_pins),
        ("bridge_pins", of.bridge_pins),
        ("levers", of.levers),
        ("discs", of.discs),
        ("string_holes", of.string_holes),
        ("shoulder_fasteners", of.fasteners),
    ] {
        let _ = writeln!(csv, "{item},{count}");
    }
    csv.push_str(STANDS);
    let (weight, stands) = (parts.weight, parts.balance);
    let _ = write!(csv, "{:.3}", weight.mass.to_kg());
    weight.middle.iter().for_each(|at| number(&mut csv, 1e3 * at));
    stands.tips_rad.iter().for_each(|tip| number(&mut csv, tip.to_degrees()));
    number(&mut csv, 1e3 * stands.shoulder_m);
    csv.push('\n');
    Ok(csv)
}

/// A tenth is all that a saw can keep.
fn number(csv: &mut String, value: f64) {
    let text = format!("{value:.1}");
    let _ = write!(csv, ",{}", if text == "-0.0" { "0.0" } else { &text });
}
