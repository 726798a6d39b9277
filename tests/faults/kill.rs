//! The hub is killed again and again while the crew talks.

use std::fs;
use std::thread;
use std::time::Duration;

use crate::crew::{Crew, assert_kept};
use crate::harness::chance::Chance;
use crate::harness::yard::{Yard, prove_laser};
use crate::harness::{rodcall, words};

/// How often it is killed.
const KILLS: u32 = 24;

#[test]
fn what_was_answered_is_in_the_log_once_however_often_the_hub_is_killed() {
    let mut chance = Chance::new();
    let mut yard = Yard::open();
    prove_laser(&yard.ground());
    let mut crew = Crew::of(&yard);
    for kill in 1..=KILLS {
        let enough = usize::try_from(chance.below(25)).expect("a small number");
        let moment = Duration::from_micros(chance.below(4_000));
        let mut screen = yard.truck.socket();
        screen.view("ground", |_| true);
        let stopped = crew.talk(enough, |_| {
            // Not a wait for anything: the kill falls somewhere between two requests, or into one.
            thread::park_timeout(moment);
            yard.kill()
        });
        screen.until_closed();
        let seen = screen
            .heard
            .iter()
            .filter_map(|value| value["seq"].as_u64())
            .max();
        let day = fs::read_to_string(stopped.day_file()).expect("the day");
        let kept = day.matches('\n').count() as u64;
        assert!(
            seen <= Some(kept),
            "kill {kill}: a screen showed {seen:?} of {kept} entries"
        );
        yard = stopped.start();
        crew.find(&yard.hub.base);
        let log = yard.truck.log();
        let answers = crew.answers.lock().expect("answers").clone();
        assert_kept(&answers, &log, &format!("kill {kill}"));
    }
    // All phones send what they had kept; then everything is proven.
    let before = crew.answers.lock().expect("answers").len();
    crew.talk(20, |_| ());
    let answers = crew.answers.lock().expect("answers").clone();
    assert!(answers.len() >= before + 20);
    assert_kept(&answers, &yard.truck.log(), "the end");
    let stopped = yard.stop();
    let proof = rodcall(&["verify".as_ref(), stopped.data().as_os_str()]);
    assert!(proof.status.success(), "{}", words(&proof));
}
