//! What differs between two site files, thing by thing, in words that a supervisor reads.

use contract::ToSchema;
use earthwork::length::{Form, Length};
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::site::{Site, Target};

/// One thing that differs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteDifference {
    /// Where: `marks N-04 place x`.
    pub what: String,
    /// What it was; none when it is new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<String>,
    /// What it is; none when it is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub now: Option<String>,
}

/// What differs between two sites, thing by thing, in words that a supervisor reads.
pub fn differences(old: &Site, new: &Site) -> Vec<SiteDifference> {
    let (old, new) = (serde_json::to_value(old), serde_json::to_value(new));
    let mut found = Vec::new();
    if let (Ok(old), Ok(new)) = (old, new) {
        compare("", &old, &new, &mut found);
    }
    found
}

/// What differs between two states of one target, as in [`differences`].
pub(crate) fn target_differences(old: &Target, new: &Target) -> Vec<SiteDifference> {
    let (was, now) = (serde_json::to_value(old), serde_json::to_value(new));
    let mut found = Vec::new();
    if let (Ok(was), Ok(now)) = (was, now) {
        compare(&format!("targets {}", old.id), &was, &now, &mut found);
    }
    found
}

fn compare(path: &str, old: &Value, new: &Value, found: &mut Vec<SiteDifference>) {
    if old == new {
        return;
    }
    match (old, new) {
        _ if is_net(old) || is_net(new) => found.push(SiteDifference {
            what: path.to_owned(),
            was: net_in_words(old),
            now: net_in_words(new),
        }),
        (Value::Object(a), Value::Object(b)) => {
            let keys: std::collections::BTreeSet<&String> = a.keys().chain(b.keys()).collect();
            for key in keys {
                let (was, now) = (a.get(key), b.get(key));
                compare(
                    &join(path, key),
                    was.unwrap_or(&Value::Null),
                    now.unwrap_or(&Value::Null),
                    found,
                );
            }
        }
        (Value::Array(a), Value::Array(b)) => {
            let (a_names, b_names) = (names(a), names(b));
            for (name, was) in a_names.iter().zip(a) {
                let now = b_names
                    .iter()
                    .position(|other| other == name)
                    .map(|i| &b[i]);
                compare(&join(path, name), was, now.unwrap_or(&Value::Null), found);
            }
            for (name, now) in b_names.iter().zip(b) {
                if !a_names.contains(name) {
                    compare(&join(path, name), &Value::Null, now, found);
                }
            }
        }
        _ => found.push(SiteDifference {
            what: path.to_owned(),
            was: in_words(path, old),
            now: in_words(path, new),
        }),
    }
}

/// A surface's points and triangles are too many to be told one by one.
fn is_net(value: &Value) -> bool {
    value.get("points").is_some_and(Value::is_array) && value.get("triangles").is_some()
}

fn net_in_words(value: &Value) -> Option<String> {
    if !is_net(value) {
        return in_words("", value);
    }
    let numbers = value.get("points")?.as_array()?;
    let heights = numbers.iter().skip(2).step_by(3).filter_map(Value::as_i64);
    let feet = |count: Option<i64>| {
        Length::from_tenth_micrometres(count.unwrap_or_default())
            .show(Form::DecimalFeet { places: 2 })
    };
    Some(format!(
        "{}: {} points, {} triangles, from {} to {}",
        value
            .get("source")
            .and_then(Value::as_str)
            .unwrap_or_default(),
        numbers.len() / 3,
        value.get("triangles")?.as_array()?.len() / 3,
        feet(heights.clone().min()),
        feet(heights.max())
    ))
}

fn join(path: &str, key: &str) -> String {
    if path.is_empty() {
        key.replace('_', " ")
    } else {
        format!("{path} {}", key.replace('_', " "))
    }
}

/// The names of a list's things; the second of one name goes by its number too, so that none hides behind another.
fn names(list: &[Value]) -> Vec<String> {
    let mut seen: Vec<String> = Vec::new();
    for (place, value) in list.iter().enumerate() {
        let name = name_of(place, value);
        let again = |number: usize| format!("{name} ({number})");
        let free = (2..=list.len() + 1)
            .map(again)
            .find(|one| !seen.contains(one));
        let first = !seen.contains(&name);
        seen.push(if first { name } else { free.unwrap_or(name) });
    }
    seen
}

/// A thing in a list goes by its own name, else by its place.
fn name_of(place: usize, value: &Value) -> String {
    ["id", "name"]
        .iter()
        .find_map(|key| value.get(key).and_then(Value::as_str))
        .map_or_else(|| format!("no. {}", place + 1), str::to_owned)
}

/// A value as a person reads it. Whole numbers in a site are lengths, but for revisions.
fn in_words(path: &str, value: &Value) -> Option<String> {
    match value {
        Value::Null => None,
        Value::Number(number) if !path.ends_with("revision") => Some(number.as_i64().map_or_else(
            || number.to_string(),
            |count| Length::from_tenth_micrometres(count).to_string(),
        )),
        Value::String(text) => Some(text.clone()),
        Value::Object(fields) => Some(
            fields
                .iter()
                .filter_map(|(key, value)| Some(format!("{key} {}", in_words(key, value)?)))
                .collect::<Vec<_>>()
                .join(", "),
        ),
        Value::Array(items) => Some(
            items
                .iter()
                .filter_map(|item| in_words(path, item))
                .collect::<Vec<_>>()
                .join("; "),
        ),
        other => Some(other.to_string()),
    }
}
