//! Slips thrown into simulated set-ups: how many the second benchmark shows, and how often what happened is asked about.

use std::collections::BTreeMap;

use earthwork::level::Check;
use earthwork::slip::Slip as Asked;

use super::{Chance, days, site, typed};
use crate::answer::Outcome;
use crate::asked::Command;
use crate::given::{Crew, at, ground, len};
use crate::said::set_up::SetUpLaser;
use crate::site::{Benchmark, Site};

/// The benchmarks of the simulated lot, in feet.
const BENCHMARKS: [f64; 4] = [100.00, 101.52, 103.31, 105.92];
/// One standard deviation of a shot on a benchmark, in feet (common practice).
const SHOT: f64 = 0.005;
/// The receiver's bracket and the rod's joints, in feet.
const BRACKET: f64 = 0.35;
const JOINTS: [f64; 2] = [4.80, 8.90];
const LENGTH: f64 = 13.0;

#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Slip {
    None,
    OtherBenchmark,
    WholeFoot,
    Tenth,
    DigitsSwapped,
    InchesAsTenths,
    Bracket,
    RodSection,
    LaserMoved,
}

const SLIPS: [Slip; 9] = [
    Slip::None,
    Slip::OtherBenchmark,
    Slip::WholeFoot,
    Slip::Tenth,
    Slip::DigitsSwapped,
    Slip::InchesAsTenths,
    Slip::Bracket,
    Slip::RodSection,
    Slip::LaserMoved,
];

fn is(asked: &Asked, slip: Slip) -> bool {
    matches!(
        (asked, slip),
        (Asked::OtherBenchmark { .. }, Slip::OtherBenchmark)
            | (Asked::WholeFoot, Slip::WholeFoot)
            | (Asked::Tenth, Slip::Tenth)
            | (Asked::DigitsSwapped { .. }, Slip::DigitsSwapped)
            | (Asked::InchesAsTenths { .. }, Slip::InchesAsTenths)
            | (Asked::Bracket, Slip::Bracket)
            | (Asked::RodSection, Slip::RodSection)
            | (Asked::LaserMoved { .. }, Slip::LaserMoved)
    )
}

/// What the second benchmark made of the slips of one kind.
#[derive(Default)]
struct Tally {
    all: u32,
    failed: u32,
    first: u32,
    of_two: u32,
}

fn lot() -> Site {
    let mut site = site();
    site.benchmarks = BENCHMARKS
        .iter()
        .enumerate()
        .map(|(n, elevation)| Benchmark {
            id: format!("BM-{}", n + 1),
            elevation: len(&format!("{elevation:.2} ft")),
            place: Some(at(&format!("{} ft", 40 * n), "0 ft")),
            doubt: len("0.005 ft"),
            note: String::new(),
        })
        .collect();
    for rod in &mut site.rods {
        rod.bracket = len(&format!("{BRACKET} ft"));
    }
    site.rods[0].joints = JOINTS.map(|joint| len(&format!("{joint} ft"))).to_vec();
    site
}

/// A rod value typed otherwise than read, or the same when that slip can't be made of it.
fn slipped(chance: &mut Chance, slip: Slip, value: f64) -> f64 {
    let value = (value * 100.0).round() / 100.0;
    match slip {
        Slip::WholeFoot => value + chance.pick(&[1.0, -1.0]),
        Slip::Tenth => value + chance.pick(&[0.1, -0.1]),
        Slip::DigitsSwapped => {
            let mut digits: Vec<char> = typed(value).replace('.', "").chars().collect();
            let at = usize::try_from(chance.whole(0, 1)).unwrap();
            digits.swap(at, at + 1);
            let text: String = digits.iter().collect();
            text.parse::<f64>().unwrap() / 100.0
        }
        Slip::InchesAsTenths => value.trunc() + (value.fract() * 12.0).round() / 100.0,
        Slip::Bracket => value + chance.pick(&[BRACKET, -BRACKET]),
        // A lower section that is not drawn out hides its length: the scale above it reads too much.
        Slip::RodSection => value + JOINTS[0],
        _ => value,
    }
}

/// One morning: a backsight, then a second benchmark; a slip in one of the two, or a laser that moves between.
fn morning(seed: u64, slip: Slip, tally: &mut Tally) {
    let mut chance = Chance(seed.wrapping_mul(6_364_136_223_846_793_005) + 11);
    let height = chance.between(106.5, 110.5);
    let back = usize::try_from(chance.whole(0, 3)).unwrap();
    let check = (back + usize::try_from(chance.whole(1, 3)).unwrap()) % 4;
    let in_backsight = chance.often(0.6);
    let mut stood_on = (back, check);
    if slip == Slip::OtherBenchmark {
        let other = (back + 1 + usize::try_from(chance.whole(0, 2)).unwrap()) % 4;
        if in_backsight {
            stood_on.0 = other;
        } else {
            stood_on.1 = (check + 1 + usize::try_from(chance.whole(0, 2)).unwrap()) % 4;
        }
    }
    let moved = if slip == Slip::LaserMoved {
        chance.between(0.04, 0.60) * chance.pick(&[1.0, -1.0])
    } else {
        0.0
    };
    let mut shot = |height: f64, on: usize, slips: bool| {
        let read = height - BENCHMARKS[on] - BRACKET + chance.normal(SHOT);
        if slips {
            slipped(&mut chance, slip, read)
        } else {
            read
        }
    };
    let backsight = shot(height, stood_on.0, in_backsight);
    let foresight = shot(height + moved, stood_on.1, !in_backsight);
    if ![backsight, foresight]
        .iter()
        .all(|read| (0.0..=LENGTH).contains(read))
    {
        return;
    }
    let mut crew = Crew::opened_on(lot());
    let set_up = Command::SetUpLaser(SetUpLaser {
        laser: "L1".into(),
        place: Some(at("40 ft", "20 ft")),
        benchmark: format!("BM-{}", back + 1),
        rod: "A".into(),
        text: typed(backsight),
        slope: None,
    });
    // A rod in a joint's gap is refused by itself: nothing to ask about.
    if crew.says(&ground(), set_up).is_err() {
        return;
    }
    let height = crew.state.set_up("S1").unwrap().height();
    let Ok(answer) = crew.check("S1", &format!("BM-{}", check + 1), &typed(foresight)) else {
        return;
    };
    let Outcome::Checked { slips, check, .. } = answer.outcome else {
        panic!("not a check")
    };
    assert_eq!(
        crew.state.set_up("S1").unwrap().height(),
        height,
        "put right silently"
    );
    assert!(slips.len() <= 2);
    tally.all += 1;
    tally.failed += u32::from(check == Check::Failed);
    tally.first += u32::from(slips.first().is_some_and(|asked| is(asked, slip)));
    tally.of_two += u32::from(slips.iter().any(|asked| is(asked, slip)));
}

/// What fails the second benchmark is mostly named by one of the two questions.
#[test]
fn what_the_second_benchmark_shows_is_asked_about_by_its_name() {
    let mut tallies: BTreeMap<Slip, Tally> = BTreeMap::new();
    for seed in 0..days(150) * 4 {
        for slip in SLIPS {
            morning(seed, slip, tallies.entry(slip).or_default());
        }
    }
    let clean = tallies.remove(&Slip::None).unwrap();
    println!(
        "set-ups without a slip: {} of {} failed the second benchmark",
        clean.failed, clean.all
    );
    let sum = |of: fn(&Tally) -> u32| tallies.values().map(of).sum::<u32>();
    let (failed, first, of_two) = (sum(|t| t.failed), sum(|t| t.first), sum(|t| t.of_two));
    println!(
        "set-ups with a slip: {failed} of {} failed it; {first} named first, {of_two} by one of two",
        sum(|t| t.all)
    );
    for (slip, one) in &tallies {
        println!(
            "  {slip:?}: {} of {} failed; {} first, {} of two",
            one.failed, one.all, one.first, one.of_two
        );
    }
    let share = |part: u32, of: u32| f64::from(part) / f64::from(of);
    assert!(share(clean.failed, clean.all) <= 0.02);
    assert!(share(of_two, failed) >= 0.9, "{of_two} of {failed}");
}
