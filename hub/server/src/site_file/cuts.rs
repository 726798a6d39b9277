//! Faces, footings behind them, buried lines, locate tickets, and whose rules hold.

use day::cuts::plan::{
    Cuts, FaceZone, OverheadLine, Pile, SoilLayer, Structure, Ticket, ToeCorner, Utility,
    UtilityKind,
};
use earthwork::buried::Marked;
use earthwork::face::ExcavationRules;
use earthwork::length::Length;
use earthwork::target;

use super::fields::{Fields, word};
use super::notes::Notes;
use super::shapes::{self, Files};

/// To each side of a buried line when the site file does not say (common practice; 18 to 30 in by state).
const USUAL_ZONE: Length = Length::from_hundredths_of_a_foot(200);

/// Everything about cuts; nothing when the file says nothing.
pub(super) fn cuts(notes: &mut Notes, top: &Fields<'_, '_>, files: &Files<'_>) -> Option<Cuts> {
    let usual = Cuts::default();
    let (rules, competent, clearance) = match top.table(notes, "excavation") {
        None => (Some(None), Some(vec![]), Some(usual.clearance)),
        Some(fields) => {
            let rules = rules(notes, &fields, files);
            let competent = fields.names(notes, "competent");
            let clearance = fields.length_or(notes, "clearance", usual.clearance);
            fields.done(notes);
            (rules, competent, clearance)
        }
    };
    let faces = top.each(notes, "face", "faces", |notes, fields| {
        face(notes, fields, files)
    });
    Some(Cuts {
        rules: rules?,
        competent: competent?,
        faces,
        structures: top.each(notes, "structure", "structures", structure),
        utilities: top.each(notes, "utility", "utilities", utility),
        tickets: top.each(notes, "ticket", "tickets", ticket),
        overheads: top.each(notes, "overhead", "overheads", overhead),
        piles: top.each(notes, "pile", "piles", pile),
        clearance: clearance?,
    })
}

#[expect(clippy::option_option, reason = "faulty, left out, given")]
/// Another country's rules, or stricter ones, from a file beside the site file.
fn rules(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    files: &Files<'_>,
) -> Option<Option<Box<ExcavationRules>>> {
    if !fields.has("rules") {
        return Some(None);
    }
    let name = fields.text(notes, "rules")?;
    let read = (files.beside)(&name)
        .and_then(|text| ExcavationRules::parse(&text).map_err(|error| error.to_string()));
    match read {
        Ok(rules) => Some(Some(Box::new(rules))),
        Err(why) => {
            notes.wrong_at(fields.at("rules"), format!("{name}: {why}"));
            None
        }
    }
}

pub(super) fn face(
    notes: &mut Notes,
    fields: &Fields<'_, '_>,
    files: &Files<'_>,
) -> Option<FaceZone> {
    let id = fields.text(notes, "id");
    let name = fields.text(notes, "name");
    let kind = fields.word(notes, "kind");
    let toe = fields.places(notes, "toe");
    let bank = fields.word(notes, "bank");
    let inner = fields.table(notes, "ground");
    if inner.is_none() {
        notes.wrong_at(
            fields.at("ground"),
            "A face needs the ground before the cut: ground = { plane = { … } } or { triangles = { … } }.",
        );
    }
    let ground = inner.and_then(|inner| {
        let shape = shapes::shape(notes, &inner, files, &mut vec![]);
        inner.done(notes);
        shape
    });
    let layers = fields.each(notes, "layers", "layers", layer);
    let toe_marks = fields.names(notes, "toe_marks");
    let crest_marks = fields.names(notes, "crest_marks");
    let pins = fields.names(notes, "pins");
    let target = if fields.has("target") {
        fields.text(notes, "target").map(Some)
    } else {
        Some(None)
    };
    let pipe_crown = fields.length_if(notes, "pipe_crown");
    let toe = toe?
        .into_iter()
        .map(|(at, elevation)| ToeCorner { at, elevation })
        .collect();
    Some(FaceZone {
        id: id?,
        name: name?,
        kind: kind?,
        toe,
        bank: bank?,
        ground: target::Target::new(
            ground?,
            target::Stack {
                surface: "ground".into(),
                layers: vec![],
            },
        ),
        layers,
        toe_marks: toe_marks?,
        crest_marks: crest_marks?,
        pins: pins?,
        target: target?,
        pipe_crown: pipe_crown?,
    })
}

fn layer(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<SoilLayer> {
    let top = fields.length_if(notes, "top");
    let class = fields.word(notes, "class");
    Some(SoilLayer {
        top: top?,
        class: class?,
    })
}

pub(super) fn structure(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Structure> {
    let id = fields.text(notes, "id");
    let points = fields.points(notes, "points");
    let bottom = fields.length(notes, "bottom");
    Some(Structure {
        id: id?,
        points: points?,
        bottom: bottom?,
    })
}

pub(super) fn utility(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Utility> {
    let id = fields.text(notes, "id");
    let kind = fields.word(notes, "kind");
    let points = fields.points(notes, "points");
    let outside = fields.length_or(notes, "outside", Length::ZERO);
    let zone = fields.length_or(notes, "zone", USUAL_ZONE);
    let marked = if fields.has("marked") {
        fields.word(notes, "marked")
    } else {
        Some(Marked::default())
    };
    let call = fields.note(notes, "call");
    Some(Utility {
        id: id?,
        kind: kind?,
        points: points?,
        outside: outside?,
        zone: zone?,
        marked: marked?,
        call,
    })
}

pub(super) fn overhead(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<OverheadLine> {
    let id = fields.text(notes, "id");
    let points = fields.points(notes, "points");
    let height = fields.length(notes, "height");
    let mut kilovolts_of = |key: &str| {
        if fields.has(key) {
            fields.number_or(notes, key, 0.0).map(Some)
        } else {
            Some(None)
        }
    };
    let kilovolts = kilovolts_of("kilovolts");
    let kilovolts_at_most = kilovolts_of("kilovolts_at_most");
    let clearance = fields.length_if(notes, "clearance");
    let call = fields.note(notes, "call");
    Some(OverheadLine {
        id: id?,
        points: points?,
        height: height?,
        kilovolts: kilovolts?,
        kilovolts_at_most: kilovolts_at_most?,
        clearance: clearance?,
        call,
    })
}

pub(super) fn pile(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Pile> {
    let id = fields.text(notes, "id");
    let at = fields.point(notes, "at");
    let across = fields.length(notes, "across");
    let note = fields.note(notes, "note");
    Some(Pile {
        id: id?,
        at: at?,
        across: across?,
        note,
    })
}

pub(super) fn ticket(notes: &mut Notes, fields: &Fields<'_, '_>) -> Option<Ticket> {
    let id = fields.text(notes, "id");
    let from = fields.text(notes, "from");
    let to = fields.text(notes, "to");
    let area = fields.points(notes, "area");
    let names = fields.names(notes, "asks")?;
    let mut asks = Vec::new();
    for name in names {
        match word::<UtilityKind>(&name) {
            Ok(kind) => asks.push(kind),
            Err(why) => notes.wrong_at(fields.at("asks"), format!("`asks`: {why}.")),
        }
    }
    Some(Ticket {
        id: id?,
        from: from?,
        to: to?,
        area: area?,
        asks,
    })
}
