//! What was said, for people to read: pages of the log by number, day, mark, person, machine, kind, verdict or words.

use std::fmt::Display;
use std::path::{Path, PathBuf};
use std::str::FromStr;
use std::sync::Arc;
use std::time::Duration;

use contract::{IntoParams, ToSchema};
use day::entry::{Body, Entry};
use day::state::State;
use day::time::Time;
use earthwork::tolerance::Verdict;
use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize};
use show::review::told::{Told, WhoTold, told};
use show::tell::tell;
use unicode_normalization::UnicodeNormalization as _;
use unicode_normalization::char::is_combining_mark;
use words::{Language, Text};

use crate::days::{self, DayError, Days, KeptDay};
use crate::publish::Publish;
use crate::store::index::{By, Index, Linked};
use crate::store::{Head, IndexNow, StoreError, log};

/// Lines in one page at most.
const PAGE_MAX: usize = 1_000;
/// Lines in one page when nobody says how many.
const PAGE_USUAL: usize = 200;
/// Entries that are looked at for one page at most: a search through a season goes on from where it stopped.
const LOOKED_MAX: usize = 20_000;
/// The index follows the log by less than this, or not at all.
const INDEX_PATIENCE: Duration = Duration::from_secs(2);

/// The log, for readers; clones share it.
#[derive(Clone, Debug)]
pub struct Past {
    index: IndexNow,
    publish: Publish,
    folder: PathBuf,
    days: Arc<Days>,
}

/// What is looked for. Newest first with `before`, else oldest first.
#[derive(Clone, Debug, Default, PartialEq, Eq, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
#[serde(deny_unknown_fields)]
pub struct Sought {
    /// Only entries behind this one.
    #[serde(default, deserialize_with = "given")]
    pub after: Option<u64>,
    /// Only entries before this one, newest first; 0 for the newest of all.
    #[serde(default, deserialize_with = "given")]
    pub before: Option<u64>,
    /// How many lines; 200 when left out, 1000 at most.
    #[serde(default, deserialize_with = "given")]
    pub limit: Option<usize>,
    /// Only about this mark.
    #[serde(default, deserialize_with = "given")]
    pub mark: Option<String>,
    /// Only by this person.
    #[serde(default, deserialize_with = "given")]
    pub person: Option<String>,
    /// Only about this machine.
    #[serde(default, deserialize_with = "given")]
    pub machine: Option<String>,
    /// Only of this kind.
    #[serde(default, deserialize_with = "given")]
    pub kind: Option<String>,
    /// Only made from this moment on, in milliseconds since 1970.
    #[serde(default, deserialize_with = "given")]
    pub from: Option<i64>,
    /// Only made up to this moment.
    #[serde(default, deserialize_with = "given")]
    pub to: Option<i64>,
    /// Only of this day.
    #[serde(default, deserialize_with = "given")]
    pub day: Option<String>,
    /// Only readings and calls with this verdict.
    #[serde(default)]
    pub verdict: Option<Verdict>,
    /// Only with all of these words, in either language; capitals and accents do not matter.
    #[serde(default, deserialize_with = "given")]
    pub words: Option<String>,
}

/// What was filled in: a field that a page left empty counts as left out.
fn given<'de, D, T>(deserializer: D) -> Result<Option<T>, D::Error>
where
    D: Deserializer<'de>,
    T: FromStr<Err: Display>,
{
    let text = String::deserialize(deserializer)?;
    if text.is_empty() {
        return Ok(None);
    }
    text.parse()
        .map(Some)
        .map_err(|error| D::Error::custom(format!("“{text}”: {error}")))
}

/// An entry as people read it.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LogLine {
    /// Its number.
    pub seq: u64,
    /// When the hub took it.
    pub at: Time,
    /// When it was made.
    pub made_at: Time,
    /// Who said it.
    pub by: String,
    /// With which phone.
    pub device: String,
    /// Its kind.
    pub kind: String,
    /// The machine that it is about.
    #[schema(required)]
    pub machine: Option<String>,
    /// The mark that it is about.
    #[schema(required)]
    pub mark: Option<String>,
    /// The verdict of a reading or a call.
    #[schema(required)]
    pub verdict: Option<Verdict>,
    /// The sentence.
    #[serde(flatten)]
    pub text: Text,
}

/// A page of the log.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LogPage {
    /// Its lines.
    pub lines: Vec<LogLine>,
    /// The last entry of the whole log.
    pub head: u64,
    /// The entry at which looking stopped before the page was full, when there is more: ask on `before` or `after` it.
    #[schema(required)]
    pub stopped: Option<u64>,
}

/// One entry with its proof.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LogEntry {
    /// The entry.
    pub entry: Entry,
    /// The hash that it follows.
    pub prev: String,
    /// Its hash.
    pub hash: String,
}

impl LogLine {
    /// The line of an entry.
    pub fn of(entry: &Entry) -> Self {
        let told = tell(entry);
        Self {
            seq: entry.seq,
            at: entry.at,
            made_at: entry.made_at,
            by: entry.by.person.clone(),
            device: entry.by.device.clone(),
            kind: entry.body.kind().to_owned(),
            machine: told.machine,
            mark: told.mark,
            verdict: verdict(&entry.body),
            text: told.text,
        }
    }

    /// Whether all of these words stand in it.
    fn says(&self, words: &str) -> bool {
        let said = Language::ALL.map(|language| self.text.of(language));
        let said = plain(&format!("{}\n{}", self.by, said.join("\n")));
        plain(words)
            .split_whitespace()
            .all(|word| said.contains(word))
    }

    fn fits(&self, sought: &Sought) -> bool {
        let fits = |want: &Option<String>, have: Option<&str>| match want {
            Some(want) => have == Some(want.as_str()),
            None => true,
        };
        fits(&sought.mark, self.mark.as_deref())
            && fits(&sought.machine, self.machine.as_deref())
            && fits(&sought.person, Some(&self.by))
            && fits(&sought.kind, Some(&self.kind))
            && sought.from.is_none_or(|from| self.made_at.0 >= from)
            && sought.to.is_none_or(|to| self.made_at.0 <= to)
            && sought.verdict.is_none_or(|want| self.verdict == Some(want))
            && sought.words.as_ref().is_none_or(|words| self.says(words))
    }
}

/// The verdict of a reading or a measured call.
fn verdict(body: &Body) -> Option<Verdict> {
    let reading = match body {
        Body::ReadingTaken(b) => &b.reading,
        Body::ReadingAsked(b) => &b.reading,
        Body::ReadingLate(b) => &b.reading,
        Body::CallSent(b) => return b.message.verdict(),
        _ => return None,
    };
    reading.judged.as_ref().map(|judged| judged.verdict)
}

/// Small letters without their accents: `LÍNEA` is found as `linea`.
fn plain(text: &str) -> String {
    text.nfd()
        .filter(|letter| !is_combining_mark(*letter))
        .flat_map(char::to_lowercase)
        .collect()
}

type Numbers = Box<dyn Iterator<Item = Result<u64, StoreError>>>;

impl Past {
    /// A reader of the log in a data folder.
    pub fn new(index: IndexNow, publish: Publish, folder: &Path) -> Self {
        Self {
            index,
            publish,
            folder: folder.to_owned(),
            days: Arc::default(),
        }
    }

    /// The data folder.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Waits until everything that is kept can be found; gives the last entry.
    pub async fn head(&self) -> u64 {
        let head = self.publish.pulse().head;
        let mut indexed = self.publish.watch_indexed();
        let caught_up = indexed.wait_for(|seq| *seq >= head);
        // An index that has failed is never caught up: what it knows is shown.
        let _ = tokio::time::timeout(INDEX_PATIENCE, caught_up).await;
        head
    }

    /// Looks at a day, the newest when none is named, as far as it is kept.
    ///
    /// # Errors
    /// [`DayError`] when there is no such day or the log does not prove itself.
    pub fn look<T>(
        &self,
        name: Option<&str>,
        see: impl FnOnce(&KeptDay) -> T,
    ) -> Result<T, DayError> {
        let put_by =
            |first, prev: &str| State::read(&self.index.get().ok()?.opening(first, prev).ok()??);
        let head = self.publish.pulse().head;
        self.days.look(&self.folder, name, head, put_by, see)
    }

    /// Who told a machine to dig near a place, day by day, and the end of the last day that was looked at.
    ///
    /// # Errors
    /// [`DayError`] when the log does not prove itself.
    pub fn told(&self, asked: &WhoTold) -> Result<(Told, Head), DayError> {
        let head = self.publish.pulse().head;
        let mut end = Head {
            seq: head,
            hash: String::new(),
        };
        let mut pages = Vec::new();
        for (name, from, to) in days::between(&self.folder, asked.from, asked.to)? {
            let asked = WhoTold {
                from,
                to,
                ..asked.clone()
            };
            let (page, last) =
                self.look(Some(&name), |day| (told(&day.folded(), &asked), day.head()))?;
            pages.extend(page);
            end = last;
        }
        let told = Told {
            asked: asked.clone(),
            days: pages,
        };
        Ok((told, end))
    }

    /// A page of the log, up to `head`.
    ///
    /// # Errors
    /// [`StoreError`] when it can't be read.
    pub fn page(&self, sought: &Sought, head: u64) -> Result<LogPage, DayError> {
        let index = &self.index.get()?;
        let (sought, last) = &self.within_day(sought, head)?;
        let limit = sought.limit.unwrap_or(PAGE_USUAL).clamp(1, PAGE_MAX);
        let mut lines = Vec::new();
        let mut stopped = None;
        for (looked, seq) in numbers(index, sought, *last).enumerate() {
            let seq = seq?;
            if looked == LOOKED_MAX {
                stopped = Some(if sought.before.is_some() {
                    seq + 1
                } else {
                    seq - 1
                });
                break;
            }
            if sought.before.is_none() && seq > *last {
                break;
            }
            let Some(linked) = self.entry(seq)? else {
                continue;
            };
            let line = LogLine::of(&linked.entry);
            if line.seq <= sought.after.unwrap_or(0) && sought.before.is_some() {
                break;
            }
            if line.fits(sought) {
                lines.push(line);
            }
            if lines.len() == limit {
                break;
            }
        }
        Ok(LogPage {
            lines,
            head,
            stopped,
        })
    }

    /// The same search with a day's entries as its bounds, and the last entry to look at.
    fn within_day(&self, sought: &Sought, head: u64) -> Result<(Sought, u64), DayError> {
        let mut sought = sought.clone();
        let Some(day) = &sought.day else {
            return Ok((sought, head));
        };
        let (first, next) = days::span(&self.folder, day)?;
        let last = next.map_or(head, |next| next - 1);
        sought.after = Some(sought.after.unwrap_or(0).max(first - 1));
        sought.before = match sought.before {
            Some(0) => Some(last + 1),
            Some(before) => Some(before.min(last + 1)),
            None => None,
        };
        Ok((sought, last))
    }

    /// One entry with its proof.
    ///
    /// # Errors
    /// [`StoreError`] when it can't be read.
    pub fn entry(&self, seq: u64) -> Result<Option<Linked>, StoreError> {
        let found = self.index.get().and_then(|index| index.entry(seq));
        match found {
            Ok(None) if seq > self.publish.pulse().head => Ok(None),
            Ok(Some(linked)) if linked.entry.seq == seq => Ok(Some(linked)),
            // What the index does not know, or knows wrongly, the log itself answers.
            _ => Ok(log::find(&self.folder.join("log"), seq)?.map(Linked::of)),
        }
    }
}

/// The numbers to look at: by the name that is rarest as a rule, else one after the other.
fn numbers(index: &Index, sought: &Sought, head: u64) -> Numbers {
    let names = [
        (By::Mark, &sought.mark),
        (By::Machine, &sought.machine),
        (By::Person, &sought.person),
        (By::Kind, &sought.kind),
    ];
    let by = names
        .into_iter()
        .find_map(|(by, name)| Some((by, name.clone()?)));
    let after = sought.after.unwrap_or(0);
    match (sought.before, by) {
        (Some(before), by) => {
            let before = if before == 0 {
                head + 1
            } else {
                before.min(head + 1)
            };
            match by {
                Some((by, name)) => Box::new(index.named(by, &name, before)),
                None => Box::new((1..before).rev().map(Ok)),
            }
        }
        (None, Some((by, name))) => Box::new(index.named_after(by, &name, after)),
        (None, None) => Box::new((after.saturating_add(1)..=head).map(Ok)),
    }
}
