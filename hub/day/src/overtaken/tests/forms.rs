//! The form of an inspection that stands open while something is seen, and one that comes on the next day.

use super::*;

fn seen(zone: &str, what: Sight) -> Command {
    Command::SeeAtFace(SeeAtFace {
        zone: zone.into(),
        what,
        text: String::new(),
        note: String::new(),
    })
}

/// An inspection whose form was opened when that was the newest word about the face.
fn inspects_knowing(crew: &mut Crew, zone: &str, word: u64) -> Result<(), Refusal> {
    let Command::InspectFace(mut asked) = inspects(zone, None) else {
        panic!("it is one")
    };
    asked.word = Some(word);
    crew.says(&supervisor(), Command::InspectFace(asked))
        .map(|_| ())
}

#[test]
fn what_is_seen_while_the_form_of_an_inspection_is_open_asks_for_another_look() {
    let mut crew = crew();
    crew.says(&ground(), seen("F", Sight::Crack)).unwrap();
    let opened = crew.state.seq;
    crew.says(&ground(), seen("F", Sight::Water)).unwrap();
    crew.wait(minutes(2));
    overtaken(&inspects_knowing(&mut crew, "F", opened));
    overtaken(&inspects_knowing(&mut crew, "G", 0).and_then(|()| {
        crew.says(&ground(), seen("G", Sight::Water)).unwrap();
        inspects_knowing(&mut crew, "G", 0)
    }));
    let word = crew.state.cuts.face("F").unwrap().word.unwrap().entry;
    inspects_knowing(&mut crew, "F", word).unwrap();
    assert!(crew.state.cuts.face("F").unwrap().inspection_stands());
}

#[test]
fn an_inspection_of_yesterday_that_comes_today_is_none_of_today() {
    let mut crew = crew();
    crew.wait(minutes(60));
    let day = crate::said::day::OpenDay {
        day: "2030-05-15".into(),
    };
    crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
    crew.confirms(&supervisor());
    overtaken(&late(&mut crew, &supervisor(), inspects("F", None), 60));
    assert!(
        crew.state
            .cuts
            .face("F")
            .is_none_or(|face| face.inspected.is_none())
    );
    crew.says(&supervisor(), inspects("F", None)).unwrap();
}
