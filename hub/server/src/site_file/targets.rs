//! Targets: a reference surface less its named layers, and one shape.

use day::site::Target;
use earthwork::target::{self, Layer, Stack, Undercut};
use earthwork::tolerance::Tolerance;

use super::fields::Fields;
use super::notes::Notes;
use super::shapes::{self, Files};

/// Allowed high and allowed low.
pub(super) fn tolerance(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Tolerance> {
    let (high, low) = (fields.length(notes, "high"), fields.length(notes, "low"));
    fields.done(notes);
    match Tolerance::new(high?, low?) {
        Ok(tolerance) => Some(tolerance),
        Err(error) => {
            notes.said_at(fields.at("high"), error.text());
            None
        }
    }
}

pub(super) fn target(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    usual: Option<Tolerance>,
    files: &Files<'_>,
) -> Option<Target> {
    let id = fields.text(notes, "id");
    let name = fields.text(notes, "name");
    let surface = surface(notes, fields);
    let mut layers = fields.each(notes, "layers", "layers", layer);
    let within = if fields.has("within") {
        fields.points(notes, "within").map(Some)
    } else {
        Some(None)
    };
    let tolerance = match fields.table(notes, "tolerance") {
        Some(own) => tolerance(notes, &own),
        None if fields.has("tolerance") => None,
        None => {
            if usual.is_none() {
                notes.missing_at(
                    fields.start(),
                    "tolerance",
                    words::site_file::this_target_has_no_tolerance(),
                );
            }
            usual
        }
    };
    let guard_factor = fields.number_or(notes, "guard_factor", 1.0);
    let undercuts = fields.each(notes, "undercut", "undercuts", undercut);
    let typed_by = who(notes, fields, "typed_by");
    let proved_by = who(notes, fields, "proved_by");
    let shape = shapes::shape(notes, fields, files, &mut layers);
    Some(Target {
        id: id?,
        name: name?,
        grade: target::Target {
            shape: shape?,
            stack: Stack {
                surface: surface?,
                layers,
            },
            within: within?,
            undercuts,
        },
        tolerance: tolerance?,
        guard_factor: guard_factor?,
        revision: 1,
        typed_by,
        proved_by,
    })
}

fn surface(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<String> {
    if fields.has("surface") {
        return fields.text(notes, "surface");
    }
    notes.missing_at(
        fields.start(),
        "surface",
        words::site_file::say_which_surface_this_target(),
    );
    None
}

fn layer(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Layer> {
    let name = fields.text(notes, "name");
    let thickness = fields.length(notes, "thickness");
    Some(Layer {
        name: name?,
        thickness: thickness?,
    })
}

/// A person who may be left out.
fn who(notes: &mut Notes, fields: &Fields<'_, '_>, key: &str) -> Option<String> {
    if fields.has(key) {
        fields.text(notes, key)
    } else {
        None
    }
}

fn undercut(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Undercut> {
    let name = fields.text(notes, "name");
    let within = fields.points(notes, "within");
    let depth = fields.length(notes, "depth");
    let material = fields.text(notes, "material");
    let lifts = fields.number_or(notes, "lifts", 0.0);
    Some(Undercut {
        name: name?,
        within: within?,
        depth: depth?,
        material: material?,
        lifts: shapes::count(lifts?),
    })
}
