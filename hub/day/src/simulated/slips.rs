//! Slips thrown into simulated days: how many are asked about before anybody sees them, and how many clean readings are.

use std::collections::BTreeMap;

use earthwork::slip::Mode;

use super::{Came, Chance, HEIGHT, SHOT, days, digging, marks, send, typed};
use crate::entry::Body;
use crate::given::{Crew, reading};
use crate::said::reading::TakeReading;
use crate::time::{minutes, seconds};

/// Smaller slips are not counted: the call is wrong by less than three tenths.
const COUNTS_FROM: f64 = 0.3;
/// This share of the readings is slipped.
const SLIPPED: f64 = 0.15;

#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Slip {
    WholeFoot,
    DigitsSwapped,
    InchesAsTenths,
    OtherMark,
    WrongWay,
}

/// What the rules can know: nothing of a first reading but its target; where the ground was; that it was nearly there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Stage {
    /// No reading before.
    First,
    /// The reading before was more than 0.6 ft from grade.
    Bulk,
    /// The reading before was within 0.6 ft of grade: this one may be the last.
    Finish,
}

#[derive(Default)]
struct Tally {
    /// (asked, all) of slips of 0.3 ft and more.
    slips: BTreeMap<(Stage, Slip), (u32, u32)>,
    clean: (u32, u32),
    /// Readings whose elevation is not what was typed makes it.
    changed: u32,
}

impl Tally {
    fn share(&self, of: impl Fn(Stage, Slip) -> bool) -> (f64, u32) {
        let (asked, all) = self
            .slips
            .iter()
            .filter(|((stage, slip), _)| of(*stage, *slip))
            .fold((0, 0), |sum, (_, one)| (sum.0 + one.0, sum.1 + one.1));
        (f64::from(asked) / f64::from(all.max(1)), all)
    }
}

/// One day: mark after mark is dug down to grade, with a look now and then.
fn day(seed: u64, tally: &mut Tally) {
    let mut chance = Chance(seed);
    let mut crew = digging();
    let all = marks();
    let mut left = None;
    for (n, (mark, dig_to)) in all.iter().enumerate() {
        let mut dev = chance.between(0.3, 3.5);
        let mut stage = Stage::First;
        for _ in 0..8 {
            crew.wait(minutes(5) + seconds(30));
            let shot = dig_to + dev + chance.normal(SHOT);
            let clean = reading(mark, &typed(HEIGHT - shot));
            let slipped = chance
                .often(SLIPPED)
                .then(|| slip(&mut chance, &clean, dev, (n, &all), left))
                .flatten();
            if let Some((kind, wrong)) = slipped {
                let came = send(&mut crew, wrong);
                let asked = matches!(came, Came::Asked(_));
                let sums = tally.slips.entry((stage, kind)).or_default();
                *sums = (sums.0 + u32::from(asked), sums.1 + 1);
                // Whatever came of it, the crew finds out and sends what was meant.
                let restates = match came {
                    Came::Taken(id) => Some(id),
                    Came::Asked(_) => None,
                };
                let meant = TakeReading { restates, ..clean };
                if let Came::Asked(id) = send(&mut crew, meant.clone()) {
                    let sure = Some(id);
                    send(&mut crew, TakeReading { sure, ..meant });
                }
            } else {
                tally.clean.1 += 1;
                if let Came::Asked(id) = send(&mut crew, clean.clone()) {
                    tally.clean.0 += 1;
                    let sure = Some(id);
                    send(&mut crew, TakeReading { sure, ..clean });
                }
            }
            stage = if dev > 0.6 {
                Stage::Bulk
            } else {
                Stage::Finish
            };
            if dev < 0.10 {
                break;
            }
            // The operator takes most of it, and the last of it to within half a tenth.
            dev = if dev > 0.45 {
                dev * chance.between(0.15, 0.5)
            } else {
                chance.normal(0.05)
            };
        }
        left = Some((n, dev));
    }
    tally.changed += changed(&crew);
}

/// A slipped reading whose call would be wrong by three tenths or more; none when this kind would not be.
fn slip(
    chance: &mut Chance,
    clean: &TakeReading,
    dev: f64,
    (n, all): (usize, &[(String, f64)]),
    left: Option<(usize, f64)>,
) -> Option<(Slip, TakeReading)> {
    let kind = chance.pick(&[
        Slip::WholeFoot,
        Slip::DigitsSwapped,
        Slip::InchesAsTenths,
        Slip::OtherMark,
        Slip::WrongWay,
    ]);
    let value: f64 = clean.text.parse().unwrap();
    let mut wrong = clean.clone();
    let off = match kind {
        Slip::WholeFoot => {
            let by = chance.pick(&[1.0, -1.0]);
            wrong.text = typed(value + by);
            by
        }
        Slip::DigitsSwapped => {
            let digits = clean.text.replace('.', "");
            let at = chance.pick(&[0, 1]);
            let mut swapped: Vec<char> = digits.chars().collect();
            swapped.swap(at, at + 1);
            let text: String = swapped.iter().collect();
            let other = text.parse::<f64>().unwrap() / 100.0;
            wrong.text = typed(other);
            other - value
        }
        Slip::InchesAsTenths => {
            // A rod in inches, typed on the tenths pad: 7 ft 10 in as 7.10.
            let inches = (value.fract() * 12.0).round();
            let other = value.trunc() + inches / 100.0;
            wrong.text = typed(other);
            other - value
        }
        Slip::OtherMark => {
            // The page has gone on to this mark; the rod still stands on the one that was just finished.
            let (before, its_dev) = left.filter(|(before, _)| before + 1 == n)?;
            let other = HEIGHT - all[before].1 - its_dev;
            wrong.text = typed(other);
            other - value
        }
        Slip::WrongWay => {
            if !(0.15..=1.5).contains(&dev) {
                return None;
            }
            wrong.mode = Mode::ReceiverLow;
            wrong.text = format!("{:.1}", (dev * 20.0).round() / 2.0);
            2.0 * dev
        }
    };
    (off.abs() >= COUNTS_FROM).then_some((kind, wrong))
}

/// Readings of a day whose elevation is not that of the text that was typed.
fn changed(crew: &Crew) -> u32 {
    let count = crew
        .log
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::ReadingTaken(taken) => Some(&taken.reading),
            Body::ReadingAsked(asked) => Some(&asked.reading),
            _ => None,
        })
        .filter(|reading| reading.mode == Mode::Rod)
        .filter(|reading| {
            let value = earthwork::length::parse(&format!("{} ft", reading.text)).unwrap();
            reading.elevation != reading.height - value || reading.value != Some(value)
        })
        .count();
    u32::try_from(count).unwrap()
}

/// What the rules can know, they ask about; a first reading of a mark has nothing to be held against but the mark that was
/// just left and its own target.
#[test]
fn slips_are_asked_about_and_clean_readings_are_left_alone() {
    let mut tally = Tally::default();
    for seed in 0..days(150) {
        day(seed, &mut tally);
    }
    let (finish, n) = tally.share(|stage, _| stage == Stage::Finish);
    let (later, _) = tally.share(|stage, _| stage != Stage::First);
    let (all, every) = tally.share(|_, _| true);
    let clean = f64::from(tally.clean.0) / f64::from(tally.clean.1);
    println!(
        "slips of 0.3 ft and more near grade: {finish:.3} of {n} asked; with any reading before: {later:.3}"
    );
    println!("all slips of 0.3 ft and more: {all:.3} of {every} asked");
    println!("clean readings: {clean:.4} of {} asked", tally.clean.1);
    for ((stage, slip), (asked, of)) in &tally.slips {
        println!("  {stage:?} {slip:?}: {asked} of {of}");
    }
    assert!(n > 100, "{n}");
    assert_eq!(tally.changed, 0, "nothing is ever put right silently");
    assert!(clean <= 0.02, "{clean}");
    assert!(finish >= 0.9, "{finish}");
}
