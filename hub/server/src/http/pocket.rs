//! The sheet of rod readings, for printing: the paper that works when everything electric has died.

use actix_web::get;
use actix_web::web::{Data, Json};
use day::asked::Role;
use show::views::pocket::{self, Pocket};

use super::auth::Known;
use super::problem::Problem;
use crate::hub::Hub;

/// What the rod must read at every mark, from each set-up that stands; for the ground and the supervisor.
#[contract::path(
    context_path = "/api",
    responses(
        (status = 200, body = Pocket),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not allowed"),
        (status = 503, body = Problem, description = "No day is open, or the hub is closing")
    )
)]
#[get("/pocket-sheet")]
pub(crate) async fn pocket_sheet(hub: Data<Hub>, known: Known) -> Result<Json<Pocket>, Problem> {
    let may = [Role::Ground, Role::Supervisor];
    if !may.iter().any(|role| known.by().is(*role)) {
        return Err(Problem::not_allowed(&may));
    }
    let sheet = hub.writer.look(pocket::view).await?;
    sheet
        .map(Json)
        .ok_or_else(|| Problem::unavailable(words::problem::there_no_site_or_no()))
}
