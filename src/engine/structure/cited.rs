//! Sources that are named as they were published, in every language.

pub(super) const EUROCODE: &str = "EN 1995-1-1 (Eurocode 5)";
pub(super) const NATIONAL: &str = "National Design Specification, table 2.3.2";
pub(super) const PLYWOOD: &str =
    "Handbook of Finnish Plywood, Finnish Forest Industries Federation, 2002";
