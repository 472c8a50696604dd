//! A new harp from what its maker wishes for.

use super::kind::Kind;
use super::{CompassError, OpenTuning, by_compass, frame, strings, without_discs};
use crate::design::document::{Design, MechanismKind, MechanismSpec, Units};
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::engine::findings::FindingKind;
use crate::engine::pitch::Note;
use crate::words::kinds as say;

/// What is wished for.
#[derive(Clone, Debug, PartialEq)]
pub struct Wish {
    pub kind: &'static Kind,
    /// The lowest and the highest string.
    pub low: Note,
    pub high: Note,
    pub tuning: &'static OpenTuning,
    pub mechanism: MechanismKind,
    /// The highest wound string; `None` lets the program suggest it.
    pub wound_from: Option<Note>,
    /// The units in which the page shows things.
    pub units: Units,
}

impl Wish {
    /// The harp without its lengths, strings and frame.
    ///
    /// # Errors
    ///
    /// When there is no such compass.
    pub fn bare(&self) -> Result<Design, CompassError> {
        let strings = by_compass(self.low, self.high, |letter| self.tuning.sign(letter))?;
        let mut design = Design {
            title: say::harp_of(&strings.len(), &self.kind.instrument),
            open_tuning: self.tuning.name.into(),
            mechanism: MechanismSpec { kind: self.mechanism, ..MechanismSpec::default() },
            units: self.units,
            strings,
            ..Design::default()
        };
        let bare = without_discs(design.strings.len(), self.mechanism);
        for string in design.strings.iter_mut().rev().take(bare) {
            string.mechanism = Some(MechanismKind::None);
        }
        let limits = &mut design.limits;
        (limits.least_stiffness_n_per_mm, limits.most_stiffness_n_per_mm) = self.kind.feel_limits;
        limits.partial_8_cents = self.kind.partial_8_cents;
        Ok(design)
    }

    /// The harp with lengths and strings. Its frame follows with [`build_frame`].
    ///
    /// # Errors
    ///
    /// When there is no such compass.
    pub fn strung(&self) -> Result<Design, CompassError> {
        let mut design = self.bare()?;
        strings::fill(&mut design, self.kind, self.wound_from);
        fit(&mut design);
        Ok(design)
    }
}

/// How many turns of the pins a string may need, against those that it needs now: other strings of the same tension need
/// as many, more or less. Chosen for this project, no source.
const SPARE_TURNS: f64 = 1.25;

/// Fits what depends on the strings: enough turns of the pins to bring each to pitch, and no lever or disc where it
/// would sit in the bridge pin.
fn fit(design: &mut Design) {
    let analysis = analyse(&resolve(design).harp);
    let turns = analysis.strings.iter().filter_map(|string| string.pin_turns.ok());
    let turns = (SPARE_TURNS * turns.fold(0.0, f64::max)).ceil();
    design.allowances.turns = design.allowances.turns.max(turns);
    for finding in &analysis.findings {
        if let FindingKind::TightRaise { .. } = finding.kind {
            design.strings[finding.index].mechanism = Some(MechanismKind::None);
        }
    }
}

/// Gives a new harp with strings a frame that bears them.
pub fn build_frame(design: &mut Design, kind: &Kind) {
    frame::build(design, kind);
}
