//! Natural cubic splines.

/// A natural cubic spline: of all smooth curves through its points the one that bends least, with no bending at
/// its ends, where it goes on straight.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Spline {
    pub(super) knots: Vec<f64>,
    pub(super) values: Vec<f64>,
    /// Second derivative at each knot.
    seconds: Vec<f64>,
}

impl Spline {
    /// Through values at knots that rise; `None` below two.
    pub(super) fn new(knots: Vec<f64>, values: Vec<f64>) -> Option<Self> {
        let rises = knots.windows(2).all(|pair| pair[0] < pair[1]);
        (knots.len() >= 2 && knots.len() == values.len() && rises).then(|| {
            let seconds = seconds(&knots, &values);
            Self { knots, values, seconds }
        })
    }

    pub(super) fn knots(&self) -> &[f64] {
        &self.knots
    }

    /// The index of the piece that holds a place, and the place from its start as a share.
    fn piece(&self, at: f64) -> (usize, f64) {
        let last = self.knots.len() - 2;
        let place = self.knots.partition_point(|knot| *knot <= at).saturating_sub(1).min(last);
        let (from, to) = (self.knots[place], self.knots[place + 1]);
        (place, (at - from) / (to - from))
    }

    pub(super) fn at(&self, at: f64) -> f64 {
        let inside = at.clamp(self.knots[0], self.knots[self.knots.len() - 1]);
        let (place, share) = self.piece(inside);
        let step = self.knots[place + 1] - self.knots[place];
        let bend = |share: f64, second: f64| (share.powi(3) - share) * second * step * step / 6.0;
        let value = (1.0 - share) * self.values[place]
            + share * self.values[place + 1]
            + bend(1.0 - share, self.seconds[place])
            + bend(share, self.seconds[place + 1]);
        if at == inside { value } else { value + (at - inside) * self.slope(inside) }
    }

    pub(super) fn slope(&self, at: f64) -> f64 {
        let inside = at.clamp(self.knots[0], self.knots[self.knots.len() - 1]);
        let (place, share) = self.piece(inside);
        let step = self.knots[place + 1] - self.knots[place];
        let bend = |share: f64, second: f64| (3.0 * share * share - 1.0) * second * step / 6.0;
        (self.values[place + 1] - self.values[place]) / step
            - bend(1.0 - share, self.seconds[place])
            + bend(share, self.seconds[place + 1])
    }

    pub(super) fn second(&self, at: f64) -> f64 {
        if at < self.knots[0] || at > self.knots[self.knots.len() - 1] {
            return 0.0;
        }
        let (place, share) = self.piece(at);
        (1.0 - share) * self.seconds[place] + share * self.seconds[place + 1]
    }
}

/// Second derivatives at the knots, by elimination in the band of three.
fn seconds(knots: &[f64], values: &[f64]) -> Vec<f64> {
    let count = knots.len();
    let (mut over, mut right) = (vec![0.0; count], vec![0.0; count]);
    for here in 1..count - 1 {
        let (before, after) = (knots[here] - knots[here - 1], knots[here + 1] - knots[here]);
        let turn =
            (values[here + 1] - values[here]) / after - (values[here] - values[here - 1]) / before;
        let pivot = 2.0 * (before + after) - before * over[here - 1];
        over[here] = after / pivot;
        right[here] = (6.0 * turn - before * right[here - 1]) / pivot;
    }
    right[count - 1] = 0.0;
    for here in (0..count - 1).rev() {
        right[here] -= over[here] * right[here + 1];
    }
    right
}
