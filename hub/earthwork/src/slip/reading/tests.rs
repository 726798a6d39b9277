//! Tests: does the reading fit: four rules that ask once, each with its reason.

use super::*;
use crate::rod::tests::rod;
use crate::rod::{Rod, RodUnit};
use crate::slip::{Earlier, Learned, Neighbour};

fn ft(hundredths: i64) -> Length {
    Length::from_hundredths_of_a_foot(hundredths)
}

fn earlier(dev: i64) -> Earlier {
    Earlier {
        dev: ft(dev),
        same_set_up: true,
        accepted: false,
        said_high: dev > 0,
        ground_changed: false,
    }
}

/// A reading of `typed` on a target of 300.00 from HI 308.45 (invented, demo).
fn ask(
    typed: i64,
    earlier: Option<Earlier>,
    neighbours: &[Neighbour],
    rods: &[Rod],
) -> Option<Doubt> {
    doubt(&Candidate {
        elevation: ft(30_845 - typed),
        target: ft(30_000),
        typed: ft(typed),
        mode: Mode::Rod,
        earlier,
        neighbours,
        rod: &rod(RodUnit::FeetHundredths),
        rods,
        learned: &Learned::default(),
    })
}

fn neighbour(target: i64, distance: i64, machines_last: bool) -> Neighbour {
    Neighbour {
        mark: "N-06".into(),
        target: ft(target),
        distance: ft(distance),
        machines_last,
    }
}

/// Invented, demo: 7 ft 10 in typed as 7.10, after +0.90.
#[test]
fn ground_that_rises_is_asked_about_with_two_suggestions() {
    let inches = |rod: Option<&str>| Perhaps::FeetInches {
        rod: rod.map(str::to_owned),
        feet: 7,
        inches: 10,
    };
    let foot = Perhaps::Reading { value: ft(810) };
    let by = ft(45);
    assert_eq!(
        ask(710, Some(earlier(90)), &[], &[]),
        Some(Doubt::GroundRose {
            by,
            perhaps: vec![inches(None), foot.clone()]
        })
    );
    let mut inch_rod = rod(RodUnit::FeetInchesEighths);
    inch_rod.id = "B".into();
    assert_eq!(
        ask(710, Some(earlier(90)), &[], &[inch_rod]),
        Some(Doubt::GroundRose {
            by,
            perhaps: vec![foot, inches(Some("B"))]
        })
    );
}

#[test]
fn a_rise_is_not_asked_about_within_reading_error_or_where_soil_came() {
    assert_eq!(ask(750, Some(earlier(90)), &[], &[]), None, "rose by 0.05");
    assert!(
        ask(749, Some(earlier(90)), &[], &[]).is_some(),
        "rose by 0.06"
    );
    let sloughed = Earlier {
        ground_changed: true,
        ..earlier(90)
    };
    assert_eq!(ask(710, Some(sloughed), &[], &[]), None);
    let other_set_up = Earlier {
        same_set_up: false,
        ..earlier(90)
    };
    assert_eq!(ask(710, Some(other_set_up), &[], &[]), None);
}

/// Invented, demo: the laser was bumped by 0.13 and an accepted mark shows it.
#[test]
fn an_accepted_mark_that_rises_is_a_laser_check() {
    let accepted = Earlier {
        accepted: true,
        ..earlier(2)
    };
    assert_eq!(
        ask(830, Some(accepted), &[], &[]),
        Some(Doubt::RepeatOff { by: ft(13) })
    );
    // A lifted laser lowers it instead; half a tenth up and a tenth down are reading error or a scrape.
    assert_eq!(
        ask(856, Some(accepted), &[], &[]),
        Some(Doubt::RepeatOff { by: ft(-13) })
    );
    for typed in [838, 853] {
        assert_eq!(ask(typed, Some(accepted), &[], &[]), None, "{typed}");
    }
}

#[test]
fn low_after_high_on_the_receiver_asks_which_way() {
    let ask = |mode, said_high| {
        doubt(&Candidate {
            elevation: ft(29_980),
            target: ft(30_000),
            typed: Length::ZERO,
            mode,
            earlier: Some(Earlier {
                said_high,
                ..earlier(66)
            }),
            neighbours: &[],
            rod: &rod(RodUnit::FeetHundredths),
            rods: &[],
            learned: &Learned::default(),
        })
    };
    assert_eq!(ask(Mode::ReceiverLow, true), Some(Doubt::WhichWay));
    assert_eq!(ask(Mode::ReceiverLow, false), None);
    assert_eq!(ask(Mode::ReceiverHigh, true), None);
}

/// Invented, demo: N-05 was picked, the rod stood at N-06, a foot higher.
#[test]
fn a_first_reading_that_fits_the_last_mark_asks_which_mark() {
    let last = [neighbour(30_100, 200, true)];
    let asked = Some(Doubt::OtherMark {
        perhaps: "N-06".into(),
    });
    assert_eq!(ask(752, None, &last, &[]), asked);
    assert_eq!(ask(752, None, &[neighbour(30_100, 200, false)], &[]), None);
    assert_eq!(ask(752, None, &[neighbour(30_100, 1501, true)], &[]), None);
    assert_eq!(ask(725, None, &last, &[]), None, "0.20 from that target");
    assert_eq!(ask(795, None, &last, &[]), None, "only 0.50 from its own");
    assert_eq!(
        ask(752, Some(earlier(120)), &last, &[]),
        None,
        "not the first"
    );
}

#[test]
fn far_below_target_is_asked_about() {
    assert_eq!(ask(895, None, &[], &[]), None);
    let asked = ask(945, Some(earlier(20)), &[], &[]);
    let foot = Perhaps::Reading { value: ft(845) };
    assert!(
        matches!(&asked, Some(Doubt::FarBelow { by, perhaps }) if *by == ft(100) && perhaps.contains(&foot)),
        "{asked:?}"
    );
}
