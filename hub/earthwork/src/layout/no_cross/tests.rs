//! Tests: how far from a line that must not be crossed: every doubt is counted against the crew.

use super::*;
use proptest::prelude::*;

fn at(x: i64, y: i64) -> Point {
    Point {
        x: Length::from_hundredths_of_a_foot(x),
        y: Length::from_hundredths_of_a_foot(y),
    }
}

fn th(thousandths: i64) -> Length {
    Length::from_thousandths_of_a_foot(thousandths)
}

/// Invented, demo: the stream buffer along x = 90, the crew keeps to the west, which is the left hand going
/// north.
fn buffer() -> NoCrossLine {
    NoCrossLine {
        corners: vec![at(9000, 0), at(9000, 12_000)],
        keep: Side::Left,
    }
}

fn doubts() -> LineDoubts {
    LineDoubts {
        tape_ft: 0.02,
        string_ft: 0.02,
        line_ft: 0.02,
        k: 1.0,
    }
}

/// Invented, demo: edges 0.30 and 0.22 ft inside; the rest derived from the rule with a guard of 0.0346 ft.
#[test]
fn every_doubt_counts_against_the_crew() {
    use Standing::{Crossed, Near, Ok, Touch};
    for (x, standing, english, spanish) in [
        (8970, Near, "LINE 2½", "LÍNEA 2½"),
        (8978, Near, "LINE 1½", "LÍNEA 1½"),
        (8900, Ok, "LINE 9½", "LÍNEA 9½"),
        (8969, Ok, "LINE 2½", "LÍNEA 2½"),
        (8996, Near, "LINE 0", "LÍNEA 0"),
        (8991, Near, "LINE ½", "LÍNEA ½"),
        (8997, Touch, "LINE TOUCHED", "EN LA LÍNEA"),
        (9003, Touch, "LINE TOUCHED", "EN LA LÍNEA"),
        (9004, Crossed, "STOP – LINE CROSSED", "PARE – LÍNEA CRUZADA"),
    ] {
        let shot = buffer().judge(at(x, 5500), &doubts()).unwrap();
        assert_eq!(shot.standing, standing, "{x}");
        assert_eq!(line_text(&shot, Language::English), english);
        assert_eq!(line_text(&shot, Language::Spanish), spanish);
    }
    let guard = doubts().guard().unwrap();
    assert!((guard.feet() - 0.034_641).abs() < 1e-6, "{guard}");
}

#[test]
fn what_may_not_be_dug_lies_square_off_the_nearest_piece() {
    // Along x = 90 and kept to the west: beyond is east, with a mark or without.
    let close = |way: Option<(f64, f64)>, east: f64, north: f64| {
        let (x, y) = way.unwrap();
        assert!(
            (x - east).abs() < 1e-9 && (y - north).abs() < 1e-9,
            "{x} {y}"
        );
    };
    close(buffer().beyond(Some(at(8970, 5500))), 1.0, 0.0);
    // Over the line already: the ground that may not be dug is on the same side.
    close(buffer().beyond(Some(at(9050, 5500))), 1.0, 0.0);
    close(buffer().beyond(None), 1.0, 0.0);
    // North, then east; kept on the right hand.
    let bent = NoCrossLine {
        corners: vec![at(0, 0), at(0, 1000), at(1000, 1000)],
        keep: Side::Right,
    };
    close(bent.beyond(Some(at(100, 500))), -1.0, 0.0);
    close(bent.beyond(Some(at(500, 900))), 0.0, 1.0);
    assert_eq!(bent.beyond(None), None);
}

#[test]
fn the_edges_of_the_bands_belong_to_the_worse_side() {
    assert_eq!(judge(th(35), th(35)).standing, Standing::Touch);
    assert_eq!(judge(th(-35), th(35)).standing, Standing::Touch);
    assert_eq!(judge(th(-36), th(35)).standing, Standing::Crossed);
    assert_eq!(judge(th(300), th(35)).standing, Standing::Near);
    assert_eq!(judge(th(300), th(350)).standing, Standing::Touch);
    assert_eq!(judge(th(99), Length::ZERO).half_tenths, 1);
    assert_eq!(judge(th(100), Length::ZERO).half_tenths, 2);
}

/// Mathematics: around a corner of a bent line the nearest place is the corner itself.
#[test]
fn the_side_is_right_around_either_bend() {
    let bend = |end: Point| NoCrossLine {
        corners: vec![at(0, 0), at(1000, 0), end],
        keep: Side::Left,
    };
    let (left, right) = (bend(at(0, 500)), bend(at(0, -500)));
    let feet = |line: &NoCrossLine, x, y| line.distance(at(x, y)).unwrap().feet();
    assert!((feet(&left, 1300, -400) + 5.0).abs() < 1e-6);
    assert!((feet(&left, 1300, 50) + 3.041_38).abs() < 1e-4);
    assert!((feet(&right, 1300, 400) - 5.0).abs() < 1e-6);
    assert!((feet(&right, 1300, -50) - 3.041_38).abs() < 1e-4);
    assert!(feet(&left, 700, 50) > 0.0 && feet(&right, 700, -50) < 0.0);
}

/// Derived: going on from (4, 5) by (1, 13) the line passes (8.5, 64), so the place lies to its right, though the
/// nearest corner is the first one, 54 ft away each way, and the place lies to the left of the first piece.
#[test]
fn past_both_ends_the_side_is_that_of_the_end_that_goes_on_nearer() {
    let line = NoCrossLine {
        corners: vec![at(0, 1000), at(300, -800), at(400, 500)],
        keep: Side::Left,
    };
    let feet = line.distance(at(5400, 6400)).unwrap().feet();
    assert!(
        (feet + 54.0 * std::f64::consts::SQRT_2).abs() < 1e-6,
        "{feet}"
    );
}

/// Invented, demo: the lot of 100 × 120 ft, walked around with the lot on the left hand. Outside a corner it is
/// crossed whichever corner the line starts from.
#[test]
fn a_lot_is_closed_at_its_first_corner() {
    let lot = [at(0, 0), at(10_000, 0), at(10_000, 12_000), at(0, 12_000)];
    for start in 0..4 {
        let mut corners = lot.to_vec();
        corners.rotate_left(start);
        corners.push(corners[0]);
        let line = NoCrossLine {
            corners,
            keep: Side::Left,
        };
        for (x, y) in [
            (-300, -400),
            (10_300, -400),
            (-300, 12_400),
            (-10, 5),
            (5, -10),
        ] {
            let feet = line.distance(at(x, y)).unwrap().feet();
            assert!(feet < 0.0, "{start}: {x} {y} {feet}");
        }
        assert!((line.distance(at(100, 200)).unwrap().feet() - 1.0).abs() < 1e-6);
    }
}

#[test]
fn what_is_no_line_and_no_doubt_is_refused() {
    let mut line = buffer();
    line.corners.push(at(9000, 12_000));
    let twice = line.distance(at(0, 0)).unwrap_err();
    assert!(twice.to_string().contains("Corners 2 and 3"), "{twice}");
    line.corners.truncate(1);
    let few = line.distance(at(0, 0)).unwrap_err();
    assert!(few.text().spanish.contains("esta tiene 1"), "{few:?}");
    for bad in [-0.01, f64::NAN, f64::INFINITY] {
        let doubts = LineDoubts {
            string_ft: bad,
            ..doubts()
        };
        let error = doubts.guard().unwrap_err();
        assert!(error.to_string().contains("doubt of the string"), "{error}");
    }
}

proptest! {
    /// Told more than is left never happens; and more doubt never gives a better word or a larger number.
    #[test]
    fn doubt_is_never_to_the_crews_gain(
        distance in -3_000_000_i64..9_000_000, guard in 0_i64..1_000_000, more in 0_i64..1_000_000
    ) {
        let length = Length::from_tenth_micrometres;
        let one = judge(length(distance), length(guard));
        let two = judge(length(distance), length(guard + more));
        prop_assert!(i64::from(one.half_tenths) * HALF_TENTH <= (distance - guard).max(0));
        prop_assert!(two.half_tenths <= one.half_tenths);
        // More doubt may turn CROSSED into TOUCH, never into anything better.
        let good = |shot: LineShot| matches!(shot.standing, Standing::Near | Standing::Ok);
        prop_assert!(good(one) || !good(two));
    }

    /// Going the line backwards and keeping to the other hand is the same line.
    #[test]
    fn a_line_has_no_direction(x in -3000_i64..3000, y in -3000_i64..3000, bend in -900_i64..900) {
        let corners = vec![at(-1000, 0), at(0, bend), at(1000, 0)];
        let back = corners.iter().rev().copied().collect();
        let there = NoCrossLine { corners, keep: Side::Left }.distance(at(x, y)).unwrap();
        let back = NoCrossLine { corners: back, keep: Side::Right }.distance(at(x, y)).unwrap();
        prop_assert!((there - back).abs() <= Length::from_tenth_micrometres(2), "{there:?} {back:?}");
    }
}
