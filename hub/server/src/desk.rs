//! Files that a supervisor has sent and not yet used: a few, in memory, until the hub is started again.

use std::collections::VecDeque;
use std::sync::{Arc, Mutex, PoisonError};

/// So many files are kept; the oldest goes first.
const MOST_FILES: usize = 4;

/// Files by the names under which they were sent.
#[derive(Debug, Default)]
pub struct Desk(Mutex<VecDeque<(String, Arc<str>)>>);

impl Desk {
    /// Keeps a file; one of the same name before it goes.
    pub fn keep(&self, name: &str, text: &str) {
        let mut files = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        files.retain(|(own, _)| own != name);
        files.push_back((name.to_owned(), text.into()));
        if files.len() > MOST_FILES {
            files.pop_front();
        }
    }

    /// The text of a file.
    ///
    /// # Errors
    /// When it was never sent, or has gone: what to do.
    pub fn text(&self, name: &str) -> Result<String, String> {
        let files = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let found = files.iter().find(|(own, _)| own == name);
        found
            .map(|(_, text)| text.to_string())
            .ok_or_else(|| "the hub does not have it: send it with IMPORT".to_owned())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_newest_few_files_are_kept_each_under_its_name() {
        let desk = Desk::default();
        for number in 0..6 {
            desk.keep(&format!("{number}.csv"), "old");
        }
        desk.keep("5.csv", "new");
        assert_eq!(desk.text("5.csv").as_deref(), Ok("new"));
        assert_eq!(desk.text("3.csv").as_deref(), Ok("old"));
        assert!(desk.text("1.csv").unwrap_err().contains("IMPORT"));
    }
}
