//! Visitors, inspections, queries, photos, and phones that remember an end of the log.

use super::signing::opens_next;
use super::{closes, drawn, folded, visitor};
use day::asked::{By, Command};
use day::entry::Body;
use day::given::{Crew, ground, supervisor};
use day::open::{OpenKind, open};
use day::record::missing::{CloseMissing, missing};

use day::said::head::MissHead;
use day::said::inspection::{
    AskInspection, Inspect, InspectedItem, InspectionResult, SignInspection,
};

use day::said::photo::{AddPhoto, GiveUpPhoto, PromisePhoto};
use day::said::query::{AnswerQuery, AskQuery};
use day::said::reading::SpotReason;

use day::said::signature::ChainHead;
use day::said::visit::{ShowRuns, Visit};

use show::tell;

/// The work that is open: its kind, and what it is about.
fn work(crew: &Crew) -> Vec<(OpenKind, String)> {
    let open = open(&crew.state).into_iter();
    let work = open.filter(|item| item.kind.is_work());
    work.map(|item| (item.kind, item.on)).collect()
}

fn asks(on: &[&str], stop: bool) -> Command {
    Command::AskQuery(AskQuery {
        question: "old slab below the footing: leave or break out?".into(),
        of: "engineer".into(),
        on: on.iter().map(|name| (*name).to_owned()).collect(),
        stop,
        photo: None,
    })
}

fn answers(query: &str, target: Option<&str>) -> Command {
    Command::AnswerQuery(AnswerQuery {
        query: query.into(),
        answer: "break out".into(),
        answered_by: "engineer, by mail".into(),
        target: target.map(Into::into),
    })
}

#[test]
fn a_query_that_stops_ends_the_call_there_and_holds_the_next_back_until_it_is_answered() {
    let mut crew = Crew::digging();
    crew.reads("P-1", "4.70").unwrap();
    assert!(crew.says(&ground(), asks(&["NOWHERE"], true)).is_err());
    assert!(crew.says(&ground(), asks(&[], true)).is_err());
    crew.says(&ground(), asks(&["P-1"], true)).unwrap();
    assert!(crew.state.live_call("EX-1").is_none());
    let spot = |crew: &Crew| match &crew.log.last().unwrap().body {
        Body::ReadingTaken(taken) => taken.spot,
        _ => None,
    };
    crew.reads("P-1", "4.70").unwrap();
    assert_eq!(spot(&crew), Some(SpotReason::QueryOpen));
    // By eye neither, and not on a supervisor's word in place of the answer.
    let quick = day::said::quick_call::QuickCall {
        machine: "EX-1".into(),
        mark: Some("P-1".into()),
        word: earthwork::words::QuickWord::More,
    };
    let refused = crew.says(&ground(), Command::QuickCall(quick)).unwrap_err();
    assert!(
        refused.to_string().contains("Q1 is not answered"),
        "{refused}"
    );
    let allow = day::said::allow_dig::AllowDig {
        held: day::cuts::held::HeldBy::Query { query: "Q1".into() },
        why: "hurry".into(),
    };
    assert!(crew.says(&supervisor(), Command::AllowDig(allow)).is_err());
    // Elsewhere work carries on.
    crew.reads("P-2", "4.70").unwrap();
    assert_eq!(
        crew.state.live_call("EX-1").unwrap().1.sent.mark.as_deref(),
        Some("P-2")
    );
    crew.says(&supervisor(), answers("Q1", Some("PAD")))
        .unwrap();
    crew.reads("P-1", "4.71").unwrap();
    assert_eq!(
        crew.state.live_call("EX-1").unwrap().1.sent.mark.as_deref(),
        Some("P-1")
    );
    let answered = &crew.state.record.queries["Q1"].answers[0].said;
    assert_eq!(answered.revision.as_ref().unwrap().revision, 1);
}

#[test]
fn a_query_to_carry_on_with_holds_nothing_and_outlives_the_day() {
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(&["RUN"], false)).unwrap();
    crew.reads("R-1", "6.70").unwrap();
    assert!(crew.state.live_call("EX-2").is_some());
    crew.check("S1", "BM-2", "3.48").unwrap();
    assert_eq!(work(&crew), [(OpenKind::Query, "Q1".into())]);
    crew.says(&supervisor(), closes(&[])).unwrap();
    // The answer may come after the close.
    opens_next(&mut crew, "2030-05-15").unwrap();
    assert_eq!(work(&crew), [(OpenKind::Query, "Q1".into())]);
    crew.says(&supervisor(), answers("Q1", None)).unwrap();
    assert_eq!(work(&crew), []);
    crew.says(&ground(), asks(&["P-1"], true)).unwrap();
    assert!(crew.state.record.queries.contains_key("Q2"));
    assert!(crew.says(&supervisor(), answers("Q7", None)).is_err());
}

#[test]
fn a_visitor_is_counted_on_site_until_they_say_off_or_a_supervisor_has_seen_it() {
    let mut crew = Crew::digging();
    let here = |on_site| {
        Command::Visit(Visit {
            on_site,
            person: None,
        })
    };
    crew.says(&visitor("HF"), here(true)).unwrap();
    crew.says(&visitor("HF"), here(true)).unwrap();
    let comings = crew
        .log
        .iter()
        .filter(|entry| matches!(entry.body, Body::VisitorNoticed(_)));
    assert_eq!(comings.count(), 1);
    let on_site = CloseMissing::VisitorOnSite {
        person: "HF".into(),
    };
    assert_eq!(missing(&crew.state), [on_site]);
    assert!(crew.says(&ground(), here(true)).is_err());
    let seen = |person: &str| {
        Command::Visit(Visit {
            on_site: false,
            person: Some(person.into()),
        })
    };
    assert!(crew.says(&visitor("XY"), seen("HF")).is_err());
    assert!(crew.says(&supervisor(), seen("ZZ")).is_err());
    crew.says(&supervisor(), seen("HF")).unwrap();
    assert!(missing(&crew.state).is_empty());
    let told = tell::tell(crew.log.last().unwrap());
    assert!(
        told.text.english.contains("as PN has seen"),
        "{}",
        told.text.english
    );
    let shows = |targets: &[&str]| {
        Command::ShowRuns(ShowRuns {
            person: "HF".into(),
            targets: targets.iter().map(|name| (*name).to_owned()).collect(),
        })
    };
    assert!(crew.says(&supervisor(), shows(&["NONE"])).is_err());
    assert!(crew.says(&visitor("HF"), shows(&["RUN"])).is_err());
    crew.says(&supervisor(), shows(&["RUN"])).unwrap();
    assert_eq!(crew.state.record.visitors["HF"].shown, ["RUN"]);
}

fn inspects(asked: Option<u64>) -> Inspect {
    Inspect {
        asked,
        what: String::new(),
        targets: vec![],
        inspector: "HF".into(),
        items: vec![InspectedItem {
            what: "R-1..R-4".into(),
            found: "on grade".into(),
        }],
        result: InspectionResult::InPart,
        words: "east part may be formed".into(),
        conditions: "west part waits for the retest".into(),
        signature: None,
    }
}

#[test]
fn an_inspection_is_asked_for_made_and_signed_by_whoever_made_it() {
    let mut crew = Crew::digging();
    let ask = Command::AskInspection(AskInspection {
        what: "footing trench".into(),
        of: "county".into(),
        targets: vec!["RUN".into()],
    });
    crew.says(&supervisor(), ask).unwrap();
    let id = crew.state.seq;
    assert_eq!(
        work(&crew),
        [(OpenKind::Inspection, "footing trench".into())]
    );
    let here = Command::Visit(Visit {
        on_site: true,
        person: None,
    });
    crew.says(&visitor("HF"), here).unwrap();
    let bad = [
        Inspect {
            items: vec![],
            ..inspects(Some(id))
        },
        Inspect {
            words: " ".into(),
            ..inspects(Some(id))
        },
        Inspect {
            conditions: String::new(),
            ..inspects(Some(id))
        },
        Inspect {
            inspector: String::new(),
            ..inspects(Some(id))
        },
        inspects(None),
        inspects(Some(id + 1)),
    ];
    for one in bad {
        assert!(
            crew.says(&supervisor(), Command::Inspect(one.clone()))
                .is_err(),
            "{one:?}"
        );
    }
    let stray = Inspect {
        targets: vec!["NONE".into()],
        ..inspects(Some(id))
    };
    assert!(crew.says(&supervisor(), Command::Inspect(stray)).is_err());
    crew.says(&supervisor(), Command::Inspect(inspects(Some(id))))
        .unwrap();
    assert_eq!(work(&crew), [(OpenKind::VisitorOnSite, "HF".into())]);
    let made = crew.state.record.inspections[&id].made.as_ref().unwrap();
    assert_eq!(made.said.what, "footing trench");
    assert!(made.said.arrived.is_some());
    let sign = || {
        Command::SignInspection(SignInspection {
            inspection: id,
            signature: drawn("H. F."),
        })
    };
    assert!(crew.says(&visitor("XY"), sign()).is_err());
    crew.says(&visitor("HF"), sign()).unwrap();
    assert!(crew.says(&visitor("HF"), sign()).is_err());
    assert!(
        crew.says(&supervisor(), Command::Inspect(inspects(Some(id))))
            .is_err()
    );
    assert_eq!(folded(&crew), crew.state);
}

#[test]
fn a_photo_is_owed_until_its_bytes_have_come() {
    let mut crew = Crew::digging();
    let (own, other) = ("a".repeat(64), "b".repeat(64));
    let promises = |photo: &str, sha256: &str| PromisePhoto {
        photo: photo.into(),
        sha256: sha256.into(),
        original: Some("0".repeat(64)),
        mark: Some("P-1".into()),
        face: None,
        entry: Some(3),
        words: "scarp".into(),
    };
    for bad in ["short", "../../../etc/passwd", "with a blank"] {
        let asked = Command::PromisePhoto(promises(bad, &own));
        assert!(crew.says(&ground(), asked).is_err(), "{bad}");
    }
    for bad in ["", "ab", &"A".repeat(64), &"/".repeat(64)] {
        let asked = Command::PromisePhoto(promises("photo-0001", bad));
        assert!(crew.says(&ground(), asked).is_err(), "{bad}");
    }
    let nowhere = PromisePhoto {
        face: Some("NORTH".into()),
        ..promises("photo-0001", &own)
    };
    assert!(
        crew.says(&ground(), Command::PromisePhoto(nowhere))
            .is_err()
    );
    // The same again is no second photo; the same name for another picture is refused.
    let promise = Command::PromisePhoto(promises("photo-0001", &own));
    crew.says(&ground(), promise.clone()).unwrap();
    let entries = crew.log.len();
    crew.says(&ground(), promise).unwrap();
    assert_eq!(crew.log.len(), entries);
    let changed = Command::PromisePhoto(promises("photo-0001", &other));
    assert!(crew.says(&ground(), changed).is_err());
    assert_eq!(work(&crew), [(OpenKind::Photo, "P-1".into())]);
    let adds = |photo: &str, sha256: &str| {
        Command::AddPhoto(AddPhoto {
            photo: photo.into(),
            sha256: sha256.into(),
            bytes: 1_200,
        })
    };
    // Only the hub, which has them on its disk, says so; and no other bytes than those that were promised.
    assert!(crew.says(&ground(), adds("photo-0001", &own)).is_err());
    assert!(crew.says(&By::hub(), adds("photo-0002", &own)).is_err());
    assert!(crew.says(&By::hub(), adds("photo-0001", &other)).is_err());
    crew.says(&By::hub(), adds("photo-0001", &own)).unwrap();
    crew.says(&By::hub(), adds("photo-0001", &own)).unwrap();
    assert!(crew.says(&By::hub(), adds("photo-0001", &other)).is_err());
    assert_eq!(work(&crew), []);
    let Some(Body::PhotoAdded(added)) = crew.log.last().map(|entry| &entry.body) else {
        panic!("not added");
    };
    assert_eq!((added.taken_by.as_str(), added.entry), ("RT", Some(3)));
    assert_eq!(crew.log.len(), entries + 1);
}

#[test]
fn a_photo_that_will_not_come_is_given_up_with_a_reason_and_taken_all_the_same_when_it_comes() {
    let mut crew = Crew::digging();
    let sha256 = "a".repeat(64);
    let promise = PromisePhoto {
        photo: "photo-0001".into(),
        sha256: sha256.clone(),
        original: None,
        mark: Some("P-1".into()),
        face: None,
        entry: None,
        words: String::new(),
    };
    crew.says(&ground(), Command::PromisePhoto(promise))
        .unwrap();
    let gives_up = |why: &str| {
        Command::GiveUpPhoto(GiveUpPhoto {
            photo: "photo-0001".into(),
            why: why.into(),
        })
    };
    assert!(crew.says(&ground(), gives_up("lost")).is_err());
    assert!(crew.says(&supervisor(), gives_up(" ")).is_err());
    assert_eq!(work(&crew), [(OpenKind::Photo, "P-1".into())]);
    crew.says(&supervisor(), gives_up("the phone is in the ditch"))
        .unwrap();
    assert_eq!(work(&crew), []);
    let told = tell::tell(crew.log.last().unwrap());
    assert!(told.text.english.contains("RT") && told.text.english.contains("ditch"));
    let entries = crew.log.len();
    crew.says(&supervisor(), gives_up("twice")).unwrap();
    assert_eq!(crew.log.len(), entries);
    let adds = Command::AddPhoto(AddPhoto {
        photo: "photo-0001".into(),
        sha256,
        bytes: 9,
    });
    crew.says(&By::hub(), adds).unwrap();
    assert!(crew.state.record.photos["photo-0001"].added.is_some());
    assert_eq!(folded(&crew), crew.state);
}

/// A log from before the promise named a hash opens, and takes the bytes that come.
#[test]
fn a_promise_without_a_hash_still_opens() {
    let old = r#"{"kind":"photo_promised","photo":"photo-0001","mark":"P-1","words":""}"#;
    let body: Body = serde_json::from_str(old).unwrap();
    let Body::PhotoPromised(promised) = body else {
        panic!("not a promise");
    };
    assert_eq!((promised.sha256, promised.face), (None, None));
}

#[test]
fn an_end_of_the_chain_that_is_missed_is_told_once() {
    let mut crew = Crew::digging();
    let miss = || {
        Command::MissHead(MissHead {
            person: "RT".into(),
            remembered: ChainHead {
                seq: 121,
                hash: "ab".into(),
            },
            has: None,
            log_ends: 120,
        })
    };
    assert!(crew.says(&ground(), miss()).is_err());
    crew.says(&By::hub(), miss()).unwrap();
    crew.says(&By::hub(), miss()).unwrap();
    assert_eq!(crew.state.record.mismatches.len(), 1);
    let told = tell::tell(crew.log.last().unwrap());
    assert!(
        told.text.english.contains("entry 121"),
        "{}",
        told.text.english
    );
}
