//! The nevers within the crate `day`, read like its map: what is known asks no rule, and a rule asks no walk through the day.

use std::path::Path;

use super::{files, none, short, text};

/// What a file of the day imports: each path behind `use crate::`, groups taken apart one level deep.
fn imports(path: &Path) -> Vec<String> {
    let code = text(path);
    // Tests at a file's end tell whole days.
    let code = code.split("\n#[cfg(test)]\nmod tests {").next();
    let code = code.unwrap_or_default();
    let mut found = Vec::new();
    for rest in code.split("use crate::").skip(1) {
        let path = rest.split(';').next().unwrap_or_default();
        match path.strip_prefix('{') {
            Some(group) => found.extend(group.split(',').map(|one| one.trim().to_owned())),
            None => found.push(path.to_owned()),
        }
    }
    found
}

#[test]
fn arrows_within_the_day_hold() {
    // What a rule decides comes after what is known, never before: file or folder, what it may not import, why.
    let walks_the_day = ["decide", "permit", "apply", "standing", "overtaken"];
    let rules: [(&str, &[&str], &str); 8] = [
        (
            "hub/day/src/state",
            &walks_the_day,
            "the state is what was said; it decides nothing",
        ),
        (
            "hub/day/src/said",
            &["decide", "permit", "apply", "standing"],
            "a saying is called by the walk through the day and never calls it",
        ),
        (
            "hub/day/src/cuts",
            &walks_the_day,
            "what is known of a cut asks no rule of the walk",
        ),
        (
            "hub/day/src/open",
            &walks_the_day,
            "what is open is read off the state",
        ),
        (
            "hub/day/src/account",
            &walks_the_day,
            "what is counted is read off the state",
        ),
        (
            "hub/day/src/way_in",
            &["state", "said", "asked", "entry", "site", "decide", "apply"],
            "the way in is a machine of its own",
        ),
        (
            "hub/day/src/site",
            &["state", "said", "entry", "decide", "apply"],
            "a site is a plan, whatever is said on it",
        ),
        (
            "hub/day/src/plan_sense",
            &["state", "said", "entry", "decide", "apply"],
            "what is odd in a plan is odd before any day",
        ),
    ];
    let mut faults = Vec::new();
    let mut looked_at = 0;
    for path in files("hub/day/src", &[".rs"]) {
        let name = short(&path);
        let tells_days = name.contains("/tests") || name.contains("/explore/");
        for (place, banned, why) in &rules {
            let inside = name == format!("{place}.rs") || name.starts_with(&format!("{place}/"));
            if !inside || tells_days {
                continue;
            }
            looked_at += 1;
            for one in imports(&path) {
                let first = one.split("::").next().unwrap_or_default();
                if banned.contains(&first) {
                    faults.push(format!("{name}: imports {one}; {why}"));
                }
            }
        }
        if text(&path).contains("show::") {
            faults.push(format!(
                "{name}: names the crate `show`; what a rule needs is in day"
            ));
        }
    }
    assert!(
        looked_at > 50,
        "{looked_at} files: the list names places that are gone"
    );
    none(&faults);
}
