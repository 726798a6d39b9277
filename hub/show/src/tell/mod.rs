//! An entry as one sentence that a person reads, for the live log, the table and the review.

use earthwork::length::{Form, Length};

use day::entry::{Body, Entry};
use day::lengths::{feet, signed};
use day::said;
use day::said::change::{SiteChanged, SiteThing};
use day::said::prove::TargetTyped;
use day::said::revise::TargetRevised;
use words::Text;

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

/// A sentence, and what it is about.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// What is said.
    pub text: Text,
    /// The machine that it is about.
    pub machine: Option<String>,
    /// The mark that it is about.
    pub mark: Option<String>,
}

impl Told {
    fn new(text: impl Into<Text>) -> Self {
        Self {
            text: text.into(),
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
pub fn tell(entry: &Entry) -> Told {
    match &entry.body {
        Body::DayOpened(b) => record::day_opened(b),
        Body::SiteTaken(b) => Told::new(words::tell::site_taken_from_its_file(&b.site.name)),
        Body::SiteChangeFound(b) => {
            Told::new(words::tell::site_file_differs_places(&b.differences.len()))
        }
        Body::SiteRevised(b) => Told::new(words::tell::changed_site_file_force_changes(
            &b.differences.len(),
        )),
        Body::AimSet(b) => {
            let (on, aim) = (b.on.join(", "), feet(b.aim));
            Told::new(words::tell::aim_on(&aim, &on, &b.why))
        }
        Body::SiteChanged(b) => site_changed(b),
        Body::TargetRevised(b) => target_revised(b),
        Body::TargetTyped(b) => target_typed(b),
        Body::TargetSeen(b) => Told::new(words::tell::revision_of_seen_in(
            &b.revision,
            &b.target,
            &b.machine,
        ))
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
    let parts = [
        (!put.is_empty()).then(|| words::tell::put(&put)),
        (!gone.is_empty()).then(|| words::tell::retired(&gone)),
    ];
    let parts: Vec<Text> = parts.into_iter().flatten().collect();
    let touched = b.touches.marks.len();
    Told::new(words::tell::the_site_is_changed(
        &Text::joined(&parts, "; "),
        &touched,
        &b.why,
    ))
}

fn target_revised(b: &TargetRevised) -> Told {
    Told::new(words::tell::target_now_revision_marks_touched(
        &b.target,
        &b.revision,
        &b.touches.marks.len(),
        &b.why,
    ))
}

/// A target typed a second time, with both values where they differ.
fn target_typed(b: &TargetTyped) -> Told {
    if b.agrees {
        return Told::new(words::tell::typed_a_second_time(&b.target));
    }
    let differs = b.differs.iter().map(|one| {
        let apart = apart(one.first, one.second);
        Text::in_each(|language| format!("{}: {apart}", one.what.of(language)))
    });
    let differs: Vec<Text> = differs.collect();
    Told::new(words::tell::typed_a_second_time_2(
        &b.target,
        &Text::joined(&differs, "; "),
    ))
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
