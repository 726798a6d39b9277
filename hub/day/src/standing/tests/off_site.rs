//! A machine that left the site with somebody in it, and one that came on to it under ALL STOP.

use super::*;

#[test]
fn stop_shows_in_a_machine_that_left_the_site_and_in_one_that_came_after() {
    let mut crew = called();
    let gone = Retired {
        list: Listed::Machine,
        id: "EX-2".into(),
    };
    crew.says(&supervisor(), change(vec![], vec![gone]))
        .unwrap();
    assert_eq!(how(&crew, "EX-2"), Some(Ending::OffSite));
    assert!(matches!(cab::fills(&crew.state, "EX-2"), Fills::OffSite));
    // Its own STOP, and everybody's.
    crew.says(&operator("EX-2"), Command::StopAll(StopAll::default()))
        .unwrap();
    for machine in ["EX-1", "EX-2"] {
        assert!(matches!(
            cab::fills(&crew.state, machine),
            Fills::Stop(stop) if stop.all
        ));
    }
    let mut another = crew.state.site().unwrap().machine("EX-1").unwrap().clone();
    another.id = "EX-3".into();
    another.works_on = vec![];
    crew.says(
        &supervisor(),
        change(vec![SiteThing::Machine(another)], vec![]),
    )
    .unwrap();
    assert!(matches!(
        cab::fills(&crew.state, "EX-3"),
        Fills::Stop(stop) if stop.all
    ));
    let lift = lifts(&crew);
    crew.says(&supervisor(), lift).unwrap();
    assert!(matches!(cab::fills(&crew.state, "EX-2"), Fills::OffSite));
    assert!(matches!(cab::fills(&crew.state, "EX-3"), Fills::NoCall));
}
