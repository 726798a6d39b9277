//! The form for each thing of a site: its fields in order, with their names in every language. A phone draws it; the
//! reader of drafts reads it; a test holds the two together.

use ::words::{Fixed, Text};
use contract::ToSchema;
use serde::{Deserialize, Serialize};

/// What a form is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FormOf {
    /// A grade to reach.
    Target,
    /// A layout mark.
    Mark,
    /// A line on the plan.
    Line,
    /// A point of known elevation.
    Benchmark,
    /// A machine.
    Machine,
    /// A rod.
    Rod,
    /// A laser.
    Laser,
    /// A line overhead.
    Overhead,
    /// A pile.
    Pile,
    /// A face or a trench.
    Face,
    /// A footing or wall behind a cut.
    Structure,
    /// A buried line.
    Utility,
    /// A locate ticket.
    Ticket,
    /// What the site has settled on.
    Rules,
    /// How the plan's coordinates come on to the site.
    Frame,
}

impl FormOf {
    /// Its key in the site file.
    pub fn key(self) -> &'static str {
        match self {
            Self::Target => "target",
            Self::Mark => "mark",
            Self::Line => "line",
            Self::Benchmark => "benchmark",
            Self::Machine => "machine",
            Self::Rod => "rod",
            Self::Laser => "laser",
            Self::Overhead => "overhead",
            Self::Pile => "pile",
            Self::Face => "face",
            Self::Structure => "structure",
            Self::Utility => "utility",
            Self::Ticket => "ticket",
            Self::Rules => "rules",
            Self::Frame => "frame",
        }
    }

    /// Whether a site has it once, without a name.
    pub fn once(self) -> bool {
        matches!(self, Self::Rules | Self::Frame)
    }
}

/// One thing's form.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = SiteForm)]
pub struct Form {
    /// What it is of.
    pub of: FormOf,
    /// What several of them are called.
    pub name: Text,
    /// Whether a site has it once.
    pub once: bool,
    /// Its fields, in order.
    pub fields: Vec<Field>,
}

/// One field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = FormField)]
pub struct Field {
    /// Its key in the draft.
    pub key: &'static str,
    /// What it is called.
    pub name: Text,
    /// Whether it may not be left out.
    pub needed: bool,
    /// What it takes.
    pub takes: Takes,
}

/// What a field takes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[schema(as = FormTakes)]
pub enum Takes {
    /// A text.
    Text,
    /// A length with its unit; a plain number is feet.
    Length,
    /// A thickness, a width or a tolerance, as often said in inches as in feet: never without its unit.
    Size,
    /// A plain number.
    Number,
    /// A rise: `2 %`.
    Rise,
    /// Yes or no.
    Flag,
    /// Shown, not typed.
    Fixed,
    /// One word of a list.
    Word {
        /// The list.
        words: Vec<Word>,
    },
    /// East and north.
    Point,
    /// Points in order.
    Points,
    /// Points in order, each with its elevation.
    Corners,
    /// Names in order, of what is no thing of the site.
    Texts,
    /// Several words of a list.
    SomeWords {
        /// The list.
        words: Vec<Word>,
    },
    /// Lengths in order.
    Lengths,
    /// The name of one thing of the site.
    One {
        /// Of which kind.
        of: FormOf,
    },
    /// Names of things of the site.
    Several {
        /// Of which kind.
        of: FormOf,
    },
    /// Tables, one after another.
    Rows {
        /// The fields of each.
        #[schema(no_recursion)]
        fields: Vec<Field>,
    },
    /// A table.
    Table {
        /// Its fields.
        #[schema(no_recursion)]
        fields: Vec<Field>,
    },
    /// Exactly one of several tables, each under a key of its own beside the other fields.
    OneOf {
        /// The tables.
        #[schema(no_recursion)]
        tables: Vec<Field>,
    },
}

/// A word of a list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[schema(as = FormWord)]
pub struct Word {
    /// As it is written.
    pub id: &'static str,
    /// What it is called.
    pub name: Text,
}

pub(super) fn needed(key: &'static str, name: Fixed, takes: Takes) -> Field {
    Field {
        key,
        name: name.into(),
        needed: true,
        takes,
    }
}

pub(super) fn may(key: &'static str, name: Fixed, takes: Takes) -> Field {
    Field {
        needed: false,
        ..needed(key, name, takes)
    }
}

pub(super) fn words(list: &[(&'static str, Fixed)]) -> Takes {
    Takes::Word {
        words: listed(list),
    }
}

pub(super) fn some_words(list: &[(&'static str, Fixed)]) -> Takes {
    Takes::SomeWords {
        words: listed(list),
    }
}

fn listed(list: &[(&'static str, Fixed)]) -> Vec<Word> {
    let words = list.iter().map(|(id, name)| Word {
        id,
        name: (*name).into(),
    });
    words.collect()
}

pub(super) fn sides() -> Takes {
    words(&[
        ("left", words::form::left()),
        ("right", words::form::right()),
    ])
}

pub(super) fn units() -> Takes {
    words(&[
        ("foot", words::form::feet()),
        ("survey_foot", words::form::us_survey_feet()),
        ("metre", words::form::metres()),
    ])
}
