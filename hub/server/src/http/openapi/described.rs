//! The contract as the handlers say it: what the committed one is held to.

use utoipa::OpenApi;

use crate::http::{
    codes, compute, day, import, join, log, openapi, pages, photos, pocket, review, say, site,
};
use crate::report::tables::Table;
use crate::socket;
use show::views::ground::Ground;
use show::views::operator::Operator;
use show::views::sheet::Sheet;
use show::views::supervisor::Supervisor;
use show::views::visitor::Visitor;

/// Everything that the hub answers.
#[derive(OpenApi)]
#[openapi(
    info(
        title = "Rodcall",
        description = "The hub of a crew's shared board. Lengths are whole numbers of tenth-micrometres (1 ft = 3 048 000), moments are milliseconds since 1970 on the hub's clock. A phone is known by the cookie `rodcall` that joining gives it. The socket `/api/live` speaks FromHub and FromPhone."
    ),
    paths(
        pages::healthz,
        join::invitation,
        join::come_in,
        join::who_am_i,
        say::take_saying,
        log::log_page,
        log::log_entry,
        log::log_table,
        log::whole_log,
        log::try_restore,
        photos::bring_photo,
        photos::photo_file,
        pocket::pocket_sheet,
        review::day_names,
        review::review_of_day,
        review::replay,
        review::who_told,
        review::who_told_sheet,
        review::report_sheet,
        review::day_table,
        compute::compute,
        codes::day_codes,
        codes::choose_address,
        day::open_next_day,
        import::import_preview,
        site::site_form,
        site::site_draft,
        site::site_change,
        site::site_export_file,
        openapi::document,
        socket::live,
    ),
    components(schemas(
        socket::words::FromHub,
        socket::words::FromPhone,
        Table,
        Operator,
        Ground,
        Supervisor,
        Sheet,
        Visitor
    ))
)]
struct Contract;

#[test]
fn the_committed_contract_is_current() {
    let text = Contract::openapi().to_pretty_json().unwrap() + "\n";
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/openapi.json");
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(path, &text).unwrap();
    }
    assert!(
        std::fs::read_to_string(path).unwrap() == text,
        "hub/server/openapi.json is not what the handlers say: run UPDATE=1 cargo test -p rodcall --features contract openapi, then npm run types in web-ui"
    );
}
