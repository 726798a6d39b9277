//! Reports on paper: self-contained pages that open without the hub, print black and white on A4 or letter, and carry the
//! head of the chain, so that paper and log prove each other.
//!
//! | sheet | file |
//! |---|---|
//! | the day: open things first, people, machines, readings, lasers, calls, soil, gravel | `day_sheet` |
//! | as built, by target | `as_built` |
//! | each run for the next crew | `hand_over` |
//! | a card for each cab | `cab_card` |
//! | hand signals, drawn, with what was agreed | `hand_signals` |
//! | who told a machine to dig near a place | `who_told` |
//! | photos, in whichever of these | `photos`, `print` |
//! | how every sheet looks on its pages | `style`, `paper` |
//! | the same as tables and as `LandXML`, for programs | `tables` |
//! | marks on the plan, for programs that draw maps | `geojson` |

mod as_built;
mod cab_card;
mod day_sheet;
mod geojson;
mod hand_over;
mod hand_signals;
mod paper;
mod photos;
mod print;
mod profile;
mod style;
pub mod tables;
mod who_told;

use clap::ValueEnum;
use contract::ToSchema;
use serde::Deserialize;
use show::review::hand_over::hand_over;
use show::review::review;
use show::review::told::Told;
use show::views::papers::photos;
use words::Language;

use crate::days::KeptDay;
use crate::store::Head;
use crate::store::photos::Photos;
use paper::Paper;

/// Which sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum, Deserialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// The day.
    Day,
    /// Where each mark stands.
    AsBuilt,
    /// Each run for the next crew.
    HandOver,
    /// A card for each cab.
    CabCard,
    /// Hand signals.
    HandSignals,
}

/// A sheet as HTML; none while the day has no site.
pub fn sheet(day: &KeptDay, kind: Kind, language: Language) -> Option<String> {
    let folded = day.folded();
    let review = review(&folded)?;
    let paper = Paper::new(
        language,
        &review.site,
        &review.day,
        day.head(),
        day.photos(),
    );
    Some(match kind {
        Kind::Day => day_sheet::sheet(&paper, &folded, &review),
        Kind::AsBuilt => as_built::sheet(&paper, &review),
        Kind::HandOver => hand_over::sheet(&paper, &hand_over(&folded), &photos(&folded.state)),
        Kind::CabCard => cab_card::sheet(&paper, &folded.state)?,
        Kind::HandSignals => hand_signals::sheet(&paper, &folded.state),
    })
}

/// The answer to who told a machine to dig, as HTML.
pub fn who_told(told: &Told, head: Head, photos: Photos, language: Language) -> String {
    let site = told.days.last().map_or("", |page| page.site.as_str());
    let days: Vec<&str> = told.days.iter().map(|page| page.day.as_str()).collect();
    let paper = Paper::new(language, site, &days.join(", "), head, photos);
    who_told::sheet(&paper, told)
}
