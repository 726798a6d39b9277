//! Saying something: a command with the phone's own key; the same key again gets the same answer.

use actix_web::post;
use actix_web::web::{Data, Json};
use contract::ToSchema;
use day::answer::Answer;
use day::asked::{Asked, Command};
use day::time::Time;
use serde::Deserialize;

use super::auth::{Heard, OwnPage};
use super::problem::Problem;
use crate::hub::Hub;

/// The phone's key is at least this long, so that two never meet by chance.
const KEY_MIN: usize = 8;
/// And not longer than is good for the log.
const KEY_MAX: usize = 64;

/// One thing that is said.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Saying {
    /// The phone's own key for it, 8 to 64 letters, digits, `-`, `_`, `.` or `:`.
    #[schema(min_length = 8, max_length = 64)]
    pub key: String,
    /// When it was made, on the hub's clock as the phone knows it.
    pub made_at: Time,
    /// What is said.
    pub command: Command,
}

/// Says something. Kept on the phone and sent again until this has been answered. From a phone that was in on this day or the
/// day before and is out, STOP alone is taken.
#[contract::path(
    context_path = "/api",
    request_body = Saying,
    responses(
        (status = 200, body = Answer),
        (status = 400, body = Problem, description = "Malformed"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not allowed"),
        (status = 409, body = Problem, description = "Refused, with what to do instead"),
        (status = 413, body = Problem, description = "Too large"),
        (status = 429, body = Problem, description = "Too many at once: send it again"),
        (status = 503, body = Problem, description = "Busy or halted: send it again")
    )
)]
#[post("/say")]
pub(crate) async fn take_saying(
    hub: Data<Hub>,
    heard: Heard,
    _: OwnPage,
    saying: Json<Saying>,
) -> Result<Json<Answer>, Problem> {
    let Json(Saying {
        key,
        made_at,
        command,
    }) = saying;
    let by = heard.saying(&command)?;
    // ALL STOP is never made to wait.
    if !matches!(command, Command::StopAll(_)) && !hub.limits.requests.take(&by.device) {
        return Err(Problem::too_many());
    }
    checked_key(&key)?;
    let asked = Asked {
        key,
        by,
        made_at: made_at.min(hub.clock.now()),
        command,
    };
    Ok(Json(hub.writer.ask(asked).await?))
}

/// Refuses a key that is no key.
pub(super) fn checked_key(key: &str) -> Result<(), Problem> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.' | ':');
    if (KEY_MIN..=KEY_MAX).contains(&key.len()) && key.chars().all(plain) {
        return Ok(());
    }
    Err(Problem::malformed(
        "The key must be 8 to 64 letters, digits, hyphens, underscores, points or colons.",
    ))
}
