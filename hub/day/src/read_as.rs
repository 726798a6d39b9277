//! What people read for the names that the hub gives: a set-up S1 and a mark S1 in one sentence are two things, and so are a
//! patch G1 and a mark G1. Logs, files and tables for machines keep the stored names; the pages read them alike
//! (`hub/words/<language>/pages/names.ftl`).

use words::Text;

/// Set-up S1 is read SETUP-1; a name that the hub did not give stays as it is.
pub fn set_up(id: &str) -> Text {
    number(id, 'S').map_or_else(|| Text::alike(id), |number| words::read_as::set_up(&number))
}

/// Gravel patch G1 is read PATCH-1; a name that the hub did not give stays as it is.
pub fn patch(id: &str) -> Text {
    number(id, 'G').map_or_else(|| Text::alike(id), |number| words::read_as::patch(&number))
}

/// The hub's own names are a letter and a number.
fn number(id: &str, letter: char) -> Option<&str> {
    let number = id.strip_prefix(letter)?;
    let counted = !number.is_empty() && number.bytes().all(|one| one.is_ascii_digit());
    counted.then_some(number)
}

#[cfg(test)]
mod tests {
    use words::Language;

    use super::*;

    #[test]
    fn the_hubs_own_names_are_read_as_what_they_are_and_others_stay() {
        assert_eq!(set_up("S1").of(Language::English), "SETUP-1");
        assert_eq!(set_up("S12").of(Language::Spanish), "PUESTA-12");
        assert_eq!(patch("G3").of(Language::English), "PATCH-3");
        assert_eq!(patch("G3").of(Language::Spanish), "PARCHE-3");
        for other in ["S", "S-1", "S1a", "SW-4", "G", "LASER", ""] {
            assert_eq!(set_up(other).of(Language::English), other);
            assert_eq!(patch(other).of(Language::Spanish), other);
        }
    }

    #[test]
    fn the_pages_read_them_alike() {
        let english = include_str!("../../words/en/pages/names.ftl");
        let spanish = include_str!("../../words/es/pages/names.ftl");
        let portuguese = include_str!("../../words/pt/pages/names.ftl");
        let of = [
            (english, Language::English),
            (spanish, Language::Spanish),
            (portuguese, Language::Portuguese),
        ];
        assert_eq!(of.map(|(_, language)| language), Language::ALL);
        for (words, language) in of {
            for (name, read) in [
                ("setUp", set_up("S1").take(language)),
                ("patch", patch("G1").take(language)),
            ] {
                let said = format!("\n{name} = {}\n", read.replace('1', "{ $number }"));
                assert!(words.contains(&said), "{said}");
            }
        }
        let rule = include_str!("../../../web-ui/src/given_names.ts");
        for (letter, name) in [('S', "setUp"), ('G', "patch")] {
            let rule_of = format!("read(id, /^{letter}(\\d+)$/, t().names.{name})");
            assert!(rule.contains(&rule_of), "{rule_of}");
        }
    }
}
