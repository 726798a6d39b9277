//! A face for tests: 12 ft high along y = 100 from x = 0 to 80, its bank to the north. Invented.

use earthwork::layout::tie::Side;
use earthwork::target::{Shape, Stack, Target};

use super::{at, len};
use crate::cuts::plan::{CutKind, FaceZone, ToeCorner};

/// That face or trench.
pub fn flat_zone(kind: CutKind) -> FaceZone {
    let corner = |x: &str| ToeCorner {
        at: at(x, "100 ft"),
        elevation: len("100 ft"),
    };
    let flat = Shape::Flat {
        elevation: len("112 ft"),
    };
    FaceZone {
        id: "F".into(),
        name: "face".into(),
        kind,
        toe: vec![corner("0 ft"), corner("80 ft")],
        bank: Side::Left,
        ground: Target::new(
            flat,
            Stack {
                surface: "ground".into(),
                layers: vec![],
            },
        ),
        layers: vec![],
        toe_marks: vec![],
        crest_marks: vec![],
        pins: vec![],
        target: None,
        pipe_crown: None,
    }
}
