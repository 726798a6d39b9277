//! What is odd about the layers under a target's surface: taken off twice, or thicker than anybody lays them.

use earthwork::length::Length;

use super::Found;
use crate::site::Target;

/// A layer thicker than this is asked about: 2 ft (common practice: inches were meant, and feet were read).
const THICK: Length = Length::from_hundredths_of_a_foot(200);

/// What a layer is called, without how it is written: a plan's `Bedding`, `pipe bedding` and `bedding` are one.
fn called(name: &str) -> String {
    let plain = name.to_lowercase();
    let words = plain.split(|c: char| !c.is_alphanumeric());
    let mut words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    if words.len() > 1 {
        words.retain(|word| !matches!(*word, "pipe" | "the" | "layer"));
    }
    words.join(" ")
}

/// The same figure in inches: what was meant where somebody left the unit out, `4 in` for 4 ft.
fn inches(length: Length) -> String {
    let figure = (length.feet() * 100.0).round() / 100.0;
    format!("{figure} in")
}

fn feet(length: Length) -> String {
    format!("{:.2}", length.feet())
}

/// A tolerance wider than this is asked about: 1 ft (common practice: it accepts what no crew would).
const WIDE: Length = Length::from_hundredths_of_a_foot(100);

impl Found {
    /// A tolerance of several feet takes everything for on grade.
    fn wide(&mut self, target: &Target) {
        let (high, low) = (target.tolerance.high, target.tolerance.low);
        let widest = high.max(low);
        if widest > WIDE {
            let (id, ft) = (&target.id, feet(widest));
            let meant = inches(widest);
            self.odd(
                format!("targets.{id}.tolerance"),
                words::plan_sense::ground_ft_off_would_grade(&id, &ft, &meant),
            );
        }
    }

    /// A layer that stands twice takes its thickness off twice; one of several feet may be inches.
    pub(super) fn layers(&mut self, target: &Target) {
        let layers = &target.grade.stack.layers;
        let path = format!("targets.{}", target.id);
        for (place, layer) in layers.iter().enumerate() {
            let name = called(&layer.name);
            let before = layers[..place].iter().find(|one| called(&one.name) == name);
            if let Some(before) = before {
                let (one, two) = (feet(before.thickness), feet(layer.thickness));
                let both = feet(before.thickness + layer.thickness);
                let (id, said) = (&target.id, &layer.name);
                self.odd(
                    path.clone(),
                    words::plan_sense::taken_off_twice_ft_ft(&id, &said, &one, &two, &both),
                );
            }
            if layer.thickness >= THICK {
                let (id, said, thick) = (&target.id, &layer.name, feet(layer.thickness));
                let meant = inches(layer.thickness);
                self.odd(
                    path.clone(),
                    words::plan_sense::ft_thick_dig_lies_so(&id, &said, &thick, &meant),
                );
            }
        }
        self.wide(target);
        for one in &target.grade.undercuts {
            if one.depth >= THICK {
                let (id, said, deep) = (&target.id, &one.name, feet(one.depth));
                let meant = inches(one.depth);
                self.odd(
                    path.clone(),
                    words::plan_sense::the_undercut_goes_ft_deeper(&id, &said, &deep, &meant),
                );
            }
        }
    }
}
