//! Why something can't be done, and what to do instead: for a person in the field.

use contract::ToSchema;
use earthwork::figure::FigureError;
use serde::{Deserialize, Serialize};
use words::Text;
use words::refusal::role;

use crate::asked::Role;
use crate::read_as;
use crate::record::missing::CloseMissing;
use crate::time::{Time, ago};

mod thing;

pub use thing::Thing;

/// A refusal. Nothing was entered in the log; what was typed is not lost, the page keeps it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Refusal {
    /// No day is open.
    NoDay,
    /// No site has been read.
    NoSite,
    /// The asker's role does not allow it.
    NotAllowed {
        /// The roles that may.
        roles: Vec<Role>,
        /// The machine whose operator alone may.
        machine: Option<String>,
    },
    /// A name that the site does not have.
    Unknown {
        /// What kind of thing.
        what: Thing,
        /// The name.
        name: String,
    },
    /// The typed rod value can't be.
    RodValue(Text),
    /// The set-up has no second benchmark yet.
    SetUpNotProven {
        /// Which.
        set_up: String,
    },
    /// The set-up is closed.
    SetUpIsClosed {
        /// Which.
        set_up: String,
    },
    /// Two set-ups that could not be told apart.
    SetUpsAlike {
        /// The other.
        set_up: String,
    },
    /// With more than one benchmark on site, one is not enough.
    SecondBenchmarkThere {
        /// Another benchmark.
        other: String,
    },
    /// A sloped laser that can't be set up or used so.
    SlopedLaser(Text),
    /// A second levelling that does not prove anything.
    SecondLevelling(Text),
    /// A test or a line of levels that proves nothing.
    Levels(Text),
    /// The point lies outside of the target, or between what it says.
    NoGrade(Text),
    /// Within half a foot of a step: say which side.
    WhichSide {
        /// The mark.
        mark: String,
    },
    /// The mark's paint is gone.
    MarkScraped {
        /// Which.
        mark: String,
    },
    /// Whoever laid it can't check it.
    SameEyes {
        /// Which.
        mark: String,
    },
    /// A mark that can't be laid or checked so.
    BadMark(Text),
    /// A tape from a mark without one.
    NoMarkToTapeFrom,
    /// No line on the site that must not be crossed.
    NoLine,
    /// More than one line that must not be crossed.
    WhichLine,
    /// The call is not live any more.
    CallNotLive,
    /// Nothing waits for a ruling there.
    NothingToRule {
        /// The mark.
        mark: String,
    },
    /// A low spot can't be trimmed.
    NothingToTrim {
        /// The mark.
        mark: String,
    },
    /// An aim beyond the tolerance.
    AimOutside {
        /// Lowest aim.
        low: String,
        /// Highest aim.
        high: String,
    },
    /// A target that can't be.
    BadTarget(Text),
    /// A site that can't be so.
    BadSite(Text),
    /// Something of the account can't be: a figure, a load, a patch, a test.
    Account(Text),
    /// A required word is missing.
    SayWhy {
        /// What is to be said, to follow “Say” in each language.
        what: Text,
    },
    /// The change shown is not the one confirmed.
    SiteChangedAgain,
    /// The first site file is in force; nothing to confirm.
    NoSiteChange,
    /// An operator without a machine, or an empty name.
    BadJoin(Text),
    /// Somebody of that name is in already.
    SameName {
        /// As that person's name is written.
        person: String,
        /// Since when.
        since: Time,
        /// The machine in whose keep-out that person may be.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        inside: Option<String>,
        /// A name that nobody has.
        another: String,
    },
    /// Another phone is the screen of that cab.
    CabTaken {
        /// Which machine.
        machine: String,
        /// Whose phone.
        person: String,
    },
    /// No phone takes a cab while somebody may rely on its screen.
    CabHeld {
        /// Which machine.
        machine: String,
        /// Whose phone.
        person: String,
    },
    /// A phone that stayed in over the night, before somebody has said who holds it.
    SayWho {
        /// Whom the phone was yesterday.
        person: String,
    },
    /// The name is the competent person's; nobody has looked whether the phone is.
    NotConfirmed {
        /// Who.
        person: String,
    },
    /// A witness who can't be told from the person who went in.
    WitnessUnknown {
        /// Who is in.
        person: String,
    },
    /// A group comes out whole.
    NotAllOut {
        /// Who leads.
        person: String,
        /// How many are in, the leader too.
        inside: u32,
        /// How many were said to be out.
        said: u32,
    },
    /// The question answered was another.
    NotThatQuestion,
    /// The asker is not one of the competent persons.
    NotCompetent {
        /// Whom the site file names.
        named: Vec<String>,
    },
    /// A face that can't be worked out.
    BadFace(Text),
    /// Something holds work back there.
    HeldBack(Text),
    /// A ticket that does not hold today.
    TicketLapsed {
        /// Which.
        ticket: String,
        /// Its first and last day.
        days: String,
    },
    /// A visit whose name no phone gives.
    BadVisit,
    /// The same person is in already.
    AlreadyIn {
        /// Who.
        person: String,
        /// Where.
        machine: String,
    },
    /// Whoever is in can't take the ask back.
    SayOutInstead,
    /// Nobody waits for this answer.
    NotAsked,
    /// Nobody is in there under that visit.
    NotIn {
        /// Where.
        machine: String,
    },
    /// Somebody else's visit.
    NotYourVisit {
        /// Whose.
        person: String,
    },
    /// Not a witness.
    NoWitness,
    /// Somebody asks to come in.
    AnswerFirst {
        /// Who.
        person: String,
    },
    /// The press was on its way for too long to be about now.
    PressedTooLate,
    /// A word about this moment was on its way for too long.
    SaidTooLate {
        /// How many milliseconds.
        ms: i64,
    },
    /// What the word answers is not what stands any more.
    Overtaken(Text),
    /// A stop is not lifted while somebody may be in.
    PeopleIn {
        /// Where.
        machine: String,
        /// Who.
        people: Vec<String>,
    },
    /// Something of the record can't be: a signature, an amendment, a photo.
    OfTheRecord(Text),
    /// The day is closed.
    DayIsClosed {
        /// Signed too.
        signed: bool,
    },
    /// Something is missing before the day can be closed.
    NotReadyToClose {
        /// What; what may not be overridden first.
        missing: Vec<CloseMissing>,
    },
    /// The reading to correct is unknown.
    NoSuchReading,
}

/// Who may do it, as “Ask … to do it” goes on.
fn who(roles: &[Role], machine: Option<&str>) -> Text {
    if let Some(machine) = machine {
        return words::refusal::operator_of(&machine);
    }
    let names = roles.iter().map(|role| match role {
        Role::Ground => role::ground(),
        Role::Operator => role::operator(),
        Role::Supervisor => role::supervisor(),
        Role::Visitor => role::visitor(),
        Role::Hub => role::hub(),
    });
    let names = names.map(Text::from);
    names
        .reduce(|one, other| role::or(&one, &other))
        .unwrap_or_default()
}

impl Refusal {
    /// Something of the account can't be.
    pub(crate) fn account(text: impl Into<Text>) -> Refusal {
        Refusal::Account(text.into())
    }

    /// Something of the record can't be.
    pub(crate) fn of_the_record(text: impl Into<Text>) -> Refusal {
        Refusal::OfTheRecord(text.into())
    }

    /// A required word is missing; the words follow “Say” in each language.
    pub(crate) fn say_why(what: impl Into<Text>) -> Refusal {
        Refusal::SayWhy { what: what.into() }
    }

    /// A figure that no site has.
    pub(crate) fn figure(error: &FigureError) -> Refusal {
        Refusal::account(error.text())
    }

    /// What the person reads.
    pub fn text(&self) -> Text {
        match self {
            Self::RodValue(text)
            | Self::SlopedLaser(text)
            | Self::SecondLevelling(text)
            | Self::Levels(text)
            | Self::NoGrade(text)
            | Self::BadMark(text)
            | Self::BadTarget(text)
            | Self::BadSite(text)
            | Self::Account(text)
            | Self::BadJoin(text)
            | Self::BadFace(text)
            | Self::HeldBack(text)
            | Self::Overtaken(text)
            | Self::OfTheRecord(text) => text.clone(),
            Self::NoDay => words::refusal::no_day().into(),
            Self::NoSite => words::refusal::no_site().into(),
            Self::NotAllowed { roles, machine } => {
                words::refusal::not_allowed(&who(roles, machine.as_deref()))
            }
            Self::Unknown { what, name } => {
                words::refusal::unknown(&what.called(), &what.read(name))
            }
            Self::SetUpNotProven { set_up } => {
                words::refusal::set_up_not_proven(&read_as::set_up(set_up))
            }
            Self::SetUpIsClosed { set_up } => {
                words::refusal::set_up_is_closed(&read_as::set_up(set_up))
            }
            Self::SetUpsAlike { set_up } => words::refusal::set_ups_alike(&read_as::set_up(set_up)),
            Self::SecondBenchmarkThere { other } => words::refusal::second_benchmark_there(other),
            Self::WhichSide { mark } => words::refusal::which_side(mark),
            Self::MarkScraped { mark } => words::refusal::mark_scraped(mark),
            Self::SameEyes { mark } => words::refusal::same_eyes(mark),
            Self::NoMarkToTapeFrom => words::refusal::no_mark_to_tape_from().into(),
            Self::NoLine => words::refusal::no_line().into(),
            Self::WhichLine => words::refusal::which_line().into(),
            Self::CallNotLive => words::refusal::call_not_live().into(),
            Self::NothingToRule { mark } => words::refusal::nothing_to_rule(mark),
            Self::NothingToTrim { mark } => words::refusal::nothing_to_trim(mark),
            Self::AimOutside { low, high } => words::refusal::aim_outside(low, high),
            Self::SayWhy { what } => words::refusal::say_why(what),
            Self::SiteChangedAgain => words::refusal::site_changed_again().into(),
            Self::NoSiteChange => words::refusal::no_site_change().into(),
            Self::SameName {
                person,
                inside: None,
                another,
                ..
            } => words::refusal::same_name(person, another),
            Self::SameName {
                person,
                inside: Some(machine),
                another,
                ..
            } => words::refusal::same_name_in(person, machine, another),
            Self::CabTaken { machine, person } => words::refusal::cab_taken(person, machine),
            Self::CabHeld { machine, person } => words::refusal::cab_held(person, machine),
            Self::SayWho { person } => words::refusal::say_who(person),
            Self::NotConfirmed { person } => words::refusal::not_confirmed(person),
            Self::WitnessUnknown { person } => words::refusal::witness_unknown(person),
            Self::NotAllOut {
                person,
                inside,
                said,
            } => words::refusal::not_all_out(person, inside, said),
            Self::NotThatQuestion => words::refusal::not_that_question().into(),
            Self::NotCompetent { named } if named.is_empty() => {
                words::refusal::nobody_competent().into()
            }
            Self::NotCompetent { named } => words::refusal::not_competent(&named.join(", ")),
            Self::TicketLapsed { ticket, days } => words::refusal::ticket_lapsed(ticket, days),
            Self::BadVisit => words::refusal::bad_visit().into(),
            Self::AlreadyIn { person, machine } => words::refusal::already_in(person, machine),
            Self::SayOutInstead => words::refusal::say_out_instead().into(),
            Self::NotAsked => words::refusal::not_asked().into(),
            Self::NotIn { machine } => words::refusal::not_in(machine),
            Self::NotYourVisit { person } => words::refusal::not_your_visit(person),
            Self::NoWitness => words::refusal::no_witness().into(),
            Self::AnswerFirst { person } => words::refusal::answer_first(person),
            Self::PressedTooLate => words::refusal::pressed_too_late().into(),
            Self::SaidTooLate { ms } => words::refusal::said_too_late(&ago(*ms)),
            Self::PeopleIn { machine, people } => {
                words::refusal::people_in(&people.len(), &people.join(", "), machine)
            }
            Self::DayIsClosed { signed } => words::refusal::day_is_closed(signed),
            Self::NotReadyToClose { missing } => {
                let missing: Vec<Text> = missing.iter().map(CloseMissing::text).collect();
                words::refusal::not_ready_to_close(&Text::joined(&missing, "; "))
            }
            Self::NoSuchReading => words::refusal::no_such_reading().into(),
        }
    }
}

words::error!(Refusal);
