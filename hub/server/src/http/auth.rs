//! Who asks: the cookie of a phone that is in, and the page that the request comes from.

use std::future::{Ready, ready};

use actix_web::cookie::time::Duration;
use actix_web::cookie::{Cookie, SameSite};
use actix_web::dev::Payload;
use actix_web::http::header::{HOST, HeaderValue, ORIGIN};
use actix_web::web::Data;
use actix_web::{FromRequest, HttpRequest};
use day::asked::{By, Role};
use day::chain::digest;

use super::problem::Problem;
use crate::hub::Hub;
use crate::publish::Phone;

/// The cookie's name.
pub const COOKIE: &str = "rodcall";
/// The hub decides at each day's end which phones are out; a browser that is closed in between, or over a long weekend, comes back
/// in as far as the hub still knows it.
const COOKIE_LIFE: Duration = Duration::days(30);

/// A phone that is in.
#[derive(Clone, Debug)]
pub struct Known {
    /// The phone.
    pub phone: Phone,
}

impl Known {
    /// Who it is, as entries name it.
    pub fn by(&self) -> &By {
        &self.phone.by
    }

    /// Lets the crew through: a visitor sees what was chosen for them on their own page.
    ///
    /// # Errors
    /// A problem for a visitor.
    pub fn of_the_crew(&self) -> Result<(), Problem> {
        if self.by().roles == [Role::Visitor] {
            return Err(Problem::not_allowed(&[
                Role::Ground,
                Role::Operator,
                Role::Supervisor,
            ]));
        }
        Ok(())
    }

    /// Lets a supervisor through.
    ///
    /// # Errors
    /// A problem for everyone else.
    pub fn supervises(&self) -> Result<(), Problem> {
        if self.by().is(Role::Supervisor) {
            Ok(())
        } else {
            Err(Problem::not_allowed(&[Role::Supervisor]))
        }
    }
}

impl FromRequest for Known {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        ready(known(request).ok_or_else(Problem::unknown_phone))
    }
}

/// The phone whose cookie a request shows.
pub fn known(request: &HttpRequest) -> Option<Known> {
    let hub = request.app_data::<Data<Hub>>()?;
    let cookie = request.cookie(COOKIE)?;
    let digest = digest(cookie.value().as_bytes());
    let phone = hub.publish.known().phones.get(&digest)?.clone();
    Some(Known { phone })
}

/// A request that comes from the hub's own page, or from no page at all.
#[derive(Clone, Copy, Debug)]
pub struct OwnPage;

impl FromRequest for OwnPage {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        let text = |name| request.headers().get(name).map(HeaderValue::as_bytes);
        let fine = match (text(ORIGIN), text(HOST)) {
            (None, _) => true,
            (Some(origin), Some(host)) => origin.strip_prefix(b"http://") == Some(host),
            (Some(_), None) => false,
        };
        ready(if fine {
            Ok(Self)
        } else {
            Err(Problem::other_origin())
        })
    }
}

/// The cookie that lets a phone in; scripts can't read it, other sites' pages can't send it.
pub fn cookie(token: String) -> Cookie<'static> {
    Cookie::build(COOKIE, token)
        .path("/")
        .http_only(true)
        .same_site(SameSite::Strict)
        .max_age(COOKIE_LIFE)
        .finish()
}
