//! How long a surface of a million triangles takes to load and to look up, beside scipy's linear interpolator.
//!
//! Both get the same points in the same run and answer the same places; the answers are compared. Figures are printed,
//! and nothing about time is asserted: `cargo bench -p rodcall --bench surface`.
#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a measurement that can't go on says why; its table goes to the terminal"
)]

#[path = "../harness/python.rs"]
mod python;

use std::fs;
use std::hint::black_box;
use std::time::Instant;

use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::surface::{Drawn, Surface, Vertex};

/// Points; there are about two triangles to a point.
const POINTS: usize = 500_500;
/// Places that are looked up.
const PLACES: usize = 1_000_000;
/// Side of the square that holds them, 5,000 ft, in tenth-micrometres.
const SIDE: u64 = 5_000 * 3_048_000;

fn main() {
    let mut chance = Chance(20_300_514);
    let length =
        |counts: u64| Length::from_tenth_micrometres(i64::try_from(counts).expect("a length"));
    let mut place = |margin: u64| Point {
        x: length(margin + chance.below(SIDE - 2 * margin)),
        y: length(margin + chance.below(SIDE - 2 * margin)),
    };
    let at: Vec<Point> = (0..POINTS).map(|_| place(0)).collect();
    // The edge of random points is ragged: places lie 100 ft within.
    let places: Vec<Point> = (0..PLACES).map(|_| place(SIDE / 50)).collect();
    let points: Vec<Vertex> = at
        .into_iter()
        .map(|at| Vertex {
            at,
            elevation: length(chance.below(3_048_000 * 20)),
        })
        .collect();

    let before = resident_kb();
    let began = Instant::now();
    let surface = Surface::from_points(&Drawn {
        points: points.clone(),
        ..Drawn::default()
    });
    let from_points = began.elapsed().as_secs_f64();
    let surface = surface.expect("a surface");
    let (vertices, net) = surface.net();
    let began = Instant::now();
    let again = Surface::from_net(vertices, net).expect("the same surface");
    let from_triangles = began.elapsed().as_secs_f64();
    assert_eq!(again.triangles(), surface.triangles());
    drop(again);
    let memory = resident_kb()
        .zip(before)
        .map(|(after, before)| after - before);

    let began = Instant::now();
    let mut found = Vec::with_capacity(PLACES);
    for place in &places {
        found.push(surface.elevation_at(*place));
    }
    let each_ns = began.elapsed().as_secs_f64() * 1e9 / PLACES as f64;
    let found: Vec<i64> = found
        .into_iter()
        .map(|one| one.expect("a place on the surface").tenth_micrometres())
        .collect();
    let slowest = slowest_us(&surface, &places);

    let scipy = scipy(&points, &places, &found);
    let row = |what: &str, ours: f64, theirs: f64, unit: &str| {
        println!(
            "{what:42} {ours:10.2} {theirs:10.2} {:8.3}  {unit}",
            ours / theirs
        );
    };
    println!(
        "{} triangles of {POINTS} points, {PLACES} places; hub, scipy, ratio.",
        surface.triangles()
    );
    row(
        "from points to the first answer",
        from_points,
        scipy.from_points,
        "s",
    );
    row("a place, all asked at once", each_ns, scipy.each_ns, "ns");
    row("a place, asked alone", each_ns / 1e3, scipy.alone_us, "µs");
    println!(
        "from given triangles: {from_triangles:.2} s; slowest of a hundred places {slowest:.2} µs."
    );
    match memory {
        Some(kb) => println!(
            "Memory held by the hub's surface: {} MB, {} bytes a triangle (scipy: {} MB).",
            kb / 1024,
            kb * 1024 / surface.triangles() as u64,
            scipy.memory_mb
        ),
        None => println!("Memory: this system does not tell it in /proc."),
    }
    println!(
        "Greatest difference of an elevation: {} of a tenth-micrometre.",
        scipy.off
    );
}

/// The 99th of a hundred places, asked one by one.
fn slowest_us(surface: &Surface, places: &[Point]) -> f64 {
    let mut each: Vec<f64> = places
        .iter()
        .take(PLACES / 10)
        .map(|place| {
            let began = Instant::now();
            let _ = black_box(surface.elevation_at(black_box(*place)));
            began.elapsed().as_secs_f64() * 1e6
        })
        .collect();
    each.sort_by(f64::total_cmp);
    each[each.len() * 99 / 100]
}

/// What scipy took, and how far its answers are from ours.
struct Scipy {
    from_points: f64,
    each_ns: f64,
    alone_us: f64,
    memory_mb: f64,
    off: f64,
}

fn scipy(points: &[Vertex], places: &[Point], found: &[i64]) -> Scipy {
    let folder = tempfile::tempdir().expect("a folder");
    let write = |name: &str, counts: &mut dyn Iterator<Item = i64>| {
        let bytes: Vec<u8> = counts.flat_map(i64::to_le_bytes).collect();
        fs::write(folder.path().join(name), bytes).expect("a file");
    };
    let counts = |one: Length| one.tenth_micrometres();
    let mut all = points
        .iter()
        .flat_map(|one| [counts(one.at.x), counts(one.at.y), counts(one.elevation)]);
    write("points", &mut all);
    let mut all = places.iter().flat_map(|at| [counts(at.x), counts(at.y)]);
    write("places", &mut all);
    write("found", &mut found.iter().copied());
    let said = python::ran(
        python::script("load/surface.py").arg(folder.path()),
        "scipy could not be measured",
    );
    let said = String::from_utf8_lossy(&said.stdout).into_owned();
    let mut figures = said.split_whitespace().map(|one| one.parse().expect(&said));
    let mut next = || figures.next().expect("a figure of scipy's");
    Scipy {
        from_points: next(),
        each_ns: next(),
        alone_us: next(),
        memory_mb: next(),
        off: next(),
    }
}

/// Memory of this process, in kB, where the system tells it.
fn resident_kb() -> Option<u64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|line| line.starts_with("VmRSS:"))?;
    line.split_whitespace().nth(1)?.parse().ok()
}

/// Numbers that look random, the same in each run (`SplitMix64`, public domain).
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % end
    }
}
