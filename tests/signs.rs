//! What a program reads keeps its decimal point in every language: files, links, tables, cells and pictures.

use stringloft::design::advice::cure;
use stringloft::design::edit::Edit;
use stringloft::design::order::order_list;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::restring::{Conversion, Equal, convert};
use stringloft::design::stock::{starting_list, table::export};
use stringloft::design::{link, order, persist, table};
use stringloft::engine::analysis::analyse;
use stringloft::words::{Language, in_language};

/// Everything of a sample that is read again by this program or another one.
fn written(place: usize) -> Vec<String> {
    let mut design = SAMPLES[place].design();
    let stock = starting_list();
    design.stock = stock.items.clone();
    // Sound strings ask for no cure: these do.
    for (row, length) in [(3, "900"), (9, "24 1/2 in"), (14, "61,25")] {
        design.strings[row].length = length.to_owned();
    }
    let analysis = analyse(&resolve(&design).harp);
    let list = order_list(&design, &analysis);
    let conversion = Conversion {
        rows: 0..12,
        material: "gut",
        equal: Equal::Tension,
        stock: &[],
        materials: &[],
    };
    let converted = convert(&design, &conversion).design;
    let mut all = vec![
        persist::write(&design),
        link::write(&design).expect("a sample fits a link"),
        table::write(&design, &analysis),
        export(&stock.items),
        order::csv(&list),
        persist::write(&converted),
    ];
    let cures = analysis.findings.iter().filter_map(|finding| cure(finding, &design, &analysis));
    let cells = cures.filter_map(|cure| match cure.edit {
        Edit::Cell { text, .. } => Some(text),
        _ => None,
    });
    all.extend(cells);
    all
}

#[test]
fn what_is_read_again_is_the_same_in_every_language() {
    let mut cells = 0;
    for (place, sample) in SAMPLES.iter().enumerate() {
        let english = written(place);
        cells += english.len() - 6;
        for language in [Language::German, Language::French] {
            let other = in_language(language, || written(place));
            for (one, other) in english.iter().zip(&other) {
                assert!(one == other, "{}, {language:?}:\n{one}\n{other}", sample.key);
            }
            assert_eq!(english.len(), other.len(), "{}", sample.key);
        }
    }
    assert!(cells > 0, "no cell was mended, so that nothing was said of them");
}
