//! What must hold whatever the stock: more to choose from is never worse, a best set that is kept stays, looser rules
//! are never worse, and neither the size of the weights nor the order of the stock matters.

use stringloft::engine::choose::{
    Best, Item, Kept, Pick, Price, Progress, Rules, Search, Task, Weights, choose,
};
use stringloft::engine::units::Force;

use crate::drawn::{Draws, Size, task};

fn middle(seed: u64) -> Task {
    let mut draws = Draws::new(1000 + seed);
    let strings = 8 + draws.below(10);
    let items = 20 + draws.below(40);
    let mut task = task(&mut draws, Size { strings, items, kept: 0.03, ruled: 0.3 });
    if seed.is_multiple_of(2) {
        // A total that matters: a little less than the best set pulls.
        task.rules.most_total = None;
        if let Some(best) = choose(&task).best() {
            let total = best.set.total.to_n();
            task.rules.most_total = Some(Force::from_n(total * draws.between(0.93, 0.99)));
        }
    }
    task
}

fn served() -> impl Iterator<Item = (Task, Best)> {
    (0..60).map(middle).filter_map(|task| {
        let best = choose(&task).best()?.clone();
        Some((task, best))
    })
}

fn sum(best: &Best) -> f64 {
    best.set.parts.sum()
}

fn room(task: &Task) -> f64 {
    let w = task.weights;
    let listed = [w.feel, w.tension, w.at_change, w.change, w.item, w.price];
    let all = task.strings.iter().map(|place| place.weight).chain(listed);
    4e-9 * all.fold(0.0, f64::max)
}

#[test]
fn more_stock_is_never_worse() {
    let mut draws = Draws::new(3);
    for (task, best) in served() {
        let mut less = task.clone();
        for _ in 0..5 {
            less.stock.remove(draws.below(less.stock.len()));
        }
        if let Some(other) = choose(&less).best() {
            assert!(sum(&best) <= sum(other) + room(&task));
        }
    }
}

#[test]
fn a_best_set_that_is_kept_in_part_stays() {
    let mut draws = Draws::new(4);
    for (task, best) in served() {
        let mut kept = task.clone();
        for (place, pick) in kept.strings.iter_mut().zip(&best.set.picks) {
            if let Pick::Item(item) = pick
                && draws.chance(0.4)
                && task.weights.price == 0.0
            {
                let item = &task.stock[*item];
                place.kept =
                    Some(Kept { make_up: item.make_up.clone(), family: Some(item.family) });
            }
        }
        let again = choose(&kept);
        let again = again.best().expect("the best set is still there");
        assert!((sum(again) - sum(&best)).abs() <= room(&task));
        if best.tie.is_none() && again.tie.is_none() {
            for (one, other) in best.set.pulls.iter().zip(&again.set.pulls) {
                assert_eq!(one, other);
            }
        }
    }
}

#[test]
fn looser_rules_are_never_worse() {
    for (task, best) in served() {
        let rules = &task.rules;
        let loosened = [
            Rules {
                most_share_percent: rules.most_share_percent.map(|s| s + 5.0),
                ..rules.clone()
            },
            Rules { least_share_percent: None, ..rules.clone() },
            Rules { zones: Vec::new(), ..rules.clone() },
            Rules { only_in_stock: false, ..rules.clone() },
            Rules { only_sold_for: false, ..rules.clone() },
            Rules { in_order: false, ..rules.clone() },
            Rules { no_shrinking: false, ..rules.clone() },
            Rules { most_changes: rules.most_changes.map(|most| most + 1), ..rules.clone() },
            Rules { most_items: rules.most_items.map(|most| most + 1), ..rules.clone() },
            Rules {
                most_total: rules.most_total.map(|t| Force::from_n(t.to_n() * 1.01)),
                ..rules.clone()
            },
        ];
        for rules in loosened {
            let other = choose(&Task { rules, ..task.clone() });
            let other = other.best().expect("the set still keeps the rules");
            assert!(sum(other) <= sum(&best) + room(&task));
        }
    }
}

/// Doubles that are no cheaper change nothing, whatever is limited; what is kept counts as
/// its item, wherever that stands in the list.
#[test]
fn doubles_in_the_stock_change_nothing() {
    let mut draws = Draws::new(5);
    let mut limited = 0;
    for (mut task, best) in served() {
        // As many items as the best set has, so that a double would be one too many.
        task.rules.most_items = Some(best.set.runs);
        let answer = choose(&task);
        let best = answer.best().expect("the best set is within the limit");
        let mut doubled = task.clone();
        let count = task.stock.len();
        for item in 0..count {
            let mut double = task.stock[item].clone();
            match draws.below(4) {
                0 => {}
                1 => double.price = Some(Price::Each(1e3)),
                2 => double.in_stock = false,
                _ => continue,
            }
            doubled.stock.push(double);
        }
        let answer = choose(&doubled);
        let other = answer.best().expect("there is no less to choose from");
        assert!((sum(other) - sum(best)).abs() <= room(&task));
        assert_eq!((other.set.runs, other.set.different), (best.set.runs, best.set.different));
        assert_eq!(other.tie, best.tie);
        assert_eq!(other.set.pulls, best.set.pulls);
        limited += usize::from(best.set.runs < task.strings.len());
    }
    assert!(limited > 20, "{limited}");
}

#[test]
fn the_size_of_the_weights_does_not_matter() {
    for (task, best) in served() {
        for times in [1e-6, 3.7, 2e5] {
            let mut scaled = task.clone();
            for place in &mut scaled.strings {
                place.weight *= times;
            }
            let w = task.weights;
            scaled.weights = Weights {
                feel: w.feel * times,
                tension: w.tension * times,
                at_change: w.at_change * times,
                change: w.change * times,
                item: w.item * times,
                price: w.price * times,
                ..w
            };
            let answer = choose(&scaled);
            let other = answer.best().expect("the same task");
            assert_eq!(other.set.picks, best.set.picks);
            assert!((sum(other) / times - sum(&best)).abs() <= room(&task));
        }
    }
}

#[test]
fn the_order_of_the_stock_only_settles_ties() {
    let mut draws = Draws::new(6);
    let mut without_tie = 0;
    for (task, best) in served() {
        let mut shuffled = task.clone();
        let mut order: Vec<usize> = (0..task.stock.len()).collect();
        for at in (1..order.len()).rev() {
            order.swap(at, draws.below(at + 1));
        }
        shuffled.stock = order.iter().map(|index| task.stock[*index].clone()).collect();
        let answer = choose(&shuffled);
        let other = answer.best().expect("the same task");
        assert!((sum(other) - sum(&best)).abs() <= room(&task));
        assert_eq!(other.tie.is_some(), best.tie.is_some());
        if best.tie.is_none() {
            without_tie += 1;
            // Of items that are alike and cost the same, the first is taken.
            let first = |item: usize| {
                let alike = |other: &Item| {
                    let item = &task.stock[item];
                    other.make_up == item.make_up && other.family == item.family
                };
                Pick::Item(task.stock.iter().position(alike).expect("itself"))
            };
            let back = other.set.picks.iter().map(|pick| match pick {
                Pick::Item(item) => first(order[*item]),
                other => *other,
            });
            let own = best.set.picks.iter().map(|pick| match pick {
                Pick::Item(item) => first(*item),
                other => *other,
            });
            assert!(back.eq(own));
        }
    }
    assert!(without_tie > 5, "{without_tie}");
}

#[test]
fn a_search_in_slices_comes_to_the_same() {
    for (task, best) in served().take(10) {
        let mut search = Search::new(task);
        let (mut slices, mut work) = (0, 0);
        let done = loop {
            let Progress { done, work: so_far } = search.step(500);
            assert!(so_far > work || done);
            (slices, work) = (slices + 1, so_far);
            if done {
                break search;
            }
        };
        assert!(slices > 5, "{slices}");
        assert_eq!(done.answer().and_then(|answer| answer.best()), Some(&best));
    }
}

#[test]
fn numbers_that_are_none_do_not_stop_the_search() {
    for bad in [f64::NAN, f64::INFINITY, -1.0, 0.0] {
        let mut task = middle(1);
        task.weights.feel = bad;
        task.weights.price_unit = bad;
        task.strings[2].weight = bad;
        task.rules.most_total = Some(Force::from_n(bad));
        let _ = choose(&task);
        task.rules.most_total = None;
        task.pluck_ratio = bad;
        let answer = choose(&task);
        let picks = &answer.best().expect("an empty set").set.picks;
        assert!(picks.iter().all(|pick| *pick == Pick::LeftOut));
    }
}
