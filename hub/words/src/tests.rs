//! What a build finds wrong in words, with its place; what it makes of right ones; how a text is kept and read.

use crate::build::check;
use crate::build::source::{self, File, Source, listed};
use crate::build::write;
use crate::{Language, Text};

fn folder(code: &str, text: &str) -> Source {
    Source {
        code: code.to_owned(),
        files: vec![File {
            name: "tell".to_owned(),
            path: format!("hub/words/{code}/hub/tell.ftl"),
            text: text.to_owned(),
        }],
    }
}

/// What is wrong when English says one thing and Spanish another.
fn faults(english: &str, spanish: &str) -> Vec<String> {
    let sources = [folder("en", english), folder("es", spanish)];
    check::all(&sources).err().unwrap_or_default()
}

const ENGLISH: &str = "# $by (text) who says it\nrain = Rain began, says { $by }.\n";
const SPANISH: &str = "rain = Empezó a llover, dice { $by }.\n";

#[test]
fn words_that_say_the_same_in_each_language_have_no_fault() {
    assert_eq!(faults(ENGLISH, SPANISH), Vec::<String>::new());
}

#[test]
fn what_one_language_lacks_or_has_too_much_is_named_with_its_place() {
    let more = format!("{ENGLISH}dry = It is dry.\n");
    assert_eq!(
        faults(&more, SPANISH),
        [
            "hub/words/en/hub/tell.ftl:3: dry: hub/words/es/hub/tell.ftl does not say it. Add it there."
        ]
    );
    let more = format!("{SPANISH}seco = Está seco.\n");
    assert_eq!(
        faults(ENGLISH, &more),
        [
            "hub/words/es/hub/tell.ftl:2: seco: English has no such message. Check its name, or remove it."
        ]
    );
    let twice = format!("{SPANISH}{SPANISH}");
    assert_eq!(
        faults(ENGLISH, &twice),
        ["hub/words/es/hub/tell.ftl:1: rain: stands there twice. Rename or remove one."]
    );
    let mut without = [folder("en", ENGLISH), folder("es", SPANISH)];
    without[1].files.clear();
    assert_eq!(
        check::all(&without).err().unwrap(),
        ["hub/words/en/hub/tell.ftl:1: es has no file tell.ftl. Add it."]
    );
}

#[test]
fn a_variable_that_is_misspelt_left_out_or_not_explained_is_named() {
    assert_eq!(
        faults(ENGLISH, "\nrain = Empezó a llover, dice { $bye }.\n"),
        [
            "hub/words/es/hub/tell.ftl:2: rain: does not say $by, which English says.",
            "hub/words/es/hub/tell.ftl:2: rain: English has no $bye. Check its name.",
        ]
    );
    assert_eq!(
        faults("rain = Rain began, says { $by }.\n", SPANISH),
        [
            "hub/words/en/hub/tell.ftl:1: rain: $by is not named in the comment above it. Write `# $by (text) what it is`."
        ]
    );
    let misspelt = ENGLISH.replace("(text)", "(name)");
    assert!(
        faults(&misspelt, SPANISH)[0].contains("write `# $name (text) what it is`"),
        "{:?}",
        faults(&misspelt, SPANISH)
    );
}

#[test]
fn a_branch_that_is_missing_or_unknown_is_named() {
    let english =
        "# $way (text) where to\nway = { $way ->\n    [in] Comes in\n   *[out] Goes out\n}.\n";
    let spanish = "way = { $way ->\n    [inn] Entra\n   *[out] Sale\n}.\n";
    assert_eq!(
        faults(english, spanish),
        [
            "hub/words/es/hub/tell.ftl:1: way: has no branch [in] of $way, which English has.",
            "hub/words/es/hub/tell.ftl:1: way: English has no branch [inn] of $way. Check its name.",
        ]
    );
    let english = "# $many (number) how many\nmany = { $many ->\n    [one] 1 mark\n   *[other] { $many } marks\n}.\n";
    assert_eq!(
        faults(english, "many = { $many } marcas.\n"),
        [
            "hub/words/es/hub/tell.ftl:1: many: does not tell one $many from several, as English does."
        ]
    );
    let few = "many = { $many ->\n    [few] una marca\n   *[other] { $many } marcas\n}.\n";
    assert_eq!(
        faults(english, few),
        [
            "hub/words/es/hub/tell.ftl:1: many: [few] is no plural of es. It has: one, other.",
            "hub/words/es/hub/tell.ftl:1: many: has no branch [one] of $many.",
        ]
    );
}

#[test]
fn what_is_not_used_here_is_a_fault_with_what_to_write_instead() {
    for (wrong, says) in [
        (
            "rain = Rain\n    .title = Rain\n",
            "attributes are not used here",
        ),
        (
            "rain = { NUMBER($by) }\n",
            "functions such as NUMBER are not used here",
        ),
        ("rain = { dry }\n", "this file has no dry"),
        (
            "rain = { -term(a: 1) }\n-term = Rain\n",
            "terms with arguments are not used here",
        ),
        ("Rain = Rain\n", "lower case letters"),
        ("rain = Rain { \n", "Write it as Fluent has it"),
    ] {
        let found = faults(wrong, wrong);
        assert!(
            found
                .iter()
                .any(|fault| fault.contains(says)
                    && fault.starts_with("hub/words/en/hub/tell.ftl:1: ")),
            "{wrong}: {found:?}"
        );
    }
}

#[test]
fn a_message_becomes_a_function_with_its_levels_as_modules() {
    let english = format!("{ENGLISH}# said of the sky\nsky-clear = {{ dry }}\ndry = Dry\n");
    let spanish = format!("{SPANISH}sky-clear = {{ dry }}\ndry = Seco\n");
    let made = check::all(&[folder("en", &english), folder("es", &spanish)]).unwrap();
    let languages =
        listed(r#"{ "english": { "folder": "en" }, "spanish": { "folder": "es" } }"#).unwrap();
    let made = write::rust(&languages, &made);
    for part in [
        "pub mod tell {",
        "pub fn rain(by: &dyn Said) -> Text {",
        "pub mod sky {",
        "pub const fn clear() -> Fixed { Fixed::new([\"Dry\", \"Seco\"]) }",
    ] {
        assert!(made.contains(part), "{part}\n{made}");
    }
}

#[test]
fn one_and_several_are_told_apart_in_each_language() {
    let said = |feet: u32| crate::call::feet_and_inches(&feet, &"4 1/8");
    assert_eq!(said(1).spanish, "1 PIE 4 1/8");
    assert_eq!(said(2).spanish, "2 PIES 4 1/8");
    assert_eq!(said(2).english, "2 FT 4 1/8");
    // Portuguese counts none as one.
    assert_eq!(said(0).portuguese, "0 PÉ 4 1/8");
    assert_eq!(said(1).portuguese, "1 PÉ 4 1/8");
    assert_eq!(said(2).portuguese, "2 PÉS 4 1/8");
}

#[test]
fn a_text_within_a_text_is_said_in_the_same_language() {
    let line = Text {
        english: "LINE".to_owned(),
        spanish: "LÍNEA".to_owned(),
        portuguese: "LINHA".to_owned(),
    };
    let left = crate::line::left(&line);
    assert_eq!(left.of(Language::English), "LINE LINE");
    assert_eq!(left.of(Language::Spanish), "LÍNEA LÍNEA");
    assert_eq!(left.of(Language::Portuguese), "LINHA LINHA");
}

#[test]
fn a_text_is_kept_as_logs_have_it_and_reads_as_english_where_a_language_is_missing() {
    let text: Text = crate::line::word().into();
    let kept = serde_json::to_string(&text).unwrap();
    assert_eq!(
        kept,
        r#"{"english":"LINE","spanish":"LÍNEA","portuguese":"LINHA"}"#
    );
    assert_eq!(serde_json::from_str::<Text>(&kept).unwrap(), text);
    // As logs have it from before there was Portuguese: it opens, reads as English there, and is kept again as it was.
    let before = r#"{"english":"LINE","spanish":"LÍNEA"}"#;
    let older: Text = serde_json::from_str(before).unwrap();
    assert_eq!(serde_json::to_string(&older).unwrap(), before);
    assert_eq!(older.of(Language::Portuguese), "LINE");
    assert_eq!(older.clone().take(Language::Portuguese), "LINE");
    assert_eq!(older.take(Language::Spanish), "LÍNEA");
}

#[test]
fn every_language_says_which_it_is() {
    let said = Language::ALL.map(|one| (one.name().to_owned(), one.code().to_owned()));
    let listed = source::languages().unwrap();
    let listed: Vec<_> = listed.into_iter().map(|one| (one.name, one.code)).collect();
    assert_eq!(said.as_slice(), listed);
    // The log and the wire call it so.
    for language in Language::ALL {
        assert_eq!(serde_json::json!(language), language.name());
        let text = Text::in_each(|one| one.code().to_owned());
        assert_eq!(serde_json::json!(text)[language.name()], text.of(language));
    }
}

#[test]
fn a_list_of_languages_is_read_from_above_and_a_fault_of_it_is_named() {
    let list = r#"{ "spanish": { "folder": "es" }, "english": { "folder": "en" } }"#;
    let names: Vec<_> = listed(list)
        .unwrap()
        .into_iter()
        .map(|one| one.variant())
        .collect();
    assert_eq!(names, ["Spanish", "English"]);
    for (wrong, says) in [
        ("[]", "write a table of languages by name"),
        (r#"{ "english": {} }"#, "english has no folder"),
        ("{", "EOF"),
    ] {
        let fault = listed(wrong).unwrap_err();
        assert!(
            fault.starts_with("web-ui/src/languages.json: ") && fault.contains(says),
            "{fault}"
        );
    }
}
