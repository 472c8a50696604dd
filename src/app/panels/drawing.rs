//! The drawing of the harp at full size: a picture, the measures of its shape, the loads, and the files.

use leptos::prelude::*;

use super::header::file_name;
use crate::app::browser;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, NumberField};
use crate::app::widgets::list::{either, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::document::{Design, GapsSpec, GeometrySpec, MeasuredSpec};
use crate::design::edit::Edit;
use crate::design::resolve::{GAP_MM, MEASURE_MM, Resolved, SIDEWAYS_MM, SOLID_MM, START_MM};
use crate::design::{advice, display};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{BOARD_ANGLE_DEG, LEAN_DEG, lay_out, loads};
use crate::engine::structure::frame::reactions;
use crate::papers::template::model::TemplateError;
use crate::papers::template::tiling::{TilePaper, Tiling};
use crate::papers::template::{dxf, harp, pdf, schedule, svg};

/// The panel of the drawing.
#[component]
pub fn DrawingWindow(store: Store) -> impl IntoView {
    let close = move || {
        store.close_step();
        store.window.set(None);
    };
    let told = move || store.notice.with(|told| told.as_ref().map(|told| told.text.clone()));
    view! {
        <Window title="Drawing" wide=true on_close=close>
            <div class="drawing">
                <div class="form-stack">
                    <Picture store=store/>
                    <Files store=store/>
                    <p role="status">{words(move || told().unwrap_or_default())}</p>
                    <LoadsTable store=store/>
                </div>
                <Shape store=store/>
            </div>
        </Window>
    }
}

/// The picture, or why there is none.
#[component]
fn Picture(store: Store) -> impl IntoView {
    let large = RwSignal::new(false);
    let drawn = Memo::new(move |_| {
        let template =
            harp::template(&store.design.read(), &store.resolved.read(), &store.analysis.read());
        let notes = template.notes.join(" ");
        svg::write(&template).map(|text| (picture(&text), notes)).map_err(|error| why(&error))
    });
    let of = move |take: fn(&(String, String)) -> &String| {
        drawn.with(|drawn| drawn.as_ref().map(take).cloned().unwrap_or_default())
    };
    let paper = move || {
        view! {
            <div
                class="drawing-paper"
                class:large=move || large.get()
                tabindex="0"
                role="region"
                aria-label="Drawing of the harp from the side"
                inner_html=move || of(|drawn| &drawn.0)
            ></div>
            <div class="window-actions">
                <button type="button" class="tool" on:click=move |_| large.update(|large| *large = !*large)>
                    {words(move || if large.get() { "Whole" } else { "Larger" }.to_owned())}
                </button>
                <p class="hint">{words(move || of(|drawn| &drawn.1))}</p>
            </div>
        }
        .into_any()
    };
    let none = move || {
        let text = move || drawn.with(|drawn| drawn.as_ref().err().cloned().unwrap_or_default());
        view! { <p class="wrong">{words(text)}</p> }.into_any()
    };
    either(move || drawn.with(Result::is_ok), paper, none)
}

/// The text of an SVG file as a part of the page: without its first line, and with no names that the page has too.
fn picture(text: &str) -> String {
    let start = text.find("<svg").unwrap_or(0);
    text[start..].replace("<g id=", "<g data-layer=").replacen("<svg", "<svg role=\"img\"", 1)
}

/// Why there is no drawing, for a maker.
fn why(error: &TemplateError) -> String {
    match error {
        TemplateError::Empty => {
            "There is nothing to draw yet. Give the strings their lengths first.".to_owned()
        }
        error => format!("This cannot be drawn: {error}."),
    }
}

/// A file of the drawing.
#[derive(Clone, Copy)]
enum File {
    Dxf,
    Svg,
    Sheets(TilePaper),
    Sheet,
    Schedule,
}

#[component]
fn Files(store: Store) -> impl IntoView {
    let file = move |title: &'static str, words: &'static str, file: File| {
        button("tool", "", title, words, move || offer(store, file))
    };
    view! {
        <div class="window-actions">
            {file("For a cutter or a drawing program, in millimetres", "DXF", File::Dxf)}
            {file("For a drawing program, at full size", "SVG", File::Svg)}
            {file("Over many sheets, to print at full size and glue", "PDF on A4", File::Sheets(TilePaper::A4))}
            {file("Over many sheets, to print at full size and glue", "PDF on Letter", File::Sheets(TilePaper::Letter))}
            {file("As large as the harp, for a plotter", "PDF on one sheet", File::Sheet)}
            {file("A table of all pins, holes, levers and discs with their places", "Pin schedule", File::Schedule)}
        </div>
    }
}

/// Makes a file and offers it.
fn offer(store: Store, file: File) {
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let analysis = store.analysis.get_untracked();
    let template = harp::template(&design, &resolved, &analysis);
    let text = |text: String| text.into_bytes();
    let (ending, media_type, made) = match file {
        File::Dxf => ("dxf", "image/vnd.dxf", dxf::write(&template).map(text)),
        File::Svg => ("svg", "image/svg+xml", svg::write(&template).map(text)),
        File::Sheets(paper) => {
            let made = pdf::tiled(&template, Tiling { paper, ..Tiling::default() });
            let ending = match paper {
                TilePaper::A4 => "a4.pdf",
                TilePaper::Letter => "letter.pdf",
            };
            (ending, "application/pdf", made)
        }
        File::Sheet => ("sheet.pdf", "application/pdf", pdf::single(&template)),
        File::Schedule => {
            // An empty table says nothing: the drawing tells why.
            let table = schedule::write(&harp::schedule(&design, &resolved, &analysis));
            ("pins.csv", "text/csv", template.extent().map(|_| text(table)))
        }
    };
    match made {
        Ok(bytes) => {
            let name = file_name(&design.title, ending);
            browser::offer_bytes(&name, media_type, &bytes);
            store.tell(format!("Saved as {name}, where this browser puts its downloads."));
        }
        Err(error) => store.complain(why(&error)),
    }
}

#[component]
fn LoadsTable(store: Store) -> impl IntoView {
    let lines = Memo::new(move |_| {
        load_lines(&store.design.read(), &store.resolved.read(), &store.analysis.read())
    });
    let row = |(what, how_much): (String, String)| {
        part(&(what.clone(), how_much.clone()), move || {
            view! { <tr><th scope="row">{what}</th><td>{how_much}</td></tr> }.into_any()
        })
    };
    let table = move || {
        view! {
            <div class="drawing-loads">
                <h3 id="loads-title">"Loads, estimated"</h3>
                <table class="sources" aria-labelledby="loads-title">
                    <tbody>{list(move || lines.get().into_iter().map(row).collect())}</tbody>
                </table>
                <p class="hint">"The push in the pillar is reckoned as if its ends and the shoulder turned freely. Real joints also bend."</p>
                <p class="caution">{advice::caution()}</p>
            </div>
        }
        .into_any()
    };
    while_so(move || lines.with(|lines| !lines.is_empty()), table)
}

/// What the strings do to board, neck and pillar; nothing where no string has a pull and a place.
fn load_lines(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Vec<(String, String)> {
    let geometry = &resolved.geometry;
    let band = lay_out(&resolved.harp, analysis, geometry);
    let loads = loads(&band, &resolved.harp, analysis, geometry);
    if loads.pulls.is_empty() {
        return Vec::new();
    }
    let force = |force| display::total_with_unit(force, design.units.force);
    let pillar = band.supports().and_then(|supports| reactions(supports, &loads.pulls).ok());
    let mut lines = vec![
        ("Pull of all strings", force(analysis.total_tension)),
        ("Lift on the board, square to it", force(loads.lift)),
        ("Pull along the board", force(loads.along)),
        ("All pulls on the neck as one", force(loads.all.size())),
        ("Push in the pillar", pillar.map_or(display::NONE.to_owned(), |held| force(held.pillar))),
    ];
    let rooms = loads.rooms.iter().zip(&analysis.strings);
    let least = rooms
        .filter_map(|(room, figures)| Some((room.as_ref().ok()?.plucked, figures)))
        .min_by(|one, other| one.0.to_m().total_cmp(&other.0.to_m()));
    if let Some((room, upper)) = least {
        let room = display::length_with_unit(room, design.units.length);
        let text = format!("{room}, strings {} and {}", upper.number, upper.number + 1);
        lines.push(("Least room of two neighbours, both plucked", text));
    }
    if loads.left_out > 0 {
        lines.push(("Strings left out, as something is unknown", loads.left_out.to_string()));
    }
    lines.into_iter().map(|(what, how_much)| (what.to_owned(), how_much)).collect()
}

/// How the spacing may be measured, with the words of a list.
const MEASURED: [(MeasuredSpec, &str, &str); 2] = [
    (MeasuredSpec::Square, "square", "Square to the strings"),
    (MeasuredSpec::AlongBoard, "board", "Along the board"),
];

/// The measures that matter most. What is not shown stays as it is.
#[component]
fn Shape(store: Store) -> impl IntoView {
    let send = move |change: &dyn Fn(&mut GeometrySpec)| {
        let mut geometry = store.design.with_untracked(|design| design.geometry.clone());
        change(&mut geometry);
        store.send(&Edit::Geometry(Box::new(geometry)));
    };
    let field = move |label: &'static str,
                      unit: &'static str,
                      range: (f64, f64),
                      of: fn(&GeometrySpec) -> f64,
                      put: fn(&mut GeometrySpec, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.geometry)));
        let on_change = move |number| send(&|geometry| put(geometry, number));
        view! { <NumberField label=label unit=unit value=value least=range.0 most=range.1 on_change=on_change/> }
            .into_any()
    };
    let is_uniform = move || {
        store.design.with(|design| matches!(design.geometry.spacing.gaps, GapsSpec::UniformMm(_)))
    };
    let spacing = move || {
        let of = |g: &GeometrySpec| match g.spacing.gaps {
            GapsSpec::UniformMm(mm) => mm,
            _ => 0.0,
        };
        let put = |g: &mut GeometrySpec, mm: f64| g.spacing.gaps = GapsSpec::UniformMm(mm);
        field("From string to string", "mm", GAP_MM, of, put)
    };
    let varied = || {
        view! { <p class="hint">"The spacing of this design differs from string to string, and stays so."</p> }
            .into_any()
    };
    let measured = Signal::derive(move || {
        let now = store.design.with(|design| design.geometry.spacing.measured);
        let row = MEASURED.iter().find(|row| row.0 == now);
        row.map_or("square", |row| row.1).to_owned()
    });
    let set_measured = move |key: String| {
        if let Some(row) = MEASURED.iter().find(|row| row.1 == key) {
            send(&|geometry| geometry.spacing.measured = row.0);
        }
    };
    let choices = MEASURED.map(|row| (row.1.to_owned(), row.2.to_owned())).to_vec();
    let errors = move || {
        let error = |error: String| {
            part(&error.clone(), move || view! { <p class="wrong">{error}</p> }.into_any())
        };
        store.resolved.with(|resolved| resolved.errors.iter().cloned().map(error).collect())
    };
    view! {
        <div class="form-stack">
            <div role="status">{list(errors)}</div>
            <fieldset>
                <legend>"Strings"</legend>
                {field("Between strings and board", "degrees", BOARD_ANGLE_DEG, |g| g.board_angle_deg, |g, x| g.board_angle_deg = x)}
                {field("Lean from upright", "degrees", LEAN_DEG, |g| g.lean_deg, |g, x| g.lean_deg = x)}
                {either(is_uniform, spacing, varied)}
                <Choice label="Measured" choices=choices value=measured on_change=set_measured/>
                {field("Bar above the board", "mm", START_MM, |g| g.start_mm, |g, x| g.start_mm = x)}
                {field("Tuning pin beside its string", "mm", SIDEWAYS_MM, |g| g.pin_sideways_mm, |g, x| g.pin_sideways_mm = x)}
            </fieldset>
            <fieldset>
                <legend>"Neck, pillar and board"</legend>
                {field("Neck below pins or levers", "mm", MEASURE_MM, |g| g.neck.below_pins_mm, |g, x| g.neck.below_pins_mm = x)}
                {field("Neck above tuning pins", "mm", MEASURE_MM, |g| g.neck.above_pins_mm, |g, x| g.neck.above_pins_mm = x)}
                {field("Lowest string to pillar", "mm", MEASURE_MM, |g| g.pillar.gap_mm, |g, x| g.pillar.gap_mm = x)}
                {field("Pillar, seen from the side", "mm", SOLID_MM, |g| g.pillar.width_mm, |g, x| g.pillar.width_mm = x)}
                {field("Board below the lowest string", "mm", MEASURE_MM, |g| g.board.below_mm, |g, x| g.board.below_mm = x)}
                {field("Board above the highest string", "mm", MEASURE_MM, |g| g.board.above_mm, |g, x| g.board.above_mm = x)}
                <p class="hint">"Common practice, from memory. Measure your own."</p>
            </fieldset>
        </div>
    }
}
