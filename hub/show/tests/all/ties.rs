//! Tests: what is about to go is named with the tapes to take first, and comes back by them.

use day::asked::Command;
use day::given::{Crew, ground, operator};
use day::going::Back;
use day::refusal::Refusal;
use day::said::marks::{LaidFrom, LayMarks, ScrapeMarks};
use day::said::ties::TakeTies;
use earthwork::length::{Form, Length};
use show::views::exception::ExceptionKind;
use show::views::ground as ground_view;
use show::views::supervisor as board;

fn lays(crew: &mut Crew, mark: &str, from: LaidFrom) -> Result<(), Refusal> {
    let laid = LayMarks {
        marks: vec![mark.into()],
        from,
        note: String::new(),
    };
    crew.says(&ground(), Command::LayMarks(laid)).map(|_| ())
}

fn scrapes(crew: &mut Crew, mark: &str) {
    let marks = vec![mark.into()];
    crew.says(
        &operator("EX-2"),
        Command::ScrapeMarks(ScrapeMarks { marks }),
    )
    .unwrap();
}

fn ties(
    mark: &str,
    (first, first_tape): (&str, &str),
    (second, second_tape): (&str, &str),
) -> Command {
    Command::TakeTies(TakeTies {
        mark: mark.into(),
        first: first.into(),
        first_tape: first_tape.into(),
        second: second.into(),
        second_tape: second_tape.into(),
    })
}

/// What EX-2 is about to take, as the ground phones are told.
fn going(crew: &Crew) -> Vec<(String, Back)> {
    let view = ground_view::view(&crew.state).unwrap();
    let of = view
        .going
        .into_iter()
        .filter(|going| going.machine == "EX-2");
    of.map(|going| (going.mark, going.back)).collect()
}

fn named(marks: &[(&str, Back)]) -> Vec<(String, Back)> {
    marks
        .iter()
        .map(|(mark, back)| ((*mark).into(), *back))
        .collect()
}

fn exceptions(crew: &Crew) -> Vec<Vec<String>> {
    let view = board::view(&crew.state).unwrap();
    let ties = view
        .exceptions
        .into_iter()
        .filter_map(|one| match one.what {
            ExceptionKind::TiesFirst { marks, .. } => Some(marks),
            _ => None,
        });
    ties.collect()
}

/// BM-1 at 0, 0 and BM-2 at 80, 0: R-1 at 10, 50 lies √(10² + 50²) = 50.99 and √(70² + 50²) = 86.02 away (mathematics).
const R_1: ((&str, &str), (&str, &str)) = (("BM-1", "50.99"), ("BM-2", "86.02"));

#[test]
fn before_a_machine_starts_the_first_of_its_order_are_named_with_the_tapes_to_take() {
    let crew = Crew::digging();
    let view = ground_view::view(&crew.state).unwrap();
    let first = view.going.iter().find(|going| going.mark == "R-1").unwrap();
    assert_eq!(
        (first.machine.as_str(), first.back),
        ("EX-2", Back::NotSaid)
    );
    let take = first.take.as_ref().unwrap();
    assert_eq!(
        (take.first.as_str(), take.second.as_str()),
        ("BM-1", "BM-2")
    );
    let shown = |tape: Length| tape.show(Form::DecimalFeet { places: 2 });
    assert_eq!(
        (shown(take.first_tape), shown(take.second_tape)),
        ("50.99 ft".into(), "86.02 ft".into())
    );
    // Mathematics: the tapes meet at 11.3° + 54.5°; control is good to 0.01 and a tape to 0.02.
    assert!(
        (take.angle_degrees - 65.8).abs() < 0.1 && !take.weak,
        "{take:?}"
    );
    assert!((take.doubt.feet() - 0.0347).abs() < 1e-3, "{take:?}");
    // 20 ft along the run from R-1 at 10 comes to 30, not S-1 far away. Nobody has laid any: no exception.
    assert_eq!(going(&crew).len(), 4);
    assert!(exceptions(&crew).is_empty());
}

#[test]
fn the_strip_goes_on_from_the_last_call_in_the_direction_of_work_and_leaves_what_is_finished() {
    let mut crew = Crew::digging();
    // HI 105.00, dig to 98.00 on the upper step: the rod reads 7.00 at grade.
    crew.reads("R-1", "7.00").unwrap();
    crew.reads("R-2", "6.50").unwrap();
    let forward = going(&crew);
    assert_eq!(forward[0].0, "R-2");
    assert!(forward.iter().all(|(mark, _)| mark != "R-1"));
    // From the far end the run is worked backward: R-3 at 21 is dug to 97.00 and finished, R-2 is next, R-1 within 20 ft.
    let mut crew = Crew::digging();
    crew.reads("R-3", "8.00").unwrap();
    crew.reads("R-2", "6.50").unwrap();
    let backward: Vec<String> = going(&crew).into_iter().map(|(mark, _)| mark).collect();
    assert_eq!(backward, ["R-1", "R-2", "R-4"]);
}

#[test]
fn a_mark_laid_from_a_mark_is_the_supervisors_until_it_has_ties_and_comes_back_by_them() {
    let mut crew = Crew::digging();
    lays(&mut crew, "R-2", LaidFrom::String).unwrap();
    lays(&mut crew, "R-1", LaidFrom::Mark { id: "R-2".into() }).unwrap();
    assert_eq!(
        going(&crew)[..2],
        named(&[("R-1", Back::Nothing), ("R-2", Back::Laid)])[..]
    );
    assert_eq!(exceptions(&crew), [["R-1".to_owned()]]);
    crew.says(&ground(), ties("R-1", R_1.0, R_1.1)).unwrap();
    assert_eq!(going(&crew)[0], ("R-1".to_owned(), Back::Ties));
    assert!(exceptions(&crew).is_empty());
    let told = show::tell::tell(crew.log.last().unwrap());
    assert!(
        told.text
            .english
            .contains("50.99 ft from BM-1, 86.02 ft from BM-2; they meet at 66°"),
        "{told:?}"
    );
    scrapes(&mut crew, "R-1");
    assert!(going(&crew).iter().all(|(mark, _)| mark != "R-1"));
    lays(&mut crew, "R-1", LaidFrom::Ties).unwrap();
    let paint = crew.state.marks["R-1"].paint.clone().unwrap();
    // Both ends are control: one mark away from it, and as good as the tapes, not as the mark that it came from.
    assert_eq!((paint.generation, paint.depth), (2, 1));
    assert!(
        (paint.doubt.unwrap().feet() - 0.0347).abs() < 1e-3,
        "{paint:?}"
    );
}

#[test]
fn ties_whose_end_went_too_bring_nothing_back() {
    let mut crew = Crew::digging();
    lays(&mut crew, "R-2", LaidFrom::String).unwrap();
    crew.says(&ground(), ties("R-1", ("R-2", "9.00"), R_1.0))
        .unwrap();
    assert_eq!(going(&crew)[0].1, Back::Ties);
    scrapes(&mut crew, "R-2");
    assert_eq!(going(&crew)[0].1, Back::NotSaid);
    assert!(lays(&mut crew, "R-1", LaidFrom::Ties).is_err());
    assert!(lays(&mut crew, "R-3", LaidFrom::Ties).is_err());
    let held_at_a_gone_mark = crew.says(&ground(), ties("R-1", ("R-2", "9.00"), R_1.0));
    assert_eq!(
        held_at_a_gone_mark,
        Err(Refusal::MarkScraped { mark: "R-2".into() })
    );
}

#[test]
fn tapes_of_another_place_are_refused_with_how_far_off_and_nothing_is_entered() {
    let mut crew = Crew::digging();
    let before = crew.log.len();
    // A foot too much on one tape: the place lies more than a foot from the plan's.
    let refused = crew
        .says(&ground(), ties("R-1", ("BM-1", "51.99"), R_1.1))
        .unwrap_err();
    assert!(
        refused.to_string().contains("from where the plan has it"),
        "{refused}"
    );
    assert!(refused.to_string().contains("1.1"), "{refused}");
    for (first, second) in [
        (("BM-1", "5.0"), R_1.1),
        (("BM-9", "50.99"), R_1.1),
        (("BM-1", "far"), R_1.1),
        (R_1.0, ("BM-1", "50.99")),
    ] {
        assert!(
            crew.says(&ground(), ties("R-1", first, second)).is_err(),
            "{first:?}"
        );
    }
    assert!(crew.says(&ground(), ties("Z-1", R_1.0, R_1.1)).is_err());
    assert_eq!(crew.log.len(), before);
}

/// Mathematics: from R-2 at 19, 50 and R-3 at 21, 50 both tapes to R-1 at 10, 50 lie in one line with it.
#[test]
fn flat_tapes_are_entered_as_weak_or_refused_when_the_place_slides() {
    let mut crew = Crew::digging();
    let in_line = crew.says(&ground(), ties("R-1", ("R-2", "9.00"), ("R-3", "11.00")));
    assert!(in_line.unwrap_err().to_string().contains("slides"));
    crew.says(&ground(), ties("R-1", ("R-2", "9.00"), ("P-2", "42.43")))
        .unwrap();
    assert!(!crew.state.marks["R-1"].ties.as_ref().unwrap().ties.weak);
    // P-2 at 40, 20 sees P-1 due west and BM-1 at atan(20 / 40) = 26.6° south of west.
    crew.says(&ground(), ties("P-2", ("P-1", "10.00"), ("BM-1", "44.72")))
        .unwrap();
    let flat = &crew.state.marks["P-2"].ties.as_ref().unwrap().ties;
    assert!(
        flat.weak && (flat.angle_degrees - 26.57).abs() < 0.05,
        "{flat:?}"
    );
}
