//! Rain and water: what screens show of them, and what the log and the review tell.

use super::*;

#[test]
fn rain_stands_on_every_screen_until_it_stops_and_the_review_tells_both() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    crew.says(&ground(), Command::SayRain(SayRain {})).unwrap();
    let since = Some(crew.now);
    let on_screens = |crew: &Crew| {
        [
            supervisor::view(&crew.state).unwrap().rain.since,
            show::views::ground::view(&crew.state).unwrap().rain.since,
            cab::view(&crew.state, "EX-2").unwrap().rain.since,
        ]
    };
    assert_eq!(on_screens(&crew), [since; 3]);
    let why = |crew: &Crew| {
        owed(crew).into_iter().find_map(|one| match one {
            ExceptionKind::InspectionDue { why, .. } => Some(why),
            _ => None,
        })
    };
    assert_eq!(why(&crew), Some(InspectionWhy::Rain));
    let rain = crew.state.rain.word;
    crew.wait(minutes(30));
    crew.says(&ground(), Command::SayRainStopped(SayRainStopped { rain }))
        .unwrap();
    assert_eq!(on_screens(&crew), [None; 3]);
    let noted = show::review::exceptions::exceptions(&crew.log);
    let told: Vec<&str> = noted
        .iter()
        .filter(|one| one.kind == NotedKind::Rain)
        .map(|one| one.said.text.english.as_str())
        .collect();
    let due = "To be inspected after it: BANK.";
    assert_eq!(
        told,
        [
            format!("It rains. {due}"),
            format!("The rain stopped. {due}")
        ]
    );
}

#[test]
fn water_stands_on_the_pages_until_it_is_pumped_out_and_the_log_says_what_is_owed() {
    let mut crew = crew(under_a_face());
    inspects(&mut crew, inspection(SoilClass::B)).unwrap();
    let seen = SeeAtFace {
        zone: "BANK".into(),
        what: Sight::Water,
        text: String::new(),
        note: String::new(),
    };
    crew.says(&operator("EX-2"), Command::SeeAtFace(seen))
        .unwrap();
    let stands = |crew: &Crew| {
        let ground = show::views::ground::view(&crew.state).unwrap().water;
        assert_eq!(ground, supervisor::view(&crew.state).unwrap().water);
        ground
    };
    let water = stands(&crew)[0].clone();
    let pumped = SayPumped {
        at: water.at,
        water: water.water,
    };
    crew.says(&ground(), Command::SayPumped(pumped)).unwrap();
    assert!(stands(&crew).is_empty());
    let told = crew.log.iter().rev().map(show::tell::tell);
    let told = told.filter(|told| told.text.english.contains("pumped"));
    assert_eq!(
        told.map(|told| told.text.english).collect::<Vec<_>>(),
        ["Water pumped out of BANK. To be inspected after it: BANK."]
    );
}
