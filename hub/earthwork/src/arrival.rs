//! When is it at grade, when must somebody look again, and who is needed next.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::Length;
use crate::uncertainty::normal;

/// How a bottom wanders about its pace, in feet per root of a minute, until three readings tell (invented; a site's
/// own readings replace it).
const USUAL_WANDER: f64 = 0.03;
/// A look comes late once in twenty: the 95th percentile of a normal deviate.
const NINETEEN_IN_TWENTY: f64 = 1.644_853_627;
/// No look is put off longer, in minutes (common practice).
const LONGEST_LOOK: f64 = 60.0;
/// Up to so many machines every order is tried.
const TRIED: usize = 6;

/// A reading of a bottom that is being dug.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dug {
    /// Minutes of work since some moment; stops do not count.
    pub work_minutes: f64,
    /// There − target: positive is high.
    pub dev: Length,
}

/// How fast a bottom goes down.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Pace {
    /// Feet a minute, the median of all pairs of readings.
    pub ft_per_min: f64,
    /// The 20th percentile of the pairs.
    pub slow: f64,
    /// The 80th percentile of the pairs.
    pub fast: f64,
    /// How it wanders, in feet per root of a minute.
    pub wander: f64,
}

/// The pace from readings in any order; none when fewer than two lie apart in time, or the bottom does not go down.
///
/// Source: the Theil–Sen slope, the median of the slopes of all pairs (Sen 1968, "Estimates of the regression
/// coefficient based on Kendall's tau").
pub fn pace(readings: &[Dug]) -> Option<Pace> {
    let mut slopes = Vec::new();
    for (number, one) in readings.iter().enumerate() {
        for other in &readings[number + 1..] {
            let minutes = other.work_minutes - one.work_minutes;
            if minutes.abs() > 1e-9 {
                slopes.push((one.dev - other.dev).feet() / minutes);
            }
        }
    }
    slopes.sort_by(f64::total_cmp);
    let ft_per_min = percentile(&slopes, 0.5)?;
    if ft_per_min <= 0.0 {
        return None;
    }
    Some(Pace {
        ft_per_min,
        slow: percentile(&slopes, 0.2)?,
        fast: percentile(&slopes, 0.8)?,
        wander: wander(readings, ft_per_min),
    })
}

/// A percentile of sorted values, between neighbours in proportion.
fn percentile(sorted: &[f64], part: f64) -> Option<f64> {
    let last = sorted.len().checked_sub(1)?;
    let place = part * last as f64;
    let below = usize::try_from(crate::length::whole(place.floor())).ok()?;
    let above = (below + 1).min(last);
    Some(sorted[below] + (sorted[above] - sorted[below]) * (place - place.floor()))
}

/// The scatter of steps about the pace, each by the root of its minutes; the usual one below three readings.
fn wander(readings: &[Dug], ft_per_min: f64) -> f64 {
    let mut ordered = readings.to_vec();
    ordered.sort_by(|one, other| one.work_minutes.total_cmp(&other.work_minutes));
    let squares: Vec<f64> = ordered
        .windows(2)
        .filter_map(|pair| {
            let minutes = pair[1].work_minutes - pair[0].work_minutes;
            let step = (pair[0].dev - pair[1].dev).feet() - ft_per_min * minutes;
            (minutes > 1e-9).then(|| step * step / minutes)
        })
        .collect();
    if squares.len() < 2 {
        return USUAL_WANDER;
    }
    (squares.iter().sum::<f64>() / (squares.len() - 1) as f64).sqrt()
}

/// Minutes of work until grade, from the last reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Arrival {
    /// At the median pace.
    pub minutes: f64,
    /// At the fast one.
    pub soonest: f64,
    /// At the slow one; none when the slow one goes nowhere.
    pub latest: Option<f64>,
    /// When somebody must look again: at grade at the fast pace, or sooner when one in twenty would by then be too
    /// deep.
    pub look: f64,
}

/// When a bottom arrives: `left` is what remains to where it is aimed, `room` what remains to the low limit.
/// None when nothing is left.
pub fn arrival(pace: &Pace, left: Length, room: Length) -> Option<Arrival> {
    if left <= Length::ZERO {
        return None;
    }
    let at = |rate: f64| left.feet() / rate;
    let soonest = at(pace.fast.max(pace.ft_per_min));
    Some(Arrival {
        minutes: at(pace.ft_per_min),
        soonest,
        latest: (pace.slow > 0.0).then(|| at(pace.slow)),
        look: soonest.min(look_minutes(pace, room)),
    })
}

/// Minutes until one in twenty would be deeper than `room` below now: b·t + 1.645·w·√t = room.
///
/// Source: a path of normal steps (mathematics: a square in √t).
pub fn look_minutes(pace: &Pace, room: Length) -> f64 {
    let (b, spread, room) = (
        pace.ft_per_min,
        NINETEEN_IN_TWENTY * pace.wander,
        room.feet().max(0.0),
    );
    let root = (-spread + (spread * spread + 4.0 * b * room).sqrt()) / (2.0 * b);
    (root * root).min(LONGEST_LOOK)
}

/// The chance that a bottom is deeper than `room` below now after so many minutes.
pub fn too_deep_chance(pace: &Pace, room: Length, minutes: f64) -> f64 {
    let spread = pace.wander * minutes.max(0.0).sqrt();
    if spread <= 0.0 {
        return if pace.ft_per_min * minutes > room.feet() {
            1.0
        } else {
            0.0
        };
    }
    normal((pace.ft_per_min * minutes - room.feet()) / spread)
}

/// A machine that may need somebody.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Visit {
    /// What a minute of its waiting costs; 0 while it digs.
    pub idle_per_minute: f64,
    /// Minutes to walk there and to look.
    pub minutes: f64,
    /// Its pace and the room to the low limit, when it is known.
    pub digging: Option<(Pace, Length)>,
    /// What a spot dug too deep costs.
    pub patch_cost: f64,
}

/// The order of visits that costs least, as numbers counted from 0; as given when orders cost alike, so that the
/// caller puts who has waited longest first.
///
/// The cost of an order is the sum of what each machine waits until it is reached, and of what it may dig too deep
/// until then. Up to six machines every order is tried; beyond, they go by cost a minute over minutes (W. E. Smith
/// 1956, "Various optimizers for single-stage production").
pub fn cheapest_order(visits: &[Visit]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..visits.len()).collect();
    if visits.len() > TRIED {
        let worth = |one: &Visit| one.idle_per_minute / one.minutes.max(0.1);
        order.sort_by(|one, other| worth(&visits[*other]).total_cmp(&worth(&visits[*one])));
        return order;
    }
    let mut best = (order_cost(visits, &order), order.clone());
    try_all(visits, &mut order, 0, &mut best);
    best.1
}

/// What an order of visits costs.
pub fn order_cost(visits: &[Visit], order: &[usize]) -> f64 {
    let (mut clock, mut cost) = (0.0, 0.0);
    for number in order {
        let visit = &visits[*number];
        clock += visit.minutes;
        cost += visit.idle_per_minute * clock;
        if let Some((pace, room)) = &visit.digging {
            cost += visit.patch_cost * too_deep_chance(pace, *room, clock);
        }
    }
    cost
}

/// Tries every order of what comes from `fixed` on, and keeps the first of the cheapest.
fn try_all(visits: &[Visit], order: &mut Vec<usize>, fixed: usize, best: &mut (f64, Vec<usize>)) {
    if fixed == order.len() {
        let cost = order_cost(visits, order);
        if cost < best.0 - 1e-9 {
            *best = (cost, order.clone());
        }
        return;
    }
    for number in fixed..order.len() {
        order[fixed..=number].rotate_right(1);
        try_all(visits, order, fixed + 1, best);
        order[fixed..=number].rotate_left(1);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn dug(work_minutes: f64, hundredths: i64) -> Dug {
        Dug {
            work_minutes,
            dev: ft(hundredths),
        }
    }

    /// Derived: +1.35 and nine minutes later +0.55 is 0.0889 ft/min: 6.2 min for what is left.
    #[test]
    fn two_readings_tell_when() {
        let pace = pace(&[dug(0.0, 135), dug(9.0, 55)]).unwrap();
        assert!((pace.ft_per_min - 0.8 / 9.0).abs() < 1e-12);
        let arrival = arrival(&pace, ft(55), ft(75)).unwrap();
        assert!((arrival.minutes - 6.1875).abs() < 1e-9, "{arrival:?}");
        assert!(arrival.look <= arrival.soonest);
        assert_eq!(super::arrival(&pace, ft(0), ft(20)), None);
    }

    #[test]
    fn what_does_not_go_down_has_no_arrival() {
        assert_eq!(pace(&[dug(0.0, 50)]), None);
        assert_eq!(pace(&[dug(0.0, 50), dug(0.0, 40)]), None);
        assert_eq!(pace(&[dug(0.0, 50), dug(5.0, 50)]), None);
    }

    #[test]
    fn the_dear_machine_goes_first_unless_the_other_is_about_to_go_too_deep() {
        let waiting = |per_minute| Visit {
            idle_per_minute: per_minute,
            minutes: 3.0,
            digging: None,
            patch_cost: 70.0,
        };
        assert_eq!(cheapest_order(&[waiting(2.4), waiting(3.2)]), [1, 0]);
        assert_eq!(cheapest_order(&[waiting(3.2), waiting(3.2)]), [0, 1]);
        let deep = Visit {
            digging: pace(&[dug(0.0, 100), dug(9.0, 10)]).map(|pace| (pace, ft(30))),
            ..waiting(0.0)
        };
        assert_eq!(cheapest_order(&[waiting(3.2), deep]), [1, 0]);
        let many = vec![
            waiting(1.0),
            waiting(2.0),
            waiting(3.0),
            waiting(4.0),
            waiting(5.0),
            waiting(6.0),
            waiting(7.0),
        ];
        assert_eq!(cheapest_order(&many), [6, 5, 4, 3, 2, 1, 0]);
    }

    proptest! {
        /// No order is cheaper than the one that is given.
        #[test]
        fn nothing_is_cheaper(rates in prop::collection::vec((0.0..5.0_f64, 1.0..9.0_f64), 1..5), swaps in prop::collection::vec((0_usize..5, 0_usize..5), 6)) {
            let visits: Vec<Visit> = rates.iter().map(|(idle_per_minute, minutes)| Visit {
                idle_per_minute: *idle_per_minute, minutes: *minutes, digging: None, patch_cost: 0.0,
            }).collect();
            let best = cheapest_order(&visits);
            let mut other = best.clone();
            for (one, two) in swaps {
                other.swap(one % visits.len(), two % visits.len());
            }
            prop_assert!(order_cost(&visits, &best) <= order_cost(&visits, &other) + 1e-9);
        }

        /// Slower looks later, and more room too; at the look the chance is one in twenty.
        #[test]
        fn a_look_leaves_one_in_twenty(rate in 0.02..0.2_f64, room in 5_i64..100) {
            let pace = Pace { ft_per_min: rate, slow: rate, fast: rate, wander: 0.03 };
            let minutes = look_minutes(&pace, ft(room));
            if minutes < 60.0 {
                prop_assert!((too_deep_chance(&pace, ft(room), minutes) - 0.05).abs() < 1e-6);
            }
            prop_assert!(look_minutes(&pace, ft(room + 5)) >= minutes);
        }
    }
}
