//! What a screen had, beside the replay of the same entry.

use serde_json::Value;

use crate::harness::phone::Phone;
use crate::harness::socket::Socket;

/// What waits for a moment to spare: it may be older than the rest of its view, unless the view is even.
const SPARE: [&str; 6] = [
    "account",
    "contours",
    "coverage",
    "exceptions",
    "record",
    "runs",
];

/// A view as a screen had it is the view of the replay; true when all of it was compared.
pub(crate) fn same(heard: &Value, replayed: &Value, topic: &str) -> bool {
    let even = heard["even"] == true;
    let compared = |view: &Value| {
        let mut fields = view.as_object().cloned().expect("a view");
        fields.retain(|field, _| even || !SPARE.contains(&field.as_str()));
        fields
    };
    let (seen, replayed) = (compared(&heard["view"]), compared(replayed));
    assert_eq!(seen, replayed, "{topic} at entry {}", heard["seq"]);
    even
}

/// Every view that a screen was sent, beside what the replay has at the same entry.
pub(crate) fn replays(truck: &Phone, screen: &Socket, machine: Option<&str>) -> usize {
    let views = screen.heard.iter().filter(|heard| heard["kind"] == "view");
    let mut compared = 0;
    for heard in views {
        let (topic, seq) = (heard["topic"].as_str().expect("a topic"), &heard["seq"]);
        let moment = truck.json(&format!("/api/replay?seq={seq}"));
        assert_eq!(&moment["said"]["seq"], seq);
        let replayed = match (topic, machine) {
            ("operator", Some(machine)) => &moment["operators"][machine],
            (topic, _) => &moment[topic],
        };
        same(heard, replayed, topic);
        compared += 1;
    }
    compared
}
