//! `LandXML` 1.2: `CgPoints`, and `Surface` with its points, faces, breaklines and boundaries. Everything else is left
//! aside and said so. No document type is taken, so no entity can grow; nodes and points are counted before use.

use std::collections::BTreeMap;

use earthwork::site_frame::{PlanNumber, PlanUnit};
use roxmltree::{Document, Error, Node, ParsingOptions};

use super::{Faults, MOST_POINTS, Remark, Survey, SurveyPoint, number};

/// A million triangles are about five million nodes.
const MOST_NODES: u32 = 16_000_000;

/// No tag of the format has so many; the parser compares each with each.
const MOST_ATTRIBUTES: usize = 100;

/// What a surface's parts go by.
const LINES: [&str; 2] = ["Breaklines", "Boundaries"];

pub(super) fn read(text: &str, surface: Option<&str>) -> Result<Survey, Vec<Remark>> {
    let document = parsed(text).map_err(|fault| vec![fault])?;
    let root = document.root_element();
    let at = |node: Node<'_, '_>| {
        usize::try_from(document.text_pos_at(node.range().start).row).unwrap_or(1)
    };
    if root.tag_name().name() != "LandXML" {
        return Err(vec![Remark {
            line: at(root),
            message: format!(
                "The file begins with <{}>, not with <LandXML>. Export LandXML 1.2.",
                root.tag_name().name()
            ),
        }]);
    }
    let mut reading = Reading {
        lines: LineStarts::of(text),
        faults: Faults::default(),
        survey: Survey::default(),
    };
    reading.unit(root);
    let surfaces: Vec<Node<'_, '_>> = named(root, "Surface").collect();
    let wanted = match surface {
        Some(name) => surfaces
            .iter()
            .copied()
            .find(|node| node.attribute("name") == Some(name)),
        None => surfaces.first().copied(),
    };
    match (wanted, surface) {
        (Some(node), _) => reading.surface(node),
        (None, Some(name)) => {
            let known: Vec<&str> = surfaces
                .iter()
                .filter_map(|node| node.attribute("name"))
                .collect();
            reading.faults.wrong(
                at(root),
                format!(
                    "There is no surface “{name}” in the file. It has: {}.",
                    known.join(", ")
                ),
            );
        }
        (None, None) => reading.points(root),
    }
    if surface.is_none() && surfaces.len() > 1 {
        let names: Vec<&str> = surfaces
            .iter()
            .filter_map(|node| node.attribute("name"))
            .collect();
        reading.survey.remarks.push(Remark {
            line: at(root),
            message: format!(
                "The file has {} surfaces ({}); the first is shown. A target that takes its surface from it names one.",
                surfaces.len(),
                names.join(", ")
            ),
        });
        reading.survey.several = names.iter().map(|&name| name.to_owned()).collect();
    }
    for aside in root.children().filter(Node::is_element) {
        let name = aside.tag_name().name();
        if ![
            "Units",
            "Surfaces",
            "CgPoints",
            "Application",
            "Project",
            "CoordinateSystem",
        ]
        .contains(&name)
        {
            reading.survey.remarks.push(Remark {
                line: at(aside),
                message: format!("<{name}> is not read."),
            });
        }
    }
    reading.faults.or(reading.survey)
}

/// Where a tag begins that has too many attributes. What stands between quotes, in comments and in raw text is passed over.
fn crowded(text: &str) -> Option<usize> {
    let bytes = text.as_bytes();
    let after = |from: usize, end: &str| text[from..].find(end).map(|at| from + at + end.len());
    let mut at = 0;
    while let Some(start) = text[at..].find('<').map(|found| at + found) {
        at = match &bytes[start..] {
            [b'<', b'!', b'-', b'-', ..] => after(start, "-->")?,
            [b'<', b'!', b'[', ..] => after(start, "]]>")?,
            [b'<', b'?', ..] => after(start, "?>")?,
            tag => {
                let (mut quote, mut attributes, mut end) = (None, 0, tag.len());
                for (here, byte) in tag.iter().enumerate() {
                    match (quote, byte) {
                        (Some(open), byte) if open == byte => quote = None,
                        (None, b'"' | b'\'') => quote = Some(byte),
                        (None, b'=') => attributes += 1,
                        (None, b'>') => {
                            end = here;
                            break;
                        }
                        _ => {}
                    }
                    if attributes > MOST_ATTRIBUTES {
                        return Some(start);
                    }
                }
                start + end
            }
        };
    }
    None
}

/// The document, or why it is none.
fn parsed(text: &str) -> Result<Document<'_>, Remark> {
    if let Some(at) = crowded(text) {
        let line = 1 + text[..at].bytes().filter(|byte| *byte == b'\n').count();
        let message = format!(
            "A tag has more than {MOST_ATTRIBUTES} attributes. Export it as plain LandXML 1.2."
        );
        return Err(Remark { line, message });
    }
    let options = ParsingOptions {
        nodes_limit: MOST_NODES,
        ..ParsingOptions::default()
    };
    Document::parse_with_options(text, options).map_err(|error| {
        let line = usize::try_from(error.pos().row).unwrap_or(1);
        let message = match error {
            Error::DtdDetected => {
                "The file brings its own document type, which could hide anything. Export it without one.".to_owned()
            }
            Error::NodesLimitReached => {
                "The file holds more than 16,000,000 parts. Give a smaller surface.".to_owned()
            }
            other => format!("This is not sound XML: {other}. Export it again."),
        };
        Remark { line, message }
    })
}

fn named<'a, 'i>(under: Node<'a, 'i>, name: &'static str) -> impl Iterator<Item = Node<'a, 'i>> {
    under
        .descendants()
        .filter(move |node| node.is_element() && node.tag_name().name() == name)
}

/// Where each line of the file begins, so that a million points find theirs quickly.
struct LineStarts(Vec<usize>);

impl LineStarts {
    fn of(text: &str) -> LineStarts {
        let ends = text.bytes().enumerate().filter(|(_, byte)| *byte == b'\n');
        LineStarts(
            std::iter::once(0)
                .chain(ends.map(|(at, _)| at + 1))
                .collect(),
        )
    }

    fn line(&self, node: Node<'_, '_>) -> usize {
        let at = node.range().start;
        self.0.partition_point(|start| *start <= at)
    }
}

struct Reading {
    lines: LineStarts,
    faults: Faults,
    survey: Survey,
}

impl Reading {
    fn unit(&mut self, root: Node<'_, '_>) {
        let unit = named(root, "Imperial")
            .chain(named(root, "Metric"))
            .next()
            .and_then(|node| Some((node, node.attribute("linearUnit")?)));
        match unit {
            Some((_, "foot")) => self.survey.unit = Some(PlanUnit::Foot),
            Some((_, "USSurveyFoot")) => self.survey.unit = Some(PlanUnit::SurveyFoot),
            Some((_, "meter")) => self.survey.unit = Some(PlanUnit::Metre),
            Some((node, other)) => self.faults.wrong(
                self.lines.line(node),
                format!("The file counts in “{other}”. Export it in foot, USSurveyFoot or meter."),
            ),
            None => {}
        }
    }

    /// North, east and elevation in one text.
    fn numbers(&mut self, node: Node<'_, '_>) -> Option<Vec<PlanNumber>> {
        let text = node.text().unwrap_or_default();
        let found: Result<Vec<_>, String> = text.split_whitespace().map(number).collect();
        match found {
            Ok(found) => Some(found),
            Err(why) => {
                self.faults.wrong(self.lines.line(node), why);
                None
            }
        }
    }

    fn point(&mut self, node: Node<'_, '_>, id: &str) -> Option<usize> {
        let line = self.lines.line(node);
        if self.survey.points.len() == MOST_POINTS {
            self.faults.wrong(
                line,
                "The file has more than 3,000,000 points. Give a thinned surface.",
            );
            return None;
        }
        let numbers = self.numbers(node)?;
        let ([north, east] | [north, east, _]) = numbers.as_slice() else {
            self.faults.wrong(
                line,
                format!("Point {id} is not north, east and elevation, parted by blanks."),
            );
            return None;
        };
        self.survey.points.push(SurveyPoint {
            id: id.to_owned(),
            line,
            east: *east,
            north: *north,
            elevation: numbers.get(2).copied(),
            note: node.attribute("desc").unwrap_or_default().to_owned(),
        });
        Some(self.survey.points.len() - 1)
    }

    fn points(&mut self, root: Node<'_, '_>) {
        for node in named(root, "CgPoint") {
            let id = node.attribute("name").or(node.attribute("oID"));
            if node.attribute("pntRef").is_some() {
                continue;
            }
            self.point(node, id.unwrap_or_default());
        }
        if self.survey.points.is_empty() {
            self.faults.wrong(
                self.lines.line(root),
                "The file has neither <CgPoint> nor <Surface>. Export points or a surface.",
            );
        }
    }

    fn surface(&mut self, surface: Node<'_, '_>) {
        self.survey.name = surface.attribute("name").map(str::to_owned);
        let mut numbers: BTreeMap<&str, usize> = BTreeMap::new();
        for node in named(surface, "P") {
            let id = node.attribute("id").unwrap_or_default();
            let Some(number) = self.point(node, id) else {
                if self.survey.points.len() == MOST_POINTS {
                    return;
                }
                continue;
            };
            if numbers.insert(id, number).is_some() {
                let line = self.lines.line(node);
                self.faults.wrong(
                    line,
                    format!("Two points of the surface are called “{id}”."),
                );
            }
        }
        let mut triangles = Vec::new();
        let mut unseen = 0_usize;
        for node in named(surface, "F") {
            if node.attribute("i") == Some("1") {
                unseen += 1;
                continue;
            }
            let ids: Vec<&str> = node.text().unwrap_or_default().split_whitespace().collect();
            let corners: Option<Vec<usize>> =
                ids.iter().map(|id| numbers.get(id).copied()).collect();
            match corners.as_deref() {
                Some([a, b, c]) if triangles.len() < MOST_POINTS => triangles.push([*a, *b, *c]),
                Some([_, _, _]) => {
                    let line = self.lines.line(node);
                    self.faults
                        .wrong(line, "The surface has more than 3,000,000 triangles.");
                    return;
                }
                _ => {
                    let line = self.lines.line(node);
                    self.faults.wrong(
                        line,
                        format!(
                            "The face “{}” does not name three points of the surface.",
                            ids.join(" ")
                        ),
                    );
                }
            }
        }
        if unseen > 0 {
            let line = self.lines.line(surface);
            self.survey.remarks.push(Remark {
                line,
                message: format!("{unseen} faces are marked as invisible and left out."),
            });
        }
        if triangles.is_empty() {
            self.lines_of(surface);
        } else {
            self.survey.triangles = Some(triangles);
        }
    }

    /// Breaklines and boundaries, for a surface without faces.
    fn lines_of(&mut self, surface: Node<'_, '_>) {
        for kind in LINES {
            for group in named(surface, kind) {
                for node in group.children().filter(Node::is_element) {
                    self.line_of(node);
                }
            }
        }
        for node in named(surface, "DataPoints") {
            for list in node.children().filter(Node::is_element) {
                self.list(list);
            }
        }
        if self.survey.points.is_empty() {
            let line = self.lines.line(surface);
            self.faults
                .wrong(line, "The surface has no points. Export its definition.");
        }
    }

    fn line_of(&mut self, node: Node<'_, '_>) {
        let numbers: Vec<usize> = node
            .descendants()
            .filter(|list| ["PntList3D", "PntList2D"].contains(&list.tag_name().name()))
            .flat_map(|list| self.list(list))
            .collect();
        let closed_open = |mut ring: Vec<usize>, points: &[SurveyPoint]| {
            let ends = ring.first().zip(ring.last());
            if ring.len() > 1
                && ends.is_some_and(|(first, last)| {
                    let (first, last) = (&points[*first], &points[*last]);
                    (first.east, first.north) == (last.east, last.north)
                })
            {
                ring.pop();
            }
            ring
        };
        match (node.tag_name().name(), node.attribute("bndType")) {
            ("Breakline", _) => self.survey.breaklines.push(numbers),
            ("Boundary", Some("outer") | None) => {
                self.survey.boundary = Some(closed_open(numbers, &self.survey.points));
            }
            ("Boundary", Some("void" | "island")) => {
                let hole = closed_open(numbers, &self.survey.points);
                self.survey.holes.push(hole);
            }
            (name, _) => {
                let (line, name) = (self.lines.line(node), name.to_owned());
                self.survey.remarks.push(Remark {
                    line,
                    message: format!("<{name}> is not read."),
                });
            }
        }
    }

    /// The points of a list of north, east, elevation after each other.
    fn list(&mut self, list: Node<'_, '_>) -> Vec<usize> {
        let line = self.lines.line(list);
        let Some(numbers) = self.numbers(list) else {
            return Vec::new();
        };
        let each = if list.tag_name().name() == "PntList2D" {
            2
        } else {
            3
        };
        if numbers.len() % each != 0 {
            self.faults.wrong(
                line,
                format!("A list of points is not {each} numbers for each point."),
            );
            return Vec::new();
        }
        let first = self.survey.points.len();
        for one in numbers.chunks_exact(each) {
            if self.survey.points.len() == MOST_POINTS {
                self.faults
                    .wrong(line, "The file has more than 3,000,000 points.");
                return Vec::new();
            }
            self.survey.points.push(SurveyPoint {
                id: String::new(),
                line,
                east: one[1],
                north: one[0],
                elevation: one.get(2).copied(),
                note: String::new(),
            });
        }
        (first..self.survey.points.len()).collect()
    }
}
