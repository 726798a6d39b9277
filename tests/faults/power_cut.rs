//! The power goes at any moment: what a cut leaves is made from what was synced, and the hub starts on it.
//!
//! Killing a process loses nothing that it wrote; a power cut loses all that was not synced. So the shim records writes
//! and syncs, and an image holds the synced part of the day, some of the rest, and an index from about then.

use std::fs;
use std::path::Path;

use crate::crew::{Answered, Crew, assert_kept};
use crate::harness::chance::Chance;
use crate::harness::yard::{SITE, Yard, day_file, prove_laser, serve, write_site};
use crate::harness::{folder, rodcall, words};
use crate::shim::Shim;

/// How many cuts are tried.
const CUTS: u32 = 12;

/// What a cut leaves of the part that was not synced.
fn torn(rest: &[u8], chance: &mut Chance) -> Vec<u8> {
    let length = usize::try_from(chance.below(rest.len() as u64 + 1)).expect("a length");
    match chance.below(3) {
        0 => Vec::new(),
        // The front of it, as written.
        1 => rest[..length].to_vec(),
        // The file has grown and its blocks were never written.
        _ => vec![0; length],
    }
}

/// An image of the yard's folder as a power cut now might leave it, with the answers that had been given before.
fn cut(yard: &Yard, shim: &Shim, image: &Path, chance: &mut Chance) {
    let data = image.join("data");
    copy(&yard.data(), &data);
    let done = shim.done();
    assert!(done.named, "the day's file has no name on the disk yet");
    let day = day_file(&yard.data());
    let bytes = fs::read(&day).expect("the day");
    let mut left = bytes[..done.synced].to_vec();
    left.extend(torn(&bytes[done.synced..], chance));
    let name = day.file_name().expect("a name");
    fs::write(data.join("log").join(name), left).expect("a day after a cut");
    write_site(image, SITE);
}

/// Copies a folder that is being written to; what goes away meanwhile is left out.
fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder");
    for item in fs::read_dir(from).expect("a folder") {
        let item = item.expect("an item");
        let target = to.join(item.file_name());
        if item.path().is_dir() {
            copy(&item.path(), &target);
        } else if let Ok(bytes) = fs::read(item.path()) {
            fs::write(target, bytes).expect("a copy");
        }
    }
}

#[test]
fn what_was_answered_or_shown_before_a_power_cut_is_there_after_it() {
    let mut chance = Chance::new();
    let shim = Shim::build();
    let yard = shim.open_yard();
    prove_laser(&yard.ground());
    let mut crew = Crew::of(&yard);
    for number in 1..=CUTS {
        let image = folder();
        let enough = usize::try_from(chance.below(30)).expect("a small number");
        let mut screen = yard.truck.socket();
        let answers: Vec<Answered> = crew.talk(enough, |answers| {
            screen.view("ground", |_| true);
            // What was answered before the image is made must be in it; what comes meanwhile may be.
            let before = answers.lock().expect("answers").clone();
            cut(&yard, &shim, image.path(), &mut chance);
            before
        });
        let day = fs::read_to_string(day_file(&image.path().join("data")));
        let whole = day.map_or(0, |text| text.matches('\n').count() as u64);
        let shown = screen
            .heard
            .iter()
            .filter_map(|value| value["seq"].as_u64())
            .max();
        let hub = serve(image.path());
        let log = hub.laptop().log();
        assert_kept(&answers, &log, &format!("cut {number} of {whole} lines"));
        assert!(
            shown <= Some(log.len() as u64),
            "cut {number}: {shown:?} was shown"
        );
        assert!(hub.stop().success());
        let proof = rodcall(&["verify".as_ref(), image.path().join("data").as_os_str()]);
        assert!(proof.status.success(), "cut {number}: {}", words(&proof));
    }
}

#[test]
fn nothing_is_answered_or_shown_before_it_is_synced() {
    let shim = Shim::build();
    let yard = shim.open_yard();
    let ground = yard.ground();
    prove_laser(&ground);
    let mut screen = ground.socket();
    let day = day_file(&yard.data());
    for number in 0..50 {
        let key = format!("synced-{number:04}");
        let at = serde_json::json!({ "x": number * 10_000, "y": 0 });
        let place = serde_json::json!({ "kind": "place_machine", "machine": "EX-1", "at": at });
        let answer = ground.say(&key, &place).of(200);
        let synced = shim.done().synced;
        let bytes = fs::read(&day).expect("the day");
        let safe = String::from_utf8_lossy(&bytes[..synced]).into_owned();
        assert!(safe.contains(&key), "{key} was answered and is not synced");
        let shown = screen.until("its view", |value| {
            value["topic"] == "ground" && value["seq"].as_u64() >= answer["last"].as_u64()
        });
        let lines = String::from_utf8_lossy(&fs::read(&day).expect("the day")[..shim.done().synced])
            .matches('\n')
            .count() as u64;
        assert!(
            shown["seq"].as_u64() <= Some(lines),
            "{shown} is not synced"
        );
    }
}
