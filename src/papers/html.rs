//! Writes a sheet as HTML. Every text is escaped; looks come from `style/print.css` by class alone, as
//! the page allows no style in the markup.

use std::fmt::Write as _;

use super::code::{Code, QUIET_MODULES};
use super::sheet::{
    Block, Closing, Column, Figure, Heading, Mark, Page, Paper, Sheet, Table, TableKind, TableRow,
};
use crate::design::letters::escape;
use crate::engine::pitch::Letter;
use crate::words::{card, in_language};

/// The sheet as one `article`, to be put inside `#print-root`.
pub fn html(sheet: &Sheet) -> String {
    in_language(sheet.language, || written(sheet))
}

fn written(sheet: &Sheet) -> String {
    let mut out = String::with_capacity(64 * 1024);
    let (language, title) = (sheet.language.code(), escape(&sheet.title));
    add(&mut out, &format!("<article class=\"sheet\" lang=\"{language}\" aria-label=\"{title}\">"));
    for page in &sheet.pages {
        write_page(&mut out, page, sheet.paper);
    }
    out.push_str("</article>");
    out
}

fn add(out: &mut String, markup: &str) {
    out.push_str(markup);
    out.push('\n');
}

/// An element with a class and a text.
fn element(tag: &str, class: &str, text: &str) -> String {
    format!("<{tag} class=\"{class}\">{}</{tag}>", escape(text))
}

/// Each line in its own element, so that it breaks nowhere else.
fn lines(lines: &[String]) -> String {
    lines.iter().map(|line| element("span", "line", line)).collect::<Vec<_>>().join(" ")
}

fn write_page(out: &mut String, page: &Page, paper: Paper) {
    add(out, &format!("<section class=\"paper paper--{}\">", class_of(paper)));
    for block in &page.blocks {
        match block {
            Block::Heading(heading) => write_heading(out, heading),
            Block::Running(words) => add(out, &element("p", "card-running", words)),
            Block::Title(words) => add(out, &element("h2", "card-subtitle", words)),
            Block::Table(table) => write_table(out, table),
            Block::Legend(legend) => {
                add(out, &format!("<p class=\"card-legend\">{}</p>", lines(legend)));
            }
            Block::Remarks(remarks) => {
                add(out, &format!("<p class=\"card-remarks\">{}</p>", lines(remarks)));
            }
            Block::Caution(words) => {
                add(out, &format!("<p class=\"card-caution\">{}</p>", lines(words)));
            }
            Block::Figure(Figure { svg, label }) => {
                let label = escape(label);
                add(
                    out,
                    &format!(
                        "<figure class=\"card-figure\" role=\"img\" aria-label=\"{label}\">{svg}</figure>"
                    ),
                );
            }
            Block::Closing(closing) => write_closing(out, closing),
        }
    }
    if !page.page_number.is_empty() {
        add(out, &element("p", "card-foot", &page.page_number));
    }
    add(out, "</section>");
}

const fn class_of(paper: Paper) -> &'static str {
    match paper {
        Paper::A4 => "a4",
        Paper::A5 => "a5",
        Paper::Letter => "letter",
    }
}

fn write_heading(out: &mut String, heading: &Heading) {
    let long = if heading.long_title { " card-title--long" } else { "" };
    let title = lines(&heading.title);
    add(
        out,
        &format!("<header class=\"card-heading\">\n<h1 class=\"card-title{long}\">{title}</h1>"),
    );
    add(out, &element("p", "card-kind", heading.kind));
    add(out, "<dl class=\"card-facts\">");
    for fact in &heading.facts {
        let said = format!("<dd>{}</dd>", lines(&fact.lines));
        add(out, &format!("<div><dt>{}</dt>{said}</div>", escape(fact.label)));
    }
    add(out, "</dl>\n</header>");
}

/// The roles say again what the elements are, as a table laid out as a grid loses them.
fn write_table(out: &mut String, table: &Table) {
    let classes = format!(
        "card-table card-table--{} card-table--spacing-{} card-table--last-{}",
        match table.kind {
            TableKind::Strings => "strings",
            TableKind::StringsWithInches => "strings-inches",
            TableKind::Order => "order",
            TableKind::Figures => "figures",
            TableKind::Compared => "compared",
            TableKind::Loads => "loads",
            TableKind::Forces => "forces",
            TableKind::Pairs => "pairs",
            TableKind::Tuning => "tuning",
            TableKind::Keys => "keys",
        },
        table.spacing,
        table.last_width
    );
    add(out, &format!("<table class=\"{classes}\" role=\"table\"><thead role=\"rowgroup\">"));
    let head = |column: &Column| {
        let class = if column.figures { " class=\"figures\"" } else { "" };
        let words = lines(&column.head.map(str::to_owned));
        format!("<th scope=\"col\" role=\"columnheader\"{class}>{words}</th>")
    };
    let heads: String = table.columns.iter().map(head).collect();
    add(out, &format!("<tr role=\"row\">{heads}</tr></thead><tbody role=\"rowgroup\">"));
    for row in &table.rows {
        write_row(out, row, table);
    }
    add(out, "</tbody></table>");
}

fn write_row(out: &mut String, row: &TableRow, table: &Table) {
    let class = if row.opens_octave { " class=\"opens-octave\"" } else { "" };
    let _ = write!(out, "<tr role=\"row\"{class}>");
    for (index, (cell, column)) in row.cells.iter().zip(&table.columns).enumerate() {
        let class = if column.figures { " class=\"figures\"" } else { "" };
        let words = lines(cell);
        let _ = match index {
            0 => write!(out, "<th scope=\"row\" role=\"rowheader\"{class}>{words}</th>"),
            // The second cell of a string bears its mark.
            1 if table.kind.has_marks() => {
                write!(out, "<td role=\"cell\" class=\"string\">{}{words}</td>", mark(row.mark))
            }
            _ => write!(out, "<td role=\"cell\"{class}>{words}</td>"),
        };
    }
    add(out, "</tr>");
}

/// A filled disc or square with its letter, drawn, as browsers leave backgrounds unprinted.
fn mark(mark: Option<Mark>) -> String {
    let (class, name, shape, letter) = match mark {
        Some(Mark::C) => ("c", card::MARK_C, "<circle cx=\"5\" cy=\"5\" r=\"5\"/>", Letter::C),
        Some(Mark::F) => ("f", card::MARK_F, "<rect width=\"10\" height=\"10\"/>", Letter::F),
        None => return "<span class=\"mark\"></span>".to_owned(),
    };
    let letter = letter.printed();
    // A syllable is smaller, so that it stays within its mark.
    let long = if letter.len() > 1 { " mark--long" } else { "" };
    format!(
        "<svg class=\"mark mark--{class}{long}\" viewBox=\"0 0 10 10\" role=\"img\" aria-label=\"{name}\">\
         {shape}<text x=\"5\" y=\"7.6\" text-anchor=\"middle\">{letter}</text></svg>"
    )
}

fn write_closing(out: &mut String, closing: &Closing) {
    let side = match &closing.code {
        Ok(code) => format!("side-{}", code.side),
        Err(_) => "words".to_owned(),
    };
    add(out, &format!("<div class=\"card-closing card-closing--{side}\"><div>"));
    add(out, &element("h2", "card-subtitle", closing.steps_title));
    add(out, &format!("<div class=\"card-steps card-steps--{}\">", closing.steps.len()));
    let mut start = 1;
    for steps in &closing.steps {
        let items: String =
            steps.iter().zip(start..).map(|(step, number)| item(number, step)).collect();
        add(out, &format!("<ol start=\"{start}\">{items}</ol>"));
        start += steps.len();
    }
    let title = element("strong", "", closing.cautions_title);
    add(out, "</div>");
    add(out, &format!("<p class=\"card-cautions\">{title} {}</p>", escape(closing.cautions)));
    add(out, "</div>");
    match &closing.code {
        Ok(code) => write_code(out, code, closing.caption),
        Err(words) => add(out, &element("p", "card-no-code", words)),
    }
    add(out, "</div>");
}

fn item(number: usize, step: &str) -> String {
    format!("<li value=\"{number}\">{}</li>", escape(step))
}

fn write_code(out: &mut String, code: &Code, caption: &str) {
    let side = code.modules + 2 * QUIET_MODULES;
    let caption = escape(caption);
    add(out, "<figure class=\"card-code\">");
    add(
        out,
        &format!(
            "<svg viewBox=\"0 0 {side} {side}\" role=\"img\" aria-label=\"{caption}\"><path d=\"{}\"/></svg>",
            outline(code)
        ),
    );
    add(out, &format!("<figcaption>{caption}</figcaption></figure>"));
}

/// The dark modules as one path: a bar for each run along a row.
fn outline(code: &Code) -> String {
    let mut path = String::new();
    for row in 0..code.modules {
        let mut column = 0;
        while column < code.modules {
            let dark = |at: &usize| code.is_dark(*at, row);
            let run = (column..code.modules).take_while(dark).count();
            if run > 0 {
                let (x, y) = (column + QUIET_MODULES, row + QUIET_MODULES);
                let _ = write!(path, "M{x} {y}h{run}v1h-{run}z");
            }
            column += run.max(1);
        }
    }
    path
}
