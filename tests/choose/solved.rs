//! Larger tasks against an integer-programming solver: `scripts/solve.py` says how `solved.json` came about.

use std::fs;
use std::path::Path;

use serde_json::{Value, json};
use stringloft::engine::choose::{Answer, Kept, Pick, Rules, Task, Zone, choose};
use stringloft::engine::units::{Force, Length};

use crate::drawn::{Draws, Size, task};
use crate::model::{Model, Row, chosen};
use crate::{assert_near, assert_same};

/// What is limited besides the share.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Limited {
    Nothing,
    /// The total pull, in per mille of what the best set without a limit pulls.
    Total(u16),
    /// The number of items.
    Items(usize),
    /// Both.
    Both(u16, usize),
}

/// Seed, strings, items, load share from and to, what is limited.
type Case = (u64, usize, usize, (f64, f64), Limited);

const CASES: [Case; 16] = [
    (1, 20, 40, (15.0, 80.0), Limited::Nothing),
    (2, 20, 40, (15.0, 80.0), Limited::Total(970)),
    (3, 24, 60, (20.0, 80.0), Limited::Items(8)),
    (4, 26, 80, (20.0, 80.0), Limited::Total(950)),
    (5, 30, 80, (20.0, 75.0), Limited::Both(975, 12)),
    (6, 32, 120, (25.0, 70.0), Limited::Nothing),
    (7, 34, 120, (25.0, 70.0), Limited::Total(980)),
    (8, 36, 160, (25.0, 70.0), Limited::Items(10)),
    (9, 38, 200, (30.0, 60.0), Limited::Total(990)),
    (10, 40, 200, (30.0, 60.0), Limited::Nothing),
    (11, 44, 240, (30.0, 60.0), Limited::Total(960)),
    (12, 46, 300, (35.0, 55.0), Limited::Both(985, 14)),
    (13, 47, 400, (35.0, 50.0), Limited::Nothing),
    (14, 47, 400, (35.0, 50.0), Limited::Total(985)),
    (15, 47, 400, (35.0, 50.0), Limited::Items(12)),
    (16, 47, 400, (38.0, 50.0), Limited::Both(990, 16)),
];

/// How far a gauge may be from that of the best set without counts and total, in the zones of larger harps.
const NEAR: f64 = 0.13;

fn drawn(case: Case) -> Task {
    let (seed, strings, items, (least, most), limited) = case;
    let mut draws = Draws::new(7000 + seed);
    let mut task = task(&mut draws, Size { strings, items, kept: 0.0, ruled: 0.0 });
    // As near to the shares that are asked for as there is a set.
    for (least, most) in [(least, most), (least / 2.0, most), (least / 4.0, 80.0), (1.0, 95.0)] {
        task.rules = Rules {
            most_share_percent: Some(most),
            least_share_percent: Some(least),
            only_in_stock: true,
            ..Rules::default()
        };
        let answer = choose(&task);
        let Some(best) = answer.best() else { continue };
        if strings > 24 {
            // A zone for each string, for the solver's sake: else there are millions of pairs.
            for (string, pick) in best.set.picks.iter().enumerate() {
                let Pick::Item(item) = pick else { continue };
                let Some(gauge) = task.stock[*item].make_up.gauge() else { continue };
                let at = |ratio: f64| Some(Length::from_mm(gauge.to_mm() * ratio));
                let (least, greatest) = (at(1.0 - NEAR), at(1.0 + NEAR));
                task.rules.zones.push(Zone { strings: (string, string), least, greatest });
            }
        }
        for string in [strings / 3, strings / 2] {
            if let Pick::Item(item) = best.set.picks[string] {
                let item = &task.stock[item];
                let make_up = item.make_up.clone();
                task.strings[string].kept = Some(Kept { make_up, family: Some(item.family) });
            }
        }
        break;
    }
    if let Limited::Items(most) | Limited::Both(_, most) = limited {
        task.rules.most_items = Some(most);
    }
    if let Limited::Total(share) | Limited::Both(share, _) = limited {
        let total = match choose(&task) {
            Answer::Best(best) => best.set.total.to_n(),
            Answer::None(refusal) => refusal.nearest.expect("a set").set.total.to_n(),
        };
        // A round number of newtons, so that the last digits do not matter.
        let most = (total * f64::from(share) / 1000.0).round();
        task.rules.most_total = Some(Force::from_n(most));
    }
    task
}

fn name(case: Case) -> String {
    format!("{}: {} strings, {} items, {:?}", case.0, case.1, case.2, case.4)
}

fn usable(model: &Model<'_>, row: &Row) -> Vec<Value> {
    let free = row.options.iter().filter(|choice| choice.broken.is_empty()).collect();
    let free = model.without_doubles(row, free, 0.0);
    free.into_iter()
        .map(|choice| {
            json!({
                "item": choice.alike,
                "family": choice.family,
                "gauge_nm": choice.gauge_nm,
                "core_nm": choice.core_nm,
                "pull_n": choice.pull_n,
                "stiffness": choice.stiffness,
                "units": choice.units,
            })
        })
        .collect()
}

/// The sum of the pulls of all items on all strings: so the test knows that a case is still the one that was solved.
fn pulls_n(model: &Model<'_>) -> f64 {
    model.rows.iter().flat_map(|row| &row.options).map(|choice| choice.pull_n).sum()
}

#[test]
#[ignore = "writes the cases for scripts/solve.py"]
fn write_the_cases() {
    let cases = CASES.map(|case| {
        let task = drawn(case);
        let model = Model::new(&task);
        let rows = model.rows.iter().map(|row| {
            json!({
                "kept": row.kept,
                "weight": row.weight,
                "wanted": row.wanted.map(|(tension, stiffness)| [tension, stiffness]),
                "options": usable(&model, row),
            })
        });
        let (weights, rules) = (task.weights, &task.rules);
        let pairs = model
            .rows
            .windows(2)
            .map(|two| usable(&model, &two[0]).len() * usable(&model, &two[1]).len());
        let sum = choose(&task).best().map(|best| best.set.parts.sum());
        eprintln!("{}: {sum:?}, {} pairs", name(case), pairs.sum::<usize>());
        json!({
            "name": name(case),
            "pulls_n": pulls_n(&model),
            "rows": rows.collect::<Vec<_>>(),
            "weights": {
                "feel": weights.feel,
                "tension": weights.tension,
                "at_change": weights.at_change,
                "change": weights.change,
                "item": weights.item,
                "price": weights.price,
            },
            "rules": {
                "in_order": rules.in_order,
                "no_shrinking": rules.no_shrinking,
                "most_changes": rules.most_changes,
                "most_items": rules.most_items,
                "most_total_n": rules.most_total.map(Force::to_n),
            },
        })
    });
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join("choose-cases.json");
    fs::write(&path, Value::Array(cases.into()).to_string()).expect("a file can be written");
    eprintln!("{}", path.display());
}

/// Source: `SciPy`, mixed-integer linear programming by `HiGHS`.
pub fn larger_tasks_have_the_optimum_of_an_integer_programming_solver() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/choose/solved.json");
    let text = fs::read_to_string(path).expect("the solved cases are kept");
    let file: Value = serde_json::from_str(&text).expect("JSON");
    let solved = file["solved"].as_array().expect("a list");
    assert_eq!(solved.len(), CASES.len());
    let (mut served, mut limited) = (0, 0);
    for (case, solved) in CASES.into_iter().zip(solved) {
        let name = name(case);
        assert_eq!(solved["name"], name);
        let task = drawn(case);
        let model = Model::new(&task);
        let pulls = solved["pulls_n"].as_f64().expect("a number");
        assert!((pulls_n(&model) / pulls - 1.0).abs() < 1e-9, "{name}: the figures have changed");
        let answer = choose(&task);
        let Some(sum) = solved["best"]["sum"].as_f64() else {
            assert_same(
                answer.best().is_none(),
                true,
                format_args!("{name}: the solver found none"),
            );
            continue;
        };
        let best = answer.best().unwrap_or_else(|| panic!("{name}: the solver found one"));
        let own = best.set.parts.sum();
        // The solver's own tolerance, a millionth, is far coarser where two sets are nearly equal.
        let scale = model.scale * (1.0 + sum);
        assert_near(scale + own - sum, scale, 1e-9, format_args!("{name}: {own}, not {sum}"));
        assert!(best.proven, "{name}");
        if best.tie.is_none() {
            let items = solved["best"]["items"].as_array().expect("a list");
            let items: Vec<u64> = items.iter().filter_map(Value::as_u64).collect();
            let alike = |(row, item): (&Row, usize)| {
                let choice = row.options.iter().find(|choice| choice.item == item)?;
                u64::try_from(choice.alike).ok()
            };
            let own = chosen(&model, &best.set.picks);
            let own: Vec<u64> = model.rows.iter().zip(own).filter_map(alike).collect();
            assert_same(own, items, &name);
        }
        served += 1;
        limited += usize::from(best.labels > 0);
    }
    assert!(served >= 12 && limited >= 5, "{served}, {limited}");
}
