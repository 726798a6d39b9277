//! Where a case's figures come from: what a reader may take its agreement for.

use std::fmt;

/// The kind of a case's source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// The publication prints the inputs and the answer, and both were read there.
    WorkedExample,
    /// The answer is a value of a printed table.
    Table,
    /// The rule was read in a publication; the numbers are ours.
    Rule,
    /// What is done on sites, or decided for this program; no publication is named for it.
    CommonPractice,
    /// Worked out by hand; whoever doubts it can do it again.
    Mathematics,
    /// Remembered from a publication that was not read again.
    FromMemory,
}

impl Kind {
    /// All of them, those against a publication first.
    pub const ALL: [Kind; 6] = [
        Kind::WorkedExample,
        Kind::Table,
        Kind::Rule,
        Kind::CommonPractice,
        Kind::Mathematics,
        Kind::FromMemory,
    ];

    /// As it is written in a case.
    pub const fn name(self) -> &'static str {
        match self {
            Kind::WorkedExample => "worked example",
            Kind::Table => "table",
            Kind::Rule => "rule",
            Kind::CommonPractice => "common practice",
            Kind::Mathematics => "mathematics",
            Kind::FromMemory => "from memory",
        }
    }

    /// Whether the figures, or the rule, were read in a publication that is named.
    pub const fn published(self) -> bool {
        matches!(self, Kind::WorkedExample | Kind::Table | Kind::Rule)
    }

    /// The kind of this name; `None` for any other text.
    pub fn named(text: &str) -> Option<Kind> {
        Kind::ALL.into_iter().find(|kind| kind.name() == text)
    }

    /// What to write, for whoever wrote something else or nothing.
    pub(super) fn choices() -> String {
        let names = Kind::ALL.map(|kind| format!("“{}”", kind.name()));
        names.join(", ")
    }
}

/// How many cases there are of each kind.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts([usize; Kind::ALL.len()]);

impl Counts {
    /// One more.
    pub fn add(&mut self, kind: Kind) {
        self.0[kind as usize] += 1;
    }

    /// Those of another file too.
    pub fn add_all(&mut self, other: Counts) {
        for (one, more) in self.0.iter_mut().zip(other.0) {
            *one += more;
        }
    }

    /// How many of one kind.
    pub const fn of(self, kind: Kind) -> usize {
        self.0[kind as usize]
    }

    /// How many are against a publication.
    pub fn published(self) -> usize {
        let published = Kind::ALL.into_iter().filter(|kind| kind.published());
        published.map(|kind| self.of(kind)).sum()
    }
}

/// `97 against a publication (worked example 40, table 30, rule 27); common practice 3, mathematics 9, from memory 1`.
impl fmt::Display for Counts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let list = |published: bool| {
            let kinds = Kind::ALL.into_iter();
            let kinds = kinds.filter(|kind| kind.published() == published);
            let counts = kinds.map(|kind| format!("{} {}", kind.name(), self.of(kind)));
            counts.collect::<Vec<_>>().join(", ")
        };
        let published = self.published();
        let (those, others) = (list(true), list(false));
        write!(f, "{published} against a publication ({those}); {others}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_has_its_name_and_its_own_count() {
        let mut counts = Counts::default();
        for (number, kind) in Kind::ALL.into_iter().enumerate() {
            assert_eq!(Kind::named(kind.name()), Some(kind));
            assert_eq!(
                kind as usize, number,
                "the order of `ALL` is that of the counts"
            );
            for _ in 0..=number {
                counts.add(kind);
            }
        }
        assert_eq!(Kind::named("published"), None);
        assert_eq!(
            counts.to_string(),
            "6 against a publication (worked example 1, table 2, rule 3); \
             common practice 4, mathematics 5, from memory 6"
        );
        counts.add_all(counts);
        assert_eq!((counts.of(Kind::Rule), counts.published()), (6, 12));
    }
}
