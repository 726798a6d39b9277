//! A walked contour: how far off level it was walked, and the arc that fits it.

use contract::ToSchema;
use earthwork::alignment::{FittedArc, fit_arc};
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::target::Shape;
use serde::Serialize;

use day::last::{self, StillCounts};
use day::state::State;

/// A walked contour.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct ContourCard {
    /// The target.
    pub target: String,
    /// How many points of it were read.
    pub points: usize,
    /// The one that stands farthest off level: measured − contour.
    pub most_off_level: Length,
    /// Whether every point lies within the target's band.
    pub within_band: bool,
    /// The radius of the arc that fits; none when there are fewer than three points or they run straight.
    pub radius: Option<Length>,
    /// How far the farthest point stands off that arc.
    pub most_off_arc: Option<Length>,
}

/// The contours that somebody has walked, by the last reading at each place.
pub(crate) fn contours(state: &State) -> Vec<ContourCard> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let mut cards = Vec::new();
    for target in &site.targets {
        let Shape::Contour { elevation, band } = target.grade.shape else {
            continue;
        };
        let readings = state
            .marks
            .values()
            .filter_map(|mark| Some((mark.last?, state.readings.get(&mark.last?)?)))
            .filter(|(id, taken)| last::of_reading(state, *id, taken) == StillCounts::Counts)
            .map(|(_, taken)| taken);
        let walked: Vec<(Point, Length)> = readings
            .filter_map(|taken| {
                let reading = &taken.reading;
                let judged = reading.judged.as_ref()?;
                if judged.target != target.id {
                    return None;
                }
                let mark = || site.mark(&reading.mark).map(|mark| mark.place);
                let place = reading
                    .placed
                    .as_ref()
                    .map(|placed| placed.at)
                    .or_else(mark)?;
                Some((place, reading.elevation - elevation))
            })
            .collect();
        let Some((_, most)) = walked.iter().max_by_key(|(_, off)| off.abs()) else {
            continue;
        };
        let places: Vec<Point> = walked.iter().map(|(place, _)| *place).collect();
        let arc: Option<FittedArc> = fit_arc(&places);
        cards.push(ContourCard {
            target: target.id.clone(),
            points: walked.len(),
            most_off_level: *most,
            within_band: most.abs() <= band,
            radius: arc.map(|arc| arc.radius),
            most_off_arc: arc.map(|arc| arc.most_off),
        });
    }
    cards
}

#[cfg(test)]
mod tests {
    use super::*;
    use day::asked::{By, Command};
    use day::given::{Crew, at, len, site, supervisor};
    use day::said::site::{ConfirmSite, ReadSite};

    /// Invented: three marks on a circle of 50 ft about (30, 30), the contour at 100.00; 105.00 − 4.98 = 100.02.
    #[test]
    fn a_walked_contour_tells_how_level_it_is_and_its_radius() {
        let mut changed = site();
        changed.targets[0].grade.stack.layers.clear();
        changed.targets[0].grade.shape = Shape::Contour {
            elevation: len("100.00 ft"),
            band: len("0.03 ft"),
        };
        changed.marks[0].place = at("80 ft", "30 ft");
        changed.marks[1].place = at("30 ft", "80 ft");
        let mut third = changed.marks[0].clone();
        third.id = "P-3".into();
        third.place = at("60 ft", "70 ft");
        changed.marks.push(third);
        let mut crew = Crew::digging();
        crew.says(&By::hub(), Command::ReadSite(ReadSite { site: changed }))
            .unwrap();
        let digest = crew.state.site_change.clone().unwrap().found.digest;
        crew.says(&supervisor(), Command::ConfirmSite(ConfirmSite { digest }))
            .unwrap();
        assert_eq!(contours(&crew.state), []);
        for (mark, text) in [("P-1", "5.00"), ("P-2", "4.98"), ("P-3", "5.00")] {
            crew.reads(mark, text).unwrap();
        }
        let [card] = &contours(&crew.state)[..] else {
            panic!("one contour")
        };
        assert_eq!((card.points, card.most_off_level), (3, len("0.02 ft")));
        assert!(card.within_band);
        let radius = card.radius.unwrap();
        assert!((radius - len("50 ft")).abs() < len("0.001 ft"), "{radius}");
    }
}
