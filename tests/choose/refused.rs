//! Tasks that cannot be met: the rules that are named conflict on the strings that are named, and none of them is
//! too many.

use stringloft::engine::choose::{Answer, LIMITS, LimitKind, Pick, Rules, choose};
use stringloft::engine::units::{Force, Length};

use crate::drawn::{Draws, Size, task};
use crate::every_set::{How, every_set, light, small};
use crate::model::Model;

/// Whether there is a set under some kinds of rules on some rows.
fn there_is(model: &Model<'_>, kinds: &[LimitKind], rows: (usize, usize)) -> bool {
    let total = kinds.contains(&LimitKind::Total);
    let sets = every_set(model, How::Hard { kinds, rows });
    sets.iter().any(|found| !total || light(model.task, found))
}

#[test]
fn what_is_named_conflicts_and_nothing_less_does() {
    let (mut seen, mut kinds_seen) = (0, Vec::new());
    for seed in 0..1200 {
        let task = small(seed, 0.9);
        let Answer::None(refusal) = choose(&task) else { continue };
        let model = Model::new(&task);
        assert!(!refusal.conflicts.is_empty(), "{seed}: a reason");
        for conflict in &refusal.conflicts {
            let row = |string: usize| model.rows.iter().position(|row| row.string == string);
            let rows =
                (row(conflict.strings.0).expect("a row"), row(conflict.strings.1).expect("a row"));
            assert!(!there_is(&model, &conflict.limits, rows), "{seed}: {conflict:?}");
            for kind in &conflict.limits {
                if matches!(kind, LimitKind::Breaks | LimitKind::NoPull) {
                    continue;
                }
                let less: Vec<LimitKind> =
                    conflict.limits.iter().copied().filter(|other| other != kind).collect();
                // What is never allowed stays forbidden in the model, but may be what is to blame.
                let never = model.rows[rows.0].options.iter().all(|choice| {
                    choice.broken.iter().any(|(own, _)| {
                        less.contains(own) || matches!(own, LimitKind::Breaks | LimitKind::NoPull)
                    })
                });
                if rows.0 == rows.1 && never {
                    continue;
                }
                let whole = (0, model.rows.len() - 1);
                let over = if refusal.without_item.is_empty() { whole } else { rows };
                assert!(there_is(&model, &less, over), "{seed}: without {kind:?} of {conflict:?}");
            }
            if refusal.without_item.is_empty() && !conflict.limits.contains(&LimitKind::Total) {
                let (first, last) = rows;
                let narrower = [(first + 1, last), (first, last.wrapping_sub(1))];
                for rows in narrower.into_iter().filter(|_| first < last) {
                    assert!(there_is(&model, &conflict.limits, rows), "{seed}: {conflict:?}");
                }
            }
            seen += 1;
            for kind in &conflict.limits {
                if !kinds_seen.contains(kind) {
                    kinds_seen.push(*kind);
                }
            }
        }
    }
    assert!(seen > 300, "{seen}");
    for kind in LIMITS {
        assert!(kinds_seen.contains(&kind) || kind == LimitKind::NoPull, "{kind:?} never seen");
    }
}

/// A harp of six strings with a stock that serves it.
fn served() -> stringloft::engine::choose::Task {
    let drawn = (5..50).map(|seed| {
        let mut draws = Draws::new(seed);
        let mut task = task(&mut draws, Size { strings: 6, items: 60, kept: 0.0, ruled: 0.0 });
        task.rules = Rules { unknown_share: true, ..Rules::default() };
        task
    });
    let all = |task: &stringloft::engine::choose::Task| {
        let answer = choose(task);
        let picks = answer.best().map(|best| best.set.picks.clone());
        picks.is_some_and(|picks| picks.iter().all(|pick| matches!(pick, Pick::Item(_))))
    };
    drawn.into_iter().find(all).expect("a task whose strings all take part")
}

fn refused(task: &stringloft::engine::choose::Task) -> stringloft::engine::choose::Refusal {
    match choose(task) {
        Answer::None(refusal) => refusal,
        Answer::Best(best) => panic!("there is a set: {:?}", best.set.picks),
    }
}

#[test]
fn a_total_that_is_too_low_is_named_with_the_least() {
    let mut task = served();
    task.rules.most_total = Some(Force::from_n(1.0));
    let refusal = refused(&task);
    let [conflict] = &refusal.conflicts[..] else { panic!("{:?}", refusal.conflicts) };
    assert_eq!(conflict.limits.last(), Some(&LimitKind::Total));
    assert_eq!(conflict.strings, (0, 5));
    let least = conflict.least_total.expect("the least total").to_n();
    let nearest = refusal.nearest.expect("a nearest set");
    assert!(nearest.broken.iter().any(|broken| broken.limit.kind == LimitKind::Total));
    // Nothing else must be broken for the least pull under the other rules.
    assert!(nearest.set.total.to_n() <= least * (1.0 + 1e-9));
    task.rules.most_total = Some(Force::from_n(least * 1.000_001));
    let close = match choose(&task) {
        Answer::Best(best) => best.set.total.to_n(),
        Answer::None(refusal) => refusal.conflicts[0].least_total.map_or(0.0, Force::to_n),
    };
    assert!(close > 0.0);
}

#[test]
fn a_zone_without_a_gauge_is_named_at_its_string() {
    let mut task = served();
    let mm = Length::from_mm;
    let zone = |strings, least, greatest| stringloft::engine::choose::Zone {
        strings,
        least: Some(least),
        greatest: Some(greatest),
    };
    task.rules.zones = vec![zone((3, 3), mm(9.0), mm(9.9))];
    let refusal = refused(&task);
    assert_eq!(refusal.without_item.len(), 1);
    assert_eq!(refusal.without_item[0].string, 3);
    let (thin, _) = refusal.without_item[0].broken[LimitKind::Thin as usize];
    assert!(thin > 0, "items are too thin");
    assert_eq!(refusal.conflicts[0].strings, (3, 3));
    assert!(refusal.conflicts[0].limits.contains(&LimitKind::Thin));
    let nearest = refusal.nearest.expect("a nearest set");
    assert!(nearest.broken.iter().all(|broken| broken.strings.0 == 3 || broken.strings.1 == 3));
}

#[test]
fn an_empty_stock_has_no_set_and_says_so_on_every_string() {
    let mut task = served();
    task.stock.clear();
    let refusal = refused(&task);
    assert_eq!(refusal.without_item.len(), 6);
    let nearest = refusal.nearest.expect("a set without strings");
    assert!(nearest.set.picks.iter().all(|pick| *pick == Pick::LeftOut));
}
