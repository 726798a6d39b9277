//! Why something can't be done, and what to do instead: for a person in the field, in both languages.

use earthwork::figure::FigureError;
use earthwork::words::Language;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use utoipa::ToSchema;

use crate::asked::Role;
use crate::read_as;
use crate::record::missing::CloseMissing;
use crate::time::Time;

mod thing;

pub use thing::Thing;

/// A refusal. Nothing was entered in the log; what was typed is not lost, the page keeps it.
#[derive(Clone, Debug, PartialEq, Eq, Error, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Refusal {
    /// No day is open.
    #[error("No day is open. Start the hub again, or ask the supervisor to open one.")]
    NoDay,
    /// No site has been read.
    #[error("No site is loaded. Start the hub with a site file.")]
    NoSite,
    /// The asker's role does not allow it.
    #[error("This phone can't do that. Ask {} to do it.", who(.roles, .machine.as_deref()))]
    NotAllowed {
        /// The roles that may.
        roles: Vec<Role>,
        /// The machine whose operator alone may.
        machine: Option<String>,
    },
    /// A name that the site does not have.
    #[error("There is no {what} named {} on this site. Pick one from the list.", .what.read(.name, Language::English))]
    Unknown {
        /// What kind of thing.
        what: Thing,
        /// The name.
        name: String,
    },
    /// The typed rod value can't be.
    #[error("{english}")]
    RodValue {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// The set-up has no second benchmark yet.
    #[error("{} is not proven yet. Shoot a second benchmark first.", set_up_name(.set_up))]
    SetUpNotProven {
        /// Which.
        set_up: String,
    },
    /// The set-up is closed.
    #[error("{} is taken down. Pick the set-up that stands now, or set up again.", set_up_name(.set_up))]
    SetUpIsClosed {
        /// Which.
        set_up: String,
    },
    /// Two set-ups that could not be told apart.
    #[error(
        "{} stands at almost the same height. Take it down first, or move this one by half a foot: a reading could not tell which laser it is from.",
        set_up_name(.set_up)
    )]
    SetUpsAlike {
        /// The other.
        set_up: String,
    },
    /// With more than one benchmark on site, one is not enough.
    #[error("This site has more than one benchmark. Shoot {other} to prove the set-up.")]
    SecondBenchmarkThere {
        /// Another benchmark.
        other: String,
    },
    /// A sloped laser that can't be set up or used so.
    #[error("{english}")]
    SlopedLaser {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A second levelling that does not prove anything.
    #[error("{english}")]
    SecondLevelling {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A test or a line of levels that proves nothing.
    #[error("{english}")]
    Levels {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// The point lies outside of the target, or between what it says.
    #[error("{english}")]
    NoGrade {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// Within half a foot of a step: say which side.
    #[error("{mark} is within half a foot of a step. Say which side the rod is on.")]
    WhichSide {
        /// The mark.
        mark: String,
    },
    /// The mark's paint is gone.
    #[error(
        "{mark} is not on the ground any more. Lay it again from a hub, a string or control first."
    )]
    MarkScraped {
        /// Which.
        mark: String,
    },
    /// Whoever laid it can't check it.
    #[error("{mark} was laid by the same person. Somebody else measures it a second time.")]
    SameEyes {
        /// Which.
        mark: String,
    },
    /// A mark that can't be laid or checked so.
    #[error("{english}")]
    BadMark {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A tape from a mark without one.
    #[error("Say from which mark the tape goes.")]
    NoMarkToTapeFrom,
    /// No line on the site that must not be crossed.
    #[error(
        "This site has no line that must not be crossed. Add one to the site file with no_cross = true."
    )]
    NoLine,
    /// More than one line that must not be crossed.
    #[error("This site has several lines that must not be crossed. Say which one was taped to.")]
    WhichLine,
    /// The call is not live any more.
    #[error("That call is not live any more. Look at the screen: a newer one may be there.")]
    CallNotLive,
    /// Nothing waits for a ruling there.
    #[error("{mark} waits for no ruling. Rule on marks that two shots left too close to call.")]
    NothingToRule {
        /// The mark.
        mark: String,
    },
    /// A low spot can't be trimmed.
    #[error(
        "{mark} is too close to call on the LOW side: there is nothing to trim. Leave it, or patch it with gravel."
    )]
    NothingToTrim {
        /// The mark.
        mark: String,
    },
    /// An aim beyond the tolerance.
    #[error(
        "That aim lies outside of the tolerance ({low} to {high}). Aim inside it, or revise the target."
    )]
    AimOutside {
        /// Lowest aim.
        low: String,
        /// Highest aim.
        high: String,
    },
    /// A target that can't be.
    #[error("{english}")]
    BadTarget {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A site that can't be so.
    #[error("{english}")]
    BadSite {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// Something of the account can't be: a figure, a load, a patch, a test.
    #[error("{english}")]
    Account {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A required word is missing.
    #[error("Say {what}: it goes into the log.")]
    SayWhy {
        /// What is to be said.
        what: String,
        /// The same in Spanish, to follow “Diga”.
        spanish: String,
    },
    /// The change shown is not the one confirmed.
    #[error(
        "The site has changed again since it was shown. Look at the difference once more, then confirm."
    )]
    SiteChangedAgain,
    /// The first site file is in force; nothing to confirm.
    #[error("No changed site file waits. There is nothing to confirm.")]
    NoSiteChange,
    /// An operator without a machine, or an empty name.
    #[error("{english}")]
    BadJoin {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// Somebody of that name is in already.
    #[error("{person} is here already, on another phone{}. If that is you, say so; if not, go by another name: {another}.", and_in(.inside.as_deref()))]
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
    #[error(
        "{person}'s phone is the screen of {machine}. Whoever sits there gives the cab away first (SCREEN, GIVE THE CAB), or a supervisor does (NOW, phones joined); then press IN again."
    )]
    CabTaken {
        /// Which machine.
        machine: String,
        /// Whose phone.
        person: String,
    },
    /// No phone takes a cab while somebody may rely on its screen.
    #[error(
        "{person}'s phone is the screen of {machine}, and its bucket is held down, or somebody asks or is in. No other phone takes it now. If that phone is dead, a supervisor removes it; then press IN again."
    )]
    CabHeld {
        /// Which machine.
        machine: String,
        /// Whose phone.
        person: String,
    },
    /// A phone that stayed in over the night, before somebody has said who holds it.
    #[error("Say first whether you are {person}.")]
    SayWho {
        /// Whom the phone was yesterday.
        person: String,
    },
    /// The name is the competent person's; nobody has looked whether the phone is.
    #[error(
        "{person} is named in the site file, but nobody has confirmed yet that this phone is {person}'s. A supervisor does it on another phone or the laptop: NOW, phones joined."
    )]
    NotConfirmed {
        /// Who.
        person: String,
    },
    /// A witness who can't be told from the person who went in.
    #[error(
        "A witness's phone was in before {person} went in, or a supervisor has confirmed whose it is. Ask somebody else to look, or have a supervisor confirm this phone: NOW, phones joined."
    )]
    WitnessUnknown {
        /// Who is in.
        person: String,
    },
    /// A group comes out whole.
    #[error(
        "{person} leads {inside} in. Say OUT when all of them are out, and how many; you said {said}."
    )]
    NotAllOut {
        /// Who leads.
        person: String,
        /// How many are in, the leader too.
        inside: u32,
        /// How many were said to be out.
        said: u32,
    },
    /// The question answered was another.
    #[error("That question was about another mark. Send the reading again.")]
    NotThatQuestion,
    /// The asker is not one of the competent persons.
    #[error("Only the competent person can do that: {}.", if .named.is_empty() { "the site file names nobody; add competent = [\"…\"]".to_owned() } else { .named.join(", ") })]
    NotCompetent {
        /// Whom the site file names.
        named: Vec<String>,
    },
    /// A face that can't be worked out.
    #[error("{english}")]
    BadFace {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// Something holds work back there.
    #[error("{english}")]
    HeldBack {
        /// What, and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A ticket that does not hold today.
    #[error("Ticket {ticket} holds for {days}, not today. Ask for a new one.")]
    TicketLapsed {
        /// Which.
        ticket: String,
        /// Its first and last day.
        days: String,
    },
    /// A visit whose name no phone gives.
    #[error("That visit has no proper name. Open the page again and ask anew.")]
    BadVisit,
    /// The same person is in already.
    #[error("{person} is in at {machine} already. Press I AM OUT first.")]
    AlreadyIn {
        /// Who.
        person: String,
        /// Where.
        machine: String,
    },
    /// Whoever is in can't take the ask back.
    #[error("You are in. Press I AM OUT when you are out.")]
    SayOutInstead,
    /// Nobody waits for this answer.
    #[error("Nobody waits for that answer any more. Look at the list.")]
    NotAsked,
    /// Nobody is in there under that visit.
    #[error("Nobody is in at {machine} on that visit. Look at the list.")]
    NotIn {
        /// Where.
        machine: String,
    },
    /// Somebody else's visit.
    #[error("That is {person}'s visit. Who has seen {person} out says so as a witness.")]
    NotYourVisit {
        /// Whose.
        person: String,
    },
    /// Not a witness.
    #[error(
        "A witness is somebody else, and not this machine's own operator. Ask another person to look."
    )]
    NoWitness,
    /// Somebody asks to come in.
    #[error("{person} asks to come in. Answer first: BUCKET DOWN, WAIT or NO.")]
    AnswerFirst {
        /// Who.
        person: String,
    },
    /// The press was on its way for too long to be about now.
    #[error("That press came too late to count. Hold it again.")]
    PressedTooLate,
    /// A word about this moment was on its way for too long.
    #[error("You said that {} ago and it came only now. Look, and say it again if it still holds.", crate::time::ago(*.ms))]
    SaidTooLate {
        /// How many milliseconds.
        ms: i64,
    },
    /// What the word answers is not what stands any more.
    #[error("{english}")]
    Overtaken {
        /// What has happened since, and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// A stop is not lifted while somebody may be in.
    #[error("{} in at {machine}. Everybody comes out first; then lift the stop.", are(.people))]
    PeopleIn {
        /// Where.
        machine: String,
        /// Who.
        people: Vec<String>,
    },
    /// Something of the record can't be: a signature, an amendment, a photo.
    #[error("{english}")]
    OfTheRecord {
        /// What is wrong and what to do.
        english: String,
        /// The same in Spanish.
        spanish: String,
    },
    /// The day is closed.
    #[error(
        "The day is closed. It still takes notes, tests, queries and photos{}; to dig on, the supervisor opens the next day.",
        if *.signed { ", and amendments under a signature" } else { "" }
    )]
    DayIsClosed {
        /// Signed too.
        signed: bool,
    },
    /// Something is missing before the day can be closed.
    #[error("The day can't be closed yet. Missing: {}.", .missing.iter().map(CloseMissing::english).collect::<Vec<_>>().join("; "))]
    NotReadyToClose {
        /// What; what may not be overridden first.
        missing: Vec<CloseMissing>,
    },
    /// The reading to correct is unknown.
    #[error("The reading to correct is not in this day's log. Take a new one.")]
    NoSuchReading,
}

fn set_up_name(id: &str) -> String {
    read_as::set_up(id, Language::English)
}

fn and_in(machine: Option<&str>) -> String {
    machine.map_or_else(String::new, |machine| {
        format!(", and may be IN at {machine}")
    })
}

fn are(people: &[String]) -> String {
    let verb = if people.len() == 1 { "is" } else { "are" };
    format!("{} {verb}", people.join(", "))
}

fn who(roles: &[Role], machine: Option<&str>) -> String {
    if let Some(machine) = machine {
        return format!("the operator of {machine}");
    }
    let names: Vec<&str> = roles
        .iter()
        .map(|role| match role {
            Role::Ground => "a ground person",
            Role::Operator => "the operator",
            Role::Supervisor => "the supervisor",
            Role::Visitor => "a visitor",
            Role::Hub => "the hub",
        })
        .collect();
    names.join(" or ")
}

impl Refusal {
    /// Something of the account can't be, in both languages.
    pub(crate) fn account(english: impl Into<String>, spanish: impl Into<String>) -> Refusal {
        Refusal::Account {
            english: english.into(),
            spanish: spanish.into(),
        }
    }

    /// Something of the record can't be, in both languages.
    pub(crate) fn of_the_record(english: impl Into<String>, spanish: impl Into<String>) -> Refusal {
        Refusal::OfTheRecord {
            english: english.into(),
            spanish: spanish.into(),
        }
    }

    /// A required word is missing; each language's words follow “Say” and “Diga”.
    pub(crate) fn say_why(what: impl Into<String>, spanish: impl Into<String>) -> Refusal {
        Refusal::SayWhy {
            what: what.into(),
            spanish: spanish.into(),
        }
    }

    /// A figure that no site has.
    pub(crate) fn figure(error: &FigureError) -> Refusal {
        Refusal::account(error.to_string(), error.spanish())
    }

    /// What the person reads, in the language of their screen.
    pub fn text(&self, language: Language) -> String {
        match language {
            Language::English => self.to_string(),
            Language::Spanish => crate::refusal_es::spanish(self),
        }
    }
}
