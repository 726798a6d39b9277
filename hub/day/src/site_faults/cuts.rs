//! What can be wrong with faces, buried lines and tickets.

use std::collections::BTreeSet;

use earthwork::buried;
use earthwork::face;
use earthwork::length::Length;
use earthwork::point;

use super::{Faults, in_spanish};
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
        found.wrong(
            "competent",
            "The site has faces and names no competent person. Add competent = [\"…\"] with the name or initials under which that person joins.",
            "La obra tiene taludes y no nombra a nadie competente. Agregue a esa persona con el nombre o las iniciales con que entra.",
        );
    }
    for utility in &cuts.utilities {
        utility_faults(found, utility);
    }
    if !cuts.utilities.is_empty() && cuts.tickets.is_empty() {
        found.odd(
            "utilities",
            "Buried lines are drawn, but no locate ticket. Add [[ticket]] with its dates and the ground it covers.",
            "Hay líneas enterradas dibujadas, pero ningún permiso de localización. Agréguelo con sus fechas y el terreno que cubre.",
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
                "A pile has a foot: give how far it is across.",
                "Un montón tiene pie: diga cuánto mide de lado a lado.",
            );
        }
    }
    for one in &cuts.structures {
        if let Err(error) = buried::away(&one.points, point::Point::default()) {
            found.wrong(
                format!("structures.{}", one.id),
                error.to_string(),
                error.spanish(),
            );
        }
    }
    if cuts.clearance < Length::ZERO {
        found.wrong(
            "clearance",
            "A clearance can't be negative.",
            "Una holgura no puede ser negativa.",
        );
    }
}

fn overhead(found: &mut Faults, line: &OverheadLine) {
    let path = format!("overheads.{}", line.id);
    if let Err(error) = buried::away(&line.points, point::Point::default()) {
        found.wrong(path.clone(), error.to_string(), error.spanish());
    }
    if line.height <= Length::ZERO {
        found.wrong(
            format!("{path}.height"),
            "A line overhead hangs above the ground: give its lowest height over it.",
            "Una línea aérea cuelga sobre el suelo: dé su altura más baja.",
        );
    }
    if line
        .clearance
        .is_some_and(|clearance| clearance <= Length::ZERO)
    {
        found.wrong(
            format!("{path}.clearance"),
            "A clearance lies above zero.",
            "Una holgura es mayor que cero.",
        );
    }
    match line.kilovolts {
        Some(kilovolts) if !kilovolts.is_finite() || kilovolts < 0.0 => found.wrong(
            format!("{path}.kilovolts"),
            "A voltage is a number of kilovolts, not below zero.",
            "El voltaje es un número de kilovoltios, no menor que cero.",
        ),
        Some(kilovolts) if kilovolts > 1_000.0 && line.clearance.is_none() => found.wrong(
            format!("{path}.clearance"),
            "Over 1,000 kV the line's owner says how far to stay away: give the clearance.",
            "Con más de 1,000 kV la compañía dice a qué distancia quedarse: dé la holgura.",
        ),
        None if line.kilovolts_at_most.is_none() => found.odd(
            format!("{path}.kilovolts"),
            "Nobody has said its voltage: everything stays 50 ft away until the line's owner does. If the owner says only that it carries no more than 350 kV, give kilovolts_at_most = 350: then 20 ft.",
            "Nadie ha dicho su voltaje: todo se queda a 50 pies hasta que la compañía lo diga. Si la compañía dice solo que no pasa de 350 kV, dé kilovolts_at_most = 350: entonces 20 pies.",
        ),
        _ => {}
    }
    let path = format!("{path}.kilovolts_at_most");
    match line.kilovolts_at_most {
        Some(most) if !most.is_finite() || most < 0.0 => found.wrong(
            path,
            "A voltage is a number of kilovolts, not below zero.",
            "El voltaje es un número de kilovoltios, no menor que cero.",
        ),
        Some(most) if line.kilovolts.is_some_and(|said| said > most) => found.wrong(
            path,
            "Its voltage is more than what is said to be the most. Ask the line's owner, and give one of the two.",
            "Su voltaje es más de lo que se dice que es el máximo. Pregunte a la compañía y dé uno de los dos.",
        ),
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
                found.wrong(
                    list,
                    format!("One of the {list} has no name. Name it."),
                    format!("Uno de {} no tiene nombre. Póngale.", in_spanish(list)),
                );
            } else if !seen.insert(name) {
                found.wrong(
                    format!("{list}.{name}"),
                    format!("“{name}” stands twice among the {list}. Rename or remove one."),
                    format!(
                        "«{name}» está dos veces entre {}. Cambie el nombre de uno o quítelo.",
                        in_spanish(list)
                    ),
                );
            }
        }
    }
}

fn face(found: &mut Faults, site: &Site, zone: &FaceZone) {
    let path = format!("faces.{}", zone.id);
    for error in zone.ground.check() {
        found.wrong(format!("{path}.ground"), error.to_string(), error.spanish());
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
        found.wrong(format!("{path}.toe"), error.to_string(), error.spanish());
    }
    for corner in &zone.toe {
        match strip::ground(zone, corner.at) {
            Err(why) => found.wrong(
                format!("{path}.ground"),
                format!("The ground over the toe is not known: {why}"),
                format!("No se conoce el terreno sobre el pie: {why}"),
            ),
            Ok(ground) if ground < corner.elevation => found.wrong(
                format!("{path}.toe"),
                format!(
                    "The toe at {} stands {} over the ground: a face has no negative height. Look at both.",
                    corner.elevation,
                    corner.elevation - ground
                ),
                format!(
                    "El pie en {} queda {} arriba del terreno: un talud no tiene altura negativa. Revise los dos.",
                    corner.elevation,
                    corner.elevation - ground
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
            "Layers go up from the bottom, and only the uppermost has no top.",
            "Las capas van de abajo hacia arriba y solo la última no tiene tope.",
        );
    }
    for id in zone.toe_marks.iter().chain(&zone.crest_marks) {
        if site.mark(id).is_none() {
            found.wrong(
                path.clone(),
                format!(
                    "{} names the mark “{id}”, which is not on this site.",
                    zone.id
                ),
                format!(
                    "{} nombra la marca «{id}», que no está en esta obra.",
                    zone.id
                ),
            );
        }
    }
    if let Some(target) = &zone.target
        && site.target(target).is_none()
    {
        found.wrong(
            format!("{path}.target"),
            format!(
                "{} names the target “{target}”, which is not on this site.",
                zone.id
            ),
            format!(
                "{} nombra la rasante «{target}», que no está en esta obra.",
                zone.id
            ),
        );
    }
    if zone.pipe_crown.is_some_and(|crown| crown <= Length::ZERO) {
        found.wrong(
            format!("{path}.pipe_crown"),
            "The pipe's crown stands above its invert: give more than zero.",
            "El lomo del tubo está arriba de su plantilla: dé más de cero.",
        );
    }
}

fn utility_faults(found: &mut Faults, utility: &Utility) {
    let path = format!("utilities.{}", utility.id);
    if let Err(error) = buried::away(&utility.points, point::Point::default()) {
        found.wrong(path.clone(), error.to_string(), error.spanish());
    }
    if let Err(error) = buried::half_band(utility.outside, utility.zone) {
        found.wrong(path, error.to_string(), error.spanish());
    }
}

fn ticket_faults(found: &mut Faults, ticket: &Ticket) {
    let path = format!("tickets.{}", ticket.id);
    let days = (day_number(&ticket.from), day_number(&ticket.to));
    match days {
        (Some(from), Some(to)) if from <= to => {}
        (Some(_), Some(_)) => found.wrong(
            path.clone(),
            format!(
                "It holds from {} to {}, which is before. Look at both.",
                ticket.from, ticket.to
            ),
            format!(
                "Vale de {} a {}, que es antes. Revise las dos fechas.",
                ticket.from, ticket.to
            ),
        ),
        _ => found.wrong(
            path.clone(),
            "Its days are dates such as from = \"2030-05-01\", to = \"2030-05-28\".",
            "Sus días son fechas como 2030-05-01 y 2030-05-28.",
        ),
    }
    if ticket.area.len() < 3 {
        found.wrong(
            format!("{path}.area"),
            "The ground that a ticket covers has three corners or more.",
            "El terreno que cubre un permiso tiene tres esquinas o más.",
        );
    } else if point::crosses_itself(&ticket.area) {
        found.wrong(
            format!("{path}.area"),
            "The ground that the ticket covers crosses itself. Give its corners in order.",
            "El terreno que cubre el permiso se cruza a sí mismo. Dé sus esquinas en orden.",
        );
    }
}
