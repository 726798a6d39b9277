//! Files from outside, read with a bound: what is too large is refused before it fills the memory.

use std::fs::File;
use std::io::{BufRead, Error, ErrorKind, Read as _};
use std::path::Path;

const MEGABYTE: u64 = 1024 * 1024;
/// The largest site file and the largest file of worked examples, in bytes.
pub(crate) const FILE: u64 = 16 * MEGABYTE;
/// The longest line of a log: an entry that holds a whole site.
pub(crate) const LINE: u64 = 64 * MEGABYTE;

/// The text of a file of at most so many bytes.
///
/// # Errors
/// What the system says; [`ErrorKind::FileTooLarge`] when there is more, [`ErrorKind::InvalidData`] when it is no text.
pub(crate) fn text(path: &Path, most: u64) -> Result<String, Error> {
    let mut bytes = Vec::new();
    File::open(path)?.take(most + 1).read_to_end(&mut bytes)?;
    if bytes.len() as u64 > most {
        return Err(too_large("the file", most));
    }
    String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        let why = format!("it is not UTF-8 text from byte {at} on: save it anew as UTF-8");
        Error::new(ErrorKind::InvalidData, why)
    })
}

/// The next line without its end, of at most [`LINE`] bytes; `None` after the last.
///
/// # Errors
/// As [`text`].
pub(crate) fn line(lines: &mut impl BufRead) -> Result<Option<String>, Error> {
    line_of(lines, LINE)
}

fn line_of(lines: &mut impl BufRead, most: u64) -> Result<Option<String>, Error> {
    let mut line = Vec::new();
    // Room for an end of two bytes.
    lines.by_ref().take(most + 2).read_until(b'\n', &mut line)?;
    if line.is_empty() {
        return Ok(None);
    }
    if line.pop_if(|byte| *byte == b'\n').is_some() {
        line.pop_if(|byte| *byte == b'\r');
    }
    if line.len() as u64 > most {
        return Err(too_large("a line", most));
    }
    String::from_utf8(line)
        .map(Some)
        .map_err(|error| Error::new(ErrorKind::InvalidData, error))
}

fn too_large(what: &str, most: u64) -> Error {
    let most = most / MEGABYTE;
    Error::new(
        ErrorKind::FileTooLarge,
        format!("{what} is larger than {most} MB, more than any job needs"),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_read_up_to_its_bound_and_no_further() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("site.toml");
        std::fs::write(&path, "12345").unwrap();
        assert_eq!(text(&path, 5).unwrap(), "12345");
        assert_eq!(text(&path, 4).unwrap_err().kind(), ErrorKind::FileTooLarge);
        std::fs::write(&path, [0xff, 0xfe, b'a', 0]).unwrap();
        let why = text(&path, 5).unwrap_err();
        assert_eq!(why.kind(), ErrorKind::InvalidData);
        assert!(why.to_string().contains("save it anew as UTF-8"), "{why}");
        // A file without end, where the system has one.
        let endless = Path::new("/dev/zero");
        if endless.exists() {
            let why = text(endless, MEGABYTE).unwrap_err();
            assert!(why.to_string().contains("larger than 1 MB"), "{why}");
            let mut lines = std::io::BufReader::new(File::open(endless).unwrap());
            let why = line_of(&mut lines, MEGABYTE).unwrap_err();
            assert_eq!(why.kind(), ErrorKind::FileTooLarge);
        }
    }

    #[test]
    fn lines_come_without_their_ends() {
        let all = |text: &[u8]| {
            let mut text = text;
            let mut all = Vec::new();
            while let Some(line) = line_of(&mut text, 3)? {
                all.push(line);
            }
            Ok::<_, Error>(all)
        };
        assert_eq!(all(b"ab\r\n\ncde\nf").unwrap(), ["ab", "", "cde", "f"]);
        assert_eq!(all(b"abc\r\n").unwrap(), ["abc"]);
        assert_eq!(all(b"abcd\n").unwrap_err().kind(), ErrorKind::FileTooLarge);
        assert_eq!(
            all(b"abcdefgh").unwrap_err().kind(),
            ErrorKind::FileTooLarge
        );
        assert_eq!(all(b"\xff\n").unwrap_err().kind(), ErrorKind::InvalidData);
    }
}
