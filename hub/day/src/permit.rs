//! Who may say what: one table, from the commands to the roles that they ask for.

use crate::asked::{By, Command, Role};
use crate::refusal::Refusal;

/// The roles that may give a command; any one of them is enough.
#[expect(
    clippy::too_many_lines,
    reason = "one line for each thing that can be said"
)]
pub fn roles(command: &Command) -> &'static [Role] {
    use Role::{Ground, Hub, Operator, Supervisor, Visitor};
    match command {
        Command::OpenDay(_)
        | Command::ReadSite(_)
        | Command::Join(_)
        | Command::NoticeScreen(_)
        | Command::NoticeLink(_)
        | Command::NoticeRestart(_) => &[Hub],
        Command::ConfirmSite(_)
        | Command::RemovePhone(_)
        | Command::RenewCodes(_)
        | Command::SetCodesLast(_)
        | Command::ConfirmPerson(_)
        | Command::LetStay(_)
        | Command::LiftStop(_)
        | Command::TellNearMiss(_)
        | Command::AgreeSlew(_)
        | Command::ReadyDay(_)
        | Command::SetAim(_)
        | Command::ChangeSite(_)
        | Command::MeasureSoil(_)
        | Command::OrderGravel(_)
        | Command::ConfirmUndercut(_)
        | Command::SetPrices(_)
        | Command::ReviseTarget(_)
        | Command::AddBenchmark(_)
        | Command::ReviseFace(_)
        | Command::CheckTicket(_)
        | Command::AllowDig(_)
        | Command::Rule(_) => &[Supervisor],
        Command::SetUpLaser(_)
        | Command::RestateSetUp(_)
        | Command::LevelAgain(_)
        | Command::UseOneBenchmark(_)
        | Command::CloseSetUp(_)
        | Command::ShootCheck(_)
        | Command::TestLaser(_)
        | Command::RunLevels(_)
        | Command::CompareSetUps(_)
        | Command::TakeReading(_)
        | Command::AddPatch(_)
        | Command::MovePatch(_)
        | Command::Compact(_)
        | Command::TestSoil(_)
        | Command::VoidTest(_)
        | Command::PointRock(_)
        | Command::ProveTarget(_)
        | Command::LayMarks(_)
        | Command::CheckMarks(_)
        | Command::TakeTies(_)
        | Command::MeasureDiagonals(_)
        | Command::ReadEdge(_)
        | Command::QuickCall(_)
        | Command::WithdrawCall(_)
        | Command::WrongNumber(_)
        | Command::InspectFace(_)
        | Command::RetypeSoil(_)
        | Command::ReadPins(_)
        | Command::DigPothole(_)
        | Command::SawNod(_)
        | Command::SayStartCheck(_)
        | Command::BeSpotter(_)
        | Command::EndSpotter(_) => &[Ground, Supervisor],
        Command::SayBumped(_)
        | Command::CountLoad(_)
        | Command::AddTicket(_)
        | Command::TakeBackLoad(_)
        | Command::SayWaiting(_)
        | Command::WorkAgain(_)
        | Command::DropUnsent(_)
        | Command::ScrapeMarks(_)
        | Command::PlaceMachine(_)
        | Command::SeeAtFace(_)
        | Command::SeeSlough(_)
        | Command::SayCameDown(_)
        | Command::SayPaint(_)
        | Command::SayStruck(_)
        | Command::SayMoved(_)
        | Command::AskIn(_)
        | Command::WithdrawAsk(_)
        | Command::GoIn(_)
        | Command::ComeOut(_)
        | Command::SeeOut(_)
        | Command::OutByWitness(_) => &[Ground, Operator, Supervisor],
        Command::GotIt(_)
        | Command::CheckMe(_)
        | Command::SayCant(_)
        | Command::Delivered(_)
        | Command::Shown(_)
        | Command::LeaveFace(_)
        | Command::SayAgreed(_)
        | Command::LowBattery(_)
        | Command::StandHere(_)
        | Command::SeeTarget(_)
        | Command::BucketDown(_)
        | Command::SayWait(_)
        | Command::RefuseEntry(_)
        | Command::Release(_) => &[Operator],
        Command::GiveCab(_) => &[Operator, Supervisor],
        Command::ChangeScreen(_) | Command::StopAll(_) | Command::SayWho(_) => {
            &[Ground, Operator, Supervisor, Visitor]
        }
        other => of_the_record(other),
    }
}

/// The same of what belongs to the record. What stands in neither table nobody may give.
fn of_the_record(command: &Command) -> &'static [Role] {
    use Role::{Ground, Hub, Operator, Supervisor, Visitor};
    match command {
        Command::AddPhoto(_) | Command::MissHead(_) => &[Hub],
        Command::CloseDay(_)
        | Command::SignDay(_)
        | Command::AmendDay(_)
        | Command::ShowRuns(_)
        | Command::AskInspection(_)
        | Command::Inspect(_)
        | Command::GiveUpPhoto(_)
        | Command::AnswerQuery(_) => &[Supervisor],
        Command::AskQuery(_) => &[Ground, Supervisor],
        Command::AddNote(_) | Command::PromisePhoto(_) => &[Ground, Operator, Supervisor],
        Command::Visit(_) | Command::SignInspection(_) => &[Supervisor, Visitor],
        _ => &[],
    }
}

/// Refuses what none of the asker's roles allows.
///
/// # Errors
/// [`Refusal::NotAllowed`], naming who may.
pub fn check(by: &By, command: &Command) -> Result<(), Refusal> {
    let allowed = roles(command);
    if allowed.iter().any(|role| by.is(*role)) {
        return Ok(());
    }
    Err(Refusal::NotAllowed {
        roles: allowed.to_vec(),
        machine: None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::said::stop::StopAll;

    #[test]
    fn everybody_on_site_can_stop_everything_and_only_a_supervisor_lifts() {
        let stop = Command::StopAll(StopAll { why: String::new() });
        let lift = Command::LiftStop(crate::said::stop::LiftStop {
            machine: None,
            press: u64::MAX,
            why: String::new(),
        });
        for role in [
            Role::Ground,
            Role::Operator,
            Role::Supervisor,
            Role::Visitor,
        ] {
            assert!(roles(&stop).contains(&role), "{role:?}");
            assert_eq!(roles(&lift).contains(&role), role == Role::Supervisor);
        }
    }

    #[test]
    fn a_refusal_names_who_may() {
        let by = By {
            roles: vec![Role::Visitor],
            ..By::hub()
        };
        let check_me = Command::CheckMe(crate::said::call::CheckMe {});
        assert_eq!(
            check(&by, &check_me),
            Err(Refusal::NotAllowed {
                roles: vec![Role::Operator],
                machine: None
            })
        );
    }
}
