//! What can be wrong with a machine, and what it can't do that its targets ask for.

use earthwork::length::Length;
use earthwork::machine::loads_over;
use earthwork::target::Shape;

use super::Faults;
use crate::cuts::depth;
use crate::site::{Machine, Site, Target};

/// A reach, a depth or a height beyond this was surely typed in another unit (common practice).
const LONGEST: Length = Length::from_hundredths_of_a_foot(6_000);

pub(super) fn faults(found: &mut Faults, site: &Site, machine: &Machine) {
    let path = format!("machines.{}", machine.id);
    sizes(found, machine, &path);
    for id in &machine.works_on {
        match site.target(id) {
            Some(target) => work(found, site, machine, target),
            None => found.wrong(
                format!("{path}.works_on"),
                words::site_faults::works_which_not_this_site(&machine.id, &id),
            ),
        }
    }
    let mut others = site.machines.iter();
    if let Some(other) = others.find(|other| other.id < machine.id && other.shape == machine.shape)
    {
        found.odd(
            format!("{path}.shape"),
            words::site_faults::have_same_shape_screens(&other.id, &machine.id),
        );
    }
    if let (Some(dump), Some(side)) = (machine.geometry.dump_height, site.rules.truck_side)
        && !loads_over(dump, side)
    {
        found.odd(
            format!("{path}.dump_height"),
            words::site_faults::empties_its_bucket_at(&machine.id, &dump, &side),
        );
    }
}

fn sizes(found: &mut Faults, machine: &Machine, path: &str) {
    let (reach, geometry) = (&machine.reach, &machine.geometry);
    if reach.reach_at_ground <= Length::ZERO
        || reach.tail_radius <= Length::ZERO
        || reach.track_width <= Length::ZERO
    {
        found.wrong(path, words::site_faults::reach_ground_tail_radius_track());
    }
    if reach.reach_at_ground < reach.tail_radius {
        found.wrong(path, words::site_faults::reach_ground_shorter_than_tail());
    }
    if reach.reach_at_ground > LONGEST {
        found.wrong(path, words::site_faults::a_reach_above_60_ft());
    }
    let heights = [
        geometry.dig_depth,
        geometry.dump_height,
        geometry.boom_height,
    ];
    let all = heights
        .into_iter()
        .flatten()
        .chain(geometry.buckets.iter().copied());
    if all.clone().any(|one| one <= Length::ZERO || one > LONGEST) {
        found.wrong(path, words::site_faults::depth_heights_bucket_widths_lie());
    }
}

/// What a target asks for that the machine can't do: deeper than it digs, narrower than its narrowest bucket.
fn work(found: &mut Faults, site: &Site, machine: &Machine, target: &Target) {
    let path = format!("machines.{}", machine.id);
    if let (Some(width), Some(bucket)) = (width(target), machine.geometry.narrowest())
        && bucket > width
    {
        found.odd(
            format!("{path}.buckets"),
            words::site_faults::narrowest_bucket_is_wide(
                &machine.id,
                &bucket,
                &target.name,
                &width,
            ),
        );
    }
    let Some(digs) = machine.geometry.dig_depth else {
        return;
    };
    let deepest = depth::planned(site, &target.id)
        .into_iter()
        .max_by_key(|(_, depth)| *depth);
    if let Some((mark, depth)) = deepest
        && depth > digs
    {
        found.odd(
            format!("{path}.dig_depth"),
            words::site_faults::digs_deep(&machine.id, &digs, &mark, &depth),
        );
    }
}

/// How wide a target is dug, when it has one width.
fn width(target: &Target) -> Option<Length> {
    match &target.grade.shape {
        Shape::Run(run) => Some(run.left + run.right),
        Shape::Trench(trench) => {
            let drawn = trench.drawn();
            Some(drawn.outside_diameter + drawn.side * 2)
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cuts::plan::CutKind;
    use crate::given::{flat_zone, len, site};
    use crate::site_faults::{SiteFault, faults};

    fn about(site: &Site, path: &str) -> Vec<SiteFault> {
        let all = faults(site).into_iter();
        all.filter(|fault| fault.path == path).collect()
    }

    #[test]
    fn what_a_machine_cannot_do_is_odd_before_the_day() {
        let mut site = site();
        let odd = |site: &Site, field: &str| {
            let found = about(site, &format!("machines.EX-2.{field}"));
            assert!(found.iter().all(|fault| fault.warning));
            found.len()
        };
        // The run is 6 ft wide.
        site.machines[1].geometry.buckets = vec![len("8 ft"), len("6 ft")];
        assert_eq!(odd(&site, "buckets"), 0);
        site.machines[1].geometry.buckets = vec![len("8 ft"), len("6.1 ft")];
        assert_eq!(odd(&site, "buckets"), 1);
        // A foot goes over the side.
        site.rules.truck_side = Some(len("10 ft"));
        site.machines[1].geometry.dump_height = Some(len("11 ft"));
        assert_eq!(odd(&site, "dump_height"), 0);
        site.machines[1].geometry.dump_height = Some(len("10.9 ft"));
        assert_eq!(odd(&site, "dump_height"), 1);
        // The run is dug to 98.00 and from its step to 97.00, under a ground of 112.00.
        let mut zone = flat_zone(CutKind::Face);
        zone.target = Some("RUN".into());
        site.cuts.faces = vec![zone];
        site.machines[1].geometry.dig_depth = Some(len("15 ft"));
        assert_eq!(odd(&site, "dig_depth"), 0);
        site.machines[1].geometry.dig_depth = Some(len("14.99 ft"));
        assert_eq!(odd(&site, "dig_depth"), 1);
    }

    #[test]
    fn sizes_in_another_unit_are_refused() {
        for wrong in ["0 ft", "-1 ft", "60.01 ft"] {
            let mut site = site();
            site.machines[0].geometry.boom_height = Some(len(wrong));
            let found = about(&site, "machines.EX-1");
            assert!(found.iter().any(|fault| !fault.warning), "{wrong}");
        }
        let mut site = site();
        site.machines[0].reach.tail_radius = len("28 ft");
        assert!(
            about(&site, "machines.EX-1")
                .iter()
                .any(|fault| !fault.warning)
        );
    }
}
