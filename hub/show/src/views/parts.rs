//! A view in parts: each field is worked out when something touched it, encoded, and sent to a screen that has an older one.
//!
//! A list whose items have names and a card of several tables go item by item, so that one reading sends one mark; a list that
//! goes mark by mark ([`Each`]) is worked out for that mark alone. What a part waits for is said beside its field, in the list
//! that also makes the whole view ([`screen`]): a field that is in one and not in the other does not compile.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use day::entry::Body;
use day::happening::Touches;

/// What a part waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// It is worked out after every entry.
    Always,
    /// Not for what only the life of a call and its screen touches. What goes mark by mark is worked out for the marks that were
    /// touched alone.
    Marks,
    /// Not for a reading either.
    Seldom,
    /// It is costly, and nobody acts on it within a second: it is worked out when the hub has a moment to spare.
    Spare,
}

/// Which parts are worked out now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Due {
    /// The most that an entry touched; none when there was no entry.
    touched: Option<Touches>,
    /// The marks that were touched, when no other one was.
    marks: Option<BTreeSet<String>>,
    /// Parts that wait for a moment to spare are worked out too.
    pub spare: bool,
}

impl Due {
    /// Every part.
    pub const ALL: Self = Self {
        touched: Some(Touches::All),
        marks: None,
        spare: true,
    };
    /// None.
    pub const NOTHING: Self = Self {
        touched: None,
        marks: None,
        spare: false,
    };
    /// Those that wait for a moment to spare.
    pub const SPARE: Self = Self {
        touched: None,
        marks: None,
        spare: true,
    };

    /// Those that entries touched.
    pub fn by<'a>(entries: impl IntoIterator<Item = &'a Body>) -> Self {
        let mut due = Self {
            touched: None,
            marks: Some(BTreeSet::new()),
            spare: false,
        };
        for body in entries {
            due.touched = due.touched.max(Some(body.touches()));
            if body.touches() < Touches::Mark {
                continue;
            }
            match (&mut due.marks, body.touched_mark()) {
                (Some(marks), Some(mark)) => {
                    marks.insert(mark.to_owned());
                }
                _ => due.marks = None,
            }
        }
        due
    }

    /// The same, with or without those that wait for a moment to spare.
    #[must_use]
    pub fn with_spare(&self, spare: bool) -> Self {
        Self {
            spare,
            ..self.clone()
        }
    }

    /// Whether a part is worked out now.
    pub fn has(&self, when: When) -> bool {
        match when {
            When::Always => self.touched.is_some(),
            When::Marks => self.touched >= Some(Touches::Mark),
            When::Seldom => self.touched == Some(Touches::All),
            When::Spare => self.spare,
        }
    }

    /// Whether something of everything was touched, who is known too.
    pub fn is_all(&self) -> bool {
        self.touched == Some(Touches::All)
    }

    fn has_mark(&self, mark: &str) -> bool {
        let marks = self.marks.as_ref();
        marks.is_none_or(|marks| marks.contains(mark))
    }
}

/// An item of a list that goes by itself.
pub(crate) trait Named {
    /// Its name, of which the list has no second.
    fn name(&self) -> String;
}

/// A part of a view, encoded, under the name of its field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Part {
    /// A field as it is.
    Field(String),
    /// A field that the view leaves out as it stands.
    LeftOut,
    /// A list: its items in order, each under its name.
    List(Vec<(String, String)>),
    /// Of a list that goes mark by mark: the items that were worked out anew, none for one that is not in it.
    Some {
        /// The names of all that may be in it, in order.
        order: Vec<String>,
        /// The items.
        items: Vec<(String, Option<String>)>,
    },
    /// A card of several tables, each under its name.
    Card(Vec<(String, String)>),
}

/// Works out one of a list; none when it is not in it.
type One<'a, K, T> = Box<dyn Fn(&K) -> Option<T> + 'a>;

/// A list that goes mark by mark: what may be in it, and how each is worked out.
pub(crate) struct Each<'a, K, T> {
    /// What may be in it, in order.
    pub(crate) keys: Vec<K>,
    /// The mark of one.
    pub(crate) mark: fn(&K) -> &str,
    /// The name of one.
    pub(crate) name: fn(&K) -> String,
    /// How one is worked out.
    pub(crate) one: One<'a, K, T>,
}

impl<K, T> Each<'_, K, T> {
    /// All that are in it.
    pub(crate) fn all(self) -> Vec<T> {
        self.keys.iter().filter_map(self.one).collect()
    }
}

/// Parts that two views have alike, worked out once.
#[derive(Debug, Default)]
pub struct Alike(RefCell<BTreeMap<&'static str, (Due, Part)>>);

impl Alike {
    /// The part as the other view has it, when it was worked out for as much; else made now.
    pub(crate) fn part(&self, field: &'static str, due: &Due, make: impl FnOnce() -> Part) -> Part {
        if let Some((made_for, part)) = self.0.borrow().get(field)
            && (made_for.touched, &made_for.marks) == (due.touched, &due.marks)
        {
            return part.clone();
        }
        let part = make();
        let kept = (due.clone(), part.clone());
        self.0.borrow_mut().insert(field, kept);
        part
    }
}

/// What a field holds when the view is made whole.
pub(crate) struct Whole;

impl Whole {
    pub(crate) fn field<T>(value: T) -> T {
        value
    }

    pub(crate) fn maybe<T>(value: T) -> T {
        value
    }

    pub(crate) fn list<T>(items: Vec<T>) -> Vec<T> {
        items
    }

    pub(crate) fn card<T>(card: T) -> T {
        card
    }

    pub(crate) fn each<K, T>(each: Each<'_, K, T>) -> Vec<T> {
        each.all()
    }
}

/// How a field becomes a part.
pub(crate) struct Goes;

impl Goes {
    pub(crate) fn field(value: &impl Serialize, _due: &Due) -> Part {
        Part::Field(json(value))
    }

    /// A field that the view leaves out when it is empty.
    pub(crate) fn maybe(value: &impl Serialize, _due: &Due) -> Part {
        match json(value) {
            empty if empty == "null" || empty == "[]" => Part::LeftOut,
            written => Part::Field(written),
        }
    }

    pub(crate) fn list<T: Serialize + Named>(items: &[T], _due: &Due) -> Part {
        let items = items.iter().map(|item| (item.name(), json(item)));
        Part::List(items.collect())
    }

    pub(crate) fn each<K, T: Serialize>(each: &Each<'_, K, T>, due: &Due) -> Part {
        let order = each.keys.iter().map(each.name).collect();
        let touched = each
            .keys
            .iter()
            .filter(|key| due.has_mark((each.mark)(key)));
        let items = touched.map(|key| {
            let item = (each.one)(key);
            ((each.name)(key), item.as_ref().map(json))
        });
        Part::Some {
            order,
            items: items.collect(),
        }
    }

    pub(crate) fn card(card: &impl Serialize, due: &Due) -> Part {
        // What is no card of tables goes as it is.
        let Ok(serde_json::Value::Object(tables)) = serde_json::to_value(card) else {
            return Self::field(card, due);
        };
        let tables = tables.into_iter().map(|(name, table)| (name, json(&table)));
        Part::Card(tables.collect())
    }
}

/// A view is made of plain values under names: what can't be written can't be.
fn json(value: &impl Serialize) -> String {
    serde_json::to_string(value).unwrap_or_else(|_| "null".to_owned())
}

/// One list of fields makes the whole view and its parts: how a field goes (`field`, `maybe`, `list`, `each`, `card`), when it is
/// worked out ([`When`]), its name, its value. A field in brackets is alike in another view of the same state.
macro_rules! screen {
    (
        $(#[$doc:meta])*
        $view:ident ( $state:ident, $site:ident, $day:ident $(, $given:ident : $kind:ty)* )
        { $(let $name:ident = $made:expr;)* }
        $( $how:ident $when:ident $field:ident $( ($same:ident) )? : $value:expr, )*
    ) => {
        $(#[$doc])*
        pub fn view($state: &State $(, $given: $kind)*) -> Option<$view> {
            let $site = $state.site()?;
            let $day = $state.day.as_ref()?;
            $(let $name = $made?;)*
            Some($view { $($field: crate::views::parts::Whole::$how($value),)* })
        }

        /// The parts of that view that are due, each under its field; none while there is no such view.
        pub fn parts(
            $state: &State
            $(, $given: $kind)*,
            due: &crate::views::parts::Due,
            alike: &crate::views::parts::Alike,
        ) -> Option<Vec<(&'static str, crate::views::parts::Part)>> {
            let $site = $state.site()?;
            let $day = $state.day.as_ref()?;
            $(let $name = $made?;)*
            let mut parts = Vec::new();
            $(
                if due.has(crate::views::parts::When::$when) {
                    let make = || crate::views::parts::Goes::$how(&$value, due);
                    let part = crate::views::parts::screen!(@ $field, $($same)?, make, due, alike);
                    parts.push((stringify!($field), part));
                }
            )*
            let _ = alike;
            Some(parts)
        }
    };
    (@ $field:ident, , $make:ident, $due:ident, $alike:ident) => { $make() };
    (@ $field:ident, alike, $make:ident, $due:ident, $alike:ident) => {
        $alike.part(stringify!($field), $due, $make)
    };
}
pub(crate) use screen;
