//! What can be wrong with faces, buried lines and tickets.

use std::collections::BTreeSet;

use earthwork::buried;
use earthwork::face;
use earthwork::length::Length;
use earthwork::point;

use super::{Faults, listed};
use crate::cuts::plan::{FaceZone, OverheadLine, Ticket, Utility, day_number};
use crate::cuts::strip;
use crate::site::Site;

pub(super) fn faults(found: &mut Faults, site: &Site) {
    let cuts = &site.cuts;
    names(found, site);
    for zone in &cuts.faces {
        face(found, site, zone);
    }
    if !cuts.faces.is_empty() && cuts.competent.is_empty() {
        found.wrong("competent", words::site_faults::site_has_faces_names_no());
    }
    for utility in &cuts.utilities {
        utility_faults(found, utility);
    }
    if !cuts.utilities.is_empty() && cuts.tickets.is_empty() {
        found.odd(
            "utilities",
            words::site_faults::buried_lines_are_drawn_but(),
        );
    }
    for ticket in &cuts.tickets {
        ticket_faults(found, ticket);
    }
    for line in &cuts.overheads {
        overhead(found, line);
    }
    for pile in &cuts.piles {
        if pile.across <= Length::ZERO {
            found.wrong(
                format!("piles.{}.across", pile.id),
                words::site_faults::a_pile_has_a_foot(),
            );
        }
    }
    for one in &cuts.structures {
        if let Err(error) = buried::away(&one.points, point::Point::default()) {
            found.wrong(format!("structures.{}", one.id), error.text());
        }
    }
    if cuts.clearance < Length::ZERO {
        found.wrong(
            "clearance",
            words::site_faults::a_clearance_cant_be_negative(),
        );
    }
}

fn overhead(found: &mut Faults, line: &OverheadLine) {
    let path = format!("overheads.{}", line.id);
    if let Err(error) = buried::away(&line.points, point::Point::default()) {
        found.wrong(path.clone(), error.text());
    }
    if line.height <= Length::ZERO {
        found.wrong(
            format!("{path}.height"),
            words::site_faults::line_overhead_hangs_above_ground(),
        );
    }
    if line
        .clearance
        .is_some_and(|clearance| clearance <= Length::ZERO)
    {
        found.wrong(
            format!("{path}.clearance"),
            words::site_faults::a_clearance_lies_above_zero(),
        );
    }
    match line.kilovolts {
        Some(kilovolts) if !kilovolts.is_finite() || kilovolts < 0.0 => found.wrong(
            format!("{path}.kilovolts"),
            words::site_faults::voltage_number_kilovolts_not_below(),
        ),
        Some(kilovolts) if kilovolts > 1_000.0 && line.clearance.is_none() => found.wrong(
            format!("{path}.clearance"),
            words::site_faults::over_1_000_kv_line(),
        ),
        None if line.kilovolts_at_most.is_none() => found.odd(
            format!("{path}.kilovolts"),
            words::site_faults::nobody_has_said_its_voltage(),
        ),
        _ => {}
    }
    let path = format!("{path}.kilovolts_at_most");
    match line.kilovolts_at_most {
        Some(most) if !most.is_finite() || most < 0.0 => found.wrong(
            path,
            words::site_faults::voltage_number_kilovolts_not_below(),
        ),
        Some(most) if line.kilovolts.is_some_and(|said| said > most) => {
            found.wrong(path, words::site_faults::its_voltage_more_than_what());
        }
        _ => {}
    }
}

fn names(found: &mut Faults, site: &Site) {
    let cuts = &site.cuts;
    let lists: [(&str, Vec<&str>); 6] = [
        (
            "faces",
            cuts.faces.iter().map(|one| one.id.as_str()).collect(),
        ),
        (
            "structures",
            cuts.structures.iter().map(|one| one.id.as_str()).collect(),
        ),
        (
            "utilities",
            cuts.utilities.iter().map(|one| one.id.as_str()).collect(),
        ),
        (
            "tickets",
            cuts.tickets.iter().map(|one| one.id.as_str()).collect(),
        ),
        (
            "overheads",
            cuts.overheads.iter().map(|one| one.id.as_str()).collect(),
        ),
        (
            "piles",
            cuts.piles.iter().map(|one| one.id.as_str()).collect(),
        ),
    ];
    for (list, names) in lists {
        let mut seen = BTreeSet::new();
        for name in names {
            if name.trim().is_empty() {
                found.wrong(list, words::site_faults::one_has_no_name(&listed(list)));
            } else if !seen.insert(name) {
                found.wrong(
                    format!("{list}.{name}"),
                    words::site_faults::stands_twice_among_the(&name, &listed(list)),
                );
            }
        }
    }
}

fn face(found: &mut Faults, site: &Site, zone: &FaceZone) {
    let path = format!("faces.{}", zone.id);
    for error in zone.ground.check() {
        found.wrong(format!("{path}.ground"), error.text());
    }
    let toe: Vec<face::Toe> = zone
        .toe
        .iter()
        .map(|corner| face::Toe {
            at: corner.at,
            elevation: corner.elevation,
        })
        .collect();
    if let Err(error) = face::ways(&toe, zone.bank, Length::from_hundredths_of_a_foot(200)) {
        found.wrong(format!("{path}.toe"), error.text());
    }
    for corner in &zone.toe {
        match strip::ground(zone, corner.at) {
            Err(why) => found.wrong(
                format!("{path}.ground"),
                words::site_faults::ground_over_toe_not_known(&why),
            ),
            Ok(ground) if ground < corner.elevation => found.wrong(
                format!("{path}.toe"),
                words::site_faults::toe_stands_over_ground(
                    &corner.elevation,
                    &(corner.elevation - ground),
                ),
            ),
            Ok(_) => {}
        }
    }
    let tops: Vec<Length> = zone.layers.iter().filter_map(|layer| layer.top).collect();
    let open = zone
        .layers
        .iter()
        .filter(|layer| layer.top.is_none())
        .count();
    let last_open = zone.layers.last().is_none_or(|layer| layer.top.is_none());
    if tops.windows(2).any(|pair| pair[0] >= pair[1]) || open > 1 || !last_open {
        found.wrong(
            format!("{path}.layers"),
            words::site_faults::layers_go_up_from_bottom(),
        );
    }
    for id in zone.toe_marks.iter().chain(&zone.crest_marks) {
        if site.mark(id).is_none() {
            found.wrong(
                path.clone(),
                words::site_faults::names_mark_which_not_this(&zone.id, &id),
            );
        }
    }
    if let Some(target) = &zone.target
        && site.target(target).is_none()
    {
        found.wrong(
            format!("{path}.target"),
            words::site_faults::names_target_which_not_this_2(&zone.id, &target),
        );
    }
    if zone.pipe_crown.is_some_and(|crown| crown <= Length::ZERO) {
        found.wrong(
            format!("{path}.pipe_crown"),
            words::site_faults::pipe_crown_stands_above_its(),
        );
    }
}

fn utility_faults(found: &mut Faults, utility: &Utility) {
    let path = format!("utilities.{}", utility.id);
    if let Err(error) = buried::away(&utility.points, point::Point::default()) {
        found.wrong(path.clone(), error.text());
    }
    if let Err(error) = buried::half_band(utility.outside, utility.zone) {
        found.wrong(path, error.text());
    }
}

fn ticket_faults(found: &mut Faults, ticket: &Ticket) {
    let path = format!("tickets.{}", ticket.id);
    let days = (day_number(&ticket.from), day_number(&ticket.to));
    match days {
        (Some(from), Some(to)) if from <= to => {}
        (Some(_), Some(_)) => found.wrong(
            path.clone(),
            words::site_faults::holds_from_which_before(&ticket.from, &ticket.to),
        ),
        _ => found.wrong(path.clone(), words::site_faults::its_days_are_dates_such()),
    }
    if ticket.area.len() < 3 {
        found.wrong(
            format!("{path}.area"),
            words::site_faults::ground_ticket_covers_has_three(),
        );
    } else if point::crosses_itself(&ticket.area) {
        found.wrong(
            format!("{path}.area"),
            words::site_faults::ground_ticket_covers_crosses_itself(),
        );
    }
}
