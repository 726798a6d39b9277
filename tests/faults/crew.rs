//! Several phones that talk at once, each with an outbox: what is not answered is kept and sent again with its key.

use std::sync::Mutex;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::thread;

use serde_json::{Value, json};

use crate::harness::phone::{Phone, now_ms};
use crate::harness::wait;
use crate::harness::yard::{Yard, reading};

/// Phones that talk at once.
const PHONES: usize = 4;
/// Marks that they read.
const MARKS: [&str; 3] = ["P-1", "P-2", "P-3"];

/// What a phone was answered.
#[derive(Clone, Debug)]
pub(crate) struct Answered {
    /// The phone.
    pub(crate) device: String,
    /// Its key.
    pub(crate) key: String,
    /// The answer.
    pub(crate) answer: Value,
}

/// A phone with what it has still to send.
pub(crate) struct Member {
    phone: Phone,
    device: String,
    said: u64,
    waiting: Option<(String, i64, Value)>,
}

impl Member {
    /// What it says next: a reading at one mark after the other, or where the machine stands.
    fn next(&mut self) -> (String, i64, Value) {
        self.said += 1;
        let mark = MARKS[usize::try_from(self.said).unwrap_or(0) % MARKS.len()];
        let command = if self.said.is_multiple_of(2) {
            reading(mark, &format!("4.{}", 60 + self.said % 30))
        } else {
            let at = json!({ "x": self.said * 10_000, "y": 0 });
            json!({ "kind": "place_machine", "machine": "EX-1", "at": at })
        };
        (
            format!("{}-{:06}", self.device, self.said),
            now_ms(),
            command,
        )
    }

    /// Talks until told to be quiet or until the hub is gone.
    fn talk(&mut self, quiet: &AtomicBool, told: &(impl Fn(Answered) + Sync)) {
        while !quiet.load(Ordering::SeqCst) {
            let (key, made_at, command) = match self.waiting.take() {
                Some(kept) => kept,
                None => self.next(),
            };
            let reply = self.phone.say_made_at(&key, made_at, &command);
            match reply.status {
                200 => told(Answered {
                    device: self.device.clone(),
                    key,
                    answer: reply.json(),
                }),
                // Kept, and sent again: the hub is gone, busy or closing.
                0 | 429 | 503 => {
                    self.waiting = Some((key, made_at, command));
                    if reply.status == 0 {
                        return;
                    }
                }
                // Somebody else said where the machine stands after this was made: refused, and nothing is entered.
                409 if reply.text.contains("\"overtaken\"") => {}
                status => panic!("{key}: {status} {}", reply.text),
            }
        }
    }
}

/// The crew, with all that it was ever answered.
pub(crate) struct Crew {
    members: Vec<Member>,
    /// Every answer, in the order in which they came.
    pub(crate) answers: Mutex<Vec<Answered>>,
}

impl Crew {
    /// A crew that has come in.
    pub(crate) fn of(yard: &Yard) -> Self {
        let member = |_| {
            let phone = yard.ground();
            Member {
                device: phone.device(),
                phone,
                said: 0,
                waiting: None,
            }
        };
        Self {
            members: (0..PHONES).map(member).collect(),
            answers: Mutex::default(),
        }
    }

    /// The hub is at another address now.
    pub(crate) fn find(&mut self, base: &str) {
        for member in &mut self.members {
            member.phone = member.phone.at(base);
        }
    }

    /// All talk at once until `enough` answers have come and `then` is done.
    pub(crate) fn talk<T>(
        &mut self,
        enough: usize,
        then: impl FnOnce(&Mutex<Vec<Answered>>) -> T,
    ) -> T {
        let (quiet, count) = (AtomicBool::new(false), AtomicUsize::new(0));
        let (members, answers) = (&mut self.members, &self.answers);
        let told = |answered| {
            answers.lock().expect("answers").push(answered);
            count.fetch_add(1, Ordering::SeqCst);
        };
        thread::scope(|scope| {
            let (quiet, told) = (&quiet, &told);
            for member in members {
                scope.spawn(move || member.talk(quiet, told));
            }
            wait(
                || "the crew's answers".to_owned(),
                || (count.load(Ordering::SeqCst) >= enough).then_some(()),
            );
            let done = then(answers);
            quiet.store(true, Ordering::SeqCst);
            done
        })
    }
}

/// Every answer that was given is in the log: its entries, under its key, once.
pub(crate) fn assert_kept(answers: &[Answered], log: &[Value], seed: &str) {
    for answered in answers {
        let number = |name: &str| answered.answer[name].as_u64().expect("a number");
        let (first, last) = (number("first"), number("last"));
        let of_key: Vec<u64> = log
            .iter()
            .filter(|entry| entry["key"] == answered.key.as_str())
            .filter(|entry| entry["by"]["device"] == answered.device.as_str())
            .map(|entry| entry["seq"].as_u64().expect("a number"))
            .collect();
        let wanted: Vec<u64> = (first..=last).collect();
        assert_eq!(of_key, wanted, "{seed}: {answered:?}");
    }
}
