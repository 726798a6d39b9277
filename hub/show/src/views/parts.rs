//! A view in parts: each field is worked out when something touched it, encoded, and sent to a screen that has an older one.
//!
//! A list whose items have names and a card of several tables go item by item, so that one reading sends one mark. What a
//! part waits for is said beside its field, in the list that also makes the whole view ([`screen`]): a field that is in
//! one and not in the other does not compile.

use serde::Serialize;

use day::happening::Touches;

/// What a part waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// It is worked out after every entry.
    Always,
    /// Not for what only the life of a call and its screen touches.
    Marks,
    /// Not for a reading either.
    Seldom,
    /// It is costly, and nobody acts on it within a second: it is worked out when the hub has a moment to spare.
    Spare,
}

/// Which parts are worked out now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Due {
    /// The most that an entry touched; none when there was no entry.
    pub touched: Option<Touches>,
    /// Parts that wait for a moment to spare are worked out too.
    pub spare: bool,
}

impl Due {
    /// Every part.
    pub const ALL: Self = Self {
        touched: Some(Touches::All),
        spare: true,
    };
    /// None.
    pub const NOTHING: Self = Self {
        touched: None,
        spare: false,
    };
    /// Those that wait for a moment to spare.
    pub const SPARE: Self = Self {
        touched: None,
        spare: true,
    };

    /// Those that entries touched.
    pub fn by(touched: Option<Touches>) -> Self {
        Self {
            touched,
            spare: false,
        }
    }

    /// Whether a part is worked out now.
    pub fn has(self, when: When) -> bool {
        match when {
            When::Always => self.touched.is_some(),
            When::Marks => self.touched >= Some(Touches::Marks),
            When::Seldom => self.touched == Some(Touches::All),
            When::Spare => self.spare,
        }
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
    /// A card of several tables, each under its name.
    Card(Vec<(String, String)>),
}

/// How a field becomes a part.
pub(crate) struct Goes;

impl Goes {
    pub(crate) fn field(value: &impl Serialize) -> Part {
        Part::Field(json(value))
    }

    /// A field that the view leaves out when it is empty.
    pub(crate) fn maybe(value: &impl Serialize) -> Part {
        match json(value) {
            empty if empty == "null" || empty == "[]" => Part::LeftOut,
            written => Part::Field(written),
        }
    }

    pub(crate) fn list<T: Serialize + Named>(items: &[T]) -> Part {
        let items = items.iter().map(|item| (item.name(), json(item)));
        Part::List(items.collect())
    }

    pub(crate) fn card(card: &impl Serialize) -> Part {
        // What is no card of tables goes as it is.
        let Ok(serde_json::Value::Object(tables)) = serde_json::to_value(card) else {
            return Self::field(card);
        };
        let tables = tables.into_iter().map(|(name, table)| (name, json(&table)));
        Part::Card(tables.collect())
    }
}

/// A view is made of plain values under names: what can't be written can't be.
fn json(value: &impl Serialize) -> String {
    serde_json::to_string(value).unwrap_or_else(|_| "null".to_owned())
}

/// One list of fields makes the whole view and its parts: how a field goes (`field`, `maybe`, `list`, `card`), when it is worked
/// out ([`When`]), its name, its value.
macro_rules! screen {
    (
        $(#[$doc:meta])*
        $view:ident ( $state:ident, $site:ident, $day:ident $(, $given:ident : $kind:ty)* )
        { $(let $name:ident = $made:expr;)* }
        $( $how:ident $when:ident $field:ident : $value:expr, )*
    ) => {
        $(#[$doc])*
        pub fn view($state: &State $(, $given: $kind)*) -> Option<$view> {
            let $site = $state.site()?;
            let $day = $state.day.as_ref()?;
            $(let $name = $made?;)*
            Some($view { $($field: $value,)* })
        }

        /// The parts of that view that are due, each under its field; none while there is no such view.
        pub fn parts(
            $state: &State
            $(, $given: $kind)*,
            due: crate::views::parts::Due,
        ) -> Option<Vec<(&'static str, crate::views::parts::Part)>> {
            let $site = $state.site()?;
            let $day = $state.day.as_ref()?;
            $(let $name = $made?;)*
            let mut parts = Vec::new();
            $(
                if due.has(crate::views::parts::When::$when) {
                    let part = crate::views::parts::Goes::$how(&$value);
                    parts.push((stringify!($field), part));
                }
            )*
            Some(parts)
        }
    };
}
pub(crate) use screen;
