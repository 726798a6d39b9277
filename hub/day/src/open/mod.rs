//! What is open: not at grade, not proven, in doubt, not seen, not tested, gone, still in. There is no other list of it: the
//! DAY page, the close, the next day and the review all read this one.

use earthwork::face::PinState;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::read_as::set_up_in_both;
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
    /// What is to be done, in English.
    pub english: String,
    /// The same in Spanish.
    pub spanish: String,
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
    fn push(&mut self, kind: OpenKind, on: &str, english: String, spanish: String) {
        self.0.push(OpenItem {
            kind,
            on: on.to_owned(),
            english,
            spanish,
        });
    }
}

fn people_and_machines(state: &State, list: &mut List) {
    for (machine, gate) in state.way_in.gates() {
        for person in gate.may_be_in() {
            list.push(
                OpenKind::PersonIn,
                machine,
                format!("{person} may still be in the keep-out of {machine}: nobody has said OUT."),
                format!("{person} puede estar aún en la zona prohibida de {machine}: nadie ha dicho YA SALÍ."),
            );
        }
    }
    for (machine, cab) in &state.cabs {
        if let Some(stop) = &cab.stop {
            list.push(
                OpenKind::Stop,
                machine,
                format!("{machine} is stopped by {}: {}", stop.by, stop.why),
                format!("{machine} está parada por {}: {}", stop.by, stop.why),
            );
        }
    }
    for (person, visitor) in &state.record.visitors {
        if visitor.here.is_some() {
            list.push(
                OpenKind::VisitorOnSite,
                person,
                format!("{person} has not said OFF SITE."),
                format!("{person} no ha dicho YA SALÍ DE LA OBRA."),
            );
        }
    }
    for one in &state.near_misses.open {
        let name = near_miss::name(one.then.number);
        let why = &one.then.why;
        let (english, spanish) = (
            format!("{name} is not closed: {why}"),
            format!("{name} no está cerrado: {why}"),
        );
        list.push(OpenKind::NearMiss, &name, english, spanish);
    }
}

fn faces(state: &State, list: &mut List) {
    for (zone, face) in &state.cuts.faces {
        if face.alarm.is_some() {
            list.push(
                OpenKind::Face,
                zone,
                format!(
                    "Everybody had to get away from {zone}; nobody under it before the competent person has inspected it."
                ),
                format!(
                    "Hubo que alejarse de {zone}; nadie al pie hasta que la persona competente lo inspeccione."
                ),
            );
        } else if face.due.is_some() {
            list.push(
                OpenKind::Face,
                zone,
                format!("{zone} waits for an inspection."),
                format!("{zone} espera una inspección."),
            );
        } else if !face.seen.is_empty() {
            let (things, cosas) = match face.seen.len() {
                1 => ("1 thing was".into(), "se vio 1 cosa".into()),
                many => (
                    format!("{many} things were"),
                    format!("se vieron {many} cosas"),
                ),
            };
            list.push(
                OpenKind::Face,
                zone,
                format!("{zone} is watched: {things} seen at it."),
                format!("{zone} se vigila: {cosas}."),
            );
        } else if face.pins.values().any(|pin| pin.state != PinState::Still) {
            list.push(
                OpenKind::Face,
                zone,
                format!("{zone} is watched: its pins move."),
                format!("{zone} se vigila: sus clavos se mueven."),
            );
        }
    }
}

fn lasers(state: &State, list: &mut List) {
    for suspect in &state.suspects {
        for mark in &suspect.open {
            let (set_up, puesta) = set_up_in_both(&suspect.window.set_up);
            list.push(
                OpenKind::InDoubt,
                mark,
                format!("{mark}: measured with {set_up} while it was in doubt; shoot it again."),
                format!("{mark}: medida con {puesta} cuando estaba en duda; lea otra vez."),
            );
        }
    }
    for set_up in state.set_ups.iter().filter(|set_up| unproven(set_up)) {
        let (name, puesta) = set_up_in_both(&set_up.id);
        list.push(
            OpenKind::ClosingCheck,
            &set_up.id,
            format!("{name}: no good check after its last reading. Shoot a benchmark."),
            format!("{puesta}: sin comprobación buena después de su última lectura. Lea un banco."),
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
                format!("{id}: {} has not answered: {}", asked.of, asked.question),
                format!("{id}: {} no ha contestado: {}", asked.of, asked.question),
            );
        }
    }
    for inspection in record.inspections.values() {
        if let (Some(asked), None) = (&inspection.asked, &inspection.made) {
            let (what, of) = (&asked.said.what, &asked.said.of);
            list.push(
                OpenKind::Inspection,
                what,
                format!("{what}: {of} has not inspected it."),
                format!("{what}: {of} no lo ha inspeccionado."),
            );
        }
        if let Some(void) = &inspection.void
            && !record.inspected_again(inspection)
        {
            let (what, mark) = (&void.said.what, &void.said.mark);
            let (en, es) = (void.said.why.english(), void.said.why.spanish());
            list.push(
                OpenKind::Inspection,
                what,
                format!("{what}: the inspection does not count any more, at {mark} {en}; ask for another."),
                format!("{what}: la inspección ya no vale, en {mark} {es}; pida otra."),
            );
        }
    }
    for photo in record.photos.values().filter(|photo| photo.is_owed()) {
        let who = &photo.promised.by;
        list.push(
            OpenKind::Photo,
            photo.promised.said.mark.as_deref().unwrap_or(who),
            format!("A photo is still on {who}'s phone."),
            format!("Una foto sigue en el teléfono de {who}."),
        );
    }
}

fn calls(state: &State, list: &mut List) {
    for (id, call) in &state.calls {
        if call.shown_at.is_some() {
            continue;
        }
        let (machine, line) = (&call.sent.machine, &call.sent.english);
        let at = call.sent.mark.as_deref().unwrap_or("–");
        list.push(
            OpenKind::NotShown,
            machine,
            format!("Call {id} to {machine}, {at} {line}: no screen has painted it."),
            format!(
                "Orden {id} a {machine}, {at} {}: ninguna pantalla la mostró.",
                call.sent.spanish
            ),
        );
    }
    for (id, asked) in state.asked.iter().filter(|(_, asked)| !asked.settled) {
        let mark = &asked.reading.mark;
        list.push(
            OpenKind::Asked,
            mark,
            format!("{mark}: the question of entry {id} has no answer."),
            format!("{mark}: la pregunta del asiento {id} no tiene respuesta."),
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
                format!("{}: two people typed it differently.", target.name),
                format!("{}: dos personas lo teclearon distinto.", target.name),
            );
        } else if target.typed_by.is_some() && target.proved_by.is_none() {
            list.push(
                OpenKind::NotTypedTwice,
                id,
                format!(
                    "{} r{}: nobody has typed it a second time.",
                    target.name, target.revision
                ),
                format!(
                    "{} r{}: nadie lo ha tecleado otra vez.",
                    target.name, target.revision
                ),
            );
        }
    }
}
