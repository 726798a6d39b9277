//! The wire: routes, and what every answer carries. Handlers are thin: read, let in, hand over, answer.

pub mod auth;
pub mod codes;
pub mod compute;
pub mod day;
mod flow;
pub mod import;
pub mod join;
pub mod log;
pub mod openapi;
pub mod pages;
pub mod photos;
pub mod pocket;
pub mod problem;
pub mod review;
pub mod say;
pub mod site;
pub mod which;

use actix_web::middleware::DefaultHeaders;
use actix_web::web::{
    self, Data, JsonConfig, PathConfig, PayloadConfig, QueryConfig, ServiceConfig,
};

use crate::hub::Hub;
use problem::Problem;

/// No request of the crew is larger.
const LARGEST_REQUEST: usize = 64 * 1024;

/// Everything that the hub answers.
pub fn routes(hub: Hub) -> impl FnOnce(&mut ServiceConfig) + Clone {
    move |config| {
        config
            .app_data(Data::new(hub))
            .app_data(json(LARGEST_REQUEST))
            .app_data(QueryConfig::default().error_handler(|error, _| {
                Problem::malformed(&format!("The address is malformed: {error}.")).into()
            }))
            .app_data(PathConfig::default().error_handler(|error, _| {
                Problem::malformed(&format!("The address is malformed: {error}.")).into()
            }))
            .service(pages::healthz)
            .service(
                web::scope("/api")
                    .service(join::invitation)
                    .service(join::come_in)
                    .service(join::who_am_i)
                    .service(say::take_saying)
                    .service(log::log_page)
                    .service(log::log_table)
                    .service(log::log_entry)
                    .service(log::whole_log)
                    .service(log::try_restore)
                    .service(photos::bring_photo)
                    .service(photos::photo_file)
                    .service(pocket::pocket_sheet)
                    .service(review::day_names)
                    .service(review::review_of_day)
                    .service(review::replay)
                    .service(review::who_told)
                    .service(review::who_told_sheet)
                    .service(review::report_sheet)
                    .service(review::day_table)
                    .service(compute::compute)
                    .service(codes::day_codes)
                    .service(codes::choose_address)
                    .service(day::open_next_day)
                    .service(
                        web::scope("/import")
                            .app_data(PayloadConfig::new(import::LARGEST_UPLOAD))
                            .service(import::import_preview),
                    )
                    .service(
                        web::scope("/site")
                            .app_data(json(site::LARGEST_CHANGE))
                            .service(site::site_form)
                            .service(site::site_draft)
                            .service(site::site_change)
                            .service(site::site_export_file),
                    )
                    .service(openapi::document)
                    .service(crate::socket::live)
                    .default_service(
                        web::route().to(|| async { Err::<&str, _>(Problem::no_such_page()) }),
                    ),
            )
            .service(join::own_link)
            .default_service(web::route().to(pages::page));
    }
}

/// How bodies of up to so many bytes are taken.
fn json(limit: usize) -> JsonConfig {
    JsonConfig::default()
        .limit(limit)
        .content_type_required(true)
        .error_handler(|error, _| Problem::of_json(&error).into())
}

/// What every answer carries, unless it says otherwise itself.
pub fn headers() -> DefaultHeaders {
    DefaultHeaders::new()
        .add(("X-Content-Type-Options", "nosniff"))
        .add(("X-Frame-Options", "DENY"))
        .add(("Referrer-Policy", "no-referrer"))
        .add(("Cross-Origin-Resource-Policy", "same-origin"))
        .add((
            "Content-Security-Policy",
            "default-src 'none'; frame-ancestors 'none'",
        ))
        .add(("Cache-Control", "no-store"))
}
