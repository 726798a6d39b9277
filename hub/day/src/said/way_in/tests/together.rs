//! Witnesses, groups, several machines, operators on foot, told as given – when – then.

use super::*;
use crate::said::way_in::enter::SeeOut;

#[test]
fn whoever_was_witnessed_out_is_told_by_whom_and_says_whether_it_is_so() {
    let mut crew = inside();
    let told = |crew: &Crew| {
        let gate = crew.state.way_in.gate("EX-1");
        gate.told_out().map(|(_, told)| told.clone()).next()
    };
    crew.says(&jm(), witness(VISIT, "by the truck")).unwrap();
    let card = told(&crew).unwrap();
    assert_eq!((card.person.as_str(), card.device.as_str()), ("RT", "g1"));
    assert_eq!(card.witness.as_deref(), Some("JM"));
    assert_eq!(card.why, "by the truck");
    let sees = Command::SeeOut(SeeOut {
        machine: "EX-1".into(),
        visit: VISIT.into(),
    });
    assert!(
        matches!(
            crew.says(&jm(), sees.clone()),
            Err(Refusal::NotYourVisit { .. })
        ),
        "nobody sees it for RT"
    );
    // It outlives a restart and a release; RT is still in: the machine stops, and the notice is answered.
    crew.says(&operator("EX-1"), release()).unwrap();
    crew.says(&By::hub(), Command::NoticeRestart(NoticeRestart::default()))
        .unwrap();
    assert!(told(&crew).is_some());
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    assert_eq!(told(&crew), None);
    crew.says(&jm(), witness(VISIT, "now by the truck"))
        .unwrap();
    crew.says(&ground(), sees.clone()).unwrap();
    assert_eq!(told(&crew), None);
    let entries = crew.log.len();
    crew.says(&ground(), sees).unwrap();
    assert_eq!(crew.log.len(), entries, "seen once");
}

#[test]
fn a_second_phone_or_name_of_whoever_is_in_is_no_witness() {
    let mut crew = inside();
    crew.wait(seconds(60));
    let second = By {
        device: "g7".into(),
        person: "ZZ".into(),
        ..ground()
    };
    crew.joins(&second);
    assert_eq!(
        crew.says(&second, witness(VISIT, "gone")),
        Err(Refusal::WitnessUnknown {
            person: "RT".into()
        })
    );
    assert_eq!(phase(&crew), Phase::Occupied);
}

#[test]
fn a_group_goes_in_with_whoever_leads_it_and_comes_out_whole() {
    let mut crew = Crew::digging();
    crew.joins(&jm());
    let asks = |others| {
        Command::AskIn(AskIn {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            mark: None,
            others: Some(others),
        })
    };
    assert!(matches!(
        crew.says(&ground(), asks(51)),
        Err(Refusal::HeldBack { .. })
    ));
    crew.says(&ground(), asks(4)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Occupied);
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["RT + 4"]);
    let out = |all| {
        Command::ComeOut(ComeOut {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            all,
        })
    };
    for all in [None, Some(1), Some(4), Some(6)] {
        let few = crew.says(&ground(), out(all));
        assert!(
            matches!(few, Err(Refusal::NotAllOut { inside: 5, .. })),
            "{all:?}"
        );
    }
    let seen = crew.says(&jm(), witness(VISIT, "one of them"));
    assert!(matches!(seen, Err(Refusal::NotAllOut { .. })), "{seen:?}");
    assert_eq!(phase(&crew), Phase::Occupied);
    crew.says(&ground(), out(Some(5))).unwrap();
    assert_eq!(phase(&crew), Phase::Stopped);
    // More go in than were asked for: nobody agreed to that.
    let mut crew = Crew::digging();
    crew.says(&ground(), asks(1)).unwrap();
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let more = Command::GoIn(GoIn {
        machine: "EX-1".into(),
        visit: VISIT.into(),
        mark: None,
        others: Some(3),
    });
    crew.says(&ground(), more).unwrap();
    assert_eq!(phase(&crew), Phase::Unconfirmed);
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["RT + 3"]);
}

#[test]
fn one_entry_within_two_circles_stops_both_machines_until_out() {
    let mut crew = Crew::digging();
    let mark = crew.state.site().unwrap().mark("P-1").unwrap().place;
    let (x, y) = (mark.x.to_string(), mark.y.to_string());
    crew.place("EX-1", &x, &y);
    crew.place("EX-2", &x, &y);
    // Its place is old by then, and it is asked all the same.
    crew.wait(seconds(31 * 60));
    let second = |crew: &Crew| crew.state.way_in.gate("EX-2").phase();
    crew.says(&ground(), asks(VISIT)).unwrap();
    assert_eq!((phase(&crew), second(&crew)), (Phase::Asked, Phase::Asked));
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    let also = |crew: &Crew| people::at(&crew.state.way_in, "EX-1")[0].also.clone();
    assert_eq!(also(&crew), ["EX-2"]);
    // One has agreed, the other has not: whoever goes in all the same stops it.
    crew.says(&ground(), goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Occupied, Phase::Unconfirmed)
    );
    crew.says(&ground(), comes_out(VISIT)).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Stopped, Phase::Stopped)
    );
    crew.says(&operator("EX-1"), release()).unwrap();
    crew.says(&operator("EX-2"), release()).unwrap();
    // Taken back at one, taken back at both.
    crew.says(&ground(), asks("visit-02")).unwrap();
    let back = Command::WithdrawAsk(WithdrawAsk {
        machine: "EX-1".into(),
        visit: "visit-02".into(),
    });
    crew.says(&ground(), back).unwrap();
    assert_eq!(
        (phase(&crew), second(&crew)),
        (Phase::Working, Phase::Working)
    );
}

#[test]
fn an_operator_on_foot_leaves_the_own_machine_with_its_bucket_down() {
    let mut crew = Crew::digging();
    let on_foot = operator("EX-2");
    let ask = |machine: &str| {
        Command::AskIn(AskIn {
            machine: machine.into(),
            visit: VISIT.into(),
            mark: None,
            others: None,
        })
    };
    assert!(matches!(
        crew.says(&on_foot, ask("EX-1")),
        Err(Refusal::HeldBack { .. })
    ));
    assert!(matches!(
        crew.says(&on_foot, ask("EX-2")),
        Err(Refusal::HeldBack { .. })
    ));
    crew.says(&on_foot, holds(&[])).unwrap();
    crew.says(&on_foot, ask("EX-1")).unwrap();
    let asks = people::at(&crew.state.way_in, "EX-1");
    let own = asks.iter().find(|one| one.device == on_foot.device);
    assert_eq!(own.unwrap().stage, Stage::Asked);
    crew.says(&operator("EX-1"), holds(&[VISIT])).unwrap();
    crew.says(&on_foot, goes_in("EX-1", VISIT)).unwrap();
    assert_eq!(phase(&crew), Phase::Occupied);
    // What has happened is kept, also near the own machine.
    crew.says(&on_foot, goes_in("EX-2", "visit-02")).unwrap();
    let own = crew.state.way_in.gate("EX-2").phase();
    assert_eq!(own, Phase::Unconfirmed);
}
