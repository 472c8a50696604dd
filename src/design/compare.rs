//! What differs between two designs: string by string, in the totals, and in the settings.

use super::display::{self, figure, total_with_unit};
use super::document::{
    Design, DrivesSpec, GapsSpec, MeasuredSpec, SectionSpec, ServiceSpec, SparesSpec, Units,
    WantsSpec,
};
use super::make_up_text;
use super::order::money_words;
use super::resolve::resolve;
use super::stock::prices;
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::figure::Figure;
use crate::engine::pitch::Note;
use crate::engine::units::Stiffness;

/// The figures that are compared.
const FIGURES: [Figure; 5] =
    [Figure::Length, Figure::Gauge, Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];

/// Heads of the cells of a [`StringDiff`]: note, make-up, then the figures with the unit of the page.
pub fn columns(units: &Units) -> [String; 7] {
    let unit = |name: &str, figure| match display::figure_unit(figure, units) {
        "" => name.to_owned(),
        unit => format!("{name}, {unit}"),
    };
    [
        "note".to_owned(),
        "make-up".to_owned(),
        unit("length", Figure::Length),
        unit("gauge", Figure::Gauge),
        unit("tension", Figure::Tension),
        unit("pluck stiffness", Figure::PluckStiffness),
        unit("load share", Figure::LoadShare),
    ]
}

/// Two texts under one name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pair {
    pub name: String,
    pub before: String,
    pub after: String,
}

impl Pair {
    /// Whether they are not the same.
    pub fn differs(&self) -> bool {
        self.before != self.after
    }
}

/// A string before and after.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StringDiff {
    /// Index before; none for a string that came.
    pub before: Option<usize>,
    /// Index after; none for a string that went.
    pub after: Option<usize>,
    /// Under [`columns`].
    pub cells: Vec<Pair>,
}

impl StringDiff {
    /// Whether anything differs.
    pub fn differs(&self) -> bool {
        self.cells.iter().any(Pair::differs)
    }
}

/// Everything that differs.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// Every string of both, from the highest down, different or not.
    pub strings: Vec<StringDiff>,
    /// The totals, different or not.
    pub totals: Vec<Pair>,
    /// The settings that differ.
    pub settings: Vec<Pair>,
    /// The analysis of the design before, for ghost curves.
    pub ghost: Analysis,
}

/// Compares two designs. Figures stand in the units of `after`, rounded as in the chart, so that what differs
/// by less than can be seen is the same.
pub fn compare(before: &Design, after: &Design) -> Comparison {
    let [old, new] = [before, after].map(|design| analyse(&resolve(design).harp));
    let units = &after.units;
    let heads = columns(units);
    let strings = pairs(&old, &new).into_iter().map(|(was, is)| {
        let cells_of = |design: &Design, analysis: &Analysis, index: Option<usize>| match index {
            Some(index) => cells(design, analysis, index, units),
            None => vec![String::new(); heads.len()],
        };
        let sides = cells_of(before, &old, was).into_iter().zip(cells_of(after, &new, is));
        let cells = sides.zip(&heads).map(|((before, after), name)| Pair {
            name: name.clone(),
            before,
            after,
        });
        StringDiff { before: was, after: is, cells: cells.collect() }
    });
    let strings = strings.collect();
    let totals = totals((before, &old), (after, &new), units);
    let settings = SETTINGS.iter().map(|(name, words)| Pair {
        name: (*name).to_owned(),
        before: words(before),
        after: words(after),
    });
    let settings = settings.filter(Pair::differs).collect();
    Comparison { strings, totals, settings, ghost: old }
}

/// Which string was which: by the letter and octave, where there is one, else by the number.
fn pairs(old: &Analysis, new: &Analysis) -> Vec<(Option<usize>, Option<usize>)> {
    let step = |figures: &StringFigures| figures.note.map(Note::step);
    let mut taken = vec![false; old.strings.len()];
    let mut partner = vec![None; new.strings.len()];
    for (index, figures) in new.strings.iter().enumerate() {
        let free = |place: &usize| !taken[*place] && step(&old.strings[*place]) == step(figures);
        let same_number = Some(index).filter(|place| *place < taken.len());
        let found = match step(figures) {
            None => same_number.filter(|place| free(place)),
            Some(_) => {
                same_number.filter(|p| free(p)).or_else(|| (0..taken.len()).find(|p| free(p)))
            }
        };
        if let Some(place) = found {
            taken[place] = true;
            partner[index] = Some(place);
        }
    }
    // A string that went stands before the first one below it.
    let mut pairs = Vec::new();
    let mut gone = (0..taken.len()).filter(|place| !taken[*place]).peekable();
    for (index, was) in partner.into_iter().enumerate() {
        while let Some(lost) = gone.next_if(|lost| was.is_some_and(|was| *lost < was)) {
            pairs.push((Some(lost), None));
        }
        pairs.push((was, Some(index)));
    }
    pairs.extend(gone.map(|lost| (Some(lost), None)));
    pairs
}

fn cells(design: &Design, analysis: &Analysis, index: usize, units: &Units) -> Vec<String> {
    let (Some(spec), Some(figures)) = (design.strings.get(index), analysis.strings.get(index))
    else {
        return Vec::new();
    };
    let note = figures.note.map_or_else(|| spec.note.clone(), Note::printed);
    let known = FIGURES
        .iter()
        .map(|of| figure(*of, figures, units).unwrap_or_else(|_| display::NONE.to_owned()));
    [note, make_up_text::write(&spec.make_up)].into_iter().chain(known).collect()
}

fn totals(before: (&Design, &Analysis), after: (&Design, &Analysis), units: &Units) -> Vec<Pair> {
    let pair = |name: &str, words: &dyn Fn(&Design, &Analysis) -> String| Pair {
        name: name.to_owned(),
        before: words(before.0, before.1),
        after: words(after.0, after.1),
    };
    let extreme = |analysis: &Analysis, most: bool| {
        let known = analysis.strings.iter().filter_map(|figures| figures.pluck_stiffness.ok());
        let known = known.map(Stiffness::to_n_per_mm);
        let found = if most { known.reduce(f64::max) } else { known.reduce(f64::min) };
        found.map_or(display::NONE.to_owned(), |stiffness| {
            display::stiffness(Stiffness::from_n_per_mm(stiffness), units.force)
        })
    };
    vec![
        pair("strings", &|_, analysis| analysis.strings.len().to_string()),
        pair("pull of the whole harp", &|_, analysis| {
            let lacks = match analysis.without_tension {
                0 => String::new(),
                count => format!(", without {count} strings"),
            };
            format!("{}{lacks}", total_with_unit(analysis.total_tension, units.force))
        }),
        pair("highest load share", &|_, analysis| {
            let figures = analysis.tightest.and_then(|index| analysis.strings.get(index));
            let share = figures.and_then(|figures| figures.load_share_percent.ok());
            share.map_or(display::NONE.to_owned(), |share| format!("{} %", display::percent(share)))
        }),
        pair("pluck stiffness, least to greatest", &|_, analysis| {
            let unit = display::stiffness_unit(units.force);
            format!("{} to {} {unit}", extreme(analysis, false), extreme(analysis, true))
        }),
        pair("different strings to buy", &|design, _| {
            let mut kinds: Vec<String> = Vec::new();
            for make_up in design.strings.iter().map(|string| make_up_text::write(&string.make_up))
            {
                if !make_up.is_empty() && !kinds.contains(&make_up) {
                    kinds.push(make_up);
                }
            }
            kinds.len().to_string()
        }),
        pair("findings", &|_, analysis| analysis.findings.len().to_string()),
        pair("price of the strings", &|design, analysis| price_words(design, analysis)),
    ]
}

/// `84.20 EUR + 12.00 GBP, without 3 strings`
fn price_words(design: &Design, analysis: &Analysis) -> String {
    let mut sums: Vec<(String, f64)> = Vec::new();
    let mut without = 0_usize;
    for price in prices(design, analysis) {
        let Ok((price, currency)) = price else {
            without += 1;
            continue;
        };
        match sums.iter_mut().find(|sum| sum.0 == currency) {
            Some(sum) => sum.1 += price,
            None => sums.push((currency, price)),
        }
    }
    if sums.is_empty() {
        return display::NONE.to_owned();
    }
    let sums: Vec<String> = sums.iter().map(|(name, sum)| money_words(*sum, name)).collect();
    let lacks = if without == 0 { String::new() } else { format!(", without {without} strings") };
    format!("{}{lacks}", sums.join(" + "))
}

/// A setting in words.
type Setting = (&'static str, fn(&Design) -> String);

/// Every setting that can differ, in the order of the document.
const SETTINGS: [Setting; 62] = [
    ("title", |d| d.title.clone()),
    ("maker", |d| d.maker.clone()),
    ("client", |d| d.client.clone()),
    ("serial number", |d| d.serial.clone()),
    ("date", |d| d.date.clone()),
    ("open tuning", |d| d.open_tuning.clone()),
    ("remarks", |d| d.remarks.clone()),
    ("pitch of A4, Hz", |d| d.pitch.a4_hz.to_string()),
    ("temperament", |d| display::temperament(d.pitch.temperament).to_owned()),
    ("pluck point, % of the length", |d| d.pluck_percent.to_string()),
    ("pluck, mm", |d| d.pluck_mm.to_string()),
    ("partial of the damping", |d| d.damping_partial.to_string()),
    ("levers or discs", |d| display::mechanism(d.mechanism.kind).to_owned()),
    ("push of a lever, mm", |d| d.mechanism.push_mm.to_string()),
    ("strings with levers or discs of their own", |d| {
        d.strings.iter().filter(|string| string.mechanism.is_some()).count().to_string()
    }),
    ("expansion of the frame, 10⁻⁶/K", |d| d.frame_expansion_e6_per_k.to_string()),
    ("angle of strings and board, °", |d| d.geometry.board_angle_deg.to_string()),
    ("lean of the strings, °", |d| d.geometry.lean_deg.to_string()),
    ("spacing is measured", |d| {
        match d.geometry.spacing.measured {
            MeasuredSpec::Square => "square to the strings",
            MeasuredSpec::AlongBoard => "along the board",
        }
        .to_owned()
    }),
    ("spacing, mm", |d| gaps_words(&d.geometry.spacing.gaps)),
    ("height of the bar, mm", |d| d.geometry.start_mm.to_string()),
    ("offset of the tuning pins, mm", |d| d.geometry.pin_sideways_mm.to_string()),
    ("strings from the neck, mm", |d| d.geometry.strings_from_neck_mm.to_string()),
    ("what is drawn", |d| {
        match d.geometry.drives {
            DrivesSpec::Lengths => "lengths",
            DrivesSpec::NeckCurve => "curve of the pins",
        }
        .to_owned()
    }),
    ("drawn curve of the pins", |d| {
        let node = |(across, along): &(f64, f64)| format!("{across}, {along}");
        d.geometry.nodes_mm.iter().map(node).collect::<Vec<_>>().join("; ")
    }),
    ("neck below the pins, mm", |d| d.geometry.neck.below_pins_mm.to_string()),
    ("neck beyond the pins, mm", |d| d.geometry.neck.above_pins_mm.to_string()),
    ("thickness of the neck, mm", |d| d.geometry.neck.thickness_mm.to_string()),
    ("wood of the neck", |d| format!("{}, {}", d.geometry.neck.wood, d.geometry.neck.plies)),
    ("sections of the neck, %, mm", |d| {
        let section = |own: &SectionSpec| {
            format!("{}: {} by {}", own.at_percent, own.thickness_mm, own.depth_mm)
        };
        d.geometry.neck.sections.iter().map(section).collect::<Vec<_>>().join("; ")
    }),
    ("slope of the neck's grain, %", |d| d.geometry.neck.grain_percent.to_string()),
    ("gap to the pillar, mm", |d| d.geometry.pillar.gap_mm.to_string()),
    ("pillar, mm", |d| format!("{} by {}", d.geometry.pillar.width_mm, d.geometry.pillar.depth_mm)),
    ("push beside the pillar's middle, mm", |d| d.geometry.pillar.beside_mm.to_string()),
    ("wood of the pillar", |d| d.geometry.pillar.wood.clone()),
    ("board beyond the strings, mm", |d| {
        format!("{} and {}", d.geometry.board.below_mm, d.geometry.board.above_mm)
    }),
    ("width of the board, mm", |d| {
        format!("{} to {}", d.geometry.board.bass_width_mm, d.geometry.board.treble_width_mm)
    }),
    ("thickness of the board, mm", |d| {
        format!(
            "{} to {}",
            d.geometry.board.bass_thickness_mm, d.geometry.board.treble_thickness_mm
        )
    }),
    ("wood of the board", |d| format!("{}, {}", d.geometry.board.wood, d.geometry.board.plies)),
    ("where the harp lives", |d| {
        match d.geometry.service {
            ServiceSpec::Heated => "in heated rooms",
            ServiceSpec::Covered => "under a roof",
            ServiceSpec::Outdoors => "in the open",
        }
        .to_owned()
    }),
    ("drills, mm", |d| {
        let drills = &d.geometry.drills;
        format!(
            "bridge pin {}, string and {}, eyelet {}, lever or disc {}",
            drills.bridge_pin_mm, drills.string_clearance_mm, drills.eyelet_mm, drills.mechanism_mm
        )
    }),
    ("what is wanted of the strings", |d| targets_words(d)),
    ("deviation of lengths, mm", |d| d.tolerances.length_mm.to_string()),
    ("deviation of the pitch, cents", |d| d.tolerances.pitch_cents.to_string()),
    ("change of temperature, K", |d| d.tolerances.temperature_k.to_string()),
    ("deviation of the push, mm", |d| d.tolerances.push_mm.to_string()),
    ("deviation of diameters, mm", |d| d.tolerances.diameter_mm.to_string()),
    ("deviation of densities, %", |d| d.tolerances.density_percent.to_string()),
    ("highest load share, %", |d| d.limits.working_share_percent.to_string()),
    ("lowest load share, %", |d| d.limits.slack_share_percent.to_string()),
    ("least tension, N", |d| d.limits.least_tension_n.to_string()),
    ("band of pluck stiffness, N/mm", |d| {
        format!("{} to {}", d.limits.least_stiffness_n_per_mm, d.limits.most_stiffness_n_per_mm)
    }),
    ("limit for partial 8, cents", |d| d.limits.partial_8_cents.to_string()),
    ("limit for a step of stiffness, %", |d| d.limits.jump_percent.to_string()),
    ("bridge pin to tuning pin, mm", |d| d.allowances.after_length_mm.to_string()),
    ("turns on the tuning pin", |d| d.allowances.turns.to_string()),
    ("diameter of the tuning pin, mm", |d| d.allowances.pin_mm.to_string()),
    ("board and knot, mm", |d| d.allowances.knot_mm.to_string()),
    ("tail, mm", |d| d.allowances.tail_mm.to_string()),
    ("spares", |d| spares_words(d)),
    ("figures of materials", |d| materials_words(d)),
    ("order codes", |d| {
        let coded = d.strings.iter().map(|string| string.order_code.trim());
        coded.filter(|code| !code.is_empty()).collect::<Vec<_>>().join(", ")
    }),
];

fn gaps_words(gaps: &GapsSpec) -> String {
    let list = |widths: &[f64]| widths.iter().map(f64::to_string).collect::<Vec<_>>().join(", ");
    match gaps {
        GapsSpec::UniformMm(width) => width.to_string(),
        GapsSpec::ZonesMm(zones) => {
            let zone = |(number, width): &(u32, f64)| format!("{width} at gap {number}");
            zones.iter().map(zone).collect::<Vec<_>>().join(", ")
        }
        GapsSpec::EachMm(widths) => list(widths),
    }
}

fn targets_words(design: &Design) -> String {
    let targets = &design.targets;
    if targets.is_usual() {
        return String::new();
    }
    let point = |(key, value): &(f64, f64)| format!("{value} at note {key}");
    let unit = match targets.wants {
        WantsSpec::Stiffness => "N/mm",
        WantsSpec::Tension => "N",
    };
    let points: Vec<String> = targets.points().iter().map(point).collect();
    let rest = if points.is_empty() { "limits and weights" } else { unit };
    format!("{} {rest}", points.join(", ")).trim().to_owned()
}

fn spares_words(design: &Design) -> String {
    let range = match (design.order.from_string, design.order.to_string) {
        (0, 0) => String::new(),
        (from, 0) => format!(", from string {from}"),
        (from, to) => format!(", from string {} to {to}", from.max(1)),
    };
    let spares = match design.order.spares {
        SparesSpec::None => return "none".to_owned(),
        SparesSpec::OneOfEachItem => "one of each stock item".to_owned(),
        SparesSpec::OneOfEachString => "one for each string".to_owned(),
        SparesSpec::Percent(percent) => format!("{percent} %"),
    };
    format!("{spares}{range}")
}

/// The materials with their density, strength and modulus, so that a changed figure is seen.
fn materials_words(design: &Design) -> String {
    let words = design.materials.iter().map(|material| {
        let modulus = material.modulus.as_ref().map(|fact| fact.value.base_gpa.to_string());
        let modulus = modulus.unwrap_or_else(|| display::NONE.to_owned());
        format!("{}: {} kg/m³, {modulus} GPa", material.key, material.density_kg_per_m3.value)
    });
    words.collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests;
