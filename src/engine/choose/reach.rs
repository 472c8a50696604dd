//! What a stock can give each string by itself.

use super::Task;
use super::evaluate::Table;
use crate::engine::units::Force;

/// The least and the greatest pull on each string, of the items that keep every rule which one string can keep by
/// itself: load share, zone, notes. `None` where no item does, and for a string that is kept or takes no part.
pub fn reach(task: &Task) -> Vec<Option<(Force, Force)>> {
    let mut table = Table::new(task);
    for string in 0..task.strings.len() {
        table.add(task, string);
    }
    let mut found = vec![None; task.strings.len()];
    for row in table.rows.iter().filter(|row| !row.kept) {
        let allowed = row.cells.iter().filter(|cell| cell.broken == 0).map(|cell| cell.pull_n);
        let (least, most) =
            allowed.fold((f64::INFINITY, 0.0_f64), |(least, most), n| (least.min(n), most.max(n)));
        if least <= most {
            found[row.string] = Some((Force::from_n(least), Force::from_n(most)));
        }
    }
    found
}
