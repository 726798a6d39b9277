//! Tests of every kind of target: it answers, refuses past its edge, and goes through JSON and back.

use super::tests::{at, ft, stack};
use super::*;
use crate::alignment::{Piece, Turn};
use crate::grade::{Corner, Face, Flow, Invert};
use crate::layout::tie::Side;
use crate::surface::{Drawn, Surface, Vertex};

fn corner(station: i64, elevation: i64) -> Corner {
    Corner {
        station: ft(station),
        elevation: ft(elevation),
        curve: Length::ZERO,
    }
}

/// 100 ft north, then a quarter turn to the right of radius 50 ft.
fn axis() -> Axis {
    Axis {
        start: at(0, 0),
        first: ft(100_000),
        pieces: vec![
            Piece::Line { to: at(0, 10_000) },
            Piece::Arc {
                centre: at(5000, 10_000),
                to: at(5000, 15_000),
                turn: Turn::Right,
            },
        ],
    }
}

fn square() -> Kept<Net> {
    let points = [(0, 0, 100), (1000, 0, 0), (1000, 1000, 100), (0, 1000, 0)];
    let surface = Surface::from_points(&Drawn {
        points: points
            .map(|(x, y, z)| Vertex {
                at: at(x, y),
                elevation: ft(z),
            })
            .to_vec(),
        breaklines: vec![vec![0, 2]],
        ..Drawn::default()
    });
    Kept::new(Net::of(&surface.unwrap(), "square.csv"))
}

/// Invented, demo: 1 % up along the axis, a step of 1 ft down at 10+50.
fn along() -> Along {
    Along {
        axis: axis(),
        left: ft(300),
        right: ft(200),
        corners: vec![corner(100_000, 30_000), corner(117_800, 30_178)],
        steps: vec![ProfileStep {
            station: ft(105_000),
            by: ft(-100),
            window: ft(25),
        }],
    }
}

fn trench() -> PipeTrench {
    let invert = |station, elevation| Invert {
        station: ft(station),
        elevation: ft(elevation),
    };
    PipeTrench {
        axis: axis(),
        inverts: vec![invert(100_000, 10_000), invert(110_000, 9800)],
        flow: Flow::UpStation,
        outside_diameter: ft(110),
        side: ft(75),
        least_fall: 0.01,
    }
}

fn face() -> CutFace {
    let face = |rise, run| Face {
        rise: ft(rise),
        run: ft(run),
    };
    CutFace {
        axis: axis(),
        rises: Side::Left,
        corners: vec![corner(100_000, 10_000), corner(110_000, 10_000)],
        faces: vec![face(400, 0), face(0, 400), face(600, 600)],
    }
}

fn on(shape: Shape) -> Target {
    Target::new(shape, stack(50))
}

#[test]
fn a_run_bends_climbs_and_steps() {
    let target = on(Shape::Along(along().into()));
    assert_eq!(target.check(), []);
    assert_eq!(target.dig_to(at(0, 2500)), Ok(DigTo::At(ft(29_975))));
    assert_eq!(
        target.dig_to(at(100, 5000)),
        Ok(DigTo::NearStep {
            station: ft(105_000),
            before: ft(30_000),
            after: ft(29_900)
        })
    );
    let beside = target.dig_to(at(250, 2500)).unwrap_err();
    assert!(beside.to_string().contains("0.5 ft past the right edge"));
    let before = target.dig_to(at(0, -100)).unwrap_err();
    assert!(before.to_string().contains("1 ft past the start"));
    let beyond = target.place(StationOffset {
        station: ft(105_000),
        offset: ft(200),
    });
    assert_eq!(beyond, Ok(at(200, 5000)));
    let found = target.station_offset(at(-300, 5000)).unwrap();
    assert_eq!((found.station, found.offset), (ft(105_000), ft(-300)));
}

#[test]
fn a_trench_falls_to_its_outlet_and_has_its_own_width() {
    let target = on(Shape::Trench(trench().into()));
    assert_eq!(target.check(), []);
    assert_eq!(target.dig_to(at(130, 5000)), Ok(DigTo::At(ft(9850))));
    assert!(target.dig_to(at(140, 5000)).is_err());
    let uphill = PipeTrench {
        flow: Flow::DownStation,
        ..trench()
    };
    let wrong = on(Shape::Trench(uphill.into())).check();
    assert!(matches!(wrong[..], [TargetError::Grade(_)]), "{wrong:?}");
}

#[test]
fn a_face_rises_to_its_side_alone() {
    let target = on(Shape::Face(face().into()));
    assert_eq!(target.check(), []);
    assert_eq!(target.dig_to(at(-200, 5000)), Ok(DigTo::At(ft(10_350))));
    assert_eq!(target.dig_to(at(-700, 5000)), Ok(DigTo::At(ft(10_650))));
    assert!(target.dig_to(at(100, 5000)).is_err());
    let square = target.square_to_face(at(-700, 5000));
    assert!((square - std::f64::consts::FRAC_1_SQRT_2).abs() < 1e-12);
}

#[test]
fn a_surface_and_a_strip_of_it_answer_inside_alone() {
    let surface = on(Shape::Surface(square()));
    assert_eq!(surface.dig_to(at(500, 500)), Ok(DigTo::At(ft(50))));
    let strip = on(Shape::Strip { ground: square() });
    assert_eq!(strip.check(), []);
    assert_eq!(strip.dig_to(at(500, 500)), Ok(DigTo::At(ft(50))));
    let off = strip.dig_to(at(1500, 500)).unwrap_err();
    assert!(
        off.text().spanish.contains("5 ft de la orilla"),
        "{}",
        off.text().spanish
    );
}

#[test]
fn every_kind_goes_through_json_and_back() {
    let plane = |rise_east| Plane {
        through: at(0, 0),
        elevation: ft(10_000),
        rise_east,
        rise_north: 0.0,
    };
    let contour = Shape::Contour {
        elevation: ft(10_000),
        band: ft(3),
    };
    let fold = Shape::Fold {
        fold: Fold::Crown,
        planes: vec![plane(0.02), plane(-0.02)],
    };
    for shape in [
        fold,
        contour,
        Shape::Along(along().into()),
        Shape::Trench(trench().into()),
        Shape::Face(face().into()),
        Shape::Surface(square()),
        Shape::Strip { ground: square() },
    ] {
        let target = on(shape);
        assert_eq!(target.check(), []);
        let text = serde_json::to_string(&target).unwrap();
        let back: Target = serde_json::from_str(&text).unwrap();
        assert_eq!(back, target);
        let place = at(300, 400);
        assert_eq!(back.dig_to(place), target.dig_to(place));
        assert!(!text.contains("undercuts") && !text.contains("made"));
    }
}

#[test]
fn a_large_net_stays_on_the_laptop() {
    let net = square();
    assert_eq!(net.drawn().for_screens(1).counts(), (0, 0));
    assert_eq!(net.drawn().for_screens(2).counts(), (4, 2));
    let broken = r#"{"source":"x","points":[1,2],"triangles":[0,1,2]}"#;
    assert!(serde_json::from_str::<Kept<Net>>(broken).is_err());
}
