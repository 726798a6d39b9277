//! Tests: the life of a mark: laid from something better than old paint, checked by a second person, scraped, laid again.

use super::*;
use crate::asked::Command;
use crate::cab::{self, Fills};
use crate::given::{Crew, ground, supervisor};

fn lays(from: LaidFrom) -> Command {
    Command::LayMarks(LayMarks {
        marks: vec!["P-1".into()],
        from,
        note: String::new(),
    })
}

fn scrapes() -> Command {
    Command::ScrapeMarks(ScrapeMarks {
        marks: vec!["P-1".into()],
    })
}

fn checks(apart: &str) -> Command {
    Command::CheckMarks(CheckMarks {
        marks: vec!["P-1".into()],
        apart: apart.into(),
    })
}

#[test]
fn a_mark_is_laid_checked_by_another_scraped_and_laid_again_as_the_next_generation() {
    let mut crew = Crew::digging();
    crew.says(&ground(), lays(LaidFrom::String)).unwrap();
    assert_eq!(
        crew.says(&ground(), checks("0.01")),
        Err(Refusal::SameEyes { mark: "P-1".into() })
    );
    assert!(matches!(
        crew.says(&supervisor(), checks("0.06")),
        Err(Refusal::BadMark { .. })
    ));
    crew.says(&supervisor(), checks("0.05")).unwrap();
    crew.says(&ground(), scrapes()).unwrap();
    assert_eq!(
        crew.reads("P-1", "4.70"),
        Err(Refusal::MarkScraped { mark: "P-1".into() })
    );
    assert!(crew.says(&ground(), lays(LaidFrom::OldPaint)).is_err());
    crew.says(&ground(), lays(LaidFrom::Hub)).unwrap();
    let paint = crew.state.marks["P-1"].paint.clone().unwrap();
    assert_eq!((paint.generation, paint.state), (2, PaintState::Laid));
    assert!(crew.reads("P-1", "4.70").is_ok());
}

#[test]
fn a_mark_laid_again_takes_its_live_call_with_it() {
    let mut crew = Crew::digging();
    crew.says(&ground(), lays(LaidFrom::String)).unwrap();
    crew.reads("P-1", "4.70").unwrap();
    crew.says(&ground(), lays(LaidFrom::Hub)).unwrap();
    assert!(matches!(
        cab::fills(&crew.state, "EX-1"),
        Fills::Old {
            why: Ending::StaleByMark,
            ..
        }
    ));
    // The ground under a mark that was laid again is other ground: a rise is no slip.
    assert!(crew.state.live_call("EX-1").is_none());
    crew.reads("P-1", "4.50").unwrap();
    assert!(crew.state.live_call("EX-1").is_some());
}

#[test]
fn marks_go_two_deep_and_no_deeper() {
    let mut crew = Crew::digging();
    crew.says(&ground(), lays(LaidFrom::Hub)).unwrap();
    let lay = |mark: &str, from: &str| {
        Command::LayMarks(LayMarks {
            marks: vec![mark.into()],
            from: LaidFrom::Mark { id: from.into() },
            note: String::new(),
        })
    };
    crew.says(&ground(), lay("P-2", "P-1")).unwrap();
    assert!(matches!(
        crew.says(&ground(), lay("R-1", "P-2")),
        Err(Refusal::BadMark { .. })
    ));
}
