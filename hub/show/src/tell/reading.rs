//! Sentences about readings, questions and rulings.

use earthwork::tolerance::Verdict;
use earthwork::words::{ScreenUnit, edge_text};

use super::{Told, feet, signed};
use day::said::drop_unsent::UnsentDropped;
use day::said::edge::EdgeRead;
use day::said::reading::{Judged, LateReason, Question, Reading, SpotReason};
use day::said::rule::Ruling;
use day::said::wrong_number::ReadingCalledWrong;
use words::{Fixed, Text};

fn measured(reading: &Reading) -> Text {
    let at = feet(reading.elevation);
    match &reading.judged {
        Some(judged) => {
            let dev = signed(judged.dev);
            let mean = if judged.joined.is_empty() {
                String::new()
            } else {
                format!(" ({} × {})", judged.joined.len() + 1, signed(judged.mean))
            };
            let what = verdict(judged);
            let on = judged.surface.as_deref();
            let on = on.map_or(String::new(), |surface| format!(" ({surface})"));
            Text::in_each(|language| {
                format!(
                    "{}{on}: {at}, {dev}{mean}, {}",
                    reading.mark,
                    what.of(language)
                )
            })
        }
        None => Text::alike(&format!("{}: {at}", reading.mark)),
    }
}

fn verdict(judged: &Judged) -> Fixed {
    match judged.verdict {
        _ if judged.settled_high => words::tell_reading::high_by_rule(),
        Verdict::High => words::tell_reading::high(),
        Verdict::On => words::tell_reading::on(),
        Verdict::Low => words::tell_reading::low(),
        Verdict::TooCloseHigh => words::tell_reading::too_close_call_high_side(),
        Verdict::TooCloseLow => words::tell_reading::too_close_call_low_side(),
    }
}

fn about(told: Told, reading: &Reading) -> Told {
    let told = told.mark(Some(&reading.mark));
    match &reading.machine {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

/// That it was typed in from paper, and whose it is.
fn from_paper(reading: &Reading) -> Text {
    match &reading.paper {
        Some(by) => words::tell_reading::from_paper_read_by(&by),
        None => Text::default(),
    }
}

pub(super) fn taken(reading: &Reading, spot: Option<SpotReason>) -> Told {
    let what = measured(reading);
    let paper = from_paper(reading);
    let paper = if reading.waited {
        words::tell_reading::had_waited_without_link_sent().into()
    } else {
        paper
    };
    let why = match spot {
        None => Text::default(),
        Some(reason) => {
            let what = match reason {
                SpotReason::NoTarget => words::tell_reading::no_target_there(),
                SpotReason::NoMachine => words::tell_reading::no_machine_assigned(),
                SpotReason::SetUpInDoubt => words::tell_reading::laser_in_doubt(),
                SpotReason::SetUpClosed => words::tell_reading::set_up_taken_down(),
                SpotReason::FaceLeft => words::tell_reading::everybody_had_get_away_from(),
                SpotReason::DaylightOver => words::tell_reading::face_would_come_daylight_over(),
                SpotReason::NotLocated => words::tell_reading::no_ticket_covers_it(),
                SpotReason::TicketLapsed => words::tell_reading::ticket_does_not_hold_today(),
                SpotReason::LineStruck => words::tell_reading::line_struck_near(),
                SpotReason::PaintGone => words::tell_reading::buried_line_paint_gone(),
                SpotReason::QueryOpen => words::tell_reading::a_query_is_not_answered(),
                SpotReason::CrossingTooNear => words::tell_reading::crosses_buried_line_too_near(),
            };
            words::tell_reading::spot_elevation_no_call(&what)
        }
    };
    about(
        Told::new(words::tell_reading::reading_at(
            &reading.text,
            &paper,
            &what,
            &why,
        )),
        reading,
    )
}

pub(super) fn asked(reading: &Reading, question: &Question) -> Told {
    let what = match question {
        Question::DoesNotFit { .. } => words::tell_reading::does_not_fit_what_known(),
        Question::FarFromGrade { .. } => words::tell_reading::far_from_the_target(),
        Question::OtherMachine { .. } => words::tell_reading::mark_assigned_another_machine(),
        Question::WhichIsRight { .. } => words::tell_reading::two_shots_disagree(),
    };
    about(
        Told::new(words::tell_reading::asked_before_showing_at(
            &reading.text,
            &reading.mark,
            &what,
        )),
        reading,
    )
}

pub(super) fn late(reading: &Reading, why: &LateReason) -> Told {
    let reason = match why {
        LateReason::NewerReading { by } => words::tell_reading::has_a_newer_one(&by),
        LateReason::TooOld { ms } => words::tell_reading::s_old(&(ms / 1_000)),
        LateReason::NewerCall { mark } => words::tell_reading::machine_told_about_after_made(&mark),
        LateReason::DayClosed => words::tell_reading::day_closed_before_came().into(),
    };
    let what = measured(reading);
    about(
        Told::new(words::tell_reading::late_not_shown(&what, &reason)),
        reading,
    )
}

pub(super) fn called_wrong(body: &ReadingCalledWrong) -> Told {
    let (text, mark) = (&body.text, &body.mark);
    Told::new(words::tell_reading::wrong_number(&text, &mark)).mark(Some(mark))
}

pub(super) fn dropped(body: &UnsentDropped) -> Told {
    Told::new(words::tell_reading::not_sent_thrown_away_phone(&body.words))
}

pub(super) fn ruled(mark: &str, ruling: Ruling, why: &str) -> Told {
    let what = match ruling {
        Ruling::Leave => words::tell_reading::leave_it(),
        Ruling::Patch => words::tell_reading::leave_it_patch_with_gravel(),
        Ruling::Trim => words::tell_reading::trim_it(),
    };
    Told::new(words::tell_reading::ruling_on(&mark, &what, &why)).mark(Some(mark))
}

pub(super) fn edge(body: &EdgeRead) -> Told {
    let line = |language| {
        let text = edge_text(&body.shot, language, ScreenUnit::Tenths);
        format!("{} ({})", text.exact, text.line)
    };
    let place = body.mark.as_deref().unwrap_or("-");
    let what = body.mark_doubt.map_or_else(Default::default, |doubt| {
        let doubt = feet(doubt);
        words::tell_reading::taped_from_the_mark(&doubt)
    });
    Told::new(words::tell_reading::edge_at_to(
        &place,
        &body.line,
        &what,
        &Text::in_each(line),
    ))
    .machine(&body.machine)
    .mark(body.mark.as_deref())
}
