//! What waited on a phone without a link, and was thrown away by its own person instead of being sent.
//!
//! It comes under the key of what was thrown away. So if the hub had taken that after all, the phone gets that answer and
//! learns so; and if the words themselves still come by a slow way, they find their key used and do nothing.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// Somebody throws away what waited on the phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DropUnsent {
    /// The kind of what was to be said, such as `take_reading`.
    pub what: String,
    /// What was typed, on one line.
    pub words: String,
}

impl Saying for DropUnsent {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, _at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        drop(self)
    }
}

/// What waited on a phone was thrown away there; it was never shown to anybody.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct UnsentDropped {
    /// Its kind.
    pub what: String,
    /// What was typed.
    pub words: String,
}

impl Happening for UnsentDropped {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// Longer words than this are cut: the log is told what it was, the phone had shown it whole.
const LONGEST: usize = 400;

pub(crate) fn drop(asked: &DropUnsent) -> Result<Vec<Body>, Refusal> {
    let plain = |c: char| c.is_ascii_lowercase() || c == '_';
    if asked.what.is_empty() || asked.what.len() > 40 || !asked.what.chars().all(plain) {
        return Err(Refusal::of_the_record(
            words::drop_unsent::say_what_kind_word_thrown(),
        ));
    }
    let line = asked.words.split_whitespace().collect::<Vec<_>>().join(" ");
    Ok(vec![Body::UnsentDropped(UnsentDropped {
        what: asked.what.clone(),
        words: line.chars().take(LONGEST).collect(),
    })])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground};

    fn dropped(what: &str, words: &str) -> Command {
        Command::DropUnsent(DropUnsent {
            what: what.into(),
            words: words.into(),
        })
    }

    #[test]
    fn it_stands_in_the_log_and_changes_nothing_else() {
        let mut crew = Crew::digging();
        let before = crew.state.clone();
        let said = crew.says(&ground(), dropped("take_reading", "P-1  4.70\n"));
        let entry = said.unwrap().first;
        let body = &crew.log.iter().find(|one| one.seq == entry).unwrap().body;
        let kept = UnsentDropped {
            what: "take_reading".into(),
            words: "P-1 4.70".into(),
        };
        assert_eq!(body, &Body::UnsentDropped(kept));
        assert_eq!(crew.state.calls, before.calls);
        assert_eq!(crew.state.readings, before.readings);
        assert_eq!(crew.state.cabs, before.cabs);
    }

    #[test]
    fn a_kind_that_is_none_is_refused_and_long_words_are_cut() {
        let mut crew = Crew::digging();
        assert!(crew.says(&ground(), dropped("", "P-1")).is_err());
        assert!(crew.says(&ground(), dropped("<b>", "P-1")).is_err());
        crew.says(&ground(), dropped("add_note", &"x".repeat(9_000)))
            .unwrap();
        let Some(Body::UnsentDropped(kept)) = crew.log.last().map(|entry| &entry.body) else {
            panic!("nothing kept");
        };
        assert_eq!(kept.words.chars().count(), LONGEST);
    }
}
