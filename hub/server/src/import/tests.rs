//! Files of others: what is read, what is refused, and what is only suspected.

use super::preview::{Known, preview};
use super::*;
use earthwork::length::parse;
use earthwork::point::Point;
use earthwork::site_frame::{PlanPoint, SiteFrame, Slip};

fn feet() -> Frame {
    Frame::new(PlanUnit::Foot)
}

fn framed() -> Frame {
    let origin = PlanPoint {
        east: number("2000000").unwrap(),
        north: number("700000").unwrap(),
    };
    let frame = SiteFrame::new(PlanUnit::Foot, origin, 0.0).unwrap();
    Frame::on(frame, PlanUnit::Foot, origin)
}

fn lot() -> Vec<Point> {
    let ft = |text: &str| parse(text).unwrap();
    [
        ("0 ft", "0 ft"),
        ("100 ft", "0 ft"),
        ("100 ft", "120 ft"),
        ("0 ft", "120 ft"),
    ]
    .map(|(x, y)| Point { x: ft(x), y: ft(y) })
    .to_vec()
}

fn known() -> Known {
    let pin = PlanPoint {
        east: number("2000100").unwrap(),
        north: number("700120").unwrap(),
    };
    Known {
        lot: lot(),
        pins: vec![("NE".to_owned(), pin)],
    }
}

fn faults(text: &str) -> String {
    let faults = read(text, None).unwrap_err();
    let lines = faults
        .iter()
        .map(|one| format!("{}: {}", one.line, one.message));
    lines.collect::<Vec<_>>().join("\n")
}

/// Invented, demo: the square whose diagonal is a ridge.
const SQUARE: &str = "id,x,y,z,line\nA,0,0,1,ridge\nB,10,0,0,\nC,10,10,1,ridge\nD,0,10,0,\n";

const LANDXML: &str = r#"<?xml version="1.0"?>
<LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2">
 <Units><Imperial linearUnit="foot"/></Units>
 <Surfaces><Surface name="EG"><Definition surfType="TIN">
  <Pnts><P id="1">0 0 1</P><P id="2">0.0 10 0</P><P id="3">10 10 1</P><P id="4">10 0 0</P></Pnts>
  <Faces><F>1 2 3</F><F>1 3 4</F><F i="1">2 3 4</F></Faces>
 </Definition></Surface></Surfaces>
 <Alignments/>
</LandXML>"#;

#[test]
fn a_table_and_landxml_give_the_same_surface() {
    for text in [SQUARE, LANDXML] {
        let survey = read(text, None).unwrap();
        let surface = onto_site(&survey, &feet())
            .unwrap()
            .surface(&survey)
            .unwrap();
        let middle = Point {
            x: parse("5 ft").unwrap(),
            y: parse("5 ft").unwrap(),
        };
        assert_eq!(surface.elevation_at(middle), Ok(parse("1 ft").unwrap()));
    }
    let survey = read(LANDXML, None).unwrap();
    let remarks: Vec<&str> = survey
        .remarks
        .iter()
        .map(|one| one.message.as_str())
        .collect();
    assert_eq!(
        remarks,
        [
            "1 faces are marked as invisible and left out.",
            "<Alignments> is not read."
        ]
    );
    assert!(
        read(LANDXML, Some("FG")).unwrap_err()[0]
            .message
            .contains("It has: EG")
    );
}

#[test]
fn a_customary_list_needs_no_header() {
    let survey = read(
        "1,700010.5,2000020.25,301.00,HUB\n2,700011,2000021,,\n",
        None,
    )
    .unwrap();
    let placed = onto_site(&survey, &framed()).unwrap();
    assert_eq!(placed.points[0].0.x, parse("20.25 ft").unwrap());
    assert_eq!(placed.points[0].1, Some(parse("301 ft").unwrap()));
    assert_eq!(survey.points[0].note, "HUB");
    assert!(
        survey.remarks[0]
            .message
            .contains("point, northing, easting")
    );
}

#[test]
fn every_row_that_is_wrong_is_named_and_none_comes_in() {
    let found = faults("id,x,y,z\nA,1,2,3\nB,NaN,2,3\nC,1,,3\nA,1,2,4\nD,1e9,2,3\n");
    for words in [
        "3: B: easting: “NaN” is not a plan coordinate",
        "4: C: the northing is missing",
        "5: “A” already stands in line 2 with other numbers",
        "6: D: easting: “1e9”",
    ] {
        assert!(found.contains(words), "{words}\n{found}");
    }
    assert!(read("id,x,y,z\nA,1,2,3\nA,1,2,3\n", None).is_ok());
    assert!(faults("").contains("empty"));
    assert!(faults("name,colour\nA,red\n").contains("must name the columns"));
}

#[test]
fn hostile_xml_is_refused_with_what_it_is() {
    let bomb =
        r#"<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;&a;">]><LandXML>&b;</LandXML>"#;
    assert!(faults(bomb).contains("document type"));
    assert!(faults("<LandXML><Surfaces>").contains("not sound XML"));
    assert!(faults("<html/>").contains("not with <LandXML>"));
    assert!(faults("<LandXML/>").contains("neither <CgPoint> nor <Surface>"));
    let nan = LANDXML.replace("0 0 1</P>", "NaN 0 1</P>");
    assert!(faults(&nan).contains("5: “NaN”"));
    let two = LANDXML.replace(r#"id="2""#, r#"id="1""#);
    assert!(faults(&two).contains("called “1”"));
    let unknown = LANDXML.replace("<F>1 2 3</F>", "<F>1 2 9</F>");
    assert!(faults(&unknown).contains("“1 2 9” does not name three points"));
    let cubits = LANDXML.replace("\"foot\"", "\"cubit\"");
    assert!(faults(&cubits).contains("counts in “cubit”"));
    let crowd = |count: usize| {
        format!(
            "<!-- {} -->\n<LandXML {}/>",
            "a=".repeat(200),
            "a='>' ".repeat(count)
        )
    };
    assert!(faults(&crowd(200)).contains("2: A tag has more than 100 attributes"));
    assert!(
        faults(&crowd(2)).contains("not sound XML"),
        "one name twice"
    );
    assert!(faults("<LandXML a=\"").contains("not sound XML"));
    let endless = faults(&format!("id,x,y\n{},1,1e9\n", "A".repeat(1_000_000)));
    assert!(endless.len() < 500, "{}", endless.len());
    let deep = format!("{}{}", "<LandXML>".repeat(2000), "</LandXML>".repeat(2000));
    assert!(read(&deep, None).is_err());
}

#[test]
fn many_faults_are_counted_and_not_all_kept() {
    let rows: Vec<String> = (0..1000).map(|row| format!("P{row},x,y,z")).collect();
    let rows = rows.join("\n");
    let found = read(&format!("id,x,y,z\n{rows}"), None).unwrap_err();
    assert_eq!(found.len(), MOST_FAULTS + 1);
    let twice = "A,1,2,3\n".repeat(1000);
    let remarks = read(&format!("id,x,y,z\n{twice}"), None).unwrap().remarks;
    assert_eq!(remarks.len(), MOST_FAULTS + 1);
    assert!(remarks[MOST_FAULTS].message.contains("959 more remarks"));
    assert!(faults("id,x,y\nA,1\0,2\n").contains('\u{fffd}'));
    assert!(found[MOST_FAULTS].message.contains("960 more lines"));
}

#[test]
fn landxml_points_and_lines_without_faces_are_read() {
    let text = r#"<LandXML><CgPoints><CgPoint name="7">10 20 30.5</CgPoint></CgPoints></LandXML>"#;
    let survey = read(text, None).unwrap();
    assert_eq!(
        (survey.points.len(), survey.points[0].id.as_str()),
        (1, "7")
    );
    let text = r#"<LandXML><Surfaces><Surface name="FG"><SourceData>
      <Boundaries><Boundary bndType="outer"><PntList3D>0 0 1 0 10 1 10 10 1 10 0 1 0 0 1</PntList3D></Boundary></Boundaries>
      <Breaklines><Breakline><PntList3D>2 2 1 8 8 2</PntList3D></Breakline></Breaklines>
      <DataPoints><PntList3D>5 2 1</PntList3D></DataPoints></SourceData></Surface></Surfaces></LandXML>"#;
    let survey = read(text, None).unwrap();
    assert_eq!(survey.breaklines.len(), 1);
    assert_eq!(survey.boundary.as_ref().map(Vec::len), Some(4));
    let surface = onto_site(&survey, &feet()).unwrap().surface(&survey);
    assert!(surface.unwrap().triangles() > 4);
}

#[test]
fn swapped_and_metric_numbers_are_suspected_and_nothing_is_changed() {
    let swapped = "point,easting,northing,elevation\n1,700050,2000050,300\n";
    let seen = preview(swapped, None, &framed(), &known());
    assert!(seen.usable);
    assert_eq!(seen.hypotheses[0].slip, Slip::Swapped);
    assert!(
        seen.hypotheses[0]
            .text
            .english
            .contains("Nothing was changed")
    );
    assert_eq!(seen.points[0].at.x, parse("-1299950 ft").unwrap());
    let metres = "point,easting,northing\n1,609615.24,213375.24\n";
    let seen = preview(metres, None, &framed(), &known());
    assert_eq!(seen.hypotheses[0].slip, Slip::Metres);
    let fine = preview(
        "point,easting,northing\n1,2000010,700010\n",
        None,
        &framed(),
        &known(),
    );
    assert_eq!(fine.hypotheses, []);
}

/// Each file of the fixtures says which slip is to be suspected; the site is that of `every-kind.toml`.
#[test]
fn the_bad_lists_of_points_are_suspected_for_what_they_are() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/survey");
    let mut seen = 0;
    for item in std::fs::read_dir(folder).unwrap() {
        let path = item.unwrap().path();
        let text = std::fs::read_to_string(&path).unwrap();
        let expected = text.lines().find_map(|line| line.strip_prefix("# expect "));
        let found = preview(&text, None, &framed(), &known());
        assert!(found.usable, "{path:?}: {:?}", found.not_understood);
        let slip = serde_json::to_value(found.hypotheses[0].slip).unwrap();
        assert_eq!(slip.as_str(), expected, "{path:?}");
        seen += 1;
    }
    assert_eq!(seen, 3);
}

#[test]
fn a_preview_names_what_was_understood_and_what_was_not() {
    let seen = preview(SQUARE, None, &feet(), &known());
    assert_eq!(
        (seen.usable, seen.all_points, seen.triangles),
        (true, 4, Some(2))
    );
    assert!(
        seen.understood
            .iter()
            .any(|one| one.english == "1 breaklines.")
    );
    let seen = preview("id,x,y,z\nA,one,2,3\n", None, &feet(), &known());
    assert!(!seen.usable);
    assert_eq!(seen.not_understood[0].line, 2);
    let half = SQUARE.replace("B,10,0,0,", "B,10,0,,");
    let seen = preview(&half, None, &feet(), &known());
    assert!(!seen.usable, "{:?}", seen.not_understood);
}

/// Whatever parts the cells and in whatever order the columns stand, the same points come in.
#[test]
fn a_list_is_taken_without_its_wrong_rows_each_named_and_a_surface_is_not() {
    let list = "id,x,y,z\nA,1,2,3\nB,one,2,3\nC,4,5,6\nD,7,8,9\nD,7,8,10\n";
    let seen = preview(list, None, &feet(), &known());
    let ids: Vec<&str> = seen.points.iter().map(|one| one.id.as_str()).collect();
    // Of D nobody knows which row is right.
    assert_eq!(ids, ["A", "C"]);
    assert!(seen.usable, "{:?}", seen.not_understood);
    let left_out: Vec<usize> = seen
        .not_understood
        .iter()
        .filter(|one| one.left_out)
        .map(|one| one.line)
        .collect();
    assert_eq!(left_out, [3, 6]);
    assert!(seen.not_understood[0].message.contains('B'), "{seen:?}");
    assert_eq!(seen.triangles, None);
    // The site file takes all of a table or nothing, as before.
    assert!(read(list, None).is_err());
    let edge = "id,x,y,z,line\nA,0,0,3,edge\nB,one,0,3,edge\nC,9,9,3,edge\nD,0,9,3,edge\n";
    let seen = preview(edge, None, &feet(), &known());
    assert!(!seen.usable && seen.points.is_empty(), "{seen:?}");
}

#[test]
fn a_table_is_read_in_any_order_and_with_any_separator() {
    let plain = read("id,x,y,z,note\nA,1.5,2,3,peg\n", None).unwrap();
    for text in [
        "cota;punto;este;norte;nota\n3;A;1.5;2;peg\n",
        "Northing\tEasting\tPoint No.\tElev.\tDescription\n2\t1.5\tA\t3\tpeg\n",
        "N|E|Z|P|D\r\n2|1.5|3|A|peg\r\n",
        "\u{feff}Point #,Description,Elevation,Easting,Northing\nA,peg,3,1.5,2\n",
        "A;2;1.5;3;peg\n",
    ] {
        let survey = read(text, None).unwrap_or_else(|faults| panic!("{text}: {faults:?}"));
        let bare = |survey: &Survey| {
            let point = &survey.points[0];
            (
                point.id.clone(),
                point.east,
                point.north,
                point.elevation,
                point.note.clone(),
            )
        };
        assert_eq!(bare(&survey), bare(&plain), "{text}");
    }
    let semicolons = read("id;x;y;z\nA;1;2;3\n", None).unwrap();
    assert!(
        semicolons.remarks[0]
            .message
            .contains("parted by semicolons")
    );
    assert!(faults("id;x;y;z\nA;1,5;2;3\n").contains("“1,5” is not a plan coordinate"));
    assert!(faults("1 700010 2000020 301 HUB BY ROAD\n").contains("parted by blanks"));
    for (header, unit) in [
        ("id,Easting (ft),Northing (ft)", PlanUnit::Foot),
        ("id,x_m,y_m", PlanUnit::Metre),
        ("id,E [usft],N [usft]", PlanUnit::SurveyFoot),
    ] {
        let survey = read(&format!("{header}\nA,1,2\n"), None).unwrap();
        assert_eq!(survey.unit, Some(unit), "{header}");
    }
    assert!(faults("id,x_m,y_ft\nA,1,2\n").contains("different units"));
}

/// NIST Special Publication 811, appendix B: 609,600 m are 2,000,000 ft, and 213,360 m are 700,000 ft.
#[test]
fn a_file_that_says_another_unit_than_the_plan_is_converted_and_said() {
    let metres = "id,x_m,y_m,z_m\nA,609603.048,213366.096,91.44\n";
    let seen = preview(metres, None, &framed(), &known());
    let at = seen.points[0].at;
    assert_eq!(
        (at.x, at.y),
        (parse("10 ft").unwrap(), parse("20 ft").unwrap())
    );
    assert_eq!(seen.points[0].elevation, Some(parse("300 ft").unwrap()));
    let said: Vec<&str> = seen
        .understood
        .iter()
        .map(|one| one.english.as_str())
        .collect();
    assert!(
        said.iter()
            .any(|one| one.contains("The plan counts in feet")),
        "{said:?}"
    );
    assert_eq!(seen.hypotheses, []);
}

/// The two feet lie 4.00 ft apart at 2,000,000 (NIST Special Publication 811, appendix B): told, never put right.
#[test]
fn the_other_foot_is_suspected_and_nothing_is_changed() {
    let named = "id,E (usft),N (usft)\nA,2000010,700020\n";
    let seen = preview(named, None, &framed(), &known());
    assert_eq!(seen.hypotheses[0].slip, Slip::OtherFoot);
    assert!(
        seen.hypotheses[0]
            .text
            .english
            .contains("4.00 ft elsewhere"),
        "{:?}",
        seen.hypotheses
    );
    // The pin stands at 2000100, 700120 on the plan; the file has it 4.00 and 1.40 ft off.
    let slipped = "id,E,N\nNE,2000104.0002,700121.4002\n";
    let seen = preview(slipped, None, &framed(), &known());
    assert_eq!(seen.hypotheses[0].slip, Slip::OtherFoot);
    assert!(
        seen.hypotheses[0].text.english.contains("1 of 1 pins"),
        "{:?}",
        seen.hypotheses
    );
    let off = parse("104.0002 ft").unwrap();
    assert_eq!(seen.points[0].at.x, off, "it lies where the file has it");
}
