//! Photos when the laptop dies or its disk is full: what was answered is there, what the log names has its bytes, nothing is
//! left over, and the log goes on.

use std::collections::BTreeSet;
use std::fs;
use std::io::Write as _;
use std::net::TcpStream;
use std::path::Path;
use std::thread;
use std::time::Duration;

use crate::harness::chance::Chance;
use crate::harness::phone::Phone;
use crate::harness::photo::Photo;
use crate::harness::yard::{Yard, prove_laser, reading};
use crate::harness::{rodcall, words};
use crate::shim::Shim;

/// How often the hub is killed.
const KILLS: u32 = 12;
/// Photos that are on their way when it is.
const AT_ONCE: usize = 6;

/// The names of the files in the folder of photos.
fn files(data: &Path) -> BTreeSet<String> {
    let items = fs::read_dir(data.join("photos")).into_iter().flatten();
    let names = items.map(|item| item.expect("a file").file_name());
    names
        .map(|name| name.to_string_lossy().into_owned())
        .collect()
}

/// The files that the log names.
fn named(yard: &Yard) -> BTreeSet<String> {
    let log = yard.truck.log();
    let added = log
        .iter()
        .filter(|entry| entry["body"]["kind"] == "photo_added");
    added
        .map(|entry| format!("{}.jpg", entry["body"]["sha256"].as_str().expect("a hash")))
        .collect()
}

/// Promises and brings photos, one behind the other, until the hub is gone; gives those that were answered.
fn bring(phone: &Phone, photos: &[Photo]) -> Vec<String> {
    let mut answered = Vec::new();
    for photo in photos {
        if phone.say(&photo.name, &photo.promise("P-1")).status == 200
            && photo.comes(phone).status == 200
        {
            answered.push(format!("{}.jpg", photo.sha256()));
        }
    }
    answered
}

#[test]
fn a_hub_that_is_killed_while_photos_come_leaves_neither_an_orphan_nor_a_lie() {
    let mut chance = Chance::new();
    let mut yard = Yard::open();
    let mut ground = yard.ground();
    let mut all = Vec::new();
    for kill in 1..=KILLS {
        let photos: Vec<Photo> = (0..AT_ONCE)
            .map(|at| Photo::new(&format!("photo-{kill:03}-{at}"), 320, 240))
            .collect();
        let moment = Duration::from_micros(chance.below(60_000));
        let (base, cookie) = (ground.base.clone(), ground.cookie.clone());
        let (stopped, photos, answered) = thread::scope(|scope| {
            let brings = scope.spawn(move || {
                let mut phone = Phone::stranger(&base);
                phone.cookie = cookie;
                let answered = bring(&phone, &photos);
                (photos, answered)
            });
            // Not a wait for anything: the kill falls somewhere between two photos, or into one.
            thread::park_timeout(moment);
            let stopped = yard.kill();
            let (photos, answered) = brings.join().expect("a phone");
            (stopped, photos, answered)
        });
        yard = stopped.start();
        ground = ground.at(&yard.hub.base);
        let (kept, told) = (files(&yard.data()), named(&yard));
        assert_eq!(kept, told, "kill {kill}");
        for photo in &answered {
            assert!(told.contains(photo), "kill {kill}: {photo} was answered");
        }
        let proof = rodcall(&["verify".as_ref(), yard.data().as_os_str()]);
        assert!(proof.status.success(), "kill {kill}: {}", words(&proof));
        all.extend(photos);
    }
    // The phone sends again what was not answered; then all are there, once.
    assert_eq!(bring(&ground, &all).len(), all.len());
    let wanted: BTreeSet<String> = all
        .iter()
        .map(|one| format!("{}.jpg", one.sha256()))
        .collect();
    assert_eq!(
        (files(&yard.data()), named(&yard)),
        (wanted.clone(), wanted)
    );
}

#[test]
fn a_photo_that_broke_off_half_way_is_still_owed_and_comes_again() {
    let yard = Yard::open();
    let ground = yard.ground();
    let photo = Photo::new("photo-0001", 400, 300);
    ground.says(&photo.promise("P-1"));
    let host = ground.base.strip_prefix("http://").expect("plain http");
    let half = |phone: &Phone| {
        let mut line = TcpStream::connect(host).expect("a line");
        let head = format!(
            "PUT {} HTTP/1.1\r\nHost: {host}\r\nCookie: {}\r\nContent-Length: {}\r\n\r\n",
            photo.path(),
            phone.cookie,
            photo.bytes.len()
        );
        line.write_all(head.as_bytes()).expect("a head");
        line.write_all(&photo.bytes[..photo.bytes.len() / 2])
            .expect("half a body");
        line
    };
    // The phone walks behind the bank; then the hub dies under another half.
    drop(half(&ground));
    let line = half(&ground);
    let stopped = yard.kill();
    drop(line);
    let yard = stopped.start();
    assert_eq!((files(&yard.data()), named(&yard)), Default::default());
    photo.comes(&ground.at(&yard.hub.base)).of(200);
    assert_eq!(files(&yard.data()), named(&yard));
}

#[test]
fn a_full_disk_refuses_photos_and_the_log_goes_on() {
    let shim = Shim::build();
    let yard = shim.open_yard();
    let ground = yard.ground();
    prove_laser(&ground);
    let photo = Photo::new("photo-0001", 400, 300);
    ground.says(&photo.promise("P-1"));
    shim.fails("p");
    let refused = photo.comes(&ground).of(507);
    let said = refused["english"].as_str().expect("words");
    assert!(said.contains("all but full"), "{said}");
    assert_ne!(refused["english"], refused["spanish"]);
    assert_eq!((files(&yard.data()), named(&yard)), Default::default());
    // The crew digs on.
    let answer = ground.says(&reading("P-1", "4.70"));
    assert_eq!(answer["outcome"]["kind"], "called", "{answer}");
    shim.fails("-");
    photo.comes(&ground).of(200);
    assert_eq!(files(&yard.data()), named(&yard));
}
