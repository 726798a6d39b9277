//! From a request to entries or a refusal. The rules are in `said/`; this file only dispatches.

use crate::asked::{Asked, Command};
use crate::entry::Body;
use crate::permit;
use crate::record;
use crate::refusal::Refusal;
use crate::said;
use crate::state::State;
use crate::time::{Time, When};

/// What follows from a request. An empty list means that there was nothing left to do. `head` is the hash of the last entry:
/// a signature stands under it.
///
/// # Errors
/// A [`Refusal`] that says what to do instead; then nothing is entered.
pub fn decide(state: &State, asked: &Asked, now: Time, head: &str) -> Result<Vec<Body>, Refusal> {
    permit::check(&asked.by, &asked.command)?;
    said::stay::pass(state, asked)?;
    record::gate::pass(state, asked)?;
    let mut bodies = follows(state, asked, now, head)?;
    let voided = said::void::after(state, &bodies);
    bodies.extend(voided);
    bodies.extend(said::site::held_anew(state, asked, now, &bodies));
    Ok(bodies)
}

#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
fn follows(state: &State, asked: &Asked, now: Time, head: &str) -> Result<Vec<Body>, Refusal> {
    let by = &asked.by;
    let when = When {
        now,
        made_at: asked.made_at.min(now),
    };
    match &asked.command {
        Command::OpenDay(c) => said::day::open(state, by, c),
        Command::ReadSite(c) => Ok(said::site::read(state, c)),
        Command::ConfirmSite(c) => said::site::confirm(state, c),
        Command::Join(c) => said::join::join(state, c, now),
        Command::ChangeScreen(c) => said::join::change_screen(state, by, c),
        Command::RemovePhone(c) => said::join::remove(state, c),
        Command::RenewCodes(c) => Ok(said::codes::renew(state, c)),
        Command::SetCodesLast(c) => Ok(said::codes::set_last(state, c)),
        Command::GiveCab(c) => said::person::give(state, by, c, now.ms_since(when.made_at)),
        Command::ConfirmPerson(c) => said::person::confirm(state, by, c),
        Command::LetStay(c) => said::stay::let_stay(state, c),
        Command::SayWho(c) => said::stay::say_who(state, by, c, now),
        Command::SetUpLaser(c) => said::set_up::set_up(state, c),
        Command::RestateSetUp(c) => said::set_up::restate(state, c),
        Command::LevelAgain(c) => said::set_up::level_again(state, c),
        Command::UseOneBenchmark(c) => said::set_up::use_one(state, c),
        Command::CloseSetUp(c) => said::set_up::close(state, c),
        Command::ShootCheck(c) => said::check_shot::shoot(state, c, when),
        Command::SayBumped(c) => said::check_shot::bumped(state, by, c),
        Command::TestLaser(c) => said::laser_test::test(state, c),
        Command::RunLevels(c) => said::turning::run(state, c),
        Command::AddBenchmark(c) => said::turning::add(state, c),
        Command::CompareSetUps(c) => said::turning::compare(state, c),
        Command::TakeReading(c) => said::reading::take(state, by, c, when),
        Command::LayMarks(c) => said::marks::lay(state, c, when),
        Command::CheckMarks(c) => said::marks::check(state, by, c),
        Command::ScrapeMarks(c) => said::marks::scrape(state, c),
        Command::TakeTies(c) => said::ties::take(state, c),
        Command::MeasureDiagonals(c) => said::diagonals::measure(state, c),
        Command::ReadEdge(c) => said::edge::read(state, by, c, when),
        Command::QuickCall(c) => said::quick_call::say(state, by, c, when),
        Command::WithdrawCall(c) => said::call::withdraw(state, c),
        Command::WrongNumber(c) => said::wrong_number::say(state, c),
        Command::DropUnsent(c) => said::drop_unsent::drop(c),
        Command::GotIt(c) => said::call::got(state, by, c),
        Command::SawNod(c) => said::call::saw_nod(state, by, c),
        Command::CheckMe(c) => said::call::check_me(state, by, c),
        Command::SayCant(c) => said::call::cant(state, by, c, when),
        Command::Delivered(c) => said::receipt::delivered(state, by, c),
        Command::Shown(c) => said::receipt::shown(state, by, c),
        Command::NoticeScreen(c) => Ok(said::receipt::notice(state, c)),
        Command::StopAll(c) => said::stop::stop_all(state, c),
        Command::LiftStop(c) => said::stop::lift(state, c, when),
        Command::SayStartCheck(c) => said::start_checks::say(state, c),
        Command::ReadyDay(c) => said::start_checks::ready(state, c),
        Command::AgreeSlew(c) => said::slew::agree(state, c),
        Command::SayAgreed(c) => said::slew::say_agreed(state, by, c),
        Command::BeSpotter(c) => said::spotter::be(state, by, c, when),
        Command::EndSpotter(c) => said::spotter::end(state, by, c, when),
        Command::LowBattery(c) => said::battery::low(state, by, c),
        Command::TellNearMiss(c) => said::near_miss::tell(state, c),
        Command::SetAim(c) => said::aim::set(state, c, when),
        Command::ChangeSite(c) => said::change::change(state, by, c),
        Command::ReviseTarget(c) => said::revise::revise(state, c),
        Command::ProveTarget(c) => said::prove::prove(state, by, c),
        Command::SeeTarget(c) => said::revise::see(state, by, c),
        Command::Rule(c) => said::rule::rule(state, by, c, when),
        Command::InspectFace(c) => said::face_inspect::inspect(state, by, c, when),
        Command::RetypeSoil(c) => said::face_design::retype(state, by, c),
        Command::ReviseFace(c) => said::face_design::revise(state, c),
        Command::SeeAtFace(c) => said::face_seen::see(state, c),
        Command::SayCameDown(c) => said::face_alarm::came_down(state, c),
        Command::SeeSlough(c) => said::face_seen::slough(state, c),
        Command::ReadPins(c) => said::face_pins::read(state, c, when),
        Command::LeaveFace(c) => said::face_alarm::leave(state, by, c, when),
        Command::CheckTicket(c) => said::ticket::check(state, c),
        Command::SayPaint(c) => said::ticket::say_paint(state, c, when),
        Command::SayStruck(c) => said::struck::say(state, by, c, now),
        Command::DigPothole(c) => said::pothole::dig(state, c),
        Command::AllowDig(c) => said::allow_dig::allow(state, c, when),
        Command::PlaceMachine(c) => said::machine::place(state, c, when),
        Command::StandHere(c) => said::stand::here(state, by, c, when),
        Command::SayMoved(c) => said::machine::moved(state, c, when),
        Command::CountLoad(c) => said::load::count(state, by, c),
        Command::AddTicket(c) => said::load::ticket(state, c),
        Command::TakeBackLoad(c) => said::load::take_back(state, c),
        Command::MeasureSoil(c) => said::load::measure(c),
        Command::OrderGravel(c) => said::gravel::order(state, c),
        Command::AddPatch(c) => said::patch::add(state, c),
        Command::MovePatch(c) => said::patch::go_on(state, c),
        Command::Compact(c) => said::compact::compact(state, c),
        Command::TestSoil(c) => said::soil_test::test(state, c),
        Command::VoidTest(c) => said::soil_test::void(state, c),
        Command::ConfirmUndercut(c) => said::undercut::confirm(state, c),
        Command::PointRock(c) => said::rock::point(state, c),
        Command::SetPrices(c) => said::prices::set(state, c),
        Command::SayWaiting(c) => said::waiting::wait(state, by, c),
        Command::WorkAgain(c) => said::waiting::again(state, by, c),
        Command::AskIn(c) => said::way_in::ask::ask(state, by, c),
        Command::WithdrawAsk(c) => said::way_in::ask::withdraw(state, by, c),
        Command::BucketDown(c) => said::way_in::answer::bucket_down(state, by, c, when),
        Command::SayWait(c) => said::way_in::answer::wait(state, by, c),
        Command::RefuseEntry(c) => said::way_in::answer::refuse(state, by, c),
        Command::GoIn(c) => said::way_in::enter::go_in(state, by, c),
        Command::ComeOut(c) => said::way_in::enter::come_out(state, by, c),
        Command::SeeOut(c) => said::way_in::enter::see_out(state, by, c),
        Command::OutByWitness(c) => said::way_in::enter::by_witness(state, by, c),
        Command::Release(c) => said::way_in::answer::release(state, by, c, when),
        Command::NoticeLink(c) => Ok(said::way_in::notice::link(state, c)),
        Command::NoticeRestart(c) => Ok(said::way_in::notice::restart(state, c)),
        _ => record::decide(state, asked, when, head),
    }
}

/// The next moment at which something ends by itself.
pub fn next_deadline(state: &State) -> Option<Time> {
    let ask = said::way_in::notice::next_deadline(state);
    if state.record.closed.is_some() {
        return ask;
    }
    let call = said::call::next_deadline(state);
    let check = said::check_due::next_deadline(state);
    [call, check, ask].into_iter().flatten().min()
}

/// What has ended by itself. On a closed day nobody is asked for a laser check any more.
pub fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    let mut bodies = Vec::new();
    if state.record.closed.is_none() {
        bodies.extend(said::call::on_deadline(state, now));
        bodies.extend(said::check_due::on_deadline(state, now));
    }
    bodies.extend(said::way_in::notice::on_deadline(state, now));
    bodies
}
