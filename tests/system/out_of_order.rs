//! The way in, in an order that it must not have: each is refused, or kept as an unconfirmed entry, and the words say which.

use serde_json::{Value, json};

use crate::harness::phone::Phone;
use crate::harness::yard::Yard;

/// What a phone says about its own visit.
fn of_visit(kind: &str, machine: &str, visit: &str) -> Value {
    json!({ "kind": kind, "machine": machine, "visit": visit })
}

fn ask(ground: &Phone, visit: &str) {
    ground.says(&of_visit("ask_in", "EX-1", visit));
}

fn bucket_down(cab: &Phone, answers: &[&str]) {
    cab.says(&json!({ "kind": "bucket_down", "answers": answers }));
}

/// What the cab shows: its screen, and who stands on it at which stage.
fn cab_shows(yard: &Yard, cab: &Phone) -> (Value, Vec<(String, String)>) {
    let view = yard.cab_view(&mut cab.socket());
    let people = view["way_in"]["people"].as_array().expect("a list").iter();
    let text = |value: &Value| value.as_str().expect("a text").to_owned();
    let people = people.map(|one| (text(&one["person"]), text(&one["stage"])));
    (view["screen"]["kind"].clone(), people.collect())
}

fn on_stop(person: &str, stage: &str) -> (Value, Vec<(String, String)>) {
    (json!("way_in"), vec![(person.into(), stage.into())])
}

/// How the first entry of an answer is read in both languages.
fn words_of(yard: &Yard, answer: &Value) -> [String; 2] {
    let moment = yard
        .truck
        .json(&format!("/api/replay?seq={}", answer["first"]));
    ["english", "spanish"].map(|one| moment["said"][one].as_str().expect("words").to_owned())
}

#[test]
fn in_without_a_stop_is_kept_as_an_unconfirmed_entry_and_stops_the_machine() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    ask(&ground, "visit-01");
    let answer = ground.says(&of_visit("go_in", "EX-1", "visit-01"));
    assert_eq!(
        answer["outcome"],
        json!({ "kind": "entered", "confirmed": false })
    );
    assert_eq!(cab_shows(&yard, &cab), on_stop("RT", "unconfirmed"));
    let [english, spanish] = words_of(&yard, &answer);
    assert_eq!(english, "UNCONFIRMED ENTRY: RT is IN at EX-1.");
    assert_eq!(spanish, "ENTRADA SIN CONFIRMAR: RT está ADENTRO en EX-1.");
}

#[test]
fn a_release_with_somebody_in_is_refused_and_kept_with_their_name() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    ask(&ground, "visit-01");
    bucket_down(&cab, &["visit-01"]);
    ground.says(&of_visit("go_in", "EX-1", "visit-01"));
    let answer = cab.says(&json!({ "kind": "release" }));
    assert_eq!(
        answer["outcome"],
        json!({ "kind": "still_in", "people": ["RT"] })
    );
    assert_eq!(cab_shows(&yard, &cab), on_stop("RT", "in"));
    let [english, spanish] = words_of(&yard, &answer);
    assert_eq!(english, "EX-1 NOT RELEASED: RT in.");
    assert_eq!(spanish, "EX-1 NO SE REANUDA: adentro RT.");
}

#[test]
fn in_at_the_wrong_machine_is_unconfirmed_there_and_the_answer_opens_no_other() {
    let yard = Yard::open();
    let (ground, cab, other) = (yard.ground(), yard.cab("EX-1"), yard.cab("EX-2"));
    ask(&ground, "visit-01");
    bucket_down(&cab, &["visit-01"]);
    let answer = ground.says(&of_visit("go_in", "EX-2", "visit-01"));
    assert_eq!(answer["outcome"]["confirmed"], false);
    assert_eq!(cab_shows(&yard, &other), on_stop("RT", "unconfirmed"));
    // Whoever was told to come in may be in here, too, until they say otherwise.
    let (screen, people) = cab_shows(&yard, &cab);
    assert_eq!(screen, "way_in", "{people:?}");
}

#[test]
fn a_phone_that_is_lost_while_its_person_is_in_releases_nobody() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    let mut own = ground.socket();
    own.view("ground", |_| true);
    ask(&ground, "visit-01");
    bucket_down(&cab, &["visit-01"]);
    ground.says(&of_visit("go_in", "EX-1", "visit-01"));
    drop(own);
    let mut screen = cab.socket();
    screen.view("operator", |view| {
        !view["way_in"]["people"][0]["lost"].is_null()
    });
    let answer = cab.says(&json!({ "kind": "release" }));
    assert_eq!(answer["outcome"]["kind"], "still_in");
    assert_eq!(cab_shows(&yard, &cab), on_stop("RT", "in"));
    let own_witness = json!({ "kind": "out_by_witness", "machine": "EX-1", "visit": "visit-01", "why": "I see him" });
    cab.is_refused(409, &own_witness);
}

#[test]
fn a_press_that_comes_twice_counts_once() {
    let yard = Yard::open();
    let (ground, cab) = (yard.ground(), yard.cab("EX-1"));
    ask(&ground, "visit-01");
    bucket_down(&cab, &["visit-01"]);
    let go_in = of_visit("go_in", "EX-1", "visit-01");
    // The same press again after a lost answer, and another press of the same key on the page.
    let first = ground.say("press-in-01", &go_in);
    assert_eq!(ground.say("press-in-01", &go_in), first);
    ground.says(&go_in);
    assert_eq!(cab_shows(&yard, &cab), on_stop("RT", "in"));
    let out = json!({ "kind": "come_out", "visit": "visit-01", "machine": "EX-1" });
    ground.says(&out);
    ground.says(&out);
    let (screen, people) = cab_shows(&yard, &cab);
    assert_eq!((screen, people), (json!("way_in"), vec![]));
    // One IN and one OUT took nobody else off and nobody twice on.
    cab.says(&json!({ "kind": "release" }));
    cab.says(&json!({ "kind": "release" }));
    assert_ne!(cab_shows(&yard, &cab).0, "way_in");
}
