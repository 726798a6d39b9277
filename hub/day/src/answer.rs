//! The answer to a request, derived from the entries that carry its key: so a repeat, and a restart, answer alike.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::level::Check;
use earthwork::slip::Slip;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::entry::{Body, Entry};
use crate::said::reading::{LateReason, Question, SpotReason};

/// What a request came to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Answer {
    /// The first entry made for it; 0 when there was nothing left to do.
    pub first: u64,
    /// The last entry made for it; 0 when there was nothing left to do.
    pub last: u64,
    /// What came of it.
    pub outcome: Outcome,
}

/// What came of a request.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Outcome {
    /// Done, and nothing more to say.
    Done,
    /// A call went out.
    Called {
        /// Its number.
        call: u64,
        /// The machine.
        machine: String,
        /// Its line.
        #[serde(flatten)]
        text: Text,
        /// The verdict; none for a word by eye.
        verdict: Option<Verdict>,
    },
    /// The reading was not shown: a question comes first. Send it again with `sure` set to `reading`,
    /// or send what was really meant.
    Asked {
        /// The entry of the question.
        reading: u64,
        /// The question.
        question: Question,
        /// Measured − target as it came, when there is a target.
        dev: Option<Length>,
    },
    /// Two shots are too close to call: the supervisor rules.
    NeedsRuling {
        /// The mean difference.
        dev: Length,
    },
    /// Kept from paper as what was measured then; no call went out.
    FromPaper {
        /// The mean difference.
        dev: Length,
        /// How it was judged.
        verdict: Verdict,
    },
    /// Kept as a spot elevation, without a call.
    Spot {
        /// The elevation.
        elevation: Length,
        /// Why there is no call.
        why: SpotReason,
    },
    /// Kept in the log, never shown.
    Late {
        /// Why.
        why: LateReason,
    },
    /// A set-up was made or restated: a second benchmark is owed.
    SetUp {
        /// Its name.
        set_up: String,
        /// Height of instrument.
        height: Length,
    },
    /// A set-up may be used.
    Proven {
        /// Its name.
        set_up: String,
    },
    /// A check shot was judged.
    Checked {
        /// (HI − rod) − benchmark.
        residual: Length,
        /// Good, again, failed.
        check: Check,
        /// Slips that would explain a failure: asked, never applied.
        slips: Vec<Slip>,
        /// Whether the set-up may be used now.
        usable: bool,
    },
    /// A phone came in.
    Joined {
        /// The device.
        device: String,
    },
    /// Somebody is in.
    Entered {
        /// The operator had agreed; without it: get out, get eye contact.
        confirmed: bool,
    },
    /// Not released: somebody may be in.
    StillIn {
        /// Who.
        people: Vec<String>,
    },
}

impl Answer {
    /// The answer when nothing was left to do.
    pub fn nothing() -> Self {
        Self {
            first: 0,
            last: 0,
            outcome: Outcome::Done,
        }
    }

    /// An answer whose first entry is known, nothing more.
    pub(crate) fn begun(first: u64) -> Self {
        Self {
            first,
            last: first,
            outcome: Outcome::Done,
        }
    }

    /// Takes the next entry of the same request. What says more stays: a call more than a bare reading.
    pub(crate) fn absorb(&mut self, entry: &Entry) {
        self.last = entry.seq;
        let said = match &entry.body {
            Body::Joined(b) => Outcome::Joined {
                device: b.device.clone(),
            },
            // In several keep-outs at once: agreed to by all, or not agreed to.
            Body::PersonIn(b) => Outcome::Entered {
                confirmed: b.confirmed
                    && !matches!(self.outcome, Outcome::Entered { confirmed: false }),
            },
            Body::ReleaseRefused(b) => Outcome::StillIn {
                people: b.people.clone(),
            },
            Body::LaserSetUp(b) => Outcome::SetUp {
                set_up: b.set_up.clone(),
                height: b.basis.height,
            },
            Body::SetUpRestated(b) => Outcome::SetUp {
                set_up: b.set_up.clone(),
                height: b.basis.height,
            },
            Body::CheckShot(b) => Outcome::Checked {
                residual: b.residual,
                check: b.check,
                slips: b.slips.clone(),
                usable: b.usable,
            },
            Body::SetUpProven(b) if matches!(self.outcome, Outcome::Done) => Outcome::Proven {
                set_up: b.set_up.clone(),
            },
            Body::SetUpProven(_) => {
                if let Outcome::Checked { usable, .. } = &mut self.outcome {
                    *usable = true;
                }
                return;
            }
            Body::SetUpDoubted(_) => {
                if let Outcome::Checked { usable, .. } = &mut self.outcome {
                    *usable = false;
                }
                return;
            }
            Body::ReadingAsked(b) => Outcome::Asked {
                reading: entry.seq,
                question: b.question.clone(),
                dev: b.reading.judged.as_ref().map(|judged| judged.dev),
            },
            Body::ReadingLate(b) => Outcome::Late { why: b.why.clone() },
            Body::ReadingTaken(b) => match (b.spot, &b.reading.judged) {
                (Some(why), _) => Outcome::Spot {
                    elevation: b.reading.elevation,
                    why,
                },
                (None, Some(judged)) if judged.needs_ruling => {
                    Outcome::NeedsRuling { dev: judged.mean }
                }
                (None, Some(judged)) if b.reading.paper.is_some() => Outcome::FromPaper {
                    dev: judged.mean,
                    verdict: judged.verdict,
                },
                _ => return,
            },
            Body::CallSent(b) => Outcome::Called {
                call: entry.seq,
                machine: b.machine.clone(),
                text: b.text.clone(),
                verdict: b.message.verdict(),
            },
            _ => return,
        };
        self.outcome = said;
    }
}

/// The answer from the entries of one request.
pub fn of(entries: &[Entry]) -> Answer {
    let Some(first) = entries.first() else {
        return Answer::nothing();
    };
    let mut answer = Answer::begun(first.seq);
    for entry in entries {
        answer.absorb(entry);
    }
    answer
}
