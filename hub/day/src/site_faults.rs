//! What can be wrong with a site, each fault with the path of the thing that is wrong: for `check` and for the first start.

mod cuts;
mod far_off;
mod machines;
mod sizes;

use std::collections::BTreeSet;

use contract::ToSchema;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::plan_sense;
use crate::said::edge;
use crate::site::{Line, Site, Target};

/// A fault of a site.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SiteFault {
    /// Where, by kind and name: `targets.EAST`, `marks.N-04.target`.
    pub path: String,
    /// What is wrong and what to do.
    #[serde(flatten)]
    pub text: Text,
    /// Odd, but the crew may mean it.
    pub warning: bool,
}

/// Two benchmarks nearer in elevation than this can be mixed up unnoticed (common practice).
const BENCHMARKS_ALIKE: Length = Length::from_hundredths_of_a_foot(5);

/// Everything that is wrong with a site.
pub fn faults(site: &Site) -> Vec<SiteFault> {
    let mut found = Faults(Vec::new());
    found.whole(site);
    found.names(site);
    found.benchmarks(site);
    for target in &site.targets {
        found.target(target);
    }
    found.marks(site);
    for machine in &site.machines {
        machines::faults(&mut found, site, machine);
    }
    found.lines(site);
    sizes::faults(&mut found, site);
    cuts::faults(&mut found, site);
    for (path, text) in far_off::odd(site) {
        found.odd(path, text);
    }
    for odd in plan_sense::odd(site) {
        found.odd(odd.path, odd.text);
    }
    found.0
}

/// A list of the site file as a sentence names it.
fn listed(list: &str) -> Text {
    use words::site_faults::list;
    match list {
        "benchmarks" => list::benchmarks().into(),
        "lines" => list::lines().into(),
        "targets" => list::targets().into(),
        "marks" => list::marks().into(),
        "machines" => list::machines().into(),
        "rods" => list::rods().into(),
        "lasers" => list::lasers().into(),
        "faces" => list::faces().into(),
        "structures" => list::structures().into(),
        "utilities" => list::utilities().into(),
        "tickets" => list::tickets().into(),
        "overheads" => list::overheads().into(),
        "piles" => list::piles().into(),
        other => Text::alike(other),
    }
}

struct Faults(Vec<SiteFault>);

impl Faults {
    fn wrong(&mut self, path: impl Into<String>, text: impl Into<Text>) {
        self.0.push(SiteFault {
            path: path.into(),
            text: text.into(),
            warning: false,
        });
    }

    fn odd(&mut self, path: impl Into<String>, text: impl Into<Text>) {
        self.0.push(SiteFault {
            path: path.into(),
            text: text.into(),
            warning: true,
        });
    }

    fn whole(&mut self, site: &Site) {
        if site.name.trim().is_empty() {
            self.wrong("name", words::site_faults::the_site_has_no_name());
        }
        let needs = [
            (
                "benchmarks",
                site.benchmarks.is_empty(),
                words::site_faults::no_benchmark(),
            ),
            (
                "machines",
                site.machines.is_empty(),
                words::site_faults::no_machine(),
            ),
            ("rods", site.rods.is_empty(), words::site_faults::no_rod()),
            (
                "lasers",
                site.lasers.is_empty(),
                words::site_faults::no_laser(),
            ),
        ];
        for (path, missing, without) in needs {
            if missing {
                self.wrong(path, words::site_faults::the_site_has(&without));
            }
        }
    }

    fn names(&mut self, site: &Site) {
        let lists: [(&str, Vec<&str>); 7] = [
            (
                "benchmarks",
                site.benchmarks.iter().map(|b| b.id.as_str()).collect(),
            ),
            ("lines", site.lines.iter().map(|l| l.id.as_str()).collect()),
            (
                "targets",
                site.targets.iter().map(|t| t.id.as_str()).collect(),
            ),
            ("marks", site.marks.iter().map(|m| m.id.as_str()).collect()),
            (
                "machines",
                site.machines.iter().map(|m| m.id.as_str()).collect(),
            ),
            ("rods", site.rods.iter().map(|r| r.id.as_str()).collect()),
            (
                "lasers",
                site.lasers.iter().map(|l| l.id.as_str()).collect(),
            ),
        ];
        for (list, names) in lists {
            let mut seen = BTreeSet::new();
            for name in names {
                if name.trim().is_empty() {
                    self.wrong(list, words::site_faults::one_has_no_name(&listed(list)));
                } else if !seen.insert(name) {
                    self.wrong(
                        format!("{list}.{name}"),
                        words::site_faults::stands_twice_among_the(&name, &listed(list)),
                    );
                }
            }
        }
    }

    fn benchmarks(&mut self, site: &Site) {
        for (i, one) in site.benchmarks.iter().enumerate() {
            for other in &site.benchmarks[i + 1..] {
                let apart = (one.elevation - other.elevation).abs();
                if apart < BENCHMARKS_ALIKE {
                    self.odd(
                        format!("benchmarks.{}", other.id),
                        words::site_faults::and_are_only_apart(&one.id, &other.id, &apart),
                    );
                }
            }
            if one.doubt < Length::ZERO {
                self.wrong(
                    format!("benchmarks.{}.doubt", one.id),
                    words::site_faults::a_doubt_cant_be_negative(),
                );
            }
        }
    }

    fn target(&mut self, target: &Target) {
        let path = format!("targets.{}", target.id);
        for error in target.grade.check() {
            self.wrong(path.clone(), error.text());
        }
        if target.tolerance.high < Length::ZERO || target.tolerance.low < Length::ZERO {
            self.wrong(
                format!("{path}.tolerance"),
                words::site_faults::a_tolerance_cant_be_negative(),
            );
        }
        if !(target.guard_factor.is_finite() && (0.0..=3.0).contains(&target.guard_factor)) {
            self.wrong(
                format!("{path}.guard_factor"),
                words::site_faults::guard_factor_must_lie_between(),
            );
        }
        if target.grade.stack.surface.trim().is_empty() {
            self.wrong(
                format!("{path}.surface"),
                words::site_faults::say_which_surface_elevation_such(),
            );
        }
    }

    fn marks(&mut self, site: &Site) {
        for mark in &site.marks {
            let path = format!("marks.{}", mark.id);
            let Some(name) = &mark.target else {
                continue;
            };
            let Some(target) = site.target(name) else {
                self.wrong(
                    format!("{path}.target"),
                    words::site_faults::names_target_which_not_this(&mark.id, &name),
                );
                continue;
            };
            if let Err(error) = target.grade.dig_to(mark.place) {
                self.wrong(
                    path.clone(),
                    words::site_faults::at_mark(&mark.id, &error.text()),
                );
            }
            if site.machine_for(name).is_none() {
                self.odd(
                    path,
                    words::site_faults::no_machine_works_so_its(&mark.id, &name),
                );
            }
        }
    }

    fn lines(&mut self, site: &Site) {
        for line in &site.lines {
            if line.points.len() < 2 {
                self.wrong(
                    format!("lines.{}", line.id),
                    words::site_faults::line_needs_least_two_points(),
                );
            } else if line.no_cross {
                self.no_cross(site, line);
            }
        }
    }

    /// A line that nobody may cross has two sides, and the work lies on the one to keep to.
    fn no_cross(&mut self, site: &Site, line: &Line) {
        let (path, id, kept) = (format!("lines.{}", line.id), &line.id, edge::kept(line));
        if kept.crosses_itself() {
            return self.wrong(path, words::site_faults::crosses_itself(&id));
        }
        let distances: Result<Vec<Length>, _> = site
            .marks
            .iter()
            .map(|mark| kept.distance(mark.place))
            .collect();
        match distances {
            Err(error) => self.wrong(path, error.text()),
            Ok(off) if !off.is_empty() && off.iter().all(|off| *off < Length::ZERO) => {
                self.wrong(path, words::site_faults::every_mark_lies_far_side(&id));
            }
            Ok(_) => {}
        }
    }
}
