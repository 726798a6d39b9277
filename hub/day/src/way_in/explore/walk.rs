//! The walk itself: breadth first, every state once; and the diagram in the docs, held to what was walked.

use std::collections::{BTreeSet, VecDeque};

use super::crew::{Post, World};
use super::hubs::Hubs;
use super::{Bounds, MACHINES, Message};
use crate::way_in::{Phase, WayIn};

/// From which phase, by which word, to which phase.
type Edge = (Phase, &'static str, Phase);

struct Walked {
    states: usize,
    hubs: usize,
    edges: BTreeSet<Edge>,
}

fn walk(bounds: Bounds) -> Walked {
    let mut hubs = Hubs::default();
    let mut post = Post::default();
    let mut edges = BTreeSet::new();
    let mut noted = BTreeSet::new();
    let first = World {
        hub: hubs.number(WayIn::default()),
        ..World::default()
    };
    let mut known = BTreeSet::from([first.packed()]);
    let mut open = VecDeque::from([first]);
    while let Some(world) = open.pop_front() {
        let mut next = world.acts(bounds, &hubs, &mut post);
        for message in post.on_the_way(world.sent) {
            let hub = hubs.after(world.hub, message);
            if noted.insert((world.hub, hub, message.word())) {
                note(&mut edges, &hubs, world.hub, hub, message);
            }
            next.push(World { hub, ..world });
        }
        let day = world.next_day(&mut hubs);
        note(&mut edges, &hubs, world.hub, day.hub, Message::NextDay);
        next.push(day);
        for world_then in next {
            if known.insert(world_then.packed()) {
                if let Err(fault) = world_then.judge(&hubs) {
                    let sent: Vec<Message> = post.on_the_way(world_then.sent).collect();
                    panic!("{fault}\nbefore {world:?}\nafter {world_then:?}\nsent {sent:?}");
                }
                open.push_back(world_then);
            }
        }
    }
    Walked {
        states: known.len(),
        hubs: hubs.count(),
        edges,
    }
}

fn note(edges: &mut BTreeSet<Edge>, hubs: &Hubs, from: u16, to: u16, message: Message) {
    for machine in 0..MACHINES.len() {
        let (from, to) = (
            hubs.seen(from).phases[machine],
            hubs.seen(to).phases[machine],
        );
        if from != to {
            edges.insert((from, message.word(), to));
        }
    }
}

const ALONE: Bounds = Bounds {
    people: 1,
    machines: 1,
    visits: 2,
    unruly: true,
    moody: true,
};

fn walked(what: &str, bounds: Bounds) -> Walked {
    let walked = walk(bounds);
    println!(
        "{what}: {} states, {} of the hub",
        walked.states, walked.hubs
    );
    walked
}

#[test]
fn one_person_who_comes_twice() {
    let walked = walked("one person, one machine, two visits", ALONE);
    assert!(walked.states > 1_000);
}

#[test]
fn two_people_at_one_machine() {
    let bounds = Bounds {
        people: 2,
        visits: 1,
        moody: false,
        unruly: false,
        ..ALONE
    };
    let walked = walked("two people, one machine", bounds);
    assert!(walked.states > 1_000);
}

#[test]
fn one_person_between_two_machines() {
    let bounds = Bounds {
        machines: 2,
        visits: 1,
        moody: false,
        ..ALONE
    };
    let walked = walked("one person, two machines", bounds);
    assert!(walked.states > 1_000);
}
