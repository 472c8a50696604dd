//! Strings of one material in another, before it is done: a row for each.

use crate::design::display::{self, figure, gauge, string_name};
use crate::design::document::Units;
use crate::design::letters::capital;
use crate::design::restring::Preview;
use crate::engine::analysis::Analysis;
use crate::engine::figure::Figure;
use crate::words::{Words, details as say};

/// What of each string is told, before and after.
const TOLD: [(Words, Figure); 4] = [
    (say::GAUGE, Figure::Gauge),
    (say::TENSION, Figure::Tension),
    (say::LOAD_SHARE, Figure::LoadShare),
    (say::MARGIN, Figure::SemitonesToBreak),
];

/// A string before and after.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Exchanged {
    pub name: String,
    /// The gauge that would keep the figure.
    pub wanted: String,
    /// Under [`exchange_heads`], before and after.
    pub cells: Vec<(String, String)>,
    /// Why it stays as it is, or what is odd.
    pub remark: String,
}

/// Heads of the cells, with the unit of the page.
pub fn exchange_heads(units: &Units) -> Vec<String> {
    let head = |(name, figure): &(Words, Figure)| match display::figure_unit(*figure, units) {
        "" => (*name).into(),
        unit => format!("{name}, {unit}"),
    };
    TOLD.iter().map(head).collect()
}

/// A row for each string that was asked for.
pub fn exchanged(preview: &Preview, units: &Units) -> Vec<Exchanged> {
    let cell = |of: Figure, analysis: &Analysis, row: usize| {
        let text = analysis.strings.get(row).and_then(|figures| figure(of, figures, units).ok());
        text.unwrap_or_else(|| display::NONE.to_owned())
    };
    let line = |change: &crate::design::restring::Change| {
        let row = change.row;
        let cells = TOLD
            .iter()
            .map(|(_, of)| (cell(*of, &preview.before, row), cell(*of, &preview.after, row)));
        let remark = change.remark.as_deref().unwrap_or_default();
        let remark = match (remark, change.gauge) {
            ("", _) => String::new(),
            (remark, Some(_)) => format!("{}.", capital(remark)),
            (remark, None) => say::stays(&remark),
        };
        Exchanged {
            name: preview.before.strings.get(row).map(string_name).unwrap_or_default(),
            wanted: change.wanted.map_or(String::new(), |wanted| gauge(wanted, units.gauge)),
            cells: cells.collect(),
            remark,
        }
    };
    preview.changes.iter().map(line).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::Design;
    use crate::design::presets::SAMPLES;
    use crate::design::restring::{Conversion, Equal, convert};
    use crate::design::stock::starting_list;

    fn told(design: &Design, material: &str) -> (Preview, Vec<Exchanged>) {
        let list = starting_list();
        let (equal, stock) = (Equal::Tension, list.items.as_slice());
        let wish = Conversion { rows: 0..150, material, equal, stock, materials: &list.materials };
        let preview = convert(design, &wish);
        let rows = exchanged(&preview, &design.units);
        (preview, rows)
    }

    #[test]
    fn every_string_is_told_before_and_after() {
        let design = SAMPLES[2].design();
        let (preview, rows) = told(&design, "gut");
        assert_eq!(rows.len(), design.strings.len());
        assert_eq!(exchange_heads(&design.units)[1], "Tension, N");
        for (row, change) in rows.iter().zip(&preview.changes) {
            assert_eq!(row.cells.len(), TOLD.len());
            assert_eq!(row.wanted.is_empty(), change.wanted.is_none());
            let stays = row.cells.iter().all(|(before, after)| before == after);
            assert!(stays || change.gauge.is_some(), "{row:?}");
            assert_eq!(row.remark.starts_with("Stays: "), change.gauge.is_none(), "{row:?}");
        }
        assert!(rows.iter().any(|row| row.cells[0].0 != row.cells[0].1));
    }

    #[test]
    fn an_unknown_material_says_so_in_every_row() {
        let (_, rows) = told(&SAMPLES[2].design(), "mithril");
        assert!(rows.iter().all(|row| row.remark.starts_with("Stays: the material")));
    }
}
