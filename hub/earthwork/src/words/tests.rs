//! Tests: what the screen says: a correction in words, figures and speech, in every language.

use super::*;
use crate::length::Length;
use crate::tolerance::Tolerance;
use Language::{English, Portuguese, Spanish};

fn th(thousandths: i64) -> Length {
    Length::from_thousandths_of_a_foot(thousandths)
}

/// Ground that is off by so many thousandths of a foot, where a tenth and two tenths are allowed.
fn text(correction: Correction, told: i64, language: Language, unit: ScreenUnit) -> CallText {
    let ground = Ground {
        dev: if matches!(correction, Correction::Up(_)) {
            -th(told)
        } else {
            th(told)
        },
        aim: Length::ZERO,
        tolerance: Some(Tolerance {
            high: th(100),
            low: th(200),
        }),
    };
    call_text(&correction, &ground, language, unit)
}

#[test]
fn down_three_and_a_half_in_every_unit_and_language() {
    let down = Correction::Down(Amount::HalfTenths(7));
    let english = text(down, 340, English, ScreenUnit::Tenths);
    assert_eq!(english.word, "DOWN");
    assert_eq!(
        (english.amount.as_str(), english.unit_word.as_str()),
        ("3½", "TENTHS")
    );
    assert_eq!(english.line, "DOWN 3½");
    assert_eq!(english.exact, "0.34 ft = 4 1/8 in = 104 mm");
    assert_eq!(english.spoken, "down three and a half");
    assert_eq!(english.warning, "");
    let spanish = text(down, 340, Spanish, ScreenUnit::Tenths);
    assert_eq!(
        (spanish.line.as_str(), spanish.unit_word.as_str()),
        ("BAJE 3½", "DÉCIMAS")
    );
    assert_eq!(spanish.spoken, "baje tres y media");
    let inches = text(down, 340, English, ScreenUnit::FeetInches);
    assert_eq!(inches.line, "DOWN 4 1/8 IN");
    assert_eq!(inches.exact, "4 1/8 in = 0.34 ft = 104 mm");
    assert_eq!(inches.spoken, "down four and an eighth inches");
    let metric = text(down, 340, Spanish, ScreenUnit::Millimetres);
    assert_eq!(metric.line, "BAJE 104 MM");
    assert_eq!(metric.exact, "104 mm = 0.34 ft = 4 1/8 in");
    assert_eq!(metric.spoken, "baje 104 milímetros");
    let portuguese = text(down, 340, Portuguese, ScreenUnit::Tenths);
    assert_eq!(
        (portuguese.line.as_str(), portuguese.unit_word.as_str()),
        ("DESÇA 3½", "DÉCIMOS")
    );
    assert_eq!(portuguese.spoken, "desça três e meio");
}

/// A tenth is masculine in Portuguese and an inch feminine, and one, two and a half of each follow.
#[test]
fn one_two_and_a_half_are_said_as_what_is_counted_asks() {
    let said = |halves, thousandths, language, unit| {
        let down = Correction::Down(Amount::HalfTenths(halves));
        text(down, thousandths, language, unit).spoken
    };
    for (halves, spanish, portuguese) in [
        (1, "baje media", "desça meio"),
        (3, "baje una y media", "desça um e meio"),
        (4, "baje dos", "desça dois"),
        (5, "baje dos y media", "desça dois e meio"),
    ] {
        let tenths = ScreenUnit::Tenths;
        assert_eq!(said(halves, 340, Spanish, tenths), spanish);
        assert_eq!(said(halves, 340, Portuguese, tenths), portuguese);
    }
    // Derived: 0.17 ft = 2.04 in, 0.21 ft = 2.52 in, 0.09 ft = 1.08 in; eighths are rounded.
    for (thousandths, spanish, portuguese) in [
        (170, "baje dos pulgadas", "desça duas polegadas"),
        (
            210,
            "baje dos y media pulgadas",
            "desça duas e meia polegadas",
        ),
        (
            90,
            "baje una y un octavo pulgadas",
            "desça uma e um oitavo polegadas",
        ),
    ] {
        let inches = ScreenUnit::FeetInches;
        assert_eq!(said(4, thousandths, Spanish, inches), spanish);
        assert_eq!(said(4, thousandths, Portuguese, inches), portuguese);
    }
}

#[test]
fn from_a_foot_on_it_says_feet() {
    let down = Correction::Down(Amount::TenthsOfFeet(12));
    let english = text(down, 1150, English, ScreenUnit::Tenths);
    assert_eq!(
        (english.line.as_str(), english.unit_word.as_str()),
        ("DOWN 1.2 FEET", "FEET")
    );
    assert_eq!(english.spoken, "down one point two feet");
    let spanish = text(down, 1150, Spanish, ScreenUnit::Tenths);
    assert_eq!(spanish.line, "BAJE 1.2 PIES");
    assert_eq!(spanish.spoken, "baje uno punto dos pies");
    assert_eq!(
        text(down, 1150, English, ScreenUnit::FeetInches).line,
        "DOWN 1 FT 1 3/4 IN"
    );
    assert_eq!(
        text(down, 1150, Spanish, ScreenUnit::FeetInches).line,
        "BAJE 1 PIE 1 3/4 PULG"
    );
    let portuguese = text(down, 1150, Portuguese, ScreenUnit::Tenths);
    assert_eq!(portuguese.line, "DESÇA 1.2 PÉS");
    assert_eq!(portuguese.spoken, "desça um ponto dois pés");
    assert_eq!(
        text(down, 1150, Portuguese, ScreenUnit::FeetInches).line,
        "DESÇA 1 PÉ 1 3/4 POL"
    );
}

#[test]
fn too_deep_is_never_told_without_its_warning() {
    let up = Correction::Up(Amount::HalfTenths(5));
    let english = text(up, 240, English, ScreenUnit::Tenths);
    assert_eq!(
        (english.line.as_str(), english.warning.as_str()),
        ("UP 2½", "TOO DEEP – DON'T FILL")
    );
    assert_eq!(english.spoken, "up two and a half, too deep, don't fill");
    let spanish = text(up, 240, Spanish, ScreenUnit::Tenths);
    assert_eq!(
        (spanish.line.as_str(), spanish.warning.as_str()),
        ("SUBA 2½", "MUY HONDO – NO RELLENE")
    );
    assert_eq!(spanish.spoken, "suba dos y media, muy hondo, no rellene");
    let portuguese = text(up, 240, Portuguese, ScreenUnit::Tenths);
    assert_eq!(
        (portuguese.line.as_str(), portuguese.warning.as_str()),
        ("SUBA 2½", "FUNDO DEMAIS – NÃO REATERRE")
    );
    assert_eq!(
        portuguese.spoken,
        "suba dois e meio, fundo demais, não reaterre"
    );
}

#[test]
fn grade_and_wait_carry_no_number() {
    for (correction, words) in [
        (Correction::Grade, ["GRADE", "A NIVEL", "NA COTA"]),
        (Correction::Wait, ["WAIT", "ESPERE", "ESPERE"]),
    ] {
        for (language, word) in [English, Spanish, Portuguese].into_iter().zip(words) {
            let text = text(correction, 40, language, ScreenUnit::FeetInches);
            assert_eq!(text.line, word);
            assert_eq!(
                [text.amount, text.unit_word, text.warning, text.exact],
                ["", "", "", ""]
            );
        }
    }
}

#[test]
fn the_smallest_amount_is_never_shown_as_nothing() {
    let shave = Correction::Shave(Amount::HalfTenths(1));
    for (unit, line) in [
        (ScreenUnit::Tenths, "SHAVE ½"),
        (ScreenUnit::FeetInches, "SHAVE 1/8 IN"),
        (ScreenUnit::Millimetres, "SHAVE 1 MM"),
    ] {
        assert_eq!(text(shave, 0, English, unit).line, line);
    }
    let text = text(shave, 0, English, ScreenUnit::Tenths);
    assert_eq!(text.exact, "0.01 ft = 1/8 in = 1 mm");
    assert_eq!(text.spoken, "shave a half");
}

/// Where half-tenths are too coarse it is hundredths of a foot, and where the smallest figure is too deep, less than it.
#[test]
fn a_tolerance_finer_than_the_figures_is_said_in_finer_ones() {
    let told = |dev: i64, allowed: i64, language, unit| {
        let ground = Ground {
            dev: Length::from_tenth_micrometres(dev),
            aim: Length::ZERO,
            tolerance: Some(Tolerance::new(th(allowed), th(allowed)).unwrap()),
        };
        let verdict = crate::tolerance::Verdict::High;
        let told = crate::correction::correction(&ground, verdict, false);
        call_text(&told, &ground, language, unit)
    };
    let dev = th(324).tenth_micrometres();
    let english = told(dev, 20, English, ScreenUnit::Tenths);
    assert_eq!(english.line, "DOWN 0.32 FEET");
    assert_eq!(english.spoken, "down zero point three two feet");
    let spanish = told(dev, 20, Spanish, ScreenUnit::Tenths);
    assert_eq!(spanish.line, "BAJE 0.32 PIES");
    assert_eq!(spanish.spoken, "baje cero punto tres dos pies");
    for (unit, line, spoken, spoken_es) in [
        (
            ScreenUnit::Tenths,
            "SHAVE <0.01 FEET",
            "shave less than one hundredth of a foot",
            "raspe menos de una centésima de pie",
        ),
        (
            ScreenUnit::FeetInches,
            "SHAVE <1/8 IN",
            "shave less than an eighth of an inch",
            "raspe menos de un octavo de pulgada",
        ),
        (
            ScreenUnit::Millimetres,
            "SHAVE <1 MM",
            "shave less than one millimetre",
            "raspe menos de un milímetro",
        ),
    ] {
        let text = told(5_000, 1, English, unit);
        assert_eq!((text.line.as_str(), text.spoken.as_str()), (line, spoken));
        assert_eq!(told(5_000, 1, Spanish, unit).spoken, spoken_es);
        assert!(
            text.exact.contains("<0.01 ft") && text.exact.contains("<1 mm"),
            "{}",
            text.exact
        );
    }
}

#[test]
fn no_word_stands_for_two_things() {
    let half = Amount::HalfTenths(1);
    let measured = [
        Correction::Down(half),
        Correction::Shave(half),
        Correction::Grade,
        Correction::Up(half),
        Correction::Wait,
    ];
    let quick = [
        QuickWord::More,
        QuickWord::ALittle,
        QuickWord::There,
        QuickWord::TooDeep,
        QuickWord::ComeToMe,
        QuickWord::LookHere,
    ];
    for language in Language::ALL {
        let mut words: Vec<String> = measured
            .map(|correction| text(correction, 0, language, ScreenUnit::Tenths).word)
            .into_iter()
            .chain(quick.map(|word| quick_text(word, language).word))
            .collect();
        let all = words.len();
        words.sort();
        words.dedup();
        assert_eq!(words.len(), all, "{words:?}");
    }
}

#[test]
fn a_quick_call_about_the_ground_is_marked_by_eye() {
    assert_eq!(quick_text(QuickWord::More, English).line, "MORE BY EYE");
    assert_eq!(
        quick_text(QuickWord::ALittle, Spanish).line,
        "UN POCO A OJO"
    );
    assert_eq!(quick_text(QuickWord::ComeToMe, English).line, "COME TO ME");
}
