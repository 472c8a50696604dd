//! The design report for the maker's file, and shorter papers of what is open on the page: each is made of the same
//! sections.
//!
//! Its pages are laid by [`pager`].

use std::borrow::Cow;

use super::code::design_mark;
use super::layout::{FOOT_MM, GAP_MM, PX_MM, RESERVE_MM, TYPE_PT, lines_mm, report_widths};
use super::measure::{clean, width_mm, wrap};
use super::pager::{self, Pager, cell};
use super::report_words::{
    Row, assumptions, differing, findings, forces, heads, part_rows, sources, string_rows, summary,
};
use super::sheet::{Block, Figure, Mark, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{facts, run_on, title};
use crate::charts::lofting::{self, over};
use crate::charts::palette::Palette;
use crate::charts::picture::{self, Picture};
use crate::charts::series::Curves;
use crate::design::advice::caution;
use crate::design::bearing_words;
use crate::design::compare::{Comparison, Pair};
use crate::design::document::Design;
use crate::design::giving;
use crate::design::letters::capital;
use crate::design::resolve::Resolved;
use crate::design::settling::{easiest, load_of};
use crate::design::years;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::{Borne, Order, borne};
use crate::engine::figure::Figure as OfString;
use crate::engine::geometry::{Band, lay_out};
use crate::words::{Words, card, language, papers, report as say, semicolon};

/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 4;
/// Curves in one picture, one above the other.
const CURVES_IN_ONE: usize = 6;
/// Height of a curve with its title, and of the legend and the axis of a picture, in pixels: six fill a page.
const CURVE_PX: u32 = 132;
const AXIS_PX: u32 = 76;
/// The drawing stands no higher, so that its title has room on the page.
const DRAWING_MM: f64 = 225.0;
/// Nor where heading, verdict and cautions stand above it on the page.
const DRAWING_BELOW_MM: f64 = 180.0;
/// The curves of a design report.
const CURVES: [OfString; 6] = [
    OfString::Length,
    OfString::Gauge,
    OfString::Tension,
    OfString::PluckStiffness,
    OfString::LoadShare,
    OfString::Partial8,
];

/// What a report is made from.
#[derive(Clone, Copy)]
pub struct Given<'a> {
    pub design: &'a Design,
    pub resolved: &'a Resolved,
    pub analysis: &'a Analysis,
    /// What the strings do to the frame, where it is known; else it is worked out where it is told.
    pub borne: Option<&'a Borne>,
    /// The day on which it is printed.
    pub today: &'a str,
}

/// Two designs under their names, and what differs.
pub struct Compared<'a> {
    pub names: [&'a str; 2],
    pub found: &'a Comparison,
    /// The curves that are shown, where the second is the design as it is now.
    pub curves: Option<&'a [OfString]>,
}

/// The design report: everything about the harp.
pub fn report(given: &Given<'_>, paper: Paper) -> Sheet {
    let mut laid = Laid::new(&REPORT, given, paper);
    laid.title(say::SUMMARY);
    summary(given.design, given.analysis).iter().for_each(|line| laid.text(line));
    let (band, borne) = laid.frame();
    laid.text(&bearing_words::verdict(&borne.bearing).full);
    laid.caution();
    laid.remarks();
    laid.strings();
    laid.curves(&CURVES, None);
    laid.drawing(&band, &borne, "measures", DRAWING_MM);
    laid.loads(&band, &borne);
    laid.findings(&borne);
    laid.title(say::SOURCES);
    laid.list(&sources(&given.resolved.harp));
    laid.text(say::FORMULAS.said());
    laid.finish()
}

/// The strings and the curves that are shown.
pub fn chart(given: &Given<'_>, shown: &[OfString], paper: Paper) -> Sheet {
    let mut laid = Laid::new(&CHART, given, paper);
    laid.strings();
    laid.curves(shown, None);
    let (_, borne) = laid.frame();
    laid.findings(&borne);
    laid.caution();
    laid.finish()
}

/// The drawing with what lies over it.
pub fn drawing(given: &Given<'_>, over: &str, paper: Paper) -> Sheet {
    let mut laid = Laid::new(&DRAWING, given, paper);
    let (band, borne) = laid.frame();
    laid.text(&bearing_words::verdict(&borne.bearing).full);
    laid.caution();
    laid.drawing(&band, &borne, over, DRAWING_BELOW_MM);
    laid.finish()
}

/// Two versions, or one and the design as it is now.
pub fn comparison(given: &Given<'_>, compared: &Compared<'_>, paper: Paper) -> Sheet {
    let mut laid = Laid::new(&COMPARISON, given, paper);
    let [before, after] = compared.names.map(clean);
    laid.text(&say::before_after(&after, &before));
    let pairs = |pairs: &[Pair]| {
        let row =
            |pair: &Pair| Row::of([capital(&pair.name), pair.before.clone(), pair.after.clone()]);
        pairs.iter().map(row).collect::<Vec<_>>()
    };
    laid.table(say::TOTALS, TableKind::Pairs, pairs(&compared.found.totals));
    laid.table(say::SETTINGS, TableKind::Pairs, pairs(&compared.found.settings));
    let rows = differing(compared.found);
    if rows.is_empty() {
        laid.text(say::NO_DIFFERENCE.said());
    }
    laid.table(say::DIFFERING, TableKind::Compared, rows);
    if let Some(shown) = compared.curves {
        laid.curves(shown, Some(&compared.found.ghost));
    }
    laid.caution();
    laid.finish()
}

/// What kind of paper it is, at its head and within a sentence.
struct Kind {
    head: Words,
    within: Words,
}

const REPORT: Kind = Kind { head: papers::REPORT, within: papers::REPORT_WITHIN };
const CHART: Kind = Kind { head: papers::CHART, within: papers::CHART_WITHIN };
const DRAWING: Kind = Kind { head: papers::DRAWING, within: papers::DRAWING_WITHIN };
const COMPARISON: Kind = Kind { head: papers::COMPARISON, within: papers::COMPARISON_WITHIN };

/// A report that is being laid.
struct Laid<'a> {
    given: Given<'a>,
    paper: Paper,
    kind: Words,
    title: String,
    pager: Pager,
}

impl<'a> Laid<'a> {
    fn new(kind: &Kind, given: &Given<'a>, paper: Paper) -> Self {
        let (wide, high) = paper.inside_mm();
        let title = title(given.design);
        let mark = design_mark(given.design);
        let facts = facts(given.design, given.analysis, mark.clone());
        let heading = pager::heading(kind.head.said(), &title, facts, paper);
        let running = |name: &str| papers::running_report(&kind.within, &mark, &name);
        let room = wide - width_mm(&running(""), TYPE_PT);
        let running = running(&wrap(&title, room, TYPE_PT, 1).concat());
        let pager = Pager::new(high - RESERVE_MM - FOOT_MM, heading, running);
        Self { given: *given, paper, kind: kind.head, title, pager }
    }

    fn lines_of(&self, text: &str) -> Vec<String> {
        wrap(text, self.paper.inside_mm().0, TYPE_PT, usize::MAX)
    }

    fn text(&mut self, text: &str) {
        if !text.is_empty() {
            self.pager.lines(&self.lines_of(text), Block::Legend);
        }
    }

    fn title(&mut self, words: Words) {
        self.pager.title(words.said(), lines_mm(2) + GAP_MM);
    }

    /// Sentences below each other.
    fn list(&mut self, lines: &[String]) {
        let all: Vec<String> =
            lines.iter().flat_map(|line| self.lines_of(&format!("– {}", clean(line)))).collect();
        self.pager.lines(&all, Block::Legend);
    }

    fn caution(&mut self) {
        let text = format!("{} {}", card::CARE, caution());
        // Bold type is wider.
        let lines = wrap(&text, 0.93 * self.paper.inside_mm().0, TYPE_PT, usize::MAX);
        self.pager.keep(lines_mm(lines.len()) + GAP_MM);
        self.pager.lines(&lines, Block::Caution);
    }

    fn remarks(&mut self) {
        let remarks = run_on(&self.given.design.remarks);
        if !remarks.is_empty() {
            self.pager.lines(&self.lines_of(&papers::remarks(&remarks)), Block::Remarks);
        }
    }

    fn table(&mut self, title: Words, kind: TableKind, rows: Vec<Row>) {
        let widths = report_widths(kind, self.paper);
        let row = |row: Row| {
            let words = row.cells.iter().enumerate().take(widths.len());
            let cells = words.map(|(index, words)| cell(words, &widths, index)).collect();
            TableRow { mark: row.mark, opens_octave: row.mark == Some(Mark::C), cells }
        };
        let table = Table {
            kind,
            columns: heads(kind, &self.given.design.units),
            rows: rows.into_iter().map(row).collect(),
            spacing: SPACING,
            last_width: 0,
        };
        self.pager.table(title.said(), &table, &[]);
    }

    fn strings(&mut self) {
        let Given { design, analysis, .. } = self.given;
        let (rows, legend) = string_rows(design, analysis);
        if rows.is_empty() {
            self.title(papers::CHART);
            self.text(say::NO_STRINGS.said());
            return;
        }
        self.table(papers::CHART, TableKind::Figures, rows);
        self.text(&legend);
    }

    fn figure(&mut self, title: Words, label: &str, picture: &Picture, most_high: f64) {
        let wide = self.paper.inside_mm().0;
        let high = picture.height(wide);
        let (wide, high) =
            if high > most_high { (wide * most_high / high, most_high) } else { (wide, high) };
        self.pager.title(title.said(), high + GAP_MM);
        let svg = picture.svg(wide, high, "mm");
        let figure = Figure { svg, label: label.to_owned() };
        self.pager.put(Block::Figure(figure), high + GAP_MM);
    }

    fn curves(&mut self, shown: &[OfString], ghost: Option<&Analysis>) {
        let Given { design, resolved, analysis, .. } = self.given;
        if analysis.strings.is_empty() {
            return;
        }
        let wide = self.paper.inside_mm().0 / PX_MM;
        for some in shown.chunks(CURVES_IN_ONE) {
            let made = Curves::build(analysis, &resolved.harp, &design.units, some, ghost, None);
            let count = u32::try_from(some.len()).unwrap_or(1);
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "the width of a sheet of paper"
            )]
            let size = (wide as u32, CURVE_PX * count + AXIS_PX);
            let picture = picture::curves(&made, Palette::print(), size);
            let names: Vec<&str> = made.panels.iter().map(|panel| &*panel.title).collect();
            let label = say::curves_of(&names.join(semicolon()));
            self.figure(say::CURVES, &label, &picture, f64::INFINITY);
        }
    }

    fn frame(&self) -> (Band, Cow<'a, Borne>) {
        let Given { resolved, analysis, borne: known, .. } = self.given;
        let (harp, geometry) = (&resolved.harp, &resolved.geometry);
        let band = lay_out(harp, analysis, geometry);
        let worked = || Cow::Owned(borne(&band, harp, analysis, geometry, &resolved.build()));
        let borne = known.map_or_else(worked, Cow::Borrowed);
        (band, borne)
    }

    fn drawing(&mut self, band: &Band, borne: &Borne, over: &str, most_mm: f64) {
        let Given { design, resolved, analysis, .. } = self.given;
        let scene = lofting::scene(design, resolved, analysis, band);
        let bearing = Some(&borne.bearing);
        let given =
            over::Given { design, resolved, analysis, band, scene: &scene, bearing, marked: 0 };
        let caption = over::kind(over).2(&given).caption;
        let size = (self.paper.inside_mm().0 / PX_MM, most_mm / PX_MM);
        match picture::drawing(&given, over, Palette::print(), size) {
            Some(picture) => {
                self.figure(say::DRAWING, say::DRAWING_OF.said(), &picture, most_mm);
                self.text(&caption);
            }
            None => {
                self.title(papers::DRAWING);
                self.text(say::NOTHING_TO_DRAW.said());
            }
        }
    }

    fn loads(&mut self, band: &Band, borne: &Borne) {
        let Given { design, resolved, analysis, .. } = self.given;
        let (units, build) = (design.units, resolved.build());
        if borne.loads.pulls.is_empty() {
            self.title(say::LOADS);
            self.text(say::NO_LOADS.said());
            return;
        }
        let parts =
            part_rows(&bearing_words::verdicts(&borne.bearing, band, analysis, &build, units));
        self.table(say::LOADS, TableKind::Loads, parts);
        if let Err(error) = &borne.bearing.frame {
            self.text(&say::not_judged(error));
        }
        self.text(&bearing_words::verdict(&borne.bearing).full);
        self.caution();
        self.table(say::FORCES, TableKind::Forces, forces(&borne.bearing, units));
        // As everywhere, what is easiest on the frame.
        let parts = (band, &borne.loads);
        let order = easiest(&Order::ALL.map(|order| load_of(parts, resolved, analysis, order)));
        let gives = giving::gives_of(band, &borne.loads, analysis, resolved);
        let falls = giving::in_order(gives.as_ref(), resolved, analysis, order);
        self.title(say::GIVING);
        self.list(&giving::told(&falls, analysis, order));
        self.text(&giving::meaning(gives.as_ref()));
        let nearer = gives.as_ref().map(|gives| years::nearer_by(gives, analysis, resolved));
        let years = years::years_of(design, resolved, analysis, (band, borne), nearer.as_ref());
        let told = years::told(years.as_ref(), design, analysis);
        let row = |[what, one, ten]: &[String; 3]| say::over_years(one, ten, what);
        self.title(say::YEARS);
        self.list(&told.rows.iter().map(row).collect::<Vec<_>>());
        self.list(&told.sentences);
        self.text(years::MEANING.said());
        self.title(say::ASSUMPTIONS);
        self.list(&assumptions(design));
    }

    fn findings(&mut self, borne: &Borne) {
        let Given { design, resolved, analysis, .. } = self.given;
        let mut found = findings(design, resolved, analysis);
        self.title(say::FINDINGS);
        if found.is_empty() {
            self.text(say::NO_FINDINGS.said());
        }
        let frame = bearing_words::verdict(&borne.bearing).finding;
        found.extend(frame.map(|found| found.sentence));
        self.list(&found);
    }

    fn finish(mut self) -> Sheet {
        self.text(&say::printed(&clean(self.given.today)));
        let title = papers::titled(&self.kind, &self.title);
        let pages = self.pager.finish();
        Sheet { paper: self.paper, language: language(), title, pages }
    }
}
