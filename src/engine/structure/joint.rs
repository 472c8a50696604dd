//! Joints with their sizes: what a tenon, dowels, bolts, screws or plates bear where one part ends on another, and how far
//! such a joint gives.
//!
//! Each way of giving is borne by one thing alone, the one with the lowest share: glue breaks before a screw has taken up
//! its share, so that no two are added. That is the careful way.

mod fasteners;
#[cfg(test)]
mod tests;

pub use self::fasteners::{Fastener, Fasteners};
use super::reserve::{Ending, Reserve};
use super::section::Rectangle;
use super::space::{Cut, Six};
use super::verdict::{Aspect, Carrier, Use, Verdict, simple};
use super::wood::{Allowable, Margins};
use crate::engine::units::{Density, Length, Moment, Stress};

/// How far from the middle of the faces, over their size, the push may move when they begin to gape: half of the faces
/// presses then. A choice of this program.
const PUSH_ASIDE: f64 = 0.25;
/// What glue on end grain bears over what the wood does. Common practice, no source: makers count on nothing.
const END_GRAIN_GLUE: f64 = 0.1;
/// Shear modulus of wood that rolls, over the modulus along the grain: a tenth of a sixteenth. Source: EN 1995-1-1 and
/// EN 338 (from memory).
pub const ROLLING_MODULUS: f64 = 1.0 / 160.0;
/// Modulus across the grain over that along it. Source: EN 338, hardwoods (from memory).
const ACROSS_MODULUS: f64 = 1.0 / 15.0;
/// A joint that is pressed together hardly gives along the push and in shear, in N/m.
const PRESSED: f64 = 1e10;

/// The wood of a joint: that of the part which ends there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct JointWood {
    /// What it may bear for good.
    pub allowable: Allowable,
    /// Its mean density, where it is known.
    pub density: Option<Density>,
    /// Whether it is a conifer.
    pub is_softwood: bool,
    /// What a glue line may bear whose wood rolls, as where grain crosses.
    pub rolling: Option<Stress>,
}

impl JointWood {
    /// What wood may bear that rolls: twice its tension across the grain, and no more than its shear.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, 6.1.7 (from memory).
    pub fn rolling(allowable: &Allowable) -> Option<Stress> {
        let rolls = 2.0 * allowable.tension_across?.to_pa();
        Some(Stress::from_pa(rolls.min(allowable.shear?.to_pa())))
    }
}

/// Two plates, one on each side of the harp.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plates {
    /// Thickness of each.
    pub thickness: Length,
    /// In the plane of the strings.
    pub width: Length,
    /// What the metal may bear for good.
    pub allowable: Stress,
}

impl Carrier {
    /// How far breaking lies above what is allowed of what carries opening or sliding in a joint, of a wood with such
    /// margins. Of several that may break first it is the nearest. `None` for glue on end grain, of which nothing is known.
    pub fn reserve(self, opens: bool, wood: &Margins) -> Option<Reserve> {
        let (by_wood, steel) = fasteners::margins();
        let steel = Reserve { now: steel, later: steel, ending: Ending::Breaks };
        let by_wood = Reserve::of_wood(by_wood)?;
        let glued = || Reserve::of_wood(wood.tension_across?.or(wood.shear?).or(wood.bending?));
        match self {
            Self::Glue => None,
            Self::Tenon => glued(),
            Self::Dowels if opens => glued(),
            Self::Dowels => Some(by_wood.or(Reserve::of_wood(wood.shear?)?)),
            Self::Bolts if opens => Some(steel),
            Self::Screws if opens => Some(steel.or(by_wood)),
            Self::Bolts | Self::Screws => Some(by_wood),
            Self::Plates => Some(Reserve::of_metal().or(by_wood)),
        }
    }
}

impl Reserve {
    /// Of what wood bears of a fastener that presses, pulls or splits it.
    pub fn of_fastened() -> Option<Self> {
        Self::of_wood(fasteners::margins().0)
    }
}

/// A joint.
#[derive(Clone, Debug, PartialEq)]
pub struct Joint {
    /// The faces, as of a bar that goes square through them.
    pub section: Rectangle,
    /// Whether glue on them is counted.
    pub is_glued: bool,
    /// Whether the grain of the weaker wood runs across the push.
    pub across_the_grain: bool,
    /// Thickness across the harp and depth of a glued tenon, which is as high as the faces.
    pub tenon: Option<(Length, Length)>,
    /// Dowels, bolts or screws: through the faces, or through the plates where there are any.
    pub fasteners: Option<Fasteners>,
    /// Plates.
    pub plates: Option<Plates>,
    /// The wood.
    pub wood: JointWood,
}

/// What is left for glue, dowels and plates where the faces do what they can.
#[derive(Clone, Copy)]
struct Rest {
    /// A pull along the part.
    pull: f64,
    shear: f64,
    aside: f64,
    torque: f64,
    sideways: f64,
    moment: f64,
    /// What the faces are pressed with, and over which area.
    push: f64,
    area_m2: f64,
}

impl Joint {
    /// Whether anything is known that holds it.
    pub fn is_held(&self) -> bool {
        self.is_glued || self.tenon.is_some() || self.fasteners.is_some()
    }

    fn sides(&self) -> (f64, f64) {
        (self.section.breadth().to_m(), self.section.depth().to_m())
    }

    /// The faces press on the part of them about whose middle the push acts, as under the foot of a post. Source: the
    /// effective area of G. G. Meyerhof, 1953 (from memory).
    fn rest(&self, cut: Cut) -> Rest {
        let [axial, shear, aside, torque, sideways, moment] = cut.map(f64::abs);
        let (b, h) = self.sides();
        let (push, pull) = if cut[0] < 0.0 { (axial, 0.0) } else { (0.0, axial) };
        let left = |moment: f64, size: f64| (moment - push * PUSH_ASIDE * size).max(0.0);
        let pressed = |moment: f64, size: f64| {
            let most = PUSH_ASIDE * size;
            let off = if push > 0.0 { (moment / push).min(most) } else { most };
            size - 2.0 * off
        };
        let (moment_left, sideways_left) = (left(moment, h), left(sideways, b));
        // What holds an edge together adds to what presses the other; both lie about half of the faces apart.
        let added = moment_left / (2.0 * PUSH_ASIDE * h) + sideways_left / (2.0 * PUSH_ASIDE * b);
        Rest {
            pull,
            shear,
            aside,
            torque,
            sideways: sideways_left,
            moment: moment_left,
            push: push + added,
            area_m2: pressed(moment, h) * pressed(sideways, b),
        }
    }

    /// Pressing, opening, sliding with twist, and splitting under the forces of a bar that goes square through the faces.
    pub fn judge(&self, cut: Cut) -> Verdict {
        let (rest, allowable) = (self.rest(cut), &self.wood.allowable);
        let (aspect, limit) = if self.across_the_grain {
            (Aspect::PressedAcross, allowable.compression_across)
        } else {
            (Aspect::PressedAlong, allowable.compression_along)
        };
        let pressed = if rest.push > 0.0 { rest.push / rest.area_m2 } else { 0.0 };
        let mut uses = vec![simple(aspect, Stress::from_pa(pressed), limit)];
        let size = rest.push.max(rest.shear).max(rest.aside);
        if rest.pull + rest.moment + rest.sideways > 1e-9 * size {
            uses.push(self.least(|carrier| self.opening(carrier, &rest)).unwrap_or(Use {
                aspect: Aspect::Opening,
                stress: self.gaping(cut),
                limit: None,
                ratio: None,
            }));
        }
        let slides = self.least(|carrier| self.sliding(carrier, &rest));
        let by = slides.map(|used| used.aspect);
        uses.push(slides.unwrap_or(Use {
            aspect: Aspect::Sliding,
            stress: Stress::from_pa(rest.shear.hypot(rest.aside) / self.section.area_m2()),
            limit: None,
            ratio: None,
        }));
        if let (Some(fasteners), Some(Aspect::SlidingOn(by))) = (&self.fasteners, by)
            && by == fasteners.kind.carrier()
        {
            uses.extend(fasteners.splitting((rest.shear, rest.aside), self.section));
        }
        Verdict { uses }
    }

    /// What would gape if nothing held it.
    fn gaping(&self, cut: Cut) -> Stress {
        let bends = |section: Rectangle, moment: f64| {
            section.bending_stress(Moment::from_n_m(moment.abs())).to_pa()
        };
        let bending = bends(self.section, cut[5]) + bends(self.section.on_its_side(), cut[4]);
        Stress::from_pa((bending + cut[0] / self.section.area_m2()).max(0.0))
    }

    /// The carrier that is loaded least.
    fn least(&self, used: impl Fn(Carrier) -> Option<Use>) -> Option<Use> {
        let mut best: Option<Use> = None;
        for carrier in Carrier::ALL {
            let Some(next) = used(carrier).filter(|used| used.ratio.is_some()) else { continue };
            if best.is_none_or(|best| next.ratio < best.ratio) {
                best = Some(next);
            }
        }
        best
    }

    fn opening(&self, carrier: Carrier, rest: &Rest) -> Option<Use> {
        let aspect = Aspect::OpeningOn(carrier);
        match carrier {
            Carrier::Glue if self.is_glued => {
                let pull = rest.pull / self.section.area_m2();
                let bends = |section: Rectangle, moment: f64| {
                    section.bending_stress(Moment::from_n_m(moment)).to_pa()
                };
                let bent = bends(self.section, rest.moment)
                    + bends(self.section.on_its_side(), rest.sideways);
                let limit = END_GRAIN_GLUE * self.wood.allowable.tension_across?.to_pa();
                Some(simple(aspect, Stress::from_pa(pull + bent), Some(Stress::from_pa(limit))))
            }
            Carrier::Tenon => self.tenon_use(aspect, rest, Way::Opening),
            Carrier::Dowels | Carrier::Bolts | Carrier::Screws => {
                let fasteners = self.through_faces(carrier)?;
                let (b, h) = self.sides();
                let about = (PUSH_ASIDE * b, PUSH_ASIDE * h);
                let force = fasteners.pulled(rest.pull, (rest.sideways, rest.moment), about);
                let bears = fasteners.withdrawal(&self.wood)?;
                Some(fasteners.used(aspect, force, bears))
            }
            Carrier::Plates => self.plates_use(aspect, rest, Way::Opening),
            Carrier::Glue => None,
        }
    }

    fn sliding(&self, carrier: Carrier, rest: &Rest) -> Option<Use> {
        let aspect = Aspect::SlidingOn(carrier);
        match carrier {
            Carrier::Glue if self.is_glued => {
                let shear = 1.5 * rest.shear.hypot(rest.aside) / self.section.area_m2();
                let twist = self.section.torsion_stress(Moment::from_n_m(rest.torque)).to_pa();
                let limit = END_GRAIN_GLUE * self.wood.allowable.shear?.to_pa();
                Some(simple(aspect, Stress::from_pa(shear + twist), Some(Stress::from_pa(limit))))
            }
            Carrier::Tenon => self.tenon_use(aspect, rest, Way::Sliding),
            Carrier::Dowels | Carrier::Bolts | Carrier::Screws => {
                let fasteners = self.through_faces(carrier)?;
                let force = fasteners.pushed((rest.aside, rest.shear), rest.torque)?;
                let bears = fasteners.lateral(&self.wood)?;
                Some(fasteners.used(aspect, force, bears))
            }
            Carrier::Plates => self.plates_use(aspect, rest, Way::Sliding),
            Carrier::Glue => None,
        }
    }

    /// The fasteners that go through the faces, by their kind.
    fn through_faces(&self, carrier: Carrier) -> Option<&Fasteners> {
        let through = self.fasteners.as_ref().filter(|_| self.plates.is_none());
        through.filter(|fasteners| fasteners.kind.carrier() == carrier)
    }

    /// A tenon whose cheeks lie in the plane of the strings. Its glue bears what acts in that plane, as rolling shear, as
    /// the grain of both parts crosses there; the rest bends, shears and twists it and presses on its cheeks.
    fn tenon_use(&self, aspect: Aspect, rest: &Rest, way: Way) -> Option<Use> {
        let (thickness, depth) = self.tenon?;
        let (t, l, h) = (thickness.to_m(), depth.to_m(), self.section.depth().to_m());
        let allowable = &self.wood.allowable;
        let tenon = Rectangle::new(thickness, self.section.depth()).ok()?;
        let cheeks = 2.0 * h * l;
        let polar = 2.0 * (h * l * l * l + l * h * h * h) / 12.0;
        let glue = self.wood.rolling?;
        let candidates = match way {
            Way::Opening => {
                let along = rest.pull / cheeks + rest.moment * 0.5 * h / polar;
                let aside = rest.moment * 0.5 * l / polar;
                let bent = tenon.on_its_side().bending_stress(Moment::from_n_m(rest.sideways));
                let pressed = 6.0 * rest.sideways / (h * l * l);
                [
                    simple(aspect, Stress::from_pa(along.hypot(aside)), Some(glue)),
                    simple(aspect, bent, allowable.bending),
                    simple(aspect, Stress::from_pa(pressed), allowable.compression_across),
                ]
            }
            Way::Sliding => {
                let shear = 1.5 * rest.shear.hypot(rest.aside) / (t * h);
                let twist = tenon.torsion_stress(Moment::from_n_m(rest.torque)).to_pa();
                let pressed = rest.aside / (h * l) + 6.0 * rest.torque / (l * h * h);
                [
                    simple(aspect, Stress::from_pa(rest.shear / cheeks), Some(glue)),
                    simple(aspect, Stress::from_pa(shear + twist), allowable.shear),
                    simple(aspect, Stress::from_pa(pressed), allowable.compression_across),
                ]
            }
        };
        worst(candidates)
    }

    /// Plates and what holds them. Bending sideways pulls one and pushes the other, twist shears them against each other.
    fn plates_use(&self, aspect: Aspect, rest: &Rest, way: Way) -> Option<Use> {
        let (plates, fasteners) = (self.plates?, self.fasteners.as_ref()?);
        let (t, w) = (plates.thickness.to_m(), plates.width.to_m());
        let between = self.section.breadth().to_m() + t;
        let (area, bends) = (t * w, t * w * w / 6.0);
        let limit = Some(plates.allowable);
        let bears = fasteners.beside_plate(&self.wood)?;
        let (steel, force) = match way {
            Way::Opening => {
                let along = 0.5 * rest.pull + rest.sideways / between;
                let moment = 0.5 * rest.moment;
                (along / area + moment / bends, fasteners.in_a_row(along, 0.0, moment)?)
            }
            Way::Sliding => {
                let down = 0.5 * rest.shear + rest.torque / between;
                let shear = 1.5 * down / area + 0.5 * rest.aside / area;
                // Against the limit of a pull: as three times the square of shear counts.
                (3.0_f64.sqrt() * shear, fasteners.in_a_row(0.0, down, down * fasteners.reach())?)
            }
        };
        let plate = simple(aspect, Stress::from_pa(steel), limit);
        worst([plate, fasteners.used(aspect, force, bears), plate])
    }

    /// How stiff it is along the part and in shear both ways, against twist, and against bending sideways and in the plane,
    /// in SI units. `None` where what is known of it leaves it free to turn.
    ///
    /// # Source
    ///
    /// Slip of fasteners after EN 1995-1-1, table 7.1, along their axis as approvals of screws have it (both from memory);
    /// a tenon by a quarter of its thickness in rolling shear and half of it pressed, which is worked out and a choice.
    pub fn stiffness(&self) -> Option<Six> {
        let (b, h) = self.sides();
        let mut turns = [0.0; 3];
        let mut add = |more: [f64; 3]| (0..3).for_each(|i| turns[i] += more[i]);
        if let Some((thickness, depth)) = self.tenon {
            let (t, l) = (thickness.to_m(), depth.to_m());
            let modulus = self.wood.allowable.modulus?.to_pa();
            let glue = ROLLING_MODULUS * modulus / (0.25 * t);
            let pressed = ACROSS_MODULUS * modulus / (0.5 * t);
            let in_plane = glue * 2.0 * (h * l * l * l + l * h * h * h) / 12.0;
            add([pressed * l * h * h * h / 12.0, pressed * h * l * l * l / 12.0, in_plane]);
        }
        if let Some(fasteners) = &self.fasteners {
            let slip = fasteners.slip(&self.wood)?;
            if let Some(plates) = self.plates {
                // Twice the slip modulus beside metal, and two groups one after the other.
                let all = fasteners.count as f64 * slip;
                let between = b + plates.thickness.to_m();
                let couple = 0.5 * all * between * between;
                add([couple, couple, 2.0 * slip * fasteners.row_squares()]);
            } else {
                let axial = fasteners.axial_slip();
                let about = fasteners.squares((PUSH_ASIDE * b, PUSH_ASIDE * h));
                add([slip * fasteners.polar(), axial * about.0, axial * about.1]);
            }
        }
        let holds = turns.iter().all(|turn| *turn > 0.0 && turn.is_finite());
        holds.then_some([PRESSED, PRESSED, PRESSED, turns[0], turns[1], turns[2]])
    }
}

/// Which way a joint would give.
#[derive(Clone, Copy)]
enum Way {
    Opening,
    Sliding,
}

/// The one that is loaded most; `None` where one has no limit.
fn worst(uses: [Use; 3]) -> Option<Use> {
    let mut worst = uses[0];
    for used in uses {
        if used.ratio? > worst.ratio? {
            worst = used;
        }
    }
    Some(worst)
}
