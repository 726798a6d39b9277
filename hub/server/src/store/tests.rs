//! The store's tests: what was kept, torn tails, damage; of the index in a file of their own.

use std::io::Write as _;

use day::asked::By;
use day::chain::{GENESIS, seal};
use day::entry::Body;
use day::said::codes::CodesRenewed;
use day::said::day::DayOpened;
use day::time::Time;

use super::*;

mod of_index;

/// Entries of `days` days with three more entries each, in the batches in which a writer would keep them.
fn kept(days: u64) -> Vec<Vec<Kept>> {
    let mut prev = GENESIS.to_owned();
    let mut seq = 0;
    let mut kept = |body: Body, more: bool, key: &str| {
        seq += 1;
        let entry = Entry {
            seq,
            at: Time(1_000 + i64::try_from(seq).unwrap()),
            made_at: Time(1_000),
            by: By::hub(),
            key: key.to_owned(),
            body,
        };
        let sealed = seal(&entry, &prev).unwrap();
        prev.clone_from(&sealed.hash);
        Kept {
            entry,
            sealed,
            more,
        }
    };
    let renewed = |generation| Body::CodesRenewed(CodesRenewed { generation });
    (1..=days)
        .flat_map(|day| {
            let opened = Body::DayOpened(DayOpened::of(&format!("day {day}")));
            let key = format!("request-{day}");
            [
                vec![kept(opened, false, "")],
                vec![kept(renewed(1), true, &key), kept(renewed(2), false, &key)],
                vec![kept(renewed(3), false, "")],
            ]
        })
        .collect()
}

struct Yard {
    folder: tempfile::TempDir,
}

impl Yard {
    /// A data folder in which two days were kept and indexed.
    fn two_days() -> Self {
        let yard = Self {
            folder: tempfile::tempdir().unwrap(),
        };
        let mut store = yard.open().store;
        for batch in kept(2) {
            let located = store.append(&batch).unwrap();
            store.index(&located).unwrap();
        }
        store.close().unwrap();
        yard
    }

    fn open(&self) -> Opened {
        self.try_open().unwrap()
    }

    fn try_open(&self) -> Result<Opened, StoreError> {
        open(DataFolder::take(self.folder.path())?)
    }

    fn newest(&self) -> PathBuf {
        log::paths(&self.folder.path().join("log"))
            .unwrap()
            .pop()
            .unwrap()
    }

    fn index_folder(&self) -> PathBuf {
        let mut found: Vec<PathBuf> = std::fs::read_dir(self.folder.path())
            .unwrap()
            .map(|item| item.unwrap().path())
            .filter(|path| path.to_string_lossy().contains("index."))
            .collect();
        assert_eq!(found.len(), 1, "{found:?}");
        found.pop().unwrap()
    }

    fn change_newest(&self, change: impl FnOnce(&mut Vec<u8>)) {
        let path = self.newest();
        let mut bytes = std::fs::read(&path).unwrap();
        change(&mut bytes);
        std::fs::write(&path, bytes).unwrap();
    }
}

fn all(store: &Store) -> Vec<u64> {
    let mut seen = Vec::new();
    store.each(|one| seen.push(one.entry.seq)).unwrap();
    seen
}

#[test]
fn what_was_kept_is_there_again_in_order_and_in_the_index() {
    let yard = Yard::two_days();
    let opened = yard.open();
    assert_eq!(opened.notes, Vec::<String>::new());
    assert_eq!(all(&opened.store), (1..=8).collect::<Vec<_>>());
    assert_eq!(opened.today.len(), 4);
    let index = opened.store.reader().get().unwrap();
    for seq in 1..=8 {
        assert_eq!(index.entry(seq).unwrap().unwrap().entry.seq, seq);
    }
    assert_eq!(index.entry(9).unwrap(), None);
    let by_key = opened.store.by_key("hub", "request-1").unwrap();
    assert_eq!(
        by_key.iter().map(|entry| entry.seq).collect::<Vec<_>>(),
        [2, 3]
    );
    let newest: Vec<u64> = index
        .named(index::By::Kind, "day_opened", 9)
        .map(Result::unwrap)
        .collect();
    assert_eq!(newest, [5, 1]);
    let behind: Vec<u64> = index
        .named_after(index::By::Kind, "day_opened", 1)
        .map(Result::unwrap)
        .collect();
    assert_eq!(behind, [5]);
}

#[test]
fn a_torn_tail_is_cut_at_the_last_whole_request_and_the_log_goes_on() {
    let yard = Yard::two_days();
    yard.change_newest(|bytes| bytes.extend_from_slice(b"{\"seq\":9,\"at\":10"));
    let mut opened = yard.open();
    assert_eq!(opened.notes.len(), 1, "{:?}", opened.notes);
    assert!(opened.notes[0].contains("torn"), "{:?}", opened.notes);
    assert_eq!(opened.store.head().seq, 8);
    let next = kept(3).remove(6);
    opened.store.append(&next).unwrap();
    drop(opened);
    assert_eq!(yard.open().store.head().seq, 9);
}

#[test]
fn half_a_request_is_no_request() {
    let yard = Yard {
        folder: tempfile::tempdir().unwrap(),
    };
    let mut store = yard.open().store;
    for batch in kept(1).iter().take(2) {
        store.append(batch).unwrap();
    }
    drop(store);
    // Entries 2 and 3 are one request; the cut falls into entry 3.
    yard.change_newest(|bytes| bytes.truncate(bytes.len() - 40));
    let opened = yard.open();
    assert_eq!(opened.store.head().seq, 1);
    // The cut falls between the two.
    let yard = Yard {
        folder: tempfile::tempdir().unwrap(),
    };
    let mut store = yard.open().store;
    for batch in kept(1).iter().take(2) {
        store.append(batch).unwrap();
    }
    drop(store);
    yard.change_newest(|bytes| {
        let lines: Vec<&[u8]> = bytes.split_inclusive(|byte| *byte == b'\n').collect();
        *bytes = lines[..2].concat();
    });
    assert_eq!(yard.open().store.head().seq, 1);
}

#[test]
fn blocks_that_were_never_written_are_a_torn_tail_unless_the_index_remembers_them() {
    let tear = |yard: &Yard| {
        yard.change_newest(|bytes| {
            let lines: Vec<usize> = bytes
                .iter()
                .enumerate()
                .filter(|(_, byte)| **byte == b'\n')
                .map(|(at, _)| at)
                .collect();
            // A gap inside of entry 6, with whole entries behind it: the later blocks came first.
            for byte in &mut bytes[lines[0] + 20..lines[0] + 60] {
                *byte = 0;
            }
        });
    };
    let yard = Yard::two_days();
    tear(&yard);
    assert!(matches!(yard.try_open(), Err(StoreError::Damaged { .. })));
    let yard = Yard::two_days();
    tear(&yard);
    std::fs::remove_dir_all(yard.index_folder()).unwrap();
    let opened = yard.open();
    assert_eq!(opened.store.head().seq, 5);
}

#[test]
fn a_day_of_which_nothing_was_written_is_no_day() {
    let yard = Yard::two_days();
    std::fs::write(
        yard.folder.path().join("log/0000000009-day-3.jsonl"),
        b"{\"se",
    )
    .unwrap();
    let opened = yard.open();
    assert_eq!(opened.store.head().seq, 8);
    assert_eq!(opened.today.len(), 4);
}

#[test]
fn any_other_damage_is_named_and_stops_the_start() {
    // A changed letter in the middle of the newest day, and in its very last line.
    for line in [1, 3] {
        let yard = Yard::two_days();
        yard.change_newest(|bytes| {
            let text = String::from_utf8(bytes.clone()).unwrap();
            let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
            lines[line] = lines[line].replace("\"made_at\":1000", "\"made_at\":1001");
            *bytes = (lines.join("\n") + "\n").into_bytes();
        });
        let error = yard.try_open().unwrap_err().to_string();
        assert!(error.contains(&format!("entry {}", 5 + line)), "{error}");
    }
}

#[test]
fn a_day_that_is_missing_in_between_is_named() {
    let yard = Yard {
        folder: tempfile::tempdir().unwrap(),
    };
    let mut store = yard.open().store;
    for batch in kept(3) {
        store.append(&batch).unwrap();
    }
    drop(store);
    let paths = log::paths(&yard.folder.path().join("log")).unwrap();
    std::fs::remove_file(&paths[1]).unwrap();
    assert!(matches!(
        yard.try_open(),
        Err(StoreError::DayMissing { .. })
    ));
}

#[test]
fn a_damaged_end_of_the_last_line_loses_no_entry_that_is_proven() {
    type Damage = fn(&mut Vec<u8>);
    let flipped: Damage = |bytes| *bytes.last_mut().unwrap() = b'K';
    let cut: Damage = |bytes| bytes.truncate(bytes.len() - 1);
    for damage in [flipped, cut] {
        let yard = Yard::two_days();
        yard.change_newest(damage);
        let mut opened = yard.open();
        assert_eq!(opened.store.head().seq, 8);
        let notes = &opened.notes;
        assert!(
            notes[0].contains("Entry 8 is proven by its own hash"),
            "{notes:?}"
        );
        opened.store.append(&kept(3)[6]).unwrap();
        drop(opened);
        assert_eq!(all(&yard.open().store), (1..=9).collect::<Vec<_>>());
    }
    // Nothing remembers the entry: more of its request may have been torn off than the newline.
    let yard = Yard::two_days();
    std::fs::remove_dir_all(yard.index_folder()).unwrap();
    yard.change_newest(cut);
    assert_eq!(yard.open().store.head().seq, 7);
}

#[test]
fn a_blank_behind_an_entry_that_the_index_remembers_takes_nothing_away() {
    let yard = Yard::two_days();
    yard.change_newest(|bytes| bytes.insert(bytes.len() - 1, b' '));
    assert_eq!(yard.open().store.head().seq, 8);
}
