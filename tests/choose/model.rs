//! The sum and the rules once more, as the documentation tells them, on figures of `analyse`; nothing of the search
//! takes part.

use stringloft::engine::analysis::{
    Conditions, Harp, HarpString, Limits, Mechanism, StringFigures, analyse,
};
use stringloft::engine::choose::{Item, LimitKind, Pick, Price, Target, Task};
use stringloft::engine::construction::MakeUp;
use stringloft::engine::units::{Force, Stiffness};

/// An item on a string.
#[derive(Clone, Debug)]
pub struct Choice {
    /// Two kept strings of one make-up have the same; below the number of stock items it is one of the stock.
    pub item: usize,
    /// The first item of the stock with the same make-up and family.
    pub alike: usize,
    pub family: Option<usize>,
    pub gauge_nm: Option<f64>,
    /// Of the core of what is wound.
    pub core_nm: Option<f64>,
    pub pull_n: f64,
    pub stiffness: f64,
    /// Units of price; 0 for what is kept.
    pub units: f64,
    pub price: Option<f64>,
    /// Rules broken, with the amounts.
    pub broken: Vec<(LimitKind, f64)>,
}

/// A string that takes part.
pub struct Row {
    pub string: usize,
    pub kept: bool,
    pub weight: f64,
    /// Wanted tension and stiffness.
    pub wanted: Option<(f64, f64)>,
    pub options: Vec<Choice>,
}

pub struct Model<'a> {
    pub task: &'a Task,
    pub rows: Vec<Row>,
    pub scale: f64,
}

fn all_with(task: &Task, make_up: &MakeUp) -> Vec<StringFigures> {
    let strings = task.strings.iter().map(|place| HarpString {
        note: place.note,
        frequency: place.frequency,
        length: place.length,
        make_up: Ok(make_up.clone()),
        mechanism: Mechanism::None,
    });
    let limits = Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(10.0),
        stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
        partial_8_cents: 30.0,
        jump_percent: 25.0,
        least_raise: stringloft::engine::units::Length::from_mm(0.0),
    };
    let conditions = Conditions { allowance: task.allowance, ..Conditions::default() };
    let harp =
        Harp { strings: strings.collect(), pluck_ratio: task.pluck_ratio, conditions, limits };
    analyse(&harp).strings
}

impl<'a> Model<'a> {
    pub fn new(task: &'a Task) -> Self {
        let of_stock: Vec<Vec<StringFigures>> =
            task.stock.iter().map(|item| all_with(task, &item.make_up)).collect();
        let mut kept_before: Vec<(MakeUp, Option<usize>)> = Vec::new();
        let mut rows = Vec::new();
        for (string, place) in task.strings.iter().enumerate() {
            if place.frequency.is_err() || place.length.is_err() {
                continue;
            }
            let length_m = place.length.expect("known").to_m();
            let feel = length_m * task.pluck_ratio * (1.0 - task.pluck_ratio);
            let wanted = place.target.map(|target| match target {
                Target::Tension(t) => (t.to_n(), t.to_n() / feel),
                Target::Stiffness(k) => (k.to_n_per_m() * feel, k.to_n_per_m()),
            });
            let (mut options, mut kept) = (Vec::new(), false);
            if let Some(own) = &place.kept {
                kept = true;
                let figures = &all_with(task, &own.make_up)[string];
                if figures.tension.is_err() {
                    continue;
                }
                let same = task
                    .stock
                    .iter()
                    .position(|i| i.make_up == own.make_up && Some(i.family) == own.family);
                let item = same.unwrap_or_else(|| {
                    let key = (own.make_up.clone(), own.family);
                    let met = kept_before.iter().position(|k| *k == key);
                    task.stock.len()
                        + met.unwrap_or_else(|| {
                            kept_before.push(key);
                            kept_before.len() - 1
                        })
                });
                let mut option = choice(task, string, item, own.family, figures);
                (option.broken, option.units, option.price) = (Vec::new(), 0.0, Some(0.0));
                options.push(option);
            } else {
                for (item, stocked) in task.stock.iter().enumerate() {
                    let figures = &of_stock[item][string];
                    options.push(choice(task, string, item, Some(stocked.family), figures));
                }
            }
            rows.push(Row { string, kept, weight: place.weight, wanted, options });
        }
        let w = &task.weights;
        let listed = [w.feel, w.tension, w.at_change, w.change, w.item, w.price];
        let scale = task.strings.iter().map(|p| p.weight).chain(listed).fold(0.0, f64::max);
        Self { task, rows, scale: if scale > 0.0 { scale } else { 1.0 } }
    }

    /// What an item costs by itself.
    pub fn own(&self, row: &Row, option: &Choice) -> f64 {
        let off = row.wanted.map_or(0.0, |(t, _)| (option.pull_n / t).ln());
        row.weight * off * off + self.task.weights.price * option.units
    }

    /// Of options that are alike the one of the least cost, then of the lowest price, then the first, in the order of
    /// the first that are alike; `penalty` is what breaking a rule by 1 costs.
    pub fn without_doubles<'b>(
        &self,
        row: &Row,
        options: Vec<&'b Choice>,
        penalty: f64,
    ) -> Vec<&'b Choice> {
        let cost = |option: &Choice| {
            let amount: f64 = option.broken.iter().map(|(_, amount)| amount).sum();
            (self.own(row, option) / self.scale + penalty * amount, option.units)
        };
        let mut kept: Vec<&Choice> = Vec::new();
        for option in options {
            match kept.iter_mut().find(|other| other.alike == option.alike) {
                Some(held) if cost(option) < cost(held) => *held = option,
                Some(_) => {}
                None => kept.push(option),
            }
        }
        kept.sort_by_key(|option| option.alike);
        kept
    }

    /// What two neighbours cost, and whether that is a change and another item.
    pub fn pair(&self, upper: (&Row, &Choice), lower: (&Row, &Choice)) -> (f64, bool, bool) {
        let w = &self.task.weights;
        let change = match (upper.1.family, lower.1.family) {
            (Some(a), Some(b)) => a != b,
            _ => false,
        };
        let (mut feel, mut tension) =
            (lower.1.stiffness / upper.1.stiffness, lower.1.pull_n / upper.1.pull_n);
        if let (Some(a), Some(b)) = (upper.0.wanted, lower.0.wanted) {
            // A target in tension gives one in stiffness, and the other way round.
            feel /= b.1 / a.1;
            tension /= b.0 / a.0;
        }
        let item = upper.1.alike != lower.1.alike;
        let at_change = if change { w.at_change } else { 0.0 };
        let mut cost = (w.feel + at_change) * feel.ln().powi(2) + w.tension * tension.ln().powi(2);
        cost += if change { w.change } else { 0.0 } + if item { w.item } else { 0.0 };
        (cost, change, item)
    }

    /// Whether the rules of neighbours hold between two rows.
    pub fn ruled(&self, upper: (&Row, &Choice), lower: (&Row, &Choice)) -> bool {
        !(upper.0.kept && lower.0.kept) && upper.1.family.is_some() && lower.1.family.is_some()
    }

    /// The rules of neighbours that two break.
    pub fn breaches(&self, upper: &Choice, lower: &Choice) -> [Option<LimitKind>; 2] {
        [self.breach(upper, lower), self.jump(upper, lower)]
    }

    fn jump(&self, upper: &Choice, lower: &Choice) -> Option<LimitKind> {
        let step_percent = 100.0 * (lower.stiffness / upper.stiffness - 1.0);
        let most = self.task.rules.most_jump_percent?;
        (step_percent.abs() > most).then_some(LimitKind::Jump)
    }

    fn breach(&self, upper: &Choice, lower: &Choice) -> Option<LimitKind> {
        let (a, b) = (upper.family?, lower.family?);
        if a > b && self.task.rules.in_order {
            return Some(LimitKind::Order);
        }
        let over = |pair| matches!(pair, (Some(a), Some(b)) if a > b);
        let thinner =
            over((upper.gauge_nm, lower.gauge_nm)) || over((upper.core_nm, lower.core_nm));
        (a == b && thinner && self.task.rules.no_shrinking).then_some(LimitKind::Shrinking)
    }
}

fn choice(
    task: &Task,
    string: usize,
    item: usize,
    family: Option<usize>,
    figures: &StringFigures,
) -> Choice {
    let rules = &task.rules;
    let mut broken: Vec<(LimitKind, f64)> = Vec::new();
    let mut say = |kind, amount| broken.push((kind, amount));
    if figures.tension.is_err() {
        say(LimitKind::NoPull, 1.0);
    }
    let nm = |length: stringloft::engine::units::Length| (length.to_mm() * 1e6).round();
    let (gauge_nm, core_nm) = (figures.gauge.ok().map(nm), figures.core.ok().map(nm));
    if figures.tension.is_ok() {
        match figures.load_share_percent {
            Ok(share) => {
                if share > 100.0 {
                    say(LimitKind::Breaks, 1.0);
                }
                match rules.most_share_percent {
                    Some(most) if share > most => say(LimitKind::MostShare, (share / most).ln()),
                    _ => {}
                }
                match rules.least_share_percent {
                    Some(least) if share < least => {
                        say(LimitKind::LeastShare, (least / share).ln());
                    }
                    _ => {}
                }
            }
            Err(_) if !rules.unknown_share => say(LimitKind::UnknownShare, 1.0),
            Err(_) => {}
        }
        let zones = rules.zones.iter().filter(|z| z.strings.0 <= string && string <= z.strings.1);
        let (mut least, mut most) = (None::<f64>, None::<f64>);
        for zone in zones {
            least = zone.least.map(|g| least.map_or(nm(g), |l| l.max(nm(g)))).or(least);
            most = zone.greatest.map(|g| most.map_or(nm(g), |m| m.min(nm(g)))).or(most);
        }
        match gauge_nm {
            Some(gauge) if least.is_some_and(|least| gauge < least) => {
                say(LimitKind::Thin, (least.expect("it is") / gauge).ln());
            }
            Some(gauge) if most.is_some_and(|most| gauge > most) => {
                say(LimitKind::Thick, (gauge / most.expect("it is")).ln());
            }
            None if least.is_some() || most.is_some() => say(LimitKind::UnknownGauge, 1.0),
            _ => {}
        }
        if let Some((first, last)) = family.and_then(|f| task.families[f].strings)
            && !(first..=last).contains(&string)
        {
            let beyond = if string < first { first - string } else { string - last };
            say(LimitKind::Place, 0.1 * f64::from(u32::try_from(beyond).expect("few")));
        }
    }
    let stocked = task.stock.get(item).filter(|_| figures.tension.is_ok());
    let mut price = None;
    if let Some(stocked) = stocked {
        let key = task.strings[string].note.expect("drawn strings have notes").key_number();
        let below = stocked.lowest.map_or(0, |n| n.key_number() - key);
        let above = stocked.highest.map_or(0, |n| key - n.key_number());
        if rules.only_sold_for && below.max(above) > 0 {
            say(LimitKind::Note, f64::from(below.max(above)) / 12.0);
        }
        if rules.only_in_stock && !stocked.in_stock {
            say(LimitKind::Stock, 0.1);
        }
        price = stocked.price.map(|price| match price {
            Price::Each(price) => price,
            Price::PerMetre(price) => price * figures.cut_length.expect("a gauge").to_m(),
        });
    }
    let same = |own: &Item| {
        task.stock[..item].iter().position(|i| i.make_up == own.make_up && i.family == own.family)
    };
    Choice {
        item,
        alike: task.stock.get(item).and_then(same).unwrap_or(item),
        family,
        gauge_nm,
        core_nm: core_nm.filter(|core| gauge_nm.is_none_or(|gauge| *core < gauge)),
        pull_n: figures.tension.map_or(0.0, Force::to_n),
        stiffness: figures.pluck_stiffness.map_or(0.0, Stiffness::to_n_per_m),
        units: price.map_or(1.0, |price| price / task.weights.price_unit),
        price,
        broken,
    }
}

/// What was chosen for the rows of a model.
pub fn chosen(model: &Model<'_>, picks: &[Pick]) -> Vec<usize> {
    let of_row = |row: &Row| match picks[row.string] {
        Pick::Item(item) => Some(item),
        Pick::Kept => Some(row.options[0].item),
        _ => None,
    };
    model.rows.iter().filter_map(of_row).collect()
}
