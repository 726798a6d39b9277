//! What is open: not at grade, not proven, in doubt, not seen, not tested, gone, still in. There is no other list of it: the
//! DAY page, the close, the next day and the review all read this one.

use contract::ToSchema;
use earthwork::face::PinState;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::read_as;
use crate::record::missing::unproven;
use crate::said::near_miss;
use crate::site::Site;
use crate::state::State;

mod marks;
mod soil;

/// Something that is open.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct OpenItem {
    /// What kind of thing.
    pub kind: OpenKind,
    /// The mark, run, machine, laser or face that it is about.
    pub on: String,
    /// What is to be done.
    #[serde(flatten)]
    pub text: Text,
}

/// What kind of thing is open; the gravest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum OpenKind {
    /// Somebody has not said that they are out.
    PersonIn,
    /// A stop that nobody has lifted.
    Stop,
    /// A visitor has not said OFF SITE.
    VisitorOnSite,
    /// A near miss that no supervisor has closed.
    NearMiss,
    /// A face that was left, or waits for an inspection.
    Face,
    /// A reading that may be wrong.
    InDoubt,
    /// A laser without a good check after its last reading.
    ClosingCheck,
    /// A mark that stands too high.
    High,
    /// A mark that is too low, without a patch or a ruling.
    Low,
    /// A mark too close to call, without a ruling.
    Ruling,
    /// A mark that nobody has read.
    NotRead,
    /// A stretch of a run that no proven reading speaks for.
    NotProven,
    /// A mark at a line that nobody may cross, without a tape.
    Edge,
    /// A soil test that failed, does not count any more, or was never made.
    Test,
    /// Gravel that is still to be placed or ordered.
    Gravel,
    /// An undercut that waits.
    Undercut,
    /// A query that the engineer has not answered.
    Query,
    /// An inspection that was asked for and not made, or does not count any more.
    Inspection,
    /// A photo that was promised and has not come.
    Photo,
    /// A call that no screen has painted.
    NotShown,
    /// A mark whose paint is gone.
    Scraped,
    /// A reading that was asked about, without an answer.
    Asked,
    /// Two people typed a target differently, or nobody has typed it a second time.
    NotTypedTwice,
}

impl OpenKind {
    /// A piece of work that somebody takes on; the rest tells where marks and runs stand.
    pub fn is_work(self) -> bool {
        !matches!(
            self,
            Self::High
                | Self::NotRead
                | Self::NotProven
                | Self::Edge
                | Self::NotShown
                | Self::Scraped
                | Self::NotTypedTwice
        )
    }
}

/// Everything that is open, the gravest first.
pub fn open(state: &State) -> Vec<OpenItem> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let mut list = List::default();
    people_and_machines(state, &mut list);
    faces(state, &mut list);
    lasers(state, &mut list);
    marks::marks(state, site, &mut list);
    soil::soil(state, site, &mut list);
    papers(state, &mut list);
    calls(state, &mut list);
    targets(state, site, &mut list);
    carried(state, &mut list);
    list.0.sort_by_key(|item| item.kind);
    list.0
}

#[derive(Default)]
struct List(Vec<OpenItem>);

impl List {
    fn push(&mut self, kind: OpenKind, on: &str, text: impl Into<Text>) {
        self.0.push(OpenItem {
            kind,
            on: on.to_owned(),
            text: text.into(),
        });
    }
}

fn people_and_machines(state: &State, list: &mut List) {
    for (machine, gate) in state.way_in.gates() {
        for person in gate.may_be_in() {
            list.push(
                OpenKind::PersonIn,
                machine,
                words::open::may_still_keep_out(&person, &machine),
            );
        }
    }
    for (machine, cab) in &state.cabs {
        if let Some(stop) = &cab.stop {
            list.push(
                OpenKind::Stop,
                machine,
                words::open::is_stopped_by(&machine, &stop.by, &stop.why),
            );
        }
    }
    for (person, visitor) in &state.record.visitors {
        if visitor.here.is_some() {
            list.push(
                OpenKind::VisitorOnSite,
                person,
                words::open::has_not_said_off_site(&person),
            );
        }
    }
    for one in &state.near_misses.open {
        let name = near_miss::name(one.then.number);
        let why = &one.then.why;
        list.push(
            OpenKind::NearMiss,
            &name,
            words::open::is_not_closed(&name, &why),
        );
    }
}

fn faces(state: &State, list: &mut List) {
    for (zone, face) in &state.cuts.faces {
        if face.alarm.is_some() {
            list.push(
                OpenKind::Face,
                zone,
                words::open::everybody_had_get_away_from(&zone),
            );
        } else if face.due.is_some() {
            list.push(
                OpenKind::Face,
                zone,
                words::open::waits_for_an_inspection(&zone),
            );
        } else if !face.seen.is_empty() {
            list.push(
                OpenKind::Face,
                zone,
                words::open::is_watched(zone, &face.seen.len()),
            );
        } else if face.pins.values().any(|pin| pin.state != PinState::Still) {
            list.push(OpenKind::Face, zone, words::open::pins_move(&zone));
        }
    }
}

fn lasers(state: &State, list: &mut List) {
    for suspect in &state.suspects {
        for mark in &suspect.open {
            let set_up = read_as::set_up(&suspect.window.set_up);
            list.push(
                OpenKind::InDoubt,
                mark,
                words::open::measured_with_while_doubt(&mark, &set_up),
            );
        }
    }
    for set_up in state.set_ups.iter().filter(|set_up| unproven(set_up)) {
        list.push(
            OpenKind::ClosingCheck,
            &set_up.id,
            words::open::no_good_check_after_its(&read_as::set_up(&set_up.id)),
        );
    }
}

/// Marks that the day before left in doubt and nobody has read since: its lasers and their faults are gone from the state.
fn carried(state: &State, list: &mut List) {
    for item in &state.record.carried {
        let same = |one: &OpenItem| one.kind == item.kind && one.on == item.on;
        let unread = state.last_reading(&item.on).is_none();
        if item.kind == OpenKind::InDoubt && unread && !list.0.iter().any(same) {
            list.0.push(item.clone());
        }
    }
}

fn papers(state: &State, list: &mut List) {
    let record = &state.record;
    for (id, query) in &record.queries {
        if query.answers.is_empty() {
            let asked = &query.opened.said;
            list.push(
                OpenKind::Query,
                id,
                words::open::has_not_answered(&id, &asked.of, &asked.question),
            );
        }
    }
    for inspection in record.inspections.values() {
        if let (Some(asked), None) = (&inspection.asked, &inspection.made) {
            let (what, of) = (&asked.said.what, &asked.said.of);
            list.push(
                OpenKind::Inspection,
                what,
                words::open::has_not_inspected_it(&what, &of),
            );
        }
        if let Some(void) = &inspection.void
            && !record.inspected_again(inspection)
        {
            let (what, mark) = (&void.said.what, &void.said.mark);
            list.push(
                OpenKind::Inspection,
                what,
                words::open::inspection_does_not_count_any(&what, &mark, &void.said.why.text()),
            );
        }
    }
    for photo in record.photos.values().filter(|photo| photo.is_owed()) {
        let who = &photo.promised.by;
        list.push(
            OpenKind::Photo,
            photo.promised.said.mark.as_deref().unwrap_or(who),
            words::open::photo_still_phone(&who),
        );
    }
}

fn calls(state: &State, list: &mut List) {
    for (id, call) in &state.calls {
        if call.shown_at.is_some() {
            continue;
        }
        let machine = &call.sent.machine;
        let at = call.sent.mark.as_deref().unwrap_or("–");
        list.push(
            OpenKind::NotShown,
            machine,
            words::open::call_to(&id, &machine, &at, &call.sent.text),
        );
    }
    for (id, asked) in state.asked.iter().filter(|(_, asked)| !asked.settled) {
        let mark = &asked.reading.mark;
        list.push(
            OpenKind::Asked,
            mark,
            words::open::question_entry_has_no_answer(&mark, &id),
        );
    }
}

fn targets(state: &State, site: &Site, list: &mut List) {
    for target in &site.targets {
        let id = &target.id;
        if state.typed_apart.contains_key(id) {
            list.push(
                OpenKind::NotTypedTwice,
                id,
                words::open::two_people_typed_it_differently(&target.name),
            );
        } else if target.typed_by.is_some() && target.proved_by.is_none() {
            list.push(
                OpenKind::NotTypedTwice,
                id,
                words::open::typed_by_one_alone(&target.name, &target.revision),
            );
        }
    }
}
