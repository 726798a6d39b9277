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
                if let Err(fault) = world_then.judge(bounds, &hubs) {
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

/// The diagram in the docs.
const DIAGRAM: &str = include_str!("../../../../WAY-IN.md");

/// The crews that are walked: each shows something that the others don't.
const WALKS: [(&str, Bounds); 6] = [
    (
        "one person who comes twice, a moody operator",
        Bounds {
            people: 1,
            machines: 1,
            visits: 2,
            unruly: false,
            moody: true,
            both: false,
            wrong: false,
        },
    ),
    (
        "one person who comes twice and goes in unasked",
        Bounds {
            people: 1,
            machines: 1,
            visits: 2,
            unruly: true,
            moody: false,
            both: false,
            wrong: false,
        },
    ),
    (
        "two people at one machine",
        Bounds {
            people: 2,
            machines: 1,
            visits: 1,
            unruly: false,
            moody: false,
            both: false,
            wrong: false,
        },
    ),
    (
        "one person between two machines, also the wrong one",
        Bounds {
            people: 1,
            machines: 2,
            visits: 1,
            unruly: true,
            moody: false,
            both: false,
            wrong: false,
        },
    ),
    (
        "one person where the keep-outs of two machines overlap",
        Bounds {
            people: 1,
            machines: 2,
            visits: 1,
            unruly: false,
            moody: false,
            both: true,
            wrong: false,
        },
    ),
    (
        "one person for whom a witness says OUT wrongly",
        Bounds {
            people: 1,
            machines: 1,
            visits: 1,
            unruly: false,
            moody: true,
            both: false,
            wrong: true,
        },
    ),
];

/// A line of the diagram, such as `working --> asked: ask`.
fn drawn(edge: &Edge) -> String {
    let name = |phase: Phase| {
        let text = serde_json::to_string(&phase).unwrap();
        text.trim_matches('"').to_owned()
    };
    format!("{} --> {}: {}", name(edge.0), name(edge.2), edge.1)
}

#[test]
fn nothing_lets_a_machine_go_or_a_screen_look_empty_while_somebody_may_be_in() {
    let mut edges = BTreeSet::new();
    let mut states = 0;
    for (what, bounds) in WALKS {
        let walked = walk(bounds);
        println!(
            "{what}: {} states, {} of the hub",
            walked.states, walked.hubs
        );
        states += walked.states;
        edges.extend(walked.edges);
    }
    println!("{states} states in all");
    assert!(states > 100_000, "a walk that is not one: {states} states");
    let found: BTreeSet<String> = edges.iter().map(drawn).collect();
    let diagram: BTreeSet<String> = DIAGRAM
        .lines()
        .map(str::trim)
        .filter(|line| line.contains(" --> ") && line.contains(": "))
        .map(str::to_owned)
        .collect();
    let missing: Vec<&String> = found.difference(&diagram).collect();
    let invented: Vec<&String> = diagram.difference(&found).collect();
    assert!(
        missing.is_empty() && invented.is_empty(),
        "hub/WAY-IN.md: missing {missing:#?}, never walked {invented:#?}"
    );
}
