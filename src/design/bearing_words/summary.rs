//! The frame in a line, and in a few words.

use super::{Standing, part_name, percents};
use crate::design::letters::{capital, small};
use crate::engine::bearing::{Bearing, FrameBearing, Part};

/// The frame in a line for a summary: `Neck 65 to 87 %, pillar 29 %, …`; the reason where there is none.
pub fn summary(bearing: &Bearing) -> String {
    match &bearing.frame {
        Err(error) => capital(&format!("no loads: {error}.")),
        Ok(frame) => {
            let joints =
                [Part::Shoulder, Part::Head].into_iter().filter_map(|part| frame.used(part));
            let joints = joints.map(|used| used.1).reduce(f64::max).map(|most| (most, most));
            let parts = [
                ("neck", frame.used(Part::Neck)),
                ("pillar", frame.used(Part::Pillar)),
                ("joints", joints),
            ];
            let (mut shares, mut fallen) = (Vec::new(), String::new());
            for (name, used) in parts {
                match used {
                    Some((least, most)) if most.is_infinite() => {
                        let verb = match (least.is_infinite(), name) {
                            (false, _) => "may give way",
                            (_, "joints") => "give way",
                            _ => "gives way",
                        };
                        fallen += &format!(" By this estimate the {name} {verb}.");
                    }
                    Some(used) => shares.push(format!("{name} {}", percents(used))),
                    None => shares.push(format!("{name} not judged")),
                }
            }
            let over = frame.most_used().map(|(_, ratio)| Standing::of(Some(ratio)));
            let word = match over {
                _ if !fallen.is_empty() => &*fallen,
                Some(Standing::Over) => " Over what may be allowed.",
                Some(Standing::Between) => " It may be over what may be allowed.",
                _ => "",
            };
            if shares.is_empty() {
                return fallen.trim_start().to_owned();
            }
            let text = capital(&shares.join(", "));
            format!("{text} of what may be allowed, estimated.{word}")
        }
    }
}

/// The frame in a few words: `at most 81 %, estimated`; nothing where there is none.
pub fn in_short(bearing: &Bearing) -> String {
    let most = bearing.frame.as_ref().ok().and_then(FrameBearing::most_used);
    most.map_or_else(String::new, |(part, (least, most))| {
        let name = || small(part_name(part));
        match Standing::of(Some((least, most))) {
            _ if least.is_infinite() => format!("{} gives way, estimated", name()),
            _ if most.is_infinite() => format!("{} may give way, estimated", name()),
            Standing::Over => format!("over, at most {}, estimated", percents((most, most))),
            Standing::Between => {
                format!("may be over, at most {}, estimated", percents((most, most)))
            }
            _ => format!("at most {}, estimated", percents((most, most))),
        }
    })
}
