//! One string in full, in tables of words: every figure and how far it may be off, its make-up, its
//! partials, a pluck, and its levers or discs.

use std::sync::Arc;

use super::chart::sentence;
use crate::app::asked::Question;
use crate::design::display;
use crate::design::document::{Design, LengthUnit, StringSpec, Units};
use crate::design::figures::Group;
use crate::design::figures::{BY_PLACE, row};
use crate::design::make_up_said;
use crate::design::resolve::Resolved;
use crate::engine::analysis::{Analysis, HarpString, Known, StringFigures, partial_parts, stopped};
use crate::engine::construction::{Layer, MakeUp, Section};
use crate::engine::figure::Figure;
use crate::engine::lever::ContactPlace;
use crate::engine::limit::is_above;
use crate::engine::material::said;
use crate::engine::material::{Class, Material};
use crate::engine::mechanics::{bare_end_inharmonicity, partial_cents};
use crate::engine::pitch;
use crate::engine::stepped::stepped_partial;
use crate::engine::tolerance::{Cause, Spread, spreads};
use crate::engine::units::{Force, Length, LinearDensity};
use crate::words::papers::titled;
use crate::words::{Words, details as say};

/// The most partials that are listed.
pub const MOST_PARTIALS: u32 = 24;

/// A table with what there is to say about it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Block {
    pub title: &'static str,
    pub heads: Vec<&'static str>,
    /// The first cell of a row names it.
    pub rows: Vec<Vec<String>>,
    /// What the first rows raise as a question, row by row.
    pub asked: Vec<Option<Question>>,
    /// Whether the last column holds words and no numbers.
    pub worded: bool,
    pub notes: Vec<String>,
}

/// The groups of figures, as they are listed.
fn groups() -> impl Iterator<Item = Group> {
    Group::ALL.into_iter().filter(|group| *group != Group::More)
}

/// The figures of a group, as they are listed.
fn figures_of(group: Group) -> impl Iterator<Item = Figure> {
    BY_PLACE.into_iter().filter(move |figure| row(*figure).group == group)
}

/// What stands over the tables: `String 12, E♭5, in full`.
pub fn details_title(analysis: &Analysis, row: usize) -> String {
    analysis
        .strings
        .get(row)
        .map(|figures| say::title(&display::string_name(figures)))
        .unwrap_or_default()
}

/// Everything about the string of a row, with so many partials.
pub fn details(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    row: usize,
    partials: u32,
) -> Vec<Block> {
    let (Some(spec), Some(string), Some(figures)) =
        (design.strings.get(row), resolved.harp.strings.get(row), analysis.strings.get(row))
    else {
        return Vec::new();
    };
    let units = &design.units;
    let off = spreads(string, &resolved.harp);
    let mut blocks: Vec<Block> = groups()
        .map(|group| {
            let line = |figure| line(figure, figures, units, off.of(figure));
            Block {
                title: group.title().said(),
                heads: vec![
                    say::FIGURE.said(),
                    say::VALUE.said(),
                    say::OFF.said(),
                    say::MAIN_CAUSE.said(),
                ],
                rows: figures_of(group).map(line).collect(),
                asked: figures_of(group).map(Question::of_figure).collect(),
                worded: true,
                notes: Vec::new(),
            }
        })
        .collect();
    if let (Ok(turns), Some(tuning)) = (figures.pin_turns, blocks.get_mut(2)) {
        let wound = design.allowances.turns;
        if is_above(turns, wound) {
            let (turns, wound) = display::apart(turns, wound, 1);
            tuning.notes.push(say::few_turns(&turns, &wound));
        }
    }
    if let Some(ordering) = blocks.last_mut() {
        ordering.rows.extend(order(spec));
        ordering.notes.push(off_words(off.without_temperature));
    }
    let Ok(make_up) = &string.make_up else { return blocks };
    blocks.extend(wound(make_up, figures, units));
    blocks.extend(self::partials(make_up, figures, partials.clamp(1, MOST_PARTIALS)));
    blocks.extend(pluck(design, resolved, figures));
    blocks.extend(contacts(string, make_up, resolved, figures, units));
    blocks
}

/// A figure, how far it may be off, and by what.
fn line(figure: Figure, figures: &StringFigures, units: &Units, off: Known<Spread>) -> Vec<String> {
    let unit = display::figure_unit(figure, units);
    let with_unit = |number: String| format!("{number} {unit}").trim_end().to_owned();
    let name = row(figure).word.said().to_owned();
    match figure.value(figures) {
        Ok(value) => {
            let off = off.ok().filter(|off| off.total > 0.0);
            // No digits beyond those of what it may be off by.
            let value = with_unit(match off {
                Some(off) => display::beside(figure, value, off.total, units),
                None => display::in_full(figure, value, units),
            });
            let total = |off: Spread| display::spread(figure, off.total, units);
            let spread = off.map(|off| format!("± {}", with_unit(total(off))));
            vec![name, value, spread.unwrap_or_default(), off.map(cause).unwrap_or_default()]
        }
        Err(why) => {
            vec![name, display::NONE.to_owned(), String::new(), sentence(&why.to_string())]
        }
    }
}

/// The largest cause in words.
fn cause(off: Spread) -> String {
    let largest =
        Cause::ALL.into_iter().max_by(|one, other| off.by(*one).total_cmp(&off.by(*other)));
    let Some(largest) = largest else { return String::new() };
    let name = match largest {
        Cause::Diameter => say::CAUSE_DIAMETER.said(),
        Cause::Density => say::CAUSE_DENSITY.said(),
        Cause::Length => say::CAUSE_LENGTH.said(),
        Cause::Pitch => say::CAUSE_PITCH.said(),
        Cause::Temperature => say::CAUSE_TEMPERATURE.said(),
        Cause::Push => say::CAUSE_PUSH.said(),
    };
    // Causes add up by squares: one that has half of the sum outweighs all others.
    let part = off.by(largest);
    if 2.0 * part * part > off.total * off.total {
        name.to_owned()
    } else {
        say::cause_others(&name)
    }
}

/// What "may be off" means.
fn off_words(without_temperature: bool) -> String {
    let meaning = say::OFF_MEANING;
    if without_temperature {
        format!("{meaning} {}", say::OFF_WITHOUT_WARMTH)
    } else {
        meaning.into()
    }
}

/// What is typed and ordered by.
fn order(spec: &StringSpec) -> [Vec<String>; 2] {
    let worded =
        |name: &str, text: String| vec![name.to_owned(), String::new(), String::new(), text];
    let code = match spec.order_code.as_str() {
        "" => display::NONE.to_owned(),
        code => code.to_owned(),
    };
    [worded(say::STRING.said(), make_up_said::said(&spec.make_up)), worded(say::CODE.said(), code)]
}

/// The make-up of a wound string, from the inside out.
fn wound(make_up: &MakeUp, figures: &StringFigures, units: &Units) -> Option<Block> {
    let MakeUp::Wound(_) = make_up else { return None };
    let (material, diameter) = make_up.core()?;
    let whole = make_up.linear_density().to_g_per_m();
    let mut before = make_up.core_linear_density()?.to_g_per_m();
    let row = |part: &str, of: &str, size: String, over_all: Length, g_per_m: f64| {
        vec![
            part.to_owned(),
            of.to_owned(),
            size,
            display::gauge_with_unit(over_all, units.gauge),
            format!("{} g/m", display::linear_density(LinearDensity::from_g_per_m(g_per_m))),
            format!("{} %", display::percent(100.0 * g_per_m / whole)),
        ]
    };
    let size = display::gauge_with_unit(diameter, units.gauge);
    let mut rows = vec![row(say::CORE.said(), said(&material.name), size, diameter, before)];
    let layers = make_up.layers();
    let none = (Length::default(), Length::default());
    for (index, layer) in layers.iter().enumerate() {
        // The string as far as this layer: what it weighs more than without it is the layer.
        let so_far = layers.get(..=index)?.to_vec();
        let so_far = MakeUp::wound(material.clone(), diameter, so_far, none).ok()?;
        let mass = so_far.linear_density().to_g_per_m();
        let inner = index + 1 < layers.len() && layer.material.class != Class::Metal;
        let part = if inner { say::BEDDING.said() } else { say::WINDING.said() };
        let size = layer_size(layer, units);
        rows.push(row(part, said(&layer.material.name), size, so_far.gauge()?, mass - before));
        before = mass;
    }
    let mut notes = vec![say::CORE_ALONE.said().to_owned()];
    notes.extend(bare_words(make_up, figures, units));
    Some(Block {
        title: say::INSIDE_OUT.said(),
        heads: vec![
            say::HEAD_PART.said(),
            say::HEAD_MATERIAL.said(),
            say::HEAD_SIZE.said(),
            say::HEAD_OVER_ALL.said(),
            say::HEAD_MASS.said(),
            say::HEAD_SHARE.said(),
        ],
        rows,
        asked: Vec::new(),
        worded: false,
        notes,
    })
}

fn layer_size(layer: &Layer, units: &Units) -> String {
    let gauge = |length: Length| display::gauge(length, units.gauge);
    let size = match layer.section {
        Section::Round { diameter } => gauge(diameter),
        Section::Ribbon { thickness, width } => format!("{} × {}", gauge(thickness), gauge(width)),
    };
    let size = format!("{size} {}", display::gauge_unit(units.gauge));
    if layer.packing_ratio < 1.0 {
        say::covering(&display::percent(100.0 * layer.packing_ratio), &size)
    } else {
        size
    }
}

/// How long the bare ends are, and what of the sharpness of partial 8 is theirs.
fn bare_words(make_up: &MakeUp, figures: &StringFigures, units: &Units) -> Option<String> {
    let (board, pin) = make_up.bare_ends();
    if board.to_m() + pin.to_m() <= 0.0 {
        return Some(say::NO_BARE.into());
    }
    let long = |end| display::length_with_unit(end, units.length);
    let mut said = vec![say::bare_ends(&long(board), &long(pin))];
    said.extend(tension_words(make_up, figures));
    let parts = figures.length.ok().zip(figures.tension.ok());
    let parts = parts.and_then(|(length, pull)| partial_parts(make_up, length, pull, 8).ok());
    said.extend(parts.map(|(stiff, bare)| {
        say::bare_partial(&display::cents(bare), &display::cents(stiff + bare))
    }));
    Some(said.join(" "))
}

/// What the tension of a string with bare ends leaves out: the first partial of the string as it is lies above that of
/// one wound throughout, and the tension goes with the square of the pitch.
fn tension_words(make_up: &MakeUp, figures: &StringFigures) -> Option<String> {
    let ratio =
        make_up.core_linear_density()?.to_kg_per_m() / make_up.linear_density().to_kg_per_m();
    let sharp = stepped_partial(make_up.bare_ends(), figures.length.ok()?, ratio, 1)?;
    let less = 100.0 * (1.0 - 1.0 / (sharp * sharp));
    Some(say::bare_tension(&display::decimals(pitch::cents(sharp), 2), &display::decimals(less, 2)))
}

/// The partials, and what makes them sharp.
fn partials(make_up: &MakeUp, figures: &StringFigures, count: u32) -> Option<Block> {
    let (length, tension) = (figures.length.ok()?, figures.tension.ok()?);
    let first = figures.frequency.ok()?.to_hz();
    let (board, pin) = make_up.bare_ends();
    let has_ends = board.to_m() + pin.to_m() > 0.0;
    let core = make_up.core_linear_density().map_or(1.0, LinearDensity::to_kg_per_m);
    let ratio = core / make_up.linear_density().to_kg_per_m();
    let law: f64 = [board, pin].map(|end| bare_end_inharmonicity(end, length, ratio)).iter().sum();
    let row = |n: u32| {
        let parts = partial_parts(make_up, length, tension, n);
        let (stiff, bare) = match parts {
            Ok(parts) => parts,
            Err(why) => return Err(sentence(&why.to_string())),
        };
        let hz = f64::from(n) * first * pitch::ratio(stiff + bare);
        let mut row = vec![n.to_string(), display::decimals(hz, 1), display::cents(stiff)];
        if has_ends {
            row.extend([bare, stiff + bare, partial_cents(law, n)].map(display::cents));
        }
        Ok(row)
    };
    let rows: Result<Vec<_>, String> = (1..=count).map(row).collect();
    let (rows, notes) = match rows {
        Ok(rows) => (rows, Vec::new()),
        Err(why) => (Vec::new(), vec![why]),
    };
    let mut block = Block {
        title: say::PARTIALS.said(),
        heads: vec![say::HEAD_PARTIAL.said(), "Hz", say::BY_STIFFNESS.said()],
        rows,
        asked: Vec::new(),
        worded: false,
        notes,
    };
    if has_ends {
        block.heads.extend([say::BY_ENDS.said(), say::TOGETHER.said(), say::BY_LAW.said()]);
        block.notes.push(say::BY_ENDS_EXACT.said().to_owned());
    }
    Some(block)
}

/// What a finger meets, and what it leaves.
fn pluck(design: &Design, resolved: &Resolved, figures: &StringFigures) -> Option<Block> {
    let units = &design.units;
    let aside = resolved.harp.conditions.pluck_of(figures.length.ok()?);
    let whole = figures.pluck_force.ok()?.to_n();
    let straight = figures.pluck_stiffness.ok()?.to_n_per_m() * aside.to_m();
    let unit = display::figure_unit(Figure::PluckForce, units);
    let force = |n: f64| {
        let n = display::on_the_page(Figure::PluckForce, n, units);
        format!("{} {unit}", display::significant(n, 3))
    };
    let glide = figures.glide_cents.map(|cents| say::cents(&display::cents(cents)));
    let row = |name: &str, text: String| vec![name.to_owned(), text];
    Some(Block {
        title: say::PLUCK.said(),
        heads: vec![say::OF_FINGER.said(), say::VALUE.said()],
        rows: vec![
            row(say::PULLS_ASIDE.said(), display::length_with_unit(aside, units.length)),
            row(
                say::AT_SHARE.said(),
                format!("{} %", display::percent(100.0 * resolved.harp.pluck_ratio)),
            ),
            row(say::NEEDS_FORCE.said(), force(whole)),
            row(say::FROM_TENSION.said(), force(straight)),
            row(say::FROM_STRETCHING.said(), force(whole - straight)),
            row(say::GLIDE.said(), glide.unwrap_or_else(|_| display::NONE.to_owned())),
        ],
        asked: Vec::new(),
        worded: false,
        notes: Vec::new(),
    })
}

/// Where the lever or the discs stand, and how exactly.
fn contacts(
    string: &HarpString,
    make_up: &MakeUp,
    resolved: &Resolved,
    figures: &StringFigures,
    units: &Units,
) -> Option<Block> {
    use crate::engine::analysis::Mechanism;
    let fitted: &[(Words, Known<ContactPlace>)] = match string.mechanism {
        Mechanism::None => return None,
        Mechanism::Lever => &[(say::LEVER, figures.lever)],
        Mechanism::SingleDisc => &[(say::DISC, figures.disc_natural)],
        Mechanism::DoubleDisc => {
            &[(say::DISC_NATURAL, figures.disc_natural), (say::DISC_SHARP, figures.disc_sharp)]
        }
    };
    let string = stopped(make_up, figures, &resolved.harp.conditions);
    let breaks = figures.breaking_load.ok().map(Force::to_n);
    let (mut rows, mut notes) = (Vec::new(), Vec::new());
    for (name, place) in fitted {
        let (place, string) = match (place, &string) {
            (Ok(place), Ok(string)) => (place, string),
            (Err(why), _) | (_, Err(why)) => {
                notes.push(titled(&name, &sentence(&why.to_string())));
                continue;
            }
        };
        let mm = |length: Length| display::rounded(Figure::Lever, length.to_mm(), units);
        let room = |cents| string.room(place, cents);
        let room = |cents| room(cents).map_or_else(|| display::NONE.to_owned(), mm_fine(units));
        let pull = string.pull(place);
        let load = breaks.map(|most| format!("{} %", display::percent(100.0 * pull.to_n() / most)));
        rows.push(vec![
            (*name).into(),
            mm(place.distance),
            mm(place.nominal),
            display::cents(place.nominal_error_cents),
            room(2.0),
            room(5.0),
            display::tension_with_unit(pull, units.force),
            load.unwrap_or_else(|| display::NONE.to_owned()),
        ]);
    }
    if let (Ok(first), Ok(second)) = (figures.disc_natural, figures.disc_sharp) {
        let apart = second.distance.to_mm() - first.distance.to_mm();
        notes.push(say::disc_to_disc(
            &display::rounded(Figure::Lever, apart, units),
            &display::length_unit(units.length),
        ));
    }
    let is_plastic = |(material, _): (&Arc<Material>, Length)| material.class == Class::Polymer;
    if make_up.core().is_some_and(is_plastic) {
        notes.push(say::CORE_STIFF.said().to_owned());
    }
    let places = if units.length == LengthUnit::Mm { say::PLACES_MM } else { say::PLACES_INCH };
    notes.push(places.into());
    Some(Block {
        title: say::CONTACTS.said(),
        heads: vec![
            say::HEAD_CONTACT.said(),
            say::HEAD_PLACE.said(),
            say::HEAD_NOMINAL.said(),
            say::HEAD_ERROR.said(),
            say::HEAD_TWO_CENTS.said(),
            say::HEAD_FIVE_CENTS.said(),
            say::HEAD_PULL.said(),
            say::HEAD_LOAD.said(),
        ],
        rows,
        asked: Vec::new(),
        worded: false,
        notes,
    })
}

/// A room in two digits: it may be a hundredth of a millimetre.
fn mm_fine(units: &Units) -> impl Fn(Length) -> String {
    move |length| format!("± {}", display::spread(Figure::Lever, length.to_mm(), units))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::MechanismKind;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    fn sample(key: &str) -> Design {
        SAMPLES.iter().find(|sample| sample.key == key).unwrap().design()
    }

    fn blocks(design: &Design, row: usize, partials: u32) -> Vec<Block> {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        details(design, &resolved, &analysis, row, partials)
    }

    fn titled<'a>(blocks: &'a [Block], start: &str) -> &'a Block {
        blocks.iter().find(|block| block.title.starts_with(start)).unwrap()
    }

    #[test]
    fn every_figure_stands_in_one_group() {
        let mut all: Vec<Figure> = groups().flat_map(figures_of).collect();
        all.sort_unstable();
        assert_eq!(all, Figure::ALL);
    }

    #[test]
    fn a_table_has_as_many_cells_as_heads() {
        for key in ["wire-22", "travel-26", "floor-36", "pedal-47"] {
            let design = sample(key);
            for row in 0..design.strings.len() {
                for block in blocks(&design, row, 12) {
                    let width = block.heads.len();
                    assert!(block.rows.iter().all(|row| row.len() == width), "{key} {block:?}");
                }
            }
        }
    }

    #[test]
    fn a_figure_tells_what_it_may_be_off_by_or_why_there_is_none() {
        let list = blocks(&sample("wire-22"), 3, 12);
        let pull = &titled(&list, "Tension").rows[0];
        assert_eq!((&*pull[0], &*pull[3]), ("Tension", "the diameter"));
        assert!(pull[2].starts_with("± ") && pull[2].ends_with(" N"), "{pull:?}");
        let tuning = titled(&list, "Tuning");
        let lever = tuning.rows.iter().find(|row| row[0] == "Lever").unwrap();
        assert_eq!((&*lever[1], &*lever[3]), ("–", "No lever is fitted to this string."));
        let several = Spread { total: 2.0, causes: [1.2, 1.2, 0.9, 0.5, 0.1, 0.0], worst: 3.9 };
        assert_eq!(cause(several), "the density, and others");
    }

    #[test]
    fn the_layers_of_a_wound_string_weigh_what_the_string_weighs() {
        let design = sample("floor-36");
        let list = blocks(&design, 35, 12);
        let make_up = titled(&list, "Make-up");
        assert_eq!(make_up.rows[0][0], "Core");
        assert_eq!(make_up.rows[1][0], "Bedding");
        assert_eq!(make_up.rows[2][0], "Winding");
        let percent: u32 = make_up
            .rows
            .iter()
            .map(|row| row[5].trim_end_matches(" %").parse::<u32>().unwrap())
            .sum();
        assert!((99..=101).contains(&percent), "{percent}");
        assert!(list.iter().all(|block| !block.title.is_empty()));
        assert!(blocks(&design, 0, 12).iter().all(|block| !block.title.starts_with("Make-up")));
    }

    #[test]
    fn the_first_partial_is_in_tune_and_there_are_as_many_as_asked_for() {
        let mut design = sample("floor-36");
        design.strings[35].make_up.bare.board = "20".to_owned();
        let list = blocks(&design, 35, 99);
        let table = titled(&list, "Partials");
        assert_eq!(table.rows.len(), 24);
        assert_eq!(table.rows[0][2..], ["0.0", "0.0", "0.0", "0.0"].map(str::to_owned));
        assert!(table.notes[0].contains("cubic law"));
        let bare = titled(&list, "Make-up").notes.last().unwrap();
        assert!(bare.contains("cents above its note, so at pitch it has 0.0"), "{bare}");
        let plain = blocks(&design, 0, 12);
        assert_eq!(titled(&plain, "Partials").heads.len(), 3);
    }

    #[test]
    fn discs_have_a_row_each_and_a_string_without_has_none() {
        let mut design = sample("pedal-47");
        let list = blocks(&design, 20, 12);
        let discs = titled(&list, "Levers");
        assert_eq!(discs.rows.len(), 2, "{discs:?}");
        assert!(discs.notes[0].starts_with("From disc to disc: "));
        let upper = |row: usize| {
            let list = blocks(&sample("pedal-47"), row, 12);
            titled(&list, "Levers").notes.iter().any(|note| note.contains("an upper estimate"))
        };
        assert!(upper(4) && !upper(20), "nylon is stiffer in vibration, gut is not");
        design.strings[20].mechanism = Some(MechanismKind::None);
        assert!(blocks(&design, 20, 12).iter().all(|block| !block.title.starts_with("Levers")));
        design.strings[20].mechanism = Some(MechanismKind::Lever);
        assert_eq!(titled(&blocks(&design, 20, 12), "Levers").rows.len(), 1);
    }

    #[test]
    fn a_string_that_cannot_be_computed_has_its_reasons() {
        let mut design = sample("floor-36");
        design.strings[4].length.clear();
        let list = blocks(&design, 4, 12);
        let pull = &titled(&list, "Tension").rows[0];
        assert_eq!(pull[3], "No vibrating length: it is missing or cannot be read.");
        design.strings[4].make_up = Default::default();
        assert_eq!(blocks(&design, 4, 12).len(), groups().count());
        assert!(blocks(&design, 400, 12).is_empty());
    }
}
