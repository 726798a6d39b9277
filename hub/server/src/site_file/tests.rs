//! The site file's tests: the example is in order, every bad file names its fault with its line, tables come in whole.

use super::*;
use earthwork::length::parse;
use earthwork::target::DigTo;

const SITES: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/site");

fn example() -> SiteRead {
    read(&Path::new(SITES).join("example.toml")).unwrap()
}

#[test]
fn the_example_is_in_order() {
    let read = example();
    assert_eq!(read.odd, []);
    let site = read.site;
    assert_eq!(
        (site.targets.len(), site.marks.len(), site.lines.len()),
        (3, 7, 1)
    );
    // Derived from the example's own numbers: 100.50 ft less 8 in is 99.8333 ft; 99.50 ft less 16 in.
    let dig_to = |mark: &str| {
        let mark = site.mark(mark).unwrap();
        site.target_of(mark)
            .unwrap()
            .grade
            .dig_to(mark.place)
            .unwrap()
    };
    let at = |text: &str, inches: &str| DigTo::At(parse(text).unwrap() - parse(inches).unwrap());
    assert_eq!(dig_to("P-01"), at("100.50 ft", "8 in"));
    assert_eq!(dig_to("W-01"), at("99.50 ft", "16 in"));
    // 13 ft south of the apron's known edge at 2 %: 0.26 ft lower; the gravel takes half a foot.
    assert_eq!(dig_to("A-01"), at("99.64 ft", "0 in"));
}

#[test]
fn every_bad_site_names_its_fault_with_its_line() {
    let mut tried = 0;
    for item in std::fs::read_dir(Path::new(SITES).join("bad")).unwrap() {
        let path = item.unwrap().path();
        if path.extension().is_none_or(|ext| ext != "toml") {
            continue;
        }
        tried += 1;
        let text = std::fs::read_to_string(&path).unwrap();
        let expected = text
            .lines()
            .next()
            .unwrap()
            .strip_prefix("# expect ")
            .unwrap();
        let (line, words) = expected.split_once(": ").unwrap();
        let line: usize = line.parse().unwrap();
        let Err(SiteFileError::Faulty { faults }) = read(&path) else {
            panic!("{} was taken for good", path.display());
        };
        assert!(
            faults
                .iter()
                .any(|fault| fault.line == line && fault.text.english.contains(words)),
            "{}: expected line {line}: {words}; found {faults:#?}",
            path.display()
        );
    }
    assert!(tried >= 15, "only {tried} bad sites were found");
}

#[test]
fn all_faults_are_named_at_once() {
    let text = std::fs::read_to_string(Path::new(SITES).join("example.toml")).unwrap();
    let text = text
        .replace("elevation = \"101.52 ft\"", "elevation = \"101.52\"")
        .replace("unit = \"feet_inches_eighths\"", "unit = \"cubits\"")
        .replace("shape = \"triangle\"", "shape = \"star\"");
    let Err(SiteFileError::Faulty { faults }) =
        read_text("x.toml", &text, &|_| Ok("id,x,y\n".into()))
    else {
        panic!("three faults were taken for good");
    };
    for words in ["`elevation`", "cubits", "star"] {
        assert!(
            faults
                .iter()
                .any(|fault| fault.text.english.contains(words)),
            "{faults:#?}"
        );
    }
}

fn with_marks(table: &str) -> Result<SiteRead, SiteFileError> {
    let text = std::fs::read_to_string(Path::new(SITES).join("example.toml")).unwrap();
    let table = table.to_owned();
    read_text("site.toml", &text, &move |_| Ok(table.clone()))
}

fn faults(result: Result<SiteRead, SiteFileError>) -> Vec<String> {
    match result {
        Err(SiteFileError::Faulty { faults }) => faults.iter().map(ToString::to_string).collect(),
        other => panic!("no faults: {other:?}"),
    }
}

/// A file that stands beside the example.
fn beside(name: &str) -> Result<String, String> {
    std::fs::read_to_string(Path::new(SITES).join(name)).map_err(|error| error.to_string())
}

#[test]
fn a_station_is_taken_wherever_one_is_asked_for() {
    let text = std::fs::read_to_string(Path::new(SITES).join("example.toml")).unwrap();
    let kinds = std::fs::read_to_string(Path::new(SITES).join("every-kind.toml")).unwrap();
    let site = |text: &str| match read_text("site.toml", text, &beside) {
        Ok(read) => read.site,
        Err(error) => panic!("{error}"),
    };
    for (text, as_length, as_station) in [
        (&text, "station = \"5 ft\"", "station = \"0+05\""),
        (&text, "from = \"20 ft\"", "from = \"0+20\""),
        (&kinds, "station = \"10+40 ft\"", "station = \"1040 ft\""),
        (&kinds, "first = \"10+00 ft\"", "first = \"10+00\""),
    ] {
        let other = text.replace(as_length, as_station);
        assert_ne!(*text, other, "{as_length}");
        assert_eq!(site(text), site(&other), "{as_station}");
    }
}

#[test]
fn what_soil_weighs_in_the_truck_comes_in_with_the_price_list() {
    let list = "[prices]\nmoney = \"$\"\ntruck = { cubic_yards = 12, tons = 10 }\n\
                [[prices.material]]\nname = \"clay\"\nswell = 1.3\nloose_pcf = ";
    let text = std::fs::read_to_string(Path::new(SITES).join("example.toml")).unwrap();
    let with = |weight: &str| {
        let text = format!("{text}\n{list}{weight}\n");
        read_text("site.toml", &text, &beside)
    };
    let site = with("95").unwrap().site;
    let prices = site.prices.as_ref().unwrap();
    assert_eq!(prices.materials[0].loose_pcf, Some(95.0));
    assert_eq!(prices.truck.unwrap().tons, Some(10.0));
    for wrong in ["-95", "1e308", "nan"] {
        assert!(!faults(with(wrong)).is_empty(), "{wrong}");
    }
}

#[test]
fn a_table_of_marks_may_have_its_columns_in_any_order() {
    let by_id = with_marks("id,x,y,target,note\nQ-1,20,30,PAD,here\n").unwrap();
    let by_point = with_marks(
        "\u{feff}Point,Northing,Easting,Elevation,Description,Target\nQ-1,30,20,99.1,here,PAD\n",
    )
    .unwrap();
    let by_unit = with_marks("target,note,y_m,x_ft,id\nPAD,here,9.144,20,Q-1\n").unwrap();
    let own_unit = with_marks("y,x,id,target,note\n360 in,20 ft,Q-1,PAD,here\n").unwrap();
    let mark = by_id.site.mark("Q-1").unwrap();
    assert_eq!(mark.place.x, parse("20 ft").unwrap());
    for other in [by_point, by_unit, own_unit] {
        assert_eq!(other.site.mark("Q-1"), Some(mark));
    }
}

#[test]
fn a_table_may_count_along_a_run() {
    let read = with_marks("station,offset,id,target\n0+25,1,Q-1,WALL\n").unwrap();
    let mark = read.site.mark("Q-1").unwrap();
    // Derived: the run starts at (10, 60) and goes east; right of it is south.
    assert_eq!(mark.place.x, parse("35 ft").unwrap());
    assert_eq!(mark.place.y, parse("59 ft").unwrap());
}

#[test]
fn nothing_of_a_faulty_table_comes_in_and_every_row_is_named() {
    let faults = faults(with_marks(
        "id,x,y,target\nQ-1,20,30,PAD\nQ-2,twenty,30,PAD\n,1,2,PAD\nQ-4,1,2\n",
    ));
    for words in [
        "example-marks.csv:3: Q-2",
        "example-marks.csv:4: This row has no name",
        "example-marks.csv:5: ",
    ] {
        assert!(
            faults.iter().any(|fault| fault.starts_with(words)),
            "{words}: {faults:#?}"
        );
    }
    assert!(
        !faults.iter().any(|fault| fault.contains("Q-1")),
        "{faults:#?}"
    );
}

/// One number that can't be read hides nothing: neither in its own row nor in others, nor what is wrong with the marks.
#[test]
fn every_fault_of_a_table_is_named_at_once() {
    let faults = faults(with_marks(
        "id,x,y,target,surface\nQ-1,twenty,3o,PAD,mud\nQ-2,500,30,PAD,\nQ-3,20,30,NONE,\n",
    ));
    for words in [
        "example-marks.csv:2: Q-1: “twenty",
        "example-marks.csv:2: Q-1: “3o",
        "example-marks.csv:2: Q-1: there is no `mud`",
        "example-marks.csv:3: Q-2",
        "example-marks.csv:4: Q-3",
    ] {
        assert!(
            faults.iter().any(|fault| fault.starts_with(words)),
            "{words}: {faults:#?}"
        );
    }
}

#[test]
fn a_table_without_a_header_or_with_a_strange_column_is_refused() {
    for (table, words) in [
        ("Q-1,20,30\n", "There is no column “Q-1”"),
        ("id,x,y,colour\n", "There is no column “colour”"),
        ("id,x,easting,y\n", "stands twice"),
        ("x,y\n", "no column `id`"),
        ("id,x\n", "needs x and y"),
    ] {
        let faults = faults(with_marks(table));
        assert!(faults[0].contains(words), "{table}: {faults:#?}");
    }
}

#[test]
fn a_mark_that_falls_outside_of_its_target_is_named_by_its_row() {
    let faults = faults(with_marks("id,x,y,target\nQ-1,20,30,PAD\nQ-2,500,30,PAD\n"));
    assert!(
        faults
            .iter()
            .any(|fault| fault.starts_with("example-marks.csv:3: Q-2")),
        "{faults:#?}"
    );
}

#[test]
fn a_site_file_that_is_not_there_is_said() {
    let error = read(Path::new("/nowhere/site.toml"))
        .unwrap_err()
        .to_string();
    assert!(
        error.contains("/nowhere/site.toml") && error.contains("--site"),
        "{error}"
    );
}

/// Derived by hand from the file's own numbers; each beside the sum.
#[test]
fn every_kind_of_target_has_its_dig_to() {
    let read = read(&Path::new(SITES).join("every-kind.toml")).unwrap();
    let site = read.site;
    let dig_to = |mark: &str| {
        let mark = site.mark(mark).unwrap();
        let target = site.target_of(mark).unwrap();
        target.grade.dig_to(mark.place).unwrap()
    };
    for (mark, feet) in [
        // 101.00 + 10 ft at 1 %, less 1 ft and 4 in.
        ("W-1", 101.10 - 1.0 - 4.0 / 12.0),
        // Past the curve level at 101.20, stepped down by 1 ft, less 1 ft and 4 in.
        ("W-2", 100.20 - 1.0 - 4.0 / 12.0),
        // 98.00 less 50 ft at 2 %, less wall and bedding.
        ("D-1", 97.00 - 0.02 - 4.0 / 12.0),
        // 5 ft from the crown at 2 %, less 6 in.
        ("V-1", 99.90 - 0.5),
        // 7.5 ft from the crown, less 6 in., less the undercut.
        ("V-2", 99.85 - 0.5 - 1.5),
        // 4 ft up, 4 ft tread, 3 ft of the slope.
        ("F-1", 98.0 + 4.0 + 3.0),
        // 99.00 + 20 ft at 2 %, less 4 in.
        ("Y-1", 99.40 - 4.0 / 12.0),
        // The ridge, less 6 in.
        ("S-1", 103.50),
        ("T-1", 103.00),
    ] {
        let DigTo::At(elevation) = dig_to(mark) else {
            panic!("{mark} has two elevations");
        };
        assert!(
            (elevation.feet() - feet).abs() < 1e-6,
            "{mark}: {elevation}"
        );
    }
    let unproved = site.targets.iter().filter(|target| !target.proved());
    assert_eq!(unproved.count(), 0);
}

#[test]
fn a_fault_in_a_surface_stands_with_its_own_line() {
    let text = std::fs::read_to_string(Path::new(SITES).join("every-kind.toml")).unwrap();
    let beside = |name: &str| {
        let text = std::fs::read_to_string(Path::new(SITES).join(name)).unwrap();
        Ok(text.replace("4,120,0,106.00", "4,120,0,1o6.00"))
    };
    let faults = faults(read_text("site.toml", &text, &beside));
    let wrong = "every-kind-ground.csv:6: 4: elevation: “1o6.00”";
    assert!(
        faults.iter().any(|one| one.starts_with(wrong)),
        "{faults:#?}"
    );
}

#[test]
fn of_several_surfaces_in_a_file_none_is_taken_unless_it_is_named() {
    let text = std::fs::read_to_string(Path::new(SITES).join("every-kind.toml")).unwrap();
    let beside = |name: &str| {
        let text = std::fs::read_to_string(Path::new(SITES).join(name)).unwrap();
        let (before, surface) = text.split_once("<Surface ").unwrap_or((&text, ""));
        let (surface, after) = surface.split_once("</Surface>").unwrap_or((surface, ""));
        let other = surface.replacen("\"FG\"", "\"EG\"", 1);
        Ok(match surface {
            "" => text.clone(),
            _ => format!("{before}<Surface {other}</Surface><Surface {surface}</Surface>{after}"),
        })
    };
    assert!(read_text("site.toml", &text, &beside).is_ok());
    let unnamed = text.replace("name = \"FG\"\n", "");
    let faults = faults(read_text("site.toml", &unnamed, &beside));
    assert!(
        faults
            .iter()
            .any(|one| one.contains("has several surfaces (EG, FG). Say which this target is")),
        "{faults:#?}"
    );
}

#[test]
fn a_table_of_marks_may_count_on_the_plan() {
    let text = std::fs::read_to_string(Path::new(SITES).join("every-kind.toml")).unwrap();
    let text = text.replace(
        "[[machine]]",
        "[marks_csv]\nfile = \"marks.csv\"\nunit = \"ft\"\non_plan = true\n\n[[machine]]",
    );
    let beside = |name: &str| {
        if name == "marks.csv" {
            return Ok("point,northing,easting,target\nQ-1,700020.00,2000030.00,FINISH\n".into());
        }
        std::fs::read_to_string(Path::new(SITES).join(name)).map_err(|error| error.to_string())
    };
    let read = read_text("site.toml", &text, &beside).unwrap();
    let place = read.site.mark("Q-1").unwrap().place;
    assert_eq!(
        (place.x, place.y),
        (parse("30 ft").unwrap(), parse("20 ft").unwrap())
    );
    let no_frame = std::fs::read_to_string(Path::new(SITES).join("example.toml")).unwrap();
    let no_frame = no_frame.replace("[marks_csv]", "[marks_csv]\non_plan = true");
    let faults = faults(read_text("site.toml", &no_frame, &beside));
    assert!(
        faults.iter().any(|one| one.contains("has no [frame]")),
        "{faults:#?}"
    );
}
