//! What goes wrong, as the phone reads it: one shape for all, and the status for each, in one match.

use std::fmt;

use actix_web::error::JsonPayloadError;
use actix_web::http::StatusCode;
use actix_web::{HttpResponse, ResponseError};
use contract::ToSchema;
use day::asked::Role;
use day::refusal::Refusal;
use serde::Serialize;
use words::Text;

use crate::days::DayError;
use crate::jpeg::NotAPhoto;
use crate::store::StoreError;
use crate::store::photos::PhotoError;
use crate::writer::NotDone;

/// Why a request came to nothing, and what to do.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Problem {
    /// The day's own refusal, where it is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refusal: Option<Box<Refusal>>,
    /// Why, and what to do.
    #[serde(flatten)]
    pub text: Text,
    #[serde(skip)]
    status: StatusCode,
}

impl Problem {
    fn new(status: StatusCode, text: impl Into<Text>) -> Self {
        Self {
            refusal: None,
            text: text.into(),
            status,
        }
    }

    /// The request can't be read: a fault of the page, told to whoever writes it.
    pub fn malformed(why: &str) -> Self {
        Self::new(StatusCode::BAD_REQUEST, words::problem::malformed(&why))
    }

    /// A value that can't be read.
    pub fn unreadable(text: Text) -> Self {
        Self::new(StatusCode::BAD_REQUEST, text)
    }

    /// The hub closes in the middle of a request.
    pub fn stopping() -> Self {
        Self::unavailable(words::problem::the_hub_is_stopping())
    }

    /// The body can't be read.
    pub fn of_json(error: &JsonPayloadError) -> Self {
        match error {
            JsonPayloadError::Overflow { .. } | JsonPayloadError::OverflowKnownLength { .. } => {
                Self::new(
                    StatusCode::PAYLOAD_TOO_LARGE,
                    words::problem::that_is_too_large(),
                )
            }
            error => Self::malformed(&format!("The request is malformed: {error}.")),
        }
    }

    /// No phone that is in.
    pub fn unknown_phone() -> Self {
        Self::new(
            StatusCode::UNAUTHORIZED,
            words::problem::this_phone_is_not_in(),
        )
    }

    /// A role that is missing.
    pub fn not_allowed(roles: &[Role]) -> Self {
        Refusal::NotAllowed {
            roles: roles.to_vec(),
            machine: None,
        }
        .into()
    }

    /// A page of another site wants to speak for this phone.
    pub fn other_origin() -> Self {
        Self::new(
            StatusCode::FORBIDDEN,
            words::problem::this_request_comes_from_another(),
        )
    }

    /// A code that opens nothing.
    pub fn void_code() -> Self {
        Self::new(StatusCode::NOT_FOUND, words::problem::that_code_is_void())
    }

    /// Too many tries.
    pub fn too_many() -> Self {
        Self::new(
            StatusCode::TOO_MANY_REQUESTS,
            words::problem::too_many_tries(),
        )
    }

    /// Something large that did not come in time.
    pub fn too_slow() -> Self {
        Self::new(
            StatusCode::REQUEST_TIMEOUT,
            words::problem::came_too_slowly_dropped(),
        )
    }

    /// Nothing there.
    pub fn no_such_page() -> Self {
        Self::new(
            StatusCode::NOT_FOUND,
            words::problem::there_nothing_this_address(),
        )
    }

    /// An entry that is not there.
    pub fn no_such_entry(seq: u64) -> Self {
        Self::new(
            StatusCode::NOT_FOUND,
            words::problem::the_log_has_no_entry(&seq),
        )
    }

    /// The hub can't just now.
    pub fn unavailable(text: impl Into<Text>) -> Self {
        Self::new(StatusCode::SERVICE_UNAVAILABLE, text)
    }

    /// An error of the hub's own: the terminal has the whole of it.
    pub fn of_store(error: &dyn fmt::Display) -> Self {
        tracing::error!("{error}");
        Self::unavailable(words::problem::log_cant_read_just_now())
    }
}

impl From<Refusal> for Problem {
    fn from(refusal: Refusal) -> Self {
        let status = match &refusal {
            Refusal::NotAllowed { .. } => StatusCode::FORBIDDEN,
            _ => StatusCode::CONFLICT,
        };
        Self {
            text: refusal.text(),
            refusal: Some(Box::new(refusal)),
            status,
        }
    }
}

impl From<NotDone> for Problem {
    fn from(not_done: NotDone) -> Self {
        match not_done {
            NotDone::Refused(refusal) => refusal.into(),
            NotDone::StopNotKept | NotDone::NotKept | NotDone::Busy | NotDone::Closing => {
                Self::unavailable(not_done.text())
            }
        }
    }
}

impl From<DayError> for Problem {
    fn from(error: DayError) -> Self {
        match error {
            DayError::NoSuchDay { day, known } => Self::new(
                StatusCode::NOT_FOUND,
                words::problem::the_log_has_no_day(&day, &known),
            ),
            DayError::Store(_) | DayError::Nothing(_) => Self::of_store(&error),
        }
    }
}

impl From<StoreError> for Problem {
    fn from(error: StoreError) -> Self {
        Self::of_store(&error)
    }
}

impl From<NotAPhoto> for Problem {
    fn from(error: NotAPhoto) -> Self {
        let status = match &error {
            NotAPhoto::TooLarge => StatusCode::PAYLOAD_TOO_LARGE,
            NotAPhoto::NotJpeg => StatusCode::UNSUPPORTED_MEDIA_TYPE,
            NotAPhoto::Broken(_) | NotAPhoto::TellsMore(..) | NotAPhoto::TooWide { .. } => {
                StatusCode::UNPROCESSABLE_ENTITY
            }
        };
        Self::new(status, error.text())
    }
}

impl From<PhotoError> for Problem {
    fn from(error: PhotoError) -> Self {
        tracing::error!("{error}");
        match error {
            PhotoError::NoRoom => Self::new(
                StatusCode::INSUFFICIENT_STORAGE,
                words::problem::no_room_for_photo(),
            ),
            PhotoError::Missing { .. } | PhotoError::Touched { .. } => Self::new(
                StatusCode::GONE,
                words::problem::file_this_photo_missing_or(),
            ),
            PhotoError::File { .. } | PhotoError::Folder(_) => {
                Self::unavailable(words::problem::photo_cant_kept_or_read())
            }
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.text.english)
    }
}

impl ResponseError for Problem {
    fn status_code(&self) -> StatusCode {
        self.status
    }

    fn error_response(&self) -> HttpResponse {
        HttpResponse::build(self.status).json(self)
    }
}
