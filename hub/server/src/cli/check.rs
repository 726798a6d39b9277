//! `check`: every fault of a site file with its line; what each mark is dug to; and, beside a data folder, what the file would
//! change there and whose word it would undo, before anybody puts it in force.

use std::path::Path;

use day::said::site::{self, SiteChangeFound, Undone};
use day::said::touched::{Touched, TouchedMark};
use day::site::Site;
use earthwork::length::{Form, Length};
use earthwork::target::DigTo;

use crate::days::KeptDay;
use crate::error::StartError;
use crate::site_file;
use crate::terminal::say;
use crate::when;

/// Checks a file. `list` prints what each mark is dug to; `data` is a data folder to hold the file against.
pub(super) fn check(file: &Path, list: bool, data: Option<&Path>) -> Result<(), StartError> {
    let read = site_file::read(file)?;
    for odd in &read.odd {
        say(&odd.to_string());
    }
    let site = &read.site;
    if list {
        for line in dig_tos(site) {
            say(&line);
        }
    }
    if let Some(data) = data {
        against(data, site)?;
    }
    let order = if read.odd.is_empty() {
        "in order".to_owned()
    } else {
        format!("in order but for {} odd, above", read.odd.len())
    };
    say(&format!(
        "{}: {order}. “{}”: {} benchmarks, {} targets, {} marks, {} machines, {} lines.",
        file.display(),
        site.name,
        site.benchmarks.len(),
        site.targets.len(),
        site.marks.len(),
        site.machines.len(),
        site.lines.len()
    ));
    Ok(())
}

fn feet(length: Length) -> String {
    length.show(Form::DecimalFeet { places: 2 })
}

/// What each mark is dug to, in the order of the file.
fn dig_tos(site: &Site) -> Vec<String> {
    let each = site.marks.iter().map(|mark| {
        let (target, dig_to) = match site.target_of(mark) {
            None => ("no target", "–".to_owned()),
            Some(target) => {
                let dig_to = match target.grade.dig_to(mark.place) {
                    Ok(DigTo::At(at)) => feet(at),
                    Ok(DigTo::NearStep { before, after, .. }) => {
                        format!("{} | {} at a step", feet(before), feet(after))
                    }
                    Err(error) => error.to_string(),
                };
                (target.id.as_str(), dig_to)
            }
        };
        format!("{} · {target} · dig to {dig_to}", mark.id)
    });
    each.collect()
}

/// What the file changes of the site in force in a data folder.
fn against(data: &Path, file: &Site) -> Result<(), StartError> {
    let day = KeptDay::read(data, None, u64::MAX, |_, _| None)?;
    let Some(found) = site::compare(day.newest(), file) else {
        return Err(StartError::Asked(format!(
            "{} holds no site yet. Start the hub with a site file first.",
            data.display()
        )));
    };
    if found.differences.is_empty() {
        say(&format!(
            "Nothing differs from what is in force in {}.",
            data.display()
        ));
        return Ok(());
    }
    say(&format!(
        "It would change what is in force in {}:",
        data.display()
    ));
    for line in lines(&found) {
        say(&format!("  {line}"));
    }
    Ok(())
}

fn lines(found: &SiteChangeFound) -> Vec<String> {
    let mut lines: Vec<String> = found.undoes.iter().map(undoes).collect();
    lines.extend(found.differences.iter().map(|one| {
        let side = |text: &Option<String>| text.clone().unwrap_or_else(|| "–".into());
        format!("{}: {} → {}", one.what, side(&one.was), side(&one.now))
    }));
    lines.extend(touched(&found.touches));
    lines
}

fn undoes(one: &Undone) -> String {
    let side = |text: &Option<String>| text.clone().unwrap_or_else(|| "–".into());
    format!(
        "UNDOES what {} changed on a page on {} {} (“{}”): {}: {} → {}",
        one.by,
        when::date(one.at),
        when::to_the_minute(one.at),
        one.why,
        one.what,
        side(&one.was),
        side(&one.becomes)
    )
}

/// Every target and every mark that asks something else of the ground.
fn touched(touches: &Touched) -> Vec<String> {
    let side = |length: Option<Length>| length.map_or_else(|| "–".into(), feet);
    let targets = touches.targets.iter().map(|one| {
        let more = if one.more {
            "; its surface, edge, undercuts or tolerance change too"
        } else {
            ""
        };
        format!(
            "{}: its layers took {} off, take {} off{more}",
            one.target,
            side(one.layers_were),
            side(one.layers_are)
        )
    });
    let at = |one: Option<Length>, step: Option<[Length; 2]>| match step {
        Some([before, after]) => format!("{} | {}", feet(before), feet(after)),
        None => side(one),
    };
    let mark = |one: &TouchedMark| {
        format!(
            "{}: dig to {} → {}",
            one.mark,
            at(one.was, one.were_at_step),
            at(one.now, one.are_at_step)
        )
    };
    targets.chain(touches.marks.iter().map(mark)).collect()
}
