//! Tests: what should the ground be: a shape, the layers under it, and where it ends.

use super::*;

pub(super) fn ft(hundredths: i64) -> Length {
    Length::from_hundredths_of_a_foot(hundredths)
}

pub(super) fn at(x: i64, y: i64) -> Point {
    Point { x: ft(x), y: ft(y) }
}

pub(super) fn stack(thickness: i64) -> Stack {
    Stack {
        surface: "top of slab".into(),
        layers: vec![Layer {
            name: "gravel".into(),
            thickness: ft(thickness),
        }],
    }
}

/// Invented, demo: the pad falls 1 % to the south.
fn pad() -> Target {
    Target {
        shape: Shape::Plane {
            through: at(1800, 8000),
            elevation: ft(30_400),
            rise_east: 0.0,
            rise_north: 0.01,
        },
        stack: stack(50),
        within: Some(vec![
            at(1800, 2000),
            at(8400, 2000),
            at(8400, 9000),
            at(1800, 9000),
        ]),
        undercuts: vec![],
    }
}

#[test]
fn a_plane_falls_and_the_stack_lies_under_it() {
    assert_eq!(pad().dig_to(at(2500, 4000)), Ok(DigTo::At(ft(30_310))));
    assert_eq!(pad().dig_to(at(8400, 9000)), Ok(DigTo::At(ft(30_360))));
}

#[test]
fn outside_the_boundary_is_refused_with_how_far() {
    let error = pad().dig_to(at(1750, 4000)).unwrap_err();
    assert_eq!(error, TargetError::OutsideBoundary { by: ft(50) });
    assert!(error.to_string().contains("0.5 ft outside"), "{error}");
}

#[test]
fn a_flat_target_without_a_boundary_is_everywhere() {
    let flat = Target {
        shape: Shape::Flat {
            elevation: ft(10_050),
        },
        stack: stack(50),
        within: None,
        undercuts: vec![],
    };
    assert_eq!(flat.dig_to(at(-999_999, 0)), Ok(DigTo::At(ft(10_000))));
}

#[test]
fn everything_that_is_wrong_with_a_target_is_found() {
    let mut wrong = pad();
    wrong.stack = stack(501);
    wrong.stack.layers[0].name = " ".into();
    wrong.stack.surface = String::new();
    wrong.within = Some(vec![at(0, 0), at(1, 1)]);
    wrong.shape = Shape::Plane {
        through: at(0, 0),
        elevation: ft(0),
        rise_east: 2.0,
        rise_north: f64::NAN,
    };
    assert_eq!(wrong.check().len(), 6);
    let percent = TargetError::TooSteep {
        side: "east",
        rise: "2".into(),
    };
    assert!(percent.to_string().contains("Write 2 % as 0.02"));
}
