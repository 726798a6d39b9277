//! The site file becomes entries: taken the first time, shown as a difference later, revised on a supervisor's word.

use earthwork::length::{Form, Length};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use utoipa::ToSchema;

use crate::chain;
use crate::entry::{Body, Entry};
use crate::plan_sense::{self, Odd};
use crate::refusal::Refusal;
use crate::said::call;
use crate::said::touched::{self, Touched};
use crate::site::{Site, Target};
use crate::state::{MustSee, PendingChange, SiteInForce, State};
use crate::views::call::Ending;

/// The hub has read the site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadSite {
    /// What it says.
    pub site: Site,
}

/// A supervisor takes the changed file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConfirmSite {
    /// The digest of the change as it was shown, so that nothing else is confirmed.
    pub digest: String,
}

/// The first site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteTaken {
    /// The site.
    pub site: Site,
    /// SHA-256 of the site as canonical JSON, in hex.
    pub digest: String,
}

/// The file differs from the site in force; with no differences, it is the same again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChangeFound {
    /// What the file says now.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What differs.
    pub differences: Vec<SiteDifference>,
    /// What is odd about the new plan.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub odd: Vec<Odd>,
    /// The marks, calls and acceptances that it would touch.
    #[serde(default)]
    pub touches: Touched,
}

/// A changed site file is in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteRevised {
    /// The site.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What changed.
    pub differences: Vec<SiteDifference>,
    /// The operators who must see a changed target before they are called again.
    pub must_see: Vec<NewTarget>,
    /// The marks, calls and acceptances that it touches.
    #[serde(default)]
    pub touches: Touched,
}

/// A changed target that one machine's operator must see.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct NewTarget {
    /// The machine.
    pub machine: String,
    /// The target.
    pub target: String,
    /// Its new revision; 0 when it is gone.
    pub revision: u32,
}

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

/// The site as canonical JSON gives this digest.
fn digest_of(site: &Site) -> String {
    // A site is plain data: writing it can't fail. An empty text would only show as a change.
    chain::digest(&serde_json::to_vec(site).unwrap_or_default())
}

/// Takes the first site; shows a later one as a difference.
pub(crate) fn read(state: &State, asked: &ReadSite) -> Vec<Body> {
    let site = asked.site.clone();
    let digest = digest_of(&site);
    let Some(in_force) = &state.site else {
        return vec![Body::SiteTaken(SiteTaken { site, digest })];
    };
    let shown = state
        .site_change
        .as_ref()
        .map(|change| &change.found.digest);
    let already = match shown {
        Some(shown) => *shown == digest,
        None => in_force.digest == digest,
    };
    if already {
        return vec![];
    }
    let mut comparable = site.clone();
    keep_added(state, &mut comparable);
    for target in &mut comparable.targets {
        // A file knows nothing of revisions: they are counted here.
        if let Some(before) = in_force.site.target(&target.id) {
            target.revision = before.revision;
            keep_proof(before, target);
        }
    }
    let differences = differences(&in_force.site, &comparable);
    vec![Body::SiteChangeFound(SiteChangeFound {
        odd: plan_sense::odd(&site),
        touches: touched::touched(state, &in_force.site, &site),
        site,
        digest,
        differences,
    })]
}

/// A second person's proof stands as long as the grade does, even when the file does not name that person.
fn keep_proof(before: &Target, after: &mut Target) {
    if before.grade == after.grade && after.proved_by.is_none() {
        after.typed_by.clone_from(&before.typed_by);
        after.proved_by.clone_from(&before.proved_by);
    }
}

/// Benchmarks that a supervisor added on site stay, until the file has one of that name.
fn keep_added(state: &State, site: &mut Site) {
    let Some(in_force) = state.site() else { return };
    for id in &state.added_benchmarks {
        if site.benchmark(id).is_none() {
            site.benchmarks.extend(in_force.benchmark(id).cloned());
        }
    }
}

/// Puts the changed site in force; live calls on changed targets are withdrawn until seen.
pub(crate) fn confirm(state: &State, asked: &ConfirmSite) -> Result<Vec<Body>, Refusal> {
    let Some(change) = &state.site_change else {
        return Err(Refusal::NoSiteChange);
    };
    if change.found.digest != asked.digest {
        return Err(Refusal::SiteChangedAgain);
    }
    let old = state.site().ok_or(Refusal::NoSite)?;
    let mut site = change.found.site.clone();
    keep_added(state, &mut site);
    for target in &mut site.targets {
        if let Some(before) = old.target(&target.id) {
            let changed = before.grade != target.grade || before.tolerance != target.tolerance;
            target.revision = before.revision + u32::from(changed);
            keep_proof(before, target);
        }
    }
    let must_look = |machine: &str| {
        let (_, call) = state.live_call(machine)?;
        let id = call.sent.target.clone()?;
        let now = site.target(&id);
        let revision = now.map_or(0, |target| target.revision);
        let moved = call.sent.mark.as_deref().is_some_and(|mark| {
            old.mark(mark).map(|mark| mark.place) != site.mark(mark).map(|mark| mark.place)
        });
        (moved || Some(revision) != call.sent.revision).then_some((id, revision))
    };
    let must_see: Vec<NewTarget> = state
        .cabs
        .keys()
        .filter_map(|machine| {
            must_look(machine).map(|(target, revision)| NewTarget {
                machine: machine.clone(),
                target,
                revision,
            })
        })
        .collect();
    let mut bodies: Vec<Body> = must_see
        .iter()
        .filter_map(|new| call::end_live(state, &new.machine, Ending::StaleByTarget))
        .collect();
    bodies.push(Body::SiteRevised(SiteRevised {
        touches: touched::touched(state, old, &site),
        site,
        digest: asked.digest.clone(),
        differences: change.found.differences.clone(),
        must_see,
    }));
    Ok(bodies)
}

pub(crate) fn apply_taken(state: &mut State, body: &SiteTaken) {
    state.site = Some(SiteInForce {
        site: body.site.clone(),
        digest: body.digest.clone(),
    });
    seat_machines(state);
}

pub(crate) fn apply_found(state: &mut State, entry: &Entry, body: &SiteChangeFound) {
    state.site_change = (!body.differences.is_empty()).then(|| PendingChange {
        found: body.clone(),
        since: entry.at,
    });
}

pub(crate) fn apply_revised(state: &mut State, entry: &Entry, body: &SiteRevised) {
    state.site = Some(SiteInForce {
        site: body.site.clone(),
        digest: body.digest.clone(),
    });
    state.site_change = None;
    seat_machines(state);
    for new in &body.must_see {
        state.cab_mut(&new.machine).must_see = Some(MustSee {
            target: new.target.clone(),
            revision: new.revision,
            since: entry.at,
        });
    }
}

/// Every machine of the site has a cab, even before anyone joins for it.
fn seat_machines(state: &mut State) {
    let machines: Vec<String> = state
        .site()
        .map(|site| {
            site.machines
                .iter()
                .map(|machine| machine.id.clone())
                .collect()
        })
        .unwrap_or_default();
    for machine in machines {
        state.cab_mut(&machine);
    }
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
            let names = |list: &[Value]| -> Vec<String> {
                list.iter()
                    .enumerate()
                    .map(|(i, v)| name_of(i, v))
                    .collect()
            };
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::{By, Command};
    use crate::given::{Crew, len, site, supervisor};

    #[test]
    fn a_changed_file_is_shown_first_and_in_force_only_when_confirmed() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.70").unwrap();
        let mut changed = site();
        changed.targets[0].grade.stack.layers[0].thickness = len("0.60 ft");
        changed.marks[1].note = "by the gate".into();
        crew.says(&By::hub(), Command::ReadSite(ReadSite { site: changed }))
            .unwrap();
        let change = crew.state.site_change.clone().unwrap();
        let what: Vec<&str> = change
            .found
            .differences
            .iter()
            .map(|d| d.what.as_str())
            .collect();
        assert_eq!(
            what,
            [
                "marks P-2 note",
                "targets PAD grade stack layers gravel thickness"
            ]
        );
        assert_eq!(change.found.differences[1].was.as_deref(), Some("0.5 ft"));
        assert!(crew.state.live_call("EX-1").is_some());
        let confirm = |digest: &str| {
            Command::ConfirmSite(ConfirmSite {
                digest: digest.into(),
            })
        };
        assert_eq!(
            crew.says(&supervisor(), confirm("0")),
            Err(Refusal::SiteChangedAgain)
        );
        crew.says(&supervisor(), confirm(&change.found.digest))
            .unwrap();
        let pad = crew.state.site().unwrap().target("PAD").unwrap();
        assert_eq!(pad.revision, 2);
        assert!(crew.state.live_call("EX-1").is_none());
        assert!(crew.state.cabs["EX-1"].must_see.is_some());
    }

    #[test]
    fn the_same_file_again_changes_nothing() {
        let mut crew = Crew::opened();
        let before = crew.log.len();
        crew.says(&By::hub(), Command::ReadSite(ReadSite { site: site() }))
            .unwrap();
        assert_eq!(crew.log.len(), before);
    }
}
