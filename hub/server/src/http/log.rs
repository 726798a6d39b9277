//! The log for people: pages of it, single entries with their proof, a table, the whole as a file.

use actix_web::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use actix_web::web::{self, Data, Json, Path, Query};
use actix_web::{HttpResponse, HttpResponseBuilder, get, post};

use super::auth::Known;
use super::flow::flow;
use super::problem::Problem;
use crate::archive::{self, Restored};
use crate::export::{self, ExportError};
use crate::hub::Hub;
use crate::past::{LogEntry, LogPage, Past, Sought};

/// A page of the log.
#[contract::path(
    context_path = "/api",
    params(Sought),
    responses((status = 200, body = LogPage), (status = 401, body = Problem), (status = 403, body = Problem), (status = 503, body = Problem))
)]
#[get("/log")]
pub(crate) async fn log_page(
    hub: Data<Hub>,
    known: Known,
    sought: Query<Sought>,
) -> Result<Json<LogPage>, Problem> {
    known.of_the_crew()?;
    let head = hub.past.head().await;
    let page = read(&hub, move |past| past.page(&sought, head)).await??;
    Ok(Json(page))
}

/// One entry with its proof.
#[contract::path(
    context_path = "/api",
    params(("seq" = u64, Path, description = "The entry's number")),
    responses((status = 200, body = LogEntry), (status = 401, body = Problem), (status = 403, body = Problem), (status = 404, body = Problem))
)]
#[get("/log/{seq}")]
pub(crate) async fn log_entry(
    hub: Data<Hub>,
    known: Known,
    seq: Path<u64>,
) -> Result<Json<LogEntry>, Problem> {
    known.of_the_crew()?;
    let seq = *seq;
    hub.past.head().await;
    let found = read(&hub, move |past| past.entry(seq)).await??;
    let linked = found.ok_or_else(|| Problem::no_such_entry(seq))?;
    Ok(Json(LogEntry {
        entry: linked.entry,
        prev: linked.prev,
        hash: linked.hash,
    }))
}

/// The log as a table.
#[contract::path(
    context_path = "/api",
    responses((status = 200, body = String, content_type = "text/csv"), (status = 401, body = Problem), (status = 403, body = Problem))
)]
#[get("/log.csv")]
pub(crate) async fn log_table(hub: Data<Hub>, known: Known) -> Result<HttpResponse, Problem> {
    known.of_the_crew()?;
    // Spreadsheets take a table for UTF-8 by this mark.
    let mut bytes = "\u{feff}".as_bytes().to_vec();
    let bytes = read(&hub, move |past| {
        export::table(past.folder(), &mut bytes).map(|()| bytes)
    })
    .await?
    .map_err(of_export)?;
    Ok(download("text/csv; charset=utf-8", "log.csv", bytes))
}

/// The whole log as JSON Lines, its photos behind it: proves itself, and can be imported.
#[contract::path(
    context_path = "/api",
    responses(
        (status = 200, body = String, content_type = "application/jsonl"),
        (status = 401, body = Problem),
        (status = 403, body = Problem)
    )
)]
#[get("/export")]
pub(crate) async fn whole_log(hub: Data<Hub>, known: Known) -> Result<HttpResponse, Problem> {
    known.supervises()?;
    let folder = hub.past.folder().to_owned();
    let body = flow(move |out| export::export(&folder, out));
    Ok(attachment("application/jsonl", "log.jsonl").streaming(body))
}

/// Tries whether everything would come back: exported, taken into a scratch folder, proven there, every sheet compared.
#[contract::path(
    context_path = "/api",
    responses(
        (status = 200, body = Restored),
        (status = 401, body = Problem),
        (status = 403, body = Problem),
        (status = 503, body = Problem, description = "What did not come back")
    )
)]
#[post("/try-restore")]
pub(crate) async fn try_restore(hub: Data<Hub>, known: Known) -> Result<Json<Restored>, Problem> {
    known.supervises()?;
    let back = read(&hub, |past| archive::try_restore(past.folder())).await?;
    Ok(Json(back.map_err(|error| Problem::of_store(&error))?))
}

/// Reads away from the workers: the disk may take its time.
pub(super) async fn read<T: Send + 'static>(
    hub: &Hub,
    read: impl FnOnce(&Past) -> T + Send + 'static,
) -> Result<T, Problem> {
    let past = hub.past.clone();
    web::block(move || read(&past))
        .await
        .map_err(|error| Problem::of_store(&error))
}

#[expect(clippy::needless_pass_by_value, reason = "handed to map_err")]
fn of_export(error: ExportError) -> Problem {
    Problem::of_store(&error)
}

pub(super) fn download(kind: &str, name: &str, bytes: Vec<u8>) -> HttpResponse {
    attachment(kind, name).body(bytes)
}

fn attachment(kind: &str, name: &str) -> HttpResponseBuilder {
    let mut answer = HttpResponse::Ok();
    answer.insert_header((CONTENT_TYPE, kind)).insert_header((
        CONTENT_DISPOSITION,
        format!("attachment; filename=\"rodcall-{name}\""),
    ));
    answer
}
