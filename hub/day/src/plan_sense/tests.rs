//! Tests: does the plan make sense: what is odd about a site that is not wrong. Told, never put right.

use super::*;
use crate::given::{at, len, site};
use crate::site::{FormsAtHand, FoundPin, Frame};
use earthwork::alignment::Piece;
use earthwork::grade::{Flow, Invert};
use earthwork::target::{Axis, Layer, PipeTrench};

fn told(site: &Site, words: &str) -> bool {
    let found = odd(site);
    let told = found.iter().any(|one| one.text.english.contains(words));
    assert!(
        told || found.iter().all(|one| !one.text.spanish.is_empty()),
        "{found:#?}"
    );
    told
}

#[test]
fn the_test_yard_has_nothing_odd_in_its_plan() {
    assert_eq!(odd(&site()), []);
}

#[test]
fn a_step_is_made_of_whole_forms_that_exist() {
    let mut site = site();
    site.rules.forms = Some(FormsAtHand {
        height: len("1 ft"),
        widths: vec![len("2 ft")],
        filler: Length::ZERO,
    });
    assert_eq!(
        odd(&site),
        [],
        "the step is 1 ft high, ten forms of 2 ft along"
    );
    site.rules.forms = Some(FormsAtHand {
        height: len("0.75 ft"),
        widths: vec![len("3 ft")],
        filler: Length::ZERO,
    });
    assert!(told(&site, "The step at 0+20.00 is 1 ft high"));
    assert!(told(&site, "The step at 0+20.00: "));
}

fn drain(elevations: [&str; 2]) -> Shape {
    let invert = |station: &str, elevation: &str| Invert {
        station: len(station),
        elevation: len(elevation),
    };
    let trench = PipeTrench {
        axis: Axis {
            start: at("30 ft", "80 ft"),
            first: Length::ZERO,
            pieces: vec![Piece::Line {
                to: at("30 ft", "20 ft"),
            }],
        },
        inverts: vec![
            invert("0 ft", elevations[0]),
            invert("60 ft", elevations[1]),
        ],
        flow: Flow::UpStation,
        outside_diameter: len("0.5 ft"),
        side: len("0.5 ft"),
        least_fall: 0.01,
    };
    Shape::Trench(trench.into())
}

#[test]
fn a_flat_pipe_and_a_near_crossing_are_odd() {
    let mut site = site();
    let mut target = site.targets[1].clone();
    target.id = "DRAIN".into();
    target.grade.shape = drain(["90 ft", "88 ft"]);
    site.targets.push(target);
    assert_eq!(odd(&site), []);
    site.targets[2].grade.shape = drain(["90 ft", "89.9 ft"]);
    assert!(told(&site, "falls 0.17 %, less than 1.00 %"));
    site.targets[2].grade.shape = drain(["97 ft", "96 ft"]);
    assert!(told(&site, "DRAIN and RUN cross with"), "{:#?}", odd(&site));
}

#[test]
fn runs_that_end_together_have_one_elevation() {
    let mut site = site();
    let mut next = site.targets[1].clone();
    next.id = "NEXT".into();
    if let Shape::Run(run) = &mut next.grade.shape {
        run.start = at("40.3 ft", "50 ft");
        run.toward = at("80 ft", "50 ft");
        run.steps.truncate(1);
    }
    site.targets.push(next);
    assert!(told(&site, "RUN and NEXT end 0.3 ft apart"));
    assert!(told(&site, "their dig-tos are 1 ft apart"));
}

/// `bedding = "4 in"` of a trench is a layer already; a second one is dug for twice.
#[test]
fn a_layer_that_is_taken_off_twice_is_named_with_what_it_comes_to() {
    let mut site = site();
    let layer = |name: &str, thickness: &str| Layer {
        name: name.into(),
        thickness: len(thickness),
    };
    let stack = &mut site.targets[0].grade.stack;
    stack.layers = vec![layer("Pipe bedding", "4 in"), layer("gravel", "0.50 ft")];
    assert_eq!(odd(&site), []);
    site.targets[0]
        .grade
        .stack
        .layers
        .push(layer("bedding", "4 in"));
    assert!(
        told(
            &site,
            "PAD: “bedding” is taken off twice, 0.33 ft and 0.33 ft: the dig-to lies 0.67 ft"
        ),
        "{:#?}",
        odd(&site)
    );
    site.targets[0].grade.stack.layers.truncate(1);
    site.targets[0].grade.stack.layers[0].thickness = len("4 ft");
    assert!(told(&site, "is 4.00 ft thick"));
    assert!(told(&site, "If inches are meant, write 4 in."));
}

#[test]
fn a_pin_that_does_not_fit_is_named() {
    let mut site = site();
    let pin = |id: &str, east: &str, north: &str, x: &str, y: &str| FoundPin {
        id: id.into(),
        east: east.into(),
        north: north.into(),
        at: at(x, y),
    };
    let mut frame = Frame {
        unit: earthwork::site_frame::PlanUnit::Foot,
        east: "2000000".into(),
        north: "700000".into(),
        turn: 0.0,
        pins: vec![
            pin("SW", "2000000", "700000", "0 ft", "0 ft"),
            pin("SE", "2000100", "700000", "100 ft", "0 ft"),
            pin("NE", "2000100", "700100", "100 ft", "100 ft"),
            pin("NW", "2000000", "700100", "0 ft", "100 ft"),
        ],
    };
    site.frame = Some(frame.clone());
    assert_eq!(odd(&site), []);
    frame.pins[2].at = at("100.5 ft", "100 ft");
    site.frame = Some(frame);
    assert!(told(&site, "Pin NE stands"));
}
