//! The plan by which a harp is brought up, what its log says, and strings weighed by ear, in words.

use super::bearing_words::order_name;
use super::decimal::decimal;
use super::display;
use super::document::{GaugeUnit, LengthUnit, Units};
use super::giving;
use super::letters::capital;
use super::resolve::Resolved;
use super::typed::{self, TypedError};
use crate::engine::analysis::{Analysis, Harp};
use crate::engine::bearing::{Gives, Order, Stage, some_stages};
use crate::engine::figure::Figure;
use crate::engine::geometry::{Band, Loads};
use crate::engine::limit::is_above;
use crate::engine::measured::Reading;
use crate::engine::pitch::ratio;
use crate::engine::settling::by_ear::{self, LEAST_PARTIALS};
use crate::engine::settling::creep::{Entry, Fit, NoFit, fit};
use crate::engine::settling::plan::{
    Asked, BEFORE_PITCH_CENTS, Pass, Plan, Reach, Step, WITHIN_CENTS, plan,
};
use crate::engine::settling::unlike::{Unlike, Watched, unlike};
use crate::engine::tolerance::spreads;
use crate::engine::units::{Force, Frequency, Length};
use crate::words::{Words, settling as say};

/// Where the first rounds end: below pitch by so many cents each, and the words for that.
pub const BEGINS: [(&[f64], Words); 3] = [
    (&BEFORE_PITCH_CENTS, say::BEGIN_TWO),
    (&[BEFORE_PITCH_CENTS[1]], say::BEGIN_ONE),
    (&[], say::BEGIN_NONE),
];

/// The heads of the table of a round.
pub const HEADS: [Words; 8] = [
    say::STRING,
    say::TUNE_TO,
    say::SHARP,
    say::PIN,
    say::LEFT,
    say::STRETCH,
    say::CUT_TO,
    say::MIND,
];

/// How many stages of stringing are looked at for each order.
const STAGES: usize = 8;
/// Orders whose highest loads are nearer to each other than this are alike.
const ALIKE_RATIO: f64 = 1.01;

/// The plan of a design, in an order and with a beginning of [`BEGINS`].
pub fn plan_of(
    gives: Option<&Gives>,
    resolved: &Resolved,
    analysis: &Analysis,
    order: Order,
    begins: usize,
) -> Plan {
    let before_cents = BEGINS.get(begins).map_or(&[][..], |begin| begin.0).to_vec();
    let asked = Asked { order, before_cents, ..Asked::default() };
    plan(gives, &resolved.harp, analysis, &asked)
}

/// The highest share of its limit that the frame comes to while it is strung in an order, and with all strings up, each
/// string at pitch as it comes; `None` where it cannot be judged.
pub fn load_of(
    (band, loads): (&Band, &Loads),
    resolved: &Resolved,
    analysis: &Analysis,
    order: Order,
) -> Option<(f64, f64)> {
    let all = band.strings.len();
    let counts: Vec<usize> = (1..=STAGES).map(|step| all * step / STAGES).collect();
    let which = (order, counts.as_slice());
    let build = resolved.build();
    let stages = some_stages(band, loads, analysis, &resolved.geometry, &build, which);
    let used = |stage: &Stage| stage.used_ratio.map(|(_, most)| most);
    let highest = stages.iter().filter_map(used).reduce(f64::max)?;
    Some((highest, used(stages.last()?)?))
}

/// The order that is easiest on the frame by what [`load_of`] gives for each of [`Order::ALL`]: of those that are alike,
/// bass and treble in turns.
pub fn easiest(loads: &[Option<(f64, f64)>]) -> Order {
    let of = |at: usize| loads.get(at).copied().flatten().map_or(f64::INFINITY, |load| load.0);
    let least = (0..loads.len()).map(of).fold(f64::INFINITY, f64::min);
    let is_easy = |(at, order): &(usize, Order)| {
        *order != Order::InTurns
            && of(*at) <= least
            && of(Order::ALL.len() - 1) > ALIKE_RATIO * least
    };
    let found = Order::ALL.into_iter().enumerate().find(is_easy);
    found.map_or(Order::InTurns, |(_, order)| order)
}

fn percent(ratio: f64) -> String {
    display::decimals(100.0 * ratio, 0)
}

/// What an order does to the frame, in a sentence; nothing where that cannot be judged.
pub fn load_told(load: Option<(f64, f64)>, order: Order, easiest: Order) -> Vec<String> {
    let Some((highest, whole)) = load else { return Vec::new() };
    let mut told = if is_above(highest, ALIKE_RATIO * whole) {
        vec![say::load_more(&percent(highest), &percent(whole))]
    } else {
        vec![say::load_no_more(&percent(whole))]
    };
    if easiest != order {
        told.push(say::easier(&order_name(easiest)));
    }
    told
}

/// What a plan comes to, a sentence each.
pub fn told(plan: &Plan, analysis: &Analysis) -> Vec<String> {
    let mut told = Vec::new();
    let count = plan.passes.len();
    let within = display::decimals(WITHIN_CENTS, 0);
    if plan.is_foretold {
        told.push(if plan.is_enough {
            say::rounds_needed(&within, &count)
        } else {
            say::rounds_not_enough(&within, &count)
        });
        match plan.without_sharp {
            Some(without) if plan.is_enough && without > count => {
                told.push(say::rounds_without(&without));
            }
            _ => {}
        }
    } else {
        told.push(say::NOT_FORETOLD.into());
    }
    if !plan.left_out.is_empty() {
        let names = plan.left_out.iter().map(|place| giving::named(analysis, *place));
        told.push(say::left_out(&names.collect::<Vec<_>>().join(", ")));
    }
    told
}

/// What a round ends at: at pitch, or so far below it.
pub fn round_name(pass: &Pass, number: usize) -> String {
    if pass.below_cents > 0.0 {
        say::round_below(&number, &display::decimals(0.01 * pass.below_cents, 0))
    } else {
        say::round_at_pitch(&number)
    }
}

/// The cells of a string in a round, below [`HEADS`].
pub fn row(
    step: &Step,
    is_first: bool,
    analysis: &Analysis,
    harp: &Harp,
    units: &Units,
) -> [String; 8] {
    let figures = analysis.strings.get(step.place);
    let name = figures.map(display::string_number).unwrap_or_default();
    let pin = step.pin_turns.map_or_else(
        |_| String::new(),
        |turns| {
            if is_first {
                say::pin_turns(&display::decimals(turns, 1))
            } else {
                say::pin_degrees(&display::decimals(360.0 * turns, 0))
            }
        },
    );
    let left = step.left_cents.map_or_else(String::new, |(least, most)| {
        let [least, most] = [least, most].map(|cents| display::decimals(cents, 0));
        if least == most { most } else { say::range(&least, &most) }
    });
    let length = |of: Option<Length>| {
        of.map(|length| display::length_with_unit(length, units.length)).unwrap_or_default()
    };
    let cut = figures.and_then(|figures| figures.cut_length.ok()).map(|cut| match units.length {
        // Rounded up: a string may be cut too long, never too short.
        LengthUnit::Mm => Length::from_mm(cut.to_mm().ceil()),
        LengthUnit::Inch => cut,
    });
    [
        name,
        format!("{} Hz", display::frequency(step.tune_to)),
        display::decimals(step.sharp_cents, 0),
        pin,
        left,
        length(figures.and_then(|figures| figures.stretch.ok())),
        length(cut),
        mind(step, is_first, analysis, harp),
    ]
}

/// What to beware of with a string in a round; nothing where there is nothing.
fn mind(step: &Step, is_first: bool, analysis: &Analysis, harp: &Harp) -> String {
    let reach = match step.reach {
        Reach::Whole => Words::NONE,
        Reach::Limited => say::REACH_LIMITED,
        Reach::NoRoom => say::REACH_NO_ROOM,
        Reach::NoStrength => say::REACH_NO_STRENGTH,
    };
    let turns = analysis.strings.get(step.place).and_then(|figures| figures.pin_turns.ok());
    let wound = harp.conditions.allowance.turns();
    let many = turns.is_some_and(|turns| is_first && is_above(turns, wound));
    let many = if many { say::MANY_TURNS } else { Words::NONE };
    [reach, many].map(Words::said).join(" ").trim().to_owned()
}

/// What the log of a string says.
#[derive(Clone, Debug, PartialEq)]
pub struct Logged {
    /// Its place in the harp.
    pub place: usize,
    /// Its number and note.
    pub name: String,
    /// How many lines it has.
    pub count: usize,
    /// How far off it was last, in cents.
    pub last: String,
    /// What the law says, or why it says nothing.
    pub fit: Result<Fit, NoFit>,
}

/// The strings of a log that have a line.
pub fn logged(log: &[Vec<Entry>], analysis: &Analysis) -> Vec<Logged> {
    let strings = log.iter().zip(&analysis.strings).enumerate();
    let some = strings.filter(|(_, (entries, _))| !entries.is_empty());
    some.map(|(place, (entries, figures))| {
        let latest = |last: Entry, next: &Entry| {
            if next.minutes >= last.minutes { *next } else { last }
        };
        let last = entries.iter().fold(entries[0], latest);
        Logged {
            place,
            name: display::string_number(figures),
            count: entries.len(),
            last: display::cents(last.cents),
            fit: fit(entries, figures.cents_per_kelvin.ok()),
        }
    })
    .collect()
}

/// How fast a string goes at a moment, in words; why that is not known where it is not.
pub fn rate(logged: &Logged, minutes: f64) -> String {
    match &logged.fit {
        Ok(fit) => {
            let (rate, error) = fit.cents_per_day(minutes);
            let rate = display::decimals(rate, 1);
            error.map_or_else(
                || rate.clone(),
                |error| say::off_by(&display::decimals(error, 1), &rate),
            )
        }
        Err(NoFit::NoTuning) => say::NO_TUNING.into(),
        Err(NoFit::NoReading) => say::NO_READING.into(),
    }
}

/// The strings that behave unlike their neighbours, a sentence each. `when` says a moment.
pub fn odd(
    logged: &[Logged],
    analysis: &Analysis,
    harp: &Harp,
    when: impl Fn(f64) -> String,
) -> Vec<String> {
    let mut materials: Vec<&str> = Vec::new();
    let mut watched = Vec::new();
    for one in logged {
        let make_up = harp.strings.get(one.place).and_then(|string| string.make_up.as_ref().ok());
        let core = make_up.and_then(|make_up| make_up.core());
        let (Some((material, _)), Ok(fit)) = (core, &one.fit) else { continue };
        let known = materials.iter().position(|key| *key == material.key);
        let material = known.unwrap_or_else(|| {
            materials.push(&material.key);
            materials.len() - 1
        });
        watched.push(Watched { place: one.place, material, fit: fit.clone() });
    }
    let cents = |cents: f64| display::decimals(cents, 1);
    let said = |(place, unlike): (usize, Unlike)| {
        let string = giving::named(analysis, place);
        let said = match unlike {
            Unlike::Slipped { cents: by, minutes } => {
                say::slipped(&cents(by), &string, &when(minutes))
            }
            Unlike::FallsFaster { cents: by, beside_cents } => {
                say::falls_faster(&cents(beside_cents), &cents(by), &string)
            }
            Unlike::Rises { cents: by } => say::rises(&cents(by), &string),
            Unlike::Scatters { cents: by, beside_cents } => {
                say::scatters(&cents(beside_cents), &cents(by), &string)
            }
        };
        capital(&said)
    };
    unlike(&watched).into_iter().map(said).collect()
}

/// What is asked of a string that is weighed by ear: labels and examples. Errors are those of [`USUAL_ERRORS`].
pub const BY_EAR: [(Words, &str); 6] = [
    (say::EAR_LENGTH, "500 mm"),
    (say::EAR_LOAD, "6 kgf"),
    (say::EAR_PITCH, "220.4"),
    (say::EAR_SECOND_LOAD, "12 kgf"),
    (say::EAR_SECOND_PITCH, "311.2"),
    (say::EAR_DIAMETER, "1.02 mm"),
];

/// How far readings are usually off: millimetres of length, the share of a load with what gravity differs by, cents of a
/// pitch, millimetres of a diameter. Common practice, no source; gravity between pole and equator: from memory.
const USUAL_ERRORS: (f64, f64, f64, f64) = (0.5, 0.005, 0.5, 0.01);

/// What a string weighs by ear, and how stiff it is where two loads and a diameter are given; nothing where nothing was
/// typed. Readings are in the order of [`BY_EAR`]; bare numbers are in the units of the page.
///
/// # Errors
///
/// When a reading is missing or cannot be used.
pub fn by_ear(readings: &[String], units: &Units) -> Result<Option<String>, TypedError> {
    let text = |at: usize| readings.get(at).map_or("", |text| text.trim());
    if (0..BY_EAR.len()).all(|at| text(at).is_empty()) {
        return Ok(None);
    }
    let (of_length, of_load, of_pitch, of_diameter) = USUAL_ERRORS;
    let unit = if units.length == LengthUnit::Inch { "in" } else { "mm" };
    let length = typed::length(&typed::with_unit(text(0), unit))?;
    let length = Reading { value: length, error: Length::from_mm(of_length) };
    let at = |load: usize, pitch: usize| {
        let value = typed::load(&typed::with_unit(text(load), "kgf"))?;
        let error = Force::from_n(of_load * value.to_n());
        let hertz = typed::positive(text(pitch), say::OF_PITCH, 1.0, 20_000.0)?;
        let off = Frequency::from_hz(hertz * (ratio(of_pitch) - 1.0));
        let pitch = Reading { value: Frequency::from_hz(hertz), error: off };
        Ok::<_, TypedError>((Reading { value, error }, pitch))
    };
    let first = at(1, 2)?;
    let said = |mass: Reading<crate::engine::units::LinearDensity>| {
        let [value, error] = [mass.value, mass.error].map(|mass| mass.to_g_per_m());
        say::weighs(&display::significant(error, 2), &display::significant(value, 4))
    };
    if text(3).is_empty() && text(4).is_empty() {
        let mass = by_ear::mass_per_metre(length, first.0, first.1);
        return Ok(Some(mass.map_or_else(|| say::EAR_NOTHING.into(), said)));
    }
    let second = at(3, 4)?;
    let Some(both) = by_ear::two_loads(length, first, second) else {
        return Ok(Some(say::EAR_NOTHING.into()));
    };
    let mut told = vec![said(both.mass)];
    if !text(5).is_empty() {
        let unit = if units.gauge == GaugeUnit::Thou { "in" } else { "mm" };
        let value = typed::gauge(&typed::with_unit(text(5), unit))?;
        let diameter = Reading { value, error: Length::from_mm(of_diameter) };
        let modulus = by_ear::modulus(both.rigidity_n_m2, diameter);
        // Less than its doubt says nothing.
        let modulus = modulus.filter(|of| of.value.to_pa() > of.error.to_pa());
        told.push(modulus.map_or_else(
            || say::MODULUS_NOT.into(),
            |of| {
                let [value, error] = [of.value, of.error].map(|stress| stress.to_gpa());
                say::modulus_is(&display::significant(error, 2), &display::significant(value, 3))
            },
        ));
    }
    Ok(Some(told.join(" ")))
}

/// What typed partials say of a string, beside the inharmonicity of the chart. The text has the partials in hertz from the
/// first up, between semicolons or blanks, with a dash for one that was not heard.
pub fn partials_told(text: &str, chart: Option<Reading<f64>>) -> Option<String> {
    let cells = text.split([';', ' ', '\n', '\t']).filter(|cell| !cell.is_empty());
    let partials: Vec<(u32, Frequency)> = (1_u32..)
        .zip(cells)
        .filter_map(|(number, cell)| {
            let hertz = decimal(&cell.replace(',', "."))?;
            (hertz > 0.0 && hertz < 1e5).then(|| (number, Frequency::from_hz(hertz)))
        })
        .collect();
    if partials.is_empty() {
        return None;
    }
    Some(compared(&partials, chart).unwrap_or_else(|| say::few_partials(&LEAST_PARTIALS)))
}

/// How far off an inharmonicity may be at least, as a share of it. Common practice, no source.
const LEAST_DOUBT: f64 = 0.01;

/// What partials with their numbers say of a string, beside the inharmonicity of the chart; nothing where they are too
/// few.
pub fn compared(partials: &[(u32, Frequency)], chart: Option<Reading<f64>>) -> Option<String> {
    let heard = by_ear::inharmonicity(partials)?;
    let b = |of: f64| display::significant(1e6 * of, 3);
    let doubt = |error: f64| if error.is_finite() { b(error) } else { display::NONE.to_owned() };
    let Reading { value, error } = heard.inharmonicity_b;
    // The scatter of the fit alone: no string is as even as a clean recording of it.
    let error = error.max(LEAST_DOUBT * value.abs());
    let first = display::frequency(heard.first);
    let mut told = vec![say::partials_say(&b(value), &doubt(error), &first)];
    if let Some(chart) = chart {
        told.push(say::chart_says(&b(chart.value), &doubt(chart.error)));
        let apart = value - chart.value;
        told.push(if apart.abs() <= error + chart.error {
            say::CHART_AGREES.into()
        } else if apart > 0.0 {
            say::CHART_SOFTER.into()
        } else {
            say::CHART_STIFFER.into()
        });
    }
    Some(told.join(" "))
}

/// The inharmonicity of a string in the chart, and how far it may be off by all tolerances at once; the modulus has
/// none.
pub fn chart_b(harp: &Harp, analysis: &Analysis, row: usize) -> Option<Reading<f64>> {
    let value = analysis.strings.get(row)?.inharmonicity_b.ok()?;
    let spread = spreads(harp.strings.get(row)?, harp).of(Figure::Inharmonicity);
    Some(Reading { value, error: spread.map_or(f64::INFINITY, |spread| spread.worst) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::engine::geometry::{lay_out, loads};

    #[test]
    fn a_sample_is_planned_in_words() {
        let resolved = resolve(&SAMPLES[0].design());
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        let gives = giving::gives_of(&band, &loads, &analysis, &resolved);
        let plan = plan_of(gives.as_ref(), &resolved, &analysis, Order::InTurns, 0);
        let said = told(&plan, &analysis);
        assert!(said[0].starts_with(&format!("{} rounds", plan.passes.len())), "{said:?}");
        let units = Units::default();
        for (number, pass) in plan.passes.iter().enumerate() {
            let name = round_name(pass, number + 1);
            assert!(name.starts_with(&format!("Round {}, to ", number + 1)), "{name}");
            for step in &pass.steps {
                let cells = row(step, number == 0, &analysis, &resolved.harp, &units);
                assert!(cells[..7].iter().all(|cell| !cell.is_empty()), "{cells:?}");
                assert_eq!(cells[3].contains("turn"), number == 0, "{cells:?}");
            }
        }
        let all = Order::ALL.map(|order| load_of((&band, &loads), &resolved, &analysis, order));
        let best = easiest(&all);
        for (load, order) in all.into_iter().zip(Order::ALL) {
            let said = load_told(load, order, best);
            assert_eq!(said.len(), if order == best { 1 } else { 2 }, "{said:?}");
        }
    }

    #[test]
    fn the_easiest_order_is_the_least_and_of_alike_ones_in_turns() {
        let load = |highest: f64| Some((highest, 0.5));
        assert_eq!(easiest(&[load(0.5), load(0.5), load(0.5), load(0.504)]), Order::InTurns);
        assert_eq!(easiest(&[load(0.6), load(0.5), load(0.7), load(0.8)]), Order::HighestFirst);
        assert_eq!(easiest(&[None; 4]), Order::InTurns);
        assert!(load_told(None, Order::InTurns, Order::InTurns).is_empty());
    }

    #[test]
    fn without_a_frame_it_says_that_nothing_is_foretold() {
        let resolved = resolve(&SAMPLES[0].design());
        let analysis = analyse(&resolved.harp);
        let plan = plan_of(None, &resolved, &analysis, Order::InTurns, 1);
        assert_eq!(told(&plan, &analysis), [say::NOT_FORETOLD.said()]);
        assert_eq!(plan.passes.len(), 2);
    }

    fn readings(texts: &[&str]) -> Vec<String> {
        texts.iter().map(|&text| text.to_owned()).collect()
    }

    /// Waves run at 200 m/s on half a metre that sounds 200 Hz, so 40 N need 1 g/m; 0.1 % of length, 0.5 % of load and 0.03 %
    /// of pitch make √(0.2² + 0.5² + 0.06²) = 0.54 %.
    #[test]
    fn a_string_is_weighed_by_ear_with_its_doubt() {
        let units = Units::default();
        let said = by_ear(&readings(&["500", "40 N", "200"]), &units).unwrap().unwrap();
        assert!(said.contains("1.000") && said.contains("0.0054"), "{said}");
        assert_eq!(by_ear(&readings(&["", " "]), &units), Ok(None));
        assert!(by_ear(&readings(&["500", "", "200"]), &units).is_err());
        assert!(by_ear(&readings(&["500", "40 N", "high"]), &units).is_err());
        let same = readings(&["500", "40 N", "200", "40 N", "200"]);
        assert_eq!(by_ear(&same, &units).unwrap().unwrap(), say::EAR_NOTHING.said());
    }

    #[test]
    fn a_modulus_is_told_only_beyond_its_doubt() {
        let units = Units::default();
        // A string of wire hardly sounds stiff.
        let wire = readings(&["250", "60 N", "394.97", "120 N", "558.34", "0.5"]);
        let said = by_ear(&wire, &units).unwrap().unwrap();
        assert!(said.contains(say::MODULUS_NOT.said()), "{said}");
        // A short thick one does: 8 mm across, 20 g/m, 5 GPa, worked out from the formula of a stiff string.
        let stiff = |newtons: f64| {
            let (ei, long) = (5e9 * std::f64::consts::PI * 0.008_f64.powi(4) / 64.0, 0.3);
            let bend = std::f64::consts::PI.powi(2) * ei / (long * long);
            (((newtons + bend) / 0.02).sqrt() / (2.0 * long)).to_string()
        };
        let bar = readings(&["300", "50 N", &stiff(50.0), "400 N", &stiff(400.0), "8"]);
        let said = by_ear(&bar, &units).unwrap().unwrap();
        assert!(said.contains("20.00") && said.contains("GPa"), "{said}");
    }

    #[test]
    fn partials_are_told_beside_the_chart() {
        let sound = |n: f64| (n * 100.0 * (1.0 + 1e-4 * n * n).sqrt()).to_string();
        let text = format!("{}; {}; -; {}; {}", sound(1.0), sound(2.0), sound(4.0), sound(5.0));
        let chart = |value: f64, error: f64| Some(Reading { value, error });
        let said = partials_told(&text, chart(2e-4, 1e-5)).unwrap();
        assert!(said.contains("100") && said.contains("200"), "{said}");
        let verdict = |chart| partials_told(&text, chart).unwrap();
        assert!(said.ends_with(say::CHART_STIFFER.said()), "{said}");
        assert!(verdict(chart(2e-5, 1e-5)).ends_with(say::CHART_SOFTER.said()));
        assert!(verdict(chart(1.1e-4, 1.1e-5)).ends_with(say::CHART_AGREES.said()));
        assert!(verdict(chart(9e-4, f64::INFINITY)).ends_with(say::CHART_AGREES.said()));
        assert!(partials_told("220; 441", None).unwrap().contains('3'));
        assert_eq!(partials_told(" ", None), None);
    }

    /// Of a plain string `B = π³ E d⁴/(64 T L²)` at a given tension, and at a given pitch `T` goes with `d²`: `B` with
    /// `d²`. So a gauge that is off by 1 % means 2 %.
    #[test]
    fn the_chart_has_its_inharmonicity_with_tolerances() {
        let resolved = resolve(&SAMPLES[0].design());
        let analysis = analyse(&resolved.harp);
        let chart = chart_b(&resolved.harp, &analysis, 3).unwrap();
        assert_eq!(Ok(chart.value), analysis.strings[3].inharmonicity_b);
        let spread = spreads(&resolved.harp.strings[3], &resolved.harp);
        let gauge =
            spread.of(Figure::Gauge).unwrap().worst / analysis.strings[3].gauge.unwrap().to_mm();
        assert!(gauge > 0.0 && chart.error >= 1.9 * gauge * chart.value, "{gauge}, {chart:?}");
        assert!(chart.error < chart.value, "{chart:?}");
        assert_eq!(chart_b(&resolved.harp, &analysis, 9_999), None);
    }

    #[test]
    fn a_log_is_told_string_by_string() {
        let resolved = resolve(&SAMPLES[0].design());
        let analysis = analyse(&resolved.harp);
        let entry = |minutes: f64, cents: f64, is_tuning| Entry {
            minutes,
            cents,
            is_tuning,
            celsius: None,
        };
        let mut log = vec![Vec::new(); analysis.strings.len()];
        log[1] = vec![entry(0.0, 0.0, true), entry(9.0, -3.0, false), entry(99.0, -6.0, false)];
        log[2] = vec![entry(0.0, 1.0, false)];
        let logged = logged(&log, &analysis);
        let places: Vec<usize> = logged.iter().map(|one| one.place).collect();
        assert_eq!(places, [1, 2]);
        assert_eq!((logged[0].count, logged[0].last.as_str()), (3, "−6.0"));
        // −3 cents for a decade, 100 minutes after: 1440 · 3/(100 ln 10) = 18.8 cents a day.
        assert_eq!(rate(&logged[0], 99.0), "−18.8 ± 0.0");
        assert_eq!(rate(&logged[1], 99.0), say::NO_TUNING.said());
        assert!(odd(&logged, &analysis, &resolved.harp, |_| String::new()).is_empty());
    }
}
