//! A view in parts: each field is worked out when something touched it, encoded, and sent to a screen that has an older one.
//!
//! A list whose items have names and a card of several tables go item by item, so that one reading sends one mark. What a
//! part waits for is said beside its field, in the list that also makes the whole view ([`screen`]): a field that is in
//! one and not in the other does not compile.

use serde::Serialize;

use day::entry::Body;
use day::happening::Touches;

/// What entries touched since parts were last worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Touched {
    /// Anything at all.
    any: bool,
    /// More than the life of a call and of its screen.
    marks: bool,
    /// More than readings, too.
    rest: bool,
}

impl Touched {
    /// Everything: at the start, for a screen that has just come.
    pub const ALL: Self = Self {
        any: true,
        marks: true,
        rest: true,
    };

    /// What an entry touches, as its kind says.
    pub fn by(body: &Body) -> Self {
        let touches = body.touches();
        Self {
            any: true,
            marks: touches >= Touches::Marks,
            rest: touches == Touches::All,
        }
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            any: self.any || other.any,
            marks: self.marks || other.marks,
            rest: self.rest || other.rest,
        }
    }
}

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
    /// What entries touched.
    pub touched: Touched,
    /// Parts that wait for a moment to spare are worked out too.
    pub spare: bool,
}

impl Due {
    /// Every part.
    pub const ALL: Self = Self {
        touched: Touched::ALL,
        spare: true,
    };

    /// None; a view that nobody has watched is worked out all the same.
    pub const NOTHING: Self = Self {
        touched: Touched {
            any: false,
            marks: false,
            rest: false,
        },
        spare: false,
    };
    /// Those that wait for a moment to spare.
    pub const SPARE: Self = Self {
        spare: true,
        ..Self::NOTHING
    };

    /// Those that entries touched.
    pub fn by(touched: Touched) -> Self {
        Self {
            touched,
            spare: false,
        }
    }

    /// Whether a part is worked out now.
    pub fn has(self, when: When) -> bool {
        match when {
            When::Always => self.touched.any,
            When::Marks => self.touched.marks,
            When::Seldom => self.touched.rest,
            When::Spare => self.spare,
        }
    }
}

/// An item of a list that goes by itself.
pub(crate) trait Named {
    /// Its name, of which the list has no second.
    fn name(&self) -> String;
}

/// Takes the parts of one view, encoded.
pub trait Takes {
    /// A field as it is.
    fn field(&mut self, field: &'static str, json: String);
    /// A field that the view leaves out as it stands.
    fn left_out(&mut self, field: &'static str);
    /// A list: the names of its items in order, and each item.
    fn list(&mut self, field: &'static str, items: Vec<(String, String)>);
    /// A card of several tables.
    fn card(&mut self, field: &'static str, tables: Vec<(String, String)>);
}

/// Encodes parts for whoever takes them.
pub(crate) struct Out<'a>(pub(crate) &'a mut dyn Takes);

impl Out<'_> {
    pub(crate) fn field(&mut self, field: &'static str, value: &impl Serialize) {
        self.0.field(field, json(value));
    }

    /// A field that the view leaves out when it is empty.
    pub(crate) fn maybe(&mut self, field: &'static str, value: &impl Serialize) {
        match json(value).as_str() {
            "null" | "[]" => self.0.left_out(field),
            written => self.0.field(field, written.to_owned()),
        }
    }

    pub(crate) fn list<T: Serialize + Named>(&mut self, field: &'static str, items: &[T]) {
        let items = items.iter().map(|item| (item.name(), json(item)));
        self.0.list(field, items.collect());
    }

    pub(crate) fn card(&mut self, field: &'static str, card: &impl Serialize) {
        // What is no card of tables goes as it is.
        let Ok(serde_json::Value::Object(tables)) = serde_json::to_value(card) else {
            return self.field(field, card);
        };
        let tables = tables.into_iter().map(|(name, table)| (name, json(&table)));
        self.0.card(field, tables.collect());
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

        /// The parts of that view that are due; false while there is no such view.
        pub fn parts(
            $state: &State
            $(, $given: $kind)*,
            due: crate::views::parts::Due,
            takes: &mut dyn crate::views::parts::Takes,
        ) -> bool {
            let (Some($site), Some($day)) = ($state.site(), $state.day.as_ref()) else {
                return false;
            };
            $(let Some($name) = $made else { return false };)*
            let mut out = crate::views::parts::Out(takes);
            $(
                if due.has(crate::views::parts::When::$when) {
                    out.$how(stringify!($field), &$value);
                }
            )*
            true
        }
    };
}
pub(crate) use screen;
