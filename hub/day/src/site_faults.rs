//! What can be wrong with a site, each fault with the path of the thing that is wrong: for `check` and for the first start.

mod cuts;
mod far_off;
mod machines;
mod sizes;

use std::collections::BTreeSet;

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::plan_sense;
use crate::said::edge;
use crate::site::{Line, Site, Target};

/// A fault of a site.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SiteFault {
    /// Where, by kind and name: `targets.EAST`, `marks.N-04.target`.
    pub path: String,
    /// What is wrong and what to do.
    #[serde(rename = "english")]
    pub message: String,
    /// The same in Spanish.
    pub spanish: String,
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
    for (path, english, spanish) in far_off::odd(site) {
        found.odd(path, english, spanish);
    }
    for odd in plan_sense::odd(site) {
        found.odd(odd.path, odd.english, odd.spanish);
    }
    found.0
}

/// A list's name in Spanish, with its article.
fn in_spanish(list: &str) -> &str {
    match list {
        "benchmarks" => "los bancos de nivel",
        "lines" => "las líneas",
        "targets" => "las rasantes",
        "marks" => "las marcas",
        "machines" => "las máquinas",
        "rods" => "los estadales",
        "lasers" => "los láseres",
        "faces" => "los taludes",
        "structures" => "las estructuras",
        "utilities" => "las líneas enterradas",
        "tickets" => "los permisos",
        "overheads" => "las líneas aéreas",
        "piles" => "los montones",
        other => other,
    }
}

struct Faults(Vec<SiteFault>);

impl Faults {
    fn wrong(
        &mut self,
        path: impl Into<String>,
        english: impl Into<String>,
        spanish: impl Into<String>,
    ) {
        self.0.push(SiteFault {
            path: path.into(),
            message: english.into(),
            spanish: spanish.into(),
            warning: false,
        });
    }

    fn odd(
        &mut self,
        path: impl Into<String>,
        english: impl Into<String>,
        spanish: impl Into<String>,
    ) {
        self.0.push(SiteFault {
            path: path.into(),
            message: english.into(),
            spanish: spanish.into(),
            warning: true,
        });
    }

    fn whole(&mut self, site: &Site) {
        if site.name.trim().is_empty() {
            self.wrong(
                "name",
                "The site has no name. Give it the name that the crew uses.",
                "La obra no tiene nombre. Póngale el que usa la cuadrilla.",
            );
        }
        let needs = [
            (
                "benchmarks",
                site.benchmarks.is_empty(),
                "no benchmark: nothing can be levelled",
                "no tiene banco de nivel: no hay de dónde nivelar",
            ),
            (
                "machines",
                site.machines.is_empty(),
                "no machine: nobody can be called",
                "no tiene máquina: no hay a quién avisar",
            ),
            (
                "rods",
                site.rods.is_empty(),
                "no rod: nothing can be read",
                "no tiene estadal: no hay con qué leer",
            ),
            (
                "lasers",
                site.lasers.is_empty(),
                "no laser: nothing can be set up",
                "no tiene láser: no hay qué poner",
            ),
        ];
        for (path, missing, english, spanish) in needs {
            if missing {
                self.wrong(
                    path,
                    format!("The site has {english}. Add one."),
                    format!("La obra {spanish}. Agregue uno."),
                );
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
                    self.wrong(
                        list,
                        format!("One of the {list} has no name. Name it."),
                        format!("Uno de {} no tiene nombre. Póngale.", in_spanish(list)),
                    );
                } else if !seen.insert(name) {
                    self.wrong(
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

    fn benchmarks(&mut self, site: &Site) {
        for (i, one) in site.benchmarks.iter().enumerate() {
            for other in &site.benchmarks[i + 1..] {
                let apart = (one.elevation - other.elevation).abs();
                if apart < BENCHMARKS_ALIKE {
                    self.odd(
                        format!("benchmarks.{}", other.id),
                        format!(
                            "{} and {} are only {apart} apart: a mix-up could not be noticed. Add a third.",
                            one.id, other.id
                        ),
                        format!(
                            "{} y {} difieren solo {apart}: no se notaría si se confunden. Agregue un tercero.",
                            one.id, other.id
                        ),
                    );
                }
            }
            if one.doubt < Length::ZERO {
                self.wrong(
                    format!("benchmarks.{}.doubt", one.id),
                    "A doubt can't be negative.",
                    "Una duda no puede ser negativa.",
                );
            }
        }
    }

    fn target(&mut self, target: &Target) {
        let path = format!("targets.{}", target.id);
        for error in target.grade.check() {
            self.wrong(path.clone(), error.to_string(), error.spanish());
        }
        if target.tolerance.high < Length::ZERO || target.tolerance.low < Length::ZERO {
            self.wrong(
                format!("{path}.tolerance"),
                "A tolerance can't be negative: give how much high and how much low is allowed, both as plain amounts.",
                "Una tolerancia no puede ser negativa: diga cuánto alto y cuánto hondo se permite, las dos como cantidades simples.",
            );
        }
        if !(target.guard_factor.is_finite() && (0.0..=3.0).contains(&target.guard_factor)) {
            self.wrong(
                format!("{path}.guard_factor"),
                "The guard factor must lie between 0 and 3: 1 is usual, 1.65 where the drawing asks for proof.",
                "El factor de guarda va de 0 a 3: lo usual es 1, y 1.65 donde el plano pide comprobar.",
            );
        }
        if target.grade.stack.surface.trim().is_empty() {
            self.wrong(
                format!("{path}.surface"),
                "Say which surface the elevation is of, such as \"top of footing\": a bare number could be any of them.",
                "Diga de qué superficie es la cota, como «corona de zapata»: un número solo puede ser de cualquiera.",
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
                    format!(
                        "{} names the target “{name}”, which is not on this site.",
                        mark.id
                    ),
                    format!(
                        "{} nombra la rasante «{name}», que no está en esta obra.",
                        mark.id
                    ),
                );
                continue;
            };
            if let Err(error) = target.grade.dig_to(mark.place) {
                self.wrong(
                    path.clone(),
                    format!("{}: {error}", mark.id),
                    format!("{}: {}", mark.id, error.spanish()),
                );
            }
            if site.machine_for(name).is_none() {
                self.odd(
                    path,
                    format!(
                        "{}: no machine works on {name}, so its readings will tell nobody.",
                        mark.id
                    ),
                    format!(
                        "{}: ninguna máquina trabaja en {name}, así que sus lecturas no avisan a nadie.",
                        mark.id
                    ),
                );
            }
        }
    }

    fn lines(&mut self, site: &Site) {
        for line in &site.lines {
            if line.points.len() < 2 {
                self.wrong(
                    format!("lines.{}", line.id),
                    "A line needs at least two points.",
                    "Una línea necesita por lo menos dos puntos.",
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
            return self.wrong(
                path,
                format!("{id} crosses itself: give its corners in order."),
                format!("{id} se cruza a sí misma: dé sus esquinas en orden."),
            );
        }
        let distances: Result<Vec<Length>, _> = site
            .marks
            .iter()
            .map(|mark| kept.distance(mark.place))
            .collect();
        match distances {
            Err(error) => self.wrong(path, error.to_string(), error.spanish()),
            Ok(off) if !off.is_empty() && off.iter().all(|off| *off < Length::ZERO) => self.wrong(
                path,
                format!(
                    "Every mark lies on the far side of {id}, which nobody may cross: turn its `keep` to the other hand, looking from its first point to its last."
                ),
                format!(
                    "Todas las marcas están al otro lado de {id}, que nadie debe cruzar: cambie el lado que se guarda, mirando del primer punto al último."
                ),
            ),
            Ok(_) => {}
        }
    }
}
