//! Sentences about calls and stops.

use super::Told;
use day::call::Ending;
use day::entry::Body;
use day::said::call::CantReason;
use words::Fixed;

pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::CallSent(b) => Told::new(words::tell_call::sent(&b.machine, &b.text))
            .machine(&b.machine)
            .mark(b.mark.as_deref()),
        Body::CallDelivered(b) => Told::new(words::tell_call::call_is_on_the_phone(&b.call))
            .machine(&b.machine)
            .mark(b.mark.as_deref()),
        Body::CallShown(b) => Told::new(words::tell_call::call_shown(&b.call, &b.text))
            .machine(&b.machine)
            .mark(b.mark.as_deref()),
        Body::CallGot(b) => match &b.witness {
            None => Told::new(words::tell_call::call(&b.call))
                .machine(&b.machine)
                .mark(b.mark.as_deref()),
            Some(who) => Told::new(words::tell_call::call_2(&b.call, &who))
                .machine(&b.machine)
                .mark(b.mark.as_deref()),
        },
        Body::CallEnded(b) => {
            let what = ending(b.how);
            let told = match &b.mark {
                Some(mark) => words::tell_call::call_to_ended_at(&b.call, &b.machine, mark, &what),
                None => words::tell_call::call_to_ended(&b.call, &b.machine, &what),
            };
            Told::new(told).machine(&b.machine).mark(b.mark.as_deref())
        }
        Body::LookAsked(b) => {
            Told::new(words::tell_call::asks_for_a_look(&b.machine)).machine(&b.machine)
        }
        Body::CantSaid(b) => {
            let what = cant(b.why);
            Told::new(words::tell_call::cant(&b.machine, &what))
                .machine(&b.machine)
                .mark(b.mark.as_deref())
        }
        Body::Stopped(b) => {
            let machines = b.machines.join(", ");
            Told::new(match (b.all, b.why.is_empty()) {
                (true, true) => words::tell_call::all_stop(&machines),
                (true, false) => words::tell_call::all_stop_why(&machines, &b.why),
                (false, true) => words::tell_call::stop(&machines),
                (false, false) => words::tell_call::stop_why(&machines, &b.why),
            })
        }
        Body::StopLifted(b) => {
            let machines = b.machines.join(", ");
            Told::new(words::tell_call::stop_lifted_for(&machines, &b.why))
        }
        _ => Told::default(),
    }
}

/// A mark behind its word; nothing where no mark is known.
fn ending(how: Ending) -> Fixed {
    match how {
        Ending::Superseded => words::tell_call::newer_call_took_its_place(),
        Ending::Done => words::tell_call::the_mark_is_on_grade(),
        Ending::StaleByAge => words::tell_call::too_old(),
        Ending::GradeRanOut => words::tell_call::said_for_long_enough(),
        Ending::StaleByLaser => words::tell_call::the_laser_is_in_doubt(),
        Ending::StaleByTarget => words::tell_call::the_target_changed(),
        Ending::StaleByMark => words::tell_call::the_mark_was_laid_again(),
        Ending::Restated => words::tell_call::its_reading_was_corrected(),
        Ending::Withdrawn => words::tell_call::taken_back(),
        Ending::Refused => words::tell_call::the_cab_cant(),
        Ending::NewScreen => words::tell_call::another_phone_took_over(),
        Ending::Ruled => words::tell_call::a_ruling_took_its_place(),
        Ending::StaleByFace => words::tell_call::everybody_had_get_away_from(),
        Ending::QueryAsked => words::tell_call::the_engineer_was_asked(),
        Ending::DayClosed => words::tell_call::the_day_was_closed(),
        Ending::Held => words::tell_call::something_holds_the_work_there(),
        Ending::MachineMoved => words::tell_call::the_machine_moved(),
        Ending::GivenAway => words::tell_call::its_target_given_another_machine(),
        Ending::OffSite => words::tell_call::machine_not_site_any_more(),
        Ending::ClockBehind => words::tell_call::the_laptop_clock_was_behind(),
    }
}

fn cant(why: CantReason) -> Fixed {
    match why {
        CantReason::HardGround => words::tell_call::hard_ground(),
        CantReason::Water => words::tell_call::water(),
        CantReason::Pipe => words::tell_call::pipe_or_cable(),
        CantReason::Line => words::tell_call::line(),
        CantReason::Face => words::tell_call::face(),
        CantReason::Other => words::tell_call::come_and_look(),
    }
}
