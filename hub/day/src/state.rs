//! What is current: a fold over the entries. No rule lives here, only what was said and what follows from it.

use std::collections::{BTreeMap, BTreeSet};

use earthwork::length::Length;
use earthwork::slip::Learned;
use earthwork::words::ScreenUnit;
use serde::{Deserialize, Serialize};
use words::Language;

use crate::account::Account;
use crate::answer::Answer;
use crate::asked::Role;
use crate::built::BuiltMark;
use crate::call::CallState;
use crate::cuts::held::HeldBy;
use crate::cuts::now::CutsNow;
use crate::record::Record;
use crate::said::blind::BlindPair;
use crate::said::call::CallSent;
use crate::said::call::CantCard;
use crate::said::codes::CodesNow;
use crate::said::machine::PlaceCard;
use crate::said::marks::Paint;
use crate::said::near_miss::NearMisses;
use crate::said::prove::TargetTyped;
use crate::said::rain::RainNow;
use crate::said::reading::{Question, Reading};
use crate::said::receipt::CabPage;
use crate::said::rule::Ruling;
use crate::said::site::{PageChange, SiteChangeFound};
use crate::said::slew::SlewCard;
use crate::said::spotter::SpotterCard;
use crate::said::start_checks::StartNow;
use crate::said::stop::StopCard;
use crate::said::suspect::SuspectWindow;
use crate::said::ties::TiesCard;
use crate::said::turning::LevelsRun;
use crate::said::void::VoidCause;
use crate::site::{Machine, Site};
use crate::time::Time;
use crate::way_in::WayIn;

mod phones;
mod set_up;

pub use set_up::{CheckCard, RepeatShot, SetUp, SetUpState, TestedLaser};

/// The fold of all entries so far.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct State {
    /// The last entry's number.
    pub seq: u64,
    /// The last entry's moment; the hub's clock never runs back behind it.
    pub at: Time,
    /// The day that is open.
    pub day: Option<OpenDay>,
    /// The site in force.
    pub site: Option<SiteInForce>,
    /// A changed site file that waits.
    pub site_change: Option<PendingChange>,
    /// How often this day's codes were renewed.
    pub codes_generation: u32,
    /// How long codes last, and the day that they were made for.
    #[serde(default)]
    pub codes: CodesNow,
    /// Phones of this day, removed ones too.
    pub devices: BTreeMap<String, Device>,
    /// Phones of the day before: they may still stop everything, no more.
    #[serde(default)]
    pub before: BTreeMap<String, Device>,
    /// Phones of an earlier day that are still in, each with the machines that it stays for.
    #[serde(default)]
    pub over_night: BTreeMap<String, BTreeSet<String>>,
    /// Set-ups of this day, in the order in which they were made.
    pub set_ups: Vec<SetUp>,
    /// Machines.
    pub cabs: BTreeMap<String, Cab>,
    /// Calls of this day, by number.
    pub calls: BTreeMap<u64, Call>,
    /// Readings of this day that were taken, by entry.
    pub readings: BTreeMap<u64, TakenReading>,
    /// Readings of this day that were asked about, by entry.
    pub asked: BTreeMap<u64, AskedReading>,
    /// How this day's questions were answered.
    pub slips: SlipRecord,
    /// What failed checks and bumps of this day put in doubt, in the order in which they came.
    pub suspects: Vec<Suspect>,
    /// Lines of levels of this day, by entry.
    pub levels: BTreeMap<u64, LevelsRun>,
    /// Benchmarks that the site file does not know.
    pub added_benchmarks: Vec<String>,
    /// What the newest test of each laser found.
    pub tested: BTreeMap<String, TestedLaser>,
    /// Blind pairs of the job.
    pub pairs: Vec<BlindPair>,
    /// How often a set-up of this day was put in doubt.
    pub bumps: u32,
    /// What is current on each mark.
    pub marks: BTreeMap<String, MarkNow>,
    /// As built on the days before, by mark: a job is handed over as it stands, not as one day left it.
    #[serde(default)]
    pub built_before: BTreeMap<String, BuiltMark>,
    /// Aims, by mark or target.
    pub aims: BTreeMap<String, Length>,
    /// Targets that two people typed differently, with when; until they agree or a revision replaces them.
    #[serde(default)]
    pub typed_apart: BTreeMap<String, (Time, TargetTyped)>,
    /// Marks at which the edge of the cut was taped to a line that nobody may cross, of the job.
    #[serde(default)]
    pub taped: BTreeSet<String>,
    /// What was last said of the rain.
    #[serde(default)]
    pub rain: RainNow,
    /// Cuts and what is buried.
    #[serde(default)]
    pub cuts: CutsNow,
    /// What the job owes and needs.
    #[serde(default)]
    pub account: Account,
    /// Who has asked to come in to a keep-out, who is in, whose bucket is held down. Outlives the day.
    #[serde(default)]
    pub way_in: WayIn,
    /// Agreements between machines whose booms can meet.
    #[serde(default)]
    pub slews: Vec<SlewCard>,
    /// The start of the day.
    #[serde(default)]
    pub start: StartNow,
    /// Near misses: they outlive the day.
    #[serde(default)]
    pub near_misses: NearMisses,
    /// The close of the day, visitors, inspections, queries, notes, photos.
    #[serde(default)]
    pub record: Record,
    /// Answers of this day, by device, then key.
    pub answers: BTreeMap<String, BTreeMap<String, Answer>>,
}

/// The day that is open.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OpenDay {
    /// Its name.
    pub id: String,
    /// Its first entry.
    pub first: u64,
    /// When it was opened.
    pub at: Time,
}

/// The site in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SiteInForce {
    /// The site.
    pub site: Site,
    /// The digest of the file that it came from.
    pub digest: String,
    /// What pages changed since that file, oldest first: a file that says otherwise undoes it.
    #[serde(default)]
    pub by_page: Vec<PageChange>,
}

/// A changed site file that waits for a supervisor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PendingChange {
    /// What was found.
    pub found: SiteChangeFound,
    /// When.
    pub since: Time,
}

/// A phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Device {
    /// Name or initials.
    pub person: String,
    /// Roles.
    pub roles: Vec<Role>,
    /// The machine whose cab it sits in.
    pub machine: Option<String>,
    /// Its language.
    pub language: Language,
    /// Its unit.
    pub unit: ScreenUnit,
    /// SHA-256 of its cookie.
    pub token_digest: String,
    /// When it joined.
    pub since: Time,
    /// Removed by a supervisor, or retired by another screen in the same cab.
    pub removed: bool,
    /// The device that this same phone was before: it came in again with the cookie of that one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handset: Option<String>,
    /// The supervisor who has confirmed, today and on another phone, whose phone this is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub confirmed_by: Option<String>,
    /// A supervisor lets it stay in over the night.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub stays: bool,
    /// It stayed in over the night, and nobody has said yet who holds it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub asks_who: bool,
}

/// A reading that was asked about.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct AskedReading {
    /// The reading as it came.
    pub reading: Reading,
    /// What was asked.
    pub question: Question,
    /// Who took it.
    pub by: String,
    /// When it was made.
    pub made_at: Time,
    /// It has been answered.
    pub settled: bool,
}

/// How the questions of a day were answered.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct SlipRecord {
    /// Questions that were answered.
    pub answered: u32,
    /// Those whose reading had been a slip.
    pub slips: u32,
    /// Those whose first or second suggestion was what had happened.
    pub hits: u32,
    /// What they teach about the next suggestions.
    pub learned: Learned,
}

/// What a failed check or a bump put in doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Suspect {
    /// What was found.
    pub window: SuspectWindow,
    /// The marks that are still to be shot again.
    pub open: BTreeSet<String>,
}

/// One machine's cab.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Cab {
    /// The phone that is its screen.
    pub device: Option<String>,
    /// Whether the screen can be seen, as last noticed.
    pub screen: Screen,
    /// What its page last said of itself.
    #[serde(default)]
    pub page: CabPage,
    /// The live call.
    pub live: Option<u64>,
    /// The last call, live or ended.
    pub last: Option<u64>,
    /// The set-up of the last measured call.
    pub works_from: Option<String>,
    /// The mark of the last measured call.
    pub last_mark: Option<String>,
    /// A stop in force.
    pub stop: Option<StopCard>,
    /// The set-up in doubt that paused it, and since when.
    pub paused: Option<(String, Time)>,
    /// The revised target that its operator has yet to see.
    pub must_see: Option<MustSee>,
    /// Since when a look has been asked for.
    pub look_asked_at: Option<Time>,
    /// What the operator can't do, while it stands.
    pub cant: Option<CantCard>,
    /// Where it was last declared to stand.
    pub place: Option<PlaceCard>,
    /// When the newest word about its place was said: a place, or that it moved.
    #[serde(default)]
    pub place_said: Option<Time>,
    /// When the loud reminder was last given since the machine was placed.
    pub loud_at: Option<Time>,
    /// When the last call of any kind went out.
    pub called_at: Option<Time>,
    /// The machine as the site last had it, when the site has it no more: somebody may still sit in it.
    #[serde(default)]
    pub was: Option<Machine>,
    /// Who spots for it.
    #[serde(default)]
    pub spotter: Option<SpotterCard>,
    /// Since when the battery of its phone is low.
    #[serde(default)]
    pub battery_low: Option<Time>,
    /// Somebody has said that it moved, and nobody since where it stands.
    #[serde(default)]
    pub moved: bool,
    /// When the cab was last given to whichever phone scans its code next.
    #[serde(default)]
    pub given_at: Option<Time>,
}

/// A revised target that an operator has yet to see.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct MustSee {
    /// The target.
    pub target: String,
    /// Its revision.
    pub revision: u32,
    /// Since when.
    pub since: Time,
}

/// Whether a cab's screen can be seen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Screen {
    /// Visible, with a live link.
    Showing,
    /// Hidden or locked since.
    Hidden(Time),
    /// The link is gone since.
    Lost(Time),
    /// Nobody has joined.
    #[default]
    None,
}

/// A call and where it is in its life.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Call {
    /// What was sent.
    pub sent: CallSent,
    /// Who sent it.
    pub by: String,
    /// The phone that was the cab's screen when it was sent.
    #[serde(default)]
    pub screen: Option<String>,
    /// The machine is the one that its target was assigned to; else it was named for this reading alone.
    #[serde(default)]
    pub assigned: bool,
    /// What holds the work there, when that ended it.
    #[serde(default)]
    pub held: Option<HeldBy>,
    /// When the reading was made.
    pub made_at: Time,
    /// When the hub sent it.
    pub sent_at: Time,
    /// When it will be too old; put off while its machine is stopped.
    pub stale_at: Time,
    /// Where it is.
    pub state: CallState,
    /// When it reached the phone.
    pub delivered_at: Option<Time>,
    /// When it was painted.
    pub shown_at: Option<Time>,
    /// When it was acknowledged.
    pub got_at: Option<Time>,
    /// Who saw the nod.
    pub witness: Option<String>,
    /// When it ended.
    pub ended_at: Option<Time>,
}

/// A reading that was taken, and by whom and when.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TakenReading {
    /// The reading.
    pub reading: Reading,
    /// Who took it.
    pub by: String,
    /// When it was made.
    pub made_at: Time,
    /// A later reading corrects it, or somebody called it wrong: it counts no more.
    pub restated: bool,
    /// Why the mark's acceptance did not count any more before this reading measured it again.
    #[serde(default)]
    pub cleared: Option<(Time, VoidCause)>,
    /// The lists of marks in doubt, by their place among the suspects, that this reading took the mark off.
    #[serde(default)]
    pub shot_again: Vec<usize>,
}

/// What is current on a mark.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct MarkNow {
    /// The newest reading that was taken and not restated.
    pub last: Option<u64>,
    /// How it stands on the ground, once somebody has said so.
    #[serde(default)]
    pub paint: Option<Paint>,
    /// The two tapes that bring it back, as last taken.
    #[serde(default)]
    pub ties: Option<TiesCard>,
    /// The ruling on the last reading.
    pub ruling: Option<Ruling>,
    /// Why its acceptance does not count any more, until it is measured again.
    #[serde(default)]
    pub void: Option<(Time, VoidCause)>,
    /// Readings of this mark, in the order in which they were made.
    pub readings: BTreeSet<(Time, u64)>,
}

impl State {
    /// The state that was put by as JSON; none of what is no such state.
    pub fn read(json: &[u8]) -> Option<Self> {
        serde_json::from_str(str::from_utf8(json).ok()?).ok()
    }

    /// The site in force.
    pub fn site(&self) -> Option<&Site> {
        self.site.as_ref().map(|in_force| &in_force.site)
    }

    /// The machines of the site, in its order, then those that it has no more and in which a phone still sits.
    pub fn machines_here(&self) -> impl Iterator<Item = &str> {
        let site = self.site();
        let of_the_site = site.into_iter().flat_map(|site| &site.machines);
        let left = self.cabs.iter().filter(move |(id, cab)| {
            cab.device.is_some() && site.is_some_and(|site| site.machine(id).is_none())
        });
        of_the_site
            .map(|machine| machine.id.as_str())
            .chain(left.map(|(id, _)| id.as_str()))
    }

    /// The set-up of that name.
    pub fn set_up(&self, id: &str) -> Option<&SetUp> {
        self.set_ups.iter().find(|set_up| set_up.id == id)
    }

    pub(crate) fn set_up_mut(&mut self, id: &str) -> Option<&mut SetUp> {
        self.set_ups.iter_mut().find(|set_up| set_up.id == id)
    }

    pub(crate) fn cab_mut(&mut self, machine: &str) -> &mut Cab {
        self.cabs.entry(machine.to_owned()).or_default()
    }

    /// The phone, unless it was removed.
    pub fn device(&self, id: &str) -> Option<&Device> {
        self.devices.get(id).filter(|device| !device.removed)
    }

    /// The live call of a machine.
    pub fn live_call(&self, machine: &str) -> Option<(u64, &Call)> {
        let id = self.cabs.get(machine)?.live?;
        Some((id, self.calls.get(&id)?))
    }

    /// The last reading on a mark that was taken and not restated.
    pub fn last_reading(&self, mark: &str) -> Option<(u64, &TakenReading)> {
        let id = self.marks.get(mark)?.last?;
        Some((id, self.readings.get(&id)?))
    }

    /// Where to aim on a mark: its own aim, else its target's, else the target itself.
    pub fn aim(&self, mark: &str, target: &str) -> Length {
        self.aims
            .get(mark)
            .or_else(|| self.aims.get(target))
            .copied()
            .unwrap_or(Length::ZERO)
    }
}
