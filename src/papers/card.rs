//! The stringing card: what the owner needs to order and fit the right string years later.
//!
//! Its pages are laid by [`pager`].

use crate::design::advice::sentence;
use crate::design::bearing_words::verdict;
use crate::design::document::{Design, LengthUnit};
use crate::design::resolve::resolve;
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::bearing::{Borne, borne};
use crate::engine::geometry::lay_out;

use super::code::{Code, design_mark};
use super::layout::{
    CELL_PAD_MM, CODE_WIDTHS_MM, FOOT_MM, LAST_PAD_MM, RESERVE_MM, SPACINGS_MM, STEPS_GAP_MM,
    TYPE_PT, closing_mm, paragraph_mm, steps_mm, text_width_mm, widths,
};
use super::measure::{clean, width_mm, wrap};
use super::pager::{self, Pager, cell};
use super::rows::{StringWords, Strings, columns, strings};
use super::sheet::{Block, Closing, Heading, Page, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, count_of_findings, facts, no_code, run_on, steps, title};
use crate::words::{card as say, language, papers};

/// Lines that the legend may have; only a hostile text needs more.
const MOST_LEGEND_LINES: usize = 5;
/// Lines of remarks, the most first, that are tried.
const REMARK_LINES: [usize; 7] = [16, 8, 4, 3, 2, 1, 0];

/// The stringing card of a design. `link` opens the design in a browser; it is printed as a code.
pub fn card(design: &Design, analysis: &Analysis, link: &str, paper: Paper) -> Sheet {
    let resolved = resolve(design);
    let own = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &own, &resolved.geometry);
    let borne = borne(&band, &resolved.harp, &own, &resolved.geometry, &resolved.build());
    card_with(design, analysis, &borne, link, paper)
}

/// The same, where it is known what the frame bears.
pub fn card_with(
    design: &Design,
    analysis: &Analysis,
    borne: &Borne,
    link: &str,
    paper: Paper,
) -> Sheet {
    let mark = design_mark(design);
    let title = title(design);
    let columns = columns(design.units.length);
    let strings = strings(design, analysis);
    let last_width = last_width(&strings.rows);
    let widths = widths(paper, design.units.length, CODE_WIDTHS_MM[last_width]);
    let heading = heading(design, analysis, &title, &mark, paper);
    let draft = Draft {
        paper,
        legend: legend(&count_of_findings(analysis), &strings, &heading, paper),
        heading,
        running: running(design, &title, &mark, paper),
        table: Table {
            columns,
            rows: rows(strings.rows, &widths),
            kind: match design.units.length {
                LengthUnit::Mm => TableKind::Strings,
                LengthUnit::Inch => TableKind::StringsWithInches,
            },
            spacing: 0,
            last_width,
        },
        // What room there is decides how much of these stands on the card.
        remarks: [found(design, analysis, paper), frame(borne, paper), remarks(design, paper)]
            .concat(),
        closing: closing(design, link, &mark, paper),
    };
    Sheet {
        paper,
        language: language(),
        title: papers::titled(&papers::CARD, &title),
        pages: draft.pages(),
    }
}

/// The parts of a card, before they are laid on pages.
struct Draft {
    paper: Paper,
    legend: Vec<String>,
    heading: Heading,
    running: String,
    table: Table,
    remarks: Vec<String>,
    closing: Closing,
}

impl Draft {
    /// The fewest pages; among these the most remarks; among these the widest spacing.
    fn pages(mut self) -> Vec<Page> {
        let tightest = SPACINGS_MM.len() - 1;
        let fewest = self.laid(tightest, 0).len();
        let mut tried = usize::MAX;
        for most in REMARK_LINES {
            let lines = self.remarks.len().min(most);
            if lines == tried {
                continue;
            }
            tried = lines;
            // Wider rows never take fewer pages: what does not fit in the tightest fits in none.
            let closest = self.laid(tightest, lines);
            if closest.len() > fewest {
                continue;
            }
            for spacing in 0..tightest {
                let pages = self.laid(spacing, lines);
                if pages.len() == fewest {
                    return pages;
                }
            }
            return closest;
        }
        self.laid(tightest, 0)
    }

    /// The pages with one spacing of the rows and so many lines of remarks.
    fn laid(&mut self, spacing: usize, remark_lines: usize) -> Vec<Page> {
        self.table.spacing = spacing;
        let whole = self.paper.inside_mm().1 - RESERVE_MM;
        // A page alone bears no number and so no foot.
        let alone = self.laid_within(whole, remark_lines);
        if alone.len() == 1 { alone } else { self.laid_within(whole - FOOT_MM, remark_lines) }
    }

    fn laid_within(&self, whole: f64, remark_lines: usize) -> Vec<Page> {
        let mut pager = Pager::new(whole, self.heading.clone(), self.running.clone());
        pager.table("", &self.table, &self.legend);
        // Remarks and the closing part stand together.
        let (remarks, closing) =
            (paragraph_mm(remark_lines), closing_mm(&self.closing, self.paper));
        pager.keep(remarks + closing);
        if remark_lines > 0 {
            pager.put(Block::Remarks(shortened(self.remarks.clone(), remark_lines)), remarks);
        }
        pager.put(Block::Closing(self.closing.clone()), closing);
        pager.finish()
    }
}

fn heading(design: &Design, analysis: &Analysis, title: &str, mark: &str, paper: Paper) -> Heading {
    pager::heading(papers::CARD.said(), title, facts(design, analysis, mark.to_owned()), paper)
}

fn running(design: &Design, title: &str, mark: &str, paper: Paper) -> String {
    let serial = clean(&design.serial);
    let serial = if serial.is_empty() { String::new() } else { format!(", {serial}") };
    let room = paper.inside_mm().0 - width_mm(&papers::running_card(&mark, &""), TYPE_PT);
    let name = wrap(&format!("{title}{serial}"), room, TYPE_PT, 1).concat();
    papers::running_card(&mark, &name)
}

/// What the words and signs of the card mean, in lines over the whole width.
fn legend(found: &str, strings: &Strings, heading: &Heading, paper: Paper) -> Vec<String> {
    let is_dash = |text: &String| text == DASH;
    let in_rows = strings.rows.iter().any(|row| row.cells.iter().any(is_dash));
    let in_heading = heading.facts.iter().any(|fact| fact.lines.iter().any(is_dash));
    let dash = if in_rows || in_heading { papers::DASH_MEANS.said() } else { "" };
    let words = format!("{found} {} {dash}", strings.legend);
    if words.trim().is_empty() {
        return Vec::new();
    }
    wrap(&words, paper.inside_mm().0, TYPE_PT, MOST_LEGEND_LINES)
}

/// How far what leads in the frame is loaded, in the words of the page; nothing where there is no frame to judge. A
/// card without room leaves it out, and says nothing of the frame.
fn frame(borne: &Borne, paper: Paper) -> Vec<String> {
    let lead = verdict(&borne.bearing).short;
    if lead.is_empty() || !borne.bearing.is_given {
        return Vec::new();
    }
    let words = say::frame(&lead);
    wrap(&words, paper.inside_mm().0, TYPE_PT, MOST_LEGEND_LINES)
}

/// The most serious of open findings, in lines over the whole width; nothing where there are none.
fn found(design: &Design, analysis: &Analysis, paper: Paper) -> Vec<String> {
    let Some(first) = analysis.findings.first() else { return Vec::new() };
    let words = sentence(first, analysis, &design.units);
    wrap(&words, paper.inside_mm().0, TYPE_PT, MOST_LEGEND_LINES)
}

/// The maker's remarks in lines over the whole width.
fn remarks(design: &Design, paper: Paper) -> Vec<String> {
    if clean(&design.remarks).is_empty() {
        return Vec::new();
    }
    let text = papers::remarks(&run_on(&design.remarks));
    wrap(&text, paper.inside_mm().0, TYPE_PT, usize::MAX)
}

/// The first lines; the last of them ends in an ellipsis if there were more.
fn shortened(mut lines: Vec<String>, most: usize) -> Vec<String> {
    if lines.len() > most {
        lines.truncate(most);
        if let Some(last) = lines.last_mut() {
            // Room for the ellipsis.
            last.pop();
            last.pop();
            last.push('…');
        }
    }
    lines
}

fn closing(design: &Design, link: &str, mark: &str, paper: Paper) -> Closing {
    let all = steps(design);
    let code = Code::of(link).ok_or_else(|| no_code(link, mark));
    let width = text_width_mm(&code, paper);
    let steps = match paper {
        Paper::A5 => vec![all.to_vec()],
        Paper::A4 | Paper::Letter => {
            let column = (width - STEPS_GAP_MM) / 2.0;
            let taller = |split: &usize| {
                let (left, right) = all.split_at(*split);
                steps_mm(left, column).max(steps_mm(right, column))
            };
            let best = (1..all.len()).min_by(|a, b| taller(a).total_cmp(&taller(b)));
            let (left, right) = all.split_at(best.unwrap_or(all.len() / 2));
            vec![left.to_vec(), right.to_vec()]
        }
    };
    Closing {
        steps_title: say::STEPS.said(),
        steps,
        cautions_title: say::CARE.said(),
        cautions: say::CAUTIONS.said(),
        code,
        caption: say::CAPTION.said(),
    }
}

/// The narrowest width that takes every order code on one line, or else the widest.
fn last_width(strings: &[StringWords]) -> usize {
    let widest = strings
        .iter()
        .filter_map(|string| string.cells.last())
        .map(|code| width_mm(code, TYPE_PT) + CELL_PAD_MM + LAST_PAD_MM)
        .fold(0.0, f64::max);
    let last = CODE_WIDTHS_MM.len() - 1;
    CODE_WIDTHS_MM.iter().position(|&width| width >= widest).unwrap_or(last)
}

fn rows(strings: Vec<StringWords>, widths: &[f64]) -> Vec<TableRow> {
    let mut above = None;
    let row = |string: StringWords| {
        let opens_octave = above.is_some() && above != Some(string.harp_octave);
        above = Some(string.harp_octave);
        let words = string.cells.iter().enumerate().take(widths.len());
        let cells = words.map(|(index, words)| cell(words, widths, index)).collect();
        TableRow { mark: string.mark, opens_octave, cells }
    };
    strings.into_iter().map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{MakeUpSpec, StringSpec};

    /// The cells of the strings parted by bars, and the lines of words.
    fn words(sheet: &Sheet) -> String {
        let mut out = Vec::new();
        for block in sheet.pages.iter().flat_map(|page| &page.blocks) {
            match block {
                Block::Table(table) => out.extend(table.rows.iter().map(|row| {
                    row.cells.iter().map(|cell| cell.join(" ")).collect::<Vec<_>>().join(" | ")
                })),
                Block::Legend(lines) | Block::Remarks(lines) => out.push(lines.join(" ")),
                _ => {}
            }
        }
        out.join("\n")
    }

    #[test]
    fn a_card_tells_of_open_findings_and_prints_what_was_typed() {
        let string = |note: &str, length: &str, material: &str, gauge: &str| StringSpec {
            note: note.to_owned(),
            length: length.to_owned(),
            make_up: MakeUpSpec {
                material: material.to_owned(),
                diameter: gauge.to_owned(),
                ..MakeUpSpec::default()
            },
            ..StringSpec::default()
        };
        let mut design = Design {
            remarks: "String 4, C6: torn\nString 9, F5: figures changed round".to_owned(),
            strings: vec![
                string("C5", "300", "nylon", "0.81"),
                string("B4", "2555", "nylon", "0.86"),
                string("A4", "371,5", "", "0,90"),
                string("G4", "far", "nylon", "thin"),
            ],
            ..Design::default()
        };
        let analysis = analyse(&resolve(&design).harp);
        let count = analysis.findings.len();
        assert!(count > 0);
        for paper in Paper::ALL {
            let text = words(&card(&design, &analysis, "https://harp.example/#1", paper));
            let says = format!("Findings still open: {count}, the most serious on string");
            assert!(text.contains(&says) && text.contains("String 2, B4: "), "{text}");
            assert!(text.contains("| — | 0.90 | .035 | 371.5 |"), "{text}");
            assert!(text.contains("| Nylon monofilament | thin | — | far |"), "{text}");
            assert!(text.contains("C6: torn. String 9"), "{text}");
        }
        design.strings.truncate(1);
        let analysis = analyse(&resolve(&design).harp);
        let text = words(&card(&design, &analysis, "https://harp.example/#1", Paper::A4));
        assert!(!text.contains("open findings"), "{text}");
    }
}
