//! Whether a set is worth changing strings for.

use super::*;

/// The sample with the set that was found for it, and one string of that as thick as another: by so much.
fn with_one_off(bench: &Bench, row: usize, times: f64) -> Outcome {
    let best = bench.outcome(&bench.all()).preview;
    let mut design = best;
    let make_up = &mut design.strings[row].make_up;
    let mm: f64 = make_up.diameter.parse().expect("a gauge in mm");
    make_up.diameter = format!("{:.4}", mm * times);
    design.strings[row].stock_key = 0;
    design.strings[row].order_code = String::new();
    let mut stock = bench.stock.clone();
    let make_up = make_up_text::write(&design.strings[row].make_up);
    stock.items.push(StockItem { make_up: make_up.into(), ..StockItem::default() });
    let off = Bench::of(design, stock);
    off.outcome(&off.all())
}

#[test]
fn a_hair_is_not_worth_a_string_and_a_wrong_gauge_is() {
    let bench = Bench::sample(SAMPLES[2]);
    // A plain string whose gauge no other has, so that there are no fewer gauges with it.
    let best = bench.outcome(&bench.all()).preview;
    let is_alone = |row: &usize| {
        let own = &best.strings[*row].make_up;
        let same = best.strings.iter().filter(|other| other.make_up == *own).count();
        own.layers.is_empty() && same == 1
    };
    let tried = (0..best.strings.len()).filter(is_alone);
    let mut hairs = tried.map(|row| (row, with_one_off(&bench, row, 1.01)));
    let (row, hair) = hairs.find(|(_, hair)| hair.changes.len() == 1).expect("such a string");
    assert!(!hair.is_worth && !hair.is_farther, "{:?}", hair.lines);
    let wrong = with_one_off(&bench, row, 1.2);
    assert!(!wrong.changes.is_empty() && wrong.is_worth, "{:?}", wrong.lines);
    // What is there already asks for nothing.
    let there = with_one_off(&bench, row, 1.0);
    assert!(there.changes.is_empty() && there.is_worth);
}
