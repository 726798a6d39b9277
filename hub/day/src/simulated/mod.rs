//! Simulated days, seeded: what the slip questions and the laser's free checks find, and what they cost.
//!
//! The crew, the ground and the slips are invented; the noise is that of common practice (0.012 ft a shot, rods read to
//! the hundredth). The short runs belong to every test run; `RODCALL_SIMULATE_DAYS=2000 cargo test -p day simulated --
//! --nocapture` makes the long ones and prints what they measure.

mod bumps;
mod set_ups;
mod slips;

use earthwork::keep_out::Reach;
use earthwork::length::Length;
use earthwork::target::{Shape, Stack, Target as Grade};
use earthwork::tolerance::Tolerance;
use earthwork::uncertainty::Surface;

use crate::answer::{Answer, Outcome};
use crate::asked::Command;
use crate::given::{self, Crew, at, ground, len};
use crate::said::reading::TakeReading;
use crate::site::{Machine, MachineShape, Mark, Site, Target};

/// The laser's height as it is booked, in feet.
const HEIGHT: f64 = 105.0;
/// One standard deviation of a shot on trimmed ground, in feet (common practice).
const SHOT: f64 = 0.012;

/// So many days: few in every test run, as many as asked for in a long one.
fn days(few: u64) -> u64 {
    // This floor reads no environment while it runs: the number is built in.
    let asked = option_env!("RODCALL_SIMULATE_DAYS").and_then(|text| text.parse().ok());
    if asked.is_none() {
        println!(
            "{few} days. For more: RODCALL_SIMULATE_DAYS=2000 cargo test -p day simulated -- --nocapture"
        );
    }
    asked.unwrap_or(few)
}

/// Numbers that are the same in every run (`SplitMix64`, public domain).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        let unit = (self.next() >> 11) as f64 / (1_u64 << 53) as f64;
        low + (high - low) * unit
    }

    /// A whole number from `low` up to `high`.
    fn whole(&mut self, low: i64, high: i64) -> i64 {
        let span = u64::try_from(high - low + 1).unwrap_or(1);
        low + i64::try_from(self.next() % span).unwrap_or(0)
    }

    fn often(&mut self, share: f64) -> bool {
        self.between(0.0, 1.0) < share
    }

    /// A normal deviate (Box and Muller).
    fn normal(&mut self, deviation: f64) -> f64 {
        let (radius, angle) = (self.between(1e-12, 1.0), self.between(0.0, 1.0));
        deviation * (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * angle).cos()
    }

    fn pick<T: Copy>(&mut self, from: &[T]) -> T {
        let n = self.next() % from.len() as u64;
        from[usize::try_from(n).unwrap_or(0)]
    }
}

/// The elevations to dig to of the simulated site's marks, in feet: three pads, a foot and more apart.
const PADS: [f64; 3] = [100.0, 99.0, 98.33];
/// Marks on each pad.
const ON_EACH: usize = 4;

/// Marks of the simulated site with their dig-to, in the order of work.
fn marks() -> Vec<(String, f64)> {
    (0..PADS.len() * ON_EACH)
        .map(|n| (format!("M-{n:02}"), PADS[n / ON_EACH]))
        .collect()
}

/// Twelve marks 12 ft apart on three level pads; one machine digs them all.
fn site() -> Site {
    let plain = given::site();
    let targets = PADS
        .iter()
        .enumerate()
        .map(|(n, elevation)| Target {
            id: format!("T{n}"),
            name: format!("pad {n}"),
            grade: Grade::new(
                Shape::Flat {
                    elevation: Length::from_feet(*elevation).unwrap(),
                },
                Stack {
                    surface: "bare ground".into(),
                    layers: vec![],
                },
            ),
            tolerance: Tolerance::new(len("0.10 ft"), len("0.20 ft")).unwrap(),
            ..plain.targets[0].clone()
        })
        .collect();
    let marks = marks()
        .iter()
        .enumerate()
        .map(|(n, (id, _))| Mark {
            id: id.clone(),
            place: at(&format!("{} ft", 10 + 12 * n), "20 ft"),
            target: Some(format!("T{}", n / ON_EACH)),
            station: None,
            offset: None,
            surface: Surface::Trimmed,
            note: String::new(),
        })
        .collect();
    let machine = Machine {
        id: "EX-1".into(),
        shape: MachineShape::Square,
        reach: Reach {
            reach_at_ground: len("27.8 ft"),
            tail_radius: len("7 ft"),
            track_width: len("8.2 ft"),
        },
        geometry: earthwork::machine::Geometry::default(),
        works_on: vec!["T0".into(), "T1".into(), "T2".into()],
        direction: String::new(),
    };
    Site {
        tolerance: None,
        targets,
        marks,
        machines: vec![machine],
        ..plain
    }
}

/// A day on the simulated site, with the laser proven at 105.00.
fn digging() -> Crew {
    let mut crew = Crew::opened_on(site());
    crew.set_up("BM-1", "5.00");
    crew.check("S1", "BM-2", "3.48").unwrap();
    crew
}

/// What is typed for a rod value: the nearest hundredth.
fn typed(value: f64) -> String {
    format!("{value:.2}")
}

/// What a reading came to, as the crew sees it.
enum Came {
    /// Asked about, by that entry.
    Asked(u64),
    /// Taken, as that entry.
    Taken(u64),
}

fn send(crew: &mut Crew, reading: TakeReading) -> Came {
    let answer: Answer = crew.says(&ground(), Command::TakeReading(reading)).unwrap();
    match answer.outcome {
        Outcome::Asked { reading, .. } => Came::Asked(reading),
        _ => Came::Taken(answer.first),
    }
}
