//! Days that are over, and the one that runs: their review, any moment of them, who told whom, sheets and tables.

use actix_web::http::header::{CONTENT_SECURITY_POLICY, CONTENT_TYPE};
use actix_web::web::{Data, Json, Path, Query};
use actix_web::{HttpResponse, get};
use day::time::Time;
use show::review::moment::{Moment, moment};
use show::review::told::Told;
use show::review::{Review, review};
use words::Language;

use super::auth::Known;
use super::log::{download, read};
use super::problem::Problem;
use super::which::{WhichDay, WhichMoment, WhichSheet, WhoToldQuery};
use crate::days::{self, DayError, KeptDay};
use crate::hub::Hub;
use crate::report::tables::{self, Table};
use crate::report::{self, Kind};

/// A sheet brings its own style and photos and nothing else.
const SHEET_POLICY: &str =
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'none'";

/// Looks at a day away from the workers; only a supervisor looks back.
async fn look<T: Send + 'static>(
    hub: &Hub,
    known: &Known,
    day: Option<String>,
    see: impl FnOnce(&KeptDay) -> Option<T> + Send + 'static,
) -> Result<T, Problem> {
    known.supervises()?;
    let seen = read(hub, move |past| past.look(day.as_deref(), see)).await??;
    seen.ok_or_else(|| Problem::unavailable(words::problem::there_no_site_day()))
}

fn paper(text: String) -> HttpResponse {
    HttpResponse::Ok()
        .insert_header((CONTENT_TYPE, "text/html; charset=utf-8"))
        .insert_header((CONTENT_SECURITY_POLICY, SHEET_POLICY))
        .body(text)
}

/// The days of the log, oldest first.
#[contract::path(
    context_path = "/api",
    responses((status = 200, body = Vec<String>), (status = 401, body = Problem), (status = 403, body = Problem))
)]
#[get("/days")]
pub(crate) async fn day_names(hub: Data<Hub>, known: Known) -> Result<Json<Vec<String>>, Problem> {
    known.supervises()?;
    let names = read(&hub, |past| days::names(past.folder())).await??;
    Ok(Json(names))
}

/// A day afterwards.
#[contract::path(
    context_path = "/api",
    params(WhichDay),
    responses(
        (status = 200, body = Review),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 404, body = Problem, description = "No such day")
    )
)]
#[get("/review")]
pub(crate) async fn review_of_day(
    hub: Data<Hub>,
    known: Known,
    which: Query<WhichDay>,
) -> Result<Json<Review>, Problem> {
    let day = which.into_inner().day;
    look(&hub, &known, day, |day| review(&day.folded()))
        .await
        .map(Json)
}

/// What every screen showed at a moment, from the log alone.
#[contract::path(
    context_path = "/api",
    params(WhichMoment),
    responses(
        (status = 200, body = Moment),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 404, body = Problem, description = "No such day or entry")
    )
)]
#[get("/replay")]
pub(crate) async fn replay(
    hub: Data<Hub>,
    known: Known,
    which: Query<WhichMoment>,
) -> Result<Json<Moment>, Problem> {
    let WhichMoment { day, seq, at } = which.into_inner();
    let seen = look(&hub, &known, day, move |day| {
        let seq = match (seq, at) {
            (Some(seq), _) => seq,
            (None, Some(at)) => day.seq_at(Time(at)),
            (None, None) => day.head().seq,
        };
        let shown = day.at(seq).map(|(entry, state)| moment(&state, entry));
        Some(shown.ok_or(seq))
    })
    .await?;
    seen.map(Json).map_err(Problem::no_such_entry)
}

/// Who told a machine to dig near a place, on each day that the question touches.
#[contract::path(
    context_path = "/api",
    params(WhoToldQuery),
    responses(
        (status = 200, body = Told),
        (status = 401, body = Problem),
        (status = 403, body = Problem)
    )
)]
#[get("/who-told")]
pub(crate) async fn who_told(
    hub: Data<Hub>,
    known: Known,
    query: Query<WhoToldQuery>,
) -> Result<Json<Told>, Problem> {
    known.supervises()?;
    let asked = query.asked();
    let (told, _) = read(&hub, move |past| past.told(&asked)).await??;
    Ok(Json(told))
}

/// The same as a sheet that prints.
#[contract::path(
    context_path = "/api",
    params(WhoToldQuery),
    responses(
        (status = 200, body = String, content_type = "text/html"),
        (status = 401, body = Problem),
        (status = 403, body = Problem)
    )
)]
#[get("/report/who-told")]
pub(crate) async fn who_told_sheet(
    hub: Data<Hub>,
    known: Known,
    query: Query<WhoToldQuery>,
) -> Result<HttpResponse, Problem> {
    known.supervises()?;
    let (asked, language) = (query.asked(), query.language.unwrap_or(Language::English));
    let photos = hub.photos.clone();
    let sheet = read(&hub, move |past| {
        let (told, head) = past.told(&asked)?;
        Ok::<_, DayError>(report::who_told(&told, head, photos, language))
    });
    sheet.await?.map(paper).map_err(Problem::from)
}

/// A sheet that prints: the day, as built, or each run for the next crew.
#[contract::path(
    context_path = "/api",
    params(("kind" = inline(Kind), Path, description = "Which sheet"), WhichSheet),
    responses(
        (status = 200, body = String, content_type = "text/html"),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 404, body = Problem, description = "No such day or sheet")
    )
)]
#[get("/report/{kind}")]
pub(crate) async fn report_sheet(
    hub: Data<Hub>,
    known: Known,
    kind: Path<Kind>,
    which: Query<WhichSheet>,
) -> Result<HttpResponse, Problem> {
    let (kind, which) = (kind.into_inner(), which.into_inner());
    let language = which.language.unwrap_or(Language::English);
    let text = look(&hub, &known, which.day, move |day| {
        report::sheet(day, kind, language)
    });
    text.await.map(paper)
}

/// A day as a table, or its as-built points as `LandXML`.
#[contract::path(
    context_path = "/api",
    params(("name" = Table, Path, description = "The name of its file"), WhichDay),
    responses(
        (status = 200, body = String, content_type = "text/csv"),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 404, body = Problem, description = "No such day or table")
    )
)]
#[get("/table/{name}")]
pub(crate) async fn day_table(
    hub: Data<Hub>,
    known: Known,
    name: Path<String>,
    which: Query<WhichDay>,
) -> Result<HttpResponse, Problem> {
    known.supervises()?;
    let table = Table::named(&name).ok_or_else(Problem::no_such_page)?;
    let day = which.into_inner().day;
    let text = look(&hub, &known, day, move |day| tables::file(day, table)).await?;
    let kind = table.content_type();
    // Spreadsheets take a table for UTF-8 by this mark.
    let mark: &[u8] = if kind.starts_with("text/csv") {
        b"\xef\xbb\xbf"
    } else {
        b""
    };
    Ok(download(
        kind,
        &table.name(),
        [mark, text.as_bytes()].concat(),
    ))
}
