//! The site's own prices, factors and asked values: what nothing in the hub may guess.

use contract::ToSchema;
use earthwork::figure::{Figure, FigureError, can_be};
use earthwork::haul::{Factors, Truck};
use earthwork::landing::aim::AimCosts;
use earthwork::length::Length;
use earthwork::soil::density::Wanted;
use serde::{Deserialize, Serialize};

/// A price list; what is left out is not counted, and the pages say so.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Prices {
    /// The money's sign, such as `$`.
    #[serde(default)]
    pub money: String,
    /// What each machine costs an hour with its operator.
    #[serde(default)]
    pub machines: Vec<MachineRate>,
    /// A truck an hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub truck_hour: Option<f64>,
    /// A ground hand an hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ground_hour: Option<f64>,
    /// What a truck takes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub truck: Option<Truck>,
    /// What is hauled.
    #[serde(default)]
    pub materials: Vec<Material>,
    /// Gravel: its price and where it goes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gravel: Option<Gravel>,
    /// What a shallow and a too deep spot cost.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub aim: Option<AimPrices>,
    /// The bearing that the drawing asks, in pounds per square foot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearing_psf: Option<f64>,
    /// The density that the drawing asks of compacted lifts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<Wanted>,
}

/// What a machine costs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MachineRate {
    /// Which.
    pub machine: String,
    /// An hour, with its operator.
    pub hour: f64,
}

/// What is hauled.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
#[schema(as = HauledMaterial)]
pub struct Material {
    /// What the crew calls it.
    pub name: String,
    /// How it changes its volume.
    pub factors: Factors,
    /// What it weighs in the truck, in pounds per cubic foot; none when nobody has said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loose_pcf: Option<f64>,
    /// What a load of it costs to be rid of, or to have, without the truck.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load: Option<f64>,
}

/// Gravel: its price and where it goes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Gravel {
    /// The layer's name in the targets' stacks, and the material's name on tickets.
    pub name: String,
    /// A ton, delivered.
    pub ton: f64,
    /// A cubic foot, placed and rammed.
    pub placed_cf: f64,
    /// Its weight rammed, in pounds per cubic foot.
    pub pcf: f64,
    /// What a truck brings, in tons.
    pub load_tons: f64,
    /// No lift is thicker.
    pub lift: Length,
    /// Where it goes.
    pub beds: Vec<Bed>,
}

/// A bed of gravel under a target.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Bed {
    /// The target whose stack has the layer.
    pub target: String,
    /// Its area, in square feet.
    pub area_sf: f64,
}

/// What a spot off the target costs.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AimPrices {
    /// The area that one reading stands for, in square feet.
    pub spot_sf: f64,
    /// A shallow spot in soil.
    pub shallow: f64,
    /// A shallow spot in rock or old concrete.
    pub shallow_in_rock: f64,
    /// A spot below the low limit.
    pub too_deep: f64,
}

impl Prices {
    /// What a machine costs an hour.
    pub fn machine_hour(&self, machine: &str) -> Option<f64> {
        let rate = self.machines.iter().find(|rate| rate.machine == machine);
        rate.map(|rate| rate.hour)
    }

    /// A material by its name.
    pub fn material(&self, name: &str) -> Option<&Material> {
        self.materials.iter().find(|one| one.name == name)
    }

    /// What a spot costs, in soil or in rock.
    pub fn aim_costs(&self, rock: bool) -> Option<AimCosts> {
        let (aim, gravel) = (self.aim?, self.gravel.as_ref()?);
        Some(AimCosts {
            spot_sf: aim.spot_sf,
            gravel_cf: gravel.placed_cf,
            shallow: if rock {
                aim.shallow_in_rock
            } else {
                aim.shallow
            },
            too_deep: aim.too_deep,
        })
    }

    /// The first figure that can't be.
    ///
    /// # Errors
    /// Which, and what to do.
    pub fn check(&self) -> Result<(), FigureError> {
        let money = [self.truck_hour, self.ground_hour];
        let rates = self.machines.iter().map(|rate| Some(rate.hour));
        let loads = self.materials.iter().map(|one| one.load);
        for price in money.into_iter().chain(rates).chain(loads).flatten() {
            can_be(Figure::Money, price)?;
        }
        if let Some(truck) = &self.truck {
            can_be(Figure::TruckYards, truck.cubic_yards)?;
            if let Some(tons) = truck.tons {
                can_be(Figure::TruckTons, tons)?;
            }
        }
        for material in &self.materials {
            material.factors.checked()?;
            if let Some(weight) = material.loose_pcf {
                can_be(Figure::UnitWeight, weight)?;
            }
        }
        if let Some(gravel) = &self.gravel {
            gravel.check()?;
        }
        if let Some(aim) = &self.aim {
            can_be(Figure::Area, aim.spot_sf)?;
            for price in [aim.shallow, aim.shallow_in_rock, aim.too_deep] {
                can_be(Figure::Money, price)?;
            }
        }
        if let Some(psf) = self.bearing_psf {
            can_be(Figure::Bearing, psf)?;
        }
        if let Some(wanted) = &self.density {
            can_be(Figure::UnitWeight, wanted.maximum_pcf)?;
            can_be(Figure::Percent, wanted.least_percent)?;
            can_be(Figure::Percent, wanted.window_points)?;
            if let Some(optimum) = wanted.optimum_percent {
                can_be(Figure::Moisture, optimum)?;
            }
        }
        Ok(())
    }
}

impl Gravel {
    fn check(&self) -> Result<(), FigureError> {
        for price in [self.ton, self.placed_cf] {
            can_be(Figure::Money, price)?;
        }
        can_be(Figure::UnitWeight, self.pcf)?;
        can_be(Figure::TruckTons, self.load_tons)?;
        if self.lift <= Length::ZERO {
            return Err(FigureError {
                figure: Figure::Thickness,
                value: self.lift.feet(),
            });
        }
        for bed in &self.beds {
            can_be(Figure::Area, bed.area_sf)?;
        }
        Ok(())
    }
}
