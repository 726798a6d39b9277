//! What is said on the socket, both ways: part of the contract of the wire.

use std::collections::BTreeMap;

use contract::{IntoParams, ToSchema};
use day::said::receipt::CabPage;
use day::time::Time;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::publish::{Form, UnkeptStop};

/// Which page opens a socket.
#[derive(Debug, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub struct Opened {
    /// The script that it runs, by its path. One that this hub does not name, or none, gets whole views.
    page: Option<String>,
}

impl Opened {
    /// What a page understands: its own build's words, or whole views alone.
    pub fn form(&self) -> Form {
        if self.page.is_some() && self.page == web_ui::entry() {
            Form::Parts
        } else {
            Form::Whole
        }
    }
}

/// What the hub says on the socket.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum FromHub {
    /// First of all.
    Hello {
        /// The build of the pages that the hub serves: another build than the page's own means to load it anew.
        build: String,
        /// The phone's own device name.
        device: String,
        /// A name of this log that outlives its days: what a phone remembers of another log says nothing of this one.
        log: String,
        /// The hub's clock.
        at: Time,
        /// Hub seconds in a second.
        speed: f64,
    },
    /// What of a view is newer than what this screen has; what came between is skipped. Fields, items and tables that are not
    /// named stay as they are.
    View {
        /// Which.
        topic: TopicWord,
        /// The entry that it holds up to.
        seq: u64,
        /// All of the view: what the screen had before counts no more.
        whole: bool,
        /// Nothing of the view waits for a moment to spare.
        even: bool,
        /// Fields that are new, as the view of that topic has them.
        #[schema(value_type = BTreeMap<String, Value>)]
        view: Map<String, Value>,
        /// Fields that the view has no more.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        left_out: Vec<String>,
        /// Cards of which some tables are new: by field, then by table.
        #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
        cards: BTreeMap<String, BTreeMap<String, Value>>,
        /// Lists in which an item came, went or moved: by field, the names of all items.
        #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
        order: BTreeMap<String, Vec<String>>,
        /// Items of lists that are new: by field, then by name.
        #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
        items: BTreeMap<String, BTreeMap<String, Value>>,
        /// Items that the screen has and of which some fields are new: by field of the view, then by name, then by the item's own.
        #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
        changed: BTreeMap<String, BTreeMap<String, Map<String, Value>>>,
    },
    /// Each second.
    Beat {
        /// The hub's clock.
        at: Time,
        /// Hub seconds in a second.
        speed: f64,
        /// The last entry of the log.
        head: u64,
        /// Its hash: the phone keeps the newest that it has seen.
        hash: String,
        /// True when nothing is kept any more: no number may stand, use hand signals.
        halted: bool,
        /// A stop that was pressed meanwhile, and is not in the log.
        #[serde(skip_serializing_if = "Option::is_none")]
        stop: Option<UnkeptStop>,
    },
    /// The answer to a clock question.
    Clock {
        /// The phone's own moment, given back.
        t0: i64,
        /// The hub's clock.
        at: Time,
    },
    /// The last word before the hub closes the socket.
    Bye {
        /// Why.
        why: Why,
    },
}

/// A screen's subject.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum TopicWord {
    /// The cab.
    Operator,
    /// The ground person's page.
    Ground,
    /// The supervisor's page.
    Supervisor,
    /// What stays put.
    Sheet,
    /// A visitor's page.
    Visitor,
}

/// Why the hub closes a socket.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// A supervisor removed the phone.
    Removed,
    /// Another phone took its place in the cab.
    Retired,
    /// The hub closes; it may come back.
    Closing,
    /// A new day has begun: join again.
    DayOver,
    /// A new day has begun, and this phone stays in: load the page again and say who holds it.
    AskWho,
}

/// What a page says on the socket.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum FromPhone {
    /// What is the hub's time?
    Clock {
        /// The phone's own moment, to be given back.
        t0: i64,
    },
    /// Whether the page can be seen: first of all, and at each change.
    Visible {
        /// It can.
        visible: bool,
    },
    /// A call has arrived.
    Have {
        /// Which.
        call: u64,
    },
    /// The newest end of this log that the phone remembers: first of all, when it comes again.
    Saw {
        /// The entry.
        seq: u64,
        /// Its hash.
        hash: String,
    },
    /// After each beat: the page's script runs. At once when what it says of itself changes.
    Alive {
        /// What an operator's page can't give.
        #[serde(default)]
        page: Option<CabPage>,
    },
}
