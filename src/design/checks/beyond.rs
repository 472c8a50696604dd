//! Levers, discs, stretching, temperature and the harder pluck.

use super::Check;

pub(super) const CHECKS: &[Check] = &[];
