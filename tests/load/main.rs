//! How long a reading takes to its answer and to every screen, beside a floor that does no more than it must.
//!
//! The floor is measured in the same run, turn by turn with the hub: a bare TCP relay that appends as many bytes to a
//! file, fdatasyncs them, answers, and writes as many bytes to as many sockets. A ratio says what the hub adds to that;
//! it means the same on a slow machine and on a quick one. Nothing is asserted: `cargo bench -p rodcall --bench load`.
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    reason = "a measurement that can't go on says why; its table goes to the terminal"
)]

#[path = "../harness/mod.rs"]
#[expect(dead_code, reason = "the measurement uses a part of the harness")]
mod harness;

mod floor;
mod hub;
mod screens;
mod site;

use tokio::runtime::Builder;

use screens::{Moment, at};
use site::Size;

/// Screens of a measurement: one is in the cab, of many two are supervisors', the others on the ground.
const SCREENS: [usize; 3] = [1, 20, 200];
/// Entries of the day at which turns are measured.
const DAY: [u64; 3] = [500, 2_000, 10_000];
/// Turns that are measured each time.
const TURNS: usize = 200;
/// Marks and set-ups of the jobs on which growth is measured, and when, and on how many screens.
const GROWTH: [(usize, usize); 5] = [(60, 1), (120, 1), (240, 1), (60, 8), (60, 32)];
const GROWN: u64 = 2_000;
const GROWN_SCREENS: usize = 20;
/// More turns than of the other table: processor time is told in hundredths of a second.
const GROWN_TURNS: usize = 600;

fn main() {
    let runtime = Builder::new_current_thread().enable_all().build();
    let runtime = runtime.expect("a runtime");
    println!(
        "A reading is posted, of 60 marks; p50 and p99 in ms, and how many times the floor that is."
    );
    println!(
        "screens  entries  until             hub p50  floor  ratio   hub p99  floor  ratio   CPU a post, ms   bytes to each"
    );
    for screens in SCREENS {
        let crew = hub::Crew::open(Size::USUAL);
        runtime.block_on(measure(&crew, screens));
    }
    println!("\nThe same as the job grows, at entry {GROWN}, with {GROWN_SCREENS} screens.");
    println!("  marks  set-ups   until all screens, p50    CPU a post, ms   bytes to each");
    let sizes = GROWTH.map(|(marks, set_ups)| Size { marks, set_ups });
    for size in sizes {
        let crew = hub::Crew::open(size);
        runtime.block_on(grown(&crew, size));
    }
}

/// The hub alone, on a job of that size.
async fn grown(crew: &hub::Crew, size: Size) {
    let mut hub = hub::Line::open(crew, GROWN_SCREENS).await;
    while hub.head() < GROWN {
        hub.turn().await;
    }
    let (cpu, bytes) = (hub.cpu(), hub.ground_bytes());
    let mut turns = Vec::new();
    for _ in 0..GROWN_TURNS {
        turns.push(hub.turn().await);
    }
    let cpu = hub.cpu().saturating_sub(cpu).as_secs_f64() * 1_000.0 / GROWN_TURNS as f64;
    let bytes = (hub.ground_bytes() - bytes) / GROWN_TURNS;
    let all = at(50, &turns, |turn| turn.all);
    let Size { marks, set_ups } = size;
    println!("{marks:7}  {set_ups:7}   {all:22.2}    {cpu:14.2}   {bytes:13}");
}

/// The hub and the floor, turn by turn, as the day grows.
async fn measure(crew: &hub::Crew, screens: usize) {
    let mut hub = hub::Line::open(crew, screens).await;
    let mut floor: Option<floor::Line> = None;
    for entries in DAY {
        while hub.head() < entries {
            hub.turn().await;
        }
        if floor.is_none() {
            floor = Some(floor::Line::open(screens, hub.sizes()).await);
        }
        let Some(floor) = &mut floor else { return };
        let (cpu, bytes) = (hub.cpu(), hub.ground_bytes());
        let (mut of_hub, mut of_floor) = (Vec::new(), Vec::new());
        for _ in 0..TURNS {
            of_hub.push(hub.turn().await);
            of_floor.push(floor.turn().await);
        }
        let cpu = hub.cpu().saturating_sub(cpu).as_secs_f64() * 1_000.0 / TURNS as f64;
        let bytes = (hub.ground_bytes() - bytes) / TURNS;
        let rows: [(&str, Moment); 3] = [
            ("the answer", |turn| turn.answered),
            ("the cab", |turn| turn.cab),
            ("all screens", |turn| turn.all),
        ];
        for (what, of) in rows {
            let row = [50, 99].map(|percent| {
                let [hub, floor] = [&of_hub, &of_floor].map(|turns| at(percent, turns, of));
                format!("{hub:7.2}  {floor:5.2}  {:5.2}", hub / floor)
            });
            let row = row.join("   ");
            println!("{screens:7}  {entries:7}  {what:16}  {row}   {cpu:14.2}   {bytes:13}");
        }
    }
}
