//! The codes for the tailgate, and the address in them: for the supervisor.

use actix_web::web::{Data, Json};
use actix_web::{get, post};
use contract::ToSchema;
use day::asked::Role;
use serde::{Deserialize, Serialize};

use super::auth::{Known, OwnPage};
use super::problem::Problem;
use crate::hub::Hub;
use crate::join::address::Candidate;
use crate::join::code::{Admits, Secret};
use crate::join::qr;

/// Everything that the tailgate shows.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Codes {
    /// The address in the codes.
    pub address: Address,
    /// Every address that phones may be able to reach, the most likely first.
    pub addresses: Vec<Candidate>,
    /// A code for each role, and for each machine's cab.
    pub codes: Vec<Code>,
    /// The code that joins the Wi-Fi, when its name was given.
    #[schema(required)]
    pub wifi: Option<WifiCode>,
    /// True when the codes carried another address the day before.
    pub changed_since_yesterday: bool,
}

/// Where phones reach the hub.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Address {
    /// The host.
    pub host: String,
    /// The port.
    pub port: u16,
}

/// One code.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Code {
    /// The roles that it lets in.
    pub roles: Vec<Role>,
    /// The machine, for an operator.
    #[schema(required)]
    pub machine: Option<String>,
    /// The link in it.
    pub url: String,
    /// Its drawing.
    pub svg: String,
}

/// The code that joins the Wi-Fi.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct WifiCode {
    /// The network's name.
    pub ssid: String,
    /// Its drawing.
    pub svg: String,
}

/// Another address for the codes.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Chosen {
    /// One of the laptop's addresses.
    pub host: String,
}

/// The links of the day, without their drawings: for the terminal too.
pub fn links(hub: &Hub) -> Vec<(Admits, String)> {
    let board = hub.publish.known();
    let base = hub.addresses.base();
    Secret::offers(&board)
        .into_iter()
        .map(|admits| {
            let url = format!("{base}/j/{}", hub.secret.code(&board, &admits));
            (admits, url)
        })
        .collect()
}

fn all(hub: &Hub) -> Result<Codes, Problem> {
    let drawn = |text: &str| qr::svg(text).map_err(|error| Problem::of_store(&error));
    let mut codes = Vec::new();
    for (admits, url) in links(hub) {
        codes.push(Code {
            roles: admits.roles,
            machine: admits.machine,
            svg: drawn(&url)?,
            url,
        });
    }
    let wifi = match &hub.wifi {
        Some(wifi) => Some(WifiCode {
            ssid: wifi.ssid.clone(),
            svg: drawn(&qr::wifi(&wifi.ssid, &wifi.password))?,
        }),
        None => None,
    };
    Ok(Codes {
        address: Address {
            host: hub.addresses.host(),
            port: hub.addresses.port(),
        },
        addresses: hub.addresses.candidates(),
        codes,
        wifi,
        changed_since_yesterday: hub.addresses.changed_since_yesterday(),
    })
}

/// The codes of the day.
#[contract::path(
    context_path = "/api",
    responses((status = 200, body = Codes), (status = 401, body = Problem), (status = 403, body = Problem))
)]
#[get("/codes")]
pub(crate) async fn day_codes(hub: Data<Hub>, known: Known) -> Result<Json<Codes>, Problem> {
    known.supervises()?;
    all(&hub).map(Json)
}

/// Takes another of the laptop's addresses into the codes.
#[contract::path(
    context_path = "/api",
    request_body = Chosen,
    responses(
        (status = 200, body = Codes),
        (status = 400, body = Problem, description = "The laptop has no such address"),
        (status = 401, body = Problem),
        (status = 403, body = Problem)
    )
)]
#[post("/address")]
pub(crate) async fn choose_address(
    hub: Data<Hub>,
    known: Known,
    _: OwnPage,
    chosen: Json<Chosen>,
) -> Result<Json<Codes>, Problem> {
    known.supervises()?;
    hub.addresses
        .choose(&chosen.host)
        .map_err(|error| Problem::malformed(&error.to_string()))?;
    all(&hub).map(Json)
}
