//! Laws that hold for every alignment, profile, fold, surface and site frame.

use earthwork::alignment::{
    Alignment, AlignmentError, Piece, StationOffset, Turn, parse_station, show_station,
};
use earthwork::grade::{
    Corner, Flow, Fold, Invert, Plane, Profile, Trench, TrenchSizes, daylight, folded,
};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::site_frame::{Pin, PlanNumber, PlanPoint, PlanUnit, SiteFrame, fit_to_pins};
use earthwork::surface::{Drawn, Surface, Vertex};
use earthwork::target::DigTo;
use proptest::prelude::*;

fn ft(hundredths: i64) -> Length {
    Length::from_hundredths_of_a_foot(hundredths)
}

fn at(x: i64, y: i64) -> Point {
    Point { x: ft(x), y: ft(y) }
}

/// Within so many counts of a tenth of a micrometre.
fn near(one: Length, other: Length, counts: i64) -> bool {
    (one - other).abs() <= Length::from_tenth_micrometres(counts)
}

/// A line and a tangent quarter turn, either way.
fn bend(turn: Turn, straight: i64, radius: i64) -> Result<Alignment, AlignmentError> {
    let side = match turn {
        Turn::Left => -radius,
        Turn::Right => radius,
    };
    let pieces = [
        Piece::Line {
            to: at(0, straight),
        },
        Piece::Arc {
            centre: at(side, straight),
            to: at(side, straight + radius),
            turn,
        },
    ];
    Alignment::new(at(0, 0), ft(1000), &pieces)
}

/// A grid of points, the inner ones moved a little, with any elevations.
fn scattered() -> impl Strategy<Value = Vec<Vertex>> {
    prop::collection::vec((0_i64..400, 0_i64..400, -2000_i64..2000), 25).prop_map(|moves| {
        (0_i64..)
            .zip(moves)
            .map(|(number, (x, y, z))| {
                let inner = |cell: i64, by: i64| if (1..4).contains(&cell) { by } else { 0 };
                let (column, row) = (number % 5, number / 5);
                Vertex {
                    at: at(column * 1000 + inner(column, x), row * 1000 + inner(row, y)),
                    elevation: ft(z),
                }
            })
            .collect()
    })
}

fn drawn(points: Vec<Vertex>) -> Drawn {
    Drawn {
        points,
        ..Drawn::default()
    }
}

proptest! {
    #[test]
    fn a_station_and_offset_come_back(
        turn in prop_oneof![Just(Turn::Left), Just(Turn::Right)],
        straight in 1000_i64..50_000,
        radius in 1000_i64..50_000,
        part in 0.0..1.0_f64,
        beside in -0.9..0.9_f64,
    ) {
        let line = bend(turn, straight, radius).unwrap();
        let (from, to) = line.stations();
        let asked = StationOffset {
            station: Length::from_feet(from.feet() + part * (to - from).feet()).unwrap(),
            offset: Length::from_feet(beside * ft(radius).feet()).unwrap(),
        };
        let place = line.place(asked).unwrap();
        let found = line.station_offset(place).unwrap();
        // A count of rounding at a tenth of the radius is ten counts on the line.
        prop_assert!(near(found.station, asked.station, 20), "{found:?} for {asked:?}");
        prop_assert!(near(found.offset, asked.offset, 3), "{found:?} for {asked:?}");
    }

    #[test]
    fn a_written_station_is_the_same_station(hundredths in -99_999_999_i64..99_999_999) {
        prop_assert_eq!(parse_station(&show_station(ft(hundredths))), Ok(ft(hundredths)));
    }

    #[test]
    fn a_vertical_curve_lies_between_its_corner_and_its_chord(
        first in -1000_i64..1000, second in -1000_i64..1000, half in 1_i64..5000, part in 0.0..1.0_f64,
    ) {
        let corner = |station, elevation, curve| Corner {
            station: ft(station), elevation: ft(elevation), curve: ft(curve),
        };
        let line = |curve| Profile::new(
            vec![corner(0, first, 0), corner(5000, 0, curve), corner(10_000, second, 0)],
            vec![],
        ).unwrap();
        let station = ft(5000 - half) + Length::from_feet(part * ft(2 * half).feet()).unwrap();
        let (DigTo::At(curved), DigTo::At(straight)) = (
            line(2 * half).elevation_at(station).unwrap(),
            line(0).elevation_at(station).unwrap(),
        ) else { panic!("no step was given") };
        // The middle ordinate is (g2 − g1)·L/8, and no point of the curve is further from the grades.
        let most = (second + first) as f64 / 5000.0 * ft(2 * half).feet() / 8.0;
        let off = (curved - straight).feet();
        prop_assert!(off.abs() <= most.abs() + 1e-6);
        prop_assert!(off * most >= -1e-6);
    }

    #[test]
    fn every_law_of_elevations_survives_a_datum_shift(
        points in scattered(), shift in -100_000_i64..100_000, x in 0_i64..4000, y in 0_i64..4000,
    ) {
        let up = ft(shift);
        let raised = points.iter().map(|one| Vertex { elevation: one.elevation + up, ..*one });
        let here = Surface::from_points(&drawn(points.clone())).unwrap();
        let there = Surface::from_points(&drawn(raised.collect())).unwrap();
        prop_assert_eq!(
            there.elevation_at(at(x, y)).unwrap(),
            here.elevation_at(at(x, y)).unwrap() + up
        );
    }

    #[test]
    fn a_surface_passes_through_its_points_and_stays_between_them(
        points in scattered(), x in 0_i64..4000, y in 0_i64..4000,
    ) {
        let surface = Surface::from_points(&drawn(points.clone())).unwrap();
        for point in &points {
            prop_assert_eq!(surface.elevation_at(point.at), Ok(point.elevation));
        }
        let z = surface.elevation_at(at(x, y)).unwrap();
        let all = || points.iter().map(|point| point.elevation);
        prop_assert!(all().min() <= Some(z) && Some(z) <= all().max());
        prop_assert!(surface.elevation_at(at(x, -1 - y)).is_err());
        prop_assert!(surface.elevation_at(at(4001 + x, y)).is_err());
    }

    #[test]
    fn a_surface_over_a_plane_is_the_plane(
        points in scattered(), east in -50_i64..50, north in -50_i64..50, x in 0_i64..4000, y in 0_i64..4000,
    ) {
        let plane = Plane {
            through: at(0, 0),
            elevation: ft(10_000),
            rise_east: east as f64 / 100.0,
            rise_north: north as f64 / 100.0,
        };
        let on_plane = points.iter().map(|one| Vertex { elevation: plane.elevation_at(one.at), ..*one });
        let surface = Surface::from_points(&drawn(on_plane.collect())).unwrap();
        prop_assert!(near(surface.elevation_at(at(x, y)).unwrap(), plane.elevation_at(at(x, y)), 2));
    }

    #[test]
    fn a_crown_is_never_above_a_valley(
        east in -50_i64..50, north in -50_i64..50, x in -4000_i64..4000, y in -4000_i64..4000,
    ) {
        let plane = |east: i64, north: i64| Plane {
            through: at(0, 0), elevation: ft(0),
            rise_east: east as f64 / 100.0, rise_north: north as f64 / 100.0,
        };
        let both = [plane(east, north), plane(north, -east)];
        let of = |fold| folded(fold, &both, at(x, y)).unwrap();
        prop_assert!(of(Fold::Crown) <= of(Fold::Valley));
        prop_assert!(both.iter().any(|one| one.elevation_at(at(x, y)) == of(Fold::Crown)));
    }

    #[test]
    fn a_face_comes_out_where_the_ground_is(
        depth in 0_i64..2000, slope in 0.0..3.0_f64, rise in -0.3..0.3_f64,
    ) {
        let found = daylight(ft(depth), slope, rise).unwrap();
        prop_assert!((found.height.feet() * slope - found.distance.feet()).abs() < 1e-5);
    }

    #[test]
    fn a_trench_never_rises_the_way_it_flows(start in 9000_i64..10_000, fall in 0_i64..500, part in 0_i64..10_000) {
        let invert = |station, elevation| Invert { station: ft(station), elevation: ft(elevation) };
        let sizes = TrenchSizes {
            wall: ft(5), bedding: ft(50), outside_diameter: ft(110), side: ft(75),
        };
        let inverts = vec![invert(0, start), invert(10_000, start - fall)];
        let trench = Trench::new(inverts.clone(), Flow::UpStation, sizes).unwrap();
        let here = trench.dig_to(ft(part)).unwrap();
        prop_assert!(here <= trench.dig_to(ft(0)).unwrap());
        prop_assert!(here >= trench.dig_to(trench.dig_from()).unwrap());
        prop_assert_eq!(Trench::new(inverts, Flow::DownStation, sizes).is_ok(), fall == 0);
    }

    #[test]
    fn a_place_goes_to_the_plan_and_back(
        unit in prop_oneof![Just(PlanUnit::Foot), Just(PlanUnit::SurveyFoot), Just(PlanUnit::Metre)],
        turn in -180.0..180.0_f64, x in -100_000_i64..100_000, y in -100_000_i64..100_000,
    ) {
        let number = |text| PlanNumber::parse(text).unwrap();
        let origin = PlanPoint { east: number("2000000.123"), north: number("700000.456") };
        let frame = SiteFrame::new(unit, origin, turn).unwrap();
        let back = frame.to_site(frame.to_plan(at(x, y))).unwrap();
        prop_assert!(near(back.x, at(x, y).x, 5) && near(back.y, at(x, y).y, 5));
    }

    #[test]
    fn a_moved_and_turned_lot_is_found_again(
        turn in -3.0..3.0_f64, east in -100_000_i64..100_000, north in -100_000_i64..100_000,
    ) {
        let corners = [at(0, 0), at(10_000, 0), at(10_000, 6000), at(0, 6000)];
        let (sin, cos) = turn.sin_cos();
        let moved = |one: Point| {
            let (x, y) = (one.x.feet(), one.y.feet());
            Point {
                x: Length::from_feet(x * cos - y * sin).unwrap() + ft(east),
                y: Length::from_feet(x * sin + y * cos).unwrap() + ft(north),
            }
        };
        let pins: Vec<Pin> = corners.iter().map(|&plan| Pin { plan, site: moved(plan) }).collect();
        let fit = fit_to_pins(&pins).unwrap();
        prop_assert!((fit.turn().to_radians() - turn).abs() < 1e-7);
        prop_assert!(fit.residuals.iter().all(|one| *one <= Length::from_tenth_micrometres(5)));
        prop_assert!(fit.findings.is_empty());
    }
}
