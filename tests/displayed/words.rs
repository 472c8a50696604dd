//! Every word that the chart shows of the samples: kept as text, so that the page in the browser and
//! the program on this machine are held to the same figures.

use stringloft::app::rows;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;

/// The words of each sample as they are kept.
pub const KEPT: [(&str, &str); 4] = [
    ("wire-22", include_str!("wire-22.txt")),
    ("travel-26", include_str!("travel-26.txt")),
    ("floor-36", include_str!("floor-36.txt")),
    ("pedal-47", include_str!("pedal-47.txt")),
];

/// A line for the heads of the columns and one for each string of a sample, cells between bars; then
/// the findings by string.
pub fn displayed(key: &str) -> String {
    let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
    let design = sample.design();
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let heads = rows::heads(&design);
    let mut out: String =
        heads.iter().map(|head| format!("{} {}|", head.word, head.unit)).collect();
    out.push('\n');
    for row in rows::rows(&design, &resolved, &analysis) {
        let cells = row.cells.iter().map(|cell| {
            let reason = cell.reason.as_ref().filter(|_| cell.unknown);
            format!("{}{}|", cell.text, reason.map(|why| format!(" ({why})")).unwrap_or_default())
        });
        out.push_str(&format!("{}|{}\n", row.octave, cells.collect::<String>()));
    }
    for finding in &analysis.findings {
        out.push_str(&format!("{} {:?}\n", finding.index + 1, finding.kind.weight()));
    }
    out
}
