//! An entry as one sentence that a person reads, in both languages: for the live log, the table and the review.

use earthwork::length::{Form, Length};

use day::entry::{Body, Entry};
use day::lengths::{feet, signed};
use day::said;
use day::said::change::{SiteChanged, SiteThing};
use day::said::prove::{Differs, TargetTyped};
use day::said::revise::TargetRevised;

mod account;
mod call;
mod cuts;
mod laser;
mod machine;
mod marks;
mod people;
mod proving;
mod reading;
mod record;
mod way_in;

/// A sentence in both languages, and what it is about.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// In English.
    pub english: String,
    /// In Spanish.
    pub spanish: String,
    /// The machine that it is about.
    pub machine: Option<String>,
    /// The mark that it is about.
    pub mark: Option<String>,
}

impl Told {
    fn new(english: impl Into<String>, spanish: impl Into<String>) -> Self {
        Self {
            english: english.into(),
            spanish: spanish.into(),
            ..Self::default()
        }
    }

    fn machine(mut self, machine: &str) -> Self {
        self.machine = Some(machine.to_owned());
        self
    }

    fn mark(mut self, mark: Option<&str>) -> Self {
        self.mark = mark.map(str::to_owned);
        self
    }
}

/// The sentence for an entry.
#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
pub fn tell(entry: &Entry) -> Told {
    match &entry.body {
        Body::DayOpened(b) => record::day_opened(b),
        Body::SiteTaken(b) => Told::new(
            format!("Site “{}” taken from its file.", b.site.name),
            format!("Obra «{}» tomada de su archivo.", b.site.name),
        ),
        Body::SiteChangeFound(b) => Told::new(
            format!(
                "The site file differs in {} places; it waits for a supervisor.",
                b.differences.len()
            ),
            format!(
                "El archivo de obra difiere en {} puntos; espera al supervisor.",
                b.differences.len()
            ),
        ),
        Body::SiteRevised(b) => Told::new(
            format!(
                "The changed site file is in force ({} changes).",
                b.differences.len()
            ),
            format!(
                "El archivo de obra cambiado ya vale ({} cambios).",
                b.differences.len()
            ),
        ),
        Body::AimSet(b) => {
            let (on, aim) = (b.on.join(", "), feet(b.aim));
            Told::new(
                format!("Aim {aim} on {on}: {}", b.why),
                format!("Puntería {aim} en {on}: {}", b.why),
            )
        }
        Body::SiteChanged(b) => site_changed(b),
        Body::TargetRevised(b) => target_revised(b),
        Body::TargetTyped(b) => target_typed(b),
        Body::TargetSeen(b) => Told::new(
            format!(
                "Revision {} of {} seen in {}.",
                b.revision, b.target, b.machine
            ),
            format!(
                "Revisión {} de {} vista en {}.",
                b.revision, b.target, b.machine
            ),
        )
        .machine(&b.machine),
        Body::Ruled(b) => reading::ruled(&b.mark, b.ruling, &b.why),
        people @ (Body::Joined(_)
        | Body::ScreenChanged(_)
        | Body::PhoneRemoved(_)
        | Body::CodesRenewed(_)
        | Body::CodesLast(_)
        | Body::CabGiven(_)
        | Body::PersonConfirmed(_)
        | Body::PhoneStays(_)
        | Body::WhoSaid(_)
        | Body::ScreenNoticed(_)) => people::tell(people),
        laser @ (Body::LaserSetUp(_)
        | Body::SetUpRestated(_)
        | Body::SetUpProven(_)
        | Body::SetUpClosed(_)
        | Body::CheckShot(_)
        | Body::SetUpDoubted(_)
        | Body::SuspectWindow(_)
        | Body::CheckFellDue(_)) => laser::tell(laser),
        Body::MarkRepeated(b) => proving::repeated(b),
        Body::BlindPair(b) => proving::pair(b),
        levels @ (Body::LaserTested(_)
        | Body::LevelsRun(_)
        | Body::BenchmarkAdded(_)
        | Body::SetUpsCompared(_)) => proving::levels(levels),
        Body::QuestionSettled(b) => proving::settled(b),
        Body::MarksLaid(_) | Body::MarksChecked(_) | Body::MarksScraped(_) => {
            marks::tell(&entry.body)
        }
        cut @ (Body::FaceInspected(_)
        | Body::SoilRetyped(_)
        | Body::FaceRevised(_)
        | Body::DaylightFound(_)
        | Body::SeenAtFace(_)
        | Body::SloughSeen(_)
        | Body::RainBegan(_)
        | Body::RainStopped(_)
        | Body::WaterPumped(_)
        | Body::PinsRead(_)
        | Body::FaceAlarmed(_)
        | Body::FaceLeft(_)
        | Body::UnderLeftFace(_)
        | Body::DepthOwed(_)
        | Body::TicketChecked(_)
        | Body::PaintSaid(_)
        | Body::LineStruck(_)
        | Body::PotholeDug(_)
        | Body::DigAllowed(_)) => cuts::tell(cut),
        Body::TiesTaken(b) => marks::ties(b),
        Body::DiagonalsMeasured(b) => marks::diagonals(b),
        Body::EdgeRead(b) => reading::edge(b),
        Body::ReadingTaken(b) => reading::taken(&b.reading, b.spot),
        Body::ReadingAsked(b) => reading::asked(&b.reading, &b.question),
        Body::ReadingLate(b) => reading::late(&b.reading, &b.why),
        Body::ReadingCalledWrong(b) => reading::called_wrong(b),
        Body::UnsentDropped(b) => reading::dropped(b),
        other => match said::way_in::step(other) {
            Some(step) => way_in::tell(&step),
            None => of_the_rest(other),
        },
    }
}

/// Sentences about machines, else of the account, of a call, of the record.
fn of_the_rest(body: &Body) -> Told {
    let each = [machine::tell, account::tell, call::tell, record::tell];
    let mut told = each.into_iter().map(|tell| tell(body));
    told.find(|told| *told != Told::default())
        .unwrap_or_default()
}

/// What was put and what went, by name, with the reason.
fn site_changed(b: &SiteChanged) -> Told {
    let names = |list: &mut dyn Iterator<Item = &str>| list.collect::<Vec<_>>().join(", ");
    let put = names(&mut b.put.iter().filter_map(SiteThing::id));
    let gone = names(&mut b.retire.iter().map(|one| one.id.as_str()));
    let sentence = |put_word: &str, gone_word: &str| {
        let parts = [(put_word, &put), (gone_word, &gone)];
        let told = parts.into_iter().filter(|(_, names)| !names.is_empty());
        let told: Vec<String> = told
            .map(|(word, names)| format!("{word} {names}"))
            .collect();
        told.join("; ")
    };
    let touched = b.touches.marks.len();
    Told::new(
        format!(
            "The site is changed. {}. {touched} marks touched: {}",
            sentence("Put:", "Retired:"),
            b.why
        ),
        format!(
            "La obra cambió. {}. Toca {touched} marcas: {}",
            sentence("Puesto:", "Quitado:"),
            b.why
        ),
    )
}

fn target_revised(b: &TargetRevised) -> Told {
    Told::new(
        format!(
            "Target {} is now revision {}, {} marks touched: {}",
            b.target,
            b.revision,
            b.touches.marks.len(),
            b.why
        ),
        format!(
            "La rasante {} es ahora la revisión {}, toca {} marcas: {}",
            b.target,
            b.revision,
            b.touches.marks.len(),
            b.why
        ),
    )
}

/// A target typed a second time, with both values where they differ.
fn target_typed(b: &TargetTyped) -> Told {
    if b.agrees {
        return Told::new(
            format!("{} typed a second time: it agrees.", b.target),
            format!("{} escrita por segunda vez: coincide.", b.target),
        );
    }
    let both = |name: fn(&Differs) -> &str| {
        let each = b
            .differs
            .iter()
            .map(|one| format!("{}: {}", name(one), apart(one.first, one.second)));
        each.collect::<Vec<_>>().join("; ")
    };
    Told::new(
        format!(
            "{} typed a second time: it differs. {}.",
            b.target,
            both(|one| &one.what.english)
        ),
        format!(
            "{} escrita por segunda vez: difiere. {}.",
            b.target,
            both(|one| &one.what.spanish)
        ),
    )
}

/// Two lengths that are not the same, with as many places as it takes to read them apart.
fn apart(one: Length, other: Length) -> String {
    let both = |places| {
        let show = |length: Length| length.show(Form::DecimalFeet { places });
        (show(one), show(other))
    };
    let read = (2..=7).map(both).find(|(one, other)| one != other);
    let (one, other) = read.unwrap_or_else(|| both(7));
    format!("{one} / {other}")
}
