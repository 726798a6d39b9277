//! Faces and buried lines told as given – when – then, on a small invented site.
//!
//! The run at y = 50 is dug to 98.00 under a face whose toe lies at y = 55; the ground before the cut is level at 108.00.
//! At 1 to 1 it comes out at y = 65, at 1½ to 1 at y = 70; nobody may go over y = 69. All derived by hand.

use earthwork::buried::Marked;
use earthwork::face::{Evidence, Material, SoilClass, Strength};
use earthwork::layout::tie::Side as Hand;
use earthwork::length::Length;
use earthwork::target::{Shape, Stack, Target};
use proptest::prelude::*;

use day::answer::Outcome;
use day::asked::{By, Command};
use day::call::Label;
use day::cuts::held::HeldBy;
use day::cuts::now::InspectionWhy;
use day::cuts::plan::{
    CutKind, Cuts, FaceZone, Structure, Ticket, ToeCorner, Utility, UtilityKind,
};
use day::entry::Body;
use day::given::{Crew, at, ground, len, operator, reading, site, supervisor};
use day::refusal::Refusal;
use day::said::allow_dig::AllowDig;
use day::said::change::{ChangeSite, SiteThing};
use day::said::day::OpenDay;
use day::said::face_alarm::LeaveFace;
use day::said::face_design::{DesignPiece, RetypeSoil, ReviseFace};
use day::said::face_inspect::InspectFace;
use day::said::face_pins::ReadPins;
use day::said::face_seen::{SeeAtFace, SeeSlough, Sight};
use day::said::machine::SayMoved;
use day::said::pothole::DigPothole;
use day::said::pump::SayPumped;
use day::said::quick_call::QuickCall;
use day::said::rain::{SayRain, SayRainStopped};
use day::said::reading::{SpotReason, TakeReading};
use day::said::revise::ReviseTarget;
use day::said::ticket::{Answered, CheckTicket, Response, SayPaint};
use day::site::{Line, LineKind, Side, Site};
use day::time::minutes;
use show::review::exceptions::NotedKind;
use show::views::exception::ExceptionKind;
use show::views::operator::{self as cab, CabScreen};
use show::views::supervisor;

fn level(elevation: &str) -> Target {
    Target::new(
        Shape::Flat {
            elevation: len(elevation),
        },
        Stack {
            surface: "ground".into(),
            layers: vec![],
        },
    )
}

fn corner(x: &str, y: &str, elevation: &str) -> ToeCorner {
    ToeCorner {
        at: at(x, y),
        elevation: len(elevation),
    }
}

fn zone(id: &str, kind: CutKind, y: &str, over: &str) -> FaceZone {
    FaceZone {
        id: id.into(),
        name: format!("{id} bank"),
        kind,
        toe: vec![corner("0 ft", y, "98 ft"), corner("50 ft", y, "98 ft")],
        bank: Hand::Left,
        ground: level(over),
        layers: vec![],
        toe_marks: vec![],
        crest_marks: vec![],
        pins: vec!["C1-C2".into()],
        target: Some("RUN".into()),
        pipe_crown: None,
    }
}

fn under_a_face() -> Site {
    let mut site = site();
    site.lines.push(Line {
        id: "PL".into(),
        kind: LineKind::Property,
        points: vec![at("-20 ft", "69 ft"), at("120 ft", "69 ft")],
        keep: Side::Right,
        no_cross: true,
        doubt: len("0.02 ft"),
        note: String::new(),
    });
    site.cuts = Cuts {
        competent: vec!["PN".into()],
        faces: vec![zone("BANK", CutKind::Face, "55 ft", "108 ft")],
        structures: vec![Structure {
            id: "SHED".into(),
            points: vec![at("0 ft", "67 ft"), at("50 ft", "67 ft")],
            bottom: len("106 ft"),
        }],
        ..Cuts::default()
    };
    site
}

fn crew(site: Site) -> Crew {
    Crew::digging_on(site)
}

fn inspection(class: SoilClass) -> InspectFace {
    InspectFace {
        zone: "BANK".into(),
        class,
        evidence: Evidence::default(),
        seen: "dry, no cracks".into(),
        by_hand: "thumb dents it".into(),
        pins: vec![],
        release: String::new(),
        alarm: None,
        word: None,
    }
}

/// The alarm that the pages show now.
fn alarm(crew: &Crew) -> Option<u64> {
    let face = crew.state.cuts.face("BANK")?;
    Some(face.alarm.as_ref()?.alarm)
}

fn away(crew: &Crew) -> Command {
    Command::LeaveFace(LeaveFace {
        zone: "BANK".into(),
        alarm: alarm(crew).unwrap_or_default(),
    })
}

fn inspects(crew: &mut Crew, asked: InspectFace) -> Result<(), Refusal> {
    let asked = InspectFace {
        alarm: alarm(crew),
        ..asked
    };
    crew.says(&supervisor(), Command::InspectFace(asked))
        .map(|_| ())
}

fn retypes(crew: &mut Crew, class: SoilClass) {
    let asked = RetypeSoil {
        zone: "BANK".into(),
        class,
        evidence: Evidence::default(),
        why: "seep".into(),
    };
    crew.says(&supervisor(), Command::RetypeSoil(asked))
        .unwrap();
}

fn tapes(crew: &mut Crew, text: &str) {
    let asked = ReadPins {
        zone: "BANK".into(),
        pins: "C1-C2".into(),
        text: text.into(),
    };
    crew.says(&ground(), Command::ReadPins(asked)).unwrap();
}

/// A reading at R-1, five feet in front of the toe.
fn spot(crew: &mut Crew) -> Option<SpotReason> {
    match crew.reads("R-1", "6.70").unwrap().outcome {
        Outcome::Spot { why, .. } => Some(why),
        Outcome::Called { .. } => None,
        other => panic!("{other:?}"),
    }
}

fn labels(crew: &Crew) -> Vec<Label> {
    let call = crew.state.calls.values().next_back().unwrap();
    call.sent.labels.clone()
}

fn owed(crew: &Crew) -> Vec<ExceptionKind> {
    let view = supervisor::view(&crew.state).unwrap();
    view.exceptions.into_iter().map(|one| one.what).collect()
}

fn screen(crew: &Crew, machine: &str) -> CabScreen {
    cab::view(&crew.state, machine).unwrap().screen
}

/// Invented: 0.01 in six hours is still, 0.02 in 40 minutes is watched, 0.03 in 20 minutes is left.
fn opens(crew: &mut Crew) {
    for (wait, text) in [(0, "12.10"), (372, "12.11"), (40, "12.13"), (20, "12.16")] {
        crew.wait(minutes(wait));
        if wait == 20 {
            crew.check("S1", "BM-2", "3.48").unwrap();
            assert_eq!(spot(crew), None);
        }
        tapes(crew, text);
    }
}

mod buried;
mod face;
mod left;
mod struck;
mod wet;
