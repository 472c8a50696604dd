//! Tests of lists in which much stands twice.

use super::*;
use crate::design::stock::{Shelf, give_keys};

/// Lists drawn at random in which much stands twice, at other prices, for other notes, in other units or sold out:
/// with a limit of items the set is that from the list without doubles, a locked string counts as its item, and the
/// order finds each string's own item.
#[test]
fn doubles_are_one_item_to_choose() {
    let mut seed = 11_u64;
    let mut draw = |most: u64| {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
        (seed >> 33) % most
    };
    for round in 0..6 {
        let mut bench = Bench::sample(SAMPLES[1]);
        for item in &mut bench.stock.items {
            item.single = true;
            item.price = Some(2.0 + f64::from(u32::try_from(draw(40)).unwrap()) / 10.0);
        }
        // The best set of all is one step away from a set of one item less.
        let free = bench.outcome(&bench.all());
        let most = u32::try_from(free.after.different - 1 - round % 3).unwrap();
        let bench = bench.with(|design| design.targets.most_items = Some(most));
        let single = bench.outcome(&bench.all());
        assert_eq!(single.conflicts, Vec::<String>::new());
        let mut bench = bench.with(|design| {
            // Locked, as the set has them, in the middle of a run.
            for row in [5, 12] {
                let string = &mut design.strings[row];
                string.make_up = single.preview.strings[row].make_up.clone();
                string.locked = true;
                if string.make_up.is_plain() {
                    let mm = typed::gauge(&string.make_up.diameter).unwrap().to_mm();
                    string.make_up.diameter = format!("{} in", mm / 25.4);
                }
            }
        });
        let mut doubles = Vec::new();
        for item in &bench.stock.items {
            let mut double = item.clone();
            double.key = 0;
            double.supplier = "Second supplier".to_owned();
            match draw(5) {
                0 => {}
                1 => double.price = double.price.map(|price| price + 0.5),
                2 => double.highest = "C4".to_owned(),
                3 => double.sold_out = true,
                _ => continue,
            }
            doubles.push(double);
        }
        assert!(doubles.len() > 20);
        // Before the others or after them.
        let at = if round % 2 == 0 { bench.stock.items.len() } else { 0 };
        bench.stock.items.splice(at..at, doubles);
        give_keys(&mut bench.stock.items);
        let doubled = bench.outcome(&bench.all());
        assert_eq!(doubled.conflicts, Vec::<String>::new());
        let told = |outcome: &Outcome| (outcome.after.different, outcome.after.changes);
        assert_eq!(told(&doubled), told(&single));
        let gauges = |outcome: &Outcome| -> Vec<_> {
            let strings = &outcome.analysis.strings;
            strings.iter().map(|string| format!("{:.6}", string.gauge.unwrap().to_mm())).collect()
        };
        assert_eq!(gauges(&doubled), gauges(&single));
        let preview = &doubled.preview;
        let shelf = Shelf::new(&[], &preview.stock);
        for (string, before) in preview.strings.iter().zip(&bench.design.strings) {
            let item = &preview.stock[shelf.find(string).unwrap().index];
            assert!(!item.sold_out);
            if !before.locked {
                assert_eq!(item.key, string.stock_key, "{string:?}");
            }
        }
    }
}
