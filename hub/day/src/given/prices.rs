//! For tests: a site's own prices.

use earthwork::haul::{Factors, Truck};
use earthwork::soil::density::Wanted;

use super::len;
use crate::prices::{AimPrices, Bed, Gravel, MachineRate, Material, Prices};

/// A price list. Invented.
pub fn prices() -> Prices {
    let rate = |machine: &str, hour| MachineRate {
        machine: machine.into(),
        hour,
    };
    let bed = |target: &str, area_sf| Bed {
        target: target.into(),
        area_sf,
    };
    Prices {
        money: "$".into(),
        machines: vec![rate("EX-1", 195.0), rate("EX-2", 145.0)],
        truck_hour: Some(135.0),
        ground_hour: Some(62.0),
        truck: Some(Truck {
            cubic_yards: 12.0,
            tons: None,
        }),
        materials: vec![Material {
            name: "silty sand".into(),
            factors: Factors {
                swell: 1.25,
                compacted: 0.9,
            },
            loose_pcf: None,
            load: None,
        }],
        gravel: Some(Gravel {
            name: "gravel".into(),
            ton: 34.0,
            placed_cf: 2.6,
            pcf: 138.0,
            load_tons: 12.0,
            lift: len("0.50 ft"),
            beds: vec![bed("PAD", 400.0), bed("RUN", 240.0)],
        }),
        aim: Some(AimPrices {
            spot_sf: 60.0,
            shallow: 96.0,
            shallow_in_rock: 250.0,
            too_deep: 40.0,
        }),
        bearing_psf: Some(2500.0),
        density: Some(Wanted {
            maximum_pcf: 118.5,
            least_percent: 95.0,
            optimum_percent: None,
            window_points: 2.0,
        }),
    }
}
