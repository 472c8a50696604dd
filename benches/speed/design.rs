//! From a design to its figures, its frame, its curves, its link and its papers.

use stringloft::app::rows;
use stringloft::charts::series::Curves;
use stringloft::charts::{band, lofting};
use stringloft::design::document::{Design, MOST_STRINGS};
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::design::{link, persist, table};
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::bearing::{Borne, borne};
use stringloft::engine::figure::Figure;
use stringloft::engine::geometry::{Band, lay_out};
use stringloft::engine::tolerance::spreads_of_all;
use stringloft::papers::card::card;
use stringloft::papers::html::html;
use stringloft::papers::sheet::Paper;
use stringloft::papers::template::tiling::Tiling;
use stringloft::papers::template::{dxf, harp, pdf, svg};

use crate::harps;
use crate::measure::Bench;

/// The curves that the page shows at first.
const CURVES: [Figure; 3] = [Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];

/// A design with all that follows from it.
struct Worked {
    count: usize,
    design: Design,
    resolved: Resolved,
    analysis: Analysis,
    band: Band,
}

impl Worked {
    fn all() -> Vec<Self> {
        let most = u32::try_from(MOST_STRINGS).expect("a small number");
        [harps::pedal(), harps::stretched(most)].into_iter().map(Self::of).collect()
    }

    fn of(design: Design) -> Self {
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        assert_eq!(analysis.without_tension, 0, "every string has its figures");
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        Self { count: design.strings.len(), design, resolved, analysis, band }
    }

    fn borne(&self) -> Borne {
        let (geometry, build) = (&self.resolved.geometry, &self.resolved.build());
        borne(&self.band, &self.resolved.harp, &self.analysis, geometry, build)
    }
}

/// What an edit brings with it, step by step. The first line is what the others are compared with.
pub fn figures(bench: &mut Bench) {
    for one in Worked::all() {
        let Worked { count, design, resolved, analysis, band } = &one;
        let name = |what: &str| format!("{what}, {count} strings");
        bench.measure(&name("analyse"), || analyse(&resolved.harp));
        bench.measure(&name("resolve"), || resolve(design));
        bench.measure(&name("lay out"), || lay_out(&resolved.harp, analysis, &resolved.geometry));
        bench.measure(&name("bear"), || one.borne());
        bench.measure(&name("spreads"), || spreads_of_all(&resolved.harp));
        bench.measure(&name("words of the chart"), || rows::rows(design, resolved, analysis));
        bench.measure(&name("words of the findings"), || {
            rows::findings(design, resolved, analysis, None)
        });
        bench.measure(&name("curves"), || {
            Curves::build(analysis, &resolved.harp, &design.units, &CURVES, None, None)
        });
        bench.measure(&name("strings to scale"), || {
            band::build(analysis, &resolved.harp, &design.units)
        });
        bench.measure(&name("drawing"), || {
            let scene = lofting::scene(design, resolved, analysis, band);
            lofting::svg::scene_text(&scene, 0.5)
        });
    }
}

/// What is kept, sent and printed.
pub fn files(bench: &mut Bench) {
    for one in Worked::all() {
        let Worked { count, design, resolved, analysis, .. } = &one;
        let name = |what: &str| format!("{what}, {count} strings");
        let text = persist::write(design);
        bench.measure(&name("write a file"), || persist::write(design));
        bench.measure(&name("read a file"), || persist::read(&text).expect("it was just written"));
        bench.measure(&name("write the table"), || table::write(design, analysis));
        if let Ok(fragment) = link::write(design) {
            bench.measure(&name("write a link"), || link::write(design));
            bench.measure(&name("read a link"), || link::read(&fragment).expect("just written"));
            bench.measure(&name("card"), || {
                html(&card(design, analysis, &format!("https://host/#{fragment}"), Paper::A4))
            });
        }
        let made = harp::template(design, resolved, analysis);
        bench.measure(&name("template"), || harp::template(design, resolved, analysis));
        bench.measure(&name("template as DXF"), || dxf::write(&made).expect("it is drawn"));
        bench.measure(&name("template as SVG"), || svg::write(&made).expect("it is drawn"));
        bench.measure(&name("template as tiled PDF"), || {
            pdf::tiled(&made, Tiling::default()).expect("it is drawn")
        });
    }
}
