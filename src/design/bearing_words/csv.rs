//! What the frame of a design bears as CSV, cut by cut: what the command line prints.

use std::fmt::Write;

use super::names::{aspect_words, part_words};
use crate::design::document::Design;
use crate::design::letters::small;
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::engine::bearing::{Case, Cut, FrameBearing, Judged, Part, Stiff, bear};
use crate::engine::geometry::{lay_out, loads};
use crate::engine::structure::frame::{Point, Station};
use crate::engine::structure::space::Cut as Forces;
use crate::engine::structure::verdict::{Use, Verdict, pillar as judge_push, pillar_bent};
use crate::engine::units::Length;
use crate::words::frame as say;

const CUTS: &str = "part,joints,along_mm,x_mm,y_mm,z_mm,breadth_mm,depth_mm,axial_n,shear_in_plane_n,\
     shear_sideways_n,torque_n_m,bending_sideways_n_m,bending_in_plane_n_m,leading,stress_mpa,limit_mpa,\
     share_least_percent,share_most_percent,counts\n";

const MOVES: &str =
    "\nplace,joints,right_mm,up_mm,to_the_strings_side_mm,turn_x_deg,turn_y_deg,turn_z_deg\n";

const BOARD: &str = "\nboard at string,edges,looked at,stress_mpa,limit_mpa,share_percent,rise_mm,rise_with_creep_mm\n";

/// Three tables: the forces and the leading stress at every cut of neck, pillar and soundbox and in the joints, with the
/// shares of each part as a whole at the end; and how the top of the pillar moves, at once and with the mean modulus. Forces are
/// those that the part beyond a cut gives, seen from the shoulder, the top of the pillar and the foot of the soundbox. The
/// last column says whether the verdicts count the case of a row. The third has all that is looked at in the board at every
/// string, at both ends of what holds its edges, and its rise at once and with its creep.
///
/// # Errors
///
/// Why there is no frame.
pub fn frame(design: &Design) -> Result<String, String> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let (shape, build) = (&resolved.geometry, &resolved.build());
    let band = lay_out(&resolved.harp, &analysis, shape);
    let loads = loads(&band, &resolved.harp, &analysis, shape);
    let bearing = bear(&band, &loads, &analysis, shape, build);
    let frame = bearing.frame.as_ref().map_err(ToString::to_string)?;
    let mut csv = CUTS.to_owned();
    let (neck, pillar) = (&frame.neck, &build.pillar);
    let sides = Some((pillar.depth, pillar.width));
    let (top, foot) = (frame.head.at, band.pillar.0);
    let low = band.board.0;
    for case in CASES {
        let counts = neck.counts(case);
        let joints = super::case(case).english();
        for Cut { station, verdict, .. } in neck.of(case) {
            let section = station.section;
            let place = (station.s_m, station.at);
            let sides = Some((section.breadth(), section.depth()));
            row(
                &mut csv,
                ("neck", joints, counts),
                place,
                sides,
                (&station.forces(), Some(verdict)),
            );
        }
        let Some(stiff) = frame_of(frame, case) else {
            if case == Case::PillarPushes {
                let push = [-frame.reactions.pillar.to_n(), 0.0, 0.0, 0.0, 0.0, 0.0];
                let stands = frame.pillar.stands(pillar);
                let pushed = frame.reactions.pillar;
                let judged = stands.and_then(|of| judge_push(pushed, of, &pillar.allowable));
                let of = ("pillar", joints, counts);
                row(&mut csv, of, (0.0, top), sides, (&push, judged.as_ref()));
            }
            continue;
        };
        let stands = frame.pillar.stands(pillar);
        for (end, place) in [(0, (0.0, top)), (1, (frame.pillar.length.to_m(), foot))] {
            let cut = stiff.pillar[end];
            let judged = stands.and_then(|stands| pillar_bent(cut, stands, &pillar.allowable));
            row(&mut csv, ("pillar", joints, counts), place, sides, (&cut, judged.as_ref()));
        }
        // The soundbox is judged if no joint gives, and then as the joints give.
        let judged = frame
            .soundbox
            .as_ref()
            .and_then(|soundbox| soundbox.cases.get(usize::from(case == Case::JointsGive)));
        for (at, (place, cut)) in stiff.soundbox.iter().enumerate() {
            let along = (place.x.to_m() - low.x.to_m()).hypot(place.y.to_m() - low.y.to_m());
            let verdict = judged.and_then(|cuts| Some(&cuts.get(at)?.verdict));
            row(&mut csv, ("soundbox", joints, counts), (along, *place), None, (cut, verdict));
        }
        let ends = [
            ("shoulder", frame.shoulder.at, stiff.neck.first().map(Station::forces)),
            ("head", top, Some(stiff.pillar[0])),
            ("foot", foot, Some(stiff.pillar[1])),
        ];
        for (name, at, cut) in ends {
            if let Some(cut) = cut {
                row(&mut csv, (name, joints, counts), (0.0, at), None, (&cut, None));
            }
        }
    }
    shares(&mut csv, frame);
    csv += MOVES;
    for case in CASES {
        let Some(stiff) = frame_of(frame, case) else { continue };
        let _ = write!(csv, "top of the pillar,{}", super::case(case).english());
        for (number, moved) in stiff.top.iter().enumerate() {
            let shown = if number < 3 { 1e3 * moved } else { moved.to_degrees() };
            let _ = write!(csv, ",{shown:.4}");
        }
        csv.push('\n');
    }
    csv += BOARD;
    for (cut, figures) in bearing.board.iter().zip(&analysis.strings) {
        let Ok(cut) = cut else { continue };
        for (edges, state) in [("firm", &cut.firm), ("soft", &cut.soft)] {
            let (rise, crept) = (state.rise.to_mm(), state.rise_crept.to_mm());
            for used in &state.verdict.uses {
                let (what, stress) = (aspect_words(used.aspect).english(), used.stress.to_mpa());
                let _ = write!(csv, "{},{edges},\"{what}\",{stress:.4}", figures.number);
                let _ = writeln!(csv, ",{},{},{rise:.3},{crept:.3}", limit(used), share(used));
            }
        }
    }
    if bearing.board.iter().flatten().any(|cut| cut.has_unjudged_ends) {
        let what = say::ENDS_OF_BARS.english();
        let _ = writeln!(csv, "all,both,\"{what}: {}\",,,,,", say::NOT_JUDGED.english());
    }
    Ok(csv)
}

fn limit(used: &Use) -> String {
    used.limit.map_or_else(String::new, |limit| format!("{:.4}", limit.to_mpa()))
}

fn share(used: &Use) -> String {
    used.ratio.map_or_else(String::new, |ratio| format!("{:.2}", 100.0 * ratio))
}

/// In the order of the rows.
const CASES: [Case; 4] =
    [Case::PillarPushes, Case::JointsGive, Case::NoJointGives, Case::NothingGives];

/// The frame in space of a case.
const fn frame_of(frame: &FrameBearing, case: Case) -> Option<&Stiff> {
    match case {
        Case::PillarPushes => None,
        Case::JointsGive => frame.sprung.as_ref(),
        Case::NoJointGives => Some(&frame.stiff[1]),
        Case::NothingGives => Some(&frame.stiff[0]),
    }
}

type Sides = Option<(Length, Length)>;

fn row(
    csv: &mut String,
    (part, joints, counts): (&str, &str, bool),
    (along_m, at): (f64, Point),
    sides: Sides,
    (forces, verdict): (&Forces, Option<&Verdict>),
) {
    let _ = write!(csv, "{part},{joints},{:.3},", 1e3 * along_m);
    let _ = write!(csv, "{:.3},{:.3},0", at.x.to_mm(), at.y.to_mm());
    match sides {
        Some((breadth, depth)) => {
            let _ = write!(csv, ",{:.3},{:.3}", breadth.to_mm(), depth.to_mm());
        }
        None => csv.push_str(",,"),
    }
    for force in forces {
        // No minus before a zero.
        let _ = write!(csv, ",{:.3}", force + 0.0);
    }
    let counts = if counts { "yes" } else { "no" };
    let Some(used) = verdict.and_then(Verdict::governing) else {
        let _ = writeln!(csv, ",,,,,,{counts}");
        return;
    };
    let _ = write!(csv, ",\"{}\",{:.4}", aspect_words(used.aspect).english(), used.stress.to_mpa());
    let (limit, share) = (limit(used), share(used));
    let _ = writeln!(csv, ",{limit},{share},{share},{counts}");
}

/// Joints and parts as a whole.
fn shares(csv: &mut String, frame: &FrameBearing) {
    for part in Part::ALL {
        let name = small(part_words(part).english());
        let (at, judged): (_, Option<&Judged>) = match part {
            Part::Shoulder => (Some(frame.shoulder.at), Some(&frame.shoulder.judged)),
            Part::Head => (Some(frame.head.at), Some(&frame.head.judged)),
            Part::Foot => (Some(frame.foot.at), Some(&frame.foot.judged)),
            Part::Neck | Part::Pillar | Part::Soundbox => (None, None),
        };
        let place = at.map_or_else(
            || ",,,,".to_owned(),
            |at| format!(",,{:.3},{:.3},0", at.x.to_mm(), at.y.to_mm()),
        );
        let _ = write!(csv, "{name} as a whole,all{place}{}", ",".repeat(9));
        // What opens a joint leads wherever it does, as nothing is known that holds it.
        match (judged.and_then(Judged::opening), frame.used(part)) {
            (Some(opening), None) => {
                let _ = writeln!(
                    csv,
                    "bending that opens an edge of the joint,{:.4},,,,yes",
                    opening.to_mpa()
                );
            }
            (_, Some((least, most))) => {
                let used = frame.governing(part);
                let leading = used.map_or("", |used| aspect_words(used.aspect).english());
                let stress = used.map_or(0.0, |used| used.stress.to_mpa());
                let limit = used.map_or_else(String::new, limit);
                let (least, most) = (100.0 * least, 100.0 * most);
                let _ = writeln!(csv, "\"{leading}\",{stress:.4},{limit},{least:.2},{most:.2},yes");
            }
            _ => csv.push_str(",,,,,yes\n"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;

    #[test]
    fn every_row_has_its_columns_and_all_parts_are_there() {
        for sample in SAMPLES {
            let csv = frame(&sample.design()).unwrap();
            let (cuts, more) = csv.split_once("\n\n").unwrap();
            let (moves, board) = more.split_once("\n\n").unwrap();
            for line in board.lines() {
                // The name of what is looked at may hold one.
                let commas = line.matches(',').count() - line.matches(", ").count();
                assert_eq!(commas, 7, "{line}");
            }
            for what in ["its string rib", "its edges", "buckling", "bending across"] {
                assert!(board.contains(what), "{what}");
            }
            for line in cuts.lines() {
                assert_eq!(line.matches(',').count(), 19, "{line}");
            }
            for line in moves.lines() {
                assert_eq!(line.matches(',').count(), 7, "{line}");
            }
            for part in ["neck", "pillar", "soundbox", "shoulder as a whole"] {
                assert!(csv.contains(&format!("\n{part},")), "{part}");
            }
            assert!(!csv.contains("NaN") && !csv.contains("inf"), "{}", sample.key);
        }
    }

    #[test]
    fn without_a_frame_there_is_the_reason() {
        let error = frame(&Design::default()).unwrap_err();
        assert!(error.starts_with("a neck needs three strings"), "{error}");
    }
}
