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

use std::time::Duration;

use tokio::runtime::Builder;

use screens::Turn;

/// One of the moments of a turn.
type Moment = fn(&Turn) -> Duration;

/// Screens, and turns that are measured with them.
const LOADS: [(usize, usize); 3] = [(1, 2_000), (20, 1_500), (200, 600)];
/// Turns before any is counted: lines, caches and files are warm then.
const WARM: usize = 20;

fn main() {
    let runtime = Builder::new_current_thread().enable_all().build();
    let runtime = runtime.expect("a runtime");
    println!("A reading is posted; p50 and p99 in ms, and how many times the floor that is.");
    println!("screens  until             hub p50  floor  ratio   hub p99  floor  ratio");
    for (screens, turns) in LOADS {
        let crew = hub::Crew::open();
        let (hub, floor) = runtime.block_on(measure(&crew, screens, turns));
        let rows: [(&str, Moment); 3] = [
            ("the answer", |turn| turn.answered),
            ("the first screen", |turn| turn.first),
            ("all screens", |turn| turn.all),
        ];
        for (what, of) in rows {
            let row = [50, 99].map(|percent| {
                let [hub, floor] = [&hub, &floor].map(|turns| at(percent, turns, of));
                format!("{hub:7.2}  {floor:5.2}  {:5.2}", hub / floor)
            });
            println!("{screens:7}  {what:16}  {}", row.join("   "));
        }
    }
}

/// The hub and the floor, turn by turn.
async fn measure(crew: &hub::Crew, screens: usize, turns: usize) -> (Vec<Turn>, Vec<Turn>) {
    let mut hub = hub::Line::open(crew, screens).await;
    for _ in 0..WARM {
        hub.turn().await;
    }
    let mut floor = floor::Line::open(screens, hub.sizes()).await;
    for _ in 0..WARM {
        floor.turn().await;
    }
    let (mut of_hub, mut of_floor) = (Vec::new(), Vec::new());
    for _ in 0..turns {
        of_hub.push(hub.turn().await);
        of_floor.push(floor.turn().await);
    }
    (of_hub, of_floor)
}

/// A percentile, in milliseconds.
fn at(percent: usize, turns: &[Turn], of: Moment) -> f64 {
    let mut times: Vec<Duration> = turns.iter().map(of).collect();
    times.sort();
    let place = (times.len() * percent).div_ceil(100).saturating_sub(1);
    times[place].as_secs_f64() * 1_000.0
}
