//! Codes for the day: drawn from a secret of the data folder, so that nothing secret is in the log and a restart keeps them.

use std::fmt::Write as _;
use std::path::Path;

use day::asked::Role;
use day::chain::digest;
use hmac::{Hmac, KeyInit as _, Mac as _};
use sha2::Sha256;
use thiserror::Error;

use crate::publish::Board;
use crate::store::disk;

/// Letters that can't be taken for one another, without vowels, so that no code is a word.
const LETTERS: &[u8] = b"BCDFGHJKMNPQRTVWXZ";
/// 18^10 codes, and few guesses a minute.
const CODE_LETTERS: usize = 10;
const SECRET_BYTES: usize = 32;
/// The name of the secret's file in the data folder.
const SECRET_FILE: &str = "secret";
/// Digits of the check behind it.
const CHECK_HEX: usize = 8;

/// Why there is no secret.
#[derive(Debug, Error)]
pub enum SecretError {
    /// The file can't be read or made.
    #[error(
        "The file {path} can't be used ({source}). It must be readable and writable by the hub alone."
    )]
    File {
        /// Which.
        path: String,
        /// Why.
        source: std::io::Error,
    },
    /// No randomness.
    #[error("The system gives no random bytes ({0}). The hub can't make codes without.")]
    NoRandomness(getrandom::Error),
}

/// The secret behind the codes.
#[derive(Clone)]
pub struct Secret([u8; SECRET_BYTES]);

impl std::fmt::Debug for Secret {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Secret")
    }
}

/// What a code lets in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Admits {
    /// The roles; a phone picks among them.
    pub roles: Vec<Role>,
    /// The machine, for an operator.
    pub machine: Option<String>,
}

impl Secret {
    /// The folder's secret; made, for the hub's eyes alone, when there is none. One that is damaged is set aside, and the second
    /// value says so: whoever is in stays in, but no code that was shown or printed lets anybody in any more.
    ///
    /// # Errors
    /// [`SecretError`].
    pub fn of(folder: &Path) -> Result<(Self, Option<String>), SecretError> {
        let path = folder.join(SECRET_FILE);
        let failed = |source| SecretError::File {
            path: path.display().to_string(),
            source,
        };
        let note = match std::fs::read(&path) {
            Ok(text) => {
                if let Some(bytes) = from_file(&String::from_utf8_lossy(&text)) {
                    return Ok((Self(bytes), None));
                }
                let aside = path.with_extension("damaged");
                std::fs::rename(&path, &aside).map_err(failed)?;
                Some(format!(
                    "The file {} did not hold the hub's secret: it is set aside as {}, and a new one is made. Show or print the codes again: those from before let nobody in.",
                    path.display(),
                    aside.display()
                ))
            }
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => None,
            Err(source) => return Err(failed(source)),
        };
        let mut bytes = [0; SECRET_BYTES];
        getrandom::fill(&mut bytes).map_err(SecretError::NoRandomness)?;
        disk::write_whole(&path, to_file(&bytes).as_bytes()).map_err(failed)?;
        Ok((Self(bytes), note))
    }

    fn sign(&self, text: &str) -> Vec<u8> {
        // HMAC takes a key of any length: the error can't happen with this one.
        let Ok(mut mac) = Hmac::<Sha256>::new_from_slice(&self.0) else {
            return Vec::new();
        };
        mac.update(text.as_bytes());
        mac.finalize().into_bytes().to_vec()
    }

    /// The code for this day that lets these in.
    pub fn code(&self, board: &Board, admits: &Admits) -> String {
        let roles: Vec<String> = admits
            .roles
            .iter()
            .map(|role| format!("{role:?}"))
            .collect();
        let text = format!(
            "code|{}|{}|{}|{}",
            board.codes_of,
            board.generation,
            roles.join("+"),
            admits.machine.as_deref().unwrap_or_default()
        );
        in_letters(&self.sign(&text))
    }

    /// What the laptop's own link carries this day.
    pub fn own(&self, day: &str) -> String {
        to_hex(&self.sign(&format!("own|{day}"))[..16])
    }

    /// A name of the log in this folder, which tells nothing of the secret.
    pub fn log(&self) -> String {
        to_hex(&self.sign("log")[..8])
    }

    /// Everything that a code of this day can let in.
    pub fn offers(board: &Board) -> Vec<Admits> {
        let whole = |roles: &[Role]| Admits {
            roles: roles.to_vec(),
            machine: None,
        };
        let mut offers = vec![
            whole(&[Role::Ground]),
            whole(&[Role::Ground, Role::Supervisor]),
            whole(&[Role::Visitor]),
        ];
        offers.extend(board.machines.iter().map(|machine| Admits {
            roles: vec![Role::Operator],
            machine: Some(machine.clone()),
        }));
        offers
    }

    /// What a typed or scanned code lets in; none when it is void.
    pub fn admits(&self, board: &Board, typed: &str) -> Option<Admits> {
        if board.day.is_empty() {
            return None;
        }
        let plain: String = typed
            .chars()
            .filter(char::is_ascii_alphanumeric)
            .map(|c| c.to_ascii_uppercase())
            .collect();
        let mut found = None;
        for admits in Self::offers(board) {
            // Every code is compared, each to its end, so that the time taken tells nothing.
            if same(self.code(board, &admits).as_bytes(), plain.as_bytes()) {
                found = Some(admits);
            }
        }
        found
    }
}

/// A fresh token of 256 random bits, in hex.
///
/// # Errors
/// [`SecretError::NoRandomness`].
pub fn token() -> Result<String, SecretError> {
    let mut bytes = [0; SECRET_BYTES];
    getrandom::fill(&mut bytes).map_err(SecretError::NoRandomness)?;
    Ok(to_hex(&bytes))
}

/// Whether two texts are the same, in a time that does not depend on where they differ.
pub fn same(a: &[u8], b: &[u8]) -> bool {
    a.len() == b.len() && a.iter().zip(b).fold(0, |all, (x, y)| all | (x ^ y)) == 0
}

fn in_letters(bytes: &[u8]) -> String {
    let mut rest = bytes
        .iter()
        .take(16)
        .fold(0_u128, |number, byte| (number << 8) | u128::from(*byte));
    let count = LETTERS.len() as u128;
    (0..CODE_LETTERS)
        .map(|_| {
            let letter = usize::try_from(rest % count).unwrap_or(0);
            rest /= count;
            char::from(LETTERS[letter])
        })
        .collect()
}

fn to_hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut hex, byte| {
        // Writing to a string can't fail.
        let _ = write!(hex, "{byte:02x}");
        hex
    })
}

fn from_hex(text: &str) -> Option<[u8; SECRET_BYTES]> {
    let mut bytes = [0; SECRET_BYTES];
    if text.len() != SECRET_BYTES * 2 || !text.is_ascii() {
        return None;
    }
    for (at, byte) in bytes.iter_mut().enumerate() {
        *byte = u8::from_str_radix(text.get(at * 2..at * 2 + 2)?, 16).ok()?;
    }
    Some(bytes)
}

/// The secret as its file holds it: in hex, and by what a flipped digit is noticed.
fn to_file(secret: &[u8; SECRET_BYTES]) -> String {
    let hex = to_hex(secret);
    let check = &digest(hex.as_bytes())[..CHECK_HEX];
    format!("{hex} {check}")
}

/// A file from before the check held the hex alone.
fn from_file(text: &str) -> Option<[u8; SECRET_BYTES]> {
    let (hex, check) = text.trim().split_once(' ').unzip();
    let hex = hex.unwrap_or(text.trim());
    let proven = check.is_none_or(|check| check == &digest(hex.as_bytes())[..CHECK_HEX]);
    from_hex(hex).filter(|_| proven)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn board(day: &str, generation: u32) -> Board {
        Board {
            day: day.into(),
            codes_of: day.into(),
            generation,
            machines: vec!["EX-1".into(), "EX-2".into()],
            ..Board::default()
        }
    }

    #[test]
    fn the_signature_is_hmac_sha_256() {
        // RFC 4231, test case 2, with the key filled to 32 bytes by zeros: HMAC pads a short key with zeros itself.
        let mut key = [0; SECRET_BYTES];
        key[..4].copy_from_slice(b"Jefe");
        let signed = Secret(key).sign("what do ya want for nothing?");
        assert_eq!(
            to_hex(&signed),
            "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"
        );
    }

    #[test]
    fn a_code_opens_its_own_role_on_its_own_day_and_no_other() {
        let folder = tempfile::tempdir().unwrap();
        let (secret, _) = Secret::of(folder.path()).unwrap();
        let today = board("2030-05-14", 0);
        let mut seen = std::collections::BTreeSet::new();
        for admits in Secret::offers(&today) {
            let code = secret.code(&today, &admits);
            assert_eq!(code.len(), CODE_LETTERS);
            assert!(code.bytes().all(|letter| LETTERS.contains(&letter)));
            assert_eq!(secret.admits(&today, &code), Some(admits.clone()));
            let spoken = format!("{}-{}", &code[..5].to_lowercase(), &code[5..]);
            assert_eq!(secret.admits(&today, &spoken), Some(admits));
            assert_eq!(secret.admits(&board("2030-05-15", 0), &code), None);
            assert_eq!(secret.admits(&board("2030-05-14", 1), &code), None);
            assert!(seen.insert(code));
        }
    }

    #[test]
    fn the_secret_survives_a_restart_and_is_nobody_elses() {
        let folder = tempfile::tempdir().unwrap();
        let (first, note) = Secret::of(folder.path()).unwrap();
        assert_eq!(note, None);
        let (again, note) = Secret::of(folder.path()).unwrap();
        assert_eq!((first.0, note), (again.0, None));
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt as _;
            let meta = std::fs::metadata(folder.path().join(SECRET_FILE)).unwrap();
            assert_eq!(meta.permissions().mode() & 0o777, 0o600);
        }
    }

    #[test]
    fn a_damaged_secret_is_set_aside_and_a_new_one_made() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join(SECRET_FILE);
        let (first, _) = Secret::of(folder.path()).unwrap();
        let whole = std::fs::read_to_string(&path).unwrap();
        // As a file from before had it.
        std::fs::write(&path, to_hex(&first.0)).unwrap();
        assert_eq!(Secret::of(folder.path()).unwrap().0.0, first.0);
        let flipped = |at: usize| {
            let mut bytes = whole.clone().into_bytes();
            bytes[at] ^= 1;
            bytes
        };
        let cut = whole.as_bytes()[..40].to_vec();
        for damaged in [
            b"".to_vec(),
            b"not it".to_vec(),
            vec![0xff],
            cut,
            flipped(0),
            flipped(70),
        ] {
            std::fs::write(&path, &damaged).unwrap();
            let (new, note) = Secret::of(folder.path()).unwrap();
            assert_ne!(new.0, first.0);
            assert!(note.unwrap().contains("let nobody in"));
            assert_eq!(
                std::fs::read(path.with_extension("damaged")).unwrap(),
                damaged
            );
            assert_eq!(Secret::of(folder.path()).unwrap().0.0, new.0);
        }
    }
}
