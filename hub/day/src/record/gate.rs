//! What is taken on a day that is closed: notes, what comes late, tests, queries, amendments, and what keeps people from harm.

use crate::asked::{Asked, Command};
use crate::refusal::Refusal;
use crate::state::State;
use crate::time::Time;

/// Refuses what would change a closed day.
///
/// # Errors
/// [`Refusal::DayIsClosed`], which says what may still be said.
pub(crate) fn pass(state: &State, asked: &Asked) -> Result<(), Refusal> {
    let Some(closed) = &state.record.closed else {
        return Ok(());
    };
    if goes_on(&asked.command) || late(&asked.command, asked.made_at, closed.at) {
        return Ok(());
    }
    Err(Refusal::DayIsClosed {
        signed: state.record.signed.is_some(),
    })
}

/// What a closed day takes. Whatever is added to the commands is refused until it stands here.
fn goes_on(command: &Command) -> bool {
    let of_the_record = matches!(
        command,
        Command::SignDay(_)
            | Command::AmendDay(_)
            | Command::AddNote(_)
            | Command::TellNearMiss(_)
            | Command::Visit(_)
            | Command::ShowRuns(_)
            | Command::AskInspection(_)
            | Command::Inspect(_)
            | Command::SignInspection(_)
            | Command::AskQuery(_)
            | Command::AnswerQuery(_)
            | Command::PromisePhoto(_)
            | Command::AddPhoto(_)
            | Command::GiveUpPhoto(_)
            | Command::TestSoil(_)
            | Command::VoidTest(_)
            | Command::AddTicket(_)
    );
    let of_the_hub = matches!(
        command,
        Command::OpenDay(_)
            | Command::ReadSite(_)
            | Command::Join(_)
            | Command::ChangeScreen(_)
            | Command::RemovePhone(_)
            | Command::RenewCodes(_)
            | Command::SetCodesLast(_)
            | Command::GiveCab(_)
            | Command::ConfirmPerson(_)
            | Command::LetStay(_)
            | Command::SayWho(_)
            | Command::NoticeScreen(_)
            | Command::NoticeLink(_)
            | Command::NoticeRestart(_)
            | Command::MissHead(_)
            | Command::Delivered(_)
            | Command::Shown(_)
    );
    of_the_record || of_the_hub || of_people(command)
}

/// A machine may still move after the close: stops and the way in are never refused for the hour.
fn of_people(command: &Command) -> bool {
    matches!(
        command,
        Command::StopAll(_)
            | Command::LiftStop(_)
            | Command::AskIn(_)
            | Command::WithdrawAsk(_)
            | Command::BucketDown(_)
            | Command::SayWait(_)
            | Command::RefuseEntry(_)
            | Command::GoIn(_)
            | Command::ComeOut(_)
            | Command::SeeOut(_)
            | Command::OutByWitness(_)
            | Command::Release(_)
            | Command::LeaveFace(_)
            | Command::SeeAtFace(_)
            | Command::SeeSlough(_)
    )
}

/// What was made before the close and comes now; none of it becomes a call.
fn late(command: &Command, made_at: Time, closed_at: Time) -> bool {
    let uploads = matches!(
        command,
        Command::TakeReading(_)
            | Command::CountLoad(_)
            | Command::TakeBackLoad(_)
            | Command::AddPatch(_)
            | Command::MovePatch(_)
            | Command::Compact(_)
            | Command::PointRock(_)
    );
    uploads && made_at <= closed_at
}
