//! Photos: their bytes come from the phone that promised them, or from any other of the crew that has the same bytes; and go
//! to whoever may see them.

use std::time::Duration;

use actix_web::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use actix_web::web::{Data, Json, Path, Payload, block};
use actix_web::{HttpResponse, get, put};
use day::answer::Answer;
use day::asked::{Asked, By, Command};
use day::chain::digest;
use day::said::photo::{self, AddPhoto};
use futures_util::StreamExt as _;
use show::views::record;

use super::auth::{Known, OwnPage};
use super::problem::Problem;
use crate::hub::Hub;
use crate::jpeg::{self, NotAPhoto};

/// A photo takes no longer on its way over the weakest link that still carries one.
const PATIENCE: Duration = Duration::from_mins(2);
/// What a hash names never changes; a phone keeps it for itself alone.
const LIFE: &str = "private, max-age=31536000, immutable";

/// Brings the bytes of a photo that was promised by `promise_photo`. The same again is answered in the same way.
#[contract::path(
    context_path = "/api",
    params(("photo" = String, Path, description = "The phone's name for it, as promised")),
    request_body(content = Vec<u8>, content_type = "image/jpeg"),
    responses(
        (status = 200, body = Answer),
        (status = 401, body = Problem, description = "Not in"),
        (status = 403, body = Problem, description = "A visitor"),
        (status = 408, body = Problem, description = "It came too slowly: send it again"),
        (status = 409, body = Problem, description = "Not promised, or other bytes than those that were promised"),
        (status = 413, body = Problem, description = "Too large"),
        (status = 415, body = Problem, description = "No JPEG picture"),
        (status = 422, body = Problem, description = "Not whole, too many dots, or it carries more than the picture"),
        (status = 429, body = Problem, description = "Too many at once: send it again"),
        (status = 503, body = Problem, description = "Busy or halted: send it again"),
        (status = 507, body = Problem, description = "The disk is all but full: send it again later")
    )
)]
#[put("/photos/{photo}")]
pub(crate) async fn bring_photo(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    photo: Path<String>,
    payload: Payload,
) -> Result<Json<Answer>, Problem> {
    known.of_the_crew()?;
    if !hub.limits.requests.take(&known.by().device) {
        return Err(Problem::too_many());
    }
    let turn = hub.limits.uploads.try_acquire();
    let _turn = turn.map_err(|_others_first| Problem::too_many())?;
    let body = tokio::time::timeout(PATIENCE, whole(payload)).await;
    let bytes = body.map_err(|_elapsed| Problem::too_slow())??;
    let (sha256, bytes) = away(move || (digest(&bytes), bytes)).await?;
    let add = AddPhoto {
        photo: photo.into_inner(),
        bytes: bytes.len() as u64,
        sha256,
    };
    // What nobody promised never touches the disk.
    let asked = add.clone();
    let wanted = hub.writer.look(move |state| photo::wants(state, &asked));
    if wanted.await?? {
        let (photos, sha256) = (hub.photos.clone(), add.sha256.clone());
        away(move || {
            jpeg::check(&bytes)?;
            photos.keep(&sha256, &bytes).map_err(Problem::from)
        })
        .await??;
    }
    let asked = Asked {
        key: String::new(),
        by: By::hub(),
        made_at: hub.clock.now(),
        command: Command::AddPhoto(add),
    };
    Ok(Json(hub.writer.ask(asked).await?))
}

/// The whole body, with a bound.
async fn whole(mut payload: Payload) -> Result<Vec<u8>, Problem> {
    let mut bytes = Vec::new();
    while let Some(piece) = payload.next().await {
        let piece = piece.map_err(|error| {
            Problem::malformed(&format!("The photo broke off on its way ({error})."))
        })?;
        if bytes.len() + piece.len() > jpeg::LARGEST {
            return Err(NotAPhoto::TooLarge.into());
        }
        bytes.extend_from_slice(&piece);
    }
    Ok(bytes)
}

/// Works away from the workers, which answer the crew meanwhile.
async fn away<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> Result<T, Problem> {
    block(work).await.map_err(|_stopping| Problem::stopping())
}

/// A photo, by the hash of its bytes. The crew sees all, a visitor those of the runs that were chosen for them.
#[contract::path(
    context_path = "/api",
    params(("sha256" = String, Path, description = "SHA-256 of its bytes, in lower-case hex")),
    responses(
        (status = 200, body = Vec<u8>, content_type = "image/jpeg"),
        (status = 401, body = Problem, description = "Not in"),
        (status = 404, body = Problem, description = "The log names no such photo, or not for this visitor"),
        (status = 410, body = Problem, description = "Its file is missing or was touched")
    )
)]
#[get("/photos/{sha256}")]
pub(crate) async fn photo_file(
    hub: Data<Hub>,
    known: Known,
    sha256: Path<String>,
) -> Result<HttpResponse, Problem> {
    let sha256 = sha256.into_inner();
    let (by, asked) = (known.by().clone(), sha256.clone());
    let seen = hub
        .writer
        .look(move |state| record::may_see_photo(state, &by, &asked));
    if !seen.await? {
        return Err(Problem::no_such_page());
    }
    let photos = hub.photos.clone();
    let bytes = away(move || photos.read(&sha256)).await??;
    Ok(HttpResponse::Ok()
        .insert_header((CONTENT_TYPE, "image/jpeg"))
        .insert_header((CACHE_CONTROL, LIFE))
        .body(bytes))
}
