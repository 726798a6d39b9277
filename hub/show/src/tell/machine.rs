//! Sentences about where machines stand, who spots for them, near misses, and how a day begins.

use earthwork::length::Length;

use super::{Told, feet};
use day::entry::Body;
use day::near::Near;
use day::said::battery::BatterySaid;
use day::said::near_miss::{MachineThen, NearMissOpened, NearMissTold, name};
use day::said::slew::{SlewProposed, SlewSide};
use day::said::start_checks::{DayReady, StartCheckSaid};
use words::Text;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::MachinePlaced(b) => {
            let (x, y) = (feet(b.at.x), feet(b.at.y));
            Told::new(words::tell_machine::stands_at(&b.machine, &x, &y)).machine(&b.machine)
        }
        Body::MachineMoved(b) => {
            Told::new(words::tell_machine::has_moved(&b.machine)).machine(&b.machine)
        }
        Body::StartCheckSaid(b) => start_check(b),
        Body::DayReady(b) => ready(b),
        Body::NearFound(b) => near(&b.machine, &b.near),
        Body::SlewProposed(b) => slew(b),
        Body::SlewAgreed(b) => {
            Told::new(words::tell_machine::agreed_with(&b.machine, &b.with)).machine(&b.machine)
        }
        Body::SlewVoided(b) => {
            Told::new(words::tell_machine::moved(&b.machine, &b.with)).machine(&b.machine)
        }
        Body::SpotterSet(b) => {
            Told::new(words::tell_machine::spots_for(&b.person, &b.machine)).machine(&b.machine)
        }
        Body::SpotterGone(b) => Told::new(words::tell_machine::spots_for_no_more(
            &b.person, &b.machine,
        ))
        .machine(&b.machine),
        Body::BatterySaid(b) => battery(b),
        Body::NearMissOpened(b) => opened(b),
        Body::NearMissTold(b) => told(b),
        _ => Told::default(),
    }
}

fn opened(b: &NearMissOpened) -> Told {
    Told::new(words::tell_machine::near_miss(
        &name(b.number),
        &Text::joined(&b.machines.iter().map(then).collect::<Vec<_>>(), "; "),
    ))
}

/// Where it stood, its call, who asked or was in.
fn then(one: &MachineThen) -> Text {
    let stood = match place(one) {
        Some(place) => Text::alike(&format!("{} {place}", one.machine)),
        None => words::tell_machine::place_unknown(&one.machine),
    };
    let call = one.call.as_ref().map(|call| call.text.clone());
    let people = people(one);
    let people = (!people.is_empty()).then(|| Text::alike(&people));
    let said: Vec<Text> = [Some(stood), call, people].into_iter().flatten().collect();
    Text::joined(&said, ", ")
}

fn place(one: &MachineThen) -> Option<String> {
    let at = one.place.as_ref()?.at;
    Some(format!("({}, {})", feet(at.x), feet(at.y)))
}

fn people(one: &MachineThen) -> String {
    let names: Vec<&str> = one.people.iter().map(|one| one.person.as_str()).collect();
    names.join(", ")
}

fn told(b: &NearMissTold) -> Told {
    let name = name(b.number);
    if b.closed {
        Told::new(words::tell_machine::near_miss_closed(&name, &b.words))
    } else {
        Told::new(Text::alike(&format!("{name}: {}", b.words)))
    }
}

fn start_check(b: &StartCheckSaid) -> Told {
    Told::new(Text::in_each(|language| {
        let signals: Vec<&str> = b.signals.iter().map(|one| one.word(language)).collect();
        let said = [signals.join(", "), b.value.clone()];
        let said: Vec<String> = said.into_iter().filter(|part| !part.is_empty()).collect();
        format!("{}: {}", b.check.name(language), said.join("; "))
    }))
}

fn ready(b: &DayReady) -> Told {
    let (said, of) = (b.said.len(), b.said.len() + b.overrides.len());
    let mut told = vec![words::tell_machine::day_ready(&said, &of)];
    told.extend(
        b.overrides.iter().map(|one| {
            Text::in_each(|language| format!("{}: {}", one.check.name(language), one.why))
        }),
    );
    Told::new(Text::joined(&told, " – "))
}

fn battery(b: &BatterySaid) -> Told {
    let percent = b.percent.map(|percent| format!(" ({percent} %)"));
    let percent = percent.unwrap_or_default();
    let what = if b.low {
        words::tell_machine::battery_low_hands_soon()
    } else {
        words::tell_machine::battery_charges()
    };
    Told::new(words::tell_machine::battery(&b.machine, &what, &percent)).machine(&b.machine)
}

/// What is near a machine that was placed, one after the other.
fn near(machine: &str, near: &[Near]) -> Told {
    let each: Vec<Text> = near.iter().map(of_near).collect();
    Told::new(words::tell_machine::near(
        &machine,
        &Text::joined(&each, "; "),
    ))
    .machine(machine)
}

fn of_near(near: &Near) -> Text {
    match near {
        Near::CanMeet {
            other,
            apart,
            needs,
        } => {
            let (apart, needs) = (feet(*apart), feet(*needs));
            words::tell_machine::can_meet_apart_needed(&other, &apart, &needs)
        }
        Near::TailAtMachine { other, apart, .. } => tail(other, *apart),
        Near::TailAtFace { zone, apart, .. } => tail(zone, *apart),
        Near::TailAtWall {
            structure, apart, ..
        } => tail(structure, *apart),
        Near::TailAtPile { pile, apart, .. } => tail(pile, *apart),
        Near::OnSlope { zone, inside, .. } => {
            let inside = feet(*inside);
            words::tell_machine::tracks_inside_slope_competent_person(&inside, &zone)
        }
        Near::Overhead {
            line, clearance, ..
        } => {
            let clearance = feet(*clearance);
            words::tell_machine::can_come_within_overhead_spotter(&clearance, &line)
        }
    }
}

fn tail(at: &str, apart: Length) -> Text {
    let apart = feet(apart);
    words::tell_machine::its_tail_pinches_at_away(&at, &apart)
}

fn slew(b: &SlewProposed) -> Told {
    let [one, other] = &b.sides;
    let note = if b.note.is_empty() {
        String::new()
    } else {
        format!(" – {}", b.note)
    };
    let side = |side: &SlewSide| {
        let of = Text::in_each(|language| side.keeps_out_of.word(language).to_owned());
        words::tell_machine::keeps_out_of(&side.machine, &of)
    };
    Told::new(Text::in_each(|language| {
        let [one, other] = [one, other].map(|one| side(one).take(language));
        format!("{one}, {other}{note}")
    }))
}
