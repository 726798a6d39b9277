//! An index that is lost, damaged, cut, behind, ahead, of another log, or fails while the hub runs.

use super::*;

/// Every file of a folder, and of those in it.
fn files(folder: &Path) -> Vec<PathBuf> {
    let items = std::fs::read_dir(folder).unwrap();
    let paths = items.map(|item| item.unwrap().path());
    paths
        .flat_map(|path| {
            if path.is_dir() {
                files(&path)
            } else {
                vec![path]
            }
        })
        .collect()
}

#[test]
fn an_index_that_is_deleted_or_damaged_is_made_anew() {
    let yard = Yard::two_days();
    std::fs::remove_dir_all(yard.index_folder()).unwrap();
    let opened = yard.open();
    assert!(opened.notes[0].contains("made anew"), "{:?}", opened.notes);
    assert_eq!(opened.store.by_key("hub", "request-2").unwrap().len(), 2);
    drop(opened);
    let before = yard.index_folder();
    for item in std::fs::read_dir(&before).unwrap() {
        let path = item.unwrap().path();
        if path.is_file() {
            let mut file = File::options().write(true).open(&path).unwrap();
            file.write_all(b"not what sled wrote").unwrap();
        }
    }
    let opened = yard.open();
    assert!(opened.notes[0].contains("made anew"), "{:?}", opened.notes);
    assert_eq!(opened.store.by_key("hub", "request-2").unwrap().len(), 2);
    assert_ne!(yard.index_folder(), before);
}

/// A power cut leaves any file of the index at any length, or not at all: the start never needs a hand.
#[test]
fn an_index_that_is_cut_anywhere_never_keeps_the_hub_from_starting() {
    let yard = Yard::two_days();
    let opened = yard.open();
    let (first, prev) = (opened.today[0].entry.seq, opened.today[0].prev.clone());
    // Larger than a segment of sled's: it goes into a file of its own.
    let state = format!("{{{}}}", " ".repeat(300_000));
    opened
        .store
        .put_opening(first, &prev, state.as_bytes())
        .unwrap();
    opened.store.close().unwrap();
    drop(opened);
    let index = yard.index_folder();
    let whole: Vec<(PathBuf, Vec<u8>)> = files(&index)
        .into_iter()
        .map(|path| (path.clone(), std::fs::read(&path).unwrap()))
        .collect();
    assert!(whole.len() > 2, "{whole:?}");
    let mut anew = 0;
    for (cut, bytes) in &whole {
        let (full, most) = (
            bytes.len(),
            bytes
                .iter()
                .rposition(|byte| *byte != 0)
                .map_or(0, |at| at + 1),
        );
        let mut lengths = vec![
            0,
            1,
            7,
            8,
            16,
            17,
            64,
            511,
            512,
            513,
            4_096,
            most / 2,
            most.saturating_sub(1),
            most,
            full - 1,
        ];
        lengths.retain(|length| *length < full);
        lengths.sort_unstable();
        lengths.dedup();
        for length in lengths.into_iter().map(Some).chain([None]) {
            let _ = std::fs::remove_dir_all(yard.index_folder());
            for (path, bytes) in &whole {
                std::fs::create_dir_all(path.parent().unwrap()).unwrap();
                std::fs::write(path, bytes).unwrap();
            }
            match length {
                Some(length) => std::fs::write(cut, &bytes[..length]).unwrap(),
                None => std::fs::remove_file(cut).unwrap(),
            }
            let which = format!("{} at {length:?} of {full}", cut.display());
            let opened = yard
                .try_open()
                .unwrap_or_else(|error| panic!("{which}: {error}"));
            assert_eq!(all(&opened.store), (1..=8).collect::<Vec<u64>>(), "{which}");
            assert_eq!(
                opened.store.by_key("hub", "request-2").unwrap().len(),
                2,
                "{which}"
            );
            // What was put by is whole or not there.
            assert!(
                opened.opening.is_none_or(|put| put == state.as_bytes()),
                "{which}"
            );
            anew += usize::from(opened.notes.iter().any(|note| note.contains("made anew")));
        }
    }
    assert!(anew > 3, "{anew}");
}

#[test]
fn an_index_that_is_behind_is_caught_up() {
    let yard = Yard::two_days();
    let mut store = yard.open().store;
    store.append(&kept(3)[6]).unwrap();
    drop(store);
    let opened = yard.open();
    assert!(
        opened.notes[0].contains("the last 1 of the log"),
        "{:?}",
        opened.notes
    );
    let index = opened.store.reader().get().unwrap();
    assert_eq!(index.entry(9).unwrap().unwrap().entry.seq, 9);
}

#[test]
fn an_index_that_is_ahead_says_that_the_log_has_lost_entries() {
    let yard = Yard::two_days();
    yard.change_newest(|bytes| {
        let lines: Vec<&[u8]> = bytes.split_inclusive(|byte| *byte == b'\n').collect();
        *bytes = lines[..3].concat();
    });
    let opened = yard.open();
    assert!(
        opened.notes[0].contains("remembers entry 8"),
        "{:?}",
        opened.notes
    );
    assert_eq!(opened.store.reader().get().unwrap().entry(8).unwrap(), None);
}

#[test]
fn an_opening_counts_only_for_its_own_chain() {
    let yard = Yard::two_days();
    let opened = yard.open();
    let first = &opened.today[0];
    opened
        .store
        .put_opening(first.entry.seq, &first.prev, b"{}")
        .unwrap();
    opened.store.close().unwrap();
    let index = opened.store.reader().get().unwrap();
    assert_eq!(index.opening(5, GENESIS).unwrap(), None);
    drop((opened, index));
    assert_eq!(yard.open().opening, Some(b"{}".to_vec()));
}

#[test]
fn an_index_in_doubt_is_made_anew_at_the_next_start() {
    let yard = Yard::two_days();
    rebuild::doubt(yard.folder.path());
    assert!(yard.open().notes[0].contains("made anew"));
    assert_eq!(yard.open().notes, Vec::<String>::new());
}

#[test]
fn an_index_that_is_behind_by_days_is_caught_up_and_one_of_another_log_is_not() {
    let yard = Yard {
        folder: tempfile::tempdir().unwrap(),
    };
    let mut store = yard.open().store;
    for (number, batch) in kept(3).iter().enumerate() {
        let located = store.append(batch).unwrap();
        if number < 2 {
            store.index(&located).unwrap();
        }
    }
    drop(store);
    let opened = yard.open();
    assert!(
        opened.notes[0].contains("the last 9 of the log"),
        "{:?}",
        opened.notes
    );
    let index = opened.store.reader().get().unwrap();
    for seq in 1..=12 {
        assert_eq!(index.entry(seq).unwrap().unwrap().entry.seq, seq);
    }
    let log = Log::open(&yard.folder.path().join("log"), 0).unwrap().0;
    let another = Head {
        seq: 3,
        hash: GENESIS.to_owned(),
    };
    let held = log.behind(&another, |one| panic!("{one:?} is not of that log"));
    assert!(!held.unwrap());
}

#[test]
fn an_opening_that_was_lost_costs_a_new_index_and_no_start() {
    let yard = Yard::two_days();
    let opened = yard.open();
    let first = &opened.today[0];
    // So large that sled keeps it in a file of its own, which it never makes durable.
    let large = vec![b' '; 4 << 20];
    opened
        .store
        .put_opening(first.entry.seq, &first.prev, &large)
        .unwrap();
    opened.store.close().unwrap();
    drop(opened);
    // A later start has seen it, and expects it from then on.
    drop(yard.open());
    let blobs = yard.index_folder().join("blobs");
    let files: Vec<_> = std::fs::read_dir(&blobs).unwrap().collect();
    assert!(!files.is_empty());
    for file in files {
        std::fs::remove_file(file.unwrap().path()).unwrap();
    }
    let opened = yard.open();
    assert!(
        opened.notes.iter().any(|note| note.contains("made anew")),
        "{:?}",
        opened.notes
    );
    assert_eq!((opened.store.head().seq, opened.opening), (8, None));
    assert_eq!(opened.store.by_key("hub", "request-2").unwrap().len(), 2);
}

#[test]
fn an_index_that_fails_is_made_anew_beside_the_log_that_goes_on() {
    let yard = Yard::two_days();
    let mut store = yard.open().store;
    store.index.set(None);
    assert!(matches!(
        store.by_key("hub", "request-2"),
        Err(StoreError::NoIndex)
    ));
    let (tell, made) = std::sync::mpsc::channel();
    store.index_anew(move |index| tell.send(index).unwrap());
    let index = made.recv().unwrap().unwrap();
    let meanwhile = store.append(&kept(3)[6]).unwrap();
    assert!(matches!(store.index(&meanwhile), Err(StoreError::NoIndex)));
    assert_eq!(store.put_index(index, &meanwhile).unwrap(), 9);
    let index = store.reader().get().unwrap();
    assert_eq!(index.entry(9).unwrap().unwrap().entry.seq, 9);
    assert_eq!(store.by_key("hub", "request-2").unwrap().len(), 2);
}

#[test]
fn what_the_index_does_not_know_the_log_itself_answers() {
    let yard = Yard::two_days();
    drop(yard.open());
    let logs = yard.folder.path().join("log");
    for seq in 1..=8 {
        let found = log::find(&logs, seq).unwrap().unwrap();
        assert_eq!(found.entry.seq, seq);
    }
    assert_eq!(log::find(&logs, 9).unwrap(), None);
    let publish = crate::publish::Publish::default();
    publish.head(8, GENESIS);
    let past = crate::past::Past::new(IndexNow::default(), publish, yard.folder.path());
    assert_eq!(past.entry(6).unwrap().unwrap().entry.seq, 6);
    assert_eq!(past.entry(9).unwrap(), None);
}
