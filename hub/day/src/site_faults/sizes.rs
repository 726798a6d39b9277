//! What can be wrong with the sizes of rods, lasers, lines and rules: nothing measured lies below zero.

use earthwork::length::Length;

use super::Faults;
use crate::site::Site;

/// A doubt of a foot or more was surely typed in another unit (common practice).
const MOST_DOUBT: Length = Length::from_hundredths_of_a_foot(100);

pub(super) fn faults(found: &mut Faults, site: &Site) {
    let doubt = |found: &mut Faults, path: String, doubt: Length| {
        if doubt < Length::ZERO || doubt > MOST_DOUBT {
            found.wrong(path, words::site_faults::a_doubt_of(&doubt));
        }
    };
    for one in &site.lasers {
        let path = format!("lasers.{}.doubt_per_100_ft", one.id);
        doubt(found, path, one.doubt_per_100_ft);
    }
    for one in &site.lines {
        doubt(found, format!("lines.{}.doubt", one.id), one.doubt);
    }
    for rod in &site.rods {
        let above = rod
            .joints
            .iter()
            .any(|joint| *joint <= Length::ZERO || *joint > rod.length);
        if rod.length <= Length::ZERO || above {
            found.wrong(
                format!("rods.{}.length", rod.id),
                words::site_faults::the_rod_is_long(&rod.length),
            );
        }
    }
    rules(found, site);
}

fn rules(found: &mut Faults, site: &Site) {
    let rules = &site.rules;
    if rules.checks.good < Length::ZERO || rules.checks.warn < rules.checks.good {
        found.wrong(
            "rules.check_good",
            words::site_faults::check_good_within_warned_within(
                &rules.checks.good,
                &rules.checks.warn,
            ),
        );
    }
    if rules.closure < Length::ZERO {
        found.wrong(
            "rules.level_closure",
            words::site_faults::a_closure_cant_be_negative(),
        );
    }
    if rules.truck_side.is_some_and(|side| side <= Length::ZERO) {
        found.wrong(
            "rules.truck_side",
            words::site_faults::truck_side_stands_above_ground(),
        );
    }
    if let Some(forms) = &rules.forms
        && (forms.height <= Length::ZERO
            || forms.filler < Length::ZERO
            || forms.widths.iter().any(|width| *width <= Length::ZERO))
    {
        found.wrong(
            "rules.forms",
            words::site_faults::heights_widths_forms_lie_above(),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::super::faults as all;
    use crate::given::{len, site};
    use crate::site::Site;

    #[test]
    fn nothing_measured_lies_below_zero() {
        let wrong = |change: fn(&mut Site)| {
            let mut site = site();
            change(&mut site);
            let found = all(&site).into_iter().filter(|fault| !fault.warning);
            found.map(|fault| fault.path).collect::<Vec<_>>()
        };
        assert!(wrong(|_| {}).is_empty());
        for (path, change) in [
            (
                "lasers.",
                (|site| site.lasers[0].doubt_per_100_ft = len("-0.005 ft")) as fn(&mut Site),
            ),
            ("rods.", |site| site.rods[0].length = len("-13 ft")),
            ("rods.", |site| site.rods[0].joints = vec![len("99 ft")]),
            ("rules.check_good", |site| {
                site.rules.checks.good = len("-0.01 ft");
            }),
            ("rules.check_good", |site| {
                site.rules.checks.warn = len("0.001 ft");
            }),
            ("rules.level_closure", |site| {
                site.rules.closure = len("-0.02 ft");
            }),
            ("rules.truck_side", |site| {
                site.rules.truck_side = Some(len("-10 ft"));
            }),
            ("machines.", |site| {
                site.machines[0].reach.reach_at_ground = len("-27.8 ft");
            }),
            ("benchmarks.", |site| {
                site.benchmarks[0].doubt = len("-0.01 ft");
            }),
            ("targets.", |site| {
                site.targets[0].tolerance.low = len("-0.1 ft");
            }),
            ("targets.", |site| site.targets[0].guard_factor = 1e308),
        ] {
            let found = wrong(change);
            assert!(
                found.iter().any(|one| one.starts_with(path)),
                "{path}: {found:?}"
            );
        }
    }
}
