//! The marks of a site as `GeoJSON` (RFC 7946), each with where it stands.
//!
//! The site's frame is local: it has no longitude. RFC 7946, section 4, lets parties agree on another frame; the file says
//! which one it is, so that nobody lays it on a map of the world.

use day::built::BuiltMark;
use day::site::{Mark, Site};
use earthwork::length::Length;
use serde_json::{Value, json};
use show::review::Review;
use words::Language;

use super::tables::text_column;
use crate::when::in_full;

/// A collection of points, in metres east and north of the site's own origin.
pub(super) fn marks(site: &Site, review: &Review) -> String {
    let drawn = site.marks.iter().map(|mark| {
        let built = review.built.iter().find(|one| one.mark == mark.id);
        feature(mark, built)
    });
    let collection = json!({
        "type": "FeatureCollection",
        "frame": "local site frame: metres east and north of its origin, elevations in metres; not longitude and latitude",
        "site": review.site,
        "day": review.day,
        "features": drawn.collect::<Vec<Value>>(),
    });
    format!("{collection:#}\n")
}

fn feature(mark: &Mark, built: Option<&BuiltMark>) -> Value {
    let mut at = vec![metres(mark.place.x), metres(mark.place.y)];
    at.extend(built.map(|one| metres(one.elevation)));
    let feet = |length: Option<Length>| length.map(Length::feet);
    let mut feature = json!({
        "type": "Feature",
        "id": mark.id,
        "geometry": { "type": "Point", "coordinates": at },
        "properties": {
            "mark": mark.id,
            "target": mark.target,
            "note": mark.note,
            "dig_to_ft": feet(built.and_then(|one| one.dig_to)),
            "elevation_ft": feet(built.map(|one| one.elevation)),
            "difference_ft": feet(built.and_then(|one| one.mean)),
            "verdict": built.filter(|one| one.stands()).and_then(|one| one.verdict),
            "proven": built.is_some_and(|one| one.proven),
            "at": built.map(|one| in_full(one.at)),
        },
    });
    for language in Language::ALL {
        let said = built.map(|one| one.text.of(language));
        feature["properties"][text_column("standing", language)] = json!(said);
    }
    feature
}

/// A tenth-micrometre is 10⁻⁷ m.
fn metres(length: Length) -> f64 {
    length.tenth_micrometres() as f64 / 1e7
}
