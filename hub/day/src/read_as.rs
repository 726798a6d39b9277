//! What people read for the names that the hub gives: a set-up S1 and a mark S1 in one sentence are two things, and so are a
//! patch G1 and a mark G1. Logs, files and tables for machines keep the stored names; the pages read them alike
//! (`hub/words/en/pages/names.ftl`, `hub/words/es/pages/names.ftl`).

use earthwork::words::Language;

/// Set-up S1 is read SETUP-1; a name that the hub did not give stays as it is.
pub fn set_up(id: &str, language: Language) -> String {
    named(id, 'S', pick(language, "SETUP-", "PUESTA-"))
}

/// Gravel patch G1 is read PATCH-1; a name that the hub did not give stays as it is.
pub fn patch(id: &str, language: Language) -> String {
    named(id, 'G', pick(language, "PATCH-", "PARCHE-"))
}

/// A set-up's name in English and in Spanish.
pub fn set_up_in_both(id: &str) -> (String, String) {
    (set_up(id, Language::English), set_up(id, Language::Spanish))
}

/// A patch's name in English and in Spanish.
pub fn patch_in_both(id: &str) -> (String, String) {
    (patch(id, Language::English), patch(id, Language::Spanish))
}

fn pick(language: Language, english: &'static str, spanish: &'static str) -> &'static str {
    match language {
        Language::English => english,
        Language::Spanish => spanish,
    }
}

/// The hub's own names are a letter and a number.
fn named(id: &str, letter: char, word: &str) -> String {
    match id.strip_prefix(letter) {
        Some(number) if !number.is_empty() && number.bytes().all(|one| one.is_ascii_digit()) => {
            format!("{word}{number}")
        }
        _ => id.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hubs_own_names_are_read_as_what_they_are_and_others_stay() {
        assert_eq!(set_up("S1", Language::English), "SETUP-1");
        assert_eq!(set_up("S12", Language::Spanish), "PUESTA-12");
        assert_eq!(patch("G3", Language::English), "PATCH-3");
        assert_eq!(patch("G3", Language::Spanish), "PARCHE-3");
        for other in ["S", "S-1", "S1a", "SW-4", "G", "LASER", ""] {
            assert_eq!(set_up(other, Language::English), other);
            assert_eq!(patch(other, Language::Spanish), other);
        }
    }

    #[test]
    fn the_pages_read_them_alike() {
        let english = include_str!("../../words/en/pages/names.ftl");
        let spanish = include_str!("../../words/es/pages/names.ftl");
        for (words, language) in [(english, Language::English), (spanish, Language::Spanish)] {
            for (name, read) in [
                ("setUp", set_up("S1", language)),
                ("patch", patch("G1", language)),
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
