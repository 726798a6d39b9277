//! What a file would give, shown before anybody uses it. Nothing is changed; the newest few files are kept in memory, so that
//! a target's surface can come from one by its name.

use actix_web::post;
use actix_web::web::{Bytes, Data, Json, Query, block};
use day::site::Frame as SiteFrame;
use earthwork::site_frame::PlanUnit;

use super::auth::{Known, OwnPage};
use super::problem::Problem;
use crate::hub::Hub;
use crate::import::Frame;
use crate::import::preview::{HowToRead, ImportPreview, Known as KnownSite, preview};

/// A phone's file is no larger than this; a larger one goes beside the site file.
pub(super) const LARGEST_UPLOAD: usize = 32 * 1024 * 1024;

/// What a table of points or a `LandXML` file would give on this site, with what was not understood.
#[contract::path(
    context_path = "/api/import",
    params(HowToRead),
    request_body(content = String, content_type = "text/plain"),
    responses(
        (status = 200, body = ImportPreview),
        (status = 400, body = Problem, description = "Not a text, or too large"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "Not a supervisor"),
        (status = 429, body = Problem, description = "Too many at once: send it again")
    )
)]
#[post("/preview")]
pub(crate) async fn import_preview(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    how: Query<HowToRead>,
    file: Bytes,
) -> Result<Json<ImportPreview>, Problem> {
    known.supervises()?;
    if !hub.limits.requests.take(&known.by().device) {
        return Err(Problem::too_many());
    }
    let text = std::str::from_utf8(&file)
        .map(str::to_owned)
        .map_err(|error| {
            let two_bytes = file.starts_with(&[0xff, 0xfe]) || file.starts_with(&[0xfe, 0xff]);
            Problem::malformed(&if two_bytes {
                "The file is UTF-16 text. Save it anew as CSV or LandXML in UTF-8.".to_owned()
            } else {
                format!(
                    "The file is not UTF-8 text from byte {} on. Export it as CSV or LandXML in UTF-8.",
                    error.valid_up_to()
                )
            })
        })?;
    if let Some(name) = how.name.as_deref().filter(|name| !name.trim().is_empty()) {
        hub.desk.keep(name.trim(), &text);
    }
    let board = hub.publish.known();
    let frame = frame(board.frame.as_ref(), &how)?;
    let known = KnownSite {
        lot: board.lot.clone(),
        pins: board.frame.iter().flat_map(SiteFrame::named).collect(),
    };
    let surface = how.surface.clone();
    let seen = block(move || preview(&text, surface.as_deref(), &frame, &known)).await;
    seen.map(Json).map_err(|_stopping| Problem::stopping())
}

fn frame(site: Option<&SiteFrame>, how: &HowToRead) -> Result<Frame, Problem> {
    let unit = how
        .unit
        .or(site.map(|frame| frame.unit))
        .unwrap_or(PlanUnit::Foot);
    if !how.on_plan.unwrap_or(false) {
        return Ok(Frame::new(unit));
    }
    let Some(site) = site else {
        return Err(Problem::malformed(
            "The file's coordinates are the plan's, but the site has no frame. Add [frame] to the site file first.",
        ));
    };
    let made = site.made().and_then(|made| Ok((made, site.origin()?)));
    let (made, origin) = made.map_err(|error| Problem::malformed(&error.to_string()))?;
    Ok(Frame::on(made, unit, origin))
}
