//! The close and signature of a day, visitors, inspections, queries, notes and photos, as sentences.

use super::Told;
use day::asked::By;
use day::entry::Body;
use day::read_as;
use day::said::close::DayClosed;
use day::said::day::DayOpened;
use day::said::inspection::{Inspected, InspectionResult};
use day::said::query::{QueryAnswered, QueryOpened};
use day::said::sign::DaySigned;
use words::Text;

/// The sentence for an entry of the record; empty for any other.
pub(super) fn tell(body: &Body) -> Told {
    match body {
        Body::DayClosed(b) => closed(b),
        Body::DaySigned(b) => signed(b),
        Body::DayAmended(b) => Told::new(words::tell_record::amendment_entry_day_signed_by(
            &b.entry,
            &b.day,
            &b.signature.name,
            &b.words,
        )),
        Body::NoteAdded(b) => Told::new(words::tell_record::note(&b.words)).mark(b.mark.as_deref()),
        visit @ (Body::VisitorNoticed(_) | Body::RunsShown(_)) => visitors(visit),
        inspection @ (Body::InspectionAsked(_)
        | Body::Inspected(_)
        | Body::InspectionSigned(_)
        | Body::InspectionVoided(_)) => inspections(inspection),
        Body::AcceptanceVoided(b) => Told::new(words::tell_record::accepted_by_entry(
            &b.reading,
            &b.why.text(),
        ))
        .mark(Some(&b.mark)),
        Body::QueryOpened(b) => opened(b),
        Body::QueryAnswered(b) => answered(b),
        photo @ (Body::PhotoPromised(_) | Body::PhotoAdded(_) | Body::PhotoGivenUp(_)) => {
            photos(photo)
        }
        Body::HeadMismatch(b) if b.person == By::hub().person => {
            Told::new(words::tell_record::log_cut_by_its_index(&b.remembered.seq))
        }
        Body::HeadMismatch(b) => Told::new(words::tell_record::log_cut_or_rewritten(
            &b.person,
            &b.remembered.seq,
        )),
        _ => Told::default(),
    }
}

/// Sentences, one behind another.
#[derive(Default)]
struct Several(Vec<Text>);

impl Several {
    fn say(&mut self, text: impl Into<Text>) {
        self.0.push(text.into());
    }

    fn told(self) -> Told {
        Told::new(Text::joined(&self.0, " "))
    }
}

/// A day that begins, with how many things the one before left.
pub(super) fn day_opened(b: &DayOpened) -> Told {
    let mut said = Several::default();
    said.say(words::tell_record::day_opened(&b.day));
    if !b.taken_down.is_empty() {
        let down = b.taken_down.join(", ");
        said.say(words::tell_record::counts_no_more(&down));
    }
    if b.not_closed {
        said.say(words::tell_record::day_before_never_closed());
    }
    if !b.open.is_empty() {
        let many = b.open.len();
        said.say(words::tell_record::things_are_open_from_before(&many));
    }
    said.told()
}

fn closed(b: &DayClosed) -> Told {
    let mut said = Several::default();
    said.say(words::tell_record::day_closed(&b.day));
    if b.empty {
        said.say(words::tell_record::empty());
    }
    for one in &b.unproven {
        said.say(words::tell_record::closed_unproven(&read_as::set_up(
            &one.set_up,
        )));
    }
    for over in &b.overrides {
        said.say(words::tell_record::closed_over(
            &over.missing.text(),
            &over.why,
        ));
    }
    let work: Vec<&str> = b
        .open
        .iter()
        .filter(|item| item.kind.is_work())
        .map(|item| item.on.as_str())
        .collect();
    if !work.is_empty() {
        let list = work.join(", ");
        said.say(words::tell_record::open(&list));
    }
    if !b.words.is_empty() {
        said.say(Text::alike(&b.words));
    }
    said.told()
}

fn signed(b: &DaySigned) -> Told {
    let code = &b.head.hash[..b.head.hash.len().min(12)];
    let mut said = Several::default();
    said.say(words::tell_record::day_signed_by_up_entry(
        &b.day,
        &b.signature.name,
        &b.head.seq,
        &code,
    ));
    if b.empty {
        said.say(words::tell_record::the_day_is_empty());
    }
    if b.unproven {
        said.say(words::tell_record::closed_unproven_2());
    }
    said.told()
}

fn visitors(body: &Body) -> Told {
    match body {
        Body::VisitorNoticed(b) => {
            let what = if b.on_site {
                words::tell_record::on_site()
            } else {
                words::tell_record::off_site()
            };
            let by = match &b.witness {
                Some(who) => words::tell_record::as_has_seen(&who),
                None => Text::default(),
            };
            Told::new(words::tell_record::visitor_is(&b.person, &what, &by))
        }
        Body::RunsShown(b) if b.targets.is_empty() => {
            Told::new(words::tell_record::shown_no_run_any_more(&b.person))
        }
        Body::RunsShown(b) => Told::new(words::tell_record::is_shown(
            &b.person,
            &b.targets.join(", "),
        )),
        _ => Told::default(),
    }
}

fn inspections(body: &Body) -> Told {
    match body {
        Body::InspectionAsked(b) => {
            Told::new(words::tell_record::inspection_asked_of(&b.of, &b.what))
        }
        Body::Inspected(b) => inspected(b),
        Body::InspectionSigned(b) => {
            Told::new(words::tell_record::inspection_signed_by(&b.signature.name))
        }
        Body::InspectionVoided(b) => Told::new(words::tell_record::the_inspection_of_is_void(
            &b.what,
            &b.why.text(),
        ))
        .mark(Some(&b.mark)),
        _ => Told::default(),
    }
}

fn inspected(b: &Inspected) -> Told {
    let what = match b.result {
        InspectionResult::Passed => words::tell_record::passed(),
        InspectionResult::InPart => words::tell_record::passed_in_part(),
        InspectionResult::Failed => words::tell_record::not_passed(),
    };
    let items: Vec<String> = b
        .items
        .iter()
        .map(|item| format!("{}: {}", item.what, item.found))
        .collect();
    let items = items.join("; ");
    let on = if b.conditions.is_empty() {
        Text::default()
    } else {
        words::tell_record::conditions(&b.conditions)
    };
    Told::new(words::tell_record::inspected(
        &b.inspector,
        &b.what,
        &what,
        &b.words,
        &items,
        &on,
    ))
}

fn opened(b: &QueryOpened) -> Told {
    let what = if b.stop {
        words::tell_record::stop_until_answered()
    } else {
        words::tell_record::carry_on()
    };
    let on = b.on.join(", ");
    Told::new(words::tell_record::to_about(
        &b.query,
        &b.of,
        &on,
        &what,
        &b.question,
    ))
    .mark(b.on.first().map(String::as_str))
}

fn answered(b: &QueryAnswered) -> Told {
    let what = match &b.revision {
        Some(of) => words::tell_record::carried_out_by_revision_of(&of.revision, &of.target),
        None => Text::default(),
    };
    Told::new(words::tell_record::answered_by(
        &b.query,
        &b.answered_by,
        &b.answer,
        &what,
    ))
}

fn photos(body: &Body) -> Told {
    match body {
        Body::PhotoPromised(b) => {
            let mut said = Several::default();
            match (&b.face, &b.mark) {
                (Some(of), _) | (None, Some(of)) => {
                    said.say(words::tell_record::photo_taken_of(&of));
                }
                (None, None) => said.say(words::tell_record::photo_taken()),
            }
            if let Some(entry) = b.entry {
                said.say(words::tell_record::with_entry(&entry));
            }
            if !b.words.is_empty() {
                said.say(Text::alike(&b.words));
            }
            said.told().mark(b.mark.as_deref())
        }
        Body::PhotoGivenUp(b) => Told::new(words::tell_record::photo_took_not_waited_for(
            &b.taken_by,
            &b.why,
        ))
        .mark(b.mark.as_deref()),
        Body::PhotoAdded(b) => Told::new(words::tell_record::photo_took_has_come_kb(
            &b.taken_by,
            &b.bytes.div_ceil(1_000),
        ))
        .mark(b.mark.as_deref()),
        _ => Told::default(),
    }
}
