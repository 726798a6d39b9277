//! Export, import, proof and table: a round trip changes nothing, and a change is named.

use super::*;

use day::asked::By;
use day::chain::{GENESIS, seal};
use day::entry::Body;
use day::said::codes::CodesRenewed;
use day::said::day::DayOpened;
use day::time::Time;

use crate::store;

/// A data folder with two days; a request of two entries in each. Invented.
fn folder() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let (mut log, _, _) = Log::open(&folder.path().join("log"), 0).unwrap();
    let mut prev = GENESIS.to_owned();
    let mut seq = 0;
    for day in ["2030-05-14", "2030-05-15"] {
        let bodies = [
            Body::DayOpened(DayOpened::of(day)),
            Body::CodesRenewed(CodesRenewed { generation: 1 }),
            Body::CodesRenewed(CodesRenewed { generation: 2 }),
        ];
        for (at, body) in bodies.into_iter().enumerate() {
            seq += 1;
            let mut by = By::hub();
            by.person = "=1+1".into();
            let entry = Entry {
                seq,
                at: Time(1_905_000_000_000),
                made_at: Time(1_905_000_000_000),
                by,
                key: if at == 0 {
                    String::new()
                } else {
                    format!("request-{day}")
                },
                body,
            };
            let sealed = seal(&entry, &prev).unwrap();
            prev.clone_from(&sealed.hash);
            log.append(&[Kept {
                entry,
                sealed,
                more: at == 1,
            }])
            .unwrap();
        }
    }
    folder
}

fn exported(folder: &Path) -> Vec<u8> {
    let mut bytes = Vec::new();
    export(folder, &mut bytes).unwrap();
    bytes
}

#[test]
fn an_export_comes_in_again_as_it_went_out() {
    let from = folder();
    let bytes = exported(from.path());
    let file = from.path().join("out.jsonl");
    std::fs::write(&file, &bytes).unwrap();
    let to = tempfile::tempdir().unwrap();
    let taken = DataFolder::take(to.path()).unwrap();
    let head = import(&file, &taken).unwrap().head;
    assert_eq!(head.seq, 6);
    assert_eq!(exported(to.path()), bytes);
    let files = |folder: &Path| {
        let paths = log::paths(&folder.join("log")).unwrap();
        paths
            .iter()
            .map(|path| std::fs::read(path).unwrap())
            .collect::<Vec<_>>()
    };
    assert_eq!(files(to.path()), files(from.path()));
    assert!(matches!(
        import(&file, &taken),
        Err(ExportError::NotEmpty { .. })
    ));
    drop(taken);
    let opened = store::open(DataFolder::take(to.path()).unwrap()).unwrap();
    assert_eq!(opened.store.head(), &head);
}

#[test]
fn a_folder_a_file_and_a_single_day_prove_themselves() {
    let from = folder();
    let whole = verify(from.path()).unwrap();
    assert_eq!((whole.first, whole.head.seq), (1, 6));
    let second = log::paths(&from.path().join("log")).unwrap().pop().unwrap();
    let day = verify(&second).unwrap();
    assert_eq!((day.first, &day.head), (4, &whole.head));
}

#[test]
fn the_first_broken_entry_is_named_and_nothing_of_it_comes_in() {
    let from = folder();
    let text = String::from_utf8(exported(from.path())).unwrap();
    let file = from.path().join("changed.jsonl");
    std::fs::write(
        &file,
        text.replacen("\"generation\":2", "\"generation\":3", 1),
    )
    .unwrap();
    let error = verify(&file).unwrap_err().to_string();
    assert!(
        error.contains("line 3") && error.contains("entry 3"),
        "{error}"
    );
    let to = tempfile::tempdir().unwrap();
    let taken = DataFolder::take(to.path()).unwrap();
    assert!(import(&file, &taken).is_err());
    assert_eq!(
        log::paths(&to.path().join("log")).unwrap(),
        Vec::<PathBuf>::new()
    );
    // A line cut out.
    let mut lines: Vec<&str> = text.lines().collect();
    lines.remove(2);
    let without = lines.join(
        "
",
    ) + "
";
    std::fs::write(&file, without).unwrap();
    assert!(verify(&file).unwrap_err().to_string().contains("entry 4"));
}

#[test]
fn nothing_is_said_to_be_nothing() {
    let empty = tempfile::tempdir().unwrap();
    assert!(matches!(
        verify(empty.path()),
        Err(ExportError::Nothing { .. })
    ));
    assert!(matches!(
        verify(&empty.path().join("nowhere")),
        Err(ExportError::File { .. })
    ));
    assert!(matches!(
        export(empty.path(), &mut Vec::new()),
        Err(ExportError::Nothing { .. })
    ));
}

#[test]
fn the_table_has_a_row_for_each_entry_and_no_formulas() {
    let from = folder();
    let mut bytes = Vec::new();
    table(from.path(), &mut bytes).unwrap();
    let text = String::from_utf8(bytes).unwrap();
    assert_eq!(text.lines().count(), 7);
    assert!(text.contains("Day 2030-05-14 opened."));
    assert!(
        text.contains(",'=1+1,") && !text.contains(",=1+1,"),
        "{text}"
    );
}
