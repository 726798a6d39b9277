//! The contract: an `OpenAPI` 3.1 document, committed as `openapi.json` and served as it is.

use actix_web::{HttpResponse, get};

#[cfg(all(test, feature = "contract"))]
mod described;

/// The document.
pub const TEXT: &str = include_str!("../../openapi.json");

/// This document; for everyone.
#[contract::path(
    context_path = "/api",
    responses((status = 200, body = String, content_type = "application/json"))
)]
#[get("/openapi.json")]
pub(crate) async fn document() -> HttpResponse {
    HttpResponse::Ok()
        .content_type("application/json")
        .body(TEXT)
}
