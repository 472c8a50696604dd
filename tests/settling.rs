//! Plans of the samples, logs against `SciPy`, and strings weighed by ear against a script of its own.
//!
//! `settling/scripts/logs.py` wrote `settling/fitted.json`; this test only reads it.
#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

#[path = "settling/by_ear.rs"]
mod by_ear;
#[path = "settling/logs.rs"]
mod logs;
#[path = "settling/plans.rs"]
mod plans;
