//! The site, changed on a page: its form, what a draft would do, and the change itself.

use actix_web::web::{Data, Json, Path, block};
use actix_web::{HttpResponse, get, post};
use contract::ToSchema;
use day::answer::Answer;
use day::asked::{Asked, Command};
use day::said::change::{ChangeSite, Retired, SiteThing, WouldChange, would};
use day::site::Site;
use day::time::Time;
use serde::{Deserialize, Serialize};

use super::auth::{Known, OwnPage};
use super::problem::Problem;
use super::say::checked_key;
use crate::hub::Hub;
use crate::site_export;
use crate::site_file::{self, Draft, DraftFault, Form, Written};

/// A change may bring a whole table of marks.
pub(super) const LARGEST_CHANGE: usize = 2 * 1024 * 1024;

/// The site as forms take it.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SiteSheet {
    /// The form of each kind of thing.
    forms: Vec<Form>,
    /// What is written now, by the forms' keys.
    #[schema(value_type = Object)]
    written: Written,
}

/// Things as they are typed, and things that are to go.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SiteDraft {
    /// What is added or takes the place of what is.
    put: Vec<Draft>,
    /// What goes.
    retire: Vec<Retired>,
}

/// What a draft comes to.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SiteDrafted {
    /// What is wrong or odd, each with its field.
    faults: Vec<DraftFault>,
    /// What it would do; none while something can't be read.
    would: Option<WouldChange>,
}

/// A draft put in force.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SiteSaying {
    /// The phone's own key for it, as for everything that is said.
    #[schema(min_length = 8, max_length = 64)]
    key: String,
    /// When it was made, on the hub's clock as the phone knows it.
    made_at: Time,
    /// What is typed.
    draft: SiteDraft,
    /// Why, and on whose word.
    why: String,
    /// The digest of the differences as they were shown.
    seen: String,
}

/// The forms of a site, and what is written in them now.
#[contract::path(
    context_path = "/api/site",
    responses(
        (status = 200, body = SiteSheet),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not a supervisor"),
        (status = 503, body = Problem, description = "No site, or the hub is closing")
    )
)]
#[get("/form")]
pub(crate) async fn site_form(hub: Data<Hub>, known: Known) -> Result<Json<SiteSheet>, Problem> {
    known.supervises()?;
    let site = site_now(&hub).await?;
    Ok(Json(SiteSheet {
        forms: site_file::form(),
        written: Written::Table(site_file::written(&site)),
    }))
}

/// What a draft would do: its faults beside their fields, what differs, what it touches. Nothing is changed.
#[contract::path(
    context_path = "/api/site",
    request_body = SiteDraft,
    responses(
        (status = 200, body = SiteDrafted),
        (status = 400, body = Problem, description = "Malformed"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not a supervisor"),
        (status = 409, body = Problem, description = "Refused, with what to do instead"),
        (status = 413, body = Problem, description = "Too large"),
        (status = 429, body = Problem, description = "Too many at once: send it again"),
        (status = 503, body = Problem, description = "No site, or the hub is closing")
    )
)]
#[post("/draft")]
pub(crate) async fn site_draft(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    draft: Json<SiteDraft>,
) -> Result<Json<SiteDrafted>, Problem> {
    known.supervises()?;
    if !hub.limits.requests.take(&known.by().device) {
        return Err(Problem::too_many());
    }
    let SiteDraft { put, retire } = draft.into_inner();
    let (put, read) = read(&hub, put).await?;
    let things = match read {
        Ok(things) => things,
        Err(faults) => {
            return Ok(Json(SiteDrafted {
                faults,
                would: None,
            }));
        }
    };
    let by = known.by().clone();
    let change = ChangeSite {
        put: things,
        retire,
        why: String::new(),
        seen: None,
    };
    let would = hub
        .writer
        .look(move |state| would(state, &by, &change))
        .await?;
    let would = would.map_err(crate::writer::NotDone::from)?.for_screens();
    let faults = would.faults.iter().map(|fault| DraftFault::of(fault, &put));
    Ok(Json(SiteDrafted {
        faults: faults.collect(),
        would: Some(would),
    }))
}

/// Puts a draft in force, with its reason. The same key again gets the same answer.
#[contract::path(
    context_path = "/api/site",
    request_body = SiteSaying,
    responses(
        (status = 200, body = Answer),
        (status = 400, body = Problem, description = "Malformed, or a field that can't be read"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not a supervisor"),
        (status = 409, body = Problem, description = "Refused, with what to do instead"),
        (status = 413, body = Problem, description = "Too large"),
        (status = 429, body = Problem, description = "Too many at once: send it again"),
        (status = 503, body = Problem, description = "Busy or halted: send it again")
    )
)]
#[post("/change")]
pub(crate) async fn site_change(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    saying: Json<SiteSaying>,
) -> Result<Json<Answer>, Problem> {
    known.supervises()?;
    if !hub.limits.requests.take(&known.by().device) {
        return Err(Problem::too_many());
    }
    let SiteSaying {
        key,
        made_at,
        draft,
        why,
        seen,
    } = saying.into_inner();
    checked_key(&key)?;
    let (_, read) = read(&hub, draft.put).await?;
    let put = read.map_err(|faults| {
        let first = faults.into_iter().next();
        first.map_or_else(
            || Problem::malformed("The draft can't be read."),
            |fault| Problem::unreadable(fault.text),
        )
    })?;
    let asked = Asked {
        key,
        by: known.by().clone(),
        made_at: made_at.min(hub.clock.now()),
        command: Command::ChangeSite(ChangeSite {
            put,
            retire: draft.retire,
            why,
            seen: Some(seen),
        }),
    };
    Ok(Json(hub.writer.ask(asked).await?))
}

/// One of the site's files: `site.toml`, `surfaces.xml`, `marks.csv`. Read again, they give the same site.
#[contract::path(
    context_path = "/api/site",
    params(("name" = String, Path, description = "The file's name")),
    responses(
        (status = 200, body = String, content_type = "text/plain"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not a supervisor"),
        (status = 404, body = Problem, description = "No such file"),
        (status = 503, body = Problem, description = "No site, or the hub is closing")
    )
)]
#[get("/file/{name}")]
pub(crate) async fn site_export_file(
    hub: Data<Hub>,
    known: Known,
    name: Path<String>,
) -> Result<HttpResponse, Problem> {
    known.supervises()?;
    let site = site_now(&hub).await?;
    let name = name.into_inner();
    let text = block(move || site_export::file(&site, &name).map(|text| (name, text))).await;
    let (name, text) = text
        .map_err(|_stopping| Problem::stopping())?
        .ok_or_else(Problem::no_such_page)?;
    Ok(HttpResponse::Ok()
        .content_type("text/plain; charset=utf-8")
        .insert_header((
            "Content-Disposition",
            format!("attachment; filename=\"{name}\""),
        ))
        .body(text))
}

/// The site in force, as one value of its own.
pub(super) async fn site_now(hub: &Hub) -> Result<Site, Problem> {
    let site = hub.writer.look(|state| state.site().cloned()).await?;
    site.ok_or_else(|| Problem::unavailable(words::problem::there_is_no_site_yet()))
}

type Things = Result<Vec<SiteThing>, Vec<DraftFault>>;

/// Reads drafts beside the site in force; a large file may take a while, so not on a thread that answers others.
async fn read(hub: &Hub, put: Vec<Draft>) -> Result<(Vec<Draft>, Things), Problem> {
    let site = site_now(hub).await?;
    let desk = hub.desk.clone();
    let read = block(move || {
        let things = site_file::read_draft(&put, &site, &|name| desk.text(name));
        (put, things)
    });
    read.await.map_err(|_stopping| Problem::stopping())
}
