//! Coming in: a code from the tailgate, or the laptop's own link from the terminal.

use actix_web::http::header::{ACCEPT_LANGUAGE, LOCATION};
use actix_web::web::{Data, Json, Path};
use actix_web::{HttpRequest, HttpResponse, get, post};
use contract::ToSchema;
use day::answer::Outcome;
use day::asked::{Asked, By, Command, Role};
use day::chain::digest;
use day::said;
use earthwork::words::ScreenUnit;
use serde::{Deserialize, Serialize};
use words::Language;

use super::auth::{Known, OwnPage, cookie, known};
use super::problem::Problem;
use crate::hub::Hub;
use crate::join::code::{Admits, same, token};
use crate::publish::Phone;

/// The name under which all wrong codes are counted together.
const EVERYWHERE: &str = "";

/// What a code lets in.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Invitation {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// The roles; pick one or more.
    pub roles: Vec<Role>,
    /// The machine, for an operator.
    #[schema(required)]
    pub machine: Option<String>,
}

/// Somebody comes in.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Joining {
    /// The code.
    pub code: String,
    /// Name or initials.
    pub person: String,
    /// The roles, among those of the code.
    pub roles: Vec<Role>,
    /// The screen's language.
    pub language: Language,
    /// The screen's unit.
    pub unit: ScreenUnit,
    /// I am the person of that name who is here already, on another phone.
    #[serde(default)]
    pub same_person: bool,
}

/// Who a phone is.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Me {
    /// The device.
    pub device: String,
    /// Name or initials.
    pub person: String,
    /// Its roles.
    pub roles: Vec<Role>,
    /// The machine whose cab it sits in.
    #[schema(required)]
    pub machine: Option<String>,
    /// Its language.
    pub language: Language,
    /// Its unit.
    pub unit: ScreenUnit,
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// The build of the pages that the hub serves.
    pub build: String,
    /// It stayed in over the night: say first who holds it.
    pub asks_who: bool,
}

impl Me {
    pub(super) fn of(hub: &Hub, phone: &Phone) -> Self {
        let board = hub.publish.known();
        Self {
            device: phone.by.device.clone(),
            person: phone.by.person.clone(),
            roles: phone.by.roles.clone(),
            machine: phone.by.machine.clone(),
            language: phone.language,
            unit: phone.unit,
            site: board.site.clone(),
            day: board.day.clone(),
            build: web_ui::build_id().to_owned(),
            asks_who: phone.asks_who,
        }
    }
}

/// What a code lets in, before anybody has come in with it.
#[contract::path(
    context_path = "/api",
    params(("code" = String, Path, description = "The code")),
    responses(
        (status = 200, body = Invitation),
        (status = 404, body = Problem, description = "The code is void"),
        (status = 429, body = Problem, description = "Too many wrong codes")
    )
)]
#[get("/join/{code}")]
pub(crate) async fn invitation(
    hub: Data<Hub>,
    code: Path<String>,
    request: HttpRequest,
) -> Result<Json<Invitation>, Problem> {
    let admits = admitted(&hub, &request, &code)?;
    let board = hub.publish.known();
    Ok(Json(Invitation {
        site: board.site.clone(),
        day: board.day.clone(),
        roles: admits.roles,
        machine: admits.machine,
    }))
}

/// Comes in. The cookie in the answer is the phone's from now on.
#[contract::path(
    context_path = "/api",
    request_body = Joining,
    responses(
        (status = 200, body = Me, description = "In, with a cookie"),
        (status = 404, body = Problem, description = "The code is void"),
        (status = 409, body = Problem),
        (status = 429, body = Problem, description = "Too many wrong codes"),
        (status = 503, body = Problem)
    )
)]
#[post("/join")]
pub(crate) async fn come_in(
    hub: Data<Hub>,
    _: OwnPage,
    request: HttpRequest,
    joining: Json<Joining>,
) -> Result<HttpResponse, Problem> {
    let admits = admitted(&hub, &request, &joining.code)?;
    if let Some(role) = joining
        .roles
        .iter()
        .find(|role| !admits.roles.contains(role))
    {
        return Err(Problem::malformed(&format!(
            "This code does not let anybody in as {role:?}. Pick among the roles that it allows."
        )));
    }
    let Json(Joining {
        person,
        roles,
        language,
        unit,
        same_person,
        ..
    }) = joining;
    let (phone, token) = let_in(
        &hub,
        Claim {
            same_person,
            handset: known(&request).map(|known| known.phone.by.device),
        },
        Phone {
            by: By {
                device: String::new(),
                person,
                roles,
                machine: admits.machine,
            },
            language,
            unit,
            asks_who: false,
        },
    )
    .await?;
    Ok(HttpResponse::Ok()
        .cookie(cookie(token))
        .json(Me::of(&hub, &phone)))
}

/// Who this phone is.
#[contract::path(
    context_path = "/api",
    responses((status = 200, body = Me), (status = 401, body = Problem, description = "Not in"))
)]
#[get("/me")]
pub(crate) async fn who_am_i(hub: Data<Hub>, known: Known) -> Json<Me> {
    Json(Me::of(&hub, &known.phone))
}

/// The laptop's own link: whoever has it from the terminal supervises.
#[get("/own/{secret}")]
pub(crate) async fn own_link(
    hub: Data<Hub>,
    secret: Path<String>,
    request: HttpRequest,
) -> Result<HttpResponse, Problem> {
    let name = guard(&hub, &request)?;
    let day = hub.publish.known().day.clone();
    if day.is_empty() || !same(hub.secret.own(&day).as_bytes(), secret.as_bytes()) {
        wrong(&hub, &name);
        return Err(Problem::void_code());
    }
    let asked = request.headers().get(ACCEPT_LANGUAGE);
    let speaks = |one: &Language| {
        asked.is_some_and(|asked| asked.as_bytes().starts_with(one.code().as_bytes()))
    };
    let language = Language::ALL.into_iter().find(speaks).unwrap_or_default();
    // Whoever has the terminal's link sits at the laptop, in whichever browser.
    let claim = Claim {
        same_person: true,
        handset: known(&request).map(|known| known.phone.by.device),
    };
    let (_, token) = let_in(
        &hub,
        claim,
        Phone {
            by: By {
                device: String::new(),
                person: words::join::truck().of(language).to_owned(),
                roles: vec![Role::Supervisor],
                machine: None,
            },
            language,
            unit: ScreenUnit::Tenths,
            asks_who: false,
        },
    )
    .await?;
    Ok(HttpResponse::SeeOther()
        .cookie(cookie(token))
        .insert_header((LOCATION, "/"))
        .finish())
}

/// What whoever joins says of themselves, and what their browser shows.
#[derive(Clone, Debug, Default)]
pub(super) struct Claim {
    /// The person of that name who is here already.
    pub(super) same_person: bool,
    /// The device that this browser was until now.
    pub(super) handset: Option<String>,
}

pub(super) async fn let_in(
    hub: &Hub,
    claim: Claim,
    phone: Phone,
) -> Result<(Phone, String), Problem> {
    let fresh = || token().map_err(|error| Problem::of_store(&error));
    let (token, name) = (fresh()?, fresh()?);
    let device = format!("d-{}", &name[..12]);
    let asked = Asked {
        // A phone that never hears the answer joins again, as another device.
        key: format!("join-{device}"),
        by: By::hub(),
        made_at: hub.clock.now(),
        command: Command::Join(said::join::Join {
            device,
            token_digest: digest(token.as_bytes()),
            person: phone.by.person,
            roles: phone.by.roles,
            machine: phone.by.machine,
            language: phone.language,
            unit: phone.unit,
            same_person: claim.same_person,
            handset: claim.handset,
        }),
    };
    let answer = hub.writer.ask(asked).await?;
    let board = hub.publish.known();
    let joined = board.phones.get(&digest(token.as_bytes()));
    match (answer.outcome, joined) {
        (Outcome::Joined { .. }, Some(phone)) => Ok((phone.clone(), token)),
        _ => Err(Problem::unknown_phone()),
    }
}

/// What the code lets in, unless this address has guessed too often.
fn admitted(hub: &Hub, request: &HttpRequest, code: &str) -> Result<Admits, Problem> {
    let name = guard(hub, request)?;
    hub.secret
        .admits(&hub.publish.known(), code)
        .ok_or_else(|| {
            wrong(hub, &name);
            Problem::void_code()
        })
}

fn guard(hub: &Hub, request: &HttpRequest) -> Result<String, Problem> {
    let name = request
        .peer_addr()
        .map_or_else(|| "?".to_owned(), |peer| peer.ip().to_string());
    if hub.limits.guesses.has(&name) && hub.limits.all_guesses.has(EVERYWHERE) {
        Ok(name)
    } else {
        Err(Problem::too_many())
    }
}

fn wrong(hub: &Hub, name: &str) {
    hub.limits.guesses.take(name);
    hub.limits.all_guesses.take(EVERYWHERE);
}
