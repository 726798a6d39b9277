//! Prices, factors and asked values, out of their table.

use day::prices::{AimPrices, Bed, Gravel, MachineRate, Material, Prices};
use day::site::{Machine, Target};
use earthwork::haul::{Factors, Truck};
use earthwork::length::Length;
use earthwork::soil::density::Wanted;

use super::fields::Fields;
use super::notes::Notes;

/// No lift is thicker, when nothing else is written (common practice).
const USUAL_LIFT: Length = Length::from_hundredths_of_a_foot(50);

/// A number that must be there.
fn number(notes: &mut Notes, fields: &Fields<'_, '_>, key: &str) -> Option<f64> {
    if fields.has(key) {
        return fields.number_or(notes, key, 0.0);
    }
    notes.wrong_at(fields.at(key), format!("Write `{key}` = a number here."));
    None
}

/// Something of the list is wrong; its fault is noted.
struct Noted;

/// A number that may be left out.
fn maybe(notes: &mut Notes, fields: &Fields<'_, '_>, key: &str) -> Result<Option<f64>, Noted> {
    if !fields.has(key) {
        return Ok(None);
    }
    fields
        .number_or(notes, key, 0.0)
        .map_or(Err(Noted), |number| Ok(Some(number)))
}

/// A table that may be left out, read to its end.
fn part<T>(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    key: &str,
    read: impl Fn(&mut Notes, &Fields<'_, '_>) -> Option<T>,
) -> Result<Option<T>, Noted> {
    if !fields.has(key) {
        return Ok(None);
    }
    let inner = fields.table(notes, key).ok_or(Noted)?;
    let found = read(notes, &inner);
    inner.done(notes);
    found.map_or(Err(Noted), |found| Ok(Some(found)))
}

/// The price list, when the file has one; every name in it must be of the site.
///
/// Nothing is given back where a part of it is wrong: then the file is refused for the faults that are noted.
pub(super) fn prices(
    notes: &mut Notes,
    top: &Fields<'_, '_>,
    machines: &[Machine],
    targets: &[Target],
) -> Option<Box<Prices>> {
    part(notes, top, "prices", |notes, fields| {
        let prices = list(notes, fields)?;
        let at = fields.at("money");
        if let Err(error) = prices.check() {
            notes.wrong_at(at, error.to_string());
        }
        for rate in &prices.machines {
            if !machines.iter().any(|machine| machine.id == rate.machine) {
                let message = format!(
                    "The price list names the machine {}, which the site does not have. Check its spelling.",
                    rate.machine
                );
                notes.wrong_at(at, message);
            }
        }
        for bed in prices.gravel.iter().flat_map(|gravel| &gravel.beds) {
            if !targets.iter().any(|target| target.id == bed.target) {
                let message = format!(
                    "A bed of gravel names the target {}, which the site does not have. Check its spelling.",
                    bed.target
                );
                notes.wrong_at(at, message);
            }
        }
        Some(prices)
    })
    .ok()
    .flatten()
    .map(Box::new)
}

fn list(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Prices> {
    let money = fields.note(notes, "money");
    let machines = fields.each(notes, "machine", "prices.machine", |notes, one| {
        let machine = one.text(notes, "id");
        let hour = number(notes, one, "hour");
        Some(MachineRate {
            machine: machine?,
            hour: hour?,
        })
    });
    let materials = fields.each(notes, "material", "prices.material", material);
    let beds = fields.each(notes, "bed", "prices.bed", |notes, one| {
        let target = one.text(notes, "target");
        let area_sf = number(notes, one, "area_sf");
        Some(Bed {
            target: target?,
            area_sf: area_sf?,
        })
    });
    let truck_hour = maybe(notes, fields, "truck_hour");
    let ground_hour = maybe(notes, fields, "ground_hour");
    let bearing_psf = maybe(notes, fields, "bearing_psf");
    let truck = part(notes, fields, "truck", |notes, one| {
        let cubic_yards = number(notes, one, "cubic_yards");
        let tons = maybe(notes, one, "tons");
        Some(Truck {
            cubic_yards: cubic_yards?,
            tons: tons.ok()?,
        })
    });
    let gravel = part(notes, fields, "gravel", gravel);
    let aim = part(notes, fields, "aim", aim);
    let density = part(notes, fields, "density", density);
    Some(Prices {
        money,
        machines,
        truck_hour: truck_hour.ok()?,
        ground_hour: ground_hour.ok()?,
        truck: truck.ok()?,
        materials,
        gravel: gravel.ok()?.map(|gravel| Gravel { beds, ..gravel }),
        aim: aim.ok()?,
        bearing_psf: bearing_psf.ok()?,
        density: density.ok()?,
    })
}

fn material(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Material> {
    let name = fields.text(notes, "name");
    let swell = number(notes, fields, "swell");
    let compacted = fields.number_or(notes, "compacted", 1.0);
    let loose_pcf = maybe(notes, fields, "loose_pcf");
    let load = maybe(notes, fields, "load");
    Some(Material {
        name: name?,
        factors: Factors {
            swell: swell?,
            compacted: compacted?,
        },
        loose_pcf: loose_pcf.ok()?,
        load: load.ok()?,
    })
}

fn gravel(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Gravel> {
    let name = fields.text(notes, "name");
    let [ton, placed_cf, pcf, load_tons] =
        ["ton", "placed_cf", "pcf", "load_tons"].map(|key| number(notes, fields, key));
    let lift = fields.length_or(notes, "lift", USUAL_LIFT);
    Some(Gravel {
        name: name?,
        ton: ton?,
        placed_cf: placed_cf?,
        pcf: pcf?,
        load_tons: load_tons?,
        lift: lift?,
        beds: vec![],
    })
}

fn aim(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<AimPrices> {
    let [spot_sf, shallow, shallow_in_rock, too_deep] =
        ["spot_sf", "shallow", "shallow_in_rock", "too_deep"].map(|key| number(notes, fields, key));
    Some(AimPrices {
        spot_sf: spot_sf?,
        shallow: shallow?,
        shallow_in_rock: shallow_in_rock?,
        too_deep: too_deep?,
    })
}

fn density(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Wanted> {
    let maximum_pcf = number(notes, fields, "maximum_pcf");
    let least_percent = number(notes, fields, "least_percent");
    let optimum_percent = maybe(notes, fields, "optimum_percent");
    let window_points = fields.number_or(notes, "window_points", 2.0);
    Some(Wanted {
        maximum_pcf: maximum_pcf?,
        least_percent: least_percent?,
        optimum_percent: optimum_percent.ok()?,
        window_points: window_points?,
    })
}
