//! Photos: promised, brought, shown to whoever may see them; refused with a reason; carried in exports and proven there.

use std::fs;
use std::path::Path;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use serde_json::{Value, json};

use crate::harness::phone::{Phone, now_ms};
use crate::harness::photo::Photo;
use crate::harness::yard::{Yard, prove_laser, reading};
use crate::harness::{folder, rodcall, words};

/// The photos of the supervisor's page, once they fit.
fn photos(yard: &Yard, fits: impl Fn(&Value) -> bool) -> Value {
    let view = yard
        .truck
        .socket()
        .view("supervisor", |view| fits(&view["record"]["photos"]));
    view["record"]["photos"].clone()
}

/// A yard with a photo of P-1 that has come.
fn with_a_photo() -> (Yard, Phone, Photo) {
    let yard = Yard::open();
    let ground = yard.ground();
    prove_laser(&ground);
    ground.says(&reading("P-1", "4.70"));
    let photo = Photo::new("photo-0001", 400, 300);
    ground.says(&photo.promise("P-1"));
    photo.comes(&ground).of(200);
    (yard, ground, photo)
}

fn verified(path: &Path) -> (bool, String) {
    let output = rodcall(&["verify".as_ref(), path.as_os_str()]);
    (output.status.success(), words(&output))
}

#[test]
fn a_photo_is_owed_then_shown_to_the_crew_and_to_the_visitor_whose_run_it_is_of() {
    let yard = Yard::open();
    let ground = yard.ground();
    let visitor = yard.truck.lets_in("HF", &["visitor"], None);
    let photo = Photo::new("photo-0001", 400, 300);
    let address = format!("/api/photos/{}", photo.sha256());
    // Taken ten minutes ago, behind the bank.
    let made_at = now_ms() - 600_000;
    ground
        .say_made_at("photo-late", made_at, &photo.promise("P-1"))
        .of(200);
    let owed = photos(&yard, |photos| !photos[0].is_null());
    assert_eq!(owed[0]["at"], json!(made_at));
    assert_eq!(
        (&owed[0]["sha256"], &owed[0]["by"]),
        (&Value::Null, &json!("RT"))
    );
    assert_eq!(ground.get(&address).status, 404);
    // Another phone of the crew may bring what this one promised: the hash decides.
    let other = yard.truck.lets_in("JM", &["ground"], None);
    let answer = photo.comes(&other).of(200);
    let entry = yard.truck.json(&format!("/api/log/{}", answer["first"]));
    assert_eq!(entry["entry"]["body"]["kind"], "photo_added");
    assert_eq!(entry["entry"]["body"]["taken_by"], "RT");
    let shown = photos(&yard, |photos| photos[0]["sha256"].is_string());
    assert_eq!(shown[0]["sha256"], json!(photo.sha256()));
    assert_eq!(ground.bytes(&address), photo.bytes);
    // Twice is once.
    let head = yard.hub_head();
    photo.comes(&ground).of(200);
    assert_eq!(yard.hub_head(), head);
    // A visitor sees it with the run that was chosen for them, and not before.
    assert_eq!(visitor.get(&address).status, 404);
    yard.truck
        .says(&json!({ "kind": "show_runs", "person": "HF", "targets": ["POND"] }));
    assert_eq!(visitor.get(&address).status, 404);
    yard.truck
        .says(&json!({ "kind": "show_runs", "person": "HF", "targets": ["PAD"] }));
    assert_eq!(visitor.bytes(&address), photo.bytes);
    assert_eq!(Phone::stranger(&yard.hub.base).get(&address).status, 401);
}

/// What must be refused: how it comes, with which status, and a word of what is said.
#[test]
fn bytes_that_are_no_promised_photo_are_refused_with_a_reason_and_leave_nothing() {
    let yard = Yard::open();
    let ground = yard.ground();
    let plain = Photo::new("photo-plain", 64, 48);
    let cut = Photo {
        name: "photo-short".into(),
        bytes: plain.bytes[..plain.bytes.len() / 2].to_vec(),
    };
    let text = Photo {
        name: "photo-text1".into(),
        bytes: b"the east run".to_vec(),
    };
    let large = Photo {
        name: "photo-large".into(),
        bytes: vec![0xff; 3 * 1024 * 1024 + 1],
    };
    // Exif 2.3, 4.6.3: a GPS IFD hangs on tag 0x8825.
    let exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x88\x25\0\x04\0\0\0\x01\0\0\0\x1a\0\0\0\0\0\0\0\0";
    let mut told = Photo::new("photo-place", 64, 48).with_part(0xe1, exif);
    told.name = "photo-place".into();
    let cases = [
        (&text, 415, "JPEG"),
        (&large, 413, "larger"),
        (&told, 422, "Exif"),
        (&cut, 422, "not whole"),
        (&Photo::new("photo-wide1", 1_601, 10), 422, "1601 by 10"),
    ];
    for (photo, status, said) in cases {
        ground.says(&photo.promise("P-1"));
        let refused = photo.comes(&ground).of(status);
        let english = refused["english"].as_str().expect("words");
        assert!(english.contains(said), "{english}");
        assert_ne!(refused["english"], refused["spanish"]);
    }
    // Not promised, and other bytes than those that were promised.
    plain.comes(&ground).of(409);
    ground.says(&plain.promise("P-1"));
    let other = Photo {
        name: plain.name.clone(),
        ..Photo::new("photo-other", 64, 48)
    };
    let refused = other.comes(&ground).of(409);
    assert!(
        refused["english"]
            .as_str()
            .is_some_and(|said| said.contains("hash differs")),
        "{refused}"
    );
    let renamed = json!({ "kind": "promise_photo", "photo": plain.name, "sha256": other.sha256() });
    ground.is_refused(409, &renamed);
    // Who may not.
    let visitor = yard.truck.lets_in("HF", &["visitor"], None);
    plain.comes(&visitor).of(403);
    plain.comes(&Phone::stranger(&yard.hub.base)).of(401);
    let missing = json!({ "kind": "promise_photo", "photo": "photo-where", "sha256": plain.sha256(), "mark": "P-99" });
    ground.is_refused(409, &missing);
    assert!(!yard.data().join("photos").exists());
    let log = yard.truck.log();
    assert!(
        log.iter()
            .all(|entry| entry["body"]["kind"] != "photo_added")
    );
    // What was promised still comes.
    plain.comes(&ground).of(200);
}

#[test]
fn an_export_carries_its_photos_and_reports_the_same_elsewhere() {
    let (yard, _ground, photo) = with_a_photo();
    let place = folder();
    let file = place.path().join("log.jsonl");
    fs::write(&file, yard.truck.text("/api/export")).expect("an export");
    let (good, said) = verified(&file);
    assert!(good && said.contains("1 photo."), "{said}");
    let data = place.path().join("again");
    let arguments = [
        "import".as_ref(),
        file.as_os_str(),
        "--data".as_ref(),
        data.as_os_str(),
    ];
    let output = rodcall(&arguments);
    assert!(output.status.success(), "{}", words(&output));
    let (good, said) = verified(&data);
    assert!(good && said.contains("1 photo."), "{said}");
    let kept = data.join("photos").join(format!("{}.jpg", photo.sha256()));
    assert_eq!(fs::read(kept).expect("the photo"), photo.bytes);
    for kind in ["day", "as-built", "hand-over"] {
        let report = |data: &Path| {
            let output = rodcall(&[
                "report".as_ref(),
                "--data".as_ref(),
                data.as_os_str(),
                "--kind".as_ref(),
                kind.as_ref(),
            ]);
            assert!(output.status.success(), "{}", words(&output));
            words(&output)
        };
        let sheet = report(&data);
        assert_eq!(sheet, report(&yard.data()), "{kind}");
        if kind != "hand-over" {
            assert!(sheet.contains("data:image/jpeg;base64,"), "{kind}");
            assert!(sheet.contains(&photo.sha256()), "{kind}");
        }
    }
}

/// Far more than a crew takes: the day still goes by mail, and each picture still shows what it is of.
#[test]
fn a_day_of_sixty_photos_prints_in_five_megabytes() {
    let yard = Yard::open();
    let ground = yard.ground();
    let mut came = 0;
    for at in 0..60 {
        let photo = Photo::new(&format!("photo-{at:04}"), 900, 675);
        came += photo.bytes.len();
        ground.says(&photo.promise("P-1"));
        photo.comes(&ground).of(200);
    }
    assert!(came > 10_000_000, "{came}");
    let sheet = yard.truck.text("/api/report/day");
    assert!(sheet.len() < 5_000_000, "{}", sheet.len());
    let begins = "data:image/jpeg;base64,";
    let printed: Vec<&str> = sheet.split(begins).skip(1).collect();
    assert_eq!(printed.len(), 60);
    for picture in printed {
        let text = picture.split('"').next().expect("a picture");
        let bytes = BASE64_STANDARD.decode(text).expect("base64");
        let size = imagesize(&bytes);
        assert_eq!((size.0 * 4, size.0 >= 240), (size.1 * 3, true), "{size:?}");
    }
    // The same again, and the other language's, byte for byte the same pictures.
    assert_eq!(yard.truck.text("/api/report/day"), sheet);
}

/// Height and width of a JPEG, by the first frame header (ITU-T T.81, B.2.2).
fn imagesize(bytes: &[u8]) -> (u32, u32) {
    let at = bytes.windows(2).position(|two| two == [0xff, 0xc0]);
    let at = at.expect("a baseline frame");
    let two = |at: usize| u32::from(bytes[at]) << 8 | u32::from(bytes[at + 1]);
    (two(at + 5), two(at + 7))
}

#[test]
fn a_photo_that_was_touched_removed_or_put_in_is_named_wherever_it_is() {
    let (yard, _ground, photo) = with_a_photo();
    let sha256 = photo.sha256();
    let export = yard.truck.text("/api/export");
    let place = folder();
    let file = place.path().join("log.jsonl");
    let entries: Vec<&str> = export
        .lines()
        .filter(|line| line.starts_with("{\"seq\""))
        .collect();
    let carried = export.lines().last().expect("a photo").to_owned();
    let added = entries.iter().position(|line| line.contains("photo_added"));
    let named = format!("Entry {} names a photo", added.expect("its entry") + 1);
    // The first dot of another picture under the same name; the line cut out; a photo that nobody took.
    let touched = carried.replacen("/9j/4AAQ", "/9j/4AAR", 1);
    assert_ne!(touched, carried);
    let other = carried.replacen(&sha256[..8], "00000000", 1);
    let cases = [
        (vec![touched.as_str()], named.as_str()),
        (vec![], "is missing"),
        (vec![carried.as_str(), &other], "named by no entry"),
    ];
    for (photos, said) in cases {
        let text = [entries.clone(), photos].concat().join("\n") + "\n";
        fs::write(&file, text).expect("an export");
        let (good, words) = verified(&file);
        assert!(!good && words.contains(said), "{words}");
    }
    // Where the hub keeps it: the page and the proof both say so, and the chain is as good as it was.
    let path = yard.data().join("photos").join(format!("{sha256}.jpg"));
    let mut bytes = photo.bytes.clone();
    let last = bytes.len() - 3;
    bytes[last] ^= 1;
    fs::write(&path, &bytes).expect("a touched photo");
    let (good, words) = verified(&yard.data());
    assert!(
        !good && words.contains("was touched") && words.contains(&named),
        "{words}"
    );
    yard.truck.get(&format!("/api/photos/{sha256}")).of(410);
    fs::remove_file(&path).expect("a removed photo");
    let (good, words) = verified(&yard.data());
    assert!(!good && words.contains("is missing"), "{words}");
    // The log itself still goes out and comes in, and what is lost is told.
    fs::write(&file, yard.truck.text("/api/export")).expect("an export");
    let data = place.path().join("again");
    let output = rodcall(&[
        "import".as_ref(),
        file.as_os_str(),
        "--data".as_ref(),
        data.as_os_str(),
    ]);
    let said = crate::harness::words(&output);
    assert!(
        output.status.success() && said.contains("Not every photo"),
        "{said}"
    );
}

/// Killed between the file and its entry, a hub has the bytes and has not said so: it says so at its next start.
#[test]
fn a_photo_whose_file_is_there_and_whose_entry_is_not_is_told_at_the_next_start() {
    let yard = Yard::open();
    let ground = yard.ground();
    let photo = Photo::new("photo-0001", 64, 48);
    ground.says(&photo.promise("P-1"));
    let stopped = yard.kill();
    let folder = stopped.data().join("photos");
    fs::create_dir_all(&folder).expect("a folder");
    fs::write(folder.join(format!("{}.jpg", photo.sha256())), &photo.bytes).expect("a photo");
    fs::write(folder.join(".part-torn"), &photo.bytes[..9]).expect("half a photo");
    let yard = stopped.start();
    let shown = photos(&yard, |photos| photos[0]["sha256"].is_string());
    assert_eq!(shown[0]["sha256"], json!(photo.sha256()));
    assert!(!folder.join(".part-torn").exists());
    let (good, said) = verified(&yard.data());
    assert!(good && said.contains("1 photo."), "{said}");
}
