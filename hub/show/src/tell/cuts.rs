//! Sentences about faces and what is buried.

use earthwork::face::PinState;

use super::{Told, feet, signed};
use day::cuts::buried::Crossing;
use day::cuts::daylight::DaylightFound;
use day::entry::Body;
use day::said::face_alarm::AlarmWhy;
use day::said::face_pins::PinsRead;
use day::said::face_seen::{AtFace, SeenAtFace};
use day::said::struck::LineStruck;
use words::Text;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::FaceInspected(b) => Told::new(words::tell_cuts::inspected_class(
            &b.zone,
            &b.class.word(),
            &b.seen,
            &b.by_hand,
            &b.release,
        )),
        Body::SoilRetyped(b) => {
            let from = b.from.map_or("–", earthwork::face::SoilClass::word);
            let to = b.class.word();
            Told::new(words::tell_cuts::soil_of(&b.zone, &from, &to, &b.why))
        }
        Body::FaceRevised(b) => {
            Told::new(words::tell_cuts::by_an_engineer_own_design(&b.zone, &b.why))
        }
        Body::DaylightFound(b) => daylight(b),
        Body::SeenAtFace(b) => seen(b),
        Body::SloughSeen(b) => Told::new(words::tell_cuts::came_down(
            &b.zone,
            &feet(b.length),
            &feet(b.height),
            &feet(b.back),
            &format!("{:.1}", b.cubic_yards),
            &b.note,
        )),
        Body::RainBegan(b) => wet(&words::tell_cuts::it_rains().into(), &b.faces),
        Body::RainStopped(b) => wet(&words::tell_cuts::the_rain_stopped().into(), &b.faces),
        Body::WaterPumped(b) => wet(
            &words::tell_cuts::water_pumped_out_of(&b.at.name()),
            &b.faces,
        ),
        Body::PinsRead(b) => pins(b),
        Body::FaceAlarmed(b) => {
            let what = why(&b.why);
            Told::new(words::tell_cuts::get_away_from_the_face(&b.zone, &what))
        }
        Body::UnderLeftFace(b) => Told::new(words::tell_cuts::may_stand_under_face_people(
            &b.machine,
            &b.zones.join(", "),
        ))
        .machine(&b.machine),
        Body::FaceLeft(b) => {
            Told::new(words::tell_cuts::is_away_from(&b.machine, &b.zone)).machine(&b.machine)
        }
        other => buried(other),
    }
}

/// What was struck or met, and what everybody was told.
fn struck(body: &LineStruck) -> Told {
    let what = if body.met {
        words::tell_cuts::pipe_or_cable_way()
    } else {
        words::tell_cuts::a_buried_line_was_struck()
    };
    let line = if body.lines.is_empty() {
        words::tell_cuts::not_drawn().into()
    } else {
        Text::alike(&body.lines.join(", "))
    };
    let told = Told::new(words::tell_cuts::struck(&what, &line));
    match &body.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

fn buried(body: &Body) -> Told {
    match body {
        Body::TicketChecked(b) => Told::new(words::tell_cuts::ticket_holds_through_days_more(
            &b.ticket,
            &b.to,
            &b.days_left,
            &b.silent.len(),
        )),
        Body::LineStruck(b) => struck(b),
        Body::PaintSaid(b) if b.gone => Told::new(words::tell_cuts::paint_of_is_gone(&b.utility)),
        Body::PaintSaid(b) => Told::new(words::tell_cuts::is_marked_again(&b.utility)),
        Body::PotholeDug(b) => {
            let each: Vec<Text> = b.crossings.iter().map(crossing).collect();
            Told::new(words::tell_cuts::bared(
                &b.utility,
                &feet(b.top),
                &b.outside,
                &Text::joined(&each, "; "),
            ))
        }
        Body::DigAllowed(b) => Told::new(words::tell_cuts::let_go_on(&b.held.text(), &b.why)),
        Body::DepthOwed(b) => {
            let marks: Vec<String> = b
                .owed
                .iter()
                .map(|one| format!("{} {}", one.mark, feet(one.depth)))
                .collect();
            let marks = marks.join(", ");
            Told::new(words::tell_cuts::owed_before_digging_to(&b.target, &marks))
        }
        _ => Told::default(),
    }
}

fn crossing(one: &Crossing) -> Text {
    let clear = one.clear.map_or("?".to_owned(), signed);
    words::tell_cuts::crosses(&one.zone, &clear, &feet(one.need))
}

fn why(why: &AlarmWhy) -> Text {
    match why {
        AlarmWhy::Pins { pins } => words::tell_cuts::pins_open_faster(&pins),
        AlarmWhy::Slough {} => words::tell_cuts::it_came_down().into(),
        AlarmWhy::Said {} => words::tell_cuts::somebody_says_that_it_moves().into(),
    }
}

fn pins(b: &PinsRead) -> Told {
    let apart = feet(b.apart);
    let Some(judged) = b.judged else {
        return Told::new(words::tell_cuts::the_first_tape(&b.zone, &b.pins, &apart));
    };
    let what = match judged.state {
        PinState::Still => words::tell_cuts::still(),
        PinState::Watch => words::tell_cuts::watch(),
        PinState::Leave => words::tell_cuts::get_away(),
    };
    let (opened, rate) = (signed(judged.opened), judged.rate_ft_per_hour);
    Told::new(words::tell_cuts::ft_an_hour(
        &b.zone,
        &b.pins,
        &apart,
        &opened,
        &format!("{rate:.3}"),
        &what,
    ))
}

fn seen(b: &SeenAtFace) -> Told {
    let what = match &b.what {
        AtFace::Water {} => words::tell_cuts::water().into(),
        AtFace::Crack {} => words::tell_cuts::a_crack().into(),
        AtFace::Rain {} => words::tell_cuts::rain().into(),
        AtFace::Vibration {} => words::tell_cuts::vibration().into(),
        AtFace::Trimmed {} => words::tell_cuts::trimmed_from_the_top_down().into(),
        AtFace::Load { back } => words::tell_cuts::a_load_from_the_crest(&feet(*back)),
        AtFace::Slough { .. } => words::tell_cuts::it_came_down().into(),
    };
    let back = b.move_back_to.map(feet);
    let back = back.map_or(Text::default(), |back| {
        words::tell_cuts::move_it_back_to(&back)
    });
    Told::new(words::tell_cuts::seen_at(&b.zone, &what, &back, &b.note))
}

/// With the faces that owe an inspection because of it.
fn wet(what: &Text, faces: &[String]) -> Told {
    if faces.is_empty() {
        return Told::new(what.clone());
    }
    Told::new(words::tell_cuts::to_be_inspected_after_it(
        what,
        &faces.join(", "),
    ))
}

fn daylight(b: &DaylightFound) -> Told {
    let crossed: Vec<String> = b
        .lines
        .iter()
        .filter(|line| !line.over.is_empty())
        .map(|line| format!("{} {}", line.line, signed(line.least)))
        .collect();
    let high = feet(b.highest);
    if crossed.is_empty() {
        return Told::new(words::tell_cuts::daylight_of(&b.zone, &high));
    }
    let crossed = crossed.join(", ");
    Told::new(words::tell_cuts::daylight_of_over_a_line(
        &b.zone, &crossed, &high,
    ))
}
