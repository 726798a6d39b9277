//! Where finish passes land by machine and ground, how well the tolerance holds them, and where to aim, with its curve.

use contract::ToSchema;
use earthwork::landing::aim::{Advice, advise};
use earthwork::landing::{Capability, Landing, landing};
use earthwork::length::Length;
use earthwork::tolerance::Tolerance;
use earthwork::uncertainty::Surface;
use serde::Serialize;

use day::account::landings::{Landed, landed};
use day::state::State;
use words::Text;

/// A group of landings.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LandingCard {
    /// The machine; none for all of them together.
    pub machine: Option<String>,
    /// The ground; none for all of it together.
    pub surface: Option<Surface>,
    /// Mean and scatter.
    pub landing: Landing,
    /// The tightest tolerance among them.
    pub tolerance: Tolerance,
    /// How well it holds them.
    pub capability: Option<Capability>,
    /// Each landing, in order.
    pub errors: Vec<Length>,
    /// Where to aim in soil, or why that can't be said.
    pub advice: AdviceCard,
    /// Where to aim in rock or old concrete; none for ground that is only one of them.
    pub in_rock: Option<Advice>,
}

/// Where to aim, or why that can't be said.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum AdviceCard {
    /// Where to aim.
    Aim {
        /// With its curve.
        advice: Advice,
    },
    /// No price list says what a shallow and a deep spot cost.
    NoPrices,
    /// Not yet, or not with these figures.
    None(Text),
}

/// All landings together first, then by machine and ground where there is more than one group.
pub(crate) fn cards(state: &State) -> Vec<LandingCard> {
    let all = landed(state);
    let mut groups: Vec<(String, Surface)> = Vec::new();
    for one in &all {
        let key = (one.machine.clone(), one.surface);
        if !groups.contains(&key) {
            groups.push(key);
        }
    }
    let mut cards: Vec<LandingCard> = card(state, None, &all.iter().collect::<Vec<_>>())
        .into_iter()
        .collect();
    if groups.len() > 1 {
        groups.sort_by(|one, other| one.0.cmp(&other.0));
        for group in groups {
            let of_group: Vec<&Landed> = all
                .iter()
                .filter(|one| one.machine == group.0 && one.surface == group.1)
                .collect();
            cards.extend(card(state, Some(group), &of_group));
        }
    }
    cards
}

fn card(state: &State, group: Option<(String, Surface)>, of: &[&Landed]) -> Option<LandingCard> {
    let errors: Vec<Length> = of.iter().map(|one| one.error).collect();
    let landing = landing(&errors)?;
    let tolerance = Tolerance {
        high: of.iter().map(|one| one.tolerance.high).min()?,
        low: of.iter().map(|one| one.tolerance.low).min()?,
    };
    let guard = of.last()?.guard;
    let prices = state.prices();
    let rock = matches!(group, Some((_, Surface::HardOrRock)));
    let advice = match prices.and_then(|prices| prices.aim_costs(rock)) {
        None => AdviceCard::NoPrices,
        Some(costs) => match advise(&landing, tolerance, guard, &costs) {
            Ok(advice) => AdviceCard::Aim { advice },
            Err(error) => AdviceCard::None(error.text()),
        },
    };
    let in_rock = prices
        .and_then(|prices| prices.aim_costs(true))
        .filter(|_| group.is_none())
        .and_then(|costs| advise(&landing, tolerance, guard, &costs).ok());
    let (machine, surface) = group.unzip();
    Some(LandingCard {
        machine,
        surface,
        landing,
        tolerance,
        capability: landing.capability(tolerance),
        errors,
        advice,
        in_rock,
    })
}
