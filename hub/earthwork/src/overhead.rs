//! How far every part of a digging machine stays from a line overhead: the laws' figures, and the more cautious where two may
//! be read.
//!
//! Which law: machines that dig are left out of the cranes' rules, also when they lift with a sling (29 CFR 1926.1400 (c)(2));
//! 29 CFR 1926.600 (a)(6) binds equipment near lines, and takes every wire for live until its owner says that it is not and
//! it is visibly grounded (both from memory: the text was not at hand). The cranes' table never asks for less, so it is what is shown. The line's owner comes before both.

use crate::length::Length;

/// A row of a table: up to and with so many kilovolts, so many feet.
type Row = (f64, i64);

/// 29 CFR 1926.1408, Table A (alternating current, nominal; "to" is up to and with).
const CRANES: [Row; 6] = [
    (50.0, 10),
    (200.0, 15),
    (350.0, 20),
    (500.0, 25),
    (750.0, 35),
    (1_000.0, 45),
];
/// 29 CFR 1926.600 (a)(6), from memory; the same figures stand in a state's rule that was read (WAC 296-54-529 (3)).
const EQUIPMENT_FT: f64 = 10.0;
/// Up to and with so many kilovolts the ten feet are enough, of the same.
const EQUIPMENT_KV: f64 = 50.0;
/// For each kilovolt over it, of the same.
const EQUIPMENT_IN_PER_KV: f64 = 0.4;
/// Where nobody has said the voltage: 29 CFR 1926.1408 (a)(2)(ii), option 2, for lines that are known to be no more than
/// 350 kV, and 1926.1409 (a), which puts 50 ft for 20 ft over that. Secondary sources: a training centre's reprint of .1408
/// (a)(2) and a reader's digest of .1409; .1407 (a)(2) says the same of assembly, read as a copy of the code.
const UNKNOWN: [Row; 2] = [(350.0, 20), (1_000.0, 50)];

fn feet(whole: i64) -> Length {
    Length::from_hundredths_of_a_foot(whole * 100)
}

fn row(table: &[Row], kilovolts: f64) -> Option<Length> {
    let row = table.iter().find(|(up_to, _)| kilovolts <= *up_to)?;
    Some(feet(row.1))
}

/// From a line of so many kilovolts, by the rule for equipment: 10 ft, and 0.4 in for each kilovolt over 50.
fn by_equipment_rule(kilovolts: f64) -> Option<Length> {
    let over = (kilovolts - EQUIPMENT_KV).max(0.0);
    Length::from_feet(EQUIPMENT_FT + over * EQUIPMENT_IN_PER_KV / 12.0).ok()
}

/// How far every part of a machine stays from a line whose owner has said so many kilovolts: the more cautious of both laws.
/// Nothing above 1,000 kV, where the owner says it, and for what is no voltage.
pub fn clearance(kilovolts: f64) -> Option<Length> {
    if kilovolts < 0.0 {
        return None;
    }
    Some(row(&CRANES, kilovolts)?.max(by_equipment_rule(kilovolts)?))
}

/// How far from a line whose voltage nobody has said: 50 ft, and 20 ft where its owner has said that it carries no more
/// than 350 kV.
pub fn clearance_unknown(at_most: Option<f64>) -> Length {
    let far = feet(UNKNOWN[1].1);
    at_most
        .filter(|kilovolts| *kilovolts >= 0.0)
        .and_then(|kilovolts| row(&UNKNOWN, kilovolts))
        .unwrap_or(far)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn twenty_feet_for_an_unknown_voltage_hold_to_350_kv_alone() {
        assert_eq!(clearance_unknown(None), feet(50));
        assert_eq!(clearance_unknown(Some(350.0)), feet(20));
        assert_eq!(clearance_unknown(Some(350.1)), feet(50));
        assert_eq!(clearance_unknown(Some(f64::NAN)), feet(50));
        assert_eq!(clearance_unknown(Some(-1.0)), feet(50));
        assert_eq!(clearance_unknown(Some(2_000.0)), feet(50));
    }

    /// 29 CFR 1926.600 (a)(6)(ii), from memory: at 200, 350 and 500 kV both laws ask for the same; between, the table for more.
    #[test]
    fn both_laws_meet_at_their_corners() {
        for (kilovolts, ft) in [(50.0, 10), (200.0, 15), (350.0, 20), (500.0, 25)] {
            assert_eq!(by_equipment_rule(kilovolts), Some(feet(ft)));
            assert_eq!(clearance(kilovolts), Some(feet(ft)));
        }
        let at_138 = Length::from_feet(10.0 + 88.0 * 0.4 / 12.0).unwrap();
        assert_eq!(by_equipment_rule(138.0), Some(at_138));
        assert_eq!(clearance(138.0), Some(feet(15)));
    }

    proptest! {
        /// What is shown is never less than either law asks.
        #[test]
        fn neither_law_asks_for_more(kilovolts in 0.0_f64..1_000.0) {
            let shown = clearance(kilovolts).unwrap();
            prop_assert!(shown >= by_equipment_rule(kilovolts).unwrap());
            prop_assert!(shown >= row(&CRANES, kilovolts).unwrap());
            prop_assert!(clearance_unknown(Some(kilovolts)) >= shown || kilovolts > 350.0);
            prop_assert!(clearance_unknown(None) >= shown);
        }
    }
}
