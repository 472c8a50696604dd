//! Curves for whoever does not see them: a sentence or two about each, and a table of their figures.

use crate::charts::quantity;
use crate::charts::series::{CurvePoint, Curves, Panel};
use crate::design::display;
use crate::design::document::Units;
use crate::design::figures::{Scale, row};
use crate::design::letters::escape;
use crate::engine::analysis::Analysis;
use crate::engine::order::sort;
use crate::words::{curves as say, semicolon};

/// A step between neighbours is told as a jump where it is so many times the middle one of all steps, and so large a
/// share of what lies between the lowest and the highest (common practice, no source).
const TIMES_THE_MIDDLE: f64 = 4.0;
const SHARE_OF_ALL: f64 = 0.08;
/// So many jumps are told of a curve, the largest.
const MOST_JUMPS: usize = 3;

/// What is said of each curve: from where to where it goes, where it jumps, and what lies outside what is allowed.
pub fn spoken(curves: &Curves, analysis: &Analysis, units: &Units) -> Vec<String> {
    curves.panels.iter().map(|panel| of_panel(panel, analysis, units)).collect()
}

/// The figures of the curves as the markup of a table: a column for each curve, a row for each string.
pub fn curve_table(curves: &Curves, analysis: &Analysis, units: &Units) -> String {
    let mut out = String::from("<thead><tr>");
    let mut cell = |start: &str, text: &str, end: &str| {
        out += start;
        out += &escape(text);
        out += end;
    };
    cell("<th scope=\"col\">", say::TOLD_STRING.said(), "</th>");
    for panel in &curves.panels {
        cell("<th scope=\"col\">", &panel.title, "</th>");
    }
    cell("</tr></thead><tbody>", "", "");
    for figures in &analysis.strings {
        cell("<tr><th scope=\"row\">", &display::string_name(figures), "</th>");
        for panel in &curves.panels {
            let figure = display::figure(panel.figure, figures, units);
            cell("<td>", figure.as_deref().unwrap_or("–"), "</td>");
        }
        cell("</tr>", "", "");
    }
    cell("</tbody>", "", "");
    out
}

fn of_panel(panel: &Panel, analysis: &Analysis, units: &Units) -> String {
    let name = row(panel.figure).name().said();
    let Some((lowest, highest)) = ends(panel) else { return say::told_unknown(&name) };
    let value = |point: &CurvePoint| value(panel, point, analysis, units);
    let at = |point: &CurvePoint| string(point.index, analysis);
    let mut told = if value(lowest) == value(highest) {
        say::told_flat(&name, &value(lowest))
    } else {
        say::told(&value(highest), &at(highest), &value(lowest), &at(lowest), &name)
    };
    let jumps = jumps(panel);
    let places: Vec<String> = jumps
        .iter()
        .map(|(upper, lower)| say::told_jump(&value(upper), &at(lower), &value(lower), &at(upper)))
        .collect();
    told.push(' ');
    told += &match places.len() {
        0 => say::TOLD_EVEN.into(),
        count => say::told_jumps(&count, &places.join(semicolon())),
    };
    let out = |point: &&CurvePoint| {
        panel.band.low.is_some_and(|low| point.value < low)
            || panel.band.high.is_some_and(|high| point.value > high)
    };
    let outside = panel.points.iter().filter(out).count();
    if outside > 0 {
        told.push(' ');
        told += &say::told_outside(&outside);
    }
    told
}

/// The lowest and the highest point.
fn ends(panel: &Panel) -> Option<(&CurvePoint, &CurvePoint)> {
    let first = panel.points.first()?;
    let mut ends = (first, first);
    for point in &panel.points {
        if point.value < ends.0.value {
            ends.0 = point;
        }
        if point.value > ends.1.value {
            ends.1 = point;
        }
    }
    Some(ends)
}

/// A value as the chart has it, with its unit.
fn value(panel: &Panel, point: &CurvePoint, analysis: &Analysis, units: &Units) -> String {
    let figures = analysis.strings.get(point.index);
    let shown = figures.and_then(|figures| display::figure(panel.figure, figures, units).ok());
    let shown = shown.unwrap_or_else(|| quantity::format(panel.figure, point.value, units));
    match quantity::unit(panel.figure, units) {
        "" => shown,
        unit => format!("{shown} {unit}"),
    }
}

fn string(index: usize, analysis: &Analysis) -> String {
    match analysis.strings.get(index).and_then(|figures| figures.note) {
        Some(note) => format!("{} ({})", index + 1, note.printed()),
        None => (index + 1).to_string(),
    }
}

/// The largest jumps between neighbours, from string 1 down.
fn jumps(panel: &Panel) -> Vec<(&CurvePoint, &CurvePoint)> {
    // Where equal ratios are equal steps on the paper, they are here too.
    let is_log = quantity::scale(panel.figure) == Scale::Log
        && panel.points.iter().all(|point| point.value > 0.0);
    let height = |point: &CurvePoint| if is_log { point.value.ln() } else { point.value };
    let neighbours = panel.points.windows(2).filter_map(|pair| match pair {
        [upper, lower] if lower.index == upper.index + 1 => Some((upper, lower)),
        _ => None,
    });
    let mut steps: Vec<(f64, &CurvePoint, &CurvePoint)> = neighbours
        .map(|(upper, lower)| ((height(lower) - height(upper)).abs(), upper, lower))
        .collect();
    sort(&mut steps, |one, other| one.0 < other.0);
    let Some(middle) = steps.get(steps.len() / 2).map(|step| step.0) else { return Vec::new() };
    let heights = panel.points.iter().map(height);
    let (low, high) = heights
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), h| (low.min(h), high.max(h)));
    let least = (TIMES_THE_MIDDLE * middle).max(SHARE_OF_ALL * (high - low));
    let large = steps.into_iter().filter(|step| step.0 > 0.0 && step.0 >= least);
    let mut found: Vec<_> =
        large.take(MOST_JUMPS).map(|(_, upper, lower)| (upper, lower)).collect();
    sort(&mut found, |one, other| one.0.index > other.0.index);
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::engine::figure::Figure;
    use crate::words::{Language, in_language};

    fn curves(of: &[Figure]) -> (Curves, Analysis, Units) {
        let design = SAMPLES[0].design();
        let harp = resolve(&design).harp;
        let analysis = analyse(&harp);
        let curves = Curves::build(&analysis, &harp, &design.units, of, None, None);
        (curves, analysis, design.units)
    }

    #[test]
    fn a_curve_is_told_from_its_lowest_to_its_highest_string() {
        let (curves, analysis, units) = curves(&[Figure::Tension, Figure::Length]);
        let told = spoken(&curves, &analysis, &units);
        assert_eq!(told.len(), 2);
        let tensions = analysis.strings.iter().map(|s| s.tension.unwrap());
        let most = tensions.enumerate().max_by(|a, b| a.1.partial_cmp(&b.1).unwrap()).unwrap();
        let highest = format!("string {} (", most.0 + 1);
        assert!(told[0].starts_with("Tension: from "), "{}", told[0]);
        assert!(told[0].split(". ").next().unwrap().contains(&highest), "{}", told[0]);
        assert!(told[1].contains("at string 1 ("), "the shortest: {}", told[1]);
        let german = in_language(Language::German, || spoken(&curves, &analysis, &units));
        assert!(german[0].contains("Saite"), "{}", german[0]);
    }

    #[test]
    fn a_step_that_stands_out_is_told_with_both_its_ends() {
        let (mut curves, analysis, units) = curves(&[Figure::Length]);
        let panel = &mut curves.panels[0];
        for (place, point) in panel.points.iter_mut().enumerate() {
            point.value = if place < 10 { 100.0 } else { 200.0 } + place as f64;
        }
        let found: Vec<_> = jumps(panel).iter().map(|(a, b)| (a.index, b.index)).collect();
        assert_eq!(found, [(9, 10)]);
        let told = spoken(&curves, &analysis, &units);
        assert!(
            told[0].contains("from string 10 (") && told[0].contains(" to 11 ("),
            "{}",
            told[0]
        );
        for (place, point) in curves.panels[0].points.iter_mut().enumerate() {
            point.value = place as f64;
        }
        assert!(jumps(&curves.panels[0]).is_empty());
        curves.panels[0].points.clear();
        assert!(spoken(&curves, &analysis, &units)[0].contains("no string has"));
    }

    #[test]
    fn the_table_has_every_string_and_every_curve() {
        let (curves, analysis, units) = curves(&[Figure::Tension, Figure::PluckStiffness]);
        let table = curve_table(&curves, &analysis, &units);
        let head =
            "<th scope=\"col\">Tension (N)</th><th scope=\"col\">Pluck stiffness (N/mm)</th>";
        assert!(table.contains(head), "{table}");
        assert_eq!(table.matches("<tr>").count(), analysis.strings.len() + 1);
        let shown = display::figure(Figure::Tension, &analysis.strings[3], &units).unwrap();
        let name = escape(&display::string_name(&analysis.strings[3]));
        assert!(table.contains(&format!("{name}</th><td>{shown}</td>")), "{table}");
    }
}
