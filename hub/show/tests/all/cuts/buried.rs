//! Trenches, buried lines, tickets, and what a site file can get wrong.

use super::*;

/// A trench along the run, bank at 102.50: 4.50 ft deep at the dig-to of 98.00, 5.50 at 97.00.
fn in_a_trench() -> Site {
    let mut site = site();
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![FaceZone {
            pipe_crown: Some(len("0.35 ft")),
            ..zone("DITCH", CutKind::Trench, "52 ft", "102.50 ft")
        }],
        utilities: vec![Utility {
            id: "GAS".into(),
            kind: UtilityKind::Gas,
            points: vec![at("10 ft", "0 ft"), at("10 ft", "100 ft")],
            outside: len("2 in"),
            zone: len("24 in"),
            marked: Marked::Centre,
            call: "gas company".into(),
        }],
        tickets: vec![Ticket {
            id: "T-1".into(),
            from: "2030-01-01".into(),
            to: "2030-12-31".into(),
            area: vec![
                at("0 ft", "0 ft"),
                at("60 ft", "0 ft"),
                at("60 ft", "60 ft"),
                at("0 ft", "60 ft"),
            ],
            asks: vec![UtilityKind::Gas, UtilityKind::Water],
        }],
        ..Cuts::default()
    };
    site
}

fn warned(
    crew: &Crew,
) -> Vec<(
    day::cuts::depth::DepthRule,
    day::cuts::depth::DepthState,
    Length,
)> {
    let call = crew.state.calls.values().next_back().unwrap();
    let warnings = call.sent.warnings.iter();
    warnings
        .map(|one| (one.rule, one.state, one.left))
        .collect()
}

/// A reading that is confirmed when it is asked about.
fn sure(crew: &mut Crew, mark: &str, text: &str) {
    let answer = crew.reads(mark, text).unwrap();
    if let Outcome::Asked { reading: asked, .. } = answer.outcome {
        let again = TakeReading {
            sure: Some(asked),
            ..reading(mark, text)
        };
        crew.says(&ground(), Command::TakeReading(again)).unwrap();
    }
}

#[test]
fn rules_of_depth_are_said_before_they_are_broken_and_once_for_each_state() {
    use day::cuts::depth::{
        DepthRule::{Egress, Protection},
        DepthState::{Ahead, NextTenth, Owed},
    };
    let mut crew = crew(in_a_trench());
    // 0.70 deep; the call digs to 4.50: a way out is owed on the way.
    sure(&mut crew, "R-2", "3.20");
    assert_eq!(warned(&crew), [(Egress, Ahead, len("3.30 ft"))]);
    sure(&mut crew, "R-2", "4.20");
    assert_eq!(warned(&crew), []);
    sure(&mut crew, "R-2", "6.50");
    assert_eq!(warned(&crew), [(Egress, Owed, Length::ZERO)]);
    // 4.90 deep, over-dug: one tenth is left to the rule of five feet.
    sure(&mut crew, "R-2", "7.40");
    assert_eq!(warned(&crew), [(Protection, NextTenth, len("0.10 ft"))]);
    // R-3 is dug to 5.50.
    sure(&mut crew, "R-3", "6.50");
    assert!(
        warned(&crew).is_empty(),
        "said already as near: {:?}",
        warned(&crew)
    );
    sure(&mut crew, "R-3", "7.60");
    assert_eq!(warned(&crew), [(Protection, Owed, Length::ZERO)]);
}

#[test]
fn a_revision_that_digs_past_a_rule_says_so_before_anybody_digs() {
    let mut crew = crew(in_a_trench());
    let looked = InspectFace {
        zone: "DITCH".into(),
        evidence: Evidence {
            material: Some(Material::Cohesive),
            ..Evidence::default()
        },
        ..inspection(SoilClass::B)
    };
    inspects(&mut crew, looked).unwrap();
    let highest = |crew: &Crew| {
        let found = crew.state.cuts.face("DITCH").unwrap().daylight.clone();
        found.unwrap().highest
    };
    // 102.50 over 97.00 in the eastern half.
    assert_eq!(highest(&crew), len("5.50 ft"));
    let card = supervisor::view(&crew.state).unwrap().cuts.faces[0].clone();
    // B is benched by 4 ft, as wide as high; 50 ft of trench have one ladder in their middle.
    let rises: Vec<Length> = card.benches.iter().map(|bench| bench.rise).collect();
    assert_eq!(rises, [len("4 ft"), len("1.50 ft")]);
    assert_eq!(card.ladders.unwrap().many, 1);
    let mut target = crew.state.site().unwrap().target("RUN").unwrap().clone();
    if let Shape::Run(run) = &mut target.grade.shape {
        run.steps[0].elevation = len("97.80 ft");
        run.steps[1].elevation = len("97.30 ft");
    }
    let asked = ReviseTarget {
        target: "RUN".into(),
        grade: target.grade,
        tolerance: target.tolerance,
        why: "answer of the engineer".into(),
        seen: None,
    };
    crew.says(&supervisor(), Command::ReviseTarget(asked))
        .unwrap();
    let said = crew.log.iter().find_map(|entry| match &entry.body {
        Body::DepthOwed(owes) => Some(owes.owed.clone()),
        _ => None,
    });
    assert_eq!(
        highest(&crew),
        len("5.70 ft"),
        "its daylight is worked out anew"
    );
    let marks: Vec<(String, Length)> = said
        .unwrap()
        .into_iter()
        .map(|one| (one.mark, one.depth))
        .collect();
    assert_eq!(
        marks,
        [
            ("R-1".into(), len("5.20 ft")),
            ("R-2".into(), len("5.20 ft"))
        ]
    );
}

fn bares(crew: &mut Crew, top: &str) {
    let asked = DigPothole {
        utility: "GAS".into(),
        at: None,
        mark: Some("R-1".into()),
        top: top.into(),
        size: "2 in".into(),
    };
    crew.says(&ground(), Command::DigPothole(asked)).unwrap();
}

#[test]
fn beside_a_buried_line_the_call_says_hand_dig_and_a_crossing_too_near_holds_it() {
    let mut crew = crew(in_a_trench());
    assert_eq!(spot(&mut crew), None);
    assert!(labels(&crew).contains(&Label::HandDig));
    let strip = cab::view(&crew.state, "EX-2").unwrap().hand_dig;
    assert_eq!(strip.len(), 1);
    assert_eq!(
        strip[0].clear, None,
        "its depth is unknown before it is bared"
    );
    assert!((strip[0].by_hand.from.feet() - 7.917).abs() < 0.001);
    crew.reads("R-2", "6.60").unwrap();
    assert!(!labels(&crew).contains(&Label::HandDig));
    // Invert 98.50, crown 98.85; the dig's bottom 98.00. A pipe from 98.783 to 98.95 lies in it by 0.067 ft.
    bares(&mut crew, "98.95");
    assert_eq!(spot(&mut crew), Some(SpotReason::CrossingTooNear));
    let clear = day::cuts::buried::crossings(&crew.state)[0].clear.unwrap();
    assert!((clear.feet() + 0.0667).abs() < 0.001, "{clear}");
    assert!(
        owed(&crew)
            .iter()
            .any(|one| matches!(one, ExceptionKind::CrossingTooNear { .. }))
    );
    // Elsewhere in the trench it goes on.
    assert!(matches!(
        crew.reads("R-2", "6.70").unwrap().outcome,
        Outcome::Called { .. }
    ));
    let far = DigPothole {
        utility: "GAS".into(),
        at: Some(at("40 ft", "50 ft")),
        mark: None,
        top: "98".into(),
        size: "2 in".into(),
    };
    assert!(crew.says(&ground(), Command::DigPothole(far)).is_err());
}

#[test]
fn ground_that_no_ticket_covers_is_not_dug_without_a_reason_and_a_lapsed_one_is_refused() {
    let mut site = in_a_trench();
    site.cuts.tickets[0].area[1].x = len("15 ft");
    site.cuts.tickets[0].area[2].x = len("15 ft");
    let mut crew = crew(site.clone());
    let outcome = crew.reads("R-2", "6.60").unwrap().outcome;
    assert!(matches!(
        outcome,
        Outcome::Spot {
            why: SpotReason::NotLocated,
            ..
        }
    ));
    // The leave names the place, and is for that place alone.
    let allow = |mark: Option<&str>| {
        Command::AllowDig(AllowDig {
            held: HeldBy::NotLocated {
                mark: mark.map(str::to_owned),
            },
            why: "private lot, owner's own map, by hand".into(),
        })
    };
    let refused = |crew: &mut Crew, mark| crew.says(&supervisor(), allow(mark)).unwrap_err();
    assert!(matches!(refused(&mut crew, None), Refusal::SayWhy { .. }));
    assert!(matches!(
        refused(&mut crew, Some("R-99")),
        Refusal::Unknown { .. }
    ));
    crew.says(&supervisor(), allow(Some("R-1"))).unwrap();
    let elsewhere = crew.reads("R-2", "6.60").unwrap().outcome;
    assert!(matches!(elsewhere, Outcome::Spot { .. }), "{elsewhere:?}");
    crew.says(&supervisor(), allow(Some("R-2"))).unwrap();
    assert!(matches!(
        crew.reads("R-2", "6.60").unwrap().outcome,
        Outcome::Called { .. }
    ));
    site.cuts.tickets[0].to = "2030-01-01".into();
    let mut late = Crew::digging_on(site);
    assert_eq!(spot(&mut late), Some(SpotReason::TicketLapsed));
    let check = CheckTicket {
        ticket: "T-1".into(),
        responses: vec![],
    };
    let refused = late.says(&supervisor(), Command::CheckTicket(check));
    assert!(matches!(refused, Err(Refusal::TicketLapsed { .. })));
}

#[test]
fn a_ticket_says_who_is_silent_and_that_it_lapses_soon_and_gone_paint_holds_the_ground_beside_it() {
    let mut site = in_a_trench();
    let day = crew(site.clone()).state.day.unwrap().id;
    site.cuts.tickets[0].to = format!("{}28", &day[..8]);
    let mut crew = crew(site);
    let waits = |crew: &Crew| {
        owed(crew).into_iter().find_map(|one| match one {
            ExceptionKind::TicketWaits { ticket } => {
                Some((ticket.checked.is_some(), ticket.silent.len()))
            }
            _ => None,
        })
    };
    assert_eq!(waits(&crew), Some((false, 2)));
    let answer = |kind, answer| Response { kind, answer };
    let check = CheckTicket {
        ticket: "T-1".into(),
        responses: vec![
            answer(UtilityKind::Gas, Answered::Marked),
            answer(UtilityKind::Water, Answered::Silent),
        ],
    };
    crew.says(&supervisor(), Command::CheckTicket(check))
        .unwrap();
    assert_eq!(waits(&crew), Some((true, 1)));
    let paint = |gone| {
        Command::SayPaint(SayPaint {
            utility: "GAS".into(),
            gone,
        })
    };
    crew.says(&operator("EX-2"), paint(true)).unwrap();
    assert_eq!(spot(&mut crew), Some(SpotReason::PaintGone));
    crew.says(&ground(), paint(false)).unwrap();
    assert_eq!(spot(&mut crew), None);
}

#[test]
fn what_can_not_be_is_a_fault_of_the_site_with_its_place() {
    let mut site = in_a_trench();
    site.cuts.competent.clear();
    site.cuts.faces[0].toe[0].elevation = len("103 ft");
    site.cuts.faces[0].crest_marks.push("Z-9".into());
    site.cuts.tickets[0].area.swap(1, 2);
    site.cuts.tickets[0].to = "2029-12-31".into();
    site.cuts.utilities[0].zone = len("-1 ft");
    let found = day::site_faults::faults(&site);
    for says in [
        "names no competent person",
        "no negative height",
        "“Z-9”",
        "crosses itself",
        "which is before",
        "zone beside the line is",
    ] {
        assert!(
            found.iter().any(|fault| fault.text.english.contains(says)),
            "{says}: {found:?}"
        );
    }
}
