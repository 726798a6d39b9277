//! Marks, diagonals and edges of the demo day.

use serde_json::{Value, json};

use super::played::{key, list, played};

#[test]
fn marks_are_laid_checked_scraped_and_laid_again_as_the_story_tells() {
    let day = played();
    let marks = |kind: &'static str| -> Vec<Value> {
        day.of_kind(kind)
            .flat_map(|entry| list(&entry["body"]["marks"]).clone())
            .collect()
    };
    // The story lays 8 N, 6 P, 12 E, 6 D and 5 X marks, and lays 5 of them again after the bucket has taken them.
    assert_eq!(marks("marks_laid").len(), 8 + 6 + 12 + 6 + 5 + 5);
    let second: Vec<Value> = marks("marks_laid")
        .into_iter()
        .filter(|laid| laid["generation"] == 2)
        .map(|laid| laid["mark"].clone())
        .collect();
    assert_eq!(
        json!(second),
        json!(["E-11", "E-10", "E-05", "E-06", "E-07"])
    );
    assert_eq!(json!(marks("marks_scraped")), json!(second));
    assert_eq!(marks("marks_checked").len(), 6 + 5);
}

#[test]
fn the_yard_pads_diagonals_say_which_corners_move_and_how_far() {
    let day = played();
    let measured: Vec<&Value> = day.of_kind("diagonals_measured").collect();
    let wanted = list(&day.oracles["diagonals"]);
    assert_eq!((measured.len(), wanted.len()), (1, 1));
    let (entry, want) = (measured[0], &wanted[0]);
    assert_eq!(entry["key"], key(want).as_str());
    let found = &entry["body"]["found"];
    let toward = format!("toward_{}", want["toward"].as_str().expect("a corner"));
    assert_eq!(found["moves"]["kind"], toward.as_str());
    // Two ways of working it out differ by less than a thousandth of a foot (3 048 counts).
    for (got, want) in [
        (&found["wanted"], &want["wanted"]),
        (&found["moves"]["by"], &want["move"]),
    ] {
        let (got, want) = (
            got.as_i64().expect("a length"),
            want.as_i64().expect("a length"),
        );
        assert!((got - want).abs() < 3_048, "{got} {want}");
    }
}

#[test]
fn a_mark_is_tied_before_the_bucket_comes_and_the_log_says_what_the_ties_are_worth() {
    let day = played();
    let taken: Vec<&Value> = day.of_kind("ties_taken").collect();
    let wanted = list(&day.oracles["ties"]);
    assert_eq!((taken.len(), wanted.len()), (1, 1));
    let (body, want) = (&taken[0]["body"], &wanted[0]);
    assert_eq!(taken[0]["key"], key(want).as_str());
    assert_eq!(
        (&body["mark"], &body["weak"]),
        (&want["mark"], &json!(false))
    );
    let number = |value: &Value| value.as_f64().expect("a number");
    // Two ways of working it out differ by less than a thousandth of a foot (3 048 counts) and a hundredth of a degree.
    assert!(
        (number(&body["off"]) - number(&want["off"])).abs() < 3_048.0,
        "{body} {want}"
    );
    assert!(
        (number(&body["angle_degrees"]) - number(&want["angle"])).abs() < 0.01,
        "{body} {want}"
    );
}

#[test]
fn edges_are_told_with_every_doubt_taken_off_and_the_unread_ones_are_known() {
    let day = played();
    let read: Vec<Value> = day
        .of_kind("edge_read")
        .map(|entry| {
            let body = &entry["body"];
            assert_eq!(body["line"], "BUFFER");
            let sent = day
                .of_row(entry["key"].as_str().expect("a key"), "call_sent")
                .next()
                .expect("a call");
            json!({
                "key": entry["key"],
                "mark": body["mark"],
                "inside": body["shot"]["distance"],
                "judged": body["shot"]["standing"],
                "english": sent["body"]["english"],
                "spanish": sent["body"]["spanish"],
            })
        })
        .collect();
    let edges = &day.oracles["edges"];
    let wanted: Vec<Value> = list(&edges["read"])
        .iter()
        .map(|edge| {
            json!({
                "key": key(edge),
                "mark": edge["mark"],
                "inside": edge["inside"],
                "judged": edge["judged"],
                "english": edge["english"],
                "spanish": edge["spanish"],
            })
        })
        .collect();
    assert_eq!(read, wanted);
    let marks: Vec<&Value> = day
        .of_kind("edge_read")
        .map(|entry| &entry["body"]["mark"])
        .collect();
    assert!(
        list(&edges["not_read"])
            .iter()
            .all(|mark| !marks.contains(&mark))
    );
}
