//! How far each part of the frame is loaded: stress over what may be allowed, and which part leads.
//!
//! Only numbers; the words for them stand elsewhere. A use of 1 is all that may be allowed.

use super::column::{
    SAWN, Strut, bending_with_compression, bending_with_tension, critical_stress, stability_ratio,
};
use super::frame::Station;
use super::holes::Factors;
use super::plated::Plated;
use super::section::{Rectangle, SectionError, curved_stress, radial_stress};
use super::space::Cut;
use super::wood::Allowable;
use crate::engine::units::{Force, Length, Moment, Stress};

/// What of a part was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Aspect {
    /// Bending with a push along the part.
    BendingAndPush,
    /// Bending with a pull along the part.
    BendingAndPull,
    /// Shear of the shear force and of the twist together.
    ShearAndTwist,
    /// Tension across the grain of a curve that is opened.
    AcrossTheCurve,
    /// Compression along the grain, with buckling.
    Buckling,
    /// A push beside the middle of a pillar: greatest stress of the secant formula.
    BesideTheMiddle,
    /// Two faces pressed together, along the grain.
    PressedAlong,
    /// Two faces pressed together, across the grain.
    PressedAcross,
    /// Two faces that would slide.
    Sliding,
    /// Two faces that would gape at an edge, where nothing is known that holds them.
    Opening,
    /// The same, with what holds them.
    OpeningOn(Carrier),
    /// Two faces that would slide or turn on each other, with what holds them.
    SlidingOn(Carrier),
    /// Wood that fasteners press across its grain.
    Splitting,
    /// Bending of the soundbox with the pull along it, in its sides and liners.
    SidesBent,
    /// The same in its back, with what sound holes add.
    BackBent,
    /// The board pulled across its grain by the bending of the soundbox.
    BoardPulled,
    /// Shear of the sides, of the shear force and of the twist together.
    SidesSheared,
    /// The same of the back, beside its holes.
    BackSheared,
    /// Sides that would bow between braces.
    Bowing,
    /// Shear that rolls the wood of crossed layers of the neck.
    Rolling,
    /// Metal plates on the neck, bent with it.
    MetalBent,
    /// The glue of these plates, sheared.
    MetalGlue,
    /// Their screws, pushed across.
    MetalScrews,
    /// The board bent across, with the pull of one that has risen.
    BoardBent,
    /// Its string rib or the strip outside, bent.
    RibBent,
    /// The glue of either, sheared.
    RibGlue,
    /// Its bars, bent.
    BarsBent,
    /// The glue of its bars, sheared.
    BarsGlue,
    /// Its bars, sheared and twisted.
    BarsSheared,
    /// The glue of its edges, pulled open.
    EdgePeel,
    /// The glue at the ends of its bars, pulled open.
    BarsEnds,
    /// The board pushed along, which bows when it has crept.
    BoardBows,
}

/// What carries in a joint besides the push of its faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Carrier {
    /// Glue on the faces.
    Glue,
    /// A glued tenon.
    Tenon,
    /// Glued dowels.
    Dowels,
    /// Bolts.
    Bolts,
    /// Screws.
    Screws,
    /// Plates on both sides, with what holds them.
    Plates,
}

impl Carrier {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Glue, Self::Tenon, Self::Dowels, Self::Bolts, Self::Screws, Self::Plates];
}

/// One aspect with its numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Use {
    /// What was looked at.
    pub aspect: Aspect,
    /// The stress that leads in it.
    pub stress: Stress,
    /// What may be allowed of it, where it is known.
    pub limit: Option<Stress>,
    /// How far it is loaded, where a limit is known; endless where the part has given way.
    pub ratio: Option<f64>,
}

/// All aspects of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// One by one.
    pub uses: Vec<Use>,
}

impl Verdict {
    /// The aspect that is loaded most; the first of equals, and `None` where no limit is known.
    pub fn governing(&self) -> Option<&Use> {
        let mut known = self.uses.iter().filter_map(|used| Some((used.ratio?, used)));
        let first = known.next()?;
        Some(known.fold(first, |most, next| if next.0 > most.0 { next } else { most }).1)
    }

    /// Whether every aspect has a limit that is known.
    pub fn is_complete(&self) -> bool {
        self.uses.iter().all(|used| used.ratio.is_some())
    }
}

/// A stress against its limit.
pub(in crate::engine) fn simple(aspect: Aspect, stress: Stress, limit: Option<Stress>) -> Use {
    let limit = limit.filter(|limit| limit.to_pa() > 0.0);
    let ratio = limit.map(|limit| stress.to_pa() / limit.to_pa());
    Use { aspect, stress, limit, ratio: ratio.filter(|ratio| !ratio.is_nan()) }
}

/// A curve of the neck at a cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    /// Radius of the middle line.
    pub mean_radius: Length,
    /// Whether the middle line turns to the left on the way from shoulder to pillar.
    pub to_the_left: bool,
}

/// The neck at a cut: bending both ways with push or pull, shear with twist, and tension across the grain where
/// a curve is opened.
///
/// Bending in the plane and sideways are added, as both are greatest at one corner. A push is not checked for
/// buckling, as the neck is stout. In a curve the stresses of a curved bar count. Shear and twist are added and
/// held against the limit for shear, which is the careful way; standards allow more in twist. `factors` say how much
/// greater stresses are than in a plain bar, as by holes.
///
/// # Errors
///
/// When the curve is tighter than the neck is deep.
pub fn neck(
    station: &Station,
    allowable: &Allowable,
    curve: Option<Curve>,
    factors: &Factors,
) -> Result<Verdict, SectionError> {
    let section = station.section;
    let moment = Moment::from_n_m(station.moment_n_m);
    let mut in_plane = section.bending_stress(moment).to_pa().abs();
    let mut across = None;
    if let Some(Curve { mean_radius, to_the_left }) = curve {
        // The part beyond turned from x to y bends the neck to the left, which closes a curve to the left.
        let opening = Moment::from_n_m(station.moment_n_m * if to_the_left { -1.0 } else { 1.0 });
        let faces = curved_stress(section, mean_radius, opening)?;
        in_plane = faces.inner.to_pa().abs().max(faces.outer.to_pa().abs());
        let radial = factors.across * radial_stress(section, mean_radius, opening)?.to_pa();
        across = (radial > 0.0).then_some(Stress::from_pa(radial));
    }
    // A force along the middle line bends what lies beside it.
    let aside = station.sideways_n_m.abs() + (station.axial_n * factors.aside.to_m()).abs();
    let sideways = section.on_its_side().bending_stress(Moment::from_n_m(aside));
    let beside = Moment::from_n_m((station.axial_n * factors.shift.to_m()).abs());
    in_plane = factors.bending * (in_plane + section.bending_stress(beside).to_pa());
    let bending = Stress::from_pa(in_plane + factors.sideways * sideways.to_pa().abs());
    let axial = section.axial_stress(Force::from_n(station.axial_n.abs())).to_pa();
    let axial = Stress::from_pa(factors.axial * axial);
    let mut uses = vec![bent(station.axial_n, axial, bending, allowable)];
    let shear = sliding((station.shear_n, station.aside_n), station.torque_n_m, section);
    let shear = Stress::from_pa(factors.shear * shear.to_pa());
    uses.push(simple(Aspect::ShearAndTwist, shear, allowable.shear));
    uses.extend(
        across.map(|radial| simple(Aspect::AcrossTheCurve, radial, allowable.tension_across)),
    );
    Ok(Verdict { uses })
}

/// The metal beside a neck at a cut, against what it may bear. In a curve its bending is greater as that of the wood is.
///
/// # Errors
///
/// When the curve is tighter than the neck is deep.
pub fn metal(
    station: &Station,
    plated: &Plated,
    curve: Option<Curve>,
) -> Result<Use, SectionError> {
    let stress = plated.metal(station, in_the_curve(station, curve)?);
    Ok(simple(Aspect::MetalBent, stress, Some(plated.limit())))
}

/// How much more a curve makes of bending in its plane.
///
/// # Errors
///
/// When the curve is tighter than the neck is deep.
pub fn in_the_curve(station: &Station, curve: Option<Curve>) -> Result<f64, SectionError> {
    let moment = Moment::from_n_m(station.moment_n_m.abs());
    let straight = station.section.bending_stress(moment).to_pa();
    Ok(match curve {
        Some(curve) if straight > 0.0 => {
            let faces = curved_stress(station.section, curve.mean_radius, moment)?;
            faces.inner.to_pa().abs().max(faces.outer.to_pa().abs()) / straight
        }
        _ => 1.0,
    })
}

/// Bending with the force along the part. The stress that leads is the sum of both.
pub(super) fn bent(axial_n: f64, axial: Stress, bending: Stress, allowable: &Allowable) -> Use {
    let stress = Stress::from_pa(axial.to_pa() + bending.to_pa());
    let limit = allowable.bending;
    if axial_n < 0.0 {
        let endless = Stress::from_pa(f64::INFINITY);
        let ratio = limit.zip(allowable.compression_along).and_then(|(limit, along)| {
            bending_with_compression((axial, along), (bending, limit), endless)
        });
        return Use { aspect: Aspect::BendingAndPush, stress, limit, ratio };
    }
    // The allowable stress for tension along the grain is taken as that of bending.
    let ratio = limit.and_then(|limit| bending_with_tension((axial, limit), (bending, limit)));
    Use { aspect: Aspect::BendingAndPull, stress, limit, ratio }
}

/// How a pillar stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pillar {
    /// Its section.
    pub section: Rectangle,
    /// Its length between points without bending.
    pub free_length: Length,
    /// How far beside its middle the push acts, over the side that bends.
    pub eccentricity: Length,
}

/// A pillar under a push: with buckling by the stability ratio of wooden columns, and beside its middle by the
/// secant formula with the modulus for buckling, against the stress allowed along the grain.
///
/// A pull, which a pillar of a harp does not get, uses nothing up here. `None` where no modulus is known or a
/// measure is not above 0.
pub fn pillar(push: Force, pillar: Pillar, allowable: &Allowable) -> Option<Verdict> {
    let section = pillar.section.weaker_way();
    let least = allowable.least_modulus?;
    let edge = Length::from_m(0.5 * section.depth().to_m());
    let (area, inertia) = (section.area_m2(), section.inertia_m4());
    let strut = Strut::new(area, inertia, edge, pillar.free_length, least).ok()?;
    let push = Force::from_n(push.to_n().max(0.0));
    let mean = strut.mean_stress(push);
    let slender = pillar.free_length.to_m() / section.depth().to_m();
    let limit = allowable.compression_along.and_then(|along| {
        let alpha = critical_stress(least, slender).to_pa() / along.to_pa();
        Some(Stress::from_pa(along.to_pa() * stability_ratio(alpha, SAWN)?))
    });
    let beside = match strut.eccentric_stress(push, pillar.eccentricity) {
        Some(stress) => simple(Aspect::BesideTheMiddle, stress, allowable.compression_along),
        None => Use {
            aspect: Aspect::BesideTheMiddle,
            stress: Stress::from_pa(f64::INFINITY),
            limit: allowable.compression_along,
            ratio: Some(f64::INFINITY),
        },
    };
    Some(Verdict { uses: vec![simple(Aspect::Buckling, mean, limit), beside] })
}

/// A pillar with the bending and the twist that joints bring into it, at one of its ends, by the same limits as the neck;
/// the push with the bending by its buckling over the weaker side both ways, which is the careful way.
///
/// `None` where no modulus is known or a measure is not above 0.
pub fn pillar_bent(cut: Cut, pillar: Pillar, allowable: &Allowable) -> Option<Verdict> {
    let (section, [axial_n, shear_n, aside_n, torque_n_m, sideways, moment]) =
        (pillar.section, cut);
    let in_plane = section.bending_stress(Moment::from_n_m(moment.abs())).to_pa();
    let aside = section.on_its_side().bending_stress(Moment::from_n_m(sideways.abs())).to_pa();
    let bending = Stress::from_pa(in_plane + aside);
    let axial = section.axial_stress(Force::from_n(axial_n.abs()));
    let mut with_force = bent(axial_n, axial, bending, allowable);
    if axial_n < 0.0 {
        let slender = pillar.free_length.to_m() / section.weaker_way().depth().to_m();
        let critical = critical_stress(allowable.least_modulus?, slender);
        let limits = allowable.bending.zip(allowable.compression_along);
        with_force.ratio = limits.and_then(|(limit, along)| {
            let held = stability_ratio(critical.to_pa() / along.to_pa(), SAWN)?;
            let along = Stress::from_pa(along.to_pa() * held);
            let used = bending_with_compression((axial, along), (bending, limit), critical);
            Some(used.unwrap_or(f64::INFINITY))
        });
    }
    let uses = vec![
        with_force,
        simple(
            Aspect::ShearAndTwist,
            sliding((shear_n, aside_n), torque_n_m, section),
            allowable.shear,
        ),
    ];
    Some(Verdict { uses })
}

/// Greatest shear of a shear force both ways and of a twist.
fn sliding((shear_n, aside_n): (f64, f64), torque_n_m: f64, section: Rectangle) -> Stress {
    let shear = section.shear_stress(Force::from_n(shear_n.hypot(aside_n))).to_pa();
    let twist = section.torsion_stress(Moment::from_n_m(torque_n_m.abs())).to_pa();
    Stress::from_pa(shear + twist)
}

/// Two faces of a joint.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Faces {
    /// As of a bar that goes square through them.
    pub section: Rectangle,
    /// Whether the grain of the weaker wood runs across the push.
    pub across_the_grain: bool,
}

/// A joint of two parts under the forces of a bar that goes square through its faces: the greatest pressure and the
/// greatest shear against what the weaker wood may be allowed, and whether bending would open an edge. There glue and
/// dowels hold, of which no sizes are known, so that no limit is; nor is then known how the other edge is pressed, and
/// the pressure is that of the push alone.
pub fn joint(cut: Cut, faces: Faces, allowable: &Allowable) -> Verdict {
    let (section, [axial_n, shear_n, aside_n, torque_n_m, sideways, moment]) = (faces.section, cut);
    let in_plane = section.bending_stress(Moment::from_n_m(moment.abs())).to_pa();
    let aside = section.on_its_side().bending_stress(Moment::from_n_m(sideways.abs())).to_pa();
    let (bending, push) = (in_plane + aside, -section.axial_stress(Force::from_n(axial_n)).to_pa());
    let (aspect, limit) = if faces.across_the_grain {
        (Aspect::PressedAcross, allowable.compression_across)
    } else {
        (Aspect::PressedAlong, allowable.compression_along)
    };
    let shear = sliding((shear_n, aside_n), torque_n_m, section);
    // A trace of bending is none.
    let opens = bending - push > 1e-6 * bending.max(push.abs());
    let pressed = if opens { push.max(0.0) } else { push + bending };
    let mut uses = vec![
        simple(aspect, Stress::from_pa(pressed), limit),
        simple(Aspect::Sliding, shear, allowable.shear),
    ];
    if opens {
        uses.push(simple(Aspect::Opening, Stress::from_pa(bending - push), None));
    }
    Verdict { uses }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::frame::Point;
    use crate::engine::structure::wood::Margins;
    use crate::testing::assert_close;

    fn mpa(value: f64) -> Option<Stress> {
        Some(Stress::from_mpa(value))
    }

    fn allowable() -> Allowable {
        Allowable {
            bending: mpa(30.0),
            compression_along: mpa(15.0),
            compression_across: mpa(5.0),
            shear: mpa(5.0),
            tension_across: None,
            modulus: Some(Stress::from_gpa(12.0)),
            least_modulus: Some(Stress::from_gpa(5.0)),
            margins: Margins::default(),
        }
    }

    fn section(breadth_mm: f64, depth_mm: f64) -> Rectangle {
        Rectangle::new(Length::from_mm(breadth_mm), Length::from_mm(depth_mm)).unwrap()
    }

    fn station(axial_n: f64, moment_n_m: f64) -> Station {
        Station {
            at: Point::from_mm(0.0, 0.0),
            s_m: 0.0,
            section: section(60.0, 100.0),
            axial_n,
            aside_n: 0.0,
            shear_n: 4000.0,
            moment_n_m,
            torque_n_m: 0.0,
            sideways_n_m: 0.0,
        }
    }

    #[test]
    fn bending_of_a_straight_neck_is_moment_over_modulus() {
        let verdict =
            neck(&station(6000.0, -1000.0), &allowable(), None, &Factors::default()).unwrap();
        let bending = verdict.governing().unwrap();
        assert_eq!(bending.aspect, Aspect::BendingAndPull);
        assert_close(bending.stress.to_mpa(), 11.0, 1e-12, "stress");
        assert_close(bending.ratio.unwrap(), 11.0 / 30.0, 1e-12, "use");
        assert_close(verdict.uses[1].stress.to_mpa(), 1.0, 1e-12, "shear");
        let pushed =
            neck(&station(-6000.0, -1000.0), &allowable(), None, &Factors::default()).unwrap();
        assert_eq!(pushed.uses[0].aspect, Aspect::BendingAndPush);
        assert_close(pushed.uses[0].ratio.unwrap(), 1.0 / 225.0 + 1.0 / 3.0, 1e-12, "pushed");
    }

    #[test]
    fn only_a_curve_that_is_opened_is_torn_across() {
        let curve = |to_the_left| Some(Curve { mean_radius: Length::from_mm(500.0), to_the_left });
        let closed =
            neck(&station(0.0, 1000.0), &allowable(), curve(true), &Factors::default()).unwrap();
        assert_eq!(closed.uses.len(), 2);
        let opened =
            neck(&station(0.0, 1000.0), &allowable(), curve(false), &Factors::default()).unwrap();
        let across = opened.uses[2];
        assert_eq!((across.aspect, across.ratio), (Aspect::AcrossTheCurve, None));
        assert_close(across.stress.to_mpa(), 0.5, 1e-12, "across");
        assert!(!opened.is_complete() && closed.is_complete());
        assert!(opened.uses[0].stress > Stress::from_mpa(10.0), "a curve adds to the bending");
        let tight = Curve { mean_radius: Length::from_mm(20.0), to_the_left: true };
        assert!(neck(&station(0.0, 1.0), &allowable(), Some(tight), &Factors::default()).is_err());
    }

    #[test]
    fn a_pillar_loaded_beside_its_middle_leads() {
        let stands = Pillar {
            section: section(45.0, 60.0),
            free_length: Length::from_m(1.1),
            eccentricity: Length::from_mm(10.0),
        };
        let verdict = pillar(Force::from_n(1900.0), stands, &allowable()).unwrap();
        assert_eq!(verdict.governing().map(|used| used.aspect), Some(Aspect::BesideTheMiddle));
        let buckling = verdict.uses[0];
        assert!(buckling.limit < mpa(15.0) && buckling.ratio < Some(1.0));
        let fallen = pillar(Force::from_n(1e6), stands, &allowable()).unwrap();
        assert_eq!(fallen.governing().and_then(|used| used.ratio), Some(f64::INFINITY));
        let unknown = Allowable { least_modulus: None, ..allowable() };
        assert_eq!(pillar(Force::from_n(1.0), stands, &unknown), None);
        let flat = Pillar { free_length: Length::from_m(f64::NAN), ..stands };
        assert_eq!(pillar(Force::from_n(1.0), flat, &allowable()), None);
        let pulled = pillar(Force::from_n(-50.0), stands, &allowable()).unwrap();
        assert_eq!(pulled.governing().and_then(|used| used.ratio), Some(0.0));
    }

    #[test]
    fn a_joint_presses_and_slides() {
        // 40 by 50 mm: 2000 mm².
        let faces = Faces { section: section(40.0, 50.0), across_the_grain: true };
        let verdict = joint([-2000.0, 0.0, -1000.0, 0.0, 0.0, 0.0], faces, &allowable());
        assert_eq!(verdict.uses.len(), 2);
        assert_close(verdict.uses[0].ratio.unwrap(), 0.2, 1e-12, "pressed");
        assert_close(verdict.uses[1].ratio.unwrap(), 0.15, 1e-12, "sliding");
        assert_eq!(joint([-1.0; 6], faces, &Allowable::default()).governing(), None);
    }

    /// Pushed with 1 MPa, bent with 0.9 and 2 MPa: 1.9 MPa that glue must hold at an edge.
    #[test]
    fn a_joint_opens_where_bending_passes_the_push() {
        let faces = Faces { section: section(40.0, 50.0), across_the_grain: false };
        let (in_plane, sideways) = (15.0, 2e6 * 0.05 * 0.04 * 0.04 / 6.0);
        let cut = [-2000.0, 0.0, 0.0, 0.0, sideways, -in_plane];
        let verdict = joint(cut, faces, &allowable());
        assert_close(verdict.uses[0].stress.to_mpa(), 1.0, 1e-12, "pressed");
        let opening = verdict.uses[2];
        assert_eq!((opening.aspect, opening.ratio), (Aspect::Opening, None));
        assert_close(opening.stress.to_mpa(), 1.9, 1e-12, "opening");
        let closed = joint([-2000.0, 0.0, 0.0, 0.0, 0.0, in_plane], faces, &allowable());
        assert_eq!(closed.uses.len(), 2);
        assert_close(closed.uses[0].stress.to_mpa(), 1.9, 1e-12, "pressed at the other edge");
    }

    /// Without a push it is bending over its limit; with one the square of the push comes in, and the bending grows.
    #[test]
    fn a_pillar_with_stiff_joints_is_bent_and_twisted() {
        let stands = Pillar {
            section: section(45.0, 60.0),
            free_length: Length::from_m(1.1),
            eccentricity: Length::from_mm(5.0),
        };
        let cut = [0.0, 300.0, 400.0, 20.0, 81.0, 54.0];
        let verdict = pillar_bent(cut, stands, &allowable()).unwrap();
        // 54/27 and 81/20.25 in N·m over cm³.
        assert_close(verdict.uses[0].stress.to_mpa(), 6.0, 1e-12, "bending");
        assert_close(verdict.uses[0].ratio.unwrap(), 0.2, 1e-12, "use");
        let twist = section(45.0, 60.0).torsion_stress(Moment::from_n_m(20.0)).to_mpa();
        let shear = 1.5 * 500.0 / 2700.0;
        assert_close(verdict.uses[1].stress.to_mpa(), shear + twist, 1e-12, "shear");
        let pushed = pillar_bent([-1900.0, 0.0, 0.0, 0.0, 81.0, 54.0], stands, &allowable());
        assert!(pushed.unwrap().uses[0].ratio > Some(0.2));
        let fallen = pillar_bent([-1e6, 0.0, 0.0, 0.0, 1.0, 1.0], stands, &allowable()).unwrap();
        assert_eq!(fallen.uses[0].ratio, Some(f64::INFINITY));
    }
}
