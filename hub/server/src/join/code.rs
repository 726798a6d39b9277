//! Codes for the day: drawn from a secret of the data folder, so that nothing secret is in the log and a restart keeps them.

use std::fmt::Write as _;
use std::io::Write as _;
use std::path::Path;

use day::asked::Role;
use hmac::{Hmac, KeyInit as _, Mac as _};
use sha2::Sha256;
use thiserror::Error;

use crate::publish::Board;
use crate::store::durable::sync_name;

/// Letters that can't be taken for one another, without vowels, so that no code is a word.
const LETTERS: &[u8] = b"BCDFGHJKMNPQRTVWXZ";
/// 18^10 codes, and few guesses a minute.
const CODE_LETTERS: usize = 10;
const SECRET_BYTES: usize = 32;
/// The name of the secret's file in the data folder.
const SECRET_FILE: &str = "secret";

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
    /// The file holds something else.
    #[error(
        "The file {path} does not hold the hub's secret. Remove it: a new one is made, and every phone joins again."
    )]
    Damaged {
        /// Which.
        path: String,
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
    /// The folder's secret; made, for the hub's eyes alone, when there is none. An empty file is none: an older hub's power was cut before
    /// any code came of it.
    ///
    /// # Errors
    /// [`SecretError`].
    pub fn of(folder: &Path) -> Result<Self, SecretError> {
        let path = folder.join(SECRET_FILE);
        let name = path.display().to_string();
        match std::fs::read_to_string(&path) {
            Ok(text) if !text.is_empty() => from_hex(text.trim())
                .map(Self)
                .ok_or(SecretError::Damaged { path: name }),
            Err(error) if error.kind() != std::io::ErrorKind::NotFound => Err(SecretError::File {
                path: name,
                source: error,
            }),
            Ok(_) | Err(_) => {
                let mut bytes = [0; SECRET_BYTES];
                getrandom::fill(&mut bytes).map_err(SecretError::NoRandomness)?;
                write_private(&path, &to_hex(&bytes))
                    .map_err(|source| SecretError::File { path: name, source })?;
                Ok(Self(bytes))
            }
        }
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

/// Writes a file whole or not at all, for the hub's eyes alone (a temporary file is nobody else's).
fn write_private(path: &Path, text: &str) -> std::io::Result<()> {
    let folder = path.parent().unwrap_or(Path::new("."));
    let mut file = tempfile::NamedTempFile::new_in(folder)?;
    file.write_all(text.as_bytes())?;
    file.as_file().sync_all()?;
    file.persist(path).map_err(|error| error.error)?;
    sync_name(path).map_err(std::io::Error::other)
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
        let secret = Secret::of(folder.path()).unwrap();
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
        let first = Secret::of(folder.path()).unwrap();
        let again = Secret::of(folder.path()).unwrap();
        assert_eq!(first.0, again.0);
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt as _;
            let meta = std::fs::metadata(folder.path().join(SECRET_FILE)).unwrap();
            assert_eq!(meta.permissions().mode() & 0o777, 0o600);
        }
    }

    /// An older hub made the file before it wrote it: the power was cut in between.
    #[test]
    fn an_empty_secret_is_made_anew_and_nothing_else_is_left() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join(SECRET_FILE), "").unwrap();
        let made = Secret::of(folder.path()).unwrap();
        assert_eq!(Secret::of(folder.path()).unwrap().0, made.0);
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }

    #[test]
    fn a_damaged_secret_is_said() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join(SECRET_FILE), "not it").unwrap();
        assert!(matches!(
            Secret::of(folder.path()),
            Err(SecretError::Damaged { .. })
        ));
    }
}
