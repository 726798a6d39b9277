//! The site as files that others read, and that this hub reads again as the same site: the site file, its surfaces with
//! points as `LandXML` 1.2, its marks as a table. Metres with seven decimals are exact here.

use day::site::Site;
use earthwork::length::{Form, Length};
use earthwork::point::Point;
use earthwork::target::{KeptNet, Net, Shape};

use crate::site_file::{exact, text_of};

/// The names of the files.
pub const FILES: [&str; 3] = ["site.toml", SURFACES, "marks.csv"];
/// The file of surfaces, as the site file names it.
const SURFACES: &str = "surfaces.xml";

/// The text of one of the files; none for another name.
pub fn file(site: &Site, name: &str) -> Option<String> {
    match name {
        "site.toml" => Some(text_of(site, SURFACES)),
        "surfaces.xml" => Some(landxml(site)),
        "marks.csv" => marks_csv(site),
        _ => None,
    }
}

/// Every net of the site by the name of its target or face.
fn nets(site: &Site) -> impl Iterator<Item = (&str, &Net)> {
    let targets = site
        .targets
        .iter()
        .map(|one| (one.id.as_str(), &one.grade.shape));
    let faces = site
        .cuts
        .faces
        .iter()
        .map(|one| (one.id.as_str(), &one.ground.shape));
    targets.chain(faces).filter_map(|(id, shape)| match shape {
        Shape::Surface(net) | Shape::Strip { ground: net } => Some((id, KeptNet::drawn(net))),
        _ => None,
    })
}

fn metres(length: Length) -> String {
    let text = length.plain(Form::Metres { places: 7 });
    text.trim_end_matches(" m").to_owned()
}

/// A text inside an attribute.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('"', "&quot;")
        .replace(['\n', '\t', '\r'], " ")
}

/// A point for a file: its name, where it is, how high, a word about it.
type FilePoint = (String, Point, Option<Length>, String);

/// What a file of `LandXML` 1.2 in metres begins with.
const LANDXML: &str = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<LandXML xmlns=\"http://www.landxml.org/schema/LandXML-1.2\" version=\"1.2\">\n  <Units><Metric linearUnit=\"meter\" areaUnit=\"squareMeter\" volumeUnit=\"cubicMeter\" temperatureUnit=\"celsius\" pressureUnit=\"milliBars\"/></Units>\n";

/// Points are written north, east and elevation, as the format has them.
fn cg_points(points: impl Iterator<Item = FilePoint>) -> String {
    let mut text = vec!["  <CgPoints>\n".to_owned()];
    for (id, at, elevation, note) in points {
        let up = elevation.map_or_else(String::new, |up| format!(" {}", metres(up)));
        text.push(format!(
            "    <CgPoint name=\"{}\" desc=\"{}\">{} {}{up}</CgPoint>\n",
            escaped(&id),
            escaped(&note),
            metres(at.y),
            metres(at.x)
        ));
    }
    text.push("  </CgPoints>\n".to_owned());
    text.concat()
}

/// Points alone, as a file of `LandXML` 1.2.
pub fn points(points: impl Iterator<Item = FilePoint>) -> String {
    format!("{LANDXML}{}</LandXML>\n", cg_points(points))
}

fn landxml(site: &Site) -> String {
    let marks = site
        .marks
        .iter()
        .map(|one| (one.id.clone(), one.place, None, one.note.clone()));
    let benchmarks = site.benchmarks.iter().filter_map(|one| {
        let elevation = Some(one.elevation);
        Some((one.id.clone(), one.place?, elevation, one.note.clone()))
    });
    let mut text = vec![LANDXML.to_owned(), cg_points(marks.chain(benchmarks))];
    text.push("  <Surfaces>\n".to_owned());
    for (id, net) in nets(site) {
        text.push(format!(
            "    <Surface name=\"{}\"><Definition surfType=\"TIN\"><Pnts>\n",
            escaped(id)
        ));
        for (number, point) in net.points().iter().enumerate() {
            text.push(format!(
                "<P id=\"{}\">{} {} {}</P>\n",
                number + 1,
                metres(point.at.y),
                metres(point.at.x),
                metres(point.elevation)
            ));
        }
        text.push("</Pnts><Faces>\n".to_owned());
        for [a, b, c] in net.triangles() {
            text.push(format!("<F>{} {} {}</F>\n", a + 1, b + 1, c + 1));
        }
        text.push("</Faces></Definition></Surface>\n".to_owned());
    }
    text.push("  </Surfaces>\n</LandXML>\n".to_owned());
    text.concat()
}

/// The table of marks, as `[marks_csv]` of a site file takes it.
fn marks_csv(site: &Site) -> Option<String> {
    let mut table = csv::Writer::from_writer(Vec::new());
    let header = [
        "id", "x", "y", "station", "offset", "target", "surface", "note",
    ];
    table.write_record(header).ok()?;
    for mark in &site.marks {
        let maybe = |length: Option<Length>| length.map(exact).unwrap_or_default();
        let surface = serde_json::to_value(mark.surface).ok()?;
        table
            .write_record([
                mark.id.as_str(),
                &exact(mark.place.x),
                &exact(mark.place.y),
                &maybe(mark.station),
                &maybe(mark.offset),
                mark.target.as_deref().unwrap_or_default(),
                surface.as_str().unwrap_or_default(),
                &mark.note,
            ])
            .ok()?;
    }
    String::from_utf8(table.into_inner().ok()?).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::site_file::{read, read_text};
    use std::path::Path;

    const SITES: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/site");

    #[test]
    fn an_exported_site_imported_again_is_the_same_site() {
        for name in ["every-kind.toml", "example.toml", "alder-bend/site.toml"] {
            let site = read(&Path::new(SITES).join(name)).unwrap().site;
            let beside = |name: &str| file(&site, name).ok_or_else(|| "not there".to_owned());
            let text = file(&site, "site.toml").unwrap();
            let again = read_text("again", &text, &beside)
                .unwrap_or_else(|error| panic!("{name}: {error}\n{text}"));
            assert_eq!(again.site, site, "{name}");
        }
    }

    #[test]
    fn the_table_of_marks_imported_again_gives_the_same_marks() {
        let site = read(&Path::new(SITES).join("example.toml")).unwrap().site;
        let mut bare = site.clone();
        bare.marks.clear();
        let text = format!(
            "{}\n[marks_csv]\nfile = \"marks.csv\"\nunit = \"ft\"\n",
            file(&bare, "site.toml").unwrap()
        );
        let beside = |name: &str| file(&site, name).ok_or_else(|| "not there".to_owned());
        let again = read_text("again", &text, &beside).unwrap();
        assert_eq!(again.site.marks, site.marks);
    }
}
