//! The one page and its files, and the hub's own health.

use actix_web::http::Method;
use actix_web::http::header::{
    ACCEPT_ENCODING, CACHE_CONTROL, CONTENT_ENCODING, CONTENT_SECURITY_POLICY, CONTENT_TYPE, ETAG,
    HOST, IF_NONE_MATCH, VARY, X_FRAME_OPTIONS,
};
use actix_web::web::Data;
use actix_web::{HttpRequest, HttpResponse, get};
use contract::ToSchema;
use serde::Serialize;
use web_ui::Asset;

use super::problem::Problem;
use crate::hub::Hub;

/// Kept by phones for a week: so the page opens while the hub is away.
const PAGE_LIFE: &str = "max-age=604800";
/// A file whose name changes with its bytes is kept for good.
const FILE_LIFE: &str = "max-age=31536000, immutable";

/// Whether the hub is up.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Health {
    /// True while calls are taken.
    pub ok: bool,
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// The last entry of the log.
    pub head: u64,
    /// True when nothing is kept any more.
    pub halted: bool,
    /// What to do, when something is wrong.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub what_to_do: Option<String>,
}

/// Whether the hub is up; for everyone.
#[contract::path(
    responses(
        (status = 200, body = Health),
        (status = 503, body = Health, description = "Nothing is kept any more: start the hub again")
    )
)]
#[get("/healthz")]
pub(crate) async fn healthz(hub: Data<Hub>) -> HttpResponse {
    let board = hub.publish.known();
    let pulse = hub.publish.pulse();
    let halted = pulse.halted.is_some();
    let health = Health {
        ok: !halted,
        site: board.site.clone(),
        day: board.day.clone(),
        head: pulse.head,
        halted,
        what_to_do: pulse.halted.map(|_| {
            "The log can't be written. Free space on the disk or free the folder, then start the hub again.".to_owned()
        }),
    };
    if halted {
        HttpResponse::ServiceUnavailable().json(health)
    } else {
        HttpResponse::Ok().json(health)
    }
}

/// A file of the pages, or the page itself for every other path: it chooses by role what it shows.
///
/// # Errors
/// [`Problem`] for a file that is not there, and for anything but reading.
pub async fn page(request: HttpRequest) -> Result<HttpResponse, Problem> {
    if ![Method::GET, Method::HEAD].contains(request.method()) {
        return Err(Problem::no_such_page());
    }
    let path = request.path();
    let asset = match web_ui::asset(path) {
        Some(asset) => asset,
        None if path.starts_with("/assets/") => return Err(Problem::no_such_page()),
        None => web_ui::index().ok_or_else(Problem::no_such_page)?,
    };
    Ok(serve(&request, asset))
}

fn serve(request: &HttpRequest, asset: Asset) -> HttpResponse {
    let header = |name| {
        let value = request.headers().get(name);
        value
            .and_then(|value| value.to_str().ok())
            .unwrap_or_default()
    };
    let life = if asset.immutable {
        FILE_LIFE
    } else {
        PAGE_LIFE
    };
    // The review paints screens of the day in frames of its own; nobody else may frame a page.
    let framed = request.path().starts_with("/replayed/");
    let known = header(IF_NONE_MATCH).contains(&asset.etag);
    let mut answer = if known {
        HttpResponse::NotModified()
    } else {
        HttpResponse::Ok()
    };
    answer
        .insert_header((ETAG, asset.etag))
        .insert_header((CACHE_CONTROL, life))
        .insert_header((VARY, "Accept-Encoding"))
        .insert_header((CONTENT_TYPE, asset.content_type))
        .insert_header((CONTENT_SECURITY_POLICY, policy(header(HOST), framed)));
    if framed {
        answer.insert_header((X_FRAME_OPTIONS, "SAMEORIGIN"));
    }
    match asset.gzip {
        _ if known => answer.finish(),
        Some(gzip) if header(ACCEPT_ENCODING).contains("gzip") => answer
            .insert_header((CONTENT_ENCODING, "gzip"))
            .body(gzip.into_owned()),
        _ => answer.body(asset.bytes.into_owned()),
    }
}

/// What the page may load: its own files alone. Older browsers do not take `'self'` for the socket too, so it is named.
fn policy(host: &str, framed: bool) -> String {
    let by = if framed { "'self'" } else { "'none'" };
    let plain = host
        .chars()
        .all(|c| c.is_ascii_alphanumeric() || matches!(c, '.' | ':' | '-' | '[' | ']'));
    let socket = if plain && !host.is_empty() {
        format!(" ws://{host}")
    } else {
        String::new()
    };
    format!(
        "default-src 'self'; img-src 'self' data: blob:; media-src 'self' data: blob: mediastream:; connect-src 'self'{socket}; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors {by}"
    )
}
