//! Why the hub does not start or a command comes to nothing: for the person at the terminal.

use std::net::SocketAddr;
use std::path::PathBuf;

use thiserror::Error;

use crate::archive::ArchiveError;
use crate::examples::ExamplesError;
use crate::export::ExportError;
use crate::join::code::SecretError;
use crate::site_file::SiteFileError;
use crate::store::StoreError;
use crate::writer::NotDone;

/// What is wrong and what to do.
#[derive(Debug, Error)]
pub enum StartError {
    /// Somebody else listens there.
    #[error("{listen} is in use by another program. Stop that one, or give another with --listen {}:PORT (port 0 picks a free one).", listen.ip())]
    PortTaken {
        /// Where.
        listen: SocketAddr,
    },
    /// The hub can't listen there.
    #[error(
        "The hub can't listen on {listen} ({source}). Give one of this laptop's own addresses with --listen, or 0.0.0.0:8080 for all of them."
    )]
    Listen {
        /// Where.
        listen: SocketAddr,
        /// Why.
        source: std::io::Error,
    },
    /// The site file.
    #[error("{0}")]
    Site(#[from] SiteFileError),
    /// The data folder.
    #[error("{0}")]
    Store(#[from] StoreError),
    /// The secret.
    #[error("{0}")]
    Secret(#[from] SecretError),
    /// The day or the site was not taken.
    #[error("The hub could not open the day. {0}")]
    Day(#[from] NotDone),
    /// An export, import or proof.
    #[error("{0}")]
    Export(#[from] ExportError),
    /// A day that is not put by, or did not come back.
    #[error("{0}")]
    Archive(#[from] ArchiveError),
    /// The system.
    #[error("The system does not let the hub run ({0}).")]
    System(#[from] std::io::Error),
    /// Something given on the command line.
    #[error("{0}")]
    Asked(String),
    /// A file of cases can't be used.
    #[error("{0}")]
    NoExamples(#[from] ExamplesError),
    /// Cases that do not hold.
    #[error("{bad} of {all} cases do not hold, or could not be worked out.")]
    Examples {
        /// How many.
        bad: usize,
        /// Of how many.
        all: usize,
    },
    /// A file that a command should write.
    #[error("{} can't be written ({source}).", path.display())]
    Write {
        /// Which.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
}
