//! The next day on a hub that runs on: opened by a supervisor, who stays in.

use actix_web::web::Data;
use actix_web::{HttpResponse, post};
use day::asked::{By, Role};

use super::auth::{Known, OwnPage, cookie};
use super::join::{Claim, Me, let_in};
use super::problem::Problem;
use crate::hub::Hub;
use crate::{new_day, start, terminal};

/// Opens the next day. Every phone is out and joins anew, but for those of people who may be within a keep-out and the cab there,
/// which stay until out and released; the asker's is let in again by the cookie in the answer.
#[contract::path(
    context_path = "/api",
    responses(
        (status = 200, body = Me, description = "The day is open, with a cookie for it"),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 409, body = Problem, description = "This day is not closed yet"),
        (status = 503, body = Problem)
    )
)]
#[post("/day/next")]
pub(crate) async fn open_next_day(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
) -> Result<HttpResponse, Problem> {
    known.supervises()?;
    let now = hub.clock.now();
    let name = hub
        .writer
        .look(move |state| new_day::next(state, now))
        .await?;
    // The hub opens it, on that person's word.
    let by = By {
        roles: vec![Role::Hub],
        ..known.by().clone()
    };
    new_day::open(&hub, by, name).await?;
    // Whoever opened the day holds this phone: they are not asked who they are.
    let claim = Claim {
        same_person: true,
        handset: Some(known.by().device.clone()),
    };
    let (phone, token) = let_in(&hub, claim, known.phone.clone()).await?;
    terminal::welcome(&hub, &start::started(&hub));
    Ok(HttpResponse::Ok()
        .cookie(cookie(token))
        .json(Me::of(&hub, &phone)))
}
