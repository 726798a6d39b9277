//! Days of the log for those who look back: each is read once, proven line by line, and kept with states along the way, so
//! that any moment of it is a short fold away.

use std::fs::File;
use std::io::{BufReader, Seek as _, SeekFrom};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use day::chain::{Walk, open};
use day::entry::{Body, Entry};
use day::state::State;
use day::time::Time;
use show::review::Day;
use thiserror::Error;

use crate::bounded;
use crate::store::photos::Photos;
use crate::store::{Head, StoreError, log};

/// Entries between two states that are kept along a day.
const STRIDE: usize = 128;
/// More states than this are thinned: a long day keeps every second one.
const MOST_STATES: usize = 96;

/// Why a day can't be looked at.
#[derive(Debug, Error)]
pub enum DayError {
    /// The log can't be read or does not prove itself.
    #[error("{0}")]
    Store(#[from] StoreError),
    /// There is no such day.
    #[error("The log has no day {day}. It has: {known}.")]
    NoSuchDay {
        /// What was asked for.
        day: String,
        /// The days that there are.
        known: String,
    },
    /// There is nothing.
    #[error("{} holds no log: there is nothing to look back at.", .0.display())]
    Nothing(PathBuf),
}

/// A day of the log.
#[derive(Debug)]
pub struct KeptDay {
    name: String,
    path: PathBuf,
    /// The bytes that are read.
    length: u64,
    walk: Walk,
    opening: State,
    entries: Vec<Entry>,
    /// How many entries lie between two states.
    stride: usize,
    /// The state after each `stride` entries.
    states: Vec<State>,
    newest: State,
    /// What later days amended of it, and the entry up to which they were read.
    later: (Vec<Entry>, u64),
}

/// The names of the days of a folder, in the order of the log, each with its file.
fn files(folder: &Path) -> Result<Vec<(String, PathBuf)>, DayError> {
    let logs = folder.join("log");
    if !logs.is_dir() {
        return Err(DayError::Nothing(folder.to_owned()));
    }
    let files = log::paths(&logs)?.into_iter().map(|path| {
        let stem = path.file_stem().unwrap_or_default().to_string_lossy();
        let name = stem.split_once('-').map_or("", |(_, name)| name).to_owned();
        (name, path)
    });
    Ok(files.collect())
}

/// The names of the days, oldest first.
///
/// # Errors
/// [`DayError`] when there is no log.
pub fn names(folder: &Path) -> Result<Vec<String>, DayError> {
    Ok(files(folder)?.into_iter().map(|(name, _)| name).collect())
}

/// The entries of a day: its first, and the first of the day behind it; none behind the newest.
///
/// # Errors
/// [`DayError`] when there is no such day, or a day's first line is damaged.
pub fn span(folder: &Path, day: &str) -> Result<(u64, Option<u64>), DayError> {
    let files = files(folder)?;
    let at = files.iter().position(|(name, _)| name == day);
    let at = at.ok_or_else(|| no_such(day, &files))?;
    let first = |at: usize| files.get(at).map(|(_, path)| first_of(path));
    let next = first(at + 1).transpose()?.map(|(entry, _)| entry.seq);
    let (entry, _) = first_of(&files[at].1)?;
    Ok((entry.seq, next))
}

/// The days that a stretch of time touches, oldest first, each with its own part of it. A day lasts until the next is opened.
///
/// # Errors
/// [`DayError`] when there is no log, or a day's first line is damaged.
pub fn between(folder: &Path, from: Time, to: Time) -> Result<Vec<(String, Time, Time)>, DayError> {
    let mut begun = Vec::new();
    for (name, path) in files(folder)? {
        begun.push((name, first_of(&path)?.0.at));
    }
    let ends = begun.iter().skip(1).map(|(_, at)| Some(*at));
    let ends: Vec<Option<Time>> = ends.chain([None]).collect();
    let days = begun.into_iter().zip(ends);
    let touched = days.filter(|((_, at), end)| *at <= to && end.is_none_or(|end| from < end));
    Ok(touched
        .map(|((name, at), end)| {
            let last = end.map_or(to, |end| to.min(end.plus_ms(-1)));
            (name, from.max(at), last)
        })
        .collect())
}

impl KeptDay {
    /// Reads a day up to an entry, the newest day when none is named. `put_by` gives the state that a day opened with, by
    /// its first entry and the hash before that; without one the days before are folded.
    ///
    /// # Errors
    /// [`DayError`] when there is no such day or the log does not prove itself.
    pub fn read(
        folder: &Path,
        name: Option<&str>,
        until: u64,
        put_by: impl Fn(u64, &str) -> Option<State>,
    ) -> Result<Self, DayError> {
        let files = files(folder)?;
        let wanted = match name {
            Some(name) => files.iter().rposition(|(day, _)| day == name),
            None => files.len().checked_sub(1),
        };
        let Some(at) = wanted else {
            return Err(match name {
                None => DayError::Nothing(folder.to_owned()),
                Some(day) => no_such(day, &files),
            });
        };
        let (name, path) = files[at].clone();
        let (first, prev) = first_of(&path)?;
        let first = first.seq;
        let opening = match put_by(first, &prev).filter(|state| state.seq + 1 == first) {
            Some(state) => state,
            None => fold_before(&files[..at])?,
        };
        let mut day = Self {
            name,
            path,
            length: 0,
            walk: Walk::from_head(first.saturating_sub(1), prev),
            newest: opening.clone(),
            opening,
            entries: Vec::new(),
            stride: STRIDE,
            states: Vec::new(),
            later: (Vec::new(), 0),
        };
        day.go_on(until)?;
        day.read_later(&files[at + 1..], until)?;
        Ok(day)
    }

    /// Reads which of its entries later days amended.
    fn read_later(&mut self, files: &[(String, PathBuf)], until: u64) -> Result<(), DayError> {
        let Some(first) = self.entries.first().map(|entry| entry.seq) else {
            return Ok(());
        };
        if files.is_empty() || self.later.1 >= until {
            return Ok(());
        }
        let own = first..=self.walk.seq;
        let mut later = Vec::new();
        for (_, path) in files {
            let file = File::open(path).map_err(|source| folder_error(path, source))?;
            let mut lines = BufReader::new(file);
            while let Some(raw) =
                bounded::line(&mut lines).map_err(|source| folder_error(path, source))?
            {
                // Few lines are amendments: the others are not taken apart.
                if !raw.contains("day_amended") {
                    continue;
                }
                let (entry, ..) = opened(path, &raw)?;
                let of_this =
                    matches!(&entry.body, Body::DayAmended(one) if own.contains(&one.entry));
                if of_this && entry.seq <= until {
                    later.push(entry);
                }
            }
        }
        self.later = (later, until);
        Ok(())
    }

    /// Reads what was written since, up to an entry.
    ///
    /// # Errors
    /// [`DayError`] when it does not prove itself.
    pub fn go_on(&mut self, until: u64) -> Result<(), DayError> {
        let mut file = File::open(&self.path).map_err(|source| folder_error(&self.path, source))?;
        file.seek(SeekFrom::Start(self.length))
            .map_err(|source| folder_error(&self.path, source))?;
        let mut lines = BufReader::new(file);
        // Nothing behind `until` is looked at: the writer may be in the middle of it.
        while self.walk.seq < until {
            let read = bounded::line(&mut lines);
            let Some(raw) = read.map_err(|source| folder_error(&self.path, source))? else {
                break;
            };
            let line = raw.strip_suffix(' ').unwrap_or(&raw);
            let entry = self.walk.step(line).map_err(|source| StoreError::Damaged {
                file: self.path.clone(),
                source,
            })?;
            self.length += raw.len() as u64 + 1;
            day::apply(&mut self.newest, &entry);
            self.entries.push(entry);
            if self.entries.len().is_multiple_of(self.stride) {
                self.states.push(self.newest.clone());
                self.thin();
            }
        }
        Ok(())
    }

    fn thin(&mut self) {
        if self.states.len() <= MOST_STATES {
            return;
        }
        let mut number = 0;
        self.states.retain(|_| {
            number += 1;
            number % 2 == 0
        });
        self.stride *= 2;
    }

    /// Its name.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its last entry, with the head of the chain there.
    pub fn head(&self) -> Head {
        Head {
            seq: self.walk.seq,
            hash: self.walk.hash.clone(),
        }
    }

    /// The photos of its data folder.
    pub fn photos(&self) -> Photos {
        // A day's file stands in the folder's `log`.
        let data = self.path.parent().and_then(Path::parent);
        Photos::of(data.unwrap_or(&self.path))
    }

    /// Its entries.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The state after its last entry.
    pub fn newest(&self) -> &State {
        &self.newest
    }

    /// Its fold, for the review.
    pub fn folded(&self) -> Day<'_> {
        Day::fold(self.opening.clone(), &self.entries).amended_by(&self.later.0)
    }

    /// The entry in force at a moment: the last that the hub took by then; the first when the day had not begun.
    pub fn seq_at(&self, at: Time) -> u64 {
        let many = self.entries.partition_point(|entry| entry.at <= at);
        let number = many.max(1) - 1;
        self.entries.get(number).map_or(0, |entry| entry.seq)
    }

    /// The entry and the state after it; none outside of the day. Folded from the nearest state before it.
    pub fn at(&self, seq: u64) -> Option<(&Entry, State)> {
        let first = self.entries.first()?.seq;
        let number = usize::try_from(seq.checked_sub(first)?).ok()?;
        let entry = self.entries.get(number)?;
        let kept = (number + 1) / self.stride;
        let mut state = match kept.checked_sub(1) {
            Some(kept) => self.states[kept].clone(),
            None => self.opening.clone(),
        };
        for entry in &self.entries[kept * self.stride..=number] {
            day::apply(&mut state, entry);
        }
        Some((entry, state))
    }
}

/// A line of the log, taken apart and held against its own hash.
fn opened(path: &Path, raw: &str) -> Result<(Entry, String, String), DayError> {
    let line = raw.strip_suffix(' ').unwrap_or(raw);
    let opened = open(line, 1).map_err(|source| StoreError::Damaged {
        file: path.to_owned(),
        source,
    })?;
    Ok(opened)
}

/// The first entry of a file, and the hash that it follows.
fn first_of(path: &Path) -> Result<(Entry, String), DayError> {
    let file = File::open(path).map_err(|source| folder_error(path, source))?;
    let line = bounded::line(&mut BufReader::new(file))
        .map_err(|source| folder_error(path, source))?
        .unwrap_or_default();
    let (entry, prev, _) = opened(path, &line)?;
    Ok((entry, prev))
}

/// There is no such day; there are these.
fn no_such(day: &str, files: &[(String, PathBuf)]) -> DayError {
    let known: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
    DayError::NoSuchDay {
        day: day.to_owned(),
        known: known.join(", "),
    }
}

/// The state that some days add up to, from the first entry on.
fn fold_before(files: &[(String, PathBuf)]) -> Result<State, DayError> {
    let mut state = State::default();
    let mut walk = Walk::default();
    for (_, path) in files {
        let file = File::open(path).map_err(|source| folder_error(path, source))?;
        let mut lines = BufReader::new(file);
        while let Some(raw) =
            bounded::line(&mut lines).map_err(|source| folder_error(path, source))?
        {
            let line = raw.strip_suffix(' ').unwrap_or(&raw);
            let entry = walk.step(line).map_err(|source| StoreError::Damaged {
                file: path.clone(),
                source,
            })?;
            day::apply(&mut state, &entry);
        }
    }
    Ok(state)
}

fn folder_error(path: &Path, source: std::io::Error) -> StoreError {
    StoreError::Folder {
        path: path.to_owned(),
        source,
    }
}

/// The day that was looked at last, so that the next look need not read it again.
#[derive(Debug, Default)]
pub struct Days(Mutex<Option<KeptDay>>);

impl Days {
    /// Looks at a day, the newest when none is named, up to an entry of the log.
    ///
    /// # Errors
    /// [`DayError`].
    pub fn look<T>(
        &self,
        folder: &Path,
        name: Option<&str>,
        until: u64,
        put_by: impl Fn(u64, &str) -> Option<State>,
        see: impl FnOnce(&KeptDay) -> T,
    ) -> Result<T, DayError> {
        let newest = names(folder)?.pop();
        let wanted = name.or(newest.as_deref());
        let mut last = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        // A day that failed half-way is read anew.
        let known = last.take().filter(|day| Some(day.name.as_str()) == wanted);
        let day = match known {
            Some(mut day) => {
                day.go_on(until)?;
                let files = files(folder)?;
                let at = files.iter().rposition(|(name, _)| *name == day.name);
                day.read_later(at.map_or(&[], |at| &files[at + 1..]), until)?;
                day
            }
            None => KeptDay::read(folder, name, until, put_by)?,
        };
        Ok(see(last.insert(day)))
    }
}
