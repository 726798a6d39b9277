//! Which day, moment or sheet of it a request is about.

use contract::IntoParams;
use day::time::Time;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::Deserialize;
use show::review::told::WhoTold;
use words::Language;

/// Which day.
#[derive(Clone, Debug, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
#[serde(deny_unknown_fields)]
pub struct WhichDay {
    /// Its name; the newest when left out.
    #[serde(default)]
    pub day: Option<String>,
}

/// Which moment of a day.
#[derive(Clone, Debug, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
#[serde(deny_unknown_fields)]
pub struct WhichMoment {
    /// The day; the newest when left out.
    #[serde(default)]
    pub day: Option<String>,
    /// After this entry.
    #[serde(default)]
    pub seq: Option<u64>,
    /// Or at this moment, in milliseconds since 1970; the end of the day when neither is given.
    #[serde(default)]
    pub at: Option<i64>,
}

/// The question who told a machine to dig near a place.
#[derive(Clone, Debug, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
#[serde(deny_unknown_fields)]
pub struct WhoToldQuery {
    /// The machine.
    pub machine: String,
    /// East, in tenth-micrometres.
    pub x: i64,
    /// North, in tenth-micrometres.
    pub y: i64,
    /// From when, in milliseconds since 1970; it may be days before `to`.
    pub from: i64,
    /// Until when.
    pub to: i64,
    /// The sheet's language; English when left out.
    #[serde(default)]
    pub language: Option<Language>,
}

/// Which sheet.
#[derive(Clone, Debug, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
#[serde(deny_unknown_fields)]
pub struct WhichSheet {
    /// The day; the newest when left out.
    #[serde(default)]
    pub day: Option<String>,
    /// The language; English when left out.
    #[serde(default)]
    pub language: Option<Language>,
}

impl WhoToldQuery {
    /// The question.
    pub fn asked(&self) -> WhoTold {
        WhoTold {
            machine: self.machine.clone(),
            near: Point {
                x: Length::from_tenth_micrometres(self.x),
                y: Length::from_tenth_micrometres(self.y),
            },
            from: Time(self.from),
            to: Time(self.to),
        }
    }
}
