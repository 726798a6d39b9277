//! Benches, verticals at the bottom, shields and ladders, by the rules.

use super::{ExcavationRules, FaceError, SoilClass};
use crate::length::Length;
use crate::vector::{counts, rounded};

/// One bench, from the bottom: a vertical and the level behind it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bench {
    /// Up.
    pub rise: Length,
    /// The tread behind it.
    pub tread: Length,
}

fn bench_rule(
    rules: &ExcavationRules,
    class: SoilClass,
    cohesive: bool,
) -> Result<&super::BenchRule, FaceError> {
    let rule = match class {
        SoilClass::A => rules.benches.a.as_ref(),
        SoilClass::B => rules.benches.b.as_ref(),
        SoilClass::Rock | SoilClass::C => None,
    }
    .ok_or(FaceError::NoBench { class })?;
    if rule.cohesive_alone && !cohesive {
        return Err(FaceError::CohesiveAlone {
            class,
            section: rule.section.clone(),
        });
    }
    Ok(rule)
}

fn shallow_enough(rules: &ExcavationRules, depth: Length) -> Result<(), FaceError> {
    if rules.engineer.owed(depth) {
        return Err(FaceError::Engineer {
            depth,
            limit: rules.engineer.depth,
            section: rules.engineer.section.clone(),
        });
    }
    Ok(())
}

/// The fewest benches for a height, with every foot on the slope through the toe: tread = slope × vertical.
/// (Treads are derived: the rules' figures carry none.)
///
/// # Errors
/// When the rules draw no bench in this soil, or an engineer designs it.
pub fn benches(
    rules: &ExcavationRules,
    class: SoilClass,
    cohesive: bool,
    height: Length,
) -> Result<Vec<Bench>, FaceError> {
    let rule = bench_rule(rules, class, cohesive)?;
    shallow_enough(rules, height)?;
    if height <= Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::height(),
            value: height,
        });
    }
    let mut found = Vec::new();
    let mut left = height;
    while left > Length::ZERO {
        let most = if found.is_empty() {
            rule.first
        } else {
            rule.other
        };
        if most <= Length::ZERO {
            return Err(FaceError::NoBench { class });
        }
        let rise = most.min(left);
        found.push(Bench {
            rise,
            tread: rounded((counts(rise) * rules.slopes.of(class)).ceil()),
        });
        left -= rise;
    }
    Ok(found)
}

/// Whether the verticals of benches, from the bottom, keep the rule.
///
/// # Errors
/// The first that is too high, or why there are none in this soil.
pub fn check_benches(
    rules: &ExcavationRules,
    class: SoilClass,
    cohesive: bool,
    rises: &[Length],
) -> Result<(), FaceError> {
    let rule = bench_rule(rules, class, cohesive)?;
    shallow_enough(rules, rises.iter().copied().sum())?;
    for (number, rise) in (1..).zip(rises) {
        let most = if number == 1 { rule.first } else { rule.other };
        if *rise <= Length::ZERO {
            return Err(FaceError::Negative {
                what: words::face::what::benchs_vertical(),
                value: *rise,
            });
        }
        if *rise > most {
            return Err(FaceError::BenchTooHigh {
                number,
                is: *rise,
                most,
                section: rule.section.clone(),
            });
        }
    }
    Ok(())
}

/// How far the crest stands behind the toe when the bottom is an unsupported vertical.
///
/// # Errors
/// When the rules have no such vertical.
pub fn lower_part(
    rules: &ExcavationRules,
    class: SoilClass,
    depth: Length,
    vertical: Length,
) -> Result<Length, FaceError> {
    if vertical < Length::ZERO || vertical > depth {
        return Err(FaceError::Negative {
            what: words::face::what::depth_above_vertical(),
            value: depth - vertical,
        });
    }
    rules
        .lower
        .iter()
        .find(|part| part.class == class && depth <= part.depth && vertical <= part.vertical)
        .map(|part| rounded((counts(depth - vertical) * part.run_above).ceil()))
        .ok_or(FaceError::NoVertical {
            class,
            depth,
            vertical,
        })
}

/// How high a shield around a vertical stands above the bottom.
///
/// # Errors
/// When the vertical is below zero.
pub fn shield_top(rules: &ExcavationRules, vertical: Length) -> Result<Length, FaceError> {
    if vertical < Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::vertical(),
            value: vertical,
        });
    }
    Ok(vertical + rules.shield.above)
}

/// How many ladders a trench of this length needs, so that nobody goes farther than the rule's travel.
///
/// # Errors
/// When the length is not above zero.
pub fn ladders(rules: &ExcavationRules, length: Length) -> Result<u32, FaceError> {
    if length <= Length::ZERO {
        return Err(FaceError::Negative {
            what: words::face::what::trenchs_length(),
            value: length,
        });
    }
    let each = (rules.egress.travel * 2).tenth_micrometres().max(1);
    let many = length.tenth_micrometres().div_euclid(each)
        + i64::from(length.tenth_micrometres() % each != 0);
    Ok(u32::try_from(many).unwrap_or(u32::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 29 CFR 1926 Subpart P, Appendix B: no bench is drawn for C; B for cohesive soil alone; figures from memory.
    #[test]
    fn what_the_figures_do_not_draw_is_refused() {
        let rules = ExcavationRules::us_federal();
        let ft = Length::from_hundredths_of_a_foot;
        let ten = ft(1000);
        assert!(matches!(
            benches(rules, SoilClass::C, true, ten),
            Err(FaceError::NoBench { .. })
        ));
        assert!(matches!(
            benches(rules, SoilClass::B, false, ten),
            Err(FaceError::CohesiveAlone { .. })
        ));
        let too_high = |rises: &[Length]| match check_benches(rules, SoilClass::A, true, rises) {
            Err(FaceError::BenchTooHigh { number, .. }) => number,
            other => panic!("{other:?}"),
        };
        assert_eq!(too_high(&[ft(450), ft(500), ft(500)]), 1);
        assert_eq!(too_high(&[ft(400), ft(550), ft(500)]), 2);
        let vertical = |depth, vertical| lower_part(rules, SoilClass::A, ft(depth), ft(vertical));
        assert!(vertical(800, 350).is_ok());
        assert!(vertical(800, 360).is_err());
        assert!(vertical(1201, 350).is_err());
        assert!(vertical(300, 350).is_err());
        assert!(ladders(rules, ft(0)).is_err());
        for error in [
            FaceError::NoBench {
                class: SoilClass::C,
            },
            FaceError::ToeCrosses,
        ] {
            assert_ne!(error.to_string(), error.text().spanish);
        }
    }

    #[test]
    fn benches_add_up_to_the_height_and_keep_their_own_rule() {
        let rules = ExcavationRules::us_federal();
        for hundredths in [1, 400, 401, 899, 900, 1999, 2000] {
            let height = Length::from_hundredths_of_a_foot(hundredths);
            let found = benches(rules, SoilClass::A, true, height).unwrap();
            let rises: Vec<Length> = found.iter().map(|bench| bench.rise).collect();
            assert_eq!(rises.iter().copied().sum::<Length>(), height);
            assert_eq!(check_benches(rules, SoilClass::A, true, &rises), Ok(()));
        }
        assert!(benches(rules, SoilClass::A, true, Length::ZERO).is_err());
        let deep = Length::from_hundredths_of_a_foot(2001);
        assert!(matches!(
            benches(rules, SoilClass::B, true, deep),
            Err(FaceError::Engineer { .. })
        ));
    }
}
