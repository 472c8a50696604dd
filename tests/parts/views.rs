//! The whole harp from three sides: each part in each view, and the sizes that stand below are those of the parts.

use std::fs;
use std::path::Path;

use stringloft::charts::whole::svg;
use stringloft::engine::pitch::Letter;

use crate::made::samples;

#[test]
fn every_part_is_drawn_in_every_view_and_the_sizes_are_theirs() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-views");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    for (key, made) in samples() {
        let letters: Vec<Option<Letter>> = made.band.strings.iter().map(|_| None).collect();
        let drawn = svg(&made.whole, &made.band, &letters, "A <harp> & more");
        fs::write(folder.join(format!("{key}.svg")), &drawn).expect("a file can be written");
        assert!(drawn.contains("A &lt;harp&gt; &amp; more") && !drawn.contains("NaN"), "{key}");
        assert_eq!(drawn.matches("data-part=").count(), 3 * made.whole.parts.len(), "{key}");
        let corners = made.whole.parts.iter().flat_map(|part| &part.cells);
        let high = corners.flat_map(|cell| cell.corners()).map(|at| at[1]);
        let high = high.fold(f64::NEG_INFINITY, f64::max) - made.whole.floor_m;
        let said = format!("{:.0} mm high", 1e3 * high);
        assert_eq!(drawn.matches(&said).count(), 2, "{key}: {said}");
    }
}
