//! The hub's arithmetic beside numpy, scipy, shapely and exact fractions, on thousands of seeded inputs: runs
//! `tests/reference/check.py` on `rodcall compute`.
#![expect(
    clippy::expect_used,
    reason = "a test that can't go on says why and fails"
)]

#[path = "harness/python.rs"]
mod python;

#[test]
fn the_arithmetic_agrees_with_outside_libraries() {
    let checked = python::ran(
        python::script("reference/check.py").arg(env!("CARGO_BIN_EXE_rodcall")),
        "The hub and a reference differ; each difference has a line that `rodcall compute` takes",
    );
    let said = String::from_utf8_lossy(&checked.stdout);
    let cases: usize = said
        .lines()
        .filter_map(|line| {
            let (many, _) = line.split_once(": ")?.1.split_once(" cases ")?;
            many.parse::<usize>().ok()
        })
        .sum();
    assert!(cases >= 20_000, "only {cases} cases were compared:\n{said}");
}
