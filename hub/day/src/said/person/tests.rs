//! Who somebody is, told as given – when – then: names, cabs, whose phone it is.

use earthwork::words::ScreenUnit;
use words::Language;

use super::*;
use crate::asked::Command;
use crate::given::{Crew, ground, operator, supervisor};
use crate::said::join::RemovePhone;
use crate::said::way_in::answer::BucketDown;
use crate::said::way_in::ask::AskIn;
use crate::said::way_in::enter::{ComeOut, GoIn};
use crate::said::way_in::notice::NoticeLink;

const VISIT: &str = "visit-01";

fn join(device: &str, person: &str, roles: &[Role], machine: Option<&str>) -> Join {
    Join {
        device: device.into(),
        token_digest: String::new(),
        person: person.into(),
        roles: roles.to_vec(),
        machine: machine.map(Into::into),
        language: Language::English,
        unit: ScreenUnit::Tenths,
        same_person: false,
        handset: None,
    }
}

fn enters(crew: &mut Crew, join: &Join) -> Result<(), Refusal> {
    let command = Command::Join(join.clone());
    crew.says(&By::hub(), command).map(|_| ())
}

fn rt_is_in() -> Crew {
    let mut crew = Crew::digging();
    crew.joins(&ground());
    let go = GoIn {
        machine: "EX-1".into(),
        visit: VISIT.into(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::GoIn(go)).unwrap();
    crew
}

fn gives(machine: &str) -> Command {
    Command::GiveCab(GiveCab {
        machine: machine.into(),
    })
}

#[test]
fn a_second_person_of_one_name_is_asked_who_they_are_and_given_another() {
    let mut crew = rt_is_in();
    for typed in ["RT", "rt", " R.T. "] {
        let second = enters(&mut crew, &join("g7", typed, &[Role::Ground], None));
        let Err(Refusal::SameName {
            person,
            inside,
            another,
            ..
        }) = second
        else {
            panic!("{typed}: {second:?}");
        };
        assert_eq!((person.as_str(), inside.as_deref()), ("RT", Some("EX-1")));
        assert!(another.ends_with(" 2"), "{another}");
    }
    enters(&mut crew, &join("g7", "RT 2", &[Role::Ground], None)).unwrap();
    let third = enters(&mut crew, &join("g8", "RT", &[Role::Ground], None));
    assert!(
        matches!(third, Err(Refusal::SameName { another, .. }) if another == "RT 3"),
        "a name that is taken is not offered"
    );
    // Neither asks nor comes out for the other.
    let other = By {
        device: "g7".into(),
        person: "RT 2".into(),
        ..ground()
    };
    let lost = NoticeLink {
        device: "g1".into(),
        lost: true,
    };
    crew.says(&By::hub(), Command::NoticeLink(lost)).unwrap();
    let out = |all| {
        Command::ComeOut(ComeOut {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            all,
        })
    };
    assert!(matches!(
        crew.says(&other, out(None)),
        Err(Refusal::NotYourVisit { .. })
    ));
    assert_eq!(crew.state.way_in.gate("EX-1").may_be_in(), ["RT"]);
    let ask = AskIn {
        machine: "EX-1".into(),
        visit: "visit-of-rt-2".into(),
        mark: None,
        others: None,
    };
    crew.says(&other, Command::AskIn(ask)).unwrap();
}

#[test]
fn who_says_to_be_the_same_person_has_said_so_in_the_log_and_their_first_phone_is_told() {
    let mut crew = rt_is_in();
    let again = Join {
        same_person: true,
        ..join("g9", "r t", &[Role::Ground], None)
    };
    enters(&mut crew, &again).unwrap();
    let Body::Joined(joined) = &crew.log.last().unwrap().body else {
        panic!("joined");
    };
    assert_eq!(
        (joined.person.as_str(), joined.same_as.as_deref()),
        ("RT", Some("g1"))
    );
    let me = By {
        device: "g9".into(),
        ..ground()
    };
    let out = Command::ComeOut(ComeOut {
        machine: "EX-1".into(),
        visit: VISIT.into(),
        all: None,
    });
    // While the first phone is heard, it alone says OUT.
    assert!(crew.says(&me, out.clone()).is_err());
    let lost = NoticeLink {
        device: "g1".into(),
        lost: true,
    };
    crew.says(&By::hub(), Command::NoticeLink(lost)).unwrap();
    crew.says(&me, out).unwrap();
    let gate = crew.state.way_in.gate("EX-1");
    let (_, told) = gate.told_out().next().unwrap();
    assert_eq!(
        (told.device.as_str(), told.witness.as_deref()),
        ("g1", None)
    );
}

#[test]
fn the_same_phone_that_comes_in_again_is_not_asked() {
    let mut crew = Crew::digging();
    crew.joins(&ground());
    let again = Join {
        handset: Some("g1".into()),
        ..join("g9", "RT", &[Role::Ground], None)
    };
    enters(&mut crew, &again).unwrap();
    assert!(same_handset(&crew.state, "g1", "g9"));
    // A device that nobody knows is no handset.
    let unknown = Join {
        handset: Some("z9".into()),
        ..join("g10", "RT", &[Role::Ground], None)
    };
    assert!(enters(&mut crew, &unknown).is_err());
}

#[test]
fn a_phone_that_comes_in_again_has_its_own_visit_and_under_another_name_it_has_not() {
    for (name, own) in [("RT", true), ("ZZ", false)] {
        let mut crew = rt_is_in();
        let again = Join {
            handset: Some("g1".into()),
            ..join("g9", name, &[Role::Ground], None)
        };
        enters(&mut crew, &again).unwrap();
        let me = By {
            device: "g9".into(),
            person: name.into(),
            ..ground()
        };
        let out = ComeOut {
            machine: "EX-1".into(),
            visit: VISIT.into(),
            all: None,
        };
        let said = crew.says(&me, Command::ComeOut(out));
        assert_eq!(said.is_ok(), own, "{name}: {said:?}");
        let gate = crew.state.way_in.gate("EX-1");
        assert_eq!(gate.told_out().count(), 0, "no other phone said it");
    }
}

#[test]
fn somebody_who_is_in_since_yesterday_keeps_their_name() {
    let mut crew = rt_is_in();
    let day = crate::said::day::OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    let another = enters(&mut crew, &join("g7", "RT", &[Role::Ground], None));
    assert!(
        matches!(another, Err(Refusal::SameName { inside, .. }) if inside.as_deref() == Some("EX-1"))
    );
}

#[test]
fn nobody_is_called_hub() {
    let mut crew = Crew::digging();
    let hub = enters(&mut crew, &join("g7", "Hub", &[Role::Ground], None));
    assert!(matches!(hub, Err(Refusal::BadJoin { .. })), "{hub:?}");
}

#[test]
fn a_code_that_is_scanned_elsewhere_takes_no_cab() {
    let mut crew = Crew::digging();
    let second = join("m9", "ZZ", &[Role::Operator], Some("EX-1"));
    assert_eq!(
        enters(&mut crew, &second),
        Err(Refusal::CabTaken {
            machine: "EX-1".into(),
            person: "OP".into()
        })
    );
    // Another cab's operator does not give it away, nor does a ground person; an old press does not either.
    assert!(crew.says(&operator("EX-2"), gives("EX-1")).is_err());
    assert!(crew.says(&ground(), gives("EX-1")).is_err());
    let pressed = crew.now;
    crew.wait(seconds(11));
    assert_eq!(
        crew.said_at(&supervisor(), gives("EX-1"), pressed),
        Err(Refusal::PressedTooLate)
    );
    assert!(enters(&mut crew, &second).is_err());
    crew.says(&operator("EX-1"), gives("EX-1")).unwrap();
    crew.wait(GIVEN_FOR_MS + 1);
    assert!(enters(&mut crew, &second).is_err(), "given too long ago");
    crew.says(&supervisor(), gives("EX-1")).unwrap();
    enters(&mut crew, &second).unwrap();
    assert_eq!(crew.state.cabs["EX-1"].device.as_deref(), Some("m9"));
    let third = join("m10", "YY", &[Role::Operator], Some("EX-1"));
    assert!(enters(&mut crew, &third).is_err(), "given once, taken once");
}

#[test]
fn no_phone_takes_a_cab_while_its_bucket_is_held_or_somebody_asks_or_is_in() {
    let mut crew = Crew::digging();
    let second = join("m9", "ZZ", &[Role::Operator], Some("EX-1"));
    let held = |crew: &mut Crew| {
        crew.says(&supervisor(), gives("EX-1")).unwrap();
        matches!(enters(crew, &second), Err(Refusal::CabHeld { .. }))
    };
    let ask = AskIn {
        machine: "EX-1".into(),
        visit: VISIT.into(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::AskIn(ask)).unwrap();
    assert!(held(&mut crew), "somebody asks");
    let down = BucketDown {
        answers: vec![VISIT.into()],
    };
    crew.says(&operator("EX-1"), Command::BucketDown(down))
        .unwrap();
    assert!(held(&mut crew), "the bucket is held down");
    // The phone that is the screen comes in again: it shows what it showed.
    let own = Join {
        handset: Some("m1".into()),
        ..join("m8", "OP", &[Role::Operator], Some("EX-1"))
    };
    let own = Join {
        same_person: true,
        ..own
    };
    enters(&mut crew, &own).unwrap();
    assert!(held(&mut crew));
    // A dead phone is removed by a supervisor; what was held stays held.
    let device = "m8".into();
    crew.says(&supervisor(), Command::RemovePhone(RemovePhone { device }))
        .unwrap();
    enters(&mut crew, &second).unwrap();
    assert_eq!(crew.state.way_in.gate("EX-1").phase(), Phase::Stopped);
}

#[test]
fn whose_phone_it_is_another_supervisor_says_and_it_holds_for_the_day() {
    let mut crew = Crew::digging();
    crew.state.site.as_mut().unwrap().site.cuts.competent = vec!["PN".into()];
    let pn = supervisor();
    crew.joins(&pn);
    assert!(matches!(
        competent(&crew.state, &pn),
        Err(Refusal::NotConfirmed { .. })
    ));
    let confirm = |person: &str| {
        Command::ConfirmPerson(ConfirmPerson {
            device: "s1".into(),
            person: person.into(),
        })
    };
    assert!(
        crew.says(&pn, confirm("PN")).is_err(),
        "nobody confirms themselves"
    );
    let second = By {
        device: "s2".into(),
        ..supervisor()
    };
    crew.joins(&second);
    assert!(
        crew.says(&second, confirm("PN")).is_err(),
        "nor with a second phone"
    );
    let laptop = By {
        device: "t1".into(),
        person: "truck".into(),
        ..supervisor()
    };
    crew.joins(&laptop);
    assert!(
        crew.says(&ground(), confirm("PN")).is_err(),
        "a supervisor says it"
    );
    assert!(
        crew.says(&laptop, confirm("HF")).is_err(),
        "the list is old"
    );
    crew.says(&laptop, confirm("PN")).unwrap();
    assert_eq!(competent(&crew.state, &pn), Ok(()));
    // Whoever types the name on another phone is not.
    assert!(matches!(
        competent(&crew.state, &second),
        Err(Refusal::NotConfirmed { .. })
    ));
    let other = By {
        person: "HF".into(),
        ..supervisor()
    };
    assert!(matches!(
        competent(&crew.state, &other),
        Err(Refusal::NotCompetent { .. })
    ));
    let day = crate::said::day::OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    assert!(competent(&crew.state, &pn).is_err());
}

#[test]
fn a_witness_is_on_a_phone_that_was_in_before_or_was_confirmed() {
    let mut crew = rt_is_in();
    let knows = |crew: &Crew, device: &str| {
        let gate = crew.state.way_in.gate("EX-1");
        let visit = gate.visit(VISIT).unwrap();
        known_since(&crew.state, device, &visit.device, visit.since)
    };
    assert!(!knows(&crew, "z9"), "a phone that is not in");
    crew.wait(seconds(60));
    let late = By {
        device: "g3".into(),
        person: "HF".into(),
        ..ground()
    };
    crew.joins(&late);
    assert!(!knows(&crew, "g3"), "it came when RT was in");
    crew.confirms(&By {
        device: "g4".into(),
        person: "KL".into(),
        ..ground()
    });
    assert!(knows(&crew, "g4"));
    // The phone that went in, under another name.
    let again = Join {
        handset: Some("g1".into()),
        ..join("g5", "MM", &[Role::Ground], None)
    };
    enters(&mut crew, &again).unwrap();
    let laptop = By {
        device: "t1".into(),
        person: "truck".into(),
        ..supervisor()
    };
    let confirm = ConfirmPerson {
        device: "g5".into(),
        person: "MM".into(),
    };
    crew.says(&laptop, Command::ConfirmPerson(confirm)).unwrap();
    assert!(!knows(&crew, "g5"));
}
