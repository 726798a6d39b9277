//! The kicked tripod of the demo day: what stands, what is shot again, when checks fall due, what is proven at the end.

use serde_json::{Value, json};

use super::played::{Played, key, list, played};

/// The day as it stands at its end, folded from the hub's log.
fn at_the_end(day: &Played) -> day::state::State {
    let mut state = day::state::State::default();
    for line in &day.log {
        let entry = serde_json::from_value(line.clone()).expect("an entry");
        day::apply(&mut state, &entry);
    }
    state
}

#[test]
fn the_kicked_tripod_sends_the_crew_to_two_marks_and_no_more() {
    let day = played();
    let windows: Vec<Value> = day
        .of_kind("suspect_window")
        .map(|entry| {
            let body = &entry["body"];
            let mut marks = serde_json::Map::new();
            for mark in list(&body["marks"]) {
                let name = mark["mark"].as_str().expect("a mark").to_owned();
                let mut told = json!({ "standing": mark["standing"], "dev": mark["dev"] });
                if !mark["dev_if_moved"].is_null() {
                    told["dev_if_moved"] = mark["dev_if_moved"].clone();
                }
                marks.insert(name, told);
            }
            json!({
                "set_up": body["set_up"],
                "readings": body["readings"],
                "residual": body["residual"],
                "marks": marks,
            })
        })
        .collect();
    assert_eq!(json!(windows), day.oracles["suspects"]);
    let again: Vec<&String> = windows[0]["marks"]
        .as_object()
        .expect("marks")
        .iter()
        .filter(|(_, mark)| mark["standing"] == "shoot_again")
        .map(|(name, _)| name)
        .collect();
    assert_eq!(again, ["E-05", "N-02"]);
    // Both were shot again in the afternoon: nobody is owed anything, and the report still says what stood either way.
    let state = at_the_end(day);
    let ground = show::views::ground::view(&state).expect("a day");
    assert_eq!(ground.suspects, []);
    let report = show::views::supervisor::view(&state).expect("a day");
    let stood: Vec<&str> = report.suspects[0]
        .stand
        .iter()
        .map(|mark| mark.mark.as_str())
        .collect();
    assert!(
        stood.contains(&"E-06") && stood.contains(&"E-07"),
        "{stood:?}"
    );
}

#[test]
fn checks_fall_due_when_they_were_worked_out_to() {
    let day = played();
    let due: Vec<Value> = day
        .of_kind("check_fell_due")
        .map(|entry| {
            let body = &entry["body"];
            json!([body["set_up"], body["why"], entry["at"]])
        })
        .collect();
    // The hub stops after the story's last command; what would have fallen due later is in nobody's log.
    let end = day.log.last().and_then(|entry| entry["at"].as_i64());
    let wanted: Vec<Value> = list(&day.oracles["checks_due"])
        .iter()
        .filter(|due| Some(day.moment(&due["at"])) <= end)
        .map(|due| json!([due["set_up"], due["why"], day.moment(&due["at"])]))
        .collect();
    assert!(wanted.len() >= 10, "{wanted:?}");
    assert_eq!(due, wanted);
}

#[test]
fn what_of_the_runs_is_not_proven_at_the_end() {
    let day = played();
    let state = at_the_end(day);
    let report = show::views::supervisor::view(&state).expect("a day");
    for (target, gaps) in day.oracles["unproven"].as_object().expect("runs") {
        let run = report.coverage.iter().find(|run| run.target == *target);
        let found: Vec<Value> = run
            .expect("a run")
            .unproven
            .iter()
            .map(|gap| json!([gap.from, gap.to]))
            .collect();
        assert_eq!(&json!(found), gaps, "{target}");
    }
}

#[test]
fn check_shots_find_the_kicked_laser_and_the_wrong_benchmark() {
    let day = played();
    let shots: Vec<Value> = day
        .of_kind("check_shot")
        .map(|entry| {
            json!([
                entry["key"],
                entry["body"]["residual"],
                entry["body"]["check"]
            ])
        })
        .collect();
    let wanted: Vec<Value> = list(&day.oracles["checks"])
        .iter()
        .map(|check| json!([key(check), check["residual"], check["check"]]))
        .collect();
    assert_eq!(shots, wanted);
    let first_try = &day.oracles["s2_first_try"];
    let failed_key = key(first_try);
    let failed = day
        .of_row(&failed_key, "check_shot")
        .next()
        .expect("a check");
    let slip = &failed["body"]["slips"][0];
    assert_eq!(slip["kind"], "other_benchmark", "ranked first: {slip}");
    assert_eq!(slip["used"], first_try["first_slip"]["used"]);
    assert_eq!(slip["perhaps"], first_try["first_slip"]["perhaps"]);
    let restated: Vec<&Value> = day.of_kind("set_up_restated").collect();
    assert_eq!(restated.len(), 1);
    assert_eq!(
        restated[0]["body"]["basis"]["height"],
        first_try["height_after"]
    );
    let on_first_try = day.of_kind("reading_taken").filter(|entry| {
        let reading = &entry["body"]["reading"];
        reading["set_up"] == "S2" && reading["basis"] == 1
    });
    assert_eq!(on_first_try.count() as u64, first_try["readings_on_it"]);
}
