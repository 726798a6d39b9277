//! What a person or the hub asks of the day: who, when, and one command.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::said;
use crate::saying::sayings;
use crate::time::Time;

/// One request: the same key again gets the same answer and no second entry.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The client's own key for this request.
    pub key: String,
    /// Who asks.
    pub by: By,
    /// When it was made, by the asker's clock corrected to the hub's; never later than the arrival.
    pub made_at: Time,
    /// What is asked.
    pub command: Command,
}

/// Who asks, or who said an entry.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct By {
    /// The phone or laptop; `hub` for the hub itself.
    pub device: String,
    /// Name or initials, as given at joining.
    pub person: String,
    /// What this device may do.
    pub roles: Vec<Role>,
    /// The machine whose cab this device sits in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

impl By {
    /// The hub itself.
    pub fn hub() -> Self {
        Self {
            device: "hub".into(),
            person: "hub".into(),
            roles: vec![Role::Hub],
            machine: None,
        }
    }

    /// Whether one of the roles is held.
    pub fn is(&self, role: Role) -> bool {
        self.roles.contains(&role)
    }
}

/// What a device may do. One phone may hold ground and supervisor at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// In the cut, with the rod.
    Ground,
    /// In the cab of one machine.
    Operator,
    /// Sets up, rules, lifts, reviews.
    Supervisor,
    /// Looks on; may press STOP.
    Visitor,
    /// The hub itself; never a person's.
    Hub,
}

sayings! {
    /// The hub opens a day.
    OpenDay(said::day::OpenDay),
    /// The hub has read the site file.
    ReadSite(said::site::ReadSite),
    /// A supervisor takes the changed site file as the new revision.
    ConfirmSite(said::site::ConfirmSite),
    /// The hub lets somebody in who showed a valid code.
    Join(said::join::Join),
    /// Language and unit of one screen.
    ChangeScreen(said::join::ChangeScreen),
    /// A supervisor removes a phone.
    RemovePhone(said::join::RemovePhone),
    /// A supervisor voids the codes and prints new ones.
    RenewCodes(said::codes::RenewCodes),
    /// A supervisor says how long codes last.
    SetCodesLast(said::codes::SetCodesLast),
    /// A cab is given to the phone that scans its code next.
    GiveCab(said::person::GiveCab),
    /// A supervisor confirms whose phone another one is.
    ConfirmPerson(said::person::ConfirmPerson),
    /// A supervisor lets a phone stay in over the night.
    LetStay(said::stay::LetStay),
    /// Who holds a phone that stayed in.
    SayWho(said::stay::SayWho),
    /// A laser is set up: a backsight on a benchmark.
    SetUpLaser(said::set_up::SetUpLaser),
    /// The backsight was not what it was said to be.
    RestateSetUp(said::set_up::RestateSetUp),
    /// The only benchmark, levelled again from a changed height.
    LevelAgain(said::set_up::LevelAgain),
    /// Work on one benchmark, each call labelled so.
    UseOneBenchmark(said::set_up::UseOneBenchmark),
    /// The set-up is taken down.
    CloseSetUp(said::set_up::CloseSetUp),
    /// A reading on a benchmark, to prove that the set-up still holds.
    ShootCheck(said::check_shot::ShootCheck),
    /// Somebody saw the laser move.
    SayBumped(said::check_shot::SayBumped),
    /// The laser itself is tested.
    TestLaser(said::laser_test::TestLaser),
    /// A line of levels over turning points.
    RunLevels(said::turning::RunLevels),
    /// A supervisor takes a levelled point as a benchmark.
    AddBenchmark(said::turning::AddBenchmark),
    /// One point is shot from two lasers.
    CompareSetUps(said::turning::CompareSetUps),
    /// One rod value at one mark.
    TakeReading(said::reading::TakeReading),
    /// Marks are laid, or laid again.
    LayMarks(said::marks::LayMarks),
    /// A second person has measured marks again.
    CheckMarks(said::marks::CheckMarks),
    /// The machine has taken the paint.
    ScrapeMarks(said::marks::ScrapeMarks),
    /// Two tapes to a mark that is about to go.
    TakeTies(said::ties::TakeTies),
    /// A rectangle's sides and diagonals, as taped.
    MeasureDiagonals(said::diagonals::MeasureDiagonals),
    /// The tape from a line that must not be crossed to the cut's edge.
    ReadEdge(said::edge::ReadEdge),
    /// A call by eye, without a number.
    QuickCall(said::quick_call::QuickCall),
    /// A call is taken back.
    WithdrawCall(said::call::WithdrawCall),
    /// A reading that was taken is called wrong.
    WrongNumber(said::wrong_number::WrongNumber),
    /// What waited on a phone is thrown away there.
    DropUnsent(said::drop_unsent::DropUnsent),
    /// The operator has it.
    GotIt(said::call::GotIt),
    /// The ground person saw the operator nod.
    SawNod(said::call::SawNod),
    /// The operator wants somebody to look.
    CheckMe(said::call::CheckMe),
    /// The operator can't do what was called.
    SayCant(said::call::SayCant),
    /// The call has reached the operator's phone.
    Delivered(said::receipt::Delivered),
    /// The call is painted on a visible page.
    Shown(said::receipt::Shown),
    /// An operator's page shows, is hidden, or is gone.
    NoticeScreen(said::receipt::NoticeScreen),
    /// ALL STOP.
    StopAll(said::stop::StopAll),
    /// A supervisor lifts a stop.
    LiftStop(said::stop::LiftStop),
    /// Somebody says what they saw before the day begins.
    SayStartCheck(said::start_checks::SayStartCheck),
    /// A supervisor says that the day is READY.
    ReadyDay(said::start_checks::ReadyDay),
    /// A supervisor proposes which side each of two machines keeps out of.
    AgreeSlew(said::slew::AgreeSlew),
    /// The operator agrees.
    SayAgreed(said::slew::SayAgreed),
    /// A ground person spots for a machine.
    BeSpotter(said::spotter::BeSpotter),
    /// Nobody spots for a machine any more.
    EndSpotter(said::spotter::EndSpotter),
    /// The battery of a cab's phone is low, or charging.
    LowBattery(said::battery::LowBattery),
    /// A supervisor says what happened at a near miss.
    TellNearMiss(said::near_miss::TellNearMiss),
    /// A supervisor says where to aim.
    SetAim(said::aim::SetAim),
    /// A supervisor adds, changes or retires things of the site.
    ChangeSite(said::change::ChangeSite),
    /// A supervisor changes a target.
    ReviseTarget(said::revise::ReviseTarget),
    /// A second person types a target's elevations, unseen.
    ProveTarget(said::prove::ProveTarget),
    /// The operator has seen the changed target.
    SeeTarget(said::revise::SeeTarget),
    /// A supervisor rules on what is too close to call.
    Rule(said::rule::Rule),
    /// Where a machine stands.
    PlaceMachine(said::machine::PlaceMachine),
    /// Where the own machine stands, in one press from its cab.
    StandHere(said::stand::StandHere),
    /// A machine has moved, nobody has said where to.
    SayMoved(said::machine::SayMoved),
    /// A load is counted, out or in.
    CountLoad(said::load::CountLoad),
    /// A counted load has its ticket.
    AddTicket(said::load::AddTicket),
    /// A load was counted by mistake.
    TakeBackLoad(said::load::TakeBackLoad),
    /// Soil was measured in the ground.
    MeasureSoil(said::load::MeasureSoil),
    /// A supervisor orders gravel.
    OrderGravel(said::gravel::OrderGravel),
    /// A low spot is measured for gravel.
    AddPatch(said::patch::AddPatch),
    /// A patch is a step further.
    MovePatch(said::patch::MovePatch),
    /// A lift is rammed.
    Compact(said::compact::Compact),
    /// The soil is tested.
    TestSoil(said::soil_test::TestSoil),
    /// A test does not count any more.
    VoidTest(said::soil_test::VoidTest),
    /// A supervisor takes a proposed undercut into the target.
    ConfirmUndercut(said::undercut::ConfirmUndercut),
    /// A point on rock.
    PointRock(said::rock::PointRock),
    /// A supervisor puts in the price list.
    SetPrices(said::prices::SetPrices),
    /// A machine waits for something that no entry shows.
    SayWaiting(said::waiting::SayWaiting),
    /// A machine works again.
    WorkAgain(said::waiting::WorkAgain),
    /// The competent person inspects a face.
    InspectFace(said::face_inspect::InspectFace),
    /// The competent person types the soil anew.
    RetypeSoil(said::face_design::RetypeSoil),
    /// An engineer's own design of a face.
    ReviseFace(said::face_design::ReviseFace),
    /// Something is seen at a face.
    SeeAtFace(said::face_seen::SeeAtFace),
    /// It rains.
    SayRain(said::rain::SayRain),
    /// It rains no more.
    SayRainStopped(said::rain::SayRainStopped),
    /// Water was pumped out.
    SayPumped(said::pump::SayPumped),
    /// A face comes down.
    SeeSlough(said::face_seen::SeeSlough),
    /// A face comes down: everybody is told at once, its figures come after.
    SayCameDown(said::face_alarm::SayCameDown),
    /// A tape between two pins across a crack.
    ReadPins(said::face_pins::ReadPins),
    /// The operator has left a face.
    LeaveFace(said::face_alarm::LeaveFace),
    /// A supervisor looks at a locate ticket.
    CheckTicket(said::ticket::CheckTicket),
    /// The paint of a buried line is gone, or there again.
    SayPaint(said::ticket::SayPaint),
    /// A buried line was struck.
    SayStruck(said::struck::SayStruck),
    /// A buried line is bared by hand.
    DigPothole(said::pothole::DigPothole),
    /// A supervisor lets work go on where something holds it back.
    AllowDig(said::allow_dig::AllowDig),
    /// A supervisor closes the day.
    CloseDay(said::close::CloseDay),
    /// A supervisor signs the day.
    SignDay(said::sign::SignDay),
    /// A supervisor amends a signed day.
    AmendDay(said::amend::AmendDay),
    /// Somebody writes a note.
    AddNote(said::note::AddNote),
    /// A visitor is on site, or off it.
    Visit(said::visit::Visit),
    /// A supervisor chooses what a visitor is shown.
    ShowRuns(said::visit::ShowRuns),
    /// A supervisor asks for an inspection.
    AskInspection(said::inspection::AskInspection),
    /// An inspection was made.
    Inspect(said::inspection::Inspect),
    /// Whoever inspected signs.
    SignInspection(said::inspection::SignInspection),
    /// Somebody asks the engineer.
    AskQuery(said::query::AskQuery),
    /// The engineer's answer.
    AnswerQuery(said::query::AnswerQuery),
    /// A photo was taken; its bytes follow.
    PromisePhoto(said::photo::PromisePhoto),
    /// The hub has a photo's bytes.
    AddPhoto(said::photo::AddPhoto),
    /// A photo that was promised will not come.
    GiveUpPhoto(said::photo::GiveUpPhoto),
    /// The hub misses an end of the chain that a phone remembers.
    MissHead(said::head::MissHead),
    /// Somebody asks to come in to a machine's keep-out.
    AskIn(said::way_in::ask::AskIn),
    /// The ask is taken back.
    WithdrawAsk(said::way_in::ask::WithdrawAsk),
    /// The operator has held BUCKET DOWN.
    BucketDown(said::way_in::answer::BucketDown),
    /// The operator says WAIT.
    SayWait(said::way_in::answer::SayWait),
    /// The operator says no.
    RefuseEntry(said::way_in::answer::RefuseEntry),
    /// Somebody goes in.
    GoIn(said::way_in::enter::GoIn),
    /// Somebody is out.
    ComeOut(said::way_in::enter::ComeOut),
    /// Somebody else has seen a person out.
    OutByWitness(said::way_in::enter::OutByWitness),
    /// Whoever another phone said to be out has seen that.
    SeeOut(said::way_in::enter::SeeOut),
    /// The operator releases the machine.
    Release(said::way_in::answer::Release),
    /// A phone's link is lost, or back.
    NoticeLink(said::way_in::notice::NoticeLink),
    /// The hub was started again.
    NoticeRestart(said::way_in::notice::NoticeRestart),
}
