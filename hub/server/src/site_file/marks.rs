//! Marks, by place or by station and offset along their target's run.

use day::site::{Mark, Target};
use earthwork::alignment::{StationOffset, parse_along};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::TargetError;
use earthwork::uncertainty::Surface;

use super::fields::Fields;
use super::notes::{Notes, Said};

pub(super) fn mark(notes: &mut Notes, fields: &Fields<'_, '_>, targets: &[Target]) -> Option<Mark> {
    let id = fields.text(notes, "id");
    let target = fields.has("target").then(|| fields.text(notes, "target"));
    let surface = if fields.has("surface") {
        fields.word(notes, "surface")
    } else {
        Some(Surface::Trimmed)
    };
    let note = fields.note(notes, "note");
    let by_station = fields.has("station") || fields.has("offset");
    if by_station == fields.has("at") {
        notes.said_at(
            fields.at("at"),
            Said::new(
                "Give a mark either `at`, or `station` and `offset`, not both.",
                "Dé el lugar de la marca, o su estación y desplazamiento, no los dos.",
            ),
        );
        return None;
    }
    let (place, station, offset) = if by_station {
        let station = fields.read(notes, "station", station);
        let offset = fields.length_or(notes, "offset", Length::ZERO);
        let name = target.clone().flatten();
        let (station, offset) = (station?, offset?);
        match along(name.as_deref(), targets, station, offset) {
            Ok(place) => (Some(place), Some(station), Some(offset)),
            Err(why) => {
                notes.said_at(fields.at("station"), why);
                return None;
            }
        }
    } else {
        (fields.point(notes, "at"), None, None)
    };
    Some(Mark {
        id: id?,
        place: place?,
        target: match target {
            Some(given) => Some(given?),
            None => None,
        },
        station,
        offset,
        surface: surface?,
        note,
    })
}

/// The place at a station and an offset along the target's run.
pub(super) fn along(
    target: Option<&str>,
    targets: &[Target],
    station: Length,
    offset: Length,
) -> Result<Point, Said> {
    let Some(name) = target else {
        return Err(Said::new(
            "A station needs a target: say along which run it counts, or give the mark's place.",
            "Una estación necesita una rasante: diga a lo largo de cuál tramo cuenta, o dé el lugar de la marca.",
        ));
    };
    let Some(target) = targets.iter().find(|target| target.id == name) else {
        return Err(Said::new(
            format!(
                "The station counts along “{name}”, which is not a target of this site, or has faults of its own."
            ),
            format!(
                "La estación cuenta a lo largo de «{name}», que no es rasante de esta obra o tiene faltas propias."
            ),
        ));
    };
    target
        .grade
        .place(StationOffset { station, offset })
        .map_err(|error| match error {
            TargetError::NoStations => Said::new(
                format!("“{name}” is not a run: give the mark's place instead of a station."),
                format!("«{name}» no es un tramo: dé el lugar de la marca en vez de una estación."),
            ),
            other => Said::new(other.to_string(), other.spanish()),
        })
}

/// A station: `12+50`, or a length such as `1250 ft`.
pub(super) fn station(text: &str) -> Result<Length, Said> {
    parse_along(text).map_err(|error| Said::new(error.to_string(), error.spanish()))
}
