//! Numbers that lie far from everything else of the site: a slipped decimal, another datum, a plan's big coordinates.

use earthwork::length::Length;
use earthwork::target::DigTo;
use words::Text;

use crate::site::{Site, Target};

/// Ground that is dug to lies no farther from the nearest benchmark: 50 ft (common practice on small sites).
const FAR_UP: Length = Length::from_hundredths_of_a_foot(5_000);
/// A site's own numbers stay below this; what is larger comes from the plan: 50,000 ft (common practice).
const FAR_OUT: Length = Length::from_hundredths_of_a_foot(5_000_000);

/// What is odd, each with its path.
pub(super) fn odd(site: &Site) -> Vec<(String, Text)> {
    let mut odd: Vec<_> = site
        .targets
        .iter()
        .filter_map(|target| far_up(site, target))
        .collect();
    let marks = site
        .marks
        .iter()
        .map(|mark| ("marks", &mark.id, Some(mark.place)));
    let benchmarks = site
        .benchmarks
        .iter()
        .map(|benchmark| ("benchmarks", &benchmark.id, benchmark.place));
    for (list, id, place) in marks.chain(benchmarks) {
        let Some(far) = place.map(|place| place.x.abs().max(place.y.abs())) else {
            continue;
        };
        if far > FAR_OUT {
            odd.push((
                format!("{list}.{id}"),
                words::site_faults::lies_from_the_site_corner(&id, &far),
            ));
        }
    }
    odd
}

/// A target that no benchmark is near to, by its first mark that has one elevation.
fn far_up(site: &Site, target: &Target) -> Option<(String, Text)> {
    let mut on_it = site
        .marks
        .iter()
        .filter(|mark| mark.target.as_deref() == Some(&target.id));
    let (mark, dig_to) = on_it.find_map(|mark| match target.grade.dig_to(mark.place) {
        Ok(DigTo::At(elevation)) => Some((mark, elevation)),
        _ => None,
    })?;
    let apart = |elevation: Length| {
        let all = site.benchmarks.iter();
        all.map(|one| (one.elevation - elevation).abs()).min()
    };
    let far = apart(dig_to).filter(|far| *far > FAR_UP)?;
    Some((
        format!("targets.{}", target.id),
        words::site_faults::dug_from_nearest_benchmark(&target.id, &dig_to, &mark.id, &far),
    ))
}
