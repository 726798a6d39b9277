//! No computation takes what no site has: every input of every worked example, made hostile one at a time.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use earthwork::worked::{Quantity, compute};

type Inputs = BTreeMap<String, String>;

struct Case {
    id: String,
    computation: String,
    inputs: Inputs,
}

fn cases() -> Vec<Case> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/worked-examples");
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let table: toml::Table = toml::from_str(&fs::read_to_string(path).unwrap()).unwrap();
        for case in table["case"].as_array().unwrap() {
            let inputs = case["inputs"].as_table().unwrap();
            let text = |value: &toml::Value| match value {
                toml::Value::String(text) => text.clone(),
                other => other.to_string(),
            };
            let one = Case {
                id: case["id"].as_str().unwrap().to_owned(),
                computation: case["computation"].as_str().unwrap().to_owned(),
                inputs: inputs
                    .iter()
                    .map(|(name, value)| (name.clone(), text(value)))
                    .collect(),
            };
            // A case that is to be refused has nothing that could be made worse.
            if compute(&one.computation, &one.inputs).is_ok() {
                found.push(one);
            }
        }
    }
    assert!(found.len() > 300, "only {} cases", found.len());
    found
}

#[test]
fn survey() {
    let mut seen = std::collections::BTreeSet::new();
    for case in cases() {
        for (name, text) in &case.inputs {
            let mut try_it = |what: &str, new: String| {
                let mut inputs = case.inputs.clone();
                inputs.insert(name.clone(), new.clone());
                if let Ok(got) = compute(&case.computation, &inputs) {
                    let key = format!("{what:9} {} {name}", case.computation);
                    if seen.insert(key.clone()) {
                        println!("{key}: {new:?} in {} gave {got:?}", case.id);
                    }
                }
            };
            let number = text.trim().parse::<f64>().is_ok();
            if number {
                try_it(
                    "negative",
                    format!("-{}", text.trim().trim_start_matches('-')),
                );
                try_it("1e308", "1e308".into());
                try_it("-1e308", "-1e308".into());
                try_it("1e-300", "1e-300".into());
            } else if earthwork::length::parse(text).is_ok() {
                try_it(
                    "neg.len",
                    format!("-{}", text.trim().trim_start_matches('-')),
                );
                try_it("huge.len", "99999999 ft".into());
            }
            if text.contains(';') {
                try_it(
                    "longer",
                    format!("{text}; {}", text.split(';').next_back().unwrap()),
                );
                try_it("shorter", text.rsplit_once(';').unwrap().0.to_owned());
                try_it("trailing", format!("{text};"));
                if text
                    .split(';')
                    .next()
                    .unwrap()
                    .trim()
                    .parse::<f64>()
                    .is_ok()
                {
                    try_it(
                        "1e308 in",
                        format!("1e308; {}", text.split_once(';').unwrap().1),
                    );
                    try_it("neg in", format!("-7; {}", text.split_once(';').unwrap().1));
                } else if earthwork::length::parse(text.split(';').next().unwrap()).is_ok() {
                    try_it(
                        "neg.l in",
                        format!("-7 ft; {}", text.split_once(';').unwrap().1),
                    );
                }
            }
        }
    }
    let _ = Quantity::Number(0.0);
}
