//! Sentences about the way into a keep-out and out again.

use super::Told;
use day::way_in::Step;
use words::Text;

pub(super) fn tell(step: &Step) -> Told {
    let told = Told::new(sentences(step));
    let told = match step {
        Step::EntryAsked(b) => told.mark(b.mark.as_deref()),
        Step::PersonIn(b) => told.mark(b.mark.as_deref()),
        _ => told,
    };
    match step.machine() {
        Some(machine) => told.machine(machine),
        None => told,
    }
}

/// How many come along.
fn more(others: u32) -> String {
    if others == 0 {
        return String::new();
    }
    format!(" + {others}")
}

fn sentences(step: &Step) -> Text {
    match step {
        Step::EntryAsked(b) => {
            words::tell_way_in::asks_to_come_in_at(&b.person, &more(b.others), &b.machine)
        }
        Step::AskRepeated(b) => words::tell_way_in::no_answer(&b.person, &b.machine),
        Step::AskWithdrawn(b) => words::tell_way_in::is_not_coming_in_at(&b.person, &b.machine),
        Step::EntryDelayed(b) => words::tell_way_in::wait_said_to(&b.machine, &b.person),
        Step::EntryRefused(b) => words::tell_way_in::no_said_to(&b.machine, &b.person, &b.why),
        Step::BucketIsDown(b) if b.people.is_empty() => {
            words::tell_way_in::holds_bucket_down(&b.machine, &b.operator)
        }
        Step::BucketIsDown(b) => {
            let people = b.people.join(", ");
            words::tell_way_in::holds_bucket_down_for(&b.machine, &b.operator, &people)
        }
        Step::PersonIn(b) if b.confirmed => {
            words::tell_way_in::is_in_at(&b.person, &more(b.others), &b.machine)
        }
        Step::PersonIn(b) => {
            words::tell_way_in::unconfirmed_entry(&b.person, &more(b.others), &b.machine)
        }
        Step::PersonOut(b) => match &b.witness {
            Some(who) => words::tell_way_in::saw_out_at(&who, &b.person, &b.machine, &b.why),
            None if b.phone.is_some() => {
                words::tell_way_in::out_said_from_another_phone(&b.person, &b.machine)
            }
            None => words::tell_way_in::is_out_at(&b.person, &b.machine),
        },
        Step::OutSeen(b) => words::tell_way_in::has_seen_out(&b.person, &b.machine),
        Step::ReleaseRefused(b) => {
            let people = b.people.join(", ");
            words::tell_way_in::not_released(&b.machine, &people)
        }
        Step::Released(b) => words::tell_way_in::released(&b.machine),
        Step::LinkNoticed(b) if b.lost => words::tell_way_in::no_link_to(&b.person),
        Step::LinkNoticed(b) => words::tell_way_in::link_to_is_back(&b.person),
    }
}
