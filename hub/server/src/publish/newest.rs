//! The newest parts of one view, each encoded once, with the round in which it last changed: a screen gets what is newer than
//! what it has, a slow one skips, a new one gets all. Of an item of a list that a screen has, it gets the fields that changed.
//! A page of another build puts parts together by rules of its own: it gets the whole view each time, and nothing else.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use bytestring::ByteString;
use serde_json::value::RawValue;
use show::views::parts::Part;

/// How a screen's page takes views.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// It knows the words of this build: what is newer, in parts.
    Parts,
    /// It may know none of them: each view whole, as fields alone.
    Whole,
}

/// Text that was encoded, and the round in which it came.
#[derive(Debug)]
struct Kept {
    round: u64,
    json: String,
}

/// A member of a group, encoded.
#[derive(Debug)]
struct Member {
    /// The round in which it came, or lost or won a field.
    round: u64,
    json: String,
    /// The rounds in which fields of it changed since.
    fields: BTreeMap<String, u64>,
}

/// A list that goes item by item, or a card that goes table by table.
#[derive(Debug, Default)]
struct Group {
    /// The round in which a member came, went or moved.
    round: u64,
    order: Vec<String>,
    members: BTreeMap<String, Member>,
}

/// The newest parts of one view.
#[derive(Debug, Default)]
pub(super) struct Newest {
    round: u64,
    seq: u64,
    /// Every part is as it is at that entry: none waits for a moment to spare.
    even: bool,
    fields: BTreeMap<&'static str, Kept>,
    /// Fields that the view leaves out as it stands.
    left_out: BTreeMap<&'static str, u64>,
    lists: BTreeMap<&'static str, Group>,
    cards: BTreeMap<&'static str, Group>,
    /// The last message that was made, and for which round.
    made: Option<(u64, ByteString)>,
    /// The whole view, when somebody has asked for it since it changed.
    made_whole: Option<ByteString>,
}

impl Newest {
    /// How often the view has changed.
    pub(super) fn round(&self) -> u64 {
        self.round
    }

    /// Takes parts as they are at an entry, `even` when none of the view waits for a moment to spare; true when any is new.
    pub(super) fn take(&mut self, seq: u64, even: bool, parts: Vec<(&'static str, Part)>) -> bool {
        let round = self.round + 1;
        let mut changed = false;
        for (field, part) in parts {
            changed |= match part {
                Part::Field(json) => self.field(round, field, json),
                Part::LeftOut => self.leave_out(round, field),
                Part::List(items) => self.lists.entry(field).or_default().take(round, items),
                Part::Some { order, items } => {
                    let list = self.lists.entry(field).or_default();
                    list.take_some(round, order, items)
                }
                Part::Card(tables) => self.cards.entry(field).or_default().take(round, tables),
            };
        }
        self.seq = seq;
        self.even = even;
        if changed {
            self.round = round;
            self.made = None;
            self.made_whole = None;
        }
        changed
    }

    fn field(&mut self, round: u64, field: &'static str, json: String) -> bool {
        self.left_out.remove(field);
        let kept = self.fields.get(field);
        let changed = kept.is_none_or(|kept| kept.json != json);
        if changed {
            self.fields.insert(field, Kept { round, json });
        }
        changed
    }

    fn leave_out(&mut self, round: u64, field: &'static str) -> bool {
        self.fields.remove(field);
        let changed = !self.left_out.contains_key(field);
        self.left_out.entry(field).or_insert(round);
        changed
    }

    /// What is newer than a round, in one message, and the round that it leads to; none when nothing is.
    pub(super) fn newer(
        &mut self,
        topic: &str,
        than: u64,
        form: Form,
    ) -> Option<(u64, ByteString)> {
        if than >= self.round {
            return None;
        }
        if form == Form::Whole {
            let made = self.made_whole.take();
            let message = made.unwrap_or_else(|| self.whole(topic).into());
            self.made_whole = Some(message.clone());
            return Some((self.round, message));
        }
        if let Some((made_for, message)) = &self.made
            && *made_for == than
        {
            return Some((self.round, message.clone()));
        }
        let message = ByteString::from(self.message(topic, than));
        self.made = Some((than, message.clone()));
        Some((self.round, message))
    }

    /// The view as an object with every field, list and card in it.
    fn whole(&self, topic: &str) -> String {
        let (seq, even) = (self.seq, self.even);
        let fields = self.fields.iter();
        let fields = fields.map(|(field, kept)| (*field, kept.json.clone()));
        let cards = self.cards.iter();
        let cards = cards.map(|(field, card)| (*field, object(card.newer(0))));
        let lists = self.lists.iter();
        let lists = lists.map(|(field, list)| (*field, list.array()));
        let view = object(fields.chain(cards).chain(lists));
        format!(
            r#"{{"kind":"view","topic":"{topic}","seq":{seq},"whole":true,"even":{even},"view":{view}}}"#
        )
    }

    fn message(&self, topic: &str, than: u64) -> String {
        let (seq, whole, even) = (self.seq, than == 0, self.even);
        let mut text = format!(
            r#"{{"kind":"view","topic":"{topic}","seq":{seq},"whole":{whole},"even":{even},"view":"#
        );
        let fields = self.fields.iter().filter(|(_, kept)| kept.round > than);
        let fields = fields.map(|(field, kept)| (*field, kept.json.as_str().to_owned()));
        let cards = self.cards.iter().filter(|(_, card)| card.round > than);
        let cards = cards.map(|(field, card)| (*field, object(card.newer(0))));
        text += &object(fields.chain(cards));
        let mut add = |name: &str, written: String| {
            if written != "{}" && written != "[]" {
                // Writing into a string can't fail.
                let _ = write!(text, r#","{name}":{written}"#);
            }
        };
        let left_out = self.left_out.iter().filter(|(_, round)| **round > than);
        let left_out: Vec<&str> = left_out.map(|(field, _)| *field).collect();
        add("left_out", quoted(&left_out));
        let cards = self.cards.iter().filter(|(_, card)| card.round <= than);
        let cards = cards.map(|(field, card)| (*field, object(card.newer(than))));
        add("cards", object(cards.filter(|(_, tables)| tables != "{}")));
        let orders = self.lists.iter().filter(|(_, list)| list.round > than);
        let orders = orders.map(|(field, list)| (*field, quoted(&list.order)));
        add("order", object(orders));
        let items = self.lists.iter();
        let items = items.map(|(field, list)| (*field, object(list.came(than))));
        add("items", object(items.filter(|(_, items)| items != "{}")));
        let changed = self.lists.iter();
        let changed = changed.map(|(field, list)| (*field, object(list.changed(than))));
        add(
            "changed",
            object(changed.filter(|(_, items)| items != "{}")),
        );
        text.push('}');
        text
    }
}

impl Group {
    /// All members, in their order.
    fn array(&self) -> String {
        let members = self.order.iter().filter_map(|name| self.members.get(name));
        let members: Vec<&str> = members.map(|member| member.json.as_str()).collect();
        format!("[{}]", members.join(","))
    }

    /// Members that came or changed after that round, whole.
    fn newer(&self, than: u64) -> impl Iterator<Item = (&str, String)> {
        let newer = self.members.iter();
        let newer = newer.filter(move |(_, member)| member.last() > than);
        newer.map(|(name, member)| (name.as_str(), member.json.clone()))
    }

    /// Members that came after that round, whole.
    fn came(&self, than: u64) -> impl Iterator<Item = (&str, String)> {
        let came = self.members.iter();
        let came = came.filter(move |(_, member)| member.round > than);
        came.map(|(name, member)| (name.as_str(), member.json.clone()))
    }

    /// Of members that were there in that round, the fields that changed after it.
    fn changed(&self, than: u64) -> impl Iterator<Item = (&str, String)> {
        let there = self.members.iter();
        let there = there.filter(move |(_, member)| member.round <= than && member.last() > than);
        there.map(move |(name, member)| (name.as_str(), member.changed(than)))
    }

    /// Takes all members anew; true when any is new, gone or elsewhere.
    fn take(&mut self, round: u64, members: Vec<(String, String)>) -> bool {
        let order = members.iter().map(|(name, _)| name.clone()).collect();
        let stays: BTreeSet<&String> = members.iter().map(|(name, _)| name).collect();
        let gone = |name: &&String| !stays.contains(name);
        let gone: Vec<String> = self.order.iter().filter(gone).cloned().collect();
        let gone = gone.into_iter().map(|name| (name, None));
        let there = members.into_iter().map(|(name, json)| (name, Some(json)));
        let members = gone.collect::<Vec<_>>().into_iter().chain(there);
        self.take_some(round, order, members.collect())
    }

    /// Takes some members anew, none for one that is not there; `order` names all that may be there. True when any is new, gone or
    /// elsewhere.
    fn take_some(
        &mut self,
        round: u64,
        order: Vec<String>,
        members: Vec<(String, Option<String>)>,
    ) -> bool {
        let mut changed = false;
        for (name, json) in members {
            match (self.members.get_mut(&name), json) {
                (Some(kept), Some(json)) if kept.json == json => {}
                (Some(kept), Some(json)) => {
                    kept.take(round, json);
                    changed = true;
                }
                (None, Some(json)) => {
                    self.members.insert(name, Member::new(round, json));
                    changed = true;
                }
                (_, None) => drop(self.members.remove(&name)),
            }
        }
        let there = |name: &String| self.members.contains_key(name);
        let order: Vec<String> = order.into_iter().filter(there).collect();
        if order != self.order || self.round == 0 {
            self.round = round;
            self.order = order;
            changed = true;
        }
        changed
    }
}

impl Member {
    fn new(round: u64, json: String) -> Self {
        Self {
            round,
            json,
            fields: BTreeMap::new(),
        }
    }

    /// The round in which anything of it changed last.
    fn last(&self) -> u64 {
        self.fields.values().copied().max().unwrap_or(self.round)
    }

    fn take(&mut self, round: u64, json: String) {
        let (before, after) = (split(&self.json), split(&json));
        let alike = before.keys().eq(after.keys());
        if !alike || after.is_empty() {
            *self = Self::new(round, json);
            return;
        }
        let differ = after
            .iter()
            .filter(|(field, now)| before[*field].get() != now.get());
        let differ: Vec<String> = differ.map(|(field, _)| field.clone()).collect();
        self.fields
            .extend(differ.into_iter().map(|field| (field, round)));
        self.json = json;
    }

    fn changed(&self, than: u64) -> String {
        let newer = |field: &String| self.fields.get(field).is_some_and(|round| *round > than);
        let fields = split(&self.json);
        let fields = fields.iter().filter(|(field, _)| newer(field));
        object(fields.map(|(field, json)| (field.as_str(), json.get().to_owned())))
    }
}

/// The fields of an encoded object; none of what is no object.
fn split(json: &str) -> BTreeMap<String, &RawValue> {
    serde_json::from_str(json).unwrap_or_default()
}

/// An object of values that are encoded already.
fn object<'a>(members: impl Iterator<Item = (&'a str, String)>) -> String {
    let mut text = String::from("{");
    for (name, json) in members {
        if text.len() > 1 {
            text.push(',');
        }
        text += &quote(name);
        text.push(':');
        text += &json;
    }
    text.push('}');
    text
}

fn quoted(names: &[impl AsRef<str>]) -> String {
    let names: Vec<String> = names.iter().map(|name| quote(name.as_ref())).collect();
    format!("[{}]", names.join(","))
}

fn quote(name: &str) -> String {
    serde_json::Value::from(name).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::socket::assembled::Assembled;
    use serde_json::{Value, json};

    /// A view with one of each kind.
    fn round(newest: &mut Newest, seq: u64, site: &str, marks: &[(&str, u32)], low: bool) -> bool {
        let items = marks.iter();
        let items = items.map(|(name, dev)| ((*name).to_owned(), dev.to_string()));
        let tables = [("loads", marks.len().to_string()), ("rock", "0".into())];
        let tables = tables.map(|(name, json)| (name.into(), json));
        let parts = vec![
            ("site", Part::Field(json!(site).to_string())),
            (
                "low",
                if low {
                    Part::Field("1".into())
                } else {
                    Part::LeftOut
                },
            ),
            ("marks", Part::List(items.collect())),
            ("account", Part::Card(tables.into())),
        ];
        newest.take(seq, true, parts)
    }

    fn newer(newest: &mut Newest, than: u64) -> Value {
        let (_, message) = newest.newer("ground", than, Form::Parts).unwrap();
        serde_json::from_str(&message).unwrap()
    }

    #[test]
    fn a_screen_gets_what_is_newer_than_what_it_has_and_a_new_one_everything() {
        let mut newest = Newest::default();
        let nothing = newest.newer("ground", 0, Form::Parts);
        assert!(nothing.is_none(), "there is nothing yet");
        assert!(round(
            &mut newest,
            7,
            "Yard",
            &[("P-1", 3), ("P-2", 5)],
            false
        ));
        let all = newer(&mut newest, 0);
        assert_eq!(
            all,
            json!({
                "kind": "view", "topic": "ground", "seq": 7, "whole": true, "even": true,
                "view": { "site": "Yard", "account": { "loads": 2, "rock": 0 } },
                "left_out": ["low"],
                "order": { "marks": ["P-1", "P-2"] },
                "items": { "marks": { "P-1": 3, "P-2": 5 } },
            })
        );
        assert!(round(
            &mut newest,
            8,
            "Yard",
            &[("P-1", 4), ("P-2", 5)],
            false
        ));
        let one = newer(&mut newest, 1);
        assert_eq!(one["items"], json!({ "marks": { "P-1": 4 } }));
        assert_eq!(
            (&one["view"], &one["order"], &one["cards"]),
            (&json!({}), &Value::Null, &Value::Null)
        );
        assert!(round(
            &mut newest,
            9,
            "Yard",
            &[("P-2", 5), ("P-1", 4), ("P-3", 1)],
            true
        ));
        let two = newer(&mut newest, 2);
        assert_eq!(two["order"], json!({ "marks": ["P-2", "P-1", "P-3"] }));
        assert_eq!(two["items"], json!({ "marks": { "P-3": 1 } }));
        assert_eq!(two["cards"], json!({ "account": { "loads": 3 } }));
        assert_eq!(two["view"], json!({ "low": 1 }));
        // A slow one skips to the newest of each.
        let skipped = newer(&mut newest, 1);
        assert_eq!(skipped["items"], json!({ "marks": { "P-1": 4, "P-3": 1 } }));
        let nothing = newest.newer("ground", 3, Form::Parts);
        assert!(nothing.is_none(), "it has the newest");
    }

    #[test]
    fn of_an_item_that_a_screen_has_it_gets_the_fields_that_changed() {
        let mut newest = Newest::default();
        let mut take = |seq, item: Value| {
            let items = vec![("EX-1".to_owned(), item.to_string())];
            newest.take(seq, true, vec![("machines", Part::List(items))]);
            [1, 2, 3].map(|than| {
                newest
                    .newer("ground", than, Form::Parts)
                    .map(|(_, message)| {
                        let message: Value = serde_json::from_str(&message).unwrap();
                        (message["items"].clone(), message["changed"].clone())
                    })
            })
        };
        take(7, json!({ "call": 1, "mute": false, "place": "P-1" }));
        let [one, ..] = take(8, json!({ "call": 2, "mute": false, "place": "P-1" }));
        let only = |fields: Value| (Value::Null, json!({ "machines": { "EX-1": fields } }));
        assert_eq!(one, Some(only(json!({ "call": 2 }))));
        let [one, two, _] = take(9, json!({ "call": 2, "mute": true, "place": "P-1" }));
        assert_eq!(
            one,
            Some(only(json!({ "call": 2, "mute": true }))),
            "a slow one skips"
        );
        assert_eq!(two, Some(only(json!({ "mute": true }))));
        // A field that is gone can't be told by what is there: all of it comes.
        let whole = json!({ "machines": { "EX-1": { "call": 2, "mute": true } } });
        let came = take(10, json!({ "call": 2, "mute": true }));
        assert_eq!(came, [(); 3].map(|()| Some((whole.clone(), Value::Null))));
    }

    /// What a page of this build puts together of all parts, a page of another build gets at once, at every change.
    #[test]
    fn a_page_of_another_build_gets_the_whole_view_each_time() {
        let mut newest = Newest::default();
        let mut screen = Assembled::default();
        let mut has = 0;
        let days: [(&[(&str, u32)], bool); 5] = [
            (&[("P-1", 3), ("P-2", 5)], false),
            (&[("P-1", 4), ("P-2", 5)], true),
            (&[("P-2", 5), ("P-3", 1)], true),
            (&[], false),
            (&[("P-9", 9)], true),
        ];
        for (seq, (marks, low)) in (7..).zip(days) {
            assert!(round(&mut newest, seq, "Yard", marks, low));
            let (to, parts) = newest.newer("ground", has, Form::Parts).unwrap();
            let parts: Value = serde_json::from_str(&parts).unwrap();
            let (same, whole) = newest.newer("ground", has, Form::Whole).unwrap();
            let whole: Value = serde_json::from_str(&whole).unwrap();
            assert_eq!((same, &whole["whole"]), (to, &json!(true)));
            let words: BTreeSet<&str> = whole
                .as_object()
                .unwrap()
                .keys()
                .map(String::as_str)
                .collect();
            assert_eq!(
                words,
                BTreeSet::from(["even", "kind", "seq", "topic", "view", "whole"])
            );
            assert_eq!(screen.take(&parts), Some(whole["view"].clone()));
            // A page of this build reads it too.
            let read = Assembled::default().take(&whole);
            assert_eq!(read.as_ref(), Some(&whole["view"]));
            has = to;
        }
        assert!(newest.newer("ground", has, Form::Whole).is_none());
    }

    #[test]
    fn what_is_the_same_again_is_no_news() {
        let mut newest = Newest::default();
        assert!(round(&mut newest, 7, "Yard", &[("P-1", 3)], true));
        assert!(!round(&mut newest, 8, "Yard", &[("P-1", 3)], true));
        assert!(round(&mut newest, 9, "Yard", &[], true), "a mark is gone");
        assert_eq!(newer(&mut newest, 1)["order"], json!({ "marks": [] }));
        assert!(round(&mut newest, 10, "Yard", &[], false));
        assert_eq!(newer(&mut newest, 2)["left_out"], json!(["low"]));
        assert!(round(&mut newest, 11, "Yard", &[], true));
        assert_eq!(newer(&mut newest, 3)["view"]["low"], 1);
    }
}
