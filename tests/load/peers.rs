//! The same minute wired from general-purpose parts: a record is kept and told to every screen by Redis and by `PostgreSQL`,
//! turn by turn beside the hub and the bare relay, in one run.
//!
//! Each keeps what it answers for before it answers: Redis with its append-only file and `appendfsync always`, `PostgreSQL` with its
//! defaults (`synchronous_commit`). Records have 300 bytes, and no more goes to a screen: they know nothing of a dig. Both listen on
//! loopback, from Debian's packages, started in a folder of their own and gone with it. Nothing is asserted:
//! `cargo bench -p rodcall --features peers --bench peers`.
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
#[expect(dead_code, reason = "the measurement uses a part of it")]
mod hub;
#[path = "peers/postgres.rs"]
mod postgres;
#[path = "peers/redis_server.rs"]
mod redis_server;
#[expect(dead_code, reason = "the measurement uses a part of it")]
mod screens;
#[path = "peers/servers.rs"]
mod servers;
mod site;

use tokio::runtime::Builder;

use screens::at;

/// Screens of a measurement.
const SCREENS: [usize; 3] = [1, 20, 200];
/// Turns that are measured each time, after [`WARM`] that are not.
const TURNS: usize = 300;
/// Turns until everybody has warmed up; the hub is then past entry 500 of its day.
const WARM: usize = 120;
/// Bytes of a record.
const RECORD: usize = 300;

fn main() {
    let runtime = Builder::new_current_thread().enable_all().build();
    let runtime = runtime.expect("a runtime");
    println!(
        "A record is posted; until it is answered and until all screens have it, p50 and p99 in ms."
    );
    println!(
        "screens  by           answered p50     p99   all screens p50     p99   times the relay, p50"
    );
    for screens in SCREENS {
        let crew = hub::Crew::open(site::Size::USUAL);
        let (redis, postgres) = (redis_server::Server::open(), postgres::Server::open());
        runtime.block_on(measure(&crew, &redis, &postgres, screens));
    }
}

async fn measure(
    crew: &hub::Crew,
    redis: &redis_server::Server,
    postgres: &postgres::Server,
    screens: usize,
) {
    let mut hub = hub::Line::open(crew, screens).await;
    let mut redis = redis_server::Line::open(redis, screens).await;
    let mut postgres = postgres::Line::open(postgres, screens).await;
    for _ in 0..WARM {
        hub.turn().await;
        redis.turn().await;
        postgres.turn().await;
    }
    let mut floor = floor::Line::open(screens, hub.sizes()).await;
    let (mut of_hub, mut of_floor) = (Vec::new(), Vec::new());
    let (mut of_redis, mut of_postgres) = (Vec::new(), Vec::new());
    for _ in 0..TURNS {
        of_floor.push(floor.turn().await);
        of_hub.push(hub.turn().await);
        of_redis.push(redis.turn().await);
        of_postgres.push(postgres.turn().await);
    }
    let relay = at(50, &of_floor, |turn| turn.all);
    let rows = [
        ("bare relay", of_floor),
        ("the hub", of_hub),
        ("Redis", of_redis),
        ("PostgreSQL", of_postgres),
    ];
    for (by, turns) in rows {
        let answered = [50, 99].map(|percent| at(percent, &turns, |turn| turn.answered));
        let all = [50, 99].map(|percent| at(percent, &turns, |turn| turn.all));
        let times = all[0] / relay;
        println!(
            "{screens:7}  {by:11}  {:12.2}  {:6.2}   {:15.2}  {:6.2}   {times:10.1}",
            answered[0], answered[1], all[0], all[1]
        );
    }
}
