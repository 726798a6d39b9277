//! A supervisor puts in prices and factors: the site's own, never the hub's.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::prices::Prices;
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// A supervisor puts in the price list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetPrices {
    /// All of it.
    pub prices: Box<Prices>,
}

impl Saying for SetPrices {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        set(at.state, self)
    }
}

/// The price list was put in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PricesSet {
    /// All of it.
    pub prices: Box<Prices>,
}

impl Happening for PricesSet {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_set(state, self);
    }
}

pub(crate) fn set(state: &State, asked: &SetPrices) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let prices: &Prices = &asked.prices;
    prices.check().map_err(|error| Refusal::figure(&error))?;
    if let Some(rate) = prices
        .machines
        .iter()
        .find(|rate| site.machine(&rate.machine).is_none())
    {
        return Err(Refusal::Unknown {
            what: Thing::Machine,
            name: rate.machine.clone(),
        });
    }
    let beds = prices.gravel.iter().flat_map(|gravel| &gravel.beds);
    if let Some(bed) = beds
        .into_iter()
        .find(|bed| site.target(&bed.target).is_none())
    {
        return Err(Refusal::Unknown {
            what: Thing::Target,
            name: bed.target.clone(),
        });
    }
    if state.prices() == Some(prices) {
        return Ok(vec![]);
    }
    Ok(vec![Body::PricesSet(PricesSet {
        prices: asked.prices.clone(),
    })])
}

pub(crate) fn apply_set(state: &mut State, body: &PricesSet) {
    state.account.prices = Some((*body.prices).clone());
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{priced, prices, supervisor};

    #[test]
    fn a_price_that_cannot_be_is_refused_by_name() {
        let mut crew = priced();
        let set = |change: &dyn Fn(&mut Prices)| {
            let mut prices = Box::new(prices());
            change(&mut prices);
            Command::SetPrices(SetPrices { prices })
        };
        let swell = crew.says(
            &supervisor(),
            set(&|prices| prices.materials[0].factors.swell = 0.9),
        );
        assert!(matches!(swell, Err(Refusal::Account { .. })));
        let rate = crew.says(
            &supervisor(),
            set(&|prices| prices.machines[0].machine = "EX-9".into()),
        );
        assert!(matches!(
            rate,
            Err(Refusal::Unknown {
                what: Thing::Machine,
                ..
            })
        ));
        let bed = crew.says(
            &supervisor(),
            set(&|prices| prices.gravel.as_mut().unwrap().beds[0].target = "X".into()),
        );
        assert!(matches!(
            bed,
            Err(Refusal::Unknown {
                what: Thing::Target,
                ..
            })
        ));
        let before = crew.log.len();
        crew.says(&supervisor(), set(&|_| {})).unwrap();
        assert_eq!(crew.log.len(), before, "the same list is nothing new");
        crew.says(
            &supervisor(),
            set(&|prices| prices.machines[0].hour = 200.0),
        )
        .unwrap();
        assert_eq!(
            crew.state.prices().unwrap().machine_hour("EX-1"),
            Some(200.0)
        );
    }
}
