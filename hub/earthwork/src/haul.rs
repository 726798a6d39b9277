//! From the ground into the truck: swell, loads, trucks, and whether tickets and counted loads agree.
//!
//! Volumes are in the ground (bank), in the truck (loose) or rammed (compacted). Loose = bank × swell factor and
//! compacted = bank × compacted factor (earthmoving handbooks); "25 % swell" is a factor of 1.25.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::amount::{CubicFeet, PoundsPerCubicFoot};
use crate::figure::{Figure, FigureError, can_be};
use crate::length::whole;

/// How a soil changes its volume.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Factors {
    /// Loose by bank, 1 to 2.
    pub swell: f64,
    /// Compacted by bank, 0.5 to 1.5.
    pub compacted: f64,
}

impl Factors {
    /// The factors from one soil's weights in the truck, in the ground and rammed.
    ///
    /// # Errors
    /// When a weight or a factor is one that no soil has.
    pub fn from_weights(
        loose: PoundsPerCubicFoot,
        bank: PoundsPerCubicFoot,
        compacted: PoundsPerCubicFoot,
    ) -> Result<Factors, FigureError> {
        for weight in [loose, bank, compacted] {
            can_be(Figure::UnitWeight, weight.0)?;
        }
        Factors {
            swell: bank.0 / loose.0,
            compacted: bank.0 / compacted.0,
        }
        .checked()
    }

    /// The same, when no factor is a slip.
    ///
    /// # Errors
    /// When a factor is one that no soil has.
    pub fn checked(self) -> Result<Factors, FigureError> {
        can_be(Figure::Swell, self.swell)?;
        can_be(Figure::Compacted, self.compacted)?;
        Ok(self)
    }

    /// What a volume in the ground fills in the truck.
    pub fn loose(&self, bank: CubicFeet) -> CubicFeet {
        bank * self.swell
    }

    /// What must be dug for a compacted volume.
    pub fn bank_for(&self, compacted: CubicFeet) -> CubicFeet {
        compacted * (1.0 / self.compacted)
    }
}

/// What a truck takes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Truck {
    /// Loose cubic yards to the brim.
    pub cubic_yards: f64,
    /// What it may weigh with, in tons; none when nobody has said.
    #[serde(default)]
    pub tons: Option<f64>,
}

/// What bounds a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum LoadLimit {
    /// It is full before it is too heavy.
    Brim,
    /// It is as heavy as it may be before it is full.
    Weight,
    /// It is taken as full: nobody has said what it may weigh, or what the soil weighs.
    NotWeighed,
}

impl Truck {
    /// What one load holds, loose: to the brim, or as much as it may weigh, whichever comes first.
    ///
    /// # Errors
    /// When a figure is one that no truck or soil has.
    pub fn load(
        &self,
        loose_weight: Option<PoundsPerCubicFoot>,
    ) -> Result<(CubicFeet, LoadLimit), FigureError> {
        let brim = CubicFeet::from_cubic_yards(can_be(Figure::TruckYards, self.cubic_yards)?);
        let (Some(tons), Some(weight)) = (self.tons, loose_weight) else {
            return Ok((brim, LoadLimit::NotWeighed));
        };
        can_be(Figure::TruckTons, tons)?;
        can_be(Figure::UnitWeight, weight.0)?;
        let full = brim.weight(weight).0;
        Ok(if full > tons {
            (brim * (tons / full), LoadLimit::Weight)
        } else {
            (brim, LoadLimit::Brim)
        })
    }
}

/// How many loads a loose volume is: the brim or the legal weight, whichever fills first.
///
/// # Errors
/// When a figure is one that no truck or soil has.
pub fn loads(
    loose: CubicFeet,
    truck: &Truck,
    loose_weight: Option<PoundsPerCubicFoot>,
) -> Result<u32, FigureError> {
    let yards = can_be(Figure::Yards, loose.cubic_yards())?;
    let (load, _) = truck.load(loose_weight)?;
    Ok(full(yards / load.cubic_yards()))
}

/// Whole loads: a sliver below a millionth is none.
pub(crate) fn full(loads: f64) -> u32 {
    let loads = (loads - 1e-6).ceil().max(0.0);
    u32::try_from(whole(loads.min(f64::from(u32::MAX)))).unwrap_or(u32::MAX)
}

/// How many trucks keep a machine busy: a truck's round, loading included, by the time to load it, rounded up.
///
/// # Errors
/// When a time is not above zero, or it comes to more trucks than any site has.
pub fn trucks_needed(round_minutes: f64, load_minutes: f64) -> Result<u32, FigureError> {
    let load = can_be(Figure::Minutes, load_minutes)?;
    if load <= 0.0 {
        return Err(FigureError {
            figure: Figure::Minutes,
            value: load,
        });
    }
    let trucks = full(can_be(Figure::Minutes, round_minutes)? / load).max(1);
    can_be(Figure::Count, f64::from(trucks))?;
    Ok(trucks)
}

/// Loads as they were counted, as the tickets say, and as the hole is measured, all loose.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Hauled {
    /// Counted on the ground.
    pub counted: CubicFeet,
    /// Of those, with a ticket.
    pub with_ticket: u32,
    /// Loads counted.
    pub loads: u32,
    /// By the tickets.
    pub tickets: CubicFeet,
    /// Counted volume of the loads that have a ticket.
    pub counted_with_ticket: CubicFeet,
    /// What was measured in the ground, swollen; none when nothing is measured.
    pub measured: Option<CubicFeet>,
}

/// How far two volumes may differ before somebody asks (common practice).
const ALLOWED: f64 = 0.10;

/// What comes of holding them against each other.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Reconciled {
    /// Loads without a ticket.
    pub tickets_missing: u32,
    /// Tickets by what was counted for the same loads; none without tickets.
    pub tickets_by_counted: Option<f64>,
    /// Counted by measured; none when nothing is measured.
    pub counted_by_measured: Option<f64>,
    /// Both agree within 10 %, as far as they are there.
    pub agrees: bool,
}

/// Holds counted loads, tickets and the measured hole against each other.
pub fn reconcile(hauled: &Hauled) -> Reconciled {
    let part = |over: CubicFeet, under: CubicFeet| (under.0 > 0.0).then(|| over.0 / under.0);
    let tickets_by_counted = part(hauled.tickets, hauled.counted_with_ticket);
    let counted_by_measured = hauled
        .measured
        .and_then(|measured| part(hauled.counted, measured));
    let within = |part: Option<f64>| part.is_none_or(|part| (part - 1.0).abs() <= ALLOWED + 1e-9);
    Reconciled {
        tickets_missing: hauled.loads.saturating_sub(hauled.with_ticket),
        tickets_by_counted,
        counted_by_measured,
        agrees: within(tickets_by_counted) && within(counted_by_measured),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn yards(yards: f64) -> CubicFeet {
        CubicFeet::from_cubic_yards(yards)
    }

    #[test]
    fn the_brim_or_the_weight_whichever_fills_first() {
        let mut truck = Truck {
            cubic_yards: 12.0,
            tons: None,
        };
        let heavy = Some(PoundsPerCubicFoot(100.0));
        assert_eq!(loads(yards(120.0), &truck, heavy), Ok(10));
        // 120 cy at 100 lb/ft³ are 162 t.
        truck.tons = Some(15.0);
        assert_eq!(loads(yards(120.0), &truck, heavy), Ok(11));
        let limit = |weight| truck.load(weight).unwrap().1;
        assert_eq!(limit(heavy), LoadLimit::Weight);
        assert_eq!(limit(Some(PoundsPerCubicFoot(90.0))), LoadLimit::Brim);
        assert_eq!(limit(None), LoadLimit::NotWeighed);
        assert_eq!(loads(yards(0.0), &truck, heavy), Ok(0));
        truck.cubic_yards = 0.0;
        assert!(loads(yards(1.0), &truck, None).is_err());
    }

    #[test]
    fn trucks_keep_a_machine_busy() {
        assert_eq!(trucks_needed(40.0, 8.0), Ok(5));
        assert_eq!(trucks_needed(41.0, 8.0), Ok(6));
        assert_eq!(trucks_needed(0.0, 8.0), Ok(1));
        assert!(trucks_needed(40.0, 0.0).is_err());
        assert!(trucks_needed(-1.0, 8.0).is_err());
        assert!(trucks_needed(40.0, 1e-300).is_err());
    }

    #[test]
    fn tickets_and_counted_loads_are_held_against_each_other() {
        let mut hauled = Hauled {
            counted: yards(24.0),
            loads: 2,
            with_ticket: 1,
            tickets: yards(13.0),
            counted_with_ticket: yards(12.0),
            measured: Some(yards(23.0)),
        };
        let agreed = reconcile(&hauled);
        assert!(agreed.agrees && agreed.tickets_missing == 1, "{agreed:?}");
        hauled.measured = Some(yards(20.0));
        assert!(!reconcile(&hauled).agrees);
        let nothing = reconcile(&Hauled::default());
        assert_eq!(nothing.tickets_by_counted, None);
        assert!(nothing.agrees);
    }

    proptest! {
        /// Loads hold the volume, and one load fewer would not.
        #[test]
        fn loads_are_as_few_as_hold_it(volume in 0.01..5000.0_f64, brim in 1.0..30.0_f64) {
            let truck = Truck { cubic_yards: brim, tons: None };
            let many = f64::from(loads(yards(volume), &truck, None).unwrap());
            prop_assert!(many * brim >= volume - 1e-3 && (many - 1.0) * brim < volume);
        }
    }
}
