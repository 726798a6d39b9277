//! Tests: what does the text say: lengths as people type them, always with their unit.

use super::*;

fn sixteenths(sixteenths: i64) -> Length {
    Length::from_sixteenths_of_an_inch(sixteenths)
}

fn ft(hundredths: i64) -> Length {
    Length::from_hundredths_of_a_foot(hundredths)
}

#[test]
fn lengths_are_read_as_people_write_them() {
    for (text, length) in [
        ("98.50 ft", ft(9850)),
        ("98,50 ft", ft(9850)),
        ("98.50ft", ft(9850)),
        ("-0.04 ft", ft(-4)),
        ("−0.04 ft", ft(-4)),
        ("+0.04 ft", ft(4)),
        (".5 ft", ft(50)),
        ("0,125 ft", Length::from_thousandths_of_a_foot(125)),
        ("1234,567 ft", Length::from_thousandths_of_a_foot(1_234_567)),
        ("4 in", sixteenths(64)),
        ("3 1/2 in", sixteenths(56)),
        ("3½ in", sixteenths(56)),
        ("⅜″", sixteenths(6)),
        ("5 ft 4 3/8 in", sixteenths(64 * 16 + 6)),
        ("5 ft 4 in.", sixteenths(64 * 16)),
        ("5'-4 3/8\"", sixteenths(64 * 16 + 6)),
        ("5'- 4 in", sixteenths(64 * 16)),
        ("5 ft-4 in", sixteenths(64 * 16)),
        ("3-1/2 in", sixteenths(56)),
        ("5′ 4⅜″", sixteenths(64 * 16 + 6)),
        ("5' 4''", sixteenths(64 * 16)),
        ("-5 ft 4 in", sixteenths(-64 * 16)),
        ("12 mm", Length::from_millimetres(12)),
        ("1.2 m", Length::from_millimetres(1200)),
        ("1.234 m", Length::from_millimetres(1234)),
        ("25 cm", Length::from_millimetres(250)),
        ("100000000 FT", ft(10_000_000_000)),
    ] {
        assert_eq!(parse(text), Ok(length), "{text}");
    }
}

#[test]
fn what_is_not_one_length_is_refused_with_what_to_write() {
    for (text, says) in [
        ("", "No length was written"),
        ("  ", "No length was written"),
        ("98.50", "has no unit"),
        ("5 ft -4 in", "a minus stands before the whole length"),
        ("5 ft - 4 in", "a minus stands before the whole length"),
        ("5' −4\"", "a minus stands before the whole length"),
        ("4 -3/8 in", "a minus stands before the whole length"),
        ("4--3/8 in", "a minus stands before the whole length"),
        ("5'--4 in", "can't be read"),
        ("5 ft 4", "has no unit"),
        ("98.50 yd", "unit “yd”"),
        ("1e3 ft", "unit “e” is not known"),
        ("NaN ft", "can't be read"),
        ("ft", "can't be read"),
        ("1.2.3 ft", "can't be read"),
        ("--1 ft", "can't be read"),
        ("5. ft", "can't be read"),
        ("1,234 ft", "Write 1.234 ft or 1234 ft."),
        ("12,345 ft", "Write 12.345 ft or 12345 ft."),
        ("5 in 4 ft", "go together"),
        ("5.5 ft 4 in", "go together"),
        ("5 ft 4 mm", "go together"),
        ("5 ft 4 in 3 in", "go together"),
        ("5 ft 12 in", "less than 12 inches"),
        ("3 9/8 in", "fraction"),
        ("3 1/0 in", "fraction"),
        ("3 1/99 in", "fraction"),
        ("100000001 ft", "longer than any site"),
        ("99999999999999999999999 ft", "longer than any site"),
        ("999999999999 m", "longer than any site"),
    ] {
        let refused = parse(text);
        let error = refused.map_or_else(|error| error.to_string(), |got| format!("read as {got}"));
        assert!(error.contains(says), "{text}: {error}");
    }
}

#[test]
fn what_is_endless_is_refused_and_cut_short() {
    let said = parse(&"9".repeat(1_000_000)).unwrap_err().to_string();
    assert!(said.contains('…') && said.len() < 300, "{}", said.len());
}
