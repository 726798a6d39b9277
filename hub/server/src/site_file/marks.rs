//! Marks, by place or by station and offset along their target's run.

use day::site::{Mark, Target};
use earthwork::alignment::StationOffset;
use earthwork::length::{Length, parse};
use earthwork::point::Point;
use earthwork::target::TargetError;
use earthwork::uncertainty::Surface;

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
        notes.wrong_at(
            fields.at("id"),
            "Give a mark either `at`, or `station` and `offset`, not both.".to_owned(),
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
                notes.wrong_at(fields.at("station"), why);
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
) -> Result<Point, String> {
    let Some(name) = target else {
        return Err(
            "A station needs a target: say along which run it counts, or give the mark's place."
                .to_owned(),
        );
    };
    let Some(target) = targets.iter().find(|target| target.id == name) else {
        return Err(format!(
            "The station counts along “{name}”, which is not a target of this site, or has faults of its own."
        ));
    };
    target
        .grade
        .place(StationOffset { station, offset })
        .map_err(|error| match error {
            TargetError::NoStations => {
                format!("“{name}” is not a run: give the mark's place instead of a station.")
            }
            other => other.to_string(),
        })
}

/// A station: `20 ft`, or `0+20 ft` in hundreds of feet.
pub(super) fn station(text: &str) -> Result<Length, String> {
    let text = text.trim();
    let Some((hundreds, rest)) = text.split_once('+') else {
        return parse(text).map_err(|error| error.to_string());
    };
    let hundreds: i64 = hundreds
        .trim()
        .parse::<u16>()
        .map(i64::from)
        .map_err(|error| {
            format!("“{text}” is not a station ({error}). Write \"1+20 ft\" or \"120 ft\".")
        })?;
    let rest = parse(rest).map_err(|error| error.to_string())?;
    Ok(Length::from_hundredths_of_a_foot(hundreds * 10_000) + rest)
}
