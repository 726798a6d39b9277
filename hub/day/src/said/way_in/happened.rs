//! What the steps of the way in change: the machine of [`crate::way_in`] takes each.

use crate::entry::Entry;
use crate::happening::{Happening, Touches};
use crate::state::State;
use crate::way_in::step::{
    AskRepeated, AskWithdrawn, BucketIsDown, EntryAsked, EntryDelayed, EntryRefused, LinkNoticed,
    OutSeen, PersonIn, PersonOut, ReleaseRefused, Released,
};

impl Happening for EntryAsked {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for AskRepeated {
    const TOUCHES: Touches = Touches::Call;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for AskWithdrawn {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for EntryDelayed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for EntryRefused {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for BucketIsDown {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for PersonIn {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for PersonOut {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for OutSeen {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for ReleaseRefused {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for Released {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
    }
}

impl Happening for LinkNoticed {
    // Who is known to be without link is no part of a call's life.
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        super::apply(state, entry);
        crate::said::spotter::apply_link(state, entry, self);
    }
}
