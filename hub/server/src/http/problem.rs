//! What goes wrong, as the phone reads it: one shape for all, and the status for each, in one match.

use std::fmt;

use actix_web::error::JsonPayloadError;
use actix_web::http::StatusCode;
use actix_web::{HttpResponse, ResponseError};
use day::asked::Role;
use day::refusal::Refusal;
use earthwork::words::Language;
use serde::Serialize;
use utoipa::ToSchema;

use crate::days::DayError;
use crate::jpeg::NotAPhoto;
use crate::store::StoreError;
use crate::store::photos::PhotoError;
use crate::writer::NotDone;

/// Why a request came to nothing, in both languages, and what to do.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Problem {
    /// The day's own refusal, where it is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refusal: Option<Box<Refusal>>,
    /// In English.
    pub english: String,
    /// In Spanish.
    pub spanish: String,
    #[serde(skip)]
    status: StatusCode,
}

impl Problem {
    fn new(status: StatusCode, english: &str, spanish: &str) -> Self {
        Self {
            refusal: None,
            english: english.to_owned(),
            spanish: spanish.to_owned(),
            status,
        }
    }

    /// The request can't be read: a fault of the page, told to whoever writes it.
    pub fn malformed(why: &str) -> Self {
        Self::new(
            StatusCode::BAD_REQUEST,
            why,
            &format!("La solicitud está mal hecha. {why}"),
        )
    }

    /// A value that can't be read, in both languages.
    pub fn malformed_both(english: &str, spanish: &str) -> Self {
        Self::new(StatusCode::BAD_REQUEST, english, spanish)
    }

    /// The hub closes in the middle of a request.
    pub fn stopping() -> Self {
        Self::unavailable(
            "The hub is stopping. Send it again when it is up.",
            "El servidor se está deteniendo. Mándelo otra vez cuando vuelva.",
        )
    }

    /// The body can't be read.
    pub fn of_json(error: &JsonPayloadError) -> Self {
        match error {
            JsonPayloadError::Overflow { .. } | JsonPayloadError::OverflowKnownLength { .. } => {
                Self::new(
                    StatusCode::PAYLOAD_TOO_LARGE,
                    "That is too large. Send less at once.",
                    "Es demasiado grande. Envíe menos a la vez.",
                )
            }
            error => Self::malformed(&format!("The request is malformed: {error}.")),
        }
    }

    /// No phone that is in.
    pub fn unknown_phone() -> Self {
        Self::new(
            StatusCode::UNAUTHORIZED,
            "This phone is not in. Scan the code on the tailgate.",
            "Este teléfono no ha entrado. Escanee el código de la caja.",
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
            "This request comes from another site's page. Open the hub by the code on the tailgate.",
            "Esta solicitud viene de la página de otro sitio. Abra con el código de la caja.",
        )
    }

    /// A code that opens nothing.
    pub fn void_code() -> Self {
        Self::new(
            StatusCode::NOT_FOUND,
            "That code is void. Scan today's code on the tailgate.",
            "Ese código ya no vale. Escanee el código de hoy en la caja.",
        )
    }

    /// Too many tries.
    pub fn too_many() -> Self {
        Self::new(
            StatusCode::TOO_MANY_REQUESTS,
            "Too many tries. Wait a minute, then try again.",
            "Demasiados intentos. Espere un minuto y pruebe otra vez.",
        )
    }

    /// Something large that did not come in time.
    pub fn too_slow() -> Self {
        Self::new(
            StatusCode::REQUEST_TIMEOUT,
            "It came too slowly and was dropped. It will be sent again; go nearer to the truck.",
            "Llegó muy despacio y se dejó. Se enviará otra vez; acérquese a la camioneta.",
        )
    }

    /// Nothing there.
    pub fn no_such_page() -> Self {
        Self::new(
            StatusCode::NOT_FOUND,
            "There is nothing at this address. Open the hub by the code on the tailgate.",
            "No hay nada en esta dirección. Abra con el código de la caja.",
        )
    }

    /// An entry that is not there.
    pub fn no_such_entry(seq: u64) -> Self {
        Self::new(
            StatusCode::NOT_FOUND,
            &format!("The log has no entry {seq}."),
            &format!("El registro no tiene el asiento {seq}."),
        )
    }

    /// The hub can't just now.
    pub fn unavailable(english: &str, spanish: &str) -> Self {
        Self::new(StatusCode::SERVICE_UNAVAILABLE, english, spanish)
    }

    /// An error of the hub's own: the terminal has the whole of it.
    pub fn of_store(error: &dyn fmt::Display) -> Self {
        tracing::error!("{error}");
        Self::unavailable(
            "The log can't be read just now. The hub's terminal says why.",
            "Ahora no se puede leer el registro. La terminal dice por qué.",
        )
    }
}

impl From<Refusal> for Problem {
    fn from(refusal: Refusal) -> Self {
        let status = match &refusal {
            Refusal::NotAllowed { .. } => StatusCode::FORBIDDEN,
            _ => StatusCode::CONFLICT,
        };
        Self {
            english: refusal.text(Language::English),
            spanish: refusal.text(Language::Spanish),
            refusal: Some(Box::new(refusal)),
            status,
        }
    }
}

impl From<NotDone> for Problem {
    fn from(not_done: NotDone) -> Self {
        let english = not_done.to_string();
        match not_done {
            NotDone::Refused(refusal) => refusal.into(),
            NotDone::StopNotKept => Self::unavailable(
                &english,
                "El PARE está en cada pantalla que tiene enlace, pero no en el registro: el servidor ya no puede escribir. Use también señas; apunte quién paró y cuándo; hay que arrancar el servidor otra vez.",
            ),
            NotDone::NotKept => Self::unavailable(
                &english,
                "No se guardó: el servidor ya no puede escribir su registro. Use señas; hay que reiniciarlo.",
            ),
            NotDone::Busy => {
                Self::unavailable(&english, "El servidor está ocupado. Se enviará otra vez.")
            }
            NotDone::Closing => Self::unavailable(
                &english,
                "El servidor se está cerrando. Se enviará otra vez cuando vuelva.",
            ),
        }
    }
}

impl From<DayError> for Problem {
    fn from(error: DayError) -> Self {
        match error {
            DayError::NoSuchDay { day, known } => Self::new(
                StatusCode::NOT_FOUND,
                &format!("The log has no day {day}. It has: {known}."),
                &format!("El registro no tiene el día {day}. Tiene: {known}."),
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
        Self::new(status, &error.to_string(), &error.spanish())
    }
}

impl From<PhotoError> for Problem {
    fn from(error: PhotoError) -> Self {
        tracing::error!("{error}");
        match error {
            PhotoError::NoRoom => Self::new(
                StatusCode::INSUFFICIENT_STORAGE,
                &error.to_string(),
                "El disco de la computadora está casi lleno: lo que queda es para el registro. La foto sigue en el teléfono y se envía cuando haya lugar.",
            ),
            PhotoError::Missing { .. } | PhotoError::Touched { .. } => Self::new(
                StatusCode::GONE,
                "The file of this photo is missing or was touched since it came. The log still names its hash; `rodcall verify` says more.",
                "El archivo de esta foto falta o lo cambiaron desde que llegó. El registro aún nombra su huella; `rodcall verify` dice más.",
            ),
            PhotoError::File { .. } | PhotoError::Folder(_) => Self::unavailable(
                "The photo can't be kept or read just now. The hub's terminal says why. A photo on a phone stays there.",
                "Ahora no se puede guardar ni leer la foto. La terminal dice por qué. La foto de un teléfono sigue ahí.",
            ),
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.english)
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
