//! What a phone says before SEND is what the hub then says: the same cases are run on both sides, here and in `grade.test.ts`.

use std::path::Path;

use earthwork::uncertainty::Care;
use serde_json::{Value, json};

use day::answer::Outcome;
use day::asked::Command;
use day::given::{Crew, ground, len, reading, site, supervisor};
use day::said::aim::SetAim;
use day::said::reading::{StepSide, TakeReading};
use day::site::UnsettledHigh;
use day::time::seconds;
use show::views::{ground as view, sheet};

/// One shot of a case.
struct Step {
    mark: &'static str,
    text: &'static str,
    /// Seconds after the shot before.
    after: i64,
    care: Care,
    side: Option<StepSide>,
    /// It corrects the shot before.
    restates: bool,
}

fn shot(mark: &'static str, text: &'static str, after: i64) -> Step {
    Step {
        mark,
        text,
        after,
        care: Care::Coarse,
        side: None,
        restates: false,
    }
}

/// HI 105.00; the pad at 100.00 with +0.10 and −0.20, the run at 98.00 and 97.00 (invented).
fn cases() -> Vec<(&'static str, Vec<Step>)> {
    let careful = |care, step: Step| Step { care, ..step };
    let on = |side, step: Step| Step {
        side: Some(side),
        ..step
    };
    let corrects = |step: Step| Step {
        restates: true,
        ..step
    };
    vec![
        ("a first shot", vec![shot("P-1", "4.70", 0)]),
        (
            "too close, then again",
            vec![shot("P-1", "4.91", 0), shot("P-1", "4.92", 10)],
        ),
        (
            "too close, and again much later",
            vec![shot("P-1", "4.91", 0), shot("P-1", "4.90", 900)],
        ),
        (
            "twice alike on the high side",
            vec![shot("P-1", "4.90", 0), shot("P-1", "4.90", 5)],
        ),
        (
            "twice alike on the low side",
            vec![shot("P-1", "5.20", 0), shot("P-1", "5.20", 5)],
        ),
        (
            "three times",
            vec![
                shot("P-1", "4.91", 0),
                shot("P-1", "4.93", 9),
                shot("P-1", "4.90", 9),
                shot("P-1", "4.91", 9),
            ],
        ),
        (
            "too long after to be one measurement",
            vec![shot("P-1", "4.95", 0), shot("P-1", "4.90", 91)],
        ),
        (
            "soon enough to be one measurement",
            vec![shot("P-1", "4.95", 0), shot("P-1", "4.92", 90)],
        ),
        (
            "too far apart to be averaged",
            vec![shot("P-1", "4.91", 0), shot("P-1", "4.80", 10)],
        ),
        (
            "typed to the tenth",
            vec![shot("P-1", "4.9", 0), shot("P-1", "4.9", 10)],
        ),
        (
            "read with care",
            vec![
                careful(Care::Fine, shot("P-1", "4.92", 0)),
                careful(Care::Muddy, shot("P-1", "4.92", 10)),
            ],
        ),
        (
            "the other side of the step",
            vec![
                on(StepSide::Before, shot("R-4", "7.09", 0)),
                on(StepSide::After, shot("R-4", "8.09", 10)),
                on(StepSide::After, shot("R-4", "8.10", 10)),
            ],
        ),
        (
            "a wrong number corrected",
            vec![
                shot("P-1", "4.91", 0),
                shot("P-1", "4.89", 10),
                corrects(shot("P-1", "4.92", 10)),
            ],
        ),
        (
            "another mark",
            vec![shot("P-1", "4.91", 0), shot("P-2", "4.91", 10)],
        ),
    ]
}

/// Takes the steps of a case; before each what the phone has, after each what the hub said.
fn run(name: &str, steps: &[Step], settles: UnsettledHigh, aim: bool) -> Vec<Value> {
    let mut yard = site();
    yard.rules.unsettled_high = settles;
    let mut crew = Crew::digging_on(yard);
    if aim {
        let aim = SetAim {
            on: vec!["PAD".into()],
            aim: len("-0.05 ft"),
            why: "the form crew asked".into(),
            seen: vec![],
        };
        crew.says(&supervisor(), Command::SetAim(aim)).unwrap();
    }
    let mut rows = Vec::new();
    let mut before = None;
    for step in steps {
        crew.wait(seconds(step.after));
        let phone = view::view(&crew.state).unwrap();
        let marks = sheet::view(&crew.state).unwrap().marks;
        let mark = marks.into_iter().find(|one| one.id == step.mark).unwrap();
        let shot = phone
            .shots
            .iter()
            .find(|one| one.mark == step.mark)
            .unwrap();
        let restates = before.filter(|_| step.restates);
        let mut row = json!({
            "case": name,
            "rod": crew.state.site().unwrap().rod("A").unwrap(),
            "text": step.text,
            "care": step.care,
            "side": step.side,
            "restates": restates,
            "at": crew.now,
            "shot": shot,
            "dig_to": mark.dig_to,
            "aim": mark.aim,
            "tolerance": mark.tolerance,
            "trims": phone.trims,
        });
        let asked = TakeReading {
            care: step.care,
            side: step.side,
            restates,
            ..reading(step.mark, step.text)
        };
        let mut answer = crew
            .says(&ground(), Command::TakeReading(asked.clone()))
            .unwrap();
        if let Outcome::Asked { reading, .. } = answer.outcome {
            let sure = TakeReading {
                sure: Some(reading),
                ..asked
            };
            answer = crew.says(&ground(), Command::TakeReading(sure)).unwrap();
        }
        row["says"] = match answer.outcome {
            Outcome::Called { text, .. } => json!(text.english),
            Outcome::NeedsRuling { .. } => json!("RULING"),
            other => panic!("{name}: {other:?}"),
        };
        before = Some(answer.first);
        rows.push(row);
    }
    rows
}

#[test]
#[expect(
    clippy::disallowed_methods,
    reason = "the cases lie in a file that the pages' tests read, too"
)]
fn a_phone_has_what_it_needs_to_say_the_call_beforehand() {
    let mut rows = Vec::new();
    for settles in [UnsettledHigh::Trim, UnsettledHigh::AskSupervisor] {
        for (name, steps) in cases() {
            rows.extend(run(name, &steps, settles, false));
        }
    }
    for (name, steps) in cases() {
        rows.extend(run(name, &steps, UnsettledHigh::Trim, true));
    }
    let about = "What a phone has before a shot is sent, and what the hub then says. Written by the hub's own test, invented figures.";
    let made = json!({ "about": about, "cases": rows });
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/wire/read_again.json");
    let text = serde_json::to_string_pretty(&made).unwrap() + "\n";
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(&file, &text).unwrap();
    }
    let kept = std::fs::read_to_string(&file).unwrap_or_default();
    assert!(
        kept == text,
        "{} is not what the hub says now: UPDATE=1 writes it anew",
        file.display()
    );
}
