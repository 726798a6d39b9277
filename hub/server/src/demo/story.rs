//! The story as it is played: rows that are commands and rows that are screens coming and going.

use day::asked::{Command, Role};
use serde::Deserialize;
use words::Language;

use super::DemoError;

/// Made by `fixtures/demo-day/make.py`.
const ROWS: &str = include_str!("../../../../fixtures/demo-day/rows.jsonl");

/// One row of the story.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Row {
    /// Its number.
    #[serde(rename = "row")]
    pub(super) number: u32,
    /// When, on the wall: `07:31:00`.
    at: String,
    /// Who; `hub` for what the hub does by itself, `nobody` for what nobody notices.
    pub(super) who: String,
    /// What: the kind of a command, `join`, `lose_screen`, or what the hub does.
    pub(super) what: String,
    /// The command.
    #[serde(default)]
    pub(super) command: Option<Command>,
    /// What several people press, besides the command or in its place.
    #[serde(default)]
    pub(super) parts: Vec<Part>,
    /// The machine that it is about.
    #[serde(default)]
    pub(super) machine: Option<String>,
    /// The mark that it is about: for whoever reads the story.
    #[serde(default, rename = "mark")]
    _mark: Option<String>,
    /// How many seconds later the operator's page has shown the call.
    #[serde(default)]
    pub(super) shown_s: Option<i64>,
    /// How many seconds later the operator presses GOT IT.
    #[serde(default)]
    pub(super) got_s: Option<i64>,
    /// Who joins as what, or which screen goes dark.
    #[serde(default)]
    pub(super) screen: Option<ScreenRow>,
    /// When it was really made, when it arrives late.
    #[serde(default)]
    made_at: Option<String>,
    /// A word about it.
    #[serde(default, rename = "note")]
    _note: String,
}

/// One press of a row that is several.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Part {
    /// When.
    at: String,
    /// Who.
    pub(super) who: String,
    /// What.
    pub(super) command: Command,
    /// When it was really pressed, when it arrives late.
    #[serde(default)]
    made_at: Option<String>,
}

impl Part {
    /// When it was pressed, in milliseconds since midnight, when that is not when it is sent.
    pub(super) fn made_at(&self) -> Option<i64> {
        self.made_at.as_deref().and_then(ms_of_day)
    }
}

/// A phone that joins.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ScreenRow {
    /// As what.
    #[serde(default)]
    pub(super) roles: Vec<Role>,
    /// In which language.
    #[serde(default)]
    pub(super) language: Option<Language>,
    /// Which phone, as the story calls it.
    #[serde(default, rename = "screen")]
    _name: Option<String>,
}

/// One thing to do at one moment.
#[derive(Clone, Debug)]
pub(super) struct Step<'a> {
    /// Milliseconds since midnight on the wall.
    pub(super) at: i64,
    /// The row that it belongs to.
    pub(super) row: &'a Row,
    /// What is done.
    pub(super) act: Act,
}

/// What is done at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Act {
    /// The row itself.
    Row,
    /// One of its presses.
    Part(usize),
    /// Its call has been on the operator's page for a second.
    Shown,
    /// The operator presses GOT IT.
    Got,
}

impl Step<'_> {
    /// The key under which the hub knows it: from the row's number, so that a second try is no second entry.
    pub(super) fn key(&self) -> String {
        let row = self.row.number;
        match self.act {
            Act::Row => format!("demo-{row:03}"),
            Act::Part(nth) => format!("demo-{row:03}-part-{nth}"),
            Act::Shown => format!("demo-{row:03}-shown"),
            Act::Got => format!("demo-{row:03}-got"),
        }
    }
}

impl Row {
    /// When it was made, in milliseconds since midnight, when that is not when it is sent.
    pub(super) fn made_at(&self) -> Option<i64> {
        self.made_at.as_deref().and_then(ms_of_day)
    }

    /// Whether nobody on the crew does it.
    pub(super) fn is_nobodys(&self) -> bool {
        matches!(self.who.as_str(), "hub" | "nobody") || self.what == "open_day"
    }

    fn is_known(&self) -> bool {
        self.command.is_some()
            || !self.parts.is_empty()
            || matches!(
                self.what.as_str(),
                "join" | "lose_screen" | "lose_link" | "find_link"
            )
            || self.is_nobodys()
    }
}

/// All rows, in order.
pub(super) fn rows() -> Result<Vec<Row>, DemoError> {
    let mut rows = Vec::new();
    for (line, text) in ROWS.lines().enumerate() {
        let wrong = |reason: String| DemoError::Story {
            row: line + 1,
            reason,
        };
        let row: Row = serde_json::from_str(text).map_err(|error| wrong(error.to_string()))?;
        if ms_of_day(&row.at).is_none() {
            return Err(wrong(format!("“{}” is no time of day", row.at)));
        }
        if !row.is_known() {
            return Err(wrong(format!("nobody knows how to {}", row.what)));
        }
        rows.push(row);
    }
    Ok(rows)
}

/// Everything that is done, in the order of its moments.
pub(super) fn steps(rows: &[Row]) -> Vec<Step<'_>> {
    let mut steps = Vec::new();
    for row in rows.iter().filter(|row| !row.is_nobodys()) {
        let at = ms_of_day(&row.at).unwrap_or_default();
        let step = |act, seconds: i64| Step {
            at: at + seconds * 1_000,
            row,
            act,
        };
        steps.push(step(Act::Row, 0));
        for (nth, part) in row.parts.iter().enumerate() {
            steps.push(Step {
                at: ms_of_day(&part.at).unwrap_or(at),
                row,
                act: Act::Part(nth),
            });
        }
        steps.extend(row.shown_s.map(|seconds| step(Act::Shown, seconds)));
        steps.extend(row.got_s.map(|seconds| step(Act::Got, seconds)));
    }
    steps.sort_by_key(|step| (step.at, step.row.number, step.act));
    steps
}

/// `07:31:00` in milliseconds since midnight.
pub(super) fn ms_of_day(text: &str) -> Option<i64> {
    let mut parts = text.split(':').map(str::parse::<i64>);
    let (Some(Ok(hours)), Some(Ok(minutes)), Some(Ok(seconds)), None) =
        (parts.next(), parts.next(), parts.next(), parts.next())
    else {
        return None;
    };
    Some(((hours * 60 + minutes) * 60 + seconds) * 1_000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_a_command_or_known_by_name() {
        let rows = rows().unwrap();
        // Numbers stay a row's name for ever: one that came later stands in its time with a free number.
        let mut numbers: Vec<u32> = rows.iter().map(|row| row.number).collect();
        numbers.sort_unstable();
        assert!(numbers.windows(2).all(|pair| pair[0] < pair[1]));
        for row in &rows {
            if let Some(command) = &row.command {
                let kind = serde_json::to_value(command).unwrap()["kind"].clone();
                assert_eq!(kind, row.what.as_str(), "row {}", row.number);
            }
        }
    }

    #[test]
    fn steps_follow_their_moments_and_their_keys_differ() {
        let rows = rows().unwrap();
        let steps = steps(&rows);
        assert!(steps.windows(2).all(|pair| pair[0].at <= pair[1].at));
        let keys: std::collections::BTreeSet<String> = steps.iter().map(Step::key).collect();
        assert_eq!(keys.len(), steps.len());
        assert!(keys.iter().all(|key| (8..=64).contains(&key.len())));
    }

    #[test]
    fn a_time_of_day_is_three_numbers() {
        assert_eq!(ms_of_day("07:31:05"), Some(27_065_000));
        for bad in ["", "07:31", "07:31:xx", "1:2:3:4"] {
            assert_eq!(ms_of_day(bad), None, "{bad}");
        }
    }
}
