//! The record: one entry for each thing that was said or that followed from it.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::By;
use crate::happening::happenings;
use crate::said;
use crate::time::Time;
use crate::way_in;

/// One line of the log. `prev` and `hash` belong to the chain and are kept beside it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Entry {
    /// Counts up by one from 1, across days.
    pub seq: u64,
    /// When the hub took it.
    pub at: Time,
    /// When it was made, by the maker's clock corrected to the hub's; never later than `at`.
    pub made_at: Time,
    /// Who said it.
    pub by: By,
    /// The key of the request that it answers; the same for all entries of one request.
    pub key: String,
    /// What happened.
    pub body: Body,
}

happenings! {
    /// A day began; codes of the day before are void.
    DayOpened(said::day::DayOpened),
    /// The site file was taken into the store for the first time.
    SiteTaken(said::site::SiteTaken),
    /// The site file differs from what is in force.
    SiteChangeFound(said::site::SiteChangeFound),
    /// The changed site file is in force.
    SiteRevised(said::site::SiteRevised),
    /// A phone came in.
    Joined(said::join::Joined),
    /// A screen's language or unit changed.
    ScreenChanged(said::join::ScreenChanged),
    /// A phone was removed.
    PhoneRemoved(said::join::PhoneRemoved),
    /// Codes were voided and made anew.
    CodesRenewed(said::codes::CodesRenewed),
    /// How long codes last was said.
    CodesLast(said::codes::CodesLast),
    /// A cab waits for another phone.
    CabGiven(said::person::CabGiven),
    /// A supervisor confirmed whose phone it is.
    PersonConfirmed(said::person::PersonConfirmed),
    /// Whether a phone stays in over the night.
    PhoneStays(said::stay::PhoneStays),
    /// Who holds a phone that stayed in.
    WhoSaid(said::stay::WhoSaid),
    /// A laser was set up; not usable before it is proven.
    LaserSetUp(said::set_up::LaserSetUp),
    /// A set-up's backsight was restated; its earlier basis stays in the log.
    SetUpRestated(said::set_up::SetUpRestated),
    /// A set-up may be used: see `how`.
    SetUpProven(said::set_up::SetUpProven),
    /// A set-up was taken down.
    SetUpClosed(said::set_up::SetUpClosed),
    /// A check shot was made.
    CheckShot(said::check_shot::CheckShot),
    /// A set-up is in doubt; calls on it are gone.
    SetUpDoubted(said::check_shot::SetUpDoubted),
    /// A laser was tested.
    LaserTested(said::laser_test::LaserTested),
    /// A line of levels was run, and it closes.
    LevelsRun(said::turning::LevelsRun),
    /// A benchmark was added.
    BenchmarkAdded(said::turning::BenchmarkAdded),
    /// Two set-ups were compared.
    SetUpsCompared(said::turning::SetUpsCompared),
    /// Two shots of one mark, the second blind.
    BlindPair(said::blind::BlindPair),
    /// A check of a set-up is due.
    CheckFellDue(said::check_due::CheckFellDue),
    /// What a failed check or a bump put in doubt, judged both ways.
    SuspectWindow(said::suspect::SuspectWindow),
    /// An accepted mark was shot again: a free check of the laser.
    MarkRepeated(said::repeat::MarkRepeated),
    /// A question about a reading was answered by what was done next.
    QuestionSettled(said::settle::QuestionSettled),
    /// A reading was taken.
    ReadingTaken(said::reading::ReadingTaken),
    /// A reading was asked about and not shown.
    ReadingAsked(said::reading::ReadingAsked),
    /// A reading came late; logged, never shown.
    ReadingLate(said::reading::ReadingLate),
    /// A reading was called wrong.
    ReadingCalledWrong(said::wrong_number::ReadingCalledWrong),
    /// What waited on a phone was thrown away there.
    UnsentDropped(said::drop_unsent::UnsentDropped),
    /// Marks were laid.
    MarksLaid(said::marks::MarksLaid),
    /// Marks were checked by a second person.
    MarksChecked(said::marks::MarksChecked),
    /// Marks are gone.
    MarksScraped(said::marks::MarksScraped),
    /// A mark was tied by two tapes.
    TiesTaken(said::ties::TiesTaken),
    /// A rectangle was taped.
    DiagonalsMeasured(said::diagonals::DiagonalsMeasured),
    /// An edge was taped to a line that must not be crossed.
    EdgeRead(said::edge::EdgeRead),
    /// A call went out.
    CallSent(said::call::CallSent),
    /// A call reached the operator's phone.
    CallDelivered(said::receipt::CallDelivered),
    /// A call was painted on a visible page.
    CallShown(said::receipt::CallShown),
    /// A call was acknowledged.
    CallGot(said::call::CallGot),
    /// A call is no longer live.
    CallEnded(said::call::CallEnded),
    /// The operator asked for a look.
    LookAsked(said::call::LookAsked),
    /// The operator can't.
    CantSaid(said::call::CantSaid),
    /// An operator's page began or ceased to show.
    ScreenNoticed(said::receipt::ScreenNoticed),
    /// Machines were stopped.
    Stopped(said::stop::Stopped),
    /// A stop was lifted.
    StopLifted(said::stop::StopLifted),
    /// A start check has its value.
    StartCheckSaid(said::start_checks::StartCheckSaid),
    /// The day is READY.
    DayReady(said::start_checks::DayReady),
    /// Something is near a machine that was placed.
    NearFound(said::machine::NearFound),
    /// An agreement between two machines waits for their operators.
    SlewProposed(said::slew::SlewProposed),
    /// An operator has agreed.
    SlewAgreed(said::slew::SlewAgreed),
    /// An agreement between two machines holds no more.
    SlewVoided(said::slew::SlewVoided),
    /// A machine has a spotter.
    SpotterSet(said::spotter::SpotterSet),
    /// A machine has no spotter any more.
    SpotterGone(said::spotter::SpotterGone),
    /// What was said of the battery of a cab's phone.
    BatterySaid(said::battery::BatterySaid),
    /// An ALL STOP opened a near miss.
    NearMissOpened(said::near_miss::NearMissOpened),
    /// Something was said about a near miss.
    NearMissTold(said::near_miss::NearMissTold),
    /// An aim was set.
    AimSet(said::aim::AimSet),
    /// The site was changed on a page.
    SiteChanged(said::change::SiteChanged),
    /// A target was revised.
    TargetRevised(said::revise::TargetRevised),
    /// A target's elevations were typed a second time.
    TargetTyped(said::prove::TargetTyped),
    /// An operator has seen a revised target.
    TargetSeen(said::revise::TargetSeen),
    /// A supervisor ruled.
    Ruled(said::rule::Ruled),
    /// A machine's place was declared.
    MachinePlaced(said::machine::MachinePlaced),
    /// A machine moved; its place is unknown.
    MachineMoved(said::machine::MachineMoved),
    /// A load was counted.
    LoadCounted(said::load::LoadCounted),
    /// A load has its ticket.
    TicketAdded(said::load::TicketAdded),
    /// A load was counted by mistake.
    LoadTakenBack(said::load::LoadTakenBack),
    /// Soil was measured in the ground.
    SoilMeasured(said::load::SoilMeasured),
    /// Gravel was ordered.
    GravelOrdered(said::gravel::GravelOrdered),
    /// The gravel orders do not cover what is needed.
    GravelShort(said::gravel::GravelShort),
    /// A low spot needs gravel.
    PatchNeeded(said::patch::PatchNeeded),
    /// A patch is a step further.
    PatchMoved(said::patch::PatchMoved),
    /// A lift was rammed.
    Compacted(said::compact::Compacted),
    /// The soil was tested.
    SoilTested(said::soil_test::SoilTested),
    /// A soil test does not count any more.
    TestVoided(said::soil_test::TestVoided),
    /// An undercut waits for a supervisor.
    UndercutProposed(said::undercut::UndercutProposed),
    /// A proposed undercut is in force.
    UndercutConfirmed(said::undercut::UndercutConfirmed),
    /// Rock was met.
    RockPointed(said::rock::RockPointed),
    /// The price list was put in.
    PricesSet(said::prices::PricesSet),
    /// A machine waits.
    WaitingSaid(said::waiting::WaitingSaid),
    /// A machine works again.
    WorkedAgain(said::waiting::WorkedAgain),
    /// A face was inspected.
    FaceInspected(said::face_inspect::FaceInspected),
    /// The soil of a face was typed anew.
    SoilRetyped(said::face_design::SoilRetyped),
    /// A face goes by an engineer's own design.
    FaceRevised(said::face_design::FaceRevised),
    /// Where a face comes to daylight, against every line.
    DaylightFound(crate::cuts::daylight::DaylightFound),
    /// Something was seen at a face.
    SeenAtFace(said::face_seen::SeenAtFace),
    /// Rain began.
    RainBegan(said::rain::RainBegan),
    /// Rain stopped.
    RainStopped(said::rain::RainStopped),
    /// Water was pumped out.
    WaterPumped(said::pump::WaterPumped),
    /// A face came down.
    SloughSeen(said::face_seen::SloughSeen),
    /// Pins across a crack were taped.
    PinsRead(said::face_pins::PinsRead),
    /// A face is left.
    FaceAlarmed(said::face_alarm::FaceAlarmed),
    /// An operator has left a face.
    FaceLeft(said::face_alarm::FaceLeft),
    /// A machine came to stand under faces that were left.
    UnderLeftFace(said::face_alarm::UnderLeftFace),
    /// A revised target owes more at its depth.
    DepthOwed(said::depth_owed::TargetOwes),
    /// A locate ticket was looked at.
    TicketChecked(said::ticket::TicketChecked),
    /// Paint of a buried line went, or came again.
    PaintSaid(said::ticket::PaintSaid),
    /// A buried line was struck or met.
    LineStruck(said::struck::LineStruck),
    /// A buried line was bared by hand.
    PotholeDug(said::pothole::PotholeDug),
    /// Work was let go on where something held it back.
    DigAllowed(said::allow_dig::DigAllowed),
    /// The day was closed.
    DayClosed(said::close::DayClosed),
    /// The day was signed.
    DaySigned(said::sign::DaySigned),
    /// A signed day was amended.
    DayAmended(said::amend::DayAmended),
    /// A note was written.
    NoteAdded(said::note::NoteAdded),
    /// A visitor is on site, or off it.
    VisitorNoticed(said::visit::VisitorNoticed),
    /// What a visitor is shown was chosen.
    RunsShown(said::visit::RunsShown),
    /// An inspection was asked for.
    InspectionAsked(said::inspection::InspectionAsked),
    /// An inspection was made.
    Inspected(said::inspection::Inspected),
    /// An inspection was signed by whoever made it.
    InspectionSigned(said::inspection::InspectionSigned),
    /// An inspection does not count any more.
    InspectionVoided(said::void::InspectionVoided),
    /// A mark that was accepted is to be looked at and shot again.
    AcceptanceVoided(said::void::AcceptanceVoided),
    /// A query was opened.
    QueryOpened(said::query::QueryOpened),
    /// A query was answered.
    QueryAnswered(said::query::QueryAnswered),
    /// A photo was taken; its bytes are still on the phone.
    PhotoPromised(said::photo::PhotoPromised),
    /// A photo's bytes have come.
    PhotoAdded(said::photo::PhotoAdded),
    /// A photo that was promised is not waited for any more.
    PhotoGivenUp(said::photo::PhotoGivenUp),
    /// A phone remembers an end of the log that the log does not hold.
    HeadMismatch(said::head::HeadMismatch),
    /// Somebody asked to come in.
    EntryAsked(way_in::step::EntryAsked),
    /// It was asked again, louder.
    AskRepeated(way_in::step::AskRepeated),
    /// The ask was taken back.
    AskWithdrawn(way_in::step::AskWithdrawn),
    /// The operator said WAIT.
    EntryDelayed(way_in::step::EntryDelayed),
    /// The operator said no.
    EntryRefused(way_in::step::EntryRefused),
    /// The operator held BUCKET DOWN.
    BucketIsDown(way_in::step::BucketIsDown),
    /// Somebody went in.
    PersonIn(way_in::step::PersonIn),
    /// Somebody is out.
    PersonOut(way_in::step::PersonOut),
    /// Whoever another phone said to be out has seen that.
    OutSeen(way_in::step::OutSeen),
    /// A release was refused: somebody may be in.
    ReleaseRefused(way_in::step::ReleaseRefused),
    /// The operator released the machine.
    Released(way_in::step::Released),
    /// The link of somebody who asks or is in was lost, or came back.
    LinkNoticed(way_in::step::LinkNoticed),
}
