//! Prices, factors and asked values back into what is written.

use day::prices::{AimPrices, Bed, Gravel, MachineRate, Material, Prices};
use earthwork::haul::Truck;
use earthwork::soil::density::Wanted;

use super::values::{length, number, text};
use super::written::Written;

pub(super) fn prices(prices: &Prices) -> Written {
    let list = |items: Vec<Written>| Written::some(items);
    let beds = prices.gravel.iter().flat_map(|gravel| &gravel.beds);
    Written::table([
        ("money", Written::note(&prices.money)),
        ("truck_hour", number(prices.truck_hour)),
        ("ground_hour", number(prices.ground_hour)),
        ("bearing_psf", number(prices.bearing_psf)),
        ("truck", prices.truck.as_ref().map(truck)),
        ("gravel", prices.gravel.as_ref().map(gravel)),
        ("aim", prices.aim.as_ref().map(aim)),
        ("density", prices.density.as_ref().map(density)),
        (
            "machine",
            list(prices.machines.iter().map(machine).collect()),
        ),
        (
            "material",
            list(prices.materials.iter().map(material).collect()),
        ),
        ("bed", list(beds.map(bed).collect())),
    ])
}

fn truck(one: &Truck) -> Written {
    Written::table([
        ("cubic_yards", number(one.cubic_yards)),
        ("tons", number(one.tons)),
    ])
}

fn machine(one: &MachineRate) -> Written {
    Written::table([("id", Some(text(&one.machine))), ("hour", number(one.hour))])
}

fn material(one: &Material) -> Written {
    Written::table([
        ("name", Some(text(&one.name))),
        ("swell", number(one.factors.swell)),
        ("compacted", number(one.factors.compacted)),
        ("loose_pcf", number(one.loose_pcf)),
        ("load", number(one.load)),
    ])
}

fn bed(one: &Bed) -> Written {
    Written::table([
        ("target", Some(text(&one.target))),
        ("area_sf", number(one.area_sf)),
    ])
}

fn gravel(one: &Gravel) -> Written {
    Written::table([
        ("name", Some(text(&one.name))),
        ("ton", number(one.ton)),
        ("placed_cf", number(one.placed_cf)),
        ("pcf", number(one.pcf)),
        ("load_tons", number(one.load_tons)),
        ("lift", length(one.lift)),
    ])
}

fn aim(one: &AimPrices) -> Written {
    Written::table([
        ("spot_sf", number(one.spot_sf)),
        ("shallow", number(one.shallow)),
        ("shallow_in_rock", number(one.shallow_in_rock)),
        ("too_deep", number(one.too_deep)),
    ])
}

fn density(one: &Wanted) -> Written {
    Written::table([
        ("maximum_pcf", number(one.maximum_pcf)),
        ("least_percent", number(one.least_percent)),
        ("optimum_percent", number(one.optimum_percent)),
        ("window_points", number(one.window_points)),
    ])
}
