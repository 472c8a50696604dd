//! Time under load: wood breaks under a lasting load that it bears for a minute, and goes on giving.

use super::sourced;
use crate::engine::material::{Sourced, Standing};

const MADISON_FLOOR: f64 = 18.3;
const MADISON_SLOPE: f64 = 108.4;
const MADISON_POWER: f64 = -0.0464;

const EUROPEAN: &str = super::cited::EUROCODE;

/// Seconds in a year of 365.25 days.
pub const YEAR_S: f64 = 365.25 * 24.0 * 3600.0;

/// Share of the strength of a short test that wood keeps under a load of some seconds, by the Madison curve:
/// `SL = 18.3 + 108.4 t^(−0.0464)` percent.
///
/// It was fitted to bending of small clear pieces. `None` where the time is not above 0.
///
/// # Source
///
/// L. Wood, 1951, as quoted in *Forests* 12 (2021) 1148 (second-hand).
///
/// # Example
///
/// After one second the power is 1.
///
/// ```
/// use stringloft::engine::structure::duration::madison_ratio;
///
/// assert!((madison_ratio(1.0).expect("a time above 0") - 1.267).abs() < 1e-12);
/// ```
pub fn madison_ratio(seconds: f64) -> Option<f64> {
    let percent = MADISON_FLOOR + MADISON_SLOPE * lasting(seconds)?.powf(MADISON_POWER);
    Some(percent / 100.0)
}

/// How many seconds wood bears a share of its short-time strength, by the Madison curve: the inverse of
/// [`madison_ratio`].
///
/// Endless at 18.3 % and below, where the curve has its floor; that is the end of the curve and no promise.
/// `None` where the share is not a number above 0.
pub fn madison_seconds(ratio: f64) -> Option<f64> {
    let above = 100.0 * lasting(ratio)? - MADISON_FLOOR;
    if above <= 0.0 {
        return Some(f64::INFINITY);
    }
    Some((above / MADISON_SLOPE).powf(1.0 / MADISON_POWER))
}

/// Share of the strength of a short test by the older line of Wood: `SL = 90.4 − 6.3 lg t` percent, `t` in
/// hours.
///
/// # Source
///
/// L. Wood, 1947, as quoted in *Forests* 12 (2021) 1148 (second-hand).
///
/// # Example
///
/// After an hour the logarithm is 0.
///
/// ```
/// use stringloft::engine::structure::duration::wood_1947_ratio;
///
/// assert!((wood_1947_ratio(3600.0).expect("a time above 0") - 0.904).abs() < 1e-12);
/// ```
pub fn wood_1947_ratio(seconds: f64) -> Option<f64> {
    Some((90.4 - 6.3 * (lasting(seconds)? / 3600.0).log10()) / 100.0)
}

/// A finite number above 0.
fn lasting(number: f64) -> Option<f64> {
    Some(number).filter(|number| *number > 0.0 && number.is_finite())
}

/// For how long a load acts, as American practice counts it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadTime {
    /// Always, as the strings of a harp at pitch.
    Permanent,
    /// Ten years in all: what allowable stresses are made for.
    TenYears,
    /// Two months.
    TwoMonths,
    /// Seven days.
    SevenDays,
    /// Ten minutes.
    TenMinutes,
}

impl LoadTime {
    /// Factor on an allowable stress, `C_D`.
    ///
    /// # Source
    ///
    /// *National Design Specification for Wood Construction*, table 2.3.2 (from memory).
    pub fn factor(self) -> Sourced<f64> {
        let factor = match self {
            Self::Permanent => 0.9,
            Self::TenYears => 1.0,
            Self::TwoMonths => 1.15,
            Self::SevenDays => 1.25,
            Self::TenMinutes => 1.6,
        };
        sourced(factor, super::cited::NATIONAL, Standing::FromMemory)
    }
}

/// How damp the wood gets, as European practice counts it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Service {
    /// Heated rooms.
    Dry,
    /// Under a roof.
    Covered,
    /// In the open.
    Wet,
}

/// What the part is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Timber {
    /// Solid wood.
    Solid,
    /// Plywood.
    Plywood,
}

/// By how much of its first deflection a part gives in addition over the years, `k_def`: the end is
/// `u (1 + k_def)`.
///
/// Plywood has a figure for dry rooms only.
///
/// # Source
///
/// EN 1995-1-1, table 3.2; solid wood as quoted (second-hand), plywood from memory.
pub fn creep_ratio(timber: Timber, service: Service) -> Option<Sourced<f64>> {
    let solid = |ratio| {
        Some(sourced(ratio, crate::words::woods::FROM_QUOTED.english(), Standing::SecondHand))
    };
    match (timber, service) {
        (Timber::Solid, Service::Dry) => solid(0.6),
        (Timber::Solid, Service::Covered) => solid(0.8),
        (Timber::Solid, Service::Wet) => solid(2.0),
        (Timber::Plywood, Service::Dry) => Some(sourced(0.8, EUROPEAN, Standing::FromMemory)),
        (Timber::Plywood, _) => None,
    }
}

/// For how many years the creep factors of the standard are made. Source: EN 1990, design working life of buildings
/// (from memory).
const WHOLE_YEARS: f64 = 50.0;
/// What a piece of wood gives after some years in addition to its first movement, over that movement:
/// `k (t/50)^m`.
///
/// # Source
///
/// EN 1995-1-1 for `k` at the end (see [`creep_ratio`]); a power law on the
/// way there.
///
/// # Example
///
/// After fifty years it is the whole of it, whatever the power.
///
/// ```
/// use stringloft::engine::structure::duration::crept;
///
/// assert!((crept(0.6, 50.0, 0.2) - 0.6).abs() < 1e-15);
/// assert!((crept(0.6, 50.0 / 32.0, 0.2) - 0.3).abs() < 1e-15);
/// ```
pub fn crept(whole_ratio: f64, years: f64, power: f64) -> f64 {
    whole_ratio * (years / WHOLE_YEARS).powf(power)
}

/// Share of a characteristic strength that counts under a permanent load in dry rooms, `k_mod`.
pub fn permanent_ratio() -> Sourced<f64> {
    sourced(0.60, EUROPEAN, Standing::FromMemory)
}

/// Share of what may be allowed in dry rooms that may be allowed elsewhere: `k_mod` of a permanent load there over that in
/// dry rooms, which is 0.60 under a roof too, and 0.50 in the open, for solid wood, laminates and plywood alike.
///
/// # Source
///
/// EN 1995-1-1, table 3.1 (from memory).
pub fn damp_ratio(service: Service) -> Sourced<f64> {
    let there = match service {
        Service::Dry | Service::Covered => 0.60,
        Service::Wet => 0.50,
    };
    sourced(there / permanent_ratio().value, EUROPEAN, Standing::FromMemory)
}

/// By what a characteristic strength is divided, `γ_M`.
pub fn material_divisor(timber: Timber) -> Sourced<f64> {
    let divisor = match timber {
        Timber::Solid => 1.3,
        Timber::Plywood => 1.2,
    };
    sourced(divisor, EUROPEAN, Standing::FromMemory)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn time_and_share_undo_each_other() {
        for seconds in [1.0, 300.0, 3600.0, 86_400.0, YEAR_S, 50.0 * YEAR_S] {
            let ratio = madison_ratio(seconds).unwrap();
            let back = madison_seconds(ratio).unwrap();
            assert_close(back, seconds, 1e-11, format_args!("{seconds} s"));
        }
        assert_eq!(madison_seconds(0.18), Some(f64::INFINITY));
    }

    #[test]
    fn no_time_has_no_strength() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(madison_ratio(bad), None);
            assert_eq!(wood_1947_ratio(bad), None);
            assert_eq!(madison_seconds(bad), None);
        }
    }

    #[test]
    fn the_longer_the_load_the_less_is_allowed() {
        use LoadTime::{Permanent, SevenDays, TenMinutes, TenYears, TwoMonths};
        let factors = [Permanent, TenYears, TwoMonths, SevenDays, TenMinutes].map(|t| t.factor());
        assert!(factors.is_sorted_by(|short, long| short.value < long.value));
        assert_eq!(creep_ratio(Timber::Plywood, Service::Wet), None);
    }
}
