//! Sets and lengths for the samples from the list to start from.

mod doubles;
mod families;
mod worth;

use super::both::Both;
use super::kind::StringKind;
use super::lengths::{Lengths, Room, Strength, Way, lengths, written};
use super::*;
use crate::design::document::{
    DrivesSpec, KindSpec, LengthUnit, StringSpec, WantsSpec, WeightsSpec, ZoneSpec,
};
use crate::design::edit::{Edit, EditKey};
use crate::design::history::History;
use crate::design::persist::check;
use crate::design::presets::{SAMPLES, Sample};
use crate::design::resolve::resolve;
use crate::design::stock::{StockList, is_same, starting_list, table};
use crate::design::targets::like;
use crate::design::{make_up_text, typed};
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::findings::Weight;
use crate::engine::units::Length;

/// A design with what follows from it, and a stock.
struct Bench {
    design: Design,
    resolved: Resolved,
    analysis: Analysis,
    stock: StockList,
}

impl Bench {
    fn of(design: Design, stock: StockList) -> Self {
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        Self { design, resolved, analysis, stock }
    }

    /// A sample with its own feel as the curve and the kinds of string that it has; its own strings are in the stock.
    fn sample(sample: Sample) -> Self {
        let mut design = sample.design();
        design.targets.points_n_per_mm = like(&design, WantsSpec::Stiffness);
        let mut stock = starting_list();
        let mut kinds: Vec<String> = Vec::new();
        for (string, meant) in design.strings.iter().zip(resolve(&design).harp.strings) {
            let name = StringKind::of(meant.make_up.as_ref().unwrap()).name;
            if !kinds.contains(&name) {
                kinds.push(name);
            }
            let make_up = make_up_text::write(&string.make_up);
            if stock.items.iter().all(|item| *item.make_up != make_up) {
                stock.items.push(StockItem { make_up: make_up.into(), ..StockItem::default() });
            }
        }
        let spec = |kind| KindSpec { kind, ..KindSpec::default() };
        design.targets.kinds = kinds.into_iter().map(spec).collect();
        Self::of(design, stock)
    }

    fn with(self, change: impl FnOnce(&mut Design)) -> Self {
        let mut design = self.design;
        change(&mut design);
        Self::of(design, self.stock)
    }

    fn shop(&self) -> Shop<'_> {
        Shop { items: &self.stock.items, materials: &self.stock.materials, own: false }
    }

    fn all(&self) -> Vec<bool> {
        vec![true; self.design.strings.len()]
    }

    fn task(&self, rows: &[bool]) -> Task {
        Task::new(&self.design, &self.resolved, &self.shop(), rows)
    }

    fn outcome(&self, rows: &[bool]) -> Outcome {
        let task = self.task(rows);
        let answer = task.search().finish();
        task.outcome(&self.design, &self.resolved, &self.analysis, &answer).unwrap()
    }
}

fn grave(analysis: &Analysis) -> usize {
    analysis.findings.iter().filter(|finding| finding.kind.weight() == Weight::Grave).count()
}

#[test]
fn the_set_found_is_no_worse_than_the_one_there_is_and_keeps_the_limits() {
    for sample in SAMPLES {
        let bench = Bench::sample(sample);
        let outcome = bench.outcome(&bench.all());
        let name = sample.key;
        assert_eq!(outcome.conflicts, Vec::<String>::new(), "{name}");
        assert_eq!(outcome.broken, Vec::<String>::new(), "{name}");
        let (before, after) = (outcome.before.parts.sum(), outcome.after.parts.sum());
        assert!(after <= before * (1.0 + 1e-9), "{name}: {after} after {before}");
        assert_eq!(check(&outcome.preview), Ok(()), "{name}");
        assert_eq!(grave(&outcome.analysis), 0, "{name}");
        let limits = &bench.resolved.harp.limits;
        for change in &outcome.changes {
            let share = change.share_percent.1.unwrap();
            let allowed = limits.slack_share_percent..=limits.working_share_percent;
            assert!(allowed.contains(&share), "{name}: {change:?}");
            assert_ne!(change.from, change.to, "{name}");
        }
        assert!(outcome.proof[0].starts_with("this set is proved"), "{name}: {:?}", outcome.proof);
        // Once taken, nothing is left to change.
        let again = Bench::of(outcome.edit(None).apply(&bench.design), bench.stock.clone());
        assert_eq!(again.design, outcome.preview, "{name}");
        let next = again.outcome(&again.all());
        let left = next.before.parts.sum() - next.after.parts.sum();
        assert!(left.abs() < 1e-9, "{name}: {left}");
    }
}

#[test]
fn one_step_back_undoes_a_set() {
    let bench = Bench::sample(SAMPLES[2]);
    let outcome = bench.outcome(&bench.all());
    assert!(!outcome.changes.is_empty());
    let mut history: History<Design, EditKey> = History::new(bench.design.clone());
    let edit = outcome.edit(None);
    history.record(edit.apply(&bench.design), edit.key());
    assert_eq!(history.present(), &outcome.preview);
    assert!(history.undo());
    assert_eq!(history.present(), &bench.design);
    assert!(!history.can_undo());
}

#[test]
fn only_chosen_strings_that_are_not_locked_change() {
    let lock = Edit::Lock { rows: 12..15, locked: true };
    let bench = Bench::sample(SAMPLES[2]).with(|design| *design = lock.apply(design));
    let rows: Vec<bool> = (0..36).map(|row| (10..20).contains(&row)).collect();
    let outcome = bench.outcome(&rows);
    for (row, (is, was)) in outcome.preview.strings.iter().zip(&bench.design.strings).enumerate() {
        let free = (10..20).contains(&row) && !(12..15).contains(&row);
        assert!(free || is == was, "{row}");
    }
    assert!(!outcome.changes.is_empty());
    // And of these, some can be taken.
    let one = outcome.changes[0].row;
    let part: Vec<bool> = (0..36).map(|row| row == one).collect();
    let taken = outcome.edit(Some(&part)).apply(&bench.design);
    let differ = |row: &usize| taken.strings[*row] != bench.design.strings[*row];
    assert_eq!((0..36).filter(differ).collect::<Vec<_>>(), [one]);
}

#[test]
fn limits_of_total_count_and_zones_are_kept() {
    let bench = Bench::sample(SAMPLES[2]).with(|design| {
        let targets = &mut design.targets;
        targets.most_items = Some(20);
        targets.most_total_n = Some(3_900.0);
        let (lowest, highest) = ("C4".to_owned(), "C5".to_owned());
        let (thinnest, thickest) = ("0.8".to_owned(), "1.2".to_owned());
        targets.zones = vec![ZoneSpec { lowest, highest, thinnest, thickest }];
    });
    let outcome = bench.outcome(&bench.all());
    assert_eq!(outcome.conflicts, Vec::<String>::new());
    assert!(outcome.after.different <= 20);
    assert!(outcome.analysis.total_tension.to_n() <= 3_900.0 + 0.5);
    for figures in &outcome.analysis.strings {
        if (60..=72).contains(&figures.note.unwrap().key_number()) {
            let mm = figures.gauge.unwrap().to_mm();
            assert!((0.8 - 1e-9..=1.2 + 1e-9).contains(&mm), "{mm}");
        }
    }
}

#[test]
fn a_stock_with_too_few_gauges_names_what_is_in_the_way() {
    let mut bench = Bench::sample(SAMPLES[1]).with(|design| {
        let (highest, thinnest) = ("B3".to_owned(), "1.0".to_owned());
        design.targets.zones = vec![ZoneSpec { highest, thinnest, ..ZoneSpec::default() }];
        design.targets.least_share_percent = Some(12.0);
    });
    bench.stock.items.truncate(4);
    bench.stock.items[0].make_up = "unobtainium 0.5".into();
    bench.stock.items[1].sold_out = true;
    let task = bench.task(&bench.all());
    let answer = task.search().finish();
    assert_eq!(
        task.left_out[..2],
        [
            "1 item of the stock cannot be read: unobtainium 0.5",
            "1 item of the stock is sold out: nylon 0.46"
        ]
    );
    let conflicts = task.conflicts(&bench.analysis, &answer);
    assert_eq!(
        conflicts,
        [
            "the stock has nothing for strings 20, B♭3 to 26, C3: 2 are too thin for the zone (widen the zone of gauges)"
        ]
    );
    let outcome = task.outcome(&bench.design, &bench.resolved, &bench.analysis, &answer).unwrap();
    assert_eq!(outcome.conflicts, conflicts);
    assert!(!outcome.broken.is_empty());
    // An empty stock is told as such.
    bench.stock.items.clear();
    let task = bench.task(&bench.all());
    let answer = task.search().finish();
    assert!(task.conflicts(&bench.analysis, &answer)[0].starts_with("the stock has nothing that"));
}

#[test]
fn what_cannot_be_read_of_the_targets_is_told() {
    let bench = Bench::sample(SAMPLES[0]).with(|design| {
        let zone = ZoneSpec {
            lowest: "H4".to_owned(),
            thinnest: "thin".to_owned(),
            ..ZoneSpec::default()
        };
        design.targets.zones = vec![zone];
        let (kind, lowest, highest) = ("gut".to_owned(), "C9".to_owned(), "D9".to_owned());
        design.targets.kinds.push(KindSpec { kind, lowest, highest });
        design.strings[3].length.clear();
    });
    let task = bench.task(&bench.all());
    for start in [
        "zone 1: a note begins",
        "zone 1 of gauges: ",
        "no string of the harp lies where gut",
        "1 string without length",
    ] {
        assert!(task.left_out.iter().any(|text| text.starts_with(start)), "{:?}", task.left_out);
    }
    assert_eq!(task.sought.len(), 21);
}

#[test]
fn alternatives_go_from_few_strings_to_even_ones() {
    let bench = Bench::sample(SAMPLES[1]);
    let task = bench.task(&bench.all());
    let found = task.by_items().finish();
    let alternatives = task.alternatives(&found);
    assert!(alternatives.len() > 3);
    for pair in alternatives.windows(2) {
        assert!(pair[0].different < pair[1].different, "{pair:?}");
    }
    let few = &alternatives[0];
    let outcome =
        task.outcome(&bench.design, &bench.resolved, &bench.analysis, &few.answer).unwrap();
    assert_eq!(outcome.after.different, few.different);
    assert!(few.text.starts_with(&format!("{} different string", few.different)), "{}", few.text);
}

#[test]
fn a_code_comes_with_a_string_and_prices_are_summed() {
    let mut bench = Bench::sample(SAMPLES[1]);
    for (number, item) in (0..).zip(&mut bench.stock.items) {
        item.code = format!("X{number}");
        item.single = true;
        item.price = Some(2.0);
        item.currency = "EUR".to_owned();
    }
    let bench = bench.with(|design| design.targets.weights.price = WeightsSpec::MUCH);
    let outcome = bench.outcome(&bench.all());
    assert_eq!((outcome.after.price, outcome.after.without_price), (52.0, 0));
    let last = outcome.lines.last().unwrap();
    assert_eq!((&*last.what, &*last.after), ("price of these strings", "52.00 EUR"));
    for change in &outcome.changes {
        let string = &outcome.preview.strings[change.row];
        assert!(string.order_code.starts_with('X'), "{string:?}");
    }
    assert!(!outcome.preview.stock.is_empty());
}

/// The drawer and the frame: a table of the strings at hand and a list of notes and lengths.
#[test]
fn gauges_in_the_drawer_string_a_frame() {
    let mut drawer = String::from("make_up\n");
    for mm in
        ["0.51", "0.56", "0.64", "0.71", "0.76", "0.81", "0.91", "1.02", "1.14", "1.27", "1.40"]
    {
        drawer.push_str(&format!("nylon {mm}\n"));
    }
    for wound in
        ["0.81 + nylon 0.25", "0.91 + nylon 0.30", "1.02 + nylon 0.35", "1.14 + nylon 0.45"]
    {
        drawer.push_str(&format!("nylon {wound}\n"));
    }
    let columns = table::propose(&drawer).unwrap();
    let import = table::import(&drawer, &columns, "", &[]);
    assert_eq!((import.items.len(), import.bad.len()), (15, 0), "{:?}", import.bad);
    let mut frame = String::from("note,length_mm\n");
    for string in &SAMPLES[1].design().strings {
        frame.push_str(&format!("{},{}\n", string.note, string.length));
    }
    let design = crate::design::table::read(&frame).unwrap().into_design(&Design::default());
    assert!(design.strings.iter().all(|string| string.make_up.is_empty()));
    let bench = Bench::of(design, StockList { items: import.items, ..StockList::default() });
    let outcome = bench.outcome(&bench.all());
    assert_eq!(outcome.conflicts, Vec::<String>::new());
    assert_eq!(outcome.changes.len(), 26);
    assert_eq!(outcome.analysis.without_tension, 0);
    assert_eq!(grave(&outcome.analysis), 0, "{:?}", outcome.analysis.findings);
    assert!(outcome.changes.iter().all(|change| change.from.is_empty()));
    assert_eq!(check(&outcome.edit(None).apply(&bench.design)), Ok(()));
}

#[test]
fn a_material_of_the_list_comes_along() {
    let mut bench = Bench::sample(SAMPLES[1]).with(|design| design.targets.kinds.clear());
    let gut = crate::design::library::built_in().iter().find(|m| m.key == "nylon").unwrap();
    let (key, name) = ("our nylon".to_owned(), "Our nylon".to_owned());
    bench.stock.materials = vec![MaterialSpec { key, name, ..gut.clone() }];
    for item in &mut bench.stock.items {
        item.make_up = item.make_up.replace("nylon", "our nylon").into();
    }
    bench.stock.items.retain(|item| item.make_up.starts_with("our nylon"));
    let outcome = bench.outcome(&bench.all());
    assert_eq!(outcome.analysis.without_tension, 0);
    assert!(outcome.preview.materials.iter().any(|material| material.key == "our nylon"));
    assert_eq!(outcome.analysis, analyse(&resolve(&outcome.preview).harp));
}

#[test]
fn lengths_are_written_in_steps_and_read_back() {
    for (mm, unit, text) in [
        (612.26, LengthUnit::Mm, "612.5"),
        (612.24, LengthUnit::Mm, "612"),
        (25.4 * 24.126, LengthUnit::Inch, "24 1/8 in"),
        (25.4 * 24.99, LengthUnit::Inch, "24 63/64 in"),
        (25.4 * 24.996, LengthUnit::Inch, "25 in"),
        (25.4 * 0.9, LengthUnit::Inch, "29/32 in"),
    ] {
        let is = written(Length::from_mm(mm), unit);
        assert_eq!(is, text);
        let back = typed::length(&is).unwrap().to_mm();
        assert!((back - mm).abs() < 0.26, "{is}: {back}");
    }
}

#[test]
fn lengths_for_the_curve_come_nearer_to_it() {
    for sample in SAMPLES {
        let bench = Bench::sample(sample);
        let Bench { design, resolved, analysis, .. } = &bench;
        let way = Way::Wanted(Strength::Well);
        let found = lengths(design, resolved, analysis, way, &bench.all(), &Room::default());
        let found = found.unwrap_or_else(|why| panic!("{}: {why:?}", sample.key));
        assert!(!found.changes.is_empty(), "{}", sample.key);
        assert_eq!(grave(&found.analysis), 0, "{}", sample.key);
        let pins = found.lines.iter().find(|line| line.what.starts_with("pin")).unwrap();
        assert_ne!(pins.before, pins.after, "{}", sample.key);
        for (is, was) in found.preview.strings.iter().zip(&design.strings) {
            assert_eq!(is, &StringSpec { length: is.length.clone(), ..was.clone() });
        }
        // With no room, nothing moves.
        let room = Room { move_pins: Some(Length::from_mm(2.0)), ..Room::default() };
        if let Ok(near) = lengths(design, resolved, analysis, way, &bench.all(), &room) {
            for (is, was) in near.analysis.strings.iter().zip(&analysis.strings) {
                let moved = is.length.unwrap().to_mm() - was.length.unwrap().to_mm();
                assert!(moved.abs() <= 2.25 + 1e-9, "{}: {moved}", sample.key);
            }
        }
    }
}

#[test]
fn a_harp_is_scaled_stretched_and_faired_in_one_step() {
    let bench = Bench::sample(SAMPLES[2]);
    let Bench { design, resolved, analysis, .. } = &bench;
    let make =
        |way, rows: &[bool]| lengths(design, resolved, analysis, way, rows, &Room::default());
    let mm = |lengths: &Lengths, row: usize| lengths.analysis.strings[row].length.unwrap().to_mm();
    let was = |row: usize| analysis.strings[row].length.unwrap().to_mm();
    let larger = make(Way::Scale(1.1), &bench.all()).unwrap();
    for row in 0..36 {
        assert!((mm(&larger, row) - 1.1 * was(row)).abs() <= 0.25 + 1e-9, "{row}");
    }
    let longest = make(Way::Longest(Length::from_mm(1_600.0)), &bench.all()).unwrap();
    assert!((0..36).any(|row| (mm(&longest, row) - 1_600.0).abs() < 1e-9));
    let bass: Vec<bool> = (0..36).map(|row| row >= 26).collect();
    let stretched = make(Way::Stretch(1.0, 1.05), &bass).unwrap();
    assert!(stretched.changes.iter().all(|change| change.row >= 26));
    assert!((mm(&stretched, 35) - 1.05 * was(35)).abs() <= 0.25 + 1e-9);
    let faired = make(Way::Fair(Strength::Well), &bass).unwrap();
    assert!(faired.changes.iter().all(|change| (27..35).contains(&change.row)));
    assert_eq!(faired.edit(None).apply(design), faired.preview);
    assert!(make(Way::Scale(9.0), &bench.all()).unwrap_err()[0].starts_with("the ratio"));
    assert!(make(Way::Scale(1.1), &[]).unwrap_err()[0].starts_with("no string"));
    let drawn = Bench::sample(SAMPLES[2]).with(|d| d.geometry.drives = DrivesSpec::NeckCurve);
    let Bench { design, resolved, analysis, .. } = &drawn;
    let way = Way::Scale(1.1);
    let error = lengths(design, resolved, analysis, way, &drawn.all(), &Room::default());
    assert!(error.unwrap_err()[0].starts_with("the harmonic curve"));
}

#[test]
fn both_together_only_ever_improve() {
    for sample in SAMPLES {
        let bench = Bench::sample(sample);
        let mut both =
            Both::new(&bench.design, &bench.shop(), &bench.all(), Strength::Well, Room::default());
        let (mut sums, mut steps) = (Vec::new(), 0);
        while !both.step(200_000).done {
            sums.extend(both.progress().sum);
            steps += 1;
            assert!(steps < 100_000);
        }
        sums.extend(both.progress().sum);
        assert!(both.conflicts().is_empty(), "{}: {:?}", sample.key, both.conflicts());
        assert!(!sums.is_empty());
        assert!(sums.windows(2).all(|pair| pair[1] <= pair[0]), "{}: {sums:?}", sample.key);
        assert_eq!(grave(both.analysis()), 0, "{}", sample.key);
        assert_eq!(&both.edit(None).apply(&bench.design), both.preview(), "{}", sample.key);
        assert!(!both.changes().is_empty(), "{}", sample.key);
        let same = |change: &Change| {
            let (is, was) =
                (&both.preview().strings[change.row], &bench.design.strings[change.row]);
            is.length == was.length && is_same(&[], &is.make_up, &was.make_up)
        };
        assert!(!both.changes().iter().all(same), "{}", sample.key);
    }
}

#[test]
fn the_set_found_lies_within_what_the_stock_can_give() {
    for wants in [WantsSpec::Stiffness, WantsSpec::Tension] {
        let bench = Bench::sample(SAMPLES[1]).with(|design| design.targets.wants = wants);
        let reach = bench.task(&bench.all()).reach(wants);
        let outcome = bench.outcome(&bench.all());
        for (reach, figures) in reach.iter().zip(&outcome.analysis.strings) {
            let (least, most) = reach.unwrap();
            let is = crate::design::targets::value_of(wants, figures).unwrap();
            assert!((least * 0.999..=most * 1.001).contains(&is), "{is} of {least} to {most}");
        }
    }
}
