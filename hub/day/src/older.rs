//! Entries as older hubs wrote them, read as what they are called today.
//!
//! A stored line is never written again: its hash is over the bytes that stand in the file, and whoever wants to know what was
//! written reads them there. Only what is folded is lifted, here, when today's types do not take a line as it stands. So each
//! form that a hub ever wrote stays readable, and no rule below this file knows that there was another.
//!
//! To change the form of an entry: write the new one as a new `Body`, or as a field that may be missing; where that can't be,
//! add the old form to `LIFTS` below, with a line of a log that was written in it.

use serde_json::{Error, Map, Value, json};
use words::Text;

use crate::entry::Entry;

/// An entry's own fields.
type Fields = Map<String, Value>;
/// Makes today's form of an older one.
type Lift = fn(&mut Fields);

/// Each kind that was once written otherwise, and what makes today's form of it; nothing is left of what it can't read.
const LIFTS: [(&str, Lift); 2] = [("day_closed", open_items), ("day_opened", open_items)];

/// Reads a line of the log, of whatever age.
///
/// # Errors
/// What today's form misses in it, when no older form fits either.
pub fn read(line: &str) -> Result<Entry, Error> {
    let today = match serde_json::from_str(line) {
        Ok(entry) => return Ok(entry),
        Err(today) => today,
    };
    let lifted = serde_json::from_str(line).ok().and_then(lifted);
    lifted.ok_or(today)
}

fn lifted(mut line: Value) -> Option<Entry> {
    let body = line.get_mut("body")?.as_object_mut()?;
    let kind = body.get("kind")?.as_str()?;
    let (_, lift) = LIFTS.iter().find(|(of, _)| *of == kind)?;
    lift(body);
    // From text, as every entry: read from a value too, each kind would be compiled twice.
    serde_json::from_str(&line.to_string()).ok()
}

/// What stays open was once a kind with fields of its own; the sentences were made when somebody looked.
fn open_items(body: &mut Fields) {
    let items = body.get_mut("open").and_then(Value::as_array_mut);
    for item in items.into_iter().flatten() {
        if let Some(today) = open_item(item) {
            *item = today;
        }
    }
}

/// An open item with its sentences as that hub would have said them; none for what is no such item.
fn open_item(old: &Value) -> Option<Value> {
    let word = |name: &str| old.get(name).and_then(Value::as_str);
    let about = |kind: &str, on: &str, said: Text| {
        let mut item = json!(said);
        (item["kind"], item["on"]) = (json!(kind), json!(on));
        item
    };
    let itself = |kind: &str, on: &str| about(kind, on, Text::alike(on));
    Some(match word("kind")? {
        "query" => itself("query", word("query")?),
        "near_miss" => itself("near_miss", word("near_miss")?),
        "retest" => {
            let mark = word("mark")?;
            let said = if old["void"] == true {
                words::older::test_void(&mark)
            } else {
                words::older::test_failed(&mark)
            };
            about("test", mark, said)
        }
        "patch" => {
            let (patch, mark) = (word("patch")?, word("mark")?);
            let said = words::older::patch_at(&patch, &mark);
            about("gravel", patch, said)
        }
        "undercut" => {
            let mark = word("mark")?;
            let said = words::older::undercut_at(&mark);
            about("undercut", mark, said)
        }
        "face_watch" => {
            let zone = word("zone")?;
            about("face", zone, words::older::watch_face(&zone))
        }
        "stopped" => {
            let machine = word("machine")?;
            let said = words::older::is_stopped(&machine);
            about("stop", machine, said)
        }
        "shoot_again" => {
            let mark = word("mark")?;
            about("in_doubt", mark, words::older::shoot_again(&mark))
        }
        "unproven" => {
            let set_up = word("set_up")?;
            let said = words::older::is_not_proven(&set_up);
            about("closing_check", set_up, said)
        }
        "inspection" => {
            let what = word("what")?;
            about("inspection", what, words::older::inspection(&what))
        }
        "photo_owed" => {
            let person = word("person")?;
            let said = words::older::photo_on_phone(&person);
            about("photo", person, said)
        }
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chain::{GENESIS, Walk, digest, open};
    use crate::entry::Body;
    use crate::open::{OpenItem, OpenKind};
    use crate::state::State;

    /// A line as that hub wrote it: the text, then `prev` and the hash over all of it.
    fn sealed(text: &str, prev: &str) -> (String, String) {
        let kept = format!("{},\"prev\":\"{prev}\"", text.strip_suffix('}').unwrap());
        let hash = digest(format!("{kept}}}").as_bytes());
        (format!("{kept},\"hash\":\"{hash}\"}}"), hash)
    }

    /// The first line of a second day, written by the hub in which a day was first closed and opened by a person.
    const OPENED: &str = r#"{"seq":1,"at":1904997660000,"made_at":1904997660000,"by":{"device":"hub","person":"hub","roles":["hub"]},"key":"day-2","body":{"kind":"day_opened","day":"2030-05-15","taken_down":["S1"],"open":[{"kind":"query","query":"Q1"},{"kind":"near_miss","near_miss":"NM-1"},{"kind":"retest","mark":"N-07","void":false},{"kind":"retest","mark":"N-03","void":true},{"kind":"patch","patch":"G1","mark":"N-02"},{"kind":"undercut","mark":"N-07"},{"kind":"face_watch","zone":"T-FACE"},{"kind":"stopped","machine":"EX-1"},{"kind":"shoot_again","mark":"P-03"},{"kind":"unproven","set_up":"S1"},{"kind":"inspection","what":"footing"},{"kind":"photo_owed","person":"RT"}]}}"#;

    #[test]
    fn what_an_older_hub_left_open_is_read_as_today_and_its_line_proves_itself_as_written() {
        let (line, hash) = sealed(OPENED, GENESIS);
        assert!(
            serde_json::from_str::<Entry>(&line).is_err(),
            "today's form alone does not take it"
        );
        let (entry, _, own) = open(&line, 1).unwrap();
        assert_eq!(own, hash, "the chain is over the bytes as written");
        let Body::DayOpened(opened) = &entry.body else {
            panic!("{entry:?}")
        };
        let found: Vec<(OpenKind, &str)> = opened
            .open
            .iter()
            .map(|item| (item.kind, item.on.as_str()))
            .collect();
        assert_eq!(
            found,
            [
                (OpenKind::Query, "Q1"),
                (OpenKind::NearMiss, "NM-1"),
                (OpenKind::Test, "N-07"),
                (OpenKind::Test, "N-03"),
                (OpenKind::Gravel, "G1"),
                (OpenKind::Undercut, "N-07"),
                (OpenKind::Face, "T-FACE"),
                (OpenKind::Stop, "EX-1"),
                (OpenKind::InDoubt, "P-03"),
                (OpenKind::ClosingCheck, "S1"),
                (OpenKind::Inspection, "footing"),
                (OpenKind::Photo, "RT"),
            ]
        );
        let mut state = State::default();
        crate::apply(&mut state, &entry);
        let again = |item: &&OpenItem| item.kind == OpenKind::InDoubt;
        let carried = state.record.carried.iter().find(again).unwrap();
        assert_eq!(
            (carried.text.english.as_str(), carried.text.spanish.as_str()),
            ("shoot P-03 again", "leer P-03 otra vez")
        );
    }

    #[test]
    fn an_older_line_that_was_touched_does_not_prove_itself() {
        let (line, _) = sealed(OPENED, GENESIS);
        for at in 0..line.len() {
            let mut bytes = line.clone().into_bytes();
            bytes[at] ^= 1;
            if let Ok(changed) = String::from_utf8(bytes) {
                assert!(
                    Walk::default().step(&changed).is_err(),
                    "byte {at} was changed unnoticed"
                );
            }
        }
    }

    #[test]
    fn what_no_form_fits_is_named_in_the_words_of_today() {
        let unknown = OPENED.replace("face_watch", "watch_this");
        assert!(read(&unknown).is_err());
        let kind = OPENED.replace("day_opened", "day_began");
        assert!(read(&kind).unwrap_err().to_string().contains("day_began"));
    }
}
