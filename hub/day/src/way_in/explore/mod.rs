//! Every state that a bounded crew, its screens and a bad network can reach, walked one by one.
//!
//! What was sent stays on its way for ever: it may arrive at any time, in any order, as often as it likes, or never. So loss,
//! repeats, reordering and delay are all there. Screens show something that was true at some moment, never going back.
//!
//! What is taken for granted of people, and nothing more:
//! - who goes in by the rules has seen the answer on their own phone; others go in as they like, also to the wrong machine;
//! - an operator who has held BUCKET DOWN moves the machine only when the cab's screen shows that nobody asks and nobody is in;
//! - a witness sees the person out, and tells them so: they ask anew before they go in again. One who is wrong is found out by the
//!   person's own phone, which says that OUT was said for them until they have answered: they are still in, or they are out.

mod crew;
mod hubs;
mod walk;

/// How large a crew is walked.
#[derive(Clone, Copy, Debug)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each walk turns one of them on"
)]
pub(super) struct Bounds {
    pub(super) people: u8,
    pub(super) machines: u8,
    /// Visits that each person may begin.
    pub(super) visits: u8,
    /// Whether people go in without an answer, and to the wrong machine.
    pub(super) unruly: bool,
    /// Whether operators put the bucket down without being asked, and say no.
    pub(super) moody: bool,
    /// Whether every place lies in the keep-outs of all machines, so that all of them are asked and all of them stand.
    pub(super) both: bool,
    /// Whether witnesses also say OUT for somebody who is in.
    pub(super) wrong: bool,
}

pub(super) const PEOPLE: [&str; 3] = ["RT", "JM", "HF"];
pub(super) const MACHINES: [&str; 2] = ["EX-1", "EX-2"];

/// A visit: whose, and which of theirs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Name {
    pub(super) person: u8,
    pub(super) nth: u8,
}

impl Name {
    pub(super) fn text(self) -> String {
        format!("{}{}", self.person, self.nth)
    }

    pub(super) fn of(text: &str) -> Self {
        let digits = text.as_bytes();
        Self {
            person: digits[0] - b'0',
            nth: digits[1] - b'0',
        }
    }

    pub(super) fn bit(self) -> u8 {
        1 << (self.person * 2 + self.nth)
    }

    pub(super) fn all(bits: u8) -> impl Iterator<Item = Self> {
        (0..8_u8)
            .filter(move |i| bits & (1 << i) != 0)
            .map(|i| Self {
                person: i / 2,
                nth: i % 2,
            })
    }
}

/// What is on its way to the hub.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Message {
    Ask(u8, Name),
    In(u8, Name),
    /// The same of every machine: the place lies in the keep-outs of all.
    AskAll(u8, Name),
    InAll(u8, Name),
    /// Another phone said OUT, and the person has seen that.
    Seen(u8, Name),
    Out(u8, Name),
    Withdraw(u8, Name),
    /// The visits that the operator saw, one bit each.
    Down(u8, u8),
    Refuse(u8, Name),
    Release(u8),
    Witness(u8, Name),
    /// Not sent by anybody: a day ends.
    NextDay,
}

impl Message {
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Ask(..) | Self::AskAll(..) => "ask",
            Self::In(..) | Self::InAll(..) => "in",
            Self::Seen(..) => "out is seen",
            Self::Out(..) => "out",
            Self::Withdraw(..) => "withdraw",
            Self::Down(..) => "bucket down",
            Self::Refuse(..) => "refuse",
            Self::Release(..) => "release",
            Self::Witness(..) => "out by witness",
            Self::NextDay => "next day",
        }
    }
}
