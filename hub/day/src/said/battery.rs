//! The battery of a cab's phone: a page can't read it, so that the operator says it, and the crew on the ground is told.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::said::call::own_machine;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// The operator's phone is about to go out, or is charged again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LowBattery {
    /// What it shows, in percent, when said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub percent: Option<u8>,
    /// It hangs on a charger now.
    #[serde(default)]
    pub charging: bool,
}

impl Saying for LowBattery {
    const BY: &'static [Role] = &[Role::Operator];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        low(at.state, at.by, self)
    }
}

/// What was said of the battery of a cab's phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct BatterySaid {
    /// The machine.
    pub machine: String,
    /// In percent, when said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub percent: Option<u8>,
    /// About to go out; else charging.
    pub low: bool,
}

impl Happening for BatterySaid {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_said(state, entry, self);
    }
}

pub(crate) fn low(state: &State, by: &By, asked: &LowBattery) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let known = state.cabs.get(&machine).and_then(|cab| cab.battery_low);
    if known.is_some() != asked.charging && asked.percent.is_none() {
        return Ok(vec![]);
    }
    Ok(vec![Body::BatterySaid(BatterySaid {
        machine,
        percent: asked.percent.map(|percent| percent.min(100)),
        low: !asked.charging,
    })])
}

pub(crate) fn apply_said(state: &mut State, entry: &Entry, body: &BatterySaid) {
    state.cab_mut(&body.machine).battery_low = body.low.then_some(entry.at);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::{Command, Role};
    use crate::given::{Crew, ground, operator};
    use crate::said::join::Join;
    use crate::said::person::GiveCab;
    use earthwork::words::ScreenUnit;
    use words::Language;

    fn battery(charging: bool) -> Command {
        Command::LowBattery(LowBattery {
            percent: None,
            charging,
        })
    }

    fn on_the_ground(crew: &Crew) -> bool {
        crew.state.cabs["EX-1"].battery_low.is_some()
    }

    #[test]
    fn a_low_battery_in_the_cab_is_told_on_the_ground_until_it_charges_or_another_phone_comes() {
        let mut crew = Crew::digging();
        assert!(matches!(
            crew.says(&ground(), battery(false)),
            Err(Refusal::NotAllowed { .. })
        ));
        crew.says(&operator("EX-1"), battery(false)).unwrap();
        assert!(on_the_ground(&crew));
        let entries = crew.log.len();
        crew.says(&operator("EX-1"), battery(false)).unwrap();
        assert_eq!(crew.log.len(), entries, "said once");
        crew.says(&operator("EX-1"), battery(true)).unwrap();
        assert!(!on_the_ground(&crew));
        crew.says(&operator("EX-1"), battery(false)).unwrap();
        let give = GiveCab {
            machine: "EX-1".into(),
        };
        crew.says(&operator("EX-1"), Command::GiveCab(give))
            .unwrap();
        let join = Join {
            device: "m3".into(),
            token_digest: String::new(),
            person: "OW".into(),
            roles: vec![Role::Operator],
            machine: Some("EX-1".into()),
            language: Language::English,
            unit: ScreenUnit::Tenths,
            same_person: false,
            handset: None,
        };
        crew.says(&By::hub(), Command::Join(join)).unwrap();
        assert!(!on_the_ground(&crew));
    }
}
