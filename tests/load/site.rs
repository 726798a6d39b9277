//! A job of the size that a crew of a dozen has: 60 marks, 8 runs, 2 surfaces of 50,000 triangles, 3 machines, 2 lasers. Invented.
//!
//! Everything asks to be dug to 100.00 ft, so that one rod value says the same everywhere.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

/// Marks beside those of the pad.
const OTHER_MARKS: usize = 20;
/// Points along a side of each surface: two triangles to a square.
const SIDE: usize = 160;

/// How much of a job there is.
#[derive(Clone, Copy)]
pub(crate) struct Size {
    /// Marks of the site.
    pub(crate) marks: usize,
    /// Times that a laser was set up on the day.
    pub(crate) set_ups: usize,
}

impl Size {
    /// The job of a dozen people, on the laser's first place.
    pub(crate) const USUAL: Self = Self {
        marks: 60,
        set_ups: 1,
    };

    /// Marks on the pad: those that are read in turn.
    pub(crate) fn pad_marks(self) -> usize {
        self.marks - OTHER_MARKS
    }
}

/// Writes the site file and its surfaces; gives the marks in order, those of the pad first.
pub(crate) fn write(folder: &Path, size: Size) -> Vec<String> {
    for name in ["north.csv", "south.csv"] {
        fs::write(folder.join(name), surface()).expect("a table of points");
    }
    let mut site = String::from(
        r#"
version = 1
name = "Load yard"
tolerance = { high = "0.10 ft", low = "0.20 ft" }
"#,
    );
    for (id, elevation, x) in [("BM-1", "100.00", 0), ("BM-2", "101.52", 80)] {
        write!(site, "[[benchmark]]\nid = \"{id}\"\nelevation = \"{elevation} ft\"\nat = [\"{x} ft\", \"0 ft\"]\n").expect("text");
    }
    site += "[[target]]\nid = \"PAD\"\nname = \"pad\"\nsurface = \"top of slab\"\nlayers = [{ name = \"gravel\", thickness = \"0.50 ft\" }]\nflat = { elevation = \"100.50 ft\" }\n";
    for run in 1..=8 {
        let y = 200 + run * 10;
        write!(site, "[[target]]\nid = \"RUN-{run}\"\nname = \"run {run}\"\nsurface = \"top of gravel\"\n[target.run]\nstart = [\"0 ft\", \"{y} ft\"]\ntoward = [\"100 ft\", \"{y} ft\"]\nlength = \"90 ft\"\nleft = \"2 ft\"\nright = \"2 ft\"\nsteps = [{{ from = \"0 ft\", elevation = \"100.00 ft\" }}]\n").expect("text");
    }
    for side in ["north", "south"] {
        write!(site, "[[target]]\nid = \"{side}\"\nname = \"{side} ground\"\nsurface = \"finished grade\"\n[target.triangles]\nfile = \"{side}.csv\"\n").expect("text");
    }
    let mut marks = Vec::new();
    let mut mark = |id: String, target: &str, x: usize, y: usize| {
        write!(
            site,
            "[[mark]]\nid = \"{id}\"\ntarget = \"{target}\"\nat = [\"{x} ft\", \"{y} ft\"]\n"
        )
        .expect("text");
        marks.push(id);
    };
    for n in 0..size.pad_marks() {
        mark(format!("P-{n}"), "PAD", 5 + n % 20 * 4, 10 + n / 20 * 9);
    }
    for run in 1..=8 {
        for x in [20, 60] {
            mark(
                format!("R-{run}-{x}"),
                &format!("RUN-{run}"),
                x,
                200 + run * 10,
            );
        }
    }
    for (n, side) in ["north", "south", "north", "south"].iter().enumerate() {
        mark(format!("G-{n}"), side, 20 + n * 20, 50);
    }
    let runs: Vec<String> = (1..=8).map(|run| format!("\"RUN-{run}\"")).collect();
    for (id, shape, works_on) in [
        ("EX-1", "square", "\"PAD\"".to_owned()),
        ("EX-2", "triangle", runs.join(", ")),
        ("EX-3", "ring", "\"north\", \"south\"".to_owned()),
    ] {
        write!(site, "[[machine]]\nid = \"{id}\"\nshape = \"{shape}\"\nreach_at_ground = \"27.8 ft\"\ntail_radius = \"7 ft\"\ntrack_width = \"8.2 ft\"\nworks_on = [{works_on}]\ndirection = \"north\"\n").expect("text");
    }
    site += "[[rod]]\nid = \"A\"\nunit = \"feet_hundredths\"\nlength = \"13 ft\"\n";
    for laser in ["L1", "L2"] {
        write!(
            site,
            "[[laser]]\nid = \"{laser}\"\ndoubt_per_100_ft = \"0.005 ft\"\n"
        )
        .expect("text");
    }
    fs::write(folder.join("site.toml"), site).expect("a site file");
    marks
}

/// A net of points, all of one elevation: looking one up costs what it costs on a hill.
fn surface() -> String {
    let mut table = String::from("point,northing,easting,elevation\n");
    for row in 0..SIDE {
        for column in 0..SIDE {
            let number = row * SIDE + column + 1;
            writeln!(table, "{number},{},{},100.00", row * 2, column * 2).expect("text");
        }
    }
    table
}
