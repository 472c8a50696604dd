//! The forces on the frame and in it, in words.

use super::{moment_with_unit, pillar_at_most};
use crate::design::display;
use crate::design::document::{ForceUnit, Units};
use crate::engine::bearing::Bearing;
use crate::engine::units::{Force, Length, Moment};
use crate::words::frame as say;

/// The forces, line by line: what, and how much.
pub fn forces(bearing: &Bearing, units: Units) -> Vec<(&'static str, String)> {
    let force = |force| display::total_with_unit(force, units.force);
    let moment = |n_m: f64| moment_with_unit(Moment::from_n_m(n_m.abs()), units.force);
    let newtons = |n: f64| force(Force::from_n(n.abs()));
    let mut lines = vec![
        (say::FORCE_ALL.said(), force(bearing.pull)),
        (say::FORCE_LIFT.said(), force(bearing.lift)),
        (say::FORCE_ALONG.said(), force(bearing.along)),
    ];
    let per_length = bearing.board.iter().flatten().map(|cut| cut.load);
    let lifts = || per_length.clone().map(|load| load.lift_n_per_m);
    let (least, most) = (lifts().fold(f64::INFINITY, f64::min), lifts().fold(0.0, f64::max));
    if least.is_finite() {
        lines.push((say::FORCE_LIFT_RIB.said(), along_rib(least, most, units)));
        let along = per_length.clone().map(|load| load.along_n_per_m.abs()).fold(0.0, f64::max);
        lines.push((say::FORCE_ALONG_RIB.said(), along_rib(along, along, units)));
    }
    if let Ok(frame) = &bearing.frame {
        let (held, neck) = (frame.holds, &frame.neck);
        let shoulder = held.shoulder_pull.x.to_n().hypot(held.shoulder_pull.y.to_n());
        lines.extend([
            (say::FORCE_NECK.said(), force(frame.all.size())),
            (say::FORCE_PILLAR.said(), force(held.pillar)),
            (say::FORCE_SHOULDER.said(), newtons(shoulder)),
            (say::FORCE_NECK_MOMENT.said(), moment(neck.greatest(|cut| cut.moment_n_m))),
            (say::FORCE_NECK_SIDEWAYS.said(), moment(neck.greatest(|cut| cut.sideways_n_m))),
            (say::FORCE_NECK_TORQUE.said(), moment(neck.greatest(|cut| cut.torque_n_m))),
            (say::FORCE_NECK_SHEAR.said(), newtons(neck.greatest(|cut| cut.shear_n))),
            (say::FORCE_NECK_ALONG.said(), newtons(neck.greatest(|cut| cut.axial_n))),
        ]);
        // How far neck and pillar bend and turn follows from their sizes and woods.
        let is_sized = bearing.is_given;
        let degrees = |rad: f64| display::decimals(rad.to_degrees(), 1);
        if let Some((held, alone)) = neck.twist_rad.filter(|_| is_sized) {
            let (held, alone) = (held.abs(), alone.abs());
            let (least, most) = (degrees(held.min(alone)), degrees(held.max(alone)));
            let text = if least == most {
                format!("{most}°")
            } else {
                say::from_to_degrees(&most, &least)
            };
            lines.push((say::FORCE_NECK_TWIST.said(), text));
        }
        let bent = |at| moment(pillar_at_most(frame, at));
        let sway = frame.firm().iter().map(|stiff| stiff.top[2].abs()).fold(0.0, f64::max);
        let bends = [
            (say::FORCE_PILLAR_PLANE.said(), bent(5)),
            (say::FORCE_PILLAR_SIDEWAYS.said(), bent(4)),
            (say::FORCE_PILLAR_TORQUE.said(), bent(3)),
            (
                say::FORCE_SWAY.said(),
                display::length_with_unit(
                    Length::from_mm((1e4 * sway).round() / 10.0),
                    units.length,
                ),
            ),
        ];
        lines.extend(bends.into_iter().filter(|_| is_sized));
    }
    if bearing.left_out > 0 {
        let count = bearing.left_out.to_string();
        lines.push((say::FORCE_LEFT_OUT.said(), count));
    }
    lines
}

/// Forces for each length: by the metre, or by the inch.
fn along_rib(least_n_per_m: f64, most_n_per_m: f64, units: Units) -> String {
    let (times, unit) = match units.force {
        ForceUnit::Newton => (1e-3, "N/mm"),
        ForceUnit::Kgf => (1e-2 * Force::from_n(1.0).to_kgf(), "kgf/cm"),
        ForceUnit::Lbf => (Length::from_inch(1.0).to_m() * Force::from_n(1.0).to_lbf(), "lbf/in"),
    };
    let [least, most] = [least_n_per_m, most_n_per_m].map(|n| display::decimals(times * n, 1));
    let range = if least == most { most } else { say::from_to(&most, &least) };
    format!("{range} {unit}")
}
