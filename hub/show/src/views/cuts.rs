//! Cards of faces, buried lines and tickets: what is known, what is owed, what holds work back.

use contract::ToSchema;
use earthwork::face::{self, Lowered, Material, RuleReminder, SoilClass, Strength};
use earthwork::length::Length;
use serde::Serialize;

use day::cuts::buried::{Crossing, crossings};
use day::cuts::daylight::DaylightFound;
use day::cuts::held::{self, HeldBy};
use day::cuts::now::{Alarm, FaceNow, InspectionWhy, PinNow, SeenNow, Signed};
use day::cuts::plan::{CutKind, FaceZone, Utility, UtilityKind};
use day::cuts::strip;
use day::said::pothole::Pothole;
use day::said::struck::{self, StruckCard};
use day::site::Site;
use day::state::State;
use day::time::Time;

/// A soil's weight where nobody has measured it, pounds a cubic foot (common practice).
const USUAL_PCF: f64 = 120.0;

/// Cuts and what is buried, as a page shows them.
#[derive(Clone, Debug, Default, PartialEq, Serialize, ToSchema)]
pub struct CutsCard {
    /// The rules in force, by name; empty when the site has no cut.
    pub rules: String,
    /// The competent persons.
    pub competent: Vec<String>,
    /// Faces and trenches.
    pub faces: Vec<FaceCard>,
    /// Buried lines.
    pub utilities: Vec<UtilityCard>,
    /// Trenches that cross them.
    pub crossings: Vec<Crossing>,
    /// Locate tickets.
    pub tickets: Vec<TicketCard>,
    /// Marks where no ticket covers the ground, for the supervisor, who may let it be dug with a reason.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub not_located: Vec<String>,
    /// What a supervisor has let go on today.
    pub allowed: Vec<HeldBy>,
    /// Lines that were struck or met, oldest first.
    pub struck: Vec<StruckCard>,
}

/// A face or a trench.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct FaceCard {
    /// Its name.
    pub id: String,
    /// The name that people read.
    pub name: String,
    /// Face or trench.
    pub kind: CutKind,
    /// The class that the competent person picked.
    pub picked: Option<SoilClass>,
    /// The class that counts.
    pub class: SoilClass,
    /// What lowered it.
    pub lowered_by: Vec<Lowered>,
    /// How it stands with the inspection; none where none is asked for.
    pub inspection: Option<InspectionCard>,
    /// The highest place, from toe to the ground before the cut.
    pub height: Length,
    /// The strip at its toe that belongs to nobody while it is left: as wide as it is high.
    pub strip: Length,
    /// Pins.
    pub pins: Vec<PinCard>,
    /// It was left.
    pub alarm: Option<Alarm>,
    /// Machines whose operators have yet to leave it.
    pub must_leave: Vec<String>,
    /// What was seen, oldest first.
    pub seen: Vec<SeenNow>,
    /// The newest word that asks for an inspection made after it; zero without one. What `inspect_face` names.
    pub word: u64,
    /// How it stands at each crest mark that was read.
    pub crests: Vec<CrestCard>,
    /// Its daylight against every line; the places stand in the sheet.
    pub daylight: Option<DaylightFound>,
    /// Benches that its class allows instead of the slope, from the bottom; empty where none are drawn for its soil.
    pub benches: Vec<BenchCard>,
    /// Ladders along a trench that is so deep, or will be.
    pub ladders: Option<LaddersCard>,
    /// What the rules ask of a cut so deep and no reading shows.
    pub also: Vec<RuleReminder>,
    /// For the engineer alone.
    pub engineer: Option<EngineerCard>,
}

/// Ladders along a trench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct LaddersCard {
    /// How many.
    pub many: u32,
    /// Nobody goes farther than this to one.
    pub travel: Length,
}

/// A bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BenchCard {
    /// Up.
    pub rise: Length,
    /// The tread behind it.
    pub tread: Length,
}

/// How it stands with the inspection.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum InspectionCard {
    /// Signed today, and nothing since asks for another.
    Signed {
        /// By whom, when.
        signed: Signed,
    },
    /// One is due.
    Due {
        /// Why.
        why: InspectionWhy,
        /// Since when.
        since: Time,
    },
    /// Somebody was called to work there without one.
    Overdue {
        /// Why it was due.
        why: InspectionWhy,
        /// Since when.
        since: Time,
        /// Since when somebody works there.
        worked_at: Time,
    },
}

/// A pair of pins.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct PinCard {
    /// The pins.
    pub pins: String,
    /// The newest tape.
    pub now: Option<PinNow>,
}

/// How a face stands at a crest mark.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct CrestCard {
    /// The mark.
    pub mark: String,
    /// From toe to crest, up.
    pub rise: Length,
    /// From toe to crest, level.
    pub run: Length,
    /// Run to one of rise.
    pub run_per_rise: f64,
    /// In degrees from level.
    pub degrees: f64,
    /// How far the crest must still go back, by the class and its slope.
    pub back: Length,
    /// What hangs over the line it should be cut to, cubic yards for each foot along it.
    pub hanging_per_foot: f64,
}

/// For the engineer alone: textbooks' figures with what they assume. No permission.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct EngineerCard {
    /// Critical height of a dry vertical face in one soil by its measured strength, feet; none without a strength. The most
    /// hopeful one: the soil whole up to the top.
    pub critical_height_ft: Option<f64>,
    /// The same when it has cracked down half of its height, feet.
    pub cracked_height_ft: Option<f64>,
    /// The same when no tension is relied on, feet: the most cautious.
    pub no_tension_height_ft: Option<f64>,
    /// Cohesion that was taken: half of the measured strength, pounds a square foot.
    pub cohesion_psf: Option<f64>,
    /// The weight that was taken, pounds a cubic foot.
    pub weight_pcf: f64,
    /// When one over the rate of a crack would reach nothing, by its last two rates.
    pub forecast: Option<Time>,
}

/// A buried line.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct UtilityCard {
    /// The line.
    pub utility: Utility,
    /// Where it was bared.
    pub potholes: Vec<Pothole>,
    /// Since when its paint is gone.
    pub paint_gone: Option<Time>,
}

/// A locate ticket.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct TicketCard {
    /// Its number.
    pub id: String,
    /// The last day that it holds for.
    pub to: String,
    /// Days left after this one; below zero it has lapsed, none when it does not hold yet.
    pub days_left: Option<i64>,
    /// Who looked at it today.
    pub checked: Option<Signed>,
    /// Who was asked.
    pub asks: Vec<UtilityKind>,
    /// Who was asked and has not answered.
    pub silent: Vec<UtilityKind>,
}

/// The cards; `whole` with what is for the supervisor and the engineer.
pub(crate) fn card(state: &State, whole: bool) -> CutsCard {
    let Some(site) = state.site() else {
        return CutsCard::default();
    };
    let struck = struck::cards(state);
    if site.cuts.is_empty() {
        return CutsCard {
            struck,
            ..CutsCard::default()
        };
    }
    CutsCard {
        rules: site.cuts.rules().name.clone(),
        competent: site.cuts.competent.clone(),
        faces: site
            .cuts
            .faces
            .iter()
            .map(|zone| face_card(state, site, zone, whole))
            .collect(),
        utilities: site
            .cuts
            .utilities
            .iter()
            .map(|utility| {
                let now = state.cuts.utilities.get(&utility.id);
                UtilityCard {
                    utility: utility.clone(),
                    potholes: now.map(|now| now.potholes.clone()).unwrap_or_default(),
                    paint_gone: now.and_then(|now| now.paint_gone),
                }
            })
            .collect(),
        crossings: crossings(state),
        tickets: tickets(state, site),
        not_located: if whole {
            not_located(state, site)
        } else {
            vec![]
        },
        allowed: state.cuts.allowed.clone(),
        struck,
    }
}

fn not_located(state: &State, site: &Site) -> Vec<String> {
    let marks = site.marks.iter().filter(|mark| {
        let held = held::at_mark(state, &mark.id);
        matches!(held, Some(HeldBy::NotLocated { .. }))
    });
    marks.map(|mark| mark.id.clone()).collect()
}

fn tickets(state: &State, site: &Site) -> Vec<TicketCard> {
    let day = state.day.as_ref().map_or("", |day| day.id.as_str());
    let each = site.cuts.tickets.iter().map(|ticket| {
        let now = state.cuts.tickets.get(&ticket.id);
        let answered = |kind: &UtilityKind| {
            now.is_some_and(|now| {
                now.responses.iter().any(|one| {
                    one.kind == *kind && one.answer != day::said::ticket::Answered::Silent
                })
            })
        };
        TicketCard {
            id: ticket.id.clone(),
            to: ticket.to.clone(),
            days_left: ticket.days_left(day),
            checked: now.map(|now| now.checked.clone()),
            asks: ticket.asks.clone(),
            silent: ticket
                .asks
                .iter()
                .filter(|kind| !answered(kind))
                .copied()
                .collect(),
        }
    });
    each.collect()
}

fn face_card(state: &State, site: &Site, zone: &FaceZone, whole: bool) -> FaceCard {
    let empty = FaceNow::default();
    let now = state.cuts.face(&zone.id).unwrap_or(&empty);
    let height = strip::highest(state, zone);
    FaceCard {
        id: zone.id.clone(),
        name: zone.name.clone(),
        kind: zone.kind,
        picked: now.picked,
        class: now.class(),
        lowered_by: now.lowered_by.clone(),
        inspection: inspection(state, site, zone, now, height),
        height,
        strip: height,
        pins: zone
            .pins
            .iter()
            .map(|pins| PinCard {
                pins: pins.clone(),
                now: now.pins.get(pins).copied(),
            })
            .collect(),
        alarm: now.alarm.clone(),
        must_leave: state
            .cuts
            .must_leave
            .iter()
            .filter(|(_, owed)| owed.iter().any(|must| must.zone == zone.id))
            .map(|(machine, _)| machine.clone())
            .collect(),
        seen: now.seen.clone(),
        word: now.word.map_or(0, |word| word.entry),
        crests: crests(state, site, zone),
        daylight: now.daylight.as_ref().map(|found| DaylightFound {
            places: vec![],
            ..found.clone()
        }),
        benches: benches(site, now, height),
        ladders: ladders(site, zone, height),
        also: also(site, height),
        engineer: whole.then(|| engineer(now)),
    }
}

/// How it stands with a zone's inspection; none where none is asked for.
pub(crate) fn inspection(
    state: &State,
    site: &Site,
    zone: &FaceZone,
    now: &FaceNow,
    height: Length,
) -> Option<InspectionCard> {
    let trench = zone.kind == CutKind::Trench;
    let asked =
        strip::is_dug(zone, height) && site.cuts.rules().inspection.binds().holds_for(trench);
    let begun = state.day.as_ref()?.at;
    let (why, since) = match (&now.inspected, now.due) {
        (Some(signed), None) => {
            return Some(InspectionCard::Signed {
                signed: signed.clone(),
            });
        }
        _ if !asked => return None,
        (_, Some(due)) => (due.why, due.since),
        (None, None) => (InspectionWhy::NewDay, begun),
    };
    Some(match now.worked_at {
        Some(worked_at) => InspectionCard::Overdue {
            why,
            since,
            worked_at,
        },
        None => InspectionCard::Due { why, since },
    })
}

/// The face at each crest mark, from the readings there and the bottom at its toe.
fn crests(state: &State, site: &Site, zone: &FaceZone) -> Vec<CrestCard> {
    let pieces = strip::pieces(state, site, zone);
    let ground = |at| strip::ground(zone, at);
    let each = zone.crest_marks.iter().filter_map(|id| {
        let mark = site.mark(id)?;
        let (_, taken) = state.last_reading(id)?;
        let here = strip::on_toe(zone, mark.place)?;
        let bottom = strip::bottom(state, zone, &here);
        let present = face::present_slope(taken.reading.elevation - bottom, here.away).ok()?;
        let (east, north) = (
            (mark.place.x - here.at.x).feet(),
            (mark.place.y - here.at.y).feet(),
        );
        let size = east.hypot(north);
        if size <= 0.0 {
            return None;
        }
        let way = face::Way {
            toe: face::Toe {
                at: here.at,
                elevation: bottom,
            },
            east: east / size,
            north: north / size,
        };
        let far = Length::from_hundredths_of_a_foot(30_000);
        let owed = face::outcrop(&way, &pieces, &ground, far).ok()?;
        let hanging = face::hanging_volume(
            Length::from_hundredths_of_a_foot(100),
            (present.run, present.rise),
            (owed.run, owed.height),
        );
        Some(CrestCard {
            mark: id.clone(),
            rise: present.rise,
            run: present.run,
            run_per_rise: present.run_per_rise,
            degrees: face::degrees(present.run_per_rise),
            back: (owed.run - present.run).max(Length::ZERO),
            hanging_per_foot: hanging.unwrap_or(0.0),
        })
    });
    each.collect()
}

/// Benches for the face's height; the soil counts as cohesive only when somebody found it so.
fn benches(site: &Site, now: &FaceNow, height: Length) -> Vec<BenchCard> {
    let cohesive = now.evidence.material == Some(Material::Cohesive);
    if now.counted.is_none() || !now.design.is_empty() {
        return vec![];
    }
    face::benches(site.cuts.rules(), now.class(), cohesive, height)
        .unwrap_or_default()
        .into_iter()
        .map(|bench| BenchCard {
            rise: bench.rise,
            tread: bench.tread,
        })
        .collect()
}

fn also(site: &Site, height: Length) -> Vec<RuleReminder> {
    let mut asked = site.cuts.rules().also.clone();
    asked.retain(|one| one.applies(height));
    asked
}

fn ladders(site: &Site, zone: &FaceZone, height: Length) -> Option<LaddersCard> {
    let rules = site.cuts.rules();
    let trench = zone.kind == CutKind::Trench;
    if !rules.egress.binds().holds_for(trench) || !rules.egress.limit.owed(height) {
        return None;
    }
    let length = zone
        .toe
        .windows(2)
        .map(|pair| pair[0].at.distance(pair[1].at))
        .sum();
    Some(LaddersCard {
        many: face::ladders(rules, length).ok()?,
        travel: rules.egress.travel,
    })
}

fn engineer(now: &FaceNow) -> EngineerCard {
    let cohesion = now.evidence.strength.map(|strength| match strength {
        Strength::Tsf { value } => value * 1_000.0,
        Strength::Kpa { value } => value / 95.760_518 * 1_000.0,
    });
    let heights =
        cohesion.and_then(|cohesion| face::critical_height(cohesion, USUAL_PCF, 0.0, 90.0).ok());
    EngineerCard {
        critical_height_ft: heights.map(|found| found.height),
        cracked_height_ft: heights.and_then(|found| found.cracked),
        no_tension_height_ft: heights.and_then(|found| found.no_tension),
        cohesion_psf: cohesion,
        weight_pcf: USUAL_PCF,
        forecast: now
            .tapes
            .values()
            .filter_map(|tapes| face::forecast(tapes))
            .min()
            .map(Time),
    }
}
