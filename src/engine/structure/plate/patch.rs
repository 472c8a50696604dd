//! How half of a board is cut into patches, and the cubics on them.
//!
//! A place is `(ξ, y)`: `ξ` goes from 0 at the middle of the board to 1 at its side, `y` along the board. On each patch
//! the rise is a product of cubics, given by rise, both slopes and twist at its corners.

/// Patches across half of the board, and along it.
const COUNT: (usize, usize) = (4, 24);
/// Corners in a line across.
const ROW: usize = COUNT.0 + 1;
/// Unknowns of the board, four at each corner: rise, slope in `ξ`, slope in `y` and the slope of the one in the other.
pub const FREEDOMS: usize = 4 * ROW * (COUNT.1 + 1);
/// How far from the diagonal the numbers of the matrix lie.
pub const BAND: usize = 4 * ROW + 7;

/// Gauss' four places between 0 and 1 with their weights: exact for polynomials of the seventh degree.
///
/// Source: M. Abramowitz and I. A. Stegun, *Handbook of Mathematical Functions*, table 25.4 (from memory).
pub const POINTS: [(f64, f64); 4] = [
    (0.069_431_844_202_973_71, 0.173_927_422_568_726_93),
    (0.330_009_478_207_571_87, 0.326_072_577_431_273_07),
    (0.669_990_521_792_428_1, 0.326_072_577_431_273_07),
    (0.930_568_155_797_026_3, 0.173_927_422_568_726_93),
];

/// Four unknowns with what each counts.
pub struct Sum {
    pub freedoms: [usize; 4],
    pub parts: [f64; 4],
}

/// Rise and slope at either end of a stretch make a cubic: what each counts at a share of it, and in the first and the
/// second derivative.
fn cubic(share: f64, size: f64) -> [[f64; 4]; 3] {
    let (t, d) = (share, size);
    let (tt, ttt) = (t * t, t * t * t);
    [
        [
            1.0 - 3.0 * tt + 2.0 * ttt,
            d * (t - 2.0 * tt + ttt),
            3.0 * tt - 2.0 * ttt,
            d * (ttt - tt),
        ],
        [6.0 * (tt - t) / d, 1.0 - 4.0 * t + 3.0 * tt, 6.0 * (t - tt) / d, 3.0 * tt - 2.0 * t],
        [
            (12.0 * t - 6.0) / (d * d),
            (6.0 * t - 4.0) / d,
            (6.0 - 12.0 * t) / (d * d),
            (6.0 * t - 2.0) / d,
        ],
    ]
}

/// The patch at a place between 0 and 1, and the share of it that lies before the place.
fn stretch(at: f64, count: usize) -> (usize, f64) {
    let mut which = 0;
    while which + 1 < count && at * count as f64 >= (which + 1) as f64 {
        which += 1;
    }
    (which, at * count as f64 - which as f64)
}

/// Half of a board that narrows.
pub struct Grid {
    pub length_m: f64,
    /// Half of the width at either end.
    pub half_m: (f64, f64),
}

impl Grid {
    /// Half of the width.
    pub fn half_at(&self, y: f64) -> f64 {
        self.half_m.0 + y * self.slant()
    }

    /// How much half of the width grows on the way.
    pub fn slant(&self) -> f64 {
        (self.half_m.1 - self.half_m.0) / self.length_m
    }

    fn size(&self) -> (f64, f64) {
        (1.0 / COUNT.0 as f64, self.length_m / COUNT.1 as f64)
    }

    /// Every place that counts in the whole, with its weight in `ξ` and `y`: the corner of the patch comes first.
    pub fn patches(&self) -> impl Iterator<Item = (usize, usize)> {
        (0..COUNT.1).flat_map(|along| (0..COUNT.0).map(move |across| (across, along)))
    }

    /// The places of a patch that count, and their weights.
    pub fn points(&self, patch: (usize, usize)) -> [((f64, f64), f64); 16] {
        let (dx, dy) = self.size();
        let mut all = [((0.0, 0.0), 0.0); 16];
        for (of, place) in all.iter_mut().enumerate() {
            let ((x, one), (y, other)) = (POINTS[of % 4], POINTS[of / 4]);
            *place =
                (((patch.0 as f64 + x) * dx, (patch.1 as f64 + y) * dy), one * other * dx * dy);
        }
        all
    }

    /// The sixteen unknowns of a patch.
    pub fn freedoms(patch: (usize, usize)) -> [usize; 16] {
        let mut all = [0; 16];
        for (of, freedom) in all.iter_mut().enumerate() {
            let (across, along) = (of / 4 % 2, of / 8);
            *freedom = 4 * ((patch.1 + along) * ROW + patch.0 + across) + of % 4;
        }
        all
    }

    /// What each unknown of a patch counts in the rise at a place, or in a derivative of it, in `ξ` and in `y`.
    pub fn parts(
        &self,
        patch: (usize, usize),
        (x, y): (f64, f64),
        (in_x, in_y): (usize, usize),
    ) -> [f64; 16] {
        let (dx, dy) = self.size();
        let over = cubic(x / dx - patch.0 as f64, dx)[in_x];
        let up = cubic(y / dy - patch.1 as f64, dy)[in_y];
        // The unknowns of a corner are rise, slope in ξ, slope in y, both.
        std::array::from_fn(|of| over[2 * (of / 4 % 2) + of % 2] * up[2 * (of / 8) + of / 2 % 2])
    }

    /// What each unknown of a patch counts in the bends `w_xx`, `w_yy` and `w_xy` at a place, and in the slopes `w_x` and
    /// `w_y`.
    ///
    /// With `x = ξ h(y)` and `r = h′/h`: `w_xx = w_ξξ/h²`, `w_xy = (w_ξy − r w_ξ − r ξ w_ξξ)/h`,
    /// `w_yy = w_,yy − 2 r ξ w_ξy + 2 r² ξ w_ξ + r² ξ² w_ξξ`, `w_x = w_ξ/h` and `w_y = w_,y − r ξ w_ξ`.
    pub fn shape(&self, patch: (usize, usize), (x, y): (f64, f64)) -> [([f64; 3], [f64; 2]); 16] {
        let (dx, dy) = self.size();
        let (over, up) = (cubic(x / dx - patch.0 as f64, dx), cubic(y / dy - patch.1 as f64, dy));
        let half = self.half_at(y);
        let r = self.slant() / half;
        let mut all = [([0.0; 3], [0.0; 2]); 16];
        for (of, (bends, slopes)) in all.iter_mut().enumerate() {
            // The unknowns of a corner are rise, slope in ξ, slope in y, both.
            let (one, other) = (2 * (of / 4 % 2) + of % 2, 2 * (of / 8) + of / 2 % 2);
            let part = |in_x: usize, in_y: usize| over[in_x][one] * up[in_y][other];
            let (slope, bent, twist) = (part(1, 0), part(2, 0), part(1, 1));
            *bends = [
                bent / (half * half),
                part(0, 2) + r * x * (2.0 * r * slope - 2.0 * twist + r * x * bent),
                (twist - r * slope - r * x * bent) / half,
            ];
            *slopes = [slope / half, part(0, 1) - r * x * slope];
        }
        all
    }

    /// What each unknown of a patch counts in the bends alone.
    pub fn bends(&self, patch: (usize, usize), place: (f64, f64)) -> [[f64; 3]; 16] {
        self.shape(patch, place).map(|(bends, _)| bends)
    }

    /// What each unknown of a patch counts in the rise at a place.
    #[cfg(test)]
    pub fn rises(&self, patch: (usize, usize), place: (f64, f64)) -> [f64; 16] {
        self.parts(patch, place, (0, 0))
    }

    /// The patch at a place, `y` along the board and `x` across its half.
    pub fn beside(&self, y: f64, x: f64) -> (usize, usize) {
        (stretch(x, COUNT.0).0, stretch(y / self.length_m, COUNT.1).0)
    }

    /// How much of half of the width a patch is.
    pub fn step(&self) -> f64 {
        self.size().0
    }

    /// The unknowns of a line along the board: those of two corners, a pair of each.
    fn along_line(&self, y: f64, corner: usize, pair: [usize; 2], derivative: usize) -> Sum {
        let (which, share) = stretch(y / self.length_m, COUNT.1);
        let first = 4 * (which * ROW + corner);
        let next = first + 4 * ROW;
        Sum {
            freedoms: [first + pair[0], first + pair[1], next + pair[0], next + pair[1]],
            parts: cubic(share, self.size().1)[derivative],
        }
    }

    /// The rise of the middle line, or a derivative of it along the board.
    pub fn on_middle(&self, y: f64, derivative: usize) -> Sum {
        self.along_line(y, 0, [0, 2], derivative)
    }

    /// The slope in `ξ` at the side.
    pub fn on_side(&self, y: f64) -> Sum {
        self.along_line(y, COUNT.0, [1, 3], 0)
    }

    /// What bends along the side, there.
    pub fn side_bends(&self, y: f64) -> Sum {
        self.along_line(y, COUNT.0, [0, 2], 2)
    }

    /// Places in each stretch along the board where a bend along it comes out best, in their order.
    pub fn best(&self) -> impl Iterator<Item = f64> {
        let size = self.size().1;
        // Gauss' two places between 0 and 1.
        let places = [0.211_324_865, 0.788_675_135];
        (0..2 * COUNT.1).map(move |of| ((of / 2) as f64 + places[of % 2]) * size)
    }

    /// The same in each stretch across half of it, from 0 to 1.
    pub fn best_across(&self) -> impl Iterator<Item = f64> {
        let places = [0.211_324_865, 0.788_675_135];
        (0..2 * COUNT.0).map(move |of| ((of / 2) as f64 + places[of % 2]) / COUNT.0 as f64)
    }

    /// The slope in `y` at an end of the board.
    pub fn on_end(&self, x: f64, upper: bool) -> Sum {
        let (which, share) = stretch(x, COUNT.0);
        let first = 4 * (if upper { COUNT.1 * ROW } else { 0 } + which);
        Sum {
            freedoms: [first + 2, first + 3, first + 6, first + 7],
            parts: cubic(share, self.size().0)[0],
        }
    }

    /// Places along the board that count, as shares of it, with their weights as lengths.
    pub fn along(&self) -> impl Iterator<Item = (f64, f64)> {
        let size = self.size().1;
        let places = move |of: usize| {
            let (point, weight) = POINTS[of % 4];
            (((of / 4) as f64 + point) * size, weight * size)
        };
        (0..4 * COUNT.1).map(places)
    }

    /// Places across half of the board, from 0 to 1, with their weights.
    pub fn across(&self) -> impl Iterator<Item = (f64, f64)> {
        let size = self.size().0;
        let places = move |of: usize| {
            let (point, weight) = POINTS[of % 4];
            (((of / 4) as f64 + point) * size, weight * size)
        };
        (0..4 * COUNT.0).map(places)
    }

    /// The unknowns that are 0: rise and slope along the edges, and what would make both halves differ.
    pub fn held() -> impl Iterator<Item = usize> {
        Self::held_by(|of| of % 2 == 1)
    }

    /// The same where one half rises as far as the other sinks.
    pub fn held_odd() -> impl Iterator<Item = usize> {
        Self::held_by(|of| of % 2 == 0)
    }

    fn held_by(in_middle: fn(usize) -> bool) -> impl Iterator<Item = usize> {
        let is_held = move |freedom: &usize| {
            let (of, at_middle, at_side, at_end) = place_of(*freedom);
            (at_middle && in_middle(of)) || (at_side && of % 2 == 0) || (at_end && of < 2)
        };
        (0..FREEDOMS).filter(is_held)
    }

    /// The unknowns of the stress function that are 0: at sides and ends that nothing pulls at all of it, at those that
    /// nothing pulls square to them its value. Where neither holds it, two places do, as a plane more or less is no stress.
    pub fn unpulled(sides: Pulled, ends: Pulled) -> impl Iterator<Item = usize> {
        let loose = matches!((sides, ends), (Pulled::AnyWay, Pulled::AnyWay));
        let is_held = move |freedom: &usize| {
            let (of, at_middle, at_side, at_end) = place_of(*freedom);
            let held = |by: Pulled, value: bool| match by {
                Pulled::No => true,
                Pulled::Along => value,
                Pulled::AnyWay => false,
            };
            (at_middle && of % 2 == 1)
                || (at_side && held(sides, of % 2 == 0))
                || (at_end && held(ends, of < 2))
                || (loose && at_middle && at_end && of == 0)
        };
        (0..FREEDOMS).filter(is_held)
    }
}

/// How an edge pulls at the board in its plane.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pulled {
    /// Not at all.
    No,
    /// Along the edge alone.
    Along,
    /// Along the edge and square to it.
    AnyWay,
}

/// Which unknown of its corner one is, and whether it stands at the middle, at the side and at an end.
fn place_of(freedom: usize) -> (usize, bool, bool, bool) {
    let (corner, of) = (freedom / 4, freedom % 4);
    let (across, along) = (corner % ROW, corner / ROW);
    (of, across == 0, across == COUNT.0, along == 0 || along == COUNT.1)
}
