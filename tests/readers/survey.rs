//! Files of others, as CSV and as `LandXML`: arbitrary, damaged, hostile.

use std::fs;
use std::path::Path;

use earthwork::site_frame::PlanUnit;
use proptest::prelude::*;
use rodcall::import::{Frame, MOST_POINTS, Remark, Survey, onto_site, read};

use crate::damage::{damaged, damages};

/// The most faults that are named, and the line that counts the rest.
const MOST_SAID: usize = 41;

fn example(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/site");
    fs::read_to_string(path.join(name)).expect("the example")
}

/// Reads a file and makes its surface; what is said is bounded and names lines that there are.
fn tried(text: &str) -> Result<Survey, String> {
    let lines = text.lines().count() + 2;
    let said = |remarks: &[Remark]| {
        for remark in remarks {
            assert!(
                remark.line >= 1 && remark.line <= lines,
                "{remark:?} of {lines} lines"
            );
            assert!(!remark.message.is_empty());
        }
    };
    match read(text, None) {
        Ok(survey) => {
            assert!(survey.points.len() <= MOST_POINTS);
            said(&survey.remarks);
            let surface = onto_site(&survey, &Frame::new(PlanUnit::Foot));
            if let Err(error) = surface.and_then(|onto| onto.surface(&survey)) {
                said(std::slice::from_ref(&error));
                return Err(error.message);
            }
            Ok(survey)
        }
        Err(faults) => {
            assert!(
                !faults.is_empty() && faults.len() <= MOST_SAID,
                "{} faults",
                faults.len()
            );
            said(&faults);
            Err(faults[0].message.clone())
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn a_damaged_survey_is_read_or_its_lines_are_named(damages in damages(), xml in any::<bool>()) {
        let good = example(if xml { "every-kind-finish.xml" } else { "every-kind-ground.csv" });
        let _ = tried(&String::from_utf8_lossy(&damaged(good.as_bytes(), &damages)));
    }

    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,300}|<[<>/a-zA-Z0-9=\"& ;!-]{0,300}|[\"',;a-z0-9.\n -]{0,300}") {
        let _ = tried(&text);
    }
}

/// Entities that grow, elements and attributes without end, numbers that are none, counts that nobody has.
#[test]
fn hostile_surveys_are_refused_in_words() {
    let bomb = "<!DOCTYPE l [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c \
        \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\">]><LandXML>&d;</LandXML>";
    let outside =
        "<!DOCTYPE l [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><LandXML>&a;</LandXML>";
    let xml = example("every-kind-finish.xml");
    let surface = |points: &str| {
        format!(
            "<LandXML xmlns=\"http://www.landxml.org/schema/LandXML-1.2\"><Units><Imperial linearUnit=\"foot\"/></Units>\
             <Surfaces><Surface name=\"S\"><Definition surfType=\"TIN\"><Pnts>{points}</Pnts><Faces><F>1 2 3</F></Faces>\
             </Definition></Surface></Surfaces></LandXML>"
        )
    };
    let three = "<P id=\"1\">0 0 1</P><P id=\"2\">0 10 1</P><P id=\"3\">10 10 1</P>";
    assert!(
        tried(&surface(three)).is_ok(),
        "the frame of these cases is good"
    );
    for hostile in [
        bomb.to_owned(),
        outside.to_owned(),
        "<a>".repeat(20_000),
        format!("<LandXML {}/>", "a=\"\" ".repeat(20_000)),
        format!("<{}", "a".repeat(1_000_000)),
        xml[..xml.len() / 2].to_owned(),
        surface(&three.replace("0 10 1", "0 nan 1")),
        surface(&three.replace("0 10 1", "0 inf 1")),
        surface(&three.replace("0 10 1", "0 1e999 1")),
        surface(&three.replace("0 10 1", "0 10")),
        surface(&three.replace("id=\"2\"", "id=\"1\"")),
        surface(""),
        format!("id,x,y,z\n\"{}", "a,".repeat(500_000)),
        "id,x,y,z\nA,nan,0,1\n".to_owned(),
        "id,x,y,z\nA,1e999,0,1\n".to_owned(),
        "id,x,y,z\nA,0,0\n".to_owned(),
        "id,x,y,z\n".to_owned() + &"A,zero,0,1\n".repeat(10_000),
    ] {
        let why = tried(&hostile);
        assert!(why.is_err(), "{}", &hostile[..hostile.len().min(200)]);
    }
}
