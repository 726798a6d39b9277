//! What a page does with the views that come in parts: keeps what it has and puts what is newer into it.

use std::collections::BTreeMap;

use serde_json::{Map, Value};

/// The views of one screen, by topic.
#[derive(Debug, Default)]
pub struct Assembled(BTreeMap<String, Has>);

/// What a screen has of one view.
#[derive(Debug, Default)]
struct Has {
    fields: Map<String, Value>,
    order: Map<String, Value>,
    items: BTreeMap<String, Map<String, Value>>,
}

impl Assembled {
    /// The whole view after a message of the kind `view`; none for another message.
    pub fn take(&mut self, message: &Value) -> Option<Value> {
        if message["kind"] != "view" {
            return None;
        }
        let has = self.0.entry(message["topic"].as_str()?.to_owned());
        let has = has.or_default();
        if message["whole"] == true {
            *has = Has::default();
        }
        has.put(message);
        Some(has.view())
    }
}

impl Has {
    fn put(&mut self, message: &Value) {
        self.fields.extend(members(&message["view"]));
        for field in message["left_out"].as_array().into_iter().flatten() {
            self.fields.remove(field.as_str().unwrap_or_default());
        }
        for (field, tables) in members(&message["cards"]) {
            if let Some(card) = self.fields.get_mut(&field).and_then(Value::as_object_mut) {
                card.extend(members(&tables));
            }
        }
        self.order.extend(members(&message["order"]));
        for (field, items) in members(&message["items"]) {
            self.items.entry(field).or_default().extend(members(&items));
        }
        for (field, items) in members(&message["changed"]) {
            let has = self.items.entry(field).or_default();
            for (name, fields) in members(&items) {
                if let Some(item) = has.get_mut(&name).and_then(Value::as_object_mut) {
                    item.extend(members(&fields));
                }
            }
        }
    }

    fn view(&self) -> Value {
        let mut view = self.fields.clone();
        for (field, order) in &self.order {
            let items = self.items.get(field);
            let names = order.as_array().into_iter().flatten();
            let list = names.filter_map(|name| items?.get(name.as_str()?).cloned());
            view.insert(field.clone(), Value::Array(list.collect()));
        }
        Value::Object(view)
    }
}

fn members(object: &Value) -> Map<String, Value> {
    object.as_object().cloned().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn what_is_newer_goes_into_what_is_there() {
        let mut screen = Assembled::default();
        let whole = json!({
            "kind": "view", "topic": "ground", "whole": true,
            "view": { "site": "Yard", "account": { "loads": 2, "rock": 0 }, "low": 1 },
            "order": { "marks": ["P-1", "P-2"] },
            "items": { "marks": { "P-1": { "dev": 3 }, "P-2": { "dev": 5, "by": "RT" } } },
        });
        let two = json!({ "dev": 5, "by": "RT" });
        let view = json!({ "site": "Yard", "account": { "loads": 2, "rock": 0 }, "low": 1, "marks": [{ "dev": 3 }, two] });
        assert_eq!(screen.take(&whole), Some(view));
        let newer = json!({
            "kind": "view", "topic": "ground", "whole": false, "view": {},
            "left_out": ["low"], "cards": { "account": { "loads": 3 } },
            "order": { "marks": ["P-2", "P-3"] }, "items": { "marks": { "P-3": { "dev": 7 } } },
            "changed": { "marks": { "P-2": { "dev": 6 } } },
        });
        let two = json!({ "dev": 6, "by": "RT" });
        let view = json!({ "site": "Yard", "account": { "loads": 3, "rock": 0 }, "marks": [two, { "dev": 7 }] });
        assert_eq!(screen.take(&newer), Some(view.clone()));
        let same = json!({ "kind": "view", "topic": "ground", "whole": false, "view": {} });
        assert_eq!(screen.take(&same), Some(view));
        assert_eq!(screen.take(&json!({ "kind": "beat" })), None);
    }
}
