//! An item on a string, as its neighbours see it.

/// An item that may stand on a string.
#[derive(Clone, Copy, Debug)]
pub(super) struct Candidate {
    /// The first item that is alike.
    pub item: usize,
    /// The item that is taken, as the place of its cell in the row.
    pub cell: usize,
    pub log_pull: f64,
    /// What it costs by itself.
    pub own: f64,
    /// Pull over the limit of the total, or in newtons.
    pub pull: f64,
    pub family: Option<usize>,
    pub gauge_nm: Option<f64>,
    pub core_nm: Option<f64>,
}

impl Candidate {
    /// Families as a number, those without one before all others.
    pub fn rank(&self) -> usize {
        self.family.map_or(0, |family| family + 1)
    }

    /// The gauge as one that may stand above any when it is not known.
    pub fn above_nm(&self) -> f64 {
        self.gauge_nm.unwrap_or(f64::NEG_INFINITY)
    }

    /// The gauge as one that may stand below any when it is not known.
    pub fn below_nm(&self) -> f64 {
        self.gauge_nm.unwrap_or(f64::INFINITY)
    }

    /// The core as one that may stand above any where there is none, or it is not known.
    pub fn core_above_nm(&self) -> f64 {
        self.core_nm.unwrap_or(f64::NEG_INFINITY)
    }

    /// The core as one that may stand below any where there is none, or it is not known.
    pub fn core_below_nm(&self) -> f64 {
        self.core_nm.unwrap_or(f64::INFINITY)
    }

    /// Whether one of the same family is thinner, or has a thinner core.
    pub fn shrinks_to(&self, lower: &Self) -> bool {
        self.above_nm() > lower.below_nm() || self.core_above_nm() > lower.core_below_nm()
    }
}
