//! Loads out and in: tapped on the ground or in the cab, ticketed when the paper comes, taken back when miscounted.

use contract::ToSchema;
use earthwork::figure::{Figure, can_be};
use serde::{Deserialize, Serialize};

use crate::account::Load;
use crate::account::hauled::loose_weight;
use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Which way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Way {
    /// Off the site.
    Out,
    /// On to the site.
    In,
}

/// A load is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CountLoad {
    /// Which way.
    pub way: Way,
    /// What is in it.
    pub material: String,
    /// How many trucks alike.
    #[serde(default = "one")]
    pub trucks: u32,
    /// Loose cubic yards of all of them; the price list's truck when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loose_cy: Option<f64>,
    /// Tons of all of them, when weighed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tons: Option<f64>,
    /// The ticket's number, when it is there already.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ticket: Option<String>,
}

impl Saying for CountLoad {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        count(at.state, at.by, self)
    }
}

fn one() -> u32 {
    1
}

/// A load was counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LoadCounted {
    /// Which way.
    pub way: Way,
    /// What is in it.
    pub material: String,
    /// How many trucks alike.
    pub trucks: u32,
    /// Loose cubic yards of all of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loose_cy: Option<f64>,
    /// Tons of all of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tons: Option<f64>,
    /// The ticket's number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ticket: Option<String>,
    /// The machine that loaded it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
}

impl Happening for LoadCounted {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_counted(state, entry, self);
    }
}

/// The paper of a load that was counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AddTicket {
    /// The load's entry.
    pub load: u64,
    /// The ticket's number.
    pub ticket: String,
    /// Loose cubic yards on it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loose_cy: Option<f64>,
    /// Tons on it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tons: Option<f64>,
}

impl Saying for AddTicket {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        ticket(at.state, self)
    }
}

/// A load has its paper.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TicketAdded {
    /// The load's entry.
    pub load: u64,
    /// The ticket's number.
    pub ticket: String,
    /// Loose cubic yards on it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loose_cy: Option<f64>,
    /// Tons on it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tons: Option<f64>,
}

impl Happening for TicketAdded {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_ticket(state, self);
    }
}

/// A load was counted by mistake.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TakeBackLoad {
    /// The load's entry.
    pub load: u64,
}

impl Saying for TakeBackLoad {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        take_back(at.state, self)
    }
}

/// A load does not count: it was a mistake.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LoadTakenBack {
    /// The load's entry.
    pub load: u64,
}

impl Happening for LoadTakenBack {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_taken_back(state, self);
    }
}

/// Soil that was measured in the ground.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasureSoil {
    /// What it is.
    pub material: String,
    /// Cubic yards in the ground, dug so far.
    pub bank_cy: f64,
    /// How it was measured.
    pub how: String,
}

impl Saying for MeasureSoil {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, _at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        measure(self)
    }
}

/// Soil was measured in the ground.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SoilMeasured {
    /// What it is.
    pub material: String,
    /// Cubic yards in the ground, dug so far.
    pub bank_cy: f64,
    /// How it was measured.
    pub how: String,
}

impl Happening for SoilMeasured {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_measured(state, self);
    }
}

/// A truck that has left is counted whatever is known of it: without a price list and without figures it stands with its
/// number alone, until its ticket says how much it was.
pub(crate) fn count(state: &State, by: &By, asked: &CountLoad) -> Result<Vec<Body>, Refusal> {
    let material = asked.material.trim();
    if material.is_empty() {
        return Err(Refusal::say_why(words::load::what_is_in_the_truck()));
    }
    figure(Figure::Count, Some(f64::from(asked.trucks)))?;
    figure(Figure::Yards, asked.loose_cy)?;
    figure(Figure::Tons, asked.tons)?;
    let trucks = f64::from(asked.trucks);
    let prices = state.prices();
    let gravel = prices
        .and_then(|prices| prices.gravel.as_ref())
        .filter(|gravel| gravel.name.eq_ignore_ascii_case(material));
    let tons = asked
        .tons
        .or_else(|| gravel.map(|gravel| gravel.load_tons * trucks));
    let brim = prices.and_then(|prices| prices.truck.as_ref());
    // A truck that is full of heavy soil may be over its legal weight: it is taken to carry what it may.
    let weight = loose_weight(state, material);
    let usual = brim
        .and_then(|truck| truck.load(weight).ok())
        .map(|(load, _)| load.cubic_yards() * trucks);
    let loose_cy = asked.loose_cy.or(if tons.is_none() { usual } else { None });
    Ok(vec![Body::LoadCounted(LoadCounted {
        way: asked.way,
        material: material.to_owned(),
        trucks: asked.trucks,
        loose_cy,
        tons,
        ticket: number(asked.ticket.as_deref()),
        machine: by.machine.clone(),
    })])
}

fn number(ticket: Option<&str>) -> Option<String> {
    let ticket = ticket?.trim();
    (!ticket.is_empty()).then(|| ticket.to_owned())
}

fn figure(figure: Figure, value: Option<f64>) -> Result<(), Refusal> {
    match value.map(|value| can_be(figure, value)) {
        Some(Err(error)) => Err(Refusal::figure(&error)),
        _ => Ok(()),
    }
}

fn standing(state: &State, load: u64) -> Result<&Load, Refusal> {
    let found = state.account.loads.get(&load);
    found
        .filter(|load| !load.taken_back)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Load,
            name: load.to_string(),
        })
}

pub(crate) fn ticket(state: &State, asked: &AddTicket) -> Result<Vec<Body>, Refusal> {
    standing(state, asked.load)?;
    figure(Figure::Yards, asked.loose_cy)?;
    figure(Figure::Tons, asked.tons)?;
    let ticket = number(Some(&asked.ticket))
        .ok_or_else(|| Refusal::say_why(words::load::the_ticket_number()))?;
    Ok(vec![Body::TicketAdded(TicketAdded {
        load: asked.load,
        ticket,
        loose_cy: asked.loose_cy,
        tons: asked.tons,
    })])
}

pub(crate) fn take_back(state: &State, asked: &TakeBackLoad) -> Result<Vec<Body>, Refusal> {
    standing(state, asked.load)?;
    Ok(vec![Body::LoadTakenBack(LoadTakenBack {
        load: asked.load,
    })])
}

pub(crate) fn measure(asked: &MeasureSoil) -> Result<Vec<Body>, Refusal> {
    figure(Figure::Yards, Some(asked.bank_cy))?;
    if asked.material.trim().is_empty() || asked.how.trim().is_empty() {
        return Err(Refusal::say_why(words::load::what_was_measured_and_how()));
    }
    Ok(vec![Body::SoilMeasured(SoilMeasured {
        material: asked.material.trim().to_owned(),
        bank_cy: asked.bank_cy,
        how: asked.how.trim().to_owned(),
    })])
}

pub(crate) fn apply_counted(state: &mut State, entry: &Entry, body: &LoadCounted) {
    state.account.loads.insert(
        entry.seq,
        Load {
            counted: body.clone(),
            by: entry.by.person.clone(),
            at: entry.made_at,
            ticket: body.ticket.clone().map(|ticket| TicketAdded {
                load: entry.seq,
                ticket,
                loose_cy: body.loose_cy,
                tons: body.tons,
            }),
            taken_back: false,
        },
    );
}

pub(crate) fn apply_ticket(state: &mut State, body: &TicketAdded) {
    if let Some(load) = state.account.loads.get_mut(&body.load) {
        load.ticket = Some(body.clone());
    }
}

pub(crate) fn apply_taken_back(state: &mut State, body: &LoadTakenBack) {
    if let Some(load) = state.account.loads.get_mut(&body.load) {
        load.taken_back = true;
    }
}

pub(crate) fn apply_measured(state: &mut State, body: &SoilMeasured) {
    let material = body.material.clone();
    state.account.measured.insert(material, body.clone());
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::account::hauled::materials;
    use crate::asked::Command;
    use crate::given::{Crew, operator, priced, prices, supervisor};
    use crate::said::prices::SetPrices;
    use earthwork::haul::LoadLimit;

    fn soil(loose_cy: Option<f64>) -> CountLoad {
        CountLoad {
            way: Way::Out,
            material: "silty sand".into(),
            trucks: 1,
            loose_cy,
            tons: None,
            ticket: None,
        }
    }

    #[test]
    fn one_tap_takes_the_trucks_own_size() {
        let mut crew = priced();
        crew.says(&operator("EX-1"), Command::CountLoad(soil(None)))
            .unwrap();
        let load = crew.state.account.loads.values().next().unwrap();
        assert_eq!(load.counted.loose_cy, Some(12.0));
        assert_eq!(load.counted.machine.as_deref(), Some("EX-1"));
    }

    /// By hand: 100 cy in the ground are 125 loose; 12 cy of 95 lb/ft³ are 15.39 t where 10 are allowed, so 7.80 cy a load.
    #[test]
    fn the_trucks_weight_limit_reaches_the_loads() {
        let mut crew = priced();
        let card = |crew: &Crew| {
            let all = materials(&crew.state);
            let found = all.into_iter().find(|card| card.material == "silty sand");
            let card = found.unwrap();
            (card.measured_loads, card.limit)
        };
        let measured = MeasureSoil {
            material: "silty sand".into(),
            bank_cy: 100.0,
            how: "cross sections".into(),
        };
        crew.says(&supervisor(), Command::MeasureSoil(measured))
            .unwrap();
        assert_eq!(card(&crew), (Some(11), Some(LoadLimit::NotWeighed)));
        let mut prices = Box::new(prices());
        prices.truck.as_mut().unwrap().tons = Some(10.0);
        prices.materials[0].loose_pcf = Some(95.0);
        crew.says(
            &supervisor(),
            Command::SetPrices(SetPrices {
                prices: prices.clone(),
            }),
        )
        .unwrap();
        assert_eq!(card(&crew), (Some(17), Some(LoadLimit::Weight)));
        crew.says(&operator("EX-1"), Command::CountLoad(soil(None)))
            .unwrap();
        let load = crew.state.account.loads.values().next().unwrap();
        let yards = load.counted.loose_cy.unwrap();
        assert!((yards - 7.797).abs() < 0.001, "{yards}");
        // What its tickets weigh counts where it is heavier than the price list.
        prices.materials[0].loose_pcf = None;
        crew.says(&supervisor(), Command::SetPrices(SetPrices { prices }))
            .unwrap();
        assert_eq!(card(&crew).1, Some(LoadLimit::NotWeighed));
        let weighed = CountLoad {
            tons: Some(13.5),
            ..soil(Some(10.0))
        };
        crew.says(&operator("EX-1"), Command::CountLoad(weighed))
            .unwrap();
        // 13.5 t in 10 cy are 100 lb/ft³: 7.41 cy a load.
        assert_eq!(card(&crew), (Some(17), Some(LoadLimit::Weight)));
    }

    #[test]
    fn without_a_price_list_the_truck_is_counted_and_its_ticket_says_how_much() {
        let mut crew = Crew::digging();
        let kept = crew.says(&operator("EX-1"), Command::CountLoad(soil(None)));
        let load = kept.unwrap().first;
        let sums = |crew: &Crew| {
            let all = materials(&crew.state);
            all.into_iter().next().expect("one material")
        };
        let card = sums(&crew);
        assert_eq!((card.trucks, card.loose_cy, card.tons), (1, 0.0, 0.0));
        let ticket = AddTicket {
            load,
            ticket: "1018".into(),
            loose_cy: Some(11.5),
            tons: None,
        };
        crew.says(&operator("EX-1"), Command::AddTicket(ticket))
            .unwrap();
        let card = sums(&crew);
        assert!((card.loose_cy - 11.5).abs() < 1e-9, "{card:?}");
        assert!(card.agree.agrees, "nothing was counted to differ from it");
        crew.says(&operator("EX-1"), Command::CountLoad(soil(Some(8.7))))
            .unwrap();
        let wrong = crew.says(&operator("EX-1"), Command::CountLoad(soil(Some(-1.0))));
        assert!(matches!(wrong, Err(Refusal::Account { .. })));
    }

    #[test]
    fn a_load_gets_its_ticket_and_can_be_taken_back_once() {
        let mut crew = priced();
        crew.says(&operator("EX-1"), Command::CountLoad(soil(None)))
            .unwrap();
        let load = *crew.state.account.loads.keys().next().unwrap();
        let ticket = AddTicket {
            load,
            ticket: " 1017 ".into(),
            loose_cy: Some(11.5),
            tons: None,
        };
        crew.says(&operator("EX-1"), Command::AddTicket(ticket.clone()))
            .unwrap();
        let kept = crew.state.account.loads[&load].ticket.clone().unwrap();
        assert_eq!(kept.ticket, "1017");
        crew.says(
            &operator("EX-1"),
            Command::TakeBackLoad(TakeBackLoad { load }),
        )
        .unwrap();
        for command in [
            Command::TakeBackLoad(TakeBackLoad { load }),
            Command::AddTicket(ticket),
        ] {
            assert!(matches!(
                crew.says(&operator("EX-1"), command),
                Err(Refusal::Unknown {
                    what: Thing::Load,
                    ..
                })
            ));
        }
    }
}
