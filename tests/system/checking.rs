//! Before a file is in force: what `check` prints of its marks, what it would change and undo in a data folder, and what an
//! export leaves to whoever has the file.

use std::ffi::OsStr;
use std::fs;

use serde_json::json;

use crate::harness::yard::{SITE, Yard, serve, write_site};
use crate::harness::{folder, rodcall, words};

const FOOT: i64 = 3_048_000;

fn works(arguments: &[&OsStr]) -> String {
    let output = rodcall(arguments);
    assert!(output.status.success(), "{}", words(&output));
    words(&output)
}

#[test]
fn check_prints_what_each_mark_is_dug_to() {
    let place = folder();
    write_site(place.path(), SITE);
    let site = place.path().join("site.toml");
    let said = works(&["check".as_ref(), "--list".as_ref(), site.as_ref()]);
    // Top of slab 100.50 less half a foot of gravel; the pond's floor is the ground itself; S-1 has no target.
    for line in [
        "P-1 · PAD · dig to 100.00 ft",
        "P-2 · PAD · dig to 100.00 ft",
        "P-3 · PAD · dig to 100.00 ft",
        "W-1 · POND · dig to 97.00 ft",
        "S-1 · no target · dig to –",
    ] {
        assert!(said.lines().any(|said| said == line), "{line}: {said}");
    }
    let bare = works(&["check".as_ref(), site.as_ref()]);
    assert!(!bare.contains("dig to"), "{bare}");
}

#[test]
fn check_beside_a_data_folder_says_what_a_file_would_change_and_whose_word_it_would_undo() {
    let yard = Yard::open();
    let (data, site) = (yard.data(), yard.site_file());
    let check = |file: &OsStr| works(&["check".as_ref(), "--data".as_ref(), data.as_ref(), file]);
    let same = check(site.as_ref());
    assert!(
        same.contains("Nothing differs from what is in force"),
        "{same}"
    );
    let place = folder();
    let lower = SITE.replace("elevation = \"97.00 ft\"", "elevation = \"96.00 ft\"");
    write_site(place.path(), &lower);
    let other = place.path().join("site.toml");
    let said = check(other.as_ref());
    assert!(said.contains("It would change what is in force"), "{said}");
    assert!(said.contains("W-1: dig to 97.00 ft → 96.00 ft"), "{said}");
    assert!(!said.contains("UNDOES"), "{said}");
    // A page revises the pond; the file of before would take it back.
    yard.truck.says(&json!({
        "kind": "revise_target", "target": "POND", "why": "the engineer's sketch 4",
        "grade": {
            "shape": { "kind": "flat", "elevation": 98 * FOOT },
            "stack": { "surface": "bare ground", "layers": [] },
        },
        "tolerance": { "high": FOOT / 10, "low": FOOT / 5 },
    }));
    let said = check(site.as_ref());
    let undoes = said.lines().find(|line| line.contains("UNDOES what"));
    let undoes = undoes.unwrap_or_else(|| panic!("{said}"));
    assert!(
        undoes.contains("“the engineer's sketch 4”") && undoes.contains("POND"),
        "{undoes}"
    );
    assert!(said.contains("W-1: dig to 98.00 ft → 97.00 ft"), "{said}");
    // A folder without a site is no answer.
    let empty = folder();
    let output = rodcall(&[
        "check".as_ref(),
        "--data".as_ref(),
        empty.path().as_os_str(),
        site.as_os_str(),
    ]);
    assert!(!output.status.success(), "{}", words(&output));
}

#[test]
fn an_export_of_a_site_with_rules_of_its_own_says_that_their_file_is_put_beside_it_by_hand() {
    let place = folder();
    let rules = include_str!("../../hub/earthwork/src/face/us_federal.toml");
    let rules = rules.replace(
        "name = \"US federal, 29 CFR 1926 Subpart P\"",
        "name = \"Our own\"",
    );
    fs::write(place.path().join("ours.toml"), &rules).expect("a rules file");
    let site = format!("{SITE}\n[excavation]\nrules = \"ours.toml\"\n");
    write_site(place.path(), &site);
    drop(serve(place.path()));
    let (data, out) = (place.path().join("data"), place.path().join("out"));
    let said = works(&[
        "export-site".as_ref(),
        "--data".as_ref(),
        data.as_ref(),
        out.as_ref(),
    ]);
    assert!(
        said.contains("excavation-rules.toml is not written"),
        "{said}"
    );
    // The file says so too, and is in order as soon as the rules lie beside it.
    let exported = out.join("site.toml");
    let text = fs::read_to_string(&exported).expect("the export");
    assert!(
        text.starts_with("# excavation-rules.toml is not written"),
        "{text:.80}"
    );
    let missing = rodcall(&["check".as_ref(), exported.as_os_str()]);
    assert!(!missing.status.success() && words(&missing).contains("excavation-rules.toml"));
    fs::write(out.join("excavation-rules.toml"), &rules).expect("the rules");
    works(&["check".as_ref(), exported.as_ref()]);
}
