//! A sloped laser: its plane rises so much to the east and to the north, and only benchmarks that do not lie in one line
//! with it show a turned axis.

use contract::ToSchema;
use earthwork::laser::plane::SlopedLaser;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use super::{Basis, benchmark};
use crate::refusal::Refusal;
use crate::site::Site;
use crate::state::SetUp;

/// How a laser's plane is sloped, along the site's axes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LaserSlope {
    /// Rise to the east, in feet per foot; negative when it falls.
    pub rise_east: f64,
    /// Rise to the north, in feet per foot; negative when it falls.
    pub rise_north: f64,
}

impl LaserSlope {
    /// The plane through a height at the laser itself.
    pub(crate) fn plane(self, at: Point, hi: Length) -> SlopedLaser {
        SlopedLaser {
            at,
            hi,
            rise_east: self.rise_east,
            rise_north: self.rise_north,
        }
    }
}

/// A backsight gives the plane's height over its benchmark; the basis holds its height over the laser itself.
pub(super) fn over_the_laser(
    site: &Site,
    slope: Option<LaserSlope>,
    stands: Option<Point>,
    basis: Basis,
) -> Result<Basis, Refusal> {
    let Some(slope) = slope else {
        return Ok(basis);
    };
    let Some(stands) = stands else {
        return Err(Refusal::SlopedLaser(
            words::set_up::sloped_laser_height_depends_where().into(),
        ));
    };
    let placed = site.benchmarks.iter().filter(|one| one.place.is_some());
    if placed.count() < 3 {
        return Err(Refusal::SlopedLaser(
            words::set_up::sloped_laser_proven_by_three().into(),
        ));
    }
    let place = place_of(site, &basis.benchmark)?;
    let over = slope
        .plane(stands, Length::ZERO)
        .height(place)
        .map_err(|error| Refusal::SlopedLaser(error.text()))?;
    Ok(Basis {
        height: basis.height - over,
        ..basis
    })
}

/// Where a benchmark is; a sloped laser can't use one without.
pub(crate) fn place_of(site: &Site, id: &str) -> Result<Point, Refusal> {
    benchmark(site, id)?
        .place
        .ok_or_else(|| Refusal::SlopedLaser(words::set_up::nobody_has_said_where_is(&id)))
}

/// The plane's height over a benchmark; the one height of a level laser anywhere.
pub(crate) fn height_over(site: &Site, set_up: &SetUp, id: &str) -> Result<Length, Refusal> {
    if set_up.slope.is_none() {
        return Ok(set_up.height());
    }
    Ok(set_up.height_at(place_of(site, id)?))
}

/// Whether two benchmarks together show a turned axis; on a level laser any two do.
pub(crate) fn spread(site: &Site, set_up: &SetUp, one: &str, other: &str) -> bool {
    let Some(plane) = set_up.plane() else {
        return true;
    };
    let place = |id: &str| site.benchmark(id).and_then(|benchmark| benchmark.place);
    place(one)
        .zip(place(other))
        .is_some_and(|(one, other)| plane.checks_spread(one, other).is_ok())
}

/// What is not done with a sloped laser.
pub(crate) fn only_level(set_up: &SetUp) -> Result<(), Refusal> {
    if set_up.slope.is_none() {
        return Ok(());
    }
    Err(Refusal::SlopedLaser(words::set_up::is_sloped(&set_up.id)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::{Answer, Outcome};
    use crate::asked::Command;
    use crate::given::{Crew, at, ground, len, site};
    use crate::said::set_up::{Proof, SetUpLaser};
    use crate::site::Benchmark;
    use crate::state::SetUpState;

    fn benchmark(id: &str, elevation: &str, x: &str, y: &str) -> Benchmark {
        Benchmark {
            id: id.into(),
            elevation: len(elevation),
            place: Some(at(x, y)),
            doubt: len("0.005 ft"),
            note: String::new(),
        }
    }

    /// BM-1 at 0, 0 and BM-2 at 80, 0 lie in one line with a laser at 40, 0; BM-3 lies well off to the side.
    fn yard() -> Crew {
        let mut site = site();
        site.benchmarks
            .push(benchmark("BM-3", "100.00 ft", "40 ft", "100 ft"));
        Crew::opened_on(site)
    }

    fn sets_up(
        crew: &mut Crew,
        slope: LaserSlope,
        place: Option<Point>,
    ) -> Result<Answer, Refusal> {
        crew.says(
            &ground(),
            Command::SetUpLaser(SetUpLaser {
                laser: "L1".into(),
                place,
                benchmark: "BM-1".into(),
                rod: "A".into(),
                text: "5.00".into(),
                slope: Some(slope),
            }),
        )
    }

    /// 2 % up to the east, 1 % down to the north.
    const SLOPE: LaserSlope = LaserSlope {
        rise_east: 0.02,
        rise_north: -0.01,
    };

    /// Derived: 105.00 over BM-1 is 105.80 over the laser 40 ft east of it and 106.60 over BM-2.
    #[test]
    fn a_backsight_gives_the_height_over_the_laser_itself() {
        let mut crew = yard();
        let answer = sets_up(&mut crew, SLOPE, Some(at("40 ft", "0 ft"))).unwrap();
        let Outcome::SetUp { height, .. } = answer.outcome else {
            panic!("{answer:?}");
        };
        assert_eq!(height, len("105.80 ft"));
        let set_up = crew.state.set_up("S1").unwrap();
        assert_eq!(set_up.height_at(at("80 ft", "0 ft")), len("106.60 ft"));
        assert_eq!(set_up.height_at(at("40 ft", "100 ft")), len("104.80 ft"));
    }

    #[test]
    fn it_is_usable_only_when_two_benchmarks_off_its_line_agree() {
        let mut crew = yard();
        sets_up(&mut crew, SLOPE, Some(at("40 ft", "0 ft"))).unwrap();
        let usable = |crew: &Crew| crew.state.set_up("S1").unwrap().usable();
        // BM-1 itself proves nothing; BM-2 reads 106.60 − 101.52, BM-3 104.80 − 100.00.
        crew.check("S1", "BM-1", "5.00").unwrap();
        crew.check("S1", "BM-2", "5.08").unwrap();
        assert!(!usable(&crew));
        crew.check("S1", "BM-3", "4.80").unwrap();
        assert!(usable(&crew));
        assert_eq!(
            crew.state.set_up("S1").unwrap().state,
            SetUpState::Proven {
                proof: Proof::AcrossTheSlope {
                    first: "BM-2".into(),
                    second: "BM-3".into()
                }
            }
        );
    }

    /// Derived: an axis turned by 3° at 2 % puts BM-3, 100 ft across the slope, off by 100·0.02·sin 3° = 0.10 ft.
    #[test]
    fn a_turned_axis_fails_across_the_slope() {
        let mut crew = yard();
        let slope = LaserSlope {
            rise_east: 0.02,
            rise_north: 0.0,
        };
        sets_up(&mut crew, slope, Some(at("40 ft", "0 ft"))).unwrap();
        crew.check("S1", "BM-2", "5.08").unwrap();
        let answer = crew.check("S1", "BM-3", "5.70").unwrap();
        let Outcome::Checked {
            residual, usable, ..
        } = answer.outcome
        else {
            panic!("{answer:?}");
        };
        assert!(!usable && residual == len("0.10 ft"), "{residual}");
    }

    /// Derived: over P-1, 30 ft east and 20 ft north, the plane stands at 105.80 − 0.20 − 0.20 = 105.40 ft.
    #[test]
    fn a_reading_is_measured_from_the_plane_over_its_mark() {
        let mut crew = yard();
        sets_up(&mut crew, SLOPE, Some(at("40 ft", "0 ft"))).unwrap();
        crew.check("S1", "BM-2", "5.08").unwrap();
        crew.check("S1", "BM-3", "4.80").unwrap();
        crew.reads("P-1", "5.00").unwrap();
        let (_, taken) = crew.state.last_reading("P-1").unwrap();
        assert_eq!(taken.reading.elevation, len("100.40 ft"));
        assert_eq!(taken.reading.height_here, Some(len("105.40 ft")));
        let judged = taken.reading.judged.as_ref().unwrap();
        assert_eq!(judged.dev, len("0.40 ft"));
    }

    #[test]
    fn what_a_sloped_laser_can_not_rest_on_is_refused_in_both_languages() {
        let refusal = |came: Result<Answer, Refusal>| match came {
            Err(Refusal::SlopedLaser(text)) => {
                assert!(text.english != text.spanish);
                text.english
            }
            other => panic!("{other:?}"),
        };
        let mut two = Crew::opened();
        let here = Some(at("40 ft", "0 ft"));
        assert!(refusal(sets_up(&mut two, SLOPE, here)).contains("three benchmarks"));
        let mut crew = yard();
        assert!(refusal(sets_up(&mut crew, SLOPE, None)).contains("where it stands"));
        for steep in [0.26, f64::NAN] {
            let slope = LaserSlope {
                rise_east: steep,
                rise_north: 0.0,
            };
            assert!(refusal(sets_up(&mut crew, slope, here)).contains("0.25"));
        }
    }
}
