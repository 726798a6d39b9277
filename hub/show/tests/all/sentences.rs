//! Entries read as sentences in both languages.

use day::asked::{By, Command, Role};
use day::given::{Crew, ground, operator, supervisor};
use day::said::diagonals::MeasureDiagonals;
use day::said::way_in::answer::{BucketDown, Release};
use day::said::way_in::ask::AskIn;
use day::said::way_in::enter::{GoIn, OutByWitness};
use show::tell::tell;

#[test]
fn every_word_of_the_way_in_reads_as_a_sentence() {
    let visit = || "visit-01".to_owned();
    let other = By {
        device: "g2".into(),
        person: "JM".into(),
        roles: vec![Role::Ground],
        machine: None,
    };
    let mut crew = Crew::digging();
    crew.joins(&supervisor()).joins(&other);
    let ask = AskIn {
        machine: "EX-1".into(),
        visit: visit(),
        mark: Some("P-1".into()),
        others: None,
    };
    crew.says(&ground(), Command::AskIn(ask)).unwrap();
    let down = BucketDown {
        answers: vec![visit()],
    };
    crew.says(&operator("EX-1"), Command::BucketDown(down))
        .unwrap();
    let goes_in = GoIn {
        machine: "EX-1".into(),
        visit: visit(),
        mark: None,
        others: None,
    };
    crew.says(&ground(), Command::GoIn(goes_in)).unwrap();
    crew.says(&operator("EX-1"), Command::Release(Release {}))
        .unwrap();
    let seen = OutByWitness {
        machine: "EX-1".into(),
        visit: visit(),
        why: "seen".into(),
        all: None,
    };
    crew.says(&supervisor(), Command::OutByWitness(seen))
        .unwrap();
    for entry in &crew.log {
        let told = tell(entry);
        assert!(!told.text.english.is_empty(), "{entry:?}");
        assert!(!told.text.spanish.is_empty(), "{entry:?}");
    }
}

/// Invented, demo: 70·(96.23² − 96.18²)/(4·66·70) = 0.036 ft.
#[test]
fn diagonals_say_which_corners_move_and_how_far() {
    let mut crew = Crew::opened();
    let asked = MeasureDiagonals {
        what: "PAD".into(),
        base: "66.00".into(),
        across: "70 ft".into(),
        a_to_c: "96.18".into(),
        b_to_d: "96.23".into(),
    };
    crew.says(&ground(), Command::MeasureDiagonals(asked))
        .unwrap();
    let told = tell(crew.log.last().unwrap());
    assert!(
        told.text.english.contains("C and D move 0.036 ft toward B"),
        "{told:?}"
    );
    assert!(
        told.text
            .spanish
            .contains("C y D se mueven 0.036 ft hacia B"),
        "{told:?}"
    );
}
