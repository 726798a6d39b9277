//! Marks, by place or by station and offset along their target's run.

use day::site::{Mark, Target};
use earthwork::alignment::{StationOffset, parse_along};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::TargetError;
use earthwork::uncertainty::Surface;
use words::Text;

use super::fields::Fields;
use super::notes::Notes;

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
            words::site_file::give_mark_either_or_station(),
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
) -> Result<Point, Text> {
    let Some(name) = target else {
        return Err(words::site_file::a_station_needs_a_target().into());
    };
    let Some(target) = targets.iter().find(|target| target.id == name) else {
        return Err(words::site_file::station_counts_along_which_not(&name));
    };
    target
        .grade
        .place(StationOffset { station, offset })
        .map_err(|error| match error {
            TargetError::NoStations => words::site_file::is_not_a_run(&name),
            other => other.text(),
        })
}

/// A station: `12+50`, or a length such as `1250 ft`.
pub(super) fn station(text: &str) -> Result<Length, Text> {
    parse_along(text).map_err(|error| error.text())
}
