//! What fingers do on the drawing: two of them make it larger or smaller and take it along, and two quick taps of one
//! ask for the whole harp.

use super::look::Look;
use super::{apart, between};

/// A place on the paper in pixels.
pub type Pixel = (f64, f64);

/// Fingers that stand nearer together than that count as so far apart.
const LEAST_APART_PX: f64 = 8.0;
/// Two taps are one double tap within so many milliseconds and pixels. Chosen for this project, no source.
const TAPS_WITHIN_MS: f64 = 350.0;
const TAPS_WITHIN_PX: f64 = 30.0;

/// A finger on the paper: the number that the browser gives it, and where it is.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Finger {
    id: i32,
    at: Pixel,
}

/// What was in sight when the second finger came down, and where both were.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Pinch {
    ids: [i32; 2],
    from: [Pixel; 2],
    began: Look,
}

/// All fingers on the paper.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fingers {
    down: Vec<Finger>,
    pinch: Option<Pinch>,
    /// When and where the last tap was.
    tapped: Option<(f64, Pixel)>,
}

impl Fingers {
    /// A finger comes down, with this in sight. How many are down now; with the second a pinch begins.
    pub fn down(&mut self, id: i32, at: Pixel, look: Look) -> usize {
        self.down.retain(|finger| finger.id != id);
        self.down.push(Finger { id, at });
        if let [one, other] = *self.down {
            self.tapped = None;
            let (ids, from) = ([one.id, other.id], [one.at, other.at]);
            self.pinch = Some(Pinch { ids, from, began: look });
        }
        self.down.len()
    }

    /// A finger moves: what is in sight then, while two pinch.
    pub fn moved(&mut self, id: i32, at: Pixel) -> Option<Look> {
        self.down.iter_mut().find(|finger| finger.id == id)?.at = at;
        let Pinch { ids, from, began } = self.pinch?;
        let at = |id: i32| self.down.iter().find(|finger| finger.id == id).map(|f| f.at);
        Some(pinched(began, from, [at(ids[0])?, at(ids[1])?]))
    }

    /// Whether two fingers pinch.
    pub const fn is_pinch(&self) -> bool {
        self.pinch.is_some()
    }

    /// A finger leaves. Where a pinch ends with it and the other finger stays, that one's place.
    pub fn up(&mut self, id: i32) -> Option<Pixel> {
        self.down.retain(|finger| finger.id != id);
        let pinch = self.pinch.filter(|pinch| pinch.ids.contains(&id))?;
        self.pinch = None;
        let stays = self.down.iter().find(|finger| pinch.ids.contains(&finger.id));
        stays.map(|finger| finger.at)
    }

    /// One finger tapped. Whether it was the second of two quick taps at one place.
    pub fn taps(&mut self, at: Pixel, ms: f64) -> bool {
        let twice = self.tapped.take().is_some_and(|(before, there)| {
            (0.0..=TAPS_WITHIN_MS).contains(&(ms - before)) && apart(at, there) <= TAPS_WITHIN_PX
        });
        if !twice {
            self.tapped = Some((ms, at));
        }
        twice
    }
}

/// What is in sight when two fingers went from some pixels to others: as much larger as they went apart, and what lay in
/// the middle between them lies there still.
pub fn pinched(began: Look, from: [Pixel; 2], to: [Pixel; 2]) -> Look {
    let far = |[one, other]: [Pixel; 2]| apart(one, other).max(LEAST_APART_PX);
    let (was, is) = (between(from[0], from[1]), between(to[0], to[1]));
    began.zoomed(far(to) / far(from), was).moved((is.0 - was.0, is.1 - was.1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::lofting::look::Extent;
    use crate::testing::assert_close;

    fn look() -> Look {
        let extent = Extent { left: -100.0, right: 500.0, bottom: 0.0, top: 1_400.0 };
        Look::fit(extent, (390.0, 560.0))
    }

    #[test]
    fn what_lies_between_two_fingers_goes_with_them_and_grows_as_they_part() {
        let from = [(100.0, 200.0), (160.0, 280.0)];
        let to = [(90.0, 240.0), (210.0, 400.0)];
        let after = pinched(look(), from, to);
        let middle = look().place((130.0, 240.0));
        let there = after.pixel(middle);
        assert_close(there.0, 150.0, 1e-9, "across");
        assert_close(there.1, 320.0, 1e-9, "down");
        assert_close(after.px_per_mm, 2.0 * look().px_per_mm, 1e-9, "twice as far apart");
        // What lay under each finger lies under it still, where both move in the line they stand on.
        let apart = pinched(look(), from, [(70.0, 160.0), (190.0, 320.0)]);
        for (from, to) in [(from[0], (70.0, 160.0)), (from[1], (190.0, 320.0))] {
            let now = apart.pixel(look().place(from));
            assert_close(now.0, to.0, 1e-9, "across");
            assert_close(now.1, to.1, 1e-9, "down");
        }
    }

    #[test]
    fn a_pinch_there_and_back_leaves_what_was() {
        let mut fingers = Fingers::default();
        assert_eq!(fingers.down(7, (50.0, 60.0), look()), 1);
        assert_eq!(fingers.moved(7, (52.0, 60.0)), None);
        assert_eq!(fingers.down(9, (150.0, 60.0), look()), 2);
        assert!(fingers.is_pinch());
        let near = fingers.moved(9, (250.0, 60.0)).expect("a look");
        assert!(near.px_per_mm > 1.9 * look().px_per_mm);
        let back = fingers.moved(9, (150.0, 60.0)).expect("a look");
        assert_close(back.px_per_mm, look().px_per_mm, 1e-12, "as before");
        assert_close(back.left_mm, look().left_mm, 1e-9, "as before");
        // The finger that stays goes on alone.
        assert_eq!(fingers.up(7), Some((150.0, 60.0)));
        assert!(!fingers.is_pinch());
        assert_eq!(fingers.moved(9, (160.0, 60.0)), None);
        assert_eq!(fingers.up(9), None);
        assert_eq!(fingers.moved(9, (1.0, 1.0)), None, "it has left");
    }

    #[test]
    fn fingers_that_stand_on_each_other_do_no_harm() {
        let same = [(80.0, 80.0), (80.0, 80.0)];
        let after = pinched(look(), same, [(60.0, 80.0), (100.0, 80.0)]);
        assert!(after.px_per_mm.is_finite() && after.left_mm.is_finite());
        assert_close(pinched(look(), same, same).top_mm, look().top_mm, 1e-9, "at rest");
    }

    #[test]
    fn two_quick_taps_at_one_place_are_a_double_tap() {
        let mut fingers = Fingers::default();
        assert!(!fingers.taps((10.0, 10.0), 1_000.0));
        assert!(fingers.taps((14.0, 12.0), 1_200.0));
        assert!(!fingers.taps((14.0, 12.0), 1_300.0), "a third begins anew");
        assert!(!fingers.taps((114.0, 12.0), 1_400.0), "elsewhere");
        assert!(!fingers.taps((114.0, 12.0), 2_400.0), "too late");
        // A second finger between two taps is no tap.
        fingers.down(1, (1.0, 1.0), look());
        fingers.down(2, (90.0, 1.0), look());
        assert!(!fingers.taps((114.0, 12.0), 2_500.0));
    }
}
