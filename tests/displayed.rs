//! What the chart shows of the samples, held to what is kept. `tests/web.rs` holds the program in the
//! browser to the same texts.
//!
//! After a change that is meant: `RENEW=1 cargo test --test displayed`, and look at what git shows.

#[path = "displayed/words.rs"]
mod words;

use stringloft::app::rows;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use words::Chart;

#[test]
fn the_samples_show_the_words_that_are_kept() {
    let mut all = String::new();
    for (key, kept) in words::KEPT {
        let now = displayed(key);
        if std::env::var_os("RENEW").is_some() {
            let path = format!("{}/tests/displayed/{key}.txt", env!("CARGO_MANIFEST_DIR"));
            std::fs::write(path, &now).expect("the file can be written");
        } else {
            let found = words::differences(kept, &now);
            if !found.is_empty() {
                all.push_str(&format!("{key} shows other words:\n{found}"));
            }
        }
    }
    assert!(all.is_empty(), "{all}");
}

#[test]
fn a_difference_is_told_by_its_row_and_column() {
    let kept = "Octave|Note |Tension N|\n1|G6|46|\n1|F6|– a|\na: No make-up.\n2 Remark\n";
    let now = kept.replace("46", "47").replace("No make-up", "No length");
    assert_eq!(words::differences(kept, kept), "");
    assert_eq!(
        words::differences(kept, &now),
        "string 1, Tension N: kept \"46\", now \"47\"\n\
         line 4: kept \"a: No make-up.\", now \"a: No length.\"\n"
    );
    let shorter = now.replace("2 Remark\n", "");
    assert!(words::differences(kept, &shorter).ends_with("now \"no such line\"\n"));
}

/// The chart of a sample, then its findings by string.
fn displayed(key: &str) -> String {
    let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
    let design = sample.design();
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let heads = rows::heads(&design);
    let rows = rows::rows(&design, &resolved, &analysis);
    let cell = |cell: &rows::CellWords| {
        let why = cell.reason.clone().filter(|_| cell.unknown);
        [cell.text.clone(), why.unwrap_or_default()]
    };
    let chart = Chart {
        heads: heads.iter().map(|head| [head.word.to_owned(), head.unit.to_owned()]).collect(),
        rows: rows
            .iter()
            .map(|row| (row.octave.clone(), row.cells.iter().map(cell).collect()))
            .collect(),
    };
    let mut out = chart.written();
    for finding in &analysis.findings {
        out.push_str(&format!("{} {:?}\n", finding.index + 1, finding.kind.weight()));
    }
    out
}
